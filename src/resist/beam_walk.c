/* SPDX-License-Identifier: MIT */
/* Piecewise walk along a loaded beam: plain integration of load to shear to moment, started anew
   from the known moment at each support, so that rounding does not add up over many spans. */
#include "resist/beam_walk.h"

#include <assert.h>
#include <math.h>

/* Insertion: loads come nearly in order, and there are few. */
static void insert(struct beam_events *events, double x, double dw, double P)
{
	size_t i = events->count++;

	assert(i < sizeof events->at / sizeof events->at[0]);
	for (; i > 0 && events->at[i - 1].x > x; i--)
		events->at[i] = events->at[i - 1];
	events->at[i] = (struct beam_event){ x, dw, P };
}

void beam_events_fill(const struct beam *beam, struct beam_events *events)
{
	events->count = 0;
	for (size_t i = 0; i < beam->uniforms; i++) {
		const struct beam_uniform *u = &beam->uniform[i];
		const double x0 = fmax(u->x0, beam->start), x1 = fmin(u->x1, beam->end);

		if (x0 < x1) {
			insert(events, x0, u->w, 0.0);
			insert(events, x1, -u->w, 0.0);
		}
	}
	for (size_t i = 0; i < beam->points; i++) {
		const struct beam_point *p = &beam->point[i];

		if (p->x >= beam->start && p->x <= beam->end)
			insert(events, p->x, 0.0, p->P);
	}
}

void beam_walk_begin(struct beam_walk *walk, const struct beam *beam,
                     const struct beam_forces *forces, const struct beam_events *events)
{
	*walk = (struct beam_walk){
		.beam = beam, .forces = forces, .events = events, .x = beam->start
	};
}

/* Takes up everything that acts at the present place. */
static void arrive(struct beam_walk *walk)
{
	const struct beam *b = walk->beam;
	const struct beam_events *e = walk->events;

	if (walk->field < b->supports && b->support[walk->field] <= walk->x) {
		walk->M = walk->forces->moment[walk->field];
		walk->V += walk->forces->reaction[walk->field];
		walk->field++;
	}
	for (; walk->event < e->count && e->at[walk->event].x <= walk->x; walk->event++) {
		walk->w += e->at[walk->event].dw;
		walk->V -= e->at[walk->event].P;
	}
}

/* fmin of numbers, without a call. */
static double lesser(double a, double b)
{
	return a < b ? a : b;
}

bool beam_walk_next(struct beam_walk *walk, struct beam_piece *piece)
{
	const struct beam *b = walk->beam;
	double next;

	arrive(walk);
	if (!(walk->x < b->end))
		return false;
	next = b->end;
	if (walk->field < b->supports)
		next = lesser(next, b->support[walk->field]);
	if (walk->event < walk->events->count)
		next = lesser(next, walk->events->at[walk->event].x);
	*piece = (struct beam_piece){ .field = walk->field, .x = walk->x, .length = next - walk->x,
	                              .w = walk->w, .V = walk->V, .M = walk->M };
	walk->M = beam_piece_moment(piece, piece->length);
	walk->V = beam_piece_shear(piece, piece->length);
	walk->x = next;
	return true;
}
