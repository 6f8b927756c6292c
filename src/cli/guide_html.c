/* SPDX-License-Identifier: MIT */
#include "cli/guide_html.h"

#include "drawing/lettering.h"
#include "report/feet_notes.h"
#include "sheet/html.h"

static bool of_job(FILE *f, const void *what)
{
	const struct job_found *found = what;
	struct document *d = document_create(NULL);
	bool whole;

	if (!d)
		return false;
	covering_notes(d, found->job, found->result);
	whole = !document_failed(d);
	fputs("<section id=\"this-job\">\n", f);
	if (whole)
		html_document(f, d);
	fputs("</section>\n", f);
	document_destroy(d);
	return whole;
}

enum exit_status guide_html(const struct command *c, const struct options *o, struct problem_list *problems,
                            const struct page_request *page)
{
	struct page_request with = *page;
	struct output out;
	bool missing, built;
	struct lettering *lettering;

	if (!page->guide.key)
		return command_misused(c, problems, "no covering", "a covering, for --format html");
	lettering = lettering_create(&missing);
	if (!lettering && missing) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, LETTERING_FAMILY, 0, NULL, NULL,
		            "this typeface (Debian: fonts-dejavu-core)");
		return EXIT_MACHINE;
	}
	if (!lettering)
		return command_no_memory(problems);
	if (!output_begin(&out, problems)) {
		lettering_destroy(lettering);
		return EXIT_MACHINE;
	}
	with.of_job = page->of_job_what ? of_job : NULL;
	built = o->sheet ? page_write_sheet(out.f, lettering, &with) : page_write(out.f, lettering, &with);
	lettering_destroy(lettering);
	if (!built)
		command_no_memory(problems);
	return output_end(&out, o->output, built, problems) && built ? EXIT_HOLDS : EXIT_MACHINE;
}
