/* SPDX-License-Identifier: MIT */
/* Rafters before and after the collectors, and the rails. */
#include <math.h>

#include "report/check_part.h"

#define COLUMNS(c) ((int)(sizeof(c) / sizeof *(c)))

static const char *percent(const struct part *p, double share)
{
	return show_rounded(&p->f, share, UNIT_PERCENT, SHOW_UP);
}

static void add_rafters(const struct part *p)
{
	static const struct column columns[] = {
		{ "rafter", ALIGN_RIGHT, true, false },
		{ "feet", ALIGN_RIGHT, false, false },
		{ "ratio before", ALIGN_RIGHT, false, false },
		{ "ratio after", ALIGN_RIGHT, false, false },
		{ "governs", ALIGN_LEFT, false, false },
		{ "moment rises by", ALIGN_RIGHT, false, false },
		{ "from dead load", ALIGN_RIGHT, false, false },
	};

	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < p->pass->rafters; i++) {
		const struct rafter_result *r = &p->pass->rafter[i];

		document_row(p->d);
		document_cell(p->d, "%d", r->rafter + 1);
		document_cell(p->d, "%d", r->feet);
		document_cell(p->d, "%s", show_ratio(&p->f, r->ratio_before));
		document_cell(p->d, "%s", show_ratio(&p->f, r->ratio_after));
		document_cell(p->d, "%s", isnan(r->ratio_after) ? "-" : check_short(r->governs));
		document_cell(p->d, "%s", percent(p, r->rise_total));
		document_cell(p->d, "%s", percent(p, r->rise_dead));
	}
}

static void add_rafter_checks(const struct part *p, const struct rafter_result *r)
{
	const struct column columns[] = {
		{ "check", ALIGN_LEFT, true, true },
		{ "before", ALIGN_RIGHT, false, false },
		{ "after", ALIGN_RIGHT, false, false },
		{ "capacity after", ALIGN_RIGHT, false, false },
		{ "ratio before", ALIGN_RIGHT, false, false },
		{ "ratio after", ALIGN_RIGHT, false, false },
		{ "combination after", ALIGN_LEFT, false, true },
		{ part_duration(p), ALIGN_RIGHT, false, false },
	};

	document_add(p->d, BLOCK_HEADING, 2, "Rafter %d in detail", r->rafter + 1);
	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < CHECK_COUNT; i++) {
		const enum check_id id = (enum check_id)i;
		const struct check_value *before = &r->before[i], *after = &r->after[i];

		if (!after->rated)
			continue;
		document_row(p->d);
		document_cell(p->d, "%s", check_words(id));
		document_cell(p->d, "%s",
		              before->rated ? show_demand(&p->f, id, before->demand) : "-");
		document_cell(p->d, "%s", show_demand(&p->f, id, after->demand));
		document_cell(p->d, "%s", show_capacity(&p->f, id, after->capacity));
		document_cell(p->d, "%s", before->rated ? show_ratio(&p->f, before->ratio) : "-");
		document_cell(p->d, "%s", show_ratio(&p->f, after->ratio));
		document_cell(p->d, "%s", after->combination ? after->combination : "-");
		document_cell(p->d, "%s", show_factor(&p->f, after->CD, 2));
	}
}

static void add_lumber(const struct part *p)
{
	const struct lumber_result *l = &p->r->lumber;

	if (!l->species)
		return;
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "Lumber: %s %s, G %s; reference values Fb %s, Fv %s, E %s, Emin %s; size "
	             "factor CF %s, repetitive-member "
	             "factor Cr %s.",
	             l->species, l->grade ? l->grade : "", show_factor(&p->f, l->G, 2),
	             show(&p->f, l->Fb, UNIT_PSI), show(&p->f, l->Fv, UNIT_PSI),
	             show(&p->f, l->E, UNIT_PSI), show(&p->f, l->Emin, UNIT_PSI),
	             show_factor(&p->f, l->CF, 2), show_factor(&p->f, l->Cr, 2));
}

void part_rafters(const struct part *p)
{
	const int governing = p->pass->governing_rafter;

	if (p->pass->rafters == 0)
		return;
	document_add(p->d, BLOCK_HEADING, 1, "Rafters before and after");
	add_rafters(p);
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "Only rafters with feet are listed. A rise of more than 5 %% asks for today's "
	             "strength "
	             "(existing-building code, IEBC 503.3 and its siblings).");
	add_lumber(p);
	if (governing >= 0 && governing < p->pass->rafters)
		add_rafter_checks(p, &p->pass->rafter[governing]);
}

void part_rails(const struct part *p)
{
	static const struct column columns[] = {
		{ "line", ALIGN_RIGHT, true, false },
		{ "up slope", ALIGN_RIGHT, false, false },
		{ "from", ALIGN_RIGHT, false, false },
		{ "to", ALIGN_RIGHT, false, false },
		{ "feet", ALIGN_RIGHT, false, false },
		{ "longest span", ALIGN_RIGHT, false, false },
		{ "longest end", ALIGN_RIGHT, false, false },
		{ "ratio", ALIGN_RIGHT, false, false },
		{ "governs", ALIGN_LEFT, false, false },
	};

	if (p->pass->lines == 0)
		return;
	document_add(p->d, BLOCK_HEADING, 1,
	             p->job->rail.kind == SUPPORT_RAILS ? "Rails"
	                                                : "Lines of feet under the collectors");
	document_table(p->d, columns, COLUMNS(columns));
	for (int i = 0; i < p->pass->lines; i++) {
		const struct rail_line *l = &p->pass->line[i];

		document_row(p->d);
		document_cell(p->d, "%d", l->line + 1);
		document_cell(p->d, "%s", show_tape(&p->f, l->y));
		document_cell(p->d, "%s", show_tape(&p->f, l->x0));
		document_cell(p->d, "%s", show_tape(&p->f, l->x1));
		document_cell(p->d, "%d", l->count);
		document_cell(p->d, "%s", show_tape(&p->f, l->longest_span));
		document_cell(p->d, "%s", show_tape(&p->f, l->longest_cantilever));
		document_cell(p->d, "%s", any_rated(l->check) ? show_ratio(&p->f, l->ratio) : "-");
		document_cell(p->d, "%s", any_rated(l->check) ? check_short(l->governs) : "-");
	}
	document_add(p->d, BLOCK_PARAGRAPH, 0,
	             "From and to are the ends along the eave from %s; an end is "
	             "the part beyond the "
	             "last foot. A line without a ratio is not checked.",
	             left_end(p->job));
}
