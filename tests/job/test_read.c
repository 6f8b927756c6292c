/* SPDX-License-Identifier: MIT */
/* The example as it is read, then the example with one thing wrong in it, and what is told:
   code, field and line. */
#include "job/job_read.h"

#include <stdio.h>
#include <string.h>

#include "example.h"
#include "near.h"

#define IN 0.0254
#define FT 0.3048
#define LBF 4.4482216152605
#define PSF (LBF / (FT * FT))

static struct job job;
static struct problem_list problems;
static char text[EXAMPLE_MAX];

static int start(void **state)
{
	(void)state;
	memset(&problems, 0, sizeof problems);
	example_read(text);
	return 0;
}

static bool read_text(void)
{
	return job_read_memory("house.xml", text, strlen(text), NULL, 0, &job, &problems);
}

/* The example's values, worked out again from its text. */
static void test_example(void **state)
{
	(void)state;
	if (!read_text()) {
		example_print(&problems);
		fail();
	}
	assert_int_equal(problems.count, 0);
	assert_int_equal(job.units, SYSTEM_US);
	assert_int_equal(job.site.code, ASCE7_16);
	assert_near(job.site.wind_speed, 115 * 0.44704, 1e-15);
	assert_int_equal(job.site.exposure, EXPOSURE_B);
	assert_within(job.site.ground_snow, 0.0, 0.0);
	assert_near(job.building.length, 40 * FT, 1e-15);
	assert_near(job.roof.pitch, 0.39479111969976156, 1e-15); /* atan(5/12) by bc */
	assert_string_equal(job.roof.covering, "asphalt-laminated");
	assert_near(job.roof.course_exposure, 5.625 * IN, 1e-15);
	assert_int_equal(job.roof.layers, 1);
	assert_near(job.roof.dead_load, 10 * PSF, 1e-15);
	assert_string_equal(job.framing.size, "2x6");
	/* PS 20 dressed size */
	assert_near(job.framing.breadth, 1.5 * IN, 1e-15);
	assert_near(job.framing.depth, 5.5 * IN, 1e-15);
	assert_near(job.framing.span, 11 * FT, 1e-15);
	assert_near(job.collector.dry_weight, 105 * LBF, 1e-15);
	assert_near(job.collector.filled_weight, 113 * LBF, 1e-15);
	assert_int_equal(job.collector.columns, 2);
	assert_near(job.fastener.diameter, 0.3125 * IN, 1e-15);
	assert_int_equal(job.pipes, 2);
	assert_near(job.pipe[0].temperature, (350 + 459.67) * 5 / 9, 1e-15);
	assert_int_equal(job.pipe[0].count, 2);
	assert_int_equal(job.pipe[1].count, 1);
	assert_true(isnan(job.pipe[1].insulated_diameter));
	assert_int_equal(job.framing.measured, 0);
}

/* What the example leaves out. */
static void test_origins(void **state)
{
	(void)state;
	assert_true(read_text());
	assert_int_equal(job.origin[FIELD_SITE_WIND_SPEED], ORIGIN_FILE);
	assert_true(job_given(&job, FIELD_SITE_WIND_SPEED));
	assert_int_equal(job.origin[FIELD_SITE_METHOD], ORIGIN_DEFAULT);
	assert_false(job_given(&job, FIELD_SITE_METHOD));
	assert_int_equal(job.origin[FIELD_SITE_ROOF_SNOW_MINIMUM], ORIGIN_ABSENT);
	assert_true(isnan(job.site.roof_snow_minimum));
	assert_near(job.collector.hardware_weight, 0.5 * PSF, 1e-15);
	assert_near(job.fastener.drilling_tolerance, 0.25 * IN, 1e-15);
	assert_int_equal(job.collector.rows, 1);
	assert_within(job.collector.row_gap, 0.0, 0.0);
	assert_true(isnan(job.rail.inertia));
	/* the filled weight is given: what fills it is nobody's question */
	assert_int_equal(job.origin[FIELD_COLLECTOR_FLUID], ORIGIN_ABSENT);
}

/* Unknown facts: left out or written as unknown, the same assumption is made and marked. */
static void test_assumptions(void **state)
{
	(void)state;
	for (int written = 0; written < 2; written++) {
		start(NULL);
		example_change(text, "exposure=\"B\"", written ? "exposure=\"unknown\"" : "");
		example_change(text, "topography=\"none\"",
			       written ? "topography=\"unknown\"" : "");
		example_change(text, "species=\"Spruce-Pine-Fir\"",
			       written ? "species=\"unknown\"" : "");
		example_change(text, "grade=\"No.2\"", written ? "grade=\"unknown\"" : "");
		example_change(text, "layers=\"1\"", written ? "layers=\"unknown\"" : "");
		example_change(text, "snow-exposure=\"partially-exposed\"",
			       written ? "snow-exposure=\"unknown\"" : "");
		example_change(text, "ties=\"yes\"", written ? "ties=\"unknown\"" : "");
		example_change(text, "deck=\"plywood\"", written ? "deck=\"unknown\"" : "");
		if (!read_text()) {
			example_print(&problems);
			fail();
		}
		assert_int_equal(job.site.exposure, EXPOSURE_C);
		assert_int_equal(job.origin[FIELD_SITE_EXPOSURE], ORIGIN_ASSUMED);
		assert_int_equal(job.site.topography, TOPOGRAPHY_UNSURE);
		assert_string_equal(job.framing.species, "Spruce-Pine-Fir (South)");
		assert_string_equal(job.framing.grade, "No.3");
		assert_int_equal(job.roof.layers, 2);
		assert_int_equal(job.site.snow_exposure, SNOW_SHELTERED);
		assert_int_equal(job.framing.ties, ANSWER_NO);
		assert_int_equal(job.roof.deck, DECK_UNKNOWN);
		assert_int_equal(job.origin[FIELD_ROOF_DECK], ORIGIN_ABSENT);
		assert_int_equal(job.origin[FIELD_FRAMING_TIES], ORIGIN_ASSUMED);
	}
}

/* The filled weight is computed from a volume: then the fluid is asked, and the heaviest
   assumed. */
static void test_fluid(void **state)
{
	(void)state;
	example_change(text, "filled-weight=\"113 lb\"", "fluid-volume=\"0.8 gal\"");
	assert_true(read_text());
	assert_int_equal(job.collector.fluid, FLUID_GLYCOL);
	assert_int_equal(job.origin[FIELD_COLLECTOR_FLUID], ORIGIN_ASSUMED);
	assert_true(isnan(job.collector.filled_weight));
	start(NULL);
	example_change(text, "filled-weight=\"113 lb\"", "");
	example_change(text, "kind=\"flat-plate\"", "kind=\"pv\"");
	assert_true(read_text());
	assert_int_equal(job.collector.fluid, FLUID_NONE);
}

static void test_measured_rafters(void **state)
{
	(void)state;
	example_change(text, "spacing=\"16 in\"", "");
	example_change(text, "first=\"8 in\"", "");
	example_change(text, "ties=\"yes\"/>",
		       "ties=\"yes\"><rafter at=\"8 in\"/><rafter at=\"2 ft 1 in\"/><rafter at=\"3 "
		       "ft 6-1/2 in\"/></framing>");
	if (!read_text()) {
		example_print(&problems);
		fail();
	}
	assert_int_equal(job.framing.measured, 3);
	assert_near(job.framing.at[0], 8 * IN, 1e-15);
	assert_near(job.framing.at[2], 42.5 * IN, 1e-15);
	assert_near(job.framing.first, 8 * IN, 1e-15);
	/* the wider of 17 and 17-1/2 in */
	assert_near(job.framing.spacing, 17.5 * IN, 1e-14);
	assert_int_equal(job.origin[FIELD_RAFTER_AT], ORIGIN_FILE);
}

static void test_coefficients(void **state)
{
	(void)state;
	example_change(
		text, "<pipe diameter=\"1/4 in\"/>",
		"<coefficient zone=\"1'\" GCp=\"-0.9\" area=\"100 ft2\" source=\"page 3 &amp; 4\"/>"
		"<coefficient zone=\"down\" GCp=\"0.3\" area=\"10 ft2\" source=\"page 5\"/>");
	assert_true(read_text());
	assert_int_equal(job.coefficients, 2);
	assert_string_equal(job.coefficient[0].zone, "1'");
	assert_string_equal(job.coefficient[0].source, "page 3 & 4");
	assert_near(job.coefficient[0].area, 100 * FT * FT, 1e-15);
	assert_near(job.coefficient[1].GCp, 0.3, 1e-15);
}

/* Sizes as people write them. */
static void test_sizes(void **state)
{
	static const struct {
		const char *written, *stored;
		double b, d; /* in */
	} size[] = {
		{"2 x 6", "2x6", 1.5, 5.5},
		{"2X10", "2x10", 1.5, 9.25},
		{"4\xC3\x97"
		 "8",
		 "4x8", 3.5, 7.25},
		{"2x6-full-sawn", "2x6-full-sawn", 2, 6},
		{"2x6-pre-1970", "2x6-pre-1970", 1.625, 5.5},
	};
	char to[40];

	(void)state;
	for (size_t i = 0; i < sizeof size / sizeof size[0]; i++) {
		start(NULL);
		snprintf(to, sizeof to, "size=\"%s\"", size[i].written);
		example_change(text, "size=\"2x6\"", to);
		assert_true(read_text());
		assert_string_equal(job.framing.size, size[i].stored);
		assert_row(size[i].written, job.framing.breadth, size[i].b * IN, 1e-12);
		assert_row(size[i].written, job.framing.depth, size[i].d * IN, 1e-12);
		assert_int_equal(job.origin[FIELD_FRAMING_DEPTH], ORIGIN_FILE);
	}
}

static void test_overrides(void **state)
{
	static const char *const set[] = {"roof.pitch=6:12",       " pipe[2].diameter = 1 in ",
					  "mount.spacing=unknown", "site.exposure=unknown",
					  "job.title=a=b",         "building.parapet=2 in"};

	(void)state;
	if (!job_read_memory("house.xml", text, strlen(text), set, sizeof set / sizeof set[0], &job,
			     &problems)) {
		example_print(&problems);
		fail();
	}
	assert_near(job.roof.pitch, 0.46364760900080612, 1e-15);
	assert_int_equal(job.origin[FIELD_ROOF_PITCH], ORIGIN_OVERRIDE);
	assert_near(job.pipe[1].diameter, IN, 1e-15);
	assert_near(job.pipe[0].diameter, 0.875 * IN, 1e-15);
	assert_int_equal(job.origin[FIELD_SITE_EXPOSURE], ORIGIN_ASSUMED);
	assert_int_equal(job.site.exposure, EXPOSURE_C);
	assert_string_equal(job.title, "a=b");
	assert_near(job.building.parapet, 2 * IN, 1e-15);
}

/* The order of elements and attributes is free. */
static void test_order(void **state)
{
	static struct job other;

	(void)state;
	assert_true(read_text());
	example_change(text, "code=\"asce7-16\" risk-category=\"II\" wind-speed=\"115 mph\"",
		       "wind-speed=\"115 mph\" risk-category=\"II\" code=\"asce7-16\"");
	example_change(text, "<rail kind=\"rails\" lower-inset=\"16 in\" upper-inset=\"16 in\"/>",
		       "");
	example_change(text, "</job>",
		       "<rail upper-inset='16 in' kind='rails' lower-inset='16 in'/></job>");
	assert_true(job_read_memory("other.xml", text, strlen(text), NULL, 0, &other, &problems));
	assert_memory_equal(&job, &other, sizeof job);
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup(name, start)
	const struct CMUnitTest tests[] = {
		TEST(test_example), TEST(test_origins),          TEST(test_assumptions),
		TEST(test_fluid),   TEST(test_measured_rafters), TEST(test_coefficients),
		TEST(test_sizes),   TEST(test_overrides),        TEST(test_order),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
