/* SPDX-License-Identifier: MIT */
#include "report/fields_report.h"


#include "job/element.h"
#include "job/value.h"

const char *field_need_word(enum field_need need)
{
	switch (need) {
	case NEED_REQUIRED:
		return "required";
	case NEED_DEFAULT:
		return "default";
	case NEED_ASSUMED:
		return "assumed";
	case NEED_OPTIONAL:
		return "optional";
	}
	return "";
}

/* What happens when the field is left out. */
static const char *when_absent(struct document *d, const struct field *f)
{
	const char *fallback = f->fallback ? f->fallback : "";

	switch (f->need) {
	case NEED_REQUIRED:
		return "no check without it";
	case NEED_DEFAULT:
		return document_text(d, "%s is taken", fallback);
	case NEED_ASSUMED:
		return document_text(d, "%s is assumed, and the report says so", fallback);
	case NEED_OPTIONAL:
		return "what depends on it is not checked, and the report says so";
	}
	return "";
}

static void add_element(struct document *d, enum element e)
{
	static const struct column columns[] = {
		{ "field", ALIGN_LEFT, true, false },
		{ "need", ALIGN_LEFT, false, false },
		{ "such as", ALIGN_LEFT, false, false },
		{ "meaning", ALIGN_LEFT, false, true },
	};
	const struct element_row *row = &element_table[e];

	document_add(d, BLOCK_HEADING, 2, "%s%s", row->name,
	             row->max > 1 ? " (may occur many times)" : "");
	document_add(d, BLOCK_PARAGRAPH, 0, "%s", row->meaning);
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (size_t i = row->first; i <= (size_t)row->last; i++) {
		const struct field *f = &field_table[i];

		document_row(d);
		document_cell(d, "%s.%s", f->element, f->attribute);
		document_cell(d, "%s", field_need_word(f->need));
		document_cell(d, "%s", f->example ? f->example : "-");
		document_cell(d, "%s", f->meaning);
	}
}

static void add_choices(struct document *d, const struct field *f)
{
	document_add(d, BLOCK_PARAGRAPH, 0, "Words it takes:");
	document_pairs(d);
	for (const struct field_choice *c = f->choice; c->word; c++)
		document_pair(d, c->word, "", "%s", c->meaning ? c->meaning : "");
}

static void add_field(struct document *d, const struct field *f, enum unit_system units)
{
	char text[ACCEPTED_MAX];

	document_add(d, BLOCK_TITLE, 0, "%s.%s", f->element, f->attribute);
	document_add(d, BLOCK_PARAGRAPH, 0, "%s", f->meaning);
	document_pairs(d);
	document_pair(d, "need", "", "%s", field_need_word(f->need));
	document_pair(d, "when left out", "", "%s", when_absent(d, f));
	if (f->example)
		document_pair(d, "such as", "", "%s", f->example);
	if (f->type == FIELD_QUANTITY || f->type == FIELD_NUMBER || f->type == FIELD_INTEGER)
		document_pair(d, "range", "", "%s", value_range(text, sizeof text, f, units));
	if (f->type == FIELD_QUANTITY)
		document_pair(d, "units", "", "%s", dimension_units(f->dimension));
	document_pair(d, "unknown", "", "%s",
	              value_may_be_unknown(f) ? "may be written" : "is refused");
	document_pair(d, "on site", "", "%s", f->measured ? f->measured : "-");
	if (f->choice)
		add_choices(d, f);
}

void fields_report_build(struct document *d, const struct field_list *list)
{
	if (list->field) {
		add_field(d, list->field, list->units);
		return;
	}
	document_add(d, BLOCK_TITLE, 0, "What a job file may hold");
	document_add(d, BLOCK_PARAGRAPH, 0,
	             "Each element of the file below, each attribute of it with an example. "
	             "rafterproof fields FIELD tells "
	             "the range, the words and how it is found on site. Any field can be set for "
	             "one run: rafterproof check "
	             "JOB.xml --set field=value.");
	for (int e = 0; e < ELEMENT_COUNT; e++)
		add_element(d, (enum element)e);
}
