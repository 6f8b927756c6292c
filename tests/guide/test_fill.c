/* SPDX-License-Identifier: MIT */
/* Text filled with sizes: literals in both systems, placeholders known and unknown, what is
   refused. Conversions by hand: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 psf = 4.88243 kg/m2, 1 lb
   = 4.44822 N, F = 1.8 C + 32. */
#include "near.h"

#include <math.h>
#include <string.h>

#include "guide/fill.h"
#include "sample.h"

#define IN M_PER_IN

static void literals(void **state)
{
	static const struct {
		const char *text, *us, *si;
	} row[] = {{"{4 in}", "4 in", "102 mm"},
		   {"{5-5/8 in}", "5-5/8 in", "143 mm"},
		   {"{1/4 in}", "1/4 in", "6.4 mm"},
		   {"{0.019 in}", "0.019 in", "0.48 mm"},
		   {"{3/8 in}", "3/8 in", "9.5 mm"},
		   {"{-1 in}", "-1 in", "-25 mm"},
		   {"{6 ft}", "6 ft", "1.83 m"},
		   {"{100 ft}", "100 ft", "30.48 m"},
		   {"{1.5 m}", "4 ft 11-1/16 in", "1.5 m"},
		   {"{150 mm}", "5-7/8 in", "150 mm"},
		   {"{0.55 mm}", "0.022 in", "0.55 mm"},
		   {"{6:12}", "6:12", "26.6 deg"},
		   {"{1/4:12}", "1/4:12", "1.2 deg"},
		   {"{12:12}", "12:12", "45 deg"},
		   {"{22.5 deg}", "22.5 deg", "22.5 deg"},
		   {"{2.2 psf}", "2.2 psf", "11 kg/m2"},
		   {"{0.9 psf}", "0.9 psf", "4.4 kg/m2"},
		   {"{446 psi}", "446 psi", "3.1 MPa"},
		   {"{600 lb}", "600 lb", "2669 N"},
		   {"{5000 lb}", "5000 lb", "22 kN"},
		   {"{3375 lb in}", "3375 lb in", "381 N m"},
		   {"{212 degF}", "212 degF", "100 degC"},
		   {"{-60 degF}", "-60 degF", "-51 degC"},
		   {"{120 degC}", "248 degF", "120 degC"},
		   {"{25 ft2}", "25 ft2", "2.3 m2"},
		   {"{1/4\n\t in}", "1/4 in", "6.4 mm"},
		   {" a \n b{4 in}c ", "a b4 inc", "a b102 mmc"},
		   {"", "", ""},
		   {"no size", "no size", "no size"}};
	char buf[200];

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		assert_int_equal(guide_fill(buf, sizeof buf, row[i].text, NULL, SYSTEM_US, NULL),
				 GUIDE_FILLED);
		assert_string_equal(buf, row[i].us);
		assert_int_equal(guide_fill(buf, sizeof buf, row[i].text, NULL, SYSTEM_SI, NULL),
				 GUIDE_FILLED);
		assert_string_equal(buf, row[i].si);
	}
}

static void refused(void **state)
{
	static const struct {
		const char *text;
		enum guide_fill want;
	} row[] = {{"{no-such-size}", GUIDE_BAD_NAME},
		   {"{4}{4 in}{4 bananas}", GUIDE_BAD_QUANTITY},
		   {"{4 lbs}", GUIDE_BAD_QUANTITY},
		   {"{4in}", GUIDE_BAD_QUANTITY},
		   {"{}", GUIDE_BAD_NAME},
		   {"{ 4 in", GUIDE_BAD_BRACES},
		   {"4 in}", GUIDE_BAD_BRACES},
		   {"{4 {in}}", GUIDE_BAD_BRACES},
		   {"{Pitch}", GUIDE_BAD_QUANTITY},
		   {"{plate-length}", GUIDE_SIZE_UNKNOWN},
		   {"{plate-length", GUIDE_BAD_BRACES},
		   {"{nan}", GUIDE_BAD_NAME},
		   {"{1000000000000000000000000000000000000000000000 in}", GUIDE_BAD_QUANTITY}};
	char buf[200];

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++)
		if (guide_fill(buf, sizeof buf, row[i].text, NULL, SYSTEM_US, NULL) != row[i].want)
			fail_msg("%s", row[i].text);
}

static void sizes_of_a_job(void **state)
{
	struct guide_sizes s = guide_sizes_unknown();
	char buf[200];

	(void)state;
	s.pitch = atan(0.5);
	s.plate_length = 12.625 * IN;
	s.exposure = 5.625 * IN;
	s.feet = 12;
	s.pipe_temperature = (300 + 459.67) * 5 / 9;
	assert_int_equal(guide_fill(buf, sizeof buf,
				    "{feet}: {plate-length} {exposure} {pitch} {pipe-temperature}",
				    &s, SYSTEM_US, NULL),
			 GUIDE_FILLED);
	assert_string_equal(buf, "12: 12-5/8 in 5-5/8 in 6:12 (26.6 deg) 300 degF");
	assert_int_equal(guide_fill(buf, sizeof buf, "{plate-length} {exposure} {pipe-temperature}",
				    &s, SYSTEM_SI, NULL),
			 GUIDE_FILLED);
	assert_string_equal(buf, "321 mm 143 mm 149 degC"); /* 320.675 up, 142.875 to the nearest */
	assert_int_equal(guide_fill(buf, sizeof buf, "{feet} {pipes}", &s, SYSTEM_US, NULL),
			 GUIDE_SIZE_UNKNOWN);
}

/* A least length never prints shorter than it is, and a whole one does not grow. */
static void least_lengths_round_up(void **state)
{
	const struct guide_size_row *row = guide_size_find("reach", 5);
	char buf[64];

	(void)state;
	for (int eighths = 1; eighths < 800; eighths++) {
		char exact[64], above[64];

		tape_print(exact, sizeof exact, eighths / 8.0 * IN, SYSTEM_US, 8);
		tape_print(above, sizeof above, (eighths + 1) / 8.0 * IN, SYSTEM_US, 8);
		assert_string_equal(
			guide_size_print(buf, sizeof buf, row, eighths / 8.0 * IN, SYSTEM_US),
			exact);
		assert_string_equal(guide_size_print(buf, sizeof buf, row,
						     (eighths / 8.0 + 0.001) * IN, SYSTEM_US),
				    above);
	}
	assert_string_equal(guide_size_print(buf, sizeof buf, row, 0.3, SYSTEM_SI), "300 mm");
	assert_string_equal(guide_size_print(buf, sizeof buf, row, 0.3001, SYSTEM_SI), "301 mm");
}

static void too_long_is_said(void **state)
{
	char buf[8];

	(void)state;
	assert_int_equal(guide_fill(buf, sizeof buf, "1234567", NULL, SYSTEM_US, NULL),
			 GUIDE_FILLED);
	assert_int_equal(guide_fill(buf, sizeof buf, "12345678", NULL, SYSTEM_US, NULL),
			 GUIDE_TOO_LONG);
	assert_int_equal(guide_fill(buf, sizeof buf, "123{4 in}", NULL, SYSTEM_US, NULL),
			 GUIDE_FILLED);
	assert_int_equal(guide_fill(buf, sizeof buf, "1234{4 in}", NULL, SYSTEM_US, NULL),
			 GUIDE_TOO_LONG);
}

/* Every placeholder stands in the schema's list and every one of the list is known here. */
static void schema_lists_the_placeholders(void **state)
{
	struct sample s;
	const char *schema, *list, *end;
	size_t listed = 0, known = 0;

	(void)state;
	sample_small(&s);
	schema = s.file[0].data;
	list = strstr(schema, "Placeholders, each a size");
	assert_non_null(list);
	end = strstr(list, "literal quantity.)");
	assert_non_null(end);
	for (const char *p = list; (p = strstr(p, "\n      {")) != NULL && p < end; p++) {
		const char *name = p + 8;

		listed++;
		if (!guide_size_find(name, strcspn(name, "}")))
			fail_msg("schema lists %.30s", name);
	}
	while (guide_size_row(known))
		known++;
	assert_int_equal(listed, known);
	sample_free(&s);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(literals),
					   cmocka_unit_test(refused),
					   cmocka_unit_test(sizes_of_a_job),
					   cmocka_unit_test(least_lengths_round_up),
					   cmocka_unit_test(too_long_is_said),
					   cmocka_unit_test(schema_lists_the_placeholders)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
