/* SPDX-License-Identifier: MIT */
/* The store of problems: what it keeps, what it cuts and cleans, what it prints. */
#include "problem/problem.h"

#include <stdio.h>
#include <string.h>

#include "near.h"

static struct problem_list list;

static int empty_list(void **state)
{
	(void)state;
	memset(&list, 0, sizeof list);
	return 0;
}

static void test_print(void **state)
{
	char buf[1000];

	(void)state;
	problem_add(&list, PROBLEM_OUT_OF_RANGE, "house.xml", 12, "roof.pitch", "60:12",
		    "0:12 to 24:12");
	problem_add(&list, PROBLEM_MISSING, "house.xml", 3, "site.wind-speed", NULL,
		    "85 mph to 250 mph");
	problem_add(&list, PROBLEM_CANNOT_OPEN, "house.xml", 0, NULL, "No such file", NULL);
	problem_add(&list, PROBLEM_USAGE, NULL, 0, NULL, NULL, NULL);
	assert_string_equal(problem_print(buf, sizeof buf, &list.item[0]),
			    "house.xml:12: roof.pitch: is out of range: given `60:12`; accepted: "
			    "0:12 to 24:12 [205]");
	assert_string_equal(
		problem_print(buf, sizeof buf, &list.item[1]),
		"house.xml:3: site.wind-speed: is missing: accepted: 85 mph to 250 mph [201]");
	assert_string_equal(problem_print(buf, sizeof buf, &list.item[2]),
			    "house.xml: cannot be opened: given `No such file` [101]");
	assert_string_equal(problem_print(buf, sizeof buf, &list.item[3]),
			    "is not understood on the command line [501]");
	assert_string_equal(problem_print(buf, 10, &list.item[0]), "house.xml");
	assert_string_equal(problem_print(buf, 1, &list.item[0]), "");
}

static void test_store(void **state)
{
	(void)state;
	assert_false(problem_any(&list));
	for (int i = 0; i < PROBLEM_MAX + 5; i++)
		problem_add(&list, PROBLEM_MISSING, "f", i, NULL, NULL, NULL);
	assert_true(problem_any(&list));
	assert_int_equal(list.count, PROBLEM_MAX);
	assert_int_equal(list.dropped, 5);
	assert_int_equal(list.item[PROBLEM_MAX - 1].line, PROBLEM_MAX - 1);
}

static const struct {
	const char *given, *stored;
} clean[] = {
	{"a\tb\nc", "a?b?c"},
	{"a\x1B[31m", "a?[31m"},
	{"\x7F", "?"},
	{"caf\xC3\xA9", "caf\xC3\xA9"},
	{"6\xE2\x80\xB3", "6\xE2\x80\xB3"},
	{"\xF0\x9F\x8F\xA0", "\xF0\x9F\x8F\xA0"},
	{"\xC2\x85", "??"}, /* a control character of the second set */
	{"\xC0\xAF", "??"}, /* a slash in too many bytes */
	{"\xE0\x80\xAF", "???"},
	{"\xED\xA0\x80", "???"},      /* half of a pair */
	{"\xF4\x90\x80\x80", "????"}, /* beyond the last character */
	{"\xC3", "?"},
	{"\xE2\x80", "??"},
	{"\xFF", "?"},
};

static void test_clean(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof clean / sizeof clean[0]; i++) {
		problem_add(&list, PROBLEM_NOT_A_VALUE, "f", 1, NULL, clean[i].given, NULL);
		assert_string_equal(list.item[i].given, clean[i].stored);
		assert_int_equal(problem_text_is_clean(clean[i].given),
				 strcmp(clean[i].given, clean[i].stored) == 0);
	}
}

/* A long text ends in dots, and no character is cut in two, wherever the end falls. */
static void test_cut(void **state)
{
	char text[400];

	(void)state;
	for (size_t shift = 0; shift < 4; shift++) {
		const char *given;

		memset(text, 'x', shift);
		text[shift] = '\0';
		for (int i = 0; i < 80; i++)
			strcat(text, "\xE2\x80\xB3");
		problem_add(&list, PROBLEM_NOT_A_VALUE, "f", 1, NULL, text, NULL);
		given = list.item[shift].given;
		assert_true(strlen(given) < PROBLEM_TEXT_MAX);
		assert_true(problem_text_is_clean(given));
		assert_string_equal(given + strlen(given) - 3, "...");
		assert_true(strlen(given) >= PROBLEM_TEXT_MAX - 7);
	}
	memset(text, 'y', PROBLEM_TEXT_MAX - 1);
	text[PROBLEM_TEXT_MAX - 1] = '\0';
	problem_add(&list, PROBLEM_NOT_A_VALUE, "f", 1, NULL, text, NULL);
	assert_string_equal(list.item[4].given, text);
	strcat(text, "y");
	problem_add(&list, PROBLEM_NOT_A_VALUE, "f", 1, NULL, text, NULL);
	assert_int_equal(strlen(list.item[5].given), PROBLEM_TEXT_MAX - 1);
	assert_string_equal(list.item[5].given + PROBLEM_TEXT_MAX - 5, "y...");
}

/* Numbers may be cited in a manual: none twice, each in its band, each with words. */
static void test_numbers(void **state)
{
	static const struct {
		int number;
		const char *text;
	} all[] = {
#define P(number, id, text) {number, text},
		PROBLEMS(P)
#undef P
	};

	(void)state;
	for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) {
		assert_in_range(all[i].number, 101, 599);
		assert_true(all[i].text[0] != '\0');
		assert_string_equal(problem_text((enum problem_code)all[i].number), all[i].text);
		if (i > 0)
			assert_true(all[i].number > all[i - 1].number);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test_setup(test_print, empty_list),
		cmocka_unit_test_setup(test_store, empty_list),
		cmocka_unit_test_setup(test_clean, empty_list),
		cmocka_unit_test_setup(test_cut, empty_list),
		cmocka_unit_test(test_numbers),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
