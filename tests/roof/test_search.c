/* SPDX-License-Identifier: MIT */
/* Feet of several lines at once: held against trying every subset of rafters on every line. Rails
   are continuous beams, solved by src/resist; pressures differ along the eave; rafters add up what
   stands on them. */
#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "near.h"
#include "resist/beam.h"
#include "resist/random.h"
#include "roof/search.h"

#define PLACES 8
#define LINES 3

struct roof {
	double x[PLACES];
	int rafters, lines;
	struct search_line line[LINES];
	double foot[PLACES];     /* ratio of a foot per metre, by where it stands */
	double moment;           /* ratio of the rail per m2; 0: not rated */
	double strength[PLACES]; /* of the rafters: metres of rail */
	double base[PLACES];     /* what the rafter bears already */
};

static struct search_cost cost(void *context, int line, int a, int b, int c)
{
	const struct roof *r = context;
	const struct search_line *l = &r->line[line];
	const double left = a < 0 ? l->x0 : (r->x[a] + r->x[b]) / 2,
		     right = c < 0 ? l->x1 : (r->x[b] + r->x[c]) / 2;

	/* larger areas have somewhat smaller coefficients */
	return (struct search_cost){r->foot[b] / (1 + 0.05 * (right - left)), r->moment,
				    r->base[b] + (right - left) / r->strength[b]};
}

static double whole(void *context, int line, const unsigned char *rafter, int count, double *width)
{
	const struct roof *r = context;
	const struct search_line *l = &r->line[line];
	double support[PLACES], ratio = 0;
	struct beam_uniform load = {l->x0, l->x1, 1};
	struct beam_forces f;

	for (int i = 0; i < count; i++)
		support[i] = r->x[rafter[i]];
	const struct beam beam = {.start = l->x0,
				  .end = l->x1,
				  .supports = (size_t)count,
				  .support = support,
				  .uniforms = 1,
				  .uniform = &load};

	assert_true(beam_solve(&beam, &f));
	for (int i = 0; i < count; i++) {
		const int a = i > 0 ? rafter[i - 1] : -1, c = i + 1 < count ? rafter[i + 1] : -1;
		const double left = a < 0 ? l->x0 : (r->x[a] + support[i]) / 2;
		const double right = c < 0 ? l->x1 : (support[i] + r->x[c]) / 2;

		width[i] = fmax(f.reaction[i], right - left);
		ratio = fmax(ratio, cost(context, line, a, rafter[i], c).width * width[i]);
		if (c >= 0 && r->x[c] - support[i] > l->bay)
			return HUGE_VAL;
	}
	if (support[0] - l->x0 > l->cantilever || l->x1 - support[count - 1] > l->cantilever)
		return HUGE_VAL;
	if (isfinite(l->cantilever))
		ratio = fmax(ratio,
			     fmax(support[0] - l->x0, l->x1 - support[count - 1]) / l->cantilever);
	return fmax(ratio, r->moment * fabs(beam_worst_moment(&f).value));
}

static double rafter(void *context, int rafter, const struct search_layout *layout, int lines,
		     const double *width)
{
	const struct roof *r = context;
	double carried = 0;

	for (int l = 0, i = 0; l < lines; l++)
		for (int k = 0; k < layout->count[l]; k++, i++)
			if (layout->rafter[i] == rafter)
				carried += width[i];
	return r->base[rafter] + carried / r->strength[rafter];
}

static double meet(void *context, int rafter, const struct search_foot *foot, int feet)
{
	const struct roof *r = context;
	double carried = 0;

	for (int i = 0; i < feet; i++) {
		const struct search_line *l = &r->line[foot[i].line];
		const int a = foot[i].a, c = foot[i].c;

		carried += (c < 0 ? l->x1 : (r->x[rafter] + r->x[c]) / 2) -
			   (a < 0 ? l->x0 : (r->x[a] + r->x[rafter]) / 2);
	}
	return r->base[rafter] + carried / r->strength[rafter];
}

static double uneven_of(const struct roof *r, const struct search_layout *layout)
{
	double sum = 0;

	for (int l = 0, at = 0; l < r->lines; at += layout->count[l], l++)
		for (int k = 0; k < layout->count[l]; k++) {
			const struct search_line *s = &r->line[l];
			const unsigned char *p = &layout->rafter[at + k];
			const double left = k > 0 ? (r->x[p[-1]] + r->x[p[0]]) / 2 : s->x0;
			const double right =
				k + 1 < layout->count[l] ? (r->x[p[0]] + r->x[p[1]]) / 2 : s->x1;

			sum += (right - left) * (right - left);
		}
	return sum;
}

static bool stands(const struct roof *r, int line, const struct search_layout *layout)
{
	const struct search_line *l = &r->line[line];
	int at[LINES + 1] = {0};

	if (layout->count[line] < l->least)
		return false;

	for (int i = 0; i < line; i++)
		at[i + 1] = at[i] + layout->count[i];
	const unsigned char *mine = &layout->rafter[at[line]];

	if (l->copies >= 0)
		return layout->count[l->copies] == layout->count[line] &&
		       memcmp(mine, &layout->rafter[at[l->copies]], layout->count[line]) == 0;
	for (int i = 0; i < layout->count[line]; i++)
		for (int k = 0; l->apart >= 0 && k < layout->count[l->apart]; k++)
			if (layout->rafter[at[l->apart] + k] == mine[i])
				return false;
	return true;
}

static double accept_ratio(void *context, const struct search_layout *layout)
{
	const struct roof *r = context;
	double width[LINES * PLACES], ratio = 0;

	for (int l = 0, at = 0; l < r->lines; at += layout->count[l], l++)
		ratio = fmax(ratio,
			     whole(context, l, &layout->rafter[at], layout->count[l], &width[at]));
	for (int i = 0; i < layout->feet; i++)
		ratio = fmax(ratio, rafter(context, layout->rafter[i], layout, r->lines, width));
	return ratio;
}

/* Every subset of every line's places; what was best for each number of feet. */
struct brute {
	const struct roof *r;
	double (*accept)(void *context, const struct search_layout *layout);
	double ratio[LINES * PLACES + 1], uneven[LINES * PLACES + 1];
};

static void try_all(struct brute *b, struct search_layout layout, int line)
{
	const struct search_line *l = &b->r->line[line];

	if (line == b->r->lines) {
		const double ratio = b->accept((void *)(uintptr_t)b->r, &layout),
			     uneven = uneven_of(b->r, &layout);

		if (ratio < b->ratio[layout.feet] * (1 - 1e-9) ||
		    (ratio <= b->ratio[layout.feet] * (1 + 1e-9) &&
		     uneven < b->uneven[layout.feet])) {
			b->ratio[layout.feet] = ratio;
			b->uneven[layout.feet] = uneven;
		}
		return;
	}
	for (unsigned bits = 0; bits < 1u << l->places; bits++) {
		struct search_layout next = layout;

		next.count[line] = 0;
		for (int i = 0; i < l->places; i++)
			if (bits & 1u << i) {
				next.rafter[next.feet++] = l->place[i];
				next.count[line]++;
			}
		if (next.count[line] >= 2 && stands(b->r, line, &next))
			try_all(b, next, line + 1);
	}
}

static int whole_between(uint64_t *seed, int low, int high)
{
	return low + (int)floor(random_between(seed, 0, high - low + 1 - 1e-9));
}

static struct roof random_roof(uint64_t *seed)
{
	struct roof r = {.rafters = whole_between(seed, 4, PLACES),
			 .lines = whole_between(seed, 1, LINES)};
	double x = 0;

	if (r.lines == 3)
		r.rafters = whole_between(seed, 3, 5);
	for (int i = 0; i < r.rafters; i++) {
		x += random_between(seed, 0.3, 0.7);
		r.x[i] = x;
		r.foot[i] =
			random_between(seed, 0.3, 0.9) * (random_between(seed, 0, 1) < 0.2 ? 2 : 1);
		r.strength[i] = random_between(seed, 1.5, 5);
		r.base[i] = random_between(seed, 0, 0.6);
	}
	r.moment = random_between(seed, 0, 1) < 0.5 ? 0 : random_between(seed, 2, 10);
	for (int l = 0; l < r.lines; l++) {
		struct search_line *s = &r.line[l];

		*s = (struct search_line){.x0 = r.x[0] - random_between(seed, 0, 0.3),
					  .x1 = x + random_between(seed, 0, 0.3),
					  .cantilever = random_between(seed, 0, 1) < 0.3
								? HUGE_VAL
								: random_between(seed, 0.3, 1.2),
					  .bay = random_between(seed, 0, 1) < 0.5
							 ? HUGE_VAL
							 : random_between(seed, 0.7, 2),
					  .copies = -1,
					  .apart = -1};
		for (int i = 0; i < r.rafters; i++)
			if (random_between(seed, 0, 1) < 0.9)
				s->place[s->places++] = (unsigned char)i;
		if (random_between(seed, 0, 1) < 0.3)
			s->least = whole_between(seed, 3, 4);
		if (l > 0 && random_between(seed, 0, 1) < 0.2) {
			*s = r.line[0];
			s->copies = 0;
		} else if (l > 0 && random_between(seed, 0, 1) < 0.2) {
			s->apart = 0;
		}
	}
	return r;
}

static void compare(const struct roof *r, const struct brute *b, int feet, double limit,
		    struct search_state *s)
{
	const struct search_problem p = {.x = r->x,
					 .lines = r->lines,
					 .line = r->line,
					 .floor = 0,
					 .grows = true,
					 .rafters_add = true,
					 .even = true,
					 .context = (void *)(uintptr_t)r,
					 .cost = cost,
					 .whole = whole,
					 .rafter = rafter,
					 .meet = meet,
					 .accept = accept_ratio};
	long work = 100000000;

	search_best(&p, feet, limit, &work, s);
	assert_true(s->best.complete);
	assert_int_equal(s->best.found, b->ratio[feet] <= limit);
	if (!s->best.found)
		return;
	assert_near(s->best.ratio, b->ratio[feet], 1e-9);
	assert_near(s->best.uneven, b->uneven[feet], 1e-9);
	assert_near(uneven_of(r, &s->best.layout), b->uneven[feet], 1e-9);
	assert_near(accept_ratio((void *)(uintptr_t)r, &s->best.layout), b->ratio[feet], 1e-9);
	assert_int_equal(s->best.layout.feet, feet);
	assert_true(search_least(&p, limit, s) <= feet);
}

static void test_every_subset(void **state)
{
	(void)state;
	static struct search_state s;
	uint64_t seed = UINT64_C(0x9E3779B97F4A7C15);
	int held = 0;

	for (int i = 0; i < 150; i++) {
		const struct roof r = random_roof(&seed);
		struct brute b = {.r = &r, .accept = accept_ratio};

		for (int n = 0; n <= LINES * PLACES; n++)
			b.ratio[n] = b.uneven[n] = HUGE_VAL;
		try_all(&b, (struct search_layout){0}, 0);
		for (int n = 2; n <= r.lines * r.rafters; n++) {
			compare(&r, &b, n, 1, &s);
			compare(&r, &b, n, 1e3, &s);
			held += b.ratio[n] <= 1;
		}
	}
	assert_true(held > 100); /* the roofs are not all hopeless */
}

/* Each foot takes its plain share and no more: then what single feet and those that meet tell is the
   whole truth, and the number of feet must come out exactly, with and without the help of longer
   bays never being better. */
static double plain_whole(void *context, int line, const unsigned char *rafter, int count,
			  double *width)
{
	const struct roof *r = context;
	const struct search_line *l = &r->line[line];
	double ratio = 0;

	for (int i = 0; i < count; i++) {
		const int a = i > 0 ? rafter[i - 1] : -1, c = i + 1 < count ? rafter[i + 1] : -1;
		const double left = a < 0 ? r->x[rafter[i]] - l->x0 : r->x[rafter[i]] - r->x[a];
		const double right = c < 0 ? l->x1 - r->x[rafter[i]] : r->x[c] - r->x[rafter[i]];

		if ((a >= 0 && left > l->bay) || (c >= 0 && right > l->bay) ||
		    fmax(a < 0 ? left : 0, c < 0 ? right : 0) > l->cantilever)
			return HUGE_VAL;
		width[i] = left / (a < 0 ? 1 : 2) + right / (c < 0 ? 1 : 2);
		ratio = fmax(ratio, r->foot[rafter[i]] / (1 + 0.05 * width[i]) * width[i]);
	}
	return ratio;
}

static double plain_accept(void *context, const struct search_layout *layout)
{
	const struct roof *r = context;
	double width[LINES * PLACES], ratio = 0;

	for (int l = 0, at = 0; l < r->lines; at += layout->count[l], l++)
		ratio = fmax(ratio, plain_whole(context, l, &layout->rafter[at], layout->count[l],
						&width[at]));
	for (int i = 0; i < layout->feet; i++)
		ratio = fmax(ratio, rafter(context, layout->rafter[i], layout, r->lines, width));
	return ratio;
}

static void test_fewest(void **state)
{
	(void)state;
	static struct search_state s;
	uint64_t seed = 99;
	int none = 0, coupled = 0;

	for (int i = 0; i < 150; i++) {
		struct roof r = random_roof(&seed);
		struct brute b = {.r = &r, .accept = plain_accept};
		int fewest = 0;

		r.moment = 0;
		for (int k = 0; k < r.rafters; k++)
			r.strength[k] *= 0.6;
		for (int n = 0; n <= LINES * PLACES; n++)
			b.ratio[n] = b.uneven[n] = HUGE_VAL;
		try_all(&b, (struct search_layout){0}, 0);
		while (fewest <= LINES * PLACES && !(b.ratio[fewest] <= 1))
			fewest++;
		for (int grows = 0; grows < 2; grows++) {
			const struct search_problem p = {.x = r.x,
							 .lines = r.lines,
							 .line = r.line,
							 .grows = grows,
							 .rafters_add = true,
					 .even = true,
							 .context = &r,
							 .cost = cost,
							 .whole = plain_whole,
							 .rafter = rafter,
							 .meet = meet,
							 .accept = plain_accept};
			long work = 100000000;
			const int n = search_fewest(&p, 1, &work, &s);

			assert_true(work > 0);
			if (fewest > LINES * PLACES) {
				assert_true(n > SEARCH_FEET_MAX);
				none++;
				continue;
			}
			assert_int_equal(n, fewest);
			assert_int_equal(s.layout.feet, fewest);
			assert_true(plain_accept(&r, &s.layout) <= 1 + 1e-9);
			coupled += n > search_least(&p, 1, &s);
		}
	}
	assert_true(none > 10 && none < 250 && coupled > 10);
}

/* Two lines that one rafter cannot bear together: the search staggers them of its own accord. */
static void test_staggers(void **state)
{
	(void)state;
	static struct search_state s;
	struct roof r = {.rafters = 8, .lines = 2};
	long work = 1000000;

	for (int i = 0; i < 8; i++) {
		r.x[i] = 0.4 * i + 0.2;
		r.foot[i] = 0.5;
		r.strength[i] = 2;
	}
	for (int l = 0; l < 2; l++) {
		r.line[l] = (struct search_line){.x0 = 0,
						 .x1 = 3.2,
						 .cantilever = 0.7,
						 .bay = HUGE_VAL,
						 .places = 8,
						 .copies = -1,
						 .apart = -1};
		for (int i = 0; i < 8; i++)
			r.line[l].place[i] = (unsigned char)i;
	}
	const struct search_problem p = {.x = r.x,
					 .lines = 2,
					 .line = r.line,
					 .grows = true,
					 .rafters_add = true,
					 .even = true,
					 .context = &r,
					 .cost = cost,
					 .whole = whole,
					 .rafter = rafter,
					 .meet = meet,
					 .accept = accept_ratio};

	search_best(&p, 4, 1, &work, &s);
	assert_true(s.best.found);
	for (int i = 0; i < 2; i++)
		for (int k = 2; k < 4; k++)
			assert_int_not_equal(s.best.layout.rafter[i], s.best.layout.rafter[k]);
	/* held together on the same rafters they do not fit */
	r.line[1].copies = 0;
	search_best(&p, 4, 1, &work, &s);
	assert_false(s.best.found);
	assert_true(s.best.complete);
}

/* An effort that runs out is told, not taken for a proof. */
static void test_effort(void **state)
{
	(void)state;
	static struct search_state s;
	uint64_t seed = 7;
	const struct roof r = random_roof(&seed);
	const struct search_problem p = {.x = r.x,
					 .lines = r.lines,
					 .line = r.line,
					 .grows = true,
					 .rafters_add = true,
					 .even = true,
					 .context = (void *)(uintptr_t)&r,
					 .cost = cost,
					 .whole = whole,
					 .rafter = rafter,
					 .meet = meet,
					 .accept = accept_ratio};
	long work = 1;

	search_best(&p, r.lines * 3, 1e3, &work, &s);
	assert_false(s.best.complete);
	assert_int_equal(work, 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_every_subset),
		cmocka_unit_test(test_fewest),
		cmocka_unit_test(test_staggers),
		cmocka_unit_test(test_effort),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
