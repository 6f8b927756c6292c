/* SPDX-License-Identifier: MIT */
/* Beams on a grid of fixed places against beam.c and rafter.c, which take the same loads one by
   one: random loads, with and without overhangs, with feet on supports and near them. */
#include "resist/beam_grid.h"
#include "resist/rafter_grid.h"

#include <math.h>
#include <string.h>

#include "near.h"
#include "random.h"

#define LOADS 6
#define EXACT 1e-10 /* of sums in another order, against the largest number of the case */

struct loads {
	struct beam_uniform uniform[LOADS];
	struct beam_point point[LOADS];
};

static void within(double got, double want, double scale)
{
	assert_true(fabs(got - want) <= EXACT * (fabs(want) + scale));
}

static void random_loads(struct loads *l, double start, double end, uint64_t *seed)
{
	for (int i = 0; i < LOADS; i++) {
		const double a = random_between(seed, start, end), b = random_between(seed, a, end);

		l->uniform[i] = (struct beam_uniform){a, b, random_between(seed, -600, 900)};
		l->point[i] = (struct beam_point){random_between(seed, start, end),
						  random_between(seed, -900, 900)};
	}
}

static void cut(struct beam_grid *g, const struct loads *l)
{
	for (int i = 0; i < LOADS; i++)
		assert_true(beam_grid_cut(g, l->uniform[i].x0) &&
			    beam_grid_cut(g, l->uniform[i].x1) && beam_grid_cut(g, l->point[i].x));
}

/* The same loads as a number per piece and a force per cut. */
static void spread(const struct beam_grid *g, const struct loads *l, double *w, double *P, size_t *at)
{
	memset(w, 0, g->cuts * sizeof *w);
	memset(P, 0, g->cuts * sizeof *P);
	for (int k = 0; k < LOADS; k++) {
		for (size_t i = 0; i + 1 < g->cuts; i++)
			if (g->x[i] >= l->uniform[k].x0 && g->x[i + 1] <= l->uniform[k].x1)
				w[i] += l->uniform[k].w;
		at[k] = beam_grid_find(g, l->point[k].x);
		assert_true(at[k] < g->cuts);
		P[at[k]] += l->point[k].P;
	}
}

static void same_bow(const struct beam_bow *got, const struct beam_bow *want)
{
	within(got->span.value, want->span.value, 1e-4);
	within(got->overhang.value, want->overhang.value, 1e-4);
	within(got->overhang_length, want->overhang_length, 0);
}

static void one_beam(uint64_t *seed, double tail)
{
	static struct beam_grid g;
	static struct beam_pieces pieces;
	double w[BEAM_CUT_MAX], P[BEAM_CUT_MAX];
	size_t at[LOADS];
	struct loads l;
	struct beam_forces want, got;
	struct beam_bow bow, bow_in;

	memset(&g, 0, sizeof g);
	g.supports = (size_t)random_between(seed, 2, 6.99);
	for (size_t i = 1; i < g.supports; i++)
		g.support[i] = g.support[i - 1] + random_between(seed, 0.6, 4);
	g.x[0] = -tail;
	g.x[1] = g.support[g.supports - 1] + tail;
	g.cuts = 2;
	random_loads(&l, g.x[0], g.x[1], seed);
	l.point[0].x = g.support[0]; /* right over a support */
	l.point[1].x = g.support[g.supports - 1];
	for (size_t i = 0; i < g.supports; i++)
		assert_true(beam_grid_cut(&g, g.support[i]));
	cut(&g, &l);
	beam_grid_ready(&g);
	spread(&g, &l, w, P, at);
	const struct beam b = {.start = g.x[0], .end = g.x[g.cuts - 1], .supports = g.supports,
			       .support = g.support, .uniforms = LOADS, .points = LOADS,
			       .uniform = l.uniform, .point = l.point};

	assert_true(beam_solve(&b, &want));
	beam_grid_solve(&g, w, P, &got, &pieces);
	for (size_t i = 0; i < g.supports; i++) {
		within(got.reaction[i], want.reaction[i], 1e3);
		within(got.moment[i], want.moment[i], 1e3);
	}
	within(got.load, want.load, 1e3);
	within(got.sagging.value, want.sagging.value, 1e3);
	within(got.hogging.value, want.hogging.value, 1e3);
	within(fabs(got.shear.value), fabs(want.shear.value), 1e3);
	beam_deflect(&b, &want, 8e4, &bow);
	beam_deflect_in(&b, &pieces, 8e4, &bow_in);
	same_bow(&bow_in, &bow);
}

static void beams(void **state)
{
	uint64_t seed = 5;

	(void)state;
	for (int i = 0; i < 2000; i++)
		one_beam(&seed, i % 2 ? random_between(&seed, 0.2, 1.5) : 0);
}

/* Level, so that the loads of both are the same numbers. */
static void rafters(void **state)
{
	static struct rafter_grid g;
	static struct beam_pieces pieces;
	uint64_t seed = 6;

	(void)state;
	for (int n = 0; n < 2000; n++) {
		double w[BEAM_CUT_MAX], P[BEAM_CUT_MAX];
		size_t at[LOADS];
		struct loads l;
		struct rafter_uniform u[LOADS];
		struct rafter_point p[LOADS];
		struct rafter_forces want, got;
		const struct rafter r = {.span = random_between(&seed, 1, 6), .depth = 0.14,
					 .uniforms = LOADS, .points = LOADS, .uniform = u, .point = p};

		memset(&g, 0, sizeof g);
		g.beam = (struct beam_grid){.supports = 2, .cuts = 2};
		g.beam.support[1] = g.beam.x[1] = r.span;
		random_loads(&l, 0, r.span, &seed);
		l.point[0].x = 0.07; /* nearer to the support than the rafter is deep */
		for (int i = 0; i < LOADS; i++) {
			u[i] = (struct rafter_uniform){l.uniform[i].x0, l.uniform[i].x1, 0, l.uniform[i].w};
			p[i] = (struct rafter_point){l.point[i].x, 0, l.point[i].P};
		}
		cut(&g.beam, &l);
		rafter_grid_ready(&g, 0, r.depth);
		spread(&g.beam, &l, w, P, at);
		assert_true(rafter_solve(&r, &want));
		rafter_grid_solve(&g, w, P, at, LOADS, &got, &pieces);
		within(got.slope_length, want.slope_length, 0);
		within(got.sagging.value, want.sagging.value, 1e3);
		within(got.hogging.value, want.hogging.value, 1e3);
		within(got.moment.value, want.moment.value, 1e3);
		within(got.sagging_at_point, want.sagging_at_point, 1e3);
		within(got.hogging_at_point, want.hogging_at_point, 1e3);
		within(got.held_lower, want.held_lower, 1e3);
		within(got.held_upper, want.held_upper, 1e3);
		within(got.V, want.V, 1e3);
		within(got.lower, want.lower, 1e3);
		within(got.upper, want.upper, 1e3);
	}
}

/* No more places than there is room for; a place that is there already takes none. */
static void room(void **state)
{
	static struct beam_grid g = {.cuts = 2, .x = {0, 1}};

	(void)state;
	assert_true(beam_grid_cut(&g, 0.5) && beam_grid_cut(&g, 0.5) && beam_grid_cut(&g, -1));
	assert_int_equal(g.cuts, 3);
	for (int i = 1; g.cuts < BEAM_CUT_MAX; i++)
		assert_true(beam_grid_cut(&g, i / 1000.0 + 1e-5));
	assert_false(beam_grid_cut(&g, 0.9999));
	assert_true(beam_grid_cut(&g, 0.5));
	assert_int_equal(beam_grid_find(&g, 0.77777), g.cuts);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(beams),
		cmocka_unit_test(rafters),
		cmocka_unit_test(room),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
