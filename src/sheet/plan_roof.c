/* SPDX-License-Identifier: MIT */
/* The roof itself: obstacles, edges, ridge, rafters. */
#include <math.h>

#include "sheet/plan.h"

#define NUDGE 1e-4 /* m: far enough to be in the next zone, near enough to be in no other */

bool plan_inside(const struct plan *p, struct point at)
{
	return at.x >= p->window.x0 - 1e-9 && at.x <= p->window.x1 + 1e-9 &&
	       at.y >= p->window.y0 - 1e-9 && at.y <= p->window.y1 + 1e-9;
}

/* Liang and Barsky's way: one bound after the other narrows the parameter's range. */
static bool narrow(double *t0, double *t1, double from, double by, double low, double high)
{
	if (fabs(by) < 1e-12)
		return from >= low - 1e-9 && from <= high + 1e-9;
	const double a = (low - from) / by, b = (high - from) / by;

	*t0 = fmax(*t0, fmin(a, b));
	*t1 = fmin(*t1, fmax(a, b));
	return *t0 < *t1;
}

bool plan_clip(const struct plan *p, struct point *a, struct point *b)
{
	const double dx = b->x - a->x, dy = b->y - a->y;
	double t0 = 0, t1 = 1;

	if (!narrow(&t0, &t1, a->x, dx, p->window.x0, p->window.x1) ||
	    !narrow(&t0, &t1, a->y, dy, p->window.y0, p->window.y1))
		return false;
	*b = (struct point){a->x + t1 * dx, a->y + t1 * dy};
	*a = (struct point){a->x + t0 * dx, a->y + t0 * dy};
	return true;
}

struct box plan_box(const struct plan *p, double x0, double y0, double x1, double y1)
{
	const struct point a = drawing_on_paper(p->d, (struct point){x0, y0});
	const struct point b = drawing_on_paper(p->d, (struct point){x1, y1});

	return (struct box){a.x, a.y, b.x, b.y};
}

void plan_line(const struct plan *p, enum drawing_layer layer, struct point a, struct point b)
{
	if (plan_clip(p, &a, &b))
		drawing_line(p->d, layer, a, b);
}

struct polygon plan_in_window(const struct plan *p, const struct polygon *shape)
{
	const struct polygon window =
		polygon_rectangle(p->window.x0, p->window.y0, p->window.x1, p->window.y1);

	return polygon_clip(shape, &window);
}

/* Part of a rectangle of the plane's frame that lies on the plane and in the window. */
static struct polygon on_plane(const struct plan *p, double x0, double y0, double x1, double y1)
{
	const struct polygon whole = polygon_rectangle(x0, y0, x1, y1);
	const struct polygon here =
		p->s->r->outline.n > 2 ? polygon_clip(&whole, &p->s->r->outline) : whole;

	return plan_in_window(p, &here);
}

/* A crossed box, and round it the room that no foot may enter; of what straddles a hip the part on
 * this plane. */
void plan_obstacles(const struct plan *p)
{
	for (int i = 0; i < p->s->job->obstacles; i++) {
		const struct job_obstacle *o = &p->s->job->obstacle[i];
		const double c = isnan(o->clearance) ? 0 : o->clearance;
		const struct polygon seen = on_plane(p, o->x, o->y, o->x + o->width,
						     o->y + o->height),
				     round = on_plane(p, o->x - c, o->y - c, o->x + o->width + c,
						      o->y + o->height + c);

		if (seen.n < 3)
			continue;
		drawing_shape(p->d, LAYER_OBSTACLE, -1, FILL_WHITE, seen.at, seen.n);
		for (int k = 0; k < 2 && seen.n > 3; k++)
			drawing_line(p->d, LAYER_OBSTACLE, seen.at[k], seen.at[k + seen.n / 2]);
		for (int k = 0; k < round.n && c > 0; k++)
			drawing_line_as(p->d, LAYER_OBSTACLE, 0.13 * MM, DASH_SHORT_DASH,
					round.at[k], round.at[(k + 1) % round.n]);
		drawing_reserve(p->d, plan_box(p, o->x, o->y, o->x + o->width, o->y + o->height));
	}
}

/* A gable's upper edge is its ridge, a hip roof's slanting edges are hips; all others are edges of
 * the roof. */
static enum drawing_layer edge_layer(const struct plan *p, struct point a, struct point b)
{
	const enum roof_form form = p->s->job->building.form;
	const bool level = fabs(a.y - b.y) < NUDGE, plumb = fabs(a.x - b.x) < NUDGE,
		   low = level && fabs(a.y) < NUDGE;

	if ((form == FORM_GABLE || form == FORM_HIP) && level && !low)
		return LAYER_RIDGE;
	return form == FORM_HIP && !level && !plumb ? LAYER_RIDGE : LAYER_EDGE;
}

void plan_edges(const struct plan *p)
{
	const struct result *r = p->s->r;

	/* Where the plane is not known its eave still is. */
	if (r->outline.n < 3)
		plan_line(p, LAYER_EDGE, (struct point){0, 0}, (struct point){r->plane_length, 0});
	for (int i = 0; i < r->outline.n; i++) {
		const struct point a = r->outline.at[i], b = r->outline.at[(i + 1) % r->outline.n];

		plan_line(p, edge_layer(p, a, b), a, b);
	}
}

bool plan_edge_shown(const struct plan *p, enum drawing_layer layer)
{
	const struct result *r = p->s->r;

	if (r->outline.n < 3)
		return layer == LAYER_EDGE && p->window.y0 <= 0;
	for (int i = 0; i < r->outline.n; i++) {
		struct point a = r->outline.at[i], b = r->outline.at[(i + 1) % r->outline.n];

		if (edge_layer(p, a, b) == layer && plan_clip(p, &a, &b))
			return true;
	}
	return false;
}

/* Rafters, or seams where feet stand on those; places on blocks and on the deck are none. */
int plan_rafters_drawn(const struct result *r)
{
	return r->blocks || r->on_deck ? r->frames : r->rafters;
}

const double *plan_rafter_x(const struct result *r)
{
	return r->blocks || r->on_deck ? r->frame_x : r->rafter_x;
}

/* Every rafter has its number where there is room for all, else every fifth. */
static bool numbered(const struct plan *p, int rafter)
{
	const struct result *r = p->s->r;
	double least = HUGE_VAL;

	for (int i = 1; i < plan_rafters_drawn(r); i++)
		least = fmin(least, plan_rafter_x(r)[i] - plan_rafter_x(r)[i - 1]);
	if (least * p->view.scale >=
	    sheet_width(p->s, plan_rafters_drawn(r) < 100 ? "00" : "000", p->size) + 0.6 * MM)
		return true;
	return rafter == 0 || (rafter + 1) % 5 == 0;
}

/* Where a line up the slope leaves the plane: at the ridge, or at a hip. */
static double roof_top(const struct result *r, double x)
{
	double top = r->outline.n > 0 ? 0 : r->plane_slope;

	for (int i = 0; i < r->outline.n; i++) {
		const struct point a = r->outline.at[i], b = r->outline.at[(i + 1) % r->outline.n];

		if (fmin(a.x, b.x) <= x && x <= fmax(a.x, b.x))
			top = fmax(top, fabs(b.x - a.x) > 0
						? a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x)
						: fmax(a.y, b.y));
	}
	return top;
}

/* Of a rafter's number: above its upper end, beyond the hip that the letters reach over. */
static double number_level(const struct plan *p, double x, double end, const char *text)
{
	const double half = sheet_width(p->s, text, p->size) / 2 / p->view.scale;
	const double near = fmax(roof_top(p->s->r, x - half), roof_top(p->s->r, x + half));

	return fmin(fmax(end, near), p->window.y1) + 1.0 * MM / p->view.scale;
}

void plan_rafters(const struct plan *p)
{
	const struct result *r = p->s->r;
	const struct lettering_spec spec = {p->size, false, ANCHOR_CENTRE, ANCHOR_BASE, 0, true};

	for (int i = 0; i < plan_rafters_drawn(r); i++) {
		const double x = plan_rafter_x(r)[i], end = roof_top(r, x);
		const char *text = sheet_text(p->s, "%d", i + 1);

		plan_line(p, LAYER_RAFTER, (struct point){x, 0}, (struct point){x, end});
		if (plan_inside(p, (struct point){x, p->window.y1}) && numbered(p, i) &&
		    end > p->window.y0)
			drawing_text(p->d, LAYER_RAFTER,
				     (struct point){x, number_level(p, x, end, text)}, spec, text);
	}
}
