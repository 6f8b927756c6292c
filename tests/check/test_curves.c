/* SPDX-License-Identifier: MIT */
/* One pass or two: a wind coefficient that is confirmed or of one source is used alone and named, one from
   memory stands beside its bound, one entered replaces both. */
#include <math.h>
#include <string.h>

#include "sample_run.h"

/* No overhang, so the roof's own figures alone count. */
static struct job house(enum edition code, enum roof_form form, double degrees)
{
	struct job job = sample_job();

	job.site.code = code;
	job.building.form = form;
	job.building.eave_overhang = 0;
	job.roof.pitch = degrees * RAD_PER_DEG;
	return job;
}

/* 7-16, 22.6 deg (Fig. 30.3-2C), zone 1: -1.5 up to 20 ft2; 7-10 has it confirmed, and says nothing of it. */
static void one_source_is_used_alone(void **state)
{
	struct job job = house(ASCE7_16, FORM_GABLE, 22.6);
	const struct result *r = run(&job);

	(void)state;
	assert_int_equal(r->passes, 1);
	assert_string_equal(r->pass[0].name, "published coefficients");
	assert_true(has(r, REMARK_COEFFICIENT_ONE_SOURCE));
	assert_false(has(r, REMARK_COEFFICIENT_USED));
	assert_false(has(r, REMARK_COEFFICIENT));
	for (int i = 0; i < r->pass[0].attachments; i++)
		if (r->pass[0].attachment[i].zone == ZONE_1) {
			assert_near(r->pass[0].attachment[i].GCp_up, -1.5, 1e-12);
			assert_int_equal(r->pass[0].zone[ZONE_1].confidence, ONE_SOURCE);
		}
	job.site.code = ASCE7_10;
	r = run(&job);
	assert_int_equal(r->passes, 1);
	assert_false(has(r, REMARK_COEFFICIENT_ONE_SOURCE));
}

/* Against the rake and the eave: zone 3e. */
static struct job corner_house(double degrees)
{
	struct job job = house(ASCE7_16, FORM_GABLE, degrees);

	job.collector.left = FT(1);
	job.collector.lower = FT(1);
	return job;
}

/* Zones 3e and 3r of 7-16 from 20 to 27 deg rest on memory. */
static void memory_asks_for_two(void **state)
{
	static const double degrees[] = {20.5, 23, 26.9};

	(void)state;
	for (size_t i = 0; i < sizeof degrees / sizeof *degrees; i++) {
		const struct job job = corner_house(degrees[i]);
		const struct result *r = run(&job);

		assert_int_equal(r->passes, 2);
		assert_string_equal(r->pass[0].name, "remembered curve");
		assert_string_equal(r->pass[1].name, "safe side");
		assert_true(has(r, REMARK_COEFFICIENT_USED) || has(r, REMARK_COEFFICIENT));
		assert_int_equal(r->pass[0].attachments, r->pass[1].attachments);
		for (int k = 0; k < r->pass[0].attachments; k++)
			assert_true(fabs(r->pass[1].attachment[k].GCp_up) >=
				    fabs(r->pass[0].attachment[k].GCp_up));
	}
}

/* What holds with the remembered curve and not with the bound is never said to hold. */
static void two_curves_that_part(void **state)
{
	struct job job = corner_house(23);
	int parted = 0;

	(void)state;
	for (int mph = 70; mph <= 120; mph += 2) {
		job.site.wind_speed = MPH(mph);
		const struct result *r = run(&job);

		if (r->passes < 2)
			continue;
		if (r->pass[1].holds)
			assert_true(r->pass[0].holds);
		if (r->pass[0].holds && !r->pass[1].holds) {
			assert_int_not_equal(r->verdict, HOLDS);
			assert_true(has(r, REMARK_COEFFICIENT));
			parted++;
		}
	}
	assert_true(parted > 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(one_source_is_used_alone),
		cmocka_unit_test(memory_asks_for_two),
		cmocka_unit_test(two_curves_that_part),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
