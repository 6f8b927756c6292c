/* SPDX-License-Identifier: MIT */
/* Walks a loaded beam from left to right in pieces on which the line load is constant, so that
   shear is linear, moment quadratic and deflection of the fourth degree. Shared by beam.c,
   beam_bow.c and rafter.c; private to this room. */
#ifndef RP_RESIST_BEAM_WALK_H
#define RP_RESIST_BEAM_WALK_H

#include <stdbool.h>
#include <stddef.h>

#include "resist/beam.h"

/* Where a load begins, ends or acts: the line load grows by dw, a point load P acts. */
struct beam_event {
	double x, dw, P;
};

struct beam_events {
	size_t count;
	struct beam_event at[2 * BEAM_LOAD_MAX]; /* a uniform load has two, a point load one */
};

/* Loads of a beam, cut to its length, in order of x. */
void beam_events_fill(const struct beam *beam, struct beam_events *events);

/* Values only: a copy of a walk goes on from the same place. */
struct beam_walk {
	const struct beam *beam;
	const struct beam_forces *forces;
	const struct beam_events *events;
	size_t event, field;
	double x, w, V, M;
};

void beam_walk_begin(struct beam_walk *walk, const struct beam *beam,
                     const struct beam_forces *forces, const struct beam_events *events);
/* Next piece of length above 0; false at the end of the beam. */
bool beam_walk_next(struct beam_walk *walk, struct beam_piece *piece);

static inline double beam_piece_shear(const struct beam_piece *p, double s)
{
	return p->V - p->w * s;
}

static inline double beam_piece_moment(const struct beam_piece *p, double s)
{
	return p->M + s * (p->V - p->w * s / 2.0);
}

#endif
