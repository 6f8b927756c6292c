/* SPDX-License-Identifier: MIT */
/* What holds for all tables: every file of tables/ is compiled in, and every row of it says how
   sure it is. */
#define _POSIX_C_SOURCE 200809L

#include "table/tables.h"

#include <dirent.h>
#include <stdbool.h>
#include <stdio.h>
#include <string.h>

#include "near.h"

static bool compiled_in(const char *name, size_t length)
{
	for (size_t i = 0; i < TABLE_COUNT; i++)
		if (strlen(table_info[i].name) == length &&
		    strncmp(table_info[i].name, name, length) == 0)
			return true;
	return false;
}

static void every_file_is_compiled_in(void **state)
{
	DIR *directory = opendir(TABLE_DIRECTORY);
	size_t files = 0;

	(void)state;
	assert_non_null(directory);
	for (struct dirent *entry = readdir(directory); entry != NULL; entry = readdir(directory)) {
		const char *end = strstr(entry->d_name, ".xml");

		if (end == NULL || end[4] != '\0')
			continue;
		files++;
		if (!compiled_in(entry->d_name, (size_t)(end - entry->d_name)))
			fail_msg("%s is not compiled in", entry->d_name);
	}
	closedir(directory);
	assert_int_equal(files, TABLE_COUNT);
}

static void every_table_tells_its_source(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_COUNT; i++) {
		const struct table_info *t = &table_info[i];
		size_t counted = 0;

		assert_true(t->title[0] != '\0' && t->standard[0] != '\0' && t->clause[0] != '\0');
		assert_true(t->source[0] != '\0');
		for (int c = 0; c < CONFIDENCE_COUNT; c++)
			counted += t->status[c];
		assert_int_equal(counted, t->rows);
		/* Only a person at the book may enter a value as read by the user. */
		assert_int_equal(t->status[USER_ENTERED], 0);
	}
}

/* The list of doubts holds each row that is not confirmed, once, under its table. */
static void every_doubt_is_listed(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_COUNT; i++) {
		const struct table_info *t = &table_info[i];
		size_t listed[CONFIDENCE_COUNT] = {0};

		for (size_t k = 0; k < TABLE_DOUBT_COUNT; k++)
			if (strcmp(table_doubt[k].table, t->name) == 0) {
				listed[table_doubt[k].status]++;
				assert_true(strlen(table_doubt[k].row) > 3);
				assert_non_null(table_doubt[k].source);
			}
		for (int c = 0; c < CONFIDENCE_COUNT; c++)
			if (c != CONFIRMED && c != DERIVED)
				assert_int_equal(listed[c], t->status[c]);
			else
				assert_int_equal(listed[c], 0);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_file_is_compiled_in),
		cmocka_unit_test(every_table_tells_its_source),
		cmocka_unit_test(every_doubt_is_listed),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
