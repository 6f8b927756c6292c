/* SPDX-License-Identifier: MIT */
#include "cli/options.h"

#include <stdlib.h>
#include <string.h>

#include "report/text_writer.h"

#define COMMAND_LINE "command line"
/* Nobody hangs more; what a job allows is less. */
#define ATTACHMENT_MOST 9999
#define HOLES_MOST 256 /* as the field mount.holes */

const struct option_row option_table[OPTION_COUNT] = {
#define O(id, name, takes, accepted, meaning) { name, takes, accepted, meaning },
	OPTIONS(O)
#undef O
};

/* Digits only: no sign, no blank, nothing after them. */
static bool whole_number(const char *text, int least, int most, int *value)
{
	const size_t n = strspn(text, "0123456789");

	if (n == 0 || n > 6 || text[n])
		return false;
	*value = atoi(text);
	return *value >= least && *value <= most;
}

static bool choice(const char *text, const char *first, const char *second, bool *is_second)
{
	*is_second = strcmp(text, second) == 0;
	return *is_second || strcmp(text, first) == 0;
}

static bool add(const char **list, size_t *n, size_t max, const char *text)
{
	if (*n == max)
		return false;
	list[(*n)++] = text;
	return true;
}

static bool notes_word(const char *text, enum notes_length *length)
{
	static const char *const words[] = {
		[NOTES_NONE] = "none", [NOTES_BRIEF] = "brief", [NOTES_FULL] = "full"
	};

	for (size_t i = 0; i < sizeof words / sizeof *words; i++) {
		if (strcmp(text, words[i]) == 0) {
			*length = (enum notes_length)i;
			return true;
		}
	}
	return false;
}

static bool view_known(const char *text)
{
	/* as src/sheet/sheet_views.c has them; pipe-2 is the second pipe, flashing-2 the second sheet */
	static const char *const words[] = { "plan", "layout",     "site",  "rack",
		                             "pipe", "attachment", "block", "flashing" };

	for (size_t i = 0; i < sizeof words / sizeof *words; i++)
		if (strcmp(text, words[i]) == 0)
			return true;
	if (strncmp(text, "flashing-", 9) == 0)
		return text[9] >= '1' && text[9] <= '3' && !text[10];
	return strncmp(text, "pipe-", 5) == 0 && text[5] >= '1' && text[5] <= '8' && !text[6];
}

static bool store(struct options *o, enum option_id id, const char *value)
{
	bool second = false;

	switch (id) {
	case OPTION_FORMAT:
		o->html = strcmp(value, "html") == 0;
		if (o->html)
			return true;
		return choice(value, "text", "json", &o->json);
	case OPTION_WIDTH:
		return whole_number(value, TEXT_WIDTH_LEAST, TEXT_WIDTH_MOST, &o->width);
	case OPTION_UNITS:
		if (!choice(value, "us", "si", &second))
			return false;
		o->units_given = true;
		o->units = second ? SYSTEM_SI : SYSTEM_US;
		return true;
	case OPTION_SET:
		return strchr(value, '=') && add(o->set, &o->sets, SET_MAX, value);
	case OPTION_HOLES:
		return whole_number(value, 2, HOLES_MOST, &o->holes);
	case OPTION_ATTACHMENT:
		return whole_number(value, 1, ATTACHMENT_MOST, &o->attachment);
	case OPTION_NOTES:
		return notes_word(value, &o->notes);
	case OPTION_CODES:
		o->codes = value;
		return *value != '\0';
	case OPTION_OUTPUT:
		o->output = value;
		return *value != '\0';
	case OPTION_PAPER:
		/* the last one given counts */
		o->a4 = strcmp(value, "a4") == 0;
		o->phone = strcmp(value, "phone") == 0;
		return o->a4 || o->phone || strcmp(value, "letter") == 0;
	case OPTION_VIEW:
		o->view = value;
		return view_known(value);
	case OPTION_PRICES:
		o->prices = value;
		return *value != '\0';
	case OPTION_JOB:
		o->job = value;
		return *value != '\0';
	case OPTION_LIBRARY:
		o->library = value;
		return *value != '\0';
	case OPTION_SHEET:
		o->sheet = true;
		return true;
	case OPTION_COMPRESS:
		o->compress = true;
		return true;
	case OPTION_COUNT:
		break;
	}
	return false;
}

/* The option that arg names; *value is what stands behind its `=`, or NULL. */
static enum option_id find(const char *arg, const char **value)
{
	const char *equals = strchr(arg, '=');
	const size_t n = equals ? (size_t)(equals - arg) : strlen(arg);

	*value = equals ? equals + 1 : NULL;
	for (int i = 0; i < OPTION_COUNT; i++)
		if (strlen(option_table[i].name) == n && strncmp(option_table[i].name, arg, n) == 0)
			return (enum option_id)i;
	return OPTION_COUNT;
}

/* "--format, --width, -o" of a command. */
static const char *allowed_text(char *buf, size_t size, unsigned allowed)
{
	size_t n = 0;

	buf[0] = '\0';
	for (int i = 0; i < OPTION_COUNT; i++) {
		const size_t length = strlen(option_table[i].name);

		if (!(allowed & 1u << i) || n + length + 3 > size)
			continue;
		if (n > 0) {
			memcpy(buf + n, ", ", 3);
			n += 2;
		}
		memcpy(buf + n, option_table[i].name, length + 1);
		n += length;
	}
	return buf;
}

void options_parse(struct options *o, int argc, char *const argv[], int first, unsigned allowed,
                   const char *command, struct problem_list *problems)
{
	char accepted[PROBLEM_TEXT_MAX];
	bool ended = false;

	*o = (struct options){ .width = TEXT_WIDTH_USUAL,
		               .units = SYSTEM_US,
		               .notes = NOTES_BRIEF, .view = "plan", .argv = argv };
	for (int i = first; i < argc; i++) {
		const char *arg = argv[i], *value;

		if (ended || arg[0] != '-' || arg[1] == '\0') {
			if (!add(o->word, &o->words, WORD_MAX, arg))
				problem_add(problems, PROBLEM_USAGE, COMMAND_LINE, 0, command, arg,
				            "fewer words");
			continue;
		}
		if (strcmp(arg, "--") == 0) {
			ended = true;
			continue;
		}
		const enum option_id id = find(arg, &value);

		if (id == OPTION_COUNT || !(allowed & 1u << id)) {
			problem_add(problems, PROBLEM_USAGE, COMMAND_LINE, 0, command, arg,
			            allowed_text(accepted, sizeof accepted, allowed));
			continue;
		}
		if (option_table[id].takes_value && !value)
			value = i + 1 < argc ? argv[++i] : "";
		else if (!option_table[id].takes_value && value)
			problem_add(problems, PROBLEM_USAGE, COMMAND_LINE, 0, option_table[id].name, value,
			            "nothing");
		/* only pages of the library are written as HTML by --format */
		const bool stored = store(o, id, value ? value : "") &&
		                    !(o->html && !(allowed & OPTION_BIT(SHEET)));

		if (!stored)
			problem_add(problems, PROBLEM_USAGE, COMMAND_LINE, 0, option_table[id].name, value,
			            option_table[id].accepted);
	}
}
