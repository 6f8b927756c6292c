/* SPDX-License-Identifier: MIT */
/* Zone maps tile the plane and put each zone where the figures put it; polygons clip right. */
#include "near.h"

#include <string.h>

#include "quantity/quantity.h"
#include "roof/zone.h"

#define FT M_PER_FT
#define DEG RAD_PER_DEG

static void check_tiles(const struct zone_plane *p)
{
	const struct zone_map m = zone_map_of(p);
	const struct polygon plane = polygon_rectangle(0.0, 0.0, p->length, p->slope);
	const double whole = p->length * p->slope;
	double sum = 0.0;

	assert_true(m.known);
	assert_true(m.shapes > 0 && m.shapes <= ZONE_SHAPE_MAX);
	for (int i = 0; i < m.shapes; i++) {
		const double area = polygon_area(&m.shape[i].shape);
		const struct polygon inside = polygon_clip(&m.shape[i].shape, &plane);

		assert_true(area > 0.0);
		assert_near(polygon_area(&inside), area, 1e-12);
		sum += area;
		for (int k = 0; k < i; k++) {
			const struct polygon both =
				polygon_clip(&m.shape[i].shape, &m.shape[k].shape);

			assert_true(polygon_area(&both) <= 1e-9 * whole);
		}
	}
	assert_near(sum, whole, 1e-12);
}

/* Zone at a spot, asked with a speck of a millimetre. */
static enum zone at(const struct zone_plane *p, double x, double y)
{
	const struct zone_map m = zone_map_of(p);
	const struct polygon speck = polygon_rectangle(x - 5e-4, y - 5e-4, x + 5e-4, y + 5e-4);

	return zone_worst(m.shape, m.shapes, &speck, p->edition, p->theta, NULL);
}

/* 42 ft along the eave, 16 ft run to the ridge, 5:12, a 3 ft: up the slope 3/cos = 3.25 ft. */
static struct zone_plane gable(enum edition edition, double theta)
{
	return (struct zone_plane){.edition = edition,
				   .roof = WIND_ROOF_GABLE,
				   .theta = theta,
				   .length = 42.0 * FT,
				   .slope = 16.0 * FT / cos(theta),
				   .beyond = 16.0 * FT,
				   .a = 3.0 * FT,
				   .h = 18.0 * FT};
}

struct spot_row {
	double x, y; /* ft on the plane */
	enum zone zone;
};

static void check_spots(const struct zone_plane *p, const struct spot_row *row, size_t rows)
{
	for (size_t i = 0; i < rows; i++) {
		const enum zone z = at(p, row[i].x * FT, row[i].y * FT);

		if (z != row[i].zone)
			fail_msg("at %g, %g ft: zone %s, not %s", row[i].x, row[i].y, zone_text(z),
				 zone_text(row[i].zone));
		/* the other rake mirrors it */
		assert_int_equal(at(p, p->length - row[i].x * FT, row[i].y * FT), row[i].zone);
	}
}

#define CHECK_SPOTS(p, row) check_spots((p), (row), sizeof(row) / sizeof((row)[0]))

/* The plane is 17.333 ft deep; the ridge strip begins 3.25 ft below its top, at 14.083 ft. */
static void gable_7_16(void **state)
{
	static const struct spot_row row[] = {
		{1.0, 1.0, ZONE_3E},    {2.99, 3.24, ZONE_3E}, {3.01, 3.24, ZONE_2E},
		{2.99, 3.26, ZONE_2N},  {3.01, 3.26, ZONE_1},  {20.0, 1.0, ZONE_2E},
		{1.0, 8.0, ZONE_2N},    {20.0, 8.0, ZONE_1},   {20.0, 14.07, ZONE_1},
		{20.0, 14.09, ZONE_2R}, {1.0, 14.07, ZONE_2N}, {1.0, 14.09, ZONE_3R},
		{2.99, 17.0, ZONE_3R},  {3.01, 17.0, ZONE_2R},
	};
	const struct zone_plane p = gable(ASCE7_16, atan(5.0 / 12.0));

	(void)state;
	CHECK_SPOTS(&p, row);
	check_tiles(&p);
	assert_int_equal(zone_map_of(&p).shapes, 9);
}

static void gable_7_10(void **state)
{
	static const struct spot_row row[] = {
		{1.0, 1.0, ZONE_3},  {20.0, 1.0, ZONE_2},  {1.0, 8.0, ZONE_2},
		{20.0, 8.0, ZONE_1}, {20.0, 15.0, ZONE_2}, {1.0, 15.0, ZONE_3},
	};
	const struct zone_plane p = gable(ASCE7_10, atan(5.0 / 12.0));

	(void)state;
	CHECK_SPOTS(&p, row);
	check_tiles(&p);
}

/* Up to 27 degrees the eave strip belongs to zone 1 and the ridge ends are zone 3; above, the eave
   corners are. */
static void gable_7_22(void **state)
{
	static const struct spot_row low[] = {
		{1.0, 1.0, ZONE_2},  {20.0, 1.0, ZONE_1},  {1.0, 8.0, ZONE_2},
		{20.0, 8.0, ZONE_1}, {20.0, 15.0, ZONE_2}, {1.0, 15.0, ZONE_3},
	};
	static const struct spot_row steep[] = {
		{1.0, 1.0, ZONE_3},  {20.0, 1.0, ZONE_1},  {1.0, 10.0, ZONE_2},
		{20.0, 8.0, ZONE_1}, {20.0, 18.5, ZONE_1}, {1.0, 18.5, ZONE_2},
	};
	struct zone_plane p = gable(ASCE7_22, atan(5.0 / 12.0));

	(void)state;
	CHECK_SPOTS(&p, low);
	check_tiles(&p);
	p = gable(ASCE7_22, atan(8.0 / 12.0));
	CHECK_SPOTS(&p, steep);
	check_tiles(&p);
}

/* 27 degrees is not yet steep. */
static void steep_begins_above_27(void **state)
{
	struct zone_plane p = gable(ASCE7_22, 27.0 * DEG);

	(void)state;
	assert_int_equal(at(&p, 1.0 * FT, 1.0 * FT), ZONE_2);
	p = gable(ASCE7_22, 27.01 * DEG);
	assert_int_equal(at(&p, 1.0 * FT, 1.0 * FT), ZONE_3);
	assert_true(zone_rank(ASCE7_16, 27.0 * DEG, ZONE_3R) >
		    zone_rank(ASCE7_16, 27.0 * DEG, ZONE_3E));
	assert_true(zone_rank(ASCE7_16, 27.01 * DEG, ZONE_3R) <
		    zone_rank(ASCE7_16, 27.01 * DEG, ZONE_3E));
}

/* 7-16 and 7-22, up to 7 degrees: h 20 ft gives strips of 4, 12 and 24 ft on a roof of 100 by 80
   ft. */
static void flat_7_16(void **state)
{
	static const struct spot_row row[] = {
		{1, 1, ZONE_3},         {3.99, 11.99, ZONE_3},   {11.99, 3.99, ZONE_3},
		{4.01, 4.01, ZONE_2},   {3.99, 12.01, ZONE_2},   {12.01, 3.99, ZONE_2},
		{11.99, 11.99, ZONE_2}, {11.9, 40, ZONE_2},      {12.01, 12.01, ZONE_1},
		{23.99, 40, ZONE_1},    {24.01, 24.01, ZONE_1P}, {50, 40, ZONE_1P},
		{1, 79, ZONE_3},        {50, 79, ZONE_2},        {50, 67, ZONE_1},
	};
	struct zone_plane p = {.edition = ASCE7_16,
			       .roof = WIND_ROOF_FLAT,
			       .length = 100.0 * FT,
			       .slope = 80.0 * FT,
			       .a = 8.0 * FT,
			       .h = 20.0 * FT};

	(void)state;
	CHECK_SPOTS(&p, row);
	check_tiles(&p);
	p.edition = ASCE7_22;
	CHECK_SPOTS(&p, row);
	check_tiles(&p);
}

/* Zone 1' needs more than 2.4 h both ways. */
static bool has(const struct zone_plane *p, enum zone z)
{
	const struct zone_map m = zone_map_of(p);

	for (int i = 0; i < m.shapes; i++)
		if (m.shape[i].zone == z)
			return true;
	return false;
}

static void narrow_flat_roof(void **state)
{
	struct zone_plane p = {.edition = ASCE7_16,
			       .roof = WIND_ROOF_FLAT,
			       .length = 100.0 * FT,
			       .slope = 47.9 * FT,
			       .a = 5.0 * FT,
			       .h = 20.0 * FT};

	(void)state;
	assert_false(has(&p, ZONE_1P));
	assert_true(has(&p, ZONE_1));
	check_tiles(&p);
	p.slope = 48.1 * FT;
	assert_true(has(&p, ZONE_1P));
	check_tiles(&p);
	p.slope = 20.0 * FT; /* no more than the two edge strips */
	assert_false(has(&p, ZONE_1));
	check_tiles(&p);
}

static void flat_7_10(void **state)
{
	static const struct spot_row row[] = {
		{1, 1, ZONE_3},       {3.99, 3.99, ZONE_3}, {4.01, 3.99, ZONE_2},
		{3.99, 4.01, ZONE_2}, {4.01, 4.01, ZONE_1}, {20, 1, ZONE_2},
		{20, 39, ZONE_2},     {1, 39, ZONE_3},      {20, 20, ZONE_1},
	};
	const struct zone_plane p = {.edition = ASCE7_10,
				     .roof = WIND_ROOF_FLAT,
				     .length = 60.0 * FT,
				     .slope = 40.0 * FT,
				     .a = 4.0 * FT,
				     .h = 12.0 * FT};

	(void)state;
	CHECK_SPOTS(&p, row);
	check_tiles(&p);
}

/* A gable of 1:12 is a flat roof of both planes: no strip at the ridge, but the far eave counts if
   it is near enough. */
static void low_gable(void **state)
{
	const double theta = atan(1.0 / 12.0);
	struct zone_plane p = {.edition = ASCE7_16,
			       .roof = WIND_ROOF_GABLE,
			       .theta = theta,
			       .length = 60.0 * FT,
			       .slope = 30.0 * FT / cos(theta),
			       .beyond = 30.0 * FT,
			       .a = 4.0 * FT,
			       .h = 15.0 * FT};

	(void)state;
	assert_int_equal(at(&p, 30.0 * FT, 29.0 * FT), ZONE_1P);
	check_tiles(&p);
	/* 8 ft beyond the ridge: the far eave's 9 ft strip (0.6 h) reaches 1 ft over the ridge */
	p.beyond = 8.0 * FT;
	assert_int_equal(at(&p, 30.0 * FT, 29.5 * FT), ZONE_2);
	assert_int_equal(at(&p, 30.0 * FT, 28.5 * FT), ZONE_1);
	check_tiles(&p);
}

/* Strips that overlap: the worse zone, and still tiles. */
static void small_planes(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};
	struct zone_plane p;

	(void)state;
	for (size_t e = 0; e < 3; e++)
		for (double length = 2.0; length < 60.0; length *= 1.7)
			for (double slope = 2.0; slope < 60.0; slope *= 1.6)
				for (double theta = 0.0; theta <= 45.0; theta += 7.5) {
					p = gable(edition[e], theta * DEG);
					p.length = length * FT;
					p.slope = slope * FT;
					p.beyond = slope * FT * cos(p.theta);
					check_tiles(&p);
				}
	p = gable(ASCE7_16, atan(5.0 / 12.0));
	p.slope = 4.0 * FT; /* eave and ridge strips of 3.25 ft overlap */
	assert_int_equal(at(&p, 20.0 * FT, 2.0 * FT), ZONE_2R);
	assert_int_equal(at(&p, 20.0 * FT, 0.5 * FT), ZONE_2E);
	assert_int_equal(at(&p, 1.0 * FT, 2.0 * FT), ZONE_3R);
	p = gable(ASCE7_16, atan(9.0 / 12.0)); /* steep: the eave corner is worse */
	p.slope = 4.0 * FT;
	assert_int_equal(at(&p, 1.0 * FT, 2.0 * FT), ZONE_3E);
}

static void slope_limits(void **state)
{
	static const struct {
		enum wind_roof roof;
		double theta_deg;
		bool known;
	} row[] = {
		{WIND_ROOF_FLAT, 0.0, true},        {WIND_ROOF_FLAT, 7.0, true},
		{WIND_ROOF_FLAT, 7.01, false},      {WIND_ROOF_GABLE, 7.0, true},
		{WIND_ROOF_GABLE, 7.01, true},      {WIND_ROOF_GABLE, 45.0, true},
		{WIND_ROOF_GABLE, 45.01, false},    {WIND_ROOF_MONOSLOPE, 3.0, true},
		{WIND_ROOF_MONOSLOPE, 3.01, true},  {WIND_ROOF_MONOSLOPE, 45.01, false},
		{WIND_ROOF_HIP, 5.0, true},         {WIND_ROOF_HIP, 45.0, true},
		{WIND_ROOF_HIP, 45.01, false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct zone_plane p = gable(ASCE7_16, row[i].theta_deg * DEG);

		p.roof = row[i].roof;
		assert_true(zone_map_of(&p).known == row[i].known);
	}
	/* at 7 degrees the flat map, just above it the gable's */
	assert_false(has(&(struct zone_plane){.edition = ASCE7_16,
					      .roof = WIND_ROOF_GABLE,
					      .theta = 7.0 * DEG,
					      .length = 12.0,
					      .slope = 5.0,
					      .beyond = 5.0,
					      .a = 0.9,
					      .h = 5.0},
			 ZONE_2E));
	assert_true(has(&(struct zone_plane){.edition = ASCE7_16,
					     .roof = WIND_ROOF_GABLE,
					     .theta = 7.01 * DEG,
					     .length = 12.0,
					     .slope = 5.0,
					     .beyond = 5.0,
					     .a = 0.9,
					     .h = 5.0},
			ZONE_2E));
}

static void bad_planes(void **state)
{
	static const double bad[] = {0.0, -1.0, NAN};

	(void)state;
	for (size_t i = 0; i < 3; i++) {
		struct zone_plane p = gable(ASCE7_16, 0.4);

		p.length = bad[i];
		assert_false(zone_map_of(&p).known);
		p = gable(ASCE7_16, 0.4);
		p.slope = bad[i];
		assert_false(zone_map_of(&p).known);
		p = gable(ASCE7_16, 0.4);
		p.a = bad[i];
		assert_false(zone_map_of(&p).known);
	}
}

static int rank_by_number(enum edition edition, double theta, enum zone z)
{
	(void)edition;
	(void)theta;
	return -(int)z;
}

/* A collector over the corner where 1, 2e, 2n and 3e meet, each with its share. */
static void touched_zones(void **state)
{
	const struct zone_plane p = gable(ASCE7_16, atan(5.0 / 12.0));
	const struct zone_map m = zone_map_of(&p);
	const double a = 3.0 * FT, up = 3.25 * FT;
	const struct polygon part = polygon_rectangle(a - 0.5, up - 0.5, a + 1.5, up + 1.5);
	double area[ZONE_COUNT];

	(void)state;
	assert_int_equal(zone_areas(m.shape, m.shapes, &part, area), 4);
	assert_near(area[ZONE_3E], 0.25, 1e-9);
	assert_near(area[ZONE_2E], 0.75, 1e-9);
	assert_near(area[ZONE_2N], 0.75, 1e-9);
	assert_near(area[ZONE_1], 2.25, 1e-9);
	assert_int_equal(zone_worst(m.shape, m.shapes, &part, p.edition, p.theta, NULL), ZONE_3E);
	assert_int_equal(zone_worst(m.shape, m.shapes, &part, p.edition, p.theta, rank_by_number),
			 ZONE_1);
	/* a rectangle that only leans on a zone does not touch it */
	const struct polygon beside = polygon_rectangle(a, up, a + 1.0, up + 1.0);

	assert_int_equal(zone_areas(m.shape, m.shapes, &beside, area), 1);
	assert_int_equal(zone_worst(m.shape, m.shapes, &beside, p.edition, p.theta, NULL), ZONE_1);
	/* off the roof there is no zone */
	const struct polygon off = polygon_rectangle(-2.0, -2.0, -1.0, -1.0);

	assert_int_equal(zone_areas(m.shape, m.shapes, &off, area), 0);
	assert_int_equal(zone_worst(m.shape, m.shapes, &off, p.edition, p.theta, NULL), ZONE_COUNT);
}

static void polygons(void **state)
{
	const struct polygon square = polygon_rectangle(2.0, 2.0, 0.0, 0.0);
	const struct polygon triangle = {.n = 3, .at = {{1.0, 1.0}, {3.0, 1.0}, {1.0, 3.0}}};
	const struct polygon far_off = polygon_rectangle(5.0, 5.0, 6.0, 6.0);
	struct polygon p;

	(void)state;
	assert_near(polygon_area(&square), 4.0, 1e-15);
	assert_near(polygon_area(&triangle), 2.0, 1e-15);
	p = polygon_clip(
		&square,
		&triangle); /* the square of 1 by 1, its corner just touches the long side */
	assert_near(polygon_area(&p), 1.0, 1e-12);
	p = polygon_clip(&triangle, &square);
	assert_near(polygon_area(&p), 1.0, 1e-12);
	p = polygon_clip(&square, &far_off);
	assert_int_equal(p.n, 0);
	assert_near(polygon_area(&p), 0.0, 0.0);
	p = polygon_clip(&square, &square);
	assert_near(polygon_area(&p), 4.0, 1e-15);
}

static void texts(void **state)
{
	(void)state;
	assert_string_equal(zone_text(ZONE_1P), "1'");
	assert_string_equal(zone_text(ZONE_2N), "2n");
	assert_string_equal(zone_text(ZONE_3R), "3r");
	assert_string_equal(zone_text(ZONE_COUNT), "");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(gable_7_16),   cmocka_unit_test(gable_7_10),
		cmocka_unit_test(gable_7_22),   cmocka_unit_test(steep_begins_above_27),
		cmocka_unit_test(flat_7_16),    cmocka_unit_test(narrow_flat_roof),
		cmocka_unit_test(flat_7_10),    cmocka_unit_test(low_gable),
		cmocka_unit_test(small_planes), cmocka_unit_test(slope_limits),
		cmocka_unit_test(bad_planes),   cmocka_unit_test(touched_zones),
		cmocka_unit_test(polygons),     cmocka_unit_test(texts),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
