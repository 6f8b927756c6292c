/* SPDX-License-Identifier: MIT */
/* Which wind rule loads the collectors, on which roof and over which ground: limits at, below and above; the legs of a rack
   by a second way of statics; hills by hand; planes of hip roofs and their mirror images. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

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

/* 60 by 28 ft with 2 ft of overhang all round: sides 64 ft along the eave, ends 32; run 16 ft. */
static struct job hip_job(enum roof_plane plane)
{
	struct job job = sample_job();

	job.building.form = FORM_HIP;
	job.building.plane = plane;
	job.building.length = FT(60);
	job.building.eave_overhang = FT(2);
	job.collector.left = FT(plane == PLANE_END ? 13 : 14);
	job.collector.lower = FT(4);
	job.framing.span = FT(13.5);
	if (plane == PLANE_END) {
		job.collector.columns = 1;
		job.framing.first = FT(1);
	}
	return job;
}

static void test_hip(void **state)
{
	(void)state;
	struct job job = hip_job(PLANE_SIDE);
	const struct result *r = run(&job);

	assert_near(r->plane_length, FT(64), 1e-12);
	assert_near(r->plane_slope, FT(16) / cos(job.roof.pitch), 1e-12);
	assert_true(r->passes > 0);
	assert_true(has(r, REMARK_UNCHECKED_HIP));
	assert_false(has(r, REMARK_FORM));
	job = hip_job(PLANE_END);
	r = run(&job);
	assert_near(r->plane_length, FT(32), 1e-12);
	assert_true(r->passes > 0);
	job.building.plane = PLANE_UNKNOWN;
	r = run(&job);
	assert_int_equal(r->passes, 0);
	assert_true(has(r, REMARK_PLANE));
	assert_int_equal(r->verdict, NEEDS_ENGINEER);
}

/* A hip side seen in a mirror, under jack and common rafters alike. */
static void test_hip_mirror(void **state)
{
	(void)state;
	struct job job = hip_job(PLANE_SIDE);

	job.mount.spacing = IN(16);
	struct result *left = malloc(sizeof *left);

	*left = *run(&job);
	const double length = left->plane_length, last = left->rafter_x[left->rafters - 1];

	job.collector.left = length - left->array.x1;
	job.framing.first = length - last;
	const struct result *right = run(&job);
	const struct pass *a = &left->pass[left->judged], *b = judged(right);

	assert_true(a->attachments > 0);
	assert_int_equal(a->attachments, b->attachments);
	assert_near(b->ratio, a->ratio, 1e-9);
	for (int i = 0; i < a->lines; i++)
		for (int k = 0; k < a->line[i].count; k++) {
			const struct attachment *p = &a->attachment[a->line[i].first + k];
			const struct attachment *q = &b->attachment[b->line[i].first + b->line[i].count - 1 - k];

			assert_near(q->x, length - p->x, 1e-12);
			assert_near(q->uplift.normal, p->uplift.normal, 1e-9);
			assert_int_equal(q->zone, p->zone);
		}
	free(left);
}

static void enter(struct job *job, const char *zone, double GCp)
{
	struct job_coefficient *k = &job->coefficient[job->coefficients++];

	strcpy(k->zone, zone);
	k->GCp = GCp;
	k->area = 0.1;
	strcpy(k->source, "invented page");
}

/* Steeper than 27 degrees there is no remembered value: refused, unless the user brings them. 7-10 has its figure up to 27
   as well. */
static void test_steep_hip(void **state)
{
	static const enum edition editions[] = { ASCE7_10, ASCE7_16, ASCE7_22 };

	(void)state;
	for (int i = 0; i < 3; i++) {
		struct job job = hip_job(PLANE_SIDE);

		job.site.code = editions[i];
		job.collector.left = FT(20);
		job.roof.pitch = 27 * RAD_PER_DEG;
		assert_false(has(run(&job), REMARK_NO_COEFFICIENT));
		assert_true(run(&job)->passes > 0);
		job.roof.pitch = 27.01 * RAD_PER_DEG;
		const struct result *r = run(&job);

		assert_true(has(r, REMARK_NO_COEFFICIENT));
		assert_int_equal(r->passes, 0);
		assert_int_equal(r->verdict, NEEDS_ENGINEER);
		enter(&job, "1", -2);
		enter(&job, "2", -3);
		enter(&job, "2e", -3);
		enter(&job, "2r", -3);
		enter(&job, "3", -4);
		enter(&job, "down", 0.9);
		r = run(&job);
		assert_false(has(r, REMARK_NO_COEFFICIENT));
		assert_int_equal(r->passes, 1);
	}
}

static void test_monoslope(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.building.form = FORM_MONOSLOPE;
	job.building.length = job.building.width = FT(60);
	job.framing.span = FT(12);
	job.roof.pitch = 30 * RAD_PER_DEG;
	job.building.mean_roof_height = FT(30);
	const struct result *r = run(&job);

	assert_true(r->passes > 0);
	assert_true(has(r, REMARK_ZONE_ENVELOPE));
	assert_int_equal(r->passes, 2);
	job.roof.pitch = 30.01 * RAD_PER_DEG;
	r = run(&job);
	assert_int_equal(r->passes, 0);
	assert_true(has(r, REMARK_NO_COEFFICIENT));
	job.roof.pitch = 10 * RAD_PER_DEG;
	r = run(&job);
	assert_true(r->passes > 0);
	/* the strip along the high edge has its own zones up to 10 degrees */
	bool primed = false;

	for (int i = 0; i < r->shapes; i++)
		primed = primed || r->shape[i].zone == ZONE_2P;
	assert_true(primed);
}

/* By area is never worse than the worst zone, and the same where a piece lies in one. */
static void test_straddling(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.collector.lower = FT(2); /* the eave strip is 3.25 ft up the slope: the lower pieces reach into 2e and 1 */
	job.collector.left = FT(1);  /* and across the rake strip of 3 ft */
	job.mount.spacing = IN(32);
	struct result *worst = malloc(sizeof *worst);

	*worst = *run(&job);
	assert_true(has(worst, REMARK_STRADDLE_WORST));
	job.collector.straddling = STRADDLING_BY_AREA;
	const struct result *r = run(&job);
	const struct pass *a = &worst->pass[0], *b = &r->pass[0];
	bool lower = false;

	assert_true(has(r, REMARK_STRADDLE_BY_AREA));
	assert_int_equal(a->attachments, b->attachments);
	for (int i = 0; i < a->attachments; i++) {
		assert_true(b->attachment[i].p_up <= a->attachment[i].p_up * (1 + 1e-12));
		lower = lower || b->attachment[i].p_up < 0.99 * a->attachment[i].p_up;
	}
	assert_true(lower);
	job.collector.left = FT(12);
	job.collector.lower = FT(5);
	assert_false(has(run(&job), REMARK_STRADDLE_BY_AREA));
	free(worst);
}

/* 7-10 by hand: the lower strip runs from 2 to 6 ft up the slope, the eave strip of 3 ft on plan to 3.25: 0.3125 of it in zone
   2 (-1.7 - 0.18), the rest in zone 1 (-0.9 - 0.18): 1.33 qh; the worst zone alone 1.88 qh. 16 in by 4 ft are below 10 ft2. */
static void test_straddling_by_hand(void **state)
{
	(void)state;
	struct job job = sample_job();

	job.site.code = ASCE7_10;
	job.collector.lower = FT(2);
	job.mount.spacing = IN(16);
	for (int by_area = 0; by_area <= 1; by_area++) {
		job.collector.straddling = by_area ? STRADDLING_BY_AREA : STRADDLING_WORST;
		const struct result *r = run(&job);
		const struct attachment *a = &judged(r)->attachment[1];

		assert_int_equal(a->line, 0);
		assert_near(a->p_up, (by_area ? 1.33 : 1.88) * r->wind.qh, 1e-9);
		assert_int_equal(a->zone, ZONE_2);
	}
}

static void test_outside_the_walls(void **state)
{
	(void)state;
	struct job job = sample_job();
	const double over = job.building.eave_overhang / cos(job.roof.pitch);

	job.collector.lower = over;
	assert_false(has(run(&job), REMARK_OVERHANG_ARRAY));
	job.collector.lower = over - IN(1);
	assert_true(has(run(&job), REMARK_OVERHANG_ARRAY));
	job = sample_job();
	assert_false(has(run(&job), REMARK_RAKE_FOOT));
	job.collector.left = 0; /* the first rafter, at 8 in, carries the 12 in rake overhang */
	job.mount.spacing = IN(16);
	const struct result *r = run(&job);

	assert_true(has(r, REMARK_RAKE_FOOT));
	assert_int_equal(r->verdict, NEEDS_ENGINEER);
}

static void test_forms_without_figures(void **state)
{
	static const enum roof_form none[] = { FORM_OTHER, FORM_MULTISPAN, FORM_CURVED };

	(void)state;
	for (int i = 0; i < 3; i++) {
		struct job job = sample_job();

		job.building.form = none[i];
		const struct result *r = run(&job);

		assert_true(has(r, REMARK_FORM));
		assert_int_equal(r->verdict, NEEDS_ENGINEER);
		assert_int_equal(r->passes, 0);
	}
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
		cmocka_unit_test(test_rack_balances),
		cmocka_unit_test(test_mount_height_does_not_bend_a_rack),
		cmocka_unit_test(test_high_edge),
		cmocka_unit_test(test_limits),
		cmocka_unit_test(test_no_rule),
		cmocka_unit_test(test_two_degrees),
		cmocka_unit_test(test_entered_chart),
		cmocka_unit_test(test_structure_by_hand),
		cmocka_unit_test(test_hill),
		cmocka_unit_test(test_hill_conditions),
		cmocka_unit_test(test_hip),
		cmocka_unit_test(test_hip_mirror),
		cmocka_unit_test(test_steep_hip),
		cmocka_unit_test(test_monoslope),
		cmocka_unit_test(test_straddling),
		cmocka_unit_test(test_straddling_by_hand),
		cmocka_unit_test(test_outside_the_walls),
		cmocka_unit_test(test_forms_without_figures),
		cmocka_unit_test(test_laws),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
