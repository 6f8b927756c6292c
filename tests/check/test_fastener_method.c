/* SPDX-License-Identifier: MIT */
/* Every kind of fastener by load and resistance factors, through the whole check. Wind lifts in both
   methods: ASD 0.6D + 0.6W with CD 1.6, LRFD 0.9D + 1.0W with lambda 1.0. Expected quotients of
   capacities by hand from the printed factors (NDS-2018 Tables 2.3.5, 2.3.6, N1 to N3; AISI S100
   J4: Omega 3.0 beside phi 0.50; AISC 360: Omega 2.00 beside phi 0.75). */
#include <string.h>

#include "near.h"
#include "sample_run.h"

#define WOOD (3.32 * 0.65 * 1.0 / 1.6)

static struct check_value first(struct job job, enum check_id id, enum design_method method)
{
	job.site.method = method;
	return judged(run(&job))->attachment[0].check[id];
}

static void quotient(const struct job *job, enum check_id id, double want)
{
	const struct check_value asd = first(*job, id, METHOD_ASD),
				 lrfd = first(*job, id, METHOD_LRFD);

	assert_true(asd.rated && lrfd.rated);
	assert_string_equal(asd.combination, "0.6D + 0.6W");
	assert_string_equal(lrfd.combination, "0.9D + 1.0W");
	assert_near(lrfd.capacity / asd.capacity, want, 1e-12);
	assert_near(lrfd.ratio, lrfd.demand / lrfd.capacity, 1e-12);
}

static void wood_screw(void **state)
{
	struct job job = dense();

	(void)state;
	job.fastener.kind = FASTENER_WOOD_SCREW;
	job.fastener.diameter = IN(0.242);
	quotient(&job, CHECK_PULL, WOOD);
	quotient(&job, CHECK_BREAK, 1.5);
}

static void hanger_bolt(void **state)
{
	struct job job = dense();

	(void)state;
	job.fastener.kind = FASTENER_HANGER_BOLT;
	job.fastener.thread_length = IN(3);
	quotient(&job, CHECK_PULL, WOOD);
	quotient(&job, CHECK_BREAK, 1.5);
}

/* Across the grain 1.67 x 0.90, and no load duration in ASD. */
static void through_bolt(void **state)
{
	struct job job = dense();

	(void)state;
	job.fastener.kind = FASTENER_THROUGH_BOLT;
	job.fastener.diameter = IN(0.25);
	job.fastener.washer_diameter = IN(1.25);
	quotient(&job, CHECK_WASHER, 1.67 * 0.90);
	quotient(&job, CHECK_BREAK, 1.5);
}

static void sheet_screw(void **state)
{
	struct job job = dense();

	(void)state;
	job.framing.kind = FRAMING_STEEL;
	job.fastener.kind = FASTENER_SHEET_SCREW;
	job.fastener.diameter = IN(0.25);
	job.fastener.steel_thickness = IN(0.0566);
	quotient(&job, CHECK_PULL, 3.0 * 0.50);
}

/* The side load under snow: KF phi 0.8 in the place of 1.15. */
static void side_under_snow(void **state)
{
	struct job job = snowy();

	(void)state;
	job.fastener.kind = FASTENER_WOOD_SCREW;
	job.fastener.diameter = IN(0.242);
	const struct check_value asd = first(job, CHECK_SIDE, METHOD_ASD),
				 lrfd = first(job, CHECK_SIDE, METHOD_LRFD);

	assert_string_equal(asd.combination, "D + S");
	assert_near(asd.CD, 1.15, 1e-12);
	assert_near(lrfd.CD, 0.8, 1e-12);
	assert_near(lrfd.capacity / asd.capacity, 3.32 * 0.65 * 0.8 / 1.15, 1e-12);
}

/* Tested values are allowables: combination, demand and ratio are those of ASD by either method. */
static void unchanged(const struct job *job, enum check_id id)
{
	const struct check_value asd = first(*job, id, METHOD_ASD),
				 lrfd = first(*job, id, METHOD_LRFD);

	assert_true(asd.rated && lrfd.rated && asd.ratio > 0);
	assert_string_equal(lrfd.combination, asd.combination);
	assert_near(lrfd.ratio, asd.ratio, 1e-12);
	assert_near(lrfd.CD, asd.CD, 1e-12);
}

static void structural_screw(void **state)
{
	struct job job = dense();

	(void)state;
	job.fastener.kind = FASTENER_STRUCTURAL_SCREW;
	job.fastener.diameter = IN(0.25);
	job.fastener.allowable_uplift = LB(500);
	job.fastener.allowable_side = LB(300);
	job.fastener.safety_factor = 5;
	for (int i = 0; i < 2; i++) {
		job.fastener.duration = i ? DURATION_TEN_YEARS : DURATION_INCLUDED;
		unchanged(&job, CHECK_PULL);
		unchanged(&job, CHECK_SIDE);
		unchanged(&job, CHECK_TOGETHER);
	}
}

static void clamp_and_deck_mount(void **state)
{
	struct job job = dense();

	(void)state;
	job.mount.allowable_uplift = LB(600);
	job.mount.allowable_slope = LB(400);
	job.fastener.safety_factor = 3;
	job.fastener.kind = FASTENER_DECK_MOUNT;
	job.fastener.deck = DECK_PLYWOOD;
	job.fastener.deck_thickness = job.roof.deck_thickness;
	unchanged(&job, CHECK_TOGETHER);
	unchanged(&job, CHECK_FOOT_UPLIFT);
	strcpy(job.roof.covering, "metal-standing-seam-snap");
	job.fastener.kind = FASTENER_SEAM_CLAMP;
	job.roof.seam_spacing = IN(16);
	job.roof.first_seam = IN(5);
	job.fastener.clip_allowable = LB(700);
	job.fastener.clip_screw_allowable = LB(650);
	unchanged(&job, CHECK_CLIP);
	unchanged(&job, CHECK_TOGETHER);
}

/* Which values meet the combinations of ASD in a job by LRFD: the report says CD beside those. */
static void tested_values(void **state)
{
	(void)state;
	assert_true(check_is_tested(CHECK_FOOT_UPLIFT, FASTENER_LAG_SCREW));
	assert_true(check_is_tested(CHECK_PULL, FASTENER_STRUCTURAL_SCREW));
	assert_true(check_is_tested(CHECK_CLIP, FASTENER_SEAM_CLAMP));
	assert_true(check_is_tested(CHECK_TOGETHER, FASTENER_DECK_MOUNT));
	assert_false(check_is_tested(CHECK_PULL, FASTENER_WOOD_SCREW));
	assert_false(check_is_tested(CHECK_WITHDRAWAL, FASTENER_LAG_SCREW));
	assert_false(check_is_tested(CHECK_RAFTER_UPLIFT, FASTENER_STRUCTURAL_SCREW));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(wood_screw),       cmocka_unit_test(hanger_bolt),
		cmocka_unit_test(through_bolt),     cmocka_unit_test(sheet_screw),
		cmocka_unit_test(side_under_snow),  cmocka_unit_test(structural_screw),
		cmocka_unit_test(clamp_and_deck_mount), cmocka_unit_test(tested_values),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
