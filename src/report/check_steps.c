/* SPDX-License-Identifier: MIT */
/* The calculation, line by line, each with formula, values, result and clause, so that a reviewer
   can follow it with the book open and recompute any line alone. */
#include <string.h>

#include "report/check_part.h"
#include "report/step_text.h"

/* Meaning of a symbol, once per section. */
struct legend {
	const char *symbol[TRACE_MAX * 2];
	int count;
	const char *text;
};

static bool known(const struct legend *l, const char *symbol)
{
	for (int i = 0; i < l->count; i++)
		if (strcmp(l->symbol[i], symbol) == 0)
			return true;
	return l->count == (int)(sizeof l->symbol / sizeof *l->symbol);
}

static void explain(const struct part *p, struct legend *l, const char *symbol, const char *meaning,
                    enum unit unit)
{
	const char *u = unit_text(unit);

	if (!meaning || !*meaning || known(l, symbol))
		return;
	l->symbol[l->count++] = symbol;
	l->text = document_text(p->d, "%s%s%s: %s%s%s", l->text, *l->text ? "; " : "", symbol,
	                        meaning, *u ? ", " : "", u);
}

/* The same line with the same values, as when two combinations need one section modulus, is shown
   once. */
static bool shown_before(const struct step_record *record, size_t i)
{
	for (size_t k = 0; k < i; k++)
		if (record[k].step == record[i].step &&
		    memcmp(record[k].in, record[i].in,
		           step_input_count(record[i].step) * sizeof(double)) == 0)
			return true;
	return false;
}

static void add_line(const struct part *p, const struct step_record *record, struct legend *legend)
{
	const struct step *s = record->step;
	const struct step_line line =
		step_text_line(&p->f, s, record->in, record->result, p->job->site.code);

	document_step(p->d, &line);
	for (int k = 0; k < STEP_INPUT_MAX && s->in[k].symbol; k++)
		explain(p, legend, s->in[k].symbol, s->in[k].meaning, s->in[k].unit);
}

static void add_section(const struct part *p, enum trace_section section)
{
	const struct trace *trace = &p->r->trace[section];
	struct legend legend = { .text = "" };

	if (trace->count == 0)
		return;
	document_add(p->d, BLOCK_HEADING, 2, "%s", section_words(section));
	for (size_t i = 0; i < trace->count; i++)
		if (!shown_before(p->r->record[section], i))
			add_line(p, &p->r->record[section][i], &legend);
	if (*legend.text)
		document_add(p->d, BLOCK_PARAGRAPH, 0, "Symbols: %s.", legend.text);
	if (trace->dropped > 0)
		document_add(p->d, BLOCK_PARAGRAPH, 0,
		             "%d more lines of this section did not fit and are not shown.",
		             (int)trace->dropped);
}

void part_steps(const struct part *p)
{
	bool any = false;

	for (int i = 0; i < SECTION_COUNT; i++)
		any = any || p->r->trace[i].count > 0;
	if (!any)
		return;
	document_add(p->d, BLOCK_HEADING, 1, "Formulas, line by line");
	document_add(
		p->d, BLOCK_PARAGRAPH, 0,
		"Each line in the units of its clause. Attachment and rafter are the governing "
	        "ones, each under the load case that governs it. A line without a "
		"status is confirmed. Any line can be run again alone: rafterproof step NAME.");
	for (int i = 0; i < SECTION_COUNT; i++) {
		add_section(p, (enum trace_section)i);
		if (i == SECTION_RAIL)
			part_beam(p, &p->r->rail_beam, false);
		if (i == SECTION_RAFTER)
			part_beam(p, &p->r->rafter_beam, true);
	}
}
