/* SPDX-License-Identifier: MIT */
/* The list of this room's steps, and that a trace changes nothing and can be recomputed line by
   line. */
#include "resist/resist_steps.h"

#include <string.h>

#include "near.h"
#include "resist/aluminium.h"
#include "resist/combined.h"
#include "resist/connection.h"
#include "resist/lag_lateral.h"
#include "resist/lumber.h"
#include "resist/member.h"
#include "resist/rafter.h"
#include "us.h"

#define ADDRESS(s) &s,
static const struct step *const all[] = { RESIST_STEPS(ADDRESS) };
#define COUNT (sizeof all / sizeof all[0])

static void rows_are_whole(void **state)
{
	(void)state;
	for (size_t i = 0; i < COUNT; i++) {
		const struct step *s = all[i];

		assert_non_null(s->name);
		assert_int_equal(strspn(s->name, "abcdefghijklmnopqrstuvwxyz0123456789-"),
		                 strlen(s->name));
		assert_true(strlen(s->symbol) > 0 && strlen(s->title) > 0 &&
		            strlen(s->formula) > 0);
		assert_true(strlen(step_clause(s, EDITION_ANY)) > 0);
		assert_non_null(s->value);
		assert_in_range(step_input_count(s), 1, STEP_INPUT_MAX);
		for (size_t k = 0; k < step_input_count(s); k++) {
			assert_true(strlen(s->in[k].symbol) > 0 && strlen(s->in[k].meaning) > 0);
			for (size_t j = 0; j < k; j++)
				assert_string_not_equal(s->in[j].symbol, s->in[k].symbol);
		}
		for (size_t j = 0; j < i; j++)
			assert_string_not_equal(all[j]->name, s->name);
	}
}

/* Formulas that no function of this room runs by itself, or only as a sum: values by arithmetic, in
   the clause's units. */
static void values_by_hand(void **state)
{
	static const struct {
		const struct step *step;
		double in[STEP_INPUT_MAX], want;
	} row[] = {
		{ &step_rafter_slope_length, { 12.0, 60.0 }, 24.0 },
		{ &step_rafter_ratio, { 15.0, 1.0 }, 180.0 },
		{ &step_rafter_normal_line_load, { 40.0, 60.0 }, 10.0 },
		{ &step_rafter_normal_point, { 40.0, 60.0 }, 20.0 },
		/* w L^2/8 and P L/4; 5 w L^4/(384 E I) and P L^3/(48 E I) */
		{ &step_rafter_moment_uniform, { 80.0, 0.0, 10.0, 10.0, 5.0 }, 1000.0 },
		{ &step_rafter_moment_uniform, { 80.0, -3.0, 14.0, 10.0, 5.0 }, 1000.0 },
		{ &step_rafter_moment_uniform, { 80.0, 11.0, 14.0, 10.0, 5.0 }, 0.0 },
		{ &step_rafter_moment_uniform,
		  { 80.0, 0.0, 5.0, 10.0, 7.5 },
		  80.0 * 5.0 * 0.25 * 2.5 },
		{ &step_rafter_moment_point, { 400.0, 5.0, 10.0, 5.0 }, 1000.0 },
		{ &step_rafter_deflection_uniform,
		  { 120.0, 0.0, 10.0, 10.0, 5.0, 1.0e6, 20.0 },
		  5.0 * 10.0 * 120.0 * 120.0 * 120.0 * 120.0 / (384.0 * 1.0e6 * 20.0) },
		{ &step_rafter_deflection_point,
		  { 500.0, 5.0, 10.0, 5.0, 1.0e6, 20.0 },
		  500.0 * 120.0 * 120.0 * 120.0 / (48.0 * 1.0e6 * 20.0) },
		{ &step_lag_lead_hole, { 0.7, 0.375 }, 0.2625 },
		{ &step_lag_thread_length, { 4.0 }, 2.5 },
		{ &step_lag_thread_length, { 11.0 }, 6.0 },
		{ &step_lag_thread_length, { 16.0 }, 6.0 },
		{ &step_combined_angle, { 100.0, -100.0 }, 45.0 },
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		assert_row(row[i].step->name, row[i].step->value(row[i].in), row[i].want,
		           1e-13 * fabs(row[i].want) + 1e-13);
}

/* One pass through the room; returns a number that depends on everything. */
static double everything(struct trace *trace)
{
	struct lag_screw_geometry g;
	struct connection_factors f;
	struct lag_lateral touching, apart;
	struct lumber_piece piece;
	struct lumber_values v;
	struct stability s;
	struct rail_alloy alloy;
	const struct lumber_service service = { .repetitive = true, .temperature = NAN };
	const struct rafter_uniform u = { 0.0, 3.0, 300.0, -100.0 };
	const struct rafter_point p = { 1.0, 500.0, -200.0 };
	const struct rafter r = { .span = 3.0,
		                  .theta = 0.5,
		                  .depth = 0.14,
		                  .uniforms = 1,
		                  .points = 1,
		                  .uniform = &u,
		                  .point = &p };
	double sum = 0.0;

	assert_true(
		lag_screw_geometry_find(trace, IN(0.3125), IN(4), NAN, IN(0.9375), IN(5.5), &g));
	assert_true(connection_factors_find(1.6, false, NAN, false, &f));
	sum += lag_withdrawal_capacity(trace, lag_withdrawal(trace, 0.42, g.D), g.p_t, &f);
	assert_true(lag_lateral_find(trace, &g, 0.42, DEG(30.0), IN(0.25), 0.0, &touching));
	assert_true(lag_lateral_find(trace, &g, 0.42, 0.0, IN(0.25), IN(0.7), &apart));
	sum += combined_check(trace, 900.0, 300.0, 2, sum,
	                      lateral_adjusted(trace, apart.yield.value, 1.6, 1, 1, 1, 1, 1)).ratio;
	assert_true(lumber_piece_find("SPF", "No.2", IN(1.5), IN(5.5), &piece));
	assert_true(lumber_adjust(trace, &piece, 1.6, &service, &v));
	s = member_stability(trace, piece.b, piece.d, 3.0, UNBRACED_OTHER, v.Emin_prime, v.Fb_star);
	sum += lumber_bending(trace, v.Fb_star, s.CL) / 1e3 +
	       section_rectangle(trace, piece.b, piece.d).S;
	sum += rafter_moment_at(trace, &r, 1.4) +
	       rafter_deflection_at(trace, &r, v.E_prime, 8e-6, 1.4);
	assert_true(rail_alloy_find("6005-T5", &alloy));
	sum += rail_allowable_moment(trace, 1e-5, rail_allowable_stress(trace, &alloy));
	return sum + touching.yield.value;
}

static void trace_changes_nothing(void **state)
{
	struct step_record record[256];
	struct trace trace = { .record = record, .capacity = 256 };
	const double bare = everything(NULL), traced = everything(&trace);

	(void)state;
	assert_memory_equal(&bare, &traced, sizeof bare);
	assert_int_equal(trace.dropped, 0);
	assert_true(trace.count > 50);
	for (size_t i = 0; i < trace.count; i++) {
		const struct step_record *r = &record[i];
		const double again = step_run(NULL, r->step, r->in, step_input_count(r->step));

		assert_memory_equal(&again, &r->result, sizeof again);
		assert_true(isfinite(again));
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(rows_are_whole),
		                            cmocka_unit_test(values_by_hand),
		                            cmocka_unit_test(trace_changes_nothing) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
