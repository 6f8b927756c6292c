/* SPDX-License-Identifier: MIT */
/* Slips that calculations of joints make, each as a check that this program does not: which diameter,
   which factor, which distance, which method. */
#include "near.h"
#include "resist/lag_lateral.h"
#include "resist/lrfd.h"
#include "resist/standoff.h"
#include "table/lookup_wood.h"
#include "us.h"

/* A lag of 1/4 or 5/16 in is threaded at its root under 1/4 in: Rd is K_D K_theta there, not 4, 3.6 and
   3.2 K_theta, and D is the root (NDS-2018 Table 12.3.1B footnote 1, 12.3.7). 1/4 in, ts 1/2, G 0.50:
   Table 12J prints 120; with the terms of thick dowels it would be 83, with the nominal diameter twice
   as much. */
static void quarter_inch_lag(void **state)
{
	struct dowel_joint j = {.D = IN(0.25),
				.Dr = IN(0.173),
				.lm = IN(2.0),
				.ls = IN(0.5),
				.Fem = PSI(5600),
				.Fes = PSI(5600),
				.Fyb = PSI(70000)};
	const double Z = TO_LB(dowel_yield(NULL, &j).value);

	(void)state;
	assert_within(Z, 120.0, 5.0);
	assert_within(Z * (10 * 0.173 + 0.5) / 3.2, 83.0, 0.5);
	j.Dr = j.D;
	assert_true(TO_LB(dowel_yield(NULL, &j).value) > 1.3 * Z);
}

/* Bearing goes by the nominal diameter though yield goes by the root: across the grain the root of a 1/2
   in lag (0.371) would bear 3650 psi in G 0.50, not 3150 (NDS-2018 Table 12.3.3). */
static void bearing_on_the_nominal(void **state)
{
	(void)state;
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.5), DEG(90))), 3150.0, 1e-9);
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.371), DEG(90))), 3650.0, 1e-9);
}

/* Along the eave the load meets the rafter's edge: 4 D of Table 12.5.1C are 1 in for the thinnest lag, and
   half a 1-1/2 in edge is 0.75. Along the slope 1.5 D are enough. */
static void across_the_rafter(void **state)
{
	const struct connection_geometry_row *across =
		connection_geometry_row("edge-distance", "perpendicular-loaded-edge");

	(void)state;
	for (size_t i = 0; i < TABLE_LAG_SCREW_COUNT; i++)
		assert_true(across->minimum_D * table_lag_screw[i].D_in > 0.75);
	assert_true(lag_edge_fits(IN(1.5), IN(0.3125), IN(0.25)));
}

/* C_delta is the plain quotient with a floor: at 3 D of spacing 0.75, and nothing at all below; not half at
   the least and full at the most. NDS-2018 12.5.1.2. */
static void spacing_has_a_floor(void **state)
{
	const double D = IN(0.375);

	(void)state;
	assert_near(screw_placement(NULL, D, NAN, 3 * D, BEARS_TOWARD_END).C_delta, 0.75, 1e-12);
	assert_false(screw_placement(NULL, D, NAN, 2.99 * D, BEARS_TOWARD_END).permitted);
	assert_near(screw_placement(NULL, D, 3.5 * D, NAN, BEARS_TOWARD_END).C_delta, 0.5, 1e-12);
	assert_false(screw_placement(NULL, D, 3.49 * D, NAN, BEARS_TOWARD_END).permitted);
}

/* Group action is for D of 1/4 in and up (NDS-2018 11.3.6.1): four No. 14 in a row carry four times one,
   four 3/8 in bolts less. */
static void group_of_thin_screws(void **state)
{
	const double wood = LB(1.4e6 * 8.25), steel = LB(29e6 * 0.375);

	(void)state;
	assert_near(connection_group_factor(NULL, 4, IN(0.242), IN(2), wood, steel), 1.0, 0);
	assert_true(connection_group_factor(NULL, 4, IN(0.375), IN(2), wood, steel) < 1);
}

/* Impact's 2.0 is not for connections: NDS-2018 11.3.2 stops at 1.6. */
static void impact(void **state)
{
	struct connection_factors k;

	(void)state;
	assert_true(connection_factors_find(2.0, false, NAN, false, &k));
	assert_near(k.CD, 1.6, 0);
}

/* The two methods do not mix. Against wind at strength level ASD allows 1.6/0.6 = 2.67 reference values,
   LRFD 3.32 x 0.65 = 2.16; an LRFD value under an ASD load would allow 3.6. */
static void methods_mixed(void **state)
{
	const double lrfd = lrfd_connection(NULL, 1.0, 1.0);

	(void)state;
	assert_within(1.6 / 0.6, 2.67, 0.005);
	assert_within(lrfd, 2.16, 0.005);
	assert_within(1.6 / 0.6 / lrfd, 1.24, 0.005);
	assert_within(lrfd / 0.6, 3.6, 0.005);
}

/* One screw takes no couple: without a base that presses on an edge a standoff cannot be rated at all;
   with one, 100 lb at 3 in on an arm of 2 in pull with 150 lb more. Statics. */
static void standoff_on_one_screw(void **state)
{
	double pull;

	(void)state;
	assert_false(standoff_pull(NULL, LB(100), IN(3), NAN, &pull));
	assert_false(standoff_pull(NULL, LB(100), IN(3), 0, &pull));
	assert_true(standoff_pull(NULL, LB(100), IN(3), IN(2), &pull));
	assert_near(TO_LB(pull), 150.0, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(quarter_inch_lag),
		cmocka_unit_test(bearing_on_the_nominal),
		cmocka_unit_test(across_the_rafter),
		cmocka_unit_test(spacing_has_a_floor),
		cmocka_unit_test(group_of_thin_screws),
		cmocka_unit_test(impact),
		cmocka_unit_test(methods_mixed),
		cmocka_unit_test(standoff_on_one_screw),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
