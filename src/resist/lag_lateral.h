/* SPDX-License-Identifier: MIT */
/* A lag screw loaded sideways: steel plate on a rafter, touching it or across a gap. Puts the
   pieces of lag_screw.h and dowel.h together. */
#ifndef RP_RESIST_LAG_LATERAL_H
#define RP_RESIST_LAG_LATERAL_H

#include <stdbool.h>

#include "resist/dowel.h"
#include "resist/lag_screw.h"

struct lag_lateral {
	bool permitted; /* p is at least 4 D (NDS 12.1.4.6) */
	struct dowel_joint joint;
	struct dowel_yield yield;
};

/* Reference lateral value of screw s in wood of gravity G, load at theta to the grain, through a
   steel plate t thick whose underside stands `gap` above the rafter (0: it bears on the rafter or
   on a block fixed to it). False when the plate's steel or the joint is outside the published
   tables, or no wood is reached. The bearing length in the wood is the real one, so no further
   reduction for less than 8 D belongs to the result (that factor belongs to tabulated values). */
bool lag_lateral_find(struct trace *trace, const struct lag_screw_geometry *s, double G,
                      double theta, double t, double gap, struct lag_lateral *out);

/* Factor for a value read from a table made for 8 D: p/8D, 1 from 8 D on, 0 below 4 D. NDS Table
   12K footnote 3. */
double lag_penetration_factor(struct trace *trace, double p, double D);

#endif
