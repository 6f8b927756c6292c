/* SPDX-License-Identifier: MIT */
/* Runs one formula: the SI values go to the clause's own units, through the pure function, and the
   result comes back in SI. A record keeps the SI values, so that a report may print them in either
   system. Pure but for the trace that the caller hands in. */
#include "step/step.h"

#include <assert.h>
#include <string.h>

const char *confidence_text(enum confidence c)
{
	switch (c) {
	case CONFIRMED:
		return "confirmed";
	case ONE_SOURCE:
		return "one source";
	case FROM_MEMORY:
		return "from memory";
	case SAFE_SIDE:
		return "safe side";
	case OUR_RULE:
		return "our rule";
	case COMMON_PRACTICE:
		return "common practice";
	case USER_ENTERED:
		return "user entered";
	case DERIVED:
		return "derived";
	case CONFIDENCE_COUNT:
		break;
	}
	return "";
}

size_t step_input_count(const struct step *s)
{
	size_t n = 0;

	while (n < STEP_INPUT_MAX && s->in[n].symbol != NULL)
		n++;
	return n;
}

const char *step_clause(const struct step *s, enum edition e)
{
	if (e > EDITION_ANY && e < EDITION_COUNT && s->clause[e] != NULL)
		return s->clause[e];
	for (int i = EDITION_ANY; i < EDITION_COUNT; i++)
		if (s->clause[i] != NULL)
			return s->clause[i];
	return "";
}

static void record(struct trace *trace, const struct step *s, const double *in, size_t n,
		   double result)
{
	struct step_record *r;

	if (trace->count >= trace->capacity) {
		trace->dropped++;
		return;
	}
	r = &trace->record[trace->count++];
	r->step = s;
	memcpy(r->in, in, n * sizeof *in);
	/* The rest is cleared: records are compared and printed whole. */
	for (size_t i = n; i < STEP_INPUT_MAX; i++)
		r->in[i] = 0.0;
	r->result = result;
}

double step_run(struct trace *trace, const struct step *s, const double *in, size_t n)
{
	double clause_in[STEP_INPUT_MAX];
	double result;

	assert(n <= STEP_INPUT_MAX);
	assert(n == step_input_count(s));
	for (size_t i = 0; i < n; i++)
		clause_in[i] = unit_from_si(in[i], s->in[i].unit);
	result = unit_to_si(s->value(clause_in), s->unit);
	if (trace != NULL)
		record(trace, s, in, n, result);
	return result;
}
