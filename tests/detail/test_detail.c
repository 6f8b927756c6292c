/* SPDX-License-Identifier: MIT */
/* The details of the covering library: every covering that has a guide has a foot, every drawing
   keeps to its paper, its labels do not cross, it is to scale, and it looks as it did (golden/;
   DETAIL_UPDATE=1 rewrites: look at every one before it is kept). */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "detail/scene.h"
#include "drawing/svg.h"
#include "near.h"
#include "sample_library.h"

#define IN(x) ((x)*M_PER_IN)

static const char *const of[] = {"foot", "pipe"}, *const view[] = {"section", "plan"};

static struct drawing *draw(const char *key, int o, int v, const struct guide_sizes *sizes,
			    enum unit_system units)
{
	const struct guide_request request = {.key = key, .sizes = sizes, .units = units};

	return detail_draw(letters, lib, &request, of[o], view[v]);
}

/* ---- the paper ---- */

static void want_inside(const struct drawing *d, const char *name)
{
	const double w = drawing_width(d) + 1e-9, h = drawing_height(d) + 1e-9;

	for (const struct shape *s = drawing_first(d); s; s = s->next) {
		if (s->kind == SHAPE_TEXT) {
			const struct box b = shape_text_box(s);

			if (b.x0 < 0 || b.y0 < 0 || b.x1 > w || b.y1 > h)
				fail_msg("%s: `%s` leaves the paper", name, s->text);
			continue;
		}
		for (int i = 0; i < s->n; i++)
			if (s->at[i].x < -1e-9 || s->at[i].y < -1e-9 || s->at[i].x > w ||
			    s->at[i].y > h)
				fail_msg("%s: a line leaves the paper at %.1f, %.1f mm", name,
					 s->at[i].x / MM, s->at[i].y / MM);
	}
}

static void want_apart(const struct drawing *d, const char *name)
{
	for (const struct shape *s = drawing_first(d); s; s = s->next)
		for (const struct shape *t = s->next; s->kind == SHAPE_TEXT && t; t = t->next) {
			const struct box a = shape_text_box(s),
					 b = t->kind == SHAPE_TEXT ? shape_text_box(t)
								   : (struct box){-1, -1, -1, -1};

			if (t->kind == SHAPE_TEXT && box_meets(&a, &b))
				fail_msg("%s: `%s` lies on `%s`", name, s->text, t->text);
		}
}

/* Every number of the key stands on the picture too. */
static void want_numbers(const struct drawing *d, const char *name)
{
	int circles = 0, numbers = 0;

	for (const struct shape *s = drawing_first(d); s; s = s->next) {
		circles += s->kind == SHAPE_CIRCLE && s->layer == LAYER_THIN &&
			   fabs(s->radius - 2.5 * MM) < 1e-9;
		numbers += s->kind == SHAPE_TEXT && s->bold && strlen(s->text) <= 2;
	}
	if (circles == 0 || numbers != 2 * circles)
		fail_msg("%s: %d numbers for %d circles", name, numbers, circles);
}

static void want_good(const char *key, int o, int v, const struct guide_sizes *sizes,
		      enum unit_system units)
{
	struct drawing *d = draw(key, o, v, sizes, units);
	char name[100];

	snprintf(name, sizeof name, "%s %s %s", key, of[o], view[v]);
	if (!d)
		fail_msg("%s: no drawing", name);
	want_inside(d, name);
	want_apart(d, name);
	want_numbers(d, name);
	assert_true(*drawing_title(d) && strlen(drawing_description(d)) > 20);
	drawing_destroy(d);
}

/* Sizes of a job, some far from the usual ones. */
static struct guide_sizes some_sizes(double pitch)
{
	struct guide_sizes s = guide_sizes_unknown();

	s.pitch = pitch;
	s.exposure = IN(7.5);
	s.piece_length = IN(18);
	s.reach = IN(10.5);
	s.plate_up = IN(17);
	s.plate_down = IN(6);
	s.plate_side = IN(8);
	s.fastener_length = IN(8);
	s.foot_height = IN(10);
	s.rafter_depth = IN(11.25);
	s.pipe_insulated = IN(3.5);
	s.seam_spacing = IN(12);
	return s;
}

static void every_drawing_is_good(void **state)
{
	const struct guide_sizes flat = some_sizes(atan2(0.25, 12)),
				 steep = some_sizes(atan2(12, 12));

	(void)state;
	for (size_t i = 0; i < guide_page_count(lib); i++)
		for (int k = 0; k < 4; k++) {
			const struct guide_page page = guide_page_at(lib, i);
			const bool there = detail_known(lib, page.key, of[k / 2], view[k % 2]);

			if (there != (page.use != GUIDE_USE_REFUSED))
				fail_msg("%s: %s", page.key,
					 there ? "a refusal with a drawing" : "no drawing");
			if (!there)
				continue;
			want_good(page.key, k / 2, k % 2, NULL, SYSTEM_US);
			want_good(page.key, k / 2, k % 2, NULL, SYSTEM_SI);
			want_good(page.key, k / 2, k % 2, &flat, SYSTEM_US);
			want_good(page.key, k / 2, k % 2, &steep, SYSTEM_SI);
		}
}

/* ---- to scale ---- */

/* The number behind `scale 1:`. */
static double scale_of(const struct drawing *d)
{
	for (const struct shape *s = drawing_first(d); s; s = s->next) {
		const char *at = s->kind == SHAPE_TEXT ? strstr(s->text, "scale 1:") : NULL;

		if (at)
			return strtod(at + 8, NULL);
	}
	return (double)NAN;
}

static const struct shape *first_filled(const struct drawing *d, enum fill fill)
{
	for (const struct shape *s = drawing_first(d); s; s = s->next)
		if (s->kind == SHAPE_LINE && s->layer == LAYER_MATERIAL && s->closed &&
		    s->fill == fill)
			return s;
	fail_msg("no filled shape");
	return NULL;
}

static double width_of(const struct shape *s)
{
	double low = HUGE_VAL, high = -HUGE_VAL;

	for (int i = 0; i < s->n; i++) {
		low = fmin(low, s->at[i].x);
		high = fmax(high, s->at[i].x);
	}
	return high - low;
}

/* The plate of the plan: 4-1/2 in to each side usually, 8 in on this job. */
static void plan_is_to_scale(void **state)
{
	const struct guide_sizes sizes = some_sizes(atan2(5, 12));
	struct drawing *d = draw("asphalt-laminated", 0, 1, NULL, SYSTEM_US);

	(void)state;
	assert_near(width_of(first_filled(d, FILL_LIGHT)) * scale_of(d), IN(9), 1e-6);
	drawing_destroy(d);
	d = draw("asphalt-laminated", 0, 1, &sizes, SYSTEM_US);
	assert_near(width_of(first_filled(d, FILL_LIGHT)) * scale_of(d), IN(16), 1e-6);
	drawing_destroy(d);
}

/* The rafter's upper edge rises as the roof does, and a plumb pipe of 7/8 in stands upright. */
static void section_is_turned(void **state)
{
	const struct guide_sizes sizes = some_sizes(atan2(9, 12));
	struct drawing *d = draw("asphalt-laminated", 0, 0, &sizes, SYSTEM_US);
	const struct shape *s = first_filled(d, FILL_LIGHT);

	(void)state;
	assert_near((s->at[1].y - s->at[0].y) / (s->at[1].x - s->at[0].x), 9.0 / 12, 1e-9);
	drawing_destroy(d);
	d = draw("asphalt-laminated", 1, 0, &sizes, SYSTEM_US);
	s = first_filled(d, FILL_GREY);
	assert_true(fabs(s->at[0].x - s->at[3].x) < 1e-12);
	assert_near(width_of(s) * scale_of(d), IN(0.875), 1e-6);
	drawing_destroy(d);
}

/* Insulation of 3-1/2 in does not go into a sleeve of 3 in: the one drawn is 4 in wide. */
static void sleeve_takes_the_pipe(void **state)
{
	const struct guide_sizes sizes = some_sizes(0.5);
	struct drawing *d = draw("asphalt-laminated", 1, 1, &sizes, SYSTEM_US);

	(void)state;
	assert_non_null(strstr(drawing_description(d), "sleeve, 4 in across"));
	drawing_destroy(d);
	d = draw("asphalt-laminated", 1, 1, NULL, SYSTEM_US);
	assert_non_null(strstr(drawing_description(d), "sleeve, 3 in across"));
	drawing_destroy(d);
}

/* ---- pieces that lap ---- */

/* Of even thickness: each lies on the one below over the whole lap. At the butt lie L/E
   thicknesses: 18 in slates at 6 in of 1/4 in have three layers, the lowest on the deck at its
   head. */
static void pieces_lie_on_each_other(void **state)
{
	const struct lap p = {IN(6), IN(18), IN(0.25), IN(0.25), 0, 0, 0.25 / 6};

	(void)state;
	for (double u = 6; u < 18; u += 0.5)
		assert_near(lap_under(&p, IN(6), IN(u)), lap_top(&p, 0, IN(u)), 1e-9);
	assert_near(lap_under(&p, 0, 0), IN(0.75), 1e-9);
	assert_true(fabs(lap_under(&p, 0, IN(18))) < 1e-12);
	/* a plate: on its own piece up to its head, below its butt on the next one down, on the
	 * deck beyond */
	assert_near(lap_woven(&p, IN(-3)), lap_top(&p, IN(-6), IN(-3)), 1e-9);
	assert_near(lap_woven(&p, IN(-8)), lap_top(&p, IN(-12), IN(-8)), 1e-9);
	assert_true(fabs(lap_woven(&p, IN(13))) < 1e-12);
}

/* ---- golden drawings ---- */

static const char *const golden[] = {
	"asphalt-laminated", "wood-shake", "metal-standing-seam-mechanical",
	"concrete-tile",     "epdm",       "metal-exposed-fastener"};

static size_t render(const char *key, int o, int v, char *out, size_t size)
{
	struct drawing *d = draw(key, o, v, NULL, SYSTEM_US);
	FILE *f = tmpfile();
	size_t n;

	assert_non_null(d);
	assert_non_null(f);
	drawing_write_svg(f, d, SVG_FILE);
	drawing_destroy(d);
	rewind(f);
	n = fread(out, 1, size, f);
	fclose(f);
	assert_true(n < size);
	return n;
}

static void want_golden(const char *key, int o, int v)
{
	static char now[1 << 18], then[1 << 18];
	const size_t n = render(key, o, v, now, sizeof now);
	char path[500];
	FILE *f;

	snprintf(path, sizeof path, "%s/%s-%s-%s.svg", getenv("DETAIL_GOLDEN"), key, of[o],
		 view[v]);
	if (getenv("DETAIL_UPDATE")) {
		f = fopen(path, "w");
		assert_non_null(f);
		fwrite(now, 1, n, f);
		assert_int_equal(fclose(f), 0);
		return;
	}
	f = fopen(path, "r");
	if (!f)
		fail_msg("%s is missing", path);
	const size_t m = fread(then, 1, sizeof then, f);

	fclose(f);
	if (m != n || memcmp(now, then, n) != 0)
		fail_msg("%s: the drawing has changed", path);
}

static void drawings_are_as_they_were(void **state)
{
	(void)state;
	for (size_t i = 0; i < sizeof golden / sizeof *golden; i++)
		for (int k = 0; k < 4; k++)
			want_golden(golden[i], k / 2, k % 2);
}

static void same_bytes_twice(void **state)
{
	static char a[1 << 18], b[1 << 18];

	(void)state;
	const size_t n = render("slate", 0, 0, a, sizeof a), m = render("slate", 0, 0, b, sizeof b);

	assert_int_equal(n, m);
	assert_memory_equal(a, b, n);
}

static void nothing_to_draw(void **state)
{
	(void)state;
	assert_null(draw("thatch", 0, 0, NULL, SYSTEM_US));
	assert_null(draw("no-such", 0, 1, NULL, SYSTEM_US));
	assert_false(detail_known(lib, "thatch", "foot", "plan"));
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(every_drawing_is_good),
		cmocka_unit_test(plan_is_to_scale),
		cmocka_unit_test(section_is_turned),
		cmocka_unit_test(pieces_lie_on_each_other),
		cmocka_unit_test(sleeve_takes_the_pipe),
		cmocka_unit_test(drawings_are_as_they_were),
		cmocka_unit_test(same_bytes_twice),
		cmocka_unit_test(nothing_to_draw),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
