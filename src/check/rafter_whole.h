/* SPDX-License-Identifier: MIT */
/* A rafter as one beam over all its supports, its tails beyond the walls as cantilevers: what
   single spans cannot show. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_WHOLE_H
#define RP_CHECK_RAFTER_WHOLE_H

#include "check/rafter_load.h"
#include "resist/beam.h"

#define WHOLE_PIECES 12

struct rafter_whole {
	int pieces, supports;
	bool low_tail, high_tail;     /* the first, the last piece lies outside the wall */
	bool low_loaded, high_loaded; /* and the array loads it */
	struct rafter_place
		piece[WHOLE_PIECES];  /* from the eave up; an overhang is a piece of its own */
	double support[WHOLE_PIECES]; /* along the slope from the lower wall, m */
};

/* False where single spans show all there is: one span, and nothing of the array on its tails. */
bool rafter_whole_lay(const struct context *c, const struct pass *pass, int rafter,
		      struct rafter_whole *out);
/* True if the array, a foot or snow that the array moves comes onto a tail. */
bool rafter_tail_loaded(const struct context *c, const struct pass *pass,
			const struct rafter_place *tail);
/* Depth over the wall under a tail: measured, or the least that the code leaves there. */
double rafter_tail_depth(const struct context *c);
/* Whether members square to the ridge are spared the partial loading of 7.5 on this roof. */
bool rafter_partial_spared(const struct context *c);

struct whole_beam {
	struct beam beam;
	struct beam_uniform uniform[BEAM_LOAD_MAX];
	struct beam_point point[BEAM_LOAD_MAX];
	struct beam_pieces pieces; /* once it is solved */
};

/* Adds the loads of a piece that begins `from` up the slope, turned square to it; a force right at its
   start only if owns_start. False where there are too many. */
bool whole_beam_take(struct whole_beam *b, const struct rafter_loads *l, double from,
		     double cos_theta, bool owns_start);

/* The loads of one case, piece by piece: off[i] is the part of the snow that piece i is spared
   (NULL: none), ice the load on tails, Pa on plan. False if there are too many. */
bool rafter_whole_load(struct context *c, const struct pass *pass, const struct rafter_whole *w,
		       struct rafter_case load, const double off[], double ice,
		       struct whole_beam *out);

/* Rates the rafter under every case; keeps the worst of each kind in check[]. pattern: what the
   snow does in the worst case of CHECK_RAFTER_PARTIAL, an index for span_pattern_text, -1 for none.
   target NULL, or the check whose case is to be traced once. */
void rafter_whole_rate(struct context *c, const struct pass *pass, int rafter, bool array,
		       struct check_value check[CHECK_COUNT], int *pattern,
		       const struct check_value *target, enum check_id governs,
		       struct trace *trace);

#endif
