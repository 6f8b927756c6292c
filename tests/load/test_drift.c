/* SPDX-License-Identifier: MIT */
/* Limits of ASCE/SEI 7 7.4.5, 7.7.1, 7.8, 7.9 and 13.3.1, each at, below and above, and laws that
   hold for any input. Expected values by hand. */
#include "near.h"

#include "load/asce7_drift.h"
#include "load/asce7_seismic.h"
#include "load/gravity.h"
#include "load/us_units.h"

#define PCF(x) unit_to_si((x), UNIT_PCF)

/* ps 21 psf at 18 pcf: hb = 1.1667 ft; 0.2 hb = 0.2333 ft; 1.2 hb = 1.4 ft. */
static struct snow_projection projection(void)
{
	return (struct snow_projection){.pg = psf(30.0),
					.ps = psf(21.0),
					.gamma = PCF(18.0),
					.Is = 1,
					.W2 = (double)NAN,
					.lu = ft(40.0),
					.side = ft(20.0),
					.top = ft(3.0),
					.clear = 0};
}

static void test_limits_of_7_8(void **state)
{
	struct snow_projection p = projection();

	(void)state;
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_FORMS);
	p.side = ft(15.0);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_FORMS);
	p.side = ft(14.99);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_SHORT_SIDE);
	p.side = ft(20.0);
	p.top = ft(1.2 * 21.0 / 18.0);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_FORMS);
	p.top = ft(1.2 * 21.0 / 18.0 - 0.01);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_LOW);
	p.top = ft(6.0);
	p.clear = ft(2.0 + 21.0 / 18.0);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_RAISED);
	assert_int_equal(asce7_projection_drift(ASCE7_22, &p, NULL).none, DRIFT_RAISED);
	assert_int_equal(asce7_projection_drift(ASCE7_10, &p, NULL).none, DRIFT_FORMS);
	p.clear -= ft(0.01);
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_FORMS);
	p.ps = 0;
	assert_int_equal(asce7_projection_drift(ASCE7_16, &p, NULL).none, DRIFT_NO_SNOW);
}

/* hd = 0.43 40^(1/3) 40^(1/4) - 1.5 = 0.43 x 3.41995 x 2.51487 - 1.5 = 2.19833 ft; at a
   projection 1.64875 ft. hc = 3 - 1.16667 = 1.83333 ft: not limited, w = 6.595 ft, pd = 18
   x 1.64875 = 29.68 psf. With a top at 2 ft, hc = 0.83333 ft: 4 hd^2/hc = 13.048, 8 hc = 6.6667 ft
   governs; pd = 15 psf. */
static void test_drift_by_hand(void **state)
{
	struct snow_projection p = projection();
	struct snow_drift d = asce7_projection_drift(ASCE7_16, &p, NULL);

	(void)state;
	assert_within(in_psf(d.pd), 29.68, 0.01);
	assert_within(in_ft(d.w), 6.595, 0.001);
	p.top = ft(2.0);
	d = asce7_projection_drift(ASCE7_16, &p, NULL);
	assert_within(in_psf(d.pd), 15.0, 1e-6);
	assert_within(in_ft(d.w), 6.66667, 1e-4);
}

/* 7-22: a windward drift is 8 times as wide as it is high, and where the top is lower it keeps that
 * width. */
static void test_width_7_22(void **state)
{
	struct snow_projection p = projection();

	(void)state;
	p.top = ft(6.0);
	const struct snow_drift tall = asce7_projection_drift(ASCE7_22, &p, NULL);

	assert_within(tall.w, 8.0 * tall.height, 1e-12);
	p.top = ft(2.0);
	const struct snow_drift low = asce7_projection_drift(ASCE7_22, &p, NULL);

	assert_true(low.height < tall.height);
	assert_within(low.w, tall.w, 1e-12);
}

/* A longer fetch, more snow or a taller array never lowers the drift. */
static void test_drift_grows(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};

	(void)state;
	for (size_t e = 0; e < 3; e++) {
		double before = 0;

		for (int i = 0; i < 40; i++) {
			struct snow_projection p = projection();

			p.lu = ft(20.0 + 5.0 * i);
			p.top = ft(20.0);
			const double pd = asce7_projection_drift(edition[e], &p, NULL).pd;

			assert_true(pd >= before);
			before = pd;
		}
		before = 0;
		for (int i = 0; i < 60; i++) {
			struct snow_projection p = projection();

			p.top = ft(0.1 * i);
			const double pd = asce7_projection_drift(edition[e], &p, NULL).pd;

			assert_true(pd >= before);
			before = pd;
		}
	}
}

/* 0.4 x 21 psf x 18 ft = 151.2 plf over 15 ft: 10.08 psf; a roof of 10 ft takes 100.8 plf, the same
 * pressure. */
static void test_sliding(void **state)
{
	struct snow_slide s =
		asce7_slide(psf(21.0), ft(18.0), atan(6.0 / 12.0), false, ft(30.0), NULL);

	(void)state;
	assert_true(s.slides);
	assert_within(unit_from_si(s.line, UNIT_PLF), 151.2, 1e-6);
	assert_within(in_psf(s.pressure), 10.08, 1e-6);
	assert_within(in_ft(s.over), 15.0, 1e-9);
	s = asce7_slide(psf(21.0), ft(18.0), atan(6.0 / 12.0), false, ft(10.0), NULL);
	assert_within(unit_from_si(s.line, UNIT_PLF), 100.8, 1e-6);
	assert_within(in_psf(s.pressure), 10.08, 1e-6);
	assert_false(
		asce7_slide(psf(21.0), ft(18.0), atan(2.0 / 12.0), false, ft(10.0), NULL).slides);
	assert_true(
		asce7_slide(psf(21.0), ft(18.0), atan(2.01 / 12.0), false, ft(10.0), NULL).slides);
	assert_false(
		asce7_slide(psf(21.0), ft(18.0), atan(0.25 / 12.0), true, ft(10.0), NULL).slides);
	assert_true(
		asce7_slide(psf(21.0), ft(18.0), atan(0.26 / 12.0), true, ft(10.0), NULL).slides);
}

/* Held above the array: 30.8 psf x 10 ft x sin 33.690 = 308 x 0.554700 = 170.85 plf. */
static void test_held(void **state)
{
	(void)state;
	assert_within(
		unit_from_si(snow_held(psf(30.8), ft(10.0), atan(8.0 / 12.0), NULL), UNIT_PLF),
		170.85, 0.01);
	assert_within(snow_held(psf(30.8), ft(10.0), 0, NULL), 0, 1e-12);
	assert_within(snow_held(psf(30.8), ft(-1.0), atan(8.0 / 12.0), NULL), 0, 1e-12);
}

static void test_ice(void **state)
{
	(void)state;
	assert_within(in_psf(asce7_ice_dam(psf(21.0), NULL)), 42.0, 1e-9);
	assert_false(asce7_ice_dam_forms(true, false, 30.0));
	assert_true(asce7_ice_dam_forms(true, false, 29.9));
	assert_false(asce7_ice_dam_forms(true, true, 20.0));
	assert_true(asce7_ice_dam_forms(true, true, 19.9));
	assert_true(asce7_ice_dam_forms(true, false, (double)NAN));
	assert_false(asce7_ice_dam_forms(false, false, 0.0));
}

/* IRC Table R301.6 (from memory): 20/16/12, 16/14/12, 12/12/12 psf. */
static void test_irc_live(void **state)
{
	static const struct {
		double rise, At, Lr;
	} row[] = {{3.99, 200, 20}, {3.99, 200.1, 16}, {3.99, 600, 16},  {3.99, 601, 12},
		   {4, 200, 16},    {4, 201, 14},      {11.99, 600, 14}, {11.99, 601, 12},
		   {12, 100, 12},   {12, 700, 12}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		assert_within(in_psf(gravity_roof_live_irc(unit_to_si(row[i].At, UNIT_FT2),
							   atan(row[i].rise / 12.0), NULL)),
			      row[i].Lr, 1e-9);
}

/* Between 0.3 and 1.6 SDS Ip; z above the roof counts as the roof. */
static void test_seismic_bounds(void **state)
{
	struct seismic_component c = {
		.SDS = 1, .Ip = 1, .z = ft(20.0), .h = ft(20.0), .ap = 1, .Rp = 1.5};

	(void)state;
	assert_within(asce7_seismic(ASCE7_10, &c, NULL).horizontal, 0.8, 1e-12);
	c.z = ft(30.0);
	assert_within(asce7_seismic(ASCE7_16, &c, NULL).horizontal, 0.8, 1e-12);
	c.z = 0;
	c.Rp = 12;
	assert_within(asce7_seismic(ASCE7_16, &c, NULL).horizontal, 0.3, 1e-12);
	c.z = ft(20.0);
	c.ap = 2.5;
	c.Rp = 1.5;
	assert_within(asce7_seismic(ASCE7_16, &c, NULL).horizontal, 1.6, 1e-12);
	c.Ip = 1.5;
	assert_within(asce7_seismic(ASCE7_16, &c, NULL).horizontal, 2.4, 1e-12);
	assert_within(asce7_seismic(ASCE7_16, &c, NULL).vertical, 0.2, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_limits_of_7_8),
		cmocka_unit_test(test_drift_by_hand),
		cmocka_unit_test(test_width_7_22),
		cmocka_unit_test(test_drift_grows),
		cmocka_unit_test(test_sliding),
		cmocka_unit_test(test_held),
		cmocka_unit_test(test_ice),
		cmocka_unit_test(test_irc_live),
		cmocka_unit_test(test_seismic_bounds),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
