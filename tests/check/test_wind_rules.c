/* SPDX-License-Identifier: MIT */
/* Wind beyond the rules for collectors, and over hills, by hand. */
#include <math.h>

#include "sample_run.h"

/* On 5:12 at 20 degrees: the collector leans 42.62 degrees to the level. 8 by 4 ft, 3.5 in deep: Af = 4 (8 sin + 0.2917 cos),
   Ar = 4 (8 cos + 0.2917 sin); far below a tenth of the house. */
static void test_structure_by_hand(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.collector.tilt = 20 * RAD_PER_DEG;
	const struct result *r = run(&job);
	const double b = atan2(5, 12) + 20 * RAD_PER_DEG, d = 3.5 / 12;
	const double Af = 4 * (8 * sin(b) + d * cos(b)), Ar = 4 * (8 * cos(b) + d * sin(b));

	assert_int_equal(r->wind.rule, WIND_STRUCTURE);
	assert_true(has(r, REMARK_TILTED));
	assert_true(has(r, REMARK_ROOFTOP_FORCE));
	assert_int_equal(r->verdict, NEEDS_ENGINEER);
	assert_near(r->wind.Fh, 1.9 * r->wind.qh * FT(1) * FT(1) * Af, 1e-9);
	assert_near(r->wind.Fv, 1.5 * r->wind.qh * FT(1) * FT(1) * Ar, 1e-9);
	/* whatever else acts, a leg takes no less than these forces put on it by statics, wind up the slope and down */
	const double w = 20 * RAD_PER_DEG, t = atan2(5, 12);
	const double s = FT(8 - 32.0 / 12) * cos(w), yc = s / 2;
	const double zc = IN(3) + FT(4) * sin(w) + IN(1.75) * cos(w);
	const double Fv = r->wind.Fv / FT(4), Fh = r->wind.Fh / FT(4);
	const double up_wind = ((Fv * cos(t) - Fh * sin(t)) * yc - (Fv * sin(t) + Fh * cos(t)) * zc) / s;
	const double down_wind = ((Fv * cos(t) + Fh * sin(t)) * yc - (Fv * sin(t) - Fh * cos(t)) * zc) / s;

	for (int i = 0; i < judged(r)->attachments; i++) {
		const struct attachment *a = &judged(r)->attachment[i];

		if (a->line % 2 == 1)
			assert_true(a->p_up * a->tributary_depth >= fmax(up_wind, down_wind) * (1 - 1e-9));
	}
}

/* H 100 ft, Lh 300, x 50, z 15, exposure C: K1 = 1.45/3 = 0.48333, K2 = 1 - 50/450 = 0.88889, K3 = exp(-0.15) = 0.86071;
   (1 + 0.36979)^2 = 1.87631. */
static struct job hill_job(void)
{
	struct job job = sample_job();

	job.site.exposure = EXPOSURE_C;
	job.site.topography = TOPOGRAPHY_DESCRIBED;
	job.hill = (struct job_hill){ TERRAIN_RIDGE, FT(100), FT(300), FT(50), FT(15), ANSWER_YES, ANSWER_YES, ANSWER_YES };
	return job;
}

static void test_hill(void **state)
{
	(void)state;
	struct job job = hill_job();
	const double flat = run(&job)->wind.qh / run(&job)->wind.Kzt;
	const struct result *r = run(&job);

	assert_within(r->wind.Kzt, 1.87631, 5e-6);
	assert_true(has(r, REMARK_HILL_COUNTS));
	assert_false(has(r, REMARK_HILL_UNANSWERED));
	assert_false(has(r, REMARK_HILL_FROM_MEMORY));
	job.hill.x = FT(-50); /* a ridge is the same on both sides */
	assert_within(run(&job)->wind.Kzt, 1.87631, 5e-6);
	job.hill.shape = TERRAIN_ESCARPMENT; /* 1 + 0.85/3 (1 - 50/450) exp(-0.125) = 1.22226, squared 1.49391 */
	assert_within(run(&job)->wind.Kzt, 1.49391, 5e-5);
	job.hill.x = FT(50); /* behind its crest mu is 4: 1 + 0.28333 x 0.95833 x 0.88250 = 1.23962, squared 1.53666 */
	assert_within(run(&job)->wind.Kzt, 1.53666, 5e-5);
	job = hill_job();
	job.hill.z = (double)NAN; /* the mean roof height, 18 ft: exp(-0.18) = 0.83527 */
	assert_within(run(&job)->wind.Kzt, pow(1 + 0.48333333 * 0.88888889 * 0.83527021, 2), 1e-6);
	job.site.topography = TOPOGRAPHY_NONE;
	assert_near(run(&job)->wind.qh, flat, 1e-12);
	job = hill_job();
	job.hill.isolated = ANSWER_UNKNOWN;
	assert_true(has(run(&job), REMARK_HILL_UNANSWERED));
	assert_within(run(&job)->wind.Kzt, 1.87631, 5e-6);
	job.site.exposure = EXPOSURE_D; /* K1 1.55 H/Lh has one source, as every row of the table: told only from memory */
	assert_false(has(run(&job), REMARK_HILL_FROM_MEMORY));
}

static void check_counts(const struct job *job, bool counts)
{
	const struct result *r = run(job);

	assert_true(counts == (r->wind.Kzt > 1));
	assert_true(counts == !has(r, REMARK_HILL_OUT));
}

/* 26.8.1, each condition at, below and above. */
static void test_hill_conditions(void **state)
{
	(void)state;
	struct job job = hill_job();

	for (int over = -1; over <= 1; over++) {
		const double more = 1 + over * 1e-3;

		job = hill_job();
		job.hill.H = 0.2 * job.hill.Lh * more;
		check_counts(&job, over >= 0);
		job = hill_job();
		job.hill.Lh = FT(30);
		job.hill.x = 0;
		job.hill.H = FT(15) * more;
		check_counts(&job, over >= 0);
		job.site.exposure = EXPOSURE_D;
		check_counts(&job, over >= 0);
		job.site.exposure = EXPOSURE_B;
		check_counts(&job, false);
		job.hill.H = FT(60) * more;
		check_counts(&job, over >= 0);
	}
	job = hill_job();
	job.hill.isolated = ANSWER_NO;
	check_counts(&job, false);
	job = hill_job();
	job.hill.prominent = ANSWER_NO;
	check_counts(&job, false);
	job = hill_job();
	job.hill.upper_half = ANSWER_NO;
	check_counts(&job, false);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_structure_by_hand),
		cmocka_unit_test(test_hill),
		cmocka_unit_test(test_hill_conditions),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
