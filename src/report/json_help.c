/* SPDX-License-Identifier: MIT */
#include "report/json_help.h"

#include "report/caution.h"
#include "report/json_value.h"

static void add_commands(struct json *j, json_t *root, const struct help_row *row, size_t n)
{
	json_t *array = put_array(j, root, "commands");

	for (size_t i = 0; i < n && !j->failed; i++) {
		json_t *object = append_object(j, array);

		put_text(j, object, "name", row[i].name);
		put_text(j, object, "operands", row[i].operands);
		put_text(j, object, "summary", row[i].summary);
	}
	put_text(j, root, "caution", caution_result);
}

int json_help_write(FILE *f, const struct help_row *row, size_t n)
{
	struct json j;
	json_t *root = json_begin(&j, "help", SYSTEM_US);

	if (root)
		add_commands(&j, root, row, n);
	return json_end(&j, root, f);
}

int json_version_write(FILE *f)
{
	struct json j;
	json_t *root = json_begin(&j, "version", SYSTEM_US);

	return json_end(&j, root, f);
}
