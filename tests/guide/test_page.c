/* SPDX-License-Identifier: MIT */
/* One page opened alone says what it says in the whole library. */
#include <stdlib.h>
#include <string.h>

#include "guide/guide.h"
#include "near.h"

struct text {
	size_t blocks, bytes;
	unsigned long sum; /* over every byte, in order */
};

static void take(struct text *t, const char *s)
{
	for (; *s; s++, t->bytes++)
		t->sum = t->sum * 31 + (unsigned char)*s;
}

static void block(void *context, const struct guide_block *b)
{
	struct text *t = context;

	t->blocks++;
	take(t, b->section);
	take(t, b->label);
	take(t, b->text);
	take(t, b->source);
}

static struct text read_page(const struct guide_library *lib, const char *key)
{
	const struct guide_request request = { .key = key, .units = SYSTEM_US, .depth = GUIDE_FULL };
	struct text t = { 0 };
	const struct guide_sink sink = { block, &t };
	struct problem_list problems = { .count = 0 };

	assert_true(guide_notes(lib, &request, &sink, &problems));
	return t;
}

static void test_every_page(void **state)
{
	(void)state;
	const char *dir = getenv("GUIDE_LIBRARY");
	struct problem_list problems = { .count = 0 };
	struct guide_library *whole = guide_open(dir, &problems);

	assert_non_null(whole);
	for (size_t i = 0; i < guide_page_count(whole); i++) {
		const struct guide_page page = guide_page_at(whole, i);
		struct guide_library *one = guide_open_page(dir, page.key, &problems);

		assert_non_null(one);
		assert_int_equal(guide_page_count(one), 1);
		const struct text a = read_page(whole, page.key), b = read_page(one, page.key);

		assert_true(a.blocks > 10 && a.bytes > 1000);
		assert_true(a.blocks == b.blocks && a.bytes == b.bytes && a.sum == b.sum);
		guide_close(one);
	}
	guide_close(whole);
}

static void test_no_such_page(void **state)
{
	(void)state;
	struct problem_list problems = { .count = 0 };
	struct guide_library *lib = guide_open_page(getenv("GUIDE_LIBRARY"), "no-such-covering", &problems);

	if (lib)
		assert_int_equal(guide_page_count(lib), 0);
	guide_close(lib);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_page),
		cmocka_unit_test(test_no_such_page),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
