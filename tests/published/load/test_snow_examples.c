/* SPDX-License-Identifier: MIT */
/* Snow, live and dead load, combinations. Half the last printed digit unless said.
   S1 Snow Loads: Guide to the Snow Load Provisions of ASCE 7-10 (ASCE Press), Example 4-3.
   S2 engineering article that compares snow drift of ASCE 7-16 and 7-22 at a roof step, Washington
   DC. S5 public permit file (California city): 10 percent lateral check. S6 test datum of an
   open-source copy of ASCE 7-16. S7 consultant newsletter on thermal factors of ASCE 7-22.
   S8 ASCE/SEI 7-22 C7.14, Example 3 (a parapet), as a public note quotes it: 0.75 x 4.55 ft =
   3.41 ft high, 27.3 ft wide.
   C1 to C4, the table of Cs and the drift heights of 7-22 are no publication: they were computed
   apart from this program by the clauses named beside them, by hand. */
#include "near.h"

#include <stdlib.h>
#include <string.h>

#include "load/gravity.h"
#include "load/load_steps.h"
#include "load/loading_code.h"
#include "load/triggers.h"
#include "load/us_units.h"

static const struct snow_roof plain = {
	.level = GROUND_SNOW_SERVICE,
	.risk_category = 2,
	.terrain = 'B',
	.exposure = ROOF_PARTIALLY_EXPOSED,
	.thermal = ROOF_HEATED,
	.R = NAN,
	.unbalanced = true,
	.low_slope_form = true,
	.simple_rafters = true,
	.floor = NAN,
	.W2 = NAN,
};

static const struct snow_load_case *find(const struct snow_loads *s, const char *name)
{
	for (int i = 0; i < s->cases; i++)
		if (strcmp(s->snow[i].name, name) == 0)
			return &s->snow[i];
	return NULL;
}

/* pg 30, terrain B, partially exposed, unheated, category II, gable 1/2:12. */
static void s1_low_gable(void **state)
{
	struct snow_roof roof = plain;
	struct snow_loads s;

	(void)state;
	roof.pg = psf(30.0);
	roof.thermal = ROOF_UNHEATED;
	roof.theta = atan(0.5 / 12.0);
	roof.W = ft(50.0);
	s = asce7_snow_loads(ASCE7_10, &roof, NULL);
	assert_int_equal(s.status, SNOW_OK);
	assert_within(s.Ce, 1.0, 1e-9);
	assert_within(s.Ct, 1.2, 1e-9);
	assert_within(s.Cs_roof, 1.0, 1e-9);
	assert_within(in_psf(s.snow[0].roof), 25.2, 0.05);
	assert_within(in_psf(s.pm), 20.0, 1e-9);
	assert_null(find(&s, "balanced, rain on snow"));
	assert_non_null(find(&s, "minimum"));
}

/* pg 25, Ce = Ct = Is = 1, fetch 40 ft. */
static void s2_drift(void **state)
{
	struct snow_roof roof = plain;
	struct snow_loads s;
	double hd, pd;

	(void)state;
	roof.pg = psf(25.0);
	roof.W = ft(30.0);
	s = asce7_snow_loads(ASCE7_16, &roof, NULL);
	hd = in_ft(asce7_drift_height(ASCE7_16, roof.pg, ft(40.0), 1.0, NAN, NULL));
	pd = unit_from_si(s.gamma, UNIT_PCF) * hd;
	assert_within(in_psf(s.pf), 17.5, 0.05);
	assert_within(unit_from_si(s.gamma, UNIT_PCF), 17.25, 0.005);
	assert_within(hd, 2.08, 0.005);
	assert_within(pd, 35.8, 0.05);
	assert_within(in_psf(s.pf) + pd, 53.3, 0.05);
}

/* 422 ft2 at 3 psf against 32146 lb (the parts as printed sum to 32147): 3.9 percent. */
static void s5_lateral(void **state)
{
	bool triggered = true;
	const double existing = 9930.0 + 8688.0 + 3382.0 + 10146.0;
	const double rise = trigger_lateral(422.0 * 3.0, existing, &triggered, NULL);

	(void)state;
	assert_within(existing, 32147.0, 1.0);
	assert_within(100.0 * rise, 3.9, 0.05);
	assert_false(triggered);
}

static double slope_factor(double theta, enum roof_thermal thermal, bool slippery)
{
	struct snow_roof roof = plain;

	roof.pg = psf(30.0);
	roof.thermal = thermal;
	roof.R = 30.0;
	roof.theta = theta;
	roof.W = ft(16.0);
	roof.slippery = slippery;
	roof.sliding_room = true;
	return asce7_snow_loads(ASCE7_16, &roof, NULL).Cs_before;
}

static void s6_slippery_warm(void **state)
{
	(void)state;
	assert_within(slope_factor(atan(4.0 / 12.0), ROOF_HEATED, true), 0.7933, 0.00005);
	assert_within(slope_factor(deg(5.0), ROOF_HEATED, true), 1.0, 1e-9);
}

/* The newsletter says that Ct 1.17 in place of 1.0 at pg 30 adds "about 5 psf". It adds 0.7 x 30 x
   0.17 = 3.57: the printed figure does not follow from its own formula and is no check. Kept so
   that nobody takes it for one. */
static void s7_does_not_reproduce(void **state)
{
	const double rise = in_psf(STEP(NULL, step_snow_flat_roof_7_22, 1.0, 1.17, psf(30.0)) -
				   STEP(NULL, step_snow_flat_roof_7_22, 1.0, 1.0, psf(30.0)));

	(void)state;
	assert_within(rise, 0.7 * 30.0 * 0.17, 1e-9);
	assert_true(rise < 4.0);
}

static void s8_windward_width(void **state)
{
	const double height = step_snow_projection_height.value((double[]){4.55});

	(void)state;
	assert_within(height, 3.41, 0.005);
	assert_within(step_snow_drift_width_7_22.value(&height), 27.3, 0.05);
}

/* Gable 6:12, shingle, pg 40, Ct 1.1, W 18 ft, rafters ridge to eave; then 8:12 in metal
   (7.4, 7.6.1). */
static void c1_c2_house(void **state)
{
	struct snow_roof roof = plain;
	struct snow_loads s;

	(void)state;
	roof.pg = psf(40.0);
	roof.thermal = ROOF_COLD_VENTILATED;
	roof.theta = atan(0.5);
	roof.W = ft(18.0);
	s = asce7_snow_loads(ASCE7_16, &roof, NULL);
	assert_within(in_psf(s.pf), 30.8, 1e-9);
	assert_within(s.Cs_roof, 1.0, 1e-12);
	assert_within(in_psf(find(&s, "unbalanced, leeward")->roof), 40.0, 1e-9);
	assert_within(in_psf(find(&s, "unbalanced, windward")->roof), 0.0, 1e-9);
	assert_null(find(&s, "minimum"));

	roof.theta = atan(8.0 / 12.0);
	roof.slippery = roof.sliding_room = true;
	s = asce7_snow_loads(ASCE7_16, &roof, NULL);
	assert_within(s.Cs_before, 0.6052, 0.00005);
	assert_within(in_psf(s.ps_before), 18.639, 0.0005);
	assert_within(s.Cs_roof, 1.0, 1e-12);
	assert_within(in_psf(s.snow[0].roof), 30.8, 1e-9);
	assert_true(s.obstructed);
	assert_null(find(&s, "unbalanced, leeward")); /* 8:12 is steeper than 7:12 */
}

static double of(const struct load_combination *c, int n, const char *text, struct load_effect e)
{
	for (int i = 0; i < n; i++)
		if (strcmp(c[i].text, text) == 0)
			return combination_sum(&c[i], &e);
	fail_msg("no combination %s", text);
	return NAN;
}

/* 26.565 degrees, snow 30.8 psf of plan, dead 3.5 psf of slope, 16 ft2 of slope, wind -30 and +16
   psf (strength): ASCE/SEI 7-16 2.3.1, 2.4.1 and statics. */
static void c3_combinations(void **state)
{
	const double theta = atan(0.5), A = 16.0;
	const struct slope_load snow = gravity_plan_on_slope(psf(30.8), theta, NULL);
	const struct slope_load dead = gravity_dead_on_slope(psf(3.5), theta, NULL);
	const struct load_effect down = {
		.D = A * in_psf(dead.normal), .S = A * in_psf(snow.normal), .W = A * 16.0};
	const struct load_effect up = {.D = down.D, .W = -A * 30.0};
	const struct load_effect slide = {.D = A * in_psf(dead.parallel),
					  .S = A * in_psf(snow.parallel)};
	struct load_combination asd[COMBINATION_MAX], lrfd[COMBINATION_MAX];
	const int na = asce7_combinations(ASCE7_16, COMBINATION_ASD, false, asd);
	const int nl = asce7_combinations(ASCE7_16, COMBINATION_LRFD, false, lrfd);

	(void)state;
	assert_within(down.S, 394.24, 0.005);
	assert_within(slide.S, 197.12, 0.005);
	assert_within(down.D, 50.088, 0.0005);
	assert_within(slide.D, 25.044, 0.0005);
	assert_within(of(asd, na, "D + S", down), 444.33, 0.005);
	assert_within(of(asd, na, "D + S", slide), 222.16, 0.005);
	assert_within(of(asd, na, "D + 0.75(0.6W) + 0.75S", down), 460.97, 0.005);
	assert_within(of(asd, na, "0.6D + 0.6W", up), -257.95, 0.005);
	assert_within(of(lrfd, nl, "1.2D + 1.6S + 0.5W", down), 818.89, 0.005);
	assert_within(of(lrfd, nl, "0.9D + 1.0W", up), -434.92, 0.005);
}

/* Lr = 20 R1 R2 (IBC 2018 1607.13.2.1). */
static void c4_roof_live(void **state)
{
	static const struct {
		double F, At, Lr;
	} row[] = {{3, 100, 20.0}, {6, 100, 18.0}, {6, 300, 16.2}, {8, 450, 12.0}, {12, 100, 12.0}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row("Lr",
			   in_psf(gravity_roof_live(ft2(row[i].At), atan(row[i].F / 12.0), NULL)),
			   row[i].Lr, 1e-9);
}

/* Cs = (70 - theta)/(70 - x0), columns a, b, c: slippery and other (ASCE/SEI 7-16 Fig. 7.4-1). */
static void slope_factor_table(void **state)
{
	static const struct {
		double rise, Cs[6];
	} row[] = {
		{3, {.8610, 1, .9327, 1, 1, 1}},
		{4, {.7933, 1, .8594, 1, .9375, 1}},
		{6, {.6682, 1, .7239, 1, .7897, 1}},
		{8, {.5586, .9077, .6052, 1, .6602, 1}},
		{9, {.5097, .8283, .5522, 1, .6024, 1}},
		{10, {.4645, .7549, .5032, .9291, .5490, 1}},
		{12, {.3846, .6250, .4167, .7692, .4545, 1}},
		{18, {.2106, .3423, .2282, .4212, .2489, .5476}},
	};
	static const enum roof_thermal curve[3] = {ROOF_HEATED, ROOF_COLD_VENTILATED,
						   ROOF_UNHEATED};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		for (int k = 0; k < 6; k++)
			assert_row("Cs",
				   slope_factor(atan(row[i].rise / 12.0), curve[k / 2], k % 2 == 0),
				   row[i].Cs[k], 0.00005);
}

/* hd of 7-22 for pg 60, lu 26 ft (Eq. 7.6-1). */
static void drift_7_22(void **state)
{
	static const struct {
		double W2, hd;
	} row[] = {{.25, 1.407}, {.35, 1.873}, {.45, 2.319},
		   {.55, 2.750}, {.65, 3.170}, {NAN, 3.170}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row("hd",
			   in_ft(asce7_drift_height(ASCE7_22, psf(60.0), ft(26.0), 1.0, row[i].W2,
						    NULL)),
			   row[i].hd, 0.0005);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(s1_low_gable),
		cmocka_unit_test(s2_drift),
		cmocka_unit_test(s5_lateral),
		cmocka_unit_test(s6_slippery_warm),
		cmocka_unit_test(s7_does_not_reproduce),
		cmocka_unit_test(s8_windward_width),
		cmocka_unit_test(c1_c2_house),
		cmocka_unit_test(c3_combinations),
		cmocka_unit_test(c4_roof_live),
		cmocka_unit_test(slope_factor_table),
		cmocka_unit_test(drift_7_22),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
