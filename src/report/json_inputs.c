/* SPDX-License-Identifier: MIT */
#include "report/field_value.h"
#include "report/json_part.h"

#include <string.h>

static void add_value(struct json *j, json_t *object, const struct job *job,
                      const struct field *field, int n)
{
	const void *at = field_address(job, field, n);
	double real = 0.0;
	int whole = 0;

	if (!field_present(job, field, n)) {
		put(j, object, "value", json_null());
		return;
	}
	switch (field->type) {
	case FIELD_QUANTITY:
		memcpy(&real, at, sizeof real);
		put_exact(j, object, "value", real,
		          j->f.units == SYSTEM_US ? field->us : field->si);
		return;
	case FIELD_NUMBER:
		memcpy(&real, at, sizeof real);
		put_number(j, object, "value", real);
		return;
	case FIELD_INTEGER:
		memcpy(&whole, at, sizeof whole);
		put_int(j, object, "value", whole);
		return;
	case FIELD_CHOICE:
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		put_text(j, object, "value", field_text(&j->f, job, field, n));
		return;
	}
}

void put_inputs(struct json *j, json_t *root, const struct job *job)
{
	json_t *array = put_array(j, root, "inputs");

	for (int i = 0; i < FIELD_COUNT; i++) {
		const struct field *field = &field_table[i];
		const bool many = field_repeats(field);
		const enum field_origin origin = field_origin_of(job, field);

		for (int n = 0; n < field_occurrences(job, field) && !j->failed; n++) {
			json_t *object = append_object(j, array);

			put_text(j, object, "field",
			         document_text(j->f.document, "%s.%s", field->element,
			                       field->attribute));
			put(j, object, "occurrence", many ? json_integer(n + 1) : json_null());
			add_value(j, object, job, field, n);
			put_text(j, object, "text", field_text(&j->f, job, field, n));
			put_text(j, object, "origin", field_origin_text(origin));
		}
	}
}
