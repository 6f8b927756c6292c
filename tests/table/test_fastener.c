/* SPDX-License-Identifier: MIT */
/* Fastener tables of NDS-2018 typed a second time, with sums: Appendix L Table L2, Table I1,
   Tables 12.5.1A to E, 12.1.4, 12.1.5. */
#include "table/lookup_wood.h"

#include <math.h>

#include "near.h"

/* Table L2: tip lengths in thirty-seconds of an inch. */
static void lag_dimensions(void **state)
{
	static const struct {
		const char *nominal;
		double D, Dr, E_32nds, threads;
	} rows[] = {
		{"1/4", 0.25, 0.173, 5, 10},   {"5/16", 0.3125, 0.227, 6, 9},
		{"3/8", 0.375, 0.265, 7, 7},   {"7/16", 0.4375, 0.328, 9, 7},
		{"1/2", 0.5, 0.371, 10, 6},    {"5/8", 0.625, 0.471, 13, 5},
		{"3/4", 0.75, 0.579, 16, 4.5}, {"7/8", 0.875, 0.683, 19, 4},
		{"1", 1.0, 0.780, 22, 3.5},
	};
	double D = 0, Dr = 0, E = 0, threads = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct lag_screw_row *r = lag_screw_row(rows[i].D);

		assert_non_null(r);
		assert_string_equal(r->nominal, rows[i].nominal);
		assert_near(r->Dr_in, rows[i].Dr, 0);
		assert_near(r->E_in, rows[i].E_32nds / 32.0, 0);
		assert_near(r->threads_per_in, rows[i].threads, 0);
	}
	for (size_t i = 0; i < TABLE_LAG_SCREW_COUNT; i++) {
		D += table_lag_screw[i].D_in;
		Dr += table_lag_screw[i].Dr_in;
		E += table_lag_screw[i].E_in;
		threads += table_lag_screw[i].threads_per_in;
	}
	assert_near(D, 82.0 / 16.0, 0);
	assert_near(Dr, 3.877, 1e-14);
	assert_near(E, 107.0 / 32.0, 0);
	assert_near(threads, 56.0, 0);
	/* A diameter that came through metres and back is still the same; a neighbour is not. */
	assert_ptr_equal(lag_screw_row(0.3125 + 9e-7), lag_screw_row(0.3125));
	assert_null(lag_screw_row(0.3125 + 2e-6));
	assert_null(lag_screw_row(0.3));
	assert_null(lag_screw_row(1.25));
	assert_null(lag_screw_row((double)NAN));
}

static void bending_yield(void **state)
{
	static const struct {
		const char *fastener;
		double D, Fyb; /* Fyb 0: not listed */
	} rows[] = {
		{"lag-screw", 0.25, 70000},
		{"lag-screw", 0.3125, 60000},
		{"lag-screw", 0.375, 45000},
		{"lag-screw", 1.25, 45000},
		{"lag-screw", 0.24, 0},
		{"lag-screw", 0.26, 0},
		{"lag-screw", 0.35, 0},
		{"lag-screw", 1.26, 0},
		{"bolt", 0.25, 45000},
		{"bolt", 1.0, 45000},
		{"bolt", 1.01, 0},
		{"nail-or-wood-screw", 0.098, 0},
		{"nail-or-wood-screw", 0.099, 100000},
		{"nail-or-wood-screw", 0.142, 100000},
		{"nail-or-wood-screw", 0.143, 90000},
		{"nail-or-wood-screw", 0.177, 90000},
		{"nail-or-wood-screw", 0.178, 80000},
		{"nail-or-wood-screw", 0.236, 80000},
		{"nail-or-wood-screw", 0.237, 70000},
		{"nail-or-wood-screw", 0.273, 70000},
		{"nail-or-wood-screw", 0.274, 60000},
		{"nail-or-wood-screw", 0.344, 60000},
		{"nail-or-wood-screw", 0.345, 45000},
		{"nail-or-wood-screw", 0.375, 45000},
		{"nail-or-wood-screw", 0.376, 0},
		{"hardened-nail", 0.119, 0},
		{"hardened-nail", 0.120, 130000},
		{"hardened-nail", 0.142, 130000},
		{"hardened-nail", 0.192, 115000},
		{"hardened-nail", 0.207, 100000},
		{"hardened-nail", 0.208, 0},
		{"nail", 0.1, 0},
	};
	double sum = 0;

	(void)state;
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct bending_yield_row *r = bending_yield_row(rows[i].fastener, rows[i].D);

		if ((r == NULL) != (rows[i].Fyb < 1))
			fail_msg("%s %g", rows[i].fastener, rows[i].D);
		if (r != NULL)
			assert_near(r->Fyb_psi, rows[i].Fyb, 0);
	}
	for (size_t i = 0; i < TABLE_BENDING_YIELD_COUNT; i++)
		sum += table_bending_yield[i].Fyb_psi;
	/* lags 175, bolt 45, nails 445, hardened 345 thousand */
	assert_near(sum, 1010000.0, 0);
	assert_int_equal(bending_yield_row("lag-screw", 0.25)->status, CONFIRMED);
	assert_int_equal(bending_yield_row("bolt", 0.25)->status, ONE_SOURCE);
}

static void geometry(void **state)
{
	static const struct {
		const char *item, *loading;
		double minimum, full; /* 0: no multiple of D */
	} rows[] = {
		{"end-distance", "parallel-tension-softwood", 3.5, 7},
		{"end-distance", "parallel-tension-hardwood", 2.5, 5},
		{"end-distance", "parallel-compression", 2, 4},
		{"end-distance", "perpendicular", 2, 4},
		{"spacing-in-row", "parallel", 3, 4},
		{"spacing-in-row", "perpendicular", 3, 0},
		{"edge-distance", "parallel-short", 1.5, 1.5},
		{"edge-distance", "parallel-long", 1.5, 1.5},
		{"edge-distance", "perpendicular-loaded-edge", 4, 4},
		{"edge-distance", "perpendicular-unloaded-edge", 1.5, 1.5},
		{"row-spacing", "parallel", 1.5, 1.5},
		{"row-spacing", "perpendicular-short", 2.5, 2.5},
		{"row-spacing", "perpendicular-middle", 0, 0},
		{"row-spacing", "perpendicular-long", 5, 5},
		{"withdrawal-only", "edge", 1.5, 1.5},
		{"withdrawal-only", "end", 4, 4},
		{"withdrawal-only", "spacing", 4, 4},
		{"small-screw", "spacing", 5, 10},
		{"small-screw", "end", 5, 10},
		{"small-screw", "edge", 2.5, 2.5},
		{"penetration", "lag-screw", 4, 8},
		{"penetration", "wood-screw", 6, 10},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_CONNECTION_GEOMETRY_COUNT);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct connection_geometry_row *r =
			connection_geometry_row(rows[i].item, rows[i].loading);

		assert_non_null(r);
		assert_int_equal(isnan(r->minimum_D), rows[i].minimum < 1);
		assert_int_equal(isnan(r->full_D), rows[i].full < 1);
		if (rows[i].minimum > 1)
			assert_near(r->minimum_D, rows[i].minimum, 0);
		if (rows[i].full > 1)
			assert_near(r->full_D, rows[i].full, 0);
	}
	assert_null(connection_geometry_row("edge-distance", "perpendicular"));
}

static void lead_holes(void **state)
{
	static const struct {
		const char *fastener;
		double G, low, high; /* 0: no hole asked for */
	} rows[] = {
		{"lag-screw-thread", 0.42, 0.40, 0.70},
		{"lag-screw-thread", 0.50, 0.40, 0.70},
		{"lag-screw-thread", 0.51, 0.60, 0.75},
		{"lag-screw-thread", 0.60, 0.60, 0.75},
		{"lag-screw-thread", 0.61, 0.65, 0.85},
		{"wood-screw-withdrawal", 0.55, 0.70, 0.70},
		{"wood-screw-withdrawal", 0.65, 0.90, 0.90},
		{"wood-screw-withdrawal", 0.50, 0, 0},
	};

	(void)state;
	assert_int_equal(TABLE_LEAD_HOLE_COUNT, 6);
	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		const struct lead_hole_row *r = lead_hole_row(rows[i].fastener, rows[i].G);

		assert_non_null(r);
		if (rows[i].low > 0) {
			assert_near(r->fraction_low, rows[i].low, 0);
			assert_near(r->fraction_high, rows[i].high, 0);
		} else {
			assert_true(isnan(r->fraction_low) && isnan(r->fraction_high));
		}
	}
	assert_null(lead_hole_row("lag-screw-thread", 0));
	assert_null(lead_hole_row("lag-screw-thread", 1.01));
	assert_null(lead_hole_row("lag-screw-thread", (double)NAN));
	assert_null(lead_hole_row("bolt", 0.5));
}

/* Which rows a check must tell: two of NDS-2024 that were not read; none of 2018. */
static void nds_editions(void **state)
{
	static const struct {
		const char *edition, *subject;
		enum nds_difference_effect effect;
	} rows[] = {
		{"2018", "head-pull-through", NDS_DIFFERENCE_EFFECT_FORMULA_ONLY},
		{"2018", "nail-withdrawal", NDS_DIFFERENCE_EFFECT_FORMULA_ONLY},
		{"2018", "threaded-nails", NDS_DIFFERENCE_EFFECT_NONE},
		{"2018", "incising", NDS_DIFFERENCE_EFFECT_NONE},
		{"2018", "dowels-and-lumber", NDS_DIFFERENCE_EFFECT_NONE},
		{"2024", "head-pull-through", NDS_DIFFERENCE_EFFECT_NONE},
		{"2024", "shear-of-members", NDS_DIFFERENCE_EFFECT_NOT_READ},
		{"2024", "multi-ply", NDS_DIFFERENCE_EFFECT_NONE},
		{"2024", "fire", NDS_DIFFERENCE_EFFECT_NONE},
		{"2024", "dowels-and-lumber", NDS_DIFFERENCE_EFFECT_NOT_READ},
	};

	(void)state;
	assert_int_equal(sizeof rows / sizeof *rows, TABLE_NDS_DIFFERENCE_COUNT);
	for (size_t i = 0; i < TABLE_NDS_DIFFERENCE_COUNT; i++) {
		assert_string_equal(table_nds_difference[i].edition, rows[i].edition);
		assert_string_equal(table_nds_difference[i].subject, rows[i].subject);
		assert_int_equal(table_nds_difference[i].effect, rows[i].effect);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(lag_dimensions),
		cmocka_unit_test(bending_yield),
		cmocka_unit_test(geometry),
		cmocka_unit_test(nds_editions),
		cmocka_unit_test(lead_holes),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
