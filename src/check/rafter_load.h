/* SPDX-License-Identifier: MIT */
/* What stands, lies and blows on one span of one rafter. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_LOAD_H
#define RP_CHECK_RAFTER_LOAD_H

#include "check/context.h"
#include "resist/rafter.h"

/* One span of one rafter, on plan from the outer wall face. */
struct rafter_place {
	int rafter;         /* index into result.rafter_x */
	double start, length;
	double width;       /* of roof that it carries */
};

/* One load case: a combination, a snow case and a direction of the wind. */
struct rafter_case {
	const struct load_combination *k;
	double roof_snow;   /* Pa on plan on the bare roof */
	int snow_case;      /* index into context.snow.snow for the array; -1: none */
	bool lift;          /* the wind lifts (0.6D + 0.6W), else it presses */
	bool array;         /* the array stands */
};

struct rafter_loads {
	struct rafter rafter;
	struct rafter_uniform uniform[BEAM_LOAD_MAX / 2];
	struct rafter_point point[BEAM_LOAD_MAX / 2];
};

/* Spans of a rafter that carry feet, or the first if none do; returns how many. */
int rafter_places(const struct context *c, const struct pass *pass, int rafter, struct rafter_place *out, int max);
/* True if a foot of this rafter stands on the tail outside the wall. */
bool rafter_on_tail(const struct context *c, const struct attachment *a);
/* Fills out (its pointers point into itself). */
void rafter_load(struct context *c, const struct pass *pass, const struct rafter_place *place,
                 const struct rafter_case *k, struct rafter_loads *out);

#endif
