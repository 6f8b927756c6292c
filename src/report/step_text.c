/* SPDX-License-Identifier: MIT */
#include "report/step_text.h"

#include <ctype.h>
#include <string.h>

#define LINE_SIZE 1024
/* Digits that count: enough to recompute the line by hand to the digits of the result. */
#define INPUT_DIGITS 5
#define RESULT_DIGITS 4

/* What does not fit is cut: the formulas of the step table are far shorter. */
static void append(char *out, size_t *n, const char *text, size_t bytes)
{
	const size_t room = LINE_SIZE - 1 - *n;
	const size_t fits = bytes < room ? bytes : room;

	memcpy(out + *n, text, fits);
	*n += fits;
	out[*n] = '\0';
}

/* "Kz 0.605, V 115 mph": the inputs that the formula does not show. */
static const char *where(const struct format *f, const struct step *s, const char *const *value,
                         unsigned shown)
{
	char out[LINE_SIZE] = "";
	size_t n = 0;

	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++) {
		const char *unit = unit_text(s->in[i].unit);

		if (shown & 1u << i)
			continue;
		const char *one = document_text(f->document, "%s%s" NBSP "%s%s%s", n ? ", " : "",
		                                s->in[i].symbol, value[i], *unit ? NBSP : "", unit);

		append(out, &n, one, strlen(one));
	}
	return document_text(f->document, "%s", out);
}

/* A ratio above 1 by little must not read 1: digits are added until it does not. */
static const char *result_number(const struct format *f, double value)
{
	const char *text = show_significant(f, value, RESULT_DIGITS);

	for (int digits = RESULT_DIGITS + 1; value > 1.0 && strcmp(text, "1") == 0 && digits <= 9;
	     digits++)
		text = show_significant(f, value, digits);
	return text;
}

static const char *result_text(const struct format *f, const struct step *s, double result)
{
	const enum unit other = shown_unit(f, s->unit);
	const char *unit = unit_text(s->unit);
	const char *own = result_number(f, unit_from_si(result, s->unit));

	if (other == s->unit)
		return document_text(f->document, "%s%s%s", own, *unit ? NBSP : "", unit);
	return document_text(f->document, "%s" NBSP "%s (%s)", own, unit,
	                     show_exact(f, result, other, RESULT_DIGITS));
}

const char *step_text_status(const struct format *f, const struct step *s)
{
	const bool note = s->note && *s->note;

	if (s->confidence == CONFIRMED)
		return note ? document_text(f->document, "%s", s->note) : "";
	return document_text(f->document, "%s%s%s", confidence_text(s->confidence),
	                     note ? ": " : "", note ? s->note : "");
}

struct step_line step_text_line(const struct format *f, const struct step *s, const double *in,
                                double result, enum edition edition)
{
	const char *value[STEP_INPUT_MAX] = { NULL };
	unsigned shown = 0;

	for (int i = 0; i < STEP_INPUT_MAX && s->in[i].symbol; i++)
		value[i] = show_significant(f, unit_from_si(in[i], s->in[i].unit), INPUT_DIGITS);
	const char *put_in = step_text_put_in(f, s, value, &shown);

	return (struct step_line){
		.title = document_text(f->document, "%c%s", toupper((unsigned char)s->title[0]),
		                       s->title + !!s->title[0]),
		.symbol = s->symbol,
		.formula = s->formula,
		.values = shown ? put_in : "",
		.result = result_text(f, s, result),
		.clause = step_clause(s, edition),
		.status = step_text_status(f, s),
		.where = where(f, s, value, shown),
	};
}
