/* SPDX-License-Identifier: MIT */
/* Yield modes at the limits of their reduction terms, dowel bearing at its limits, pull and side
   load together, the couple of a raised foot. NDS-2018 12.3, 12.4.1. */
#include "resist/dowel.h"

#include "near.h"
#include "random.h"
#include "resist/combined.h"
#include "resist/resist_steps.h"
#include "resist/standoff.h"
#include "us.h"

static double value(const struct step *s, const double *in)
{
	return s->value(in);
}

/* NDS-2018 Table 12.3.1B: K_D 2.2 to 0.17 in, 10 D + 0.5 above; the two meet at 0.17. */
static void k_d(void **state)
{
	(void)state;
	assert_near(value(&step_yield_k_d, (double[]){ 0.152 }), 2.2, 1e-15);
	assert_near(value(&step_yield_k_d, (double[]){ 0.17 }), 2.2, 1e-15);
	assert_near(value(&step_yield_k_d, (double[]){ 0.173 }), 2.23, 1e-15);
	assert_near(value(&step_yield_k_d, (double[]){ 0.227 }), 2.77, 1e-15);
	assert_near(value(&step_yield_k_theta, (double[]){ 0.0 }), 1.0, 1e-15);
	assert_near(value(&step_yield_k_theta, (double[]){ 90.0 }), 1.25, 1e-15);
	assert_near(value(&step_yield_k_theta, (double[]){ 45.0 }), 1.125, 1e-15);
}

static struct dowel_joint joint(double D, double Dr, double theta)
{
	return (struct dowel_joint){ .D = IN(D),
		                     .Dr = IN(Dr),
		                     .lm = IN(8.0 * D),
		                     .ls = IN(0.25),
		                     .Fem = PSI(4700.0),
		                     .Fes = PSI(87000.0),
		                     .Fyb = PSI(45000.0),
		                     .theta = DEG(theta) };
}

/* Rd by nominal diameter, root and angle: Table 12.3.1B and its footnote 1. */
static void reduction(void **state)
{
	static const struct {
		const char *what;
		double D, Dr, theta, I, II, III;
	} row[] = {
		{ "1/4 lag, root below 1/4: K_D K_theta", 0.25, 0.173, 90.0, 2.23 * 1.25,
		  2.23 * 1.25, 2.23 * 1.25 },
		{ "5/16 lag, root below 1/4", 0.3125, 0.227, 0.0, 2.77, 2.77, 2.77 },
		{ "3/8 lag, root 0.265", 0.375, 0.265, 0.0, 4.0, 3.6, 3.2 },
		{ "3/8 lag across the grain", 0.375, 0.265, 90.0, 5.0, 4.5, 4.0 },
		{ "1/4 bolt, at 1/4", 0.25, 0.25, 0.0, 4.0, 3.6, 3.2 },
		{ "just below 1/4: K_D alone, any angle", 0.249, 0.249, 90.0, 2.99, 2.99, 2.99 },
		{ "No. 10 screw", 0.19, 0.152, 90.0, 2.2, 2.2, 2.2 },
		{ "1 in bolt, the largest", 1.0, 1.0, 0.0, 4.0, 3.6, 3.2 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct dowel_joint j = joint(row[i].D, row[i].Dr, row[i].theta);
		const struct dowel_yield y = dowel_yield(NULL, &j);

		assert_row(row[i].what, y.Rd[MODE_IM], row[i].I, 1e-12);
		assert_row(row[i].what, y.Rd[MODE_IS], row[i].I, 1e-12);
		assert_row(row[i].what, y.Rd[MODE_II], row[i].II, 1e-12);
		assert_row(row[i].what, y.Rd[MODE_IIIM], row[i].III, 1e-12);
		assert_row(row[i].what, y.Rd[MODE_IIIS], row[i].III, 1e-12);
		assert_row(row[i].what, y.Rd[MODE_IV], row[i].III, 1e-12);
	}
}

static void covered(void **state)
{
	struct dowel_joint j = joint(1.0, 1.0, 0.0);

	(void)state;
	assert_true(dowel_covers(&j));
	j.D = j.Dr = IN(1.001);
	assert_false(dowel_covers(&j));
	j = joint(0.375, 0.376, 0.0);
	assert_false(dowel_covers(&j));
	j = joint(0.375, 0.265, 90.0);
	assert_true(dowel_covers(&j));
	j.theta = DEG(-1.0);
	assert_false(dowel_covers(&j));
	j.theta = NAN;
	assert_false(dowel_covers(&j));
}

/* The governing value is the least of the six, and a wider gap never helps. */
static void gap_never_helps(void **state)
{
	uint64_t seed = 12;

	(void)state;
	for (int k = 0; k < 500; k++) {
		struct dowel_joint j = joint(0.3125, 0.227, random_between(&seed, 0.0, 90.0));
		double before = INFINITY;

		j.lm = IN(random_between(&seed, 1.0, 5.0));
		j.ls = IN(random_between(&seed, 0.04, 2.0));
		j.Fem = PSI(random_between(&seed, 2000.0, 9000.0));
		j.Fes = PSI(random_between(&seed, 2000.0, 90000.0));
		for (double g = 0.0; g < 3.0; g += 0.25) {
			struct dowel_yield y;

			j.gap = IN(g);
			y = dowel_yield(NULL, &j);
			for (int m = 0; m < YIELD_MODE_COUNT; m++)
				assert_true(y.value <= y.Z[m]);
			/* rounding: Im and Is do not change with the gap */
			assert_true(y.value <= before * (1.0 + 1e-14));
			before = y.value;
		}
	}
}

/* NDS-2018 Table 12.3.3 and footnote 2: 5600 along the grain at G 0.50, 3650 across at 3/8 in, 4650
   below 1/4 in. */
static void bearing(void **state)
{
	(void)state;
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.375), 0.0)), 5600.0, 1e-12);
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.375), DEG(90.0))), 3650.0, 1e-12);
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.25), DEG(90.0))), 4450.0, 1e-12);
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.249), DEG(90.0))), 4650.0, 1e-12);
	/* Hankinson at 45 degrees: 2 a b/(a + b) */
	assert_near(TO_PSI(dowel_bearing_wood(NULL, 0.50, IN(0.375), DEG(45.0))),
	            2.0 * 5600.0 * 3650.0 / 9250.0, 1e-12);
}

/* NDS-2018 Eq. 12.4-1 at its ends, and that the ratio at any angle is that of the two parts: R
   cos^2/Z + R sin^2/W. */
static void combined(void **state)
{
	struct combined c;

	(void)state;
	assert_near(combined_capacity(NULL, 700.0, 150.0, 0.0), 150.0, 1e-14);
	assert_near(combined_capacity(NULL, 700.0, 150.0, DEG(90.0)), 700.0, 1e-14);
	c = combined_check(NULL, 300.0, 400.0, 1, 700.0, 150.0);
	assert_near(c.resultant, 500.0, 1e-14);
	assert_near(c.alpha, atan(0.75), 1e-14);
	assert_near(c.ratio, 500.0 * (0.64 / 150.0 + 0.36 / 700.0), 1e-13);
	c = combined_check(NULL, 300.0, -400.0, 2, 700.0, 150.0); /* two screws, either way along */
	assert_near(c.resultant, 250.0, 1e-14);
	assert_near(c.ratio, 250.0 * (0.64 / 150.0 + 0.36 / 700.0), 1e-13);
	c = combined_check(NULL, -300.0, 75.0, 1, 700.0, 150.0); /* pressed down: side load alone */
	assert_near(c.ratio, 0.5, 1e-14);
	c = combined_check(NULL, -300.0, 0.0, 1, 700.0, 150.0);
	assert_within(c.ratio, 0.0, 0.0);
	/* a screw not permitted for side load is not counted for pull */
	c = combined_check(NULL, 1.0, 0.0, 1, 700.0, 0.0);
	assert_true(isinf(c.ratio) && c.ratio > 0.0);
}

static void standoff(void **state)
{
	double pull = -1.0;

	(void)state;
	assert_true(standoff_pull(NULL, LB(80.0), IN(6.0), IN(2.0), &pull));
	assert_near(TO_LB(pull), 240.0, 1e-14);
	assert_true(standoff_pull(NULL, LB(-80.0), IN(6.0), IN(2.0), &pull));
	assert_near(TO_LB(pull), 240.0, 1e-14);
	assert_false(standoff_pull(NULL, LB(80.0), IN(6.0), NAN, &pull));
	assert_false(standoff_pull(NULL, LB(80.0), IN(6.0), 0.0, &pull));
	assert_false(standoff_pull(NULL, NAN, IN(6.0), IN(2.0), &pull));
	assert_false(standoff_pull(NULL, LB(80.0), NAN, IN(2.0), &pull));
	assert_true(standoff_pull(NULL, 0.0, IN(6.0), NAN, &pull));
	assert_within(pull, 0.0, 0.0);
	assert_true(standoff_pull(NULL, LB(80.0), 0.0, NAN, &pull));
	assert_within(pull, 0.0, 0.0);
}

static void adjusted(void **state)
{
	(void)state;
	assert_near(TO_LB(lateral_adjusted(NULL, LB(100.0), 1.6, 0.7, 0.8, 0.98, 0.75, 0.67)),
	            100.0 * 1.6 * 0.7 * 0.8 * 0.98 * 0.75 * 0.67, 1e-14);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(k_d),      cmocka_unit_test(reduction),
		cmocka_unit_test(covered),  cmocka_unit_test(gap_never_helps),
		cmocka_unit_test(bearing),  cmocka_unit_test(combined),
		cmocka_unit_test(standoff), cmocka_unit_test(adjusted),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
