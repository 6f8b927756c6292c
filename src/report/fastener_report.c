/* SPDX-License-Identifier: MIT */
#include "report/fastener_report.h"

#include <math.h>

#include "report/caution.h"
#include "report/fastener_words.h"

#define COLUMNS(c) (int)(sizeof(c) / sizeof *(c))

static const char *short_words(enum fastener_state s)
{
	static const char *const words[FASTENER_STATE_COUNT] = {"holds", "fails", "too short",
								"no room", "not rated"};

	return words[s];
}

static const char *lead_hole(const struct format *f, const struct fastener_row *r)
{
	if (isnan(r->lead_low))
		return "none asked";
	if (!(r->lead_high > r->lead_low)) /* one size: as near below as a bit comes */
		return fastener_bit_text(f, r->lead_high, false);
	return document_text(f->document, "%s to %s", fastener_bare_text(f, fastener_bit_text(f, r->lead_low, true)),
			     fastener_bit_text(f, r->lead_high, false));
}

static void add_load(const struct format *f, const struct fastener_question *q)
{
	document_pair(f->document, "on one foot", "", "%s off the roof and %s down the slope, together",
		      show(f, q->uplift, UNIT_LB), show(f, q->slope, UNIT_LB));
	if (q->kind == FASTENER_SHEET_SCREW)
		document_pair(f->document, "method", "", "%s",
			      q->lrfd ? "LRFD: the load is factored" : "ASD");
	else if (q->lrfd)
		document_pair(f->document, "method", "",
			      "LRFD: the load is factored; time effect factor %s",
			      show_factor(f, q->lambda, 2));
	else
		document_pair(f->document, "method", "", "ASD, load duration factor %s",
			      show_factor(f, q->CD, 2));
}

static void add_rafter(const struct format *f, const struct fastener_question *q)
{
	struct document *d = f->document;

	document_pair(d, "wood", "", "%s%sspecific gravity %s, %s", q->species ? q->species : "",
		      q->species ? ", " : "", show_factor(f, q->G, 2),
		      q->wet ? "wet in service" : "dry");
	if (!isnan(q->temperature))
		document_pair(d, "the wood keeps", "", "%s", show(f, q->temperature, UNIT_DEG_F));
	document_pair(d, "rafter", "", "%s by %s", fastener_size_text(f, q->breadth), fastener_size_text(f, q->depth));
	document_pair(d, "above the rafter", "",
		      "steel plate %s, then %s, of which %s give no side bearing",
		      show(f, q->plate, UNIT_IN), show(f, q->layers, UNIT_IN),
		      show(f, q->gap, UNIT_IN));
}

static void add_question(const struct format *f, const struct fastener_question *q)
{
	struct document *d = f->document;

	document_pairs(d);
	add_load(f, q);
	document_pair(d, "in the foot", "", "%d%s%s%s", q->count, q->count > 1 ? ", " : "",
		      q->count > 1 ? show(f, q->spacing, UNIT_IN) : "",
		      q->count > 1 ? " apart along the rafter" : "");
	if (!isnan(q->end_distance))
		document_pair(d, "to the rafter's end", "", "%s", show(f, q->end_distance, UNIT_IN));
	if (q->kind == FASTENER_SHEET_SCREW)
		document_pair(d, "steel", "", "plate %s on steel %s thick, Fu %s",
			      show(f, q->plate, UNIT_IN), show(f, q->steel_thickness, UNIT_IN),
			      isnan(q->steel_strength) ? "taken as 45 ksi (310 MPa)"
						       : show(f, q->steel_strength, UNIT_KSI));
	else
		add_rafter(f, q);
	if (q->height > 0)
		document_pair(d, "standoff", "", "%s high%s%s%s", show(f, q->height, UNIT_IN),
			      isnan(q->arm) ? "" : "; ",
			      isnan(q->arm) ? "" : show(f, q->arm, UNIT_IN),
			      isnan(q->arm) ? "" : " from the screw to the compressed edge");
	if (q->kind != FASTENER_SHEET_SCREW)
		document_pair(d, "holes", "", "may miss the rafter's centre by %s",
			      show(f, q->tolerance, UNIT_IN));
}

/* One row: what a kind does not have has no column. */
static void add_row(const struct format *f, const struct fastener_list *list, const struct fastener_row *r)
{
	const enum fastener_kind kind = list->question.kind;
	const bool rated = !isnan(r->ratio);

	document_row(f->document);
	document_cell(f->document, "%s", fastener_screw_text(f, kind, r));
	document_cell(f->document, "%s", rated ? show_ratio(f, r->ratio) : "-");
	document_cell(f->document, "%s%s", short_words(r->state), r->through ? "*" : "");
	document_cell(f->document, "%s", rated ? show_rounded(f, r->Wp, UNIT_LB, SHOW_DOWN) : "-");
	document_cell(f->document, "%s", rated ? show_rounded(f, r->Z, UNIT_LB, SHOW_DOWN) : "-");
	if (kind == FASTENER_THROUGH_BOLT || kind == FASTENER_SHEET_SCREW)
		return;
	document_cell(f->document, "%s",
		      isnan(r->p_t) ? "-" : show_rounded(f, r->p_t, UNIT_IN, SHOW_DOWN));
	document_cell(f->document, "%s", lead_hole(f, r));
}

static void add_rows(const struct format *f, const struct fastener_list *list)
{
	const enum fastener_kind kind = list->question.kind;
	const bool plain = kind == FASTENER_THROUGH_BOLT || kind == FASTENER_SHEET_SCREW;
	/* on a narrow screen the first three stand together */
	const struct column columns[] = {
		{fastener_kind_text(kind).size, ALIGN_LEFT, true, false},
		{"ratio", ALIGN_RIGHT, false, false},
		{"verdict", ALIGN_LEFT, false, false},
		{"pull", ALIGN_RIGHT, false, false},
		{"side", ALIGN_RIGHT, false, false},
		{"thread in", ALIGN_RIGHT, false, false},
		{"lead hole", ALIGN_LEFT, false, false},
	};

	document_table(f->document, columns, plain ? COLUMNS(columns) - 2 : COLUMNS(columns));
	for (int i = 0; i < list->table.rows; i++)
		add_row(f, list, &list->table.row[i]);
}

static void add_misses(const struct format *f, const struct fastener_list *list)
{
	const struct fastener_table *t = &list->table;
	struct column columns[2 + MISS_MAX] = {
		{fastener_kind_text(list->question.kind).one, ALIGN_LEFT, true, false},
		{"may miss by", ALIGN_RIGHT, false, false}};

	if (t->misses == 0)
		return;
	document_add(f->document, BLOCK_HEADING, 1, "A hole that misses the rafter's centre");
	for (int i = 0; i < MISS_MAX; i++)
		columns[2 + i] = (struct column){
			document_text(f->document, "off by %s", fastener_size_text(f, t->miss_by[i])), ALIGN_LEFT,
			false, true};
	document_table(f->document, columns, COLUMNS(columns));
	for (int i = 0; i < t->misses; i++) {
		const struct miss_row *m = &t->miss[i];

		document_row(f->document);
		document_cell(f->document, "%s",
			      fastener_diameter_text(f, list->question.kind, m->D, true));
		document_cell(f->document, "%s",
			      show_rounded(f, fmax(0, m->room), UNIT_IN, SHOW_DOWN));
		for (int k = 0; k < MISS_MAX; k++)
			document_cell(f->document, "%s", miss_state_words(m->state[k]));
	}
	document_add(f->document, BLOCK_PARAGRAPH, 0,
		     "The edge distance 1.5 D (NDS-2018 Tables 12.5.1C, 12.5.1E) is met or failed: "
		     "no smaller load buys it. "
		     "A failed hole is filled and sealed, and the foot goes to a fresh place.");
}

/* Why sizes are not rated, each reason once. */
static void add_reasons(const struct format *f, const struct fastener_list *list)
{
	const char *last = NULL;

	for (int i = 0; i < list->table.rows; i++) {
		const struct fastener_row *r = &list->table.row[i];

		if (r->state != FASTENER_STATE_UNRATED || !r->why || r->why == last)
			continue;
		document_add(f->document, BLOCK_BULLET, 0, "%s: %s",
			     fastener_screw_text(f, list->question.kind, r), r->why);
		last = r->why;
	}
}

/* Nothing holds: how near it comes, and whether it is the gap that costs the side load. */
static void add_none(const struct format *f, const struct fastener_list *list)
{
	const struct fastener_table *t = &list->table;
	const enum fastener_kind kind = list->question.kind;

	document_add(f->document, BLOCK_VERDICT, 0, "NONE HOLDS. No %s of this list carries the load.",
		     fastener_kind_text(kind).one);
	if (t->nearest < 0)
		return;
	const struct fastener_row *r = &t->row[t->nearest];

	document_add(f->document, BLOCK_PARAGRAPH, 0, "Nearest of those that fit: %s, ratio %s (%s).",
		     fastener_screw_text(f, kind, r), show_ratio(f, r->ratio), check_words(r->governs));
	if (!(t->Z_bearing > 1.5 * r->Z))
		return;
	document_add(f->document, BLOCK_PARAGRAPH, 0,
		     "The side load collapses: %s that give no bearing between %s and wood leave it %s; "
		     "bearing on the wood it would carry %s. Let the foot bear on the rafter, or on a "
		     "solid block that fills the gap and is itself fixed to the rafter.",
		     show(f, list->question.gap + (kind == FASTENER_HANGER_BOLT ? list->question.height : 0),
			  UNIT_IN),
		     kind == FASTENER_HANGER_BOLT ? "the line of the force" : "plate",
		     show_rounded(f, r->Z, UNIT_LB, SHOW_DOWN),
		     show_rounded(f, t->Z_bearing, UNIT_LB, SHOW_DOWN));
}

static void add_nail(const struct format *f, const struct fastener_list *list)
{
	const struct fastener_nail *n = &list->table.nail;

	if (n->D > 0)
		document_add(f->document, BLOCK_PARAGRAPH, 0,
			     "For comparison only: a 16d common nail (%s x %s) through the same layers, %s in "
			     "the wood, carries %s in withdrawal (NDS-2018 Eq. 12.2-3). No foot is rated on "
			     "nails: wood that dries round a nail lets go of it (our rule).",
			     fastener_bare_text(f, show(f, n->D, UNIT_IN)), fastener_size_text(f, n->L),
			     show_rounded(f, n->p, UNIT_IN, SHOW_DOWN),
			     show_rounded(f, n->pull, UNIT_LB, SHOW_DOWN));
}

void fastener_report_build(struct document *d, const struct fastener_list *list)
{
	const struct format f = {.document = d, .units = list->units};
	const struct fastener_table *t = &list->table;
	const struct fastener_kind_words words = fastener_kind_text(list->question.kind);

	document_add(d, BLOCK_TITLE, 0, "%s", words.title);
	if (t->least < 0)
		add_none(&f, list);
	else
		document_add(d, BLOCK_VERDICT, 0,
			     "The thinnest and then shortest that holds: %s, ratio %s (%s).",
			     fastener_screw_text(&f, list->question.kind, &t->row[t->least]),
			     show_ratio(&f, t->row[t->least].ratio),
			     check_words(t->row[t->least].governs));
	add_question(&f, &list->question);
	add_rows(&f, list);
	add_reasons(&f, list);
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Pull and side: what one carries, by the method named. fails: loaded above that; "
		     "no room: the edge distance 1.5 D cannot be kept with holes that may miss by so "
		     "much; not rated: outside the published tables. *: the point comes out below.");
	document_add(d, BLOCK_PARAGRAPH, 0, "%s", fastener_basis(list->question.kind));
	add_nail(&f, list);
	add_misses(&f, list);
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "The rafter, the foot and the covering are not checked here.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
