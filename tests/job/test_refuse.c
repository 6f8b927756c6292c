/* SPDX-License-Identifier: MIT */
/* The example with something wrong in it, and what is told: code, field and line. */
#include "job/job_read.h"

#include <stdio.h>
#include <string.h>

#include "example.h"
#include "near.h"

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

static bool read_with(const char *override)
{
	return job_read_memory("house.xml", text, strlen(text), &override, 1, &job, &problems);
}

/* One override wrong: told as `--set`, without a line. */
static void test_bad_overrides(void **state)
{
	static const struct {
		const char *text;
		enum problem_code code;
		const char *field, *accepted;
	} row[] = {
		{"roof.pitch", PROBLEM_USAGE, "", "roof.pitch=6:12"},
		{"pitch=6:12", PROBLEM_USAGE, "", "roof.pitch=6:12"},
		{"", PROBLEM_USAGE, "", "path=value"},
		{"roof.ptich=6:12", PROBLEM_UNKNOWN_FIELD, "roof.ptich", "roof.pitch"},
		{"roofs.pitch=6:12", PROBLEM_UNKNOWN_FIELD, "roofs.pitch", "roof"},
		{"roof[1].pitch=6:12", PROBLEM_UNKNOWN_FIELD, "roof[1].pitch", "there is one"},
		{"pipe.diameter=1 in", PROBLEM_UNKNOWN_FIELD, "pipe.diameter",
		 "pipe[1] to pipe[2]"},
		{"pipe[3].diameter=1 in", PROBLEM_UNKNOWN_FIELD, "pipe[3].diameter",
		 "pipe[1] to pipe[2]"},
		{"pipe[0].diameter=1 in", PROBLEM_UNKNOWN_FIELD, "pipe[0].diameter", "pipe[2]"},
		{"pipe[x].diameter=1 in", PROBLEM_UNKNOWN_FIELD, "pipe[x].diameter", "pipe[2]"},
		{"pipe[99999999999999999999].diameter=1 in", PROBLEM_UNKNOWN_FIELD,
		 "pipe[99999999999999999999].diameter", "pipe[2]"},
		{"rafter[1].at=1 in", PROBLEM_UNKNOWN_FIELD, "rafter[1].at", "has none"},
		{"roof.pitch=steep", PROBLEM_NOT_A_VALUE, "roof.pitch", "0:12 to 24:12"},
		{"roof.pitch=60:12", PROBLEM_OUT_OF_RANGE, "roof.pitch", "0:12 to 24:12"},
		{"roof.pitch=unknown", PROBLEM_NOT_A_VALUE, "roof.pitch", "6:12"},
		{"site.wind-speed=115", PROBLEM_WRONG_UNIT, "site.wind-speed", "mph, m/s, km/h"},
		{"job.title=\xFF", PROBLEM_NOT_A_VALUE, "job.title", "letters"},
		{"pipe[1].at=43 ft", PROBLEM_OFF_ROOF, "pipe[1].at", "42 ft 0 in"},
		{"collector.left=34 ft", PROBLEM_OFF_ROOF,
		 "collector.left, collector.columns, building.length", "42 ft 0 in"},
	};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const struct problem *p = &problems.item[0];

		start(NULL);
		if (read_with(row[i].text) || problems.count != 1 || p->code != row[i].code ||
		    strcmp(p->field, row[i].field) != 0 || strcmp(p->file, "--set") != 0 ||
		    p->line != 0 || !strstr(p->accepted, row[i].accepted)) {
			example_print(&problems);
			fail_msg("`%s`: want %d at %s", row[i].text, row[i].code, row[i].field);
		}
	}
	start(NULL);
	assert_false(job_read_memory("house.xml", text, strlen(text),
				     (const char *const[]){"roof.pitch=6:12", "roof.pitch=5:12"}, 2,
				     &job, &problems));
	assert_int_equal(problems.item[0].code, PROBLEM_TWICE);
}

/* The example with one thing changed: exactly one problem, at the line of the change. */
static const struct {
	const char *from, *to;
	enum problem_code code;
	const char *field, *accepted;
} one[] = {
	/* values */
	{"wind-speed=\"115 mph\"", "", PROBLEM_MISSING, "site.wind-speed", "85 mph to 250 mph"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"115 psf\"", PROBLEM_WRONG_UNIT, "site.wind-speed",
	 "mph, m/s"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"115\"", PROBLEM_WRONG_UNIT, "site.wind-speed",
	 "115 mph"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"1150 mph\"", PROBLEM_OUT_OF_RANGE,
	 "site.wind-speed", "250 mph"},
	/* 3-second service speeds of older codes end at about 85 */
	{"wind-speed=\"115 mph\"", "wind-speed=\"84.9 mph\"", PROBLEM_OUT_OF_RANGE,
	 "site.wind-speed", "85 mph"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"fast\"", PROBLEM_NOT_A_VALUE, "site.wind-speed",
	 "115 mph"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"\"", PROBLEM_NOT_A_VALUE, "site.wind-speed",
	 "115 mph"},
	{"wind-speed=\"115 mph\"", "wind-speed=\"unknown\"", PROBLEM_NOT_A_VALUE, "site.wind-speed",
	 "115 mph"},
	{"wind-speed=\"115 mph\"", "wind-sped=\"115 mph\" wind-speed=\"115 mph\"",
	 PROBLEM_UNKNOWN_FIELD, "site.wind-sped", "site.wind-speed"},
	{"pitch=\"5:12\"", "pitch=\"0:0\"", PROBLEM_NOT_A_VALUE, "roof.pitch", "0:12 to 24:12"},
	{"pitch=\"5:12\"", "pitch=\"60:12\"", PROBLEM_OUT_OF_RANGE, "roof.pitch", "0:12 to 24:12"},
	{"pitch=\"5:12\"", "pitch=\"-1:12\"", PROBLEM_OUT_OF_RANGE, "roof.pitch", "0:12 to 24:12"},
	{"pitch=\"5:12\"", "pitch=\"5\"", PROBLEM_WRONG_UNIT, "roof.pitch", "rise:run"},
	{"ground-snow=\"0 psf\"", "ground-snow=\"-5 psf\"", PROBLEM_OUT_OF_RANGE,
	 "site.ground-snow", "0 psf"},
	{"layers=\"1\"", "layers=\"1.5\"", PROBLEM_NOT_A_VALUE, "roof.layers", "a whole number"},
	{"layers=\"1\"", "layers=\"0\"", PROBLEM_OUT_OF_RANGE, "roof.layers", "1 to 6"},
	{"exposure=\"B\"", "exposure=\"b\"", PROBLEM_NOT_A_CHOICE, "site.exposure", "B, C, D"},
	{"code=\"asce7-16\"", "code=\"asce7-05\"", PROBLEM_NOT_A_CHOICE, "site.code", "asce7-10"},
	{"covering=\"asphalt-laminated\"",
	 "covering=\"a-key-of-more-than-forty-seven-letters-is-too-long\"", PROBLEM_NOT_A_VALUE,
	 "roof.covering", "at most 47"},
	{"size=\"2x6\"", "size=\"2x7\"", PROBLEM_NOT_A_CHOICE, "framing.size", "2x6"},
	{"size=\"2x6\"", "", PROBLEM_MISSING, "framing.size", "breadth and depth"},
	{"size=\"2x6\"", "breadth=\"1-1/2 in\"", PROBLEM_MISSING, "framing.depth", "5-1/2 in"},
	{"size=\"2x6\"", "size=\"2x6\" depth=\"6 in\"", PROBLEM_DISAGREE,
	 "framing.size, framing.breadth, framing.depth", "alone"},
	{"size=\"2x6\"", "breadth=\"5-1/2 in\" depth=\"1-1/2 in\"", PROBLEM_DISAGREE,
	 "framing.breadth, framing.depth", "thin side"},
	{"spacing=\"16 in\"", "", PROBLEM_MISSING, "framing.spacing", "16 in"},
	{"first=\"8 in\"", "", PROBLEM_MISSING, "framing.first", "8 in"},
	{"span=\"11 ft 0 in\"", "", PROBLEM_MISSING, "framing.span", "level"},
	{"column-gap=\"1 in\"", "", PROBLEM_MISSING, "collector.column-gap", "1 in"},
	{"columns=\"2\"", "columns=\"2\" rows=\"2\" row-gap=\"-1 in\" ", PROBLEM_OUT_OF_RANGE,
	 "collector.row-gap", "0 in"},
	{"filled-weight=\"113 lb\"", "", PROBLEM_MISSING, "collector.filled-weight",
	 "fluid-volume"},
	{"</job>", "<earthquake SDS=\"1\" Ss=\"1\" Fa=\"1\"/></job>", PROBLEM_DISAGREE,
	 "earthquake.SDS, earthquake.Ss, earthquake.Fa", "SDS alone"},
	{"</job>", "<earthquake Ss=\"1\"/></job>", PROBLEM_MISSING, "earthquake.Ss, earthquake.Fa", "both"},
	{"</job>", "<earthquake Fa=\"1\"/></job>", PROBLEM_MISSING, "earthquake.Ss, earthquake.Fa", "both"},
	{"</job>", "<snow local-factor=\"0.8\"/></job>", PROBLEM_MISSING, "snow.local-rule",
	 "name of the rule"},
	{"</job>", "<snow drift-load=\"20 psf\"/></job>", PROBLEM_MISSING, "snow.drift-load, snow.drift-width", "both"},
	{"</job>", "<snow drift-load=\"20 psf\" drift-width=\"6 ft\"/></job>", PROBLEM_MISSING, "snow.drift-source", "page"},
	{"</job>", "<snow lower-roof=\"yes\"/></job>", PROBLEM_MISSING, "snow.lower-roof-width",
	 "level width"},
	{"<fastener", "<fastener count=\"2\"", PROBLEM_MISSING, "fastener.spacing", "2 in"},
	/* elements and structure */
	{"<rail kind=\"rails\" lower-inset=\"16 in\" upper-inset=\"16 in\"/>", "", PROBLEM_MISSING,
	 "rail", "kind, lower-inset, upper-inset"},
	{"<pipe diameter=\"1/4 in\"/>", "<pip diameter=\"1/4 in\"/>", PROBLEM_UNKNOWN_FIELD, "pip",
	 "pipe"},
	{"<pipe diameter=\"1/4 in\"/>", "<pipe/>", PROBLEM_MISSING, "pipe[2].diameter", "7/8 in"},
	{"<pipe diameter=\"1/4 in\"/>", "<rail kind=\"rails\"/>", PROBLEM_TWICE, "rail", "line"},
	{"<pipe diameter=\"1/4 in\"/>", "<rafter at=\"3 in\"/>", PROBLEM_UNKNOWN_FIELD, "rafter",
	 "inside framing"},
	{"<pipe diameter=\"1/4 in\"/>", "note to self", PROBLEM_UNKNOWN_FIELD, "job",
	 "no text between tags"},
	{"<pipe diameter=\"1/4 in\"/>", "<note><a x='1'>b</a><c/></note>", PROBLEM_UNKNOWN_FIELD,
	 "note", "coefficient"},
	{"exposure=\"B\"", "exposure=\"B\" exposure=\"C\"", PROBLEM_TWICE, "exposure", "once"},
	/* between fields */
	{"first=\"8 in\"", "first=\"20 ft\" ", PROBLEM_NONE, "", ""},
	{"length=\"40 ft\" width=\"28 ft\"", "length=\"24 ft\" width=\"28 ft\"", PROBLEM_NONE, "",
	 ""},
	{"left=\"12 ft 0 in\"", "left=\"33 ft 11 in\"", PROBLEM_NONE, "", ""},
	/* two collectors of 4 ft and 1 in: 33 ft 11 in reach 42 ft 0 in, the roof's length with
	   its overhangs */
	{"left=\"12 ft 0 in\"", "left=\"34 ft 0 in\"", PROBLEM_OFF_ROOF,
	 "collector.left, collector.columns, building.length", "42 ft 0 in"},
	/* (14 ft + 16 in) / cos atan(5/12) = 15.333 x 13/12 = 16.611 ft; the collector is 8 ft */
	{"lower=\"5 ft 0 in\"", "lower=\"8 ft 7-1/4 in\"", PROBLEM_NONE, "", ""},
	{"lower=\"5 ft 0 in\"", "lower=\"8 ft 7-1/2 in\"", PROBLEM_OFF_ROOF,
	 "collector.lower, collector.rows, building.width, roof.pitch", "16 ft 7-5/16 in"},
	{"length=\"8 ft\" width=\"4 ft\"", "length=\"4 ft\" width=\"8 ft\"", PROBLEM_DISAGREE,
	 "collector.width, collector.length", "long side"},
	{"filled-weight=\"113 lb\"", "filled-weight=\"104 lb\"", PROBLEM_DISAGREE,
	 "collector.filled-weight, collector.dry-weight", "dry weight"},
	{"filled-weight=\"113 lb\"", "filled-weight=\"105 lb\"", PROBLEM_NONE, "", ""},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"47 in\" upper-inset=\"48 in\"", PROBLEM_NONE, "", ""},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"48 in\" upper-inset=\"48 in\"", PROBLEM_DISAGREE,
	 "rail.lower-inset, rail.upper-inset", "8 ft 0 in"},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"16 in\" upper-inset=\"16 in\" lower-inset-max=\"16 in\"", PROBLEM_NONE, "", ""},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"16 in\" upper-inset=\"16 in\" lower-inset-max=\"15 in\"", PROBLEM_DISAGREE,
	 "rail.lower-inset, rail.lower-inset-max", "at least the inset itself"},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"16 in\" upper-inset=\"16 in\" upper-inset-max=\"15 in\"", PROBLEM_DISAGREE,
	 "rail.upper-inset, rail.upper-inset-max", "at least the inset itself"},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"16 in\" upper-inset=\"16 in\" lower-inset-max=\"50 in\" upper-inset-max=\"46 in\"", PROBLEM_DISAGREE,
	 "rail.lower-inset-max, rail.upper-inset-max", "8 ft 0 in"},
	{"lower-inset=\"16 in\" upper-inset=\"16 in\"",
	 "lower-inset=\"16 in\" upper-inset=\"16 in\" lower-inset-max=\"49 in\" upper-inset-max=\"46 in\"", PROBLEM_NONE, "", ""},
	{"form=\"gable\"", "form=\"flat\"", PROBLEM_DISAGREE, "building.form, roof.pitch", "7 deg"},
	/* the rise is 14 ft x 5/12 = 5.833 ft; half of it is 2 ft 11 in, and the least of the
	   field 4 ft */
	{"mean-roof-height=\"18 ft\"", "mean-roof-height=\"4 ft\"", PROBLEM_NONE, "", ""},
	{"span=\"11 ft 0 in\"", "span=\"15 ft\"", PROBLEM_NONE, "", ""},
	{"span=\"11 ft 0 in\"", "span=\"15 ft 1 in\"", PROBLEM_DISAGREE,
	 "framing.span, building.width", "14 ft 0 in"},
	{"length=\"4 in\" thread-length=\"2-11/16 in\"",
	 "length=\"4 in\" thread-length=\"4-1/8 in\"", PROBLEM_DISAGREE,
	 "fastener.thread-length, fastener.length", "no more thread"},
	{"topography=\"none\"", "topography=\"described\"", PROBLEM_MISSING, "site.Kzt", "26.8"},
	{"topography=\"none\"", "topography=\"none\" Kzt=\"1.3\"", PROBLEM_DISAGREE,
	 "site.Kzt, site.topography", "described"},
	{"topography=\"none\"", "topography=\"described\" Kzt=\"1.3\"", PROBLEM_NONE, "", ""},
	{"<pipe diameter=\"1/4 in\"/>",
	 "<hill shape=\"ridge\" height=\"99 ft\" half-length=\"300 ft\" distance=\"5 ft\"/>",
	 PROBLEM_DISAGREE, "hill, site.topography", "described"},
	{"clearance=\"3 in\"", "clearance=\"3 in\" high-edge=\"2-7/8 in\"", PROBLEM_DISAGREE,
	 "collector.high-edge, collector.clearance", "no less than the clearance"},
	{"clearance=\"3 in\"", "clearance=\"3 in\" high-edge=\"8 ft 4 in\"", PROBLEM_DISAGREE,
	 "collector.high-edge, collector.clearance", "at most 8 ft 3 in"},
	{"clearance=\"3 in\"", "clearance=\"3 in\" high-edge=\"8 ft 3 in\"", PROBLEM_NONE, "", ""},
	/* 4 ft of 8 are 30 degrees */
	{"clearance=\"3 in\"", "clearance=\"3 in\" high-edge=\"51 in\" tilt=\"31.1 deg\"",
	 PROBLEM_DISAGREE, "collector.tilt, collector.high-edge", "the tilt alone"},
	{"clearance=\"3 in\"", "clearance=\"3 in\" high-edge=\"51 in\" tilt=\"30.9 deg\"",
	 PROBLEM_NONE, "", ""},
	{"form=\"gable\"", "form=\"gable\" plane=\"end\"", PROBLEM_DISAGREE,
	 "building.plane, building.form", "hip"},
	{"ground-snow-level=\"service\"", "ground-snow-level=\"strength\"", PROBLEM_NONE, "",
	 ""}, /* nothing of snow */
	{"max-spacing=\"48 in\"", "max-spacing=\"48 in\" spacing=\"64 in\"", PROBLEM_DISAGREE,
	 "mount.spacing, mount.max-spacing", "maker"},
	{"course-exposure=\"5-5/8 in\"", "course-exposure=\"5-5/8 in\" piece-length=\"5-5/8 in\"",
	 PROBLEM_DISAGREE, "roof.course-exposure, roof.piece-length", "less than"},
	{"at=\"11 ft 0 in\"", "at=\"43 ft\"", PROBLEM_OFF_ROOF, "pipe[1].at", "42 ft 0 in"},
	{"up=\"13 ft 6 in\"", "up=\"17 ft\"", PROBLEM_OFF_ROOF, "pipe[1].up", "16 ft 7-5/16 in"},
	{"<pipe diameter=\"1/4 in\"/>", "<pipe diameter=\"1/4 in\" at=\"3 ft\"/>", PROBLEM_MISSING,
	 "pipe[2].up", "both"},
	{"<pipe diameter=\"1/4 in\"/>",
	 "<pipe diameter=\"1/4 in\" insulated-diameter=\"3/16 in\"/>", PROBLEM_DISAGREE,
	 "pipe[2].insulated-diameter", "over the insulation"},
	{"<pipe diameter=\"1/4 in\"/>",
	 "<coefficient zone=\"2r\" GCp=\"2\" area=\"9 ft2\" source=\"p\"/>", PROBLEM_DISAGREE,
	 "coefficient[1].GCp", "minus"},
	{"<pipe diameter=\"1/4 in\"/>",
	 "<coefficient zone=\"down\" GCp=\"-2\" area=\"9 ft2\" source=\"p\"/>", PROBLEM_DISAGREE,
	 "coefficient[1].GCp", "plus for zone down"},
	{"<pipe diameter=\"1/4 in\"/>",
	 "<coefficient zone=\"3\" GCp=\"-2\" area=\"9 ft2\" source=\"p\"/>"
	 "<coefficient zone=\"3\" GCp=\"-3\" area=\"1296 in2\" source=\"q\"/>",
	 PROBLEM_TWICE, "coefficient[1], coefficient[2]", "once"},
	{"ties=\"yes\"/>", "ties=\"yes\"><rafter at=\"8 in\"/></framing>", PROBLEM_MISSING,
	 "rafter[2].at", "two or more"},
	{"ties=\"yes\"/>", "ties=\"yes\"><rafter at=\"8 in\"/><rafter at=\"8 in\"/></framing>",
	 PROBLEM_DISAGREE, "rafter[2].at", "more than 8 in"},
	{"ties=\"yes\"/>",
	 "ties=\"yes\"><rafter at=\"8 in\"/><rafter at=\"42 ft 1 in\"/></framing>",
	 PROBLEM_OFF_ROOF, "rafter[2].at", "42 ft 0 in"},
	{"ties=\"yes\"/>", "ties=\"yes\"><rafter at=\"9 in\"/><rafter at=\"24 in\"/></framing>",
	 PROBLEM_DISAGREE, "framing.first, rafter[1].at", "measured"},
};

static void test_one_thing_wrong(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof one / sizeof one[0]; i++) {
		const struct problem *p = &problems.item[0];
		bool good;
		int line;

		start(NULL);
		line = example_change(text, one[i].from, one[i].to);
		good = read_text();
		if (one[i].code == PROBLEM_NONE) {
			if (!good) {
				example_print(&problems);
				fail_msg("`%s` is refused", one[i].to);
			}
			continue;
		}
		if (good || problems.count != 1 || p->code != one[i].code ||
		    strcmp(p->field, one[i].field) != 0 || !strstr(p->accepted, one[i].accepted) ||
		    strcmp(p->file, "house.xml") != 0) {
			example_print(&problems);
			fail_msg("`%s`: want %d at %s, accepted %s", one[i].to, one[i].code,
				 one[i].field, one[i].accepted);
		}
		/* a whole element that is missing is told at the root, a field at its element or
		   cause; rows of a repeated element are told at their tag, which in the example
		   starts one line higher */
		if (one[i].code == PROBLEM_MISSING)
			assert_true(p->line > 0);
		else if (p->line != line &&
			 !(strncmp(one[i].field, "pipe[1]", 7) == 0 && p->line == line - 1))
			fail_msg("`%s`: told at line %d, want %d", one[i].to, p->line, line);
	}
}

/* What needs two changes to show. */
/* Hills and hips, which need several changes. */
static void test_wind_rules(void **state)
{
	(void)state;
	example_change(text, "topography=\"none\"", "topography=\"described\"");
	example_change(text, "<pipe diameter=\"1/4 in\"/>", "<hill shape=\"ridge\"/>");
	assert_false(read_text());
	assert_int_equal(problems.count, 3);
	assert_string_equal(problems.item[0].field, "hill.height");
	assert_string_equal(problems.item[1].field, "hill.half-length");
	assert_string_equal(problems.item[2].field, "hill.distance");
	start(NULL);
	example_change(text, "topography=\"none\"", "topography=\"described\" Kzt=\"1.2\"");
	example_change(text, "<pipe diameter=\"1/4 in\"/>",
		       "<hill shape=\"hill\" height=\"99 ft\" half-length=\"300 ft\" distance=\"5 ft\"/>");
	assert_false(read_text());
	assert_string_equal(problems.item[0].field, "site.Kzt, hill");
	start(NULL);
	/* the array's top is 13 ft up the slope, 12 ft on plan: so far in stands the hip; at the pipe 12.46 ft */
	example_change(text, "form=\"gable\"", "form=\"hip\" plane=\"side\"");
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_OFF_ROOF);
	assert_string_equal(problems.item[0].field, "pipe[1].at");
	start(NULL);
	example_change(text, "form=\"gable\"", "form=\"hip\" plane=\"side\"");
	example_change(text, "at=\"11 ft 0 in\"", "at=\"12 ft 6 in\"");
	assert_true(read_text());
	start(NULL);
	example_change(text, "form=\"gable\"", "form=\"hip\" plane=\"side\"");
	example_change(text, "at=\"11 ft 0 in\"", "at=\"12 ft 6 in\"");
	example_change(text, "left=\"12 ft 0 in\"", "left=\"11 ft 11 in\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_OFF_ROOF);
	assert_string_equal(problems.item[0].field,
			    "collector.left, collector.lower, building.plane");
	start(NULL); /* the end of the same roof is 30 ft 8 in wide: 12 ft from either corner are too many */
	example_change(text, "form=\"gable\"", "form=\"hip\" plane=\"end\"");
	example_change(text, "at=\"11 ft 0 in\"", "at=\"15 ft\"");
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_OFF_ROOF);
	start(NULL);
	example_change(text, "form=\"gable\"", "form=\"hip\" plane=\"side\"");
	example_change(text, "length=\"40 ft\"", "length=\"27 ft\"");
	example_change(text, "columns=\"2\" column-gap=\"1 in\"", "columns=\"1\"");
	assert_false(read_text());
	assert_string_equal(problems.item[0].field, "building.length, building.width");
	start(NULL); /* tilted rows take up less of the roof than they are long */
	example_change(text, "lower=\"5 ft 0 in\"", "lower=\"9 ft\"");
	assert_false(read_text());
	start(NULL);
	example_change(text, "lower=\"5 ft 0 in\"", "lower=\"9 ft\" tilt=\"30 deg\"");
	assert_true(read_text());
}

static void test_pairs(void **state)
{
	(void)state;
	/* 12 ft + 8 x 4 ft + 7 x 1 in = 44 ft 7 in */
	example_change(text, "columns=\"2\"", "columns=\"8\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_OFF_ROOF);
	assert_string_equal(problems.item[0].given,
			    "an array that ends 44 ft 7 in from the left rake edge");
	/* 65 collectors; they do not fit on the roof either, along the eave and up the slope */
	start(NULL);
	example_change(text, "columns=\"2\"", "columns=\"13\" rows=\"5\" row-gap=\"1 in\"");
	assert_false(read_text());
	assert_int_equal(problems.count, 3);
	assert_int_equal(problems.item[0].code, PROBLEM_OUT_OF_RANGE);
	assert_string_equal(problems.item[0].accepted, "at most 64 in one job");
	start(NULL);
	example_change(text, "ground-snow=\"0 psf\"", "ground-snow=\"30 psf\"");
	example_change(text, "ground-snow-level=\"service\"", "ground-snow-level=\"strength\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_LEVEL);
	start(NULL);
	example_change(text, "ground-snow=\"0 psf\"", "ground-snow=\"30 psf\"");
	example_change(text, "code=\"asce7-16\"", "code=\"asce7-22\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_LEVEL);
	start(NULL);
	example_change(text, "ground-snow=\"0 psf\"", "ground-snow=\"30 psf\"");
	example_change(text, "code=\"asce7-16\"", "code=\"asce7-22\"");
	example_change(text, "ground-snow-level=\"service\"", "ground-snow-level=\"strength\"");
	assert_true(read_text());
	/* 7-22 has SDS on its own maps */
	start(NULL);
	example_change(text, "</job>", "<earthquake Ss=\"1.3\" Fa=\"1.2\"/></job>");
	assert_true(read_text());
	example_change(text, "code=\"asce7-16\"", "code=\"asce7-22\"");
	assert_false(read_text());
	assert_string_equal(problems.item[0].field, "earthquake.Ss, site.code");
	/* flat: the limit is 7 deg */
	start(NULL);
	example_change(text, "form=\"gable\"", "form=\"flat\"");
	example_change(text, "pitch=\"5:12\"", "pitch=\"7 deg\"");
	assert_true(read_text());
	start(NULL);
	example_change(text, "form=\"gable\"", "form=\"flat\"");
	example_change(text, "pitch=\"5:12\"", "pitch=\"7.01 deg\"");
	assert_false(read_text());
	assert_int_equal(problems.item[0].code, PROBLEM_DISAGREE);
	/* rise 14 ft x 2 = 28 ft; half of it 14 ft */
	start(NULL);
	example_change(text, "pitch=\"5:12\"", "pitch=\"24:12\"");
	example_change(text, "mean-roof-height=\"18 ft\"", "mean-roof-height=\"13 ft 11 in\"");
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_string_equal(problems.item[0].field,
			    "building.mean-roof-height, building.width, roof.pitch");
	start(NULL);
	/* the first rafter may stand on the far edge of the roof, 18 ft and two overhangs of 1
	   ft away, not beyond */
	example_change(text, "first=\"8 in\"", "first=\"20 ft\"");
	assert_false(read_with("building.length=18 ft"));
	assert_int_equal(problems.count, 1);
	assert_string_equal(problems.item[0].field,
			    "collector.left, collector.columns, building.length");
	assert_false(read_with("building.length=17 ft 11 in"));
	/* and those two, again and new */
	assert_int_equal(problems.count, 3);
	assert_string_equal(problems.item[1].field, "framing.first");
	/* a rafter each 4 in from 8 in: 41 ft and two overhangs have (516 - 8) / 4 + 1 = 128, 42
	   ft have 131 */
	start(NULL);
	example_change(text, "spacing=\"16 in\"", "spacing=\"4 in\"");
	assert_true(read_with("building.length=41 ft"));
	assert_false(read_with("building.length=42 ft"));
	assert_int_equal(problems.count, 1);
	assert_string_equal(problems.item[0].field, "framing.spacing, building.length");
	assert_string_equal(problems.item[0].given, "131 rafters");
}

/* Everything wrong is told at once. */
static void test_all_at_once(void **state)
{
	(void)state;
	example_change(text, "code=\"asce7-16\"", "code=\"7-16\"");
	example_change(text, "wind-speed=\"115 mph\"", "");
	example_change(text, "ground-snow=\"0 psf\"", "ground-snow=\"-5 psf\"");
	example_change(text, "pitch=\"5:12\"", "pitch=\"60:12\"");
	example_change(text, "dead-load=\"10 psf\"", "dead-load=\"10 lb\"");
	example_change(text, "<pipe diameter=\"1/4 in\"/>", "<pipe/><extra/>");
	example_change(text, "left=\"12 ft 0 in\"", "left=\"40 ft\"");
	example_change(text, "thread-length=\"2-11/16 in\"", "thread-length=\"5 in\"");
	assert_false(read_with("mount.hight=3 in"));
	assert_int_equal(problems.count, 10);
	for (size_t i = 0; i < problems.count; i++)
		assert_true(problems.item[i].line > 0 ||
			    strcmp(problems.item[i].file, "--set") == 0);
}

/* More problems than the list holds: the rest is counted or the reading stops; memory is safe
   either way. */
static void test_too_many(void **state)
{
	char many[6000] = "";

	(void)state;
	for (int i = 0; i < 300; i++)
		strcat(many, "<pip a='1'/>");
	example_change(text, "<pipe diameter=\"1/4 in\"/>", many);
	assert_false(read_text());
	assert_int_equal(problems.count, PROBLEM_MAX);
	assert_true(problems.dropped > 0);
}

/* Too many rows are told once. */
static void test_too_many_rows(void **state)
{
	char many[1000] = "";

	(void)state;
	for (int i = 0; i < 12; i++)
		strcat(many, "<pipe diameter='1 in'/>");
	example_change(text, "<pipe diameter=\"1/4 in\"/>", many);
	assert_false(read_text());
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_OUT_OF_RANGE);
	assert_string_equal(problems.item[0].accepted, "at most 8 of them");
}

int main(void)
{
#define TEST(name) cmocka_unit_test_setup(name, start)
	const struct CMUnitTest tests[] = {
		TEST(test_bad_overrides), TEST(test_one_thing_wrong), TEST(test_pairs), TEST(test_wind_rules),
		TEST(test_all_at_once),   TEST(test_too_many),        TEST(test_too_many_rows),
	};

	return cmocka_run_group_tests(tests, NULL, NULL);
}
