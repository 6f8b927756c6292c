/* SPDX-License-Identifier: MIT */
/* The report of a check as a whole, on a result made by hand: what must stand where, in text and in
   JSON. */
#define _POSIX_C_SOURCE 200809L
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <jansson.h>

#include "near.h"
#include "report/caution.h"
#include "report/check_report.h"
#include "report/json_check.h"
#include "report/text_writer.h"
#include "report/utf8.h"
#include "sample.h"

static struct job job;
static struct result result;

static char *text_of(int width, const struct check_options *options)
{
	const struct text_style style = { .width = width };
	struct document *d = document_create(NULL);
	char *text = NULL;
	size_t size = 0;
	FILE *f = open_memstream(&text, &size);

	assert_non_null(d);
	assert_non_null(f);
	check_report_build(d, &job, &result, options);
	assert_false(document_failed(d));
	text_write(f, d, &style);
	fclose(f);
	document_destroy(d);
	return text;
}

static char *sample_text(enum verdict verdict, enum unit_system units, int width)
{
	const struct check_options options = { .attachment = 0 };

	sample_job(&job, units);
	sample_result(&result, &job, verdict, 6);
	return text_of(width, &options);
}

/* Where needle begins in the words of text: line breaks and indents count as one blank. */
static bool says(const char *text, const char *needle)
{
	char *flat = malloc(strlen(text) + 1), *to = flat;

	for (; *text; text++) {
		const bool blank = *text == ' ' || *text == '\n';

		if (!blank)
			*to++ = *text;
		else if (to > flat && to[-1] != ' ')
			*to++ = ' ';
	}
	*to = '\0';
	const bool found = strstr(flat, needle) != NULL;

	free(flat);
	return found;
}

static void test_first_line(void **state)
{
	(void)state;
	static const struct {
		enum verdict verdict;
		const char *begins;
	} row[] = {
		{ HOLDS, "HOLDS: the weakest link is the rafter, at 0.86 of what it can carry "
		         "(rafter 10: bending of "
		         "the rafter, load down). Not checked: collector, rail, foot.\n" },
		/* 1.004 is not 1.00 */
		{ DOES_NOT_HOLD,
		  "DOES NOT HOLD: the weakest link is the rafter, at 1.01 of what it can carry" },
		{ NEEDS_ENGINEER,
		  "NEEDS AN ENGINEER: The mean roof height 62.0 ft is above 60 ft" },
	};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		char *text = sample_text(row[i].verdict, SYSTEM_US, 200);

		assert_int_equal(strncmp(text, row[i].begins, strlen(row[i].begins)), 0);
		/* The caution is the next thing read. */
		assert_non_null(strstr(text, "\n\n! This is a check, to be confirmed"));
		free(text);
	}
}

/* Every part, in this order, at every width, in both systems. */
static void test_order(void **state)
{
	(void)state;
	static const char *const heading[] = {
		"Job: Sample of a page",
		"\nThe chain, link by link\n",
		"\nWhere the attachments go\n",
		"\nWhat each attachment carries\n",
		"\nLargest spacing along the eave\n",
		"\nRafters before and after\n",
		"\nRails\n",
		"\nRoof and loads\n",
		"\nFrom the head of the screw to the rafter\n",
		"\nInputs and where they came from\n",
		"\nAssumed, because it is not known\n",
		"\nWhat this rests on\n",
		"\nNot checked\n",
		"\nFormulas, line by line\n",
		"\nOn the roof\n",
	};

	for (int width = 40; width <= 120; width += 40) {
		for (int units = 0; units < SYSTEM_COUNT; units++) {
			char *text = sample_text(HOLDS, (enum unit_system)units, width);
			const char *at = text;

			for (size_t i = 0; i < sizeof heading / sizeof *heading; i++) {
				const char *found = strstr(at, heading[i]);

				if (!found)
					fail_msg("width %d: `%s` is not where it belongs", width,
					         heading[i]);
				at = found;
			}
			free(text);
		}
	}
}

static void test_content(void **state)
{
	(void)state;
	char *us = sample_text(DOES_NOT_HOLD, SYSTEM_US, 80),
	     *si = sample_text(DOES_NOT_HOLD, SYSTEM_SI, 80);

	/* 12.125 ft + 48 in */
	assert_non_null(strstr(us, "16 ft 1-1/2 in"));
	/* 16.125 ft = 4914.9 mm */
	assert_non_null(strstr(si, "4915 mm"));
	/* Capacity down: 512.9 lb; demand up: 236 lb. */
	assert_non_null(strstr(us, "512 lb"));
	/* The reduction is refused for this reason. */
	assert_true(says(us, "The gaps between collectors are more than 6.7 ft"));
	assert_true(says(us, "- site.exposure = C. To find out: "));
	assert_true(says(us, "site.wind-speed 115 mph (--set)"));
	assert_true(says(us, "Not given, and nothing put in its place: roof.piece-length."));
	assert_true(says(us, "qh = 0.00256 Kz Kzt Kd Ke V^2 = 0.00256 x 0.605 x 1 x 0.85 x 1 x "
	                     "115^2 = 17.41 psf"));
	assert_true(says(us, "with the remembered curve (worst ratio 0.71) and with the safe side "
	                     "(worst ratio 1.01)"));
	/* 1/8 in to 11/64 in, as bits are sold */
	assert_true(says(us, "1/8 in to 11/64 in"));
	/* 3.175 mm and 4.366 mm, to the bits inside */
	assert_true(says(si, "3.2 mm to 4.3 mm"));
	free(us);
	free(si);
}

static void test_one_attachment(void **state)
{
	(void)state;
	const struct check_options second = { .attachment = 2 };

	sample_job(&job, SYSTEM_US);
	sample_result(&result, &job, HOLDS, 6);
	char *text = text_of(80, &second);

	assert_non_null(strstr(text, "Attachment 2 in detail"));
	free(text);
}

/* The largest result still fits the document, and a result without attachments still prints. */
static void test_extremes(void **state)
{
	(void)state;
	const struct check_options options = { .attachment = 0 };

	sample_job(&job, SYSTEM_US);
	sample_result(&result, &job, HOLDS, ATTACHMENT_MAX);
	free(text_of(40, &options));
	sample_result(&result, &job, NEEDS_ENGINEER, 2);
	for (int i = 0; i < 2; i++)
		result.pass[i].attachments = result.pass[i].lines = result.pass[i].rafters = 0;
	char *text = text_of(80, &options);

	assert_null(strstr(text, "Where the attachments go"));
	free(text);
}

static char *json_text(void)
{
	char *text = NULL;
	size_t size = 0;
	FILE *f = open_memstream(&text, &size);

	assert_non_null(f);
	assert_int_equal(json_check_write(f, &job, &result), 0);
	fclose(f);
	return text;
}

static void test_json(void **state)
{
	(void)state;
	sample_job(&job, SYSTEM_SI);
	sample_result(&result, &job, HOLDS, 6);
	char *text = json_text();
	json_t *root = json_loads(text, JSON_REJECT_DUPLICATES, NULL);
	const char *unit = NULL, *verdict = NULL, *caution = NULL;
	double qh = 0.0, ratio = 0.0;

	assert_non_null(root);
	assert_int_equal(json_unpack(root, "{s:s, s:s, s:{s:{s:{s:F, s:s}}}, s:[{}, {s:F}]}",
	                             "verdict", &verdict, "caution", &caution, "loads", "wind",
	                             "qh", "value", &qh, "unit", &unit, "passes", "ratio", &ratio),
	                 0);
	assert_string_equal(verdict, "holds");
	assert_string_equal(caution, caution_result);
	assert_string_equal(unit, "kPa");
	/* 17.41 psf x 0.0478802589... kPa */
	assert_near(qh, 17.41 * 0.04788025898, 1e-9);
	assert_near(ratio, 0.86, 1e-11);
	json_decref(root);
	free(text);
}

/* Whichever allocation fails, the writer says so and writes nothing. */
static int allocations_left;

static void *fail_later(size_t size)
{
	return allocations_left-- > 0 ? malloc(size) : NULL;
}

static void test_json_memory(void **state)
{
	(void)state;
	char *text = NULL;
	size_t size = 0;
	int status = -1;

	sample_job(&job, SYSTEM_US);
	sample_result(&result, &job, HOLDS, 2);
	json_set_alloc_funcs(fail_later, free);
	for (int n = 0; n < 100000 && status != 0; n += n < 200 ? 1 : 97) {
		FILE *f = open_memstream(&text, &size);

		assert_non_null(f);
		allocations_left = n;
		status = json_check_write(f, &job, &result);
		fclose(f);
		free(text);
	}
	json_set_alloc_funcs(malloc, free);
	assert_int_equal(status, 0);
}

static void test_full_stream(void **state)
{
	(void)state;
	FILE *f = fopen("/dev/full", "w");

	assert_non_null(f);
	sample_job(&job, SYSTEM_US);
	sample_result(&result, &job, HOLDS, 2);
	/* Either the writer notices or the flush does. */
	const int written = json_check_write(f, &job, &result);

	assert_true(fclose(f) != 0 || written != 0);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_first_line),  cmocka_unit_test(test_order),
		cmocka_unit_test(test_content),     cmocka_unit_test(test_one_attachment),
		cmocka_unit_test(test_extremes),    cmocka_unit_test(test_json),
		cmocka_unit_test(test_json_memory), cmocka_unit_test(test_full_stream),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
