/* SPDX-License-Identifier: MIT */
/* Service factors, distances along the grain and group action of lag screws, at and beside each
   limit. */
#include "resist/connection.h"

#include "near.h"
#include "us.h"

/* NDS-2018 Tables 2.3.2, 11.3.3, 11.3.4; 12.2.1.3, 12.5.2.2. */
static void factors(void **state)
{
	static const struct {
		const char *what;
		double CD, T_degF;
		bool wet, end;
		double want_CD, CM, Ct, Ceg_W, Ceg_Z;
	} row[] = {
		{ "dry, cool, side grain", 1.15, NAN, false, false, 1.15, 1.0, 1.0, 1.0, 1.0 },
		{ "wind", 1.6, 100.0, false, false, 1.6, 1.0, 1.0, 1.0, 1.0 },
		{ "impact is cut to 1.6 (11.3.2)", 2.0, 70.0, false, false, 1.6, 1.0, 1.0, 1.0,
		  1.0 },
		{ "just above 100 F", 1.6, 100.1, false, false, 1.6, 1.0, 0.8, 1.0, 1.0 },
		{ "125 F", 1.6, 125.0, false, false, 1.6, 1.0, 0.8, 1.0, 1.0 },
		{ "just above 125 F", 1.6, 125.1, false, false, 1.6, 1.0, 0.7, 1.0, 1.0 },
		{ "150 F", 1.6, 150.0, false, false, 1.6, 1.0, 0.7, 1.0, 1.0 },
		{ "wet", 1.6, 70.0, true, false, 1.6, 0.7, 1.0, 1.0, 1.0 },
		{ "wet and warm", 1.6, 110.0, true, false, 1.6, 0.7, 0.7, 1.0, 1.0 },
		{ "wet and hot", 1.6, 140.0, true, false, 1.6, 0.7, 0.5, 1.0, 1.0 },
		{ "end grain", 1.6, 70.0, false, true, 1.6, 1.0, 1.0, 0.75, 0.67 },
	};
	struct connection_factors f;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		assert_true(connection_factors_find(row[i].CD, row[i].wet, DEGF(row[i].T_degF),
		                                    row[i].end, &f));
		assert_row(row[i].what, f.CD, row[i].want_CD, 0.0);
		assert_row(row[i].what, f.CM_withdrawal, row[i].CM, 0.0);
		assert_row(row[i].what, f.CM_lateral, row[i].CM, 0.0);
		assert_row(row[i].what, f.Ct, row[i].Ct, 0.0);
		assert_row(row[i].what, f.Ceg_withdrawal, row[i].Ceg_W, 0.0);
		assert_row(row[i].what, f.Ceg_lateral, row[i].Ceg_Z, 0.0);
	}
	assert_false(connection_factors_find(1.6, false, DEGF(150.1), false, &f));
	assert_false(connection_factors_find(0.0, false, NAN, false, &f));
	assert_false(connection_factors_find(NAN, false, NAN, false, &f));
}

/* D 3/8 in: end 7 D = 2.625 and 3.5 D = 1.3125 toward the end, 4 D = 1.5 and 2 D = 0.75 away from
   it; spacing 4 D = 1.5, 3 D = 1.125. NDS-2018 Tables 12.5.1A, B; withdrawal 4 D (Table
   12.5.1E). */
static void distances(void **state)
{
	static const struct {
		const char *what;
		double D, end, spacing;
		enum end_bearing bearing;
		bool permitted, withdrawal;
		double C_delta;
	} row[] = {
		{ "one screw, far from the end", 0.375, NAN, NAN, BEARS_TOWARD_END, true, true,
		  1.0 },
		{ "7 D", 0.375, 2.625, NAN, BEARS_TOWARD_END, true, true, 1.0 },
		{ "half of it", 0.375, 1.3125, NAN, BEARS_TOWARD_END, true, false, 0.5 },
		{ "below half", 0.375, 1.312, NAN, BEARS_TOWARD_END, false, false, 0.0 },
		{ "4 D for pull", 0.375, 1.5, NAN, BEARS_TOWARD_END, true, true, 1.5 / 2.625 },
		{ "away from the end, 4 D", 0.375, 1.5, NAN, BEARS_AWAY_FROM_END, true, true, 1.0 },
		{ "away from the end, 2 D", 0.375, 0.75, NAN, BEARS_AWAY_FROM_END, true, false,
		  0.5 },
		{ "away from the end, below", 0.375, 0.749, NAN, BEARS_AWAY_FROM_END, false, false,
		  0.0 },
		{ "two in a row, 4 D", 0.375, NAN, 1.5, BEARS_TOWARD_END, true, true, 1.0 },
		{ "two in a row, 3 D", 0.375, NAN, 1.125, BEARS_TOWARD_END, true, false, 0.75 },
		{ "two in a row, below", 0.375, NAN, 1.12, BEARS_TOWARD_END, false, false, 0.0 },
		{ "the smaller of the two rules", 0.375, 2.1, 1.2, BEARS_TOWARD_END, true, false,
		  0.8 },
		{ "under 1/4 in: 1 (12.5.1.1)", 0.249, 0.1, 0.1, BEARS_TOWARD_END, true, true,
		  1.0 },
		{ "from 1/4 in", 0.25, NAN, 0.75, BEARS_TOWARD_END, true, false, 0.75 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct screw_placement p = screw_placement(
			NULL, IN(row[i].D), IN(row[i].end), IN(row[i].spacing), row[i].bearing);

		assert_row(row[i].what, p.C_delta, row[i].C_delta, 1e-12);
		assert_row(row[i].what, p.permitted, row[i].permitted, 0.0);
		assert_row(row[i].what, p.withdrawal_permitted, row[i].withdrawal, 0.0);
	}
}

static void group(void **state)
{
	const double D = IN(0.3125), EA = LB(1.0e7), stiff = LB(3.0e7);

	(void)state;
	assert_near(connection_group_factor(NULL, 1, D, IN(2.0), EA, EA), 1.0, 0.0);
	assert_near(connection_group_factor(NULL, 4, IN(0.249), IN(2.0), EA, EA), 1.0, 0.0);
	/* two screws between members of one stiffness share alike by symmetry; else the stiffer end
	   takes more */
	assert_near(connection_group_factor(NULL, 2, D, IN(2.0), EA, EA), 1.0, 1e-12);
	assert_true(connection_group_factor(NULL, 2, D, IN(2.0), EA, stiff) < 1.0);
	assert_near(connection_group_factor(NULL, 2, D, IN(2.0), EA, stiff),
	            connection_group_factor(NULL, 2, D, IN(2.0), stiff, EA), 1e-12);
	assert_true(connection_group_factor(NULL, 2, D, IN(2.0), EA, stiff) >
	            connection_group_factor(NULL, 3, D, IN(2.0), EA, stiff));
	/* members that do not stretch share alike */
	assert_near(connection_group_factor(NULL, 2, D, IN(2.0), LB(1.0e13), LB(1.0e13)), 1.0,
	            1e-6);
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(factors), cmocka_unit_test(distances),
		                            cmocka_unit_test(group) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
