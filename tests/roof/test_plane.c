/* SPDX-License-Identifier: MIT */
/* Planes of hip and monoslope roofs and the zones of tilted collectors: each zone where the maps
   put it by hand, pieces that tile the plane, mirror images. */
#include "near.h"

#include <string.h>

#include "quantity/quantity.h"
#include "roof/zone.h"

#define FT M_PER_FT
#define DEG RAD_PER_DEG

static void check_tiles(const struct zone_map *m, const struct polygon *plane)
{
	const double whole = polygon_area(plane);
	double sum = 0.0;

	assert_true(m->known);
	assert_true(m->shapes > 0 && m->shapes <= ZONE_SHAPE_MAX);
	for (int i = 0; i < m->shapes; i++) {
		const double area = polygon_area(&m->shape[i].shape);
		const struct polygon inside = polygon_clip(&m->shape[i].shape, plane);

		assert_true(area > 0.0 && m->shape[i].shape.n <= 8);
		assert_near(polygon_area(&inside), area, 1e-9);
		/* and as a window it lets itself through: areas of zones are asked that way */
		if (plane->n + m->shape[i].shape.n <= POLYGON_MAX) {
			const struct polygon seen = polygon_clip(plane, &m->shape[i].shape);

			assert_near(polygon_area(&seen), area, 1e-9);
		}
		sum += area;
		for (int k = 0; k < i; k++) {
			const struct polygon both =
				polygon_clip(&m->shape[i].shape, &m->shape[k].shape);

			assert_true(both.n == 0 || polygon_area(&both) <= 1e-9 * whole);
		}
	}
	assert_near(sum, whole, 1e-9);
}

static enum zone zone_in(const struct zone_map *m, double x, double y)
{
	const struct polygon speck = polygon_rectangle(x - 5e-4, y - 5e-4, x + 5e-4, y + 5e-4);

	return zone_worst(m->shape, m->shapes, &speck, ASCE7_16, 0.3, NULL);
}

struct spot_row {
	double x, y; /* ft on the plane */
	enum zone zone;
};

static void check_spots(const struct zone_plane *p, const struct zone_map *m,
			const struct spot_row *row, size_t rows)
{
	const struct polygon plane = zone_plane_outline(p);

	check_tiles(m, &plane);
	for (size_t i = 0; i < rows; i++) {
		const enum zone z = zone_in(m, row[i].x * FT, row[i].y * FT);

		if (z != row[i].zone)
			fail_msg("at %g, %g ft: zone %s, not %s", row[i].x, row[i].y, zone_text(z),
				 zone_text(row[i].zone));
		assert_int_equal(zone_in(m, p->length - row[i].x * FT, row[i].y * FT), row[i].zone);
	}
}

#define CHECK_SPOTS(p, m, row) check_spots((p), (m), (row), sizeof(row) / sizeof((row)[0]))

/* Footprint 44 by 32 ft, 16 ft run, a 3 ft. At 5:12 cos is 12/13: slope 17.333 ft, strips 3.25 ft
   up it; beside a hip 3 sqrt 2 = 4.243 ft along the eave. */
static struct zone_plane hip(enum edition edition, double theta, bool end)
{
	return (struct zone_plane){.edition = edition,
				   .roof = WIND_ROOF_HIP,
				   .theta = theta,
				   .length = (end ? 32.0 : 44.0) * FT,
				   .slope = 16.0 * FT / cos(theta),
				   .beyond = (end ? 28.0 : 16.0) * FT,
				   .a = 3.0 * FT,
				   .h = 18.0 * FT,
				   .upper = (end ? 0.0 : 12.0) * FT};
}

static void hip_side(void **state)
{
	static const struct spot_row row_16[] = {
		{22, 1, ZONE_2E}, {3, 1, ZONE_3},    {5.1, 1, ZONE_3},   {5.3, 1, ZONE_2E},
		{22, 8, ZONE_1},  {9, 6, ZONE_2R},   {9.7, 6, ZONE_2R},  {9.9, 6, ZONE_1},
		{22, 14, ZONE_1}, {22, 15, ZONE_2R}, {22, 3.2, ZONE_2E}, {22, 3.3, ZONE_1},
	};
	static const struct spot_row row_22[] = {
		{22, 1, ZONE_3}, {3, 1, ZONE_3}, {22, 8, ZONE_1}, {9, 6, ZONE_2}, {22, 15, ZONE_2},
	};
	static const struct spot_row row_10[] = {
		{22, 1, ZONE_2}, {3, 1, ZONE_2}, {22, 8, ZONE_1}, {9, 6, ZONE_2}, {22, 15, ZONE_2},
	};
	struct zone_plane p = hip(ASCE7_16, atan(5.0 / 12.0), false);
	struct zone_map m = zone_map_of(&p);

	(void)state;
	CHECK_SPOTS(&p, &m, row_16);
	p.edition = ASCE7_22;
	m = zone_map_of(&p);
	CHECK_SPOTS(&p, &m, row_22);
	p.edition = ASCE7_10;
	m = zone_map_of(&p);
	CHECK_SPOTS(&p, &m, row_10);
}

/* 7-10: above 25 degrees corners are zone 3. At 6:12 plan is 0.8944 of the slope. */
static void hip_corners_7_10(void **state)
{
	static const struct spot_row steep[] = {
		{3, 1, ZONE_3},
		{22, 1, ZONE_2},
		{16, 16.2, ZONE_3},
		{22, 16.5, ZONE_2},
	};
	struct zone_plane p = hip(ASCE7_10, atan(0.5), false);
	struct zone_map m = zone_map_of(&p);

	(void)state;
	CHECK_SPOTS(&p, &m, steep);
	p = hip(ASCE7_10, 25.0 * DEG, false);
	m = zone_map_of(&p);
	assert_int_equal(zone_in(&m, 3.0 * FT, 1.0 * FT), ZONE_2);
	p = hip(ASCE7_10, 25.01 * DEG, false);
	m = zone_map_of(&p);
	assert_int_equal(zone_in(&m, 3.0 * FT, 1.0 * FT), ZONE_3);
}

static void hip_end(void **state)
{
	static const struct spot_row row[] = {
		{16, 1, ZONE_2E},  {3, 1, ZONE_3},  {16, 8, ZONE_1},
		{16, 15, ZONE_2R}, {9, 6, ZONE_2R},
	};
	const struct zone_plane p = hip(ASCE7_16, atan(5.0 / 12.0), true);
	const struct zone_map m = zone_map_of(&p);

	(void)state;
	assert_int_equal(zone_plane_outline(&p).n, 3);
	CHECK_SPOTS(&p, &m, row);
}

/* Every slope and many sizes, down to planes that are all strips; a square house ends in a point.
 */
static void hips_tile(void **state)
{
	(void)state;
	for (int e = ASCE7_10; e <= ASCE7_22; e++)
		for (double theta = 2.0; theta <= 45.0; theta += 4.3)
			for (double length = 12.0; length <= 90.0; length += 13.0)
				for (int end = 0; end <= 1; end++) {
					struct zone_plane p =
						hip((enum edition)e, theta * DEG, end);
					const double W = fmin(length, 30.0);

					p.length = (end ? W : length) * FT;
					p.slope = 0.5 * W * FT / cos(p.theta);
					p.beyond = 0.5 * W * FT;
					p.upper = end ? 0.0 : (length - W) * FT;
					const struct zone_map m = zone_map_of(&p);
					const struct polygon plane = zone_plane_outline(&p);

					check_tiles(&m, &plane);
					for (p.h = 1.0; p.h < 5.0 && p.theta < 7.0 * DEG;
					     p.h += 0.37) {
						const struct zone_map low = zone_map_of(&p);
						const struct zone_map t = zone_map_tilted(&p);

						check_tiles(&low, &plane);
						check_tiles(&t, &plane);
					}
				}
}

/* Up to 7 degrees one flat roof. */
static void low_hip_is_flat(void **state)
{
	struct zone_plane p = hip(ASCE7_16, 7.0 * DEG, false);
	struct zone_map m = zone_map_of(&p);

	(void)state;
	/* 0.2 h is 3.6 ft, 0.6 h 10.8 ft */
	assert_int_equal(zone_in(&m, 22.0 * FT, 1.0 * FT), ZONE_2);
	assert_int_equal(zone_in(&m, 22.0 * FT, 14.0 * FT), ZONE_1);
	p = hip(ASCE7_16, 7.01 * DEG, false);
	m = zone_map_of(&p);
	assert_int_equal(zone_in(&m, 22.0 * FT, 1.0 * FT), ZONE_2E);
}

/* 60 by 40 ft on plan, a 3 ft: 6 and 12 ft. The slopes are gentle: y is told on plan. */
static void monoslopes(void **state)
{
	static const struct spot_row low[] = {
		{1, 1, ZONE_3},    {30, 1, ZONE_2},   {30, 7, ZONE_1},   {30, 20, ZONE_1},
		{1, 20, ZONE_2P},  {30, 39, ZONE_2P}, {1, 39, ZONE_3P},  {10, 39, ZONE_3P},
		{13, 39, ZONE_2P}, {1, 30, ZONE_3P},  {30, 29, ZONE_2P}, {30, 27, ZONE_1},
	};
	static const struct spot_row steep[] = {
		{1, 1, ZONE_3},  {30, 1, ZONE_2}, {30, 20, ZONE_1},
		{1, 20, ZONE_2}, {1, 39, ZONE_3}, {30, 39, ZONE_2},
	};
	struct zone_plane p = {.edition = ASCE7_16,
			       .roof = WIND_ROOF_MONOSLOPE,
			       .theta = 5.0 * DEG,
			       .length = 60.0 * FT,
			       .slope = 40.0 * FT / cos(5.0 * DEG),
			       .a = 3.0 * FT,
			       .h = 15.0 * FT};
	struct zone_map m = zone_map_of(&p);

	(void)state;
	assert_int_equal(m.confidence, SAFE_SIDE);
	CHECK_SPOTS(&p, &m, low);
	p.theta = 15.0 * DEG;
	p.slope = 41.5 * FT;
	m = zone_map_of(&p);
	CHECK_SPOTS(&p, &m, steep);
}

/* h 10 ft: strips of 20 ft on a roof of 100 by 80 ft; a house has none of zone 1. */
static void tilted_zones(void **state)
{
	static const struct spot_row row[] = {
		{1, 1, ZONE_3},   {19, 19, ZONE_3}, {21, 19, ZONE_2}, {50, 1, ZONE_2},
		{21, 21, ZONE_1}, {50, 59, ZONE_1}, {50, 61, ZONE_2}, {1, 79, ZONE_3},
	};
	struct zone_plane p = {.edition = ASCE7_16,
			       .roof = WIND_ROOF_FLAT,
			       .length = 100.0 * FT,
			       .slope = 80.0 * FT,
			       .a = 8.0 * FT,
			       .h = 10.0 * FT};
	struct zone_map m = zone_map_tilted(&p);

	(void)state;
	CHECK_SPOTS(&p, &m, row);
	p.length = 42.0 * FT;
	p.slope = 32.0 * FT;
	p.h = 18.0 * FT;
	m = zone_map_tilted(&p);
	for (int i = 0; i < m.shapes; i++)
		assert_int_equal(m.shape[i].zone, ZONE_3);
	/* a gable of 7 degrees: the far eave counts, so the ridge is no edge */
	p = (struct zone_plane){.edition = ASCE7_16,
				.roof = WIND_ROOF_GABLE,
				.theta = 5.0 * DEG,
				.length = 100.0 * FT,
				.slope = 40.0 * FT,
				.beyond = 40.0 * FT,
				.a = 8.0 * FT,
				.h = 10.0 * FT};
	m = zone_map_tilted(&p);
	assert_int_equal(zone_in(&m, 50.0 * FT, 39.0 * FT), ZONE_1);
	p.theta = 7.01 * DEG;
	assert_false(zone_map_tilted(&p).known);
}

/* What the cut keeps: a right triangle of 3 and 4 is half of its rectangle. */
static void cuts(void **state)
{
	const struct polygon r = polygon_rectangle(0.0, 0.0, 4.0, 3.0);
	const struct polygon left =
		polygon_cut(&r, (struct point){0.0, 0.0}, (struct point){4.0, 3.0});
	const struct polygon right =
		polygon_cut(&r, (struct point){4.0, 3.0}, (struct point){0.0, 0.0});

	(void)state;
	assert_near(polygon_area(&left), 6.0, 1e-15);
	assert_near(polygon_area(&right), 6.0, 1e-15);
	assert_int_equal(left.n, 3);
}

/* A corner that lies on the cut to the last bits gives one point, not two: with an edge of no
   length the piece would clip everything away when it is itself a window. */
static void no_edge_without_length(void **state)
{
	const struct polygon r = polygon_rectangle(0.0, 0.0, 9.0, 7.0);
	const struct polygon speck = polygon_rectangle(3.0, 3.0, 4.0, 4.0);

	(void)state;
	for (double off = -3e-12; off <= 3e-12; off += 1e-12) {
		const struct polygon p =
			polygon_cut(&r, (struct point){9.0, 7.0 + off}, (struct point){0.0, off});
		const struct polygon in = polygon_clip(&speck, &p);

		for (int i = 0; i < p.n; i++) {
			const struct point a = p.at[i], b = p.at[(i + 1) % p.n];

			assert_true(hypot(a.x - b.x, a.y - b.y) > 1e-9);
		}
		assert_within(polygon_area(&p), 31.5, 1e-9);
		/* of the speck the line y = 7x/9 keeps what lies below it: from x 27/7 to 4, 1/9
		 * high there */
		assert_within(polygon_area(&in), 0.5 * (1.0 / 9.0) * (1.0 / 7.0), 1e-9);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(hip_side),
		cmocka_unit_test(hip_corners_7_10),
		cmocka_unit_test(hip_end),
		cmocka_unit_test(hips_tile),
		cmocka_unit_test(low_hip_is_flat),
		cmocka_unit_test(monoslopes),
		cmocka_unit_test(tilted_zones),
		cmocka_unit_test(cuts),
		cmocka_unit_test(no_edge_without_length),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
