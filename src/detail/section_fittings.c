/* SPDX-License-Identifier: MIT */
/* What stands in or on the roof: foot, post, screws, sleeve, boot, cap, pipe. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

/* A point `h` along the axis of a fitting and `w` to its upper side. */
static struct point on_axis(const struct scene *s, const struct detail_layer *l, double h, double w)
{
	const double c = l->plumb ? cos(s->theta) : 1, n = l->plumb ? sin(s->theta) : 0;

	return (struct point){h * n + w * c, h * c - w * n};
}

/* Where its side w meets the plane at v. */
static struct point on_plane(const struct scene *s, const struct detail_layer *l, double v,
			     double w)
{
	const double c = l->plumb ? cos(s->theta) : 1, n = l->plumb ? sin(s->theta) : 0;

	return on_axis(s, l, (v + w * n) / c, w);
}

/* Between two heights, half as wide as w0 below and w1 above. */
static void body(struct scene *s, const struct detail_layer *l, enum fill fill, double h0,
		 double w0, double h1, double w1)
{
	const struct point at[] = {on_axis(s, l, h0, -w0), on_axis(s, l, h0, w0),
				   on_axis(s, l, h1, w1), on_axis(s, l, h1, -w1)};

	drawing_shape(s->d, LAYER_MATERIAL, -1, fill, at, 4);
}

/* From the plane at v up to a height along the axis. */
static void body_from(struct scene *s, const struct detail_layer *l, enum fill fill, double v,
		      double w, double h1)
{
	const struct point at[] = {on_plane(s, l, v, -w), on_plane(s, l, v, w),
				   on_axis(s, l, h1, w), on_axis(s, l, h1, -w)};

	drawing_shape(s->d, LAYER_MATERIAL, -1, fill, at, 4);
}

/* Radius of what a flashing stands round: sleeve, post or pipe. */
static double inner_radius(const struct scene *s)
{
	static const char *const kind[] = {"sleeve", "post", "pipe"};

	for (int i = 0; i < 3; i++)
		if (scene_find(s, kind[i]))
			return scene_find(s, kind[i])->diameter / 2;
	return IN(0.5);
}

static void point_on(struct scene *s, struct detail_layer *l, double h, double w)
{
	const struct point p = on_axis(s, l, h, w);

	scene_point(l, p.x, p.y);
}

double section_foot_base(const struct scene *s, const struct detail_layer *foot)
{
	const struct detail_layer *boss = scene_find(s, "boss"), *clamp = scene_find(s, "clamp");

	if (clamp)
		return s->cursor + known(clamp->base, 0) + clamp->height;
	if (foot && isfinite(foot->base))
		return foot->base;
	return scene_surface(s) + (boss ? boss->height : 0);
}

static void draw_foot(struct scene *s, struct detail_layer *l)
{
	const double foot = section_foot_base(s, l), down = known(l->down, l->side),
		     up = known(l->up, l->side);

	scene_box(s, FILL_WHITE, -down, foot, up, foot + SECTION_BASE);
	scene_box(s, FILL_WHITE, up - SECTION_BASE, foot, up, foot + l->height);
	scene_point(l, up - SECTION_BASE / 2, foot + 0.75 * l->height);
}

static void draw_post(struct scene *s, struct detail_layer *l)
{
	const double r = l->diameter / 2, wide = fmax(IN(1.5), 1.7 * r), foot = known(l->base, 0);

	scene_box(s, FILL_WHITE, -wide, foot, wide, foot + SECTION_BASE);
	body(s, l, FILL_WHITE, foot + SECTION_BASE, r, l->height, r);
	point_on(s, l, 0.93 * l->height, 0);
}

/* The hole in the deck is wider than the sleeve: its plumb sides, cut by the deck's two faces.
   Where boards lie apart there is nothing to see of its sides. */
static void gap_in_deck(struct scene *s, const struct detail_layer *l, double deck, double half)
{
	const struct point hole[] = {on_plane(s, l, -deck, -half), on_plane(s, l, -deck, half),
				     on_plane(s, l, 0, half), on_plane(s, l, 0, -half)};

	drawing_shape(s->d, LAYER_MATERIAL, 0, FILL_WHITE, hole, 4);
	if (!scene_find(s, "deck"))
		return;
	drawing_line(s->d, LAYER_MATERIAL, hole[0], hole[3]);
	drawing_line(s->d, LAYER_MATERIAL, hole[1], hole[2]);
}

static double deck_thickness(const struct scene *s)
{
	const struct detail_layer *deck = scene_find(s, "deck");

	if (!deck)
		deck = scene_find(s, "spaced-board");
	return deck ? deck->thickness : 0;
}

static void draw_sleeve(struct scene *s, struct detail_layer *l)
{
	const double r = l->diameter / 2, deck = deck_thickness(s);

	if (l->gap > 0)
		gap_in_deck(s, l, deck, r + l->gap);
	body_from(s, l, FILL_WHITE, l->gap > 0 ? -deck - IN(0.4) : scene_surface(s), r, l->height);
	point_on(s, l, 0.55 * l->height, 0.97 * r);
}

/* How far the cap comes down over the sleeve. */
#define CAP_OVERLAP IN(2)

/* Height of the cap's upper edge, where it is clamped and sealed. */
static double cap_top(const struct scene *s, const struct detail_layer *cap)
{
	const struct detail_layer *sleeve = scene_find(s, "sleeve");
	const double top = sleeve ? sleeve->height : scene_surface(s) + IN(4);

	return top + cap->height - fmin(CAP_OVERLAP, 0.6 * cap->height);
}

/* Over a sleeve, or round a post where a sleeve ends: a skirt, and a cone up to what it is clamped
   on, with a bead of sealant above. */
static void draw_cap(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *post = scene_find(s, "post"), *pipe = scene_find(s, "pipe");
	const double r = l->diameter / 2, high = cap_top(s, l), low = high - l->height;
	const double shoulder = high - 0.35 * l->height, bead = fmax(IN(0.15), 0.6 * s->paper);
	const double neck = post ? post->diameter / 2 : pipe ? pipe->diameter / 2 : 0.3 * r;
	const struct point at[] = {on_axis(s, l, low, -r),     on_axis(s, l, low, r),
				   on_axis(s, l, shoulder, r), on_axis(s, l, high, neck),
				   on_axis(s, l, high, -neck), on_axis(s, l, shoulder, -r)};

	drawing_shape(s->d, LAYER_MATERIAL, -1, FILL_LIGHT, at, 6);
	for (int side = -1; side <= 1; side += 2) {
		const struct point seal[] = {on_axis(s, l, high - bead, side * (neck + bead)),
					     on_axis(s, l, high - bead, side * neck),
					     on_axis(s, l, high + bead, side * neck)};

		drawing_shape(s->d, LAYER_MATERIAL, 0, FILL_BLACK, seal, 3);
	}
	point_on(s, l, low + 0.3 * l->height, -0.8 * r);
}

/* The insulation is parted where the cap grips the bare pipe, and goes on above it in its jacket.
 */
static void draw_insulation(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *cap = scene_find(s, "cap");
	const double r = l->diameter / 2, low = fmax(s->v0, -IN(4)) + IN(0.5);
	const double grip = cap ? cap_top(s, cap) : l->height;

	body(s, l, FILL_WHITE, low, r, fmin(l->height, grip - IN(0.5)), r);
	if (grip + IN(0.75) < l->height) {
		const struct point at[] = {
			on_axis(s, l, grip + IN(0.75), -r), on_axis(s, l, grip + IN(0.75), r),
			on_axis(s, l, l->height, r), on_axis(s, l, l->height, -r)};

		drawing_shape(s->d, LAYER_MATERIAL, 0.5 * MM, FILL_WHITE, at, 4);
	}
	point_on(s, l, l->height - IN(0.6), -0.8 * r);
}

/* Collar of the flashing on the deck, round what comes through it. */
static void draw_collar(struct scene *s, const struct detail_layer *l)
{
	const struct detail_layer *in = scene_find(s, "sleeve") && !scene_find(s, "post")
						? scene_find(s, "sleeve")
						: scene_find(s, "post");

	if (!in || !(l->height > 0))
		return;
	for (int side = -1; side <= 1; side += 2) {
		const double w = side * (in->diameter / 2 + 0.3 * s->paper);
		const struct point a = on_plane(s, in, l->foot, w),
				   b = on_plane(s, in, l->foot + l->height, w);

		drawing_line_as(s->d, LAYER_MATERIAL, 0.6 * MM, DASH_SOLID, a, b);
	}
}

/* Foam that runs up a post or sleeve: on both sides of it. */
static void draw_fillet(struct scene *s, struct detail_layer *l)
{
	const double in = inner_radius(s), r = l->diameter / 2;

	for (int side = -1; side <= 1; side += 2) {
		const struct point at[] = {on_plane(s, l, s->cursor, side * 1.6 * r),
					   on_plane(s, l, s->cursor, side * in),
					   on_axis(s, l, l->height, side * in),
					   on_axis(s, l, l->height, side * (in + IN(0.3)))};

		drawing_shape(s->d, LAYER_MATERIAL, -1, FILL_LIGHT, at, 4);
	}
	point_on(s, l, 0.5 * (s->cursor + l->height), -(in + IN(0.3)));
}

static void draw_boot(struct scene *s, struct detail_layer *l)
{
	const double foot = s->cursor, t = l->thickness;

	if (isfinite(l->diameter)) {
		const struct detail_layer *in =
			scene_find(s, "sleeve") ? scene_find(s, "sleeve") : scene_find(s, "post");
		const double r = l->diameter / 2;

		const double wide = r + IN(2), lift = fmax(t, 0.6 * s->paper);
		const struct point base[] = {
			on_plane(s, l, foot, -wide), on_plane(s, l, foot, wide),
			on_plane(s, l, foot + lift, wide), on_plane(s, l, foot + lift, -wide)};

		drawing_shape(s->d, LAYER_MATERIAL, -1, FILL_GREY, base, 4);
		body_from(s, l, FILL_GREY, foot, r + lift, l->height);
		if (in)
			body_from(s, l, FILL_WHITE, foot, in->diameter / 2, l->height);
		body(s, l, FILL_WHITE, l->height - IN(1), r + IN(0.2), l->height - IN(0.5),
		     r + IN(0.2));
		point_on(s, l, 0.5 * l->height, r);
		return;
	}
	const double r = inner_radius(s), corner = l->turned ? sqrt(2) : 1,
		     wide = fmax(r + IN(0.5), 0.75 * known(l->side, IN(3)));
	const struct detail_layer *in = scene_find(s, "sleeve") ? scene_find(s, "sleeve") : l;
	/* the cone stands on its base, whatever the slope, and grips what is plumb above its
	   high side */
	const double lean = in->plumb ? tan(s->theta) : 0,
		     top = fmax(foot + l->height, foot + wide * lean + IN(1.5));
	const struct point cone[] = {on_plane(s, in, foot, -wide), on_plane(s, in, foot, wide),
				     on_axis(s, in, top, r + IN(0.1)),
				     on_axis(s, in, top, -r - IN(0.1))};

	drawing_shape(s->d, LAYER_MATERIAL, -1, FILL_GREY, cone, 4);
	scene_box(s, FILL_GREY, -corner * l->down, foot, corner * l->up,
		  foot + fmax(t, 0.6 * s->paper));
	scene_point(l, -0.9 * corner * l->down, foot + t / 2);
}

static void draw_sealant(struct scene *s, struct detail_layer *l)
{
	const double v = known(l->base, scene_surface(s)), t = known(l->thickness, IN(0.1));

	if (isfinite(l->side)) {
		scene_box(s, FILL_BLACK, -l->side, v, l->side, v + t);
		scene_point(l, 0.9 * l->side, v + t / 2);
		return;
	}
	/* in a pilot hole: seen on both sides of the screw */
	const double w = l->diameter / 2 + 0.5 * s->paper;

	scene_box(s, FILL_GREY, -w, -deck_thickness(s) - IN(0.5), w, v);
	scene_point(l, -w, -0.5 * deck_thickness(s));
}

void section_fitting(struct scene *s, struct detail_layer *l)
{
	const double r = l->diameter / 2;

	if (layer_is(l, "boss")) {
		const double foot = scene_surface(s);

		body(s, l, FILL_LIGHT, foot, 1.4 * r, foot + l->height, r);
		scene_point(l, -1.1 * r, foot + 0.4 * l->height);
	} else if (layer_is(l, "foot")) {
		draw_foot(s, l);
	} else if (layer_is(l, "post")) {
		draw_post(s, l);
	} else if (layer_is(l, "screw") || layer_is(l, "bolt")) {
		section_fastener(s, l);
	} else if (layer_is(l, "deck-flashing")) {
		draw_collar(s, l);
	} else if (layer_is(l, "sleeve")) {
		draw_sleeve(s, l);
	} else if (layer_is(l, "cap")) {
		draw_cap(s, l);
	} else if (layer_is(l, "boot")) {
		draw_boot(s, l);
	} else if (layer_is(l, "hook")) {
		section_hook(s, l);
	} else if (layer_is(l, "clamp")) {
		section_clamp(s, l);
	} else if (layer_is(l, "pipe-insulation")) {
		draw_insulation(s, l);
	} else if (layer_is(l, "pipe")) {
		body(s, l, FILL_GREY, fmax(s->v0, -IN(4)), r, l->height, r);
		point_on(s, l, 0.97 * l->height, 0);
	} else if (layer_is(l, "patch") && isfinite(l->diameter)) {
		draw_fillet(s, l);
	} else if (layer_is(l, "sealant")) {
		draw_sealant(s, l);
	}
}
