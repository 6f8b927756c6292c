/* SPDX-License-Identifier: MIT */
/* What stands in or on the roof: foot, post, screws, sleeve, boot, cap, pipe. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)
/* Thickness of a base plate as drawn. */
#define BASE IN(0.25)

/* A point `h` along the axis of a fitting and `w` to its upper side. */
static struct point on_axis(const struct scene *s, const struct scene_layer *l, double h, double w)
{
	const double c = l->plumb ? cos(s->theta) : 1, n = l->plumb ? sin(s->theta) : 0;

	return (struct point){h * n + w * c, h * c - w * n};
}

/* Between two heights, half as wide as w0 below and w1 above. */
static void body(struct scene *s, const struct scene_layer *l, enum fill fill, double h0, double w0,
		 double h1, double w1)
{
	const struct point at[] = {on_axis(s, l, h0, -w0), on_axis(s, l, h0, w0),
				   on_axis(s, l, h1, w1), on_axis(s, l, h1, -w1)};

	drawing_shape(s->d, LAYER_MATERIAL, -1, fill, at, 4);
}

static void point_on(struct scene *s, struct scene_layer *l, double h, double w)
{
	const struct point p = on_axis(s, l, h, w);

	scene_point(l, p.x, p.y);
}

/* v where the base of the foot lies. */
static double foot_base(const struct scene *s, const struct scene_layer *foot)
{
	const struct scene_layer *boss = scene_find(s, "boss"), *clamp = scene_find(s, "clamp");

	if (clamp)
		return s->cursor + known(clamp->base, 0) + clamp->height;
	if (foot && isfinite(foot->base))
		return foot->base;
	return scene_surface(s) + (boss ? boss->height : 0);
}

static void draw_foot(struct scene *s, struct scene_layer *l)
{
	const double foot = foot_base(s, l), down = known(l->down, l->side),
		     up = known(l->up, l->side);

	scene_box(s, FILL_WHITE, -down, foot, up, foot + BASE);
	scene_box(s, FILL_WHITE, up - BASE, foot, up, foot + l->height);
	scene_point(l, up - BASE / 2, foot + 0.75 * l->height);
}

static void draw_post(struct scene *s, struct scene_layer *l)
{
	const double r = l->diameter / 2, wide = fmax(IN(1.5), 1.7 * r);

	scene_box(s, FILL_WHITE, -wide, 0, wide, BASE);
	body(s, l, FILL_WHITE, BASE, r, l->height, r);
	point_on(s, l, 0.93 * l->height, 0);
}

static void shank(struct scene *s, double u, double head, double length, double D, bool pointed)
{
	const double r = D / 2, tip = pointed ? fmin(length / 4, 2 * D) : 0;
	const struct point at[] = {{u - r, head},
				   {u + r, head},
				   {u + r, head - length + tip},
				   {u, head - length},
				   {u - r, head - length + tip}};

	drawing_shape(s->d, LAYER_MATERIAL, 0.15 * MM, FILL_BLACK, at, 5);
	drawing_rectangle(s->d, LAYER_MATERIAL, FILL_BLACK, u - 1.8 * r, head, u + 1.8 * r,
			  head + 1.2 * r);
}

static void draw_screw(struct scene *s, struct scene_layer *l)
{
	const struct scene_layer *post = scene_find(s, "post"), *foot = scene_find(s, "foot"),
				 *clamp = scene_find(s, "clamp"), *hook = scene_find(s, "hook");
	const bool pointed = scene_is(l, "screw");

	if (clamp) {
		const double v = s->cursor + known(clamp->base, 0) + clamp->height / 2;

		drawing_rectangle(s->d, LAYER_MATERIAL, FILL_BLACK, -clamp->side - l->length / 2,
				  v - l->diameter / 2, -clamp->side + l->length,
				  v + l->diameter / 2);
		scene_point(l, -clamp->side - l->length / 3, v);
	} else if (foot) {
		const double head = foot_base(s, foot) + BASE;

		shank(s, 0, head, l->length, l->diameter, pointed);
		scene_point(l, 0, head - 0.9 * l->length);
	} else if (hook) {
		shank(s, 0.6 * hook->up, BASE, l->length, l->diameter, pointed);
		scene_point(l, 0.6 * hook->up, BASE - 0.8 * l->length);
	} else {
		const double u = post ? fmax(IN(1), 1.35 * post->diameter / 2) : 0;

		shank(s, -u, BASE, l->length, l->diameter, pointed);
		if (u > 0)
			shank(s, u, BASE, l->length, l->diameter, pointed);
		scene_point(l, -u, BASE - 0.8 * l->length);
	}
}

/* The hole in the deck is wider than the sleeve. */
static void gap_in_deck(struct scene *s, const struct scene_layer *l, double deck, double half)
{
	/* its plumb sides, cut by the deck's two faces */
	const double lean = l->plumb ? tan(s->theta) : 0, low = -deck,
		     wide = half / (l->plumb ? cos(s->theta) : 1);
	const struct point hole[] = {
		{low * lean - wide, low}, {low * lean + wide, low}, {wide, 0}, {-wide, 0}};

	drawing_shape(s->d, LAYER_MATERIAL, -1, FILL_WHITE, hole, 4);
}

static void draw_sleeve(struct scene *s, struct scene_layer *l)
{
	const double r = l->diameter / 2,
		     deck = scene_find(s, "deck") ? scene_find(s, "deck")->thickness : IN(0.75);

	if (l->gap > 0)
		gap_in_deck(s, l, deck, r + l->gap);
	body(s, l, FILL_WHITE, l->gap > 0 ? -deck - IN(0.4) : scene_surface(s), r, l->height, r);
	point_on(s, l, 0.45 * l->height, 0.97 * r);
}

/* On top of a sleeve, or round a post where a sleeve ends. */
static void draw_cap(struct scene *s, struct scene_layer *l)
{
	const struct scene_layer *sleeve = scene_find(s, "sleeve"), *inside = scene_find(s, "post");
	const double top = sleeve ? sleeve->height : scene_surface(s) + IN(4), r = l->diameter / 2;
	double neck = inside ? inside->diameter / 2 : 0.3 * r;

	for (int i = 0; i < s->layers; i++)
		if (scene_is(&s->layer[i], "pipe") || scene_is(&s->layer[i], "pipe-insulation"))
			neck = fmax(neck, s->layer[i].diameter / 2);
	neck = fmin(neck, 0.9 * r);
	body(s, l, FILL_LIGHT, top - 0.6 * l->height, r, top + 0.4 * l->height, neck + IN(0.1));
	point_on(s, l, top - 0.4 * l->height, -0.8 * r);
}

static void draw_boot(struct scene *s, struct scene_layer *l)
{
	const double foot = s->cursor, t = l->thickness;

	if (isfinite(l->diameter)) {
		const struct scene_layer *in =
			scene_find(s, "sleeve") ? scene_find(s, "sleeve") : scene_find(s, "post");
		const double r = l->diameter / 2;

		body(s, l, FILL_GREY, foot, r + IN(2), foot + fmax(t, 0.6 * s->paper), r + IN(2));
		body(s, l, FILL_GREY, foot, r + fmax(t, 0.6 * s->paper), l->height, r);
		if (in)
			body(s, l, FILL_WHITE, foot, in->diameter / 2, l->height, in->diameter / 2);
		body(s, l, FILL_WHITE, l->height - IN(1), r + IN(0.2), l->height - IN(0.5),
		     r + IN(0.2));
		point_on(s, l, 0.5 * l->height, r);
		return;
	}
	const struct scene_layer *sleeve = scene_find(s, "sleeve"),
				 *inner = sleeve ? sleeve : scene_find(s, "pipe");
	const double r = inner ? inner->diameter / 2 : IN(1);

	scene_box(s, FILL_GREY, -l->down, foot, l->up, foot + fmax(t, 0.6 * s->paper));
	body(s, l, FILL_GREY, foot, 0.75 * known(l->side, IN(3)), foot + l->height, r + IN(0.1));
	scene_point(l, -0.9 * l->down, foot + t / 2);
}

/* Base on the rafter above, a rise through the lap, an arm clear of the piece below, a turned-up
 * end for the rail. */
static void draw_hook(struct scene *s, struct scene_layer *l)
{
	const double t = l->thickness, gap = known(l->gap, IN(0.2)),
		     clear = lap_woven(&s->lap, 0) + gap;
	const double rise = s->lap.butt + IN(1);
	const struct point at[] = {{l->up + IN(2), t / 2},
				   {rise, t / 2},
				   {s->lap.butt - IN(0.3), clear + t / 2},
				   {-l->down, clear + t / 2},
				   {-l->down, clear + IN(3)}};

	scene_line(s, t / s->paper * MM, DASH_SOLID, (const struct point[]){at[1], at[0]}, 2);
	scene_line(s, t / s->paper * MM, DASH_SOLID, (const struct point[]){at[2], at[1]}, 2);
	scene_line(s, t / s->paper * MM, DASH_SOLID, (const struct point[]){at[3], at[2]}, 2);
	scene_line(s, t / s->paper * MM, DASH_SOLID, (const struct point[]){at[3], at[4]}, 2);
	scene_point(l, -0.7 * l->down, clear + t / 2);
}

static void draw_clamp(struct scene *s, struct scene_layer *l)
{
	const double foot = s->cursor + known(l->base, 0);
	const struct scene_layer *seam = scene_find(s, "seam");
	const double half = seam ? fmax(seam->side, 0.4 * s->paper) : 0;

	scene_box(s, FILL_LIGHT, -l->side, foot, -half, foot + l->height);
	scene_box(s, FILL_LIGHT, half, foot, l->side, foot + l->height);
	scene_box(s, FILL_LIGHT, -l->side,
		  foot + (seam ? fmin(seam->height, l->height - IN(0.2)) : 0), l->side,
		  foot + l->height);
	scene_point(l, 0.6 * l->side, foot + 0.6 * l->height);
}

void section_fitting(struct scene *s, struct scene_layer *l)
{
	const double r = l->diameter / 2;

	if (scene_is(l, "boss")) {
		const double foot = scene_surface(s);

		body(s, l, FILL_LIGHT, foot, 1.4 * r, foot + l->height, r);
		scene_point(l, -1.1 * r, foot + 0.4 * l->height);
	} else if (scene_is(l, "foot")) {
		draw_foot(s, l);
	} else if (scene_is(l, "post")) {
		draw_post(s, l);
	} else if (scene_is(l, "screw") || scene_is(l, "bolt")) {
		draw_screw(s, l);
	} else if (scene_is(l, "sleeve")) {
		draw_sleeve(s, l);
	} else if (scene_is(l, "cap")) {
		draw_cap(s, l);
	} else if (scene_is(l, "boot")) {
		draw_boot(s, l);
	} else if (scene_is(l, "hook")) {
		draw_hook(s, l);
	} else if (scene_is(l, "clamp")) {
		draw_clamp(s, l);
	} else if (scene_is(l, "pipe-insulation") || scene_is(l, "pipe")) {
		body(s, l, scene_is(l, "pipe") ? FILL_GREY : FILL_WHITE,
		     fmax(s->v0, -IN(4)) + (scene_is(l, "pipe") ? 0 : IN(0.5)), r, l->height, r);
		point_on(s, l, 0.92 * l->height, scene_is(l, "pipe") ? 0 : -0.8 * r);
	} else if (scene_is(l, "patch") && isfinite(l->diameter)) {
		body(s, l, FILL_LIGHT, s->cursor, 1.6 * r, l->height, r * 0.6);
		point_on(s, l, 0.4 * l->height, -r);
	} else if (scene_is(l, "sealant")) {
		const double w = known(l->side, known(l->diameter, IN(0.5)) / 2),
			     v = known(l->base, scene_surface(s));

		scene_box(s, FILL_BLACK, -w, v, w, v + known(l->thickness, IN(0.1)));
		scene_point(l, isfinite(l->side) ? 0.9 * w : 0, v + known(l->thickness, 0) / 2);
	}
}
