/* SPDX-License-Identifier: MIT */
/* Cases of a rafter that are left out, and rafters that share one wind: what spares work must not
   change what is found. Expected values by hand from the loads of each combination. */
#include <stdarg.h>
#include <stddef.h>
#include <setjmp.h>
#include <cmocka.h>
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "check/rafter_case.h"
#include "check/rafter_load.h"
#include "sample_job.h"

static struct result result;
static struct context c;

/* D, D + Lr, D + S, D + 0.75 Lr, D + 0.6 W, 0.6 D + 0.6 W, D + 0.45 W + 0.75 S with the durations of
   NDS-2018 Table 2.3.2. */
static void combine(double snow)
{
	static const struct load_combination asd[] = {
		{.text = "D", .D = 1, .CD = 0.9, .lambda = (double)NAN},
		{.text = "D + Lr", .D = 1, .Lr = 1, .CD = 1.25, .lambda = (double)NAN},
		{.text = "D + S", .D = 1, .S = 1, .CD = 1.15, .lambda = (double)NAN},
		{.text = "D + 0.75Lr", .D = 1, .Lr = 0.75, .CD = 1.25, .lambda = (double)NAN},
		{.text = "D + 0.6W", .D = 1, .W = 0.6, .CD = 1.6, .lambda = (double)NAN},
		{.text = "0.6D + 0.6W", .D = 0.6, .W = 0.6, .CD = 1.6, .lambda = (double)NAN},
		{.text = "D + 0.45W + 0.75S", .D = 1, .S = 0.75, .W = 0.45, .CD = 1.6, .lambda = (double)NAN},
	};

	memset(&c, 0, sizeof c);
	memcpy(c.combination, asd, sizeof asd);
	c.combinations = (int)(sizeof asd / sizeof *asd);
	c.snow.cases = 1;
	c.snow.snow[0].roof = c.snow.snow[0].array = snow;
}

static void test_outdone(void **state)
{
	(void)state;
	combine(1000);
	assert_false(rafter_case_outdone(&c, 0, -1, true, true)); /* the shortest duration factor */
	assert_false(rafter_case_outdone(&c, 1, -1, true, true)); /* adds people */
	assert_false(rafter_case_outdone(&c, 2, 0, true, true));  /* adds snow */
	assert_true(rafter_case_outdone(&c, 3, -1, true, true));  /* D + Lr has more */
	assert_false(rafter_case_outdone(&c, 4, -1, true, true)); /* adds wind */
	assert_true(rafter_case_outdone(&c, 5, -1, true, true));  /* D + 0.6W has more */
	assert_false(rafter_case_outdone(&c, 6, 0, true, true));  /* snow and wind at once */
	/* where more load may relieve, only the same loads count */
	for (int i = 0; i < c.combinations; i++)
		assert_false(rafter_case_outdone(&c, i, c.combination[i].S > 0 ? 0 : -1, true, false));
}

static void test_no_snow(void **state)
{
	(void)state;
	combine(0);
	assert_true(rafter_case_outdone(&c, 2, 0, true, false)); /* D again, and it may act longer */
	assert_true(rafter_case_outdone(&c, 6, 0, true, true));  /* D + 0.6W has more wind */
	assert_false(rafter_case_outdone(&c, 6, 0, true, false));
	c.snow.snow[0].strip = 10; /* slid onto the roof: no longer without snow */
	assert_false(rafter_case_outdone(&c, 2, 0, true, true));
	/* a duration that lets the wood take less is looked at */
	combine(0);
	c.combination[2].CD = 0.8;
	assert_false(rafter_case_outdone(&c, 2, 0, true, true));
}

/* Rafters of one column touch the same zones in every stretch of the slope. */
static void test_columns(void **state)
{
	(void)state;
	struct job job = sample_job();
	int shared = 0, columns = 0;

	check_run_plain(&job, &result);
	memset(&c, 0, sizeof c);
	c.job = &job;
	c.r = &result;
	for (int i = 1; i < result.frames; i++) {
		const int first = rafter_column(&c, i);
		const double w = rafter_width(&c, i), step = result.plane_slope / 37;

		columns += first == i;
		shared += first != i;
		assert_true(rafter_width(&c, first) >= w && rafter_width(&c, first) <= w);
		for (double y = 0; y + step < result.plane_slope && first != i; y += step) {
			const double x = result.frame_x[i], at = result.frame_x[first];
			const struct polygon mine = polygon_rectangle(x - w / 2, y, x + w / 2, y + step),
					     its = polygon_rectangle(at - w / 2, y, at + w / 2, y + step);
			double a[ZONE_COUNT], b[ZONE_COUNT];

			zone_areas(result.shape, result.shapes, &mine, a);
			zone_areas(result.shape, result.shapes, &its, b);
			for (int z = 0; z < (int)ZONE_COUNT; z++)
				assert_true((a[z] > 0) == (b[z] > 0));
		}
	}
	/* edge strips at both rakes stand apart from the field between them */
	assert_true(shared > 10 && columns >= 3);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_outdone),
		cmocka_unit_test(test_no_snow),
		cmocka_unit_test(test_columns),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
