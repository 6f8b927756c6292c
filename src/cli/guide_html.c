/* SPDX-License-Identifier: MIT */
#include "cli/guide_html.h"

#include "drawing/lettering.h"

enum exit_status guide_html(const struct command *c, const struct options *o, struct problem_list *problems,
                            const struct page_request *page)
{
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
	built = o->sheet ? page_write_sheet(out.f, lettering, page) : page_write(out.f, lettering, page);
	lettering_destroy(lettering);
	if (!built)
		command_no_memory(problems);
	return output_end(&out, o->output, built, problems) && built ? EXIT_HOLDS : EXIT_MACHINE;
}
