/* SPDX-License-Identifier: MIT */
/* Ground snow of a listed place in Alaska; obstacles on and off the plane of the roof. */
#include "job/job_read.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "example.h"
#include "near.h"
#include "table/lookup_snow.h"

#define PSF (N_PER_LBF / (M_PER_FT * M_PER_FT))

static struct job job;
static struct problem_list problems;
static char text[EXAMPLE_MAX];

static void start(void)
{
	memset(&problems, 0, sizeof problems);
	example_read(text);
}

static bool read_text(void)
{
	return job_read_memory("house.xml", text, strlen(text), NULL, 0, &job, &problems);
}

static void snow(const char *ground, const char *level)
{
	start();
	example_change(text, "ground-snow=\"0 psf\"", ground);
	example_change(text, "ground-snow-level=\"service\"", level);
}

/* Every place gives its pg at service level; the table's rows are the list. */
static void test_places(void **state)
{
	char place[80];

	(void)state;
	for (int i = 0; i < TABLE_SNOW_GROUND_ALASKA_COUNT; i++) {
		snprintf(place, sizeof place, "snow-place=\"%s\"",
			 table_snow_ground_alaska[i].place);
		snow(place, "");
		assert_true(read_text());
		assert_near(job.site.ground_snow, table_snow_ground_alaska[i].pg_psf * PSF, 1e-12);
		assert_int_equal(job.site.ground_snow_level, SNOW_SERVICE);
		assert_true(job.site.snow_from_place && job_given(&job, FIELD_SITE_GROUND_SNOW));
	}
}

static void test_beside_a_figure(void **state)
{
	(void)state;
	snow("ground-snow=\"55 psf\" snow-place=\"Juneau\"", "ground-snow-level=\"service\"");
	assert_true(read_text());
	assert_near(job.site.ground_snow, 55 * PSF, 1e-12);
	assert_false(job.site.snow_from_place);
	/* the place does not say what an own figure is */
	snow("ground-snow=\"55 psf\" snow-place=\"Juneau\"", "");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_MISSING);
	assert_string_equal(problems.item[0].field, "site.ground-snow-level");
}

static void test_refused(void **state)
{
	(void)state;
	snow("snow-place=\"Juno\"", "");
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_NOT_A_CHOICE);
	assert_string_equal(problems.item[0].field, "site.snow-place");
	/* service level, never with 7-22 */
	snow("snow-place=\"Juneau\"", "");
	example_change(text, "code=\"asce7-16\"", "code=\"asce7-22\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_LEVEL);
	snow("snow-place=\"Juneau\"", "");
	example_change(text, "code=\"asce7-16\"", "code=\"asce7-10\"");
	assert_true(read_text());
	/* neither figure nor place */
	snow("", "ground-snow-level=\"service\"");
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_MISSING);
	assert_string_equal(problems.item[0].field, "site.ground-snow");
}

/* The side plane is 42 ft 8 in long at the eave (hip) and 15 ft 4 in on plan to the ridge; at 13 ft
   up the slope of 5:12 the hips stand 12 ft in. The gable's plane is 42 ft by 16.61 ft. */
static void test_obstacles(void **state)
{
	static const struct {
		const char *form, *x, *y;
		bool good;
	} row[] = {
		{"form=\"hip\" plane=\"side\"", "11 ft", "13 ft",
		 true}, /* its right edge is 13 ft: over the hip */
		{"form=\"hip\" plane=\"side\"", "9 ft 11 in", "13 ft",
		 false}, /* ends 1 in short of the hip */
		{"form=\"hip\" plane=\"side\"", "10 ft 1 in", "13 ft", true}, /* 1 in past it */
		{"form=\"hip\" plane=\"side\"", "30 ft 7 in", "13 ft", true},
		{"form=\"hip\" plane=\"side\"", "30 ft 9 in", "13 ft", false},
		{"form=\"hip\" plane=\"end\"", "2 ft", "13 ft", false},
		{"form=\"gable\"", "9 ft 11 in", "13 ft", true},
		{"form=\"gable\"", "41 ft 11 in", "13 ft", true},
		{"form=\"gable\"", "42 ft 1 in", "13 ft", false},
		{"form=\"gable\"", "1 ft", "16 ft 7 in", true},
		{"form=\"gable\"", "1 ft", "16 ft 8 in", false},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		char obstacle[200];

		start();
		example_change(text, "form=\"gable\"", row[i].form);
		example_change(text, "at=\"11 ft 0 in\"", "at=\"15 ft\"");
		if (strstr(row[i].form, "end"))
			example_change(text, "columns=\"2\" column-gap=\"1 in\"", "columns=\"1\"");
		snprintf(obstacle, sizeof obstacle,
			 "<obstacle x=\"%s\" y=\"%s\" width=\"24 in\" height=\"30 in\"/></job>",
			 row[i].x, row[i].y);
		example_change(text, "</job>", obstacle);
		if (read_text() != row[i].good)
			fail_msg("row %zu: %s", i,
				 problems.count > 0 ? problems.item[0].field : "read");
		if (!row[i].good) {
			assert_int_equal(problems.count, 1);
			assert_int_equal(problems.item[0].code, PROBLEM_OFF_ROOF);
			assert_string_equal(problems.item[0].field, "obstacle[1].x, obstacle[1].y");
		}
	}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(test_places),
		cmocka_unit_test(test_beside_a_figure),
		cmocka_unit_test(test_refused),
		cmocka_unit_test(test_obstacles),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
