/* SPDX-License-Identifier: MIT */
/* Flush collectors: each condition of ASCE/SEI 7-16 29.4.4 at, below and above its limit; exposed
   sides; the pressure. */
#include "near.h"

#include <string.h>

#include "load/asce7_solar.h"
#include "load/us_units.h"

/* Meets every condition with something to spare: six panels of 3.4 by 5.6 ft. */
static struct flush_array good(void)
{
	return (struct flush_array){.tilt = 0.0,
				    .h2 = inch(6.0),
				    .columns = 3,
				    .rows = 2,
				    .column_gap = inch(0.5),
				    .row_gap = inch(0.5),
				    .along = ft(3.4),
				    .up = ft(5.6),
				    .to_edge = ft(4.0),
				    .to_ridge = ft(3.0)};
}

static unsigned failed(struct flush_array a)
{
	return solar_flush_failed(&a);
}

static struct flush_array with(size_t offset, double value)
{
	struct flush_array a = good();

	*(double *)((char *)&a + offset) = value;
	return a;
}

#define MEMBER(m) offsetof(struct flush_array, m)

static void conditions(void **state)
{
	static const struct {
		size_t member;
		double value;
		unsigned failed;
	} row[] = {
		{MEMBER(tilt), 1.99 * RAD_PER_DEG, 0},
		{MEMBER(tilt), 2.0 * RAD_PER_DEG, 0},
		{MEMBER(tilt), 2.01 * RAD_PER_DEG, FLUSH_BIT(FLUSH_PARALLEL)},
		{MEMBER(tilt), -2.01 * RAD_PER_DEG, FLUSH_BIT(FLUSH_PARALLEL)},
		{MEMBER(h2), 9.99 * M_PER_IN, 0},
		{MEMBER(h2), 10.0 * M_PER_IN, 0},
		{MEMBER(h2), 0.254, 0}, /* the same in metres */
		{MEMBER(h2), 10.01 * M_PER_IN, FLUSH_BIT(FLUSH_HEIGHT)},
		{MEMBER(column_gap), 0.24 * M_PER_IN, FLUSH_BIT(FLUSH_GAP)},
		{MEMBER(column_gap), 0.25 * M_PER_IN, 0},
		{MEMBER(row_gap), 0.24 * M_PER_IN, FLUSH_BIT(FLUSH_GAP)},
		{MEMBER(row_gap), 0.26 * M_PER_IN, 0},
		{MEMBER(up), 6.69 * M_PER_FT, 0},
		{MEMBER(up), 6.7 * M_PER_FT, 0},
		{MEMBER(up), 6.71 * M_PER_FT, FLUSH_BIT(FLUSH_GAP_SPACING)},
		{MEMBER(up), 8.0 * M_PER_FT,
		 FLUSH_BIT(FLUSH_GAP_SPACING)}, /* a 4 by 8 ft thermal collector */
		{MEMBER(along), 10.0 * M_PER_FT, FLUSH_BIT(FLUSH_GAP_SPACING)},
		{MEMBER(to_edge), 11.9 * M_PER_IN, FLUSH_BIT(FLUSH_EDGE)},
		{MEMBER(to_edge), 12.0 * M_PER_IN, 0}, /* 2 h2 */
		{MEMBER(to_edge), 12.1 * M_PER_IN, 0},
		{MEMBER(to_ridge), 11.9 * M_PER_IN, FLUSH_BIT(FLUSH_RIDGE)},
		{MEMBER(to_ridge), 12.0 * M_PER_IN, 0},
		{MEMBER(to_ridge), INFINITY, 0},
		/* a fact that is missing fails */
		{MEMBER(tilt), NAN, FLUSH_BIT(FLUSH_PARALLEL)},
		{MEMBER(column_gap), NAN, FLUSH_BIT(FLUSH_GAP)},
		{MEMBER(to_edge), NAN, FLUSH_BIT(FLUSH_EDGE)},
	};

	(void)state;
	assert_int_equal(failed(good()), 0);
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_int_equal(failed(with(row[i].member, row[i].value)), row[i].failed);
}

/* A single collector has no neighbours and so no gap to keep. */
static void no_neighbours(void **state)
{
	struct flush_array a = good();

	(void)state;
	a.columns = a.rows = 1;
	a.column_gap = a.row_gap = NAN;
	assert_int_equal(failed(a), 0);
}

/* All that fail are named, not only the first; an unknown height breaks everything that hangs on
   it. */
static void several_fail(void **state)
{
	struct flush_array a = good();

	(void)state;
	a.h2 = inch(11.0);
	a.up = ft(8.0);
	a.to_edge = inch(20.0);
	assert_int_equal(failed(a), FLUSH_BIT(FLUSH_HEIGHT) | FLUSH_BIT(FLUSH_GAP_SPACING) |
					    FLUSH_BIT(FLUSH_EDGE));
	a = good();
	a.h2 = NAN;
	assert_int_equal(failed(a),
			 FLUSH_BIT(FLUSH_HEIGHT) | FLUSH_BIT(FLUSH_EDGE) | FLUSH_BIT(FLUSH_RIDGE));
	for (int c = 0; c < FLUSH_CONDITION_COUNT; c++) {
		assert_true(strlen(flush_condition_text((enum flush_condition)c)) > 20);
		assert_non_null(strstr(flush_condition_clause((enum flush_condition)c), "29.4.4"));
		assert_true(flush_condition_confidence((enum flush_condition)c) < CONFIDENCE_COUNT);
	}
}

/* h 20 ft: a side is exposed beyond 10 ft from the roof edge, with no neighbour within max(4 h2, 4
   ft). */
static void exposed_sides(void **state)
{
	static const struct {
		double h2_in, to_roof_edge_ft, to_array_ft;
		bool exposed;
	} row[] = {
		{6, 9.99, INFINITY, false}, {6, 10.0, INFINITY, false},
		{6, 10.01, INFINITY, true}, {6, INFINITY, INFINITY, true},
		{6, 20, 3.99, false},       {6, 20, 4.0, false},
		{6, 20, 4.01, true},        {18, 20, 5.99, false},
		{18, 20, 6.0, false},       {18, 20, 6.01, true},
		{6, 5, 3, false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		for (int side = 0; side < ARRAY_SIDE_COUNT; side++) {
			struct array_surroundings s = {
				.h = ft(20.0), .h2 = inch(row[i].h2_in), .Lp = ft(5.0)};

			s.to_roof_edge[side] = ft(row[i].to_roof_edge_ft);
			s.to_array[side] = ft(row[i].to_array_ft);
			assert_int_equal(solar_exposed_sides(&s, NULL),
					 row[i].exposed ? 1u << side : 0u);
		}
	}
}

/* Lp 4 ft: 6 ft deep along an exposed side, and only there. */
static void row_ends(void **state)
{
	const struct array_surroundings s = {.h = ft(20.0), .h2 = inch(6.0), .Lp = ft(4.0)};
	double from[ARRAY_SIDE_COUNT] = {ft(5.99), ft(100.0), ft(0.0), ft(0.0)};

	(void)state;
	assert_true(solar_row_end(&s, 1u << SIDE_LEFT, from, NULL));
	assert_false(solar_row_end(&s, 1u << SIDE_RIGHT, from, NULL));
	assert_false(solar_row_end(&s, 0, from, NULL));
	from[SIDE_LEFT] = ft(6.0);
	assert_true(solar_row_end(&s, 1u << SIDE_LEFT, from, NULL));
	from[SIDE_LEFT] = ft(6.01);
	assert_false(solar_row_end(&s, 1u << SIDE_LEFT, from, NULL));
	from[SIDE_LEFT] = INFINITY;
	assert_false(solar_row_end(&s, 1u << SIDE_LEFT, from, NULL));
}

static struct wind_pressure pressure(enum edition edition, struct array_wind array)
{
	const struct wind_velocity w = {
		.known = true, .qh = psf(100.0), .Kd_of_p = edition == ASCE7_22 ? 0.85 : 1.0};

	return asce7_array_pressure(edition, &w, &array, NULL);
}

/* gammaa: 0.8 up to 10 ft2, 0.6 in the middle of the logarithm, 0.4 from 100 ft2. */
static void equalization(void **state)
{
	static const struct {
		double A, gammaa;
	} row[] = {{1, 0.8},
		   {10, 0.8},
		   {10.01, 0.8 - 0.4 * 4.3407747932e-4},
		   {31.6227766016838, 0.6},
		   {16, 0.718352006937},
		   {100, 0.4},
		   {100.1, 0.4},
		   {400, 0.4}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct wind_pressure w =
			pressure(ASCE7_16, (struct array_wind){.GCp = -1.0, .A = ft2(row[i].A)});

		assert_near(w.gammaa, row[i].gammaa, 1e-9);
		assert_near(in_psf(w.p), -100.0 * row[i].gammaa, 1e-9);
	}
}

/* qh 100 psf, A 100 ft2 so that gammaa is 0.4. */
static void array_pressures(void **state)
{
	static const struct {
		const char *what;
		enum edition edition;
		double GCp;
		bool exposed;
		unsigned failed;
		double p;
	} row[] = {
		{"inner", ASCE7_16, -1.5, false, 0, -60.0},
		{"exposed uplift", ASCE7_16, -1.5, true, 0, -90.0},
		{"down has no edge factor", ASCE7_16, 0.5, true, 0, 20.0},
		{"a condition fails: full coefficient", ASCE7_16, -1.5, false, 1, -150.0},
		{"and the edge factor stays", ASCE7_16, -1.5, true, 1, -225.0},
		{"down, a condition fails", ASCE7_16, 0.5, true, 1, 50.0},
		{"7-22: Kd in the pressure", ASCE7_22, -1.5, false, 0, -51.0},
		{"7-22: exposed", ASCE7_22, -1.5, true, 0, -76.5},
		{"7-10: net of the inside, no factor", ASCE7_10, -1.5, true, 0, -168.0},
		{"7-10: conditions mean nothing", ASCE7_10, -1.5, false, 1, -168.0},
		{"7-10: down", ASCE7_10, 0.5, true, 0, 68.0},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct array_wind array = {.GCp = row[i].GCp,
						 .A = ft2(100.0),
						 .exposed = row[i].exposed,
						 .flush_failed = row[i].failed,
						 .GCpi = 0.18};

		assert_row(row[i].what, in_psf(pressure(row[i].edition, array).p), row[i].p, 1e-9);
	}
}

static void least(void **state)
{
	const struct wind_velocity w = {.known = true, .qh = psf(10.0), .Kd_of_p = 1.0};
	struct array_wind array = {.GCp = -1.5, .A = ft2(10.0)};
	struct wind_pressure p = asce7_array_pressure(ASCE7_16, &w, &array, NULL);

	(void)state;
	assert_near(in_psf(p.p), -16.0, 1e-12);
	assert_near(in_psf(p.computed), -12.0, 1e-12);
	assert_true(p.minimum);
	array.without_minimum = true;
	p = asce7_array_pressure(ASCE7_16, &w, &array, NULL);
	assert_near(in_psf(p.p), -12.0, 1e-12);
	assert_false(p.minimum);
}

/* An unknown area or coefficient gives no pressure at all, not the least one. */
static void unknown_gives_no_pressure(void **state)
{
	struct array_wind array = {.GCp = -1.5, .A = NAN};

	(void)state;
	assert_true(isnan(pressure(ASCE7_16, array).p));
	array = (struct array_wind){.GCp = NAN, .A = ft2(16.0)};
	assert_true(isnan(pressure(ASCE7_16, array).p));
	assert_false(pressure(ASCE7_16, array).minimum);
}

/* A house by hand: V 115 mph, B, h 18 ft, 5:12, 16 ft2 per foot, 4.5 psf of dead load, ASD net of
   0.6D: 140 and 230 lb at GCp -1.5 without and with gammaE; 261 and 411 lb at -2.5 (to the pound,
   rounded by hand on the way). */
static void house_by_hand(void **state)
{
	static const struct {
		double GCp;
		bool exposed;
		double net_lb;
	} row[] = {{-1.5, false, 140.0},
		   {-1.5, true, 230.0},
		   {-2.5, false, 261.0},
		   {-2.5, true, 411.0}};
	const struct wind_site site = {
		.V = mph(115.0), .exposure = 'B', .Kzt = 1.0, .elevation = NAN, .h = ft(18.0)};
	const struct wind_velocity w = asce7_wind_velocity(ASCE7_16, &site, NULL);
	const double D = 4.5 * cos(atan(5.0 / 12.0));

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct array_wind array = {
			.GCp = row[i].GCp, .A = ft2(16.0), .exposed = row[i].exposed};
		const double p = in_psf(asce7_array_pressure(ASCE7_16, &w, &array, NULL).p);

		assert_within(16.0 * (-0.6 * p - 0.6 * D), row[i].net_lb, 1.0);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(conditions),
		cmocka_unit_test(no_neighbours),
		cmocka_unit_test(several_fail),
		cmocka_unit_test(exposed_sides),
		cmocka_unit_test(row_ends),
		cmocka_unit_test(equalization),
		cmocka_unit_test(array_pressures),
		cmocka_unit_test(least),
		cmocka_unit_test(unknown_gives_no_pressure),
		cmocka_unit_test(house_by_hand),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
