/* SPDX-License-Identifier: MIT */
/* Snow that is more than even, people on the roof and rules on existing buildings, on the sample
   job. Expected values by hand from the printed formulas, never from the program. */
#include "sample_run.h"

#include <string.h>

#include "check/load_case.h"
#include "check/rafter_load.h"
#include "check/rail_pattern.h"
#include "near.h"

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
	/* the note tells the heaviest case */
	assert_near(said(r, REMARK_SNOW_HELD, 0), leeward * L * 5 / 13, 1e-9);
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

/* What may be slippery holds nothing back (safe side); granules do. */
static void test_held_where(void **state)
{
	static const struct {
		const char *covering;
		bool slides;
	} row[] = {{"asphalt-laminated", false},    {"wood-shingle", false},  {"slate", true},
		   {"metal-shingle", true},         {"modified-bitumen", true}, {"synthetic-slate-shake", true},
		   {"metal-exposed-fastener", true}, {"bur-gravel", false}};
	struct job job = snowy();

	(void)state;
	job.snow.guards = ANSWER_NO;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		strcpy(job.roof.covering, row[i].covering);
		const struct result *r = run(&job);

		assert_int_equal(has(r, REMARK_SNOW_HELD), row[i].slides);
		assert_int_equal(has(r, REMARK_SNOW_FRICTION), !row[i].slides);
	}
}

/* Three equal spans under 1.0S: worst are two spans full next to each other and half on the third,
   M = 1/15 + 1/20 - 1/2 x 1/60 = 0.10833 w L2, more than the 0.1 of even snow. Four spans: one span
   alone gives 15, 11, -3, 1 / 224 at the first inner support, so 15 + 11 - 3/2 + 1/2 = 25 / 224
   against 24 of even snow. */
static void test_partial_moment(void **state)
{
	static const struct {
		int feet;
		double M;
	} row[] = {{4, 1.0 / 15 + 1.0 / 20 - 1.0 / 120}, {5, 25.0 / 224}};
	static struct context c;
	static struct result r;
	struct job job = snowy();

	(void)state;
	c.job = &job;
	c.r = &r;
	c.cos_theta = 1;
	c.snow.cases = 1;
	c.snow.snow[0].array = 1000;
	c.combinations = 1;
	c.combination[0] = (struct load_combination){.text = "S", .S = 1, .CD = 1.15};
	for (size_t k = 0; k < 2; k++) {
		const struct line line = {.x0 = 0, .x1 = row[k].feet - 1, .y_low = 0, .y_high = 1};
		struct rail_line rail = {0};
		struct attachment a[5];

		memset(a, 0, sizeof a);
		for (int i = 0; i < row[k].feet; i++)
			a[i].x = i;
		rail_patterns(&c, &line, a, row[k].feet, 1000, &rail, NULL);
		assert_near(rail.check[CHECK_RAIL_MOMENT].demand, 1000 * row[k].M, 1e-9);
	}
}

/* Drift of 1000 Pa over 1 m on either side of an array 1 m wide: four steps 4/4 to 1/4 hold the
   falling load, 0.625 of the product, on each side; the same rafter without drift has only the even
   snow. */
static void test_drift_places(void **state)
{
	static struct context c;
	static struct result r;
	static struct pass pass;
	struct job job = snowy();
	const struct rafter_place place = {.rafter = 0, .start = 0, .length = 6, .width = 0.4};
	const struct load_combination S = {.text = "S", .S = 1};
	struct rafter_loads l;
	double total[2] = {0};

	(void)state;
	job.building.eave_overhang = 0;
	job.roof.dead_load = 0;
	c.job = &job;
	c.r = &r;
	c.cos_theta = 1;
	c.snow.cases = 2;
	c.snow.snow[1].beside = 1000;
	c.snow.snow[1].beside_length = 1;
	r.rafters = 1;
	r.rafter_x[0] = 1;
	r.array = r.collector[0] = (struct rectangle){0, 2, 2, 4};
	for (int i = 0; i < 2; i++) {
		const struct rafter_case k = {.k = &S, .roof_snow = 500, .snow_case = i, .array = true};

		rafter_load(&c, &pass, &place, &k, &l);
		for (size_t u = 0; u < l.rafter.uniforms; u++)
			total[i] += l.uniform[u].vertical * (l.uniform[u].x1 - l.uniform[u].x0);
	}
	assert_near(total[1] - total[0], 2 * 0.625 * 1000 * 1 * 0.4, 1e-9);
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
		/* no wind goes with it, though the combination of LRFD names some */
		assert_near(a.down.normal,
			    area * (D * r->dead.array_filled * 12 / 13 +
				    S * 2 * r->snow.pf * 144 / 169),
			    1e-9);
	}
	job.site.thermal = THERMAL_UNHEATED;
	assert_false(has(run(&job), REMARK_ICE_DAM));
}

/* Tilted rows drop their snow on 2 ft of roof at their foot, l/2 ft times what lay on them, and are
   bare then; flush ones do not. */
static void test_slide_off(void **state)
{
	struct job job = snowy();

	(void)state;
	assert_false(has(run(&job), REMARK_SLIDE_OFF));
	job.building.form = FORM_FLAT;
	job.roof.pitch = atan2(0.25, 12);
	strcpy(job.roof.covering, "modified-bitumen");
	job.collector.tilt = 30 * RAD_PER_DEG;
	const struct result *r = run(&job);
	const struct snow_load_case *last = &r->snow.snow[r->snow.cases - 1];
	const double plan = (r->collector[0].y1 - r->collector[0].y0) * cos(job.roof.pitch);

	assert_true(has(r, REMARK_SLIDE_OFF));
	assert_near(last->strip, r->snow.snow[0].array * plan / FT(2), 1e-9);
	assert_near(last->strip_width, FT(2), 1e-12);
	assert_true(last->array < 1e-12);
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
	/* the drift's edges are places of the sum: another drift, other last bits */
	assert_true(judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio >=
		    short_fetch * (1 - 1e-12));
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

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_held_snow),
		cmocka_unit_test(test_held_where),
		cmocka_unit_test(test_partial_reactions),
		cmocka_unit_test(test_partial_moment),
		cmocka_unit_test(test_drift_places),
		cmocka_unit_test(test_ice_on_overhang),
		cmocka_unit_test(test_slide_off),
		cmocka_unit_test(test_lateral),
		cmocka_unit_test(test_local_snow),
		cmocka_unit_test(test_drift_on_rafters),
		cmocka_unit_test(test_live_rules),
		cmocka_unit_test(test_live_under_collectors),
		cmocka_unit_test(test_snow_grows),
		cmocka_unit_test(test_worker),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
