/* SPDX-License-Identifier: MIT */
/* One rafter as a simple beam on a slope. Positions and span are horizontal, as they are measured
   in an attic; the beam is solved along the slope under the parts of the loads that act across it,
   which is the same thing (the moment of a vertical load is that of the horizontal span). SI. Down
   positive, up negative. */
#ifndef RP_RESIST_RAFTER_H
#define RP_RESIST_RAFTER_H

#include <stdbool.h>
#include <stddef.h>

#include "resist/beam.h"
#include "step/step.h"

struct rafter_uniform {
	double x0, x1;   /* horizontal, from the lower support, m */
	/* N per horizontal metre: snow, live; a dead load per roof area divided by cos theta */
	double vertical;
	double normal;   /* N per metre of slope, across the rafter: wind */
};

struct rafter_point {
	double x;        /* horizontal, from the lower support, m */
	double vertical; /* N */
	double normal;   /* N, across the rafter */
};

struct rafter {
	double span;     /* horizontal, m */
	double theta;    /* slope, rad, 0 to below pi/2 */
	double depth;    /* d of the member, m: shear counts from this far off a support */
	size_t uniforms, points; /* together at most BEAM_LOAD_MAX */
	const struct rafter_uniform *uniform;
	const struct rafter_point *point;
};

struct rafter_forces {
	double slope_length;               /* span / cos theta, m */
	struct beam_peak sagging, hogging; /* N m; x horizontal */
	/* largest moments of either sign at the point loads, N m; 0 where there is none */
	double sagging_at_point, hogging_at_point;
	/* moment at either end if the rafter ran on there without turning, N m, sagging positive: of
	   equal spans under equal loads the inner support's; of unequal ones it lies between theirs */
	double held_lower, held_upper;
	struct beam_peak moment;           /* the larger in magnitude */
	double V;                          /* design shear across the member, |N|: NDS 3.4.3.1 */
	double lower, upper;               /* reactions across the member, N */
	double axial;                      /* vertical loads along the member, N: down the slope */
};

/* False when the rafter makes no sense or loads are too many. */
bool rafter_solve(const struct rafter *rafter, struct rafter_forces *out);
/* Largest deflection across the member, signed, m; x horizontal. EI in N m2. False as above. */
bool rafter_deflect(const struct rafter *rafter, double EI, struct beam_peak *out);
/* The moment at x by superposition, each load a line of the trace: a second way to the same
   number. */
double rafter_moment_at(struct trace *trace, const struct rafter *rafter, double x);
/* The deflection at x (horizontal) likewise; E' and I apart, so that the lines can be read. */
double rafter_deflection_at(struct trace *trace, const struct rafter *rafter, double E, double I,
                            double x);

/* Vertical line load on one rafter per horizontal metre from a pressure on plan (snow, live) or on
   the slope (dead), N/m. */
double rafter_line_load_plan(struct trace *trace, double pressure, double spacing);
double rafter_line_load_slope(struct trace *trace, double pressure, double spacing, double theta);

#endif
