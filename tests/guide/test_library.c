/* SPDX-License-Identifier: MIT */
/* The real library: complete, honest about what is known, and in step with the table of coverings
   that the loads use. The claims are walked here with libxml2 alone, so that a fault of the reader
   cannot hide one of the library. */
#include "near.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <libxml/parser.h>

#include "sample.h"
#include "table/lookup_covering.h"

static struct guide_library *lib;
static struct sample files;
static xmlDoc *doc[SAMPLE_FILES_MAX];

static int set_up(void **state)
{
	static struct problem_list problems;
	char line[1200];

	(void)state;
	lib = guide_open(sample_directory(), &problems);
	for (size_t i = 0; i < problems.count; i++)
		print_error("%s\n", problem_print(line, sizeof line, &problems.item[i]));
	sample_read(&files, sample_directory());
	for (size_t i = 0; i < files.files; i++)
		doc[i] = xmlReadMemory(files.file[i].data, (int)files.file[i].size,
				       files.file[i].name, NULL, XML_PARSE_NONET);
	return lib ? 0 : -1;
}

static int tear_down(void **state)
{
	(void)state;
	for (size_t i = 0; i < files.files; i++)
		xmlFreeDoc(doc[i]);
	sample_free(&files);
	guide_close(lib);
	return 0;
}

static const xmlNode *first(const xmlNode *n)
{
	n = n ? n->children : NULL;
	while (n && n->type != XML_ELEMENT_NODE)
		n = n->next;
	return n;
}

static const xmlNode *next(const xmlNode *n)
{
	do
		n = n->next;
	while (n && n->type != XML_ELEMENT_NODE);
	return n;
}

static bool named(const xmlNode *n, const char *name)
{
	return strcmp((const char *)n->name, name) == 0;
}

static bool one_of(const xmlNode *n, const char *const *names)
{
	for (; *names; names++)
		if (named(n, *names))
			return true;
	return false;
}

/* Value of an attribute in a store of its own; NULL if it is not there. */
static const char *attribute(const xmlNode *n, const char *name)
{
	static char store[4][600];
	static int turn;
	xmlChar *value = xmlGetProp(n, (const xmlChar *)name);

	if (!value)
		return NULL;
	turn = (turn + 1) % 4;
	snprintf(store[turn], sizeof store[turn], "%s", (const char *)value);
	xmlFree(value);
	return store[turn];
}

static const xmlNode *find(const xmlNode *n, const char *name)
{
	const xmlNode *found = NULL;

	for (const xmlNode *c = first(n); c && !found; c = next(c))
		found = named(c, name) ? c : find(c, name);
	return found;
}

/* ---- completeness ---- */

static void every_covering_has_a_page(void **state)
{
	(void)state;
	assert_int_equal(guide_page_count(lib), 27);
	assert_int_equal(guide_page_count(lib), TABLE_COVERING_COUNT);
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++) {
		const struct covering_row *row = &table_covering[i];
		struct guide_page page;

		if (!guide_page_find(lib, row->key, &page))
			fail_msg("%s has no page", row->key);
		if ((page.use == GUIDE_USE_REFUSED) != (row->guide == COVERING_GUIDE_NO))
			fail_msg("%s: page and table disagree on whether it is refused", row->key);
	}
}

static void same_number(const char *key, const char *what, double page, double table)
{
	if (isnan(page) && isnan(table))
		return;
	if (!(fabs(page - table) <= 1e-6 * fabs(table)))
		fail_msg("%s: %s is %g on the page, %g in the table", key, what, page, table);
}

/* The plate that the check counts with is the one that the page asks for, at every pitch that makes a difference. */
static void plates_agree_with_the_table(void **state)
{
	static const double rise[] = {3.0, 4.0, 7.9, 8.0, 12.0};

	(void)state;
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++)
		for (size_t k = 0; k < sizeof rise / sizeof *rise; k++) {
			const char *key = table_covering[i].key;
			const struct covering_plate_row *row = covering_plate_row(key, rise[k]);
			const double pitch = atan2(rise[k], 12.0);
			double down = (double)NAN, side = (double)NAN, width = (double)NAN;

			guide_extent(lib, key, "foot", "down", pitch, &down);
			guide_extent(lib, key, "foot", "side", pitch, &side);
			guide_extent(lib, key, "foot", "width", pitch, &width);
			same_number(key, "plate down", down / M_PER_IN, row ? row->plate_down_in : (double)NAN);
			same_number(key, "plate side", side / M_PER_IN, row ? row->plate_side_in : (double)NAN);
			same_number(key, "plate width", width / M_PER_IN, row ? row->plate_width_in : (double)NAN);
		}
}

/* The page prints what the loads are worked out with. */
static void numbers_agree_with_the_table(void **state)
{
	const double psf = unit_to_si(1.0, UNIT_PSF);

	(void)state;
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++) {
		const struct covering_row *row = &table_covering[i];
		const bool ballast = strcmp(row->key, "epdm") == 0;
		/* the table has one slate, 1/4 in; the page also the thick kind */
		const bool thick = strcmp(row->key, "slate") == 0;
		double low, high;

		guide_quantity(lib, row->key, "weight", &low, &high);
		same_number(row->key, "low weight", low / psf, row->weight_low_psf);
		if (!ballast && !thick)
			same_number(row->key, "high weight", high / psf, row->weight_high_psf);
		guide_quantity(lib, row->key, "thickness", &low, &high);
		same_number(row->key, "low thickness", low / M_PER_IN, row->thickness_low_in);
		same_number(row->key, "high thickness", high / M_PER_IN, row->thickness_high_in);
		if (guide_quantity(lib, row->key, "slope-least", &low, &high))
			same_number(row->key, "least slope", 12.0 * tan(low), row->min_rise_in);
	}
}

static void slipperiness_agrees_with_the_table(void **state)
{
	(void)state;
	for (size_t i = 0; i < TABLE_COVERING_COUNT; i++) {
		struct guide_page page;

		assert_true(guide_page_find(lib, table_covering[i].key, &page));
		if (table_covering[i].slippery == COVERING_SLIPPERY_YES &&
		    page.slippery != GUIDE_SLIPPERY_YES)
			fail_msg("%s is slippery in the table only", page.key);
		if (table_covering[i].slippery == COVERING_SLIPPERY_NO &&
		    page.slippery == GUIDE_SLIPPERY_YES)
			fail_msg("%s is slippery on the page only", page.key);
	}
}

static bool uses(const xmlNode *root, const char *part)
{
	for (const xmlNode *s = first(root); s; s = next(s))
		for (const xmlNode *u = first(s); u; u = next(u))
			if (named(u, "use") && strcmp(attribute(u, "part"), part) == 0)
				return true;
	return false;
}

static void every_covering_has_the_safety_parts(void **state)
{
	static const char *const part[] = {"cautions",       "falls",         "stop-any",
					   "call-any",       "before-opening", "missed-hole",
					   "before-leaving", "inspection-any", "code-duty",     "sleeve-ranking",
					   "sensor-cable",   "metals",        "sealants"};
	size_t coverings = 0;

	(void)state;
	for (size_t i = 0; i < files.files; i++) {
		const xmlNode *root = xmlDocGetRootElement(doc[i]);

		if (named(root, "refusal"))
			assert_true(uses(root, "cautions"));
		if (!named(root, "covering"))
			continue;
		coverings++;
		for (size_t p = 0; p < sizeof part / sizeof part[0]; p++)
			if (!uses(root, part[p]))
				fail_msg("%s does not use %s", files.file[i].name, part[p]);
		if (!uses(root, "water-test-steep") && !uses(root, "water-test-low"))
			fail_msg("%s has no water test", files.file[i].name);
		if (!find(root, "drawing"))
			fail_msg("%s has no drawing", files.file[i].name);
	}
	assert_int_equal(coverings, 23);
}

/* Every drawing of a refusal shows the wall that is opened in place of the roof. */
static void only_walls(const xmlNode *root)
{
	for (const xmlNode *n = first(root); n; n = next(n))
		if (named(n, "drawing")) {
			xmlChar *of = xmlGetProp(n, (const xmlChar *)"of");

			assert_string_equal((const char *)of, "wall");
			xmlFree(of);
		}
}

/* A refusal tells nobody how to open the covering. */
static void refusals_hold_no_steps(void **state)
{
	static const char *const work[] = {"step", "choice", "piece", "tools", NULL};

	(void)state;
	for (size_t i = 0; i < files.files; i++) {
		const xmlNode *root = xmlDocGetRootElement(doc[i]);

		for (const char *const *w = work; named(root, "refusal") && *w; w++)
			assert_null(find(root, *w));
		if (named(root, "refusal"))
			only_walls(root);
	}
}

/* ---- honesty ---- */

static const char *const claims[] = {
	"look", "butts", "thickness", "lines",    "sound",    "weight", "age",
	"ask",  "answer",
	"say",  "item",  "step",      "never",    "caution",  "choice", "sleeve",
	"boot", "hole",  "extent",    "quantity", "slippery", "layer",  NULL};

static bool source_exists(const char *id, size_t length)
{
	for (size_t i = 0; i < guide_source_count(lib); i++) {
		const char *s = guide_source_at(lib, i).id;

		if (strlen(s) == length && memcmp(s, id, length) == 0)
			return true;
	}
	return false;
}

static void check_claim(const char *file, const xmlNode *n, size_t *count)
{
	const char *status = attribute(n, "status"), *source = attribute(n, "source");

	if (!status)
		fail_msg("%s:%ld: no status", file, xmlGetLineNo((xmlNode *)(uintptr_t)n));
	if ((strcmp(status, "confirmed") == 0 || strcmp(status, "second-hand") == 0) && !source)
		fail_msg("%s:%ld: %s without a source", file, xmlGetLineNo((xmlNode *)(uintptr_t)n),
			 status);
	for (const char *s = source; s && *s;) {
		const size_t length = strcspn(s, " \n");

		if (!source_exists(s, length))
			fail_msg("%s:%ld: no source %s", file,
				 xmlGetLineNo((xmlNode *)(uintptr_t)n), s);
		s += length;
		s += strspn(s, " \n");
	}
	++*count;
}

static void check_claims(const char *file, const xmlNode *n, size_t *count)
{
	if (one_of(n, claims))
		check_claim(file, n, count);
	else if (attribute(n, "status"))
		fail_msg("%s: the test does not know the claim %s", file, (const char *)n->name);
	for (const xmlNode *c = first(n); c; c = next(c))
		check_claims(file, c, count);
}

static void every_claim_has_status_and_source(void **state)
{
	size_t count = 0;

	(void)state;
	for (size_t i = 0; i < files.files; i++)
		if (!strstr(files.file[i].name, ".rng"))
			check_claims(files.file[i].name, xmlDocGetRootElement(doc[i]), &count);
	assert_true(count > 1500);
}

/* A source that no claim names was not read for this library. */
static void every_source_is_used(void **state)
{
	(void)state;
	for (size_t s = 0; s < guide_source_count(lib); s++) {
		const char *id = guide_source_at(lib, s).id;
		bool used = false;

		for (size_t i = 0; i < files.files && !used; i++)
			for (const char *p = files.file[i].data;
			     (p = strstr(p, "source=\"")) != NULL && !used; p++) {
				const char *end = strchr(p + 8, '"'), *at = strstr(p, id);

				used = at && at < end;
			}
		if (!used)
			fail_msg("%s is not used", id);
	}
}

/* ---- the text prints ---- */

static void every_page_prints(void **state)
{
	static struct seen seen;
	const struct guide_sizes all = sample_sizes();
	struct problem_list problems = {0};

	(void)state;
	for (size_t i = 0; i < guide_page_count(lib); i++) {
		const struct guide_page page = guide_page_at(lib, i);

		for (int way = 0; way < 8; way++) {
			const struct guide_request request = {
				.key = page.key,
				.sizes = way & 1 ? &all : NULL,
				.units = way & 2 ? SYSTEM_SI : SYSTEM_US,
				.depth = way & 4 ? GUIDE_BRIEF : GUIDE_FULL};
			const struct guide_sink sink = seen_sink(&seen);

			assert_true(guide_notes(lib, &request, &sink, &problems));
			assert_true(seen.blocks > (page.use == GUIDE_USE_REFUSED ? 12u : 60u));
			assert_null(strpbrk(seen.text, "{}"));
			assert_null(strstr(seen.text, "nan"));
			assert_non_null(strstr(seen.text, "licensed engineer"));
			assert_non_null(strstr(seen.text, "the code adopted"));
			if (!(way & 4) && page.use != GUIDE_USE_REFUSED)
				assert_non_null(strstr(seen.text, "|Never|"));
			if (way & 2)
				assert_null(strstr(seen.text, " psf"));
		}
	}
	assert_false(problem_any(&problems));
}

/* ---- numbers that follow from others ---- */

static double least(const char *key, const char *section, const char *edge, double pitch)
{
	double si = (double)NAN;

	guide_extent(lib, key, section, edge, pitch, &si);
	return si / M_PER_IN;
}

/* length = down + 1 in + (L - E) of the usual piece, by hand from the sizes of the trade. */
static void plates_of_the_usual_pieces(void **state)
{
	static const struct {
		const char *key;
		double L, E, down;
	} row[] = {{"asphalt-strip", 12, 5, 4},
		   {"asphalt-laminated", 13.25, 5.625, 4},
		   {"wood-shingle", 16, 5, 6},
		   {"wood-shake", 24, 10, 6},
		   {"slate", 20, 8.5, 4}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
		const double up = 1 + row[i].L - row[i].E;

		assert_row(row[i].key, least(row[i].key, "foot", "down", (double)NAN), row[i].down,
			   1e-9);
		assert_row(row[i].key, least(row[i].key, "foot", "up", (double)NAN), up, 1e-9);
		assert_row(row[i].key, least(row[i].key, "foot", "length", (double)NAN),
			   row[i].down + up, 1e-9);
	}
}

static void extents_follow_the_slope(void **state)
{
	double si;

	(void)state;
	assert_within(least("asphalt-laminated", "foot", "side", atan(4 / 12.0)), 4, 1e-9);
	assert_within(least("asphalt-laminated", "foot", "side", atan(3.99 / 12.0)), 6, 1e-9);
	assert_within(least("asphalt-laminated", "foot", "side", (double)NAN), 6, 1e-9);
	assert_within(least("slate", "foot", "side", atan(8 / 12.0)), 6, 1e-9);
	/* pieces of shared parts count too */
	assert_within(least("asphalt-strip", "pipe", "up", (double)NAN), 8, 1e-9);
	assert_false(guide_extent(lib, "asphalt-strip", "foot", "turn-up", (double)NAN, &si));
	assert_false(guide_extent(lib, "thatch", "foot", "down", (double)NAN, &si));
	assert_false(guide_extent(lib, "no-such-page", "foot", "down", (double)NAN, &si));
}

static void see_title(void *context, const char *title)
{
	assert_true(strlen(title) > 0);
	++*(int *)context;
}

static void see_layer(void *context, const struct guide_layer *layer)
{
	assert_true(strlen(layer->label) > 0);
	assert_true(layer->sizes > 0);
	for (int i = 0; i < layer->sizes; i++)
		assert_true(isfinite(layer->size[i].value));
	++*(int *)context;
}

static void every_drawing_is_handed_out(void **state)
{
	static const char *const of[] = {"foot", "pipe"}, *const view[] = {"section", "plan"};
	int drawings = 0;

	(void)state;
	for (size_t i = 0; i < guide_page_count(lib); i++) {
		const struct guide_request request = {.key = guide_page_at(lib, i).key};
		int seen = 0;
		const struct guide_layer_sink sink = {see_title, see_layer, &seen};

		for (int d = 0; d < 4; d++) {
			seen = 0;
			if (guide_drawing(lib, &request, of[d / 2], view[d % 2], &sink)) {
				assert_true(seen >= 2);
				drawings++;
			}
		}
		if (guide_page_at(lib, i).use != GUIDE_USE_REFUSED)
			assert_true(guide_drawing(lib, &request, "foot", "section", &sink));
	}
	assert_true(drawings >= 31);
}

int main(void)
{
	const struct CMUnitTest tests[] = {cmocka_unit_test(every_covering_has_a_page),
					   cmocka_unit_test(plates_agree_with_the_table),
		cmocka_unit_test(numbers_agree_with_the_table),
					   cmocka_unit_test(slipperiness_agrees_with_the_table),
					   cmocka_unit_test(every_covering_has_the_safety_parts),
					   cmocka_unit_test(refusals_hold_no_steps),
					   cmocka_unit_test(every_claim_has_status_and_source),
					   cmocka_unit_test(every_source_is_used),
					   cmocka_unit_test(every_page_prints),
					   cmocka_unit_test(plates_of_the_usual_pieces),
					   cmocka_unit_test(extents_follow_the_slope),
					   cmocka_unit_test(every_drawing_is_handed_out)};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
