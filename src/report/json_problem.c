/* SPDX-License-Identifier: MIT */
#include "report/json_problem.h"

#include "report/json_value.h"

static void add_problem(struct json *j, json_t *object, const struct problem *p)
{
	put_int(j, object, "number", p->code);
	put_text(j, object, "text", problem_text(p->code));
	put_text(j, object, "file", p->file);
	put(j, object, "line", p->line > 0 ? json_integer(p->line) : json_null());
	put_text(j, object, "field", p->field);
	put_text(j, object, "given", p->given);
	put_text(j, object, "accepted", p->accepted);
}

static void add_problems(struct json *j, json_t *root, const struct problem_list *list)
{
	json_t *array = put_array(j, root, "problems");

	for (size_t i = 0; i < list->count && !j->failed; i++)
		add_problem(j, append_object(j, array), &list->item[i]);
	put_int(j, root, "dropped", (long long)list->dropped);
}

int json_problems_write(FILE *f, const char *command, const struct problem_list *list)
{
	struct json j;
	json_t *root = json_begin(&j, command, SYSTEM_US);

	if (root)
		add_problems(&j, root, list);
	return json_end(&j, root, f);
}
