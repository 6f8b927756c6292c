/* SPDX-License-Identifier: MIT */
/* Continuous beams against a second method: Macaulay's brackets from the loads and reactions alone.
   Statics and no deflection at any support determine the answer, so a beam that keeps both is the
   right one. */
#include "resist/beam.h"

#include <string.h>

#include "near.h"
#include "random.h"

static double bracket(double x, double a, int n)
{
	double r = 1.0;

	if (x <= a)
		return 0.0;
	while (n-- > 0)
		r *= x - a;
	return r;
}

/* Moment at x from everything left of it. */
static double macaulay_moment(const struct beam *b, const struct beam_forces *f, double x)
{
	double M = 0.0;

	for (size_t i = 0; i < b->supports; i++)
		M += f->reaction[i] * bracket(x, b->support[i], 1);
	for (size_t i = 0; i < b->points; i++)
		if (b->point[i].x >= b->start && b->point[i].x <= b->end)
			M -= b->point[i].P * bracket(x, b->point[i].x, 1);
	for (size_t i = 0; i < b->uniforms; i++) {
		const double x0 = fmax(b->start, b->uniform[i].x0),
			     x1 = fmin(b->end, b->uniform[i].x1);

		if (x0 < x1)
			M -= b->uniform[i].w / 2.0 * (bracket(x, x0, 2) - bracket(x, x1, 2));
	}
	return M;
}

/* EI times the deflection that starts with nothing at the left end: the particular part. */
static double macaulay_bow(const struct beam *b, const struct beam_forces *f, double x)
{
	double v = 0.0;

	for (size_t i = 0; i < b->supports; i++)
		v -= f->reaction[i] * bracket(x, b->support[i], 3) / 6.0;
	for (size_t i = 0; i < b->points; i++)
		if (b->point[i].x >= b->start && b->point[i].x <= b->end)
			v += b->point[i].P * bracket(x, b->point[i].x, 3) / 6.0;
	for (size_t i = 0; i < b->uniforms; i++) {
		const double x0 = fmax(b->start, b->uniform[i].x0),
			     x1 = fmin(b->end, b->uniform[i].x1);

		if (x0 < x1)
			v += b->uniform[i].w / 24.0 * (bracket(x, x0, 4) - bracket(x, x1, 4));
	}
	return v;
}

/* Turned and moved so that the first and the last support do not deflect. */
static double deflection_at(const struct beam *b, const struct beam_forces *f, double x)
{
	const double a = b->support[0], e = b->support[b->supports - 1];
	const double va = macaulay_bow(b, f, a), ve = macaulay_bow(b, f, e);

	return macaulay_bow(b, f, x) - va - (ve - va) * (x - a) / (e - a);
}

struct random_beam {
	struct beam beam;
	double support[12];
	struct beam_uniform uniform[8];
	struct beam_point point[6];
};

static void make(struct random_beam *r, uint64_t *seed)
{
	double x = random_between(seed, -1.0, 1.0);
	struct beam *b = &r->beam;

	*b = (struct beam){
		.start = x, .support = r->support, .uniform = r->uniform, .point = r->point
	};
	b->supports = 2 + (size_t)random_between(seed, 0.0, 10.0);
	b->uniforms = (size_t)random_between(seed, 0.0, 8.99);
	b->points = (size_t)random_between(seed, 0.0, 6.99);
	x += random_between(seed, 0.0, 1.0) > 0.3 ? random_between(seed, 0.05, 1.0) : 0.0;
	for (size_t i = 0; i < b->supports; i++, x += random_between(seed, 0.3, 3.0))
		r->support[i] = x;
	b->end = r->support[b->supports - 1] +
	         (random_between(seed, 0.0, 1.0) > 0.3 ? random_between(seed, 0.05, 1.0) : 0.0);
	for (size_t i = 0; i < b->uniforms; i++) {
		const double a = random_between(seed, b->start - 0.5, b->end),
			     e = random_between(seed, a, b->end + 0.5);

		r->uniform[i] = (struct beam_uniform){ a, e, random_between(seed, -500.0, 500.0) };
	}
	for (size_t i = 0; i < b->points; i++)
		r->point[i] =
			(struct beam_point){ random_between(seed, b->start - 0.2, b->end + 0.2),
			                     random_between(seed, -900.0, 900.0) };
	if (b->points > 1) /* one of them right on a support */
		r->point[0].x = r->support[b->supports / 2];
}

/* Sizes to hold rounding against: all loads, and their moments and bows over the whole length. */
static double force_scale(const struct beam *b)
{
	double F = 0.0;

	for (size_t i = 0; i < b->uniforms; i++)
		F += fabs(b->uniform[i].w) * (b->uniform[i].x1 - b->uniform[i].x0);
	for (size_t i = 0; i < b->points; i++)
		F += fabs(b->point[i].P);
	return F;
}

static void statics_and_compatibility(void **state)
{
	uint64_t seed = 2018;
	struct random_beam r;
	struct beam_forces f;

	(void)state;
	for (int k = 0; k < 400; k++) {
		double sum = 0.0, F, L;

		make(&r, &seed);
		assert_true(beam_solve(&r.beam, &f));
		F = force_scale(&r.beam);
		L = r.beam.end - r.beam.start;
		for (size_t i = 0; i < r.beam.supports; i++)
			sum += f.reaction[i];
		assert_within(sum, f.load, 1e-12 * F);
		/* moments balance */
		assert_within(macaulay_moment(&r.beam, &f, r.beam.end + 1e-9), 0.0, 1e-8 * F * L);
		for (size_t i = 0; i < r.beam.supports; i++) {
			assert_within(macaulay_moment(&r.beam, &f, r.beam.support[i]), f.moment[i],
			              1e-12 * F * L);
			assert_within(deflection_at(&r.beam, &f, r.beam.support[i]), 0.0,
			              1e-12 * F * L * L * L);
		}
	}
}

/* Length of the span or overhang that x lies in. */
static double field_length(const struct beam *b, double x)
{
	double left = b->start;

	for (size_t i = 0; i < b->supports; left = b->support[i++])
		if (x <= b->support[i] && b->support[i] > left)
			return b->support[i] - left;
	return b->end - left;
}

static void peaks_are_the_largest(void **state)
{
	uint64_t seed = 7;
	struct random_beam r;
	struct beam_forces f;
	struct beam_bow bow;

	(void)state;
	for (int k = 0; k < 60; k++) {
		double sag = 0.0, hog = 0.0, F, L;

		make(&r, &seed);
		assert_true(beam_solve(&r.beam, &f));
		beam_deflect(&r.beam, &f, 2.0, &bow);
		F = force_scale(&r.beam);
		L = r.beam.end - r.beam.start;
		for (int i = 0; i <= 4000; i++) {
			const double x = fmin(r.beam.start + L * i / 4000.0, r.beam.end);
			const double M = macaulay_moment(&r.beam, &f, x);
			const double v = fabs(deflection_at(&r.beam, &f, x) / 2.0);
			const double of = field_length(&r.beam, x);
			const bool inside =
				x >= r.beam.support[0] && x <= r.beam.support[r.beam.supports - 1];

			sag = fmax(sag, M);
			hog = fmin(hog, M);
			/* no station is worse for its length than the peak for its own */
			if (inside)
				assert_true(v / of <= fabs(bow.span.value) / bow.span_length +
				                              1e-11 * F * L * L);
			else
				assert_true(v / of <=
				            fabs(bow.overhang.value) / bow.overhang_length +
				                    1e-11 * F * L * L);
			assert_within(beam_moment_at(&r.beam, &f, x), M, 1e-11 * F * L);
		}
		/* not below any station, and really reached at the place that is told */
		assert_true(f.sagging.value >= sag - 1e-11 * F * L &&
		            f.hogging.value <= hog + 1e-11 * F * L);
		assert_within(macaulay_moment(&r.beam, &f, f.sagging.x), f.sagging.value,
		              1e-11 * F * L);
		assert_within(macaulay_moment(&r.beam, &f, f.hogging.x), f.hogging.value,
		              1e-11 * F * L);
		assert_within(deflection_at(&r.beam, &f, bow.span.x) / 2.0, bow.span.value,
		              1e-11 * F * L * L * L);
		assert_within(deflection_at(&r.beam, &f, bow.overhang.x) / 2.0, bow.overhang.value,
		              1e-11 * F * L * L * L);
	}
}

/* Spans 2 and 1, the short one loaded hard: v/L must find it though the long one lifts more. Left
   span unloaded, right w: M = -w/(8 (2 + 1)) at the middle support; long span lifts M L^2/(9
   sqrt(3) EI), short one sags. */
static void worst_for_its_length(void **state)
{
	const double support[] = { 0.0, 2.0, 3.0 };
	const struct beam_uniform u = { 2.0, 3.0, 24.0 };
	const struct beam b = { .start = 0.0,
		                .end = 3.0,
		                .supports = 3,
		                .support = support,
		                .uniforms = 1,
		                .uniform = &u };
	struct beam_forces f;
	struct beam_bow bow;
	double deepest = 0.0;

	(void)state;
	assert_true(beam_solve(&b, &f));
	assert_near(f.moment[1], -1.0, 1e-13);
	beam_deflect(&b, &f, 1.0, &bow);
	for (int i = 0; i <= 1000; i++)
		deepest = fmax(deepest, deflection_at(&b, &f, 2.0 + i / 1000.0));
	assert_true(4.0 / (9.0 * sqrt(3.0)) > deepest);
	assert_true(4.0 / (9.0 * sqrt(3.0)) / 2.0 < deepest);
	assert_near(bow.span_length, 1.0, 1e-14);
	assert_near(bow.span.value, deepest, 1e-5);
	assert_within(bow.overhang_length, 0.0, 0.0);
}

/* Overhangs by hand: uniform w over all, spans 4, overhang a = 1 either side. M at supports -w
   a^2/2, reaction w (4 + 2)/2, midspan w 16/8 - w/2. */
static void two_supports_with_overhangs(void **state)
{
	const double support[] = { 1.0, 5.0 };
	const struct beam_uniform u = { 0.0, 6.0, 300.0 };
	const struct beam b = { .start = 0.0,
		                .end = 6.0,
		                .supports = 2,
		                .support = support,
		                .uniforms = 1,
		                .uniform = &u };
	struct beam_forces f;

	(void)state;
	assert_true(beam_solve(&b, &f));
	assert_near(f.reaction[0], 900.0, 1e-14);
	assert_near(f.reaction[1], 900.0, 1e-14);
	assert_near(f.moment[0], -150.0, 1e-14);
	assert_near(f.sagging.value, 450.0, 1e-14);
	assert_near(f.sagging.x, 3.0, 1e-14);
	assert_near(f.hogging.value, -150.0, 1e-14);
	assert_near(fabs(f.shear.value), 600.0, 1e-14);
	assert_near(beam_shear_at(&b, &f, 1.0), 600.0, 1e-14);
	assert_near(beam_shear_at(&b, &f, 0.5), -150.0, 1e-14);
	assert_near(beam_worst_moment(&f).value, 450.0, 1e-14);
}

/* Uplift is the same beam with every sign turned. */
static void uplift_mirrors_download(void **state)
{
	uint64_t seed = 99;
	struct random_beam r;
	struct beam_forces down, up;

	(void)state;
	for (int k = 0; k < 50; k++) {
		make(&r, &seed);
		assert_true(beam_solve(&r.beam, &down));
		for (size_t i = 0; i < r.beam.uniforms; i++)
			r.uniform[i].w = -r.uniform[i].w;
		for (size_t i = 0; i < r.beam.points; i++)
			r.point[i].P = -r.point[i].P;
		assert_true(beam_solve(&r.beam, &up));
		for (size_t i = 0; i < r.beam.supports; i++)
			assert_near(up.reaction[i], -down.reaction[i], 0.0);
		assert_near(up.hogging.value, -down.sagging.value, 0.0);
	}
}

static void order_of_loads_is_irrelevant(void **state)
{
	const double support[] = { 0.0, 1.2, 2.0, 3.9 };
	const struct beam_uniform u[] = {
		{ -1.0, 9.0, 10.0 }, { 0.5, 1.5, 40.0 }, { 1.5, 1.5, 7.0 }, { 0.2, 3.0, -20.0 }
	};
	const struct beam_uniform v[] = { u[3], u[2], u[1], u[0] };
	struct beam b = { .start = -0.3,
		          .end = 4.0,
		          .supports = 4,
		          .support = support,
		          .uniforms = 4,
		          .uniform = u };
	struct beam_forces f, g;

	(void)state;
	assert_true(beam_solve(&b, &f));
	b.uniform = v;
	assert_true(beam_solve(&b, &g));
	for (size_t i = 0; i < 4; i++)
		assert_near(g.reaction[i], f.reaction[i], 1e-13);
	/* 10 N/m over 4.3 m, 40 over 1 m, nothing, -20 over 2.8 m */
	assert_near(f.load, 43.0 + 40.0 - 56.0, 1e-14);
}

static void the_longest_beam(void **state)
{
	static double support[BEAM_SUPPORT_MAX + 1];
	const struct beam_uniform u = { 0.0, 2.0 * BEAM_SUPPORT_MAX, 6.0 };
	struct beam b = { .start = 0.0,
		          .supports = BEAM_SUPPORT_MAX,
		          .support = support,
		          .uniforms = 1,
		          .uniform = &u };
	struct beam_forces f;

	(void)state;
	for (size_t i = 0; i <= BEAM_SUPPORT_MAX; i++)
		support[i] = (double)i;
	b.end = support[BEAM_SUPPORT_MAX - 1];
	assert_true(beam_solve(&b, &f));
	/* far from the ends: w L^2/12 over the supports, 1.0 w L */
	assert_near(f.moment[BEAM_SUPPORT_MAX / 2], -0.5, 1e-12);
	assert_near(f.reaction[BEAM_SUPPORT_MAX / 2], 6.0, 1e-12);
	b.supports = BEAM_SUPPORT_MAX + 1;
	b.end = support[BEAM_SUPPORT_MAX];
	assert_false(beam_solve(&b, &f));
}

static void refused(void **state)
{
	double support[] = { 0.0, 1.0, 2.0 };
	struct beam_uniform u = { 0.0, 2.0, 1.0 };
	struct beam_point p = { 1.0, 1.0 };
	const struct beam good = { .start = 0.0,
		                   .end = 2.0,
		                   .supports = 3,
		                   .support = support,
		                   .uniforms = 1,
		                   .points = 1,
		                   .uniform = &u,
		                   .point = &p };
	struct beam b = good;
	struct beam_forces f;

	(void)state;
	assert_true(beam_solve(&b, &f));
	b.supports = 1; /* a beam on one support falls */
	assert_false(beam_solve(&b, &f));
	b = good;
	b.start = 0.1; /* a support off the beam */
	assert_false(beam_solve(&b, &f));
	b = good;
	b.end = 1.9;
	assert_false(beam_solve(&b, &f));
	b = good;
	b.end = INFINITY;
	assert_false(beam_solve(&b, &f));
	b = good;
	b.uniforms = BEAM_LOAD_MAX + 1;
	assert_false(beam_solve(&b, &f));
	b = good;
	support[1] = 0.0; /* two supports in one place */
	assert_false(beam_solve(&b, &f));
	support[1] = NAN;
	assert_false(beam_solve(&b, &f));
	support[1] = 1.0;
	u.x1 = -1.0; /* backwards */
	assert_false(beam_solve(&b, &f));
	u.x1 = 2.0;
	u.w = NAN;
	assert_false(beam_solve(&b, &f));
	u.w = 1.0;
	p.P = INFINITY;
	assert_false(beam_solve(&b, &f));
	p.P = 1.0;
	assert_true(beam_solve(&b, &f));
}

static void no_load_no_force(void **state)
{
	const double support[] = { 0.0, 3.0 };
	const struct beam b = { .start = 0.0, .end = 3.0, .supports = 2, .support = support };
	struct beam_forces f;
	struct beam_bow bow;

	(void)state;
	assert_true(beam_solve(&b, &f));
	beam_deflect(&b, &f, 1.0, &bow);
	assert_within(f.reaction[0], 0.0, 0.0);
	assert_within(f.sagging.value, 0.0, 0.0);
	assert_within(f.shear.value, 0.0, 0.0);
	assert_within(bow.span.value, 0.0, 0.0);
	assert_within(bow.overhang.value, 0.0, 0.0);
	assert_within(beam_moment_at(&b, &f, -1.0), 0.0, 0.0);
	assert_within(beam_moment_at(&b, &f, 9.0), 0.0, 0.0);
	assert_within(beam_shear_at(&b, &f, 9.0), 0.0, 0.0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(statics_and_compatibility),
		cmocka_unit_test(peaks_are_the_largest),
		cmocka_unit_test(worst_for_its_length),
		cmocka_unit_test(two_supports_with_overhangs),
		cmocka_unit_test(uplift_mirrors_download),
		cmocka_unit_test(order_of_loads_is_irrelevant),
		cmocka_unit_test(the_longest_beam),
		cmocka_unit_test(refused),
		cmocka_unit_test(no_load_no_force),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
