/* SPDX-License-Identifier: MIT */
/* Where the feet of one rail line go: on rafters that are really there, as far apart as the limit allows.
   Plain walk from the left end; the search for the fewest holes is another subject. Pure. */
#ifndef RP_ROOF_PLACEMENT_H
#define RP_ROOF_PLACEMENT_H

/* Largest spacing allowed for a bay of rail from xa to xb, m; called for every bay tried. */
typedef double placement_limit(const void *context, double xa, double xb);

struct placement {
	double x0, x1;           /* ends of the rail line, m along the eave */
	const double *rafter;    /* centre lines, rising, m */
	int rafters;
	int skip;                /* rafters left out at the start, to stagger neighbouring lines: 0 or 1 */
	int bays;                /* no bay spans more than this many rafter spacings */
	double max_cantilever;   /* m */
	double cantilever_share; /* a cantilever is at most this share of the bay beside it (common practice: 1/3) */
	placement_limit *limit;
	const void *context;
};

/* Fills chosen[] with indices of rafters, rising, and returns how many (0 if no rafter lies under the line). Bays are as long
   as limit, bays and the rafters allow and never shorter than one rafter spacing, so that the caller must still verify
   the result where even that is too long. */
int placement_walk(const struct placement *p, int *chosen, int max);

#endif
