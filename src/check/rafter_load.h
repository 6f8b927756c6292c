/* SPDX-License-Identifier: MIT */
/* What stands, lies and blows on one span of one rafter. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_LOAD_H
#define RP_CHECK_RAFTER_LOAD_H

#include "check/context.h"
#include "resist/rafter.h"

/* One span of one rafter, on plan from the outer wall face. */
struct rafter_place {
	int rafter;         /* index into result.frame_x */
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
	double snow_off;    /* part of the snow that is left out on this span: 0.5 on the light spans of 7.5 */
	bool bow;           /* how far a tail bends under a service load is asked, not its stress */
	bool tails_only;    /* the spans between the walls bear nothing */
	bool under;         /* an overhang feels the wind below it too; without, its lift relieves no other span */
	int quake;          /* horizontal part of the earthquake: 1 toward the eave, -1 toward the ridge, 0 none */
};

struct rafter_loads {
	struct rafter rafter;
	struct rafter_uniform uniform[BEAM_LOAD_MAX / 2];
	struct rafter_point point[BEAM_LOAD_MAX / 2];
};

/* Of roof that a rafter carries, half way to its neighbours, m. */
double rafter_width(const struct context *c, int rafter);
/* Rafters with one number stand in the same zones and are equally wide: the wind on them is the same. */
int rafter_column(struct context *c, int rafter);
/* Wind on a piece of a rafter at factor 1: pressing, lifting, or lifting an overhang from below too; share of its width lies
   under the array. */
const struct wind_memo *rafter_wind(struct context *c, const struct rafter_place *p, double share, bool lift, bool under);
/* The worst of it on a piece that no collector covers, Pa, down positive; traces how it comes about. */
double rafter_wind_tell(struct context *c, const struct rafter_place *p, double share, bool lift, struct trace *trace);
/* Traces the line load of one case on such a piece (rafter_tell.c). */
void rafter_tell_load(struct context *c, const struct rafter_place *p, const struct rafter_case *k, struct trace *trace);
/* y up the slope from the eave edge, as the way on plan from the outer face of the lower wall, m. */
static inline double rafter_on_plan(const struct context *c, double y)
{
	return y * c->cos_theta - c->job->building.eave_overhang;
}
/* Share of the rafter's width under the array. */
double rafter_covered(const struct context *c, const struct rafter_place *p);
/* Spans of a rafter that carry feet, or the first if none do; returns how many. */
int rafter_places(const struct context *c, const struct pass *pass, int rafter, struct rafter_place *out, int max);
/* The next support above one at `start`, m from the wall: where the job says that one stands, else a span on. */
double rafter_next_support(const struct context *c, double start, double run, double span);
/* Part of the force of a foot at a place (index into result.place) that comes onto a rafter, sharing by the deck included. */
double rafter_share(const struct context *c, int place, int rafter);
/* True if a foot of this rafter stands on the tail outside the wall. */
bool rafter_on_tail(const struct context *c, const struct attachment *a);
/* Fills out (its pointers point into itself). */
void rafter_load(struct context *c, const struct pass *pass, const struct rafter_place *place,
                 const struct rafter_case *k, struct rafter_loads *out);

#endif
