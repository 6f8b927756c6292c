/* SPDX-License-Identifier: MIT */
/* General dowel equations with a gap (AWC Technical Report 12): with no gap they are the six modes
   of NDS-2018 Table 12.3.1A; with one, each yield load keeps the fastener in balance; and one joint
   worked through by hand. */
#include "near.h"
#include "random.h"
#include "resist/combined.h"
#include "resist/dowel_gap.h"
#include "resist/lag_lateral.h"
#include "us.h"

static struct dowel_joint random_joint(uint64_t *seed)
{
	const double D = IN(random_between(seed, 0.1, 1.0));

	return (struct dowel_joint){ .D = D,
		                     .Dr = D * random_between(seed, 0.6, 1.0),
		                     .lm = IN(random_between(seed, 0.5, 6.0)),
		                     .ls = IN(random_between(seed, 0.03, 3.0)),
		                     .Fem = PSI(random_between(seed, 1500.0, 12000.0)),
		                     .Fes = PSI(random_between(seed, 1500.0, 90000.0)),
		                     .Fyb = PSI(random_between(seed, 45000.0, 130000.0)),
		                     .theta = 0.0 };
}

static void no_gap_is_nds(void **state)
{
	static const double one[YIELD_MODE_COUNT] = { 1.0, 1.0, 1.0, 1.0, 1.0, 1.0 };
	uint64_t seed = 12;

	(void)state;
	for (int k = 0; k < 2000; k++) {
		const struct dowel_joint j = random_joint(&seed);
		const struct dowel_yield y = dowel_yield(NULL, &j);
		double P[YIELD_MODE_COUNT];

		dowel_yield_gap(NULL, &j, one, P);
		for (int m = MODE_II; m < YIELD_MODE_COUNT; m++)
			assert_near(P[m] / y.Rd[m], y.Z[m], 1e-11);
	}
}

/* Moment that a rigid end of a fastener, l long in bearing q, can set against a force P: bearing
   turns sign where the fastener stands still, a = (P/q + l)/2 from the face. */
static double rigid_end(double q, double l, double P)
{
	const double a = (P / q + l) / 2.0;

	return q * (l * l - 2.0 * a * a) / 2.0;
}

/* Forces on the fastener by themselves, without the quadratic: a hinge lies P/q behind the face,
   where the shear is 0. */
static void in_balance(void **state)
{
	static const double one[YIELD_MODE_COUNT] = { 1.0, 1.0, 1.0, 1.0, 1.0, 1.0 };
	uint64_t seed = 3;

	(void)state;
	for (int k = 0; k < 2000; k++) {
		struct dowel_joint j = random_joint(&seed);
		const double qm = j.Fem * j.Dr, qs = j.Fes * j.Dr,
			     M = j.Fyb * j.Dr * j.Dr * j.Dr / 6.0;
		double P[YIELD_MODE_COUNT], scale;

		j.gap = IN(random_between(&seed, 0.0, 3.0));
		dowel_yield_gap(NULL, &j, one, P);
		scale = qm * j.lm * j.lm + qs * j.ls * j.ls + M;
		assert_within(rigid_end(qs, j.ls, P[MODE_II]) + rigid_end(qm, j.lm, P[MODE_II]),
		              P[MODE_II] * j.gap, 1e-13 * scale);
		assert_within(M + rigid_end(qm, j.lm, P[MODE_IIIM]),
		              P[MODE_IIIM] * (j.gap + P[MODE_IIIM] / qs / 2.0), 1e-13 * scale);
		assert_within(M + rigid_end(qs, j.ls, P[MODE_IIIS]),
		              P[MODE_IIIS] * (j.gap + P[MODE_IIIS] / qm / 2.0), 1e-13 * scale);
		assert_within(2.0 * M,
		              P[MODE_IV] * (j.gap + P[MODE_IV] / qs / 2.0 + P[MODE_IV] / qm / 2.0),
		              1e-13 * scale);
	}
}

/* 5/16 x 4 in lag screw, Spruce-Pine-Fir (G 0.42), 1/4 in A36 plate, 11/16 in of sheathing and
   covering taken as a gap, load along the rafter, wind. Worked by hand: Dr 0.227, E 0.1875, T 2.5;
   qm 1066.9, qs 19,749 lb/in, M 116.97 in lb. */
static void worked_joint(void **state)
{
	static const double yield_load[YIELD_MODE_COUNT] = { 3167.4, 4937.25, 1041.2,
		                                             1013.4, 419.5,   282.8 };
	static const struct {
		double alpha, Z;
	} row[] = { { 0, 163.4 },  { 30, 203.2 }, { 45, 268.8 },
		    { 60, 396.8 }, { 75, 609.2 }, { 90, 757.7 } };
	struct lag_screw_geometry g;
	struct connection_factors f;
	struct lag_lateral l, touching;
	double Wp, Z;

	(void)state;
	assert_true(lag_screw_geometry_find(NULL, IN(0.3125), IN(4.0), NAN, IN(0.25 + 0.6875),
	                                    IN(5.5), &g));
	assert_true(connection_factors_find(1.6, false, NAN, false, &f));
	assert_within(TO_IN(g.p_tot), 3.0625, 5e-5);
	assert_within(TO_IN(g.p_t), 2.3125, 5e-5);
	assert_within(TO_IN(g.l_m), 2.96875, 5e-6);
	assert_within(TO_LB_PER_IN(lag_withdrawal(NULL, 0.42, g.D)), 204.78, 0.005);
	Wp = lag_withdrawal_capacity(NULL, lag_withdrawal(NULL, 0.42, g.D), g.p_t, &f);
	assert_within(TO_LB(Wp), 757.7, 0.05);
	assert_true(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.25), IN(0.6875), &l));
	assert_true(l.permitted);
	for (int m = 0; m < YIELD_MODE_COUNT; m++) {
		assert_within(l.yield.Rd[m], 2.77, 1e-12);
		assert_row(yield_mode_text((enum yield_mode)m), TO_LB(l.yield.Z[m] * l.yield.Rd[m]),
		           yield_load[m], 0.05);
	}
	assert_int_equal(l.yield.mode, MODE_IV);
	assert_within(TO_LB(l.yield.value), 102.1, 0.05);
	Z = lateral_adjusted(NULL, l.yield.value, f.CD, f.CM_lateral, f.Ct, 1.0, 1.0,
	                     f.Ceg_lateral);
	assert_within(TO_LB(Z), 163.4, 0.05);
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_within(TO_LB(combined_capacity(NULL, Wp, Z, DEG(row[i].alpha))), row[i].Z,
		              0.05);
	assert_true(lag_lateral_find(NULL, &g, 0.42, 0.0, IN(0.25), 0.0, &touching));
	assert_within(TO_LB(touching.yield.value), 248.4, 0.05);
}

/* How hard a gap bites: Z in lb, lag through a 1/4 in A36 plate, along the grain. Worked by hand
   from A, B and C of each mode, not published; the gap counts in the length above the rafter. */
static void gap_table(void **state)
{
	static const double gap[] = { 0.0, 0.25, 0.5, 0.75, 1.0, 1.5 };
	static const struct {
		double D, L, G, Z[6];
	} row[] = {
		{ 0.25, 4, 0.50, { 210, 132, 89, 65, 51, 35 } },
		{ 0.3125, 4, 0.50, { 270, 183, 130, 98, 77, 54 } },
		{ 0.3125, 4, 0.42, { 248, 173, 126, 96, 76, 54 } },
		{ 0.375, 5, 0.50, { 276, 188, 134, 101, 80, 56 } },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		for (size_t k = 0; k < 6; k++) {
			struct lag_screw_geometry g;
			struct lag_lateral l;

			assert_true(lag_screw_geometry_find(NULL, IN(row[i].D), IN(row[i].L), NAN,
			                                    IN(0.25 + gap[k]), IN(5.5), &g));
			assert_true(lag_lateral_find(NULL, &g, row[i].G, 0.0, IN(0.25), IN(gap[k]),
			                             &l));
			assert_row("gap table", TO_LB(l.yield.value), row[i].Z[k], 0.5);
		}
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(no_gap_is_nds),
		                            cmocka_unit_test(in_balance),
		                            cmocka_unit_test(worked_joint),
		                            cmocka_unit_test(gap_table) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
