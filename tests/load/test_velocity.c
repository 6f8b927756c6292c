/* SPDX-License-Identifier: MIT */
/* Velocity pressure and topography: every limit of the clauses, and the traps of the editions. */
#include "near.h"

#include "load/asce7_wind.h"
#include "load/us_units.h"

static struct wind_velocity at(enum edition edition, char exposure, double V_mph, double h_ft)
{
	const struct wind_site site = {
		.V = mph(V_mph), .exposure = exposure, .Kzt = 1.0, .elevation = NAN, .h = ft(h_ft)};

	return asce7_wind_velocity(edition, &site, NULL);
}

/* What a coefficient of 1 gives, psf: Kd must be in it once, wherever the edition puts it. */
static double unit_pressure(enum edition edition, char exposure, double V_mph, double h_ft)
{
	const struct wind_velocity w = at(edition, exposure, V_mph, h_ft);

	assert_true(w.known);
	return in_psf(w.qh * w.Kd_of_p);
}

/* Houses worked by hand; the last digit is rounded, exposure and height as given. */
static void houses_by_hand(void **state)
{
	static const struct {
		const char *house;
		enum edition edition;
		char exposure;
		double V, h, q, tol;
	} row[] = {
		{"7-16, 115 mph, B, 18 ft", ASCE7_16, 'B', 115.0, 18.0, 17.4, 0.05},
		{"7-10, 115 mph, C, 22 ft", ASCE7_10, 'C', 115.0, 22.0, 26.5, 0.05},
		{"7-16, 160 mph, D, 15 ft", ASCE7_16, 'D', 160.0, 15.0, 57.4, 0.05},
		{"7-16, 160 mph, C, 15 ft", ASCE7_16, 'C', 160.0, 15.0, 47.3, 0.05},
		{"7-22, 120 mph, C, 16 ft", ASCE7_22, 'C', 120.0, 16.0, 27.0, 0.05},
		{"7-16, 120 mph, C, 14 ft", ASCE7_16, 'C', 120.0, 14.0, 26.6, 0.05},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row(row[i].house,
			   unit_pressure(row[i].edition, row[i].exposure, row[i].V, row[i].h),
			   row[i].q, row[i].tol);
	assert_within(in_psf(at(ASCE7_22, 'C', 120.0, 16.0).qh), 31.8, 0.05);
	assert_within(at(ASCE7_16, 'B', 115.0, 18.0).Kz, 0.605, 0.0005);
}

/* Trap: 7-22 with Kd left in q and multiplied again loses 15 percent; without it gains 18. */
static void directionality_counts_once(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};

	(void)state;
	for (size_t i = 0; i < 3; i++) {
		const struct wind_velocity w = at(edition[i], 'C', 100.0, 30.0);

		assert_near(in_psf(w.qh) * w.Kd_of_p, 0.00256 * w.Kz * 0.85 * 100.0 * 100.0, 1e-12);
	}
	assert_near(at(ASCE7_16, 'C', 100.0, 30.0).Kd_of_p, 1.0, 1e-15);
	assert_near(at(ASCE7_22, 'C', 100.0, 30.0).Kd_of_p, 0.85, 1e-15);
}

/* Kz is constant below 15 ft; in exposure B of 7-10, for components, below 30 ft: Kh = 0.70. Trap:
   that floor is no part of 7-16 and 7-22 here. */
static void least_heights(void **state)
{
	const double floor_B = 2.01 * pow(30.0 / 1200.0, 2.0 / 7.0);

	(void)state;
	assert_near(at(ASCE7_10, 'B', 100.0, 15.0).Kz, floor_B, 1e-12);
	assert_near(at(ASCE7_10, 'B', 100.0, 29.9).Kz, floor_B, 1e-12);
	assert_near(at(ASCE7_10, 'B', 100.0, 30.0).Kz, floor_B, 1e-12);
	assert_true(at(ASCE7_10, 'B', 100.0, 30.1).Kz > floor_B);
	assert_within(floor_B, 0.70, 0.005);
	assert_near(at(ASCE7_16, 'B', 100.0, 15.0).Kz, 2.01 * pow(15.0 / 1200.0, 2.0 / 7.0), 1e-12);
	assert_true(at(ASCE7_16, 'B', 100.0, 15.0).Kz < 0.58);
	assert_true(at(ASCE7_22, 'B', 100.0, 15.0).Kz < 0.58);
	assert_near(at(ASCE7_16, 'C', 100.0, 14.9).Kz, at(ASCE7_16, 'C', 100.0, 15.0).Kz, 1e-15);
	assert_near(at(ASCE7_16, 'C', 100.0, 5.0).Kz, at(ASCE7_16, 'C', 100.0, 15.0).Kz, 1e-15);
	assert_true(at(ASCE7_16, 'C', 100.0, 15.1).Kz > at(ASCE7_16, 'C', 100.0, 15.0).Kz);
}

/* exp(-0.0000362 x 5280) = 0.8260; a site whose elevation is not told takes 1. 7-10 has no such
   factor. */
static void elevation(void **state)
{
	struct wind_site site = {.V = mph(115.0), .exposure = 'C', .Kzt = 1.0, .h = ft(15.0)};

	(void)state;
	site.elevation = ft(5280.0);
	assert_within(asce7_wind_velocity(ASCE7_16, &site, NULL).Ke, 0.8260, 0.00005);
	assert_within(asce7_wind_velocity(ASCE7_22, &site, NULL).Ke, 0.8260, 0.00005);
	assert_near(asce7_wind_velocity(ASCE7_10, &site, NULL).Ke, 1.0, 1e-15);
	site.elevation = 0.0;
	assert_near(asce7_wind_velocity(ASCE7_16, &site, NULL).Ke, 1.0, 1e-15);
	site.elevation = ft(-280.0);
	assert_true(asce7_wind_velocity(ASCE7_16, &site, NULL).Ke > 1.0);
	site.elevation = NAN;
	assert_near(asce7_wind_velocity(ASCE7_16, &site, NULL).Ke, 1.0, 1e-15);
}

/* Every factor multiplies: Kzt 1.5 and, from 7-16 on, Ke of a mile. */
static void every_factor_counts(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};
	const struct wind_site plain = {
		.V = mph(100.0), .exposure = 'C', .Kzt = 1.0, .elevation = NAN, .h = ft(30.0)};
	const double Ke = exp(-0.0000362 * 5280.0);

	(void)state;
	for (size_t i = 0; i < 3; i++) {
		struct wind_site site = plain;
		const double q = asce7_wind_velocity(edition[i], &plain, NULL).qh;

		site.Kzt = 1.5;
		site.elevation = ft(5280.0);
		assert_near(asce7_wind_velocity(edition[i], &site, NULL).qh,
			    q * 1.5 * (edition[i] == ASCE7_10 ? 1.0 : Ke), 1e-12);
		site = plain;
		site.V = mph(200.0);
		assert_near(asce7_wind_velocity(edition[i], &site, NULL).qh, 4.0 * q, 1e-12);
	}
}

static void unknown_exposure(void **state)
{
	(void)state;
	assert_false(at(ASCE7_16, 'A', 115.0, 20.0).known);
	assert_false(at(ASCE7_16, 'b', 115.0, 20.0).known);
	assert_false(at(EDITION_ANY, 'B', 115.0, 20.0).known);
}

/* By hand. Ridge H 100 ft, Lh 200 ft, exposure C: K1 = 1.45 x 0.5 = 0.725; at the crest on the
   ground (1.725)^2 = 2.9756. */
static void topography(void **state)
{
	struct wind_hill hill = {
		.shape = HILL_RIDGE, .exposure = 'C', .H = ft(100.0), .Lh = ft(200.0)};

	(void)state;
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.725 * 1.725, 1e-12);
	/* 150 ft downwind: K2 = 1 - 150/(1.5 x 200) = 0.5. Trap: Lh stands under the line */
	hill.x = ft(150.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.3625 * 1.3625, 1e-12);
	hill.x = ft(-150.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.3625 * 1.3625, 1e-12);
	hill.x = ft(300.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.0, 1e-12);
	hill.x = ft(400.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.0, 1e-12);
	/* 20 ft up: K3 = exp(-3 x 20/200) */
	hill.x = 0.0;
	hill.z = ft(20.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL),
		    pow(1.0 + 0.725 * exp(-0.3), 2.0), 1e-12);
	/* steeper than 0.5: as if 0.5, with 2 H for Lh */
	hill.Lh = ft(100.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL),
		    pow(1.0 + 0.725 * exp(-0.3), 2.0), 1e-12);
	/* an escarpment reaches farther downwind than upwind: mu 4 and 1.5 */
	hill = (struct wind_hill){.shape = HILL_ESCARPMENT,
				  .exposure = 'C',
				  .H = ft(100.0),
				  .Lh = ft(200.0),
				  .x = ft(400.0)};
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), pow(1.0 + 0.425 * 0.5, 2.0),
		    1e-12);
	hill.x = ft(-400.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.0, 1e-12);
	/* steep, 150 ft off: 1 - 150/(1.5 x 2 x 100) = 0.5 of 0.725; gentle (H/Lh 0.25): 0.5 of
	 * 0.3625 */
	hill = (struct wind_hill){.shape = HILL_RIDGE,
				  .exposure = 'C',
				  .H = ft(100.0),
				  .Lh = ft(100.0),
				  .x = ft(150.0)};
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), pow(1.0 + 0.725 * 0.5, 2.0),
		    1e-12);
	hill.H = ft(50.0);
	hill.Lh = ft(200.0);
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), pow(1.0 + 0.3625 * 0.5, 2.0),
		    1e-12);
	/* a hill in D, H/Lh 0.5: K1 = 1.15 x 0.5; a ridge in B: 1.30 x 0.5 (both from memory) */
	hill = (struct wind_hill){
		.shape = HILL_AXISYMMETRIC, .exposure = 'D', .H = ft(100.0), .Lh = ft(200.0)};
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.575 * 1.575, 1e-12);
	hill.shape = HILL_RIDGE;
	hill.exposure = 'B';
	assert_near(asce7_topographic_factor(ASCE7_16, &hill, NULL), 1.65 * 1.65, 1e-12);
	hill.Lh = 0.0;
	assert_true(isnan(asce7_topographic_factor(ASCE7_16, &hill, NULL)));
	hill.Lh = ft(200.0);
	hill.exposure = 'X';
	assert_true(isnan(asce7_topographic_factor(ASCE7_16, &hill, NULL)));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(houses_by_hand),      cmocka_unit_test(directionality_counts_once),
		cmocka_unit_test(least_heights),       cmocka_unit_test(elevation),
		cmocka_unit_test(every_factor_counts), cmocka_unit_test(unknown_exposure),
		cmocka_unit_test(topography),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
