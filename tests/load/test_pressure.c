/* SPDX-License-Identifier: MIT */
/* Coefficients at, below and above every break area and slope limit; net pressures; the least
   pressure; zone width. */
#include "near.h"

#include "load/asce7_pressure.h"
#include "load/us_units.h"

struct row {
	const char *what;
	enum edition edition;
	enum wind_roof roof;
	double theta_deg;
	const char *zone;
	enum wind_sign sign;
	double A_ft2;
	enum wind_curve curve;
	double GCp; /* NAN: there must be none */
};

#define GABLE WIND_ROOF_GABLE
#define HIP WIND_ROOF_HIP
#define FLAT WIND_ROOF_FLAT
#define UP WIND_UP
#define DOWN WIND_DOWN
#define RECALLED CURVE_RECALLED
#define SAFE CURVE_SAFE_SIDE

static const struct row row[] = {
	/* 7-10 Fig. 30.4-2B zone 2: -1.7 at 10 to -1.2 at 100 ft2; the middle in log10 is
	   sqrt(1000) */
	{"below the first area", ASCE7_10, GABLE, 18, "2", UP, 1, RECALLED, -1.7},
	{"at the first area", ASCE7_10, GABLE, 18, "2", UP, 10, RECALLED, -1.7},
	{"middle", ASCE7_10, GABLE, 18, "2", UP, 31.6227766016838, RECALLED, -1.45},
	{"at the last area", ASCE7_10, GABLE, 18, "2", UP, 100, RECALLED, -1.2},
	{"beyond the last area", ASCE7_10, GABLE, 18, "2", UP, 1000, RECALLED, -1.2},
	{"confirmed answers both", ASCE7_10, GABLE, 18, "2", UP, 31.6227766016838, SAFE, -1.45},
	{"down", ASCE7_10, GABLE, 18, "3", DOWN, 10, RECALLED, 0.5},
	/* slope classes of 7-10: to 7, to 27, to 45 */
	{"0 deg", ASCE7_10, GABLE, 0, "3", UP, 10, RECALLED, -2.8},
	{"7 deg", ASCE7_10, GABLE, 7, "3", UP, 10, RECALLED, -2.8},
	{"over 7 deg", ASCE7_10, GABLE, 7.001, "3", UP, 10, RECALLED, -2.6},
	{"27 deg", ASCE7_10, GABLE, 27, "3", UP, 10, RECALLED, -2.6},
	{"over 27 deg", ASCE7_10, GABLE, 27.001, "3", UP, 10, RECALLED, -1.2},
	{"45 deg", ASCE7_10, GABLE, 45, "3", UP, 10, RECALLED, -1.2},
	{"over 45 deg", ASCE7_10, GABLE, 45.001, "3", UP, 10, RECALLED, NAN},
	{"27 to 45: end", ASCE7_10, GABLE, 36, "2", UP, 100, RECALLED, -1.0},
	{"27 to 45: the same", ASCE7_10, GABLE, 36, "2", UP, 100, SAFE, -1.0},
	/* slope classes of 7-16: to 7, to 20, to 27, to 45 */
	{"7 deg", ASCE7_16, GABLE, 7, "3", UP, 10, RECALLED, -3.2},
	{"7 deg has no zone 3r", ASCE7_16, GABLE, 7, "3r", UP, 10, RECALLED, NAN},
	{"over 7 deg", ASCE7_16, GABLE, 7.001, "3r", UP, 10, RECALLED, -3.6},
	{"20 deg", ASCE7_16, GABLE, 20, "3r", UP, 10, RECALLED, -3.6},
	{"over 20 deg", ASCE7_16, GABLE, 20.001, "3r", UP, 10, RECALLED, -3.0},
	/* trap: 5:12 is 22.6 degrees, not 20 */
	{"5:12", ASCE7_16, GABLE, 22.6198649480404, "1", UP, 10, RECALLED, -1.5},
	{"5:12", ASCE7_16, GABLE, 22.6198649480404, "2n", UP, 10, RECALLED, -2.5},
	{"27 deg", ASCE7_16, GABLE, 27, "3r", UP, 10, RECALLED, -3.0},
	/* one source answers both */
	{"20 to 27, 2r", ASCE7_16, GABLE, 23, "2r", UP, 150, RECALLED, -1.2},
	{"20 to 27, 2r", ASCE7_16, GABLE, 23, "2r", UP, 150, SAFE, -1.2},
	{"over 27 deg", ASCE7_16, GABLE, 27.001, "3r", UP, 10, RECALLED, -2.0},
	{"45 deg", ASCE7_16, GABLE, 45, "3e", UP, 10, RECALLED, -2.5006},
	{"over 45 deg", ASCE7_16, GABLE, 45.001, "3e", UP, 10, RECALLED, NAN},
	/* two pieces: -3.6 at 4.2, -3.0 at 10, -1.8 at 57 ft2: -3.0 + 1.2 x 0.5/log10 5.7 between */
	{"first piece", ASCE7_16, GABLE, 23, "3r", UP, 4.2, RECALLED, -3.6},
	{"below it", ASCE7_16, GABLE, 23, "3r", UP, 1, RECALLED, -3.6},
	{"second piece", ASCE7_16, GABLE, 23, "3r", UP, 31.6227766016838, RECALLED, -2.2062},
	{"beyond it", ASCE7_16, GABLE, 23, "3r", UP, 100, RECALLED, -1.8},
	{"safe side", ASCE7_16, GABLE, 23, "3e", UP, 100, SAFE, -3.6},
	{"both copies end at 100, the safer end is at 300", ASCE7_16, GABLE, 14, "2e", UP, 100, SAFE, -1.1086},
	{"steep, one source", ASCE7_16, GABLE, 36, "1", UP, 100, SAFE, -0.8},
	{"steep, the reading is safer", ASCE7_16, GABLE, 36, "2n", UP, 100, SAFE, -1.23},
	{"steep, down", ASCE7_16, GABLE, 36, "1", DOWN, 100, SAFE, 0.5},
	/* the flat figure: zone 1' from -0.9 at 100 to -0.4 at 1000 ft2 */
	{"1' small", ASCE7_16, FLAT, 2, "1'", UP, 20, RECALLED, -0.9},
	{"1' large", ASCE7_16, FLAT, 2, "1'", UP, 1000, RECALLED, -0.4},
	{"2 answers both", ASCE7_16, FLAT, 2, "2", UP, 1000, SAFE, -1.4},
	{"flat over 7 deg", ASCE7_16, FLAT, 7.1, "1", UP, 10, RECALLED, NAN},
	/* 7-22 renames the gable zones */
	{"7-22 zone 2", ASCE7_22, GABLE, 14, "2", UP, 10, RECALLED, -2.7},
	{"7-22 zone 3", ASCE7_22, GABLE, 36, "3", UP, 10, SAFE, -2.5},
	/* -3.6529 + 1.1529 log10 100 */
	{"7-22 zone 3", ASCE7_22, GABLE, 36, "3", UP, 100, RECALLED, -1.3471},
	/* 0.9 at 10 to 0.5 at 200 ft2: 0.9 - 0.4/log10 20 */
	{"7-22 steep, down", ASCE7_22, GABLE, 36, "2", DOWN, 100, RECALLED, 0.5925},
	{"7-22 has no 2n", ASCE7_22, GABLE, 14, "2n", UP, 10, RECALLED, NAN},
	/* hips: to 27 degrees only in 7-16, to 45 in 7-22 */
	{"hip 20 deg", ASCE7_16, HIP, 20, "2r", UP, 10, RECALLED, -2.4},
	{"hip over 27 deg", ASCE7_16, HIP, 27.1, "1", UP, 10, RECALLED, NAN},
	{"hip over 27 deg", ASCE7_22, HIP, 27.1, "3", UP, 10, RECALLED, -2.4},
	{"hip 45 deg", ASCE7_22, HIP, 45, "1", UP, 10, RECALLED, -1.5},
	{"hip over 45 deg", ASCE7_22, HIP, 45.1, "1", UP, 10, RECALLED, NAN},
	{"no such zone", ASCE7_16, GABLE, 14, "4", UP, 10, RECALLED, NAN},
	{"no such edition", EDITION_ANY, GABLE, 14, "1", UP, 10, RECALLED, NAN},
};

static void coefficients(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct row *r = &row[i];
		const struct wind_place place = {r->roof, deg(r->theta_deg), r->zone, r->sign,
						 ft2(r->A_ft2)};
		const struct wind_coefficient c =
			asce7_wind_coefficient(r->edition, &place, r->curve, NULL);

		if (isnan(r->GCp)) {
			if (c.known)
				fail_msg("%s: %g where there is none", r->what, c.GCp);
			continue;
		}
		if (!c.known)
			fail_msg("%s: no coefficient", r->what);
		/* 5e-4: ends of remembered lines are printed to a tenth, their interpolation to
		   four digits */
		assert_row(r->what, c.GCp, r->GCp, 5e-4);
		assert_non_null(c.figure);
	}
}

static void status_of_curves(void **state)
{
	struct wind_place place = {WIND_ROOF_GABLE, deg(18.0), "2", WIND_UP, ft2(16.0)};
	struct wind_coefficient c = asce7_wind_coefficient(ASCE7_10, &place, CURVE_RECALLED, NULL);

	(void)state;
	assert_true(c.confidence == CONFIRMED && !c.bounded);
	place.zone = "2n";
	c = asce7_wind_coefficient(ASCE7_16, &place, CURVE_SAFE_SIDE, NULL);
	assert_true(c.confidence == ONE_SOURCE && !c.bounded);
	place.theta = deg(23.0);
	place.zone = "3e";
	c = asce7_wind_coefficient(ASCE7_16, &place, CURVE_RECALLED, NULL);
	assert_true(c.confidence == FROM_MEMORY && c.bounded);
	c = asce7_wind_coefficient(ASCE7_16, &place, CURVE_SAFE_SIDE, NULL);
	assert_true(c.confidence == SAFE_SIDE && c.bounded);
	/* one source answers both times */
	place = (struct wind_place){WIND_ROOF_HIP, deg(23.0), "1", WIND_DOWN, ft2(16.0)};
	c = asce7_wind_coefficient(ASCE7_22, &place, CURVE_RECALLED, NULL);
	assert_true(c.known && c.confidence == ONE_SOURCE && !c.bounded);
}

/* qh 20 psf: the internal pressure adds to either sign. 7-22 multiplies by Kd. */
static void net_pressure(void **state)
{
	const struct wind_velocity w16 = {.known = true, .qh = psf(20.0), .Kd_of_p = 1.0};
	const struct wind_velocity w22 = {.known = true, .qh = psf(20.0), .Kd_of_p = 0.85};

	(void)state;
	assert_near(in_psf(asce7_roof_pressure(ASCE7_16, &w16, -1.5, 0.18, false, NULL).p), -33.6,
		    1e-12);
	assert_near(in_psf(asce7_roof_pressure(ASCE7_16, &w16, 0.5, 0.18, false, NULL).p), 13.6,
		    1e-12);
	assert_near(in_psf(asce7_roof_pressure(ASCE7_22, &w22, -1.5, 0.18, false, NULL).p), -28.56,
		    1e-12);
	assert_near(asce7_roof_pressure(ASCE7_16, &w16, -1.5, 0.18, false, NULL).gammaE, 1.0,
		    1e-15);
	assert_near(asce7_roof_pressure(ASCE7_16, &w16, -1.5, 0.18, false, NULL).gammaa, 1.0,
		    1e-15);
	assert_near(asce7_internal_coefficient(ASCE7_16, WIND_ENCLOSED), 0.18, 1e-15);
	assert_near(asce7_internal_coefficient(ASCE7_16, WIND_PARTIALLY_ENCLOSED), 0.55, 1e-15);
	assert_true(isnan(asce7_internal_coefficient(EDITION_ANY, WIND_ENCLOSED)));
}

static void least_pressure(void **state)
{
	static const struct {
		double p, kept;
		bool governs;
	} r[] = {{-15.99, -16.0, true}, {-16.0, -16.0, false}, {-16.01, -16.01, false},
		 {15.99, 16.0, true},   {16.0, 16.0, false},   {16.01, 16.01, false}};

	(void)state;
	for (size_t i = 0; i < sizeof r / sizeof r[0]; i++) {
		const struct wind_velocity w = {
			.known = true, .qh = psf(fabs(r[i].p)), .Kd_of_p = 1.0};
		const double GCp = r[i].p < 0.0 ? -1.0 : 1.0;
		const struct wind_pressure kept =
			asce7_roof_pressure(ASCE7_16, &w, GCp, 0.0, true, NULL);

		assert_near(in_psf(kept.p), r[i].kept, 1e-12);
		assert_near(in_psf(kept.computed), r[i].p, 1e-12);
		assert_true(kept.minimum == r[i].governs);
		assert_false(asce7_roof_pressure(ASCE7_16, &w, GCp, 0.0, false, NULL).minimum);
	}
}

/* max(min(0.1 B, 0.4 h), 0.04 B, 3 ft) */
static void zone_width(void **state)
{
	static const struct {
		double B, h, a;
	} r[] = {
		{28, 18, 3.0},  /* a house: 2.8 is below 3 ft */
		{30, 18, 3.0},  /* 0.1 B at 3 ft */
		{31, 18, 3.1},  /* just above */
		{60, 18, 6.0},  /* 0.1 B below 0.4 h = 7.2 */
		{72, 18, 7.2},  /* at it */
		{80, 18, 7.2},  /* 0.4 h governs */
		{180, 18, 7.2}, /* 0.04 B at 7.2 */
		{200, 18, 8.0}, /* 0.04 B governs */
	};

	(void)state;
	for (size_t i = 0; i < sizeof r / sizeof r[0]; i++)
		assert_near(in_ft(asce7_zone_width(ft(r[i].B), ft(r[i].h), NULL)), r[i].a, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(coefficients), cmocka_unit_test(status_of_curves),
		cmocka_unit_test(net_pressure), cmocka_unit_test(least_pressure),
		cmocka_unit_test(zone_width),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
