/* SPDX-License-Identifier: MIT */
/* Joints that repeat. Expected distances are counted by hand beside each row: joints of course 1 at
   x1, x1 + W ..., of each course above s further. */
#include <math.h>

#include "near.h"
#include "roof/joint.h"

#define IN(x) ((x)*M_PER_IN)

/* Strip shingles, a cut-out every 12 in, each course shifted by half: courses 1, 3 ... at 0, 12,
 * 24; 2, 4 ... at 6, 18. */
static struct joint_pattern strips(double s)
{
	return (struct joint_pattern){IN(12), 0, 1, IN(s), IN(1.5), IN(1.5), NULL, 0};
}

static void test_distance(void **state)
{
	static const struct {
		double s;
		int course;
		double x, want;
	} row[] = {
		{6, 1, 8, -4},     /* 12 is next */
		{6, 2, 8, 2},      /* 6 */
		{6, 1, 60.5, 0.5}, /* 60 */
		{5, 3, 0, 2},      /* 10, so -2 */
		{5, 4, 0, -3},     /* 15, so 3 */
		{5, 8, 0, 1},      /* 35, so -1 */
		{0, 30, 11, -1},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const struct joint_pattern p = strips(row[i].s);

		assert_near(joint_distance(NULL, &p, row[i].course, IN(row[i].x)), IN(row[i].want),
			    1e-9);
	}
}

/* A joint measured in a course further up: the same pattern counted down. */
static void test_measured_further_up(void **state)
{
	struct joint_pattern p = strips(5);

	(void)state;
	p.first_course = 14;
	p.first = IN(100);
	/* course 12: 100 - 10 = 90 */
	assert_near(joint_distance(NULL, &p, 12, IN(91)), IN(1), 1e-9);
	/* course 15: 105, 93 */
	assert_near(joint_distance(NULL, &p, 15, IN(97)), IN(4), 1e-9);
}

static void test_way(void **state)
{
	static const struct {
		double x;
		bool clear;
		double nearest, way;
	} row[] = {
		{8, true, 2, 0},       /* own -4, course above 2: the one nearer its limit */
		{7, false, 1, 0.5},    /* 6 of the course above: right to 7.5, left to 4.5 */
		{0.5, false, 0.5, 1},  /* 0 of its own: right to 1.5, left to -1.5 */
		{11, false, -1, -0.5}, /* 12 of its own: left to 10.5 */
		{12, false, 0, 1.5},   /* both ways alike: right */
		{1.5, true, 1.5, 0},   /* just clear */
	};
	const struct joint_pattern p = strips(6);

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		double nearest;

		assert_int_equal(joint_clear(&p, 1, IN(row[i].x), &nearest), row[i].clear);
		assert_true(fabs(nearest - IN(row[i].nearest)) < 1e-9);
		assert_true(fabs(joint_way(&p, 1, IN(row[i].x)) - IN(row[i].way)) < 1e-9);
	}
}

/* Slates 10 in wide in half bond: the course above does not count, so joints are 10 in apart. */
static void test_own_alone(void **state)
{
	const struct joint_pattern p = {IN(10), 0, 1, IN(5), IN(1.5), (double)NAN, NULL, 0};

	(void)state;
	assert_true(joint_clear(&p, 1, IN(5), NULL));
	assert_false(joint_clear(&p, 2, IN(5), NULL));
	assert_near(joint_way(&p, 2, IN(4)), IN(-0.5), 1e-9);
}

/* Pieces 3 in wide in half bond leave no place that is 1-1/2 in from all joints but the middle,
 * which is a joint above. */
static void test_no_place(void **state)
{
	const struct joint_pattern p = {IN(3), 0, 1, IN(1.5), IN(1.5), IN(1.5), NULL, 0};

	(void)state;
	for (int i = 0; i < 12; i++)
		assert_true(isnan(joint_way(&p, 1, IN(i / 4.0))));
}

/* Wherever the hole is: the way leads to a place that is clear, and no shorter one does. */
static void test_shortest(void **state)
{
	(void)state;
	for (int s = 0; s < 12; s++)
		for (int i = 0; i < 96; i++) {
			const struct joint_pattern p = strips(s);
			const double x = IN(i / 8.0), way = joint_way(&p, 7, x);

			assert_true(joint_clear(&p, 7, x + way, NULL));
			for (double d = 0; d < fabs(way) - IN(0.01); d += IN(0.01)) {
				assert_false(joint_clear(&p, 7, x + d, NULL));
				assert_false(joint_clear(&p, 7, x - d, NULL));
			}
		}
}

/* Laminated strips no wider than 40 in. Course 14: joints seen at 150 and 186; course 15: at 153 and 190. Holes in course 14. */
static void test_seen(void **state)
{
	static const struct job_joint seen[] = {{14, IN(186)}, {15, IN(153)}, {14, IN(150)}, {15, IN(190)}};
	const struct joint_pattern p = {IN(40), (double)NAN, 1, 0, IN(1.5), IN(1.5), seen, 4};
	static const struct {
		double x, nearest, way; /* in; NAN: not known */
		bool clear;
	} row[] = {
		{152, -1, 2.5, false},        /* 2 in right of 150, but 1 in left of 153 above it: past that, 154.5 */
		{168, 15, 0, true},           /* 18 and 18 in its own course, 15 above */
		{184, -2, 0, true},           /* 2 in left of 186, 6 in left of 190 */
		{187, 1, -2.5, false},        /* to the right the next joint of its course is not seen: 184.5 */
		{200, (double)NAN, (double)NAN, false}, /* nothing seen to the right of 186 and 190 */
		{149, -1, (double)NAN, false},          /* above it nothing is seen left of 153 */
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		double nearest = 0;

		assert_true(joint_clear(&p, 14, IN(row[i].x), &nearest) == row[i].clear);
		assert_true(isnan(nearest) == (bool)isnan(row[i].nearest));
		if (!isnan(nearest))
			assert_near(nearest, IN(row[i].nearest), 1e-9);
		if (isnan(row[i].way))
			assert_true(isnan(joint_way(&p, 14, IN(row[i].x))));
		else
			assert_near(joint_way(&p, 14, IN(row[i].x)), IN(row[i].way), 1e-9);
	}
	/* course 13 lies under 14: nothing was seen of it */
	assert_false(joint_clear(&p, 13, IN(168), NULL));
}

/* Two joints further apart than a piece is wide have another between them that was not seen. */
static void test_seen_too_far_apart(void **state)
{
	static const struct job_joint seen[] = {{1, IN(10)}, {1, IN(60)}};
	const struct joint_pattern p = {IN(40), (double)NAN, 1, 0, IN(1.5), (double)NAN, seen, 2};
	const struct joint_pattern wide = {IN(50), (double)NAN, 1, 0, IN(1.5), (double)NAN, seen, 2};

	(void)state;
	assert_false(joint_clear(&p, 1, IN(35), NULL));
	assert_true(joint_clear(&wide, 1, IN(35), NULL));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_distance), cmocka_unit_test(test_measured_further_up),
		cmocka_unit_test(test_way),      cmocka_unit_test(test_own_alone),
		cmocka_unit_test(test_no_place), cmocka_unit_test(test_shortest),
		cmocka_unit_test(test_seen),     cmocka_unit_test(test_seen_too_far_apart),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
