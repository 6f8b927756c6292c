/* SPDX-License-Identifier: MIT */
/* The arrow down the slope, with the pitch: where there is room for it on the plane. The legend
   says the pitch in any case. */
#include <math.h>
#include <string.h>

#include "sheet/plan.h"

#define TRIES 9
#define BAY (2.6 * MM) /* a narrower one between two rafters has no room for an arrow */

static void arrow(const struct plan *p, struct point from, struct point to)
{
	const struct view open = drawing_view_open(p->d);
	const struct point a = drawing_on_paper(p->d, from), b = drawing_on_paper(p->d, to);
	const struct point head[] = {
		b, {b.x - 0.9 * MM, b.y + 3 * MM}, {b.x + 0.9 * MM, b.y + 3 * MM}};

	drawing_view(p->d, VIEW_PAPER);
	drawing_line_as(p->d, LAYER_TEXT, 0.35 * MM, DASH_SOLID, a,
			(struct point){b.x, b.y + 2.5 * MM});
	drawing_shape(p->d, LAYER_TEXT, 0, FILL_BLACK, head, 3);
	drawing_view(p->d, open);
}

/* "5:12" as pitch_print writes it, without the degrees; degrees in SI. */
static const char *rise(const struct sheet *s)
{
	char buf[64];

	if (s->f.units == SYSTEM_SI)
		return sheet_text(s, "%s",
				  quantity_print(buf, sizeof buf, s->job->roof.pitch, UNIT_DEG, 1));
	pitch_print(buf, sizeof buf, s->job->roof.pitch);
	buf[strcspn(buf, " ")] = '\0';
	return sheet_text(s, "%s", buf);
}

const char *plan_pitch(const struct sheet *s)
{
	char buf[64];

	if (s->f.units == SYSTEM_SI)
		return rise(s);
	return sheet_text(s, "%s", pitch_print(buf, sizeof buf, s->job->roof.pitch));
}

/* The middle of the bay that x lies in: an arrow on a rafter is not seen. */
static double between_rafters(const struct plan *p, double x)
{
	const struct result *r = p->s->r;
	const double *rafter = plan_rafter_x(r);

	for (int i = 0; i + 1 < plan_rafters_drawn(r); i++)
		if (rafter[i] <= x && x < rafter[i + 1] &&
		    (rafter[i + 1] - rafter[i]) * p->view.scale > BAY)
			return (rafter[i] + rafter[i + 1]) / 2;
	return x;
}

/* Where the pitch begins, right of the arrow at x: beside it, but where a rafter would go through
 * it in the middle of the next bay, if that has room. */
static double beside(const struct plan *p, double x, double width)
{
	const struct result *r = p->s->r;
	const double *rafter = plan_rafter_x(r), k = p->view.scale, near = x + 2 * MM / k,
		     end = near + (width + 0.5 * MM) / k;

	for (int i = 1; i + 1 < plan_rafters_drawn(r); i++)
		if (rafter[i - 1] < x && x < rafter[i] && end > rafter[i] &&
		    (rafter[i + 1] - rafter[i]) * k > width + 1 * MM)
			return (rafter[i] + rafter[i + 1] - width / k) / 2;
	return near;
}

/* True if the rectangle lies on the plane and, if so asked, within one zone. */
static bool on_plane(const struct plan *p, struct rectangle w, bool one_zone)
{
	const struct result *r = p->s->r;
	const struct point corner[] = {{w.x0, w.y0}, {w.x1, w.y0}, {w.x1, w.y1}, {w.x0, w.y1}};

	for (int i = 0; i < 4; i++) {
		if (!plan_inside(p, corner[i]) ||
		    (r->outline.n > 2 && !plan_holds_point(&r->outline, corner[i])))
			return false;
		if (one_zone && r->shapes > 0 &&
		    plan_zone_at(r, corner[i]) != plan_zone_at(r, corner[0]))
			return false;
	}
	return true;
}

/* In line with an edge of a collector the arrow would look like more of it. */
static bool in_line(const struct plan *p, double x)
{
	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *c = &p->s->r->collector[i];

		if (fmin(fabs(x - c->x0), fabs(x - c->x1)) * p->view.scale < 2 * MM)
			return true;
	}
	return false;
}

static bool put(const struct plan *p, double height, bool one_zone, bool off_edges)
{
	/* From the right end inwards, at half the height first. */
	static const int order[TRIES] = {4, 3, 5, 2, 6, 1, 7, 0, 8};
	const char *text = rise(p->s);
	const struct lettering_spec spec = {p->size, true, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, true};
	const struct box letters = drawing_text_box(p->d, (struct point){0, 0}, spec, text);
	const double k = p->view.scale, width = letters.x1, w = p->window.x1 - p->window.x0,
		     h = p->window.y1 - p->window.y0;

	for (int i = 0; i < TRIES * TRIES; i++) {
		const double x = between_rafters(p, p->window.x1 - w * (i / TRIES + 0.75) / TRIES);
		const double y = p->window.y0 + h * (order[i % TRIES] + 0.5) / TRIES;
		const double words = beside(p, x, width);
		const struct rectangle room = {x - 1.4 * MM / k, y - height / 2 / k,
					       words + (width + 1.5 * MM) / k, y + height / 2 / k};
		const struct box box = plan_box(p, room.x0, room.y0, room.x1, room.y1);

		if (!drawing_is_free(p->d, box) || !on_plane(p, room, one_zone) ||
		    (off_edges && in_line(p, x)))
			continue;
		arrow(p, (struct point){x, room.y1}, (struct point){x, room.y0});
		drawing_text(p->d, LAYER_TEXT, (struct point){words, y}, spec, text);
		drawing_reserve(p->d, box);
		return true;
	}
	return false;
}

void plan_slope_arrow(const struct plan *p)
{
	static const double height[] = {13 * MM, 8 * MM};

	for (int i = 0; i < 8; i++)
		if (put(p, height[i % 2], i % 4 < 2, i < 4))
			return;
}
