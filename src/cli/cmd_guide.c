/* SPDX-License-Identifier: MIT */
#include "cli/command.h"
#include "cli/library.h"
#include "report/caution.h"
#include "report/guide_report.h"

static void build(struct document *d, const struct guide_library *lib,
                  const struct guide_request *request, struct problem_list *problems)
{
	if (!request->key) {
		guide_report_list(d, lib);
		return;
	}
	guide_report_page(d, lib, request, 0, problems);
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

static enum exit_status write_guide(const struct guide_library *lib, const struct options *o,
                                    struct problem_list *problems)
{
	const struct guide_request request = { .key = o->words > 0 ? o->word[0] : NULL,
		                               .units = o->units,
		                               .depth = GUIDE_FULL };
	const struct guide_json what = { lib, request, problems };

	if (request.key && !guide_page_find(lib, request.key, NULL)) {
		problem_add(problems, PROBLEM_UNKNOWN_COVERING, "command line", 0, "guide",
		            request.key, "a key that `rafterproof guide` lists");
		return EXIT_INPUT;
	}
	if (o->json)
		return command_write_json(json_guide_write, &what, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		build(d, lib, &request, problems);
	return command_write_text(d, o, problems);
}

enum exit_status command_guide(const struct command *c, const struct options *o,
                               struct problem_list *problems)
{
	if (o->words > 1)
		return command_misused(c, problems, o->word[1], "one covering");
	struct guide_library *lib = library_open(problems);

	if (!lib)
		return EXIT_INPUT;
	const enum exit_status status = write_guide(lib, o, problems);

	guide_close(lib);
	return status;
}
