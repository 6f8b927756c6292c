/* SPDX-License-Identifier: MIT */
/* More slips that calculations make, each as a check that this program does not: fasteners, wood
   under screws, steel and aluminium. Figures from the standards named; what the slip would give
   stands beside. */
#include "near.h"
#include "resist/aluminium.h"
#include "resist/bolt.h"
#include "resist/combined.h"
#include "resist/lumber.h"
#include "resist/nail.h"
#include "resist/rafter.h"
#include "resist/resist_steps.h"
#include "resist/sheet_screw.h"
#include "resist/wood_screw.h"
#include "us.h"

/* W takes the nominal diameter, Z the root: NDS-2018 12.2.1, 12.3.7. At the root a 5/16 in lag in G
   0.50 would come to 209 lb/in in place of 266. */
static void nominal_in_withdrawal(void **state)
{
	(void)state;
	assert_within(TO_LB_PER_IN(lag_withdrawal(NULL, 0.50, IN(0.3125))), 266.0, 0.5);
	assert_within(TO_LB_PER_IN(lag_withdrawal(NULL, 0.50, IN(0.227))), 209.0, 0.5);
}

/* The tapered tip is no thread: 12.2.1. With it a 5/16 x 4 in lag would count 2.5 in in place
 * of 2.3125. */
static void tip_counted(void **state)
{
	struct lag_screw_geometry g;

	(void)state;
	assert_true(lag_screw_geometry_find(NULL, IN(0.3125), IN(4), NAN, IN(0.5), IN(5.5), &g));
	assert_near(TO_IN(g.p_t), 2.5 - 0.1875, 1e-12);
}

/* Nails add pull and side load with first powers, screws with squares: NDS-2018 12.4.1, 12.4.2. At
   45 degrees the nail rule would rob a screw of 29 %, the screw rule give a nail 41 % too much. */
static void powers(void **state)
{
	const double screw = combined_capacity(NULL, 500, 200, DEG(45)),
		     nail = nail_combined_capacity(NULL, 500, 200, DEG(45));

	(void)state;
	assert_near(screw / nail, sqrt(2.0), 1e-12);
}

/* Load duration does not raise bearing across the grain: NDS-2018 Table 4.3.1. */
static void no_duration_in_bearing(void **state)
{
	const struct lumber_service s = {.repetitive = true, .temperature = NAN};
	struct lumber_piece p;
	struct lumber_values snow, wind;

	(void)state;
	assert_true(lumber_piece_find("Douglas Fir-Larch", "No.2", IN(1.5), IN(5.5), &p));
	assert_true(lumber_adjust(NULL, &p, 1.15, &s, &snow) &&
		    lumber_adjust(NULL, &p, 1.6, &s, &wind));
	assert_near(snow.Fc_perp_prime, wind.Fc_perp_prime, 0);
	assert_near(TO_PSI(wind.Fc_perp_prime), 625.0, 1e-12);
	assert_near(wind.Fb_star / snow.Fb_star, 1.6 / 1.15, 1e-12);
}

/* Metal does not know load duration either: NDS-2018 11.2.3. The root of a 5/16 in lag at 0.375 x
   60 ksi is 910 lb, 3/8 1240 lb, whatever the load. */
static void no_duration_in_metal(void **state)
{
	(void)state;
	assert_within(TO_LB(lag_tension(NULL, IN(0.227))), 910.0, 1.0);
	assert_within(TO_LB(lag_tension(NULL, IN(0.265))), 1240.0, 1.5);
}

/* A bolt has no withdrawal (NDS-2018 12.2.4 covers drift pins alone): without a washer that fits it
 * holds nothing. */
static void bolt_without_washer(void **state)
{
	(void)state;
	assert_true(bolt_washer_bearing(NULL, 0, IN(0.4375), IN(1.5), IN(6), PSI(625)) <= 0);
	assert_true(linear_interaction(NULL, 100, 0, 10, 200) > 1e9);
}

/* Head pull-through is for round heads, and grows no further beyond 2.5 DH: NDS-2018 12.2.5. A
   straight line to 2 in would give 3.2 times the table's value of a 1/4 in head. */
static void thick_side_member(void **state)
{
	const double at = head_pull_through(NULL, 0.5, IN(0.25), IN(0.625)),
		     thick = head_pull_through(NULL, 0.5, IN(0.25), IN(2));

	(void)state;
	assert_near(thick, at, 1e-12);
}

/* 6005-T5 and 6105-T5 tear before they yield (kt 1.25): 15.6 ksi, not the 19.5 of 6061-T6 and
   6005A-T61. Aluminum Design Manual 2015 Table A.3.3. */
static void alloy_mixed_up(void **state)
{
	static const struct {
		const char *alloy;
		double ksi;
	} row[] = {{"6005-T5", 15.6}, {"6105-T5", 15.6}, {"6061-T6", 19.5}, {"6005A-T61", 19.5}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		struct rail_alloy a;

		assert_true(rail_alloy_find(row[i].alloy, &a));
		assert_row(row[i].alloy, TO_PSI(rail_allowable_stress(NULL, &a)) / 1000, row[i].ksi,
			   0.05);
	}
}

/* A washer counts to 3/4 in in pull-over (1/2 in before 2007): AISI S100. A 1 in washer is no
 * better. */
static void wide_washer(void **state)
{
	struct sheet_screw_joint j = {
		.t1 = IN(0.0312), .t2 = IN(0.06), .Fu1 = PSI(45000), .Fu2 = PSI(45000)};
	double half, three_quarters, one;

	(void)state;
	assert_true(sheet_screw_find(IN(0.25), &j));
	j.dw = IN(0.5);
	half = sheet_screw_strength(NULL, &j, false).pull_over;
	j.dw = IN(0.75);
	three_quarters = sheet_screw_strength(NULL, &j, false).pull_over;
	j.dw = IN(1);
	one = sheet_screw_strength(NULL, &j, false).pull_over;
	assert_near(three_quarters / half, 1.5, 1e-12);
	assert_near(one, three_quarters, 0);
}

/* A roof skin is no purlin: No. 10 in 26 gauge (18 mil, Fu 45) pulls out at some 45 lb. */
static void roof_skin(void **state)
{
	struct sheet_screw_joint j = {
		.t1 = IN(0.25), .t2 = IN(0.0188), .Fu1 = PSI(45000), .Fu2 = PSI(45000)};

	(void)state;
	assert_true(sheet_screw_find(IN(0.19), &j));
	assert_true(TO_LB(sheet_screw_strength(NULL, &j, false).pull_allowed) < 50.0);
}

/* Dead load per area of slope is more per area of plan (IRC tables and NDS take spans level): 10
 * psf at 12:12 is 14.1. */
static void dead_on_the_slope(void **state)
{
	(void)state;
	assert_near(rafter_line_load_slope(NULL, PSF(10), FT(1), DEG(45)) / PLF(1),
		    10.0 * sqrt(2.0), 1e-12);
	assert_near(rafter_line_load_plan(NULL, PSF(10), FT(1)) / PLF(1), 10.0, 1e-12);
}

/* Deflection across the slope, held against the slope length, is 1/cos theta worse than the level
   beam's against the span. Statics: (w cos^2)(L/cos)^4/(L/cos) = w L^3/cos. */
static void deflection_on_the_slope(void **state)
{
	const struct rafter_uniform u = {0, 4, 500, 0};
	struct rafter r = {.span = 4, .theta = 0, .depth = 0.14, .uniforms = 1, .uniform = &u};
	struct beam_peak level, steep;

	(void)state;
	assert_true(rafter_deflect(&r, 2e4, &level));
	r.theta = DEG(45);
	assert_true(rafter_deflect(&r, 2e4, &steep));
	assert_near(steep.value / (4 * sqrt(2.0)), level.value / 4 * sqrt(2.0), 1e-9);
}

/* A wood screw is not a lag screw of its size: 2850 G^2 D against 1800 G^1.5 D^0.75. At 1/4 in and
   G 0.36 the lag formula would give half too much. */
static void wood_screw_as_lag(void **state)
{
	const double lag = TO_LB_PER_IN(lag_withdrawal(NULL, 0.36, IN(0.242)));
	const double screw = TO_LB_PER_IN(wood_screw_withdrawal(NULL, 0.36, IN(0.242)));

	(void)state;
	assert_within(lag / screw, 1.50, 0.005);
	assert_true(screw < lag);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(nominal_in_withdrawal),
		cmocka_unit_test(tip_counted),
		cmocka_unit_test(powers),
		cmocka_unit_test(no_duration_in_bearing),
		cmocka_unit_test(no_duration_in_metal),
		cmocka_unit_test(bolt_without_washer),
		cmocka_unit_test(thick_side_member),
		cmocka_unit_test(alloy_mixed_up),
		cmocka_unit_test(wide_washer),
		cmocka_unit_test(roof_skin),
		cmocka_unit_test(dead_on_the_slope),
		cmocka_unit_test(deflection_on_the_slope),
		cmocka_unit_test(wood_screw_as_lag),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
