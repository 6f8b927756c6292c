/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "cli/command.h"
#include "report/json_problem.h"
#include "report/json_help.h"

#ifndef RP_VERSION
#define RP_VERSION "unknown"
#endif

/* A standard stream that was closed would be given to the next file opened, and a report written
   into it. */
static void hold_standard_streams(void)
{
	for (int fd = 0; fd <= 2; fd++)
		if (fcntl(fd, F_GETFD) < 0 && errno == EBADF && open("/dev/null", O_RDONLY) < 0)
			exit(EXIT_MACHINE);
}

/* Problems of the machine outweigh those of the input: a run again with better input would not
   help. */
static enum exit_status status_of(const struct problem_list *problems)
{
	for (size_t i = 0; i < problems->count; i++) {
		const enum problem_code code = problems->item[i].code;

		if (code == PROBLEM_CANNOT_READ || code == PROBLEM_CANNOT_WRITE ||
		    code == PROBLEM_NO_MEMORY)
			return EXIT_MACHINE;
	}
	return EXIT_INPUT;
}

struct failure {
	const struct problem_list *problems;
	const char *command;
};

static int write_problems(FILE *f, const void *what)
{
	const struct failure *failure = what;

	return json_problems_write(f, failure->command, failure->problems);
}

/* One line each on standard error; with --format json also as JSON on standard output, whatever -o
   says. */
static enum exit_status report(const struct problem_list *problems, const char *command, bool json)
{
	static struct problem_list further;
	const struct options to_stdout = { .json = json };
	const struct failure failure = { problems, command };
	char line[PROBLEM_TEXT_MAX * 6];
	enum exit_status status = status_of(problems);

	for (size_t i = 0; i < problems->count; i++)
		fprintf(stderr, "%s\n", problem_print(line, sizeof line, &problems->item[i]));
	if (problems->dropped > 0)
		fprintf(stderr, "and %zu more\n", problems->dropped);
	if (json &&
	    command_write_json(write_problems, &failure, &to_stdout, &further) != EXIT_HOLDS)
		status = EXIT_MACHINE;
	return status;
}

static int write_version(FILE *f, const void *what)
{
	(void)what;
	return json_version_write(f);
}

static enum exit_status print_version(const struct options *o, struct problem_list *problems)
{
	struct document *d = NULL;

	if (o->json)
		return command_write_json(write_version, NULL, o, problems);
	d = document_create(NULL);
	if (d)
		document_add(d, BLOCK_PARAGRAPH, 0, "rafterproof %s", RP_VERSION);
	return command_write_text(d, o, problems);
}

/* "check, step, guide ..." */
static const char *command_names(char *buf, size_t size)
{
	size_t n = 0;

	buf[0] = '\0';
	for (size_t i = 0; i < command_count && n < size; i++)
		n += (size_t)snprintf(buf + n, size - n, "%s%s", i ? ", " : "",
		                      command_table[i].name);
	return buf;
}

/* `COMMAND --help` or -h, wherever it stands, asks for help about the command and does nothing else. */
static bool asks_help(int argc, char *const argv[])
{
	for (int i = 2; i < argc && strcmp(argv[i], "--") != 0; i++)
		if (strcmp(argv[i], "--help") == 0 || strcmp(argv[i], "-h") == 0)
			return true;
	return false;
}

static enum exit_status run(int argc, char *argv[], struct problem_list *problems,
                            struct options *o)
{
	const char *name = argc > 1 ? argv[1] : "";
	const bool version = strcmp(name, "--version") == 0;
	const bool help = strcmp(name, "--help") == 0 || strcmp(name, "-h") == 0;
	const struct command *c = command_find(help ? "help" : name);
	char names[PROBLEM_TEXT_MAX];

	if (c && asks_help(argc, argv)) {
		char *const words[] = {argv[0], argv[1], argv[1]};

		options_parse(o, help ? 2 : 3, words, 2, c->options, name, problems);
		c = command_find("help");
		return c->run(c, o, problems);
	}
	options_parse(o, argc, argv, 2, c ? c->options : OPTION_BIT(FORMAT), name, problems);
	if (!c && !version) {
		/* Options of a command that is not known cannot be judged. */
		*problems = (struct problem_list){ 0 };
		problem_add(problems, PROBLEM_USAGE, "command line", 0, NULL, name,
		            command_names(names, sizeof names));
		return EXIT_INPUT;
	}
	if (problem_any(problems))
		return EXIT_INPUT;
	return version ? print_version(o, problems) : c->run(c, o, problems);
}

int main(int argc, char *argv[])
{
	static struct problem_list problems;
	static struct options o;

	hold_standard_streams();
	/* A reader that closes its pipe early is told by the write that fails. */
	signal(SIGPIPE, SIG_IGN);
	const enum exit_status status = run(argc, argv, &problems, &o);

	if (problem_any(&problems))
		return (int)report(&problems, argc > 1 ? argv[1] : "", o.json);
	return (int)status;
}
