/* SPDX-License-Identifier: MIT */
/* Lag screws from 1/4 to 1/2 in, 3 to 8 in long, with the least thread of the standard shape, under
   one load of one foot. The same functions as the check runs:
   NDS-2018 12.1.4, 12.2.1, 12.3, 12.4.1, 12.5.1. */
#include "check/fastener_table.h"

#include <math.h>

#include "quantity/quantity.h"
#include "resist/combined.h"
#include "resist/lag_lateral.h"
#include "resist/standoff.h"

static const double diameter_in[] = {0.25, 0.3125, 0.375, 0.5};
static const double length_in[] = {3, 3.5, 4, 4.5, 5, 6, 7, 8};
#define DIAMETERS (int)(sizeof diameter_in / sizeof *diameter_in)
#define LENGTHS (int)(sizeof length_in / sizeof *length_in)

const char *fastener_state_words(enum fastener_state s)
{
	static const char *const words[FASTENER_STATE_COUNT] = {
		"holds", "overloaded", "too short: under 4 D in the rafter",
		"no room: edge under 1.5 D", "not rated"};

	return words[s];
}

const char *miss_state_words(enum miss_state s)
{
	static const char *const words[MISS_STATE_COUNT] = {"keeps 1.5 D", "not permitted",
							    "breaks out", "misses the wood"};

	return words[s];
}

static bool rate(const struct fastener_question *q, const struct lag_screw_geometry *g,
		 struct fastener_row *r)
{
	struct connection_factors k;
	struct lag_lateral lateral;
	double couple;

	if (!lag_withdrawal_covers(q->G, g->D) ||
	    !connection_factors_find(q->CD, q->wet, q->temperature, false, &k) ||
	    !lag_lateral_find(NULL, g, q->G, 0, q->plate, q->gap, &lateral) ||
	    !standoff_pull(NULL, q->slope, q->height, q->arm, &couple))
		return false;
	r->pull =
		q->uplift / q->count + couple; /* all of the couple on one screw, as in the check */
	r->side = q->slope / q->count;
	r->Wp = lag_withdrawal_capacity(NULL, lag_withdrawal(NULL, q->G, g->D), g->p_t, &k);
	r->Z = lateral_adjusted(NULL, lateral.yield.value, k.CD, k.CM_lateral, k.Ct, 1, 1,
				k.Ceg_lateral);
	const struct combined both =
		combined_check(NULL, r->pull * q->count, q->slope, q->count, r->Wp, r->Z);

	r->ratio = fmax(fmax(r->pull / r->Wp, r->side / r->Z),
			fmax(both.ratio, r->pull / lag_tension(NULL, g->Dr)));
	return true;
}

static struct fastener_row one(const struct fastener_question *q, double D, double L)
{
	struct fastener_row r = {.D = D,
				 .L = L,
				 .state = FASTENER_STATE_UNRATED,
				 .ratio = (double)NAN,
				 .lead_low = (double)NAN,
				 .lead_high = (double)NAN};
	struct lag_screw_geometry g;

	if (!lag_screw_geometry_find(NULL, D, L, (double)NAN, q->plate + q->layers, q->depth, &g))
		return r;
	r.p_t = g.p_t;
	r.through = g.through;
	if (!lag_lead_hole(NULL, D, q->G, &r.lead_low, &r.lead_high))
		r.lead_low = r.lead_high = (double)NAN;
	if (!at_least(g.p, lag_penetration_least(NULL, D))) {
		r.state = FASTENER_STATE_SHORT;
		return r;
	}
	if (!rate(q, &g, &r))
		return r;
	r.state = !lag_edge_fits(q->breadth, D, q->tolerance) ? FASTENER_STATE_NO_ROOM
		  : r.ratio <= 1                              ? FASTENER_STATE_HOLDS
							      : FASTENER_STATE_OVERLOADED;
	return r;
}

static enum miss_state missed(double b, double D, double by)
{
	if (lag_edge_fits(b, D, by))
		return MISS_KEEPS;
	if (at_most(by, b / 2 - D / 2))
		return MISS_EDGE;
	return at_least(by, b / 2 + D / 2) ? MISS_WOOD : MISS_BREAKS;
}

static struct miss_row misses(const struct fastener_question *q, double D,
			      const double by[MISS_MAX])
{
	struct miss_row m = {.D = D, .room = lag_edge_room(NULL, q->breadth, D)};

	for (int i = 0; i < MISS_MAX; i++) {
		m.edge[i] = q->breadth / 2 - by[i];
		m.state[i] = missed(q->breadth, D, by[i]);
	}
	return m;
}

void fastener_table_fill(const struct fastener_question *q, struct fastener_table *out)
{
	out->rows = out->misses = 0;
	out->least = -1;
	for (int i = 0; i < MISS_MAX; i++)
		out->miss_by[i] = i * M_PER_IN / 4;
	for (int d = 0; d < DIAMETERS; d++) {
		const double D = diameter_in[d] * M_PER_IN;

		out->miss[out->misses++] = misses(q, D, out->miss_by);
		for (int l = 0; l < LENGTHS; l++) {
			out->row[out->rows] = one(q, D, length_in[l] * M_PER_IN);
			if (out->least < 0 && out->row[out->rows].state == FASTENER_STATE_HOLDS)
				out->least = out->rows;
			out->rows++;
		}
	}
}
