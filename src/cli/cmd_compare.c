/* SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "cli/job_open.h"
#include "load/loading_code.h"
#include "report/compare_report.h"

struct room {
	struct job job;
	struct check_workspace workspace;
	enum edition edition[COMPARE_MAX];
	struct compared view[COMPARE_MAX];
	int count;
};

/* "asce7-10,asce7-22": each once, in the order given. False when a word is none of them. */
static bool read_codes(const char *text, struct room *room)
{
	char word[16];

	while (*text) {
		const size_t n = strcspn(text, ",");
		const struct loading_code *code;

		if (n == 0 || n >= sizeof word || room->count == COMPARE_MAX)
			return false;
		memcpy(word, text, n);
		word[n] = '\0';
		code = loading_code_find(word);
		if (!code)
			return false;
		for (int i = 0; i < room->count; i++)
			if (room->edition[i] == code->edition)
				return false;
		room->edition[room->count++] = code->edition;
		text += n + (text[n] == ',' ? 1 : 0);
	}
	return room->count >= 2;
}

static enum exit_status compare(struct room *room, const struct command *c, const struct options *o,
				struct problem_list *problems)
{
	if (!read_codes(o->codes ? o->codes : "asce7-10,asce7-16,asce7-22", room))
		return command_misused(
			c, problems, o->codes,
			"two or three of asce7-10, asce7-16, asce7-22, with commas between");
	if (!job_open(o, &room->job, problems))
		return EXIT_INPUT;
	compare_editions(&room->job, room->edition, room->count, &room->workspace, room->view);
	const struct comparison comparison = {&room->job, room->count, room->view};

	if (o->json)
		return command_write_json(json_compare_write, &comparison, o, problems);
	struct document *d = document_create(NULL);

	if (d)
		compare_report_build(d, &comparison);
	return command_write_text(d, o, problems);
}

enum exit_status command_compare(const struct command *c, const struct options *o,
				 struct problem_list *problems)
{
	if (o->words != 1)
		return command_misused(c, problems, o->words ? o->word[1] : NULL, "one job file");
	struct room *room = calloc(1, sizeof *room);

	if (!room)
		return command_no_memory(problems);
	const enum exit_status status = compare(room, c, o, problems);

	free(room);
	return status;
}
