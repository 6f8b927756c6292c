/* SPDX-License-Identifier: MIT */
#include "cli/job_run.h"

static enum exit_status draw(struct job_run *run, const struct command *c, const struct options *o,
			     struct problem_list *problems)
{
	struct sheet_set set;

	if (!sheet_view_exists(&run->sheet, o->view))
		return command_misused(c, problems, o->view,
				       "another --view: this job has nothing to draw there");
	if (!sheets_build_view(&set, &run->sheet, &run->request, o->view)) {
		sheets_close(&set);
		return command_no_memory(problems);
	}
	return job_run_write(run, &set, c, o, problems);
}

enum exit_status command_draw(const struct command *c, const struct options *o,
			      struct problem_list *problems)
{
	const enum file_kind kind = file_kind_of(o->output);
	enum exit_status status;

	if (kind == FILE_OTHER || kind == FILE_HTML)
		return command_misused(c, problems, o->output ? o->output : "no -o",
				       "-o with a name that ends in .svg, .dxf or .pdf");
	if (o->phone && kind != FILE_SVG)
		return command_misused(c, problems, o->output,
				       "-o with a name that ends in .svg: --paper phone is a screen");
	struct job_run *run = job_run_open(c, o, problems, &status);

	if (run)
		status = draw(run, c, o, problems);
	job_run_close(run);
	return status;
}
