/* SPDX-License-Identifier: MIT */
/* Pairs of metals, typed again from the sources named beside them; distance to a valley. */
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "near.h"
#include "sample_job.h"
#include "table/lookup_pair.h"

static struct result *run(const struct job *job)
{
	static struct result r;

	check_run_plain(job, &r);
	return &r;
}

static const struct remark *said(const struct result *r, enum remark_id id, const char *upper, const char *lower)
{
	for (int i = 0; i < r->remarks; i++) {
		const struct remark *m = &r->remark[i];

		if (m->id == id && strcmp(m->text[0], upper) == 0 && strcmp(m->text[1], lower) == 0)
			return m;
	}
	return NULL;
}

static void test_rows(void **state)
{
	(void)state;
	static const struct {
		const char *source;
		enum metal_pair_how how;
		const char *upper, *lower;
		enum metal_pair_verdict verdict;
	} rows[] = {
		{ "UFGS 07600, copper note", METAL_PAIR_HOW_RUNOFF, "copper", "galvanized", METAL_PAIR_VERDICT_NEVER },
		{ "UFGS 07600, copper note", METAL_PAIR_HOW_RUNOFF, "copper", "aluminum", METAL_PAIR_VERDICT_NEVER },
		{ "UFGS 07600, copper note", METAL_PAIR_HOW_RUNOFF, "copper", "zinc", METAL_PAIR_VERDICT_NEVER },
		{ "galvanic order (from memory)", METAL_PAIR_HOW_CONTACT, "stainless", "aluminum", METAL_PAIR_VERDICT_GOOD },
		{ "galvanic order (from memory)", METAL_PAIR_HOW_CONTACT, "galvanized", "aluminum", METAL_PAIR_VERDICT_APART },
		{ "IRC R317.3.1", METAL_PAIR_HOW_WOOD, "galvanized", "wood", METAL_PAIR_VERDICT_GOOD },
		{ "IRC R317.3.1", METAL_PAIR_HOW_WOOD, "stainless", "wood", METAL_PAIR_VERDICT_GOOD },
		{ "IRC R317.3.1", METAL_PAIR_HOW_WOOD, "plain-steel", "wood", METAL_PAIR_VERDICT_NEVER },
		{ "association position on treated lumber", METAL_PAIR_HOW_WOOD, "aluminum", "wood", METAL_PAIR_VERDICT_NEVER },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct metal_pair_row *r = metal_pair_row(rows[i].how, rows[i].upper, rows[i].lower);

		assert_non_null(r);
		assert_int_equal(r->verdict, rows[i].verdict);
	}
	assert_null(metal_pair_row(METAL_PAIR_HOW_RUNOFF, "galvanized", "copper"));
}

static void test_copper_pipe_over_galvanized(void **state)
{
	(void)state;
	struct job job = sample_job();

	assert_non_null(run(&job));
	job.metals.pipe = METAL_COPPER;
	job.metals.flashing = METAL_GALVANIZED;
	job.metals.fastener = METAL_STAINLESS;
	job.metals.foot = METAL_ALUMINUM;
	const struct result *r = run(&job);

	assert_non_null(said(r, REMARK_METAL_NEVER, "copper", "galvanized"));
	assert_non_null(said(r, REMARK_METAL_NEVER, "copper", "aluminum"));
	assert_null(said(r, REMARK_METAL_NEVER, "stainless", "aluminum"));
	assert_null(said(r, REMARK_METAL_APART, "stainless", "aluminum"));
	assert_non_null(said(r, REMARK_METAL_APART, "galvanized", "aluminum"));
}

static void test_treated_wood_and_cedar(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.metals.fastener = METAL_PLAIN_STEEL;
	assert_null(said(run(&job), REMARK_METAL_NEVER, "plain-steel", "wood"));
	job.metals.treated_wood = ANSWER_YES;
	assert_non_null(said(run(&job), REMARK_METAL_NEVER, "plain-steel", "wood"));
	job.metals.pipe = METAL_COPPER;
	assert_null(said(run(&job), REMARK_METAL_APART, "copper", "cedar"));
	strcpy(job.roof.covering, "wood-shake");
	assert_non_null(said(run(&job), REMARK_METAL_APART, "copper", "cedar"));
}

/* coverings: 18 in square to the valley is 24.15 in along the course at 6:12 (18 x 1.5/1.118). Feet of the sample stand 8 in
   inside the array at the nearest. */
static void test_valley(void **state)
{
	(void)state;
	struct job job = sample_job();
	bool near = false, far = false;

	job.roof.pitch = atan2(6, 12);
	job.mount.spacing = IN(16);
	job.roof.woven_valley = IN(24.15 - 8 - 1);
	const struct result *r = run(&job);

	for (int i = 0; i < r->remarks; i++)
		near = near || r->remark[i].id == REMARK_VALLEY;
	job.roof.woven_valley = IN(24.15 + 0.1);
	r = run(&job);
	for (int i = 0; i < r->remarks; i++)
		far = far || r->remark[i].id == REMARK_VALLEY;
	assert_true(near);
	assert_false(far);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_rows),
		cmocka_unit_test(test_copper_pipe_over_galvanized),
		cmocka_unit_test(test_treated_wood_and_cedar),
		cmocka_unit_test(test_valley),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
