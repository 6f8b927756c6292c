/* SPDX-License-Identifier: MIT */
/* Tilted collectors: which wind rule loads them, at its limits, below and above; the legs of a rack by a
   second way of statics. */
#include <math.h>
#include <string.h>

#include "check/check_steps.h"
#include "load/asce7_tilted.h"
#include "sample_run.h"

/* Two collectors of 5 by 4 ft at 20 degrees in the middle of a flat roof of 60 by 60 ft, 12 ft high: 2 h is 24 ft, so zone
   1. High edge 1 ft + 5 sin 20 + 3.5 in cos 20 = 2.98 ft. */
static struct job rack_job(void)
{
	struct job job = sample_job();

	job.building.form = FORM_FLAT;
	job.building.length = job.building.width = FT(60);
	job.building.mean_roof_height = FT(12);
	job.building.eave_overhang = job.building.rake_overhang = 0;
	job.roof.pitch = 1 * RAD_PER_DEG;
	strcpy(job.roof.covering, "modified-bitumen");
	job.framing.span = FT(12);
	job.collector.length = FT(5);
	job.collector.width = FT(4);
	job.collector.dry_weight = job.collector.filled_weight = LB(70);
	job.collector.left = FT(26);
	job.collector.lower = FT(27);
	job.collector.clearance = FT(1);
	job.collector.tilt = 20 * RAD_PER_DEG;
	job.origin[FIELD_COLLECTOR_TILT] = ORIGIN_FILE;
	job.rail.lower_inset = job.rail.upper_inset = IN(6);
	job.mount.spacing = IN(32);
	return job;
}

static void test_tilted_rule(void **state)
{
	(void)state;
	struct job job = rack_job();
	const struct result *r = run(&job);

	assert_int_equal(r->wind.rule, WIND_TILTED);
	assert_int_equal(r->wind.tilted_failed, 0);
	assert_false(has(r, REMARK_TILTED));
	assert_true(has(r, REMARK_RACK_BRACED));
	assert_false(has(r, REMARK_FLUSH_LOST));
	assert_near(r->wind.gammap, 0.9, 1e-12);
	assert_near(r->wind.gammac, 0.9, 1e-12); /* 0.6 + 0.06 x 5 */
	assert_near(r->wind.Lb, FT(0.4 * sqrt(12 * 60)), 1e-12); /* 10.73, below 12 and 60 */
	assert_within(r->wind.h2, FT(2.98), FT(0.01));
	assert_int_equal(r->passes, 2);
	for (int i = 0; i < judged(r)->attachments; i++)
		assert_int_equal(judged(r)->attachment[i].zone, ZONE_1);
	/* the parapet lends its 0.1 and more */
	job.building.parapet = FT(1.2);
	assert_near(run(&job)->wind.gammap, 1.0, 1e-12);
}

/* Moments about the upper foot, where the program takes them about the lower: yc' = s - yc. Chord 5 ft, insets 0.5 ft: s = 4
   cos 20, yc = 2 cos 20; zc = 1 + 2.5 sin 20 + 1.75/12 cos 20. */
static void test_legs_by_hand(void **state)
{
	(void)state;
	const struct job job = rack_job();
	const struct result *r = run(&job);
	const struct pass *pass = judged(r);
	const double w = 20 * RAD_PER_DEG, s = FT(4) * cos(w), yc = FT(2) * cos(w);
	const double zc = FT(1 + 2.5 * sin(w) + 1.75 / 12 * cos(w));

	assert_true(pass->attachments >= 4);
	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double p = fmax(r->wind.qh * 0.9 * 0.9 * (a->exposed ? 1.5 : 1) * -a->GCp_up, PSF(16));
		const double Fn = p * FT(5) * cos(w), Ft = -p * FT(5) * sin(w);
		const double lower = (Fn * (s - yc) + Ft * zc) / s, upper = Fn - lower;
		const double leg = a->line % 2 == 0 ? lower : upper;

		/* p acts both ways: what presses one way lifts the other */
		assert_near(a->p_up * a->tributary_depth, fabs(leg), 1e-9);
		assert_near(a->p_down * a->tributary_depth, fabs(leg), 1e-9);
		assert_near(a->p_shear * a->tributary_depth, fabs(Ft) / 2, 1e-9);
		assert_near(a->tributary_depth, FT(2.5), 1e-12);
		assert_near(fabs(a->tip), zc / s * 2, 1e-9);
	}
	/* both lines stand where their legs meet the roof */
	assert_near(pass->attachment[0].y, FT(27) + FT(0.5) * cos(w), 1e-12);
}

/* The record of this step whose result is nearest to a value. */
static double shown(const struct result *r, const struct step *step, double want)
{
	double best = (double)NAN;

	for (int s = 0; s < SECTION_COUNT; s++)
		for (size_t i = 0; i < r->trace[s].count; i++)
			if (r->trace[s].record[i].step == step &&
			    !(fabs(r->trace[s].record[i].result - want) >= fabs(best - want)))
				best = r->trace[s].record[i].result;
	return best;
}

/* Lift, pressure of the leg and push along the roof of the governing foot stand among the formulas;
   the wind's factor is 0.6. */
static void test_legs_are_shown(void **state)
{
	(void)state;
	const struct job job = rack_job();
	const struct result *r = run(&job);
	const struct attachment *a = &judged(r)->attachment[judged(r)->governing_attachment];
	const double width = fmax(a->reaction_width, a->tributary_width);
	const double area = width * a->tributary_depth;

	assert_near(shown(r, &step_rack_spread, a->p_up), a->p_up, 1e-12);
	assert_near(shown(r, &step_rack_spread, a->p_shear), a->p_shear, 1e-12);
	assert_near(shown(r, &step_rack_slide, 0.6 * a->p_shear * area), 0.6 * a->p_shear * area, 1e-12);
	if (a->line % 2 == 0)
		assert_near(shown(r, &step_rack_lower, a->p_up * a->tributary_depth),
			    a->p_up * a->tributary_depth, 1e-12);
}

/* The whole weight comes down through the legs, and tipping adds nothing to the sum. */
static void test_rack_balances(void **state)
{
	(void)state;
	struct job job = rack_job();

	job.roof.pitch = 5 * RAD_PER_DEG;
	const struct result *r = run(&job);
	const struct pass *pass = judged(r);
	double lower = 0, upper = 0, area_l = 0, area_u = 0;

	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double area = a->tributary_width * a->tributary_depth;

		if (a->line % 2 == 0) {
			lower += a->tip * area;
			area_l += area;
		} else {
			upper += a->tip * area;
			area_u += area;
		}
	}
	assert_near(lower, -upper, 1e-9);
	assert_true(lower > 0);
	/* strips of both lines: the collectors' own area and the gap */
	assert_near(area_l + area_u, FT(5) * FT(8 + 1.0 / 12), 1e-9);
}

static void test_mount_height_does_not_bend_a_rack(void **state)
{
	(void)state;
	struct job job = rack_job();
	const double low = judged(run(&job))->link_ratio[LINK_FASTENER];

	job.mount.height = IN(12);
	assert_near(judged(run(&job))->link_ratio[LINK_FASTENER], low, 1e-15);
}

/* The same rack told by the height of its upper edge. */
static void test_high_edge(void **state)
{
	(void)state;
	struct job job = rack_job();
	const double tilt = job.collector.tilt, ratio = judged(run(&job))->ratio;

	job.collector.tilt = 0;
	job.origin[FIELD_COLLECTOR_TILT] = ORIGIN_DEFAULT;
	job.collector.high_edge = FT(1) + FT(5) * sin(tilt);
	assert_near(run(&job)->wind.tilt, tilt, 1e-12);
	assert_near(judged(run(&job))->ratio, ratio, 1e-9);
}

static void refuse(struct job job, bool refused, enum tilted_condition c)
{
	const struct result *r = run(&job);

	assert_int_equal(r->wind.rule, refused ? WIND_STRUCTURE : WIND_TILTED);
	assert_true(refused == has(r, REMARK_TILTED));
	assert_true(refused == ((r->wind.tilted_failed & TILTED_BIT(c)) != 0));
	assert_int_equal(count(r, REMARK_TILTED_LIMIT), refused ? 1 : 0);
	if (refused)
		assert_int_equal(r->verdict, NEEDS_ENGINEER);
}

static void test_limits(void **state)
{
	(void)state;
	struct job job = rack_job();

	for (int over = -1; over <= 1; over++) {
		const double more = 1 + over * 1e-3;

		job = rack_job();
		job.roof.pitch = 7 * RAD_PER_DEG * more;
		/* steeper than 7 degrees there is no flat roof: a gable */
		job.building.form = FORM_GABLE;
		job.building.width = FT(70);
		refuse(job, over > 0, TILTED_SLOPE);
		job = rack_job();
		job.collector.tilt = 35 * RAD_PER_DEG * more;
		job.collector.clearance = IN(3);
		refuse(job, over > 0, TILTED_TILT);
		job = rack_job();
		job.collector.clearance = FT(2) * more - job.collector.depth * cos(job.collector.tilt);
		refuse(job, over > 0, TILTED_LOW_EDGE);
		job = rack_job();
		job.collector.column_gap = IN(0.25) * (2 - more);
		refuse(job, over > 0, TILTED_GAP);
		job = rack_job(); /* 2 h2 = 5.96 ft rules over 4 ft; distances are level, the roof 1 degree */
		job.collector.lower = 2 * run(&job)->wind.h2 * (2 - more) / cos(job.roof.pitch);
		refuse(job, over > 0, TILTED_EDGE);
	}
}

/* 7-10 has no rule for collectors; a monoslope is not in the rule's list. */
static void test_no_rule(void **state)
{
	(void)state;
	struct job job = rack_job();

	job.site.code = ASCE7_10;
	const struct result *r = run(&job);

	assert_int_equal(r->wind.rule, WIND_STRUCTURE);
	assert_int_equal(r->verdict, NEEDS_ENGINEER);
	assert_false(has(r, REMARK_TILTED_LIMIT));
	job = rack_job();
	job.building.form = FORM_MONOSLOPE;
	refuse(job, true, TILTED_FORM);
}

/* 2 degrees still lie flush. */
static void test_two_degrees(void **state)
{
	(void)state;
	struct job job = rack_job();

	job.collector.tilt = 2 * RAD_PER_DEG;
	assert_int_equal(run(&job)->wind.rule, WIND_FLUSH);
	job.collector.tilt = 2.01 * RAD_PER_DEG;
	assert_int_equal(run(&job)->wind.rule, WIND_TILTED);
}

/* The chart's value replaces both curves; for its area and larger ones. */
static void test_entered_chart(void **state)
{
	(void)state;
	struct job job = rack_job();

	strcpy(job.coefficient[0].zone, "rn1");
	job.coefficient[0].GCp = -1.1;
	job.coefficient[0].area = 0.1;
	strcpy(job.coefficient[0].source, "invented page");
	job.coefficients = 1;
	const struct result *r = run(&job);

	assert_true(has(r, REMARK_COEFFICIENT_ENTERED));
	for (int i = 0; i < judged(r)->attachments; i++)
		assert_near(judged(r)->attachment[i].GCp_up, -1.1, 1e-15);
}

/* More wind never lowers what the legs carry; nor does a taller parapet. */
static void test_laws(void **state)
{
	(void)state;
	struct job job = rack_job();
	double before = 0;

	for (int V = 95; V <= 180; V += 17) {
		job.site.wind_speed = MPH(V);
		const double now = judged(run(&job))->attachment[0].p_up;

		assert_true(now >= before);
		before = now;
	}
	before = 0;
	for (int hpt = 0; hpt <= 6; hpt++) {
		job.building.parapet = FT(hpt);
		const double now = judged(run(&job))->attachment[0].p_up;

		assert_true(now >= before);
		before = now;
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_tilted_rule),
		cmocka_unit_test(test_legs_by_hand),
		cmocka_unit_test(test_legs_are_shown),
		cmocka_unit_test(test_rack_balances),
		cmocka_unit_test(test_mount_height_does_not_bend_a_rack),
		cmocka_unit_test(test_high_edge),
		cmocka_unit_test(test_limits),
		cmocka_unit_test(test_no_rule),
		cmocka_unit_test(test_two_degrees),
		cmocka_unit_test(test_entered_chart),
		cmocka_unit_test(test_laws),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
