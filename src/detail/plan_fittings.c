/* SPDX-License-Identifier: MIT */
/* What stands on the roof, seen square from above: rings, boots on their corner, screws, hooks,
   rows of seams and clamps. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

/* A square base on its corner: water parts at the upper one. */
void plan_diamond(struct scene *s, struct detail_layer *l)
{
	const double k = sqrt(2);
	const struct point at[] = {
		{0, -k * l->down}, {k * l->side, 0}, {0, k * l->up}, {-k * l->side, 0}};

	scene_shape(s, 0.35 * MM, FILL_LIGHT, at, 4);
	scene_point(l, -0.6 * k * l->side, 0);
}

/* What is covered: a ring of short strokes. */
static void dashed_ring(struct scene *s, struct point c, double rx, double ry)
{
	/* strokes and gaps of about 1 mm */
	const int n = 2 * (int)fmin(24, fmax(6, PI * fmax(rx, ry) / s->paper));
	struct point last = {c.x + rx, c.y};

	for (int i = 1; i <= n; i++) {
		const struct point p = {c.x + rx * cos(2 * PI * i / n),
					c.y + ry * sin(2 * PI * i / n)};

		if (i % 2)
			drawing_line_as(s->d, LAYER_MATERIAL, 0.25 * MM, DASH_SOLID, last, p);
		last = p;
	}
}

/* The hole that a sleeve asks for, in the deck below. */
static void hole(struct scene *s, const struct detail_layer *l)
{
	const double r = l->diameter / 2 + l->gap;

	dashed_ring(s, (struct point){0, 0}, r, r / (l->plumb ? cos(s->theta) : 1));
}

/* A round thing; a plumb one cuts the roof in an ellipse that is longer up the slope. */
void plan_ring(struct scene *s, struct detail_layer *l, enum fill fill, bool hidden)
{
	struct point at[48];
	const double r = l->diameter / 2, stretch = l->plumb ? 1 / cos(s->theta) : 1;
	const double turn = (double)(l - s->layer) - 0.5 * s->layers;

	for (int i = 0; i < 48; i++)
		at[i] = (struct point){r * cos(2 * PI * i / 48),
				       stretch * r * sin(2 * PI * i / 48)};
	if (layer_is(l, "sleeve") && l->gap > 0)
		hole(s, l);
	if (hidden)
		dashed_ring(s, (struct point){0, 0}, r, stretch * r);
	else
		drawing_shape(s->d, LAYER_MATERIAL, 0.3 * MM, fill, at, 48);
	/* each ring is pointed at from a side of its own */
	scene_point(l, r * cos(0.8 * turn), r * sin(0.8 * turn) * stretch);
}

void plan_rows(struct scene *s, struct detail_layer *l)
{
	/* a pipe stands midway between two seams */
	const double shift = s->pipe && layer_is(l, "seam") ? 0.5 : 0;

	for (int k = -3; k <= 3; k++) {
		const double u = (k + shift) * l->spacing;

		if (layer_is(l, "clamp")) {
			if (u - l->side > s->u0 && u + l->side < s->u1)
				scene_box(s, FILL_LIGHT, u - l->side, -known(l->down, IN(1)),
					  u + l->side, known(l->up, IN(1)));
			continue;
		}
		plan_along(s, u - l->side, 0.35 * MM, DASH_SOLID);
		plan_along(s, u + l->side, 0.35 * MM, DASH_SOLID);
		if (layer_is(l, "rib")) {
			plan_along(s, u - 2 * l->side, 0.18 * MM, DASH_SOLID);
			plan_along(s, u + 2 * l->side, 0.18 * MM, DASH_SOLID);
		}
	}
	scene_point(l, layer_is(l, "clamp") ? 0.8 * l->side : (1 - shift) * l->spacing,
		    layer_is(l, "clamp") ? 0 : 0.7 * s->v1);
}

/* Its head; dashed where a flashing or a piece lies over it. */
static void dot(struct scene *s, const struct detail_layer *l, double u, double v)
{
	const double r = fmax(l->diameter, 0.8 * s->paper);

	if (!scene_find(s, "foot")) {
		dashed_ring(s, (struct point){u, v}, r, r);
		return;
	}
	drawing_circle(s->d, LAYER_MATERIAL, FILL_BLACK, (struct point){u, v}, r);
}

void plan_screws(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *post = scene_find(s, "post"), *hook = scene_find(s, "hook"),
				  *foot = scene_find(s, "foot");

	if (scene_find(s, "clamp"))
		return;
	if (hook) {
		const double v = section_hook_base(s, hook);

		dot(s, l, 0, v);
		scene_point(l, 0, v);
	} else if (foot && l->as == GUIDE_FASTENER_DECK) {
		for (int i = 0; i < 4; i++)
			dot(s, l, (i % 2 ? 0.7 : -0.7) * foot->side,
			    (i / 2 ? 0.7 : -0.7) * known(foot->down, foot->side));
		scene_point(l, 0.7 * foot->side, 0.7 * known(foot->down, foot->side));
	} else if (post) {
		const double off = fmax(IN(1), 1.35 * post->diameter / 2);

		dot(s, l, 0, off);
		dot(s, l, 0, -off);
		scene_point(l, 0, -off);
	} else {
		dot(s, l, 0, 0);
		scene_point(l, 0, 0);
	}
}

/* Its arm shows below the butt, its base lies under the pieces above. */
void plan_hook(struct scene *s, struct detail_layer *l)
{
	const double end = section_hook_base(s, l) + l->up / 2, butt = fmin(end, s->lap.butt);

	scene_box(s, FILL_LIGHT, -l->side, -l->down, l->side, butt);
	plan_edge(s, DASH_DASHED, -l->side, butt, -l->side, end);
	plan_edge(s, DASH_DASHED, l->side, butt, l->side, end);
	plan_edge(s, DASH_DASHED, -l->side, end, l->side, end);
	scene_point(l, 0.8 * l->side, -0.5 * l->down);
}
