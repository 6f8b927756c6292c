/* SPDX-License-Identifier: MIT */
/* Withdrawal of lag screws as published.

   Table 12.2A: NDS-2015 and NDS-2018, all 22 densities and 11 diameters, lb per inch of thread,
   printed to 1 lb: each cell read from a scan of the page. E2.3: AWC Structural Wood Design
   Examples 2015/2018, Example E2.3. */
#include <stdlib.h>

#include "near.h"
#include "resist/lag_screw.h"
#include "us.h"

#define DIAMETERS 11

static const double D_in[DIAMETERS] = { 0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625,
	                                0.75, 0.875,  1.0,   1.125,  1.25 };

static const struct {
	double G;
	double W[DIAMETERS];
} table_12_2A[] = {
	{ 0.73, { 397, 469, 538, 604, 668, 789, 905, 1016, 1123, 1226, 1327 } },
	{ 0.71, { 381, 450, 516, 579, 640, 757, 868, 974, 1077, 1176, 1273 } },
	{ 0.68, { 357, 422, 484, 543, 600, 709, 813, 913, 1009, 1103, 1193 } },
	{ 0.67, { 349, 413, 473, 531, 587, 694, 796, 893, 987, 1078, 1167 } },
	{ 0.58, { 281, 332, 381, 428, 473, 559, 641, 719, 795, 869, 940 } },
	{ 0.55, { 260, 307, 352, 395, 437, 516, 592, 664, 734, 802, 868 } },
	{ 0.51, { 232, 274, 314, 353, 390, 461, 528, 593, 656, 716, 775 } },
	{ 0.50, { 225, 266, 305, 342, 378, 447, 513, 576, 636, 695, 752 } },
	{ 0.49, { 218, 258, 296, 332, 367, 434, 498, 559, 617, 674, 730 } },
	{ 0.47, { 205, 242, 278, 312, 345, 408, 467, 525, 580, 634, 686 } },
	{ 0.46, { 199, 235, 269, 302, 334, 395, 453, 508, 562, 613, 664 } },
	{ 0.44, { 186, 220, 252, 283, 312, 369, 423, 475, 525, 574, 621 } },
	{ 0.43, { 179, 212, 243, 273, 302, 357, 409, 459, 508, 554, 600 } },
	{ 0.42, { 173, 205, 235, 264, 291, 344, 395, 443, 490, 535, 579 } },
	{ 0.41, { 167, 198, 226, 254, 281, 332, 381, 428, 473, 516, 559 } },
	{ 0.40, { 161, 190, 218, 245, 271, 320, 367, 412, 455, 497, 538 } },
	{ 0.39, { 155, 183, 210, 236, 261, 308, 353, 397, 438, 479, 518 } },
	{ 0.38, { 149, 176, 202, 227, 251, 296, 340, 381, 422, 461, 498 } },
	{ 0.37, { 143, 169, 194, 218, 241, 285, 326, 367, 405, 443, 479 } },
	{ 0.36, { 137, 163, 186, 209, 231, 273, 313, 352, 389, 425, 460 } },
	{ 0.35, { 132, 156, 179, 200, 222, 262, 300, 337, 373, 407, 441 } },
	{ 0.31, { 110, 130, 149, 167, 185, 218, 250, 281, 311, 339, 367 } },
};

static void table_12_2a(void **state)
{
	size_t cells = 0;

	(void)state;
	for (size_t i = 0; i < sizeof table_12_2A / sizeof table_12_2A[0]; i++) {
		for (size_t k = 0; k < DIAMETERS; k++, cells++) {
			const double D = IN(D_in[k]), G = table_12_2A[i].G;

			assert_true(lag_withdrawal_covers(G, D));
			assert_row("NDS-2018 Table 12.2A", TO_LB_PER_IN(lag_withdrawal(NULL, G, D)),
			           table_12_2A[i].W[k], 0.5);
		}
	}
	assert_int_equal(cells, 242);
}

/* 1/2 x 4 in lag screw, Southern Pine (G 0.55), 1-1/2 in side member, tip 5/16 in: 955.0 lb before
   factors. */
static void design_example_e2_3(void **state)
{
	const struct connection_factors none = { 1.0, 1.0, 1.0, 1.0, 1.0, 1.0 };
	struct lag_screw_geometry g;

	(void)state;
	assert_true(lag_screw_geometry_find(NULL, IN(0.5), IN(4.0), NAN, IN(1.5), IN(5.5), &g));
	assert_within(TO_IN(g.p_t), 2.1875, 5e-5);
	assert_within(TO_LB_PER_IN(lag_withdrawal(NULL, 0.55, g.D)), 436.6, 0.05);
	assert_within(
		TO_LB(lag_withdrawal_capacity(NULL, lag_withdrawal(NULL, 0.55, g.D), g.p_t, &none)),
		955.0, 0.05);
}

/* Thread without tip, T - E, of NDS-2018 Appendix L Table L2: rows of the table, printed here to
   0.001 in. */
static void table_l2(void **state)
{
	static const double L[] = { 2, 2.5, 3, 4, 5, 6, 7, 8 };
	static const struct {
		double D, T_less_E[8];
	} row[] = {
		{ 0.25, { 1.344, 1.594, 1.844, 2.344, 2.844, 3.344, 3.844, 4.344 } },
		{ 0.3125, { 1.313, 1.563, 1.813, 2.313, 2.813, 3.313, 3.813, 4.313 } },
		{ 0.375, { 1.281, 1.531, 1.781, 2.281, 2.781, 3.281, 3.781, 4.281 } },
		{ 0.5, { 1.188, 1.438, 1.688, 2.188, 2.688, 3.188, 3.688, 4.188 } },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		for (size_t k = 0; k < 8; k++) {
			struct lag_screw_geometry g;

			/* nothing above a very deep piece: all the thread is inside */
			assert_true(lag_screw_geometry_find(NULL, IN(row[i].D), IN(L[k]), NAN, 0.0,
			                                    IN(20.0), &g));
			assert_row("NDS-2018 Table L2", TO_IN(g.p_t), row[i].T_less_E[k], 0.00051);
		}
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(table_12_2a),
		                            cmocka_unit_test(design_example_e2_3),
		                            cmocka_unit_test(table_l2) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
