/* SPDX-License-Identifier: MIT */
#include "cli/command.h"
#include "report/caution.h"
#include "report/json_help.h"

static void add_command(struct document *d, const struct command *c)
{
	document_pair(d, c->name, "", "%s", c->summary);
}

static void build_list(struct document *d)
{
	document_add(d, BLOCK_TITLE, 0, "rafterproof: does this roof hold these collectors?");
	document_add(d, BLOCK_PARAGRAPH, 0, "Use: rafterproof COMMAND [operands and options]");
	document_pairs(d);
	for (size_t i = 0; i < command_count; i++)
		add_command(d, &command_table[i]);
	document_add(
		d, BLOCK_PARAGRAPH, 0,
		"Every command takes --format text or --format json. rafterproof help COMMAND (or "
		"COMMAND --help) says how one is used; "
		"rafterproof --version prints the version. The manual page is rafterproof(1).");
	document_add(d, BLOCK_PARAGRAPH, 0,
	             "Exit status: 0 holds (or done), 1 does not hold, 2 needs an engineer, 3 the "
	             "input is wrong, 4 the "
	             "machine failed.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

static void add_options(struct document *d, unsigned options)
{
	document_pairs(d);
	for (int i = 0; i < (int)OPTION_COUNT; i++) {
		const struct option_row *row = &option_table[i];

		if ((options | OPTION_BIT(FORMAT)) & (1u << i))
			document_pair(d, row->name, "", "%s%s%s", row->meaning,
			              row->takes_value ? ": " : "", row->accepted);
	}
}

static void build_one(struct document *d, const struct command *c)
{
	document_add(d, BLOCK_TITLE, 0, "rafterproof %s", c->name);
	document_add(d, BLOCK_PARAGRAPH, 0, "%s", c->summary);
	document_add(d, BLOCK_PARAGRAPH, 0, "Use: rafterproof %s %s [--format text|json]", c->name,
	             c->operands);
	add_options(d, c->options);
	document_add(d, BLOCK_PARAGRAPH, 0, "The manual page rafterproof(1) says more.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_result);
}

/* One for each command. */
enum {
	ROWS = 0
#define C(name, mask, operands, summary) +1
		COMMANDS(C)
#undef C
};

static int write_json(FILE *f, const void *what)
{
	const struct command *one = what;
	struct help_row row[ROWS];
	size_t n = 0;

	for (size_t i = 0; i < command_count; i++) {
		const struct command *c = &command_table[i];

		if (!one || one == c)
			row[n++] = (struct help_row){ c->name, c->operands, c->summary };
	}
	return json_help_write(f, row, n);
}

enum exit_status command_help(const struct command *c, const struct options *o,
                              struct problem_list *problems)
{
	const struct command *one = o->words > 0 ? command_find(o->word[0]) : NULL;

	if (o->words > 1 || (o->words == 1 && !one))
		return command_misused(c, problems, o->word[o->words - 1], "one command");
	if (o->json)
		return command_write_json(write_json, one, o, problems);
	struct document *d = document_create(NULL);

	if (d && one)
		build_one(d, one);
	else if (d)
		build_list(d);
	return command_write_text(d, o, problems);
}
