/* SPDX-License-Identifier: MIT */
/* The user's price list: what is read, what is refused, and sums to the cent. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>
#include <math.h>
#include <string.h>

#include "near.h"
#include "sheet/materials.h"

static bool read_text(const char *text, struct prices *prices, struct problem_list *problems)
{
	*problems = (struct problem_list){0};
	return prices_read_memory("prices", text, strlen(text), material_keys(), prices, problems);
}

static void accepted(void **state)
{
	struct problem_list problems;
	struct prices prices;
	int64_t price = 0;

	(void)state;
	assert_true(read_text("# ours\r\n\r\ncurrency, USD\nscrew, 0.85\r\n  foot ,12\nrail,3.1255",
			      &prices, &problems));
	assert_string_equal(prices.currency, "USD");
	assert_int_equal(prices.n, 3);
	assert_true(prices_find(&prices, "screw", &price) && price == 8500);
	assert_true(prices_find(&prices, "foot", &price) && price == 120000);
	assert_true(prices_find(&prices, "rail", &price) && price == 31255);
	assert_false(prices_find(&prices, "sealant", &price));
}

static void refused(void **state)
{
	static const struct {
		const char *text;
		enum problem_code code;
		int line;
	} row[] = {
		{"screw", PROBLEM_NOT_A_VALUE, 1},
		{"\nscrew,", PROBLEM_NOT_A_VALUE, 2},
		{"screw,-1", PROBLEM_NOT_A_VALUE, 1},
		{"screw,1,5", PROBLEM_NOT_A_VALUE, 1},
		{"screw,1.", PROBLEM_NOT_A_VALUE, 1},
		{"screw,1.23456", PROBLEM_NOT_A_VALUE, 1},
		{"screw,1e3", PROBLEM_NOT_A_VALUE, 1},
		{"screw,9999999999", PROBLEM_NOT_A_VALUE, 1},
		{"scrw,1", PROBLEM_UNKNOWN_FIELD, 1},
		{"foot,1\nfoot,1", PROBLEM_TWICE, 2},
		{"currency,dollars!", PROBLEM_NOT_A_VALUE, 1},
	};
	struct problem_list problems;
	struct prices prices;

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		assert_false(read_text(row[i].text, &prices, &problems));
		assert_int_equal(problems.count, 1);
		assert_int_equal(problems.item[0].code, row[i].code);
		assert_int_equal(problems.item[0].line, row[i].line);
	}
}

static void money(void **state)
{
	char buf[48];

	(void)state;
	assert_string_equal(money_print(buf, sizeof buf, 0), "0.00");
	assert_string_equal(money_print(buf, sizeof buf, 8500), "0.85");
	assert_string_equal(money_print(buf, sizeof buf, 31255), "3.1255");
	assert_string_equal(money_print(buf, sizeof buf, INT64_C(12345678) * PRICE_UNIT + 500),
			    "12345678.05");
}

/* Hand sums; the middle one is a fact of the trade: a two-storey run takes nearly 40 ft one way. */
static void hose(void **state)
{
	static const struct {
		const char *source;
		double run;
		int storeys;
		double height, offset, want; /* ft */
	} row[] = {
		{"as taped, whatever else is given", 42, 2, 9, 20, 42},
		{"common practice: 2 x 9 + 20, nearly 40", NAN, 2, 9, 20, 38},
		{"one storey, straight down", NAN, 1, 8, NAN, 8},
		{"level only", NAN, 0, 9, 12, 12},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		const struct job_pipe p = {.run = row[i].run * M_PER_FT,
					   .storeys = row[i].storeys,
					   .storey_height = row[i].height * M_PER_FT,
					   .offset = row[i].offset * M_PER_FT};

		assert_near(pipe_run(&p), row[i].want * M_PER_FT, 1e-12);
	}
	assert_true(isnan(pipe_run(&(struct job_pipe){
		.run = NAN, .storeys = 0, .storey_height = 9 * M_PER_FT, .offset = NAN})));
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(accepted), cmocka_unit_test(refused),
					   cmocka_unit_test(money), cmocka_unit_test(hose)};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
