/* SPDX-License-Identifier: MIT */
/* rafterproof fastener key=value...: which fasteners hold a load. */
#include <stdlib.h>

#include "cli/fastener_key.h"
#include "report/fastener_report.h"

static enum exit_status write_out(const struct fastener_list *list, const struct options *o,
				  struct problem_list *problems)
{
	struct document *d;

	if (o->json)
		return command_write_json(json_fastener_write, list, o, problems);
	d = document_create(NULL);
	if (d)
		fastener_report_build(d, list);
	return command_write_text(d, o, problems);
}

enum exit_status command_fastener(const struct command *c, const struct options *o,
				  struct problem_list *problems)
{
	struct fastener_list list = {.question = fastener_question_default(), .units = o->units};

	fastener_read(c, o, &list.question, problems);
	if (problem_any(problems))
		return EXIT_INPUT;
	struct check_workspace *w = malloc(sizeof *w);

	if (!w)
		return command_no_memory(problems);
	fastener_table_fill(&list.question, w, &list.table);
	free(w);
	const enum exit_status written = write_out(&list, o, problems);

	return written == EXIT_HOLDS && list.table.least < 0 ? EXIT_DOES_NOT_HOLD : written;
}
