/* SPDX-License-Identifier: MIT */
/* Writes the section INPUT REFERENCE of the manual page. mdoc wants a new sentence on a new
   line, short lines, and no line that starts like a request. */
#include <string.h>

#include "job/describe.h"
#include "job/element.h"
#include "job/value.h"

#define LINE_MAX_LENGTH 76

/* True if a sentence ends at s, in front of a blank: what follows starts with a capital. */
static bool sentence_ends(const char *s)
{
	return (*s == '.' || *s == '?' || *s == '!') && s[1] == ' ' && s[2] >= 'A' && s[2] <= 'Z';
}

static void put_word(FILE *out, const char *word, size_t n, bool first)
{
	/* a line must not begin with a control character of roff */
	if (first && (word[0] == '.' || word[0] == '\''))
		fputs("\\&", out);
	for (size_t i = 0; i < n; i++) {
		if (word[i] == '\\')
			fputs("\\e", out);
		else
			fputc(word[i], out);
	}
}

/* Plain text, wrapped. */
static void paragraph(FILE *out, const char *text)
{
	size_t column = 0;

	while (*text != '\0') {
		const size_t n = strcspn(text, " ");
		const bool ends = n > 0 && sentence_ends(text + n - 1);

		if (column > 0 && column + 1 + n > LINE_MAX_LENGTH) {
			fputc('\n', out);
			column = 0;
		}
		if (column > 0)
			fputc(' ', out);
		put_word(out, text, n, column == 0);
		column += n + (column > 0);
		if (ends) {
			fputc('\n', out);
			column = 0;
		}
		text += n;
		while (*text == ' ')
			text++;
	}
	if (column > 0)
		fputc('\n', out);
}

/* A text as arguments of a macro: quoted, and no word is taken for a macro's name. */
static void argument(FILE *out, const char *text)
{
	fputc('"', out);
	for (; *text != '\0'; text++) {
		if (*text == '"')
			fputs("\\(dq", out);
		else if (*text == '\\')
			fputs("\\e", out);
		else
			fputc(*text, out);
	}
	fputc('"', out);
}

static void field(FILE *out, const struct field *f)
{
	char text[200], line[260];

	fprintf(out, ".It Cm \\&%s", f->attribute); /* \& : not a macro of that name */
	fputs(" No = ", out);
	argument(out, f->example);
	fputc('\n', out);
	paragraph(out, f->meaning);
	if (!f->choice) {
		describe_domain(text, sizeof text, f);
		snprintf(line, sizeof line, "Accepted: %s.", text);
		paragraph(out, line);
	}
	paragraph(out, describe_need(text, sizeof text, f));
	snprintf(line, sizeof line, "On site: %s", f->measured);
	paragraph(out, line);
	if (!f->choice)
		return;
	fputs(".Bl -tag -width Ds -compact\n", out);
	for (const struct field_choice *c = f->choice; c->word; c++) {
		fputs(".It Cm ", out);
		argument(out, c->word);
		fputc('\n', out);
		paragraph(out, c->meaning);
	}
	fputs(".El\n", out);
}

static void element(FILE *out, enum element e)
{
	const struct element_row *r = &element_table[e];

	fprintf(out, ".Ss Element %s\n", r->name);
	paragraph(out, r->meaning);
	if (r->max > 1)
		fprintf(out, "It may stand up to %d times.\n", r->max);
	fputs(".Bl -tag -width Ds\n", out);
	for (size_t i = r->first; i <= (size_t)r->last; i++)
		field(out, &field_table[i]);
	fputs(".El\n", out);
}

static void units(FILE *out)
{
	fputs(".Ss Values\n", out);
	paragraph(out, "A quantity is a number and its unit, in the unit that was measured. "
		       "Numbers have a decimal point, or "
		       "are fractions as a tape reads them: 5/16 in, 5-5/8 in, 13 ft 6-1/2 in, 13' "
		       "6\". A pitch is rise over "
		       "run, 6:12, or an angle, or a percentage. Weights may be written as pounds "
		       "or kilograms. The word "
		       "unknown may be written for every field that may be left out.");
	fputs(".Bl -tag -width \"weight per volume\" -compact\n", out);
	for (int d = DIM_LENGTH; d < DIM_COUNT; d++) {
		static const char *const name[DIM_COUNT] = {
			[DIM_LENGTH] = "length",
			[DIM_AREA] = "area",
			[DIM_VOLUME] = "volume",
			[DIM_INERTIA] = "inertia",
			[DIM_ANGLE] = "angle",
			[DIM_SPEED] = "speed",
			[DIM_FORCE] = "force",
			[DIM_LINE_LOAD] = "line load",
			[DIM_PRESSURE] = "pressure",
			[DIM_MOMENT] = "moment",
			[DIM_WEIGHT_DENSITY] = "weight per volume",
			[DIM_TEMPERATURE] = "temperature",
		};

		fprintf(out, ".It %s\n", name[d]);
		paragraph(out, dimension_units((enum dimension)d));
	}
	fputs(".El\n", out);
}

void describe_mdoc(FILE *out)
{
	fputs(".Sh INPUT REFERENCE\n", out);
	paragraph(out, "A job file is XML: the element job holds the other elements in any order, "
		       "and every value is an "
		       "attribute. Each field below is shown with an example.");
	units(out);
	for (size_t e = 0; e < ELEMENT_COUNT; e++)
		element(out, (enum element)e);
}
