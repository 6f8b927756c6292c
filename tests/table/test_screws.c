/* SPDX-License-Identifier: MIT */
/* Wood screws, nails and sheet screws typed a second time, with sums: NDS-2018 Appendix L, Tables
   L3 and L4; CFSEI Tech Note F701-12 as quoted by a light-steel framing association. Thousandths of
   an inch. */
#include "near.h"
#include "table/lookup_fastener.h"

static void wood_screws(void **state)
{
	static const struct {
		const char *number;
		int D, Dr, DH;
	} rows[] = {
		{"6", 138, 113, 262},  {"7", 151, 122, 287},  {"8", 164, 131, 312},
		{"9", 177, 142, 337},  {"10", 190, 152, 363}, {"12", 216, 171, 414},
		{"14", 242, 196, 480}, {"16", 268, 209, 515}, {"18", 294, 232, 602},
		{"20", 320, 255, 616}, {"24", 372, 298, 724},
	};
	double D = 0, Dr = 0, DH = 0;

	(void)state;
	assert_int_equal(TABLE_WOOD_SCREW_COUNT, sizeof rows / sizeof *rows);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct wood_screw_row *r = wood_screw_row(rows[i].D / 1000.0);

		assert_non_null(r);
		assert_string_equal(r->number, rows[i].number);
		assert_near(r->Dr_in, rows[i].Dr / 1000.0, 0);
		assert_near(r->DH_in, rows[i].DH / 1000.0, 0);
		D += r->D_in;
		Dr += r->Dr_in;
		DH += r->DH_in;
	}
	/* numbers 6 to 24: D = 0.060 in + 0.013 in per number, so the sum is 11 x 0.060 + 144 x
	 * 0.013 */
	assert_near(D, 11 * 0.060 + 144 * 0.013, 1e-12);
	assert_near(Dr, 2.021, 1e-12);
	assert_near(DH, 4.912, 1e-12);
	assert_null(wood_screw_row(0.1875));
	assert_null(wood_screw_row((double)NAN));
}

static void nails(void **state)
{
	static const struct {
		const char *kind, *penny;
		int D, L, head; /* head 0: none printed */
	} rows[] = {
		{"common", "6d", 113, 2000, 266},  {"common", "8d", 131, 2500, 281},
		{"common", "10d", 148, 3000, 312}, {"common", "12d", 148, 3250, 312},
		{"common", "16d", 162, 3500, 344}, {"common", "20d", 192, 4000, 406},
		{"common", "30d", 207, 4500, 438}, {"common", "40d", 225, 5000, 469},
		{"common", "50d", 244, 5500, 500}, {"common", "60d", 263, 6000, 531},
		{"box", "6d", 99, 2000, 0},        {"box", "8d", 113, 2500, 0},
		{"box", "10d", 128, 3000, 0},      {"box", "16d", 135, 3500, 0},
		{"box", "20d", 148, 4000, 0},      {"sinker", "6d", 92, 1875, 0},
		{"sinker", "8d", 113, 2375, 0},    {"sinker", "10d", 120, 2875, 0},
		{"sinker", "16d", 148, 3250, 0},   {"sinker", "20d", 177, 3750, 0},
	};

	(void)state;
	assert_int_equal(TABLE_NAIL_COUNT, sizeof rows / sizeof *rows);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct nail_row *r = nail_row(rows[i].kind, rows[i].penny);

		assert_non_null(r);
		assert_near(r->D_in, rows[i].D / 1000.0, 0);
		assert_near(r->L_in, rows[i].L / 1000.0, 0);
		if (rows[i].head)
			assert_near(r->head_in, rows[i].head / 1000.0, 0);
		else
			assert_true(isnan(r->head_in));
	}
	assert_null(nail_row("common", "7d"));
	assert_null(nail_row("roofing", "8d"));
}

static void sheet_screws(void **state)
{
	static const struct {
		const char *size;
		int d, dw, Pss, Pts;
	} rows[] = {{"No.6", 138, 272, 643, 419},
		    {"No.8", 164, 272, 1278, 586},
		    {"No.10", 190, 340, 1644, 1158},
		    {"No.12", 216, 340, 2330, 2325},
		    {"1/4", 250, 409, 3048, 3201}};
	double sum = 0;

	(void)state;
	assert_int_equal(TABLE_SHEET_SCREW_COUNT, sizeof rows / sizeof *rows);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct sheet_screw_row *r = sheet_screw_row(rows[i].d / 1000.0);

		assert_non_null(r);
		assert_string_equal(r->size, rows[i].size);
		assert_near(r->dw_in, rows[i].dw / 1000.0, 0);
		assert_near(r->Pss_lb, rows[i].Pss * 1.0, 0);
		assert_near(r->Pts_lb, rows[i].Pts * 1.0, 0);
		sum += r->Pss_lb + r->Pts_lb;
	}
	assert_near(sum, 16632.0, 0);
	assert_null(sheet_screw_row(0.3));
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(wood_screws), cmocka_unit_test(nails),
					   cmocka_unit_test(sheet_screws)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
