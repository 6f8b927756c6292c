/* SPDX-License-Identifier: MIT */
/* Several screws in one foot: how near they may stand to each other and to the rafter's end and
   edges, and what a row loses. At, just below and just above each limit; NDS-2018 11.3.6, 12.1.5.7,
   12.5.1, Tables 12.5.1A to E, C12.1.5.7. */
#include <string.h>

#include "near.h"
#include "sample_run.h"

static struct job kind(enum fastener_kind k, double D_in, int count, double spacing_in)
{
	struct job job = dense();

	job.fastener.kind = k;
	job.fastener.diameter = IN(D_in);
	job.fastener.thread_length = k == FASTENER_HANGER_BOLT ? IN(3) : (double)NAN;
	job.fastener.washer_diameter = IN(1.25);
	job.fastener.drilling_tolerance = IN(0.125);
	job.fastener.count = count;
	job.fastener.spacing = IN(spacing_in);
	return job;
}

static bool rated(const struct job *job)
{
	return !has(run(job), REMARK_FASTENER_UNRATED);
}

static double side(const struct job *job)
{
	return judged(run(job))->attachment[0].check[CHECK_SIDE].capacity;
}

/* Bolts: 3 D is the least, 4 D the full value, C_delta s/4D between. No 4 D of lag screws in
   withdrawal for them. The shares of a row: Cg of Eq. 11.3-1 changes with the spacing too, so the
   capacity falls by no more than C_delta and Cg of closer bolts, which is nearer to 1. */
static void bolts(void **state)
{
	struct job job = kind(FASTENER_THROUGH_BOLT, 0.375, 2, 1.5);

	(void)state;
	const double full = side(&job);

	job.fastener.spacing = IN(1.3125); /* 3.5 D */
	assert_true(rated(&job));
	assert_true(side(&job) >= full * 3.5 / 4 && side(&job) < full * 3.5 / 4 * 1.01);
	job.fastener.spacing = IN(1.125);
	assert_true(rated(&job));
	job.fastener.spacing = IN(1.12);
	assert_false(rated(&job));
}

/* End distance toward which the load pulls, softwood: 3.5 D least, 7 D full. */
static void bolt_at_the_end(void **state)
{
	struct job job = kind(FASTENER_THROUGH_BOLT, 0.375, 1, NAN);

	(void)state;
	const double full = side(&job);

	job.fastener.end_distance = IN(7 * 0.375);
	assert_near(side(&job), full, 1e-12);
	job.fastener.end_distance = IN(5 * 0.375);
	assert_near(side(&job), full * 5 / 7, 1e-12);
	job.fastener.end_distance = IN(3.5 * 0.375);
	assert_near(side(&job), full / 2, 1e-12);
	job.fastener.end_distance = IN(3.49 * 0.375);
	assert_false(rated(&job));
}

/* Hanger bolts pull as lag screws do: 4 D of Table 12.5.1E, though 3 D would do for the side load. */
static void hanger_bolts(void **state)
{
	struct job job = kind(FASTENER_HANGER_BOLT, 0.3125, 2, 1.25);

	(void)state;
	assert_true(rated(&job));
	job.fastener.spacing = IN(1.24);
	assert_false(rated(&job));
}

/* Screws under 1/4 in: the full value at any distance (12.5.1.1, 11.3.6.1), 5 D the least, lead holes
   below 10 D. No. 14, D 0.242: 1.21 and 2.42 in. */
static void small_screws(void **state)
{
	static const struct {
		double spacing;
		bool rated, bored;
	} row[] = {{2.42, true, false}, {2.41, true, true}, {1.21, true, true}, {1.20, false, false}};
	struct job job = kind(FASTENER_WOOD_SCREW, 0.242, 1, NAN);

	(void)state;
	const double alone = side(&job);

	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		job = kind(FASTENER_WOOD_SCREW, 0.242, 2, row[i].spacing);
		assert_int_equal(rated(&job), row[i].rated);
		assert_int_equal(has(run(&job), REMARK_SMALL_SCREW_BORED), row[i].bored);
		if (row[i].rated)
			assert_near(side(&job), alone, 1e-12);
	}
	job = kind(FASTENER_WOOD_SCREW, 0.242, 1, NAN);
	job.fastener.end_distance = IN(1.2);
	assert_false(rated(&job));
	/* 2.5 D is 0.605 in: a 1-1/2 in edge leaves 0.145 in to miss by */
	job.fastener.end_distance = (double)NAN;
	job.fastener.drilling_tolerance = IN(0.145);
	assert_false(has(run(&job), REMARK_SMALL_SCREW_EDGE));
	job.fastener.drilling_tolerance = IN(0.146);
	assert_true(has(run(&job), REMARK_SMALL_SCREW_EDGE));
	/* from 1/4 in up the tables rule: No. 16, D 0.268 */
	job = kind(FASTENER_WOOD_SCREW, 0.268, 2, 4 * 0.268);
	assert_true(rated(&job));
	assert_false(has(run(&job), REMARK_SMALL_SCREW_BORED));
	job.fastener.spacing = IN(3.9 * 0.268);
	assert_false(rated(&job));
}

/* Two rows on a doubled rafter, 3 in: each edge 1.5 D; above l/D of 6 half the row spacing where that
   is more; rows 1.5 D apart at least. 5/16 lag: 1.5 D is 0.469 in. */
static void rows(void **state)
{
	struct job job = dense();

	(void)state;
	job.framing.breadth = IN(3);
	job.fastener.count = 4;
	job.fastener.rows = 2;
	job.fastener.spacing = IN(1.25);
	job.fastener.row_spacing = IN(1);
	/* l_m/D is 8.7: edge 0.5 in; 1.5 - 0.5 - 0.5 = 0.5 in */
	job.fastener.drilling_tolerance = IN(0.5);
	assert_false(has(run(&job), REMARK_EDGE_ROWS));
	assert_within(run(&job)->fastener.edge_room, IN(0.5), 1e-9);
	job.fastener.drilling_tolerance = IN(0.51);
	assert_true(has(run(&job), REMARK_EDGE_ROWS));
	job.fastener.drilling_tolerance = 0;
	job.fastener.row_spacing = IN(0.46875);
	assert_true(rated(&job));
	job.fastener.row_spacing = IN(0.46);
	assert_false(rated(&job));
}

/* A row of two loses no more for having another row beside it: four in two rows carry as two rows. */
static void group_by_row(void **state)
{
	struct job job = kind(FASTENER_THROUGH_BOLT, 0.375, 2, 1.5);

	(void)state;
	job.framing.breadth = IN(3.5);
	const double two = side(&job);

	job.fastener.count = 4;
	const double four_in_row = side(&job);

	job.fastener.rows = 2;
	job.fastener.row_spacing = IN(1);
	assert_near(side(&job), two, 1e-12);
	assert_true(four_in_row < two);
}

/* B7: 5/16 x 4 in lag in Spruce-Pine-Fir across 0.6875 in: 102.1 lb of the 248.4 without the gap (AWC
   Technical Report 12); said, and not where the foot bears on wood. */
static void gap_costs(void **state)
{
	struct job job = dense();

	(void)state;
	job.roof.deck_thickness = IN(0.6875);
	job.mount.seat = SEAT_ON_DECK;
	assert_within(said(run(&job), REMARK_GAP_COST, 0), IN(0.6875), 1e-12);
	assert_within(said(run(&job), REMARK_GAP_COST, 1), LB(102.1), LB(0.06));
	assert_within(said(run(&job), REMARK_GAP_COST, 2), LB(248.4), LB(0.06));
	job.mount.seat = SEAT_ON_WOOD;
	assert_false(has(run(&job), REMARK_GAP_COST));
	job.mount.seat = SEAT_RIGID_POST;
	assert_false(has(run(&job), REMARK_GAP_COST));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(bolts),        cmocka_unit_test(bolt_at_the_end),
		cmocka_unit_test(hanger_bolts), cmocka_unit_test(small_screws),
		cmocka_unit_test(gap_costs),    cmocka_unit_test(rows),         cmocka_unit_test(group_by_row),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
