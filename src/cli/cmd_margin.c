/* SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "cli/job_open.h"
#include "report/margin_report.h"

struct room {
	struct job job;
	struct check_workspace workspace;
	struct margin margin;
};

static enum exit_status margin(struct room *room, const struct options *o,
			       struct problem_list *problems)
{
	const struct margin_view view = {&room->job, &room->margin};

	if (!job_open(o, &room->job, problems))
		return EXIT_INPUT;
	margin_find(&room->job, &room->workspace, &room->margin);
	if (o->json)
		return command_write_json(json_margin_write, &view, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		margin_report_build(d, &view);
	return command_write_text(d, o, problems);
}

enum exit_status command_margin(const struct command *c, const struct options *o,
				struct problem_list *problems)
{
	if (o->words != 1)
		return command_misused(c, problems, o->words ? o->word[1] : NULL, "one job file");
	struct room *room = calloc(1, sizeof *room);

	if (!room)
		return command_no_memory(problems);
	const enum exit_status status = margin(room, o, problems);

	free(room);
	return status;
}
