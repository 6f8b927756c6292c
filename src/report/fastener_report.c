/* SPDX-License-Identifier: MIT */
#include "report/fastener_report.h"

#include <math.h>
#include <string.h>

#include "report/caution.h"
#include "report/format.h"

#define COLUMNS(c) (int)(sizeof(c) / sizeof *(c))

/* Screw sizes to 1/16 in or 0.1 mm. */
static const char *size(const struct format *f, double si)
{
	char text[64];

	if (f->units == SYSTEM_US)
		return document_text(f->document, "%s",
				     tape_print(text, sizeof text, si, SYSTEM_US, 16));
	return document_text(f->document, "%s", quantity_print(text, sizeof text, si, UNIT_MM, 1));
}

/* Drill bits to 1/64 in or 0.1 mm, inward at both ends so that no bit outside the range is read. */
static const char *bit(const struct format *f, double si, bool smallest)
{
	const double step = f->units == SYSTEM_US ? M_PER_IN / 64 : 0.0001;
	const double steps = smallest ? ceil(si / step - 1e-6) : floor(si / step + 1e-6);
	char text[64];

	if (f->units == SYSTEM_US)
		return document_text(f->document, "%s",
				     tape_print(text, sizeof text, steps * step, SYSTEM_US, 64));
	return document_text(f->document, "%s",
			     quantity_print(text, sizeof text, steps * step, UNIT_MM, 1));
}

/* "5/16 x 3-1/2 in" */
static const char *screw(const struct format *f, const struct fastener_row *r)
{
	char D[64];

	snprintf(D, sizeof D, "%s", size(f, r->D));
	D[strcspn(D, " \xC2")] = '\0';
	return document_text(f->document, "%s x %s", D, size(f, r->L));
}

static const char *short_words(enum fastener_state s)
{
	static const char *const words[FASTENER_STATE_COUNT] = {"holds", "fails", "too short",
								"no room", "not rated"};

	return words[s];
}

static const char *lead_hole(const struct format *f, const struct fastener_row *r)
{
	if (isnan(r->lead_low))
		return "-";
	char low[64];

	snprintf(low, sizeof low, "%s", bit(f, r->lead_low, true));
	low[strcspn(low, " \xC2")] = '\0';
	return document_text(f->document, "%s to %s", low, bit(f, r->lead_high, false));
}

static void add_question(const struct format *f, const struct fastener_question *q)
{
	struct document *d = f->document;

	document_pairs(d);
	document_pair(d, "on one foot", "",
		      "%s off the roof and %s down the slope, together, load duration factor %s",
		      show(f, q->uplift, UNIT_LB), show(f, q->slope, UNIT_LB),
		      show_factor(f, q->CD, 2));
	document_pair(d, "screws in the foot", "", "%d", q->count);
	document_pair(d, "wood", "", "%s%sspecific gravity %s, %s", q->species ? q->species : "",
		      q->species ? ", " : "", show_factor(f, q->G, 2),
		      q->wet ? "wet in service" : "dry");
	document_pair(d, "rafter", "", "%s by %s", size(f, q->breadth), size(f, q->depth));
	document_pair(d, "above the rafter", "",
		      "steel plate %s, then %s, of which %s give no side bearing",
		      show(f, q->plate, UNIT_IN), show(f, q->layers, UNIT_IN),
		      show(f, q->gap, UNIT_IN));
	if (q->height > 0)
		document_pair(d, "standoff", "",
			      "%s high; %s from the screw to the compressed edge",
			      show(f, q->height, UNIT_IN), show(f, q->arm, UNIT_IN));
	document_pair(d, "holes", "", "may miss the rafter's centre by %s",
		      show(f, q->tolerance, UNIT_IN));
}

static void add_rows(const struct format *f, const struct fastener_table *t)
{
	static const struct column columns[] = {
		{"lag screw", ALIGN_LEFT, true, false},  {"thread in", ALIGN_RIGHT, false, false},
		{"pull-out", ALIGN_RIGHT, false, false}, {"side", ALIGN_RIGHT, false, false},
		{"ratio", ALIGN_RIGHT, false, false},    {"lead hole", ALIGN_LEFT, false, false},
		{"verdict", ALIGN_LEFT, false, true},
	};

	document_table(f->document, columns, COLUMNS(columns));
	for (int i = 0; i < t->rows; i++) {
		const struct fastener_row *r = &t->row[i];
		const bool rated = !isnan(r->ratio);

		document_row(f->document);
		document_cell(f->document, "%s", screw(f, r));
		document_cell(f->document, "%s", show_rounded(f, r->p_t, UNIT_IN, SHOW_DOWN));
		document_cell(f->document, "%s",
			      rated ? show_rounded(f, r->Wp, UNIT_LB, SHOW_DOWN) : "-");
		document_cell(f->document, "%s",
			      rated ? show_rounded(f, r->Z, UNIT_LB, SHOW_DOWN) : "-");
		document_cell(f->document, "%s", rated ? show_ratio(f, r->ratio) : "-");
		document_cell(f->document, "%s", lead_hole(f, r));
		document_cell(f->document, "%s%s", short_words(r->state), r->through ? "*" : "");
	}
}

static void add_misses(const struct format *f, const struct fastener_table *t)
{
	struct column columns[2 + MISS_MAX] = {{"lag screw", ALIGN_LEFT, true, false},
					       {"may miss by", ALIGN_RIGHT, false, false}};

	document_add(f->document, BLOCK_HEADING, 1, "A hole that misses the rafter's centre");
	for (int i = 0; i < MISS_MAX; i++)
		columns[2 + i] = (struct column){
			document_text(f->document, "off by %s", size(f, t->miss_by[i])), ALIGN_LEFT,
			false, true};
	document_table(f->document, columns, COLUMNS(columns));
	for (int i = 0; i < t->misses; i++) {
		const struct miss_row *m = &t->miss[i];

		document_row(f->document);
		document_cell(f->document, "%s", size(f, m->D));
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

void fastener_report_build(struct document *d, const struct fastener_list *list)
{
	const struct format f = {.document = d, .units = list->units};
	const struct fastener_table *t = &list->table;

	document_add(d, BLOCK_TITLE, 0, "Lag screws for one foot");
	if (t->least < 0)
		document_add(d, BLOCK_VERDICT, 0,
			     "NONE HOLDS. No lag screw of this list carries the load.");
	else
		document_add(d, BLOCK_VERDICT, 0,
			     "The thinnest and then shortest that holds: %s, ratio %s.",
			     screw(&f, &t->row[t->least]), show_ratio(&f, t->row[t->least].ratio));
	add_question(&f, &list->question);
	add_rows(&f, t);
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "fails: loaded above what it carries; too short: under 4 D in the rafter "
		     "(NDS-2018 12.1.4.6); no "
		     "room: the edge distance 1.5 D cannot be kept with holes that may miss by so "
		     "much; not rated: "
		     "outside the published tables. *: the point comes out below.");
	add_misses(&f, t);
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Pull and side load together by NDS-2018 Eq. 12.4-1; the least thread of the "
		     "standard shape; the screw's own "
		     "tension by common practice. The rafter, the foot and the covering are not "
		     "checked here.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
