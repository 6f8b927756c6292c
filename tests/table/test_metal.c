/* SPDX-License-Identifier: MIT */
/* Steel plates (NDS-2018 Tables 12K, 12M, 12P; Appendix I.2) and aluminium (Aluminum Design Manual
   2015 Tables A.3.3, B.4.2), typed a second time; slenderness limits from their formulas. */
#include "table/lookup_metal.h"

#include <math.h>

#include "near.h"

static void steel(void **state)
{
	static const struct {
		double t, Fe; /* 0: not listed */
	} rows[] = {{0.0359, 0},   {0.036, 61850},        {0.179, 61850}, {0.2499, 61850},
		    {0.25, 87000}, {0.25 - 1e-12, 87000}, {0.5, 87000}};

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct steel_bearing_row *r = steel_bearing_row(rows[i].t);

		assert_int_equal(r == NULL, rows[i].Fe < 1);
		if (r != NULL)
			assert_near(r->Fe_psi, rows[i].Fe, 0);
	}
	/* Appendix I.2: 2.2 Fu/1.6 of 45 ksi, 2.4 Fu/1.6 of 58 ksi */
	assert_within(2.2 * 45000 / 1.6, 61850, 50);
	assert_within(2.4 * 58000 / 1.6, 87000, 0);
	assert_null(steel_bearing_row((double)NAN));
}

static void gauges(void **state)
{
	static const struct {
		const char *gauge;
		double t;
	} rows[] = {{"20", 0.036}, {"18", 0.048}, {"16", 0.060}, {"14", 0.075}, {"12", 0.105},
		    {"11", 0.120}, {"10", 0.134}, {"7", 0.179},  {"3", 0.239},  {"1/4", 0.250}};
	double sum = 0;

	(void)state;
	assert_int_equal(TABLE_STEEL_GAUGE_COUNT, 10);
	for (size_t i = 0; i < 10; i++) {
		assert_near(steel_gauge_row(rows[i].gauge)->t_in, rows[i].t, 0);
		sum += table_steel_gauge[i].t_in;
	}
	assert_near(sum, 1.246, 1e-14);
	assert_null(steel_gauge_row("22"));
}

static void aluminium(void **state)
{
	static const struct {
		const char *alloy;
		double Ftu, Fty, kt, Bp, Dp;
	} rows[] = {
		{"6005-T5", 38, 35, 1.25, 45.00, 0.3004},  {"6105-T5", 38, 35, 1.25, 45.00, 0.3004},
		{"6005A-T61", 38, 35, 1.0, 45.00, 0.3004}, {"6061-T6", 38, 35, 1.0, 45.00, 0.3004},
		{"6063-T5", 22, 16, 1.0, 19.52, 0.0858},   {"6063-T6", 30, 25, 1.0, 31.39, 0.1750},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_ALUMINIUM_ALLOY_COUNT);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct aluminium_alloy_row *r = aluminium_alloy_row(rows[i].alloy);

		assert_near(r->Ftu_ksi, rows[i].Ftu, 0);
		assert_near(r->Fty_ksi, rows[i].Fty, 0);
		assert_near(r->kt, rows[i].kt, 0);
		assert_near(r->E_ksi, 10100.0, 0);
		assert_near(r->Bp_ksi, rows[i].Bp, 0);
		assert_near(r->Dp_ksi, rows[i].Dp, 0);
		/* B.5.4: S1 = (Bp - Fty)/(c Dp), S2 = 0.35 Bp/(c Dp), c 5.0 with one edge held, 1.6
		   with both */
		assert_within((r->Bp_ksi - r->Fty_ksi) / (5.0 * r->Dp_ksi), r->one_edge_S1, 0.05);
		assert_within(0.35 * r->Bp_ksi / (5.0 * r->Dp_ksi), r->one_edge_S2, 0.05);
		assert_within((r->Bp_ksi - r->Fty_ksi) / (1.6 * r->Dp_ksi), r->two_edge_S1, 0.05);
		assert_within(0.35 * r->Bp_ksi / (1.6 * r->Dp_ksi), r->two_edge_S2, 0.05);
	}
	assert_null(aluminium_alloy_row("6061"));
	assert_null(aluminium_alloy_row("6061-t6"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(steel),
		cmocka_unit_test(gauges),
		cmocka_unit_test(aluminium),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
