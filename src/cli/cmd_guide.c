/* SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "check/check.h"
#include "cli/command.h"
#include "cli/guide_html.h"
#include "cli/library.h"
#include "job/job_read.h"
#include "report/caution.h"
#include "report/feet_notes.h"
#include "report/flashing_sizes.h"
#include "report/guide_report.h"

/* The job whose sizes are filled in; about two megabytes. */
struct job_sizes {
	struct job job;
	struct result result;
	struct check_workspace workspace;
	struct guide_sizes sizes;
};

struct guide_run {
	const struct command *c;
	const struct options *o;
	struct problem_list *problems;
	struct guide_library *lib;
	struct job_sizes *job; /* NULL: none given */
	struct guide_request request;
};

static bool read_job(struct guide_run *g)
{
	const char *const units = g->o->units == SYSTEM_SI ? "job.units=si" : "job.units=us";

	g->job = calloc(1, sizeof *g->job);
	if (!g->job) {
		command_no_memory(g->problems);
		return false;
	}
	if (!job_read_file(g->o->job, &units, g->o->units_given ? 1 : 0, &g->job->job, g->problems))
		return false;
	check_run(&g->job->job, &g->job->result, &g->job->workspace);
	g->job->sizes = flashing_sizes(&g->job->job, &g->job->result);
	g->request.sizes = &g->job->sizes;
	g->request.units = g->job->job.units;
	g->request.fastener = flashing_fastener(&g->job->job);
	return true;
}

/* The covering of the command line, or else of the job; they must not differ. */
static bool choose_covering(struct guide_run *g)
{
	const char *of_job = g->job ? g->job->job.roof.covering : NULL;

	g->request.key = g->o->words > 0 ? g->o->word[0] : of_job;
	if (of_job && strcmp(of_job, g->request.key) != 0) {
		problem_add(g->problems, PROBLEM_USAGE, "command line", 0, "guide", g->request.key,
			    "the covering of the job, or none");
		return false;
	}
	if (g->request.key && !guide_page_find(g->lib, g->request.key, NULL)) {
		problem_add(g->problems, PROBLEM_UNKNOWN_COVERING, "command line", 0, "guide",
			    g->request.key, "a key that `rafterproof guide` lists");
		return false;
	}
	return true;
}

static enum exit_status write_html(const struct guide_run *g)
{
	const struct job_found found = {g->job ? &g->job->job : NULL, g->job ? &g->job->result : NULL};
	const struct page_request page = {.of_job_what = g->job ? &found : NULL,
					  .lib = g->lib,
					  .guide = g->request,
					  .job = g->job ? g->job->job.title : NULL,
					  .caution = caution_result,
					  .roof_cautions = caution_roof_work};

	return guide_html(g->c, g->o, g->problems, &page);
}

static void build(struct document *d, const struct guide_run *g)
{
	if (g->request.key) {
		guide_report_page(d, g->lib, &g->request, GUIDE_ALONE, g->problems);
		if (g->job)
			covering_notes(d, &g->job->job, &g->job->result);
	} else {
		guide_report_list(d, g->lib);
		guide_report_key(d, g->lib, g->request.units);
	}
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

static enum exit_status write_guide(struct guide_run *g)
{
	const struct guide_json what = {g->lib, g->request, g->problems};

	if (g->o->html)
		return write_html(g);
	if (g->o->sheet)
		return command_misused(g->c, g->problems, "--sheet", "--sheet with --format html");
	if (g->o->json)
		return command_write_json(json_guide_write, &what, g->o, g->problems);
	struct document *d = document_create(NULL);

	if (d)
		build(d, g);
	return command_write_text(d, g->o, g->problems);
}

enum exit_status command_guide(const struct command *c, const struct options *o,
			       struct problem_list *problems)
{
	struct guide_run g = {.c = c, .o = o, .problems = problems};
	enum exit_status status = EXIT_INPUT;

	if (o->words > 1)
		return command_misused(c, problems, o->word[1], "one covering");
	g.request.units = o->units;
	g.request.depth = GUIDE_FULL;
	g.lib = o->library ? guide_open(o->library, problems) : library_open(problems);
	if (g.lib && (!o->job || read_job(&g)) && choose_covering(&g))
		status = write_guide(&g);
	free(g.job);
	guide_close(g.lib);
	return status;
}
