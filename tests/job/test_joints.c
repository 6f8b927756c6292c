/* SPDX-License-Identifier: MIT */
/* The joints of a covering: joints that repeat are known by two lengths, joints that do not by
 * none. */
#include "job/job_read.h"

#include <math.h>
#include <string.h>

#include "example.h"
#include "near.h"

#define SET_MAX 8

static struct job job;
static struct problem_list problems;

static bool read_with(const char *const *set)
{
	return example_job(set, SET_MAX, &job, &problems);
}

static void test_refused(void **state)
{
	static const struct {
		const char *set[SET_MAX];
		enum problem_code code;
		const char *field;
	} row[] = {
		{{"roof.joints=regular", "roof.piece-width=12 in"},
		 PROBLEM_MISSING,
		 "roof.first-joint"},
		{{"roof.joints=regular", "roof.first-joint=6 in"},
		 PROBLEM_MISSING,
		 "roof.piece-width"},
		{{"roof.piece-width=12 in"}, PROBLEM_DISAGREE, "roof.piece-width, roof.joints"},
		{{"roof.joints=random", "roof.joint-shift=6 in"},
		 PROBLEM_DISAGREE,
		 "roof.joint-shift, roof.joints"},
		{{"roof.joints=regular", "roof.piece-width=12 in", "roof.first-joint=6 in",
		  "roof.joint-shift=12 in"},
		 PROBLEM_DISAGREE,
		 "roof.joint-shift, roof.piece-width"},
		{{"roof.joints=none"}, PROBLEM_NOT_A_CHOICE, "roof.joints"},
		{{"roof.piece-grade=4"}, PROBLEM_OUT_OF_RANGE, "roof.piece-grade"},
		{{"roof.joints=measured", "roof.piece-width=40 in", "roof.first-butt=5 in"}, PROBLEM_MISSING, "joint.at"},
		{{"roof.joint-course=0"}, PROBLEM_OUT_OF_RANGE, "roof.joint-course"},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		assert_false(read_with(row[i].set));
		assert_int_equal(problems.count, 1);
		assert_int_equal(problems.item[0].code, row[i].code);
		assert_string_equal(problems.item[0].field, row[i].field);
	}
}

static void test_read(void **state)
{
	static const char *const none[] = {NULL}, *const random[] = {"roof.joints=random", NULL},
				 *const regular[] = {"roof.joints=regular",
						     "roof.piece-width=12 in",
						     "roof.first-joint=14 ft 3 in",
						     "roof.joint-course=9", NULL};

	(void)state;
	assert_true(read_with(none));
	assert_int_equal(job.roof.joints, JOINTS_UNKNOWN);
	assert_true(isnan(job.roof.piece_width) && isnan(job.roof.first_joint));
	assert_int_equal(job.roof.joint_course, 1);
	assert_true(read_with(random));
	assert_int_equal(job.roof.joints, JOINTS_RANDOM);
	assert_true(read_with(regular));
	assert_int_equal(job.roof.joints, JOINTS_REGULAR);
	assert_near(job.roof.first_joint, 171 * 0.0254, 1e-12);
	assert_int_equal(job.roof.joint_course, 9);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(test_refused),
					   cmocka_unit_test(test_read)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
