/* SPDX-License-Identifier: MIT */
#include "cli/job_run.h"

#include <stdlib.h>
#include <string.h>

#include "cli/data_dir.h"
#include "cli/job_open.h"
#include "drawing/dxf.h"
#include "drawing/svg.h"
#include "report/caution.h"
#include "sheet/json_sheets.h"

/* Seconds since 1970 by which a reproducible build dates its files; nothing else gives a date. */
static long long build_date(void)
{
	const char *text = getenv("SOURCE_DATE_EPOCH");
	const size_t digits = text ? strspn(text, "0123456789") : 0;

	/* 11 digits reach the year 5138 */
	if (digits == 0 || digits > 11 || text[digits])
		return -1;
	return strtoll(text, NULL, 10);
}

static bool open_letters(struct job_run *run, struct problem_list *problems)
{
	bool missing;

	run->lettering = lettering_create(&missing);
	if (!run->lettering && missing)
		problem_add(problems, PROBLEM_CANNOT_OPEN, LETTERING_FAMILY, 0, NULL, NULL,
			    "this typeface (Debian: fonts-dejavu-core)");
	else if (!run->lettering)
		problem_add(problems, PROBLEM_NO_MEMORY, "rafterproof", 0, NULL, NULL, NULL);
	return run->lettering;
}

static enum exit_status open_all(struct job_run *run, const struct options *o,
				 struct problem_list *problems)
{
	struct problem_list unseen = {.count = 0};

	if (!job_open(o, &run->job, problems) ||
	    (o->prices && !prices_read_file(o->prices, material_keys(), &run->prices, problems)))
		return EXIT_INPUT;
	if (!open_letters(run, problems))
		return EXIT_MACHINE;
	check_run(&run->job, &run->result, &run->workspace);
	const bool found = data_dir_details(run->details, sizeof run->details);

	run->flashing = (struct flashing_request){found ? run->details : NULL, o->notes, true};
	run->library = found ? guide_open(run->details, &unseen) : NULL;
	run->request = (struct sheet_request){.paper = o->phone ? PAPER_PHONE
							       : o->a4  ? PAPER_A4
									: PAPER_LETTER,
					      .screen = file_kind_of(o->output) == FILE_HTML,
					      .prices = o->prices ? &run->prices : NULL,
					      .flashing = &run->flashing,
					      .date = build_date()};
	if (sheet_open(&run->sheet, &run->job, &run->result, run->lettering, run->library))
		return EXIT_HOLDS;
	return command_no_memory(problems);
}

struct job_run *job_run_open(const struct command *c, const struct options *o,
			     struct problem_list *problems, enum exit_status *status)
{
	if (o->words != 1) {
		*status =
			command_misused(c, problems, o->words ? o->word[1] : NULL, "one job file");
		return NULL;
	}
	struct job_run *run = calloc(1, sizeof *run);

	if (!run) {
		*status = command_no_memory(problems);
		return NULL;
	}
	*status = open_all(run, o, problems);
	if (*status == EXIT_HOLDS)
		return run;
	job_run_close(run);
	return NULL;
}

void job_run_close(struct job_run *run)
{
	if (!run)
		return;
	sheet_close(&run->sheet);
	guide_close(run->library);
	lettering_destroy(run->lettering);
	free(run);
}

enum file_kind file_kind_of(const char *name)
{
	static const struct {
		const char *end;
		enum file_kind kind;
	} table[] = {
		{".svg", FILE_SVG}, {".dxf", FILE_DXF}, {".pdf", FILE_PDF}, {".html", FILE_HTML}};
	const size_t n = name ? strlen(name) : 0;

	for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
		const size_t end = strlen(table[i].end);

		if (n > end && strcmp(name + n - end, table[i].end) == 0)
			return table[i].kind;
	}
	return FILE_OTHER;
}

static bool print_set(struct job_run *run, struct sheet_set *set, const struct options *o, FILE *f)
{
	switch (file_kind_of(o->output)) {
	case FILE_SVG:
		drawing_write_svg(f, set->page[0].drawing, SVG_FILE);
		return !ferror(f);
	case FILE_DXF:
		drawing_write_dxf(f, set->page[0].drawing, run->job.units);
		return !ferror(f);
	case FILE_PDF:
		return sheets_write_pdf(f, set, &run->sheet, &run->request) == 0;
	case FILE_HTML:
		return sheets_write_html(f, set, &run->sheet) == 0;
	case FILE_OTHER:
		break;
	}
	return false;
}

static int write_json(FILE *f, const void *what)
{
	return json_sheets_write(f, what);
}

/* What was written, on standard output. */
static enum exit_status tell(const struct job_run *run, const struct sheet_set *set,
			     const struct command *c, const struct options *o,
			     struct problem_list *problems)
{
	struct options to_stdout = *o;
	const struct sheets_json what = {c->name, o->output, set, &run->sheet};

	to_stdout.output = NULL;
	if (o->json)
		return command_write_json(write_json, &what, &to_stdout, problems);
	struct document *d = document_create(NULL);

	if (d)
		document_add(d, BLOCK_PARAGRAPH, 0, "%s: %s, job %s. %s.", o->output,
			     set->n == 1 ? drawing_title(set->page[0].drawing) : "written",
			     run->sheet.fingerprint, sheet_verdict(&run->sheet));
	if (d)
		document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
	return command_write_text(d, &to_stdout, problems);
}

enum exit_status job_run_write(struct job_run *run, struct sheet_set *set, const struct command *c,
			       const struct options *o, struct problem_list *problems)
{
	struct output out;
	bool written = false;

	if (output_begin(&out, problems)) {
		const bool printed = print_set(run, set, o, out.f);

		written = output_end(&out, o->output, printed, problems) && printed;
		if (!printed)
			command_no_memory(problems);
	}
	const enum exit_status told = written ? tell(run, set, c, o, problems) : EXIT_MACHINE;

	sheets_close(set);
	return told == EXIT_HOLDS ? verdict_status(run->result.verdict) : told;
}
