/* SPDX-License-Identifier: MIT */
/* The page: cleaning of text, lines, tables. Expected pages are written out by hand. */
#define _POSIX_C_SOURCE 200809L
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "near.h"
#include "report/document.h"
#include "report/text_writer.h"
#include "report/utf8.h"

static char *page(const struct document *d, int width, bool bold)
{
	char *text = NULL;
	size_t size = 0;
	FILE *f = open_memstream(&text, &size);
	const struct text_style style = { .width = width, .bold = bold };

	assert_non_null(f);
	text_write(f, d, &style);
	fclose(f);
	return text;
}

static void assert_page(const struct document *d, int width, const char *want)
{
	char *got = page(d, width, false);

	assert_string_equal(got, want);
	free(got);
}

static void test_clean(void **state)
{
	(void)state;
	static const struct {
		const char *in, *want;
	} row[] = {
		{ "plain", "plain" },
		{ "a\tb\nc\rd", "a b c d" },
		{ "\033[2J", "?[2J" },      /* escape of a terminal */
		{ "x\xC2\x9By", "x?y" },    /* C1 control U+009B, which some terminals obey */
		{ "\xC3\xA9", "\xC3\xA9" }, /* U+00E9 */
		{ "\xE2\x80\xAE"
		  "12",
		  "?12" },                      /* U+202E turns the writing */
		{ "\xEF\xBB\xBF", "?" },        /* U+FEFF */
		{ "\xC0\xAF", "??" },           /* overlong / */
		{ "\xED\xA0\x80", "???" },      /* surrogate */
		{ "\xF4\x90\x80\x80", "????" }, /* above U+10FFFF */
		{ "\xE2\x82", "??" },           /* cut */
		{ "\xFF", "?" },
		{ "\x7F", "?" },
		{ "", "" },
	};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		char text[32];

		snprintf(text, sizeof text, "%s", row[i].in);
		utf8_clean(text);
		assert_string_equal(text, row[i].want);
	}
}

static void test_lines(void **state)
{
	(void)state;
	const char *rest = "one two  three \xC3\xA9\xC3\xA9\xC3\xA9 abcdefghij";
	static const char *const want[] = { "one",   "two",  "three", "\xC3\xA9\xC3\xA9\xC3\xA9",
		                            "abcde", "fghij" };
	size_t n;

	for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
		const char *line = utf8_line(&rest, 5, &n);

		assert_non_null(line);
		assert_int_equal(n, strlen(want[i]));
		assert_memory_equal(line, want[i], n);
	}
	assert_null(utf8_line(&rest, 5, &n));
	/* A word that just fits is not cut, and the blank behind it is swallowed. */
	rest = "abcde fg";
	assert_int_equal((utf8_line(&rest, 5, &n), n), 5);
	assert_int_equal((utf8_line(&rest, 5, &n), n), 2);
	assert_int_equal(utf8_longest_word("a bbb cc"), 3);
	assert_int_equal(utf8_line_count("aa bb cc", 5), 2);
}

static void test_blocks(void **state)
{
	(void)state;
	struct document *d = document_create(NULL);

	document_add(d, BLOCK_VERDICT, 0, "HOLDS: %s.", "it does");
	document_add(d, BLOCK_HEADING, 1, "Head");
	document_add(d, BLOCK_PARAGRAPH, 0,
	             "A number and its unit 17.4\xC2\xA0psf stay together, always.");
	document_add(d, BLOCK_BULLET, 0, "first");
	document_add(d, BLOCK_BULLET, 0, "second, which is long enough to need two lines");
	document_add(d, BLOCK_NUMBERED, 12, "step");
	document_add(d, BLOCK_CAUTION, 0, "mind");
	document_pairs(d);
	document_pair(d, "name", "a note", "%d", 5);
	document_pair(d, "one", "", "does not fit beside its name at all, no");
	assert_page(d, 40,
	            "HOLDS: it does.\n"
	            "\n"
	            "Head\n"
	            "====\n"
	            "A number and its unit 17.4 psf stay\n"
	            "together, always.\n"
	            "\n"
	            "- first\n"
	            "- second, which is long enough to need\n"
	            "  two lines\n"
	            "\n"
	            "12. step\n"
	            "\n"
	            "! mind\n"
	            "\n"
	            "name: 5\n"
	            "    a note\n"
	            "one\n"
	            "  does not fit beside its name at all,\n"
	            "  no\n");
	char *got = page(d, 40, true);

	assert_int_equal(strncmp(got, "\033[1mHOLDS", 9), 0);
	free(got);
	document_destroy(d);
}

static void add_table(struct document *d)
{
	static const struct column column[] = {
		{ "no.", ALIGN_RIGHT, true, false },
		{ "along the eave", ALIGN_RIGHT, false, false },
		{ "what governs", ALIGN_LEFT, false, true },
	};

	document_table(d, column, 3);
	document_row(d);
	document_cell(d, "%d", 7);
	document_cell(d, "12\xC2\xA0"
	                 "ft");
	document_cell(d, "the screw pulls out of the rafter");
	document_row(d);
	document_cell(d, "%d", 12);
	document_cell(d, "123456789012345678901234567890");
}

static void test_table(void **state)
{
	(void)state;
	struct document *d = document_create(NULL);

	add_table(d);
	/* 3 + 30 + 33 and two gaps fit 80 columns. */
	assert_page(d, 80,
	            "no.                  along the eave  what governs\n"
	            "---  ------------------------------  ---------------------------------\n"
	            "  7                           12 ft  the screw pulls out of the rafter\n"
	            " 12  123456789012345678901234567890\n");
	/* 60: prose gives way first. */
	assert_page(d, 60,
	            "no.                  along the eave  what governs\n"
	            "---  ------------------------------  -----------------------\n"
	            "  7                           12 ft  the screw pulls out of\n"
	            "                                     the rafter\n"
	            " 12  123456789012345678901234567890\n");
	/* 40: two parts, the key in each, one blank between columns. */
	assert_page(d, 40,
	            "no.                 along the eave\n"
	            "--- ------------------------------\n"
	            "  7                          12 ft\n"
	            " 12 123456789012345678901234567890\n"
	            "\n"
	            "no. what governs\n"
	            "--- ---------------------------------\n"
	            "  7 the screw pulls out of the rafter\n"
	            " 12\n");
	document_destroy(d);
}

/* Where no column fits beside the key, each row becomes a list. */
static void test_stacked(void **state)
{
	(void)state;
	static const struct column column[] = {
		{ "name", ALIGN_LEFT, true, false },
		{ "what it is", ALIGN_LEFT, false, true },
	};
	struct document *d = document_create(NULL);

	document_table(d, column, 2);
	document_row(d);
	document_cell(d, "a-name-of-thirty-five-columns-.....");
	document_cell(d, "seven and twenty words cannot be said here");
	assert_page(d, 40,
	            "a-name-of-thirty-five-columns-.....\n"
	            "  what it is: seven and twenty words\n"
	            "              cannot be said here\n");
	document_destroy(d);
}

/* No line is ever wider than the page, whatever the words. */
static void test_width(void **state)
{
	(void)state;
	struct document *d = document_create(NULL);

	add_table(d);
	document_add(d, BLOCK_HEADING, 1,
	             "A heading that is much longer than a phone held upright is wide, so that it "
	             "must be broken");
	document_add(d, BLOCK_BULLET, 0,
	             "an_address_without_any_blank_that_is_longer_than_forty_columns_on_the_page");
	document_step(
		d, &(struct step_line){ .title = "A long title of a step with many words in it",
	                                .symbol = "qh",
	                                .formula = "0.00256 Kz Kzt Kd Ke V^2 and so on and so on",
	                                .values = "0.00256 x 0.605 x 1 x 0.85 x 1 x 115^2",
	                                .result = "17.41 psf",
	                                .clause = "ASCE/SEI 7-16 Eq. 26.10-1" });
	for (int width = TEXT_WIDTH_LEAST; width <= TEXT_WIDTH_MOST; width++) {
		char *text = page(d, width, false);

		for (const char *line = text, *end; (end = strchr(line, '\n')) != NULL;
		     line = end + 1) {
			assert_true(utf8_columns(line, (size_t)(end - line)) <= (size_t)width);
			assert_true(end == line || end[-1] != ' ');
		}
		free(text);
	}
	document_destroy(d);
}

static void test_step_line(void **state)
{
	(void)state;
	struct document *d = document_create(NULL);

	document_step(d, &(struct step_line){ .title = "Sum",
	                                      .symbol = "c",
	                                      .formula = "a + b",
	                                      .values = "1 + 2",
	                                      .result = "3 in",
	                                      .clause = "arithmetic",
	                                      .where = "x 1",
	                                      .status = "derived" });
	assert_page(d, 60,
	            "Sum                                             [arithmetic]\n"
	            "  c = a + b = 1 + 2 = 3 in\n"
	            "  with x 1\n"
	            "  derived\n");
	document_destroy(d);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_clean),     cmocka_unit_test(test_lines),
		cmocka_unit_test(test_blocks),    cmocka_unit_test(test_table),
		cmocka_unit_test(test_stacked),   cmocka_unit_test(test_width),
		cmocka_unit_test(test_step_line),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
