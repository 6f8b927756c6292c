/* SPDX-License-Identifier: MIT */
/* Sizes and bearing strengths of NDS-2018 in full, typed a second time: Table 12.3.3 (printed to 50
   psi), Appendix L Table L2 (thread and thread without tip; half-inch lengths above 3 in are not
   printed and follow footnote 2), lead holes of 12.1.4.2 and 12.1.5.2 (part of the diameter, to
   0.001 in). */
#include "near.h"
#include "resist/dowel.h"
#include "resist/lag_screw.h"
#include "resist/wood_screw.h"
#include "us.h"

/* Under 1/4 in at any angle; along the grain; across it at 1/4, 5/16, 3/8, 7/16 and 1/2 in. */
#define BEARINGS 7
static const double bearing_D[BEARINGS] = {0.19, 0.25, 0.25, 0.3125, 0.375, 0.4375, 0.5};
static const struct {
	double G, Fe[BEARINGS];
} table_12_3_3[] = {
	{0.55, {5550, 6150, 5150, 4600, 4200, 3900, 3650}},
	{0.51, {4800, 5700, 4600, 4100, 3750, 3450, 3250}},
	{0.50, {4650, 5600, 4450, 4000, 3650, 3400, 3150}},
	{0.49, {4450, 5500, 4350, 3900, 3550, 3300, 3050}},
	{0.46, {4000, 5150, 3950, 3550, 3250, 3000, 2800}},
	{0.43, {3500, 4800, 3600, 3200, 2950, 2700, 2550}},
	{0.42, {3350, 4700, 3450, 3100, 2850, 2600, 2450}},
	{0.41, {3200, 4600, 3350, 3000, 2750, 2550, 2350}},
	{0.37, {2650, 4150, 2900, 2600, 2350, 2200, 2050}},
	{0.36, {2550, 4050, 2750, 2500, 2250, 2100, 1950}},
	{0.35, {2400, 3900, 2650, 2400, 2150, 2000, 1900}},
};

static void dowel_bearing(void **state)
{
	size_t cells = 0;

	(void)state;
	for (size_t i = 0; i < sizeof table_12_3_3 / sizeof *table_12_3_3; i++)
		for (size_t k = 0; k < BEARINGS; k++, cells++) {
			const double theta = k < 2 ? 0.0 : 90.0, D = IN(bearing_D[k]);
			const double Fe =
				dowel_bearing_wood(NULL, table_12_3_3[i].G, D, DEG(theta));

			assert_row("NDS-2018 Table 12.3.3", TO_PSI(Fe), table_12_3_3[i].Fe[k], 1e-6);
			if (k == 0) /* thin dowels do not feel the grain */
				assert_row("NDS-2018 Table 12.3.3, D under 1/4 in",
					   TO_PSI(dowel_bearing_wood(NULL, table_12_3_3[i].G, D,
								     DEG(90.0))),
					   table_12_3_3[i].Fe[k], 1e-6);
		}
	assert_int_equal(cells, 77);
}

/* Steel by its thickness: ASTM A653 grade 33 under 1/4 in, A36 at 1/4 in. Appendix I.2: 2.2 Fu and
   2.4 Fu over 1.6, 61,875 and 87,000 psi. */
static void steel_bearing(void **state)
{
	static const double gauge[] = {0.036, 0.048, 0.060, 0.075, 0.105, 0.120, 0.134, 0.179, 0.239};
	double Fe;

	(void)state;
	for (size_t i = 0; i < sizeof gauge / sizeof *gauge; i++) {
		assert_true(dowel_bearing_steel(IN(gauge[i]), &Fe));
		assert_near(TO_PSI(Fe), 61850.0, 1e-12);
	}
	assert_true(dowel_bearing_steel(IN(0.25), &Fe));
	assert_near(TO_PSI(Fe), 87000.0, 1e-12);
	assert_within(2.2 * 45000.0 / 1.6, 61850.0, 25.1);
	assert_near(2.4 * 58000.0 / 1.6, 87000.0, 1e-12);
}

#define LAGS 5
static const double lag_D[LAGS] = {0.25, 0.3125, 0.375, 0.4375, 0.5};
static const struct {
	double L, T, T_less_E[LAGS];
} table_L2[] = {
	{1, 0.75, {0.5938, 0.5625, 0.5312, 0.4688, 0.4375}},
	{1.5, 1.25, {1.0938, 1.0625, 1.0312, 0.9688, 0.9375}},
	{2, 1.5, {1.3438, 1.3125, 1.2812, 1.2188, 1.1875}},
	{2.5, 1.75, {1.5938, 1.5625, 1.5312, 1.4688, 1.4375}},
	{3, 2, {1.8438, 1.8125, 1.7812, 1.7188, 1.6875}},
	{3.5, 2.25, {2.0938, 2.0625, 2.0312, 1.9688, 1.9375}},
	{4, 2.5, {2.3438, 2.3125, 2.2812, 2.2188, 2.1875}},
	{4.5, 2.75, {2.5938, 2.5625, 2.5312, 2.4688, 2.4375}},
	{5, 3, {2.8438, 2.8125, 2.7812, 2.7188, 2.6875}},
	{5.5, 3.25, {3.0938, 3.0625, 3.0312, 2.9688, 2.9375}},
	{6, 3.5, {3.3438, 3.3125, 3.2812, 3.2188, 3.1875}},
	{7, 4, {3.8438, 3.8125, 3.7812, 3.7188, 3.6875}},
	{8, 4.5, {4.3438, 4.3125, 4.2812, 4.2188, 4.1875}},
	{9, 5, {4.8438, 4.8125, 4.7812, 4.7188, 4.6875}},
	{10, 5.5, {5.3438, 5.3125, 5.2812, 5.2188, 5.1875}},
	{11, 6, {5.8438, 5.8125, 5.7812, 5.7188, 5.6875}},
	{12, 6, {5.8438, 5.8125, 5.7812, 5.7188, 5.6875}},
};

static void lag_threads(void **state)
{
	size_t cells = 0;

	(void)state;
	for (size_t i = 0; i < sizeof table_L2 / sizeof *table_L2; i++)
		for (size_t k = 0; k < LAGS; k++) {
			struct lag_screw_geometry g;

			/* the 1 in screw has less thread than footnote 2 gives: its T must be said */
			const bool odd = table_L2[i].L < 1.5;

			cells++;
			assert_int_equal(lag_screw_geometry_find(NULL, IN(lag_D[k]),
								 IN(table_L2[i].L), NAN, 0.0,
								 IN(14.0), &g),
					 !odd);
			/* all of it in the wood */
			assert_true(lag_screw_geometry_find(
				NULL, IN(lag_D[k]), IN(table_L2[i].L),
				odd ? IN(table_L2[i].T) : (double)NAN, 0.0, IN(14.0), &g));
			assert_row("NDS-2018 Table L2, T", TO_IN(g.T), table_L2[i].T, 1e-9);
			assert_row("NDS-2018 Table L2, T - E", TO_IN(g.p_t), table_L2[i].T_less_E[k],
				   0.00006);
		}
	assert_int_equal(cells, 85);
}

static const struct {
	double D, G, low, high;
} lag_leads[] = {
	{0.25, 0.67, 0.163, 0.212},
	{0.25, 0.55, 0.150, 0.188},
	{0.25, 0.42, 0.100, 0.175},
	{0.3125, 0.67, 0.203, 0.266},
	{0.3125, 0.55, 0.188, 0.234},
	{0.3125, 0.42, 0.125, 0.219},
	{0.375, 0.67, 0.244, 0.319},
	{0.375, 0.55, 0.225, 0.281},
	{0.375, 0.42, 0.150, 0.262},
	{0.4375, 0.67, 0.284, 0.372},
	{0.4375, 0.55, 0.263, 0.328},
	{0.4375, 0.42, 0.175, 0.306},
	{0.5, 0.67, 0.325, 0.425},
	{0.5, 0.55, 0.300, 0.375},
	{0.5, 0.42, 0.200, 0.350},
};

static const struct {
	double D, G, hole; /* 0: none asked for */
} screw_leads[] = {
	{0.164, 0.67, 0.118},
	{0.164, 0.55, 0.092},
	{0.164, 0.42, 0},
	{0.177, 0.67, 0.128},
	{0.177, 0.55, 0.099},
	{0.177, 0.42, 0},
	{0.190, 0.67, 0.137},
	{0.190, 0.55, 0.106},
	{0.190, 0.42, 0},
	{0.216, 0.67, 0.154},
	{0.216, 0.55, 0.120},
	{0.216, 0.42, 0},
	{0.242, 0.67, 0.176},
	{0.242, 0.55, 0.137},
	{0.242, 0.42, 0},
};

static void lead_holes(void **state)
{
	double low, high;

	(void)state;
	for (size_t i = 0; i < sizeof lag_leads / sizeof *lag_leads; i++) {
		assert_true(lag_lead_hole(NULL, IN(lag_leads[i].D), lag_leads[i].G, &low, &high));
		assert_row("NDS-2018 12.1.4.2, least", TO_IN(low), lag_leads[i].low, 0.00051);
		assert_row("NDS-2018 12.1.4.2, most", TO_IN(high), lag_leads[i].high, 0.00051);
	}
	for (size_t i = 0; i < sizeof screw_leads / sizeof *screw_leads; i++) {
		struct lag_screw_geometry g;

		assert_true(wood_screw_geometry_find(NULL, IN(screw_leads[i].D), IN(3.0), NAN, 0.0,
						     IN(5.5), &g));
		assert_true(wood_screw_lead_hole(NULL, &g, screw_leads[i].G, &low, &high));
		assert_row("NDS-2018 12.1.5.2", TO_IN(high), screw_leads[i].hole, 0.00051);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(dowel_bearing),
		cmocka_unit_test(steel_bearing),
		cmocka_unit_test(lag_threads),
		cmocka_unit_test(lead_holes),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
