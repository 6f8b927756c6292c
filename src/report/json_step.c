/* SPDX-License-Identifier: MIT */
#include "report/json_step.h"

#include "report/caution.h"

static void add_inputs(struct json *j, json_t *object, const struct step *s, const double *in)
{
	json_t *array = put_array(j, object, "inputs");

	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol && !j->failed; i++) {
		json_t *input = append_object(j, array);

		put_text(j, input, "symbol", s->in[i].symbol);
		put_text(j, input, "meaning", s->in[i].meaning);
		if (in)
			put_number(j, input, "value", unit_from_si(in[i], s->in[i].unit));
		put(j, input, "unit", json_string(unit_text(s->in[i].unit)));
	}
}

static void add_head(struct json *j, json_t *object, const struct step *s)
{
	put_text(j, object, "name", s->name);
	put_text(j, object, "title", s->title);
	put_text(j, object, "symbol", s->symbol);
	put_text(j, object, "formula", s->formula);
}

static void add_status(struct json *j, json_t *object, const struct step *s)
{
	put_text(j, object, "confidence", confidence_text(s->confidence));
	put_text(j, object, "note", s->note);
}

void put_step_line(struct json *j, json_t *object, const struct step *s, const double *in,
                   double result, enum edition edition)
{
	add_head(j, object, s);
	add_inputs(j, object, s, in);
	put_number(j, object, "value", unit_from_si(result, s->unit));
	put(j, object, "unit", json_string(unit_text(s->unit)));
	put_text(j, object, "clause", step_clause(s, edition));
	add_status(j, object, s);
}

void put_step_description(struct json *j, json_t *object, const struct step *s)
{
	static const char *const keys[EDITION_COUNT] = { "any", "asce7-10", "asce7-16",
		                                         "asce7-22" };

	add_head(j, object, s);
	put(j, object, "unit", json_string(unit_text(s->unit)));
	add_inputs(j, object, s, NULL);
	json_t *clauses = put_object(j, object, "clauses");

	for (int i = 0; i < EDITION_COUNT && !j->failed; i++)
		if (s->clause[i])
			put_text(j, clauses, keys[i], s->clause[i]);
	add_status(j, object, s);
}

int json_step_list_write(FILE *f, const void *what)
{
	const struct step_list *list = what;
	struct json j;
	json_t *root = json_begin(&j, "step", SYSTEM_US);

	if (root) {
		json_t *array = put_array(&j, root, "steps");

		for (size_t i = 0; i < list->count && !j.failed; i++)
			put_step_description(&j, append_object(&j, array), list->step[i]);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}

int json_step_computed_write(FILE *f, const void *what)
{
	const struct step_computed *c = what;
	struct json j;
	json_t *root = json_begin(&j, "step", c->units);

	if (root) {
		put_step_line(&j, put_object(&j, root, "computed"), c->step, c->in, c->result,
		              ASCE7_16);
		put_exact(&j, root, "us", c->result, unit_in_system(c->step->unit, SYSTEM_US));
		put_exact(&j, root, "si", c->result, unit_in_system(c->step->unit, SYSTEM_SI));
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}
