/* SPDX-License-Identifier: MIT */
#include "cli/job_open.h"
#include "cli/job_run.h"
#include "report/caution.h"
#include "sheet/json_sheets.h"

static int write_json(FILE *f, const void *what)
{
	return json_materials_write(f, what);
}

static enum exit_status list(struct job_run *run, const struct options *o,
			     struct problem_list *problems)
{
	const struct materials m = materials_of(&run->sheet, run->request.prices);
	const struct materials_json what = {&run->sheet, &m, run->request.prices};

	if (o->json)
		return command_write_json(write_json, &what, o, problems);
	struct document *d = document_create(NULL);

	if (d) {
		document_add(d, BLOCK_TITLE, 0, "Materials: %s", run->job.title);
		document_add(d, BLOCK_PARAGRAPH, 0, "%s. Job %s.", sheet_verdict(&run->sheet),
			     run->sheet.fingerprint);
		materials_report(&run->sheet, d, &m, run->request.prices);
		document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
	}
	return command_write_text(d, o, problems);
}

enum exit_status command_materials(const struct command *c, const struct options *o,
				   struct problem_list *problems)
{
	enum exit_status status;
	struct job_run *run = job_run_open(c, o, problems, &status);

	if (!run)
		return status;
	status = list(run, o, problems);
	if (status == EXIT_HOLDS)
		status = verdict_status(run->result.verdict);
	job_run_close(run);
	return status;
}
