/* SPDX-License-Identifier: MIT */
/* Geometry of flashings against values worked on paper: slope tables, pipes through slopes,
   courses, plates, ice barrier, cricket, valleys, built-up thickness, pipe insulation and
   growth. The slope factors agree with the tables that carpenters print, the cricket with the
   rows of IRC Table R1003.20. Lengths in inches; tolerance: half of the last digit printed. */
#include "near.h"

#include <math.h>

#include "roof/flashing.h"

#define IN M_PER_IN
#define RISE(r) (atan((r) / 12.0))

static double us(double si)
{
	return si / IN;
}

/* Carpenters' slope table, common and hip/valley rafter factors. */
static void slope_table(void **state)
{
	static const struct {
		double rise, deg, percent, s, h;
	} row[] = {{1, 4.76, 8.3, 1.0035, 1.4167},     {2, 9.46, 16.7, 1.0138, 1.4240},
		   {3, 14.04, 25.0, 1.0308, 1.4361},   {4, 18.43, 33.3, 1.0541, 1.4530},
		   {5, 22.62, 41.7, 1.0833, 1.4743},   {6, 26.57, 50.0, 1.1180, 1.5000},
		   {7, 30.26, 58.3, 1.1577, 1.5298},   {8, 33.69, 66.7, 1.2019, 1.5635},
		   {9, 36.87, 75.0, 1.2500, 1.6008},   {10, 39.81, 83.3, 1.3017, 1.6415},
		   {11, 42.51, 91.7, 1.3566, 1.6853},  {12, 45.00, 100.0, 1.4142, 1.7321},
		   {18, 56.31, 150.0, 1.8028, 2.0616}, {24, 63.43, 200.0, 2.2361, 2.4495}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double theta = RISE(row[i].rise);

		assert_row("pitch, deg", theta / RAD_PER_DEG, row[i].deg, 0.005);
		assert_row("pitch, percent", 100.0 * tan(theta), row[i].percent, 0.05);
		assert_row("slope factor", STEP(NULL, step_slope_factor, theta), row[i].s, 0.00005);
		assert_row("hip factor", STEP(NULL, step_hip_factor, theta), row[i].h, 0.00005);
	}
}

static void pipe_table(void **state)
{
	static const struct {
		double D, rise, t, c, across, up, slot;
	} row[] = {{2.375, 5, 0, 0, 2.375, 2.573, (double)NAN},
		   {3, 12, 0, 0, 3, 4.243, (double)NAN},
		   {2.875, 6, 15.0 / 32.0, 0, 2.875, 3.214, 3.449}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double D = row[i].D * IN, c = row[i].c * IN, theta = RISE(row[i].rise);

		assert_row("across", us(STEP(NULL, step_pipe_across, D, c)), row[i].across, 0.0005);
		assert_row("up", us(STEP(NULL, step_pipe_ellipse, D, c, theta)), row[i].up, 0.0005);
		if (!isnan(row[i].slot))
			assert_row("slot",
				   us(STEP(NULL, step_deck_slot, D, c, theta, row[i].t * IN)),
				   row[i].slot, 0.0005);
	}
	assert_within(us(STEP(NULL, step_level_pipe_ellipse, 2.375 * IN, RISE(12))), 3.359, 0.0005);
	assert_within(us(STEP(NULL, step_sleeve_difference, 2.375 * IN, RISE(5))), 0.99, 0.005);
}

static void headlaps(void **state)
{
	static const struct {
		const char *covering;
		double L, E, headlap;
	} row[] = {{"strip", 12, 5, 2},
		   {"laminated, metric", 13.25, 5.625, 2},
		   {"shake", 24, 10, 4},
		   {"shake, short", 18, 7.5, 3},
		   {"wood shingle", 16, 5, 6}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row(row[i].covering,
			   us(STEP(NULL, step_headlap, row[i].L * IN, row[i].E * IN)),
			   row[i].headlap, 1e-9);
}

/* Slate and plain tile, and pieces per square (printed slate tables say 170). */
static void double_lap(void **state)
{
	static const struct {
		double L, headlap, E;
	} row[] = {{12, 3, 4.5}, {20, 3, 8.5}, {18, 4, 7}, {500 / 25.4, 90 / 25.4, 205 / 25.4}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row("exposure",
			   us(STEP(NULL, step_exposure_double_lap, row[i].L * IN,
				   row[i].headlap * IN)),
			   row[i].E, 1e-9);
	assert_within(STEP(NULL, step_pieces_per_square, 10 * IN, 8.5 * IN), 169.4, 0.05);
}

/* S 180, overhang 1, L 16-1/2, headlap 3: n 14, E 12.654, headlap as laid 3.846. */
static void single_lap(void **state)
{
	const double S = 181 * IN, L = 16.5 * IN, h = 3 * IN;
	const double n = STEP(NULL, step_tile_courses, S, L, h);
	const double E = STEP(NULL, step_tile_exposure, S, L, n);

	(void)state;
	assert_within(us(STEP(NULL, step_exposure_single_lap, L, h)), 13.5, 1e-9);
	assert_within(n, 14, 0);
	assert_within(us(E), 12.654, 0.0005);
	assert_within(us(STEP(NULL, step_tile_headlap, L, E)), 3.846, 0.0005);
}

static void courses(void **state)
{
	double n, k;

	(void)state;
	assert_within(STEP(NULL, step_course_count, 180 * IN, 5.625 * IN), 32, 0);
	n = STEP(NULL, step_course_count, 204 * IN, 10 * IN);
	assert_within(n, 21, 0);
	assert_within(us(STEP(NULL, step_course_exposure, 204 * IN, n)), 9.714, 0.0005);
	k = STEP(NULL, step_course_number, 60 * IN, 5.625 * IN);
	assert_within(k, 11, 0);
	assert_within(us(STEP(NULL, step_course_above_butt, 60 * IN, 5.625 * IN, k)), 3.75, 1e-9);
	assert_within(us(STEP(NULL, step_course_below_butt, 60 * IN, 5.625 * IN, k)), 1.875, 1e-9);
}

static void plates(void **state)
{
	static const struct {
		const char *covering;
		double L, E, reach, plate, open;
	} row[] = {{"strip", 12, 5, 7, 12, 2},
		   {"wood shingle", 16, 5, 11, 16, 3},
		   {"shake", 24, 10, 14, 19, 2},
		   {"slate", 20, 8.5, 11.5, 16.5, 2},
		   {"laminated, metric", 13.25, 5.625, 7.625, 12.625, 2}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double r = STEP(NULL, step_plate_reach, row[i].L * IN, row[i].E * IN);

		assert_row(row[i].covering, us(r), row[i].reach, 1e-9);
		assert_row(row[i].covering, us(STEP(NULL, step_plate_length, 4 * IN, 1 * IN, r)),
			   row[i].plate, 1e-9);
		assert_row(row[i].covering, STEP(NULL, step_courses_to_open, r, row[i].E * IN),
			   row[i].open, 0);
	}
	/* Advice below 8:12. */
	assert_within(us(STEP(NULL, step_plate_reach_low_slope, RISE(6))), 6.7, 0.05);
	assert_within(us(STEP(NULL, step_plate_reach_low_slope, RISE(4))), 9.5, 0.05);
	assert_within(us(STEP(NULL, step_plate_reach_low_slope, RISE(3))), 12.4, 0.05);
}

/* IRC R905.1.2; wall line at the inner face. */
static void ice_barrier(void **state)
{
	double l = STEP(NULL, step_ice_barrier, 16 * IN, 6 * IN, RISE(6), 0.0);

	(void)state;
	assert_within(us(l), 51.43, 0.005);
	assert_within(STEP(NULL, step_ice_barrier_rolls, l), 2, 0);
	l = STEP(NULL, step_ice_barrier, 24 * IN, 6 * IN, RISE(4), 0.0);
	assert_within(us(l), 56.92, 0.005);
	assert_within(STEP(NULL, step_ice_barrier_rolls, l), 2, 0);
}

/* IRC R903.2.2 (more than 30 in) and Table R1003.20 (12:12 W/2, 8:12 W/3, 6:12 W/4, 4:12 W/6, 3:12
 * W/8). */
static void cricket(void **state)
{
	static const struct {
		double rise, part;
	} row[] = {{12, 2}, {8, 3}, {6, 4}, {4, 6}, {3, 8}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row("R1003.20",
			   us(STEP(NULL, step_cricket_height, 36 * IN, RISE(row[i].rise))),
			   36 / row[i].part, 1e-9);
	assert_within(us(STEP(NULL, step_cricket_ridge, 36 * IN, RISE(8))), 21.63, 0.005);
	assert_within(us(STEP(NULL, step_cricket_valley, 36 * IN, RISE(8))), 28.14, 0.005);
	assert_within(us(STEP(NULL, step_cricket_height, 48 * IN, RISE(6))), 12, 1e-9);
	assert_within(us(STEP(NULL, step_cricket_ridge, 48 * IN, RISE(6))), 26.83, 0.005);
	assert_within(us(STEP(NULL, step_cricket_valley, 48 * IN, RISE(6))), 36.00, 0.005);
	assert_false(flashing_cricket_needed(30.0 * IN));
	assert_true(flashing_cricket_needed(30.1 * IN));
}

static void valleys(void **state)
{
	(void)state;
	assert_within(us(STEP(NULL, step_valley_level, 18 * IN, RISE(6))), 24.15, 0.005);
	assert_within(us(STEP(NULL, step_valley_level, 18 * IN, RISE(12))), 22.05, 0.005);
	/* 24.15 to one digit */
	assert_within(us(STEP(NULL, step_valley_distance, 24.2 * IN, RISE(6))), 18, 0.05);
	assert_within(STEP(NULL, step_valley_angle, RISE(6)) / RAD_PER_DEG,
		      atan(1.1180) / RAD_PER_DEG, 0.005);
}

static void built_up(void **state)
{
	(void)state;
	assert_within(us(STEP(NULL, step_built_up_high, 0.40 * IN, IN / 16, 16 * IN, 5 * IN)), 0.97,
		      0.005);
	assert_within(us(STEP(NULL, step_built_up_low, 0.40 * IN, IN / 16, 16 * IN, 5 * IN)), 0.57,
		      0.005);
	assert_within(us(STEP(NULL, step_built_up_high, 0.75 * IN, IN / 4, 24 * IN, 10 * IN)), 1.63,
		      0.0051);
	assert_within(us(STEP(NULL, step_built_up_low, 0.75 * IN, IN / 4, 24 * IN, 10 * IN)), 0.88,
		      0.0051);
}

static void pipe_insulation_and_growth(void **state)
{
	(void)state;
	assert_within(STEP(NULL, step_insulation_resistance, 0.875 * IN, 0.75 * IN), 4.23, 0.005);
	/* Wall for R-4: 0.717; for: 0.51. */
	assert_within(STEP(NULL, step_insulation_resistance, 0.875 * IN, 0.717 * IN), 4.00, 0.01);
	assert_within(STEP(NULL, step_insulation_resistance, 0.875 * IN, 0.51 * IN), 2.6, 0.05);
	assert_within(us(STEP(NULL, step_pipe_growth, 1200 * IN, 100.0)), 1.13, 0.005);
	assert_within(us(STEP(NULL, step_pipe_growth, 240 * IN, 330.0)), 0.744, 0.0005);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(slope_table), cmocka_unit_test(pipe_table),
		cmocka_unit_test(headlaps),    cmocka_unit_test(double_lap),
		cmocka_unit_test(single_lap),  cmocka_unit_test(courses),
		cmocka_unit_test(plates),      cmocka_unit_test(ice_barrier),
		cmocka_unit_test(cricket),     cmocka_unit_test(valleys),
		cmocka_unit_test(built_up),    cmocka_unit_test(pipe_insulation_and_growth)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
