/* SPDX-License-Identifier: MIT */
/* Roof snow: each limit of ASCE/SEI 7 chapter 7 at, below and above; what the array changes; levels
   that must not mix. */
#include "near.h"

#include <string.h>

#include "load/asce7_snow.h"
#include "load/us_units.h"

/* Category II house in B, heated with R 38, 6:12, W 14 ft, pg 30 at service level. */
static struct snow_roof house(void)
{
	return (struct snow_roof){.pg = psf(30.0),
				  .level = GROUND_SNOW_SERVICE,
				  .risk_category = 2,
				  .terrain = 'B',
				  .exposure = ROOF_PARTIALLY_EXPOSED,
				  .thermal = ROOF_HEATED,
				  .R = 38.0,
				  .theta = atan(0.5),
				  .W = ft(14.0),
				  .unbalanced = true,
				  .low_slope_form = true,
				  .simple_rafters = true,
				  .sliding_room = true,
				  .floor = NAN,
				  .W2 = NAN};
}

static const struct snow_load_case *find(const struct snow_loads *s, const char *name)
{
	for (int i = 0; i < s->cases; i++)
		if (strcmp(s->snow[i].name, name) == 0)
			return &s->snow[i];
	return NULL;
}

static struct snow_loads loads(enum edition edition, struct snow_roof roof)
{
	return asce7_snow_loads(edition, &roof, NULL);
}

/* Trap: a service-level pg in 7-22 understates by 38 percent, a strength-level one in 7-16
   overstates by 60. */
static void levels_do_not_mix(void **state)
{
	struct snow_roof roof = house();

	(void)state;
	assert_int_equal(loads(ASCE7_10, roof).status, SNOW_OK);
	assert_int_equal(loads(ASCE7_16, roof).status, SNOW_OK);
	assert_int_equal(loads(ASCE7_22, roof).status, SNOW_WRONG_LEVEL);
	assert_int_equal(loads(ASCE7_22, roof).cases, 0);
	roof.level = GROUND_SNOW_STRENGTH;
	assert_int_equal(loads(ASCE7_10, roof).status, SNOW_WRONG_LEVEL);
	assert_int_equal(loads(ASCE7_16, roof).status, SNOW_WRONG_LEVEL);
	assert_int_equal(loads(ASCE7_22, roof).status, SNOW_OK);
}

static void no_row(void **state)
{
	struct snow_roof roof = house();

	(void)state;
	roof.terrain = 'A';
	assert_int_equal(loads(ASCE7_16, roof).status, SNOW_NO_ROW);
	roof = house();
	roof.risk_category = 0;
	assert_int_equal(loads(ASCE7_16, roof).status, SNOW_NO_ROW);
	roof.risk_category = 5;
	assert_int_equal(loads(ASCE7_16, roof).status, SNOW_NO_ROW);
	assert_int_equal(loads(EDITION_ANY, house()).status, SNOW_NO_ROW);
}

/* pf = 0.7 Ce Ct Is pg by hand. */
static void flat_roof(void **state)
{
	static const struct {
		enum edition edition;
		int risk;
		char terrain;
		enum roof_exposure exposure;
		enum roof_thermal thermal;
		double pf;
	} row[] = {
		{ASCE7_16, 2, 'B', ROOF_PARTIALLY_EXPOSED, ROOF_HEATED, 0.7 * 30},
		{ASCE7_16, 1, 'B', ROOF_FULLY_EXPOSED, ROOF_COLD_VENTILATED,
		 0.7 * 0.9 * 1.1 * 0.8 * 30},
		{ASCE7_16, 3, 'C', ROOF_SHELTERED, ROOF_UNHEATED, 0.7 * 1.1 * 1.2 * 1.1 * 30},
		{ASCE7_10, 4, 'D', ROOF_FULLY_EXPOSED, ROOF_FREEZER, 0.7 * 0.8 * 1.3 * 1.2 * 30},
		{ASCE7_10, 2, 'D', ROOF_PARTIALLY_EXPOSED, ROOF_GREENHOUSE, 0.7 * 0.9 * 0.85 * 30},
		/* no Is in 7-22, whatever the category; a vented attic is 1.2 there; heated takes
		   the safe end */
		{ASCE7_22, 4, 'B', ROOF_PARTIALLY_EXPOSED, ROOF_COLD_VENTILATED, 0.7 * 1.2 * 30},
		{ASCE7_22, 2, 'B', ROOF_PARTIALLY_EXPOSED, ROOF_HEATED, 0.7 * 1.2 * 30},
		{ASCE7_22, 2, 'C', ROOF_FULLY_EXPOSED, ROOF_FREEZER, 0.7 * 0.9 * 1.3 * 30},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct snow_roof roof = house();

		roof.risk_category = row[i].risk;
		roof.terrain = row[i].terrain;
		roof.exposure = row[i].exposure;
		roof.thermal = row[i].thermal;
		if (row[i].edition == ASCE7_22)
			roof.level = GROUND_SNOW_STRENGTH;
		assert_near(in_psf(loads(row[i].edition, roof).pf), row[i].pf, 1e-12);
	}
}

/* The slippery curve needs a slippery covering, room below, and on a warm roof R of 30. */
static void slippery_only_where_it_slides(void **state)
{
	struct snow_roof roof = house();
	struct snow_loads s;

	(void)state;
	roof.theta = atan(8.0 / 12.0);
	roof.slippery = true;
	s = loads(ASCE7_16, roof);
	assert_within(s.Cs_before, 0.5586, 0.00005);
	assert_within(s.Cs_roof, 0.9077, 0.00005); /* with the array: obstructed */
	assert_true(s.obstructed);
	assert_near(s.snow[0].roof, s.Cs_roof * s.pf, 1e-12);
	assert_near(s.ps_before, s.Cs_before * s.pf, 1e-12);

	roof.R = 30.0;
	assert_true(loads(ASCE7_16, roof).obstructed);
	roof.R = 29.9;
	assert_false(loads(ASCE7_16, roof).obstructed);
	roof.R = NAN;
	assert_false(loads(ASCE7_16, roof).obstructed);
	roof.thermal = ROOF_COLD_VENTILATED; /* a cold roof asks for no R */
	assert_true(loads(ASCE7_16, roof).obstructed);
	roof.sliding_room = false;
	s = loads(ASCE7_16, roof);
	assert_false(s.obstructed);
	assert_near(s.Cs_before, s.Cs_roof, 1e-15);
	roof.sliding_room = true;
	roof.slippery = false;
	assert_false(loads(ASCE7_16, roof).obstructed);
}

/* Cold collectors: Ct 1.2 and the curve c for other surfaces, never less than the roof's own.
   Heated 12:12, pg 30: roof 0.7 x 30 x 0.625 = 13.125; collectors 0.7 x 1.2 x 30 x 1 = 25.2 psf.
   Freezer: the roof's own governs. */
static void snow_on_the_collectors(void **state)
{
	struct snow_roof roof = house();
	struct snow_loads s;

	(void)state;
	roof.theta = atan(1.0);
	s = loads(ASCE7_16, roof);
	assert_near(in_psf(s.snow[0].roof), 13.125, 1e-9);
	assert_near(in_psf(s.snow[0].array), 25.2, 1e-9);
	roof.thermal = ROOF_FREEZER;
	s = loads(ASCE7_16, roof);
	assert_near(in_psf(s.snow[0].array), 0.7 * 1.3 * 30.0, 1e-9);
	assert_near(s.snow[0].array, s.snow[0].roof, 1e-15);
}

static void several_rows_shelter(void **state)
{
	struct snow_roof roof = house();

	(void)state;
	roof.exposure = ROOF_FULLY_EXPOSED;
	assert_near(loads(ASCE7_16, roof).Ce, 0.9, 1e-15);
	roof.several_rows = true;
	assert_near(loads(ASCE7_16, roof).Ce, 1.0, 1e-15);
	roof.exposure = ROOF_SHELTERED;
	assert_near(loads(ASCE7_16, roof).Ce, 1.2, 1e-15);
}

/* 1/2:12 (2.38 degrees) to 7:12 (30.2). */
static void unbalanced_slopes(void **state)
{
	static const struct {
		double theta;
		bool unbalanced;
	} row[] = {
		{2.37 * RAD_PER_DEG, false},
		{2.38 * RAD_PER_DEG, true},
		{0.0416423, true}, /* atan(0.5/12) */
		{26.565 * RAD_PER_DEG, true},
		{30.2 * RAD_PER_DEG, true},
		{0.5280744484, true}, /* atan(7/12) */
		{30.3 * RAD_PER_DEG, false},
		{0.0, false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct snow_roof roof = house();
		struct snow_loads s;

		roof.theta = row[i].theta;
		s = loads(ASCE7_16, roof);
		assert_true((find(&s, "unbalanced, leeward") != NULL) == row[i].unbalanced);
		roof.unbalanced = false; /* a monoslope */
		s = loads(ASCE7_16, roof);
		assert_null(find(&s, "unbalanced, leeward"));
	}
}

/* Up to 20 ft and simple rafters: Is pg, uniform, with neither Ce nor Ct. Beyond, or with other
   framing: the drift shape. By hand for 7-16, pg 30, W 24 ft, Is 1, 6:12: hd = 0.43 x 24^(1/3) x
   40^(1/4) - 1.5 = 1.6193 ft; gamma 17.9; surcharge hd gamma/sqrt(2) = 20.4955 psf over 8/3 hd
   sqrt(2) = 6.1067 ft. */
static void unbalanced_forms(void **state)
{
	struct snow_roof roof = house();
	struct snow_loads s;
	const struct snow_load_case *lee, *wind;

	(void)state;
	roof.W = ft(20.0);
	s = loads(ASCE7_16, roof);
	lee = find(&s, "unbalanced, leeward");
	assert_near(in_psf(lee->roof), 30.0, 1e-12);
	assert_near(in_psf(lee->array), 30.0, 1e-12);
	assert_near(lee->surcharge, 0.0, 0.0);
	assert_near(find(&s, "unbalanced, windward")->roof, 0.0, 0.0);
	assert_near(in_psf(s.leeward_before), 30.0, 1e-12);

	roof.W = ft(20.01);
	s = loads(ASCE7_16, roof);
	assert_true(find(&s, "unbalanced, leeward")->surcharge > 0.0);
	roof.W = ft(14.0);
	roof.simple_rafters = false;
	s = loads(ASCE7_16, roof);
	assert_true(find(&s, "unbalanced, leeward")->surcharge > 0.0);

	roof.W = ft(24.0);
	s = loads(ASCE7_16, roof);
	lee = find(&s, "unbalanced, leeward");
	wind = find(&s, "unbalanced, windward");
	assert_near(in_ft(s.hd), 0.43 * cbrt(24.0) * sqrt(sqrt(40.0)) - 1.5, 1e-12);
	assert_within(in_ft(s.hd), 1.6193, 0.00005);
	assert_within(in_psf(lee->surcharge), 20.4955, 0.00005);
	assert_within(in_ft(lee->surcharge_length), 6.1067, 0.00005);
	assert_near(lee->roof, s.snow[0].roof, 1e-15);
	assert_near(wind->roof, 0.3 * s.snow[0].roof, 1e-12);
	assert_near(wind->array, 0.3 * s.snow[0].array, 1e-12);
	assert_near(s.leeward_before, s.ps_before + lee->surcharge, 1e-12);

	roof.risk_category = 3; /* Is 1.1 */
	roof.W = ft(14.0);
	roof.simple_rafters = true;
	s = loads(ASCE7_16, roof);
	assert_near(in_psf(find(&s, "unbalanced, leeward")->roof), 33.0, 1e-12);
	roof.level = GROUND_SNOW_STRENGTH;
	s = loads(ASCE7_22, roof);
	assert_near(in_psf(find(&s, "unbalanced, leeward")->roof), 30.0, 1e-12);
}

/* 7-16 multiplies hd by sqrt(Is), 7-10 does not; a fetch below 20 ft counts as 20. */
static void drift_heights(void **state)
{
	const double at_20 = 0.43 * cbrt(20.0) * sqrt(sqrt(40.0)) - 1.5;

	(void)state;
	assert_near(in_ft(asce7_drift_height(ASCE7_10, psf(30.0), ft(20.0), 1.2, NAN, NULL)), at_20,
		    1e-12);
	assert_near(in_ft(asce7_drift_height(ASCE7_10, psf(30.0), ft(12.0), 1.2, NAN, NULL)), at_20,
		    1e-12);
	assert_near(in_ft(asce7_drift_height(ASCE7_16, psf(30.0), ft(20.0), 1.2, NAN, NULL)),
		    sqrt(1.2) * at_20, 1e-12);
	assert_true(asce7_drift_height(ASCE7_16, psf(30.0), ft(20.1), 1.0, NAN, NULL) > ft(at_20));
	assert_near(asce7_drift_height(ASCE7_16, 0.0, ft(20.0), 1.0, NAN, NULL),
		    ft(0.43 * cbrt(20.0) * sqrt(sqrt(10.0)) - 1.5), 1e-9);
}

/* 15 degrees: no longer low. pm = Is min(pg, 20). */
static void minimum(void **state)
{
	static const struct {
		enum edition edition;
		int risk;
		double theta_deg, pg, pm; /* pm 0: not asked */
	} row[] = {
		{ASCE7_16, 2, 14.99, 30, 20}, {ASCE7_16, 2, 15.0, 30, 0},
		{ASCE7_16, 2, 10, 19, 19},    {ASCE7_16, 2, 10, 20, 20},
		{ASCE7_16, 2, 10, 21, 20},    {ASCE7_16, 4, 10, 10, 12},
		{ASCE7_10, 3, 10, 50, 22},    {ASCE7_22, 2, 10, 29, 29},
		{ASCE7_22, 2, 10, 30, 30},    {ASCE7_22, 2, 10, 31, 30},
		{ASCE7_22, 4, 10, 100, 40},   {ASCE7_22, 1, 10, 100, 25},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct snow_roof roof = house();
		struct snow_loads s;

		roof.risk_category = row[i].risk;
		roof.theta = deg(row[i].theta_deg);
		roof.pg = psf(row[i].pg);
		if (row[i].edition == ASCE7_22)
			roof.level = GROUND_SNOW_STRENGTH;
		s = loads(row[i].edition, roof);
		assert_true((find(&s, "minimum") != NULL) == (row[i].pm > 0.0));
		assert_within(in_psf(s.pm), row[i].pm, 1e-9);
		roof.low_slope_form = false;
		s = loads(row[i].edition, roof);
		assert_null(find(&s, "minimum"));
	}
}

/* +5 psf where 0 < pg <= 20 and theta < W/50: 50 ft gives 1 degree. 7-22: +8, up to pm,max. */
static void rain_on_snow(void **state)
{
	static const struct {
		enum edition edition;
		double pg, theta_deg, rain;
	} row[] = {
		{ASCE7_16, 20.0, 0.99, 5}, {ASCE7_16, 20.01, 0.99, 0}, {ASCE7_16, 20.0, 1.0, 0},
		{ASCE7_16, 20.0, 1.01, 0}, {ASCE7_16, 0.0, 0.5, 0},    {ASCE7_10, 10.0, 0.0, 5},
		{ASCE7_22, 30.0, 0.99, 8}, {ASCE7_22, 30.01, 0.99, 0}, {ASCE7_22, 30.0, 1.0, 0},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct snow_roof roof = house();
		const struct snow_load_case *rain;
		struct snow_loads s;

		roof.W = ft(50.0);
		roof.pg = psf(row[i].pg);
		roof.theta = deg(row[i].theta_deg);
		if (row[i].edition == ASCE7_22)
			roof.level = GROUND_SNOW_STRENGTH;
		s = loads(row[i].edition, roof);
		rain = find(&s, "balanced, rain on snow");
		assert_true((rain != NULL) == (row[i].rain > 0.0));
		if (rain != NULL) {
			assert_near(in_psf(rain->roof - s.snow[0].roof), row[i].rain, 1e-9);
			assert_near(in_psf(rain->array - s.snow[0].array), row[i].rain, 1e-9);
		}
	}
}

static void authority_floor(void **state)
{
	struct snow_roof roof = house();
	struct snow_loads s = loads(ASCE7_16, roof);

	(void)state;
	assert_null(find(&s, "the authority's minimum"));
	roof.floor = psf(25.0);
	s = loads(ASCE7_16, roof);
	assert_near(in_psf(find(&s, "the authority's minimum")->roof), 25.0, 1e-12);
	assert_string_equal(s.snow[0].name, "balanced");
}

/* 0.13 pg + 14 reaches 30 pcf at 123.08 psf. */
static void density(void **state)
{
	struct snow_roof roof = house();

	(void)state;
	assert_near(unit_from_si(loads(ASCE7_16, roof).gamma, UNIT_PCF), 17.9, 1e-12);
	roof.pg = psf(123.0);
	assert_near(unit_from_si(loads(ASCE7_16, roof).gamma, UNIT_PCF), 29.99, 1e-12);
	roof.pg = psf(124.0);
	assert_near(unit_from_si(loads(ASCE7_16, roof).gamma, UNIT_PCF), 30.0, 1e-12);
}

/* What the tables say of themselves comes through: the least sure one counts. */
static void least_sure(void **state)
{
	struct snow_roof roof = house();

	(void)state;
	/* the curves of Cs: one source; Ce and Ct of this house are confirmed */
	assert_int_equal(loads(ASCE7_16, roof).confidence, ONE_SOURCE);
	assert_int_equal(loads(ASCE7_10, roof).confidence, ONE_SOURCE);
	roof.level = GROUND_SNOW_STRENGTH;
	assert_int_equal(loads(ASCE7_22, roof).confidence, ONE_SOURCE);
	roof.terrain = 'D';
	assert_int_equal(loads(ASCE7_22, roof).confidence, ONE_SOURCE);
}

/* As many cases as there can be fit: rain and minimum on a nearly flat gable need unbalanced slopes
   too, with W of 200 ft. */
static void all_cases_at_once(void **state)
{
	struct snow_roof roof = house();
	struct snow_loads s;

	(void)state;
	roof.pg = psf(15.0);
	roof.W = ft(200.0);
	roof.theta = deg(3.0);
	roof.floor = psf(20.0);
	s = loads(ASCE7_16, roof);
	assert_int_equal(s.cases + 2, SNOW_LOAD_MAX); /* kept for drift and slide at the array */
}

/* A thermal factor read from the book: 0.7 x 1.0 x 1.17 x 30 = 24.57 psf; 1.17 is the cell of ASCE/SEI 7-22 Table 7.3-3 for R 30
   and pg 30 that a consultant's newsletter quotes. Between 1.1 and 1.2 curve b counts: flat to 37.5 degrees. */
static void entered_thermal_factor(void **state)
{
	(void)state;
	struct snow_roof roof = house();

	roof.level = GROUND_SNOW_STRENGTH;
	roof.Ct = 1.17;
	const struct snow_loads s = asce7_snow_loads(ASCE7_22, &roof, NULL);

	assert_int_equal(s.status, SNOW_OK);
	assert_within(s.pf, psf(24.57), psf(0.005));
	assert_within(s.Ct, 1.17, 1e-12);
	assert_within(s.Cs_roof, 1.0, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(levels_do_not_mix),
		cmocka_unit_test(entered_thermal_factor),
		cmocka_unit_test(no_row),
		cmocka_unit_test(flat_roof),
		cmocka_unit_test(slippery_only_where_it_slides),
		cmocka_unit_test(snow_on_the_collectors),
		cmocka_unit_test(several_rows_shelter),
		cmocka_unit_test(unbalanced_slopes),
		cmocka_unit_test(unbalanced_forms),
		cmocka_unit_test(drift_heights),
		cmocka_unit_test(minimum),
		cmocka_unit_test(rain_on_snow),
		cmocka_unit_test(authority_floor),
		cmocka_unit_test(density),
		cmocka_unit_test(least_sure),
		cmocka_unit_test(all_cases_at_once),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
