/* SPDX-License-Identifier: MIT */
/* The earthquake on rafters, rails and racks, by hand. */
#include <math.h>
#include <string.h>

#include "check/load_case.h"
#include "check/rafter_load.h"
#include "check/rafter_whole.h"
#include "check/rail.h"
#include "check/rail_pattern.h"
#include "sample_rafter.h"
#include "sample_run.h"

/* The earthquake on one bare rafter: the roof's weight times D + Ev 0.2 SDS, and the feet by the
 * step of the foot. */
static void test_quake_rafter(void **state)
{
	static struct context c;
	static struct result r;
	static struct pass pass;
	struct job job = bare(4, 4, 0);
	struct rafter_whole whole;
	const struct load_combination E = {
		.text = "E", .use = COMBINATION_SEISMIC, .D = 1, .Ev = 0.7, .Eh = 0.7};
	struct rafter_loads l;

	(void)state;
	job.roof.dead_load = 500;
	lay(&c, &r, &job, 20 * RAD_PER_DEG, &whole);
	c.quake.known = true;
	c.quake.horizontal = 0.8;
	c.quake.vertical = 0.2;
	r.dead.array_filled = 200;
	r.place[0] = (struct stand){0, 0};
	pass.attachments = 1;
	pass.attachment[0] = (struct attachment){.rafter = 0,
						 .x = 1,
						 .y = 2,
						 .reaction_width = 1.5,
						 .tributary_width = 1,
						 .tributary_depth = 1.2};
	for (int way = -1; way <= 1; way += 2) {
		const struct rafter_case k = {
			.k = &E, .snow_case = -1, .array = true, .quake = way};

		rafter_load(&c, &pass, &whole.piece[0], &k, &l);
		assert_int_equal(l.rafter.uniforms, 1);
		assert_near(l.uniform[0].vertical,
			    (1 + 0.7 * 0.2) * 500 / c.cos_theta * whole.piece[0].width, 1e-12);
		assert_int_equal(l.rafter.points, 1);
		assert_near(l.point[0].normal,
			    1.5 * 1.2 * 200 *
				    ((1 + 0.7 * 0.2) * c.cos_theta - way * 0.7 * 0.8 * c.sin_theta),
			    1e-9);
	}
}

/* The same on a rail, per area of array, where there is no other load. */
static void test_quake_rail(void **state)
{
	static struct context c;
	static struct result r;
	const struct job job = sample_job();
	const struct attachment a = {.tributary_width = 1, .tributary_depth = 1};
	const char *text = "";

	(void)state;
	memset(&c, 0, sizeof c);
	c.job = &job;
	c.r = &r;
	c.theta = 20 * RAD_PER_DEG;
	r.dead.array_filled = 200;
	c.quake.known = true;
	c.quake.horizontal = 0.8;
	c.quake.vertical = 0.2;
	c.quake.combinations = 1;
	c.quake.combination[0] = (struct load_combination){.text = "1.0D + 0.7Ev + 0.7Eh",
							   .use = COMBINATION_SEISMIC,
							   .D = 1,
							   .Ev = 0.7,
							   .Eh = 0.7};
	assert_near(rail_load(&c, &a, 1, false, &text),
		    200 * (1.14 * cos(c.theta) + 0.56 * sin(c.theta)), 1e-9);
	assert_string_equal(text, "1.0D + 0.7Ev + 0.7Eh");
	assert_true(rail_load(&c, &a, 1, true, &text) <=
		    0); /* no ASD combination in the list of tested values */
}

/* Partial snow with the earthquake. On a rail of three equal spans 1.0 of snow in pairs brings
   0.10833 w L^2 (as 1/15 + 1/20 - 1/120) and what is even, the weight shaken, 0.1 w L^2: at a slope
   of none, 1.14 d even beside the snow. */
static void test_quake_partial_rail(void **state)
{
	static struct context c;
	static struct result r;
	const struct job job = snowy();
	const struct line line = {.x0 = 0, .x1 = 3, .y_low = 0, .y_high = 1};
	struct attachment a[4];
	struct rail_line rail = {0};

	(void)state;
	memset(&c, 0, sizeof c);
	memset(a, 0, sizeof a);
	for (int i = 0; i < 4; i++)
		a[i].x = i;
	c.job = &job;
	c.r = &r;
	c.cos_theta = 1;
	c.snow.cases = 1;
	c.snow.snow[0].array = 1000;
	r.dead.array_filled = 200;
	c.quake.known = true;
	c.quake.horizontal = 0.8;
	c.quake.vertical = 0.2;
	c.quake.combinations = 1;
	c.quake.combination[0] = (struct load_combination){
		.text = "E", .use = COMBINATION_SEISMIC, .D = 1, .S = 1, .Ev = 0.7, .Eh = 0.7};
	rail_patterns(&c, &line, a, 4, 1000, &rail, NULL);
	assert_near(rail.check[CHECK_RAIL_MOMENT].demand,
		    1000 * (1.0 / 15 + 1.0 / 20 - 1.0 / 120) + 0.1 * 1.14 * 200, 1e-9);
	assert_string_equal(rail.check[CHECK_RAIL_MOMENT].combination, "E");
}

/* On a rafter over two equal spans, one with half of the snow: each foot's snow is halved with its
   span, its weight and the force of the earthquake are not. */
static void test_quake_partial_rafter(void **state)
{
	static struct context c;
	static struct result r;
	static struct pass pass;
	const struct job job = bare(4, 8, 0);
	struct rafter_whole whole;
	const struct load_combination E = {
		.text = "E", .use = COMBINATION_SEISMIC, .D = 1, .S = 0.75, .Ev = 0.7, .Eh = 0.7};
	struct rafter_loads l;
	double normal[2], slope;

	(void)state;
	lay(&c, &r, &job, 20 * RAD_PER_DEG, &whole);
	assert_int_equal(whole.pieces, 2);
	c.quake.known = true;
	c.quake.horizontal = 0.8;
	c.quake.vertical = 0.2;
	c.snow.cases = 1;
	c.snow.snow[0].array = 1200;
	r.dead.array_filled = 200;
	r.place[0] = (struct stand){0, 0};
	pass.attachments = 1;
	pass.attachment[0] = (struct attachment){.rafter = 0,
						 .x = 1,
						 .y = 2,
						 .reaction_width = 1.5,
						 .tributary_width = 1,
						 .tributary_depth = 1.2};
	for (int half = 0; half <= 1; half++) {
		const struct rafter_case k = {.k = &E,
					      .array = true,
					      .quake = 1,
					      .roof_snow = 900,
					      .snow_off = half ? 0.5 : 0};
		const double snow = 0.75 * 1200 * (half ? 0.5 : 1);

		rafter_load(&c, &pass, &whole.piece[0], &k, &l);
		normal[half] = l.point[0].normal;
		assert_near(normal[half],
			    1.8 * (200 * (1.14 * c.cos_theta - 0.56 * c.sin_theta) +
				   snow * c.cos_theta * c.cos_theta),
			    1e-9);
	}
	assert_true(array_load_quake(&c, &E, 1, 600, 1.8, NULL, &normal[0], &slope));
	assert_near(normal[1], normal[0], 1e-12);
}

/* Strong enough, it is the earthquake with partial snow that governs a rafter over an inner
 * support. */
static void test_quake_partial_governs(void **state)
{
	struct job job = snowy();

	(void)state;
	job.building.form = FORM_MONOSLOPE;
	job.building.width = FT(14);
	job.framing.span = FT(7);
	job.roof.dead_load = PSF(20);
	const double calm = judged(run(&job))->rafter[0].after[CHECK_RAFTER_PARTIAL].ratio;

	job.earthquake.SDS = 12;
	const struct check_value *v = &judged(run(&job))->rafter[0].after[CHECK_RAFTER_PARTIAL];

	assert_true(v->rated && v->ratio > calm);
	assert_non_null(strchr(v->combination, 'E'));
}

/* A stronger earthquake never eases rafters or rails, in any edition or method. */
static void test_quake_grows(void **state)
{
	(void)state;
	for (int e = ASCE7_10; e <= ASCE7_22; e++)
		for (int m = METHOD_ASD; m <= METHOD_LRFD; m++) {
			struct job job = dense();
			double last_rafter = 0, last_rail = 0;

			job.site.code = (enum edition)e;
			job.site.method = (enum design_method)m;
			job.rail.section_modulus = 1e-6;
			strcpy(job.rail.alloy, "6005A-T61");
			job.earthquake.CAR = 1;
			job.earthquake.Rpo = 1.5;
			job.earthquake.Hf = 3.5;
			job.earthquake.Rmu = 1.3;
			for (double SDS = 0.5; SDS < 8; SDS *= 2) {
				job.earthquake.SDS = SDS;
				const struct pass *p = judged(run(&job));
				double rafter = 0;

				for (int i = 0; i < p->rafters; i++)
					rafter = fmax(rafter, p->rafter[i].ratio_after);
				assert_true(rafter >= last_rafter);
				assert_true(p->line[0].ratio >= last_rail);
				last_rafter = rafter;
				last_rail = p->line[0].ratio;
			}
		}
}

/* On a rack the force acts in the middle of the collector, zc over the roof: a couple Ft zc that
   the two lines of feet, s apart, take as +/- Ft zc/s; nothing of it is lost (statics). 5 ft long
   at 20 degrees on a flat roof. */
static void test_quake_rack(void **state)
{
	struct job job = dense();
	double last = 0;

	(void)state;
	job.building.form = FORM_FLAT;
	job.building.length = job.building.width = FT(60);
	job.building.eave_overhang = job.building.rake_overhang = 0;
	job.roof.pitch = 1 * RAD_PER_DEG;
	strcpy(job.roof.covering, "modified-bitumen");
	job.framing.span = FT(12);
	job.collector.length = FT(5);
	job.collector.left = job.collector.lower = FT(26);
	job.collector.clearance = FT(1);
	job.collector.tilt = 20 * RAD_PER_DEG;
	job.origin[FIELD_COLLECTOR_TILT] = ORIGIN_FILE;
	for (double SDS = 0.5; SDS <= 4; SDS *= 2) {
		job.earthquake.SDS = SDS;
		const struct result *r = run(&job);
		const struct pass *p = judged(r);
		const struct attachment *low = &p->attachment[p->line[0].first],
					*high = &p->attachment[p->line[1].first];
		const double turn = 20 * RAD_PER_DEG, Lp = FT(5), s = (Lp - IN(32)) * cos(turn);
		const double zc = FT(1) + Lp / 2 * sin(turn) + IN(3.5) / 2 * cos(turn);

		assert_true(r->quake.known);
		assert_true(has(r, REMARK_SEISMIC_RACK));
		assert_near(low->tip * low->tributary_depth, Lp * zc / s, 1e-9);
		assert_near(high->tip * high->tributary_depth, -Lp * zc / s, 1e-9);
		assert_true(p->ratio >= last);
		last = p->ratio;
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_quake_rafter),
		cmocka_unit_test(test_quake_rail),
		cmocka_unit_test(test_quake_partial_rail),
		cmocka_unit_test(test_quake_partial_rafter),
		cmocka_unit_test(test_quake_partial_governs),
		cmocka_unit_test(test_quake_grows),
		cmocka_unit_test(test_quake_rack),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
