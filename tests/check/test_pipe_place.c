/* SPDX-License-Identifier: MIT */
/* The holes of pipes in the covering. Expected places are worked out by hand beside each case. */
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "check/pipe_place.h"
#include "near.h"
#include "sample_job.h"

static struct result r;

/* Shingles that show 5-5/8 in from the eave edge on, at 5:12, and a bare pipe of 7/8 in. */
static struct job shingle(double up)
{
	struct job job = sample_job();

	job.origin[FIELD_ROOF_FIRST_BUTT] = ORIGIN_FILE;
	job.pipes = 1;
	job.pipe[0] = (struct job_pipe){.diameter = IN(0.875),
					.insulated_diameter = (double)NAN,
					.count = 1,
					.temperature = (double)NAN,
					.at = IN(200),
					.up = up,
					.run = (double)NAN,
					.storey_height = (double)NAN,
					.offset = (double)NAN};
	return job;
}

static struct pipe_place place(const struct job *job)
{
	check_run_plain(job, &r);
	return pipe_place(job, &r, 0);
}

/* Hole: 7/8 + 2 x 1/4 = 1.375 in across; / cos(22.62 deg) = 12/13: 1.375 x 13/12 = 1.48958 in up the slope.
   Course 14 from 73.125 to 78.75 in: the hole fits from 73.125 + 1 + 0.74479 = 74.87 to 78.75 - 1 - 0.74479 =
   77.005. At 76 well. At 78: down 0.995, to the tape's eighth 1 in; up to 78.75 + 1.74479 = 80.495: 2.495, 2-1/2 in. */
static void test_butts(void **state)
{
	struct job job = shingle(IN(76));
	struct pipe_place p = place(&job);

	(void)state;
	assert_near(p.across, IN(1.375), 1e-9);
	assert_near(p.along, IN(1.375 * 13 / 12), 1e-9);
	assert_int_equal(p.course, 14);
	assert_int_equal(p.landing, LANDING_WELL);
	assert_true(isnan(p.up) && isnan(p.down) && isnan(p.left) && isnan(p.right));
	job.pipe[0].up = IN(78);
	p = place(&job);
	assert_int_equal(p.landing, LANDING_AT_BUTT);
	assert_false(p.clear);
	assert_near(p.down, IN(1), 1e-9);
	assert_near(p.up, IN(2.5), 1e-9);
	assert_true(isnan(p.left) && isnan(p.right));
}

/* Insulated to 3-1/2 in the hole is 4 x 13/12 = 4-1/3 in: more than 5.625 - 2: no course takes it. */
static void test_hole_too_long(void **state)
{
	struct job job = shingle(IN(76));

	(void)state;
	job.pipe[0].insulated_diameter = IN(3.5);
	const struct pipe_place p = place(&job);

	assert_int_equal(p.landing, LANDING_AT_BUTT);
	assert_true(isnan(p.up) && isnan(p.down));
}

static void test_unknown(void **state)
{
	struct job job = shingle(IN(76));

	(void)state;
	job.origin[FIELD_ROOF_FIRST_BUTT] = ORIGIN_DEFAULT;
	struct pipe_place p = place(&job);

	assert_true(p.given && p.butts && !p.clear && p.course == 0 && p.landing == LANDING_UNKNOWN);
	job.pipe[0].at = job.pipe[0].up = (double)NAN;
	p = place(&job);
	assert_true(!p.given && !p.clear);
}

/* The flange reaches 0.6875 + 4 in to the side: 10 - 4.6875 = 5.3125 in to the rake, 12 wanted: 6.6875 short, 6-3/4 in
   on a tape of eighths. */
static void test_rake(void **state)
{
	struct job job = shingle(IN(76));

	(void)state;
	job.pipe[0].at = IN(10);
	const struct pipe_place p = place(&job);
	const struct border_room *rake = &p.border[BORDER_RAKE];

	assert_true(border_close(rake) && p.near_border);
	assert_near(rake->distance, IN(5.3125), 1e-9);
	assert_near(p.right, IN(6.75), 1e-9);
	assert_true(isnan(p.left) && isnan(p.up) && isnan(p.down));
}

/* One rubber sheet: no courses, no joints. */
static void test_sheet(void **state)
{
	struct job job = shingle(IN(76));

	(void)state;
	strcpy(job.roof.covering, "epdm");
	job.roof.course_exposure = (double)NAN;
	assert_true(place(&job).clear);
}

/* Seams at 4 + 16 n in: 196. The hole at 197: its edge 1 - 0.6875 = 0.3125 in off, 2 wanted. Right to 198.6875: 1.6875,
   1-3/4 in; left to 193.3125: 3.6875, 3-3/4 in. At 200 3.3125 in off. */
static void test_seams(void **state)
{
	struct job job = shingle(IN(76));

	(void)state;
	strcpy(job.roof.covering, "metal-standing-seam-snap");
	job.roof.course_exposure = (double)NAN;
	job.roof.seam_spacing = IN(16);
	job.roof.first_seam = IN(4);
	struct pipe_place p = place(&job);

	assert_near(p.to_seam, IN(3.3125), 1e-9);
	assert_true(p.clear);
	job.pipe[0].at = IN(197);
	p = place(&job);
	assert_true(p.near_seam && !p.clear && isnan(p.up) && isnan(p.down));
	assert_near(p.right, IN(1.75), 1e-9);
	assert_near(p.left, IN(3.75), 1e-9);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(test_butts), cmocka_unit_test(test_hole_too_long),
					   cmocka_unit_test(test_unknown), cmocka_unit_test(test_rake),
					   cmocka_unit_test(test_sheet), cmocka_unit_test(test_seams)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
