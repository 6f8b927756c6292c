/* SPDX-License-Identifier: MIT */
#include "cli/command.h"
#include "report/fields_report.h"

enum exit_status command_fields(const struct command *c, const struct options *o,
                                struct problem_list *problems)
{
	struct field_list list = { .field = NULL, .units = o->units };

	if (o->words > 1)
		return command_misused(c, problems, o->word[1], "one field");
	if (o->words == 1) {
		list.field = field_find(o->word[0]);
		if (!list.field)
			return command_misused(c, problems, o->word[0],
			                       "a field that `rafterproof fields` lists");
	}
	if (o->json)
		return command_write_json(json_fields_write, &list, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		fields_report_build(d, &list);
	return command_write_text(d, o, problems);
}
