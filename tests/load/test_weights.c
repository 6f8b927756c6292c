/* SPDX-License-Identifier: MIT */
/* Roof live load, fluids, loads on a slope, and the existing-building triggers. */
#include "near.h"

#include <string.h>

#include "load/gravity.h"
#include "load/triggers.h"
#include "load/us_units.h"

/* 20 R1 R2 by hand, at and around 200 and 600 ft2, 4:12 and 12:12. */
static void roof_live(void **state)
{
	static const struct {
		double At, F, Lr;
	} row[] = {
		{0, 0, 20},     {199, 4, 20},     {200, 4, 20},  {201, 4, 19.98},
		{400, 4, 16},   {599, 4, 12.02},  {600, 4, 12},  {2000, 4, 12},
		{100, 3.9, 20}, {100, 4.2, 19.8}, {100, 6, 18},  {100, 11.9, 12.1},
		{100, 12, 12},  {100, 24, 12},    {500, 10, 12},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row("Lr",
			   in_psf(gravity_roof_live(ft2(row[i].At), atan(row[i].F / 12.0), NULL)),
			   row[i].Lr, 1e-9);
}

/* 1000 kg/m3 is 8.345 lb/gal; 1.06 times that for glycol. */
static void fluids(void **state)
{
	const double gallon = unit_to_si(1.0, UNIT_GAL);

	(void)state;
	assert_within(unit_from_si(gravity_fluid_weight(gallon, GRAVITY_WATER, NULL), UNIT_LB),
		      8.345, 0.0005);
	assert_near(gravity_fluid_weight(gallon, GRAVITY_GLYCOL, NULL),
		    1.06 * gravity_fluid_weight(gallon, GRAVITY_WATER, NULL), 1e-12);
	assert_near(gravity_fluid_weight(gallon, GRAVITY_NO_FLUID, NULL), 0.0, 0.0);
}

/* 105 lb on 4 by 8 ft and 0.5 psf of hardware: 3.78125 psf. */
static void array_dead(void **state)
{
	(void)state;
	assert_near(
		in_psf(gravity_array_dead(unit_to_si(105.0, UNIT_LB), ft2(32.0), psf(0.5), NULL)),
		3.78125, 1e-12);
}

/* The parts put together again are the whole: weight d, and plan load S times the cosine, both
   straight down. */
static void parts_make_the_whole(void **state)
{
	(void)state;
	for (int t = 0; t <= 60; t += 5) {
		const double theta = deg(t);
		const struct slope_load d = gravity_dead_on_slope(100.0, theta, NULL);
		const struct slope_load s = gravity_plan_on_slope(100.0, theta, NULL);

		assert_near(d.normal * cos(theta) + d.parallel * sin(theta), 100.0, 1e-12);
		assert_within(d.normal * sin(theta) - d.parallel * cos(theta), 0.0, 1e-10);
		assert_near(s.normal * cos(theta) + s.parallel * sin(theta), 100.0 * cos(theta),
			    1e-12);
		assert_within(s.normal * sin(theta) - s.parallel * cos(theta), 0.0, 1e-10);
	}
}

/* More than 5 percent, by type or in total. */
static void five_percent(void **state)
{
	static const struct {
		const char *what;
		struct gravity_change change;
		bool by_type, by_total;
	} row[] = {
		{"dead alone 3.5 on 12 (29 %), total falls",
		 {12, 15.5, 20, 0, 0, 0, 32, 15.5},
		 true,
		 false},
		{"exactly 5 %", {100, 105, 0, 0, 0, 0, 200, 210}, false, false},
		{"just below", {100, 104.99, 0, 0, 0, 0, 200, 209.99}, false, false},
		{"just above in dead load", {100, 105.01, 0, 0, 0, 0, 200, 205}, true, false},
		{"just above in total", {100, 104, 0, 0, 0, 0, 200, 210.01}, false, true},
		{"snow held by the array (65 %)",
		 {10, 10.2, 0, 0, 18.639, 30.8, 28.6, 41.0},
		 true,
		 true},
		{"live load alone", {100, 100, 10, 11, 0, 0, 110, 111}, true, false},
		{"snow where there was none", {100, 100, 0, 0, 0, 1, 100, 101}, true, false},
		{"nothing changes", {100, 100, 20, 20, 30, 30, 150, 150}, false, false},
		{"lighter", {100, 90, 20, 20, 0, 0, 120, 110}, false, false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct gravity_trigger t = trigger_gravity(&row[i].change, NULL);

		if (t.by_type != row[i].by_type || t.by_total != row[i].by_total ||
		    t.triggered != (row[i].by_type || row[i].by_total))
			fail_msg("%s: by type %d, by total %d", row[i].what, t.by_type, t.by_total);
		assert_true(t.triggered == (strstr(t.text, "must carry") != NULL));
		assert_true((t.by_type && !t.by_total) ==
			    (strstr(t.text, "type alone rises") != NULL));
		assert_true((t.by_total && !t.by_type) ==
			    (strstr(t.text, "no load type alone") != NULL));
		assert_non_null(strstr(t.clause, "IEBC"));
	}
}

static void ten_percent(void **state)
{
	bool triggered = true;

	(void)state;
	assert_near(trigger_lateral(100.0, 1000.0, &triggered, NULL), 0.10, 1e-15);
	assert_false(triggered);
	trigger_lateral(99.0, 1000.0, &triggered, NULL);
	assert_false(triggered);
	trigger_lateral(101.0, 1000.0, &triggered, NULL);
	assert_true(triggered);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(roof_live),    cmocka_unit_test(fluids),
		cmocka_unit_test(array_dead),   cmocka_unit_test(parts_make_the_whole),
		cmocka_unit_test(five_percent), cmocka_unit_test(ten_percent),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
