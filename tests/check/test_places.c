/* SPDX-License-Identifier: MIT */
/* From the place of a foot to the rafters that carry it: blocks, seams, tails, inner supports;
   nothing is lost on the way. */
#include <math.h>
#include <string.h>

#include "check/check.h"
#include "check/place.h"
#include "check/rafter_load.h"
#include "check/rafter_whole.h"
#include "sample_run.h"

/* What a foot brings goes to rafters whole, wherever it stands; midway to both alike. */
static void test_statics(void **state)
{
	(void)state;
	struct job job = sample_job();
	struct context c = {.job = &job};

	job.framing.sharing = 0.3;
	c.r = run(&job);
	place_with_blocks(&c);
	assert_true(c.r->blocks && c.r->rafters == 2 * c.r->frames - 1);
	for (int place = 0; place < c.r->rafters; place++) {
		double sum = 0;

		for (int k = 0; k < c.r->frames; k++)
			sum += rafter_share(&c, place, k);
		/* at the ends of the roof the one neighbour gets no more than its part: the rest
		 * stays */
		assert_near(sum, 1.0, 1e-12);
	}
	job.framing.sharing = (double)NAN;
	assert_true(place_on_block(c.r, 5) && !place_on_block(c.r, 4));
	assert_int_equal(place_number(c.r, 5), 3);
	assert_near(rafter_share(&c, 5, 2), 0.5, 1e-12);
	assert_near(rafter_share(&c, 5, 3), 0.5, 1e-12);
}

/* A pull of statics: three rafters 1 m apart with tails of 0.5 m and supports at 0, 2.5 and 4 m,
   feet on tail, both spans and blocks; under dead load alone the walls and the ridge give back what
   roof and array weigh across the slope. */
static void test_balance(void **state)
{
	(void)state;
	static struct context c;
	static struct result r;
	static struct pass pass;
	static const struct {
		int place;
		double y;
	} foot[] = {{0, 0.2}, {1, 1.3}, {3, 3.9}, {4, 2.2}, {1, 0.1}};
	struct job job = sample_job();
	const struct load_combination D = {.text = "D", .D = 1};
	const struct rafter_case k = {.k = &D, .snow_case = -1, .array = true};
	double weight = 0, carried = 0;

	job.building.form = FORM_MONOSLOPE;
	job.building.width = 4;
	job.building.eave_overhang = 0.5;
	job.framing.spacing = 1;
	job.framing.span = 2.5;
	job.framing.inner_support = 2.5;
	memset(&c, 0, sizeof c);
	memset(&r, 0, sizeof r);
	c.job = &job;
	c.r = &r;
	c.theta = 25 * RAD_PER_DEG;
	c.cos_theta = cos(c.theta);
	c.sin_theta = sin(c.theta);
	r.dead.array_filled = 200;
	r.frames = 3;
	for (int i = 0; i < 3; i++)
		r.frame_x[i] = 1 + i;
	r.plane_length = 4;
	r.plane_slope = 5 / c.cos_theta;
	r.array = (struct rectangle){0.5, 0, 3.5, 4.5};
	place_with_blocks(&c);
	assert_int_equal(r.rafters, 5);
	for (size_t i = 0; i < sizeof foot / sizeof *foot; i++) {
		struct attachment *a = &pass.attachment[pass.attachments++];

		a->rafter = foot[i].place;
		a->y = foot[i].y;
		a->reaction_width = 1.1 + 0.3 * (double)i;
		a->tributary_depth = 0.9;
		weight += 200 * a->reaction_width * 0.9 * c.cos_theta;
	}
	for (int i = 0; i < 3; i++) {
		struct rafter_whole whole;
		struct whole_beam b;
		struct beam_forces f;

		rafter_whole_lay(&c, &pass, i, &whole);
		assert_true(rafter_whole_load(&c, &pass, &whole, k, NULL, 0, &b) &&
			    beam_solve(&b.beam, &f));
		assert_int_equal(b.beam.supports, 3);
		for (size_t n = 0; n < b.beam.supports; n++)
			carried += f.reaction[n];
		weight +=
			job.roof.dead_load * 1 * 5; /* per slope, 5 m on plan: times cos over cos */
	}
	assert_near(carried, weight, 1e-12);
}

/* Clamps on seams between rafters: each of the two takes what the nearer distance gives it. */
static void test_seams(void **state)
{
	(void)state;
	struct job job = sample_job();
	struct context c = {.job = &job};

	strcpy(job.roof.covering, "metal-standing-seam-snap");
	job.fastener.kind = FASTENER_SEAM_CLAMP;
	job.fastener.diameter = job.fastener.length = (double)NAN;
	job.roof.seam_spacing = IN(16);
	job.roof.first_seam = IN(12); /* rafters at 8, 24 ...: 4 in on */
	job.mount.allowable_down = LB(900);
	job.mount.allowable_slope = LB(400);
	job.fastener.safety_factor = 3;
	job.fastener.clip_allowable = job.fastener.clip_screw_allowable = LB(700);
	c.r = run(&job);
	assert_near(rafter_share(&c, 3, 3), 0.75, 1e-12);
	assert_near(rafter_share(&c, 3, 4), 0.25, 1e-12);
	assert_true(judged(c.r)->rafters > 0);
	double sum = 0;

	for (int k = 0; k < c.r->frames; k++)
		sum += rafter_share(&c, 3, k);
	assert_near(sum, 1.0, 1e-12);
	job.framing.kind = FRAMING_TRUSS;
	assert_int_equal(run(&job)->verdict, NEEDS_ENGINEER);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_statics),
		cmocka_unit_test(test_balance),
		cmocka_unit_test(test_seams),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
