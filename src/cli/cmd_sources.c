/* SPDX-License-Identifier: MIT */
#include "cli/command.h"
#include "report/sources_report.h"

enum exit_status command_sources(const struct command *c, const struct options *o,
				 struct problem_list *problems)
{
	const struct sources_list list = {o->words == 1 ? o->word[0] : NULL};

	if (o->words > 1)
		return command_misused(c, problems, o->word[1], "one table");
	if (list.table && !sources_table_known(list.table))
		return command_misused(c, problems, list.table,
				       "a table that `rafterproof sources` lists");
	if (o->json)
		return command_write_json(json_sources_write, &list, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		sources_report_build(d, &list);
	return command_write_text(d, o, problems);
}
