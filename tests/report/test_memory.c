/* SPDX-License-Identifier: MIT */
/* Little memory: the document fails as a whole, and nothing leaks. */
#include <stdlib.h>

#include "near.h"
#include "report/document.h"

static void fill(struct document *d)
{
	static const struct column column[] = { { "a", ALIGN_LEFT, true, false } };

	for (int i = 0; i < 400; i++) {
		document_table(d, column, 1);
		document_row(d);
		document_cell(d, "%d of a few hundred rows that need more than one chunk of memory",
		              i);
	}
	document_pairs(d);
	document_pair(d, "a", "", "b");
}

struct counter {
	int left, held;
};

static void *take_counted(void *ctx, size_t size)
{
	struct counter *c = ctx;

	if (c->left-- <= 0)
		return NULL;
	c->held++;
	return malloc(size);
}

static void give_counted(void *ctx, void *piece)
{
	struct counter *c = ctx;

	c->held--;
	free(piece);
}

static void test_memory(void **state)
{
	(void)state;
	bool succeeded = false;

	for (int n = 0; n < 200 && !succeeded; n++) {
		struct counter c = { n, 0 };
		const struct allocator a = { take_counted, give_counted, &c };
		struct document *d = document_create(&a);

		if (d) {
			fill(d);
			succeeded = !document_failed(d);
			document_destroy(d);
		}
		assert_int_equal(c.held, 0);
	}
	assert_true(succeeded);
}

static void test_cap(void **state)
{
	(void)state;
	struct arena *a = arena_create(100 * 1024, NULL);

	assert_non_null(a);
	assert_non_null(arena_take(a, 60 * 1024));
	assert_null(arena_take(a, 60 * 1024));
	assert_non_null(arena_take(a, 0));
	assert_null(arena_take(a, SIZE_MAX));
	assert_true(arena_size(a) <= 100 * 1024);
	arena_destroy(a);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_memory),
		cmocka_unit_test(test_cap),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
