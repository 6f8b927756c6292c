/* SPDX-License-Identifier: MIT */
/* Memory that runs out. First every allocation of this room is refused in turn (the linker hands
   guide_take and guide_retake to us). Then every allocation of libxml2 while it reads pages: a
   library is then refused or whole, never a page with a hole in it. Its compiler of schemas is left
   out: libxml2 2.9 falls over by itself when memory runs out there. */
#define _XOPEN_SOURCE 700

#include "near.h"

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <libxml/parser.h>
#include <libxml/xmlmemory.h>

#include "sample.h"

static long countdown = -1; /* the allocation at which it gets to 0 fails; negative: none */
static long alive;

static bool refused_now(void)
{
	return countdown >= 0 && countdown-- == 0;
}

void *__real_guide_take(size_t size);
void *__wrap_guide_take(size_t size);
void *__wrap_guide_take(size_t size)
{
	void *p = refused_now() ? NULL : __real_guide_take(size);

	alive += p != NULL;
	return p;
}

void *__real_guide_retake(void *memory, size_t size);
void *__wrap_guide_retake(void *memory, size_t size);
void *__wrap_guide_retake(void *memory, size_t size)
{
	void *p = refused_now() ? NULL : __real_guide_retake(memory, size);

	alive += p && !memory;
	return p;
}

void __real_guide_give(void *memory);
void __wrap_guide_give(void *memory);
void __wrap_guide_give(void *memory)
{
	alive -= memory != NULL;
	__real_guide_give(memory);
}

/* True while the n-th allocation exists; then the attempt must have failed, and said so. */
static bool attempt(long n, bool (*work)(void *, struct problem_list *), void *context)
{
	struct problem_list problems = {0};
	bool ok, ran_out;

	countdown = n;
	ok = work(context, &problems);
	ran_out = countdown < 0;
	countdown = -1;
	assert_int_equal(alive, *(long *)context);
	if (!ran_out) {
		assert_true(ok);
		return false;
	}
	assert_false(ok);
	assert_true(problem_any(&problems));
	assert_int_equal(problems.item[0].code, PROBLEM_NO_MEMORY);
	return true;
}

struct work {
	long alive; /* before */
	struct sample files;
	struct guide_library *lib;
	const char *dir;
};

static bool open_memory(void *context, struct problem_list *problems)
{
	struct work *w = context;
	struct guide_library *lib = guide_open_memory(w->files.file, w->files.files, problems);

	guide_close(lib);
	return lib != NULL;
}

static bool open_directory(void *context, struct problem_list *problems)
{
	struct guide_library *lib = guide_open(((struct work *)context)->dir, problems);

	guide_close(lib);
	return lib != NULL;
}

static bool export_it(void *context, struct problem_list *problems)
{
	struct work *w = context;

	return guide_export(w->lib, w->dir, true, problems);
}

static long try_all(bool (*work)(void *, struct problem_list *), struct work *w, long most)
{
	long n = 0;

	w->alive = alive;
	while (n < most && attempt(n, work, w))
		n++;
	assert_true(n < most);
	return n;
}

static void own_memory_in_opening(void **state)
{
	struct work w = {.dir = sample_directory()};

	(void)state;
	sample_small(&w.files);
	assert_true(try_all(open_memory, &w, 1000) > 10);
	sample_free(&w.files);
	assert_true(try_all(open_directory, &w, 1000) > 70);
}

static void own_memory_in_export(void **state)
{
	struct problem_list problems = {0};
	struct work w = {0};
	char dir[64] = "guide-memory-XXXXXX";
	const struct dirent *e;
	DIR *open;

	(void)state;
	assert_non_null(mkdtemp(dir));
	assert_int_equal(rmdir(dir), 0);
	sample_small(&w.files);
	w.lib = sample_open(&w.files, &problems);
	w.dir = dir;
	assert_true(try_all(export_it, &w, 1000) > 5);
	open = opendir(dir);
	assert_non_null(open);
	while ((e = readdir(open)) != NULL)
		if (e->d_name[0] != '.')
			assert_int_equal(unlinkat(dirfd(open), e->d_name, 0), 0);
	closedir(open);
	assert_int_equal(rmdir(dir), 0); /* so no part was left either */
	guide_close(w.lib);
	sample_free(&w.files);
}

/* ---- libxml2's memory ---- */

static long xml_countdown = -1;

static bool xml_refused_now(void)
{
	return xml_countdown >= 0 && xml_countdown-- == 0;
}

static void *xml_take(size_t size)
{
	return xml_refused_now() ? NULL : malloc(size);
}

static void *xml_retake(void *p, size_t size)
{
	return xml_refused_now() ? NULL : realloc(p, size);
}

static char *xml_copy(const char *text)
{
	return xml_refused_now() ? NULL : strdup(text);
}

static bool reading_done;

bool __real_guide_validate(const struct guide_library *lib, struct problem_list *problems);
bool __wrap_guide_validate(const struct guide_library *lib, struct problem_list *problems);
bool __wrap_guide_validate(const struct guide_library *lib, struct problem_list *problems)
{
	reading_done = xml_countdown >= 0;
	xml_countdown = -1;
	return __real_guide_validate(lib, problems);
}

static void print_page(struct guide_library *lib, struct seen *seen)
{
	const struct guide_request request = {.key = "barn"};
	const struct guide_sink sink = seen_sink(seen);
	struct problem_list problems = {0};

	assert_true(guide_notes(lib, &request, &sink, &problems));
}

static void refused_or_whole(void **state)
{
	static struct seen whole, seen;
	struct problem_list problems;
	struct guide_library *lib;
	struct sample s;
	long n = 0, refused = 0;

	(void)state;
	sample_small(&s);
	lib = sample_open(&s, &problems);
	assert_non_null(lib);
	print_page(lib, &whole);
	guide_close(lib);
	for (;; n++) {
		reading_done = false;
		xml_countdown = n;
		lib = sample_open(&s, &problems);
		xml_countdown = -1;
		if (reading_done) /* there is no n-th */
			break;
		if (lib) {
			print_page(lib, &seen);
			assert_string_equal(seen.text, whole.text);
		} else {
			assert_true(problem_any(&problems));
			refused++;
		}
		guide_close(lib);
	}
	guide_close(lib);
	sample_free(&s);
	print_message("%ld allocations of libxml2, refused at %ld\n", n, refused);
	assert_true(n > 500 && refused > n / 2);
}

static int hook_xml(void **state)
{
	(void)state;
	return xmlMemSetup(free, xml_take, xml_retake, xml_copy);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(own_memory_in_opening),
					   cmocka_unit_test(own_memory_in_export),
					   cmocka_unit_test(refused_or_whole)};

	return cmocka_run_group_tests(tests, hook_xml, NULL);
}
