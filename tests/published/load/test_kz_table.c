/* SPDX-License-Identifier: MIT */
/* Kz of ASCE/SEI 7-10 and 7-16 Table 26.10-1 (7-10: 26.9-1) and 7-22 at the heights of houses, by
   hand from the clause's formula with three places: no printed page (the printed tables round to
   two places, and the constants of 7-22 are from memory). Rows for 7-10 in exposure B below 30 ft
   are left out: components and cladding do not use them. */
#include "near.h"

#include "load/asce7_wind.h"
#include "load/us_units.h"

static const double height[7] = {15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0};

static const struct {
	enum edition edition;
	char exposure;
	double Kz[7];
} row[] = {
	{ASCE7_16, 'B', {.575, .624, .665, .701, .761, .811, .854}},
	{ASCE7_16, 'C', {.849, .902, .945, .982, 1.044, 1.094, 1.137}},
	{ASCE7_16, 'D', {1.030, 1.083, 1.126, 1.162, 1.222, 1.270, 1.311}},
	{ASCE7_10, 'B', {NAN, NAN, NAN, .701, .761, .811, .854}},
	{ASCE7_10, 'C', {.849, .902, .945, .982, 1.044, 1.094, 1.137}},
	{ASCE7_10, 'D', {1.030, 1.083, 1.126, 1.162, 1.222, 1.270, 1.311}},
	{ASCE7_22, 'B', {.573, .619, .656, .689, .744, .790, .829}},
	{ASCE7_22, 'C', {.851, .903, .945, .980, 1.040, 1.088, 1.129}},
	{ASCE7_22, 'D', {1.035, 1.088, 1.131, 1.168, 1.228, 1.276, 1.317}},
};

static double Kz(enum edition edition, char exposure, double h_ft)
{
	const struct wind_site site = {
		.V = mph(100.0), .exposure = exposure, .Kzt = 1.0, .elevation = NAN, .h = ft(h_ft)};

	return asce7_wind_velocity(edition, &site, NULL).Kz;
}

static void kz_by_height(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		for (int k = 0; k < 7; k++)
			if (!isnan(row[i].Kz[k]))
				assert_row("Kz", Kz(row[i].edition, row[i].exposure, height[k]),
					   row[i].Kz[k], 0.0005);
}

/* The basic wind speed is defined at 33 ft in exposure C, where Kz is 1: 1.000 in 7-22, 1.002
   before. */
static void kz_at_the_anemometer(void **state)
{
	(void)state;
	assert_within(Kz(ASCE7_16, 'C', 33.0), 1.002, 0.0005);
	assert_within(Kz(ASCE7_22, 'C', 33.0), 1.000, 0.0005);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(kz_by_height),
		cmocka_unit_test(kz_at_the_anemometer),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
