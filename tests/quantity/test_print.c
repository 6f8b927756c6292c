/* SPDX-License-Identifier: MIT */
/* What is printed: rounding at, below and above the digit, tape readings, pitches, and that it
   can be read back. */
#include "quantity/quantity.h"

#include <stdio.h>
#include <string.h>

#include "near.h"

#define IN 0.0254

static const struct {
	double value;
	int decimals;
	const char *nearest, *up, *down;
} number[] = {
	{0.0, 0, "0", "0", "0"},
	{-0.0, 2, "0.00", "0.00", "0.00"},
	{1.004, 2, "1.00", "1.01", "1.00"},
	{1.0, 2, "1.00", "1.00", "1.00"},
	{0.994, 2, "0.99", "1.00", "0.99"},
	{0.995, 2, "1.00", "1.00", "0.99"},
	{0.996, 2, "1.00", "1.00", "0.99"},
	/* a ratio above 1 by one bit does not hold, and must not look as if it did */
	{1.0000000000000002, 2, "1.00", "1.01", "1.00"},
	{0.9999999999999999, 2, "1.00", "1.00", "0.99"},
	/* elsewhere a last bit is what a conversion costs, not a digit */
	{0.81, 2, "0.81", "0.81", "0.81"},
	{0.8100000000000002, 2, "0.81", "0.81", "0.81"},
	{799.9999999999999, 0, "800", "800", "800"},
	{800.0000000000001, 0, "800", "800", "800"},
	{0.8101, 2, "0.81", "0.82", "0.81"},
	/* half away from zero */
	{0.5, 0, "1", "1", "0"},
	{1.5, 0, "2", "2", "1"},
	{2.5, 0, "3", "3", "2"},
	{-2.5, 0, "-3", "-3", "-2"},
	{0.125, 2, "0.13", "0.13", "0.12"},
	{2.4999, 0, "2", "3", "2"},
	{-0.4, 0, "0", "-1", "0"},
	{-0.004, 2, "0.00", "-0.01", "0.00"},
	{0.05, 1, "0.1", "0.1", "0.0"},
	{0.0499, 1, "0.0", "0.1", "0.0"},
	{12345.678, 1, "12345.7", "12345.7", "12345.6"},
	{9.996, 2, "10.00", "10.00", "9.99"},
	{1e15, 3, "1000000000000000", "1000000000000000", "1000000000000000"},
	{123456789012.3456, 6, "123456789012.346", "123456789012.346", "123456789012.345"},
	{(double)INFINITY, 1, "inf", "inf", "inf"},
	{-(double)INFINITY, 1, "-inf", "-inf", "-inf"},
	{(double)NAN, 1, "nan", "nan", "nan"},
};

static void test_numbers(void **state)
{
	char buf[64];

	(void)state;
	for (size_t i = 0; i < sizeof number / sizeof number[0]; i++) {
		assert_string_equal(
			number_print(buf, sizeof buf, number[i].value, number[i].decimals),
			number[i].nearest);
		assert_string_equal(
			number_print_up(buf, sizeof buf, number[i].value, number[i].decimals),
			number[i].up);
		assert_string_equal(
			number_print_down(buf, sizeof buf, number[i].value, number[i].decimals),
			number[i].down);
	}
}

/* The largest double has 309 digits; a small buffer cuts, and always ends. */
static void test_long_numbers(void **state)
{
	char buf[400], small[8];

	(void)state;
	assert_int_equal(strlen(number_print(buf, sizeof buf, 1.7976931348623157e308, 6)), 309);
	assert_string_equal(number_print(small, sizeof small, 123456789.0, 0), "1234567");
	assert_string_equal(quantity_print(small, sizeof small, 1234567.0, UNIT_PA, 0), "1234567");
	assert_string_equal(quantity_print(small, sizeof small, 12345.0, UNIT_PA, 0), "12345 P");
	assert_string_equal(number_print(small, 1, 5.0, 0), "");
}

static const struct {
	double si;
	enum unit unit;
	int decimals;
	const char *text;
} quantity[] = {
	{1436.4077694100751, UNIT_PSF, 1, "30.0 psf"},
	{1440.0, UNIT_KPA, 2, "1.44 kPa"},
	{0.5, UNIT_PERCENT, 0, "50 %"},
	{0.5, UNIT_NONE, 2, "0.50"},
	{800 * 4.4482216152605, UNIT_LB, 0, "800 lb"},
	{273.15, UNIT_DEG_F, 0, "32 degF"},
	{0.0, UNIT_DEG_C, 2, "-273.15 degC"},
	{-1e-9, UNIT_MM, 1, "0.0 mm"},
};

static void test_quantities(void **state)
{
	char buf[64];

	(void)state;
	for (size_t i = 0; i < sizeof quantity / sizeof quantity[0]; i++)
		assert_string_equal(quantity_print(buf, sizeof buf, quantity[i].si,
						   quantity[i].unit, quantity[i].decimals),
				    quantity[i].text);
}

static const struct {
	double inches;
	int denominator;
	const char *us;
} tape[] = {
	{0, 16, "0 in"},
	{0.5, 16, "1/2 in"},
	{0.03, 16, "0 in"},
	{0.0313, 16, "1/16 in"},
	{18.25, 16, "18-1/4 in"},
	{18.25, 2, "18-1/2 in"},
	{18.2, 1, "18 in"},
	{23.99, 16, "2 ft 0 in"},
	{23.9375, 16, "23-15/16 in"},
	{24, 16, "2 ft 0 in"},
	{162.5, 16, "13 ft 6-1/2 in"},
	{162.5, 2, "13 ft 6-1/2 in"},
	{156.5, 16, "13 ft 0-1/2 in"},
	{155.99, 8, "13 ft 0 in"},
	{-18.25, 16, "-18-1/4 in"},
	{-0.01, 16, "0 in"},
	{-30, 16, "-2 ft 6 in"},
};

static void test_tape(void **state)
{
	char buf[64];

	(void)state;
	for (size_t i = 0; i < sizeof tape / sizeof tape[0]; i++)
		assert_string_equal(tape_print(buf, sizeof buf, tape[i].inches * IN, SYSTEM_US,
					       tape[i].denominator),
				    tape[i].us);
	assert_string_equal(tape_print(buf, sizeof buf, 4.1277, SYSTEM_SI, 16), "4128 mm");
	assert_string_equal(tape_print(buf, sizeof buf, (double)NAN, SYSTEM_US, 16), "nan in");
	assert_string_equal(tape_print(buf, sizeof buf, 1e12, SYSTEM_SI, 16),
			    "1000000000000000 mm");
}

static const struct {
	double degrees;
	const char *text;
} pitch[] = {
	{0.0, "0:12 (0.0 deg)"},
	{26.56505117707799, "6:12 (26.6 deg)"},   /* atan(1/2) */
	{22.61986494804043, "5:12 (22.6 deg)"},   /* atan(5/12) */
	{22.6, "5:12 (22.6 deg)"},                /* 4.995 in 12 */
	{24.6, "5.49:12 (24.6 deg)"},             /* 12 tan 24.6 = 5.494 */
	{1.193489423982035, "0.25:12 (1.2 deg)"}, /* atan(1/48) */
	{45.0, "12:12 (45.0 deg)"},
	{85.0, "85.0 deg"},
	{90.0, "90.0 deg"},
};

static void test_pitch(void **state)
{
	char buf[64];

	(void)state;
	for (size_t i = 0; i < sizeof pitch / sizeof pitch[0]; i++)
		assert_string_equal(
			pitch_print(buf, sizeof buf, pitch[i].degrees * 0.017453292519943296),
			pitch[i].text);
}

/* What is printed reads back as the same value, and prints the same again. */
static void test_round_trip(void **state)
{
	static const double values[] = {0.0,   0.001,  0.5,   1.0,      2.5,
					17.41, 99.999, 115.0, 1234.567, 820.0};
	char text[64], again[64];
	double si;

	(void)state;
	for (int u = 0; u < UNIT_COUNT; u++)
		for (size_t i = 0; i < sizeof values / sizeof values[0]; i++) {
			const double want = unit_to_si(values[i], (enum unit)u);

			/* the slope of an angle in percent is another thing than a number in
			   percent */
			quantity_print(text, sizeof text, want, (enum unit)u, 3);
			assert_int_equal(quantity_parse(text, unit_dimension((enum unit)u), &si),
					 QUANTITY_OK);
			assert_row(text, si, want, 1e-13 * fabs(want));
			assert_string_equal(
				quantity_print(again, sizeof again, si, (enum unit)u, 3), text);
		}
}

/* Every sixty-fourth of an inch up to 30 ft, in both systems of reading. */
static void test_tape_round_trip(void **state)
{
	char text[64];
	double si;

	(void)state;
	for (int i = 0; i <= 30 * 12 * 64; i++) {
		tape_print(text, sizeof text, i * IN / 64.0, SYSTEM_US, 64);
		assert_int_equal(quantity_parse(text, DIM_LENGTH, &si), QUANTITY_OK);
		assert_row(text, si, i * IN / 64.0, 1e-14);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_numbers),         cmocka_unit_test(test_long_numbers),
		cmocka_unit_test(test_quantities),      cmocka_unit_test(test_tape),
		cmocka_unit_test(test_pitch),           cmocka_unit_test(test_round_trip),
		cmocka_unit_test(test_tape_round_trip),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
