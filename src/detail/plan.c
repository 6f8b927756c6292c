/* SPDX-License-Identifier: MIT */
/* The same layers seen square from above: what is covered is dashed. Up the slope is up. */
#include <math.h>
#include <string.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

void plan_frame(struct scene *s)
{
	double side = IN(5), down = IN(4), up = IN(5);

	lap_set(s);
	for (int i = 0; i < s->layers; i++) {
		const struct scene_layer *l = &s->layer[i];

		if (scene_is(l, "purlin") || scene_is(l, "block"))
			continue;
		side = fmax(side, known(l->side, 0));
		side = fmax(side, known(l->diameter, 0) / 2 + IN(1));
		down = fmax(down, fmax(known(l->down, 0), known(l->diameter, 0) / 2 + IN(1)));
		up = fmax(up, known(l->up, 0));
		if ((scene_is(l, "seam") || scene_is(l, "rib")) && l->spacing > 0)
			side = fmax(side, 1.05 * l->spacing);
	}
	if (s->along)
		down = up = fmax(down, 0.5 * side);
	s->u1 = side + IN(2.5);
	s->u0 = -s->u1;
	s->v0 = -down - IN(2.5);
	s->v1 = up + IN(2.5);
	s->bound = (struct box){s->u0, s->v0, s->u1, s->v1};
}

static void across(struct scene *s, double v, double width, enum drawing_dash dash)
{
	if (v > s->v0 && v < s->v1)
		drawing_line_as(s->d, LAYER_MATERIAL, width, dash, (struct point){s->u0, v},
				(struct point){s->u1, v});
}

static void along(struct scene *s, double u, double width, enum drawing_dash dash)
{
	if (u > s->u0 && u < s->u1)
		drawing_line_as(s->d, LAYER_MATERIAL, width, dash, (struct point){u, s->v0},
				(struct point){u, s->v1});
}

static void edge(struct scene *s, enum drawing_dash dash, double u0, double v0, double u1,
		 double v1)
{
	v0 = fmax(v0, s->v0);
	v1 = fmin(v1, s->v1);
	drawing_line_as(s->d, LAYER_MATERIAL, 0.35 * MM, dash, (struct point){u0, v0},
			(struct point){u1, v1});
}

/* A sheet from -down to up: dashed where pieces of covering lie on it. */
static void sheet(struct scene *s, struct scene_layer *l, bool hidden)
{
	const double side = l->side, down = known(l->down, 0), up = l->up;
	const double cover = hidden ? -down : l->woven && s->lap.E > 0 ? fmin(up, s->lap.butt) : up;

	if (isnan(side) || isnan(up))
		return;
	if (!hidden)
		scene_shape(s, 0, FILL_LIGHT,
			    (const struct point[]){
				    {-side, -down}, {side, -down}, {side, cover}, {-side, cover}},
			    4);
	edge(s, hidden ? DASH_DASHED : DASH_SOLID, -side, -down, side, -down);
	edge(s, DASH_SOLID, -side, -down, -side, cover);
	edge(s, DASH_SOLID, side, -down, side, cover);
	edge(s, DASH_DASHED, -side, cover, -side, up);
	edge(s, DASH_DASHED, side, cover, side, up);
	edge(s, cover < up ? DASH_DASHED : DASH_SOLID, -side, up, side, up);
	scene_point(l, -0.9 * side, cover < up ? (cover + up) / 2 : -0.8 * down);
}

static void courses(struct scene *s, struct scene_layer *l)
{
	const struct lap *p = &s->lap;

	for (double butt = p->butt - 8 * p->E; butt < s->v1; butt += p->E)
		across(s, butt, 0.5 * MM, DASH_SOLID);
	scene_point(l, 0.8 * s->u1, p->butt + fmin(0.5 * p->E, (s->v1 - p->butt) / 2));
}

/* A round thing; a plumb one cuts the roof in an ellipse that is longer up the slope. */
static void ring(struct scene *s, struct scene_layer *l, enum fill fill)
{
	struct point at[48];
	const double r = l->diameter / 2, stretch = l->plumb ? 1 / cos(s->theta) : 1;
	const double turn = (double)(l - s->layer) - 0.5 * s->layers;

	for (int i = 0; i < 48; i++)
		at[i] = (struct point){r * cos(2 * PI * i / 48),
				       stretch * r * sin(2 * PI * i / 48)};
	drawing_shape(s->d, LAYER_MATERIAL, 0.3 * MM, fill, at, 48);
	/* each ring is pointed at from a side of its own */
	scene_point(l, r * cos(0.5 * turn), r * sin(0.5 * turn) * stretch);
}

static void rows(struct scene *s, struct scene_layer *l)
{
	for (int k = -3; k <= 3; k++) {
		const double u = k * l->spacing;

		if (scene_is(l, "clamp")) {
			if (u - l->side > s->u0 && u + l->side < s->u1)
				scene_box(s, FILL_LIGHT, u - l->side, -known(l->down, IN(1)),
					  u + l->side, known(l->up, IN(1)));
			continue;
		}
		along(s, u - l->side, 0.35 * MM, DASH_SOLID);
		along(s, u + l->side, 0.35 * MM, DASH_SOLID);
		if (scene_is(l, "rib")) {
			along(s, u - 2 * l->side, 0.18 * MM, DASH_SOLID);
			along(s, u + 2 * l->side, 0.18 * MM, DASH_SOLID);
		}
	}
	scene_point(l, scene_is(l, "clamp") ? 0.8 * l->side : l->spacing,
		    scene_is(l, "clamp") ? 0 : 0.7 * s->v1);
}

static void screws(struct scene *s, struct scene_layer *l)
{
	const struct scene_layer *post = scene_find(s, "post"), *hook = scene_find(s, "hook");
	const double off = post ? fmax(IN(1), 1.35 * post->diameter / 2) : 0,
		     up = hook ? 0.6 * hook->up : 0;

	if (scene_find(s, "clamp"))
		return;
	drawing_circle(s->d, LAYER_MATERIAL, FILL_BLACK, (struct point){0, up + off},
		       fmax(l->diameter, 0.8 * s->paper));
	if (off > 0)
		drawing_circle(s->d, LAYER_MATERIAL, FILL_BLACK, (struct point){0, up - off},
			       fmax(l->diameter, 0.8 * s->paper));
	scene_point(l, 0, up + off);
}

static void block_below(struct scene *s, double half, double down, double up, struct scene_layer *l)
{
	edge(s, DASH_SHORT_DASH, -half, -down, half, -down);
	edge(s, DASH_SHORT_DASH, -half, up, half, up);
	edge(s, DASH_SHORT_DASH, -half, -down, -half, up);
	edge(s, DASH_SHORT_DASH, half, -down, half, up);
	scene_point(l, half, -0.5 * down);
}

static void covered(struct scene *s, struct scene_layer *l)
{
	if ((scene_is(l, "rafter") && !s->along) || (scene_is(l, "rafter") && isnan(l->spacing))) {
		along(s, -l->side, 0.25 * MM, DASH_DASHED);
		along(s, l->side, 0.25 * MM, DASH_DASHED);
		scene_point(l, l->side, s->v0 + 0.06 * (s->v1 - s->v0));
	} else if (scene_is(l, "batten") && s->lap.E > 0) {
		for (double head = s->lap.butt + s->lap.L - 6 * s->lap.E; head < s->v1 + l->breadth;
		     head += s->lap.E) {
			across(s, head, 0.18 * MM, DASH_SHORT_DASH);
			across(s, head - l->breadth, 0.18 * MM, DASH_SHORT_DASH);
			if (head < s->v1)
				l->at = (struct point){0.7 * s->u1, head};
		}
		l->shown = true;
	} else if (scene_is(l, "deck-flashing")) {
		sheet(s, l, true);
	} else if (scene_is(l, "felt-strip") && isfinite(l->up)) {
		sheet(s, l, true);
	} else if (scene_is(l, "block") && l->side < s->u1 && isfinite(l->up)) {
		block_below(s, l->side, l->down, l->up, l);
	}
}

static void visible(struct scene *s, struct scene_layer *l)
{
	if ((scene_is(l, "plate") || scene_is(l, "patch")) && isfinite(l->side))
		sheet(s, l, false);
	else if (scene_is(l, "boot") && isfinite(l->side))
		sheet(s, l, false);
	else if (scene_is(l, "boot") || scene_is(l, "boss") || scene_is(l, "sleeve") ||
		 scene_is(l, "pipe-insulation") || scene_is(l, "post") ||
		 (scene_is(l, "patch") && isfinite(l->diameter)))
		ring(s, l, FILL_WHITE);
	else if (scene_is(l, "pipe"))
		ring(s, l, FILL_GREY);
	else if (scene_is(l, "seam") || scene_is(l, "rib") ||
		 (scene_is(l, "clamp") && l->spacing > 0))
		rows(s, l);
	else if (scene_is(l, "clamp") || scene_is(l, "foot") || scene_is(l, "hook")) {
		scene_box(s, FILL_LIGHT, -l->side, -known(l->down, l->side), l->side,
			  known(l->up, l->side));
		scene_point(l, 0.8 * l->side, -0.5 * known(l->down, l->side));
	} else if (scene_is(l, "screw") || scene_is(l, "bolt"))
		screws(s, l);
}

static bool is_flat(const struct scene_layer *l)
{
	return scene_is(l, "plate") || scene_is(l, "boot");
}

static bool is_driven(const struct scene_layer *l)
{
	return scene_is(l, "screw") || scene_is(l, "bolt");
}

void plan_paint(struct scene *s)
{
	scene_box(s, FILL_WHITE, s->u0, s->v0, s->u1, s->v1);
	for (int i = 0; i < s->layers; i++)
		if (s->lap.E > 0 && s->layer[i].exposure > 0 && s->layer[i].length > 0 &&
		    !scene_is(&s->layer[i], "felt-strip"))
			courses(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		covered(s, &s->layer[i]);
	/* what is widest first, so that nothing disappears below it */
	for (int i = s->layers - 1; i >= 0; i--)
		if (scene_is(&s->layer[i], "patch"))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (is_flat(&s->layer[i]))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (!is_flat(&s->layer[i]) && !is_driven(&s->layer[i]) &&
		    !scene_is(&s->layer[i], "patch"))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (is_driven(&s->layer[i]))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (scene_is(&s->layer[i], "cap"))
			ring(s, &s->layer[i], FILL_NONE);
}
