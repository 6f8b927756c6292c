/* SPDX-License-Identifier: MIT */
/* Files that are no jobs: not there, not files, too large, broken off, hostile; and machines
   that fail. */
#define _DEFAULT_SOURCE

#include <errno.h>
#include <fcntl.h>
#include <libxml/parser.h>
#include <libxml/xmlmemory.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

#include "example.h"
#include "job/job_read.h"
#include "near.h"

static struct job job;
static struct problem_list problems;
static char text[EXAMPLE_MAX];
static char dir[] = "/tmp/job-test-XXXXXX";
static char path[64];

/* The linker sends the reader's calls here. */
ssize_t __wrap_read(int fd, void *buf, size_t n);
ssize_t __real_read(int fd, void *buf, size_t n);
void *__wrap_malloc(size_t n);
void *__real_malloc(size_t n);
static int fail_read_with;   /* errno of the next read, once */
static size_t most_per_read; /* short reads */
static int mallocs_before_fail = -1;

ssize_t __wrap_read(int fd, void *buf, size_t n)
{
	if (fail_read_with != 0) {
		errno = fail_read_with;
		fail_read_with = 0;
		return -1;
	}
	return __real_read(fd, buf, most_per_read > 0 && n > most_per_read ? most_per_read : n);
}

void *__wrap_malloc(size_t n)
{
	if (mallocs_before_fail == 0)
		return NULL;
	if (mallocs_before_fail > 0)
		mallocs_before_fail--;
	return __real_malloc(n);
}

static int start(void **state)
{
	(void)state;
	memset(&problems, 0, sizeof problems);
	fail_read_with = 0;
	most_per_read = 0;
	mallocs_before_fail = -1;
	example_read(text);
	snprintf(path, sizeof path, "%s/job.xml", dir);
	return 0;
}

static int end(void **state)
{
	(void)state;
	unlink(path);
	return 0;
}

static void write_file(const char *bytes, size_t n)
{
	FILE *const f = fopen(path, "wb");

	assert_non_null(f);
	assert_true(fwrite(bytes, 1, n, f) == n);
	assert_int_equal(fclose(f), 0);
}

static void expect(enum problem_code code, const char *given)
{
	char buf[900];

	if (job_read_file(path, NULL, 0, &job, &problems))
		fail_msg("read as a job, want %d", code);
	if (problems.count != 1 || problems.item[0].code != code ||
	    !strstr(problems.item[0].given, given))
		fail_msg("want %d `%s`, got %s", code, given,
			 problem_print(buf, sizeof buf, &problems.item[0]));
	assert_string_equal(problems.item[0].file, path);
}

static void test_good(void **state)
{
	(void)state;
	write_file(text, strlen(text));
	assert_true(job_read_file(path, NULL, 0, &job, &problems));
	assert_int_equal(job.collector.columns, 2);
}

static void test_not_there(void **state)
{
	(void)state;
	snprintf(path, sizeof path, "%s/none.xml", dir);
	expect(PROBLEM_CANNOT_OPEN, strerror(ENOENT));
}

static void test_directory(void **state)
{
	(void)state;
	snprintf(path, sizeof path, "%s", dir);
	expect(PROBLEM_NOT_A_FILE, "a directory");
}

/* Must not wait for somebody to write into it. */
static void test_pipe(void **state)
{
	(void)state;
	assert_int_equal(mkfifo(path, 0600), 0);
	expect(PROBLEM_NOT_A_FILE, "a pipe");
}

static void test_device(void **state)
{
	(void)state;
	snprintf(path, sizeof path, "/dev/zero");
	expect(PROBLEM_NOT_A_FILE, "a device");
	snprintf(path, sizeof path, "%s/job.xml", dir);
}

/* The superuser may read everything, so somebody else tries. */
static void test_no_permission(void **state)
{
	const uid_t me = geteuid();

	(void)state;
	write_file(text, strlen(text));
	assert_int_equal(chmod(path, 0), 0);
	if (me == 0)
		assert_int_equal(seteuid(65534), 0);
	expect(PROBLEM_CANNOT_OPEN, strerror(EACCES));
	assert_int_equal(seteuid(me), 0);
}

/* A file of 1 GB that holds nothing: refused without reading it. */
static void test_huge(void **state)
{
	(void)state;
	write_file("", 0);
	assert_int_equal(truncate(path, 1000000000), 0);
	fail_read_with = EIO; /* a read would be told as another problem */
	expect(PROBLEM_TOO_LARGE, "");
	assert_int_equal(fail_read_with, EIO);
}

/* Pads the example with comments to n bytes. */
static char *padded(size_t n)
{
	char *const buf = malloc(n);
	size_t at = strlen(text);

	assert_non_null(buf);
	memcpy(buf, text, at);
	while (at < n) {
		const size_t length = n - at < 2000 ? n - at : 1000;

		memset(buf + at, 'x', length);
		memcpy(buf + at, "<!--", 4);
		memcpy(buf + at + length - 3, "-->", 3);
		at += length;
	}
	return buf;
}

static void test_size_limit(void **state)
{
	char *buf = padded(JOB_FILE_MAX);

	(void)state;
	write_file(buf, JOB_FILE_MAX);
	assert_true(job_read_file(path, NULL, 0, &job, &problems));
	free(buf);
	buf = padded(JOB_FILE_MAX + 1);
	write_file(buf, JOB_FILE_MAX + 1);
	expect(PROBLEM_TOO_LARGE, "");
	start(NULL);
	assert_false(job_read_memory("memory", buf, JOB_FILE_MAX + 1, NULL, 0, &job, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_TOO_LARGE);
	free(buf);
}

static void test_reads_that_fail(void **state)
{
	(void)state;
	write_file(text, strlen(text));
	fail_read_with = EIO;
	expect(PROBLEM_CANNOT_READ, strerror(EIO));
	start(NULL);
	fail_read_with = EINTR;
	assert_true(job_read_file(path, NULL, 0, &job, &problems));
	most_per_read = 7;
	assert_true(job_read_file(path, NULL, 0, &job, &problems));
}

static const struct {
	const char *bytes;
	enum problem_code code;
	const char *given;
} document[] = {
	{"", PROBLEM_NOT_XML, "empty"},
	{"hello", PROBLEM_NOT_XML, ""},
	{"{\"roof\": 1}", PROBLEM_NOT_XML, ""},
	{"<?xml version=\"1.0\"?>", PROBLEM_NOT_XML, "breaks off"},
	{"<job>", PROBLEM_NOT_XML, "breaks off"},
	{"<job><site></roof></job>", PROBLEM_NOT_XML, "mismatch"},
	{"<job title=a/>", PROBLEM_NOT_XML, ""},
	{"<job title=\"&nosuch;\"/>", PROBLEM_NOT_XML, "nosuch"},
	{"<job title=\"&#0;\"/>", PROBLEM_NOT_XML, ""},
	{"<job>\xFF</job>", PROBLEM_NOT_XML, "UTF-8"},
	{"<job/><job/>", PROBLEM_NOT_XML, ""},
	{"<house/>", PROBLEM_UNKNOWN_FIELD, ""},
	{"<job xmlns=\"urn:another\"/>", PROBLEM_UNKNOWN_FIELD, ""},
	{"<!DOCTYPE job><job/>", PROBLEM_ENTITY, "job"},
	{"<!DOCTYPE job SYSTEM \"file:///etc/passwd\"><job/>", PROBLEM_ENTITY, "job"},
	{"<!DOCTYPE job [<!ENTITY x SYSTEM \"/etc/passwd\">]><job title=\"a\">&x;</job>",
	 PROBLEM_ENTITY, "job"},
	{"<!DOCTYPE b [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
	 "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d "
	 "\"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\">"
	 "<!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;\"><!ENTITY f "
	 "\"&e;&e;&e;&e;&e;&e;&e;&e;&e;&e;\">"
	 "<!ENTITY g \"&f;&f;&f;&f;&f;&f;&f;&f;&f;&f;\"><!ENTITY h "
	 "\"&g;&g;&g;&g;&g;&g;&g;&g;&g;&g;\">]>"
	 "<job title=\"&h;\"/>",
	 PROBLEM_ENTITY, "b"},
	{"<!DOCTYPE job [<!ATTLIST job title CDATA 'x'>]><job/>", PROBLEM_ENTITY, "job"},
};

static void test_documents(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof document / sizeof document[0]; i++) {
		start(NULL);
		write_file(document[i].bytes, strlen(document[i].bytes));
		expect(document[i].code, document[i].given);
	}
}

/* Cut after any byte, the example is no job; after its last tag it is one again. */
static void test_truncated(void **state)
{
	const char *const last = strstr(text, "</job>") + strlen("</job>");

	(void)state;
	for (size_t n = 0; n < (size_t)(last - text); n++) {
		memset(&problems, 0, sizeof problems);
		if (job_read_memory("cut.xml", text, n, NULL, 0, &job, &problems))
			fail_msg("read as a job when cut to %zu bytes", n);
		if (problems.item[0].code != PROBLEM_NOT_XML)
			fail_msg("cut to %zu bytes: told as %d", n, problems.item[0].code);
	}
	memset(&problems, 0, sizeof problems);
	assert_true(
		job_read_memory("cut.xml", text, (size_t)(last - text), NULL, 0, &job, &problems));
}

/* Any one byte changed: read or refused, never worse. (Run it with a sanitizer.) */
static void test_damaged(void **state)
{
	const size_t size = strlen(text);
	int read = 0, refused = 0;

	(void)state;
	for (size_t i = 0; i < size; i++)
		for (int b = 0; b < 3; b++) {
			static const char byte[] = {'<', '\0', '\x80'};
			const char was = text[i];

			text[i] = byte[b];
			memset(&problems, 0, sizeof problems);
			if (job_read_memory("damaged.xml", text, size, NULL, 0, &job, &problems))
				read++;
			else
				refused++;
			text[i] = was;
		}
	/* a byte in a comment may be anything that XML allows; nearly everything else is refused */
	assert_true(read > 0 && refused > 10 * read);
}

/* Elements one in the other. Depth 8 is read (and refused for what it is), 9 is not looked at. */
static void test_deep(void **state)
{
	(void)state;
	write_file("<job><a><a><a><a><a><a><a/></a></a></a></a></a></a></job>", 57);
	assert_false(job_read_file(path, NULL, 0, &job, &problems));
	for (size_t i = 0; i < problems.count; i++)
		assert_int_not_equal(problems.item[i].code, PROBLEM_TOO_DEEP);
	start(NULL);
	write_file("<job><a><a><a><a><a><a><a><a/></a></a></a></a></a></a></a></job>", 64);
	assert_false(job_read_file(path, NULL, 0, &job, &problems));
	assert_int_equal(problems.item[problems.count - 1].code, PROBLEM_TOO_DEEP);
	start(NULL);
	{
		const size_t n = 200000;
		char *const buf = malloc(3 * n + 5);

		memcpy(buf, "<job>", 5);
		for (size_t i = 0; i < n; i++)
			memcpy(buf + 5 + 3 * i, "<a>", 3);
		assert_false(job_read_memory("deep.xml", buf, 3 * n + 5, NULL, 0, &job, &problems));
		assert_int_equal(problems.item[problems.count - 1].code, PROBLEM_TOO_DEEP);
		free(buf);
	}
}

/* A tag of a megabyte is refused before anything compares its attributes with each other. */
static void test_long_tag(void **state)
{
	const size_t size = JOB_FILE_MAX;
	char *const buf = malloc(size + 1);
	size_t n = 5;

	(void)state;
	memcpy(buf, "<job ", 5);
	for (int i = 0; n + 20 < size; i++)
		n += (size_t)sprintf(buf + n, "a%d='' ", i);
	memcpy(buf + n, "/>", 2);
	assert_false(job_read_memory("long.xml", buf, n + 2, NULL, 0, &job, &problems));
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_TOO_LARGE);
	free(buf);
}

/* UTF-8 with a mark, UTF-16 and Latin-1 are XML too. */
static void test_encodings(void **state)
{
	static char wide[2 * EXAMPLE_MAX + 2];
	char marked[EXAMPLE_MAX + 3];
	const size_t n = strlen(text);
	const char *encoding;

	(void)state;
	memcpy(marked, "\xEF\xBB\xBF", 3);
	memcpy(marked + 3, text, n);
	assert_true(job_read_memory("mark.xml", marked, n + 3, NULL, 0, &job, &problems));
	example_change(text, "First job", "Pr\xE9mier");
	example_change(text, "UTF-8", "ISO-8859-1");
	assert_true(job_read_memory("latin.xml", text, strlen(text), NULL, 0, &job, &problems));
	assert_string_equal(job.title, "Pr\xC3\xA9mier: two flat-plates on laminated shingles");
	example_read(text);
	example_change(text, "UTF-8", "UTF-16");
	wide[0] = '\xFF', wide[1] = '\xFE';
	for (size_t i = 0; i < strlen(text); i++)
		wide[2 + 2 * i] = text[i], wide[3 + 2 * i] = 0;
	assert_true(
		job_read_memory("wide.xml", wide, 2 * strlen(text) + 2, NULL, 0, &job, &problems));
	encoding = strstr(text, "UTF-16");
	assert_non_null(encoding);
	example_change(text, "UTF-16", "KLINGON");
	assert_false(job_read_memory("unknown.xml", text, strlen(text), NULL, 0, &job, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_NOT_XML);
}

/* The n-th allocation of the XML parser fails, for every n: a problem is told, or the job is the
   same as ever. */
static int xml_allocations;

static void *counted_malloc(size_t n)
{
	return xml_allocations-- == 0 ? NULL : __real_malloc(n);
}

static void *counted_realloc(void *old, size_t n)
{
	return xml_allocations-- == 0 ? NULL : realloc(old, n);
}

static char *counted_strdup(const char *s)
{
	return xml_allocations-- == 0 ? NULL : strdup(s);
}

/* What the parser says before it has a context to say it in. */
static void say_nothing(void *context, const char *message, ...)
{
	(void)context;
	(void)message;
}

static void test_memory_of_parser(void **state)
{
	static struct job whole;
	const size_t size = strlen(text);
	int refused = 0, n;

	(void)state;
	xmlCleanupParser();
	xmlSetGenericErrorFunc(NULL, say_nothing);
	assert_int_equal(xmlMemSetup(free, counted_malloc, counted_realloc, counted_strdup), 0);
	xml_allocations = -1;
	xmlInitParser();
	assert_true(job_read_memory("whole.xml", text, size, NULL, 0, &whole, &problems));
	for (n = 0; n < 5000; n++) {
		memset(&problems, 0, sizeof problems);
		xml_allocations = n;
		if (!job_read_memory("memory.xml", text, size, NULL, 0, &job, &problems)) {
			refused++;
			continue;
		}
		assert_memory_equal(&job, &whole, sizeof job);
		if (xml_allocations >= 0)
			break; /* more than it ever asks for */
	}
	assert_true(n < 5000 && refused > 0);
	print_message("%d allocations, %d refused\n", n, refused);
}

static void test_memory_of_reader(void **state)
{
	(void)state;
	write_file(text, strlen(text));
	for (int n = 0; n < 2; n++) {
		memset(&problems, 0, sizeof problems);
		mallocs_before_fail = n;
		assert_false(job_read_file(path, NULL, 0, &job, &problems));
		mallocs_before_fail = -1;
		assert_int_equal(problems.item[0].code, PROBLEM_NO_MEMORY);
	}
	mallocs_before_fail = 2;
	memset(&problems, 0, sizeof problems);
	assert_true(job_read_file(path, NULL, 0, &job, &problems));
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup_teardown(name, start, end)
	const struct CMUnitTest tests[] = {
		TEST(test_good),
		TEST(test_not_there),
		TEST(test_directory),
		TEST(test_pipe),
		TEST(test_device),
		TEST(test_no_permission),
		TEST(test_huge),
		TEST(test_size_limit),
		TEST(test_reads_that_fail),
		TEST(test_documents),
		TEST(test_truncated),
		TEST(test_damaged),
		TEST(test_deep),
		TEST(test_long_tag),
		TEST(test_encodings),
		TEST(test_memory_of_reader),
		TEST(test_memory_of_parser),
	};
	int failed;

	if (!mkdtemp(dir) || chmod(dir, 0755) != 0)
		return 99;
	failed = cmocka_run_group_tests(tests, NULL, NULL);
	rmdir(dir);
	return failed;
}
