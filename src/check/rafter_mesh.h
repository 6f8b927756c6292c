/* SPDX-License-Identifier: MIT */
/* The loads of one rafter in every load case, on one mesh: they begin, end and act at the same
   places in all of them. What rafter_load.h lists load by load, for a trace and as the second
   method of the tests. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_MESH_H
#define RP_CHECK_RAFTER_MESH_H

#include "check/rafter_whole.h"

#define FOOT_ROOM (BEAM_LOAD_MAX / 2)

/* One foot of the array on this rafter. */
struct mesh_foot {
	size_t cut;
	int piece;
	double area; /* m2 of array that comes onto this rafter */
	double p_up, p_down, tip, y_high;
};

/* A rafter, or one span of it, ready to be loaded. */
struct rafter_stage {
	const struct rafter_mesh *mesh;
	const struct rafter_place *piece;
	int pieces;
	bool array;           /* the array stands */
	bool tail[2];         /* the first, the last piece lies outside the wall */
	bool under[2];        /* the first, the last piece is a tail that the wind lifts from below too */
	double width, share;  /* of roof that it carries, m; part of that under the array */
	double live_share;    /* the same where it keeps people off the roof */
	double dead;          /* N per metre of plan */
	bool presses, lifts;  /* the winds that are known: */
	double press[BEAM_CUT_MAX], lift[BEAM_CUT_MAX]; /* Pa on the piece right of a cut */
	int feet;
	struct mesh_foot foot[FOOT_ROOM];
	size_t foot_cut[FOOT_ROOM];
	double w[BEAM_CUT_MAX], P[BEAM_CUT_MAX]; /* of the case under way, across the rafter: N/m, N */
};

/* The mesh of a span (supports 0) or of a rafter in pieces; NULL where its places are too many. */
const struct rafter_mesh *rafter_mesh_of(struct context *c, const struct rafter_place *piece,
					 int pieces, const double *support, int supports);
/* One span by itself. False where its places are too many: then loads go one by one. */
bool rafter_stage_span(struct context *c, const struct pass *pass, const struct rafter_place *span,
		       bool array, struct rafter_stage *s);
/* The rafter as one beam. */
bool rafter_stage_whole(struct context *c, const struct pass *pass, const struct rafter_whole *whole,
			bool array, struct rafter_stage *s);

/* Whether every load presses but in the cases that lift: roof, snow, people and wind down always do,
   feet where no tilted rack pulls at them. */
bool rafter_stage_presses(const struct rafter_stage *s);

/* Solves one case: of a span; of a whole rafter, off and ice as in rafter_whole_load. */
void rafter_stage_solve_span(struct context *c, struct rafter_stage *s, const struct rafter_case *k,
			     struct rafter_forces *out, struct beam_pieces *pieces);
/* Largest deflection of a span solved so, times EI. */
double rafter_stage_bow(const struct rafter_stage *s, const struct beam_pieces *pieces);
void rafter_stage_solve_whole(struct context *c, struct rafter_stage *s,
			      const struct rafter_case *k, const double off[], double ice,
			      struct whole_beam *out, struct beam_forces *forces);

#endif
