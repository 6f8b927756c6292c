/* SPDX-License-Identifier: MIT */
/* Where the feet of one rail line go: on rafters that are really there, as few as the bays allowed let be, then as even as
   can be. Looks at one line alone. Pure. */
#ifndef RP_ROOF_PLACEMENT_H
#define RP_ROOF_PLACEMENT_H

/* Largest spacing allowed for a bay of rail from xa to xb, m; called for every bay tried. */
typedef double placement_limit(const void *context, double xa, double xb);

#define PLACEMENT_RAFTER_MAX 128

struct placement {
	double x0, x1;           /* ends of the rail line, m along the eave */
	const double *rafter;    /* centre lines, rising, m; at most PLACEMENT_RAFTER_MAX */
	int rafters;
	int skip;                /* rafters left out at the start, to stagger neighbouring lines: 0 or 1 */
	int bays;                /* no bay spans more than this many rafter spacings, at least 1 */
	double left, right;      /* largest cantilever at either end, m */
	placement_limit *limit;
	const void *context;
};

/* Fills chosen[] with indices of rafters, rising, and returns how many (0 if no rafter lies under the line). Neighbouring
   rafters may always follow each other, and where no rafter lies within the cantilever allowed the nearest one is taken:
   the caller must still verify the result. */
int placement_find(const struct placement *p, int *chosen, int max);

#endif
