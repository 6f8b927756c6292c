/* SPDX-License-Identifier: MIT */
/* Laws of the whole check, in every edition and on every form of roof: more wind never lowers
   uplift; a foot that carries more area never has a larger coefficient; the house in a mirror gives
   the mirrored answer; US and SI give one verdict. And each limit that the check itself draws:
   below, at and above. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sample_run.h"
#include "sample_units.h"

enum shape { FLAT, FLAT_TILTED, GABLE, HIP_SIDE, HIP_END, MONOSLOPE, SHAPES };
static const char *const shape_name[SHAPES] = {"flat",      "flat, tilted", "gable",
					       "hip, side", "hip, end",     "monoslope"};

static struct job shaped(enum shape s, enum edition e)
{
	struct job job = dense();

	job.site.code = e;
	job.site.ground_snow_level = e == ASCE7_22 ? SNOW_STRENGTH : SNOW_SERVICE;
	job.building.length = FT(60);
	job.framing.spacing = IN(16);
	job.collector.left = FT(14);
	job.collector.lower = FT(5);
	switch (s) {
	case FLAT:
	case FLAT_TILTED:
		job.building.form = FORM_FLAT;
		job.building.width = FT(60);
		job.building.eave_overhang = job.building.rake_overhang = 0;
		job.roof.pitch = 1 * RAD_PER_DEG;
		strcpy(job.roof.covering, "modified-bitumen");
		job.framing.span = FT(12);
		job.framing.depth = IN(9.25);
		job.collector.left = job.collector.lower = FT(20);
		break;
	case HIP_SIDE:
	case HIP_END:
		job.building.form = FORM_HIP;
		job.building.plane = s == HIP_END ? PLANE_END : PLANE_SIDE;
		job.framing.span = FT(14);
		if (s == HIP_SIDE)
			break;
		job.collector.columns = 1;
		job.collector.left = FT(13);
		job.collector.lower = FT(3);
		break;
	case MONOSLOPE:
		job.building.form = FORM_MONOSLOPE;
		job.building.width = FT(24);
		job.framing.span = FT(12);
		break;
	case GABLE:
	case SHAPES:
		break;
	}
	if (s == FLAT_TILTED) {
		job.collector.length = FT(5);
		job.collector.width = FT(4);
		job.collector.clearance = FT(1);
		job.collector.tilt = 20 * RAD_PER_DEG;
		job.origin[FIELD_COLLECTOR_TILT] = ORIGIN_FILE;
	}
	return job;
}

/* The k-th of all editions and shapes. */
static bool next(size_t k, enum shape *s, enum edition *e)
{
	*s = (enum shape)(k % SHAPES);
	*e = (enum edition)(ASCE7_10 + (int)(k / SHAPES));
	return *e <= ASCE7_22;
}

static void test_every_shape_is_rated(void **state)
{
	enum shape s;
	enum edition e;

	(void)state;
	for (size_t k = 0; next(k, &s, &e); k++) {
		const struct job job = shaped(s, e);
		const struct result *r = run(&job);

		if (r->passes == 0 || judged(r)->attachments == 0 || judged(r)->rafters == 0)
			fail_msg("%s, edition %d is not rated", shape_name[s], (int)e);
	}
}

static void test_more_wind(void **state)
{
	enum shape s;
	enum edition e;

	(void)state;
	for (size_t k = 0; next(k, &s, &e); k++) {
		struct job job = shaped(s, e);
		double last[64] = {0};

		for (int V = 95; V <= 185; V += 15) {
			job.site.wind_speed = MPH(V);
			const struct pass *p = judged(run(&job));

			assert_true(p->attachments > 0 && p->attachments <= 64);
			for (int i = 0; i < p->attachments; i++) {
				const struct attachment *a = &p->attachment[i];

				if (a->p_up < last[i])
					fail_msg("%s, edition %d, foot %d at %d mph", shape_name[s],
						 (int)e, i + 1, V);
				last[i] = a->p_up;
			}
		}
	}
}

/* Feet on every rafter, then on every other one: no foot of the second layout has a larger
   coefficient than the first has in the same zone. */
static void test_more_area(void **state)
{
	enum shape s;
	enum edition e;

	(void)state;
	for (size_t k = 0; next(k, &s, &e); k++) {
		struct job job = shaped(s, e);
		double most_up[ZONE_COUNT] = {0}, most_down[ZONE_COUNT] = {0};
		double least_area = INFINITY;

		for (int spacing = 16; spacing <= 48; spacing += 16) {
			job.mount.spacing = IN(spacing);
			const struct pass *p = judged(run(&job));

			for (int i = 0; i < p->attachments; i++) {
				const struct attachment *a = &p->attachment[i];

				least_area = fmin(least_area, a->area);
				if (spacing == 16) {
					most_up[a->zone] = fmax(most_up[a->zone], fabs(a->GCp_up));
					most_down[a->zone] = fmax(most_down[a->zone], a->GCp_down);
				} else if (most_up[a->zone] > 0) {
					assert_true(fabs(a->GCp_up) <=
						    most_up[a->zone] * (1 + 1e-12));
					assert_true(a->GCp_down <=
						    most_down[a->zone] * (1 + 1e-12));
				}
			}
		}
		assert_true(isfinite(least_area));
	}
}

/* Feet fixed at every rafter, since a search may choose either of two equal layouts. */
static void test_mirror(void **state)
{
	struct result *left = malloc(sizeof *left);
	enum shape s;
	enum edition e;

	(void)state;
	for (size_t k = 0; next(k, &s, &e); k++) {
		struct job job = shaped(s, e);

		job.framing.first = IN(7);
		*left = *run(&job);
		const double length = left->plane_length;

		job.collector.left = length - left->array.x1;
		job.framing.first = length - left->rafter_x[left->rafters - 1];
		const struct result *right = run(&job);
		const struct pass *a = &left->pass[left->judged], *b = judged(right);

		assert_int_equal(a->attachments, b->attachments);
		assert_int_equal(left->verdict, right->verdict);
		if (fabs(a->ratio - b->ratio) > 1e-9 * a->ratio)
			fail_msg("%s, edition %d: %.12g in place of %.12g", shape_name[s], (int)e,
				 b->ratio, a->ratio);
		for (int i = 0; i < a->lines; i++)
			for (int n = 0; n < a->line[i].count; n++) {
				const struct attachment *p = &a->attachment[a->line[i].first + n];
				const struct attachment *q =
					&b->attachment[b->line[i].first + b->line[i].count - 1 - n];

				assert_near(q->x, length - p->x, 1e-12);
				assert_near(q->p_up, p->p_up, 1e-9);
				assert_near(q->ratio, p->ratio, 1e-9);
				assert_int_equal(q->zone, p->zone);
			}
		for (int i = 0; i < a->rafters; i++)
			assert_near(b->rafter[b->rafters - 1 - i].ratio_after,
				    a->rafter[i].ratio_after, 1e-9);
	}
	free(left);
}

static void test_units(void **state)
{
	struct result *us = malloc(sizeof *us);
	enum shape s;
	enum edition e;

	(void)state;
	for (size_t k = 0; next(k, &s, &e); k++) {
		struct job job = shaped(s, e);

		*us = *run(&job);
		rewrite_in_si(&job);
		const struct result *si = run(&job);

		assert_int_equal(si->verdict, us->verdict);
		assert_int_equal(si->remarks, us->remarks);
		assert_int_equal(judged(si)->attachments, us->pass[us->judged].attachments);
		assert_near(judged(si)->ratio, us->pass[us->judged].ratio, 1e-7);
	}
	free(us);
}

static void pitch(struct job *job, double x)
{
	job->roof.pitch = x * RAD_PER_DEG;
}
static void rise(struct job *job, double x)
{
	job->roof.pitch = atan(x / 12);
}
static void height(struct job *job, double x)
{
	job->building.mean_roof_height = FT(x);
}
static void room(struct job *job, double x)
{
	job->collector.clearance = IN(x);
}
static void heat(struct job *job, double x)
{
	job->framing.temperature = (x + 459.67) * 5 / 9;
}
static void tilt(struct job *job, double x)
{
	job->collector.tilt = x * RAD_PER_DEG;
	job->origin[FIELD_COLLECTOR_TILT] = ORIGIN_FILE;
}
static void tail(struct job *job, double x)
{
	job->building.eave_overhang = IN(x);
	job->collector.lower = IN(1);
	job->rail.lower_inset = FT(3);
}
static void over(struct job *job, double x) /* the array's lower edge so far past the wall */
{
	job->collector.lower = (job->building.eave_overhang - IN(x)) / cos(job->roof.pitch);
}
static void gap(struct job *job, double x)
{
	job->collector.rows = 2;
	job->building.width = FT(60);
	job->framing.span = FT(15);
	job->collector.row_gap = IN(x);
}
static void pg(struct job *job, double x)
{
	strcpy(job->site.snow_place, "Juneau"); /* 60 psf */
	job->site.ground_snow = PSF(x);
}

/* What is said on either side of a limit, and which side the limit itself belongs to. */
static void test_limits(void **state)
{
	static const struct {
		const char *clause;
		void (*set)(struct job *job, double x);
		double limit, step;
		enum remark_id said;
		bool below, at, above;
	} row[] = {
		{"7-16 30.3: h 60 ft", height, 60, 0.01, REMARK_HEIGHT, false, false, true},
		{"Fig. 30.3-2D: 45 deg", pitch, 45, 0.01, REMARK_STEEP, false, false, true},
		{"IRC R802.4: 3:12", rise, 3, 0.01, REMARK_RIDGE, true, false, false},
		{"IBC 1607.14.4.1: 24 in", room, 24, 0.01, REMARK_LIVE_KEPT, false, false, true},
		{"IBC 1607.14.4.1: 24 in", room, 24, 0.01, REMARK_LIVE_LEFT_OUT, true, true, false},
		{"IBC 1607.14.4.1: 24 in between rows", gap, 24, 0.01, REMARK_WALK_GAP, false,
		 false, true},
		{"NDS 2.3.3: 150 F", heat, 150, 0.01, REMARK_HOT_WOOD, false, false, true},
		{"29.4.4: 2 deg", tilt, 2, 0.01, REMARK_TILTED, false, false, true},
		{"29.4.4: top 10 in", room, 6.5, 0.01, REMARK_FLUSH_LOST, false, false, true},
		{"IRC R802.7.1.1: 24 in", tail, 24, 0.01, REMARK_TAIL_LONG, false, false, true},
		{"30.9: overhang", over, 0, 0.01, REMARK_OVERHANG_ARRAY, false, false, true},
		{"IBC Table 1608.2", pg, 60, 0.01, REMARK_SNOW_PLACE_LESS, true, false, false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		for (int side = -1; side <= 1; side++) {
			struct job job = sample_job();
			const bool want = side < 0   ? row[i].below
					  : side > 0 ? row[i].above
						     : row[i].at;

			job.collector.length = FT(5);
			job.collector.width = FT(3);
			job.site.ground_snow = PSF(20);
			job.building.parapet = 0;
			row[i].set(&job, row[i].limit + side * row[i].step);
			if (has(run(&job), row[i].said) != want)
				fail_msg("%s, side %d", row[i].clause, side);
		}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_shape_is_rated),
		cmocka_unit_test(test_more_wind),
		cmocka_unit_test(test_more_area),
		cmocka_unit_test(test_mirror),
		cmocka_unit_test(test_units),
		cmocka_unit_test(test_limits),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
