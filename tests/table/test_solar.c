/* SPDX-License-Identifier: MIT */
/* (GCrn)nom of ASCE/SEI 7-16 Fig. 29.4-7, typed a second time; and its lines against the equations
   of a public copy (slopes per decade of An). */
#include "table/lookup_solar.h"

#include <math.h>

#include "near.h"
#include "step/step.h"

static const struct {
	double tilt;
	const char *zone;
	double at[3];
	double a1, b0, b1; /* 1 to 500: at[0] + a1 log An; 500 to 5000: b0 + b1 log An */
} chart[] = {
	{0, "1", {1.5, 0.35, 0.10}, -0.426088, 1.02474, -0.25},
	{0, "2", {2.0, 0.45, 0.15}, -0.574293, 1.25969, -0.3},
	{0, "3", {2.3, 0.50, 0.15}, -0.666921, 1.445, -0.3501},
	{15, "1", {2.0, 0.56, 0.30}, -0.533537, 1.2608, -0.2595},
	/* the copy begins this line at 2.88: -0.82624 there */
	{15, "2", {2.9, 0.65, 0.40}, -0.8337, 1.325, -0.25008},
	{15, "3", {3.5, 0.80, 0.50}, -1.000382, 1.61, -0.3},
};

#define CHART_ROWS (sizeof chart / sizeof chart[0])

static void double_entry(void **state)
{
	double sum = 0;

	(void)state;
	assert_int_equal(TABLE_WIND_SOLAR_GCRN_COUNT, 2 * CHART_ROWS);
	for (size_t i = 0; i < CHART_ROWS; i++) {
		const struct wind_solar_gcrn_row *r = wind_solar_gcrn_row(
			chart[i].tilt, chart[i].zone, WIND_SOLAR_GCRN_CURVE_RECALLED);

		assert_non_null(r);
		assert_near(r->An1, 1.0, 0);
		assert_near(r->An2, 500.0, 0);
		assert_near(r->An3, 5000.0, 0);
		assert_near(r->GCrn1, chart[i].at[0], 0);
		assert_near(r->GCrn2, chart[i].at[1], 0);
		assert_near(r->GCrn3, chart[i].at[2], 0);
		assert_near(r->tilt_to_deg, chart[i].tilt > 0 ? 35.0 : 5.0, 0);
		assert_int_equal(r->status, ONE_SOURCE);
		sum += r->GCrn1 + r->GCrn2 + r->GCrn3;
	}
	assert_near(sum, 19.11, 1e-12); /* 14.2 + 3.31 + 1.60 */
}

static void equations(void **state)
{
	(void)state;
	for (size_t i = 0; i < CHART_ROWS; i++) {
		const double *at = chart[i].at;

		/* to the digits that the equations carry */
		assert_within((at[1] - at[0]) / log10(500.0), chart[i].a1, 1e-4);
		assert_within(at[1] - at[2], -chart[i].b1, 1e-3);
		assert_within(chart[i].b0 + chart[i].b1 * log10(500.0), at[1], 1e-3);
	}
}

static void safe_side(void **state)
{
	static const double want[] = {1.5, 2.0, 2.5, 2.0, 2.9, 3.5};

	(void)state;
	for (size_t i = 0; i < CHART_ROWS; i++) {
		const struct wind_solar_gcrn_row *r = wind_solar_gcrn_row(
			chart[i].tilt, chart[i].zone, WIND_SOLAR_GCRN_CURVE_SAFE_SIDE);

		assert_non_null(r);
		assert_near(r->GCrn1, want[i], 0);
		assert_near(r->GCrn2, want[i], 0);
		assert_near(r->GCrn3, want[i], 0);
		assert_true(r->GCrn1 >= chart[i].at[0]);
		assert_int_equal(r->status, SAFE_SIDE);
	}
}

static void no_such_row(void **state)
{
	(void)state;
	assert_null(wind_solar_gcrn_row(5, "1", WIND_SOLAR_GCRN_CURVE_RECALLED));
	assert_null(wind_solar_gcrn_row(0, "1'", WIND_SOLAR_GCRN_CURVE_RECALLED));
	assert_null(wind_solar_gcrn_row(0, "", WIND_SOLAR_GCRN_CURVE_RECALLED));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(double_entry),
		cmocka_unit_test(equations),
		cmocka_unit_test(safe_side),
		cmocka_unit_test(no_such_row),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
