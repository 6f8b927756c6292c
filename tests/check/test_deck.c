/* SPDX-License-Identifier: MIT */
/* Mounts screwed to the deck alone: where they may stand, what the rafters below get, and the fewest
   of them against every layout there is. And the edition of the wood standard that a job names. */
#include <math.h>
#include <string.h>

#include "check/pass.h"
#include "check/place.h"
#include "near.h"
#include "sample_run.h"

static struct job deck_job(void)
{
	struct job job = sample_job();

	job.fastener.kind = FASTENER_DECK_MOUNT;
	job.fastener.deck = DECK_PLYWOOD;
	job.fastener.deck_thickness = job.roof.deck_thickness;
	job.fastener.safety_factor = 3;
	strcpy(job.fastener.report, "Report 3");
	job.mount.allowable_uplift = LB(400);
	job.mount.allowable_slope = LB(250);
	job.framing.depth = IN(7.25);
	return job;
}

/* Multiples of the pitch from the collectors' left edge, wherever the rafters are. */
static void places(void **state)
{
	struct job job = deck_job();

	(void)state;
	for (int i = 0; i < 2; i++) {
		job.framing.first = IN(8 + 5 * i);
		const struct result *r = run(&job);

		assert_true(has(r, REMARK_DECK_PLACES) && judged(r)->complete);
		assert_near(said(r, REMARK_DECK_PLACES, 0), IN(6), 1e-12);
		assert_int_equal(r->rafters, 17); /* 97 in: 0, 6 ... 96 */
		for (int k = 0; k < judged(r)->attachments; k++) {
			const double steps =
				(judged(r)->attachment[k].x - job.collector.left) / IN(6);

			assert_within(steps, round(steps), 1e-9);
		}
		assert_near(r->frame_x[0], job.framing.first, 1e-12);
	}
	job.mount.deck_pitch = IN(0.5); /* 195 places are too many: 1 in */
	assert_near(said(run(&job), REMARK_DECK_PLACES, 0), IN(1), 1e-12);
}

/* The deck hands each force to two rafters at most, all of it: by leverage, 6 in past a rafter of 16
   in spacing 10/16 and 6/16. */
static void shares(void **state)
{
	const struct job job = deck_job();
	const struct result *r = run(&job);

	(void)state;
	for (int p = 0; p < r->rafters; p++) {
		double sum = 0, moment = 0;

		for (int f = 0; f < r->frames; f++) {
			sum += place_share(r, p, f);
			moment += place_share(r, p, f) * r->frame_x[f];
		}
		assert_near(sum, 1.0, 1e-12);
		assert_near(moment, r->rafter_x[p], 1e-12);
	}
}

#define MOST 8
struct brute {
	int places, fewest;
	double ratio[2 * MOST + 1];
};

static void put(struct layout *l, int line, unsigned bits, int places)
{
	l->count[line] = 0;
	for (int i = 0; i < places; i++)
		if (bits & 1u << i)
			l->rafter[line][l->count[line]++] = i;
}

static struct brute brute_of(const struct job *job, const struct result *found)
{
	static struct layout layout;
	static struct result r;
	static struct pass pass;
	struct brute b = {.places = found->rafters};

	for (int n = 0; n <= 2 * MOST; n++)
		b.ratio[n] = HUGE_VAL;
	for (unsigned lower = 0; lower < 1u << b.places; lower++)
		for (unsigned upper = 0; upper < 1u << b.places; upper++) {
			put(&layout, 0, lower, b.places);
			put(&layout, 1, upper, b.places);
			const int n = layout.count[0] + layout.count[1];

			if (layout.count[0] < 2 || layout.count[1] < 2 ||
			    !check_layout(job, &r, CURVE_SAFE_SIDE, &layout, &pass))
				continue;
			b.ratio[n] = fmin(b.ratio[n], pass.ratio);
		}
	while (b.fewest < 2 * MOST && !isfinite(b.ratio[b.fewest]))
		b.fewest++;
	return b;
}

static void every_layout(void **state)
{
	static struct result r;
	static struct check_workspace w;
	int holding = 0;

	(void)state;
	for (int i = 0; i < 5; i++) {
		struct job job = deck_job();

		job.mount.deck_pitch = IN(i % 2 ? 23 : 30);
		job.framing.spacing = IN(i % 4 < 2 ? 16 : 24);
		job.framing.first = IN(3 + 2 * i);
		job.site.wind_speed = MPH(100 + 12 * i);
		job.mount.allowable_uplift = LB(300 + 90 * i);
		job.mount.max_spacing = i % 3 ? (double)NAN : IN(60);
		job.rail.allowable_moment = LB(260) * M_PER_FT;
		check_run(&job, &r, &w);
		assert_in_range(r.rafters, 2, MOST);
		const struct brute b = brute_of(&job, &r);
		const struct pass *p = judged(&r);

		if (r.passes == 2 && r.judged != 1)
			continue;
		if (b.fewest == 2 * MOST) {
			assert_false(p->holds);
			continue;
		}
		holding++;
		assert_true(p->holds && r.search.settled);
		assert_int_equal(p->attachments, b.fewest);
		assert_near(p->ratio, b.ratio[b.fewest], 1e-9);
	}
	assert_true(holding > 1);
}

/* The default is named; 2015 has the same numbers; what of 2024 was not read is told. */
static void edition(void **state)
{
	struct job job = dense();
	const double ratio = judged(run(&job))->ratio;

	(void)state;
	assert_true(has(run(&job), REMARK_NDS));
	assert_false(has(run(&job), REMARK_NDS_UNREAD));
	job.site.nds = NDS_2015;
	assert_near(judged(run(&job))->ratio, ratio, 0);
	assert_true(has(run(&job), REMARK_NDS));
	job.site.nds = NDS_2024;
	assert_near(judged(run(&job))->ratio, ratio, 0);
	assert_true(has(run(&job), REMARK_NDS_UNREAD));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(places),
		cmocka_unit_test(shares),
		cmocka_unit_test(every_layout),
		cmocka_unit_test(edition),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
