/* SPDX-License-Identifier: MIT */
#include "report/fastener_report.h"

#include <math.h>

#include "report/caution.h"
#include "report/json_value.h"

static const char *kind_word(enum fastener_kind kind)
{
	switch (kind) {
	case FASTENER_WOOD_SCREW:
		return "wood-screw";
	case FASTENER_HANGER_BOLT:
		return "hanger-bolt";
	case FASTENER_THROUGH_BOLT:
		return "through-bolt";
	case FASTENER_SHEET_SCREW:
		return "sheet-screw";
	case FASTENER_LAG_SCREW:
	case FASTENER_STRUCTURAL_SCREW:
	case FASTENER_SEAM_CLAMP:
	case FASTENER_DECK_MOUNT:
		break;
	}
	return "lag-screw";
}

/* What the row's second measure is; NULL where there is none. */
static const char *length_word(enum fastener_kind kind)
{
	if (kind == FASTENER_SHEET_SCREW)
		return NULL;
	if (kind == FASTENER_THROUGH_BOLT)
		return "washer";
	return kind == FASTENER_HANGER_BOLT ? "wood thread" : "length";
}

static void add_question(struct json *j, json_t *root, const struct fastener_question *q)
{
	json_t *o = put_object(j, root, "question");

	put_text(j, o, "kind", kind_word(q->kind));
	put_text(j, o, "method", q->lrfd ? "lrfd" : "asd");
	put_quantity(j, o, "uplift", q->uplift, UNIT_LB);
	put_quantity(j, o, "slope", q->slope, UNIT_LB);
	put_number(j, o, "CD", q->lrfd ? (double)NAN : q->CD);
	put_number(j, o, "lambda", q->lrfd ? q->lambda : (double)NAN);
	put_int(j, o, "count", q->count);
	put_text(j, o, "species", q->species);
	put_number(j, o, "G", q->G);
	put_bool(j, o, "wet", q->wet);
	put_quantity(j, o, "breadth", q->breadth, UNIT_IN);
	put_quantity(j, o, "depth", q->depth, UNIT_IN);
	put_quantity(j, o, "plate", q->plate, UNIT_IN);
	put_quantity(j, o, "layers", q->layers, UNIT_IN);
	put_quantity(j, o, "gap", q->gap, UNIT_IN);
	put_quantity(j, o, "height", q->height, UNIT_IN);
	put_quantity(j, o, "arm", q->arm, UNIT_IN);
	put_quantity(j, o, "tolerance", q->tolerance, UNIT_IN);
	put_quantity(j, o, "temperature", q->temperature, UNIT_DEG_F);
	put_quantity(j, o, "spacing", q->spacing, UNIT_IN);
	put_quantity(j, o, "end_distance", q->end_distance, UNIT_IN);
	put_quantity(j, o, "steel", q->steel_thickness, UNIT_IN);
	put_quantity(j, o, "Fu", q->steel_strength, UNIT_KSI);
}

static void add_rows(struct json *j, json_t *root, const struct fastener_table *t,
		     enum fastener_kind kind)
{
	json_t *array = put_array(j, root, "screws");

	for (int i = 0; i < t->rows && !j->failed; i++) {
		const struct fastener_row *r = &t->row[i];
		json_t *o = append_object(j, array);
		const bool rated = r->ratio >= 0; /* false for NAN */

		put_quantity(j, o, "diameter", r->D, UNIT_IN);
		put_text(j, o, "length_is", length_word(kind));
		put_quantity(j, o, "length", r->L, UNIT_IN);
		put_quantity(j, o, "thread_in_wood", r->p_t, UNIT_IN);
		put_quantity(j, o, "pull", rated ? r->Wp : (double)NAN, UNIT_LB);
		put_quantity(j, o, "side", rated ? r->Z : (double)NAN, UNIT_LB);
		put_number(j, o, "ratio", r->ratio);
		put_quantity(j, o, "lead_hole_low", r->lead_low, UNIT_IN);
		put_quantity(j, o, "lead_hole_high", r->lead_high, UNIT_IN);
		put_bool(j, o, "point_comes_out", r->through);
		put_bool(j, o, "holds", r->state == FASTENER_STATE_HOLDS);
		put_text(j, o, "words", fastener_state_words(r->state));
		put_text(j, o, "governs", rated ? check_words(r->governs) : NULL);
		put_text(j, o, "why_not_rated", r->why);
	}
}

static void add_misses(struct json *j, json_t *root, const struct fastener_table *t)
{
	json_t *array = put_array(j, root, "misses");

	for (int i = 0; i < t->misses && !j->failed; i++)
		for (int k = 0; k < MISS_MAX && !j->failed; k++) {
			const struct miss_row *m = &t->miss[i];
			json_t *o = append_object(j, array);

			put_quantity(j, o, "diameter", m->D, UNIT_IN);
			put_quantity(j, o, "off_center", t->miss_by[k], UNIT_IN);
			put_quantity(j, o, "edge", m->edge[k], UNIT_IN);
			put_bool(j, o, "permitted", m->state[k] == MISS_KEEPS);
			put_text(j, o, "words", miss_state_words(m->state[k]));
		}
}

/* null where the question is not one of withdrawal from wood */
static void add_nail(struct json *j, json_t *root, const struct fastener_nail *n)
{
	if (!(n->D > 0)) {
		put(j, root, "nail", json_null());
		return;
	}
	json_t *o = put_object(j, root, "nail");

	put_quantity(j, o, "diameter", n->D, UNIT_IN);
	put_quantity(j, o, "length", n->L, UNIT_IN);
	put_quantity(j, o, "in_wood", n->p, UNIT_IN);
	put_quantity(j, o, "withdrawal", n->pull, UNIT_LB);
	put_text(j, o, "words", "for comparison only: no foot is rated on nails");
}

int json_fastener_write(FILE *f, const void *what)
{
	const struct fastener_list *list = what;
	struct json j;
	json_t *root = json_begin(&j, "fastener", list->units);

	if (root) {
		add_question(&j, root, &list->question);
		add_rows(&j, root, &list->table, list->question.kind);
		add_misses(&j, root, &list->table);
		add_nail(&j, root, &list->table.nail);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}
