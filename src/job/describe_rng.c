/* SPDX-License-Identifier: MIT */
/* Writes the RELAX NG schema. Its patterns keep to what all validators read alike: no hyphen
   inside a character class. */
#include <string.h>

#include "job/describe.h"
#include "job/element.h"
#include "job/value.h"

#define DECIMAL "([0-9]+(\\.[0-9]*)?|\\.[0-9]+)((e|E)(\\+|-)?[0-9]+)?"
#define FRACTION "([0-9]+(-| ))?[0-9]+/[1-9][0-9]*"
#define NUMBER "(" FRACTION "|" DECIMAL ")"

/* Names of the value patterns; DIM_NONE has its own datatypes. */
static const char *const pattern_name[DIM_COUNT] = {
	[DIM_NONE] = NULL,
	[DIM_LENGTH] = "length",
	[DIM_AREA] = "area",
	[DIM_VOLUME] = "volume",
	[DIM_INERTIA] = "second-moment",
	[DIM_ANGLE] = "angle",
	[DIM_SPEED] = "speed",
	[DIM_FORCE] = "weight",
	[DIM_LINE_LOAD] = "line-load",
	[DIM_PRESSURE] = "pressure",
	[DIM_MOMENT] = "moment",
	[DIM_WEIGHT_DENSITY] = "weight-density",
	[DIM_TEMPERATURE] = "temperature",
};

static void escape(FILE *out, const char *text)
{
	for (; *text != '\0'; text++)
		switch (*text) {
		case '&':
			fputs("&amp;", out);
			break;
		case '<':
			fputs("&lt;", out);
			break;
		case '>':
			fputs("&gt;", out);
			break;
		default:
			fputc(*text, out);
		}
}

/* All spellings of the units of a dimension, as alternatives. */
static void units(FILE *out, enum dimension d)
{
	const char *text, *separator = "";
	enum unit u;

	for (size_t i = 0; (text = unit_spelling(i, &u)); i++)
		if (unit_dimension(u) == d) {
			fputs(separator, out);
			escape(out, text);
			separator = "|";
		}
}

/* All spellings of one unit. */
static void spellings(FILE *out, enum unit wanted)
{
	const char *text, *separator = "";
	enum unit u;

	for (size_t i = 0; (text = unit_spelling(i, &u)); i++)
		if (u == wanted) {
			fputs(separator, out);
			escape(out, text);
			separator = "|";
		}
}

static bool dimension_used(enum dimension d)
{
	for (size_t i = 0; i < FIELD_COUNT; i++)
		if (field_table[i].type == FIELD_QUANTITY && field_table[i].dimension == d)
			return true;
	return false;
}

static void define_quantity(FILE *out, enum dimension d)
{
	fprintf(out,
		"\t<define name=\"%s\">\n\t\t<data type=\"token\">\n\t\t\t<param name=\"pattern\">",
		pattern_name[d]);
	if (d == DIM_LENGTH) {
		fputs("(\\+|-)?([0-9]+ ?(", out);
		spellings(out, UNIT_FT);
		fputs(")( |-| -)?" NUMBER " ?(", out);
		spellings(out, UNIT_IN);
		fputs(")|" NUMBER " ?(", out);
		units(out, d);
		fputs("))", out);
	} else if (d == DIM_ANGLE) {
		fputs("(\\+|-)?" NUMBER "( ?(%|", out);
		units(out, d);
		fputs(")| ?: ?" NUMBER ")", out);
	} else {
		fputs("(\\+|-)?" NUMBER " ?(", out);
		units(out, d);
		fputs(")", out);
	}
	fputs("</param>\n\t\t</data>\n\t</define>\n", out);
}

static void limit(FILE *out, const char *name, double value, bool whole)
{
	char text[40];
	size_t n;

	number_print(text, sizeof text, value, whole ? 0 : 3);
	n = strlen(text);
	while (!whole && text[n - 1] == '0')
		text[--n] = '\0';
	if (text[n - 1] == '.')
		text[n - 1] = '\0';
	fprintf(out, "\t\t\t\t\t<param name=\"%s\">%s</param>\n", name, text);
}

static void choices(FILE *out, const struct field *f)
{
	for (const struct field_choice *c = f->choice; c->word; c++) {
		fputs("\t\t\t\t\t<value>", out);
		escape(out, c->word);
		fputs("</value>\n\t\t\t\t\t<a:documentation>", out);
		escape(out, c->meaning);
		fputs("</a:documentation>\n", out);
	}
}

static void text_data(FILE *out, size_t least, size_t most, const char *pattern)
{
	fputs("\t\t\t\t<data type=\"token\">\n", out);
	if (pattern)
		fprintf(out, "\t\t\t\t\t<param name=\"pattern\">%s</param>\n", pattern);
	else
		fprintf(out,
			"\t\t\t\t\t<param name=\"minLength\">%zu</param>\n"
			"\t\t\t\t\t<param name=\"maxLength\">%zu</param>\n",
			least, most);
	fputs("\t\t\t\t</data>\n", out);
}

static void value(FILE *out, const struct field *f)
{
	switch (f->type) {
	case FIELD_QUANTITY:
		fprintf(out, "\t\t\t\t<ref name=\"%s\"/>\n", pattern_name[f->dimension]);
		return;
	case FIELD_NUMBER:
	case FIELD_INTEGER:
		fprintf(out, "\t\t\t\t<data type=\"%s\">\n",
			f->type == FIELD_NUMBER ? "decimal" : "integer");
		limit(out, "minInclusive", f->min, f->type == FIELD_INTEGER);
		limit(out, "maxInclusive", f->max, f->type == FIELD_INTEGER);
		fputs("\t\t\t\t</data>\n", out);
		return;
	case FIELD_CHOICE:
		fputs("\t\t\t\t<choice>\n", out);
		choices(out, f);
		fputs("\t\t\t\t</choice>\n", out);
		return;
	case FIELD_KEY:
		if (f->choice) {
			fputs("\t\t\t\t<choice>\n", out);
			choices(out, f);
			fputs("\t\t\t\t</choice>\n", out);
		} else {
			text_data(out, 1, f->size - 1, NULL);
		}
		return;
	case FIELD_SIZE:
		text_data(out, 0, 0, "[1-9][0-9]* ?(x|X|\xC3\x97) ?[1-9][0-9]*(-[a-z0-9]+)*");
		return;
	case FIELD_TEXT:
		text_data(out, f->need == NEED_REQUIRED ? 1 : 0, f->size - 1, NULL);
		return;
	}
}

static void attribute(FILE *out, const struct field *f)
{
	const bool optional = f->need != NEED_REQUIRED, unknown = value_may_be_unknown(f);
	char text[200];

	if (optional)
		fputs("\t\t\t<optional>\n", out);
	fprintf(out, "\t\t\t<attribute name=\"%s\">\n\t\t\t\t<a:documentation>", f->attribute);
	escape(out, f->meaning);
	fputs("\nOn site: ", out);
	escape(out, f->measured);
	fputs("\nValue: ", out);
	escape(out, describe_domain(text, sizeof text, f));
	fputs(". ", out);
	escape(out, describe_need(text, sizeof text, f));
	fputs("\nSuch as: ", out);
	escape(out, f->example);
	fputs("</a:documentation>\n", out);
	if (unknown)
		fputs("\t\t\t\t<choice>\n\t\t\t\t<value>unknown</value>\n", out);
	value(out, f);
	if (unknown)
		fputs("\t\t\t\t</choice>\n", out);
	fputs("\t\t\t</attribute>\n", out);
	if (optional)
		fputs("\t\t\t</optional>\n", out);
}

static bool element_needed(enum element e)
{
	for (size_t i = element_table[e].first; i <= (size_t)element_table[e].last; i++)
		if (field_table[i].need == NEED_REQUIRED)
			return true;
	return false;
}

/* References to the elements that stand inside e, in any order. */
static void children(FILE *out, enum element e)
{
	bool any = false;

	for (size_t c = ELEMENT_JOB + 1; c < ELEMENT_COUNT; c++) {
		const bool many = element_table[c].max > 1;
		const char *const wrap = many                              ? "zeroOrMore"
					 : element_needed((enum element)c) ? NULL
									   : "optional";

		if (element_table[c].parent != e)
			continue;
		if (!any)
			fputs("\t\t\t<interleave>\n", out);
		any = true;
		if (wrap)
			fprintf(out, "\t\t\t\t<%s><ref name=\"%s\"/></%s>\n", wrap,
				element_table[c].name, wrap);
		else
			fprintf(out, "\t\t\t\t<ref name=\"%s\"/>\n", element_table[c].name);
	}
	fputs(any ? "\t\t\t</interleave>\n" : "\t\t\t<empty/>\n", out);
}

static void define_element(FILE *out, enum element e)
{
	const struct element_row *r = &element_table[e];

	fprintf(out, "\t<define name=\"%s\">\n\t\t<element name=\"%s\">\n\t\t\t<a:documentation>",
		r->name, r->name);
	escape(out, r->meaning);
	fputs("</a:documentation>\n", out);
	for (size_t i = r->first; i <= (size_t)r->last; i++)
		attribute(out, &field_table[i]);
	children(out, e);
	fputs("\t\t</element>\n\t</define>\n", out);
}

void describe_rng(FILE *out)
{
	fputs("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
	      "<!-- SPDX-License-Identifier: MIT -->\n"
	      "<!-- Made by src/job/describe.c from the field table; not edited. -->\n"
	      "<grammar xmlns=\"http://relaxng.org/ns/structure/1.0\"\n"
	      "         xmlns:a=\"http://relaxng.org/ns/compatibility/annotations/1.0\"\n"
	      "         datatypeLibrary=\"http://www.w3.org/2001/XMLSchema-datatypes\">\n"
	      "\t<a:documentation>A job of rafterproof: a house, its roof and the collectors that "
	      "will stand on it. Every value is\n"
	      "an attribute; quantities carry their unit. Ranges, and what fields say to each "
	      "other, are checked by the\n"
	      "program when it reads the job. `unknown` may be written wherever a field may be "
	      "left out.</a:documentation>\n"
	      "\t<start>\n\t\t<ref name=\"job\"/>\n\t</start>\n",
	      out);
	for (size_t e = 0; e < ELEMENT_COUNT; e++)
		define_element(out, (enum element)e);
	for (int d = 0; d < DIM_COUNT; d++)
		if (pattern_name[d] && dimension_used((enum dimension)d))
			define_quantity(out, (enum dimension)d);
	fputs("</grammar>\n", out);
}
