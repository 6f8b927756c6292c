/* SPDX-License-Identifier: MIT */
/* Several threads check several jobs at once, each in memory of its own: every result is the one that a thread alone
   gets, number by number. Jobs are those of the examples. */
#include <pthread.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "check/check.h"
#include "job/job_read.h"

/* What check.h promises to be enough; a sanitizer asks for more. */
#ifdef __SANITIZE_ADDRESS__
#define STACK (16u << 20)
#else
#define STACK (2u << 20)
#endif

#define THREADS 2
#define ROUNDS 3

static const char *const name[] = { "first-shingle", "snow-shake", "ridge-metal-si", "coast-tile", "quake-lrfd", "old-cabin" };
#define JOBS (int)(sizeof name / sizeof *name)

/* Numbers of a result, folded into one (FNV-1a): every bit of each counts, padding and what is left of earlier runs do
   not. */
static uint64_t fold(uint64_t hash, const void *bytes, size_t n)
{
	const unsigned char *b = bytes;

	for (size_t i = 0; i < n; i++)
		hash = (hash ^ b[i]) * 0x100000001B3u;
	return hash;
}

#define FOLD(x) hash = fold(hash, &(x), sizeof(x))

static uint64_t fold_checks(uint64_t hash, const struct check_value check[CHECK_COUNT])
{
	for (int i = 0; i < (int)CHECK_COUNT; i++) {
		FOLD(check[i].rated);
		if (!check[i].rated)
			continue;
		FOLD(check[i].demand);
		FOLD(check[i].capacity);
		FOLD(check[i].ratio);
		hash = fold(hash, check[i].combination, strlen(check[i].combination));
	}
	return hash;
}

static uint64_t fold_pass(uint64_t hash, const struct pass *p)
{
	FOLD(p->ratio);
	FOLD(p->link_ratio);
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		FOLD(a->x);
		FOLD(a->y);
		FOLD(a->reaction_width);
		FOLD(a->p_up);
		FOLD(a->p_down);
		FOLD(a->uplift.normal);
		FOLD(a->down.normal);
		FOLD(a->slope.slope);
		hash = fold_checks(hash, a->check);
	}
	for (int i = 0; i < p->lines; i++)
		hash = fold_checks(hash, p->line[i].check);
	for (int i = 0; i < p->rafters; i++) {
		hash = fold_checks(hash, p->rafter[i].before);
		hash = fold_checks(hash, p->rafter[i].after);
		FOLD(p->rafter[i].rise_total);
	}
	for (int z = 0; z < (int)ZONE_COUNT; z++)
		FOLD(p->zone[z].exact);
	return hash;
}

static uint64_t fold_result(const struct result *r)
{
	uint64_t hash = 0xCBF29CE484222325u;

	FOLD(r->verdict);
	FOLD(r->wind.qh);
	FOLD(r->snow.pf);
	FOLD(r->Lr);
	for (int i = 0; i < r->passes; i++)
		hash = fold_pass(hash, &r->pass[i]);
	for (int i = 0; i < r->remarks; i++) {
		FOLD(r->remark[i].id);
		FOLD(r->remark[i].value);
	}
	for (int s = 0; s < (int)SECTION_COUNT; s++)
		for (size_t i = 0; i < r->trace[s].count; i++)
			FOLD(r->record[s][i].result);
	return hash;
}

static struct job job[sizeof name / sizeof *name];

struct worker {
	pthread_t thread;
	int first; /* each begins with another job */
	struct result result;
	uint64_t hash[sizeof name / sizeof *name];
	int differing; /* between its own rounds */
};

static void *work(void *argument)
{
	struct worker *w = argument;

	for (int round = 0; round < ROUNDS; round++)
		for (int i = 0; i < JOBS; i++) {
			const int k = (w->first + i) % JOBS;

			check_run_quick(&job[k], &w->result);
			const uint64_t hash = fold_result(&w->result);

			w->differing += round > 0 && hash != w->hash[k];
			w->hash[k] = hash;
		}
	return NULL;
}

static void threads_agree(void **state)
{
	struct worker *const alone = calloc(1, sizeof *alone);
	struct worker *const w = calloc(THREADS, sizeof *w);

	(void)state;
	assert_true(alone && w);
	work(alone);
	assert_int_equal(alone->differing, 0);
	for (int t = 0; t < THREADS; t++) {
		w[t].first = 1 + t * 2;
		assert_int_equal(pthread_create(&w[t].thread, NULL, work, &w[t]), 0);
	}
	for (int t = 0; t < THREADS; t++) {
		assert_int_equal(pthread_join(w[t].thread, NULL), 0);
		assert_int_equal(w[t].differing, 0);
		for (int i = 0; i < JOBS; i++)
			if (w[t].hash[i] != alone->hash[i])
				fail_msg("thread %d, %s: another result", t, name[i]);
	}
	free(w);
	free(alone);
}

struct whole {
	struct result result;
	struct check_workspace workspace;
};

static void *check_whole(void *argument)
{
	struct whole *w = argument;

	check_run(&job[0], &w->result, &w->workspace);
	return NULL;
}

static void small_stack(void **state)
{
	struct whole *const w = calloc(1, sizeof *w);
	pthread_attr_t small;
	pthread_t thread;

	(void)state;
	assert_non_null(w);
	assert_int_equal(pthread_attr_init(&small), 0);
	assert_int_equal(pthread_attr_setstacksize(&small, STACK), 0);
	assert_int_equal(pthread_create(&thread, &small, check_whole, w), 0);
	assert_int_equal(pthread_join(thread, NULL), 0);
	pthread_attr_destroy(&small);
	assert_true(w->result.passes > 0);
	free(w);
}

/* The fold sees a change of one bit, and jobs differ. */
static void fold_tells(void **state)
{
	struct result *const r = calloc(1, sizeof *r);
	uint64_t before;

	(void)state;
	assert_non_null(r);
	check_run_quick(&job[0], r);
	before = fold_result(r);
	assert_true(r->passes > 0 && r->pass[r->passes - 1].attachments > 0);
	r->pass[r->passes - 1].attachment[0].check[CHECK_WITHDRAWAL].demand *= 1 + 1e-15;
	assert_true(fold_result(r) != before);
	check_run_quick(&job[1], r);
	assert_true(fold_result(r) != before);
	free(r);
}

static int read_jobs(void **state)
{
	const char *dir = getenv("EXAMPLES");
	static struct problem_list problems;
	char path[1024];

	(void)state;
	for (int i = 0; i < JOBS; i++) {
		snprintf(path, sizeof path, "%s/%s.xml", dir ? dir : "examples", name[i]);
		if (!job_read_file(path, NULL, 0, &job[i], &problems))
			return 1;
	}
	return 0;
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(fold_tells),
		cmocka_unit_test(threads_agree),
		cmocka_unit_test(small_stack),
	};

	return cmocka_run_group_tests(tests, read_jobs, NULL);
}
