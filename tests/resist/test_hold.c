/* SPDX-License-Identifier: MIT */
/* Ways of holding on beside the lag screw: limits at, just below and just above; expected values by
   hand arithmetic or by a second method. */
#include "near.h"
#include "resist/bolt.h"
#include "resist/combined.h"
#include "resist/dowel_gap.h"
#include "resist/heel.h"
#include "resist/member.h"
#include "resist/nail.h"
#include "resist/rafter.h"
#include "resist/resist_steps.h"
#include "resist/wood_screw.h"
#include "us.h"

/* No. 10 x 3 in through 1 in of layers: thread 2 in from the tip, tip 0.38 in. p_tot 2, p 1.62,
 * p_t 1.62, l_m 1.81. */
static void wood_screw_lengths(void **state)
{
	struct lag_screw_geometry g;

	(void)state;
	assert_true(wood_screw_geometry_find(NULL, IN(0.19), IN(3), NAN, IN(1), IN(5.5), &g));
	assert_near(TO_IN(g.T), 2.0, 1e-12);
	assert_near(TO_IN(g.E), 0.38, 1e-12);
	assert_near(TO_IN(g.p_tot), 2.0, 1e-12);
	assert_near(TO_IN(g.p), 1.62, 1e-12);
	assert_near(TO_IN(g.p_t), 1.62, 1e-12);
	assert_near(TO_IN(g.l_m), 1.81, 1e-12);
	assert_near(TO_IN(g.Dr), 0.152, 1e-12);
	assert_near(TO_PSI(g.Fyb), 80000.0, 1e-12);
	/* short: 4 D of thread is more than two thirds */
	assert_true(wood_screw_geometry_find(NULL, IN(0.372), IN(2), NAN, 0, IN(5.5), &g));
	assert_near(TO_IN(g.T), 1.488, 1e-12);
	/* no such number; thread longer than the screw; nothing that makes sense */
	assert_false(wood_screw_geometry_find(NULL, IN(0.1875), IN(3), NAN, 0, IN(5.5), &g));
	assert_false(wood_screw_geometry_find(NULL, IN(0.19), IN(3), IN(3.1), 0, IN(5.5), &g));
	assert_false(wood_screw_geometry_find(NULL, IN(0.19), NAN, NAN, 0, IN(5.5), &g));
	assert_false(wood_screw_geometry_find(NULL, IN(0.19), IN(3), NAN, -1, IN(5.5), &g));
}

/* NDS-2018 12.1.5.6: 6 D with the tip counted: below, at, above. */
static void wood_screw_penetration(void **state)
{
	static const struct {
		double layers;
		bool permitted;
	} row[] = {{3.0 - 6.0 * 0.19 - 0.001, true},
		   {3.0 - 6.0 * 0.19, true},
		   {3.0 - 6.0 * 0.19 + 0.001, false}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		struct lag_screw_geometry g;
		struct lag_lateral l;

		assert_true(wood_screw_geometry_find(NULL, IN(0.19), IN(3), NAN, IN(row[i].layers),
						     IN(5.5), &g));
		assert_true(wood_screw_lateral_find(NULL, &g, 0.42, 0, IN(0.25), 0, &l));
		assert_int_equal(l.permitted, row[i].permitted);
	}
}

static void wood_screw_range(void **state)
{
	double low, high;
	struct lag_screw_geometry g;

	(void)state;
	assert_true(wood_screw_withdrawal_covers(0.31, IN(0.138)));
	assert_true(wood_screw_withdrawal_covers(0.73, IN(0.372)));
	assert_false(wood_screw_withdrawal_covers(0.30, IN(0.19)));
	assert_false(wood_screw_withdrawal_covers(0.74, IN(0.19)));
	assert_false(wood_screw_withdrawal_covers(0.50, IN(0.125)));
	/* lead hole for withdrawal: 90 % of the root above G 0.6, 70 % above 0.5, none below
	 * (NDS 12.1.5.2) */
	assert_true(wood_screw_geometry_find(NULL, IN(0.19), IN(3), NAN, 0, IN(5.5), &g));
	assert_true(wood_screw_lead_hole(NULL, &g, 0.67, &low, &high));
	assert_near(TO_IN(low), 0.9 * 0.152, 1e-12);
	assert_true(wood_screw_lead_hole(NULL, &g, 0.55, &low, &high));
	assert_near(TO_IN(high), 0.7 * 0.152, 1e-12);
	assert_true(wood_screw_lead_hole(NULL, &g, 0.50, &low, &high));
	assert_true(high <= 0);
}

/* 1-3/8 in washer, 3/8 in hole, DF-L 625 psi: 0.7854 (1.890625 - 0.140625) 625 = 859 lb.
   Cb 1.375/1.375 + 0.375/1.375 = 1.2727 from 3 in of the end on. */
static void washer(void **state)
{
	const double A = 3.14159265358979323846 / 4.0 * (1.375 * 1.375 - 0.375 * 0.375);

	(void)state;
	assert_near(
		TO_LB(bolt_washer_bearing(NULL, IN(1.375), IN(0.375), IN(1.5), IN(1), PSI(625))),
		625.0 * A, 1e-12);
	assert_near(
		TO_LB(bolt_washer_bearing(NULL, IN(1.375), IN(0.375), IN(1.5), IN(3), PSI(625))),
		625.0 * A * 1.75 / 1.375, 1e-12);
	/* as wide as the rafter, a little wider, no wider than the hole */
	assert_true(bolt_washer_bearing(NULL, IN(1.5), IN(0.375), IN(1.5), IN(1), PSI(625)) > 0);
	assert_true(bolt_washer_bearing(NULL, IN(1.51), IN(0.375), IN(1.5), IN(1), PSI(625)) <= 0);
	assert_true(bolt_washer_bearing(NULL, IN(0.375), IN(0.375), IN(1.5), IN(1), PSI(625)) <= 0);
}

/* The free bolt is the gap equation of a side member that bears without length: modes II and IIIs
   with qs without bound and ls 0. With Rd left out. */
static void free_bolt_is_the_limit(void **state)
{
	static const double one[YIELD_MODE_COUNT] = {1, 1, 1, 1, 1, 1};

	(void)state;
	for (double e = 0; e <= 4; e += 0.5) {
		const struct dowel_joint j = {.D = IN(0.375),
					      .Dr = IN(0.265),
					      .lm = IN(2.4),
					      .ls = IN(1e-9),
					      .Fem = PSI(4700),
					      .Fes = PSI(1e13),
					      .Fyb = PSI(45000),
					      .gap = IN(e)};
		double P[YIELD_MODE_COUNT];

		dowel_yield_gap(NULL, &j, one, P);
		assert_near(TO_LB(P[MODE_II]),
			    step_free_bolt_turn.value((double[]){0.265, 4700, 2.4, e, 1}), 1e-5);
		/* IIIs has its second hinge in the wood alone where the side member cannot hold the
		 * head */
		assert_near(TO_LB(P[MODE_IIIS]),
			    step_free_bolt_hinge.value((double[]){0.265, 4700, 45000, e, 1}), 1e-5);
	}
}

/* A bolt that stands 3 in free carries less than one under a plate on the wood. */
static void free_bolt_carries_less(void **state)
{
	struct dowel_joint j;
	struct dowel_yield held;

	(void)state;
	assert_true(bolt_lateral_find(NULL, IN(0.375), IN(5.5), 0.42, 0, IN(0.25), 0, &j, &held));
	assert_near(TO_IN(j.Dr), 0.265,
		    1e-12); /* root of the lag screw: less than the bolt's own */
	assert_near(TO_PSI(j.Fyb), 45000.0, 1e-12);
	const struct dowel_yield loose = bolt_free_yield(NULL, &j, IN(3));

	assert_true(loose.value < 0.3 * held.value);
	assert_true(loose.mode == MODE_IIIS);
	/* short in the wood it turns before it bends */
	j.lm = IN(0.8);
	assert_true(bolt_free_yield(NULL, &j, 0).mode == MODE_II);
	assert_false(bolt_lateral_find(NULL, IN(0.3), IN(5.5), 0.42, 0, IN(0.25), 0, &j, &held));
	assert_false(bolt_lateral_find(NULL, IN(0.375), IN(5.5), 0.42, 0, IN(0.01), 0, &j, &held));
}

static void straight_line(void **state)
{
	(void)state;
	assert_near(linear_interaction(NULL, 30, 100, 40, 80), 0.8, 1e-12);
	assert_near(linear_interaction(NULL, 0, 0, 40, 80), 0.5, 1e-12);
	assert_true(isinf(linear_interaction(NULL, 1, 0, 0, 80)));
	assert_true(isinf(linear_interaction(NULL, 1, NAN, 0, 80)));
	/* never above Eq. 12.4-1, which bulges outward */
	for (int a = 1; a < 9; a++) {
		const double T = 100 * sin(a * 10 * RAD_PER_DEG),
			     V = 100 * cos(a * 10 * RAD_PER_DEG);
		const struct combined c = combined_check(NULL, T, V, 1, 300, 150);

		assert_true(linear_interaction(NULL, T, 300, V, 150) >= c.ratio);
	}
}

/* Eq. 12.4-2: ends and middle. */
static void nails_together(void **state)
{
	(void)state;
	assert_near(nail_combined_capacity(NULL, 50, 90, 0), 90.0, 1e-12);
	assert_near(nail_combined_capacity(NULL, 50, 90, DEG(90)), 50.0, 1e-12);
	assert_near(nail_combined_capacity(NULL, 50, 90, DEG(45)),
		    50.0 * 90.0 / (140.0 * sqrt(0.5)), 1e-12);
}

/* 16d common, 1-1/2 in rafter into a block, p 2 in: at least 6 D; half the tip is off the bearing
 * length. */
static void nail_side_load(void **state)
{
	struct dowel_yield y;

	(void)state;
	assert_true(nail_lateral_find(NULL, 0.50, IN(0.162), IN(3.5), IN(1.5), &y));
	assert_within(
		TO_LB(y.value), 141.0,
		0.5); /* NDS-2018 Table 12N, 16d: 141, mode IV, so for every thicker side member */
	assert_false(nail_lateral_find(NULL, 0.50, IN(0.162), IN(2.4), IN(1.5), &y));
	assert_false(nail_lateral_find(NULL, 0.50, IN(0.05), IN(2.4), IN(1.0), &y));
}

/* 24 ft house, 30 psf on plan, 6:12: 30 x 24 / (4 x 0.5) = 360 lb/ft. */
static void thrust(void **state)
{
	(void)state;
	assert_near(heel_thrust(NULL, PSF(30), FT(24), atan(0.5)) / PLF(1), 360.0, 1e-12);
}

static void ties(void **state)
{
	static const struct {
		double share, factor;
	} row[] = {{0, 1},          {1 / 7.5, 1},        {1 / 7.5 + 0.001, 0.90},
		   {1.0 / 6, 0.90}, {0.18, 0.83},        {1.0 / 5, 0.83},
		   {0.24, 0.76},    {1.0 / 4, 0.76},     {0.26, 0.67},
		   {1.0 / 3, 0.67}, {1.0 / 3 + 0.001, 0}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		double factor;

		assert_int_equal(raised_tie_factor(NULL, IN(60 * row[i].share), IN(60), &factor),
				 row[i].factor > 0);
		assert_row("h/H", factor, row[i].factor, 1e-12);
	}
}

/* A 5/16 in hole 3 in deep leaves 84 % at the top of a 2x6, 94 % at the bottom; 3/8 in 80 % and 93
 * %. */
static void holes(void **state)
{
	const struct net_section a = section_with_hole(NULL, IN(1.5), IN(5.5), IN(0.3125), IN(3));
	const struct net_section b = section_with_hole(NULL, IN(1.5), IN(5.5), IN(0.375), IN(3));

	(void)state;
	assert_within(a.top, 0.84, 0.005);
	assert_within(a.bottom, 0.94, 0.005);
	assert_within(b.top, 0.80, 0.005);
	assert_within(b.bottom, 0.93, 0.005);
	/* all the way through: (b - h)/b at both */
	const struct net_section c = section_with_hole(NULL, IN(1.5), IN(5.5), IN(0.375), IN(5.5));

	assert_near(c.top, 0.75, 1e-12);
	assert_near(c.bottom, 0.75, 1e-12);
}

/* Moments at the feet: P a b/L of one, and the uniform part beside it. Level rafter. */
static void moments_at_points(void **state)
{
	const struct rafter_uniform u = {0, 3, 200, 0};
	const struct rafter_point down[] = {{1, 500, 0}}, up[] = {{1, -2000, 0}},
				  edge[] = {{0, 500, 0}};
	struct rafter r = {
		.span = 3, .depth = 0.14, .uniforms = 1, .uniform = &u, .points = 1, .point = down};
	struct rafter_forces f;

	(void)state;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.sagging_at_point, 500.0 * 2 / 3 + 200.0 * 1 * 2 / 2, 1e-12);
	assert_true(f.sagging_at_point <= f.sagging.value && f.hogging_at_point >= 0);
	r.point = up;
	assert_true(rafter_solve(&r, &f));
	assert_near(f.hogging_at_point, -2000.0 * 2 / 3 + 200.0, 1e-12);
	assert_true(f.sagging_at_point <= 0);
	r.point = edge;
	assert_true(rafter_solve(&r, &f));
	assert_true(f.sagging_at_point <= 0);
}

/* Two equal spans under mirrored loads: the inner support's moment is that of either span held
   there; by the continuous-beam solution. Uniform w L^2/8, a force in the middle 3 P L/16. */
static void held_ends(void **state)
{
	const struct rafter_uniform u[] = {{0, 3, 200, 0}, {0.5, 1.25, 150, 0}};
	const struct rafter_point p[] = {{1, 500, 0}, {2.25, 300, 0}};
	const struct rafter r = {
		.span = 3, .depth = 0.14, .uniforms = 2, .uniform = u, .points = 2, .point = p};
	const double support[] = {0, 3, 6};
	const struct beam_uniform bu[] = {{0, 6, 200}, {0.5, 1.25, 150}, {4.75, 5.5, 150}};
	const struct beam_point bp[] = {{1, 500}, {2.25, 300}, {5, 500}, {3.75, 300}};
	const struct beam b = {.start = 0,
			       .end = 6,
			       .supports = 3,
			       .support = support,
			       .uniforms = 3,
			       .points = 4,
			       .uniform = bu,
			       .point = bp};
	struct rafter_forces f;
	struct beam_forces two;

	(void)state;
	assert_true(rafter_solve(&r, &f) && beam_solve(&b, &two));
	assert_near(f.held_upper, two.moment[1], 1e-12);
	const struct rafter_point middle = {1.5, 400, 0};
	const struct rafter plain = {.span = 3,
				     .depth = 0.14,
				     .uniforms = 1,
				     .uniform = u,
				     .points = 1,
				     .point = &middle};

	assert_true(rafter_solve(&plain, &f));
	assert_near(f.held_lower, -200.0 * 9 / 8 - 3.0 * 400 * 3 / 16, 1e-12);
	assert_near(f.held_upper, f.held_lower, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(wood_screw_lengths),
		cmocka_unit_test(wood_screw_penetration),
		cmocka_unit_test(wood_screw_range),
		cmocka_unit_test(washer),
		cmocka_unit_test(free_bolt_is_the_limit),
		cmocka_unit_test(free_bolt_carries_less),
		cmocka_unit_test(straight_line),
		cmocka_unit_test(nails_together),
		cmocka_unit_test(nail_side_load),
		cmocka_unit_test(thrust),
		cmocka_unit_test(ties),
		cmocka_unit_test(holes),
		cmocka_unit_test(moments_at_points),
		cmocka_unit_test(held_ends),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
