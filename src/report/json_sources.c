/* SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/step_table.h"
#include "report/caution.h"
#include "report/json_value.h"
#include "report/sources_report.h"
#include "table/tables.h"

static void put_table(struct json *j, json_t *object, const struct table_info *t)
{
	json_t *status = NULL, *rows;

	put_text(j, object, "table", t->name);
	put_text(j, object, "title", t->title);
	put_text(j, object, "standard", t->standard);
	put_text(j, object, "clause", t->clause);
	put_text(j, object, "action", source_action(t->name));
	put_int(j, object, "row_count", (long long)t->rows);
	status = put_object(j, object, "status");
	for (int c = 0; c < (int)CONFIDENCE_COUNT; c++)
		put_int(j, status, confidence_text((enum confidence)c), (long long)t->status[c]);
	rows = put_array(j, object, "unconfirmed");
	for (size_t i = 0; i < TABLE_DOUBT_COUNT && !j->failed; i++) {
		const struct table_doubt *r = &table_doubt[i];

		if (strcmp(r->table, t->name) != 0)
			continue;
		json_t *row = append_object(j, rows);

		put_text(j, row, "row", r->row);
		put_text(j, row, "status", confidence_text(r->status));
		put_text(j, row, "source", r->source);
		put_text(j, row, "note", r->note);
	}
}

static void put_steps(struct json *j, json_t *array)
{
	for (size_t i = 0; i < step_table_count && !j->failed; i++) {
		const struct step *s = step_table[i];

		if (s->confidence == CONFIRMED || s->confidence == DERIVED)
			continue;
		json_t *object = append_object(j, array);

		put_text(j, object, "step", s->name);
		put_text(j, object, "symbol", s->symbol);
		put_text(j, object, "formula", s->formula);
		put_text(j, object, "clause", step_clause(s, EDITION_ANY));
		put_text(j, object, "status", confidence_text(s->confidence));
		put_text(j, object, "note", s->note);
		put_text(j, object, "action", source_action(NULL));
	}
}

int json_sources_write(FILE *f, const void *what)
{
	const struct sources_list *list = what;
	struct json j;
	json_t *root = json_begin(&j, "sources", SYSTEM_US);

	if (root) {
		json_t *tables = put_array(&j, root, "tables");

		for (size_t i = 0; i < TABLE_COUNT && !j.failed; i++)
			if (!list->table || strcmp(list->table, table_info[i].name) == 0)
				put_table(&j, append_object(&j, tables), &table_info[i]);
		json_t *steps = put_array(&j, root, "steps");

		if (!list->table)
			put_steps(&j, steps);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}
