/* SPDX-License-Identifier: MIT */
/* Section, net section, stability and stresses at their limits. NDS-2018 3.1.2, 3.3.3, 3.4,
   3.10. */
#include "resist/member.h"

#include "near.h"
#include "us.h"

/* NDS Supplement Table 1B, dressed sizes (A, S, I as printed). */
static void sections(void **state)
{
	static const struct {
		double b, d, A, S, I;
	} row[] = { { 1.5, 3.5, 5.250, 3.063, 5.359 },    { 1.5, 5.5, 8.250, 7.563, 20.80 },
		    { 1.5, 7.25, 10.88, 13.14, 47.63 },   { 1.5, 9.25, 13.88, 21.39, 98.93 },
		    { 1.5, 11.25, 16.88, 31.64, 178.0 } };

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct section s = section_rectangle(NULL, IN(row[i].b), IN(row[i].d));

		assert_near(s.A / (M_PER_IN * M_PER_IN), row[i].A, 5e-4);
		assert_near(s.S / pow(M_PER_IN, 3), row[i].S, 5e-4);
		assert_near(s.I / pow(M_PER_IN, 4), row[i].I, 5e-4);
	}
}

/* Second way: strips summed over the depth. */
static void net_section(void **state)
{
	static const struct {
		double b, d, hole, deep;
	} row[] = { { 1.5, 5.5, 0.3125, 3.0 },
		    { 1.5, 5.5, 0.375, 3.0 },
		    { 1.5, 3.5, 0.25, 3.5 },
		    { 1.5, 7.25, 0.5, 1.0 } };
	struct net_section none;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double b = row[i].b, d = row[i].d;
		const struct net_section n =
			section_with_hole(NULL, IN(b), IN(d), IN(row[i].hole), IN(row[i].deep));
		const int strips = 200000;
		double A = 0.0, Q = 0.0, I = 0.0, y, S;

		for (int k = 0; k < strips; k++) {
			const double at = d * (k + 0.5) / strips;
			const double a = (at > d - row[i].deep ? b - row[i].hole : b) * d / strips;

			A += a;
			Q += a * at;
			I += a * at * at;
		}
		y = Q / A;
		I -= A * y * y;
		S = b * d * d / 6.0;
		assert_near(n.top, I / (d - y) / S, 1e-5);
		assert_near(n.bottom, I / y / S, 1e-5);
	}
	none = section_with_hole(NULL, IN(1.5), IN(5.5), IN(1.5), IN(3.0));
	assert_within(none.top, 0.0, 0.0);
	assert_within(none.bottom, 0.0, 0.0);
	none = section_with_hole(NULL, IN(1.5), IN(5.5), 0.0, IN(3.0));
	assert_near(none.top, 1.0, 1e-14);
}

/* NDS-2018 Table 3.3.3, d 10 in: the rule changes at lu/d 7 and 14.3. */
static void effective_length(void **state)
{
	static const struct {
		enum unbraced_load load;
		double lu, le;
	} row[] = {
		{ UNBRACED_UNIFORM, 69.9, 2.06 * 69.9 },
		{ UNBRACED_UNIFORM, 70.0, 1.63 * 70.0 + 30.0 },
		{ UNBRACED_UNIFORM, 200.0, 1.63 * 200.0 + 30.0 },
		{ UNBRACED_POINT_MIDSPAN, 69.9, 1.80 * 69.9 },
		{ UNBRACED_POINT_MIDSPAN, 70.0, 1.37 * 70.0 + 30.0 },
		{ UNBRACED_OTHER, 69.9, 2.06 * 69.9 },
		{ UNBRACED_OTHER, 70.0, 1.63 * 70.0 + 30.0 },
		{ UNBRACED_OTHER, 142.9, 1.63 * 142.9 + 30.0 },
		{ UNBRACED_OTHER, 143.1, 1.84 * 143.1 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_near(TO_IN(member_stability(NULL, IN(3.5), IN(10.0), IN(row[i].lu),
		                                   row[i].load, PSI(5e5), PSI(1000.0))
		                          .le),
		            row[i].le, 1e-12);
}

static void stability(void **state)
{
	struct stability s;

	(void)state;
	s = member_stability(NULL, IN(1.5), IN(5.5), 0.0, UNBRACED_OTHER, PSI(5e5), PSI(1000.0));
	assert_near(s.CL, 1.0, 0.0);
	assert_true(s.permitted);
	/* d <= b */
	s = member_stability(NULL, IN(3.5), IN(3.5), IN(300.0), UNBRACED_OTHER, PSI(5e5), PSI(1e3));
	assert_near(s.CL, 1.0, 0.0);
	/* CL solves CL^2 - (1 + a)/0.95 CL + a/0.95 = 0 */
	s = member_stability(NULL, IN(1.5), IN(7.25), IN(173.0), UNBRACED_UNIFORM, PSI(5e5),
	                     PSI(1500.0));
	{
		const double a = TO_PSI(s.FbE) / 1500.0;

		assert_within(s.CL * s.CL - (1.0 + a) / 0.95 * s.CL + a / 0.95, 0.0, 1e-14);
		assert_true(s.CL < 1.0 && s.CL < a);
	}
	/* RB 50 is the last permitted: le d/b^2 = 2500; b 1, d 10, le 250 = 1.63 lu + 30 */
	s = member_stability(NULL, IN(1.0), IN(10.0), IN(220.0 / 1.63), UNBRACED_UNIFORM, PSI(5e5),
	                     PSI(1000.0));
	assert_near(s.RB, 50.0, 1e-12);
	assert_true(s.permitted);
	s = member_stability(NULL, IN(1.0), IN(10.0), IN(220.1 / 1.63), UNBRACED_UNIFORM, PSI(5e5),
	                     PSI(1000.0));
	assert_false(s.permitted);
}

static void stresses(void **state)
{
	(void)state;
	assert_near(TO_PSI(member_bending_stress(NULL, LB(1.0) * IN(-7562.5),
	                                         IN(1.0) * IN(1.0) * IN(7.5625))),
	            1000.0, 1e-13);
	assert_near(TO_PSI(member_shear_stress(NULL, LB(-550.0), IN(1.5), IN(5.5))), 100.0, 1e-13);
	assert_near(TO_PSI(member_bearing_stress(NULL, LB(900.0), IN(1.5), IN(2.0))), 300.0, 1e-13);
	/* NDS-2018 3.10.4 (from memory) */
	assert_near(member_bearing_factor(NULL, IN(1.5), IN(3.0)), 1.25, 1e-14);
	assert_near(member_bearing_factor(NULL, IN(1.5), IN(2.9)), 1.0, 1e-14);
	assert_near(member_bearing_factor(NULL, IN(5.9), IN(12.0)), 6.275 / 5.9, 1e-14);
	assert_near(member_bearing_factor(NULL, IN(6.0), IN(12.0)), 1.0, 1e-14);
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(sections),
		                            cmocka_unit_test(net_section),
		                            cmocka_unit_test(effective_length),
		                            cmocka_unit_test(stability),
		                            cmocka_unit_test(stresses) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
