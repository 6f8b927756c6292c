/* SPDX-License-Identifier: MIT */
/* Feet that the rail levers up, by statics: a rail 5 m long on feet at 0 and 2 m. Under 1 N/m the
   foot at 0 gets 5 (2 - 2.5)/2 = -1.25 m, the other 6.25 m. Span by span: the span gives it 1, the
   end of 3 m takes 3 * 1.5/2 = 2.25; with half the snow gone from the span 0.5 - 2.25 = -1.75 m,
   the other foot at least 0.5 + 5.25/2. A worker at the far end: -3/2 and 5/2 of his weight. */
#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/levered.h"
#include "sample_run.h"

static void laid(struct context *c, struct job *job, struct result *r, struct attachment a[2])
{
	static const struct line line = {.x0 = 0, .x1 = 5};

	memset(c, 0, sizeof *c);
	memset(r, 0, sizeof *r);
	memset(a, 0, 2 * sizeof *a);
	*job = sample_job();
	job->live.worker = ANSWER_YES;
	c->job = job;
	c->r = r;
	c->cos_theta = 1;
	c->snow.cases = 1;
	c->snow.snow[0].array = 1000;
	r->dead.array_filled = 100;
	r->plane_slope = 10;
	a[1].x = 2;
	for (int i = 0; i < 2; i++)
		a[i].tributary_depth = 2;
	a[0].reaction_width = -1.25;
	a[1].reaction_width = 6.25;
	levered_prepare(c, &line, a, 2);
}

static void test_widths(void **state)
{
	static struct context c;
	static struct result r;
	struct job job;
	struct attachment a[2];

	(void)state;
	laid(&c, &job, &r, a);
	assert_near(a[0].lift_width, -1.75, 1e-12);
	assert_near(a[1].lift_width, 3.125, 1e-12);
	assert_near(a[0].worker_up, 1.5, 1e-12);
	assert_near(a[0].worker_down, 1.0, 1e-12);
	assert_near(a[1].worker_down, 2.5, 1e-12);
	assert_true(a[1].worker_up <= 0);
}

/* Level, 2 m deep, D 100 Pa, S 1000 Pa, wind 300 Pa down: D + S pulls 2 (1.25 * 100 + 1.75 * 1000),
   D + 0.75 S + 0.75 * 0.6 W as it says, D + Lr 2 * 125 and one and a half men of 300 lb. */
static void test_forces(void **state)
{
	static const struct load_combination DS = {.text = "D + S", .D = 1, .S = 1},
					     all = {.text = "all", .D = 1, .S = 0.75, .W = 0.45},
					     man = {.text = "D + Lr", .D = 1, .Lr = 1};
	static struct context c;
	static struct result r;
	struct job job;
	struct attachment a[2];
	struct force f = {0};

	(void)state;
	laid(&c, &job, &r, a);
	a[0].p_down = 300;
	assert_true(levered_force(&c, &a[0], &DS, 0, NULL, &f));
	assert_near(f.normal, -2 * (125 + 1750.0), 1e-9);
	assert_true(levered_force(&c, &a[0], &all, 0, NULL, &f));
	assert_near(f.normal, -2 * (125 + 0.75 * 1750 + 0.45 * 300 * 1.25), 1e-9);
	assert_true(levered_force(&c, &a[0], &man, -1, NULL, &f));
	assert_near(f.normal, -2 * 125 - 1.5 * LB(300), 1e-9);
	assert_false(levered_force(&c, &a[1], &DS, 0, NULL, &f));
	assert_false(levered_force(&c, &a[1], &man, -1, NULL, &f));
}

/* Without collectors' rails nothing levers; through the whole check the foot beside a long end has
   a pull under snow that its own strip does not give. */
static void test_whole(void **state)
{
	struct job job = sample_job();
	int pulled = 0;

	(void)state;
	job.site.wind_speed = MPH(85);
	job.site.ground_snow = PSF(60);
	job.framing.measured = 2; /* two rafters under one end of the rails */
	job.framing.at[0] = FT(14);
	job.framing.at[1] = FT(15);
	job.rail.max_cantilever = FT(8);
	job.mount.max_spacing = FT(8);
	const struct result *r = run(&job);
	const struct pass *p = judged(r);

	for (int i = 0; i < p->attachments; i++)
		if (p->attachment[i].reaction_width < 0) {
			assert_non_null(strchr(p->attachment[i].uplift.combination, 'S'));
			pulled++;
		}
	assert_true(pulled > 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_widths),
		cmocka_unit_test(test_forces),
		cmocka_unit_test(test_whole),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
