/* SPDX-License-Identifier: MIT */
/* Export: same bytes every time, gzip without a trace of the machine, an index that tells the
   truth, nothing half-written when the disk is full or the place is wrong. The full disk is a limit
   on the size of files, which fails a write in the same way. */
#define _XOPEN_SOURCE 700

#include "near.h"

#include <dirent.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <zlib.h>

#include "sample.h"

static char scratch[64];
static struct guide_library *lib;

static int set_up(void **state)
{
	struct problem_list problems = {0};

	(void)state;
	strcpy(scratch, "guide-export-XXXXXX");
	lib = guide_open(sample_directory(), &problems);
	return lib && mkdtemp(scratch) ? 0 : -1;
}

static const char *in_scratch(const char *name)
{
	static char path[4][512];
	static int turn;

	turn = (turn + 1) % 4;
	snprintf(path[turn], sizeof path[turn], "%s/%s", scratch, name);
	return path[turn];
}

/* Number of entries of a directory below scratch; with remove, takes them and the directory away.
 */
static size_t entries(const char *name, bool remove_them)
{
	DIR *dir = opendir(in_scratch(name));
	const struct dirent *e;
	size_t n = 0;

	if (!dir)
		return 0;
	while ((e = readdir(dir)) != NULL) {
		if (strcmp(e->d_name, ".") == 0 || strcmp(e->d_name, "..") == 0)
			continue;
		n++;
		if (remove_them)
			assert_int_equal(unlinkat(dirfd(dir), e->d_name, 0), 0);
	}
	closedir(dir);
	if (remove_them)
		assert_int_equal(rmdir(in_scratch(name)), 0);
	return n;
}

static int tear_down(void **state)
{
	(void)state;
	guide_close(lib);
	return rmdir(scratch);
}

static void export_to(const char *name, bool compress)
{
	struct problem_list problems = {0};

	assert_true(guide_export(lib, in_scratch(name), compress, &problems));
	assert_false(problem_any(&problems));
}

static void same_files(const char *a, const char *b)
{
	struct sample x, y;

	sample_read(&x, in_scratch(a));
	sample_read(&y, in_scratch(b));
	assert_int_equal(x.files, y.files);
	for (size_t i = 0; i < x.files; i++) {
		size_t j = 0;

		while (j < y.files && strcmp(y.file[j].name, x.file[i].name) != 0)
			j++;
		assert_true(j < y.files);
		assert_int_equal(x.file[i].size, y.file[j].size);
		assert_memory_equal(x.file[i].data, y.file[j].data, x.file[i].size);
	}
	sample_free(&x);
	sample_free(&y);
}

/* sample_read takes .gz files too, since their names hold .xml. */
static void same_bytes_every_time(void **state)
{
	struct problem_list problems = {0};
	struct guide_library *again;

	(void)state;
	export_to("one", true);
	export_to("two", true);
	same_files("one", "two");
	export_to("two", true); /* over itself */
	same_files("one", "two");
	/* a library that was read from an export exports the same again */
	again = guide_open(in_scratch("one"), &problems);
	assert_non_null(again);
	assert_int_equal(guide_page_count(again), guide_page_count(lib));
	assert_true(guide_export(again, in_scratch("three"), true, &problems));
	same_files("one", "three");
	guide_close(again);
	entries("one", true);
	entries("two", true);
	entries("three", true);
}

/* Every file of the library unchanged, plus the index. */
static void files_are_the_library(void **state)
{
	struct sample from, to;
	size_t found = 0;

	(void)state;
	export_to("plain", false);
	sample_read(&from, sample_directory());
	sample_read(&to, in_scratch("plain"));
	assert_int_equal(to.files, from.files + 1);
	for (size_t i = 0; i < from.files; i++)
		for (size_t j = 0; j < to.files; j++)
			if (strcmp(from.file[i].name, to.file[j].name) == 0) {
				found++;
				assert_int_equal(from.file[i].size, to.file[j].size);
				assert_memory_equal(from.file[i].data, to.file[j].data,
						    to.file[j].size);
			}
	assert_int_equal(found, from.files);
	sample_free(&from);
	sample_free(&to);
	entries("plain", true);
}

static void index_tells_the_truth(void **state)
{
	struct sample s;
	const char *index = NULL;

	(void)state;
	export_to("index", false);
	sample_read(&s, in_scratch("index"));
	for (size_t i = 0; i < s.files; i++)
		if (strcmp(s.file[i].name, "index.xml") == 0)
			index = s.file[i].data;
	assert_non_null(index);
	for (size_t i = 0; i < s.files; i++) {
		char line[256];

		snprintf(line, sizeof line, "<file name=\"%s\" bytes=\"%zu\" crc32=\"%08lx\"/>",
			 s.file[i].name, s.file[i].size,
			 crc32(0, (const Bytef *)s.file[i].data, (uInt)s.file[i].size));
		assert_int_equal(strstr(index, line) != NULL, s.file[i].data != index);
	}
	for (size_t i = 0; i < guide_page_count(lib); i++) {
		char start[128];

		snprintf(start, sizeof start, "<page key=\"%s\" name=\"",
			 guide_page_at(lib, i).key);
		assert_non_null(strstr(index, start));
	}
	sample_free(&s);
	entries("index", true);
}

/* RFC 1952: magic, deflate, no flags, no time, maximum compression, system unknown; and it unpacks
 * to its file. */
static void gzip_has_no_machine_in_it(void **state)
{
	static const unsigned char header[10] = {0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 2, 255};
	static char unpacked[GUIDE_FILE_MAX];
	char name[256];
	struct sample s;
	size_t gz = 0;

	(void)state;
	export_to("gz", true);
	sample_read(&s, in_scratch("gz"));
	for (size_t i = 0; i < s.files; i++) {
		const char *tail = strstr(s.file[i].name, ".gz");
		gzFile f;
		int n;

		if (!tail)
			continue;
		gz++;
		assert_memory_equal(s.file[i].data, header, sizeof header);
		snprintf(name, sizeof name, "gz/%s", s.file[i].name);
		f = gzopen(in_scratch(name), "rb");
		assert_non_null(f);
		n = gzread(f, unpacked, sizeof unpacked);
		assert_int_equal(gzclose(f), Z_OK);
		for (size_t j = 0; j < s.files; j++)
			if (strlen(s.file[j].name) + 3 == strlen(s.file[i].name) &&
			    strncmp(s.file[j].name, s.file[i].name, strlen(s.file[j].name)) == 0) {
				assert_int_equal(n, s.file[j].size);
				assert_memory_equal(unpacked, s.file[j].data, s.file[j].size);
			}
	}
	assert_int_equal(gz * 2, s.files);
	sample_free(&s);
	entries("gz", true);
}

static void refused(const char *name)
{
	struct problem_list problems = {0};

	assert_false(guide_export(lib, name, true, &problems));
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_CANNOT_WRITE);
	assert_true(problems.item[0].given[0] != '\0');
}

static void places_that_are_no_directory(void **state)
{
	FILE *f = fopen(in_scratch("file"), "w");

	(void)state;
	assert_non_null(f);
	fclose(f);
	refused(in_scratch("file"));
	refused(in_scratch("file/below"));
	refused(in_scratch("no/such/place"));
	refused("/dev/full");
	refused("/proc");
	unlink(in_scratch("file"));
}

/* No file may grow past limit bytes: a write then fails as on a full disk. */
static void limit_files(rlim_t limit)
{
	struct rlimit r;

	assert_int_equal(getrlimit(RLIMIT_FSIZE, &r), 0);
	r.rlim_cur = limit;
	assert_int_equal(setrlimit(RLIMIT_FSIZE, &r), 0);
	signal(SIGXFSZ, SIG_IGN);
}

static void full_disk_leaves_nothing(void **state)
{
	static const rlim_t limit[] = {0, 1, 4000, 12000, 16000, 30000};

	(void)state;
	for (size_t i = 0; i < sizeof limit / sizeof limit[0]; i++) {
		limit_files(limit[i]);
		refused(in_scratch("full"));
		limit_files(RLIM_INFINITY);
		assert_int_equal(access(in_scratch("full"), F_OK), -1);
	}
}

/* An older export stays whole when a newer one fails. */
static void full_disk_leaves_the_old_export(void **state)
{
	(void)state;
	export_to("old", false);
	export_to("ref", false);
	limit_files(12000);
	refused(in_scratch("old"));
	limit_files(RLIM_INFINITY);
	same_files("old", "ref");
	assert_int_equal(entries("old", true), entries("ref", true));
}

/* A name that cannot be taken: a directory stands where a file should go. What is renamed so far is
 * whole, no part is left. */
static void a_place_that_is_taken(void **state)
{
	struct problem_list problems = {0};

	(void)state;
	assert_int_equal(mkdir(in_scratch("taken"), 0777), 0);
	assert_int_equal(mkdir(in_scratch("taken/slate.xml"), 0777), 0);
	assert_false(guide_export(lib, in_scratch("taken"), false, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_CANNOT_WRITE);
	assert_string_equal(problems.item[0].file, "slate.xml");
	assert_int_equal(rmdir(in_scratch("taken/slate.xml")), 0);
	{
		DIR *dir = opendir(in_scratch("taken"));
		const struct dirent *e;

		while ((e = readdir(dir)) != NULL)
			assert_null(strstr(e->d_name, ".part"));
		closedir(dir);
	}
	entries("taken", true);
}

/* A part of a run that was killed is in nobody's way, and stays as it is. */
static void stale_part_is_stepped_over(void **state)
{
	FILE *f;

	(void)state;
	assert_int_equal(mkdir(in_scratch("stale"), 0777), 0);
	f = fopen(in_scratch("stale/.slate.xml.part0"), "w");
	assert_non_null(f);
	fclose(f);
	export_to("stale", false);
	assert_int_equal(access(in_scratch("stale/.slate.xml.part0"), F_OK), 0);
	assert_int_equal(access(in_scratch("stale/.slate.xml.part1"), F_OK), -1);
	entries("stale", true);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(same_bytes_every_time),
					   cmocka_unit_test(files_are_the_library),
					   cmocka_unit_test(index_tells_the_truth),
					   cmocka_unit_test(gzip_has_no_machine_in_it),
					   cmocka_unit_test(places_that_are_no_directory),
					   cmocka_unit_test(full_disk_leaves_nothing),
					   cmocka_unit_test(full_disk_leaves_the_old_export),
					   cmocka_unit_test(a_place_that_is_taken),
					   cmocka_unit_test(stale_part_is_stepped_over)};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
