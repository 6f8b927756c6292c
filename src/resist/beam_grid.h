/* SPDX-License-Identifier: MIT */
/* One beam under many loadings whose loads begin, end and act at the same few places: what depends
   on the places alone is worked out once, each loading is then a number per piece and a force per
   cut. The same theory as beam.h, which is its second method in the tests. SI, signs as there. */
#ifndef RP_RESIST_BEAM_GRID_H
#define RP_RESIST_BEAM_GRID_H

#include "resist/beam.h"

#define BEAM_CUT_MAX 320
#define BEAM_GRID_SUPPORT_MAX 16

/* What a unit load does to the span it stands on, or to the overhang: reactions of the simple beam,
   6 EI times the rotations of its ends; of an overhang its moment about the support in turn_left. */
struct beam_unit {
	double left, right, turn_left, turn_right;
};

struct beam_grid {
	size_t supports, cuts;
	double support[BEAM_GRID_SUPPORT_MAX];
	double x[BEAM_CUT_MAX];           /* rising; the first is the start, the last the end */
	size_t at[BEAM_GRID_SUPPORT_MAX]; /* the cut of each support */
	struct beam_unit line[BEAM_CUT_MAX];  /* N/m on the piece right of cut i */
	struct beam_unit force[BEAM_CUT_MAX]; /* N at cut i */
};

/* Puts x among the cuts, in order; false if there is no room. Start with both ends as cuts. */
bool beam_grid_cut(struct beam_grid *g, double x);
/* Fills in the rest once start, end, supports and all cuts stand there. */
void beam_grid_ready(struct beam_grid *g);
/* The cut at x; g->cuts if there is none. */
size_t beam_grid_find(const struct beam_grid *g, double x);

/* w[i]: line load from cut i to the next; P[i]: force at cut i. Pieces as beam_solve_pieces leaves
   them, one from each cut to the next. */
void beam_grid_solve(const struct beam_grid *g, const double *w, const double *P,
		     struct beam_forces *out, struct beam_pieces *pieces);

#endif
