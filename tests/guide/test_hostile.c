/* SPDX-License-Identifier: MIT */
/* Libraries that are damaged, hostile or merely wrong are refused, and the problem says what and
   where. Each case takes the small library, spoils one thing, and names the problem it wants. */
#define _POSIX_C_SOURCE 200809L

#include "near.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "sample.h"

static void want_problem(const struct sample *s, enum problem_code code, const char *file,
			 const char *what)
{
	struct problem_list problems;
	struct guide_library *lib = sample_open(s, &problems);
	char line[1200] = "nothing";

	if (lib) {
		guide_close(lib);
		fail_msg("accepted: %s", what);
	}
	assert_true(problem_any(&problems));
	problem_print(line, sizeof line, &problems.item[0]);
	if (problems.item[0].code != code || (file && strcmp(problems.item[0].file, file) != 0))
		fail_msg("%s: wanted %d in %s, got %s", what, code, file, line);
	for (size_t i = 0; i < problems.count; i++)
		/* a fault of a page has a place; one of the schema as a whole may have none */
		if (code == PROBLEM_LIBRARY && problems.item[i].line <= 0 &&
		    strstr(problems.item[i].file, ".xml"))
			fail_msg("%s: no line in %s", what,
				 problem_print(line, sizeof line, &problems.item[i]));
}

static void small_library_is_good(void **state)
{
	struct problem_list problems;
	struct guide_library *lib;
	struct sample s;

	(void)state;
	sample_small(&s);
	lib = sample_open(&s, &problems);
	assert_non_null(lib);
	assert_false(problem_any(&problems));
	guide_close(lib);
	sample_free(&s);
}

/* One edit each that the schema or the checks behind it must refuse. */
static void one_fault_each(void **state)
{
	static const struct {
		const char *file, *from, *to;
	} row[] = {
		/* schema */
		{"barn.xml", "<look status='derived'>", "<look>"},
		{"barn.xml", "<look status='derived'>", "<look status='sure'>"},
		{"barn.xml", "status='confirmed' source='book'", "status='confirmed'"},
		{"barn.xml", "status='confirmed' source='book'", "status='second-hand'"},
		{"barn.xml", "<look status='derived'>Boards.</look>", ""},
		{"barn.xml", "guide='yes'", "guide='perhaps'"},
		{"barn.xml", "guide='yes'", ""},
		{"barn.xml", "guide='yes'", "guide='yes' onload='x'"},
		{"barn.xml", "<cautions><caution status='derived'>Mind.</caution></cautions>", ""},
		{"barn.xml", "Hammer.", ""},
		{"barn.xml", "<else>Oval.</else>", ""},
		{"barn.xml", "<else>Oval.</else>", "<else>{pipe-across}</else>"},
		{"barn.xml", "Hammer.", "{feet} hammers"},
		{"barn.xml", "Hammer.", "<b>Hammer</b>"},
		{"barn.xml", "Hole {pipe-ellipse} by {pipe-across}.", "No size."},
		{"barn.xml", "slope-below='4:12'>Low", "slope-below='4'>Low"},
		{"barn.xml", "rank='1'", "rank='0'"},
		{"barn.xml", "kind='deck'", "kind='dragon'"},
		{"barn.xml", "<slippery snow='no' status='derived'/>", ""},
		{"barn.xml", "key='barn'", "key='../barn'"},
		{"common.xml", "<part id='order' title='Order of work'>",
		 "<part id='order' title='Order of work'><use part='stop-any'/>"},
		{"sources.xml", "<seen>page 3</seen>", ""},
		/* checks behind the schema */
		{"barn.xml", "source='book'", "source='another'"},
		{"barn.xml", "source='book'", "source='book another'"},
		{"barn.xml", "key='barn'", "key='shed'"},
		{"barn.xml", "part='order'", "part='disorder'"},
		{"barn.xml", "<use part='order'/>", "<use part='order'/><use part='order'/>"},
		{"barn.xml", "<use part='order'/>", "<use part='order'/><use part='defers'/>"},
		{"barn.xml", "{pipe-across}", "{pipe-acros}"},
		{"barn.xml", "Lift {1/4 in}.", "Lift {1/4 inch}."},
		{"barn.xml", "Lift {1/4 in}.", "Lift {1/0 in}."},
		{"barn.xml", "from='plate-down' status='derived'>Seen",
		 "from='plate-dawn' status='derived'>Seen"},
		{"barn.xml", "from='deck-thickness'", "from='deck'"},
		{"barn.xml", "least='4 in' from", "least='4 psf' from"},
		{"barn.xml", "value='1/2 in'", "value='1/2'"},
		{"barn.xml", "value='3:12'", "value='3 in'"},
		{"barn.xml", "low='2 psf' high='3 psf'", "low='3 psf' high='2 psf'"},
		{"barn.xml", "low='2 psf' high='3 psf'", "low='2 in' high='3 in'"},
		{"barn.xml", "for='wet'", "for='{wet}'"},
		{"barn.xml", "slope-from='4:12' slope-below='8:12'",
		 "slope-from='8:12' slope-below='8:12'"},
		{"barn.xml", "<size name='base' value='-1 in'/>",
		 "<size name='base' value='-1 in'/><size name='base' value='1 in'/>"},
		{"common.xml", "id='order'", "id='stop-any'"},
		{"sources.xml", "</sources>",
		 "<source id='book'><title>Again</title><seen>x</seen></source></sources>"}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct sample s;

		sample_small(&s);
		sample_edit(&s, row[i].file, row[i].from, row[i].to);
		want_problem(&s, PROBLEM_LIBRARY, row[i].file,
			     row[i].to[0] ? row[i].to : row[i].from);
		sample_free(&s);
	}
}

static void whole_files(void **state)
{
	static const struct {
		const char *file, *text;
		enum problem_code code;
	} row[] = {
		{"barn.xml", "<!DOCTYPE covering><covering/>", PROBLEM_ENTITY},
		{"barn.xml", "<!DOCTYPE covering SYSTEM 'file:///etc/passwd'><covering/>",
		 PROBLEM_ENTITY},
		{"barn.xml",
		 "<!DOCTYPE a [<!ENTITY b 'bbbbbbbbbb'><!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;'>"
		 "<!ENTITY d '&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;'><!ENTITY e "
		 "'&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;'>"
		 "<!ENTITY f '&e;&e;&e;&e;&e;&e;&e;&e;&e;&e;'>]><a>&f;&f;&f;&f;</a>",
		 PROBLEM_ENTITY},
		{"barn.xml", "<a>&undeclared;</a>", PROBLEM_NOT_XML},
		{"barn.xml", "<a x='&undeclared;'/>", PROBLEM_NOT_XML},
		{"barn.xml", "not a word of XML", PROBLEM_NOT_XML},
		{"barn.xml", "<covering", PROBLEM_NOT_XML},
		{"barn.xml", "<a></b>", PROBLEM_NOT_XML},
		{"barn.xml", "<a/><b/>", PROBLEM_NOT_XML},
		{"barn.xml", "<a>\xff\xfe</a>", PROBLEM_NOT_XML},
		{"barn.xml", "<a b='1' b='2'/>", PROBLEM_NOT_XML},
		{"barn.xml", "<other/>", PROBLEM_LIBRARY},
		{"barn.xml", "<covering xmlns='http://example.org/'/>", PROBLEM_LIBRARY},
		{"covering.rng", "<!DOCTYPE grammar><grammar/>", PROBLEM_ENTITY},
		{"covering.rng", "<grammar xmlns='http://relaxng.org/ns/structure/1.0'/>",
		 PROBLEM_LIBRARY},
		{"covering.rng",
		 "<grammar xmlns='http://relaxng.org/ns/structure/1.0'><include "
		 "href='file:///etc/passwd'/></grammar>",
		 PROBLEM_LIBRARY},
		{"covering.rng",
		 "<grammar xmlns='http://relaxng.org/ns/structure/1.0'><start><externalRef "
		 "href='x.rng'/></start></grammar>",
		 PROBLEM_LIBRARY},
		{"covering.rng", "<hello/>", PROBLEM_LIBRARY}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct sample s;

		sample_small(&s);
		sample_put(&s, row[i].file, row[i].text, 0);
		want_problem(&s, row[i].code, row[i].file, row[i].text);
		sample_free(&s);
	}
}

static void a_file_with_nothing(void **state)
{
	struct sample s;

	(void)state;
	sample_small(&s);
	s.file[1].size = 0;
	want_problem(&s, PROBLEM_NOT_XML, "barn.xml", "an empty file");
	sample_free(&s);
}

/* Cut anywhere before its last tag is closed, a file is refused. */
static void cut_short(void **state)
{
	struct sample s;
	size_t whole;

	(void)state;
	sample_small(&s);
	whole = s.file[1].size;
	assert_string_equal(s.file[1].name, "barn.xml");
	for (size_t n = 1; n < whole - 1; n += 37) {
		s.file[1].size = n;
		want_problem(&s, PROBLEM_NOT_XML, "barn.xml", "cut");
	}
	sample_free(&s);
}

/* Single bytes turned over: whatever the parser makes of it, it answers. */
static void flipped_bytes(void **state)
{
	struct sample s;

	(void)state;
	sample_small(&s);
	for (size_t i = 0; i < s.file[1].size; i += 61)
		for (int bit = 0; bit < 8; bit += 3) {
			struct problem_list problems;

			s.owned[1][i] = (char)(s.owned[1][i] ^ (1 << bit));
			guide_close(sample_open(&s, &problems));
			s.owned[1][i] = (char)(s.owned[1][i] ^ (1 << bit));
		}
	sample_free(&s);
}

static void too_deep(void **state)
{
	static char deep[200000];
	struct sample s;

	(void)state;
	for (int i = 0; i < 50000; i++)
		memcpy(deep + 3 * i, "<a>", 4);
	sample_small(&s);
	sample_put(&s, "barn.xml", deep, 0);
	want_problem(&s, PROBLEM_TOO_DEEP, "barn.xml", "50000 levels");
	sample_free(&s);
}

static void too_large(void **state)
{
	static char large[GUIDE_FILE_MAX + 2];
	struct sample s;

	(void)state;
	memset(large, ' ', GUIDE_FILE_MAX + 1);
	sample_small(&s);
	sample_put(&s, "barn.xml", large, GUIDE_FILE_MAX + 1);
	want_problem(&s, PROBLEM_TOO_LARGE, "barn.xml", "1 MiB and a byte");
	sample_free(&s);
}

/* 17 files of a MiB. */
static void too_large_together(void **state)
{
	static char large[GUIDE_FILE_MAX + 1];
	struct sample s;

	(void)state;
	memset(large, ' ', GUIDE_FILE_MAX);
	sample_small(&s);
	for (int i = 0; i < 17; i++) {
		char name[32];

		snprintf(name, sizeof name, "a%d.xml", i);
		sample_put(&s, name, large, GUIDE_FILE_MAX);
	}
	want_problem(&s, PROBLEM_TOO_LARGE, "", "17 MiB");
	sample_free(&s);
}

static void too_many_files(void **state)
{
	static struct guide_file file[GUIDE_FILES_MAX + 1];
	static char name[GUIDE_FILES_MAX + 1][32];
	struct problem_list problems = {0};

	(void)state;
	for (int i = 0; i <= GUIDE_FILES_MAX; i++) {
		snprintf(name[i], sizeof name[i], "n%d.xml", i);
		file[i] = (struct guide_file){name[i], "<a/>", 4};
	}
	assert_null(guide_open_memory(file, GUIDE_FILES_MAX + 1, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_TOO_LARGE);
}

static void names_of_files(void **state)
{
	static const char *const name[] = {"../barn.xml", "a/b.xml",      "Upper.xml", "a.b.xml",
					   ".xml",        "barn.txt",     "barn",      "",
					   "a b.xml",     "-\xc3\xa9.xml"};

	(void)state;
	for (size_t i = 0; i < sizeof name / sizeof name[0]; i++) {
		const struct guide_file file = {name[i], "<a/>", 4};
		struct problem_list problems = {0};

		assert_null(guide_open_memory(&file, 1, &problems));
		assert_int_equal(problems.item[0].code, PROBLEM_LIBRARY);
	}
}

static void same_name_twice(void **state)
{
	struct sample s;

	(void)state;
	sample_small(&s);
	s.file[s.files] = s.file[1];
	s.files++;
	want_problem(&s, PROBLEM_TWICE, "barn.xml", "twice");
	s.files--;
	sample_free(&s);
}

static void parts_that_must_be_there(void **state)
{
	struct sample s;
	const char *schema;

	(void)state;
	sample_small(&s);
	sample_edit(&s, "common.xml", "id='defers'", "id='deters'");
	want_problem(&s, PROBLEM_LIBRARY, "", "no opening part");
	sample_free(&s);
	sample_small(&s);
	schema = s.file[0].name;
	s.file[0].name = "other.rng";
	want_problem(&s, PROBLEM_CANNOT_OPEN, "covering.rng", "no schema");
	s.file[0].name = schema;
	sample_free(&s);
}

static void nothing_at_all(void **state)
{
	struct problem_list problems = {0};

	(void)state;
	assert_null(guide_open_memory(NULL, 0, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_CANNOT_OPEN);
	assert_null(guide_open("no/such/directory", &problems));
	assert_int_equal(problems.item[1].code, PROBLEM_CANNOT_OPEN);
	assert_string_equal(problems.item[1].file, "no/such/directory");
	guide_close(NULL);
}

/* What the schema finds and what it cannot say are told together. */
static void all_faults_at_once(void **state)
{
	struct problem_list problems;
	struct sample s;

	(void)state;
	sample_small(&s);
	sample_edit(&s, "barn.xml", "status='our-rule'>Like a", "status='hearsay'>Like a");
	sample_edit(&s, "barn.xml", "Lift {1/4 in}.", "Lift {1/4in}.");
	sample_edit(&s, "barn.xml", "<use part='order'/>", "<use part='disorder'/>");
	assert_null(sample_open(&s, &problems));
	assert_int_equal(problems.count, 3);
	assert_int_equal(problems.item[0].line, 5);
	assert_string_equal(problems.item[1].given, "{1/4in}.");
	assert_string_equal(problems.item[2].given, "disorder");
	sample_free(&s);
}

/* More uses than a page may have, each of a part that exists. */
static void too_many_parts_in_a_page(void **state)
{
	static char parts[40000], used[20000];
	struct sample s;
	size_t p = 0, u = 0;

	(void)state;
	p += (size_t)snprintf(parts, sizeof parts, "<common>");
	for (int i = 0; i < 200; i++) {
		p += (size_t)snprintf(
			parts + p, sizeof parts - p,
			"<part id='p%d' title='t'><item status='derived'>i</item></part>", i);
		u += (size_t)snprintf(used + u, sizeof used - u, "<use part='p%d'/>", i);
	}
	snprintf(parts + p, sizeof parts - p, "</common>");
	sample_small(&s);
	sample_put(&s, "many.xml", parts, 0);
	sample_edit(&s, "barn.xml", "<use part='order'/>", used);
	want_problem(&s, PROBLEM_LIBRARY, "barn.xml", "200 parts");
	sample_free(&s);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(small_library_is_good),
					   cmocka_unit_test(one_fault_each),
					   cmocka_unit_test(whole_files),
					   cmocka_unit_test(a_file_with_nothing),
					   cmocka_unit_test(cut_short),
					   cmocka_unit_test(flipped_bytes),
					   cmocka_unit_test(too_deep),
					   cmocka_unit_test(too_large),
					   cmocka_unit_test(too_large_together),
					   cmocka_unit_test(too_many_files),
					   cmocka_unit_test(names_of_files),
					   cmocka_unit_test(same_name_twice),
					   cmocka_unit_test(parts_that_must_be_there),
					   cmocka_unit_test(nothing_at_all),
					   cmocka_unit_test(all_faults_at_once),
					   cmocka_unit_test(too_many_parts_in_a_page)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
