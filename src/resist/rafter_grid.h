/* SPDX-License-Identifier: MIT */
/* One span of a rafter under many loadings at the same places: rafter.h over beam_grid.h. */
#ifndef RP_RESIST_RAFTER_GRID_H
#define RP_RESIST_RAFTER_GRID_H

#include "resist/beam_grid.h"
#include "resist/rafter.h"

/* Shares of a unit load: in the design shear at either end, in the moments of ends held. */
struct rafter_unit {
	double low, high, held_lower, held_upper;
};

struct rafter_grid {
	struct beam_grid beam; /* along the slope, two supports, no overhang */
	double cos_theta, depth;
	struct rafter_unit line[BEAM_CUT_MAX], force[BEAM_CUT_MAX];
};

/* Once the beam's cuts stand there. */
void rafter_grid_ready(struct rafter_grid *g, double theta, double depth);
/* As rafter_solve; w and P act across the rafter, feet lists the cuts that bear a foot. The axial
   force is left out. */
void rafter_grid_solve(const struct rafter_grid *g, const double *w, const double *P,
		       const size_t *feet, size_t count, struct rafter_forces *out,
		       struct beam_pieces *pieces);

#endif
