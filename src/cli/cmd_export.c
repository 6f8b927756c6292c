/* SPDX-License-Identifier: MIT */
#include "cli/command.h"
#include "cli/library.h"
#include "report/caution.h"
#include "report/guide_report.h"

static enum exit_status write_done(const struct export_json *done, const struct options *o,
                                   struct problem_list *problems)
{
	if (o->json)
		return command_write_json(json_export_write, done, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		document_add(d, BLOCK_PARAGRAPH, 0,
		             "%d coverings, the parts they share and the schema are in %s.",
		             (int)done->coverings, done->directory);
	if (d && done->compressed)
		document_add(d, BLOCK_PARAGRAPH, 0,
		             "The files ending in .gz are copies for sending. `rafterproof guide --library` reads the plain files: "
		             "where only copies arrive, unpack them first (gunzip *.gz).");
	if (d)
		document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
	return command_write_text(d, o, problems);
}

enum exit_status command_export(const struct command *c, const struct options *o,
                                struct problem_list *problems)
{
	if (o->words != 1)
		return command_misused(c, problems, o->words ? o->word[1] : NULL, "one directory");
	struct guide_library *lib = library_open(problems);

	if (!lib)
		return EXIT_INPUT;
	const struct export_json done = { o->word[0], o->compress, guide_page_count(lib) };
	const bool exported = guide_export(lib, o->word[0], o->compress, problems);

	guide_close(lib);
	return exported ? write_done(&done, o, problems) : EXIT_MACHINE;
}
