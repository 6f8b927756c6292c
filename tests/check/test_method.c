/* SPDX-License-Identifier: MIT */
/* The two design methods, earthquake and editions side by side, on the sample job. Expected values
   by hand from the printed formulas, never from the program. */
#include "sample_run.h"

#include <string.h>

#include "check/compare.h"
#include "near.h"

static struct check_workspace w;

/* Uplift: ASD 0.6D + 0.6W with CD 1.6, LRFD 0.9D + 1.0W with KF phi lambda = 3.32 x 0.65 x 1.0: the
   same screw, capacities in the ratio 2.158 / 1.6. */
static void test_lrfd_withdrawal(void **state)
{
	struct job job = dense();
	(void)state;
	const struct check_value asd = judged(run(&job))->attachment[0].check[CHECK_WITHDRAWAL];

	job.site.method = METHOD_LRFD;
	const struct result *r = run(&job);
	const struct check_value lrfd = judged(r)->attachment[0].check[CHECK_WITHDRAWAL];

	assert_true(asd.rated && lrfd.rated);
	assert_string_equal(asd.combination, "0.6D + 0.6W");
	assert_string_equal(lrfd.combination, "0.9D + 1.0W");
	assert_near(lrfd.capacity / asd.capacity, 3.32 * 0.65 / 1.6, 1e-12);
	assert_true(has(r, REMARK_LRFD));
	assert_near(lrfd.CD, 1.0, 1e-12);
}

/* The lag's steel: 1.5 times its allowable. */
static void test_lrfd_steel(void **state)
{
	struct job job = dense();
	(void)state;
	const double asd = judged(run(&job))->attachment[0].check[CHECK_TENSION].capacity;

	job.site.method = METHOD_LRFD;
	assert_near(judged(run(&job))->attachment[0].check[CHECK_TENSION].capacity / asd, 1.5,
		    1e-12);
}

/* A tested foot is an allowable: the same demand, combination and ratio by either method. */
static void test_lrfd_tested(void **state)
{
	struct job job = dense();
	(void)state;
	const struct check_value asd = judged(run(&job))->attachment[1].check[CHECK_FOOT_UPLIFT];

	job.site.method = METHOD_LRFD;
	const struct check_value lrfd = judged(run(&job))->attachment[1].check[CHECK_FOOT_UPLIFT];

	assert_string_equal(lrfd.combination, asd.combination);
	assert_near(lrfd.ratio, asd.ratio, 1e-12);
}

/* So is a rail of which the maker states the moment. */
static void test_lrfd_tested_rail(void **state)
{
	struct job job = snowy();

	(void)state;
	job.rail.allowable_moment = 400;
	const double asd = judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].ratio;

	job.site.method = METHOD_LRFD;
	assert_near(judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].ratio, asd, 1e-12);
}

/* F'b of 1.2D + 1.6S: 2.54 x 0.85 x 0.8 in the place of the 1.15 of D + S. */
static void test_lrfd_rafter(void **state)
{
	struct job job = snowy();
	(void)state;
	const struct check_value asd = judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING];

	job.site.method = METHOD_LRFD;
	const struct check_value lrfd = judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING];

	assert_string_equal(asd.combination, "D + S");
	assert_string_equal(lrfd.combination, "1.2D + 1.6S + 0.5W");
	assert_near(lrfd.capacity / asd.capacity, 2.54 * 0.85 * 0.8 / 1.15, 1e-12);
}

/* Rail of 6005A-T61 by S: the smaller of 0.90 Fty and 0.75 Ftu/kt over that of Fty/1.65 and
   Ftu/(1.95 kt). Whichever pair governs, the quotient lies between 0.75 x 1.95 and 0.90 x 1.65. */
static void test_lrfd_rail(void **state)
{
	struct job job = dense();

	(void)state;
	job.rail.section_modulus = 5e-6;
	strcpy(job.rail.alloy, "6005A-T61");
	const double asd = judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].capacity;

	job.site.method = METHOD_LRFD;
	const double lrfd = judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].capacity;

	assert_true(lrfd / asd > 0.75 * 1.95 - 1e-9 && lrfd / asd < 0.90 * 1.65 + 1e-9);
}

/* SDS 1, ap 1.0, Rp 1.5 at the roof: Fp = 0.8 Wp, Ev = 0.2 Wp. Toward the eave, 1.0D + 0.7Ev +
   0.7Eh, 5:12: down-slope (1 + 0.14) d A sin + 0.56 d A cos; more than D + W gives, so it is the
   foot's down-slope force. */
static void test_quake_slope(void **state)
{
	struct job job = dense();

	(void)state;
	job.earthquake.SDS = 1;
	const struct result *r = run(&job);
	const double theta = atan2(5, 12);

	for (int i = 0; i < judged(r)->attachments; i++) {
		const struct attachment *a = &judged(r)->attachment[i];
		const double width = fmax(a->reaction_width, a->tributary_width);
		const double weight = r->dead.array_filled * width * a->tributary_depth;

		assert_string_equal(a->slope.combination, "1.0D + 0.7Ev + 0.7Eh");
		assert_near(a->slope.slope, weight * (1.14 * sin(theta) + 0.56 * cos(theta)), 1e-9);
	}
	assert_near(said(r, REMARK_SEISMIC, 1), 0.8, 1e-12);
	assert_false(has(r, REMARK_UNCHECKED_SEISMIC));
	assert_true(has(r, REMARK_CROSS_SLOPE_FORCE));
}

static void test_quake_silent_never(void **state)
{
	struct job job = dense();

	(void)state;
	assert_true(has(run(&job), REMARK_UNCHECKED_SEISMIC));
	job.earthquake.category = SEISMIC_A;
	assert_true(has(run(&job), REMARK_SEISMIC_EXEMPT));
	assert_false(has(run(&job), REMARK_UNCHECKED_SEISMIC));
	job.earthquake.category = SEISMIC_B;
	assert_true(has(run(&job), REMARK_UNCHECKED_SEISMIC));
	job.earthquake.SDS = 0.2;
	assert_true(has(run(&job), REMARK_SEISMIC_EXEMPT_UNUSED));
	job.earthquake.SDS = (double)NAN;
	job.earthquake.Ss = 1.313;
	job.earthquake.Fa = 1.2;
	assert_within(said(run(&job), REMARK_SEISMIC, 0), 1.0504, 1e-9);
}

/* 7-22 without the factors of its table is no answer; with them 0.4 (3.5/1.3)/1.5 = 0.7179. */
static void test_quake_7_22(void **state)
{
	struct job job = dense();

	(void)state;
	job.site.code = ASCE7_22;
	job.earthquake.SDS = 1;
	assert_true(has(run(&job), REMARK_SEISMIC_FACTS));
	assert_int_equal(run(&job)->verdict, NEEDS_ENGINEER);
	job.earthquake.Hf = 3.5;
	job.earthquake.Rmu = 1.3;
	job.earthquake.CAR = 1;
	job.earthquake.Rpo = 1.5;
	assert_false(has(run(&job), REMARK_SEISMIC_FACTS));
	assert_within(said(run(&job), REMARK_SEISMIC, 1), 0.7179, 0.00005);
}

/* A stronger earthquake never lowers a ratio. */
static void test_quake_grows(void **state)
{
	struct job job = dense();
	double before = 0;

	(void)state;
	for (int i = 0; i <= 8; i++) {
		job.earthquake.SDS = 0.5 * i;
		const double ratio = judged(run(&job))->link_ratio[LINK_FASTENER];

		assert_true(ratio >= before);
		before = ratio;
	}
}

/* Snow at the wrong level is told, and nothing of it computed; an edition alone gives what the
 * check gives. */
static void test_compare(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};
	struct job job = snowy();
	struct compared v[COMPARE_MAX];

	(void)state;
	compare_editions(&job, edition, 3, &w, v);
	assert_false(v[0].snow_mismatch || v[1].snow_mismatch);
	assert_true(v[2].snow_mismatch);
	assert_true(isnan(v[2].ratio) && isnan(v[2].snow) && isnan(v[2].spacing));
	const struct result *r = run(&job);

	assert_near(v[1].ratio, judged(r)->ratio, 1e-15);
	assert_int_equal(v[1].verdict, r->verdict);
	/* the 0.70 floor of Exposure B goes in 7-16, its Ke comes in at 1: 0.701 against 0.605 */
	assert_true(v[0].qh > v[1].qh);
	/* the order of the editions is the order of the columns and nothing else */
	static const enum edition turned[] = {ASCE7_16, ASCE7_10};
	struct compared t[COMPARE_MAX];

	compare_editions(&job, turned, 2, &w, t);
	assert_near(t[0].ratio, v[1].ratio, 1e-15);
	assert_near(t[1].qh, v[0].qh, 1e-15);
	job.site.ground_snow = 0;
	compare_editions(&job, edition, 3, &w, v);
	assert_false(v[2].snow_mismatch);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_lrfd_withdrawal), cmocka_unit_test(test_lrfd_steel),
		cmocka_unit_test(test_lrfd_tested),     cmocka_unit_test(test_lrfd_tested_rail),
		cmocka_unit_test(test_lrfd_rafter),     cmocka_unit_test(test_lrfd_rail),
		cmocka_unit_test(test_quake_slope),     cmocka_unit_test(test_quake_silent_never),
		cmocka_unit_test(test_quake_7_22),      cmocka_unit_test(test_quake_grows),
		cmocka_unit_test(test_compare),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
