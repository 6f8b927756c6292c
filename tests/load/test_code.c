/* SPDX-License-Identifier: MIT */
/* The codes, and their combinations: each factor against what the combination's own text says. */
#include "near.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#include "load/loading_code.h"

static void codes(void **state)
{
	static const char *const key[] = {"asce7-10", "asce7-16", "asce7-22"};
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};

	(void)state;
	for (size_t i = 0; i < 3; i++) {
		const struct loading_code *code = loading_code_find(key[i]);

		assert_non_null(code);
		assert_ptr_equal(code, loading_code_of(edition[i]));
		assert_int_equal(code->edition, edition[i]);
		assert_true(code->wind_velocity && code->wind_coefficient &&
			    code->internal_coefficient && code->roof_pressure &&
			    code->array_pressure && code->snow_loads && code->combinations);
	}
	assert_false(loading_code_of(ASCE7_10)->solar_provision);
	assert_true(loading_code_of(ASCE7_16)->solar_provision);
	assert_true(loading_code_of(ASCE7_22)->solar_provision);
	assert_int_equal(loading_code_of(ASCE7_16)->ground_snow, GROUND_SNOW_SERVICE);
	assert_int_equal(loading_code_of(ASCE7_22)->ground_snow, GROUND_SNOW_STRENGTH);
	assert_null(loading_code_of(EDITION_ANY));
	assert_null(loading_code_find("asce7-05"));
	assert_null(loading_code_find("ASCE7-16"));
}

/* Reads "D + 0.75(0.6W) - 0.7Ev" into factors; E stands for Ev and Eh, whose signs the text does
   not tell. */
static struct load_effect factors(const char *text)
{
	struct load_effect f = {0};
	const char *p = text;

	while (*p != '\0') {
		double k = 1.0;

		for (; *p == ' ' || *p == '+' || *p == '-'; p++)
			if (*p == '-')
				k = -k;
		while (isdigit((unsigned char)*p)) {
			char *end;

			k *= strtod(p, &end);
			p = end + (*end == '(');
		}
		if (strncmp(p, "Lr", 2) == 0)
			f.Lr += k;
		else if (strncmp(p, "Ev", 2) == 0)
			f.Ev += k;
		else if (strncmp(p, "Eh", 2) == 0)
			f.Eh += k;
		else if (*p == 'E')
			f.Ev = f.Eh = k;
		else if (*p == 'D')
			f.D += k;
		else if (*p == 'S')
			f.S += k;
		else if (*p == 'W')
			f.W += k;
		else
			fail_msg("%s: %s is no load", text, p);
		while (isalpha((unsigned char)*p) || *p == ')')
			p++;
	}
	return f;
}

/* NDS Table 2.3.2: the shortest load in the combination. */
static double duration(const struct load_combination *c)
{
	if (c->W > 0.0 || c->Eh > 0.0)
		return 1.6;
	if (c->Lr > 0.0)
		return 1.25;
	return c->S > 0.0 ? 1.15 : 0.9;
}

static void factors_follow_the_text(void **state)
{
	static const enum edition edition[] = {ASCE7_10, ASCE7_16, ASCE7_22};

	(void)state;
	for (size_t e = 0; e < 3; e++) {
		for (int method = COMBINATION_ASD; method <= COMBINATION_LRFD; method++) {
			struct load_combination c[COMBINATION_MAX];
			const int n = asce7_combinations(edition[e],
							 (enum combination_method)method, true, c);
			int ups = 0, seismic = 0;

			assert_true(n >= 6);
			for (int i = 0; i < n; i++) {
				const struct load_effect f = factors(c[i].text);

				assert_row(c[i].text, c[i].D, f.D, 1e-12);
				assert_row(c[i].text, c[i].Lr, f.Lr, 1e-12);
				assert_row(c[i].text, c[i].S, f.S, 1e-12);
				assert_row(c[i].text, c[i].W, f.W, 1e-12);
				assert_row(c[i].text, fabs(c[i].Ev), fabs(f.Ev), 1e-12);
				assert_row(c[i].text, c[i].Eh, f.Eh, 1e-12);
				/* a vertical earthquake that helps to lift counts with 0.6D or 0.9D
				 */
				if (c[i].Eh > 0.0)
					assert_true(c[i].D < 1.0 ? c[i].Ev < 0.0 : c[i].Ev > 0.0);
				if (method == COMBINATION_ASD)
					assert_row(c[i].text, c[i].CD, duration(&c[i]), 1e-12);
				else
					assert_true(isnan(c[i].CD) && c[i].lambda > 0.5);
				assert_non_null(strstr(c[i].clause, edition[e] == ASCE7_10 ? "7-10"
								    : edition[e] == ASCE7_16
									    ? "7-16"
									    : "7-22"));
				ups += c[i].use == COMBINATION_UPLIFT;
				seismic += c[i].use == COMBINATION_SEISMIC;
				if (c[i].use == COMBINATION_UPLIFT)
					assert_true(c[i].D < 1.0 && c[i].W > 0.0);
			}
			assert_int_equal(ups, 1);
			assert_true(seismic >= 2);
			assert_int_equal(asce7_combinations(edition[e],
							    (enum combination_method)method, false,
							    c),
					 n - seismic);
		}
	}
}

/* What each edition asks of snow alone: ASD 1.0S, in 7-22 0.7S; LRFD 1.6S and 1.0S. */
static void snow_factors(void **state)
{
	static const struct {
		enum edition edition;
		enum combination_method method;
		double S;
	} row[] = {
		{ASCE7_10, COMBINATION_ASD, 1.0},  {ASCE7_16, COMBINATION_ASD, 1.0},
		{ASCE7_22, COMBINATION_ASD, 0.7},  {ASCE7_10, COMBINATION_LRFD, 1.6},
		{ASCE7_16, COMBINATION_LRFD, 1.6}, {ASCE7_22, COMBINATION_LRFD, 1.0},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct load_combination c[COMBINATION_MAX];
		const int n = asce7_combinations(row[i].edition, row[i].method, false, c);
		double largest = 0.0;

		for (int k = 0; k < n; k++)
			largest = fmax(largest, c[k].S);
		assert_near(largest, row[i].S, 1e-12);
	}
}

static void no_combinations(void **state)
{
	struct load_combination c[COMBINATION_MAX];

	(void)state;
	assert_int_equal(asce7_combinations(EDITION_ANY, COMBINATION_ASD, true, c), 0);
}

static void sums(void **state)
{
	const struct load_combination c = {
		.D = 1.0, .Lr = 2.0, .S = 3.0, .W = 4.0, .Ev = -5.0, .Eh = 6.0};

	(void)state;
	assert_near(combination_sum(&c, &(struct load_effect){1.0, 10.0, 100.0, -1000.0, 1e4, 1e5}),
		    1.0 + 20.0 + 300.0 - 4000.0 - 5e4 + 6e5, 1e-15);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(codes),        cmocka_unit_test(factors_follow_the_text),
		cmocka_unit_test(snow_factors), cmocka_unit_test(no_combinations),
		cmocka_unit_test(sums),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
