/* SPDX-License-Identifier: MIT */
/* The same layers seen square from above: what is covered is dashed. Up the slope is up. */
#include <math.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

void plan_frame(struct scene *s)
{
	double side = IN(5), down = IN(4), up = IN(5);

	lap_set(s);
	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];

		if (layer_is(l, "purlin") || layer_is(l, "block"))
			continue;
		const double corner = l->turned ? sqrt(2) : 1;

		side = fmax(side, corner * known(l->side, 0));
		side = fmax(side, known(l->diameter, 0) / 2 + IN(1));
		down = fmax(down,
			    fmax(corner * known(l->down, 0), known(l->diameter, 0) / 2 + IN(1)));
		up = fmax(up, corner * known(l->up, 0));
		if (layer_is(l, "hook"))
			up = fmax(up, section_hook_base(s, l) + l->up / 2);
		if ((layer_is(l, "seam") || layer_is(l, "rib")) && l->spacing > 0)
			side = fmax(side,
				    (s->pipe && layer_is(l, "seam") ? 0.55 : 1.05) * l->spacing);
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

void plan_along(struct scene *s, double u, double width, enum drawing_dash dash)
{
	if (u > s->u0 && u < s->u1)
		drawing_line_as(s->d, LAYER_MATERIAL, width, dash, (struct point){u, s->v0},
				(struct point){u, s->v1});
}

void plan_edge(struct scene *s, enum drawing_dash dash, double u0, double v0, double u1, double v1)
{
	v0 = fmax(v0, s->v0);
	v1 = fmin(v1, s->v1);
	drawing_line_as(s->d, LAYER_MATERIAL, 0.35 * MM, dash, (struct point){u0, v0},
			(struct point){u1, v1});
}

/* A sheet from -down to up: dashed where pieces of covering lie on it. */
static void sheet(struct scene *s, struct detail_layer *l, bool hidden)
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
	plan_edge(s, hidden ? DASH_DASHED : DASH_SOLID, -side, -down, side, -down);
	if (!hidden) {
		plan_edge(s, DASH_SOLID, -side, -down, -side, cover);
		plan_edge(s, DASH_SOLID, side, -down, side, cover);
	}
	plan_edge(s, DASH_DASHED, -side, cover, -side, up);
	plan_edge(s, DASH_DASHED, side, cover, side, up);
	plan_edge(s, cover < up ? DASH_DASHED : DASH_SOLID, -side, up, side, up);
	/* off the middle, where a batten may lie */
	scene_point(l, -0.9 * side, cover < up ? cover + 0.8 * (up - cover) : -0.8 * down);
}

static void courses(struct scene *s, struct detail_layer *l)
{
	const struct lap *p = &s->lap;

	for (double butt = p->butt - 8 * p->E; butt < s->v1; butt += p->E)
		across(s, butt, 0.5 * MM, DASH_SOLID);
	/* between the edge of the widest sheet and that of the picture */
	scene_point(l, s->u1 - IN(0.6), p->butt + fmin(0.5 * p->E, (s->v1 - p->butt) / 2));
}

static void block_below(struct scene *s, double half, double down, double up,
			struct detail_layer *l)
{
	plan_edge(s, DASH_SHORT_DASH, -half, -down, half, -down);
	plan_edge(s, DASH_SHORT_DASH, -half, up, half, up);
	plan_edge(s, DASH_SHORT_DASH, -half, -down, -half, up);
	plan_edge(s, DASH_SHORT_DASH, half, -down, half, up);
	scene_point(l, half, -0.5 * down);
}

/* Below the foot; where a block between two of them carries it, at both ends of the block. */
static void rafters(struct scene *s, struct detail_layer *l)
{
	const struct detail_layer *block = NULL;
	const double half = known(l->side, IN(0.75)); /* of lumber 2 in thick by name */

	for (int i = 0; i < s->layers; i++)
		if (layer_carries(&s->layer[i]) && !block)
			block = &s->layer[i];
	for (int side = -1; side <= 1; side += 2) {
		plan_along(s, side * (block ? block->side : half), 0.25 * MM, DASH_DASHED);
		if (block)
			plan_along(s, side * (block->side + 2 * half), 0.25 * MM, DASH_DASHED);
	}
	const double u = block ? block->side : half;

	if (u < s->u1)
		scene_point(l, u, s->v0 + 0.06 * (s->v1 - s->v0));
}

static void covered(struct scene *s, struct detail_layer *l)
{
	if ((layer_is(l, "rafter") && !s->along) || (layer_is(l, "rafter") && isnan(l->spacing))) {
		rafters(s, l);
	} else if (layer_is(l, "batten") && s->lap.E > 0) {
		for (double head = s->lap.butt + s->lap.L - 6 * s->lap.E; head < s->v1 + l->breadth;
		     head += s->lap.E) {
			across(s, head, 0.18 * MM, DASH_SHORT_DASH);
			across(s, head - l->breadth, 0.18 * MM, DASH_SHORT_DASH);
			if (head < s->v1)
				l->at = (struct point){0.7 * s->u1, head};
		}
		l->shown = true;
	} else if (layer_is(l, "deck-flashing")) {
		sheet(s, l, true);
	} else if (layer_is(l, "felt-strip") && isfinite(l->up)) {
		sheet(s, l, true);
	} else if (layer_is(l, "block") && l->side < s->u1 && isfinite(l->up)) {
		block_below(s, l->side, l->down, l->up, l);
	}
}

/* Under a wider patch that lies on it. */
static bool is_under_patch(const struct scene *s, const struct detail_layer *l)
{
	for (const struct detail_layer *over = l + 1; over < s->layer + s->layers; over++)
		if (layer_is(over, "patch") && over->side > l->side)
			return true;
	return false;
}

/* A collar hides what ends below it: the sleeve, not the post or pipe that it is clamped on. */
static bool is_under_cap(const struct scene *s, const struct detail_layer *l)
{
	const struct detail_layer *cap = scene_find(s, "cap");

	return cap && cap->diameter > l->diameter && (layer_is(l, "sleeve") || layer_is(l, "boss") ||
						      layer_is(l, "boot") || layer_is(l, "patch"));
}

static void visible(struct scene *s, struct detail_layer *l)
{
	if ((layer_is(l, "plate") || layer_is(l, "patch")) && isfinite(l->side))
		sheet(s, l, false);
	else if (layer_is(l, "boot") && l->turned)
		plan_diamond(s, l);
	else if (layer_is(l, "boot") && isfinite(l->side))
		sheet(s, l, false);
	else if (layer_is(l, "boot") || layer_is(l, "boss") || layer_is(l, "sleeve") ||
		 layer_is(l, "pipe-insulation") || layer_is(l, "post") ||
		 (layer_is(l, "patch") && isfinite(l->diameter)))
		plan_ring(s, l, FILL_WHITE, is_under_cap(s, l));
	else if (layer_is(l, "pipe"))
		plan_ring(s, l, FILL_GREY, false);
	else if (layer_is(l, "seam") || layer_is(l, "rib") ||
		 (layer_is(l, "clamp") && l->spacing > 0))
		plan_rows(s, l);
	else if (layer_is(l, "hook"))
		plan_hook(s, l);
	else if (layer_is(l, "clamp") || layer_is(l, "foot")) {
		scene_box(s, FILL_LIGHT, -l->side, -known(l->down, l->side), l->side,
			  known(l->up, l->side));
		scene_point(l, 0.8 * l->side, -0.5 * known(l->down, l->side));
	} else if (layer_is(l, "screw") || layer_is(l, "bolt"))
		plan_screws(s, l);
}

static bool is_flat(const struct detail_layer *l)
{
	return layer_is(l, "plate") || layer_is(l, "boot");
}

static bool is_driven(const struct detail_layer *l)
{
	return layer_is(l, "screw") || layer_is(l, "bolt");
}

void plan_paint(struct scene *s)
{
	scene_box(s, FILL_WHITE, s->u0, s->v0, s->u1, s->v1);
	for (int i = 0; i < s->layers; i++)
		if (s->lap.E > 0 && s->layer[i].exposure > 0 && s->layer[i].length > 0 &&
		    !layer_is(&s->layer[i], "felt-strip"))
			courses(s, &s->layer[i]);
	/* what is cut or dressed over disappears below it */
	for (int i = 0; i < s->layers; i++)
		if (layer_is(&s->layer[i], "rib"))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (is_flat(&s->layer[i]))
			visible(s, &s->layer[i]);
	/* a patch lies on the flange; what is widest first, so that nothing disappears below it */
	for (int i = s->layers - 1; i >= 0; i--)
		if (layer_is(&s->layer[i], "patch") && is_under_patch(s, &s->layer[i]))
			sheet(s, &s->layer[i], true);
		else if (layer_is(&s->layer[i], "patch"))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (scene_find(s, "patch") && layer_is(&s->layer[i], "plate"))
			sheet(s, &s->layer[i], true);
	for (int i = 0; i < s->layers; i++)
		covered(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (layer_is(&s->layer[i], "cap"))
			plan_ring(s, &s->layer[i], FILL_LIGHT, false);
	for (int i = 0; i < s->layers; i++)
		if (!is_flat(&s->layer[i]) && !is_driven(&s->layer[i]) &&
		    !layer_is(&s->layer[i], "patch") && !layer_is(&s->layer[i], "rib"))
			visible(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		if (is_driven(&s->layer[i]))
			visible(s, &s->layer[i]);
}
