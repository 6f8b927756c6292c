/* SPDX-License-Identifier: MIT */
/* Listed sizes of one kind of fastener under one load of one foot. Sizes are those that a truck
   carries (common practice); what they hold is asked of the check (fastener_trial.c).

   Lag screws with the least thread of the standard shape, wood screws by their number, hanger bolts
   by their wood thread, through-bolts by the washer under the rafter, screws into steel by their
   number. */
#include "check/fastener_table.h"

#include <math.h>

#include "check/fastener_nail.h"
#include "check/fastener_trial.h"
#include "quantity/quantity.h"
#include "resist/lag_screw.h"

#define SIZE_MAX_COUNT 8
struct sizes {
	int diameters, lengths;
	double diameter_in[SIZE_MAX_COUNT];
	double length_in[SIZE_MAX_COUNT];
};

static const struct sizes lag = {4, 8, {0.25, 0.3125, 0.375, 0.5}, {3, 3.5, 4, 4.5, 5, 6, 7, 8}};
/* No. 8, 10, 12 and 14 */
static const struct sizes wood = {4, 6, {0.164, 0.190, 0.216, 0.242}, {2, 2.5, 3, 3.5, 4, 5}};
static const struct sizes hanger = {4, 6, {0.25, 0.3125, 0.375, 0.5}, {1.5, 2, 2.5, 3, 3.5, 4}};
static const struct sizes bolt = {4, 5, {0.25, 0.3125, 0.375, 0.5}, {0.75, 1, 1.25, 1.375, 1.5}};
/* No. 8, 10, 12 and 1/4 in */
static const struct sizes steel = {4, 1, {0.164, 0.190, 0.216, 0.250}, {NAN}};

static const struct sizes *sizes_of(enum fastener_kind kind)
{
	switch (kind) {
	case FASTENER_LAG_SCREW:
		return &lag;
	case FASTENER_WOOD_SCREW:
		return &wood;
	case FASTENER_HANGER_BOLT:
		return &hanger;
	case FASTENER_THROUGH_BOLT:
		return &bolt;
	case FASTENER_SHEET_SCREW:
		return &steel;
	case FASTENER_STRUCTURAL_SCREW:
	case FASTENER_SEAM_CLAMP:
	case FASTENER_DECK_MOUNT:
		return NULL;
	}
	return NULL;
}

bool fastener_kind_listed(enum fastener_kind kind)
{
	return sizes_of(kind) != NULL;
}

const char *fastener_state_words(enum fastener_state s)
{
	static const char *const words[FASTENER_STATE_COUNT] = {
		"holds", "overloaded", "too short: under the least penetration in the rafter",
		"no room: edge under 1.5 D", "not rated"};

	return words[s];
}

const char *miss_state_words(enum miss_state s)
{
	static const char *const words[MISS_STATE_COUNT] = {"keeps 1.5 D", "not permitted",
							    "breaks out", "misses the wood"};

	return words[s];
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

/* Of the sizes that fail by load alone. */
static void nearest(const struct fastener_question *q, struct check_workspace *w,
		    struct fastener_table *out)
{
	struct fastener_question bearing = *q;

	out->nearest = -1;
	out->Z_bearing = (double)NAN;
	if (out->least >= 0)
		return;
	for (int i = 0; i < out->rows; i++)
		if (out->row[i].state == FASTENER_STATE_OVERLOADED && isfinite(out->row[i].ratio) &&
		    (out->nearest < 0 || out->row[i].ratio < out->row[out->nearest].ratio))
			out->nearest = i;
	if (out->nearest < 0 || q->kind == FASTENER_SHEET_SCREW)
		return;
	const struct fastener_row *r = &out->row[out->nearest];

	/* the same thread in the wood: only the gap goes */
	bearing.gap = 0;
	if (q->kind == FASTENER_HANGER_BOLT)
		bearing.height = 0;
	fastener_trial_begin(&bearing, w);
	out->Z_bearing = fastener_trial(&bearing, w, r->D, r->L).Z;
}

void fastener_table_fill(const struct fastener_question *q, struct check_workspace *w,
			 struct fastener_table *out)
{
	const struct sizes *s = sizes_of(q->kind);

	out->rows = out->misses = 0;
	out->least = -1;
	for (int i = 0; i < MISS_MAX; i++)
		out->miss_by[i] = i * M_PER_IN / 4;
	fastener_trial_begin(q, w);
	for (int d = 0; d < s->diameters; d++) {
		const double D = s->diameter_in[d] * M_PER_IN;

		if (q->kind != FASTENER_SHEET_SCREW)
			out->miss[out->misses++] = misses(q, D, out->miss_by);
		for (int l = 0; l < s->lengths; l++) {
			out->row[out->rows] = fastener_trial(q, w, D, s->length_in[l] * M_PER_IN);
			if (out->least < 0 && out->row[out->rows].state == FASTENER_STATE_HOLDS)
				out->least = out->rows;
			out->rows++;
		}
	}
	nearest(q, w, out);
	out->nail = fastener_nail_compare(q);
}
