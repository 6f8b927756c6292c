/* SPDX-License-Identifier: MIT */
/* Load cases beyond even snow and wind, and the two design methods, on the sample job. Expected
   values by hand from the printed formulas, never from the program. */
#include <string.h>

#include "check/check.h"
#include "check/compare.h"
#include "check/load_case.h"
#include "check/rail_pattern.h"
#include "near.h"
#include "sample_job.h"

static struct check_workspace w;

static struct result *run(const struct job *job)
{
	static struct result r;

	check_run_plain(job, &r);
	return &r;
}

static const struct pass *judged(const struct result *r)
{
	return &r->pass[r->judged];
}

static bool has(const struct result *r, enum remark_id id)
{
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == id)
			return true;
	return false;
}

static double said(const struct result *r, enum remark_id id, int value)
{
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == id)
			return r->remark[i].value[value];
	fail_msg("remark %d is not said", (int)id);
	return 0;
}

/* A foot on every rafter, so that layouts of two runs are the same. */
static struct job dense(void)
{
	struct job job = sample_job();

	job.mount.spacing = IN(16);
	return job;
}

static struct job snowy(void)
{
	struct job job = dense();

	job.site.ground_snow = PSF(40);
	return job;
}

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

/* On metal 5:12 the roof above the array pushes ps L sin theta per length of edge onto the topmost
   line; with guards nothing. Factor 1 in D + S. */
static void test_held_snow(void **state)
{
	struct job job = snowy();
	double free[ATTACHMENT_MAX];

	(void)state;
	strcpy(job.roof.covering, "metal-exposed-fastener");
	job.snow.guards = ANSWER_YES;
	const struct result *r = run(&job);
	const int n = judged(r)->attachments;

	assert_true(n > 0 && has(r, REMARK_SNOW_GUARDED));
	for (int i = 0; i < n; i++)
		free[i] = judged(r)->attachment[i].slope.slope;
	job.snow.guards = ANSWER_NO;
	r = run(&job);
	assert_true(has(r, REMARK_SNOW_HELD));
	assert_int_equal(judged(r)->attachments, n);
	const double L = (r->plane_slope - r->array.y1) * 12 / 13; /* on plan */
	double leeward = 0, balanced = r->snow.snow[0].roof;

	for (int i = 0; i < r->snow.cases; i++)
		leeward = fmax(leeward, r->snow.snow[i].roof + r->snow.snow[i].surcharge);
	for (int i = 0; i < n; i++) {
		const struct attachment *a = &judged(r)->attachment[i];
		const double more = a->slope.slope - free[i],
			     width = fmax(a->reaction_width, a->tributary_width);

		if (a->tributary.y1 < r->array.y1 - 1e-9)
			assert_within(more, 0, 1e-6);
		else
			assert_true(more >= balanced * L * 5 / 13 * width - 1e-6 &&
				    more <= leeward * L * 5 / 13 * width + 1e-6);
	}
}

/* Reactions of three equal spans by the three-moment equation, unit load on one span at a time: end
   foot 13/30, -1/20, 1/60; inner foot 13/20, 11/20, -1/10. All full 0.4 and 1.1; worst pattern of
   full and half: 0.425 and 1.15. */
static void test_partial_reactions(void **state)
{
	static struct context c;
	struct job job = snowy();
	const struct line line = {.x0 = 0, .x1 = 3};
	struct attachment a[4];

	(void)state;
	memset(a, 0, sizeof a);
	c.job = &job;
	c.snow.cases = 1;
	c.snow.snow[0].array = 1000;
	for (int i = 0; i < 4; i++)
		a[i].x = i;
	rail_snow_widths(&c, &line, a, 4);
	assert_near(a[0].snow_width, 13.0 / 30 - 1.0 / 40 + 1.0 / 60, 1e-12);
	assert_near(a[1].snow_width, 13.0 / 20 + 11.0 / 20 - 1.0 / 20, 1e-12);
	assert_near(a[1].snow_width, a[2].snow_width, 1e-12);
	assert_near(a[0].snow_width, a[3].snow_width, 1e-12);
}

/* Three equal spans under one combination 1.0S: worst of the patterns is two spans full next to
   each other and half on the third: M = 1/15 + 1/20 - 1/2 x 1/60 = 0.10833 w L2, more than the 0.1
   of even snow. */
static void test_partial_moment(void **state)
{
	static struct context c;
	static struct result r;
	struct job job = snowy();
	const struct line line = {.x0 = 0, .x1 = 3, .y_low = 0, .y_high = 1};
	struct rail_line rail = {0};
	struct attachment a[4];

	(void)state;
	memset(a, 0, sizeof a);
	c.job = &job;
	c.r = &r;
	c.cos_theta = 1;
	c.snow.cases = 1;
	c.snow.snow[0].array = 1000;
	c.combinations = 1;
	c.combination[0] = (struct load_combination){.text = "S", .S = 1, .CD = 1.15};
	for (int i = 0; i < 4; i++)
		a[i].x = i;
	rail_patterns(&c, &line, a, 4, 1000, &rail);
	assert_near(rail.check[CHECK_RAIL_MOMENT].demand, 1000 * (1.0 / 15 + 1.0 / 20 - 1.0 / 120),
		    1e-9);
}

/* Feet on the overhang of a warm roof without insulation take 2 pf with dead load only; on a cold
 * one nothing. */
static void test_ice_on_overhang(void **state)
{
	struct job job = snowy();

	(void)state;
	job.building.eave_overhang = FT(4);
	job.collector.lower = FT(1);
	job.site.thermal = THERMAL_HEATED;
	for (int m = METHOD_ASD; m <= METHOD_LRFD; m++) {
		job.site.method = (enum design_method)m;
		const struct result *r = run(&job);

		assert_true(has(r, REMARK_ICE_DAM));
		assert_near(said(r, REMARK_ICE_DAM, 0), 2 * r->snow.pf, 1e-12);
		const struct attachment a = judged(r)->attachment[0];
		const double area = fmax(a.reaction_width, a.tributary_width) * a.tributary_depth;
		const double D = m == METHOD_ASD ? 1 : 1.2, S = m == METHOD_ASD ? 1 : 1.6;

		assert_near(
			a.slope.slope,
			area * (D * r->dead.array_filled * 5 / 13 + S * 2 * r->snow.pf * 60 / 169),
			1e-9);
	}
	job.site.thermal = THERMAL_UNHEATED;
	assert_false(has(run(&job), REMARK_ICE_DAM));
}

/* 10 % rule: array 113 lb x 2 + 0.5 psf x 64 ft2 = 258 lb. */
static void test_lateral(void **state)
{
	struct job job = dense();

	(void)state;
	assert_true(has(run(&job), REMARK_UNCHECKED_LATERAL));
	job.existing.weight = LB(2581);
	assert_true(has(run(&job), REMARK_LATERAL_OK));
	assert_near(said(run(&job), REMARK_LATERAL_OK, 0), 258.0 / 2581, 1e-9);
	job.existing.added = LB(0.2);
	assert_true(has(run(&job), REMARK_LATERAL_MORE));
	assert_int_equal(run(&job)->verdict, NEEDS_ENGINEER);
}

/* 0.8 of 40 psf is 32 psf, more than 0.7 x 1.1 x 40 = 30.8. */
static void test_local_snow(void **state)
{
	struct job job = snowy();

	(void)state;
	job.snow.local_factor = 0.8;
	strcpy(job.snow.local_rule, "Ordinance of an invented town");
	const struct result *r = run(&job);
	double least = 0;

	for (int i = 0; i < r->snow.cases; i++)
		if (strcmp(r->snow.snow[i].name, "the authority's minimum") == 0)
			least = r->snow.snow[i].roof;
	assert_near(least, PSF(32), 1e-9);
	assert_true(has(r, REMARK_LOCAL_SNOW));
}

/* Four 4 ft collectors side by side, 22 in clear of the roof, in light snow: the array stands out
   of the snow, 16 ft long, less than 2 ft clear, so snow drifts against it and its load goes to the
   rafters. */
static void test_drift_on_rafters(void **state)
{
	struct job job = dense();

	(void)state;
	job.site.ground_snow = PSF(20);
	job.collector.columns = 4;
	job.collector.clearance = IN(22);
	job.snow.upwind_length = FT(30);
	const struct result *r = run(&job);
	const double short_fetch = judged(r)->rafter[0].after[CHECK_RAFTER_BENDING].ratio;
	const struct snow_load_case *last = &r->snow.snow[r->snow.cases - 1];

	assert_true(has(r, REMARK_DRIFT));
	assert_true(last->beside > 0 && last->beside_length > 0);
	assert_near(last->array, r->snow.snow[0].array, 1e-15);
	job.snow.upwind_length = FT(400);
	assert_true(judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio >= short_fetch);
	job.collector.clearance = IN(3);
	assert_true(has(run(&job), REMARK_NO_DRIFT));
}

/* 5:12, 11 ft x 16 in of rafter: formula 20 (1.2 - 0.05 x 5) = 19 psf, step table of the IRC 16
 * psf. */
static void test_live_rules(void **state)
{
	struct job job = dense();

	(void)state;
	assert_near(run(&job)->Lr, PSF(19), 1e-9);
	job.live.rule = LIVE_IRC_TABLE;
	assert_near(run(&job)->Lr, PSF(16), 1e-9);
}

/* At 24 in of clear space roof live load is still left out under the collectors, above it no
 * longer. */
static void test_live_under_collectors(void **state)
{
	struct job job = dense();

	(void)state;
	job.collector.clearance = IN(24);
	assert_true(has(run(&job), REMARK_LIVE_LEFT_OUT));
	const double out = judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio;

	job.collector.clearance = IN(24.01);
	assert_true(has(run(&job), REMARK_LIVE_KEPT));
	assert_true(judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio >= out);
}

/* More ground snow never lowers the worst ratio, by either method, held, drifted or partial. */
static void test_snow_grows(void **state)
{
	struct job job = dense();

	(void)state;
	strcpy(job.roof.covering, "metal-exposed-fastener");
	for (int m = METHOD_ASD; m <= METHOD_LRFD; m++) {
		double before = 0;

		job.site.method = (enum design_method)m;
		for (int i = 1; i <= 8; i++) {
			job.site.ground_snow = PSF(10 * i);
			const double ratio = judged(run(&job))->link_ratio[LINK_FASTENER];

			assert_true(ratio >= before);
			before = ratio;
		}
	}
}

/* A worker on the rail and the feet never makes anything lighter. */
static void test_worker(void **state)
{
	struct job job = dense();

	(void)state;
	job.rail.allowable_moment = 400;
	const double down = judged(run(&job))->attachment[0].down.normal;
	const double moment = judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].demand;

	job.live.worker = ANSWER_YES;
	assert_true(judged(run(&job))->attachment[0].down.normal > down);
	assert_true(judged(run(&job))->line[0].check[CHECK_RAIL_MOMENT].demand >= moment);
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
		cmocka_unit_test(test_lrfd_withdrawal),
		cmocka_unit_test(test_lrfd_steel),
		cmocka_unit_test(test_lrfd_tested),
		cmocka_unit_test(test_lrfd_rafter),
		cmocka_unit_test(test_lrfd_rail),
		cmocka_unit_test(test_quake_slope),
		cmocka_unit_test(test_quake_silent_never),
		cmocka_unit_test(test_quake_7_22),
		cmocka_unit_test(test_quake_grows),
		cmocka_unit_test(test_held_snow),
		cmocka_unit_test(test_partial_reactions),
		cmocka_unit_test(test_partial_moment),
		cmocka_unit_test(test_ice_on_overhang),
		cmocka_unit_test(test_lateral),
		cmocka_unit_test(test_live_rules),
		cmocka_unit_test(test_live_under_collectors),
		cmocka_unit_test(test_snow_grows),
		cmocka_unit_test(test_local_snow),
		cmocka_unit_test(test_drift_on_rafters),
		cmocka_unit_test(test_worker),
		cmocka_unit_test(test_compare),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
