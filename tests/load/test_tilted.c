/* SPDX-License-Identifier: MIT */
/* Tilted collectors on low slopes (ASCE/SEI 7-16 29.4.3) and rooftop structures (29.4.1): each
   condition at, below and above its limit; the chart by hand; the forces. */
#include "near.h"

#include <string.h>

#include "load/asce7_rooftop.h"
#include "load/asce7_tilted.h"
#include "load/load_steps.h"
#include "load/us_units.h"

/* Meets every condition with something to spare: 4 collectors of 5 by 4 ft at 20 degrees. */
static struct tilted_array good(void)
{
	return (struct tilted_array){.roof = WIND_ROOF_FLAT,
				     .theta = deg(1.0),
				     .tilt = deg(20.0),
				     .Lp = ft(5.0),
				     .along = ft(4.0),
				     .h1 = ft(1.0),
				     .h2 = ft(3.0),
				     .hpt = 0.0,
				     .columns = 2,
				     .rows = 2,
				     .column_gap = inch(1.0),
				     .row_gap = ft(3.0),
				     .to_edge = ft(9.0)};
}

#define MEMBER(m) offsetof(struct tilted_array, m)

static void conditions(void **state)
{
	static const struct {
		size_t member;
		double value;
		unsigned failed;
	} row[] = {
		{MEMBER(theta), 6.99 * RAD_PER_DEG, 0},
		{MEMBER(theta), 7.0 * RAD_PER_DEG, 0},
		{MEMBER(theta), 7.01 * RAD_PER_DEG, TILTED_BIT(TILTED_SLOPE)},
		{MEMBER(tilt), 34.99 * RAD_PER_DEG, 0},
		{MEMBER(tilt), 35.0 * RAD_PER_DEG, 0},
		{MEMBER(tilt), 35.01 * RAD_PER_DEG, TILTED_BIT(TILTED_TILT)},
		{MEMBER(tilt), -1.0 * RAD_PER_DEG, TILTED_BIT(TILTED_TILT)},
		{MEMBER(Lp), 6.69 * M_PER_FT, 0},
		{MEMBER(Lp), 6.7 * M_PER_FT, 0},
		{MEMBER(Lp), 6.71 * M_PER_FT,
		 TILTED_BIT(TILTED_CHORD) | TILTED_BIT(TILTED_GAP_SPACING)},
		{MEMBER(along), 6.7 * M_PER_FT, 0},
		{MEMBER(along), 6.71 * M_PER_FT, TILTED_BIT(TILTED_GAP_SPACING)},
		{MEMBER(h1), 1.99 * M_PER_FT, 0},
		{MEMBER(h1), 2.0 * M_PER_FT, 0},
		{MEMBER(h1), 2.01 * M_PER_FT, TILTED_BIT(TILTED_LOW_EDGE)},
		{MEMBER(h2), 3.99 * M_PER_FT, 0},
		{MEMBER(h2), 4.0 * M_PER_FT, 0},
		{MEMBER(h2), 4.01 * M_PER_FT, TILTED_BIT(TILTED_HIGH_EDGE)},
		{MEMBER(column_gap), 0.24 * M_PER_IN, TILTED_BIT(TILTED_GAP)},
		{MEMBER(column_gap), 0.25 * M_PER_IN, 0},
		{MEMBER(row_gap), 0.24 * M_PER_IN, TILTED_BIT(TILTED_GAP)},
		{MEMBER(row_gap), 0.26 * M_PER_IN, 0},
		/* h2 3 ft: 6 ft rule over 4 ft */
		{MEMBER(to_edge), 5.99 * M_PER_FT, TILTED_BIT(TILTED_EDGE)},
		{MEMBER(to_edge), 6.0 * M_PER_FT, 0},
		{MEMBER(to_edge), 6.01 * M_PER_FT, 0},
		{MEMBER(h2), NAN, TILTED_BIT(TILTED_HIGH_EDGE) | TILTED_BIT(TILTED_EDGE)},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct tilted_array a = good();

		*(double *)((char *)&a + row[i].member) = row[i].value;
		assert_int_equal(solar_tilted_failed(&a), row[i].failed);
	}
}

/* The parapet takes from the height, never below 4 ft. */
static void parapet_and_form(void **state)
{
	struct tilted_array a = good();

	(void)state;
	a.hpt = ft(1.5);
	a.to_edge = ft(4.0);
	assert_int_equal(solar_tilted_failed(&a), 0);
	a.to_edge = ft(3.99);
	assert_int_equal(solar_tilted_failed(&a), TILTED_BIT(TILTED_EDGE));
	a = good();
	a.roof = WIND_ROOF_MONOSLOPE;
	assert_int_equal(solar_tilted_failed(&a), TILTED_BIT(TILTED_FORM));
	a.roof = WIND_ROOF_HIP;
	assert_int_equal(solar_tilted_failed(&a), 0);
	/* one collector has no gaps */
	a.columns = a.rows = 1;
	a.column_gap = a.row_gap = 0.0;
	assert_int_equal(solar_tilted_failed(&a), 0);
	for (int c = 0; c < TILTED_CONDITION_COUNT; c++) {
		assert_true(strlen(tilted_condition_text((enum tilted_condition)c)) > 20);
		assert_non_null(
			strstr(tilted_condition_clause((enum tilted_condition)c), "29.4.3"));
		assert_true(tilted_condition_confidence((enum tilted_condition)c) <
			    CONFIDENCE_COUNT);
	}
}

/* (GCrn)nom by hand. Lb 15 ft, so An = A 1000/225; areas are chosen for round An. */
static double nom(double tilt_deg, const char *zone, double An, enum wind_curve curve)
{
	const struct wind_coefficient c =
		solar_tilted_nominal(deg(tilt_deg), zone, ft2(An * 0.225), ft(15.0), curve, NULL);

	assert_true(c.known && c.bounded);
	return c.GCp;
}

static void chart(void **state)
{
	static const struct {
		const char *what, *zone;
		double tilt, An, want;
	} row[] = {
		{"flat end", "1", 0, 0.5, 1.5},
		{"at An1", "2", 0, 1, 2.0},
		/* 2.0 - 1.55 log 10/log 500 = 2.0 - 1.55/2.69897 */
		{"An 10", "2", 3, 10, 1.42570},
		{"at the bend", "3", 5, 500, 0.50},
		/* 0.50 - 0.35 log10(2000/500) */
		{"second line", "3", 5, 2000, 0.28928},
		{"far end", "3", 5, 9000, 0.15},
		{"steep, zone 3", "3", 15, 1, 3.5},
		{"steep, bend", "1", 35, 500, 0.56},
		{"steep, far", "2", 35, 5000, 0.40},
		/* W2: 2.9 - 2.25 x 1.75162/2.69897 = 1.43976 */
		{"An 56.4", "2", 20, 56.4444, 1.43976},
		/* half way from 2.0 to 2.9, a tenth, nine tenths */
		{"10 degrees", "2", 10, 1, 2.45},
		{"6 degrees", "2", 6, 1, 2.09},
		{"14 degrees", "2", 14, 1, 2.81},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row(row[i].what, nom(row[i].tilt, row[i].zone, row[i].An, CURVE_RECALLED),
			   row[i].want, 1e-5);
	/* no reduction with area, no interpolation, the largest reading of zone 3 */
	assert_near(nom(10, "2", 5000, CURVE_SAFE_SIDE), 2.9, 1e-12);
	assert_near(nom(5, "3", 5000, CURVE_SAFE_SIDE), 2.5, 1e-12);
}

/* More tilt never lowers it, more area never raises it, the safe side lies above. */
static void chart_laws(void **state)
{
	static const char *const zone[] = {"1", "2", "3"};

	(void)state;
	for (int z = 0; z < 3; z++)
		for (int tilt = 0; tilt <= 35; tilt++)
			for (double An = 0.5; An < 20000.0; An *= 1.7) {
				const double here = nom(tilt, zone[z], An, CURVE_RECALLED);

				assert_true(here <= nom(tilt, zone[z], An, CURVE_SAFE_SIDE));
				assert_true(here >= nom(tilt, zone[z], 1.7 * An, CURVE_RECALLED));
				if (tilt < 35)
					assert_true(here <=
						    nom(tilt + 1, zone[z], An, CURVE_RECALLED) +
							    1e-12);
				if (z < 2)
					assert_true(here <=
						    nom(tilt, zone[z + 1], An, CURVE_RECALLED));
			}
}

static void not_covered(void **state)
{
	(void)state;
	assert_false(solar_tilted_nominal(deg(35.1), "1", 1.0, 5.0, CURVE_RECALLED, NULL).known);
	assert_true(solar_tilted_nominal(deg(35.0), "1", 1.0, 5.0, CURVE_RECALLED, NULL).known);
	assert_false(solar_tilted_nominal(deg(-1.0), "1", 1.0, 5.0, CURVE_RECALLED, NULL).known);
	assert_false(solar_tilted_nominal(deg(5.0), "2e", 1.0, 5.0, CURVE_RECALLED, NULL).known);
	assert_false(solar_tilted_nominal(deg(5.0), "1", NAN, 5.0, CURVE_RECALLED, NULL).known);
	assert_false(solar_tilted_nominal(NAN, "1", 1.0, 5.0, CURVE_RECALLED, NULL).known);
}

static void factors(void **state)
{
	/* h 20 ft, WL 80, Ws 40: 0.4 sqrt(1600) = 16 */
	struct tilted_factors f =
		solar_tilted_factors(ft(2.0), ft(20.0), ft(5.0), ft(80.0), ft(40.0), NULL);

	(void)state;
	assert_near(in_ft(f.Lb), 16.0, 1e-12);
	assert_near(f.gammap, 1.0, 1e-12); /* 0.9 + 2/20 */
	assert_near(f.gammac, 0.9, 1e-12); /* 0.6 + 0.3 */
	f = solar_tilted_factors(ft(8.0), ft(20.0), ft(3.0), ft(80.0), ft(12.0), NULL);
	assert_near(in_ft(f.Lb), 12.0, 1e-12);
	assert_near(f.gammap, 1.2, 1e-12); /* 1.3 is cut */
	assert_near(f.gammac, 0.8, 1e-12); /* 0.78 is raised */
	/* the floor of 15 ft in An: 9 ft2 x 1000/225 = 40, at 12 ft as at 15 */
	assert_near(STEP(NULL, step_solar_An, ft2(9.0), ft(12.0)), 40.0, 1e-12);
	assert_near(STEP(NULL, step_solar_An, ft2(9.0), ft(15.0)), 40.0, 1e-12);
	assert_near(STEP(NULL, step_solar_An, ft2(9.0), ft(30.0)), 10.0, 1e-12);
}

static void pressures(void **state)
{
	const struct wind_velocity w = {.known = true, .qh = psf(20.0), .Kd_of_p = 0.85};
	const struct tilted_factors f = {.gammap = 0.9, .gammac = 0.9, .Lb = 5.0};

	(void)state;
	/* 20 x 0.81 x 2 = 32.4; exposed 48.6; 7-22 x 0.85 = 27.54 */
	assert_near(in_psf(solar_tilted_pressure(ASCE7_16, &w, &f, 2.0, false, true, NULL).p), 32.4,
		    1e-12);
	assert_near(in_psf(solar_tilted_pressure(ASCE7_16, &w, &f, 2.0, true, true, NULL).p), 48.6,
		    1e-12);
	assert_near(in_psf(solar_tilted_pressure(ASCE7_22, &w, &f, 2.0, false, true, NULL).p),
		    27.54, 1e-12);
	/* 16 psf at least */
	assert_near(in_psf(solar_tilted_pressure(ASCE7_16, &w, &f, 0.5, false, true, NULL).p), 16.0,
		    1e-12);
	assert_near(in_psf(solar_tilted_pressure(ASCE7_16, &w, &f, 0.5, false, false, NULL).p), 8.1,
		    1e-12);
}

/* B 40 ft, h 20 ft: B h = 800 ft2; B L = 40 x 30 = 1200 ft2. */
static void rooftop(void **state)
{
	static const struct {
		double Af, Ar, lateral, uplift;
	} row[] = {
		{79, 119, 1.9, 1.5},   {80, 120, 1.9, 1.5},   {440, 660, 1.45, 1.25},
		{800, 1200, 1.0, 1.0}, {900, 1300, 1.0, 1.0},
	};
	const struct wind_velocity w = {.known = true, .qh = psf(20.0), .Kd_of_p = 1.0};
	const struct wind_velocity w22 = {.known = true, .qh = psf(20.0), .Kd_of_p = 0.85};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct rooftop_structure s = {ft2(row[i].Af), ft2(row[i].Ar), ft(40.0),
						    ft(30.0), ft(20.0)};
		const struct rooftop_force f = asce7_rooftop_force(ASCE7_16, &w, &s, NULL);
		const struct rooftop_force g = asce7_rooftop_force(ASCE7_22, &w22, &s, NULL);

		assert_near(f.GCr_lateral, row[i].lateral, 1e-12);
		assert_near(f.GCr_uplift, row[i].uplift, 1e-12);
		assert_near(unit_from_si(f.Fh, UNIT_LB), 20.0 * row[i].lateral * row[i].Af, 1e-12);
		assert_near(unit_from_si(f.Fv, UNIT_LB), 20.0 * row[i].uplift * row[i].Ar, 1e-12);
		assert_near(g.Fh, 0.85 * f.Fh, 1e-12);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(conditions),  cmocka_unit_test(parapet_and_form),
		cmocka_unit_test(chart),       cmocka_unit_test(chart_laws),
		cmocka_unit_test(not_covered), cmocka_unit_test(factors),
		cmocka_unit_test(pressures),   cmocka_unit_test(rooftop),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
