/* SPDX-License-Identifier: MIT */
/* Wind tables, typed a second time from the printed values, with sums. ASCE/SEI 7-10 Table 26.9-1,
   7-16 and 7-22 Table 26.11-1 (exposure), 26.6-1 (Kd), 26.11-1 and 26.13-1 (GCpi), Fig. 26.8-1
   (Kzt). */
#include "table/lookup_wind.h"

#include <math.h>

#include "near.h"

static void exposure_constants(void **state)
{
	static const struct {
		enum edition edition;
		char exposure;
		double alpha, zg_ft, zg_m, c, cc_z_min_ft;
		enum confidence status;
	} rows[] = {
		{ASCE7_10, 'B', 7, 1200, 365.76, 2.01, 30, CONFIRMED},
		{ASCE7_10, 'C', 9.5, 900, 274.32, 2.01, 15, CONFIRMED},
		{ASCE7_10, 'D', 11.5, 700, 213.36, 2.01, 15, CONFIRMED},
		{ASCE7_16, 'B', 7, 1200, 365.76, 2.01, 15, CONFIRMED},
		{ASCE7_16, 'C', 9.5, 900, 274.32, 2.01, 15, CONFIRMED},
		{ASCE7_16, 'D', 11.5, 700, 213.36, 2.01, 15, ONE_SOURCE},
		{ASCE7_22, 'B', 7.5, 3280, 1000, 2.41, 15, ONE_SOURCE},
		{ASCE7_22, 'C', 9.8, 2460, 750, 2.41, 15, ONE_SOURCE},
		{ASCE7_22, 'D', 11.5, 1935, 590, 2.41, 15, ONE_SOURCE},
	};
	double alpha = 0, zg = 0;

	(void)state;
	assert_int_equal(TABLE_WIND_EXPOSURE_COUNT, 9);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct wind_exposure_row *r =
			wind_exposure_row(rows[i].edition, rows[i].exposure);

		assert_non_null(r);
		assert_near(r->alpha, rows[i].alpha, 0);
		assert_near(r->zg_ft, rows[i].zg_ft, 0);
		assert_near(r->zg_m, rows[i].zg_m, 0);
		assert_near(r->c, rows[i].c, 0);
		assert_near(r->z_min_ft, 15.0, 0);
		assert_near(r->z_min_m, 4.6, 0);
		assert_near(r->cc_z_min_ft, rows[i].cc_z_min_ft, 0);
		assert_int_equal(r->status, rows[i].status);
		/* 7-10 and 7-16 print exact metres, 7-22 rounds the feet to five. */
		assert_within(r->zg_ft * 0.3048, r->zg_m, r->edition == ASCE7_22 ? 1.0 : 1e-9);
	}
	for (size_t i = 0; i < TABLE_WIND_EXPOSURE_COUNT; i++) {
		alpha += table_wind_exposure[i].alpha;
		zg += table_wind_exposure[i].zg_ft;
	}
	assert_near(alpha, 84.8, 1e-12); /* 28 + 28 + 28.8 */
	assert_near(zg, 13275.0, 0);     /* 2800 + 2800 + 7675 */
	assert_null(wind_exposure_row(ASCE7_16, 'A'));
	assert_null(wind_exposure_row(ASCE7_16, 'b'));
	assert_null(wind_exposure_row(ASCE7_16, '\0'));
	assert_null(wind_exposure_row(EDITION_ANY, 'B'));
}

/* The definition of the basic wind speed, 33 ft in exposure C, asks for Kz near 1: 1.002 by the
   constants of 7-10 and 7-16, 1.000 by those of 7-22. And Kz 0.70 at 30 ft in B (7-10 Table 30.3-1
   note 1). */
static void exposure_at_33_ft(void **state)
{
	(void)state;
	for (int e = ASCE7_10; e <= ASCE7_22; e++) {
		const struct wind_exposure_row *r = wind_exposure_row((enum edition)e, 'C');
		const double Kz = r->c * pow(33.0 / r->zg_ft, 2.0 / r->alpha);

		assert_within(Kz, e == ASCE7_22 ? 1.000 : 1.002, 5e-4);
	}
	assert_within(2.01 * pow(30.0 / 1200.0, 2.0 / 7.0), 0.70, 5e-3);
}

static void directionality(void **state)
{
	(void)state;
	for (int e = ASCE7_10; e <= ASCE7_22; e++) {
		const struct wind_directionality_row *r = wind_directionality_row((enum edition)e);

		assert_non_null(r);
		assert_near(r->Kd, 0.85, 0);
		assert_int_equal(r->place, e == ASCE7_22
						   ? WIND_DIRECTIONALITY_PLACE_PRESSURE
						   : WIND_DIRECTIONALITY_PLACE_VELOCITY_PRESSURE);
		assert_int_equal(r->status, e == ASCE7_22 ? ONE_SOURCE : CONFIRMED);
	}
	assert_null(wind_directionality_row(EDITION_ANY));
}

static void internal_pressure(void **state)
{
	(void)state;
	for (int e = ASCE7_10; e <= ASCE7_22; e++) {
		assert_near(wind_internal_row((enum edition)e, "enclosed")->GCpi, 0.18, 0);
		assert_near(wind_internal_row((enum edition)e, "partially-enclosed")->GCpi, 0.55,
			    0);
		assert_near(wind_internal_row((enum edition)e, "open")->GCpi, 0.0, 0);
	}
	assert_int_equal(wind_internal_row(ASCE7_10, "enclosed")->status, CONFIRMED);
	assert_int_equal(wind_internal_row(ASCE7_16, "enclosed")->status, ONE_SOURCE);
	assert_null(wind_internal_row(ASCE7_16, "Enclosed"));
	assert_null(wind_internal_row(ASCE7_16, ""));
}

static void topography(void **state)
{
	static const struct {
		const char *shape;
		double B, C, D, gamma, up, down;
	} rows[] = {
		{"ridge", 1.30, 1.45, 1.55, 3.0, 1.5, 1.5},
		{"escarpment", 0.75, 0.85, 0.95, 2.5, 1.5, 4.0},
		{"hill", 0.95, 1.05, 1.15, 4.0, 1.5, 1.5},
	};

	(void)state;
	assert_int_equal(TABLE_WIND_TOPOGRAPHY_COUNT, 9);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const double K1[] = {rows[i].B, rows[i].C, rows[i].D};

		for (int x = 0; x < 3; x++) {
			const struct wind_topography_row *r =
				wind_topography_row(rows[i].shape, (char)('B' + x));

			assert_non_null(r);
			assert_near(r->K1_over_HLh, K1[x], 0);
			assert_near(r->gamma, rows[i].gamma, 0);
			assert_near(r->mu_upwind, rows[i].up, 0);
			assert_near(r->mu_downwind, rows[i].down, 0);
			assert_int_equal(r->status, ONE_SOURCE);
		}
	}
	assert_null(wind_topography_row("valley", 'C'));
	assert_null(wind_topography_row("ridge", 'A'));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(exposure_constants), cmocka_unit_test(exposure_at_33_ft),
		cmocka_unit_test(directionality),     cmocka_unit_test(internal_pressure),
		cmocka_unit_test(topography),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
