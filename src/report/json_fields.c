/* SPDX-License-Identifier: MIT */
#include "job/element.h"
#include "job/value.h"
#include "report/fields_report.h"
#include "report/json_value.h"

static const char *type_word(enum field_type type)
{
	switch (type) {
	case FIELD_QUANTITY:
		return "quantity";
	case FIELD_NUMBER:
		return "number";
	case FIELD_INTEGER:
		return "integer";
	case FIELD_CHOICE:
		return "choice";
	case FIELD_KEY:
		return "key";
	case FIELD_SIZE:
		return "size";
	case FIELD_TEXT:
		return "text";
	}
	return NULL;
}

static void put_choices(struct json *j, json_t *object, const struct field *f)
{
	json_t *array = put_array(j, object, "choices");

	for (const struct field_choice *c = f->choice; c && c->word && !j->failed; c++) {
		json_t *choice = append_object(j, array);

		put_text(j, choice, "word", c->word);
		put_text(j, choice, "meaning", c->meaning);
	}
}

static void put_range(struct json *j, json_t *object, const struct field *f)
{
	const enum unit u = j->f.units == SYSTEM_US ? f->us : f->si;

	switch (f->type) {
	case FIELD_QUANTITY:
		put_text(j, object, "units", dimension_units(f->dimension));
		put_exact(j, object, "least", f->min, u);
		put_exact(j, object, "most", f->max, u);
		return;
	case FIELD_NUMBER:
	case FIELD_INTEGER:
		put(j, object, "units", json_null());
		put_number(j, object, "least", f->min);
		put_number(j, object, "most", f->max);
		return;
	case FIELD_CHOICE:
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		put(j, object, "units", json_null());
		put(j, object, "least", json_null());
		put(j, object, "most", json_null());
		return;
	}
}

static void put_field(struct json *j, json_t *object, const struct field *f)
{
	put_text(j, object, "field",
	         document_text(j->f.document, "%s.%s", f->element, f->attribute));
	put_bool(j, object, "repeats", field_repeats(f));
	put_text(j, object, "type", type_word(f->type));
	put_text(j, object, "need", field_need_word(f->need));
	put_text(j, object, "fallback", f->fallback);
	put_text(j, object, "example", f->example);
	put_bool(j, object, "unknown_allowed", value_may_be_unknown(f));
	put_range(j, object, f);
	put_choices(j, object, f);
	put_text(j, object, "meaning", f->meaning);
	put_text(j, object, "measured", f->measured);
}

int json_fields_write(FILE *f, const void *what)
{
	const struct field_list *list = what;
	struct json j;
	json_t *root = json_begin(&j, "fields", list->units);

	if (root) {
		json_t *array = put_array(&j, root, "fields");

		for (int i = 0; i < FIELD_COUNT && !j.failed; i++)
			if (!list->field || list->field == &field_table[i])
				put_field(&j, append_object(&j, array), &field_table[i]);
	}
	return json_end(&j, root, f);
}
