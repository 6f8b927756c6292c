/* SPDX-License-Identifier: MIT */
/* What the search takes from one rafter to another (layout_rafter.c): of feet in the same places, more
   area, more lift before and after the weight, more wind down and no less of any of them never lower
   the ratio of a rafter in single spans. Tried on made-up jobs, loads and rafters; the file of the
   check is taken in whole, for its way into a context is its own. */
#include "check/check.c"

#include "check/rafter_load.h"
#include "near.h"
#include "resist/random.h"
#include "sample_job.h"

static struct result r;
static struct pass pass;
static struct context c;

static double between(uint64_t *seed, double low, double high)
{
	return random_between(seed, low, high);
}

static struct job random_job(uint64_t *seed)
{
	struct job job = sample_job();
	const double kind = between(seed, 0, 1);

	job.site.wind_speed = MPH(between(seed, 95, 160));
	job.site.ground_snow = kind < 0.4 ? 0 : PSF(between(seed, 5, 50));
	job.roof.pitch = between(seed, 15, 40) * RAD_PER_DEG;
	job.roof.dead_load = PSF(between(seed, 5, 22));
	job.framing.spacing = IN(between(seed, 16, 26));
	job.framing.depth = IN(between(seed, 0, 1) < 0.5 ? 5.5 : 7.25);
	job.framing.span = FT(between(seed, 8, 15));
	job.framing.brace_spacing = between(seed, 0, 1) < 0.5 ? (double)NAN : FT(between(seed, 2, 6));
	job.site.method = between(seed, 0, 1) < 0.3 ? METHOD_LRFD : METHOD_ASD;
	if (between(seed, 0, 1) < 0.3)
		job.framing.inner_support = FT(between(seed, 5, 8)); /* cut over it */
	return job;
}

static double area_of(const struct attachment *a)
{
	return fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
}

/* More of everything, by chance; sometimes of one thing alone. */
static void add(struct attachment *a, uint64_t *seed)
{
	const double before = area_of(a), lift = a->p_up, down = a->p_down;
	const double D2 = 2 * r.dead.array_dry;

	a->reaction_width = fmax(a->reaction_width, a->tributary_width);
	if (between(seed, 0, 1) < 0.6)
		a->reaction_width *= 1 + between(seed, 0, 1);
	const double area = area_of(a);

	/* no less of area p_up, area (p_up - 2 D), area p_down than before */
	a->p_up = fmax(lift * before / area, (before * (lift - D2)) / area + D2);
	a->p_down = down * before / area;
	if (between(seed, 0, 1) < 0.5)
		a->p_up += PSF(between(seed, 0, 20));
	if (between(seed, 0, 1) < 0.5)
		a->p_down += PSF(between(seed, 0, 20));
	assert_true(area >= before * (1 - 1e-12));
	assert_true(area * a->p_up >= before * lift - 1e-9);
	assert_true(area * (a->p_up - D2) >= before * (lift - D2) - 1e-9);
	assert_true(area * a->p_down >= before * down - 1e-9);
}

static void test_more_load(void **state)
{
	(void)state;
	static struct layout layout;
	static struct zone_spacing zone[ZONE_COUNT];
	uint64_t seed = 31;
	int tried = 0, above = 0;

	for (int n = 0; n < 60; n++) {
		const struct job job = random_job(&seed);

		prepare(&c, &job, &r);
		if (!set_up(&c) || rafter_in_one_piece(&c))
			continue;
		c.curve = CURVE_SAFE_SIDE;
		spacing_run(&c, zone);
		layout_plan(&c, zone, 2 + n % 3, &layout);
		pass_run(&c, &layout, &pass);
		for (int k = 0; k < 40 && pass.attachments > 0; k++) {
			const int at = (int)between(&seed, 0, pass.attachments - 1e-9);
			struct attachment *a = &pass.attachment[at];
			const struct attachment kept = *a;
			const double before = rafter_ratio(&c, &pass, a->rafter);

			add(a, &seed);
			const double now = rafter_ratio(&c, &pass, a->rafter);

			if (now < before * (1 - 1e-9))
				fail_msg("job %d, attachment %d: %.12g then %.12g", n, at + 1, before, now);
			tried++;
			above += now > before;
			if (k % 4)
				*a = kept;
		}
	}
	assert_true(tried > 1000 && above > tried / 4);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_more_load),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
