/* SPDX-License-Identifier: MIT */
/* A section: what lies on what, how far the drawing reaches, and the painting in the order of the
 * layers. */
#include <math.h>
#include <string.h>

#include "detail/scene.h"

#define IN(x) ((x)*M_PER_IN)

static bool spans_roof(const struct detail_layer *l)
{
	return layer_is(l, "underlayment") || layer_is(l, "insulation-board") ||
	       layer_is(l, "membrane") || layer_is(l, "gravel") || layer_is(l, "foam");
}

static bool carries(const struct detail_layer *l)
{
	return layer_is(l, "rafter") || layer_is(l, "purlin") || layer_is(l, "deck") ||
	       layer_is(l, "spaced-board");
}

/* Deck and what is below it hang from the origin. */
static void stack_below(struct scene *s)
{
	double top = 0;

	for (int i = s->layers - 1; i >= 0; i--) {
		struct detail_layer *l = &s->layer[i];

		if (!carries(l))
			continue;
		top -= known(l->thickness, 0);
		l->foot = top;
	}
}

static void stack_above(struct scene *s)
{
	double whole = 0,
	       here = 0; /* tops of what spans the roof, and of what lies round the hole */

	for (int i = 0; i < s->layers; i++) {
		struct detail_layer *l = &s->layer[i];
		const double t = known(l->thickness, 0);

		if (carries(l))
			continue;
		l->foot = known(l->base, here);
		if (spans_roof(l)) {
			l->foot = known(l->base, whole);
			whole = l->foot + t;
			here = fmax(here, whole);
		} else if (layer_is(l, "batten")) {
			here += t;
		} else if (layer_is(l, "patch") && isnan(l->diameter)) {
			here += t;
		} else if (s->lap.E > 0 && isnan(s->lap.base) &&
			   fabs(l->exposure - s->lap.E) < 1e-9) {
			s->lap.base = here;
		} else if (layer_is(l, "panel")) {
			here = whole = l->foot + t;
		}
	}
	s->cursor = here;
}

double section_height(const struct scene *s)
{
	double most = 0;

	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];
		double h = known(l->height, 0);

		if (layer_is(l, "foot") || layer_is(l, "clamp") || layer_is(l, "boss") ||
		    layer_is(l, "cap"))
			h += known(l->base, scene_surface(s)) + IN(1);
		if (layer_is(l, "foot") && scene_find(s, "clamp"))
			h += known(scene_find(s, "clamp")->height, 0) +
			     known(scene_find(s, "clamp")->base, 0);
		if (layer_is(l, "hook"))
			h = scene_surface(s) + IN(4);
		most = fmax(most, h);
	}
	return most;
}

/* Deepest end of a fastener: where its head bears less its length. */
static double fastener_end(const struct scene *s, const struct detail_layer *l)
{
	const struct detail_layer *foot = scene_find(s, "foot"), *post = scene_find(s, "post");
	const double head = (foot   ? section_foot_base(s, foot)
			     : post ? known(post->base, 0)
				    : 0) +
			    SECTION_BASE;
	const double end = head - l->length;

	return section_is_bolt(l) ? fmin(end, section_bolt_exit(s) - 1.4 * l->diameter) : end;
}

/* Deepest end of a fastener, a block, or of the pipe's part below the deck. */
static double lowest(const struct scene *s)
{
	double low = -IN(2);

	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];

		if ((layer_is(l, "screw") || layer_is(l, "bolt")) && !scene_find(s, "clamp"))
			low = fmin(low, fastener_end(s, l) - IN(0.5));
		if (layer_is(l, "block"))
			low = fmin(low, l->base - IN(0.5));
		if (layer_is(l, "pipe"))
			low = fmin(low, -IN(4));
	}
	return low;
}

/* No piece is cut off just above its butt, where it would seem to float. */
static double end_of_window(const struct lap *p, double u, double least)
{
	const double butt = p->butt + floor((u - p->butt) / p->E) * p->E;

	if (u - butt > IN(2.5))
		return u;
	return butt - IN(0.05) > least ? butt - IN(0.05) : butt + IN(3);
}

static void reach(struct scene *s)
{
	double down = IN(5), up = IN(5);

	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];

		const double corner = l->turned ? sqrt(2) : 1;

		down = fmax(down, corner * known(l->down, 0));
		up = fmax(up, corner * known(l->up, 0));
		if (layer_is(l, "hook"))
			up = fmax(up, section_hook_base(s, l) + l->up / 2);
		if (s->along && l->spacing > 0 && !carries(l))
			down = up = fmax(down, fmin(0.8 * l->spacing, IN(7)));
		if (l->diameter > 0)
			down = fmax(down, l->diameter / 2 + IN(2));
	}
	s->u0 = -down - IN(2.5);
	s->u1 = up + IN(2.5);
	if (s->lap.E > 0)
		s->u1 = end_of_window(&s->lap, fmax(s->u1, s->lap.butt + IN(3)), up + IN(0.5));
}

static void add_to_bound(struct scene *s, double u, double v)
{
	const double x = u * cos(s->theta) - v * sin(s->theta),
		     y = u * sin(s->theta) + v * cos(s->theta);

	s->bound.x0 = fmin(s->bound.x0, x);
	s->bound.x1 = fmax(s->bound.x1, x);
	s->bound.y0 = fmin(s->bound.y0, y);
	s->bound.y1 = fmax(s->bound.y1, y);
}

/* v of the lowest thing that spans the drawing. */
static double underside(const struct scene *s)
{
	double low = 0;

	if (scene_find(s, "rafter") || scene_find(s, "block") ||
	    (scene_find(s, "purlin") && s->along))
		return s->v0;
	for (int i = 0; i < s->layers; i++)
		if (!layer_is(&s->layer[i], "purlin"))
			low = fmin(low, s->layer[i].foot);
	return low - IN(0.25);
}

static double surface_at(const struct scene *s, double u)
{
	return s->lap.E > 0 ? lap_woven(&s->lap, u) + s->lap.t + IN(0.5) : s->cursor;
}

void section_frame(struct scene *s)
{
	double height;

	if (s->along)
		s->theta = 0;
	lap_set(s);
	stack_below(s);
	stack_above(s);
	if (isnan(s->lap.base))
		s->lap.base = s->cursor;
	reach(s);
	s->v0 = lowest(s);
	height = section_height(s);
	s->bound = (struct box){0, 0, 0, 0};
	add_to_bound(s, s->u0, underside(s));
	add_to_bound(s, s->u1, underside(s));
	add_to_bound(s, 0, s->v0);
	add_to_bound(s, s->u0, surface_at(s, s->u0));
	add_to_bound(s, s->u1, surface_at(s, s->u1) + s->lap.t);
	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];
		const double half = known(l->diameter, known(l->side, IN(1))) / 2 + IN(0.5);
		const double h = layer_is(l, "cap") ? 0 : known(l->height, 0);

		if (layer_is(l, "purlin") && !s->along) {
			add_to_bound(s, known(l->up, 0) + l->side, fmax(l->foot, s->v0));
			add_to_bound(s, -known(l->down, 0) - l->side, fmax(l->foot, s->v0));
		}
		/* plumb things of this height stand upright on paper */
		if (l->plumb && layer_is(l, "patch"))
			add_to_bound(s, 0, h);
		else if (l->plumb) {
			s->bound.y1 = fmax(s->bound.y1, h);
			s->bound.x0 = fmin(s->bound.x0, -half);
			s->bound.x1 = fmax(s->bound.x1, half);
		}
	}
	if (!scene_find(s, "pipe")) {
		add_to_bound(s, -IN(2), height);
		add_to_bound(s, IN(2), height);
	} else if (!scene_find(s, "pipe")->plumb) {
		add_to_bound(s, 0, height);
	}
}

void scene_point(struct detail_layer *l, double u, double v)
{
	if (l->shown)
		return;
	l->at = (struct point){u, v};
	l->shown = true;
}

void scene_shape(struct scene *s, double width, enum fill fill, const struct point *at, int n)
{
	struct polygon p = {.n = n};

	memcpy(p.at, at, (size_t)n * sizeof *at);
	p = polygon_cut(&p, (struct point){s->u0, 1}, (struct point){s->u0, 0});
	if (p.n > 0)
		p = polygon_cut(&p, (struct point){s->u1, 0}, (struct point){s->u1, 1});
	if (p.n > 0 && s->plan) {
		p = polygon_cut(&p, (struct point){0, s->v0}, (struct point){1, s->v0});
		if (p.n > 0)
			p = polygon_cut(&p, (struct point){1, s->v1}, (struct point){0, s->v1});
	}
	if (p.n > 2)
		drawing_shape(s->d, LAYER_MATERIAL, width, fill, p.at, p.n);
}

void scene_box(struct scene *s, enum fill fill, double u0, double v0, double u1, double v1)
{
	scene_shape(s, -1, fill, (const struct point[]){{u0, v0}, {u1, v0}, {u1, v1}, {u0, v1}}, 4);
}

void scene_line(struct scene *s, double width, enum drawing_dash dash, const struct point *at,
		int n)
{
	for (int i = 1; i < n; i++) {
		struct point a = at[i - 1], b = at[i];

		if (fmax(a.x, b.x) < s->u0 || fmin(a.x, b.x) > s->u1)
			continue;
		if (b.x - a.x > 1e-9) {
			const double slope = (b.y - a.y) / (b.x - a.x);

			if (a.x < s->u0)
				a = (struct point){s->u0, a.y + slope * (s->u0 - a.x)};
			if (b.x > s->u1)
				b = (struct point){s->u1, a.y + slope * (s->u1 - a.x)};
		}
		drawing_line_as(s->d, LAYER_MATERIAL, width, dash, a, b);
	}
}

void section_paint(struct scene *s)
{
	for (int i = 0; i < s->layers; i++)
		section_piece(s, &s->layer[i]);
	for (int i = 0; i < s->layers; i++)
		section_fitting(s, &s->layer[i]);
}
