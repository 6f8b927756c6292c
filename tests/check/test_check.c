/* SPDX-License-Identifier: MIT */
/* The whole check on one house and its variations: properties that hold whatever the coefficients are. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sample_run.h"

/* With remedies. */
static struct result *full(const struct job *job)
{
	static struct result r;
	static struct check_workspace w;

	check_run(job, &r, &w);
	return &r;
}

/* At 18 ft in exposure B, 115 mph, by hand: Kz = 2.01 (18/1200)^(2/7) = 0.605, qh = 0.00256 x 0.605 x 0.85 x 115^2 = 17.4. */
static void test_velocity(void **state)
{
	(void)state;
	const struct job job = sample_job();
	const struct result *r = full(&job);

	assert_within(r->wind.Kz, 0.605, 0.0005);
	assert_within(r->wind.qh, PSF(17.4), PSF(0.05));
}

/* Zone width: least plan dimension 28 ft, h 18 ft: min(2.8, 7.2) = 2.8 ft, not below 3 ft. */
static void test_zone_width(void **state)
{
	(void)state;
	const struct job job = sample_job();

	assert_near(full(&job)->wind.a, FT(3), 1e-12);
}

/* Every newton on the array comes down somewhere: reactions of each line add up to its load. */
static void test_reactions_balance(void **state)
{
	(void)state;
	const struct job job = sample_job();
	const struct pass *p = judged(full(&job));

	for (int l = 0; l < p->lines; l++) {
		double sum = 0;

		for (int i = 0; i < p->line[l].count; i++)
			sum += p->attachment[p->line[l].first + i].reaction_width;
		assert_near(sum, p->line[l].x1 - p->line[l].x0, 1e-12);
	}
}

/* An 8 ft collector is longer than 6.7 ft between gaps: gamma-a is refused, and the report says so. Landscape it is 4 ft up
   the slope but still 8 ft along the eave. A 5 ft module with its top 4-1/2 in above the roof meets every condition. */
static void test_flush_conditions(void **state)
{
	(void)state;
	struct job job = sample_job();
	const struct result *r = full(&job);

	assert_false(r->wind.gammaa_allowed);
	assert_true(has(r, REMARK_FLUSH_LOST));
	job.collector.length = FT(5);
	job.collector.width = FT(3);
	r = full(&job);
	assert_true(r->wind.gammaa_allowed);
	assert_false(has(r, REMARK_FLUSH_LOST));
}

static double worst_uplift(const struct result *r)
{
	const struct pass *p = judged(r);
	double worst = 0;

	for (int i = 0; i < p->attachments; i++)
		worst = fmax(worst, p->attachment[i].uplift.normal);
	return worst;
}

static void test_more_wind_never_lowers_uplift(void **state)
{
	(void)state;
	struct job job = sample_job();
	double before = 0;

	job.mount.spacing = IN(48);
	for (int V = 95; V <= 180; V += 5) {
		job.site.wind_speed = MPH(V);
		const double now = worst_uplift(full(&job));

		assert_true(now >= before);
		before = now;
	}
	assert_true(before > 0);
}

static void test_more_wind_never_needs_fewer_feet(void **state)
{
	(void)state;
	struct job job = sample_job();
	int before = 0;

	for (int V = 95; V <= 180; V += 5) {
		job.site.wind_speed = MPH(V);
		const struct result *r = full(&job);

		if (!judged(r)->holds)
			break;
		assert_true(judged(r)->attachments >= before);
		before = judged(r)->attachments;
	}
	assert_true(before > 0);
}

/* The house seen in a mirror: same feet from the other rake, same forces. Feet are fixed at every rafter, since the walk
   starts from the left. */
static void test_mirror(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.mount.spacing = IN(16);
	job.framing.first = IN(9); /* 42 ft of roof: rafters at 9 in ... 41 ft 1 in; the last is 11 in from the far edge */
	struct result *left = malloc(sizeof *left);

	*left = *full(&job);
	const double length = left->plane_length;
	const double last = left->rafter_x[left->rafters - 1];

	job.collector.left = length - left->array.x1;
	job.framing.first = length - last;
	const struct result *right = full(&job);
	const struct pass *a = &left->pass[left->judged], *b = judged(right);

	assert_int_equal(a->attachments, b->attachments);
	for (int i = 0; i < a->lines; i++)
		for (int k = 0; k < a->line[i].count; k++) {
			const struct attachment *p = &a->attachment[a->line[i].first + k];
			const struct attachment *q =
				&b->attachment[b->line[i].first + b->line[i].count - 1 - k];

			assert_near(q->x, length - p->x, 1e-12);
			assert_near(q->uplift.normal, p->uplift.normal, 1e-9);
			assert_near(q->ratio, p->ratio, 1e-9);
		}
	free(left);
}

/* Heavier snow never lowers the down force nor the down-slope force. */
static void test_more_snow(void **state)
{
	(void)state;
	struct job job = sample_job();
	double down = 0, slope = 0;

	job.mount.spacing = IN(32);
	for (int pg = 0; pg <= 80; pg += 5) {
		job.site.ground_snow = PSF(pg);
		const struct pass *p = judged(full(&job));
		double d = 0, s = 0;

		for (int i = 0; i < p->attachments; i++) {
			d = fmax(d, p->attachment[i].down.normal);
			s = fmax(s, p->attachment[i].slope.slope);
		}
		assert_true(d >= down && s >= slope);
		down = d;
		slope = s;
	}
}

/* Uplift is judged with the dry collector: the fluid may not hold the roof down. */
static void test_fluid_does_not_hold_down(void **state)
{
	(void)state;
	struct job job = sample_job();
	const double with = worst_uplift(full(&job));

	job.collector.filled_weight = LB(150);
	assert_near(worst_uplift(full(&job)), with, 1e-15);
}

static void test_reasons_for_an_engineer(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.framing.kind = FRAMING_TRUSS;
	assert_int_equal(full(&job)->verdict, NEEDS_ENGINEER);
	assert_true(has(full(&job), REMARK_NOT_RAFTER));
	job = sample_job();
	job.building.mean_roof_height = FT(60);
	assert_false(has(full(&job), REMARK_HEIGHT));
	job.building.mean_roof_height = FT(60.01);
	assert_true(has(full(&job), REMARK_HEIGHT));
	job = sample_job();
	job.site.topography = TOPOGRAPHY_UNSURE;
	assert_int_equal(full(&job)->verdict, NEEDS_ENGINEER);
	job = sample_job();
	job.building.form = FORM_OTHER;
	assert_true(has(full(&job), REMARK_FORM));
	job = sample_job();
	job.roof.layers = 2;
	assert_int_equal(full(&job)->verdict, NEEDS_ENGINEER);
	job = sample_job();
	job.framing.ties = ANSWER_NO;
	assert_true(has(full(&job), REMARK_RIDGE));
	job.framing.ridge = RIDGE_BEAM;
	assert_false(has(full(&job), REMARK_RIDGE));
	job = sample_job();
	job.collector.tilt = 2 * RAD_PER_DEG;
	assert_false(has(full(&job), REMARK_TILTED));
	job.collector.tilt = 2.1 * RAD_PER_DEG;
	assert_true(has(full(&job), REMARK_TILTED));
}

/* A standoff whose lever arm nobody knows cannot be proved. */
static void test_lever_arm(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.mount.lever_arm = (double)NAN;
	const struct result *r = full(&job);

	assert_int_equal(r->verdict, NEEDS_ENGINEER);
	assert_true(has(r, REMARK_LEVER_ARM));
}

/* A coefficient that the user read replaces both curves, so one pass remains; a bad one is not forgiven. */
static void test_entered_coefficient(void **state)
{
	(void)state;
	static const char *const zones[] = { "1", "2e", "2n", "2r", "3e", "3r" };
	struct job job = sample_job();

	for (int i = 0; i < 6; i++) {
		struct job_coefficient *k = &job.coefficient[job.coefficients++];

		strcpy(k->zone, zones[i]);
		k->GCp = -1.5;
		k->area = 0.1;
		strcpy(k->source, "invented page");
	}
	strcpy(job.coefficient[job.coefficients].zone, "down");
	job.coefficient[job.coefficients].GCp = 0.5;
	job.coefficient[job.coefficients++].area = 0.1;
	const struct result *r = full(&job);

	assert_int_equal(r->passes, 1);
	assert_true(has(r, REMARK_COEFFICIENT_ENTERED));
	for (int i = 0; i < judged(r)->attachments; i++)
		assert_near(judged(r)->attachment[i].GCp_up, -1.5, 1e-15);
}

/* Same bits in, same bits out. */
static void test_repeatable(void **state)
{
	(void)state;
	const struct job job = sample_job();
	struct result *first = calloc(1, sizeof *first);

	memcpy(first, full(&job), sizeof *first);
	const struct result *again = full(&job);

	assert_int_equal(first->verdict, again->verdict);
	assert_int_equal(first->remarks, again->remarks);
	assert_memory_equal(&first->pass[1].ratio, &again->pass[1].ratio, sizeof(double));
	assert_memory_equal(first->pass[1].attachment, again->pass[1].attachment,
	                    sizeof(struct attachment) * (size_t)first->pass[1].attachments);
	free(first);
}

/* What would make it hold really does. */
static void test_remedy_spacing(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.mount.max_spacing = (double)NAN;
	job.mount.spacing = IN(80);
	const struct result *r = full(&job);

	assert_int_equal(judged(r)->holds, false);
	assert_true(has(r, REMARK_REMEDY_SPACING));
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == REMARK_REMEDY_SPACING)
			job.mount.spacing = r->remark[i].value[0];
	assert_true(judged(full(&job))->holds);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_velocity),
		cmocka_unit_test(test_zone_width),
		cmocka_unit_test(test_reactions_balance),
		cmocka_unit_test(test_flush_conditions),
		cmocka_unit_test(test_more_wind_never_lowers_uplift),
		cmocka_unit_test(test_more_wind_never_needs_fewer_feet),
		cmocka_unit_test(test_mirror),
		cmocka_unit_test(test_more_snow),
		cmocka_unit_test(test_fluid_does_not_hold_down),
		cmocka_unit_test(test_reasons_for_an_engineer),
		cmocka_unit_test(test_lever_arm),
		cmocka_unit_test(test_entered_coefficient),
		cmocka_unit_test(test_repeatable),
		cmocka_unit_test(test_remedy_spacing),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
