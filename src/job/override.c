/* SPDX-License-Identifier: MIT */
/* Overrides: `roof.pitch=6:12`, `pipe[2].diameter=1 in`. Rows are counted from 1; a row that the
   job does not have is refused, not added. */
#include <stdio.h>
#include <string.h>

#include "job/draft.h"

#define EXAMPLE "path=value, such as roof.pitch=6:12 or pipe[2].diameter=1 in"

static void refuse(struct draft *d, enum problem_code code, const char *path, const char *given,
		   const char *accepted)
{
	problem_add(d->problems, code, "--set", 0, path, given, accepted);
}

/* Copies the n bytes at from, without the blanks around them; false if they do not fit. */
static bool copy_part(char *to, size_t size, const char *from, size_t n)
{
	while (n > 0 && *from == ' ')
		from++, n--;
	while (n > 0 && from[n - 1] == ' ')
		n--;
	if (n >= size)
		return false;
	memcpy(to, from, n);
	to[n] = '\0';
	return true;
}

/* Takes `[2]` off the end of an element's name: the row counted from 1, 0 if there is none, -1
   if it is no index. */
static int take_index(char *element)
{
	char *const bracket = strchr(element, '[');
	int row = 0;
	const char *s;

	if (!bracket)
		return 0;
	for (s = bracket + 1; *s >= '0' && *s <= '9' && row <= ROWS_MAX; s++)
		row = 10 * row + (*s - '0');
	if (s == bracket + 1 || strcmp(s, "]") != 0 || row == 0)
		return -1;
	*bracket = '\0';
	return row;
}

/* Row that the index means, counted from 0; -1, told, if there is no such row. */
static int find_row(struct draft *d, enum element e, int index, const char *path)
{
	const int rows = draft_rows(d, e);
	const char *const name = element_table[e].name;
	char accepted[120];

	if (element_table[e].max == 1) {
		if (index == 0)
			return 0;
		snprintf(accepted, sizeof accepted, "%s without a number: there is one", name);
	} else if (index >= 1 && index <= rows) {
		return index - 1;
	} else if (index == 0 && rows == 1) {
		return 0;
	} else if (rows == 0) {
		snprintf(accepted, sizeof accepted, "no %s: the job has none", name);
	} else {
		snprintf(accepted, sizeof accepted, "%s[1] to %s[%d]", name, name, rows);
	}
	refuse(d, PROBLEM_UNKNOWN_FIELD, path, NULL, accepted);
	return -1;
}

void draft_override(struct draft *d, const char *text)
{
	const char *const equals = strchr(text, '=');
	char path[80], element[80], value[256], accepted[PROBLEM_TEXT_MAX];
	const struct field *f;
	enum element e;
	char *dot;
	int index, row;

	if (!equals || !copy_part(path, sizeof path, text, (size_t)(equals - text)) ||
	    !copy_part(value, sizeof value, equals + 1, strlen(equals + 1))) {
		refuse(d, PROBLEM_USAGE, NULL, text, EXAMPLE);
		return;
	}
	memcpy(element, path, sizeof element);
	dot = strchr(element, '.');
	if (!dot) {
		refuse(d, PROBLEM_USAGE, NULL, text, EXAMPLE);
		return;
	}
	*dot = '\0';
	index = take_index(element);
	e = element_find(element);
	if (e == ELEMENT_COUNT || index < 0) {
		refuse(d, PROBLEM_UNKNOWN_FIELD, path, NULL,
		       index < 0 ? EXAMPLE
				 : suggest_element(accepted, sizeof accepted, ELEMENT_COUNT,
						   element));
		return;
	}
	f = element_field(e, dot + 1);
	if (!f) {
		refuse(d, PROBLEM_UNKNOWN_FIELD, path, NULL,
		       suggest_attribute(accepted, sizeof accepted, e, dot + 1));
		return;
	}
	row = find_row(d, e, index, path);
	if (row >= 0)
		draft_set(d, f, row, value, ORIGIN_OVERRIDE, 0);
}
