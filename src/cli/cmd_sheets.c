/* SPDX-License-Identifier: MIT */
#include "cli/job_run.h"

typedef bool build_fn(struct sheet_set *set, const struct sheet *s,
		      const struct sheet_request *request);

static enum exit_status write_set(build_fn *build, const struct command *c, const struct options *o,
				  struct problem_list *problems)
{
	const enum file_kind kind = file_kind_of(o->output);
	enum exit_status status;
	struct sheet_set set;

	if (kind != FILE_PDF && kind != FILE_HTML)
		return command_misused(c, problems, o->output ? o->output : "no -o",
				       "-o with a name that ends in .pdf or .html");
	if (o->phone)
		return command_misused(c, problems, "phone",
				       "--paper letter or a4: an HTML file fits a telephone too");
	struct job_run *run = job_run_open(c, o, problems, &status);

	if (!run)
		return status;
	if (build(&set, &run->sheet, &run->request)) {
		status = job_run_write(run, &set, c, o, problems);
	} else {
		sheets_close(&set);
		status = command_no_memory(problems);
	}
	job_run_close(run);
	return status;
}

enum exit_status command_sheets(const struct command *c, const struct options *o,
				struct problem_list *problems)
{
	return write_set(sheets_build, c, o, problems);
}

enum exit_status command_field(const struct command *c, const struct options *o,
			       struct problem_list *problems)
{
	return write_set(sheets_build_field, c, o, problems);
}
