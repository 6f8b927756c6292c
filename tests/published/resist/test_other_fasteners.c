/* SPDX-License-Identifier: MIT */
/* Wood screws, nails, heads in pull-through and nailed blocks.

   Printed cells: NDS-2018 Table 12.2B (No. 10, G 0.50: 135), Table 12.2C (8d, G 0.50: 32), Table
   12.2F; AWC Structural Wood Design Examples 2015/2018, Example E2.1a. The longer lists come from
   the printed equations, worked out by somebody else in another language: a second typing-in. */
#include "near.h"
#include "resist/blocking.h"
#include "resist/member.h"
#include "resist/nail.h"
#include "resist/wood_screw.h"
#include "table/lookup_fastener.h"
#include "us.h"

static const double gravity[] = {0.55, 0.5, 0.49, 0.46, 0.43, 0.42, 0.41, 0.37, 0.36, 0.35};
#define GRAVITIES (sizeof gravity / sizeof *gravity)

/* Eq. 12.2-2, lb/in to 0.1. */
static const struct {
	double D, W[GRAVITIES];
} wood_screws[] = {
	{0.138, {119.0, 98.3, 94.4, 83.2, 72.7, 69.4, 66.1, 53.8, 51.0, 48.2}},        /* No. 6 */
	{0.151, {130.2, 107.6, 103.3, 91.1, 79.6, 75.9, 72.3, 58.9, 55.8, 52.7}},      /* No. 7 */
	{0.164, {141.4, 116.9, 112.2, 98.9, 86.4, 82.4, 78.6, 64.0, 60.6, 57.3}},      /* No. 8 */
	{0.177, {152.6, 126.1, 121.1, 106.7, 93.3, 89.0, 84.8, 69.1, 65.4, 61.8}},     /* No. 9 */
	{0.19, {163.8, 135.4, 130.0, 114.6, 100.1, 95.5, 91.0, 74.1, 70.2, 66.3}},     /* No. 10 */
	{0.216, {186.2, 153.9, 147.8, 130.3, 113.8, 108.6, 103.5, 84.3, 79.8, 75.4}},  /* No. 12 */
	{0.242, {208.6, 172.4, 165.6, 145.9, 127.5, 121.7, 115.9, 94.4, 89.4, 84.5}},  /* No. 14 */
	{0.268, {231.0, 191.0, 183.4, 161.6, 141.2, 134.7, 128.4, 104.6, 99.0, 93.6}}, /* No. 16 */
	{0.294,
	 {253.5, 209.5, 201.2, 177.3, 154.9, 147.8, 140.9, 114.7, 108.6, 102.6}},       /* No. 18 */
	{0.32, {275.9, 228.0, 219.0, 193.0, 168.6, 160.9, 153.3, 124.9, 118.2, 111.7}}, /* No. 20 */
	{0.372,
	 {320.7, 265.1, 254.6, 224.3, 196.0, 187.0, 178.2, 145.1, 137.4, 129.9}}, /* No. 24 */
};

static void table_12_2b(void **state)
{
	(void)state;
	assert_row("NDS-2018 Table 12.2B, No. 10, G 0.50",
		   TO_LB_PER_IN(wood_screw_withdrawal(NULL, 0.50, IN(0.19))), 135, 0.5);
	for (size_t i = 0; i < sizeof wood_screws / sizeof *wood_screws; i++)
		for (size_t g = 0; g < GRAVITIES; g++) {
			assert_true(wood_screw_withdrawal_covers(gravity[g], IN(wood_screws[i].D)));
			assert_row("NDS-2018 Eq. 12.2-2",
				   TO_LB_PER_IN(wood_screw_withdrawal(NULL, gravity[g],
								      IN(wood_screws[i].D))),
				   wood_screws[i].W[g], 0.0501);
		}
}

/* Eq. 12.2-3, 12.2-4, 12.2-5, lb/in to 0.1. */
static const struct {
	enum nail_shank shank;
	double D, G, W;
} nails[] = {
	{NAIL_SMOOTH, 0.113, 0.55, 35.0},
	{NAIL_RING_SHANK, 0.113, 0.55, 61.5},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.55, 21.4},
	{NAIL_SMOOTH, 0.131, 0.55, 40.6},
	{NAIL_RING_SHANK, 0.131, 0.55, 71.3},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.55, 24.8},
	{NAIL_SMOOTH, 0.148, 0.55, 45.8},
	{NAIL_RING_SHANK, 0.148, 0.55, 80.6},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.55, 28.1},
	{NAIL_SMOOTH, 0.162, 0.55, 50.2},
	{NAIL_RING_SHANK, 0.162, 0.55, 88.2},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.55, 30.7},
	{NAIL_SMOOTH, 0.113, 0.5, 27.6},
	{NAIL_RING_SHANK, 0.113, 0.5, 50.9},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.5, 18.6},
	{NAIL_SMOOTH, 0.131, 0.5, 32.0},
	{NAIL_RING_SHANK, 0.131, 0.5, 59.0},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.5, 21.5},
	{NAIL_SMOOTH, 0.148, 0.5, 36.1},
	{NAIL_RING_SHANK, 0.148, 0.5, 66.6},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.5, 24.3},
	{NAIL_SMOOTH, 0.162, 0.5, 39.5},
	{NAIL_RING_SHANK, 0.162, 0.5, 72.9},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.5, 26.6},
	{NAIL_SMOOTH, 0.113, 0.46, 22.4},
	{NAIL_RING_SHANK, 0.113, 0.46, 43.0},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.46, 16.4},
	{NAIL_SMOOTH, 0.131, 0.46, 25.9},
	{NAIL_RING_SHANK, 0.131, 0.46, 49.9},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.46, 19.0},
	{NAIL_SMOOTH, 0.148, 0.46, 29.3},
	{NAIL_RING_SHANK, 0.148, 0.46, 56.4},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.46, 21.5},
	{NAIL_SMOOTH, 0.162, 0.46, 32.1},
	{NAIL_RING_SHANK, 0.162, 0.46, 61.7},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.46, 23.5},
	{NAIL_SMOOTH, 0.113, 0.43, 18.9},
	{NAIL_RING_SHANK, 0.113, 0.43, 37.6},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.43, 14.8},
	{NAIL_SMOOTH, 0.131, 0.43, 21.9},
	{NAIL_RING_SHANK, 0.131, 0.43, 43.6},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.43, 17.2},
	{NAIL_SMOOTH, 0.148, 0.43, 24.8},
	{NAIL_RING_SHANK, 0.148, 0.43, 49.3},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.43, 19.4},
	{NAIL_SMOOTH, 0.162, 0.43, 27.1},
	{NAIL_RING_SHANK, 0.162, 0.43, 53.9},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.43, 21.2},
	{NAIL_SMOOTH, 0.113, 0.42, 17.8},
	{NAIL_RING_SHANK, 0.113, 0.42, 35.9},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.42, 14.3},
	{NAIL_SMOOTH, 0.131, 0.42, 20.7},
	{NAIL_RING_SHANK, 0.131, 0.42, 41.6},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.42, 16.6},
	{NAIL_SMOOTH, 0.148, 0.42, 23.3},
	{NAIL_RING_SHANK, 0.148, 0.42, 47.0},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.42, 18.7},
	{NAIL_SMOOTH, 0.162, 0.42, 25.6},
	{NAIL_RING_SHANK, 0.162, 0.42, 51.4},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.42, 20.5},
	{NAIL_SMOOTH, 0.113, 0.36, 12.1},
	{NAIL_RING_SHANK, 0.113, 0.36, 26.4},
	{NAIL_SMOOTH_STAINLESS, 0.113, 0.36, 11.3},
	{NAIL_SMOOTH, 0.131, 0.36, 14.1},
	{NAIL_RING_SHANK, 0.131, 0.36, 30.6},
	{NAIL_SMOOTH_STAINLESS, 0.131, 0.36, 13.2},
	{NAIL_SMOOTH, 0.148, 0.36, 15.9},
	{NAIL_RING_SHANK, 0.148, 0.36, 34.5},
	{NAIL_SMOOTH_STAINLESS, 0.148, 0.36, 14.9},
	{NAIL_SMOOTH, 0.162, 0.36, 17.4},
	{NAIL_RING_SHANK, 0.162, 0.36, 37.8},
	{NAIL_SMOOTH_STAINLESS, 0.162, 0.36, 16.3},
};

static void table_12_2c(void **state)
{
	(void)state;
	assert_row("NDS-2018 Table 12.2C, 8d common, G 0.50",
		   TO_LB_PER_IN(nail_withdrawal(NULL, NAIL_SMOOTH, 0.50, IN(0.131))), 32, 0.5);
	for (size_t i = 0; i < sizeof nails / sizeof *nails; i++)
		assert_row("NDS-2018 Eq. 12.2-3 to 12.2-5",
			   TO_LB_PER_IN(nail_withdrawal(NULL, nails[i].shank, nails[i].G,
							IN(nails[i].D))),
			   nails[i].W, 0.0501);
}

/* AWC Structural Wood Design Examples 2015/2018, E2.1a: 8d common through a 0.105 in steel strap
   into Spruce-Pine-Fir: 49.5 lb. */
static void example_e2_1a(void **state)
{
	const struct nail_row *nail = nail_row("common", "8d");

	(void)state;
	assert_non_null(nail);
	assert_row("E2.1a",
		   TO_LB(nail_withdrawal(NULL, NAIL_SMOOTH, 0.42, IN(nail->D_in)) *
			 IN(nail->L_in - 0.105)),
		   49.5, 0.05);
}

static void table_12_2f(void **state)
{
	(void)state;
	assert_row("NDS-2018 Table 12.2F, DH 0.234, t 5/16",
		   TO_LB(head_pull_through(NULL, 0.50, IN(0.234), IN(0.3125))), 40, 0.5);
	assert_row("NDS-2018 Table 12.2F, DH 0.312, t 1",
		   TO_LB(head_pull_through(NULL, 0.50, IN(0.312), IN(1.0))), 132, 0.5);
}

/* The second branch of Eq. 12.2-6: 1725 pi DH^2 G^2, from t = 2.5 DH on; below, at and above. */
static void pull_through_branches(void **state)
{
	const double DH = 0.363, meet = 1725.0 * 3.14159265358979323846 * DH * DH * 0.42 * 0.42;

	(void)state;
	assert_near(TO_LB(head_pull_through(NULL, 0.42, IN(DH), IN(2.5 * DH))), meet, 1e-12);
	assert_near(TO_LB(head_pull_through(NULL, 0.42, IN(DH), IN(3.5 * DH))), meet, 1e-12);
	assert_near(TO_LB(head_pull_through(NULL, 0.42, IN(DH), IN(1.25 * DH))), meet / 2.0, 1e-12);
}

/* 600 lb in the middle of 22-1/2 in: ends 300 lb, 3375 lb in; 2x6 on edge 446 psi, flat 1636 psi.
 */
static void nailed_block(void **state)
{
	const struct block_load middle = {LB(600.0), IN(22.5), IN(11.25)};
	const struct block_forces f = block_forces(NULL, &middle);

	(void)state;
	assert_near(TO_LB(f.near_end), 300.0, 1e-12);
	assert_near(TO_LB(f.far_end), 300.0, 1e-12);
	assert_near(TO_INCH_POUND(f.M), 3375.0, 1e-12);
	assert_within(TO_INCH_POUND(f.M) / 7.5625, 446.0, 0.5);
	assert_within(TO_INCH_POUND(f.M) / 2.0625, 1636.0, 0.5);
	const struct block_load aside = {LB(600.0), IN(22.5), IN(4.5)};
	const struct block_forces a = block_forces(NULL, &aside);

	assert_near(TO_LB(a.near_end), 480.0, 1e-12);
	assert_near(TO_INCH_POUND(a.M), 2160.0, 1e-12);
	assert_near(TO_LB(block_end_fastener(NULL, LB(100.0))), 67.0, 1e-12);
}

/* Nine nails 1 in apart: J = 6 * 1^2 + 6 * 1^2 = 12 in2, the corners stand sqrt(2) in out. 60 and 80 lb
   make 100 lb; 120 lb in of twist add 120 sqrt(2)/12. Two nails 1 in apart: J 0.5 in2, r 0.5 in. */
static void nail_group(void **state)
{
	const struct block_grid nine = {3, 3, IN(2.0), IN(2.0)}, two = {1, 2, 0.0, IN(1.0)},
				one = {1, 1, 0.0, 0.0};

	(void)state;
	assert_near(TO_LB(block_grid_force(NULL, &nine, LB(60.0), LB(80.0), LB(120.0) * IN(1.0))),
		    100.0 / 9.0 + 10.0 * sqrt(2.0), 1e-12);
	assert_near(TO_LB(block_grid_force(NULL, &two, LB(60.0), 0.0, LB(10.0) * IN(1.0))),
		    30.0 + 10.0, 1e-12);
	assert_near(TO_LB(block_grid_force(NULL, &one, LB(60.0), LB(80.0), 0.0)), 100.0, 1e-12);
	assert_true(block_grid_force(NULL, &one, LB(60.0), LB(80.0), 1.0) > 1e300);
}

/* 100 lb along the rafters, 3 in above a block 3-1/2 in high: 475 lb in. Torsion of a rectangle, T/(k l c^2)
   with k 0.208 for a square, 0.246 for 2 to 1, 1/3 for a strip (Timoshenko, Strength of Materials, part I):
   the short formula comes within 5 %. Both ways: 0.4 + 0.3/(1 - 0.25^2). */
static void twisted_block(void **state)
{
	const double T = LB(100.0) * IN(1.0);
	static const struct {
		double l, c, k;
	} row[] = {{3.5, 3.5, 0.208}, {7.0, 3.5, 0.246}, {3.0, 2.0, 0.231}, {30.0, 1.0, 0.326}};

	(void)state;
	assert_near(TO_INCH_POUND(block_twist(NULL, LB(-100.0), IN(3.0), IN(3.5))), 475.0, 1e-12);
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const double want = T / (row[i].k * IN(row[i].l) * IN(row[i].c) * IN(row[i].c));

		assert_near(block_twist_stress(NULL, T, IN(row[i].c), IN(row[i].l)), want, 0.05);
		assert_near(block_twist_stress(NULL, T, IN(row[i].l), IN(row[i].c)), want, 0.05);
	}
	assert_near(block_both_ways(NULL, 4e6, 1e7, 3e6, 1e7, 4e7), 0.4 + 0.3 / 0.9375, 1e-12);
	assert_true(block_both_ways(NULL, 4e6, 1e7, 3e6, 1e7, 1e7) > 1e300);
	/* held over half its depth: an eighth of the shear */
	assert_near(member_notch_shear(NULL, 600.0, 0.04, 0.1, 0.05),
		    8.0 * member_shear_stress(NULL, 600.0, 0.04, 0.1), 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(table_12_2b),           cmocka_unit_test(table_12_2c),
		cmocka_unit_test(example_e2_1a),         cmocka_unit_test(table_12_2f),
		cmocka_unit_test(pull_through_branches),
		cmocka_unit_test(nailed_block), cmocka_unit_test(nail_group), cmocka_unit_test(twisted_block),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
