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

bool example_job(const char *const *set, size_t max, struct job *job, struct problem_list *problems)
{
	char text[EXAMPLE_MAX];
	size_t n = 0;

	while (n < max && set[n])
		n++;
	memset(problems, 0, sizeof *problems);
	example_read(text);
	return job_read_memory("house.xml", text, strlen(text), set, n, job, problems);
}

void example_print(const struct problem_list *problems)
{
	char buf[900];

	for (size_t i = 0; i < problems->count; i++)
		print_error("%s\n", problem_print(buf, sizeof buf, &problems->item[i]));
}
