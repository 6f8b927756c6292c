/* SPDX-License-Identifier: MIT */
/* Side load of single fasteners as published in NDS-2018 (NDS-2015 prints the same cells). Tables
   print to 10 lb, those of nails and screws to 1 lb: the tolerance is half of that. How the tables
   are made: main member 8 D (10 D for nails and screws) deep, Fe on the nominal diameter, yield at
   the root, reduction terms of Table 12.3.1B. */
#include <string.h>

#include "near.h"
#include "resist/dowel.h"
#include "resist/resist_steps.h"
#include "table/lookup_wood.h"
#include "us.h"

#define DENSITIES 10

/* Table 12K: lag screw through a steel side plate, p = 8 D; pages read from a scan. */
static const double G_12K[DENSITIES] = {
	0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35
};
static const struct {
	double t, D, parallel[DENSITIES], perpendicular[DENSITIES];
} table_12K[] = {
	{ 0.075, 0.25, { 170, 160, 150, 150, 150, 140, 140, 130, 130, 130 },
	  { 130, 120, 110, 110, 100, 100, 100, 90, 90, 90 } },
	{ 0.075, 0.3125, { 220, 200, 190, 190, 190, 180, 180, 170, 170, 160 },
	  { 160, 140, 130, 130, 130, 120, 120, 110, 110, 100 } },
	{ 0.075, 0.375, { 220, 200, 200, 190, 190, 180, 180, 170, 170, 170 },
	  { 160, 140, 130, 130, 120, 120, 120, 110, 100, 100 } },
	{ 0.105, 0.25, { 180, 170, 160, 160, 160, 150, 150, 140, 140, 140 },
	  { 140, 130, 120, 120, 110, 110, 110, 100, 100, 90 } },
	{ 0.105, 0.3125, { 230, 210, 200, 200, 190, 190, 190, 180, 170, 170 },
	  { 170, 150, 140, 140, 130, 130, 120, 110, 110, 110 } },
	{ 0.105, 0.375, { 230, 210, 200, 200, 200, 190, 190, 180, 180, 170 },
	  { 160, 140, 140, 130, 130, 120, 120, 110, 110, 110 } },
};

static struct dowel_joint lag(double D, double ls, double Fem, double Fes, double theta)
{
	const struct lag_screw_row *r = lag_screw_row(D);
	const struct bending_yield_row *y = bending_yield_row("lag-screw", D);

	assert_non_null(r);
	assert_non_null(y);
	return (struct dowel_joint){ .D = IN(D),
		                     .Dr = IN(r->Dr_in),
		                     .lm = IN(8.0 * D),
		                     .ls = IN(ls),
		                     .Fem = Fem,
		                     .Fes = Fes,
		                     .Fyb = PSI(y->Fyb_psi),
		                     .theta = DEG(theta) };
}

static void table_12k(void **state)
{
	size_t cells = 0;

	(void)state;
	for (size_t i = 0; i < sizeof table_12K / sizeof table_12K[0]; i++) {
		const double D = table_12K[i].D;
		double Fes;

		assert_true(dowel_bearing_steel(IN(table_12K[i].t), &Fes));
		for (size_t k = 0; k < 2 * DENSITIES; k++, cells++) {
			const double G = G_12K[k / 2], theta = k % 2 == 0 ? 0.0 : 90.0;
			const struct dowel_joint j =
				lag(D, table_12K[i].t,
			            dowel_bearing_wood(NULL, G, IN(D), DEG(theta)), Fes, theta);
			const struct dowel_yield y = dowel_yield(NULL, &j);

			assert_row("NDS-2018 Table 12K", TO_LB(y.value),
			           k % 2 == 0 ? table_12K[i].parallel[k / 2]
			                      : table_12K[i].perpendicular[k / 2],
			           5.0);
			assert_int_equal(y.mode, MODE_IIIS);
		}
	}
	assert_int_equal(cells, 120);
}

/* Wood to wood: side and main member of one gravity, each at its own angle to the grain. */
static void wood_to_wood(void **state)
{
	static const struct {
		const char *source;
		bool is_lag;
		double D, lm, ls, G, main_deg, side_deg, want, tol;
		enum yield_mode mode;
	} row[] = {
		{ "NDS-2018 Table 12J, 1/4 lag, ts 1/2, parallel", true, 0.25, 2.0, 0.5, 0.50, 0, 0,
		  120, 5, MODE_IIIS },
		{ "NDS-2018 Table 12J, 1/4 lag, ts 1/2, perpendicular", true, 0.25, 2.0, 0.5, 0.50,
		  90, 90, 80, 5, MODE_IIIS },
		{ "NDS-2018 Table 12A, 1/2 bolt, parallel", false, 0.5, 1.5, 1.5, 0.50, 0, 0, 480,
		  5, MODE_II },
		{ "NDS-2018 Table 12A, 1/2 bolt, side perpendicular", false, 0.5, 1.5, 1.5, 0.50, 0,
		  90, 300, 5, MODE_II },
		{ "NDS-2018 Table 12A, 1/2 bolt, both perpendicular", false, 0.5, 1.5, 1.5, 0.50,
		  90, 90, 220, 5, MODE_II },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double D = IN(row[i].D), theta = fmax(row[i].main_deg, row[i].side_deg);
		const double Fem = dowel_bearing_wood(NULL, row[i].G, D, DEG(row[i].main_deg));
		const double Fes = dowel_bearing_wood(NULL, row[i].G, D, DEG(row[i].side_deg));
		struct dowel_joint j = { .D = D,
			                 .Dr = D,
			                 .Fem = Fem,
			                 .Fes = Fes,
			                 .Fyb = PSI(45000.0),
			                 .theta = DEG(theta) };
		struct dowel_yield y;

		if (row[i].is_lag)
			j = lag(row[i].D, row[i].ls, Fem, Fes, theta);
		j.lm = IN(row[i].lm);
		j.ls = IN(row[i].ls);
		y = dowel_yield(NULL, &j);
		assert_row(row[i].source, TO_LB(y.value), row[i].want, row[i].tol);
		assert_int_equal(y.mode, row[i].mode);
	}
}

/* NDS-2018 Table 12L (wood screw, No. 10: D 0.190, root 0.152) and 12N (common nails), G 0.50, p 10
   D. */
static void small_fasteners(void **state)
{
	static const struct {
		const char *source;
		double D, Dr, ls, want;
	} row[] = {
		{ "NDS-2018 Table 12L, No. 10, ts 1/2", 0.190, 0.152, 0.5, 90 },
		{ "NDS-2018 Table 12N, 6d, ts 3/4", 0.113, 0.113, 0.75, 72 },
		{ "NDS-2018 Table 12N, 8d, ts 3/4", 0.131, 0.131, 0.75, 90 },
		{ "NDS-2018 Table 12N, 10d, ts 3/4", 0.148, 0.148, 0.75, 105 },
		{ "NDS-2018 Table 12N, 16d, ts 3/4", 0.162, 0.162, 0.75, 121 },
		{ "NDS-2018 Table 12N, 6d, ts 1", 0.113, 0.113, 1.0, 72 },
		{ "NDS-2018 Table 12N, 8d, ts 1", 0.131, 0.131, 1.0, 97 },
		{ "NDS-2018 Table 12N, 10d, ts 1", 0.148, 0.148, 1.0, 118 },
		{ "NDS-2018 Table 12N, 16d, ts 1", 0.162, 0.162, 1.0, 141 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double D = IN(row[i].D), Fe = dowel_bearing_wood(NULL, 0.50, D, 0.0);
		const struct bending_yield_row *yield =
			bending_yield_row("nail-or-wood-screw", row[i].D);
		struct dowel_joint j = { .D = D,
			                 .Dr = IN(row[i].Dr),
			                 .lm = 10.0 * D,
			                 .ls = IN(row[i].ls),
			                 .Fem = Fe,
			                 .Fes = Fe,
			                 .theta = 0.0 };

		assert_non_null(yield);
		j.Fyb = PSI(yield->Fyb_psi);
		assert_row(row[i].source, TO_LB(dowel_yield(NULL, &j).value), row[i].want, 0.5);
	}
}

/* Dowel bearing of NDS-2018 Table 12.3.3 (printed to 50 psi, so exact) and its end points. */
static void table_12_3_3(void **state)
{
	static const struct {
		double G, D, theta, Fe;
	} row[] = {
		{ 0.55, 0.5, 0, 6150 },     { 0.55, 0.25, 90, 5150 },   { 0.55, 0.3125, 90, 4600 },
		{ 0.55, 0.375, 90, 4200 },  { 0.55, 0.5, 90, 3650 },    { 0.55, 0.19, 0, 5550 },
		{ 0.50, 0.3125, 90, 4000 }, { 0.49, 0.25, 0, 5500 },    { 0.46, 0.375, 90, 3250 },
		{ 0.43, 0.25, 0, 4800 },    { 0.43, 0.25, 90, 3600 },   { 0.42, 0.25, 0, 4700 },
		{ 0.42, 0.25, 90, 3450 },   { 0.42, 0.3125, 90, 3100 }, { 0.42, 0.375, 90, 2850 },
		{ 0.42, 0.19, 45, 3350 },   { 0.36, 0.25, 0, 4050 },    { 0.36, 0.3125, 90, 2500 },
		{ 0.35, 0.5, 90, 1900 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row(
			"NDS-2018 Table 12.3.3",
			TO_PSI(dowel_bearing_wood(NULL, row[i].G, IN(row[i].D), DEG(row[i].theta))),
			row[i].Fe, 1e-6);
}

/* Group action: D 1 in, s 4 in, wood E 1,400,000 psi. Cells from memory, printed to 0.01; equation
   from memory too, so each vouches for the other. Table 11.3.6C: Am/As 12, Am 5 in2, steel E
   30,000,000. Table 11.3.6A (wood side member): As/Am 0.5, As 5 in2; its gamma of 180,000 comes out
   of the metal one at D = (2/3)^(2/3). */
static void group_action(void **state)
{
	static const double metal[] = { 0.97, 0.89, 0.80, 0.70, 0.62 },
			    wood[] = { 0.98, 0.92, 0.84 };

	(void)state;
	for (int n = 2; n <= 6; n++)
		assert_row("NDS-2018 Table 11.3.6C",
		           step_group_factor.value(
				   (double[]){ n, 1.0, 4.0, 1.4e6 * 5.0, 30.0e6 * 5.0 / 12.0 }),
		           metal[n - 2], 0.005);
	for (int n = 2; n <= 4; n++)
		assert_row("NDS-2018 Table 11.3.6A",
		           step_group_factor.value((double[]){ n, pow(2.0 / 3.0, 2.0 / 3.0), 4.0,
		                                               1.4e6 * 10.0, 1.4e6 * 5.0 }),
		           wood[n - 2], 0.005);
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(table_12k),
		                            cmocka_unit_test(wood_to_wood),
		                            cmocka_unit_test(small_fasteners),
		                            cmocka_unit_test(table_12_3_3),
		                            cmocka_unit_test(group_action) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
