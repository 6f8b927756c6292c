/* SPDX-License-Identifier: MIT */
/* Rafter on a slope: the slope solution against the horizontal one by superposition, the shear that
   counts, refusals. */
#include "resist/rafter.h"

#include "near.h"
#include "random.h"
#include "us.h"

struct random_rafter {
	struct rafter rafter;
	struct rafter_uniform uniform[5];
	struct rafter_point point[5];
};

static void make(struct random_rafter *r, uint64_t *seed)
{
	r->rafter = (struct rafter){ .span = random_between(seed, 1.0, 6.0),
		                     .theta = random_between(seed, 0.0, 1.2),
		                     .depth = 0.14,
		                     .uniform = r->uniform,
		                     .point = r->point };
	r->rafter.uniforms = (size_t)random_between(seed, 0.0, 5.99);
	r->rafter.points = (size_t)random_between(seed, 0.0, 5.99);
	for (size_t i = 0; i < 5; i++) {
		const double a = random_between(seed, -0.5, r->rafter.span),
			     e = random_between(seed, a, r->rafter.span + 0.5);

		r->uniform[i] = (struct rafter_uniform){ a, e, random_between(seed, -500, 900),
			                                 random_between(seed, -600, 300) };
		r->point[i] =
			(struct rafter_point){ random_between(seed, -0.3, r->rafter.span + 0.3),
			                       random_between(seed, -900, 900),
			                       random_between(seed, -900, 900) };
	}
}

static void two_ways(void **state)
{
	uint64_t seed = 41;
	struct random_rafter r;
	struct rafter_forces f;
	struct beam_peak bow;

	(void)state;
	for (int k = 0; k < 300; k++) {
		double largest = 0.0, smallest = 0.0, deepest = 0.0;

		make(&r, &seed);
		assert_true(rafter_solve(&r.rafter, &f));
		assert_true(rafter_deflect(&r.rafter, 8.0e4, &bow));
		assert_within(rafter_moment_at(NULL, &r.rafter, f.moment.x), f.moment.value, 1e-9);
		assert_within(rafter_deflection_at(NULL, &r.rafter, 1.0e10, 8.0e-6, bow.x),
		              bow.value, 1e-12);
		for (int i = 0; i <= 200; i++) {
			const double x = r.rafter.span * i / 200.0,
				     M = rafter_moment_at(NULL, &r.rafter, x);

			largest = fmax(largest, M);
			smallest = fmin(smallest, M);
			deepest = fmax(deepest, fabs(rafter_deflection_at(NULL, &r.rafter, 1.0e10,
			                                                  8.0e-6, x)));
		}
		assert_true(f.sagging.value >= largest - 1e-9 &&
		            f.hogging.value <= smallest + 1e-9);
		assert_true(fabs(bow.value) >= deepest - 1e-12);
	}
}

/* A flat beam by the book: w L^2/8, w L/2 less w d, 5 w L^4/(384 E I). */
static void flat(void **state)
{
	const struct rafter_uniform u = { 0.0, 4.0, 1000.0, 0.0 };
	const struct rafter r = {
		.span = 4.0, .theta = 0.0, .depth = 0.2, .uniforms = 1, .uniform = &u
	};
	struct rafter_forces f;
	struct beam_peak bow;

	(void)state;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.moment.value, 2000.0, 1e-14);
	assert_near(f.moment.x, 2.0, 1e-14);
	assert_near(f.V, 1800.0, 1e-14);
	assert_near(f.lower, 2000.0, 1e-14);
	assert_within(f.axial, 0.0, 1e-12);
	assert_true(rafter_deflect(&r, 1.0e5, &bow));
	assert_near(bow.value, 5.0 * 1000.0 * 256.0 / (384.0 * 1.0e5), 1e-13);
}

/* The same vertical load on a slope: moment as flat, shear times cos, deflection divided by cos^2
   (w cos^2 on L/cos). Wind w normal to the slope: moment w (L/cos)^2/8. */
static void sloped(void **state)
{
	const struct rafter_uniform snow = { 0.0, 4.0, 1000.0, 0.0 },
				    wind = { 0.0, 4.0, 0.0, -1000.0 };
	struct rafter r = {
		.span = 4.0, .theta = DEG(30.0), .depth = 0.2, .uniforms = 1, .uniform = &snow
	};
	const struct rafter_point post = { 2.0, 100.0, 70.0 };
	const double c = cos(DEG(30.0));
	struct rafter_forces f;
	struct beam_peak bow;

	(void)state;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.slope_length, 4.0 / c, 1e-14);
	assert_near(f.moment.value, 2000.0, 1e-13);
	assert_near(f.lower, 2000.0 * c, 1e-13);
	assert_near(f.V, (2000.0 - 1000.0 * 0.2 * c) * c, 1e-13);
	assert_near(f.axial, 2000.0, 1e-13); /* 4000 sin 30 */
	assert_true(rafter_deflect(&r, 1.0e5, &bow));
	assert_near(bow.value, 5.0 * 1000.0 * 256.0 / (384.0 * 1.0e5) / (c * c), 1e-13);
	r.points = 1;
	r.point = &post;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.axial, 2000.0 + 50.0, 1e-13); /* wind pushes nothing along */
	r.points = 0;
	r.uniform = &wind;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.hogging.value, -1000.0 * (4.0 / c) * (4.0 / c) / 8.0, 1e-13);
	assert_within(f.sagging.value, 0.0, 0.0);
	assert_within(f.axial, 0.0, 0.0);
}

/* NDS-2018 3.4.3.1(a) (from memory): a point load nearer than d counts x/d. Span 4, d 0.2, P
   1000. */
static void shear_near_support(void **state)
{
	struct rafter_point p = { 0.2, 1000.0, 0.0 };
	const struct rafter r = {
		.span = 4.0, .theta = 0.0, .depth = 0.2, .points = 1, .point = &p
	};
	struct rafter_forces f;

	(void)state;
	assert_true(rafter_solve(&r, &f)); /* at d: in full */
	assert_near(f.V, 950.0, 1e-13);
	p.x = 0.1; /* half of it */
	assert_true(rafter_solve(&r, &f));
	assert_near(f.V, 487.5, 1e-13);
	p.x = 3.9; /* the same at the other end */
	assert_true(rafter_solve(&r, &f));
	assert_near(f.V, 487.5, 1e-12);
	p.x = 0.0;
	assert_true(rafter_solve(&r, &f));
	assert_within(f.V, 0.0, 1e-12);
	p.x = 2.0;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.V, 500.0, 1e-13);
}

/* Down at one third, up at the other: the largest shear is between them, not at a support. */
static void shear_inside(void **state)
{
	const struct rafter_point p[] = { { 1.0, 900.0, 0.0 }, { 2.0, -900.0, 0.0 } };
	const struct rafter r = {
		.span = 3.0, .theta = 0.0, .depth = 0.2, .points = 2, .point = p
	};
	struct rafter_forces f;

	(void)state;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.lower, 300.0, 1e-13);
	assert_near(f.V, 600.0, 1e-13);
}

static void line_loads(void **state)
{
	(void)state;
	assert_near(rafter_line_load_plan(NULL, PSF(30.0), IN(16.0)) / PLF(1.0), 40.0, 1e-13);
	/* 10 psf of roof at 24 in on 6:12: 22.36 lb per horizontal foot */
	assert_near(rafter_line_load_slope(NULL, PSF(10.0), IN(24.0), atan(0.5)) / PLF(1.0),
	            20.0 * sqrt(1.25), 1e-13);
}

static void refused(void **state)
{
	struct rafter r = { .span = 4.0, .theta = 0.0, .depth = 0.2 };
	struct rafter_forces f;
	struct beam_peak bow;

	(void)state;
	assert_true(rafter_solve(&r, &f));
	assert_false(rafter_deflect(&r, 0.0, &bow));
	assert_false(rafter_deflect(&r, NAN, &bow));
	r.span = 0.0;
	assert_false(rafter_solve(&r, &f));
	r.span = INFINITY;
	assert_false(rafter_solve(&r, &f));
	r.span = 4.0;
	r.theta = DEG(90.0);
	assert_false(rafter_solve(&r, &f));
	r.theta = -0.1;
	assert_false(rafter_solve(&r, &f));
	r.theta = 0.0;
	r.depth = NAN;
	assert_false(rafter_solve(&r, &f));
	r.depth = 0.2;
	r.points = BEAM_LOAD_MAX + 1;
	assert_false(rafter_solve(&r, &f));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(two_ways),     cmocka_unit_test(flat),
		cmocka_unit_test(sloped),       cmocka_unit_test(shear_near_support),
		cmocka_unit_test(shear_inside), cmocka_unit_test(line_loads),
		cmocka_unit_test(refused),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
