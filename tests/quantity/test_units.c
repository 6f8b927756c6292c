/* SPDX-License-Identifier: MIT */
/* Units against their exact definitions, written here a second time and by another road where
   there is one. */
#include "quantity/quantity.h"

#include <stdio.h>
#include <string.h>

#include "near.h"

/* Two roundings of a product: 4 x 2^-53. */
#define ROUNDING 4.5e-16

static const struct {
	const char *source;
	enum unit unit;
	double one; /* SI value of one unit */
} definition[] = {
	/* NIST SP 811 (2008), Appendix B.8: boldface factors are exact */
	{"NIST SP 811 B.8 inch", UNIT_IN, 2.54e-2},
	{"NIST SP 811 B.8 foot", UNIT_FT, 3.048e-1},
	{"NIST SP 811 B.8 square inch", UNIT_IN2, 6.4516e-4},
	{"NIST SP 811 B.8 square foot", UNIT_FT2, 9.290304e-2},
	{"NIST SP 811 B.8 mile per hour", UNIT_MPH, 4.4704e-1},
	{"NIST SP 811 B.8 kilogram-force", UNIT_KG, 9.80665},
	/* 0.45359237 x 9.80665, multiplied out by hand: every digit */
	{"pound-force, both factors exact", UNIT_LB, 4.4482216152605},
	{"kip", UNIT_KIP, 4448.2216152605},
	{"cubic inch, 2.54^3 cm3", UNIT_IN3, 1.6387064e-5},
	{"US gallon, 231 in3", UNIT_GAL, 3.785411784e-3},
	{"fourth power of the inch, 2.54^4 cm4", UNIT_IN4, 4.16231425600e-7},
	{"kilometre per hour, 1/3.6", UNIT_KM_H, 0.27777777777777777778},
	/* 4.4482216152605 / 0.09290304 and the like, to 18 digits with bc */
	{"pound per square foot", UNIT_PSF, 47.8802589803358426},
	{"pound per square inch", UNIT_PSI, 6894.75729316836134},
	{"pound per foot", UNIT_PLF, 14.5939029372063648},
	{"pound per inch", UNIT_LB_IN, 175.126835246476378},
	{"pound-foot", UNIT_LB_FT, 1.35581794833140040},
	{"pound-inch", UNIT_LB_IN_M, 0.112984829027616700},
	{"pound per cubic foot", UNIT_PCF, 157.087463846246203},
	{"kilogram per square metre", UNIT_KG_M2, 9.80665},
	{"degree, pi/180", UNIT_DEG, 0.0174532925199432958},
};

static void test_definitions(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof definition / sizeof definition[0]; i++)
		assert_row(definition[i].source, unit_to_si(1.0, definition[i].unit),
			   definition[i].one, ROUNDING * definition[i].one);
}

/* Fixed points of the temperature scales (BIPM SI Brochure, 2.3.1; degF by its definition). */
static void test_temperatures(void **state)
{
	(void)state;
	assert_near(unit_to_si(0.0, UNIT_DEG_C), 273.15, ROUNDING);
	assert_near(unit_to_si(32.0, UNIT_DEG_F), 273.15, ROUNDING);
	assert_near(unit_to_si(212.0, UNIT_DEG_F), 373.15, ROUNDING);
	assert_near(unit_to_si(-40.0, UNIT_DEG_F), unit_to_si(-40.0, UNIT_DEG_C), ROUNDING);
	assert_near(unit_from_si(373.15, UNIT_DEG_F), 212.0, 1e-14);
	assert_near(unit_from_si(300.0, UNIT_KELVIN), 300.0, ROUNDING);
}

static void test_there_and_back(void **state)
{
	(void)state;
	for (int u = 0; u < UNIT_COUNT; u++)
		/* 1e-14: a zero point of some 500 in a value of some 100 costs a digit or two */
		assert_row(unit_text((enum unit)u),
			   unit_from_si(unit_to_si(123.456, (enum unit)u), (enum unit)u), 123.456,
			   123.456 * 1e-14);
}

/* The other system's unit measures the same thing, and belongs to that system. */
static void test_systems(void **state)
{
	(void)state;
	for (int u = 0; u < UNIT_COUNT; u++)
		for (int s = 0; s < SYSTEM_COUNT; s++) {
			const enum unit other = unit_in_system((enum unit)u, (enum unit_system)s);

			assert_int_equal(unit_dimension(other), unit_dimension((enum unit)u));
			assert_int_equal(unit_in_system(other, (enum unit_system)s), other);
		}
	assert_int_equal(unit_in_system(UNIT_PSF, SYSTEM_SI), UNIT_KPA);
	assert_int_equal(unit_in_system(UNIT_MM, SYSTEM_US), UNIT_IN);
	assert_int_equal(unit_in_system(UNIT_KPA, SYSTEM_SI), UNIT_KPA);
}

/* Every unit with a text is named in its dimension's list, and no list names another. */
static void test_lists(void **state)
{
	char list[200], *word;

	(void)state;
	for (int u = UNIT_PERCENT + 1; u < UNIT_COUNT; u++) {
		bool found = false;

		snprintf(list, sizeof list, "%s", dimension_units(unit_dimension((enum unit)u)));
		for (word = strtok(list, ","); word; word = strtok(NULL, ","))
			found = found ||
				strcmp(word + strspn(word, " "), unit_text((enum unit)u)) == 0;
		if (!found)
			fail_msg("%s is not in the list of its dimension", unit_text((enum unit)u));
	}
	for (int d = DIM_LENGTH; d < DIM_COUNT; d++) {
		snprintf(list, sizeof list, "%s", dimension_units((enum dimension)d));
		for (word = strtok(list, ","); word; word = strtok(NULL, ",")) {
			int u = 0;

			word += strspn(word, " ");
			if (d == DIM_ANGLE &&
			    (strcmp(word, "%") == 0 || strcmp(word, "rise:run") == 0))
				continue;
			while (u < UNIT_COUNT && strcmp(unit_text((enum unit)u), word) != 0)
				u++;
			if (u == UNIT_COUNT || unit_dimension((enum unit)u) != (enum dimension)d)
				fail_msg("%s does not belong in a list", word);
		}
	}
}

/* 10 in and 0.254 m meet a limit of 10 in alike; a thousandth of an inch more does not. */
static void test_limits(void **state)
{
	const double limit = 10.0 * M_PER_IN;

	(void)state;
	assert_true(at_most(0.254, limit));
	assert_true(at_most(0.254 * (1 + 1e-12), limit));
	assert_false(at_most(10.001 * M_PER_IN, limit));
	assert_true(at_least(0.254 * (1 - 1e-12), limit));
	assert_false(at_least(9.999 * M_PER_IN, limit));
	assert_true(at_most(-1.0, 0.0));
	assert_true(at_most(0.0, 0.0));
	assert_false(at_most(1e-6, 0.0));
	assert_false(at_most((double)INFINITY, 10.0));
	assert_true(at_most(10.0, (double)INFINITY));
	assert_false(at_least(-(double)INFINITY, 10.0));
	assert_false(at_most((double)NAN, 10.0));
	assert_true(at_least(-5.0 * (1 + 1e-12), -5.0));
	assert_false(at_least(-5.01, -5.0));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_definitions),    cmocka_unit_test(test_temperatures),
		cmocka_unit_test(test_there_and_back), cmocka_unit_test(test_systems),
		cmocka_unit_test(test_lists),          cmocka_unit_test(test_limits),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
