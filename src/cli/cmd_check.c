/* SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>

#include "check/check.h"
#include "cli/data_dir.h"
#include "cli/job_open.h"
#include "report/check_report.h"
#include "report/flashing_notes.h"
#include "report/json_check.h"

/* Everything that one check needs; about a megabyte, so not on the stack. */
struct room {
	struct job job;
	struct result result;
	struct check_workspace workspace;
	char details[OUTPUT_PATH_MAX];
};

static int write_json(FILE *f, const void *what)
{
	const struct room *room = what;

	return json_check_write(f, &room->job, &room->result);
}

static enum exit_status write_report(struct room *room, const struct options *o,
                                     struct problem_list *problems)
{
	if (o->json)
		return command_write_json(write_json, room, o, problems);
	const bool found = data_dir_details(room->details, sizeof room->details);
	struct flashing_request request = { found ? room->details : NULL, o->notes, false };
	const struct check_options options = { o->attachment, flashing_notes, &request };
	struct document *d = document_create(NULL);

	if (d)
		check_report_build(d, &room->job, &room->result, &options);
	return command_write_text(d, o, problems);
}

static bool attachment_exists(const struct result *r, int number)
{
	const struct pass *pass = &r->pass[r->judged];

	for (int i = 0; i < pass->attachments; i++)
		if (pass->attachment[i].number == number)
			return true;
	return false;
}

static enum exit_status check(struct room *room, const struct command *c, const struct options *o,
                              struct problem_list *problems)
{
	if (!job_open(o, &room->job, problems))
		return EXIT_INPUT;
	check_run(&room->job, &room->result, &room->workspace);
	if (o->attachment > 0 && !attachment_exists(&room->result, o->attachment))
		return command_misused(c, problems, "--attachment",
		                       "the number of an attachment of this job");
	const enum exit_status written = write_report(room, o, problems);

	return written == EXIT_HOLDS ? verdict_status(room->result.verdict) : written;
}

enum exit_status command_check(const struct command *c, const struct options *o,
                               struct problem_list *problems)
{
	if (o->words != 1)
		return command_misused(c, problems, o->words ? o->word[1] : NULL, "one job file");
	struct room *room = calloc(1, sizeof *room);

	if (!room)
		return command_no_memory(problems);
	const enum exit_status status = check(room, c, o, problems);

	free(room);
	return status;
}
