/* SPDX-License-Identifier: MIT */
#include "report/step_report.h"

#include <ctype.h>
#include <string.h>

#include "report/caution.h"
#include "report/format.h"
#include "report/step_text.h"

/* The name ends before an edition ("-16"), a comma, or a word that begins a clause: "Eq.", "Table",
   "Fig.", "Part", a number with a point in it, or a letter and a number ("R905"). */
static bool begins_clause(const char *word)
{
	static const char *const words[] = { "Eq", "Table", "Fig", "Part", "App", "Section", NULL };
	const size_t digits = strspn(word, "0123456789");

	if (digits > 0 && word[digits] == '.')
		return true;
	for (int i = 0; words[i]; i++)
		if (strncmp(word, words[i], strlen(words[i])) == 0)
			return true;
	return isupper((unsigned char)word[0]) && isdigit((unsigned char)word[1]);
}

size_t step_standard_length(const char *clause)
{
	size_t n = 0;

	for (; clause[n]; n++) {
		if (clause[n] == ',' || clause[n] == ';')
			break;
		if (clause[n] == '-' && isdigit((unsigned char)clause[n + 1]))
			break;
		if (clause[n] == ' ' && begins_clause(clause + n + 1))
			break;
	}
	return n;
}

/* The edition that stands for all of them where one clause is shown. */
#define SHOWN_EDITION ASCE7_16

static const char *any_clause(const struct step *s)
{
	return step_clause(s, SHOWN_EDITION);
}

static bool same_standard(const struct step *a, const struct step *b)
{
	const size_t n = step_standard_length(any_clause(a));

	return n == step_standard_length(any_clause(b)) &&
	       strncmp(any_clause(a), any_clause(b), n) == 0;
}

static bool first_of_standard(const struct step_list *list, size_t i)
{
	for (size_t k = 0; k < i; k++)
		if (same_standard(list->step[k], list->step[i]))
			return false;
	return true;
}

/* Clauses of all editions: "ASCE/SEI 7-10 30.2.2; ASCE/SEI 7-16 30.2.2". */
static const char *clauses(struct document *d, const struct step *s)
{
	const char *list = "";

	for (int i = 0; i < EDITION_COUNT; i++)
		if (s->clause[i])
			list = document_text(d, "%s%s%s", list, *list ? "; " : "", s->clause[i]);
	return *list ? list : any_clause(s);
}

static void add_group(struct document *d, const struct step_list *list, size_t first)
{
	static const struct column columns[] = {
		{ "name", ALIGN_LEFT, true, false },
		{ "what it gives", ALIGN_LEFT, false, true },
		{ "clause", ALIGN_LEFT, false, true },
	};
	const char *clause = any_clause(list->step[first]);

	document_add(d, BLOCK_HEADING, 2, "%.*s", (int)step_standard_length(clause), clause);
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (size_t i = first; i < list->count; i++) {
		const struct step *s = list->step[i];

		if (!same_standard(s, list->step[first]))
			continue;
		document_row(d);
		document_cell(d, "%s", s->name);
		document_cell(d, "%s: %s", s->symbol, s->title);
		document_cell(d, "%s", any_clause(s));
	}
}

void step_report_list(struct document *d, const struct step_list *list)
{
	document_add(d, BLOCK_TITLE, 0, "Formulas, by standard");
	document_add(d, BLOCK_PARAGRAPH, 0,
	             "rafterproof step NAME tells what one needs; rafterproof step NAME "
	             "symbol=value... computes it.");
	for (size_t i = 0; i < list->count; i++)
		if (first_of_standard(list, i))
			add_group(d, list, i);
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

static void add_inputs(struct document *d, const struct step *s)
{
	static const struct column columns[] = {
		{ "symbol", ALIGN_LEFT, true, false },
		{ "unit", ALIGN_LEFT, false, false },
		{ "meaning", ALIGN_LEFT, false, true },
		{ "also accepted", ALIGN_LEFT, false, true },
	};

	if (step_input_count(s) == 0)
		return;
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++) {
		const char *unit = unit_text(s->in[i].unit);

		document_row(d);
		document_cell(d, "%s", s->in[i].symbol);
		document_cell(d, "%s", *unit ? unit : "-");
		document_cell(d, "%s", s->in[i].meaning ? s->in[i].meaning : "");
		document_cell(d, "%s", dimension_units(unit_dimension(s->in[i].unit)));
	}
}

static void add_usage(struct document *d, const struct step *s)
{
	const char *line = document_text(d, "rafterproof step %s", s->name);

	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++) {
		const char *unit = unit_text(s->in[i].unit);
		/* What a shell would take for its own is put in quotes. */
		const bool quote = strpbrk(s->in[i].symbol, "'*") || strchr(unit, ' ');

		line = document_text(d, "%s %s%s=...%s%s", line, quote ? "\"" : "", s->in[i].symbol,
		                     unit, quote ? "\"" : "");
	}
	document_add(d, BLOCK_PARAGRAPH, 0, "To compute it: %s", line);
}

void step_report_describe(struct document *d, const struct step *s)
{
	const struct format f = { .document = d, .units = SYSTEM_US };
	const char *unit = unit_text(s->unit);

	document_add(d, BLOCK_TITLE, 0, "%s", s->name);
	document_pairs(d);
	document_pair(d, "gives", "", "%s: %s%s%s", s->symbol, s->title, *unit ? ", " : "", unit);
	document_pair(d, "formula", "", "%s = %s", s->symbol, s->formula);
	document_pair(d, "clause", "", "%s", clauses(d, s));
	document_pair(d, "status", "", "%s",
	              s->confidence == CONFIRMED && !s->note ? "confirmed"
	                                                     : step_text_status(&f, s));
	add_inputs(d, s);
	add_usage(d, s);
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

void step_report_computed(struct document *d, const struct step_computed *c)
{
	const struct step *s = c->step;
	const struct format f = { .document = d, .units = c->units };
	const struct step_line line = step_text_line(&f, s, c->in, c->result, SHOWN_EDITION);
	const enum unit us = unit_in_system(s->unit, SYSTEM_US),
			si = unit_in_system(s->unit, SYSTEM_SI);

	document_step(d, &line);
	if (us != si)
		document_add(d, BLOCK_PARAGRAPH, 0, "%s = %s = %s", s->symbol,
		             show_exact(&f, c->result, us, 6), show_exact(&f, c->result, si, 6));
	else
		document_add(d, BLOCK_PARAGRAPH, 0, "%s = %s", s->symbol,
		             show_exact(&f, c->result, us, 6));
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}
