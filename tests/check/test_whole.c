/* SPDX-License-Identifier: MIT */
/* Rafters as one beam over all their supports: snow in the patterns of ASCE/SEI 7 7.5 by hand and
   by slope deflection, a second method; tails with wind on the overhang. */
#include <math.h>
#include <string.h>

#include "check/load_case.h"
#include "check/rafter_load.h"
#include "check/rafter_mesh.h"
#include "check/rafter_whole.h"
#include "check/rail_pattern.h"
#include "sample_rafter.h"
#include "sample_run.h"

/* Moments at the supports under `snow` (Pa on plan), less off[] on each piece. */
static struct beam_forces solved(struct context *c, const struct rafter_whole *w, double snow,
				 const double off[])
{
	static struct pass none;
	const struct load_combination S = {.text = "S", .S = 1};
	const struct rafter_case k = {.k = &S, .roof_snow = snow, .snow_case = -1};
	struct whole_beam b;
	struct beam_forces f;

	assert_true(rafter_whole_load(c, &none, w, k, off, 0, &b));
	assert_true(beam_solve(&b.beam, &f));
	/* the mesh takes the same loads by another way */
	struct rafter_stage stage;
	struct beam_forces again;

	assert_true(rafter_stage_whole(c, &none, w, false, &stage));
	rafter_stage_solve_whole(c, &stage, &k, off, 0, &b, &again);
	for (int i = 0; i < w->supports; i++) {
		assert_within(again.moment[i], f.moment[i], 1e-9 * fabs(f.load));
		assert_within(again.reaction[i], f.reaction[i], 1e-9 * fabs(f.load));
	}
	return f;
}

/* Two spans of 4 and 2 m on plan, tails of 1 m: with w on a piece, M = -w/2 over each wall, and by
   the three-moment equation M0 4 + 2 M1 (4 + 2) + M2 2 = -(w1 4^3 + w2 2^3)/4, whatever the slope
   (the moment of a vertical load is that of the plan). */
static void test_by_hand(void **state)
{
	static const double part[][4] = {{1, 1, 1, 1},
					 {1, 0.5, 0.5, 0.5},
					 {0.5, 1, 1, 1},
					 {0.5, 1, 1, 0.5},
					 {1, 0.5, 0.5, 1}};
	static struct context c;
	static struct result r;

	(void)state;
	for (int slope = 0; slope <= 30; slope += 15)
		for (size_t k = 0; k < sizeof part / sizeof *part; k++) {
			const struct job job = bare(4, 6, 1);
			struct rafter_whole whole;
			double off[4];

			lay(&c, &r, &job, slope * RAD_PER_DEG, &whole);
			assert_int_equal(whole.pieces, 4);
			assert_int_equal(whole.supports, 3);
			for (int i = 0; i < 4; i++)
				off[i] = 1 - part[k][i];
			const double w = 1000 * whole.piece[0].width;
			const struct beam_forces f = solved(&c, &whole, 1000, off);
			const double M0 = -part[k][0] / 2, M2 = -part[k][3] / 2;
			const double M1 =
				(-(part[k][1] * 64 + part[k][2] * 8) / 4 - 4 * M0 - 2 * M2) / 12;

			assert_near(f.moment[0], w * M0, 1e-9);
			assert_near(f.moment[1], w * M1, 1e-9);
			assert_near(f.moment[2], w * M2, 1e-9);
		}
}

/* Slope deflection: unknown rotations at n supports, EI 1; fixed-end moments w L^2/12; a tail hands
   its moment to the joint. Gauss elimination on the full matrix. Fills the moments at the supports,
   sagging positive. */
static void slope_deflection(int n, const double *L, const double *w, double tail0, double tail1,
			     double *M)
{
	double K[8][9] = {{0}};

	for (int i = 0; i + 1 < n; i++) {
		const double k = 1 / L[i], F = w[i] * L[i] * L[i] / 12;

		K[i][i] += 4 * k;
		K[i][i + 1] += 2 * k;
		K[i + 1][i] += 2 * k;
		K[i + 1][i + 1] += 4 * k;
		K[i][n] += F; /* clockwise on the left end is what the load turns it by */
		K[i + 1][n] -= F;
	}
	K[0][n] -= tail0;
	K[n - 1][n] += tail1;
	for (int p = 0; p < n; p++)
		for (int i = p + 1; i < n; i++) {
			const double q = K[i][p] / K[p][p];

			for (int j = p; j <= n; j++)
				K[i][j] -= q * K[p][j];
		}
	double turn[8];

	for (int i = n - 1; i >= 0; i--) {
		turn[i] = K[i][n];
		for (int j = i + 1; j < n; j++)
			turn[i] -= K[i][j] * turn[j];
		turn[i] /= K[i][i];
	}
	for (int i = 0; i + 1 < n; i++) {
		const double F = w[i] * L[i] * L[i] / 12;

		M[i] = -(F - (4 * turn[i] + 2 * turn[i + 1]) / L[i]);
		M[i + 1] = -(F + (2 * turn[i] + 4 * turn[i + 1]) / L[i]);
	}
}

/* Every pattern of 7.5 on rafters of 2 to 5 spans, the last one shorter, against slope deflection.
 */
static void test_second_method(void **state)
{
	static struct context c;
	static struct result r;

	(void)state;
	for (int spans = 2; spans <= 5; spans++) {
		const struct job job = bare(3, 3 * spans - 1.2, 0.8);
		struct rafter_whole whole;
		double factor[WHOLE_PIECES];

		lay(&c, &r, &job, 20 * RAD_PER_DEG, &whole);
		assert_int_equal(whole.pieces, spans + 2);
		for (int p = 0; span_pattern(p, whole.pieces, factor); p++) {
			double off[WHOLE_PIECES], L[8], w[8], M[8];
			const double load = 1500 * whole.piece[0].width;

			for (int i = 0; i < whole.pieces; i++)
				off[i] = 1 - factor[i];
			for (int i = 0; i < spans; i++) {
				L[i] = i + 1 < spans ? 3 : 1.8;
				w[i] = load * factor[i + 1];
			}
			slope_deflection(spans + 1, L, w, load * factor[0] * 0.32,
					 load * factor[spans + 1] * 0.32, M);
			const struct beam_forces f = solved(&c, &whole, 1500, off);

			for (int i = 0; i <= spans; i++)
				assert_near(f.moment[i], M[i], 1e-9);
		}
	}
}

/* The cases of 7.5.1 by their count: two ways at either end, n - 1 pairs, two of full and half by
 * turns. */
static void test_patterns(void **state)
{
	double factor[8];

	(void)state;
	for (int spans = 2; spans <= 6; spans++) {
		int n = 0, pairs = 0;

		for (; span_pattern(n, spans, factor); n++) {
			int full = 0;

			for (int i = 0; i < spans; i++) {
				assert_true(factor[i] >= 0.5 && factor[i] <= 1);
				full += factor[i] >= 1;
			}
			pairs += n >= 4 && n < 4 + spans - 1 && full == 2;
			assert_true(span_pattern_text(n, spans)[0] != '\0');
		}
		assert_int_equal(n, 4 + (spans - 1) + 2);
		assert_int_equal(pairs, spans - 1);
	}
}

static struct job continuous(void)
{
	struct job job = snowy();

	job.framing.span = FT(7);
	strcpy(job.framing.grade, "Select Structural");
	return job;
}

static int rated(const struct result *r, enum check_id id)
{
	int n = 0;

	for (int i = 0; i < judged(r)->rafters; i++)
		n += judged(r)->rafter[i].after[id].rated;
	return n;
}

/* Gables from 2.38 to 30.2 degrees are spared (7.5, from memory): at, below and above either limit;
 * a monoslope never. */
static void test_where_spared(void **state)
{
	static const struct {
		enum roof_form form;
		double deg;
		bool spared;
	} row[] = {{FORM_GABLE, 2.37, false},  {FORM_GABLE, 2.38, true},
		   {FORM_GABLE, 22, true},     {FORM_GABLE, 30.2, true},
		   {FORM_GABLE, 30.21, false}, {FORM_MONOSLOPE, 22, false},
		   {FORM_FLAT, 2.38, false},   {FORM_HIP, 22, false}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		struct context c = {.theta = row[i].deg * RAD_PER_DEG};
		struct job job = continuous();

		job.building.form = row[i].form;
		c.job = &job;
		assert_int_equal(rafter_partial_spared(&c), row[i].spared);
	}
	struct job job = continuous();

	assert_int_equal(rated(run(&job), CHECK_RAFTER_PARTIAL), 0);
	assert_true(has(run(&job), REMARK_PARTIAL_SPARED));
	job.roof.pitch = 31 * RAD_PER_DEG;
	const struct result *r = run(&job);

	assert_int_equal(rated(r, CHECK_RAFTER_PARTIAL), judged(r)->rafters);
	assert_true(has(r, REMARK_PARTIAL_RAFTER));
	assert_false(has(r, REMARK_PARTIAL_SPARED));
	job.framing.span = FT(14); /* one span */
	assert_int_equal(rated(run(&job), CHECK_RAFTER_PARTIAL), 0);
	job.site.ground_snow = 0;
	job.framing.span = FT(7);
	assert_int_equal(rated(run(&job), CHECK_RAFTER_PARTIAL), 0);
}

/* More snow never eases it. */
static void test_partial_grows(void **state)
{
	struct job job = continuous();
	double last = 0;

	(void)state;
	job.building.form = FORM_MONOSLOPE;
	job.building.width = FT(14);
	for (int pg = 20; pg <= 80; pg += 20) {
		job.site.ground_snow = PSF(pg);
		const struct result *r = run(&job);

		assert_true(judged(r)->rafters > 0);
		const double now = judged(r)->rafter[0].after[CHECK_RAFTER_PARTIAL].ratio;

		assert_true(now >= last && now > 0);
		last = now;
	}
}

/* ASCE/SEI 7-10, gable of 5:12: the net coefficient of an overhang in zone 2 is -2.2 whatever the
   area (Fig. 30.4-2B), that of the roof there -1.7 to -1.2. A rafter in the middle of the array has
   its tail all covered: the collectors take the top, the tail the rest, and 0.6 of both the wind
   and its own weight. */
static void test_tail_uplift(void **state)
{
	struct job job = dense();

	(void)state;
	job.site.code = ASCE7_10;
	job.site.wind_speed = MPH(150);
	job.roof.dead_load = PSF(2); /* so that the lift governs */
	job.building.eave_overhang = IN(24);
	job.collector.lower = 0;
	job.collector.left = FT(14);
	job.collector.columns = 3;
	job.rail.lower_inset = FT(3); /* past the tail of 26 in */
	const struct result *r = run(&job);
	const double cosine = cos(job.roof.pitch), a = IN(24) / cosine;
	int looked = 0;

	assert_true(has(r, REMARK_TAIL));
	assert_true(has(r, REMARK_OVERHANG_ARRAY));
	for (int i = 0; i < judged(r)->rafters; i++) {
		const struct rafter_result *f = &judged(r)->rafter[i];
		const double x = r->frame_x[f->rafter], width = IN(16), A = a * fmax(width, a / 3);

		if (x - width / 2 < r->array.x0 || x + width / 2 > r->array.x1)
			continue;
		const double roof = -1.7 + 0.5 * fmax(0, log10(A / (FT(1) * FT(10))));
		const double w = 0.6 * r->wind.qh * (2.2 + roof) * width -
				 0.6 * job.roof.dead_load * cosine * width;
		const double S = IN(1.5) * IN(3.5) * IN(3.5) / 6;

		assert_true(f->tail);
		assert_string_equal(f->after[CHECK_RAFTER_TAIL].combination, "0.6D + 0.6W");
		assert_near(f->after[CHECK_RAFTER_TAIL].demand, fabs(w) * a * a / 2 / S, 1e-9);
		looked++;
	}
	assert_true(looked > 2);
}

/* The end of a tail a long beside a span L, the tail alone loaded: w a^3 (4 L + 3 a)/(24 EI), E 1.4
   million psi (SPF No.2), against 2 a/180 (IRC Table R301.7, note b). Before the array, roof live
   load on plan. */
static void test_tail_bow(void **state)
{
	struct job job = dense();

	(void)state;
	job.building.eave_overhang = IN(24);
	job.framing.span = job.building.width / 2;
	job.collector.lower = 0;
	const struct result *r = run(&job);
	const double cosine = cos(job.roof.pitch), a = IN(24) / cosine,
		     L = job.framing.span / cosine;
	const double EI = 1.4e6 * LB(1) / (IN(1) * IN(1)) * IN(1.5) * pow(IN(5.5), 3) / 12;
	int looked = 0;

	for (int i = 0; i < judged(r)->rafters; i++) {
		const struct check_value v = judged(r)->rafter[i].before[CHECK_RAFTER_TAIL_BOW];
		const double w = r->Lr * IN(16) * cosine * cosine;

		if (!judged(r)->rafter[i].tail)
			continue;
		assert_true(v.rated);
		assert_near(v.capacity, 2 * a / 180, 1e-9);
		assert_near(v.demand, w * a * a * a * (4 * L + 3 * a) / (24 * EI), 1e-9);
		looked++;
	}
	assert_true(looked > 0);
}

/* On a rafter that no collector covers the tail feels all of it; out there alone the array loads
 * none. */
static void test_tail_only_where_loaded(void **state)
{
	struct job job = dense();

	(void)state;
	assert_false(has(run(&job), REMARK_TAIL));
	job.building.eave_overhang = IN(30);
	job.collector.lower = IN(20);
	assert_true(has(run(&job), REMARK_TAIL));
	assert_true(has(run(&job), REMARK_TAIL_LONG)); /* 30 in without a measured depth */
	job.framing.tail_depth = IN(4);
	assert_false(has(run(&job), REMARK_TAIL_LONG));
	const double four = judged(run(&job))->rafter[0].after[CHECK_RAFTER_TAIL].demand;

	job.framing.tail_depth = IN(3.5);
	assert_near(judged(run(&job))->rafter[0].after[CHECK_RAFTER_TAIL].demand, four * 16 / 12.25,
		    1e-6);
}

/* Net coefficients that the user read replace the figure of one source, which is named without
 * them. */
static void test_tail_entered(void **state)
{
	static const char *const zones[] = {"1", "2e", "2n", "2r", "3e", "3r", "down"};
	struct job job = dense();

	(void)state;
	job.building.eave_overhang = IN(20);
	job.collector.lower = IN(4);
	job.rail.lower_inset = FT(3);
	for (int i = 0; i < 7; i++) {
		struct job_coefficient *k = &job.coefficient[job.coefficients++];

		strcpy(k->zone, zones[i]);
		k->GCp = i == 6 ? 0.5 : -1.5;
		k->area = 0.1;
		strcpy(k->source, "invented page");
	}
	const struct result *r = run(&job);

	assert_int_equal(r->passes, 1);
	assert_true(has(r, REMARK_COEFFICIENT_ONE_SOURCE));
	for (int i = 0; i < 3; i++) {
		static const char *const over[] = {"oh2e", "oh3e", "oh1"};
		struct job_coefficient *k = &job.coefficient[job.coefficients++];

		strcpy(k->zone, over[i]);
		k->GCp = -2.5;
		k->area = 0.1;
		strcpy(k->source, "invented page");
	}
	r = run(&job);
	assert_int_equal(r->passes, 1);
	assert_false(has(r, REMARK_COEFFICIENT_ONE_SOURCE));
	assert_true(has(r, REMARK_TAIL));
}

/* A drift by the book takes the place of the computed one, none too; the limits that forbid one do
 * not touch it. */
static void test_drift_entered(void **state)
{
	struct job job = snowy();

	(void)state;
	const double even = judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio;

	assert_true(has(run(&job), REMARK_NO_DRIFT)); /* 8 ft 1 in of side */
	job.snow.drift_load = PSF(25);
	job.snow.drift_width = FT(5);
	strcpy(job.snow.drift_source, "invented page");
	const struct result *r = run(&job);

	assert_true(has(r, REMARK_DRIFT_ENTERED));
	assert_false(has(r, REMARK_NO_DRIFT));
	assert_near(r->snow.snow[r->snow.cases - 1].beside, PSF(25), 1e-12);
	assert_near(r->snow.snow[r->snow.cases - 1].beside_length, FT(5), 1e-12);
	assert_true(judged(r)->rafter[0].after[CHECK_RAFTER_BENDING].ratio >= even);
	job.snow.drift_load = 0;
	assert_near(judged(run(&job))->rafter[0].after[CHECK_RAFTER_BENDING].ratio, even, 1e-12);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_by_hand),       cmocka_unit_test(test_second_method),
		cmocka_unit_test(test_patterns),      cmocka_unit_test(test_where_spared),
		cmocka_unit_test(test_partial_grows), cmocka_unit_test(test_tail_uplift),
		cmocka_unit_test(test_tail_bow),      cmocka_unit_test(test_tail_only_where_loaded),
		cmocka_unit_test(test_tail_entered),  cmocka_unit_test(test_drift_entered),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
