/* SPDX-License-Identifier: MIT */
/* Limits, overhang coefficients and the ground snow of Alaska, typed a second time, with sums. */
#include "table/lookup_limit.h"
#include "table/lookup_snow.h"
#include "table/lookup_wind.h"

#include <math.h>
#include <string.h>

#include "near.h"

static void order(void **state)
{
	static const char *const key[] = {
#define L(id, key) key,
		LIMITS(L)
#undef L
	};

	(void)state;
	assert_int_equal(TABLE_LIMIT_COUNT, LIMIT_COUNT);
	for (int i = 0; i < LIMIT_COUNT; i++)
		assert_string_equal(table_limit[i].key, key[i]);
}

/* In SI, by hand: 24 in is 0.6096 m; 3:12 is atan 0.25. */
static void values(void **state)
{
	static const struct {
		enum limit_id id;
		double si;
	} row[] = {
		{LIMIT_ROOM_TO_STAND, 24 * 0.0254},
		{LIMIT_BOW_BARE, 180},
		{LIMIT_BOW_FLEXIBLE, 240},
		{LIMIT_BOW_PLASTER, 360},
		{LIMIT_RIDGE_BOARD_RISE, 3 * 0.0254},
		{LIMIT_RAFTERS_SHARE_SPACING, 0.6096},
		{LIMIT_RAFTERS_SHARE_COUNT, 3},
		{LIMIT_WOOD_HOT, (150 + 459.67) * 5 / 9},
		{LIMIT_TAIL_DEPTH, 0.0889},
		{LIMIT_TAIL_LENGTH, 0.6096},
		{LIMIT_FREE_EDGE_RATIO, 2},
		{LIMIT_HELD_ENDS_RATIO, 4},
		{LIMIT_LOW_RISE_HEIGHT, 18.288},
		{LIMIT_STEEPEST_FIGURE, 45 * 3.14159265358979323846 / 180},
		{LIMIT_LOW_SLOPE_FIGURE, 7 * 3.14159265358979323846 / 180},
		{LIMIT_EAVE_HEIGHT_SLOPE, 10 * 3.14159265358979323846 / 180},
		{LIMIT_PARALLEL_TILT, 2 * 3.14159265358979323846 / 180},
		{LIMIT_FLUSH_TOP, 0.254},
		{LIMIT_GAP_LEAST, 0.00635},
		{LIMIT_GAP_APART, 6.7 * 0.3048},
		{LIMIT_TILTED_CHORD, 6.7 * 0.3048},
		{LIMIT_TILTED_TILT, 35 * 3.14159265358979323846 / 180},
		{LIMIT_TILTED_LOW_EDGE, 0.6096},
		{LIMIT_TILTED_HIGH_EDGE, 1.2192},
		{LIMIT_PARTIAL_SLOPE_LEAST, 2.38 * 3.14159265358979323846 / 180},
		{LIMIT_PARTIAL_SLOPE_MOST, 30.2 * 3.14159265358979323846 / 180},
		{LIMIT_UNBALANCED_SLOPE_LEAST, 2.38 * 3.14159265358979323846 / 180},
		{LIMIT_UNBALANCED_RISE_MOST, 7 * 0.0254},
		{LIMIT_UNBALANCED_SIMPLE_W, 6.096},
		{LIMIT_LOW_SLOPE_SNOW, 15 * 3.14159265358979323846 / 180},
		{LIMIT_DRIFT_SIDE, 4.572},
		{LIMIT_DRIFT_RAISED, 0.6096},
		{LIMIT_DRIFT_LOW, 0.2},
		{LIMIT_SLIDE_WIDTH, 4.572},
		{LIMIT_SLIDE_RISE_SLIPPERY, 0.25 * 0.0254},
		{LIMIT_SLIDE_RISE_OTHER, 2 * 0.0254},
		{LIMIT_SLIDE_OFF, 0.6096},
		{LIMIT_ICE_R_VENTILATED, 20},
		{LIMIT_ICE_R_UNVENTILATED, 30},
	};

	(void)state;
	const int rows = sizeof row / sizeof *row;

	assert_int_equal(rows, LIMIT_COUNT);
	for (int i = 0; i < rows; i++) {
		assert_int_equal(row[i].id, i);
		assert_near(limit_of(row[i].id), row[i].si, 1e-15);
	}
	assert_near(limit_slope(LIMIT_RIDGE_BOARD_RISE), atan(0.25), 1e-15);
	/* the rule of live load under collectors stands among the rules of the codes as well */
	assert_near(code_trigger_row("panel-live-load")->limit, limit_printed(LIMIT_ROOM_TO_STAND),
		    0);
}

/* IBC 2021 Table 1608.2. */
static void alaska(void **state)
{
	static const struct {
		const char *place;
		double pg;
	} row[] = {{"Adak", 30},       {"Anchorage", 50},     {"Angoon", 70},
		   {"Barrow", 25},     {"Barter Island", 35}, {"Bethel", 40},
		   {"Big Delta", 50},  {"Cold Bay", 25},      {"Cordova", 100},
		   {"Fairbanks", 60},  {"Fort Yukon", 60},    {"Galena", 60},
		   {"Gulkana", 70},    {"Homer", 40},         {"Juneau", 60},
		   {"Kenai", 70},      {"Kodiak", 30},        {"Kotzebue", 60},
		   {"McGrath", 70},    {"Nenana", 80},        {"Nome", 70},
		   {"Palmer", 50},     {"Petersburg", 150},   {"St. Paul Islands", 40},
		   {"Seward", 50},     {"Shemya", 25},        {"Sitka", 50},
		   {"Talkeetna", 120}, {"Unalakleet", 50},    {"Valdez", 160},
		   {"Whittier", 300},  {"Wrangell", 60},      {"Yakutat", 150}};
	double sum = 0;

	(void)state;
	assert_int_equal(sizeof row / sizeof *row, TABLE_SNOW_GROUND_ALASKA_COUNT);
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const struct snow_ground_alaska_row *r = snow_ground_alaska_row(row[i].place);

		assert_non_null(r);
		assert_near(r->pg_psf, row[i].pg, 0);
		assert_int_equal(r->status, CONFIRMED);
		sum += r->pg_psf;
	}
	assert_near(sum, 2360.0, 0);
	assert_null(snow_ground_alaska_row("juneau"));
	assert_null(snow_ground_alaska_row(""));
}

#define ALONE WIND_OVERHANG_CURVE_ALONE
#define RECALLED WIND_OVERHANG_CURVE_RECALLED
#define SAFE WIND_OVERHANG_CURVE_SAFE_SIDE

enum { OVERHANGS_7_16 = 28 };

#define GABLE WIND_OVERHANG_FORM_GABLE
#define HIP WIND_OVERHANG_FORM_HIP

/* 7-16 Figs. 30.3-2B to 2G, overhangs, as one copy (open source) reads them: slope, zones that share
   a line, its ends. */
static void overhangs_7_16(void **state)
{
	static const struct {
		enum wind_overhang_form form;
		double slope;
		const char *zone[3];
		double A, A1, GCp1, A2, GCp2;
	} row[] = {
		{GABLE, 20, {"1", "2e"}, 50, 20, -2.5, 100, -1.5},
		{GABLE, 20, {"2n", "2r"}, 50, 10, -3.5, 250, -2.0},
		{GABLE, 7.1, {"3e"}, 50, 10, -4.1, 250, -1.5},
		{GABLE, 7.1, {"3r"}, 50, 10, -4.7, 100, -2.3},
		{GABLE, 27, {"1", "2e"}, 50, 20, -2.0, 350, -1.8},
		{GABLE, 27, {"2n", "2r"}, 50, 10, -3.0, 150, -2.2},
		{GABLE, 20.1, {"3e"}, 50, 10, -3.6, 150, -1.7},
		{GABLE, 20.1, {"3r"}, 50, 4, -4.7, 50, -2.4},
		{GABLE, 45, {"1", "2e", "2r"}, 50, 10, -2.6, 100, -1.6},
		{GABLE, 27.1, {"2n", "3r"}, 20, 10, -2.8, 50, -2.36},
		{GABLE, 27.1, {"2n", "3r"}, 60, 50, -2.36, 200, -1.8},
		{GABLE, 45, {"3e"}, 50, 2, -4.0, 300, -1.8},
		{HIP, 20, {"1"}, 50, 20, -2.3, 100, -2.0},
		{HIP, 20, {"2e"}, 50, 10, -3.1, 200, -2.4},
		{HIP, 20, {"2r"}, 50, 10, -2.9, 200, -2.3},
		{HIP, 7.1, {"3"}, 50, 10, -3.7, 200, -1.9},
		{HIP, 27, {"1"}, 50, 7, -1.9, 200, -1.8},
		{HIP, 27, {"2e", "2r"}, 50, 7, -2.5, 200, -2.0},
		{HIP, 20.1, {"3"}, 50, 7, -3.1, 200, -1.5},
	};
	double sum = 0;
	size_t rows = 0;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		for (size_t z = 0; z < 3 && row[i].zone[z] != NULL; z++) {
			const struct wind_overhang_row *r = wind_overhang_row(
				ASCE7_16, row[i].form, row[i].slope, row[i].zone[z], ALONE, row[i].A);

			if (r == NULL)
				fail_msg("row %zu is missing", i);
			assert_near(r->A1_ft2, row[i].A1, 0);
			assert_near(r->GCp1, row[i].GCp1, 0);
			assert_near(r->A2_ft2, row[i].A2, 0);
			assert_near(r->GCp2, row[i].GCp2, 0);
			assert_int_equal(r->status, ONE_SOURCE);
			sum += r->GCp1;
			rows++;
		}
	assert_int_equal(rows, OVERHANGS_7_16);
	/* -20.8 - 18.3 - 22.12 - 12.0 - 10.0, figure by figure */
	assert_near(sum, -83.22, 1e-12);
	assert_null(wind_overhang_row(ASCE7_16, GABLE, 45.1, "2n", ALONE, 10));
	assert_null(wind_overhang_row(ASCE7_16, HIP, 27.1, "1", ALONE, 10));
}

/* ASCE/SEI 7-10 Figs. 30.4-2A to 2C, overhangs; the wall's pressure below. */
static void overhangs(void **state)
{
	static const struct {
		enum edition e;
		enum wind_overhang_form form;
		double slope;
		const char *zone;
		enum wind_overhang_curve curve;
		double A, A1, GCp1, A2, GCp2;
	} row[] = {
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 0, "1", RECALLED, 50, 10, -1.7, 100, -1.6},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "2", RECALLED, 5, 10, -1.7, 100, -1.6},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "2", RECALLED, 200, 100, -1.6, 500, -1.1},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "1", RECALLED, 100, 100, -1.6, 500, -1.1},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "1", SAFE, 400, 10, -1.7, 100, -1.6},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "2", SAFE, 400, 10, -1.7, 100, -1.6},
		{ASCE7_10, WIND_OVERHANG_FORM_FLAT, 7, "3", ALONE, 10, 10, -2.8, 100, -0.8},
		{ASCE7_10, WIND_OVERHANG_FORM_GABLE, 7.1, "2", ALONE, 10, 10, -2.2, 100, -2.2},
		{ASCE7_10, WIND_OVERHANG_FORM_GABLE, 27, "3", ALONE, 10, 10, -3.7, 100, -2.5},
		{ASCE7_10, WIND_OVERHANG_FORM_HIP, 27, "2", ALONE, 10, 10, -2.2, 100, -2.2},
		{ASCE7_10, WIND_OVERHANG_FORM_HIP, 20, "3", ALONE, 10, 10, -3.7, 100, -2.5},
		{ASCE7_10, WIND_OVERHANG_FORM_GABLE, 27.1, "2", ALONE, 10, 10, -2.0, 100, -1.8},
		{ASCE7_10, WIND_OVERHANG_FORM_GABLE, 45, "3", ALONE, 10, 10, -2.0, 100, -1.8},
		{ASCE7_10, WIND_OVERHANG_FORM_ANY, 30, "soffit", RECALLED, 50, 10, 1.0, 500, 0.7},
		{ASCE7_16, WIND_OVERHANG_FORM_ANY, 30, "soffit", ALONE, 50, 10, 1.0, 500, 0.7},
		{ASCE7_22, WIND_OVERHANG_FORM_ANY, 0, "soffit", ALONE, 50, 10, 1.0, 500, 0.7},
		{ASCE7_10, WIND_OVERHANG_FORM_ANY, 0, "soffit", SAFE, 50, 10, 1.2, 500, 1.2},
	};

	(void)state;
	assert_int_equal(sizeof row / sizeof *row + OVERHANGS_7_16, TABLE_WIND_OVERHANG_COUNT);
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const struct wind_overhang_row *r = wind_overhang_row(
			row[i].e, row[i].form, row[i].slope, row[i].zone, row[i].curve, row[i].A);

		if (r == NULL)
			fail_msg("row %zu is missing", i);
		assert_near(r->A1_ft2, row[i].A1, 0);
		assert_near(r->GCp1, row[i].GCp1, 0);
		assert_near(r->A2_ft2, row[i].A2, 0);
		assert_near(r->GCp2, row[i].GCp2, 0);
	}
	assert_null(wind_overhang_row(ASCE7_16, WIND_OVERHANG_FORM_FLAT, 5, "2", ALONE, 10));
	assert_null(wind_overhang_row(ASCE7_22, WIND_OVERHANG_FORM_GABLE, 20, "2", ALONE, 10));
	assert_null(wind_overhang_row(ASCE7_10, WIND_OVERHANG_FORM_GABLE, 45.1, "2", ALONE, 10));
	assert_null(wind_overhang_row(ASCE7_10, WIND_OVERHANG_FORM_HIP, 27.1, "2", ALONE, 10));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(order),
		cmocka_unit_test(values),
		cmocka_unit_test(alaska),
		cmocka_unit_test(overhangs),
		cmocka_unit_test(overhangs_7_16),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
