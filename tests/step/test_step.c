/* SPDX-License-Identifier: MIT */
/* The edge of a step: SI in, the clause's units inside, SI out; and the trace. Expected values are
   arithmetic on the exact definitions of the units (international foot, pound and standard gravity;
   NIST SP 811 appendix B). */
#include "step/step.h"

#include <string.h>

#include "near.h"

static double seen[STEP_INPUT_MAX];

static double velocity_pressure(const double *in)
{
	memcpy(seen, in, 2 * sizeof *in);
	return 0.00256 * in[0] * in[1] * in[1];
}

static const struct step step_pressure = {
	.name = "test-pressure",
	.symbol = "q",
	.unit = UNIT_PSF,
	.clause = {[ASCE7_16] = "clause of 7-16", [ASCE7_22] = "clause of 7-22"},
	.in = {{"Kz", UNIT_NONE, "factor"}, {"V", UNIT_MPH, "speed"}},
	.value = velocity_pressure};

static double first(const double *in)
{
	return in[0];
}

static const struct step step_fahrenheit = {.name = "test-temperature",
					    .symbol = "T",
					    .unit = UNIT_DEG_F,
					    .clause = {"any clause"},
					    .in = {{"T", UNIT_DEG_F, "temperature"}},
					    .value = first};

static double tenth(const double *in)
{
	return in[9];
}

static const struct step step_full = {.name = "test-full",
				      .symbol = "x",
				      .unit = UNIT_IN,
				      .clause = {[ASCE7_10] = "clause of 7-10"},
				      .in = {{"a", UNIT_IN, ""},
					     {"b", UNIT_IN, ""},
					     {"c", UNIT_IN, ""},
					     {"d", UNIT_IN, ""},
					     {"e", UNIT_IN, ""},
					     {"f", UNIT_IN, ""},
					     {"g", UNIT_IN, ""},
					     {"h", UNIT_IN, ""},
					     {"i", UNIT_IN, ""},
					     {"j", UNIT_FT, ""}},
				      .value = tenth};

/* 115 mph is 51.4096 m/s exactly (1 mi = 1609.344 m); 0.00256 x 0.85 x 115^2 = 28.7776 psf; 1 psf
   = 47.88025898... Pa. */
static void converts_at_the_edge(void **state)
{
	const double psf = 0.45359237 * 9.80665 / (0.3048 * 0.3048);
	const double q = STEP(NULL, step_pressure, 0.85, 51.4096);

	(void)state;
	assert_near(seen[0], 0.85, 1e-15);
	assert_near(seen[1], 115.0, 1e-14);
	assert_near(q, 28.7776 * psf, 1e-14);
	assert_near(psf, 47.88025898, 1e-9);
}

/* 100 F is 310.92777... K: a unit with a zero of its own goes in and out unchanged. */
static void converts_temperatures(void **state)
{
	const double T = (100.0 + 459.67) * 5.0 / 9.0;

	(void)state;
	assert_near(STEP(NULL, step_fahrenheit, T), T, 1e-14);
}

static void uses_all_inputs(void **state)
{
	(void)state;
	assert_int_equal(step_input_count(&step_full), STEP_INPUT_MAX);
	assert_int_equal(step_input_count(&step_pressure), 2);
	/* 3 ft come in as 0.9144 m, reach the clause as 3 and leave as 3 in. */
	assert_near(STEP(NULL, step_full, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.9144), 3 * 0.0254, 1e-14);
}

static void records_si(void **state)
{
	struct step_record record[2];
	struct trace trace = {record, 0, 2, 0};
	double q;

	(void)state;
	memset(record, 0xff, sizeof record);
	q = STEP(&trace, step_pressure, 1.0, 10.0);
	assert_int_equal(trace.count, 1);
	assert_ptr_equal(record[0].step, &step_pressure);
	assert_near(record[0].in[0], 1.0, 0);
	assert_near(record[0].in[1], 10.0, 0);
	assert_near(record[0].in[2], 0.0, 0);
	assert_near(record[0].in[STEP_INPUT_MAX - 1], 0.0, 0);
	assert_near(record[0].result, q, 0);
}

static void counts_what_does_not_fit(void **state)
{
	struct step_record record[3];
	struct trace trace = {record, 0, 2, 0};

	(void)state;
	memset(record, 0x5a, sizeof record);
	for (int i = 1; i <= 5; i++)
		STEP(&trace, step_pressure, i, 10.0);
	assert_int_equal(trace.count, 2);
	assert_int_equal(trace.dropped, 3);
	/* The first ones are kept, and nothing is written past the end. */
	assert_near(record[0].in[0], 1.0, 0);
	assert_near(record[1].in[0], 2.0, 0);
	for (size_t i = 0; i < sizeof record[2]; i++)
		assert_int_equal(((const unsigned char *)&record[2])[i], 0x5a);
}

static void empty_trace_drops_all(void **state)
{
	struct trace trace = {NULL, 0, 0, 0};

	(void)state;
	STEP(&trace, step_pressure, 1.0, 10.0);
	assert_int_equal(trace.count, 0);
	assert_int_equal(trace.dropped, 1);
}

static void finds_the_clause(void **state)
{
	static const struct step nothing = {.name = "test-nothing"};

	(void)state;
	assert_string_equal(step_clause(&step_pressure, ASCE7_16), "clause of 7-16");
	assert_string_equal(step_clause(&step_pressure, ASCE7_22), "clause of 7-22");
	/* No clause of its own and none for any edition: the first that there is. */
	assert_string_equal(step_clause(&step_pressure, ASCE7_10), "clause of 7-16");
	assert_string_equal(step_clause(&step_pressure, EDITION_ANY), "clause of 7-16");
	assert_string_equal(step_clause(&step_fahrenheit, ASCE7_22), "any clause");
	assert_string_equal(step_clause(&step_full, ASCE7_22), "clause of 7-10");
	assert_string_equal(step_clause(&nothing, ASCE7_16), "");
}

static void names_every_confidence(void **state)
{
	(void)state;
	for (int c = 0; c < CONFIDENCE_COUNT; c++) {
		assert_true(strlen(confidence_text((enum confidence)c)) > 0);
		for (int d = 0; d < c; d++)
			assert_string_not_equal(confidence_text((enum confidence)c),
						confidence_text((enum confidence)d));
	}
	assert_string_equal(confidence_text(FROM_MEMORY), "from memory");
	assert_string_equal(confidence_text(CONFIDENCE_COUNT), "");
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(converts_at_the_edge),
		cmocka_unit_test(converts_temperatures),
		cmocka_unit_test(uses_all_inputs),
		cmocka_unit_test(records_si),
		cmocka_unit_test(counts_what_does_not_fit),
		cmocka_unit_test(empty_trace_drops_all),
		cmocka_unit_test(finds_the_clause),
		cmocka_unit_test(names_every_confidence),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
