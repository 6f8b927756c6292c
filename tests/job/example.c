/* SPDX-License-Identifier: MIT */
#include "example.h"

#include <stdio.h>
#include <string.h>

#include "near.h"

void example_read(char buf[EXAMPLE_MAX])
{
	FILE *const f = fopen(EXAMPLE_FILE, "rb");
	size_t n;

	assert_non_null(f);
	n = fread(buf, 1, EXAMPLE_MAX - 1, f);
	assert_true(n > 0 && feof(f));
	buf[n] = '\0';
	fclose(f);
}

int example_change(char text[EXAMPLE_MAX], const char *from, const char *to)
{
	char changed[EXAMPLE_MAX];
	char *const at = strstr(text, from);
	int line = 1;

	if (!at || strstr(at + 1, from))
		fail_msg("`%s` stands not once in the example", from);
	assert_true(strlen(text) + strlen(to) < EXAMPLE_MAX);
	for (const char *p = text; p < at; p++)
		line += *p == '\n';
	snprintf(changed, sizeof changed, "%.*s%s%s", (int)(at - text), text, to,
		 at + strlen(from));
	memcpy(text, changed, strlen(changed) + 1);
	return line;
}
