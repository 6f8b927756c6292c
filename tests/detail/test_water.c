/* SPDX-License-Identifier: MIT */
/* Would the drawn roof stay dry, and would the foot hold? What the drawings are made of, held
   against the rules of the guide by arithmetic done here: reach of plates, height and room of
   sleeves, the oval of a plumb pipe, collars, caps, hooks, bolts. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "detail/scene.h"
#include "near.h"
#include "sample_library.h"

#define IN(x) ((x)*M_PER_IN)

static struct guide_sizes at_pitch(double rise)
{
	struct guide_sizes s = guide_sizes_unknown();

	s.pitch = atan2(rise, 12);
	return s;
}

static bool read_layers(struct detail_layers *r, const char *key, const char *of,
			const struct guide_sizes *sizes)
{
	const struct guide_request request = {.key = key, .sizes = sizes, .units = SYSTEM_US};

	return detail_layers_read(r, lib, &request, of, "section");
}

static const struct detail_layer *of_kind(const struct detail_layers *r, const char *kind)
{
	return layer_find(r->layer, r->layers, kind);
}

/* Calls check on the foot or pipe of every covering that has a guide, at three pitches. */
static void everywhere(const char *of,
		       void (*check)(const char *key, const struct detail_layers *r))
{
	static const double rise[] = {2.5, 6, 12};

	for (size_t i = 0; i < guide_page_count(lib); i++)
		for (int k = 0; k < 3; k++) {
			const struct guide_page page = guide_page_at(lib, i);
			const struct guide_sizes sizes = at_pitch(rise[k]);
			struct detail_layers r;

			if (page.use == GUIDE_USE_REFUSED)
				continue;
			if (!read_layers(&r, page.key, of, &sizes))
				fail_msg("%s: no drawing of the %s", page.key, of);
			check(page.key, &r);
		}
}

/* ---- pipes ---- */

static void check_pipe(const char *key, const struct detail_layers *r)
{
	static const char *const upright[] = {"sleeve", "pipe", "pipe-insulation", "cap"};
	const struct detail_layer *sleeve = of_kind(r, "sleeve"), *cap = of_kind(r, "cap"),
				  *inside = of_kind(r, "pipe-insulation");

	for (int i = 0; i < 4; i++)
		if (!of_kind(r, upright[i]) || !of_kind(r, upright[i])->plumb)
			fail_msg("%s: no plumb %s", key, upright[i]);
	/* 1/4 in of room all round, the cap wider than the sleeve and closed on the pipe above it
	 */
	if (sleeve->diameter < inside->diameter + IN(0.5) - 1e-9 ||
	    cap->diameter < sleeve->diameter + IN(1))
		fail_msg("%s: the sleeve is too tight or the cap too narrow", key);
	if (cap->height < IN(3.49) || !strstr(cap->label, "pipe"))
		fail_msg("%s: the cap does not come down 2 in or is not said to be sealed to the "
			 "pipe",
			 key);
	/* 6 in above the deck on the high side at least, the covering not counted */
	if (sleeve->height - sleeve->diameter / 2 * tan(r->theta) < IN(6))
		fail_msg("%s: the sleeve ends too low", key);
	if (r->along)
		fail_msg("%s: a pipe cut along the course", key);
}

static void pipes_are_plumb_and_capped(void **state)
{
	(void)state;
	everywhere("pipe", check_pipe);
}

/* The flange goes out beyond the oval that the sleeve cuts: 2 in at least on metal (boot), else 4
   in: UFGS 07 60 00 asks 4 in of a lead sleeve. */
static void check_flange(const char *key, const struct detail_layers *r)
{
	const double half = of_kind(r, "sleeve")->diameter / 2, oval = half / cos(r->theta);

	for (int i = 0; i < r->layers; i++) {
		const struct detail_layer *l = &r->layer[i];
		const bool boot = layer_is(l, "boot") && isnan(l->diameter);

		if (!layer_is(l, "plate") && !layer_is(l, "deck-flashing") && !boot)
			continue;
		const double least = boot ? IN(1.9) : IN(3.9);

		if (l->turned) {
			/* the sides of the square lie at 45 degrees: there the oval is this wide */
			if (l->down - sqrt((oval * oval + half * half) / 2) < least ||
			    fabs(l->down - l->side) > 1e-9 || fabs(l->down - l->up) > 1e-9)
				fail_msg("%s: the boot's base is too small, or not square", key);
			continue;
		}
		if (l->down - oval < least || l->up - oval < least || l->side - half < least)
			fail_msg("%s: %s goes out %.2f, %.2f, %.2f in", key, l->label,
				 (l->down - oval) / IN(1), (l->up - oval) / IN(1),
				 (l->side - half) / IN(1));
	}
}

static void flanges_go_out(void **state)
{
	(void)state;
	everywhere("pipe", check_flange);
}

/* By hand: a sleeve of 3 in with 1/4 in of room, 3-1/2 in; at 12:12 3.5 x 1.41421 = 4.950, that is
   4-15/16 in to the nearest 1/16; at 6:12 3.5 x 1.11803 = 3.913, 3-15/16. */
static void holes_are_ovals(void **state)
{
	static const struct {
		double rise;
		const char *want;
	} row[] = {{12, "hole 3-1/2 in across, 4-15/16 in up the slope"},
		   {6, "hole 3-1/2 in across, 3-15/16 in up the slope"}};

	(void)state;
	for (int i = 0; i < 2; i++) {
		const struct guide_sizes sizes = at_pitch(row[i].rise);
		const struct guide_request request = {
			.key = "metal-standing-seam-snap", .sizes = &sizes, .units = SYSTEM_US};
		struct drawing *d = detail_draw(letters, lib, &request, "pipe", "plan");

		assert_non_null(d);
		if (!strstr(drawing_description(d), row[i].want))
			fail_msg("not `%s`: %s", row[i].want, drawing_description(d));
		drawing_destroy(d);
	}
}

/* ---- plates ---- */

/* Above the butt a plate reaches as far as a piece does, and 3 in of rise below 8:12; under tile
   the headlap and 3 in. Its lower edge lies in the open. */
static void check_reach(const char *key, const struct detail_layers *r)
{
	const struct detail_layer *plate = of_kind(r, "plate"), *piece = of_kind(r, "course");
	double reach;

	if (!piece)
		piece = of_kind(r, "tile");
	if (!plate || !plate->woven || !piece)
		return;
	reach = piece->length - piece->exposure;
	if (layer_is(piece, "tile"))
		reach += IN(3);
	else if (r->theta < atan2(8, 12))
		reach = fmax(reach, IN(3) / sin(r->theta));
	if (plate->up - piece->butt_up < reach - 1e-9)
		fail_msg("%s: %s reaches %.2f in, not %.2f", key, plate->label,
			 (plate->up - piece->butt_up) / IN(1), reach / IN(1));
	if (plate->down < IN(4) - 1e-9)
		fail_msg("%s: %s ends %.2f in below the hole", key, plate->label,
			 plate->down / IN(1));
}

static void plates_reach(void **state)
{
	(void)state;
	everywhere("foot", check_reach);
	everywhere("pipe", check_reach);
}

/* By hand, laminated shingles of 13-1/4 in at 5-5/8 in, butt 2 in above a pipe: L - E 7.625 up to
   9.625 at 12:12, where the oval of 3 in asks more: usual 10 in are for an edge 1.677 in up
   (1.5 / cos 26.57), at 12:12 it is 2.121: 10.444, so 10-1/2. At 3:12 3 / sin 14.04 = 12.369, up to
   14.369: 14-1/2. */
static void one_plate_by_hand(void **state)
{
	struct guide_sizes sizes = at_pitch(12);
	struct detail_layers r;

	(void)state;
	assert_true(read_layers(&r, "asphalt-laminated", "pipe", &sizes));
	assert_near(of_kind(&r, "plate")->up, IN(10.5), 1e-9);
	sizes = at_pitch(3);
	assert_true(read_layers(&r, "asphalt-laminated", "pipe", &sizes));
	assert_near(of_kind(&r, "plate")->up, IN(14.5), 1e-9);
}

/* Every penetration of tile and metal shingle is flashed twice, each with a collar. */
static void check_two(const char *key, const struct detail_layers *r)
{
	const struct detail_layer *low = of_kind(r, "deck-flashing"), *hook = of_kind(r, "hook");

	if (!of_kind(r, "tile") && strcmp(key, "metal-shingle") != 0)
		return;
	if (hook)
		return;
	if (!low || !(low->height > 0) || !of_kind(r, "plate") || !of_kind(r, "sleeve") ||
	    !of_kind(r, "cap"))
		fail_msg("%s: not flashed twice", key);
}

static void tiles_are_flashed_twice(void **state)
{
	(void)state;
	everywhere("foot", check_two);
	everywhere("pipe", check_two);
}

/* A post through a plate or membrane has something that rises round it. */
static void check_post(const char *key, const struct detail_layers *r)
{
	if (!of_kind(r, "post"))
		return;
	if (r->post_least > 0)
		fail_msg("%s: the library's own post is too short for its flashing", key);
	for (int i = 0; i < r->layers; i++)
		if (layer_is(&r->layer[i], "sleeve") || layer_is(&r->layer[i], "boss") ||
		    layer_is(&r->layer[i], "boot") ||
		    (layer_is(&r->layer[i], "patch") && isfinite(r->layer[i].diameter)))
			return;
	fail_msg("%s: water runs down the post into the hole", key);
}

static void posts_are_flashed(void **state)
{
	(void)state;
	everywhere("foot", check_post);
}

/* 4 in above the base is less than 8 in of flashing above EPDM: said, and told what it needs. */
static void short_post_is_said(void **state)
{
	struct guide_sizes sizes = at_pitch(0.25);
	const struct guide_request request = {.key = "epdm", .sizes = &sizes, .units = SYSTEM_US};
	struct detail_layers r;
	struct drawing *d;
	bool said = false;

	(void)state;
	assert_true(read_layers(&r, "epdm", "foot", &sizes));
	assert_true(r.post_least < 1e-12); /* the usual one is long enough */
	sizes.foot_height = IN(4);
	assert_true(read_layers(&r, "epdm", "foot", &sizes));
	/* deck to roof 2.06 in; 8 in more; 1/2 in to spare; less the base's 1-1/2 in: 9.06 or more
	 */
	assert_true(r.post_least > IN(9) && r.post_least < IN(10));
	d = detail_draw(letters, lib, &request, "foot", "section");
	assert_non_null(d);
	for (const struct shape *s = drawing_first(d); s; s = s->next)
		said = said || (s->kind == SHAPE_TEXT && strstr(s->text, "too short"));
	assert_true(said);
	drawing_destroy(d);
}

/* Half of 12 in less 1.414 x 3-1/2 in leaves 1.05 in to the seam, of 16 in 3.05 in. */
static void narrow_pan_is_said(void **state)
{
	static const double pan[] = {12, 16};

	(void)state;
	for (int i = 0; i < 2; i++) {
		struct guide_sizes sizes = at_pitch(3);
		const struct guide_request request = {
			.key = "metal-standing-seam-snap", .sizes = &sizes, .units = SYSTEM_US};
		bool said = false;

		sizes.seam_spacing = IN(pan[i]);
		struct drawing *d = detail_draw(letters, lib, &request, "pipe", "section");

		assert_non_null(d);
		for (const struct shape *s = drawing_first(d); s; s = s->next)
			said = said || (s->kind == SHAPE_TEXT && strstr(s->text, "too narrow"));
		assert_true(said == (i == 0));
		drawing_destroy(d);
	}
}

/* ---- what holds the foot ---- */

static void scene_of(struct scene *s, const char *key, enum guide_fastener fastener)
{
	const struct guide_request request = {.key = key, .units = SYSTEM_US, .fastener = fastener};

	memset(s, 0, sizeof *s);
	s->lettering = letters;
	assert_true(scene_read(s, lib, &request, "foot", "section"));
	section_frame(s);
}

/* Its base lies above the head of the tile below: 16 in long, 13 in showing, butt at 2 in: head at
   5 in. */
static void hook_passes_the_head(void **state)
{
	struct scene s;

	(void)state;
	scene_of(&s, "clay-flat-interlocking", GUIDE_FASTENER_USUAL);
	const struct detail_layer *hook = scene_find(&s, "hook");

	assert_non_null(hook);
	assert_true(section_hook_base(&s, hook) - hook->up / 2 > IN(5));
	assert_true(section_hook_base(&s, hook) + hook->up / 2 < s.u1);
}

/* The nut of a through-bolt sits below the rafter: deck 15/32 in, rafter 5-1/2 in. */
static void bolts_go_through(void **state)
{
	struct scene s;

	(void)state;
	scene_of(&s, "asphalt-laminated", GUIDE_FASTENER_BOLT);
	assert_near(section_bolt_exit(&s), -IN(5.5 + 15.0 / 32), 1e-9);
	assert_true(section_is_bolt(scene_find(&s, "screw")));
	assert_true(s.v0 < section_bolt_exit(&s));
	/* a filler between the boards carries nothing: boards 3/4 in, rafter 5-1/2 in */
	scene_of(&s, "wood-shingle", GUIDE_FASTENER_BOLT);
	assert_near(section_bolt_exit(&s), -IN(6.25), 1e-9);
	/* through a block of 5-1/2 in whose underside is 6-1/4 in below the deck's top */
	scene_of(&s, "wood-shake", GUIDE_FASTENER_USUAL);
	assert_near(section_bolt_exit(&s), -IN(6.25), 1e-9);
}

static void fasteners_are_named(void **state)
{
	static const struct {
		enum guide_fastener fastener;
		const char *want;
	} row[] = {{GUIDE_FASTENER_BOLT, "through-bolt, washer and nut below"},
		   {GUIDE_FASTENER_HANGER_BOLT, "hanger bolt, the foot between two nuts"},
		   {GUIDE_FASTENER_DECK, "screws into the deck alone, no rafter below"},
		   {GUIDE_FASTENER_LAG_SCREW, "lag screw"}};

	(void)state;
	for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
		struct scene s;

		scene_of(&s, "asphalt-laminated", row[i].fastener);
		assert_string_equal(scene_find(&s, "screw")->label, row[i].want);
		assert_true((scene_find(&s, "rafter") == NULL) ==
			    (row[i].fastener == GUIDE_FASTENER_DECK));
	}
}

/* ---- numbers ---- */

static bool crosses(const struct shape *a, const struct shape *b)
{
	const struct point p = a->at[0], q = a->at[1], u = b->at[0], v = b->at[1];
	const double s1 = (q.x - p.x) * (u.y - p.y) - (q.y - p.y) * (u.x - p.x),
		     s2 = (q.x - p.x) * (v.y - p.y) - (q.y - p.y) * (v.x - p.x),
		     s3 = (v.x - u.x) * (p.y - u.y) - (v.y - u.y) * (p.x - u.x),
		     s4 = (v.x - u.x) * (q.y - u.y) - (v.y - u.y) * (q.x - u.x);

	return s1 * s2 < 0 && s3 * s4 < 0;
}

/* Lines of one side start at the same x. */
static void want_no_crossing(const struct drawing *d, const char *key)
{
	for (const struct shape *a = drawing_first(d); a; a = a->next)
		for (const struct shape *b = a->next; b && a->layer == LAYER_THIN; b = b->next)
			if (a->kind == SHAPE_LINE && b->kind == SHAPE_LINE &&
			    b->layer == LAYER_THIN && a->n == 2 && b->n == 2 &&
			    fabs(a->at[0].x - b->at[0].x) < 1e-9 && crosses(a, b))
				fail_msg("%s: two lines of numbers cross", key);
}

static void lines_do_not_cross(void **state)
{
	static const char *const of[] = {"foot", "pipe"}, *const view[] = {"section", "plan"};
	struct guide_sizes sizes = at_pitch(2.5);

	(void)state;
	sizes.foot_height = IN(2);
	sizes.rafter_depth = IN(3.5);
	for (size_t i = 0; i < guide_page_count(lib); i++)
		for (int k = 0; k < 4; k++) {
			const struct guide_request request = {.key = guide_page_at(lib, i).key,
							      .sizes = &sizes,
							      .units = SYSTEM_US};
			struct drawing *d =
				detail_draw(letters, lib, &request, of[k / 2], view[k % 2]);

			if (!d)
				continue;
			want_no_crossing(d, request.key);
			drawing_destroy(d);
		}
}

int main(void)
{
	const struct CMUnitTest tests[] = {
		cmocka_unit_test(pipes_are_plumb_and_capped),
		cmocka_unit_test(flanges_go_out),
		cmocka_unit_test(holes_are_ovals),
		cmocka_unit_test(plates_reach),
		cmocka_unit_test(one_plate_by_hand),
		cmocka_unit_test(tiles_are_flashed_twice),
		cmocka_unit_test(posts_are_flashed),
		cmocka_unit_test(short_post_is_said),
		cmocka_unit_test(narrow_pan_is_said),
		cmocka_unit_test(hook_passes_the_head),
		cmocka_unit_test(bolts_go_through),
		cmocka_unit_test(fasteners_are_named),
		cmocka_unit_test(lines_do_not_cross),
	};

	return cmocka_run_group_tests(tests, set_up, tear_down);
}
