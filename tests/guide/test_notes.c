/* SPDX-License-Identifier: MIT */
/* How a page is handed out: order and kind of blocks, with and else, limits of slope, numbering,
   brief guides, drawings, unknown pages. On a small library, so that every line can be told
   beforehand. */
#include "near.h"

#include <math.h>
#include <pthread.h>
#include <string.h>

#include "sample.h"

static struct guide_library *lib;
static struct sample files;
static struct seen seen;

static int set_up(void **state)
{
	static struct problem_list problems;
	char line[1200];

	(void)state;
	sample_small(&files);
	lib = sample_open(&files, &problems);
	for (size_t i = 0; i < problems.count; i++)
		print_error("%s\n", problem_print(line, sizeof line, &problems.item[i]));
	return lib ? 0 : -1;
}

static int tear_down(void **state)
{
	(void)state;
	guide_close(lib);
	sample_free(&files);
	return 0;
}

static const char *notes(const char *key, const struct guide_sizes *sizes, enum unit_system units,
			 enum guide_depth depth)
{
	const struct guide_request request = {
		.key = key, .sizes = sizes, .units = units, .depth = depth};
	const struct guide_sink sink = seen_sink(&seen);
	struct problem_list problems = {0};

	assert_true(guide_notes(lib, &request, &sink, &problems));
	assert_false(problem_any(&problems));
	return seen.text;
}

/* In the order of the schema; nothing known. */
static void whole_page(void **state)
{
	static const char want[] =
		"title 0|names||barn board||\n"
		"paragraph 0|names|Also called|plank, slab||\n"
		"caution 0|names||Gives way.|our rule|\n"
		"heading 1|recognise||How to know it||\n"
		"bullet 0|recognise|Look|Boards.|derived|\n"
		"bullet 0|recognise|Age|Old.|confirmed|A book, p. 3\n"
		"heading 1|sheds||How it sheds water||\n"
		"paragraph 0|sheds||Like a barn & more.|our rule|\n"
		"heading 1|limits||Limits and numbers||\n"
		"bullet 0|limits|Least slope|3:12.|derived|\n"
		"bullet 0|limits|Weight|wet: 2 psf to 3 psf. Soaked.|from memory|\n"
		"bullet 0|limits|Weight|1 psf.|from memory|\n"
		"bullet 0|limits|Slippery for snow|no.|derived|\n"
		"heading 1|look-first||Look first||\n"
		"bullet 0|look-first||Below 4:12: Low.|derived|\n"
		"bullet 0|look-first||From 4:12 on: High.|derived|\n"
		"bullet 0|look-first||From 4:12 to below 8:12: Middle.|derived|\n"
		"heading 1|lifting||Lifting and cutting||\n"
		"bullet 0|lifting||Lift 1/4 in.|derived|\n"
		"heading 1|foot||The mount foot||\n"
		"bullet 0|foot|Choice 1|A post.|derived|\n"
		"caution 0|foot|Never|A bolt.|derived|\n"
		"heading 3|foot||Plate||\n"
		"bullet 0|foot|Down from the hole|at least 4 in. Seen.|derived|\n"
		"bullet 0|foot|To each side|From 4:12 on: at least 4 in.|derived|\n"
		"bullet 0|foot|To each side|Below 4:12: at least 6 in.|derived|\n"
		"heading 1|pipe||Pipes and cable||\n"
		"bullet 0|pipe|Hole|Oval.|derived|\n"
		"heading 1|valleys||Valleys, walls, edges||\n"
		"bullet 0|valleys||Away.|derived|\n"
		"heading 1|steps||Step by step||\n"
		"step 1|steps||First.|derived|\n"
		"step 2|steps||Second.|derived|\n"
		"step 3|steps||Third.|derived|\n"
		"heading 1|tools||Tools||\n"
		"bullet 0|tools||Hammer.|derived|\n"
		"heading 1|materials||Materials||\n"
		"bullet 0|materials||Plates.|derived|\n"
		"heading 1|inspection||Inspection||\n"
		"bullet 0|inspection||Look.|derived|\n"
		"heading 1|water-test||Water test||\n"
		"bullet 0|water-test||Hose.|derived|\n"
		"heading 1|failure||Signs that it fails||\n"
		"bullet 0|failure||Drip.|derived|\n"
		"heading 1|stop||Stop the work if||\n"
		"heading 2|stop||Stop anywhere||\n"
		"bullet 0|stop||fire|derived|\n"
		"heading 1|walking||Walking on it||\n"
		"bullet 0|walking||Softly.|derived|\n"
		"heading 1|call||Whom to call||\n"
		"bullet 0|call||Anybody.|derived|\n"
		"heading 1|cautions||Cautions||\n"
		"caution 0|cautions||Mind.|derived|\n";

	(void)state;
	assert_string_equal(notes("barn", NULL, SYSTEM_US, GUIDE_FULL), want);
}

static void refusal(void **state)
{
	(void)state;
	assert_string_equal(
		notes("nest", NULL, SYSTEM_US, GUIDE_FULL),
		"title 0|names||nest||\n"
		"caution 0|names||Do not open this covering with this guide.|our rule|\n"
		"caution 0|names||Gives way.|our rule|\n"
		"heading 1|recognise||How to know it||\n"
		"bullet 0|recognise|Look|Twigs.|derived|\n"
		"heading 1|reasons||Why this guide stops here||\n"
		"paragraph 0|reasons||Birds.|derived|\n"
		"heading 1|instead||What to do instead||\n"
		"bullet 0|instead||Wait.|derived|\n"
		"heading 1|call||Whom to call||\n"
		"bullet 0|call||Nobody.|derived|\n"
		"heading 1|cautions||Cautions||\n"
		"caution 0|cautions||Eggs.|derived|\n");
}

static bool says(const char *text, const char *what)
{
	return strstr(text, what) != NULL;
}

static void sizes_take_the_place_of_rules(void **state)
{
	struct guide_sizes s = guide_sizes_unknown();
	const char *text;

	(void)state;
	s.pipe_ellipse = 2.573 * M_PER_IN;
	text = notes("barn", &s, SYSTEM_US, GUIDE_FULL);
	assert_true(says(text, "|Hole|Oval.|")); /* one of two sizes is not enough */
	s.pipe_across = 2.375 * M_PER_IN;
	s.feet = 9;
	s.plate_down = 4.5 * M_PER_IN;
	text = notes("barn", &s, SYSTEM_US, GUIDE_FULL);
	assert_true(says(text, "|Hole|Hole 2-9/16 in by 2-3/8 in.|"));
	assert_true(says(text, "||9 plates.|"));
	assert_true(says(text, "on this roof at least 4-1/2 in; usually at least 4 in. Seen."));
	s.plate_down = 4 * M_PER_IN;
	assert_true(says(notes("barn", &s, SYSTEM_US, GUIDE_FULL), "on this roof at least 4 in. Seen."));
	text = notes("barn", &s, SYSTEM_SI, GUIDE_FULL);
	assert_true(says(text, "|Hole|Hole 65 mm by 60 mm.|"));
	assert_true(says(text, "|Least slope|14 deg.|"));
	assert_true(says(text, "wet: 9.8 kg/m2 to 15 kg/m2."));
}

/* At the limit, just below it, and far above. */
static void slope_chooses_claims(void **state)
{
	static const struct {
		double rise;
		bool low, high, middle;
	} row[] = {{3.999, true, false, false},
		   {4, false, true, true},
		   {7.999, false, true, true},
		   {8, false, true, false}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		struct guide_sizes s = guide_sizes_unknown();
		const char *text;

		s.pitch = atan(row[i].rise / 12.0);
		text = notes("barn", &s, SYSTEM_US, GUIDE_FULL);
		assert_int_equal(says(text, "||Low.|"), row[i].low);
		assert_int_equal(says(text, "||High.|"), row[i].high);
		assert_int_equal(says(text, "||Middle.|"), row[i].middle);
		assert_int_equal(says(text, "at least 6 in"), row[i].low);
		assert_false(says(text, "From 4:12"));
	}
}

static void brief_names_parts(void **state)
{
	const char *text = notes("barn", NULL, SYSTEM_US, GUIDE_BRIEF);

	(void)state;
	assert_true(says(text, "bullet 0|steps|See|Order of work||"));
	assert_false(says(text, "First."));
	assert_true(says(text, "step 1|steps||Third."));
	assert_true(says(text, "||fire|")); /* what stops the work is never left out */
	assert_true(says(text, "Gives way."));
}

static void unknown_page_is_a_problem(void **state)
{
	const struct guide_request request = {.key = "igloo"};
	const struct guide_sink sink = seen_sink(&seen);
	struct problem_list problems = {0};

	(void)state;
	assert_false(guide_notes(lib, &request, &sink, &problems));
	assert_int_equal(problems.count, 1);
	assert_int_equal(problems.item[0].code, PROBLEM_UNKNOWN_COVERING);
	assert_string_equal(problems.item[0].given, "igloo");
	assert_int_equal(seen.blocks, 0);
	assert_false(guide_page_find(lib, "igloo", NULL));
	assert_true(guide_page_find(lib, "nest", NULL));
}

static void numbers(void **state)
{
	const double psf = unit_to_si(1.0, UNIT_PSF);
	double low, high;

	(void)state;
	assert_true(guide_quantity(lib, "barn", "weight", &low, &high));
	assert_near(low, 1 * psf, 1e-12);
	assert_near(high, 3 * psf, 1e-12);
	assert_true(guide_quantity(lib, "barn", "slope-least", &low, &high));
	assert_near(tan(low), 0.25, 1e-12);
	assert_false(guide_quantity(lib, "barn", "headlap", &low, &high));
	assert_true(isnan(low) && isnan(high));
	assert_false(guide_quantity(lib, "nest", "weight", &low, &high));
	assert_false(guide_quantity(lib, "igloo", "weight", &low, &high));
	assert_true(guide_extent(lib, "barn", "foot", "side", atan(0.5), &low));
	assert_near(low, 4 * M_PER_IN, 1e-12);
	assert_true(guide_extent(lib, "barn", "foot", "side", (double)NAN, &low));
	assert_near(low, 6 * M_PER_IN, 1e-12);
}

static void pages_and_sources(void **state)
{
	(void)state;
	assert_int_equal(guide_page_count(lib), 2);
	assert_string_equal(guide_page_at(lib, 0).key, "barn");
	assert_int_equal(guide_page_at(lib, 0).use, GUIDE_USE_YES);
	assert_int_equal(guide_page_at(lib, 0).slippery, GUIDE_SLIPPERY_NO);
	assert_string_equal(guide_page_at(lib, 1).name, "nest");
	assert_int_equal(guide_page_at(lib, 1).use, GUIDE_USE_REFUSED);
	assert_int_equal(guide_page_at(lib, 1).slippery, GUIDE_SLIPPERY_UNNAMED);
	assert_int_equal(guide_source_count(lib), 1);
	assert_string_equal(guide_source_at(lib, 0).title, "A book");
	assert_string_equal(guide_source_at(lib, 0).seen, "page 3");
}

static int layers;

static void see_title(void *context, const char *title)
{
	(void)context;
	assert_string_equal(title, "Post");
}

static void see_layer(void *context, const struct guide_layer *l)
{
	const bool of_job = context != NULL;

	if (layers++ == 0) {
		assert_string_equal(l->kind, "deck");
		assert_false(l->woven);
		assert_int_equal(l->sizes, 1);
		assert_string_equal(l->size[0].name, "thickness");
		assert_near(l->size[0].value, 0.5 * M_PER_IN, 1e-12);
		assert_false(l->size[0].of_job);
		return;
	}
	assert_string_equal(l->label, "plate");
	assert_true(l->woven && !l->plumb);
	assert_int_equal(l->status, GUIDE_OUR_RULE);
	assert_int_equal(l->sizes, 2);
	assert_int_equal(l->size[0].of_job, of_job);
	/* a least size as the lists print it: 0.2 m are 7.874 in, so 7-7/8 in */
	assert_near(l->size[0].value, (of_job ? 7.875 : 4) * M_PER_IN, 1e-12);
	assert_near(l->size[1].value, -1 * M_PER_IN, 1e-12);
}

static void drawing(void **state)
{
	struct guide_sizes s = guide_sizes_unknown();
	struct guide_request request = {.key = "barn"};
	struct guide_layer_sink sink = {see_title, see_layer, NULL};

	(void)state;
	layers = 0;
	assert_true(guide_drawing(lib, &request, "foot", "section", &sink));
	assert_int_equal(layers, 2);
	s.plate_down = 0.2;
	request.sizes = &s;
	sink.context = &s;
	layers = 0;
	assert_true(guide_drawing(lib, &request, "foot", "section", &sink));
	assert_false(guide_drawing(lib, &request, "foot", "plan", &sink));
	request.key = "nest";
	assert_false(guide_drawing(lib, &request, "foot", "section", &sink));
}

static void *read_often(void *result)
{
	struct seen *mine = result;

	for (int i = 0; i < 50; i++) {
		const struct guide_request request = {.key = "barn"};
		const struct guide_sink sink = seen_sink(mine);
		struct problem_list problems = {0};

		guide_notes(lib, &request, &sink, &problems);
	}
	return NULL;
}

static void two_threads_read_one_library(void **state)
{
	static struct seen a, b;
	pthread_t thread[2];

	(void)state;
	assert_int_equal(pthread_create(&thread[0], NULL, read_often, &a), 0);
	assert_int_equal(pthread_create(&thread[1], NULL, read_often, &b), 0);
	pthread_join(thread[0], NULL);
	pthread_join(thread[1], NULL);
	assert_string_equal(a.text, b.text);
	assert_string_equal(a.text, notes("barn", NULL, SYSTEM_US, GUIDE_FULL));
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(whole_page),
					   cmocka_unit_test(refusal),
					   cmocka_unit_test(sizes_take_the_place_of_rules),
					   cmocka_unit_test(slope_chooses_claims),
					   cmocka_unit_test(brief_names_parts),
					   cmocka_unit_test(unknown_page_is_a_problem),
					   cmocka_unit_test(numbers),
					   cmocka_unit_test(pages_and_sources),
					   cmocka_unit_test(drawing),
					   cmocka_unit_test(two_threads_read_one_library)};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
