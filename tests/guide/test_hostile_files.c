/* SPDX-License-Identifier: MIT */
/* Directories that are no library: things that are no files, links, files too large, compressed
 * bytes. */
#define _GNU_SOURCE
#include "near.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "sample.h"

static char scratch[64];

static int make_scratch(void **state)
{
	(void)state;
	strcpy(scratch, "guide-hostile-XXXXXX");
	return mkdtemp(scratch) ? 0 : -1;
}

static void path_in(char *path, size_t size, const char *name)
{
	snprintf(path, size, "%s/%s", scratch, name);
}

static void write_sample(const struct sample *s)
{
	for (size_t i = 0; i < s->files; i++) {
		char path[256];
		FILE *f;

		path_in(path, sizeof path, s->file[i].name);
		f = fopen(path, "wb");
		assert_non_null(f);
		assert_int_equal(fwrite(s->file[i].data, 1, s->file[i].size, f), s->file[i].size);
		fclose(f);
	}
}

static void remove_sample(const struct sample *s)
{
	char path[256];

	for (size_t i = 0; i < s->files; i++) {
		path_in(path, sizeof path, s->file[i].name);
		unlink(path);
	}
}

/* In place of one file: a directory, a named pipe (must not block), a link to nowhere, a large
 * file, a link out of the library. */
static void things_that_are_no_files(void **state)
{
	struct sample s;
	char path[256];

	(void)state;
	sample_small(&s);
	write_sample(&s);
	path_in(path, sizeof path, "readme.txt");
	assert_int_equal(symlink("/nowhere", path), 0); /* other files are not looked at */
	for (int kind = 0; kind < 6; kind++) {
		static const enum problem_code want[] = {PROBLEM_NONE,       PROBLEM_NOT_A_FILE,
							 PROBLEM_NOT_A_FILE, PROBLEM_NOT_A_FILE,
							 PROBLEM_TOO_LARGE,  PROBLEM_NOT_A_FILE};
		struct problem_list problems = {0};
		struct guide_library *lib;
		char odd[256];

		path_in(odd, sizeof odd, "odd.xml");
		if (kind == 1)
			assert_int_equal(mkdir(odd, 0777), 0);
		else if (kind == 2)
			assert_int_equal(mkfifo(odd, 0666), 0);
		else if (kind == 3)
			assert_int_equal(symlink("/nowhere", odd), 0);
		else if (kind == 5)
			assert_int_equal(symlink("/etc/hostname", odd), 0);
		else if (kind == 4) {
			FILE *f = fopen(odd, "wb");

			assert_non_null(f);
			assert_int_equal(ftruncate(fileno(f), GUIDE_FILE_MAX + 1), 0);
			fclose(f);
		}
		lib = guide_open(scratch, &problems);
		assert_int_equal(lib != NULL, kind == 0);
		assert_int_equal(problems.item[0].code, want[kind]);
		if (kind > 0)
			assert_string_equal(problems.item[0].file, "odd.xml");
		guide_close(lib);
		remove(odd);
	}
	unlink(path);
	remove_sample(&s);
	sample_free(&s);
}

/* What a page says when it is handed out in one text; false if it is refused. */
static bool opens_with(const char *name, const char *bytes, size_t size, enum problem_code want)
{
	struct problem_list problems = {0};
	struct guide_library *lib;
	char path[256];
	bool ok;
	FILE *f;

	path_in(path, sizeof path, name);
	f = fopen(path, "wb");
	assert_non_null(f);
	assert_int_equal(fwrite(bytes, 1, size, f), size);
	fclose(f);
	lib = guide_open(scratch, &problems);
	ok = lib != NULL;
	if (!ok) {
		assert_int_equal(problems.item[0].code, want);
		assert_string_equal(problems.item[0].file, name);
	}
	guide_close(lib);
	unlink(path);
	return ok;
}

/* Compressed files beside the pages are never looked at, so that none can be a bomb; one under a
   page's name is no XML. An attribute longer than a file may be is refused by the size of its file,
   before a byte is read. */
static void compressed_and_swollen(void **state)
{
	/* the head of a compressed file, then anything */
	static char bomb[4096] = {0x1f, (char)0x8b, 8, 0, 0, 0, 0, 0, 2, (char)0xff};
	static char swollen[GUIDE_FILE_MAX + 64];
	static const char head[] = "<covering key='odd' guide='";
	struct sample s;

	(void)state;
	sample_small(&s);
	write_sample(&s);
	assert_true(opens_with("barn.xml.gz", bomb, sizeof bomb, PROBLEM_NONE));
	assert_true(opens_with("barn.xml.gz", bomb, 5, PROBLEM_NONE));
	assert_false(opens_with("odd.xml", bomb, sizeof bomb, PROBLEM_NOT_XML));
	assert_false(opens_with("odd.xml", bomb, 5, PROBLEM_NOT_XML));
	memset(swollen, 'a', sizeof swollen);
	memcpy(swollen, head, sizeof head - 1);
	assert_false(opens_with("odd.xml", swollen, sizeof swollen, PROBLEM_TOO_LARGE));
	/* as long as a file may be: read, and refused for what it says */
	memcpy(swollen + GUIDE_FILE_MAX - 4, "'/>\n", 4);
	assert_false(opens_with("odd.xml", swollen, GUIDE_FILE_MAX, PROBLEM_LIBRARY));
	remove_sample(&s);
	sample_free(&s);
}

static int remove_scratch(void **state)
{
	(void)state;
	return rmdir(scratch);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test_setup_teardown(things_that_are_no_files, make_scratch,
						remove_scratch),
		cmocka_unit_test_setup_teardown(compressed_and_swollen, make_scratch,
						remove_scratch),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
