/* SPDX-License-Identifier: MIT */
/* Snow, live load and weight tables, typed a second time, with sums. ASCE/SEI 7-10 Tables 7-2,
   7-3, 1.5-2, Fig. 7-2; 7-16 Tables 7.3-1, 7.3-2, 1.5-2, Fig. 7.4-1; 7-22 Tables 7.3-1 to 7.3-4,
   Fig. 7.4-1; IRC Table R301.6. */
#include "table/lookup_snow.h"

#include <math.h>
#include <string.h>

#include "near.h"

static const enum edition editions[] = {ASCE7_10, ASCE7_16, ASCE7_22};

static void exposure(void **state)
{
	static const struct {
		const char *terrain;
		double fully, partially, sheltered; /* 0: the table does not permit it */
	} rows[] = {
		{"B", 0.9, 1.0, 1.2},
		{"C", 0.9, 1.0, 1.1},
		{"D", 0.8, 0.9, 1.0},
		{"above-tree-line", 0.7, 0.8, 0},
		{"alaska-no-trees", 0.7, 0.8, 0},
	};
	double sum = 0;

	(void)state;
	for (size_t e = 0; e < 3; e++)
		for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
			const char *t = rows[i].terrain;

			assert_near(snow_exposure_row(editions[e], t, "fully-exposed")->Ce,
				    rows[i].fully, 0);
			assert_near(snow_exposure_row(editions[e], t, "partially-exposed")->Ce,
				    rows[i].partially, 0);
			if (rows[i].sheltered > 0)
				assert_near(snow_exposure_row(editions[e], t, "sheltered")->Ce,
					    rows[i].sheltered, 0);
			else
				assert_null(snow_exposure_row(editions[e], t, "sheltered"));
		}
	for (size_t i = 0; i < TABLE_SNOW_EXPOSURE_COUNT; i++)
		sum += table_snow_exposure[i].Ce;
	assert_int_equal(TABLE_SNOW_EXPOSURE_COUNT, 39);
	assert_near(sum, 3 * (4.0 + 4.5 + 3.3), 1e-13); /* fully, partially, sheltered */
	assert_null(snow_exposure_row(ASCE7_16, "A", "sheltered"));
	assert_null(snow_exposure_row(ASCE7_16, "B", "Sheltered"));
	assert_null(snow_exposure_row(EDITION_ANY, "B", "sheltered"));
	/* B sheltered is confirmed in 7-16; treeless Alaska was not found for 7-10. */
	assert_int_equal(snow_exposure_row(ASCE7_16, "C", "sheltered")->status, ONE_SOURCE);
	assert_int_equal(snow_exposure_row(ASCE7_10, "C", "sheltered")->status, ONE_SOURCE);
	assert_int_equal(snow_exposure_row(ASCE7_16, "B", "sheltered")->status, CONFIRMED);
	assert_int_equal(snow_exposure_row(ASCE7_22, "B", "sheltered")->status, ONE_SOURCE);
	assert_int_equal(snow_exposure_row(ASCE7_10, "alaska-no-trees", "fully-exposed")->status,
			 FROM_MEMORY);
}

static void thermal(void **state)
{
	static const struct {
		const char *condition;
		double Ct_10_16, Ct_22;
		enum confidence status_22;
	} rows[] = {
		{"heated", 1.0, 1.2, SAFE_SIDE},
		{"just-above-freezing", 1.1, 1.2, ONE_SOURCE},
		{"cold-ventilated", 1.1, 1.2, CONFIRMED},
		{"unheated", 1.2, 1.2, ONE_SOURCE},
		{"freezer", 1.3, 1.3, ONE_SOURCE},
		{"greenhouse", 0.85, 0.85, ONE_SOURCE},
	};
	double sum = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		assert_near(snow_thermal_row(ASCE7_10, rows[i].condition)->Ct, rows[i].Ct_10_16, 0);
		assert_near(snow_thermal_row(ASCE7_16, rows[i].condition)->Ct, rows[i].Ct_10_16, 0);
		assert_near(snow_thermal_row(ASCE7_22, rows[i].condition)->Ct, rows[i].Ct_22, 0);
		assert_int_equal(snow_thermal_row(ASCE7_16, rows[i].condition)->status, CONFIRMED);
		assert_int_equal(snow_thermal_row(ASCE7_22, rows[i].condition)->status,
				 rows[i].status_22);
	}
	for (size_t i = 0; i < TABLE_SNOW_THERMAL_COUNT; i++)
		sum += table_snow_thermal[i].Ct;
	assert_near(sum, 2 * 6.55 + 6.95, 1e-13);
	assert_null(snow_thermal_row(ASCE7_16, "warm"));
}

static void risk(void **state)
{
	static const struct {
		const char *category;
		double Is, pm_max;
	} rows[] = {{"I", 0.8, 25}, {"II", 1.0, 30}, {"III", 1.1, 35}, {"IV", 1.2, 40}};
	double Is = 0, pm_max = 0;

	(void)state;
	for (size_t i = 0; i < 4; i++) {
		for (size_t e = 0; e < 2; e++) {
			const struct snow_risk_row *r =
				snow_risk_row(editions[e], rows[i].category);

			assert_near(r->Is, rows[i].Is, 0);
			assert_true(isnan(r->pm_max_psf));
			assert_int_equal(r->status, CONFIRMED);
			Is += r->Is;
		}
		assert_true(isnan(snow_risk_row(ASCE7_22, rows[i].category)->Is));
		assert_near(snow_risk_row(ASCE7_22, rows[i].category)->pm_max_psf, rows[i].pm_max,
			    0);
		pm_max += snow_risk_row(ASCE7_22, rows[i].category)->pm_max_psf;
	}
	assert_near(Is, 2 * 4.1, 1e-14);
	assert_near(pm_max, 130.0, 0);
	assert_null(snow_risk_row(ASCE7_16, "V"));
}

/* Which curve: x0 of the slippery and the other line. 7-10, 7-16 Fig. 7-2 / 7.4-1: a to Ct 1.0, b
   at 1.1, c from 1.2; 7-22 a below 1.1, b from 1.1 (safe side at exactly 1.1), c from 1.2;
   its slippery a is the other line (safe side: two readings part). */
static void slope(void **state)
{
	static const struct {
		enum edition edition;
		double Ct;
		const char *curve;
		double slippery, other;
	} rows[] = {
		{ASCE7_16, 0.85, "a", 5, 30},    {ASCE7_16, 1.0, "a", 5, 30},
		{ASCE7_16, 1.01, "b", 10, 37.5}, {ASCE7_16, 1.1, "b", 10, 37.5},
		{ASCE7_16, 1.11, "c", 15, 45},   {ASCE7_16, 1.2, "c", 15, 45},
		{ASCE7_10, 1.3, "c", 15, 45},    {ASCE7_10, 1.0, "a", 5, 30},
		{ASCE7_10, 1.1, "b", 10, 37.5},  {ASCE7_22, 1.0, "a", 30, 30},
		{ASCE7_22, 1.09, "a", 30, 30},   {ASCE7_22, 1.1, "b", 10, 37.5},
		{ASCE7_22, 1.19, "b", 10, 37.5}, {ASCE7_22, 1.2, "c", 15, 45},
	};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct snow_slope_row *s = snow_slope_row(rows[i].edition, rows[i].Ct, true);
		const struct snow_slope_row *o = snow_slope_row(rows[i].edition, rows[i].Ct, false);

		assert_string_equal(s->curve, rows[i].curve);
		assert_string_equal(o->curve, rows[i].curve);
		assert_near(s->flat_until_deg, rows[i].slippery, 0);
		assert_near(o->flat_until_deg, rows[i].other, 0);
		assert_near(s->zero_at_deg, 70.0, 0);
		assert_near(o->zero_at_deg, 70.0, 0);
		/* Only the warm slippery line asks for insulation. */
		assert_true(isnan(o->R_ventilated) && isnan(o->R_unventilated));
		assert_int_equal(!isnan(s->R_ventilated), rows[i].curve[0] == 'a');
	}
	assert_near(snow_slope_row(ASCE7_16, 1.0, true)->R_unventilated, 30.0, 0);
	assert_near(snow_slope_row(ASCE7_16, 1.0, true)->R_ventilated, 20.0, 0);
	assert_null(snow_slope_row(ASCE7_16, 0, true));
	assert_null(snow_slope_row(ASCE7_16, (double)NAN, true));
	assert_null(snow_slope_row(EDITION_ANY, 1.0, true));
}

static void slippery(void **state)
{
	static const char *const yes[] = {"metal", "glass", "smooth-membrane", "smooth-bituminous",
					  "slate"};
	static const char *const no[] = {"granule-membrane",   "asphalt-shingle", "wood", "tile",
					 "stone-coated-metal", "obstructed"};

	(void)state;
	for (size_t i = 0; i < sizeof yes / sizeof *yes; i++)
		assert_int_equal(snow_slippery_row(yes[i])->slippery, SNOW_SLIPPERY_SLIPPERY_YES);
	for (size_t i = 0; i < sizeof no / sizeof *no; i++)
		assert_int_equal(snow_slippery_row(no[i])->slippery, SNOW_SLIPPERY_SLIPPERY_NO);
	assert_int_equal(TABLE_SNOW_SLIPPERY_COUNT, 11);
	assert_null(snow_slippery_row("ice"));
}

static void live(void **state)
{
	static const struct {
		double rise, At, Lr;
	} rows[] = {
		{0, 0, 20},      {3.99, 200, 20}, {3.99, 200.1, 16}, {3.99, 600, 16},
		{3.99, 601, 12}, {4, 200, 16},    {4, 600, 14},      {11.99, 601, 12},
		{12, 0, 12},     {24, 700, 12},   {12, 300, 12},     {12, 700, 12},
	};
	const struct roof_live_row *r = roof_live_row();

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
		assert_near(roof_live_irc_row(rows[i].rise, rows[i].At)->Lr_psf, rows[i].Lr, 0);
	assert_null(roof_live_irc_row(-0.1, 100));
	assert_null(roof_live_irc_row(4, -1));
	assert_null(roof_live_irc_row((double)NAN, 1));
	/* 1.2 - 0.001 At and 1.2 - 0.05 F meet their limits at the printed break points. */
	assert_near(r->Lo_psf, 20.0, 0);
	assert_near(r->Lr_min_psf, 12.0, 0);
	assert_near(1.2 - 0.001 * r->A1_ft2, 1.0, 1e-15);
	assert_near(1.2 - 0.001 * r->A2_ft2, r->R1_min, 1e-15);
	assert_near(1.2 - 0.05 * r->F1_in, 1.0, 1e-15);
	assert_near(1.2 - 0.05 * r->F2_in, r->R2_min, 1e-15);
	assert_near(r->worker_lb, 300.0, 0);
}

static void weights(void **state)
{
	static const struct {
		const char *kind;
		double low, high;
	} usual[] = {{"photovoltaic", 3, 4},
		     {"flat-plate", 3, 4},
		     {"evacuated-tube", 3, 5},
		     {"unglazed-polymer", 1, 2}};
	double limits = 0;

	(void)state;
	assert_near(collector_limit_row("photovoltaic")->limit_psf, 4.0, 0);
	assert_near(collector_limit_row("solar-thermal")->limit_psf, 5.0, 0);
	assert_true(isnan(collector_limit_row("flat-plate")->limit_psf));
	for (size_t i = 0; i < sizeof usual / sizeof *usual; i++) {
		assert_near(collector_limit_row(usual[i].kind)->usual_low_psf, usual[i].low, 0);
		assert_near(collector_limit_row(usual[i].kind)->usual_high_psf, usual[i].high, 0);
	}
	for (size_t i = 0; i < TABLE_CODE_TRIGGER_COUNT; i++)
		limits += isnan(table_code_trigger[i].limit) ? 0 : table_code_trigger[i].limit;
	/* four of 5 percent, one of 10, two of 24 in, one of 30 psf */
	assert_near(limits, 108.0, 0);
	assert_null(collector_limit_row("tank"));
	assert_near(fluid_row("water")->density_kg_m3, 1000.0, 0);
	assert_near(fluid_row("water")->factor, 1.0, 0);
	assert_near(fluid_row("glycol")->factor, 1.06, 0);
	assert_near(fluid_row("glycol")->density_kg_m3, 1.06 * fluid_row("water")->density_kg_m3,
		    1e-15);
	/* 60 percent glycol by mass at 0 C: 1056 kg/m3 (Properties of Secondary Working Fluids,
	   IIR, 2010) */
	assert_true(fluid_row("glycol")->density_kg_m3 >= 1056);
	assert_null(fluid_row("oil"));
	assert_near(code_trigger_row("gravity-5-percent")->limit, 5.0, 0);
	assert_near(code_trigger_row("lateral-10-percent")->limit, 10.0, 0);
	assert_null(code_trigger_row("gravity"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(exposure), cmocka_unit_test(thermal),  cmocka_unit_test(risk),
		cmocka_unit_test(slope),    cmocka_unit_test(slippery), cmocka_unit_test(live),
		cmocka_unit_test(weights),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
