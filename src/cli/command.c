/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "cli/command.h"

#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "report/text_writer.h"

const struct command command_table[] = {
#define C(name, mask, operands, summary)                                                           \
	{ #name, OPTION_BIT(FORMAT) | (mask), operands, summary, command_##name },
	COMMANDS(C)
#undef C
};
const size_t command_count = sizeof command_table / sizeof *command_table;

const struct command *command_find(const char *name)
{
	for (size_t i = 0; i < command_count; i++)
		if (strcmp(command_table[i].name, name) == 0)
			return &command_table[i];
	return NULL;
}

enum exit_status command_misused(const struct command *c, struct problem_list *problems,
                                 const char *given, const char *accepted)
{
	problem_add(problems, PROBLEM_USAGE, "command line", 0, c->name, given, accepted);
	return EXIT_INPUT;
}

enum exit_status command_no_memory(struct problem_list *problems)
{
	problem_add(problems, PROBLEM_NO_MEMORY, "rafterproof", 0, NULL, NULL, NULL);
	return EXIT_MACHINE;
}

/* Bold is for people at a terminal who have not asked to be spared (NO_COLOR). */
static bool wants_bold(const struct options *o)
{
	const char *no = getenv("NO_COLOR"), *term = getenv("TERM");

	return !o->output && isatty(STDOUT_FILENO) && !(no && *no) && term &&
	       strcmp(term, "dumb") != 0;
}

enum exit_status command_write_text(struct document *d, const struct options *o,
                                    struct problem_list *problems)
{
	const struct text_style style = { .width = o->width, .bold = wants_bold(o) };
	struct output out;
	bool written = false;

	if (!d || document_failed(d)) {
		document_destroy(d);
		return command_no_memory(problems);
	}
	if (output_begin(&out, problems)) {
		text_write(out.f, d, &style);
		written = output_end(&out, o->output, true, problems);
	}
	document_destroy(d);
	return written ? EXIT_HOLDS : EXIT_MACHINE;
}

enum exit_status command_write_json(json_writer *write, const void *what, const struct options *o,
                                    struct problem_list *problems)
{
	struct output out;

	if (!output_begin(&out, problems))
		return EXIT_MACHINE;
	/* It is printed into memory: nothing but memory can fail it. */
	const bool built = write(out.f, what) == 0;

	if (!built && !problem_any(problems))
		command_no_memory(problems);
	return output_end(&out, o->output, built, problems) && built ? EXIT_HOLDS : EXIT_MACHINE;
}
