/* SPDX-License-Identifier: MIT */
/* The generator's reader: good files give their numbers, a damaged one is refused with the line of
   the fault. */
#define _POSIX_C_SOURCE 200809L

#include "table/table_file.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "near.h"
#include "table/table_value.h"

static char xml_path[] = "/tmp/rafterproof-table-XXXXXX";
static char said[4096];

/* Writes text to a file, reads it as a table and keeps what was said on standard error. */
static bool read_text(const char *text, struct table_file *table)
{
	FILE *file = fopen(xml_path, "w"), *messages = tmpfile();
	const int kept = dup(STDERR_FILENO);
	size_t n;
	bool good;

	assert_non_null(file);
	assert_non_null(messages);
	fputs(text, file);
	assert_int_equal(fclose(file), 0);
	fflush(stderr);
	assert_true(dup2(fileno(messages), STDERR_FILENO) >= 0);
	good = table_file_read(xml_path, table);
	fflush(stderr);
	assert_true(dup2(kept, STDERR_FILENO) >= 0);
	close(kept);
	rewind(messages);
	n = fread(said, 1, sizeof said - 1, messages);
	said[n] = '\0';
	fclose(messages);
	return good;
}

#define HEAD                                                                                       \
	"<table name=\"a-b\" title=\"t\" standard=\"s\" clause=\"c\" unique=\"D\">\n"              \
	"<source>made up</source>\n"                                                               \
	"<column name=\"D\" type=\"fraction\" unit=\"in\" min=\"0.1\" max=\"9\" meaning=\"m\"/>\n" \
	"<column name=\"k\" type=\"choice\" choices=\"one two\" meaning=\"m\"/>\n"                 \
	"<column name=\"n\" type=\"number\" unit=\"lb/in\" optional=\"yes\" meaning=\"m\"/>\n"

static void reads_a_good_file(void **state)
{
	struct table_file t;

	(void)state;
	assert_true(read_text(
		HEAD
		"<row D=\"4-1/2\" k=\"two\" n=\"-1.25\" status=\"confirmed\"/>\n"
		"<row D=\"5/32\" k=\"one\" status=\"from-memory\" note=\"a &amp; b\"/></table>",
		&t));
	assert_string_equal(said, "");
	assert_string_equal(t.identifier, "a_b");
	assert_int_equal(t.rows, 2);
	assert_string_equal(t.column[0].member, "D_in");
	assert_string_equal(t.column[1].member, "k");
	assert_string_equal(t.column[2].member, "n_lb_in");
	assert_near(t.row[0].number[0], 4.5, 0);
	assert_near(t.row[1].number[0], 0.15625, 0);
	assert_near(t.row[0].number[2], -1.25, 0);
	assert_null(t.row[1].value[2]);
	assert_string_equal(t.row[0].status, "CONFIRMED");
	assert_string_equal(t.row[1].note, "a & b");
	table_file_free(&t);
}

static void refuses_damage(void **state)
{
	static const struct {
		const char *text, *want;
	} rows[] = {
		{"<row D=\"1/4\" k=\"one\"/>", ":6: row without a known status"},
		{"<row D=\"1/4\" k=\"one\" status=\"sure\"/>", ":6: row without a known status"},
		{"<row D=\"1/4\" k=\"one\" status=\"user-entered\"/>",
		 ":6: row without a known status"},
		{"<row k=\"one\" status=\"confirmed\"/>", ":6: D is missing"},
		{"<row D=\"1/4\" k=\"three\" status=\"confirmed\"/>",
		 ":6: k=\"three\" is not one of its choices"},
		{"<row D=\"1/4\" k=\"one\" x=\"1\" status=\"confirmed\"/>",
		 ":6: x is not a column"},
		{"<row D=\"1/0\" k=\"one\" status=\"confirmed\"/>",
		 ":6: D=\"1/0\" is not a fraction"},
		{"<row D=\"0,25\" k=\"one\" status=\"confirmed\"/>",
		 ":6: D=\"0,25\" is not a fraction"},
		{"<row D=\"\" k=\"one\" status=\"confirmed\"/>", ":6: D=\"\" is not a fraction"},
		{"<row D=\"9.5\" k=\"one\" status=\"confirmed\"/>",
		 ":6: D=\"9.5\" is out of range"},
		{"<row D=\"1/16\" k=\"one\" status=\"confirmed\"/>",
		 ":6: D=\"1/16\" is out of range"},
		{"<row D=\"1\" k=\"one\" n=\"1e3\" status=\"confirmed\"/>",
		 ":6: n=\"1e3\" is not a number"},
		{"<row D=\"1\" k=\"one\" n=\"3 \" status=\"confirmed\"/>",
		 ":6: n=\"3 \" is not a number"},
		{"<row D=\"1\" k=\"one\" status=\"confirmed\"/>\n<row D=\"1\" k=\"two\" "
		 "status=\"confirmed\"/>",
		 ":7: says the same as line 6"},
		{"<row D=\"1\" k=\"one\" status=\"confirmed\"/>\n<line/>",
		 ":7: line has no place here"},
		{"", "has no columns or no rows"},
	};
	char text[2048];
	struct table_file t;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		snprintf(text, sizeof text, "%s%s</table>", HEAD, rows[i].text);
		if (read_text(text, &t))
			fail_msg("accepted: %s", rows[i].text);
		if (strstr(said, rows[i].want) == NULL || strstr(said, xml_path) == NULL)
			fail_msg("%s\n  said: %s  want: %s", rows[i].text, said, rows[i].want);
		table_file_free(&t);
	}
}

static void refuses_other_files(void **state)
{
	static const char *const text[] = {
		"",
		"not XML",
		"<table",
		"<other/>",
		"<table name=\"x\"/>",
		"<table name=\"x\" title=\"t\" standard=\"s\" clause=\"c\">"
		"<column name=\"D\" type=\"number\" meaning=\"m\"/><row D=\"1\" "
		"status=\"confirmed\"/></table>",
		"<table name=\"x\" title=\"t\" standard=\"s\" clause=\"c\" "
		"unique=\"E\"><source>s</source>"
		"<column name=\"D\" type=\"number\" meaning=\"m\"/><row D=\"1\" "
		"status=\"confirmed\"/></table>",
		"<table name=\"x\" title=\"t\" standard=\"s\" clause=\"c\"><source>s</source>"
		"<column name=\"D\" type=\"date\" meaning=\"m\"/><row D=\"1\" "
		"status=\"confirmed\"/></table>",
		"<table name=\"x\" title=\"t\" standard=\"s\" clause=\"c\"><source>s</source>"
		"<column name=\"D\" type=\"choice\" meaning=\"m\"/><row D=\"1\" "
		"status=\"confirmed\"/></table>",
		"<table name=\"x\" title=\"t\" standard=\"s\" clause=\"c\"><source>s</source>"
		"<column name=\"status\" type=\"text\" meaning=\"m\"/><row "
		"status=\"confirmed\"/></table>",
	};
	struct table_file t;

	(void)state;
	for (size_t i = 0; i < sizeof text / sizeof *text; i++) {
		if (read_text(text[i], &t))
			fail_msg("accepted: %s", text[i]);
		assert_true(said[0] != '\0');
		table_file_free(&t);
	}
}

/* Words that would not be C, or would end a C comment early. */
static void refuses_what_is_not_c(void **state)
{
	static const char *const column[] = {
		"name=\"a b\" type=\"number\" meaning=\"m\"",
		"name=\"2r\" type=\"number\" meaning=\"m\"",
		"name=\"a-b\" type=\"number\" meaning=\"m\"",
		"name=\"a\" type=\"number\" meaning=\"m */ int x;\"",
		"name=\"a\" type=\"number\" unit=\"h ft2\" meaning=\"m\"",
		"name=\"a\" type=\"choice\" choices=\"1 One\" meaning=\"m\"",
		"name=\"a\" type=\"choice\" choices=\"one  two\" meaning=\"m\"",
		"name=\"a\" type=\"edition\" optional=\"yes\" meaning=\"m\"",
		"name=\"a\" type=\"number\" min=\"x\" meaning=\"m\"",
	};
	char text[1024];
	struct table_file t;

	(void)state;
	for (size_t i = 0; i < sizeof column / sizeof *column; i++) {
		snprintf(text, sizeof text,
			 "<table name=\"x\" title=\"t\" standard=\"s\" "
			 "clause=\"c\"><source>s</source>\n"
			 "<column %s/><row a=\"1\" status=\"confirmed\"/></table>",
			 column[i]);
		if (read_text(text, &t))
			fail_msg("accepted: %s", column[i]);
		assert_non_null(strstr(said, ":2: column"));
		table_file_free(&t);
	}
	assert_false(
		read_text("<table name=\"x y\" title=\"t\" standard=\"s\" clause=\"c\"/>", &t));
	table_file_free(&t);
	assert_false(read_text("<table name=\"x\" title=\"*/\" standard=\"s\" clause=\"c\"/>", &t));
	table_file_free(&t);
}

static void reads_numbers_strictly(void **state)
{
	static const char *const bad[] = {"",   "-",   ".5",  "5.",  "1.2.3", "+1",  " 1",
					  "1 ", "0x1", "nan", "inf", "1e1",   "--1", "1,5"};
	static const char *const bad_fraction[] = {"/2",  "1/",     "1/0",   "-1/2", "1-/2",
						   "1-1", "1--1/2", "1/2/3", "1/2 "};
	double value = 7;

	(void)state;
	for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
		assert_false(table_number(bad[i], &value));
		assert_false(table_fraction(bad[i], &value));
		assert_false(table_integer(bad[i], &value));
	}
	for (size_t i = 0; i < sizeof bad_fraction / sizeof *bad_fraction; i++)
		assert_false(table_fraction(bad_fraction[i], &value));
	assert_false(table_integer("1.0", &value));
	assert_near(value, 7.0, 0);
	assert_true(table_number("-0.5", &value));
	assert_near(value, -0.5, 0);
	assert_true(table_fraction("13/32", &value));
	assert_near(value, 0.40625, 0);
	assert_true(table_fraction("3-1/2", &value));
	assert_near(value, 3.5, 0);
	assert_true(table_fraction("1", &value));
	assert_near(value, 1.0, 0);
}

static int set_up(void **state)
{
	const int fd = mkstemp(xml_path);

	(void)state;
	return fd < 0 ? -1 : close(fd);
}

static int tear_down(void **state)
{
	(void)state;
	return unlink(xml_path);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(reads_a_good_file),      cmocka_unit_test(refuses_damage),
		cmocka_unit_test(refuses_other_files),    cmocka_unit_test(refuses_what_is_not_c),
		cmocka_unit_test(reads_numbers_strictly),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
