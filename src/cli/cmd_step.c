/* SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "check/step_table.h"
#include "cli/command.h"
#include "report/json_step.h"
#include "report/step_report.h"

#define KEY_MAX 32

/* A shell takes ' and * for itself: W_prime stands for W', F_star_b for F*b. */
static bool same_symbol(const char *key, const char *symbol)
{
	while (*key && *symbol) {
		if (*symbol == '\'' && strncmp(key, "_prime", 6) == 0) {
			key += 6;
		} else if (*symbol == '*' && strncmp(key, "_star_", 6) == 0) {
			key += 6;
		} else if (*key++ != *symbol) {
			return false;
		}
		symbol++;
	}
	return !*key && !*symbol;
}

static int find_symbol(const struct step *s, const char *key)
{
	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++)
		if (same_symbol(key, s->in[i].symbol))
			return i;
	return -1;
}

/* "G, D (in)" */
static const char *accepted_symbols(char *buf, size_t size, const struct step *s)
{
	size_t n = 0;

	snprintf(buf, size, "nothing, for it has no inputs");
	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol && n < size; i++) {
		const char *unit = unit_text(s->in[i].unit);

		n += (size_t)snprintf(buf + n, size - n, "%s%s%s%s%s", i ? ", " : "",
		                      s->in[i].symbol, *unit ? " (" : "", unit, *unit ? ")" : "");
	}
	return buf;
}

static void add_problem(struct problem_list *problems, enum problem_code code, const struct step *s,
                        const char *field, const char *given, const char *accepted)
{
	char path[PROBLEM_TEXT_MAX];

	snprintf(path, sizeof path, "%s.%s", s->name, field);
	problem_add(problems, code, "command line", 0, path, given, accepted);
}

static void parse_value(const struct step *s, int i, const char *text, double *si,
                        struct problem_list *problems)
{
	const enum dimension dimension = unit_dimension(s->in[i].unit);
	const enum quantity_error e = quantity_parse(text, dimension, si);
	char accepted[PROBLEM_TEXT_MAX];

	if (e == QUANTITY_OK)
		return;
	if (dimension == DIM_NONE)
		snprintf(accepted, sizeof accepted, "a number such as 0.5, decimal point");
	else
		snprintf(accepted, sizeof accepted, "a number with %s", dimension_units(dimension));
	add_problem(problems,
	            e == QUANTITY_NO_UNIT || e == QUANTITY_WRONG_UNIT ? PROBLEM_WRONG_UNIT
	                                                              : PROBLEM_NOT_A_VALUE,
	            s, s->in[i].symbol, text, accepted);
}

static void parse_input(const struct step *s, const char *word, double *in, bool *given,
                        struct problem_list *problems)
{
	const char *equals = strchr(word, '=');
	const size_t n = equals ? (size_t)(equals - word) : strlen(word);
	char key[KEY_MAX], accepted[PROBLEM_TEXT_MAX];

	snprintf(key, sizeof key, "%.*s", (int)(n < KEY_MAX ? n : KEY_MAX - 1), word);
	const int i = equals ? find_symbol(s, key) : -1;

	if (i < 0) {
		problem_add(problems, PROBLEM_USAGE, "command line", 0, s->name, word,
		            accepted_symbols(accepted, sizeof accepted, s));
		return;
	}
	if (given[i])
		add_problem(problems, PROBLEM_TWICE, s, s->in[i].symbol, word, "once");
	given[i] = true;
	parse_value(s, i, equals + 1, &in[i], problems);
}

static void parse_inputs(const struct step *s, const struct options *o, double *in,
                         struct problem_list *problems)
{
	bool given[STEP_INPUT_MAX] = { false };

	for (size_t i = 1; i < o->words; i++)
		parse_input(s, o->word[i], in, given, problems);
	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++) {
		const char *units = dimension_units(unit_dimension(s->in[i].unit));

		if (!given[i])
			add_problem(problems, PROBLEM_MISSING, s, s->in[i].symbol, NULL, units);
	}
}

static enum exit_status compute(const struct step *s, const struct options *o,
                                struct problem_list *problems)
{
	struct step_computed computed = { .step = s, .units = o->units };

	parse_inputs(s, o, computed.in, problems);
	if (problem_any(problems))
		return EXIT_INPUT;
	computed.result = step_run(NULL, s, computed.in, step_input_count(s));
	if (!isfinite(computed.result)) {
		add_problem(problems, PROBLEM_OUT_OF_RANGE, s, s->symbol, NULL,
		            "values that the formula covers");
		return EXIT_INPUT;
	}
	if (o->json)
		return command_write_json(json_step_computed_write, &computed, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		step_report_computed(d, &computed);
	return command_write_text(d, o, problems);
}

static enum exit_status describe(const struct step *const *steps, size_t count, bool all,
                                 const struct options *o, struct problem_list *problems)
{
	const struct step_list list = { steps, count };

	if (o->json)
		return command_write_json(json_step_list_write, &list, o, problems);
	struct document *d = document_create(NULL);

	if (d && all)
		step_report_list(d, &list);
	else if (d)
		step_report_describe(d, steps[0]);
	return command_write_text(d, o, problems);
}

enum exit_status command_step(const struct command *c, const struct options *o,
                              struct problem_list *problems)
{
	if (o->words == 0)
		return describe(step_table, step_table_count, true, o, problems);
	const struct step *s = step_find(o->word[0]);

	if (!s)
		return command_misused(c, problems, o->word[0],
		                       "a name that `rafterproof step` lists");
	/* A formula without inputs is a constant: nothing has to be given for it. */
	if (o->words == 1 && step_input_count(s) > 0)
		return describe(&s, 1, false, o, problems);
	return compute(s, o, problems);
}
