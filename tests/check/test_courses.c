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

/* Strip shingles 12 in long that show 5 in from 1 in on; the lines at 76 in and 140 in are 15 x 5 + 0 in and 27 x 5 + 4 in
   up: the lower one stands on the step of course 16 and may be raised by 1 in. Cut-outs every 12 in from 6 in on, each
   course shifted by 6 in. Rafters stand at 8 + 16 k: 152, 168, 184, 200, 216, 232 in. Course 16 and the one above it have
   cut-outs at 0 and 6 (of 12): 168 = 14 x 12 and 216 = 18 x 12 lie on one, 152 = 12 x 12 + 8 and 184, 200, 232 lie 2 in off.
   No other course is better: all have them at 0 and 6. The rafter, 1-1/2 in, leaves 3/4 - 1.5 x 5/16 = 0.28 in. */
static struct job strips(double shift)
{
	struct job job = shingle();

	strcpy(job.roof.covering, "asphalt-strip");
	job.roof.piece_length = IN(12);
	job.roof.course_exposure = IN(5);
	job.roof.first_butt = IN(1);
	job.roof.joints = JOINTS_REGULAR;
	job.roof.piece_width = IN(12);
	job.roof.first_joint = IN(6);
	job.roof.joint_shift = shift;
	return job;
}

static void test_joints(void **state)
{
	struct job job = strips(IN(6));
	const struct pass *p;
	int near = 0;

	(void)state;
	job.rail.lower_inset_max = IN(18);
	p = run(&job);
	assert_near(p->line[0].y, IN(77), 1e-9);
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];
		const bool on = fabs(remainder(a->x, IN(12))) < 1e-6;

		assert_int_equal(a->course.landing, on ? LANDING_AT_JOINT : LANDING_WELL);
		assert_true(fabs(fabs(a->course.to_joint) - IN(on ? 0 : 2)) < 1e-9);
		assert_true(fabs(fabs(a->course.joint_side) - IN(on ? 1.5 : 0)) < 1e-9);
		assert_false(a->course.side_fits || a->course.line_fits);
		assert_true(isnan(a->course.joint_up) && isnan(a->course.joint_down));
		near += on;
	}
	assert_true(near > 0);
	assert_true(has(REMARK_JOINT_CLOSE) && has(REMARK_JOINT_STUCK));
}

/* Shifted by 3 in: course k has its cut-outs at 6 + 3 (k - 1) of 12. The lower line, inset 17 in, is meant at 77 in, 1 in up
   in course 16: cut-outs at 6 + 45 = 51, so 3, and at 6 in course 17. Of the rafters 168 and 216 (0 of 12) are 3 in off, 152
   and 200 (8) are 2 in off the 6, 184 and 232 (4) are 1 in off the 3: 4-1/2 is 1-1/2 in off both, 1/2 in to
   the right, more than the rafter has. One course up, at 82 in, cut-outs are at 6 and 9: 4 is 2 in off, but 8 is 1 in off, so that
   two rafters of six are missed there as well and the line stays. */
static void test_joints_shifted(void **state)
{
	struct job job = strips(IN(3));
	const struct pass *p;
	int met = 0;

	(void)state;
	job.rail.lower_inset = IN(17);
	job.rail.lower_inset_max = IN(22);
	p = run(&job);
	assert_near(p->line[0].y, IN(77), 1e-9);
	for (int i = 0; i < p->line[0].count; i++) {
		const struct attachment *a = &p->attachment[p->line[0].first + i];
		const double in = a->x / M_PER_IN;

		if (fabs(in - 184) > 1e-6 && fabs(in - 232) > 1e-6) {
			assert_int_equal(a->course.landing, LANDING_WELL);
			continue;
		}
		assert_int_equal(a->course.landing, LANDING_AT_JOINT);
		assert_near(a->course.joint_side, IN(0.5), 1e-9);
		assert_false(a->course.side_fits);
		/* next butt at 81 in, so 82 in: 5 in up */
		assert_near(a->course.joint_up, IN(5), 1e-9);
		met++;
	}
	/* within the range, but a way out only where it does not put as many others on a joint */
	for (int i = 0; i < p->line[0].count; i++) {
		const struct attachment *a = &p->attachment[p->line[0].first + i];
		int others = 0;

		for (int j = 0; j < p->line[0].count; j++) {
			const double in = p->attachment[p->line[0].first + j].x / M_PER_IN;

			others += fabs(in - 152) < 1e-6 || fabs(in - 200) < 1e-6;
		}
		assert_int_equal(a->course.line_fits, a->course.landing == LANDING_AT_JOINT && others < met);
	}
	/* no more range than to 81 in: the next course is out of reach */
	job.rail.lower_inset_max = IN(21);
	p = run(&job);
	for (int i = 0; i < p->line[0].count; i++)
		assert_false(p->attachment[p->line[0].first + i].course.line_fits);
}

/* Shifted by 4 in the cut-outs are at 6, 10, 2 of 12 in turn, so that rafters at 0, 4 and 8 are 2 in off in every course. Begun
   1 in further right they are at 7, 11, 3: then 8 is 1 in off the 7, 0 off the 11, 4 off the 3, and each course, with the one
   above it, misses two rafters of three: no other course is better and the line stays. */
static void test_joints_equal(void **state)
{
	struct job job = strips(IN(4));

	(void)state;
	run(&job);
	assert_false(has(REMARK_JOINT_CLOSE));
	job.roof.first_joint = IN(7);
	job.rail.lower_inset = IN(17);
	job.rail.lower_inset_max = IN(40);
	assert_near(run(&job)->line[0].y, IN(77), 1e-9);
	assert_true(has(REMARK_JOINT_CLOSE));
}

/* Slates 16 in wide in half bond: own course alone counts. From 1 in on the joints of odd courses are at 1 of 16, of even
   ones at 9; rafters at 8 of 16 are 1 in off in every even course and 7 off in every odd one. Exposure 8-1/2 in from 1 in on:
   76 in is 8 x 8.5 + 7 in, course 9; 140 in is 16 x 8.5 + 3 in, course 17. With the first butt 8-1/2 in further up they are
   courses 8 and 16: the lower line (7 in up) goes up past the butt to 1 in above it, by 2-1/2 in. */
static void test_joints_move_the_line(void **state)
{
	struct job job = strips(IN(8));

	(void)state;
	strcpy(job.roof.covering, "slate");
	job.roof.pitch = atan2(8, 12);
	job.roof.piece_length = IN(20);
	job.roof.course_exposure = IN(8.5);
	job.roof.piece_width = IN(16);
	job.roof.first_joint = IN(1);
	assert_int_equal(first_of(run(&job), 0)->course.course, 9);
	assert_false(has(REMARK_JOINT_CLOSE));
	job.roof.first_butt = IN(9.5);
	assert_int_equal(first_of(run(&job), 0)->course.course, 8);
	assert_true(has(REMARK_JOINT_CLOSE) && has(REMARK_JOINT_STUCK));
	assert_near(first_of(&r.pass[r.judged], 0)->course.joint_up, IN(2.5), 1e-9);
	job.rail.lower_inset_max = IN(18.5);
	job.rail.upper_inset_max = IN(20);
	assert_near(run(&job)->line[0].y, IN(78.5), 1e-9);
	/* the upper line, 3 in above its butt at 137 in, goes down to 136 in */
	assert_near(r.pass[r.judged].line[1].y, IN(136), 1e-9);
	assert_false(has(REMARK_JOINT_CLOSE));
	assert_true(has(REMARK_COURSE_MOVED));
}

static void test_joints_random(void **state)
{
	struct job job = shingle();

	(void)state;
	run(&job);
	assert_false(has(REMARK_JOINTS_RANDOM));
	job.roof.joints = JOINTS_RANDOM;
	run(&job);
	assert_true(has(REMARK_JOINTS_RANDOM));
	assert_true(isnan(first_of(&r.pass[r.judged], 0)->course.to_joint));
	/* a sheet has none to look for */
	strcpy(job.roof.covering, "epdm");
	run(&job);
	assert_false(has(REMARK_JOINTS_RANDOM));
}

/* Course 14 holds the lower line: pieces of 40 in at most, seen from 150 to 186; above it from 153 to 190. Holes at 152 lie 1 in
   left of 153; at 168 and 184 clear (15 and 2 in are the nearest); from 200 on nothing was seen. */
static void test_joints_measured(void **state)
{
	static const struct job_joint seen[] = {{14, IN(150)}, {14, IN(186)}, {15, IN(153)}, {15, IN(190)}};
	struct job job = shingle();
	int unseen = 0;

	(void)state;
	job.roof.joints = JOINTS_MEASURED;
	job.roof.piece_width = IN(40);
	job.roof.measured_joints = 4;
	memcpy(job.roof.joint, seen, sizeof seen);
	job.mount.spacing = IN(16);
	const struct pass *p = run(&job);

	assert_int_equal(first_of(p, 0)->course.course, 14);
	for (int i = 0; i < p->attachments; i++) {
		const struct course_place *at = &p->attachment[i].course;
		const double x = p->attachment[i].x / M_PER_IN;

		unseen += at->joint_unseen;
		if (p->attachment[i].line != 0 || fabs(x - 187) > 36)
			continue;
		if (x < 153)
			assert_near(at->to_joint, IN(-1), 1e-9);
		else if (x < 169)
			assert_near(at->to_joint, IN(15), 1e-9);
		else if (x < 185)
			assert_near(at->to_joint, IN(-2), 1e-9);
		else
			assert_true(at->joint_unseen && isnan(at->to_joint));
		assert_true(at->landing == (x < 153 ? LANDING_AT_JOINT : LANDING_WELL));
	}
	assert_true(unseen > 0 && has(REMARK_JOINTS_UNSEEN) && has(REMARK_JOINT_CLOSE));
}

/* Laminated, half a plate 4-1/2 in, at 22.62 deg (5:12). A wall 5 in beside the array: a foot 8 in inside it leaves 8-1/2 in, less than
   12. Rakes: the plane's ends less x and half a plate. The eave: 76 - 4 in of plate = 72 in; 2 courses and 12 in are 23-1/4. */
static void test_borders(void **state)
{
	struct job job = shingle();
	bool close = false;

	(void)state;
	job.mount.spacing = IN(16);
	const struct pass *p = run(&job);

	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];
		const struct border_room *room = a->course.border;

		assert_true(isnan(room[BORDER_VALLEY].distance) && isnan(room[BORDER_WALL].distance) &&
			    isnan(room[BORDER_HIP].distance));
		assert_near(room[BORDER_RAKE].distance, fmin(a->x, r.plane_length - a->x) - IN(4.5), 1e-9);
		assert_near(room[BORDER_RAKE].least, IN(12), 1e-9);
		if (a->line == 0) {
			assert_near(room[BORDER_EAVE].distance, IN(72), 1e-9);
			assert_near(room[BORDER_EAVE].least, IN(23.25), 1e-9);
		}
	}
	assert_false(has(REMARK_BORDER_CLOSE));
	job.roof.wall = IN(5);
	p = run(&job);
	for (int i = 0; i < p->attachments; i++) {
		const double inside = fmin(p->attachment[i].x - r.array.x0, r.array.x1 - p->attachment[i].x);
		const struct border_room *wall = &p->attachment[i].course.border[BORDER_WALL];

		assert_near(wall->distance, IN(0.5) + inside, 1e-9);
		assert_true(border_close(wall) == (inside < IN(11.5) - 1e-9));
		close = close || border_close(wall);
	}
	assert_true(close && has(REMARK_BORDER_CLOSE));
}

/* IRC 2018 Table R905.7.5(1): 16 in shingles from 4:12 on show 5 in of No. 1, 4 in of No. 2. */
static void test_cover(void **state)
{
	struct job job = shingle();

	(void)state;
	strcpy(job.roof.covering, "wood-shingle");
	job.roof.piece_length = IN(16);
	job.roof.course_exposure = IN(5);
	run(&job);
	assert_true(has(REMARK_EXPOSURE_GRADE) && !has(REMARK_EXPOSURE_OVER));
	job.roof.piece_grade = 1;
	run(&job);
	assert_false(has(REMARK_EXPOSURE_GRADE) || has(REMARK_EXPOSURE_OVER));
	job.roof.piece_grade = 2;
	run(&job);
	assert_true(has(REMARK_EXPOSURE_OVER));
	job.roof.piece_grade = 0;
	job.roof.course_exposure = IN(5.25);
	run(&job);
	assert_true(has(REMARK_EXPOSURE_OVER));
	job.roof.course_exposure = IN(3.5);
	run(&job);
	assert_false(has(REMARK_EXPOSURE_GRADE) || has(REMARK_EXPOSURE_OVER));
	job.roof.piece_length = IN(20);
	run(&job);
	assert_true(has(REMARK_EXPOSURE_UNLISTED));
	/* slate at 5:12 wants 4 in: 20 in at 8-1/2 in has 3, at 8 in 4; from 8:12 on 3 do */
	strcpy(job.roof.covering, "slate");
	job.roof.course_exposure = IN(8.5);
	run(&job);
	assert_true(has(REMARK_LAP_SHORT));
	job.roof.course_exposure = IN(8);
	run(&job);
	assert_false(has(REMARK_LAP_SHORT));
	job.roof.course_exposure = IN(8.5);
	job.roof.pitch = atan2(8, 12);
	run(&job);
	assert_false(has(REMARK_LAP_SHORT));
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
				assert_true(c->below > IN(1) - 1e-9 && c->above > IN(1) - 1e-9);
			else
				assert_true((c->below < IN(1) || c->above < IN(1)) && c->move_down > 0 &&
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
		cmocka_unit_test(test_joints),
		cmocka_unit_test(test_joints_shifted),
		cmocka_unit_test(test_joints_equal),
		cmocka_unit_test(test_joints_move_the_line),
		cmocka_unit_test(test_joints_random),
		cmocka_unit_test(test_joints_measured),
		cmocka_unit_test(test_borders),
		cmocka_unit_test(test_cover),
		cmocka_unit_test(test_every_start),
		cmocka_unit_test(test_plate_rows),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
