/* SPDX-License-Identifier: MIT */
/* Lag screw: lengths, ranges, tension, lead hole, edge room, side load joint. Clauses stand beside
   the rows. */
#include "resist/lag_lateral.h"

#include "near.h"
#include "us.h"

static struct lag_screw_geometry geometry(double D, double L, double T, double t_up, double depth)
{
	struct lag_screw_geometry g;

	assert_true(lag_screw_geometry_find(NULL, IN(D), IN(L), IN(T), IN(t_up), IN(depth), &g));
	return g;
}

/* Lengths by arithmetic on NDS-2018 Appendix L (E, T = min(6, L/2 + 1/2)), 12.1.4.6, 12.2.1,
   12.3.5.3; in. */
static void lengths(void **state)
{
	static const struct {
		const char *what;
		double D, L, T, t_up, depth, p_tot, p, p_t, l_m;
	} row[] = {
		/* 5/16 x 4, E 3/16, T 2.5: thread all in the wood */
		{ "thread inside", 0.3125, 4.0, NAN, 0.9375, 5.5, 3.0625, 2.875, 2.3125, 2.96875 },
		/* layers so thick that thread stands above the rafter face: min(T, p_tot) - E */
		{ "thread cut by the layers", 0.3125, 4.0, NAN, 2.0, 5.5, 2.0, 1.8125, 1.8125,
		  1.90625 },
		{ "thread just covered", 0.3125, 4.0, NAN, 1.5, 5.5, 2.5, 2.3125, 2.3125, 2.40625 },
		{ "maker threads all of it", 0.3125, 4.0, 4.0, 0.9375, 5.5, 3.0625, 2.875, 2.875,
		  2.96875 },
		/* 6 in screw, 0.5 above, 3.5 deep rafter: thread from 2.5 to 5.8125, rafter from
		   0.5 to 4.0 */
		{ "out of the far side", 0.3125, 6.0, NAN, 0.5, 3.5, 3.5, 3.5, 1.5, 3.5 },
		/* tip only half out: reach 3.5 + E/2 */
		{ "tip half out", 0.3125, 4.0, NAN, 0.40625, 3.5, 3.5, 3.40625, 2.3125, 3.5 },
		{ "does not reach the wood", 0.3125, 4.0, NAN, 4.5, 5.5, 0.0, 0.0, 0.0, 0.0 },
		{ "only the tip reaches it", 0.3125, 4.0, NAN, 3.875, 5.5, 0.125, 0.0, 0.0,
		  0.03125 },
		/* T is never above 6 in: 12 in screw */
		{ "longest thread", 0.5, 12.0, NAN, 2.0, 11.25, 10.0, 9.6875, 5.6875, 9.84375 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct lag_screw_geometry g =
			geometry(row[i].D, row[i].L, row[i].T, row[i].t_up, row[i].depth);

		assert_row(row[i].what, TO_IN(g.p_tot), row[i].p_tot, 1e-12);
		assert_row(row[i].what, TO_IN(g.p), row[i].p, 1e-12);
		assert_row(row[i].what, TO_IN(g.p_t), row[i].p_t, 1e-12);
		assert_row(row[i].what, TO_IN(g.l_m), row[i].l_m, 1e-12);
	}
}

static void through(void **state)
{
	(void)state;
	assert_false(geometry(0.3125, 4.0, NAN, 0.5, 3.5).through); /* flush with the far side */
	assert_true(geometry(0.3125, 4.0, NAN, 0.49, 3.5).through);
}

static void refused(void **state)
{
	struct lag_screw_geometry g;

	(void)state;
	/* not a listed diameter (NDS-2018 Table L2) */
	assert_false(lag_screw_geometry_find(NULL, IN(0.30), IN(4), NAN, 0.0, IN(5.5), &g));
	assert_false(lag_screw_geometry_find(NULL, IN(0.1875), IN(4), NAN, 0.0, IN(5.5), &g));
	/* thread longer than the screw */
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), IN(4), IN(4.1), 0.0, IN(5.5), &g));
	/* Table L2 gives a 1 in screw less thread than the rule */
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), IN(1.4), NAN, 0.0, IN(5.5), &g));
	assert_true(lag_screw_geometry_find(NULL, IN(0.3125), IN(1.5), NAN, 0.0, IN(5.5), &g));
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), NAN, NAN, 0.0, IN(5.5), &g));
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), IN(4), NAN, -0.001, IN(5.5), &g));
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), IN(4), NAN, 0.0, 0.0, &g));
	assert_false(lag_screw_geometry_find(NULL, IN(0.3125), IN(4), NAN, INFINITY, IN(5.5), &g));
}

static void withdrawal_range(void **state)
{
	(void)state;
	assert_true(lag_withdrawal_covers(0.31, IN(0.25)));
	assert_true(lag_withdrawal_covers(0.73, IN(1.25)));
	assert_false(lag_withdrawal_covers(0.309, IN(0.25)));
	assert_false(lag_withdrawal_covers(0.731, IN(0.25)));
	assert_false(lag_withdrawal_covers(0.42, IN(0.249)));
	assert_false(lag_withdrawal_covers(0.42, IN(1.251)));
	assert_false(lag_withdrawal_covers(NAN, IN(0.25)));
}

/* W' and W'p are plain products: NDS-2018 Table 11.3.1. */
static void withdrawal_factors(void **state)
{
	const struct connection_factors f = { .CD = 1.6,
		                              .CM_withdrawal = 0.7,
		                              .CM_lateral = 1.0,
		                              .Ct = 0.8,
		                              .Ceg_withdrawal = 0.75,
		                              .Ceg_lateral = 0.67 };

	(void)state;
	assert_near(TO_LB(lag_withdrawal_capacity(NULL, LB_IN(200.0), IN(2.5), &f)),
	            200.0 * 2.5 * 1.6 * 0.7 * 0.8 * 0.75, 1e-14);
}

/* 0.375 x 60 ksi x root area: 910 lb (5/16), 1240 lb (3/8). Common practice; printed to 10 lb. */
static void tension(void **state)
{
	(void)state;
	assert_within(TO_LB(lag_tension(NULL, IN(0.227))), 910.0, 5.0);
	assert_within(TO_LB(lag_tension(NULL, IN(0.265))), 1240.0, 5.0);
}

/* NDS-2018 12.1.4.2: parts of D by density; the class changes above 0.5 and above 0.6. */
static void lead_holes(void **state)
{
	static const struct {
		double G, D, low, high;
	} row[] = {
		{ 0.42, 0.3125, 0.40 * 0.3125, 0.70 * 0.3125 },
		{ 0.50, 0.3125, 0.40 * 0.3125, 0.70 * 0.3125 },
		{ 0.51, 0.3125, 0.60 * 0.3125, 0.75 * 0.3125 },
		{ 0.60, 0.375, 0.60 * 0.375, 0.75 * 0.375 },
		{ 0.61, 0.375, 0.65 * 0.375, 0.85 * 0.375 },
	};
	double low, high;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		assert_true(lag_lead_hole(NULL, IN(row[i].D), row[i].G, &low, &high));
		assert_near(TO_IN(low), row[i].low, 1e-14);
		assert_near(TO_IN(high), row[i].high, 1e-14);
	}
	assert_false(lag_lead_hole(NULL, IN(0.3125), NAN, &low, &high));
}

/* Half of 1-1/2 in less 1.5 D (NDS-2018 Table 12.5.1C): 3/8, 9/32, 3/16 in and nothing for 1/2
   in. */
static void edge_room(void **state)
{
	(void)state;
	assert_near(TO_IN(lag_edge_room(NULL, IN(1.5), IN(0.25))), 0.375, 1e-14);
	assert_near(TO_IN(lag_edge_room(NULL, IN(1.5), IN(0.3125))), 0.28125, 1e-14);
	assert_near(TO_IN(lag_edge_room(NULL, IN(1.5), IN(0.375))), 0.1875, 1e-14);
	assert_within(TO_IN(lag_edge_room(NULL, IN(1.5), IN(0.5))), 0.0, 1e-15);
	assert_true(lag_edge_fits(IN(1.5), IN(0.375), IN(0.1875)));
	assert_false(lag_edge_fits(IN(1.5), IN(0.375), IN(0.19)));
	assert_true(lag_edge_fits(IN(1.5), IN(0.5), 0.0));
	assert_false(lag_edge_fits(IN(1.5), IN(0.5), IN(0.001)));
	assert_false(lag_edge_fits(IN(1.5), IN(0.3125), NAN));
}

/* NDS-2018 12.1.4.6: 4 D; Table 12K footnote 3: p/8D. */
static void penetration(void **state)
{
	struct lag_lateral l;
	struct lag_screw_geometry g = geometry(0.3125, 4.0, NAN, 0.5, 5.5);

	(void)state;
	assert_near(TO_IN(lag_penetration_least(NULL, IN(0.3125))), 1.25, 1e-14);
	assert_near(TO_IN(lag_penetration_full(IN(0.3125))), 2.5, 1e-14);
	assert_within(lag_penetration_factor(NULL, IN(1.249), IN(0.3125)), 0.0, 0.0);
	assert_near(lag_penetration_factor(NULL, IN(1.25), IN(0.3125)), 0.5, 1e-14);
	assert_near(lag_penetration_factor(NULL, IN(2.0), IN(0.3125)), 0.8, 1e-14);
	assert_near(lag_penetration_factor(NULL, IN(2.5), IN(0.3125)), 1.0, 1e-14);
	assert_near(lag_penetration_factor(NULL, IN(9.0), IN(0.3125)), 1.0, 1e-14);
	g.p = IN(1.25);
	assert_true(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.25), 0.0, &l) && l.permitted);
	g.p = IN(1.249);
	assert_true(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.25), 0.0, &l) && !l.permitted);
}

static void side_load_refused(void **state)
{
	struct lag_lateral l;
	const struct lag_screw_geometry g = geometry(0.3125, 4.0, NAN, 0.5, 5.5),
					none = geometry(0.3125, 4.0, NAN, 4.5, 5.5);

	(void)state;
	/* sheet thinner than 20 gauge (0.036 in), NDS-2018 Table 12M */
	assert_false(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.035), 0.0, &l));
	assert_true(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.036), 0.0, &l));
	assert_false(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.25), -0.001, &l));
	assert_false(lag_lateral_find(NULL, &g, 0.42, DEG(91.0), IN(0.25), 0.0, &l));
	assert_false(lag_lateral_find(NULL, &g, NAN, 0.0, IN(0.25), 0.0, &l));
	assert_false(lag_lateral_find(NULL, &none, 0.42, 0.0, IN(0.25), 0.0, &l));
}

/* Steel bearing by thickness (NDS-2018 Table 12K footnote 2): 61,850 psi below 1/4 in, 87,000 from
   it. */
static void steel(void **state)
{
	double Fe;

	(void)state;
	assert_true(dowel_bearing_steel(IN(0.239), &Fe));
	assert_near(TO_PSI(Fe), 61850.0, 1e-12);
	assert_true(dowel_bearing_steel(IN(0.25), &Fe));
	assert_near(TO_PSI(Fe), 87000.0, 1e-12);
	assert_false(dowel_bearing_steel(NAN, &Fe));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(lengths),
		cmocka_unit_test(through),
		cmocka_unit_test(refused),
		cmocka_unit_test(withdrawal_range),
		cmocka_unit_test(withdrawal_factors),
		cmocka_unit_test(tension),
		cmocka_unit_test(lead_holes),
		cmocka_unit_test(edge_room),
		cmocka_unit_test(penetration),
		cmocka_unit_test(side_load_refused),
		cmocka_unit_test(steel),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
