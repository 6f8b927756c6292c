/* SPDX-License-Identifier: MIT */
/* The fewest feet of a whole job, held against rating every layout there is by the whole check:
   pressures by place and area, continuous rails, screws, feet, and rafters under the feet of both
   lines together. */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "check/check.h"
#include "check/pass.h"
#include "near.h"
#include "resist/random.h"
#include "sample_job.h"

#define MOST 8 /* rafters under a line */

struct brute {
	const struct job *job;
	const struct result *found;
	enum wind_curve curve;
	int low, count; /* rafters under the lines */
	int fewest;
	double ratio[2 * MOST + 1];
	bool holds[2 * MOST + 1];
};

static bool allowed(const struct job *job, unsigned lower, unsigned upper)
{
	if (job->mount.stagger == ANSWER_YES)
		return (lower & upper) == 0;
	return !job_given(job, FIELD_MOUNT_STAGGER) || lower == upper;
}

static int fill(struct layout *l, int line, unsigned bits, int low, int count)
{
	l->count[line] = 0;
	for (int i = 0; i < count; i++)
		if (bits & 1u << i)
			l->rafter[line][l->count[line]++] = low + i;
	return l->count[line];
}

static void try_all(struct brute *b)
{
	static struct layout layout;
	static struct result r;
	static struct pass pass;

	layout.block = b->found->block.kind;
	for (unsigned lower = 0; lower < 1u << b->count; lower++)
		for (unsigned upper = 0; upper < 1u << b->count; upper++) {
			const int n = fill(&layout, 0, lower, b->low, b->count) +
				      fill(&layout, 1, upper, b->low, b->count);

			if (layout.count[0] < 2 || layout.count[1] < 2 ||
			    !allowed(b->job, lower, upper))
				continue;
			if (!check_layout(b->job, &r, b->curve, &layout, &pass))
				continue;
			b->holds[n] = true;
			b->ratio[n] = fmin(b->ratio[n], pass.ratio);
		}
}

static struct brute brute_of(const struct job *job, const struct result *found)
{
	struct brute b = {.job = job,
			  .found = found,
			  .curve = found->judged == 1 ? CURVE_SAFE_SIDE : CURVE_RECALLED};

	if (found->passes == 1)
		b.curve = CURVE_SAFE_SIDE;
	while (!at_least(found->rafter_x[b.low], found->array.x0))
		b.low++;
	while (b.low + b.count < found->rafters &&
	       at_most(found->rafter_x[b.low + b.count], found->array.x1))
		b.count++;
	for (int n = 0; n <= 2 * MOST; n++)
		b.ratio[n] = HUGE_VAL;
	assert_in_range(b.count, 2, MOST);
	try_all(&b);
	b.fewest = 0;
	while (b.fewest < 2 * MOST && !b.holds[b.fewest])
		b.fewest++;
	return b;
}

/* The layout found has as many feet as the best of all layouts, and its ratio; false where none holds. */
static bool as_brute(const struct job *job, const struct result *r)
{
	const struct pass *p = &r->pass[r->judged];
	const struct brute b = brute_of(job, r);

	if (b.fewest == 2 * MOST) {
		assert_false(p->holds);
		return false;
	}
	assert_true(p->holds);
	assert_int_equal(p->attachments, b.fewest);
	assert_near(p->ratio, b.ratio[b.fewest], 1e-9);
	return true;
}

static double between(uint64_t *seed, double low, double high)
{
	return random_between(seed, low, high);
}

static struct job random_job(uint64_t *seed)
{
	struct job job = sample_job();

	job.site.wind_speed = MPH(between(seed, 95, 150));
	job.site.ground_snow = between(seed, 0, 1) < 0.5 ? 0 : PSF(between(seed, 5, 40));
	job.framing.spacing = IN(between(seed, 19, 24));
	job.framing.first = IN(between(seed, 2, 18));
	job.framing.depth = IN(between(seed, 0, 1) < 0.5 ? 7.25 : 9.25);
	job.framing.span = FT(between(seed, 8, 11));
	job.mount.max_spacing = between(seed, 0, 1) < 0.5 ? (double)NAN : IN(between(seed, 40, 72));
	job.mount.allowable_uplift = LB(between(seed, 250, 800));
	job.collector.left = FT(between(seed, 4, 24));
	if (between(seed, 0, 1) < 0.6)
		job.rail.allowable_moment = LB(between(seed, 100, 400)) * M_PER_FT;
	if (between(seed, 0, 1) < 0.2)
		job.rail.stock_length = FT(between(seed, 3, 7));
	if (between(seed, 0, 1) < 0.2)
		job.mount.stagger = ANSWER_YES;
	else if (between(seed, 0, 1) < 0.2)
		job.origin[FIELD_MOUNT_STAGGER] = ORIGIN_FILE;
	if (between(seed, 0, 1) < 0.3)
		job.obstacle[job.obstacles++] =
			(struct job_obstacle){job.collector.left + FT(3),
					      job.collector.lower + FT(1), FT(1), FT(1), IN(6)};
	return job;
}

static void test_every_layout(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	uint64_t seed = 20;
	int holding = 0, fewer_known = 0;

	for (int i = 0; i < 24; i++) {
		const struct job job = random_job(&seed);

		check_run(&job, &r, &w);
		assert_int_not_equal(r.passes, 0);
		const struct pass *p = &r.pass[r.judged];
		const struct brute b = brute_of(&job, &r);

		if (b.fewest == 2 * MOST) { /* nothing holds with this curve */
			assert_false(p->holds);
			continue;
		}
		holding++;
		assert_true(p->holds);
		assert_true(r.search.settled && r.search.best);
		assert_int_equal(p->attachments, b.fewest);
		assert_near(p->ratio, b.ratio[b.fewest], 1e-9);
		assert_int_equal(r.search.bound, b.fewest);
		fewer_known += r.search.fewer;
	}
	assert_true(holding > 8 && fewer_known > 3);
}

/* Feet so large that their wind falls with what they carry: a longer bay eases the rail on the other
   side of its foot, up to what a bay nearer by would not let it bear. */
static void test_every_layout_eased(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	/* the first and the seventh of this row stand on fewer feet for it */
	uint64_t seed = UINT64_C(0x22FE246CF5F5E188);
	int holding = 0;

	for (int i = 0; i < 10; i++) {
		struct job job = random_job(&seed);

		job.site.code = ASCE7_22;
		job.site.ground_snow = 0;
		job.site.wind_speed = MPH(140);
		job.roof.pitch = between(&seed, 9, 19) * RAD_PER_DEG;
		job.framing.spacing = IN(between(&seed, 16.3, 19));
		job.framing.depth = IN(11.25);
		job.framing.span = FT(7);
		strcpy(job.framing.species, "Douglas Fir-Larch");
		strcpy(job.framing.grade, "Select Structural");
		job.collector.length = FT(10);
		job.collector.lower = FT(3);
		job.collector.left = FT(between(&seed, 12, 16));
		job.obstacles = 0;
		job.mount.max_spacing = NAN;
		job.mount.stagger = ANSWER_NO;
		job.origin[FIELD_MOUNT_STAGGER] = ORIGIN_DEFAULT;
		job.mount.allowable_uplift = LB(2000);
		job.fastener.count = 2;
		job.fastener.spacing = IN(2);
		job.rail.stock_length = NAN;
		job.rail.allowable_moment = LB(between(&seed, 300, 900)) * M_PER_FT;
		check_run(&job, &r, &w);
		assert_int_not_equal(r.passes, 0);
		holding += as_brute(&job, &r);
	}
	assert_true(holding > 3);
}

/* With a wanted number of holes the best layout of that number comes out, whether it holds or not.
 */
static void test_wanted_holes(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	struct job job = sample_job();
	int held = 0;

	for (int n = 6; n <= 12; n++) {
		job.mount.holes = n;
		check_run(&job, &r, &w);
		const struct pass *p = &r.pass[r.judged];

		assert_int_equal(p->attachments, n);
		assert_true(r.search.best);
		assert_int_equal(p->holds, p->ratio <= 1);
		held += p->holds;
	}
	assert_true(held > 0 && held < 7);
	job.mount.holes = 200;
	check_run(&job, &r, &w);
	assert_false(r.search.found);
	assert_int_not_equal(r.verdict, HOLDS);
}

/* A splice is kept out of the end spans, feet out of the way of obstacles and pipes. */
static void test_keep_clear(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	struct job job = sample_job();

	job.framing.depth = IN(9.25);
	job.obstacle[job.obstacles++] = (struct job_obstacle){FT(15), FT(6), FT(1), FT(1), IN(6)};
	job.pipe[job.pipes++] = (struct job_pipe){.diameter = IN(1),
						  .insulated_diameter = NAN,
						  .count = 1,
						  .temperature = NAN,
						  .at = FT(18),
						  .up = FT(11) + IN(8)};
	check_run(&job, &r, &w);
	const struct pass *p = &r.pass[r.judged];

	assert_true(p->holds);
	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		assert_false(a->x > FT(14.5) && a->x < FT(16.5) && a->y > FT(5.5) &&
			     a->y < FT(7.5));
		assert_true(hypot(a->x - FT(18), a->y - FT(11) - IN(8)) > IN(6.5));
	}
}

/* The same with places on blocks between rafters, of the kind that was chosen. */
static void test_every_layout_on_blocks(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	uint64_t seed = 21;
	int holding = 0;

	for (int i = 0; i < 16; i++) {
		struct job job = random_job(&seed);

		job.site.ground_snow = 0;
		job.framing.spacing = IN(between(&seed, 38, 48));
		job.framing.depth = IN(11.25);
		strcpy(job.framing.species, "Douglas Fir-Larch");
		strcpy(job.framing.grade, "Select Structural");
		job.framing.brace_spacing = FT(2);
		job.mount.max_spacing = IN(between(&seed, 24, 36));
		job.mount.between = BETWEEN_BLOCKING;
		strcpy(job.mount.block_size, "4x6");
		strcpy(job.mount.block_species, "Douglas Fir-Larch");
		strcpy(job.mount.block_grade, "No.2");
		check_run(&job, &r, &w);
		const struct pass *p = &r.pass[r.judged];

		if (r.block.kind == 0 || !p->holds)
			continue;
		const struct brute b = brute_of(&job, &r);

		holding++;
		assert_true(r.search.settled);
		assert_int_equal(p->attachments, b.fewest);
		assert_near(p->ratio, b.ratio[b.fewest], 1e-9);
	}
	assert_true(holding > 3);
}

/* Rafters in one piece over an inner support: a foot in one span relieves the other. */
static void test_every_layout_one_piece(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	uint64_t seed = 22;
	int holding = 0;

	for (int i = 0; i < 16; i++) {
		struct job job = random_job(&seed);

		job.framing.depth = IN(between(&seed, 0, 1) < 0.5 ? 5.5 : 7.25);
		job.framing.inner_support = FT(between(&seed, 6, 9));
		job.framing.continuous = ANSWER_YES;
		check_run(&job, &r, &w);
		holding += as_brute(&job, &r);
	}
	assert_true(holding > 3);
}

/* Earthquake on rafters, screws and rails, strong enough to govern some of them; on single spans and
   on rafters in one piece, in ASD and LRFD. */
static void test_every_layout_quake(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	uint64_t seed = 23;
	int holding = 0, shaken = 0;

	for (int i = 0; i < 24; i++) {
		struct job job = random_job(&seed);

		job.site.wind_speed = MPH(90);
		job.earthquake.SDS = between(&seed, 1, 8);
		job.roof.dead_load = PSF(20); /* tiles: more to shake */
		job.framing.depth = IN(between(&seed, 0, 1) < 0.5 ? 9.25 : 11.25);
		job.mount.allowable_uplift = LB(800);
		job.roof.pitch = between(&seed, 10, 40) * RAD_PER_DEG;
		if (i % 3 == 1) {
			job.framing.inner_support = FT(between(&seed, 6, 9));
			job.framing.continuous = ANSWER_YES;
		}
		if (i % 2 == 1)
			job.site.method = METHOD_LRFD;
		check_run(&job, &r, &w);
		assert_true(r.quake.known && r.passes > 0);
		const struct pass *p = &r.pass[r.judged];

		if (!as_brute(&job, &r))
			continue;
		holding++;
		for (int k = 0; k < p->rafters; k++)
			for (int id = CHECK_RAFTER_BENDING; id <= CHECK_RAFTER_SHEAR; id++) {
				const struct check_value *v = &p->rafter[k].after[id];

				shaken += v->rated && strchr(v->combination, 'E') != NULL;
			}
	}
	print_message("%d hold, %d checks of rafters by the earthquake\n", holding, shaken);
	assert_true(holding > 8 && shaken > 8);
}

/* Rails joined where the user says so. */
static void test_every_layout_joined(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	uint64_t seed = 23;
	int holding = 0, not = 0;

	for (int i = 0; i < 16; i++) {
		struct job job = random_job(&seed);

		job.rail.stock_length = NAN;
		job.rail.splice_moment = job.rail.allowable_moment / 2;
		job.rail.splice_reach = between(&seed, 0, 1) < 0.5 ? (double)NAN : 0.25;
		job.rail_joint[job.rail_joints++] =
			(struct job_rail_joint){1 + (i % 3) % 2, FT(between(&seed, 3, 5))};
		check_run(&job, &r, &w);
		const struct pass *p = &r.pass[r.judged];
		const struct brute b = brute_of(&job, &r);

		if (b.fewest == 2 * MOST) {
			assert_int_not_equal(r.verdict, HOLDS);
			not++;
			continue;
		}
		holding++;
		assert_true(p->holds);
		assert_int_equal(p->attachments, b.fewest);
		assert_near(p->ratio, b.ratio[b.fewest], 1e-9);
	}
	assert_true(holding > 3 && not > 3);
}

static bool says(const struct result *r, enum remark_id id)
{
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == id)
			return true;
	return false;
}

/* What keeps fewer from standing is named; without it fewer stand. */
static void test_bars(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	struct job job = sample_job();

	job.framing.depth = IN(11.25);
	job.rail.allowable_moment = LB(900) * M_PER_FT; /* cantilevers are rated, not limited */
	job.mount.max_spacing = 1.1 * job.framing.spacing; /* no rafter between two feet */
	job.rail.max_cantilever = 0.9 * job.framing.spacing;   /* nor outside the outer ones */
	check_run(&job, &r, &w);
	assert_true(r.search.found);
	assert_int_equal(r.search.bar, BAR_SPACING);
	assert_true(says(&r, REMARK_FEWER_BARRED));
	const int feet = r.search.feet;

	job.mount.max_spacing = NAN;
	check_run(&job, &r, &w);
	assert_true(r.search.found && r.search.feet < feet);
	assert_int_equal(r.search.bar, BAR_NONE);

	job.rail.max_cantilever = IN(0.5);
	job.framing.first = IN(7);
	check_run(&job, &r, &w);
	if (!r.search.found) {
		assert_int_equal(r.search.bar, BAR_CANTILEVER);
		assert_true(says(&r, REMARK_NONE_STANDS));
	}
	job.mount.holes = 6;
	check_run(&job, &r, &w);
	assert_false(r.search.found);
	assert_true(says(&r, REMARK_HOLES_NEVER));
	assert_int_equal(r.verdict, DOES_NOT_HOLD);
}

/* Three rafters under two lines that must not share one: what holds is shown, and the rule it leaves. */
static void test_rule_left(void **state)
{
	(void)state;
	static struct result r;
	static struct check_workspace w;
	struct job job = sample_job();

	job.framing.spacing = IN(24);
	job.framing.first = IN(12);
	job.framing.depth = IN(11.25);
	job.framing.span = FT(7);
	strcpy(job.framing.species, "Douglas Fir-Larch");
	strcpy(job.framing.grade, "Select Structural");
	job.site.wind_speed = MPH(90);
	job.rail.max_cantilever = IN(24);
	job.collector.columns = 1;
	job.collector.left = FT(9);
	job.mount.stagger = ANSWER_YES;
	check_run(&job, &r, &w);
	assert_true(r.pass[r.judged].holds);
	assert_true(r.search.bar == BAR_ASIDE);
	assert_int_equal(r.search.bound, 0);
	assert_true(says(&r, REMARK_RULE_LEFT));
	assert_false(says(&r, REMARK_FEWEST_OPEN));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_layout_eased),
		cmocka_unit_test(test_rule_left),
		cmocka_unit_test(test_every_layout), cmocka_unit_test(test_every_layout_on_blocks), cmocka_unit_test(test_every_layout_one_piece),
		cmocka_unit_test(test_every_layout_quake),
		cmocka_unit_test(test_every_layout_joined),
		cmocka_unit_test(test_bars),
		cmocka_unit_test(test_wanted_holes),
		cmocka_unit_test(test_keep_clear),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
