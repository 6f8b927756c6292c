/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
/* The drawing model against geometry worked by hand: views, hatches, text boxes, labels moved
 * apart, memory that runs out. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <cmocka.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "drawing/dimension.h"
#include "drawing/drawing.h"
#include "drawing/dxf.h"
#include "drawing/svg.h"
#include "near.h"
#include "quantity/quantity.h"

static struct lettering *letters;

static int open_letters(void **state)
{
	bool missing;

	(void)state;
	letters = lettering_create(&missing);
	return letters ? 0 : -1;
}

static int close_letters(void **state)
{
	(void)state;
	lettering_destroy(letters);
	return 0;
}

/* 1 ft of a roof at 1:48 is 1/4 in on paper; a quarter turn takes x to y. */
static void views(void **state)
{
	struct drawing *d = drawing_create(letters, 0.2, 0.1, NULL);

	(void)state;
	drawing_view(d, (struct view){{0.01, 0.02}, 1.0 / 48, 0});
	const struct point p = drawing_on_paper(d, (struct point){M_PER_FT, 2 * M_PER_FT});

	assert_near(p.x, 0.01 + M_PER_IN / 4, 1e-12);
	assert_near(p.y, 0.02 + M_PER_IN / 2, 1e-12);
	drawing_view(d, (struct view){{0, 0}, 0.5, 90 * RAD_PER_DEG});
	const struct point q = drawing_on_paper(d, (struct point){2, 0});

	assert_true(fabs(q.x) < 1e-12);
	assert_near(q.y, 1.0, 1e-12);
	/* the first view is the one a DXF file is written in */
	assert_near(drawing_main_view(d).scale, 1.0 / 48, 1e-12);
	drawing_destroy(d);
}

static double hatch_length(const struct drawing *d, int *lines)
{
	double sum = 0;

	*lines = 0;
	for (const struct shape *s = drawing_first(d); s; s = s->next, ++*lines)
		sum += hypot(s->at[1].x - s->at[0].x, s->at[1].y - s->at[0].y);
	return sum;
}

/* Area over spacing is the length of all lines, but for the rounding of a line more or less: a
   square of 100 mm in lines 2 mm apart takes 50 lines of 100 mm. An L of 3/4 of that area takes 3/4
   of the length. */
static void hatches(void **state)
{
	const struct point square[] = {
		{0.0505, 0.0505}, {0.1505, 0.0505}, {0.1505, 0.1505}, {0.0505, 0.1505}};
	const struct point ell[] = {{0.0505, 0.0505}, {0.1505, 0.0505}, {0.1505, 0.1005},
				    {0.1005, 0.1005}, {0.1005, 0.1505}, {0.0505, 0.1505}};
	struct drawing *d = drawing_create(letters, 0.2, 0.2, NULL);
	int lines;

	(void)state;
	drawing_hatch(d, LAYER_HATCH, square, 4, 0, 0.002);
	assert_near(hatch_length(d, &lines), 50 * 0.1, 1e-9);
	assert_int_equal(lines, 50);
	drawing_destroy(d);
	d = drawing_create(letters, 0.2, 0.2, NULL);
	drawing_hatch(d, LAYER_HATCH, ell, 6, 0, 0.002);
	assert_near(hatch_length(d, &lines), 25 * 0.1 + 25 * 0.05, 1e-9);
	drawing_destroy(d);
	d = drawing_create(letters, 0.2, 0.2, NULL);
	drawing_hatch(d, LAYER_HATCH, square, 4, 45 * RAD_PER_DEG, 0.0005);
	assert_near(hatch_length(d, &lines), 0.1 * 0.1 / 0.0005, 0.01);
	drawing_destroy(d);
}

/* Moved apart by least squares: two labels at one place go half a pitch each way; one far off
 * stays. */
static void spreads(void **state)
{
	double two[] = {5, 5, 20}, three[] = {1, 1, 1}, loose[] = {1, 4, 9}, wrong[] = {2, 1};

	(void)state;
	dimension_spread(two, 3, 2);
	assert_near(two[0], 4.0, 1e-12);
	assert_near(two[1], 6.0, 1e-12);
	assert_near(two[2], 20.0, 1e-12);
	dimension_spread(three, 3, 1);
	assert_true(fabs(three[0]) < 1e-12);
	assert_near(three[1], 1.0, 1e-12);
	assert_near(three[2], 2.0, 1e-12);
	dimension_spread(loose, 3, 2);
	assert_near(loose[0], 1.0, 1e-12);
	assert_near(loose[1], 4.0, 1e-12);
	assert_near(loose[2], 9.0, 1e-12);
	dimension_spread(wrong, 2, 1);
	assert_near(wrong[1] - wrong[0], 1.0, 1e-12);
}

/* Width grows in proportion to size; a line of text takes no place that is taken. */
static void labels(void **state)
{
	const struct lettering_spec spec = {3 * MM, false, ANCHOR_LEFT, ANCHOR_BASE, 0, false};
	const struct point place[] = {{0.05, 0.05}, {0.05, 0.06}, {0.05, 0.07}};
	struct drawing *d = drawing_create(letters, 0.2, 0.1, NULL);

	(void)state;
	const double one = lettering_width(letters, "13'-6 1/2\"",
					   (struct lettering_style){2 * MM, false, false});

	assert_near(lettering_width(letters, "13'-6 1/2\"",
				    (struct lettering_style){5 * MM, false, false}),
		    2.5 * one, 1e-6);
	assert_int_equal(drawing_text_free(d, LAYER_TEXT, place, 3, spec, "first"), 0);
	assert_int_equal(drawing_text_free(d, LAYER_TEXT, place, 3, spec, "second"), 1);
	drawing_reserve(d, (struct box){0.04, 0.065, 0.10, 0.075});
	assert_int_equal(drawing_text_free(d, LAYER_TEXT, place, 3, spec, "third"), -1);
	/* beyond the paper is not free */
	assert_false(drawing_is_free(d, (struct box){0.19, 0.01, 0.21, 0.02}));
	drawing_destroy(d);
}

/* A drawing that grew downward ends where its content does; nothing moves against the rest. */
static void cut(void **state)
{
	struct drawing *tall = drawing_create(letters, 0.07, 2, NULL);

	(void)state;
	drawing_set_title(tall, "title", "description");
	drawing_view(tall, (struct view){{0.01, 1.9}, 0.01, 0});
	drawing_line(tall, LAYER_EDGE, (struct point){0, 0}, (struct point){3, 4});
	struct drawing *d = drawing_cut(tall, 1.8, NULL);
	const struct shape *line = drawing_first(d);

	assert_near(drawing_height(d), 0.2, 1e-12);
	assert_near(drawing_width(d), 0.07, 1e-12);
	assert_near(line->at[0].y, 0.1, 1e-12);
	assert_near(hypot(line->at[1].x - line->at[0].x, line->at[1].y - line->at[0].y), 0.05, 1e-12);
	/* a DXF file and the scale that is told go by it */
	assert_near(drawing_main_view(d).scale, 0.01, 1e-12);
	assert_near(drawing_main_view(d).origin.y, 0.1, 1e-12);
	assert_string_equal(drawing_title(d), "title");
	assert_string_equal(drawing_description(d), "description");
	drawing_destroy(d);
}

/* What stands in a job's title cannot break a file. */
static void hostile(void **state)
{
	const struct lettering_spec spec = {3 * MM, false, ANCHOR_LEFT, ANCHOR_BASE, 0, false};
	struct drawing *d = drawing_create(letters, 0.2, 0.1, NULL);
	char *text = NULL;
	size_t size;

	(void)state;
	drawing_set_title(d, "</svg><script>", "a & b \"c\"");
	drawing_text(d, LAYER_TEXT, (struct point){0.01, 0.01}, spec,
		     "<b>\x1b[2J\n0\nEOF\xff & \xC3\xA9");
	FILE *f = open_memstream(&text, &size);

	drawing_write_svg(f, d, SVG_FILE);
	fclose(f);
	assert_null(strstr(text, "<script>"));
	assert_null(strstr(text, "<b>"));
	assert_null(strchr(text, 27));
	assert_non_null(strstr(text, "&lt;b&gt;"));
	free(text);
	f = open_memstream(&text, &size);
	drawing_write_dxf(f, d, SYSTEM_US);
	fclose(f);
	assert_non_null(strstr(text, "\\U+00E9"));
	/* one EOF, the last */
	assert_ptr_equal(strstr(text, "\nEOF\n"), text + size - strlen("\nEOF\n"));
	for (size_t i = 0; i < size; i++)
		assert_true((unsigned char)text[i] < 0x7F);
	free(text);
	drawing_destroy(d);
}

struct purse {
	int left;
};

static void *take(void *ctx, size_t size)
{
	struct purse *p = ctx;

	return p->left-- > 0 ? malloc(size) : NULL;
}

static void give(void *ctx, void *piece)
{
	(void)ctx;
	free(piece);
}

/* The n-th allocation fails: no drawing, or one that says it failed, and nothing is lost. */
static void memory(void **state)
{
	bool whole = false;

	(void)state;
	for (int n = 0; n < 60 && !whole; n++) {
		struct purse purse = {n};
		const struct allocator from = {take, give, &purse};
		struct drawing *d = drawing_create(letters, 0.2, 0.2, &from);

		if (!d)
			continue;
		const struct point square[] = {
			{0.01, 0.01}, {0.19, 0.01}, {0.19, 0.19}, {0.01, 0.19}};

		drawing_hatch(d, LAYER_HATCH, square, 4, 0.3, 0.0005);
		drawing_text(d, LAYER_TEXT, square[0],
			     (struct lettering_spec){0.003, true, ANCHOR_LEFT, ANCHOR_TOP, 0, true},
			     "text");
		dimension_between(d, square[0], square[1], 0.01, "18 cm");
		whole = !drawing_failed(d);
		drawing_destroy(d);
	}
	assert_true(whole);
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(views),  cmocka_unit_test(hatches), cmocka_unit_test(spreads),
		cmocka_unit_test(labels), cmocka_unit_test(hostile), cmocka_unit_test(memory),
		cmocka_unit_test(cut),
	};

	return cmocka_run_group_tests(tests, open_letters, close_letters);
}
