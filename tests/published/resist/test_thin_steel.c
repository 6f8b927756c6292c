/* SPDX-License-Identifier: MIT */
/* Screws in thin steel: a light-steel framing association's screw table (18 mil, factor 3.0), the
   pull-out table of an evaluation report (Fu 45 ksi, factor 3), the clauses of AISI S100 J4 (E4 to
   2012). Rows of the table that are not printed were worked out by somebody else in another
   language. */
#include "near.h"
#include "resist/sheet_screw.h"
#include "us.h"

static struct sheet_screw_joint alike(double d, double t, double Fu_ksi)
{
	struct sheet_screw_joint j = {
		.t1 = IN(t), .t2 = IN(t), .Fu1 = PSI(1000.0 * Fu_ksi), .Fu2 = PSI(1000.0 * Fu_ksi)};

	assert_true(sheet_screw_find(IN(d), &j));
	return j;
}

/* Both sheets alike, factor 3.0; shear, pull-out and pull-over with the screw's own strength as
   cap, lb to 1. The five rows of 0.0188 in are printed. */
static const struct {
	double t, Fu, d, shear, out, over;
} sheets[] = {
	{0.0188, 33, 0.138, 44, 24, 84},    {0.0188, 33, 0.164, 48, 29, 84},
	{0.0188, 33, 0.19, 52, 33, 105},    {0.0188, 33, 0.216, 55, 38, 105},
	{0.0188, 33, 0.25, 60, 44, 127},    {0.0283, 33, 0.138, 82, 37, 127},
	{0.0283, 33, 0.164, 89, 43, 127},   {0.0283, 33, 0.19, 96, 50, 159},
	{0.0283, 33, 0.216, 102, 57, 159},  {0.0283, 33, 0.25, 110, 66, 191},
	{0.0312, 33, 0.138, 95, 40, 140},   {0.0312, 33, 0.164, 103, 48, 140},
	{0.0312, 33, 0.19, 111, 55, 175},   {0.0312, 33, 0.216, 118, 63, 175},
	{0.0312, 33, 0.25, 127, 73, 211},   {0.0346, 45, 0.138, 151, 61, 140},
	{0.0346, 45, 0.164, 164, 72, 195},  {0.0346, 45, 0.19, 177, 84, 265},
	{0.0346, 45, 0.216, 188, 95, 265},  {0.0346, 45, 0.25, 203, 110, 318},
	{0.0451, 45, 0.138, 214, 79, 140},  {0.0451, 45, 0.164, 244, 94, 195},
	{0.0451, 45, 0.19, 263, 109, 345},  {0.0451, 45, 0.216, 280, 124, 345},
	{0.0451, 45, 0.25, 302, 144, 415},  {0.0566, 65, 0.138, 214, 140, 140},
	{0.0566, 65, 0.164, 426, 171, 195}, {0.0566, 65, 0.19, 534, 198, 386},
	{0.0566, 65, 0.216, 569, 225, 625}, {0.0566, 65, 0.25, 613, 261, 752},
	{0.0713, 65, 0.138, 214, 140, 140}, {0.0713, 65, 0.164, 426, 195, 195},
	{0.0713, 65, 0.19, 548, 249, 386},  {0.0713, 65, 0.216, 777, 284, 775},
	{0.0713, 65, 0.25, 866, 328, 948},  {0.1017, 65, 0.138, 214, 140, 140},
	{0.1017, 65, 0.164, 426, 195, 195}, {0.1017, 65, 0.19, 548, 356, 386},
	{0.1017, 65, 0.216, 777, 405, 775}, {0.1017, 65, 0.25, 1016, 468, 1067},
};

static void light_steel_table(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
		const struct sheet_screw_joint j = alike(sheets[i].d, sheets[i].t, sheets[i].Fu);
		const struct sheet_screw s = sheet_screw_strength(NULL, &j, false);

		assert_row("shear", TO_LB(s.shear_allowed), sheets[i].shear, 0.51);
		assert_row("pull-out", TO_LB(fmin(s.pull_out, s.tension)) / 3.0, sheets[i].out,
			   0.51);
		assert_row("pull-over", TO_LB(fmin(s.pull_over, s.tension)) / 3.0, sheets[i].over,
			   0.51);
		assert_near(s.pull_allowed, fmin(s.tension, fmin(s.pull_out, s.pull_over)) / 3.0,
			    1e-12);
	}
}

/* Evaluation report: pull-out of No. 10 at Fu 45 ksi. */
static void pull_out_table(void **state)
{
	static const struct {
		double t, want;
	} row[] = {{0.018, 44}, {0.036, 87}, {0.060, 145}, {0.105, 254}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const struct sheet_screw_joint j = alike(0.19, row[i].t, 45.0);

		assert_row("pull-out, No. 10, Fu 45",
			   TO_LB(sheet_screw_strength(NULL, &j, false).pull_out) / 3.0, row[i].want, 0.5);
	}
}

/* Screwed joints of two thicknesses: at t2/t1 of 1 and less tilting counts, from 2.5 on bearing
   alone, between them a straight line. By arithmetic. */
static void unlike_sheets(void **state)
{
	struct sheet_screw_joint j = alike(0.19, 0.05, 45.0);
	double shear[3];

	(void)state;
	j.Pss = LB(1e6);
	for (int i = 0; i < 3; i++) {
		j.t2 = j.t1 * (i == 0 ? 1.0 : i == 1 ? 1.75 : 2.5);
		shear[i] = TO_LB(sheet_screw_strength(NULL, &j, false).shear);
	}
	assert_near(shear[0], 4.2 * sqrt(0.05 * 0.05 * 0.05 * 0.19) * 45000.0, 1e-12);
	assert_near(shear[2], 2.7 * 0.05 * 0.19 * 45000.0, 1e-12);
	/* at 1.75 half way between tilting of the thicker sheet and bearing of the thinner, no more
	 * than it */
	const double tilt = 4.2 * sqrt(0.0875 * 0.0875 * 0.0875 * 0.19) * 45000.0;

	assert_near(shear[1], (fmin(tilt, shear[2]) + shear[2]) / 2.0, 1e-12);
	j.dw = IN(0.75);
	const double over = sheet_screw_strength(NULL, &j, false).pull_over;

	j.dw = IN(1.0); /* a wider washer counts no more */
	assert_near(sheet_screw_strength(NULL, &j, false).pull_over, over, 1e-12);
}

/* AISI S100 J4 / E4: Omega 3.0 beside phi 0.50. LRFD strengths are half the nominal ones; the
   interactions by hand: (V/Pns + 0.71 T/Pnov)/(1.10 phi), (V/Pns + T/Pnot)/(1.15 phi), (V/Pss +
   T/Pts)/(1.3 phi). */
static void steel_by_lrfd(void **state)
{
	const struct sheet_screw_joint j = alike(0.19, 0.0451, 45.0);
	const struct sheet_screw asd = sheet_screw_strength(NULL, &j, false),
				 lrfd = sheet_screw_strength(NULL, &j, true);
	const double T = LB(40.0), V = LB(90.0);
	const double tilt = 4.2 * sqrt(0.0451 * 0.0451 * 0.0451 * 0.19) * 45000.0;
	const double bear = 2.7 * 0.0451 * 0.19 * 45000.0, out = 0.85 * 0.0451 * 0.19 * 45000.0;
	const double over = 1.5 * 0.0451 * 0.34 * 45000.0;

	(void)state;
	assert_near(lrfd.shear_allowed / asd.shear_allowed, 1.5, 1e-12);
	assert_near(TO_LB(lrfd.pull_allowed), out / 2.0, 1e-12);
	assert_near(sheet_screw_combined(NULL, &lrfd, &j, T, V),
		    fmax((90.0 / bear + 0.71 * 40.0 / over) / (1.10 * 0.5),
			 fmax((90.0 / tilt + 40.0 / out) / (1.15 * 0.5),
			      (90.0 / 1644.0 + 40.0 / 1158.0) / (1.3 * 0.5))),
		    1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(light_steel_table),
		cmocka_unit_test(pull_out_table),
		cmocka_unit_test(unlike_sheets),
		cmocka_unit_test(steel_by_lrfd),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
