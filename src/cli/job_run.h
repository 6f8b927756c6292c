/* SPDX-License-Identifier: MIT */
/* One job read and checked, with what its drawings and sheets need: typeface, covering library,
 * date. */
#ifndef RP_CLI_JOB_RUN_H
#define RP_CLI_JOB_RUN_H

#include "check/check.h"
#include "cli/command.h"
#include "cli/output.h"
#include "report/flashing_notes.h"
#include "sheet/sheets.h"

struct job_run {
	struct job job;
	struct result result;
	struct check_workspace workspace;
	char details[OUTPUT_PATH_MAX];
	struct flashing_request flashing;
	struct prices prices;
	struct lettering *lettering;
	struct guide_library *library; /* NULL where it cannot be read: details then say so */
	struct sheet sheet;
	struct sheet_request request;
};

/* Reads the job that the options name, checks it, opens the rest. NULL with problems and *status
   set when anything that is needed is missing. About two megabytes, so on the heap. */
struct job_run *job_run_open(const struct command *c, const struct options *o,
			     struct problem_list *problems, enum exit_status *status);
void job_run_close(struct job_run *run);

/* What a file name ends in. */
enum file_kind { FILE_OTHER, FILE_SVG, FILE_DXF, FILE_PDF, FILE_HTML };
enum file_kind file_kind_of(const char *name);

/* Writes set to the file that the options name, and says so on standard output; closes the set. */
enum exit_status job_run_write(struct job_run *run, struct sheet_set *set, const struct command *c,
			       const struct options *o, struct problem_list *problems);

#endif
