/* SPDX-License-Identifier: MIT */
/* What a person writes, and what must be refused. Expected values are arithmetic on exact
   definitions. */
#include "quantity/quantity.h"

#include <locale.h>
#include <stdio.h>
#include <string.h>

#include "near.h"

#define IN 0.0254
#define FT 0.3048
#define LBF 4.4482216152605

/* Three roundings: number, unit, sum. */
#define ROUNDING 7e-16

static const struct {
	const char *text;
	enum dimension dimension;
	double si;
} good[] = {
	{"30 psf", DIM_PRESSURE, 30 * LBF / (FT * FT)},
	{"1.44 kPa", DIM_PRESSURE, 1440},
	{"1.44 kN/m2", DIM_PRESSURE, 1440},
	{"12.4 N/mm2", DIM_PRESSURE, 12.4e6},
	{"1.5e3 Pa", DIM_PRESSURE, 1500},
	{"1.5E+3 Pa", DIM_PRESSURE, 1500},
	{"1500e-3 kPa", DIM_PRESSURE, 1500},
	{"2.44 m", DIM_LENGTH, 2.44},
	{"2440 mm", DIM_LENGTH, 2.44},
	{"244 cm", DIM_LENGTH, 2.44},
	{"5/16 in", DIM_LENGTH, 0.3125 * IN},
	{"5/16in", DIM_LENGTH, 0.3125 * IN},
	{"5-5/8 in", DIM_LENGTH, 5.625 * IN},
	{"5 5/8 in", DIM_LENGTH, 5.625 * IN},
	{"5.625 in", DIM_LENGTH, 5.625 * IN},
	{"9/8 in", DIM_LENGTH, 1.125 * IN},
	{".5 in", DIM_LENGTH, 0.5 * IN},
	{"5. in", DIM_LENGTH, 5 * IN},
	{"13 ft 6 in", DIM_LENGTH, 162 * IN},
	{"13 ft 6-1/2 in", DIM_LENGTH, 162.5 * IN},
	{"13 ft 6 1/2 in", DIM_LENGTH, 162.5 * IN},
	{"13 ft 1/2 in", DIM_LENGTH, 156.5 * IN},
	{"13ft6in", DIM_LENGTH, 162 * IN},
	{"13' 6\"", DIM_LENGTH, 162 * IN},
	{"13'6\"", DIM_LENGTH, 162 * IN},
	{"13'-6\"", DIM_LENGTH, 162 * IN},
	{"13\xE2\x80\xB2 6\xE2\x80\xB3", DIM_LENGTH, 162 * IN},
	{"13\xE2\x80\x99 6\xE2\x80\x9D", DIM_LENGTH, 162 * IN},
	{"13.5 ft", DIM_LENGTH, 162 * IN},
	{"-3 in", DIM_LENGTH, -3 * IN},
	{"-5-5/8 in", DIM_LENGTH, -5.625 * IN},
	{"-2 ft 6 in", DIM_LENGTH, -30 * IN},
	{"+3 in", DIM_LENGTH, 3 * IN},
	{"0 in", DIM_LENGTH, 0},
	{"  8  ft  ", DIM_LENGTH, 8 * FT},
	{"\t8\nft", DIM_LENGTH, 8 * FT},
	{"00012 in", DIM_LENGTH, 12 * IN},
	{"16 ft2", DIM_AREA, 16 * FT *FT},
	{"0.35 in3", DIM_VOLUME, 0.35 * IN *IN *IN},
	{"3 l", DIM_VOLUME, 0.003},
	{"3 L", DIM_VOLUME, 0.003},
	{"0.4 in4", DIM_INERTIA, 0.4 * IN *IN *IN *IN},
	{"50 %", DIM_NONE, 0.5},
	{"50%", DIM_NONE, 0.5},
	{"1.25", DIM_NONE, 1.25},
	{"3/8", DIM_NONE, 0.375},
	{"-2.0", DIM_NONE, -2},
	{"105 lb", DIM_FORCE, 105 * LBF},
	{"105 lbs", DIM_FORCE, 105 * LBF},
	{"105 lbf", DIM_FORCE, 105 * LBF},
	{"48 kg", DIM_FORCE, 48 * 9.80665},
	{"1.2 kN", DIM_FORCE, 1200},
	{"20 plf", DIM_LINE_LOAD, 20 * LBF / FT},
	{"20 lb/ft", DIM_LINE_LOAD, 20 * LBF / FT},
	{"500 lb ft", DIM_MOMENT, 500 * LBF *FT},
	{"500 ft lb", DIM_MOMENT, 500 * LBF *FT},
	{"500  lb  ft", DIM_MOMENT, 500 * LBF *FT},
	{"600 in lb", DIM_MOMENT, 600 * LBF *IN},
	{"3 N m", DIM_MOMENT, 3},
	{"115 mph", DIM_SPEED, 115 * 0.44704},
	{"36 km/h", DIM_SPEED, 10},
	{"90 deg", DIM_ANGLE, 1.5707963267948966},
	{"26.6 deg", DIM_ANGLE, 26.6 * 0.017453292519943296},
	{"22.6\xC2\xB0", DIM_ANGLE, 22.6 * 0.017453292519943296},
	/* arctangents to 17 digits with bc: a(1/2), a(1), a(5/12), a(11/24), a(1/48), a(42/100) */
	{"6:12", DIM_ANGLE, 0.46364760900080612},
	{"6 : 12", DIM_ANGLE, 0.46364760900080612},
	{"1:2", DIM_ANGLE, 0.46364760900080612},
	{"12:12", DIM_ANGLE, 0.78539816339744831},
	{"5:12", DIM_ANGLE, 0.39479111969976156},
	{"5.5:12", DIM_ANGLE, 0.42976227909668851},
	{"5-1/2:12", DIM_ANGLE, 0.42976227909668851},
	{"1/4:12", DIM_ANGLE, 0.020830320036217085},
	{"42 %", DIM_ANGLE, 0.39762799152212931},
	{"0:12", DIM_ANGLE, 0},
	{"32 degF", DIM_TEMPERATURE, 273.15},
	{"-40 degC", DIM_TEMPERATURE, 233.15},
	{"300 K", DIM_TEMPERATURE, 300},
	/* more digits than a double has: the nearest double, as the compiler finds it */
	{"0.30000000000000004 m", DIM_LENGTH, 0.30000000000000004},
	{"3.14159265358979323846264338327950288 m", DIM_LENGTH,
	 3.14159265358979323846264338327950288},
	{"9007199254740993 Pa", DIM_PRESSURE, 9007199254740993.0},
	{"0.000000000000000000000000000000000000000000000001 m", DIM_LENGTH, 1e-48},
	{"1e-400 m", DIM_LENGTH, 0},
};

static const struct {
	const char *text;
	enum dimension dimension;
	enum quantity_error error;
} bad[] = {
	{"", DIM_LENGTH, QUANTITY_EMPTY},
	{" \t ", DIM_LENGTH, QUANTITY_EMPTY},
	{"ft", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"steep", DIM_ANGLE, QUANTITY_NOT_NUMBER},
	{"-", DIM_NONE, QUANTITY_NOT_NUMBER},
	{".", DIM_NONE, QUANTITY_NOT_NUMBER},
	{"inf m", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"nan", DIM_NONE, QUANTITY_NOT_NUMBER},
	{"1e400 m", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"1e99999999999999999999 m", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"1.7e308 ksi", DIM_PRESSURE, QUANTITY_NOT_NUMBER},
	{"5/0 in", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"5/ in", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"1,5 m", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"1,500 Pa", DIM_PRESSURE, QUANTITY_NOT_NUMBER},
	{"1.2.3 m", DIM_LENGTH, QUANTITY_NOT_NUMBER},
	{"12", DIM_LENGTH, QUANTITY_NO_UNIT},
	{"0", DIM_PRESSURE, QUANTITY_NO_UNIT},
	{"6", DIM_ANGLE, QUANTITY_NO_UNIT},
	{"0x10 m", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"30 psi", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"30 mph", DIM_PRESSURE, QUANTITY_WRONG_UNIT},
	{"30 furlong", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"30 minutes", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"30 PSF", DIM_PRESSURE, QUANTITY_WRONG_UNIT},
	{"30 ft2", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"5 ft", DIM_NONE, QUANTITY_WRONG_UNIT},
	{"6 in 12", DIM_ANGLE, QUANTITY_WRONG_UNIT},
	{"30 psf net", DIM_PRESSURE, QUANTITY_TRAILING},
	{"30 31 psf", DIM_PRESSURE, QUANTITY_TRAILING},
	{"5-3 in", DIM_LENGTH, QUANTITY_TRAILING},
	{"5-9/8 in", DIM_LENGTH, QUANTITY_TRAILING},
	{"13.5 ft 6 in", DIM_LENGTH, QUANTITY_TRAILING},
	{"13 ft 6", DIM_LENGTH, QUANTITY_TRAILING},
	{"13 ft 6 ft", DIM_LENGTH, QUANTITY_TRAILING},
	{"13 ft 6 in 3 in", DIM_LENGTH, QUANTITY_TRAILING},
	{"6 in 1 ft", DIM_LENGTH, QUANTITY_TRAILING},
	{"6:12:1", DIM_ANGLE, QUANTITY_TRAILING},
	{"6:12 deg", DIM_ANGLE, QUANTITY_TRAILING},
	{"0:0", DIM_ANGLE, QUANTITY_BAD_PITCH},
	{"6:0", DIM_ANGLE, QUANTITY_BAD_PITCH},
	{"6:", DIM_ANGLE, QUANTITY_BAD_PITCH},
	{"6:-12", DIM_ANGLE, QUANTITY_BAD_PITCH},
	{"6:12", DIM_LENGTH, QUANTITY_WRONG_UNIT},
	{"1                                                               in", DIM_LENGTH,
	 QUANTITY_TRAILING},
};

/* The value must not be touched when the text is refused. */
#define UNTOUCHED -12345.0

/* A decimal comma must not change a load: strtod, which follows the locale, may be shown digits
   and an exponent only. The linker sends the parser's calls here. */
double __wrap_strtod(const char *text, char **end);
double __real_strtod(const char *text, char **end);
static int strtod_calls;

double __wrap_strtod(const char *text, char **end)
{
	strtod_calls++;
	if (strspn(text, "0123456789e-") != strlen(text))
		fail_msg("strtod was shown `%s`", text);
	return __real_strtod(text, end);
}

static void check_tables(void)
{
	for (size_t i = 0; i < sizeof good / sizeof good[0]; i++) {
		double si = UNTOUCHED;
		const enum quantity_error e = quantity_parse(good[i].text, good[i].dimension, &si);

		if (e != QUANTITY_OK)
			fail_msg("`%s` %s", good[i].text, quantity_error_text(e));
		assert_row(good[i].text, si, good[i].si, ROUNDING * fabs(good[i].si));
	}
	for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
		double si = UNTOUCHED;
		const enum quantity_error e = quantity_parse(bad[i].text, bad[i].dimension, &si);

		if (e != bad[i].error)
			fail_msg("`%s`: %s", bad[i].text, quantity_error_text(e));
		assert_row(bad[i].text, si, UNTOUCHED, 0.0);
	}
}

static void test_tables(void **state)
{
	(void)state;
	strtod_calls = 0;
	check_tables();
	assert_true(strtod_calls > 0);
}

/* The same under locales with a decimal comma, as far as they are installed. */
static void test_locale(void **state)
{
	static const char *const name[] = {"de_DE.UTF-8", "de_DE", "fr_FR.UTF-8", "ru_RU.UTF-8",
					   "tr_TR.UTF-8"};
	char buf[32];

	(void)state;
	for (size_t i = 0; i < sizeof name / sizeof name[0]; i++) {
		if (!setlocale(LC_ALL, name[i]))
			continue;
		print_message("in locale %s\n", name[i]);
		check_tables();
		assert_string_equal(quantity_print(buf, sizeof buf, 1440, UNIT_KPA, 2), "1.44 kPa");
	}
	setlocale(LC_ALL, "C");
}

/* Every unit that can be written can be read. */
static void test_every_unit(void **state)
{
	char text[64];
	double si;

	(void)state;
	for (int u = 0; u < UNIT_COUNT; u++) {
		snprintf(text, sizeof text, "2.5 %s", unit_text((enum unit)u));
		assert_int_equal(quantity_parse(text, unit_dimension((enum unit)u), &si),
				 QUANTITY_OK);
		assert_row(text, si, unit_to_si(2.5, (enum unit)u), 1e-15 * si);
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_tables),
		cmocka_unit_test(test_locale),
		cmocka_unit_test(test_every_unit),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
