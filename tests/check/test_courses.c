/* SPDX-License-Identifier: MIT */
/* Feet in the courses of the covering. Expected places are worked out by hand beside each case. The
   least distance of 1 in to the butt above is common practice; that a line moving up stops 1 in
   above a butt, and 2 in beside a seam, are our rules. */
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "near.h"
#include "sample_job.h"
#include "table/lookup_covering.h"

static struct result r;

static const struct pass *run(const struct job *job)
{
	check_run_plain(job, &r);
	return &r.pass[r.judged];
}

static bool has(enum remark_id id)
{
	for (int i = 0; i < r.remarks; i++)
		if (r.remark[i].id == id)
			return true;
	return false;
}

static const struct attachment *first_of(const struct pass *p, int line)
{
	return &p->attachment[p->line[line].first];
}

/* Shingles that show 5-5/8 in from the eave edge on; lines at 60 + 16 = 76 in and 60 + 96 - 16 =
 * 140 in. */
static struct job shingle(void)
{
	struct job job = sample_job();

	job.origin[FIELD_ROOF_FIRST_BUTT] = ORIGIN_FILE;
	return job;
}

/* 76 = 13 x 5.625 + 2.875; 140 = 24 x 5.625 + 5.
   The plate by the lap: 13.25 - 5.625 = 7.625 in, or 3 / sin(22.62 deg) = 7.8 in below 8:12, above
   the butt. */
static void test_places(void **state)
{
	const struct job job = shingle();
	const struct pass *p = run(&job);
	const struct course_place *low = &first_of(p, 0)->course, *high = &first_of(p, 1)->course;

	(void)state;
	assert_int_equal(low->course, 14);
	assert_near(low->above, IN(2.875), 1e-9);
	assert_near(low->below, IN(2.75), 1e-9);
	assert_int_equal(low->landing, LANDING_WELL);
	assert_true(isnan(low->move_up) && isnan(low->move_down));
	assert_near(low->plate_down, IN(4), 1e-9);
	assert_near(low->plate_side, IN(4.5), 1e-9);
	assert_near(low->plate_up, IN(2.75) + IN(7.8), 1e-9);
	assert_int_equal(high->course, 25);
	assert_int_equal(high->landing, LANDING_AT_BUTT);
	assert_near(high->move_down, IN(0.375), 1e-9);
	assert_near(high->move_up, IN(1.625), 1e-9);
	assert_false(high->can_move);
	assert_true(has(REMARK_COURSE_CLOSE));
	assert_false(has(REMARK_COURSE_MOVED));
}

/* The upper clamps may sit 16 in to 16-3/8 in from the edge: just enough, one sixteenth less is
 * not. */
static void test_moves_within_range(void **state)
{
	struct job job = shingle();

	(void)state;
	job.rail.upper_inset_max = IN(16.375);
	assert_near(run(&job)->line[1].y, IN(139.625), 1e-9);
	assert_int_equal(first_of(&r.pass[r.judged], 1)->course.landing, LANDING_WELL);
	assert_near(run(&job)->line[0].y, IN(76), 1e-9);
	assert_true(has(REMARK_COURSE_MOVED));
	assert_false(has(REMARK_COURSE_CLOSE));
	job.rail.upper_inset_max = IN(16.3125);
	assert_near(run(&job)->line[1].y, IN(140), 1e-9);
	assert_true(has(REMARK_COURSE_CLOSE));
}

/* Lower line at 60 + 18 = 78 in = 13 x 5.625 + 4.875, 3/4 in below a butt: it may only move up,
 * past the butt, by 1-3/4 in. */
static void test_lower_line_moves_up(void **state)
{
	struct job job = shingle();

	(void)state;
	job.rail.lower_inset = IN(18);
	job.rail.lower_inset_max = IN(20);
	assert_near(run(&job)->line[0].y, IN(79.75), 1e-9);
	job.rail.lower_inset_max = IN(19.5);
	assert_near(run(&job)->line[0].y, IN(78), 1e-9);
}

/* The two lines always share the whole collector, wherever they are moved. */
static void test_loads_follow(void **state)
{
	struct job job = shingle();
	const struct pass *p;
	double sum = 0;

	(void)state;
	job.rail.upper_inset_max = IN(20);
	p = run(&job);
	for (int i = 0; i < p->attachments; i++)
		sum += p->attachment[i].area;
	assert_near(sum, (2 * FT(4) + IN(1)) * FT(8), 1e-9);
}

static void test_unmeasured(void **state)
{
	struct job job = sample_job();

	(void)state;
	job.rail.upper_inset_max = IN(20);
	assert_near(run(&job)->line[1].y, IN(140), 1e-9);
	assert_true(has(REMARK_COURSE_UNMEASURED));
	assert_int_equal(first_of(&r.pass[r.judged], 1)->course.landing, LANDING_UNKNOWN);
	assert_int_equal(first_of(&r.pass[r.judged], 1)->course.course, 25);
	job.roof.course_exposure = (double)NAN;
	run(&job);
	assert_false(has(REMARK_COURSE_UNMEASURED));
	assert_int_equal(first_of(&r.pass[r.judged], 0)->course.landing, LANDING_UNKNOWN);
}

/* Concrete tile 16-1/2 in long that shows 13-1/2 in: heads, and the upper edges of the battens, are
   3 in above each butt; a batten of 1-1/2 in with 1/2 in on both sides spans 1 in to 3-1/2 in.
   First butt at 3-1/2 in: the lower line at 76 in is 5 x 13.5 + 5 in up (well), the upper at 140 in
   10 x 13.5 + 1.5 in (batten). */
static void test_battens(void **state)
{
	struct job job = shingle();
	const struct course_place *p;

	(void)state;
	strcpy(job.roof.covering, "concrete-tile");
	job.roof.course_exposure = IN(13.5);
	job.roof.piece_length = IN(16.5);
	job.roof.first_butt = IN(3.5);
	run(&job);
	p = &first_of(&r.pass[r.judged], 0)->course;
	assert_int_equal(p->landing, LANDING_WELL);
	p = &first_of(&r.pass[r.judged], 1)->course;
	assert_near(p->above, IN(1.5), 1e-9);
	assert_int_equal(p->landing, LANDING_ON_BATTEN);
	assert_near(p->move_up, IN(2), 1e-9);
	/* down past the batten and the butt: 1.5 to 1, then to 1 in below the butt */
	assert_near(p->move_down, IN(0.5), 1e-9);
}

/* Seams every 16 in from 10 in: rafters at 8 + 16 k lie 2 in beside a seam, which is enough; from 9
 * in they do not. */
static void test_seams(void **state)
{
	struct job job = shingle();

	(void)state;
	strcpy(job.roof.covering, "metal-standing-seam-mechanical");
	job.roof.seam_spacing = IN(16);
	job.roof.first_seam = IN(10);
	assert_near(first_of(run(&job), 0)->course.to_seam, IN(2), 1e-9);
	assert_int_equal(first_of(&r.pass[r.judged], 0)->course.landing, LANDING_WELL);
	assert_false(has(REMARK_SEAM_CLOSE));
	job.roof.first_seam = IN(9);
	assert_int_equal(first_of(run(&job), 0)->course.landing, LANDING_AT_SEAM);
	assert_true(has(REMARK_SEAM_CLOSE));
}

/* Wherever the courses begin: a line is never moved out of its range, and the way told does land
 * well. */
static void test_every_start(void **state)
{
	(void)state;
	for (int i = 0; i < 60; i++) {
		struct job job = shingle();
		const struct pass *p;

		job.roof.first_butt = IN(i / 8.0);
		job.rail.lower_inset_max = job.rail.upper_inset_max = IN(17.5);
		p = run(&job);
		assert_true(p->line[0].y > IN(76) - 1e-9 && p->line[0].y < IN(77.5) + 1e-9);
		assert_true(p->line[1].y < IN(140) + 1e-9 && p->line[1].y > IN(138.5) - 1e-9);
		for (int l = 0; l < 2; l++) {
			const struct course_place *c = &first_of(p, l)->course;

			if (c->landing == LANDING_WELL)
				assert_true(c->below > IN(1) - 1e-9);
			else
				assert_true(c->below < IN(1) && c->move_down > 0 &&
					    c->move_up > 0 && !c->can_move);
		}
	}
}

static void test_plate_rows(void **state)
{
	(void)state;
	assert_near(covering_plate_row("asphalt-strip", 12 * tan(atan2(4, 12)))->plate_side_in, 4.0,
		    1e-12);
	assert_near(covering_plate_row("asphalt-strip", 3.9)->plate_side_in, 6.0, 1e-12);
	assert_null(covering_plate_row("epdm", 0.25));
	assert_null(covering_plate_row("", 5));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_places),
		cmocka_unit_test(test_moves_within_range),
		cmocka_unit_test(test_lower_line_moves_up),
		cmocka_unit_test(test_loads_follow),
		cmocka_unit_test(test_unmeasured),
		cmocka_unit_test(test_battens),
		cmocka_unit_test(test_seams),
		cmocka_unit_test(test_every_start),
		cmocka_unit_test(test_plate_rows),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
