/* SPDX-License-Identifier: MIT */
/* Values, remarks and formulas in words. Expected texts are worked out by hand from the exact
   definitions of the units. */
#include <math.h>
#include <string.h>

#include "near.h"
#include "report/check_part.h"
#include "report/step_report.h"
#include "report/step_text.h"
#include "sample.h"

static struct document *d;

static int set_up(void **state)
{
	(void)state;
	d = document_create(NULL);
	return d ? 0 : -1;
}

static int tear_down(void **state)
{
	(void)state;
	document_destroy(d);
	return 0;
}

static struct format in(enum unit_system units)
{
	return (struct format){ .document = d, .units = units };
}

static void test_show(void **state)
{
	(void)state;
	const struct format us = in(SYSTEM_US), si = in(SYSTEM_SI);
	const double psf = N_PER_LBF / (M_PER_FT * M_PER_FT);

	assert_string_equal(show(&us, 17.41 * psf, UNIT_PSF), "17.4" NBSP "psf");
	/* 17.41 psf = 833.59 Pa */
	assert_string_equal(show(&si, 17.41 * psf, UNIT_PSF), "0.834" NBSP "kPa");
	assert_string_equal(show(&us, NAN, UNIT_PSF), "not known");
	assert_string_equal(show_number(&us, 230.001 * N_PER_LBF, UNIT_LB, SHOW_UP), "231");
	assert_string_equal(show_number(&us, 230.999 * N_PER_LBF, UNIT_LB, SHOW_DOWN), "230");
	/* 1.4e6 psi = 9652.66 MPa: five digits are enough */
	assert_string_equal(show(&si, 1.4e6 * 144.0 * psf, UNIT_PSI), "9652.7" NBSP "MPa");
	assert_string_equal(show_ratio(&us, 1.0001), "1.01");
	assert_string_equal(show_ratio(&us, 1.0), "1.00");
	assert_string_equal(show_ratio(&us, NAN), "not checked");
	assert_string_equal(show_tape(&us, 12.125 * M_PER_FT),
	                    "12" NBSP "ft" NBSP "1-1/2" NBSP "in");
	assert_string_equal(show_tape(&si, 4.128), "4128" NBSP "mm");
	assert_string_equal(show_significant(&us, 0.0024999, 3), "0.0025");
	assert_string_equal(show_significant(&us, 1450000.0, 4), "1450000");
	assert_string_equal(show_significant(&us, 0.0, 4), "0");
	/* 0.281 in = 7.1374 mm: a thousandth of an inch is about a fortieth of a millimetre */
	assert_string_equal(show_decimals(&si, 0.281 * M_PER_IN, UNIT_IN, 3), "7.1" NBSP "mm");
	assert_string_equal(show_decimals(&si, 17.41 * psf, UNIT_PSF, 1), "0.834" NBSP "kPa");
}

static void test_remark(void **state)
{
	(void)state;
	const struct format us = in(SYSTEM_US), si = in(SYSTEM_SI);
	const struct remark height = { .id = REMARK_HEIGHT, .value = { 62.0 * M_PER_FT } };
	const struct remark ratio = { .id = REMARK_RATIO,
		                      .value = { 7.0, 1.004 },
		                      .text = { "pull", "D + S" } };
	const struct remark none = { .id = REMARK_UNCHECKED_RAFTER };

	assert_non_null(strstr(remark_text(&us, &height), "62.0" NBSP "ft"));
	assert_non_null(strstr(remark_text(&si, &height), "18.90" NBSP "m"));
	/* A ratio is never printed smaller than it is. */
	assert_string_equal(remark_text(&us, &ratio),
	                    "Pull at attachment 7: 1.01 of what is allowed (D + S).");
	assert_string_equal(remark_text(&us, &none), "The rafter: not known");
}

/* Every check and link has words that fit a table, and its own. */
static void test_names(void **state)
{
	(void)state;
	const struct format us = in(SYSTEM_US);

	for (int i = 0; i < CHECK_COUNT; i++) {
		const char *words = check_short((enum check_id)i);

		if (!words || strlen(words) > 18)
			fail_msg("no short words for: %s", check_words((enum check_id)i));
	}
	for (int i = 0; i < LINK_COUNT; i++) {
		assert_string_equal(link_place(&us, (enum link)i, 0), "");
		assert_non_null(strstr(link_place(&us, (enum link)i, 7), NBSP "7"));
	}
}

static void test_templates(void **state)
{
	(void)state;
	for (int i = 0; i < REMARK_COUNT; i++) {
		const char *template = remark_template((enum remark_id)i);

		if (!remark_template_valid(template))
			fail_msg("place that cannot be filled: %s", template);
	}
	assert_false(remark_template_valid("{0 furlong 1}"));
	assert_false(remark_template_valid("{3 in}"));
	assert_false(remark_template_valid("{0}"));
	assert_false(remark_template_valid("{t0 in}"));
	assert_false(remark_template_valid("{0 in"));
	assert_true(remark_template_valid("{0 kN/m2 3} {t2} {1 -} {2 %} {code}"));
	assert_false(remark_template_valid("{code 1}"));
}

/* A clause is that of the job's edition. */
static void test_edition_in_words(void **state)
{
	static const char *const name[EDITION_COUNT] = { "(ASCE/SEI 7 26.8", "(ASCE/SEI 7-10 26.8", "(ASCE/SEI 7-16 26.8",
		                                         "(ASCE/SEI 7-22 26.8" };
	const struct remark m = { .id = REMARK_TOPOGRAPHY };

	(void)state;
	for (int e = EDITION_ANY; e < EDITION_COUNT; e++) {
		const struct format f = { .document = d, .units = SYSTEM_US, .code = (enum edition)e };

		assert_non_null(strstr(remark_text(&f, &m), name[e]));
	}
}

static const char *put_in(const char *formula, const struct step_var *var, size_t n,
                          const char *const *value, unsigned *shown)
{
	static const struct format empty;
	struct format f = empty;
	struct step s = { .name = "x", .formula = formula };

	f.document = d;
	for (size_t i = 0; i < n; i++)
		s.in[i] = var[i];
	return step_text_put_in(&f, &s, value, shown);
}

static void test_formula(void **state)
{
	(void)state;
	static const struct step_var var[] = {
		{ "D", UNIT_NONE, "" },     { "W'", UNIT_NONE, "" }, { "W'p", UNIT_NONE, "" },
		{ "theta", UNIT_NONE, "" }, { "n", UNIT_NONE, "" },  { "F*b", UNIT_NONE, "" },
		{ "Fb", UNIT_NONE, "" },
	};
	static const char *const value[] = { "0.5", "200", "820", "22.6", "8", "1500", "-3" };
	static const struct {
		const char *formula, *want;
		unsigned shown;
	} row[] = {
		{ "1800 D^1.5", "1800 x 0.5^1.5", 1 },
		{ "W' W'p", "200 x 820", 6 },
		{ "D cos theta", "0.5 x cos 22.6", 9 },
		{ "D cos^2 theta", "0.5 x cos^2 22.6", 9 },
		{ "D tan(theta)^(1/2)", "0.5 x tan(22.6)^(1/2)", 9 },
		{ "m (1 - m^2n)", "m x (1 - m^(2 x 8))", 16 },
		{ "(D + F*b)(D - Fb)", "(0.5 + 1500) x (0.5 - (-3))", 97 },
		{ "min(D, 3), at least 0", "min(0.5, 3), at least 0", 1 },
		{ "5 if D < 3 and theta > 2, else 0", "5 if 0.5 < 3 and 22.6 > 2, else 0", 9 },
		{ "k1 D/Dr, k1 = 2 D", "k1 x 0.5/Dr, k1 = 2 x 0.5", 1 },
		{ "Table 5", NULL, 0 }, /* nothing to put in: not printed */
	};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		unsigned shown = 99;
		const char *got =
			put_in(row[i].formula, var, sizeof var / sizeof *var, value, &shown);

		if (row[i].want)
			assert_string_equal(got, row[i].want);
		assert_int_equal(shown, row[i].shown);
	}
}

static void test_step_line(void **state)
{
	(void)state;
	const double V = 115.0 * M_PER_MI / 3600.0, psf = N_PER_LBF / (M_PER_FT * M_PER_FT);
	const double values[] = { 0.605, 1.0, 0.85, 1.0, V };
	const struct format si = in(SYSTEM_SI);
	/* 0.00256 x 0.605 x 0.85 x 115^2 = 17.4103..., in psf; x 47.880259 = 833.6 Pa */
	const struct step_line line =
		step_text_line(&si, &sample_step_pressure, values, 17.41033 * psf, ASCE7_16);

	assert_string_equal(line.values, "0.00256 x 0.605 x 1 x 0.85 x 1 x 115^2");
	assert_string_equal(line.result, "17.41" NBSP "psf (0.8336" NBSP "kPa)");
	assert_string_equal(line.clause, "ASCE/SEI 7-16 Eq. 26.10-1");
	assert_string_equal(line.status, "one source: seen once");
	assert_string_equal(line.where, "");
}

static double constant(const double *unused)
{
	(void)unused;
	return 1.00004;
}

static void test_step_shown_apart(void **state)
{
	(void)state;
	const struct step s = { .name = "x",
		                .symbol = "r",
		                .unit = UNIT_NONE,
		                .title = "t",
		                .formula = "by the table",
		                .clause = { "table" },
		                .in = { { "Kz", UNIT_NONE, "" }, { "V", UNIT_MPH, "" } },
		                .value = constant };
	const double values[] = { 0.7, 115.0 * M_PER_MI / 3600.0 };
	const struct format us = in(SYSTEM_US);
	const struct step_line line = step_text_line(&us, &s, values, 1.00004, EDITION_ANY);

	assert_string_equal(line.values, "");
	assert_string_equal(line.where, "Kz" NBSP "0.7, V" NBSP "115" NBSP "mph");
	/* Above 1 by little must not read 1. */
	assert_string_equal(line.result, "1.00004");
	assert_string_equal(line.status, "");
}

static void test_standard(void **state)
{
	(void)state;
	static const struct {
		const char *clause;
		const char *standard;
	} row[] = {
		{ "ASCE/SEI 7-16 Eq. 26.10-1", "ASCE/SEI 7" },
		{ "NDS-2018 12.2.1, Eq. 12.2-1", "NDS" },
		{ "Aluminum Design Manual 2015, Part I, F.2", "Aluminum Design Manual 2015" },
		{ "IEBC 2018 503.3, 806.2", "IEBC 2018" },
		{ "statics", "statics" },
		{ "IRC 2018 R905.2.8.3", "IRC 2018" },
	};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		assert_int_equal(step_standard_length(row[i].clause), strlen(row[i].standard));
		assert_memory_equal(row[i].clause, row[i].standard, strlen(row[i].standard));
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test_setup_teardown(test_show, set_up, tear_down),
		cmocka_unit_test_setup_teardown(test_remark, set_up, tear_down),
		cmocka_unit_test_setup_teardown(test_names, set_up, tear_down),
		cmocka_unit_test(test_templates),
		cmocka_unit_test_setup_teardown(test_edition_in_words, set_up, tear_down),
		cmocka_unit_test_setup_teardown(test_formula, set_up, tear_down),
		cmocka_unit_test_setup_teardown(test_step_line, set_up, tear_down),
		cmocka_unit_test_setup_teardown(test_step_shown_apart, set_up, tear_down),
		cmocka_unit_test(test_standard),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
