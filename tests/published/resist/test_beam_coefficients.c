/* SPDX-License-Identifier: MIT */
/* Uniform load on equal spans: the coefficients of elastic beam theory as handbooks print them
   (also in the Aluminum Design Manual 2015, Part VI, beam formulas), and the bending strength of
   rail alloys (Aluminum Design Manual 2015, Part I, Tables A.3.3; one copy). Tolerance:
   half the last printed digit. */
#include "near.h"
#include "resist/aluminium.h"
#include "resist/beam.h"
#include "us.h"

static void equal_spans(void **state)
{
	static const struct {
		size_t spans;
		double M_pos, M_neg, R_end, R_max, bow;
	} row[] = {
		{ 1, 0.1250, 0.0, 0.5000, 0.5000, 0.01302 },
		{ 2, 0.0703, -0.1250, 0.3750, 1.2500, 0.00542 },
		{ 3, 0.0800, -0.1000, 0.4000, 1.1000, 0.00688 },
		{ 4, 0.0772, -0.1071, 0.3929, 1.1429, 0.00646 }, /* elsewhere rounded to 0.0065 */
	};
	static const double support[] = { 0, 1, 2, 3, 4 };

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double L = (double)row[i].spans;
		const struct beam_uniform u = { 0.0, L, 1.0 };
		const struct beam b = { .start = 0.0,
			                .end = L,
			                .supports = row[i].spans + 1,
			                .support = support,
			                .uniforms = 1,
			                .uniform = &u };
		struct beam_forces f;
		struct beam_bow bow;
		double R_max = 0.0;

		assert_true(beam_solve(&b, &f));
		beam_deflect(&b, &f, 1.0, &bow);
		for (size_t k = 0; k <= row[i].spans; k++)
			R_max = fmax(R_max, f.reaction[k]);
		assert_within(f.sagging.value, row[i].M_pos, 5e-5);
		assert_within(f.hogging.value, row[i].M_neg, 5e-5);
		assert_within(f.reaction[0], row[i].R_end, 5e-5);
		assert_within(R_max, row[i].R_max, 5e-5);
		assert_within(bow.span.value, row[i].bow, 5e-6);
	}
}

/* Far from the ends of many spans: 1/24, 1/12, 1.0, 1/384. */
static void many_spans(void **state)
{
	double support[41];
	const struct beam_uniform u = { 0.0, 40.0, 1.0 };
	const struct beam b = { .start = 0.0,
		                .end = 40.0,
		                .supports = 41,
		                .support = support,
		                .uniforms = 1,
		                .uniform = &u };
	struct beam_forces f;

	(void)state;
	for (int i = 0; i < 41; i++)
		support[i] = i;
	assert_true(beam_solve(&b, &f));
	assert_within(beam_moment_at(&b, &f, 20.5), 0.0417, 5e-5);
	assert_within(f.moment[20], -0.0833, 5e-5);
	assert_within(f.reaction[20], 1.0, 5e-5);
}

static void alloys(void **state)
{
	static const struct {
		const char *alloy;
		double yield_ksi, rupture_ksi;
	} row[] = {
		{ "6005-T5", 21.2, 15.6 },   { "6105-T5", 21.2, 15.6 }, { "6005A-T61", 21.2, 19.5 },
		{ "6061-T6", 21.2, 19.5 },   { "6063-T5", 9.7, 11.3 },  { "6063-T6", 15.2, 15.4 },
	};
	struct rail_alloy a;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		assert_true(rail_alloy_find(row[i].alloy, &a));
		assert_within(TO_PSI(a.Fty) / 1.65 / 1000.0, row[i].yield_ksi, 0.05);
		assert_within(TO_PSI(rail_allowable_stress(NULL, &a)) / 1000.0,
		              fmin(row[i].yield_ksi, row[i].rupture_ksi), 0.05);
		assert_near(TO_PSI(a.E), 10.1e6, 1e-12);
	}
	/* 0.5 in3 at 15.59 ksi: 7795 lb in */
	assert_true(rail_alloy_find("6005-T5", &a));
	assert_within(TO_INCH_POUND(rail_allowable_moment(NULL, 0.5 * pow(M_PER_IN, 3),
	                                                  rail_allowable_stress(NULL, &a))),
	              0.5 * 38000.0 / (1.25 * 1.95), 1e-6);
	assert_false(rail_alloy_find("steel", &a));
	assert_false(rail_alloy_find("", &a));
}

int main(void)
{
	const struct CMUnitTest tests[] = { cmocka_unit_test(equal_spans),
		                            cmocka_unit_test(many_spans),
		                            cmocka_unit_test(alloys) };

	return cmocka_run_group_tests(tests, NULL, NULL);
}
