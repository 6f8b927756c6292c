/* SPDX-License-Identifier: MIT */
/* Pressure zones on the plan: hatches, borders, names. */
#include <math.h>

#include "roof/zone.h"
#include "sheet/plan.h"

#define HATCH_SPACING (2.4 * MM)
#define NUDGE 1e-4 /* m: far enough to be in the next zone, near enough to be in no other */
#define TRIES 17   /* each way */

/* Strips one way, corners both ways; eave, rake and ridge each lean in another direction. */
int plan_zone_hatch(enum zone zone, double angle[2])
{
	const double deg = RAD_PER_DEG;

	switch (zone) {
	case ZONE_1P:
	case ZONE_1:
	case ZONE_COUNT:
		return 0;
	case ZONE_2:
	case ZONE_2E:
		angle[0] = 45 * deg;
		return 1;
	case ZONE_2N:
		angle[0] = 135 * deg;
		return 1;
	case ZONE_2R:
	case ZONE_2P:
		angle[0] = 20 * deg;
		return 1;
	case ZONE_3:
	case ZONE_3E:
		angle[0] = 45 * deg;
		angle[1] = 135 * deg;
		return 2;
	case ZONE_3R:
	case ZONE_3P:
		angle[0] = 0;
		angle[1] = 90 * deg;
		return 2;
	}
	return 0;
}

void plan_zones(const struct plan *p)
{
	for (int i = 0; i < p->s->r->shapes; i++) {
		const struct zone_shape *z = &p->s->r->shape[i];
		const struct polygon seen = plan_in_window(p, &z->shape);
		double angle[2];
		const int n = plan_zone_hatch(z->zone, angle);

		for (int k = 0; k < n && seen.n > 2; k++)
			drawing_hatch(p->d, LAYER_HATCH, seen.at, seen.n, angle[k], HATCH_SPACING);
	}
}

bool plan_holds_point(const struct polygon *shape, struct point at)
{
	for (int i = 0; i < shape->n; i++) {
		const struct point a = shape->at[i], b = shape->at[(i + 1) % shape->n];

		if ((b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x) < 0)
			return false;
	}
	return shape->n > 2;
}

enum zone plan_zone_at(const struct result *r, struct point at)
{
	for (int i = 0; i < r->shapes; i++)
		if (plan_holds_point(&r->shape[i].shape, at))
			return r->shape[i].zone;
	return ZONE_COUNT;
}

/* Where corners of other shapes divide an edge, from 0 to 1, rising. */
static int divide(const struct result *r, struct point a, struct point b, double *t, int max)
{
	const double length = hypot(b.x - a.x, b.y - a.y);
	int n = 0;

	t[n++] = 0;
	t[n++] = 1;
	for (int i = 0; i < r->shapes; i++) {
		for (int k = 0; k < r->shape[i].shape.n && n < max; k++) {
			const struct point c = r->shape[i].shape.at[k];
			const double along =
				((c.x - a.x) * (b.x - a.x) + (c.y - a.y) * (b.y - a.y)) /
				(length * length);
			const double off =
				fabs((c.x - a.x) * (b.y - a.y) - (c.y - a.y) * (b.x - a.x)) /
				length;
			int at = n;

			if (off > NUDGE || along <= 1e-9 || along >= 1 - 1e-9)
				continue;
			for (; t[at - 1] > along; at--)
				t[at] = t[at - 1];
			t[at] = along;
			n++;
		}
	}
	return n;
}

#define PIECES 256

static void border(const struct plan *p, enum zone zone, struct point a, struct point b)
{
	const struct result *r = p->s->r;
	const double dx = b.x - a.x, dy = b.y - a.y, length = hypot(dx, dy);
	double t[PIECES];
	const int n = length > 0 ? divide(r, a, b, t, PIECES) : 0;

	for (int i = 0; i + 1 < n; i++) {
		const double middle = (t[i] + t[i + 1]) / 2;
		const struct point outside = {a.x + middle * dx + NUDGE * dy / length,
					      a.y + middle * dy - NUDGE * dx / length};
		const enum zone other = plan_zone_at(r, outside);

		/* Each border once, from its lower zone; the roof's own edge is drawn elsewhere. */
		if (t[i + 1] - t[i] < 1e-9 || other == ZONE_COUNT || other <= zone)
			continue;
		plan_line(p, LAYER_ZONE, (struct point){a.x + t[i] * dx, a.y + t[i] * dy},
			  (struct point){a.x + t[i + 1] * dx, a.y + t[i + 1] * dy});
	}
}

void plan_zone_borders(const struct plan *p)
{
	for (int i = 0; i < p->s->r->shapes; i++) {
		const struct zone_shape *z = &p->s->r->shape[i];

		for (int k = 0; k < z->shape.n; k++)
			border(p, z->zone, z->shape.at[k], z->shape.at[(k + 1) % z->shape.n]);
	}
}

/* True if a shape of the same zone that came earlier and is seen too shares an edge with this one:
 * it carries the label for both. */
static bool labelled(const struct plan *p, int index)
{
	const struct result *r = p->s->r;
	const struct polygon *shape = &r->shape[index].shape;

	for (int i = 0; i < index; i++) {
		const struct polygon *other = &r->shape[i].shape;

		if (r->shape[i].zone != r->shape[index].zone || plan_in_window(p, other).n < 3)
			continue;
		for (int k = 0; k < shape->n; k++) {
			const struct point a = shape->at[k], b = shape->at[(k + 1) % shape->n];
			const double length = hypot(b.x - a.x, b.y - a.y);
			const struct point out = {(a.x + b.x) / 2 + NUDGE * (b.y - a.y) / length,
						  (a.y + b.y) / 2 - NUDGE * (b.x - a.x) / length};

			if (length > 0 && plan_holds_point(other, out))
				return true;
		}
	}
	return false;
}

/* True if the whole label lies in the shape, and a little air round it. */
static bool surrounds(const struct plan *p, const struct polygon *shape, struct point at,
		      const struct box *label)
{
	const struct point middle = drawing_on_paper(p->d, at);
	const double k = p->view.scale, air = 0.4 * MM;
	const double left = (label->x0 - air - middle.x) / k,
		     right = (label->x1 + air - middle.x) / k,
		     low = (label->y0 - air - middle.y) / k,
		     high = (label->y1 + air - middle.y) / k;

	return plan_holds_point(shape, (struct point){at.x + left, at.y + low}) &&
	       plan_holds_point(shape, (struct point){at.x + right, at.y + low}) &&
	       plan_holds_point(shape, (struct point){at.x + left, at.y + high}) &&
	       plan_holds_point(shape, (struct point){at.x + right, at.y + high});
}

/* Round a zone's name: a bare figure would read as the number of a foot. */
static struct box frame_of(const struct plan *p, struct box name)
{
	const double x = (p->room.narrow ? 0.4 : 0.7) * MM, y = (p->room.narrow ? 0.3 : 0.5) * MM;

	return (struct box){name.x0 - x, name.y0 - y, name.x1 + x, name.y1 + y};
}

static void draw_label(const struct plan *p, struct point at, struct box frame,
		       struct lettering_spec spec, const char *text)
{
	const struct view open = drawing_view_open(p->d);

	drawing_view(p->d, VIEW_PAPER);
	drawing_rectangle(p->d, LAYER_TEXT, FILL_WHITE, frame.x0, frame.y0, frame.x1, frame.y1);
	drawing_text(p->d, LAYER_TEXT, at, spec, text);
	drawing_reserve(p->d, frame);
	drawing_view(p->d, open);
}

/* At the first of n places where the label is free and within its zone; a zone too narrow for it
 * has it where its middle at least lies within, if it can off the roof's edge. */
static void put_label(const struct plan *p, const struct polygon *seen, const struct point *place,
		      int n, struct lettering_spec spec, const char *text)
{
	const struct polygon roof = plan_in_window(p, &p->s->r->outline);
	const struct polygon *within[] = {seen, &roof, NULL};

	for (int pass = 0; pass < 3; pass++)
		for (int k = 0; k < n; k++) {
			const struct point at = drawing_on_paper(p->d, place[k]);
			const struct box frame =
				frame_of(p, drawing_text_box(p->d, at, spec, text));

			if (!drawing_is_free(p->d, frame) ||
			    (within[pass] && !surrounds(p, within[pass], place[k], &frame)))
				continue;
			draw_label(p, at, frame, spec, text);
			return;
		}
}

/* Share of a length: its middle, then places on either side, to its ends. */
static double outwards(int k)
{
	return 0.5 + (k % 2 ? 1 : -1) * ((k + 1) / 2) / (double)TRIES;
}

void plan_zone_labels(const struct plan *p)
{
	for (int i = 0; i < p->s->r->shapes; i++) {
		const struct zone_shape *z = &p->s->r->shape[i];
		const struct polygon seen = plan_in_window(p, &z->shape);
		/* on a screen zones are too narrow for larger ones */
		const struct lettering_spec spec = {(p->room.narrow ? 1 : 1.25) * p->size,
						    true,
						    ANCHOR_CENTRE,
						    ANCHOR_MIDDLE,
						    0,
						    false};
		struct point place[TRIES * TRIES];
		struct box bounds = {HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL};
		int n = 0;

		if (seen.n < 3 || labelled(p, i))
			continue;
		for (int k = 0; k < seen.n; k++) {
			bounds.x0 = fmin(bounds.x0, seen.at[k].x);
			bounds.x1 = fmax(bounds.x1, seen.at[k].x);
			bounds.y0 = fmin(bounds.y0, seen.at[k].y);
			bounds.y1 = fmax(bounds.y1, seen.at[k].y);
		}
		/* From the middle outwards. */
		for (int k = 0; k < TRIES * TRIES; k++) {
			const struct point at = {
				bounds.x0 + (bounds.x1 - bounds.x0) * outwards(k % TRIES),
				bounds.y0 + (bounds.y1 - bounds.y0) * outwards(k / TRIES)};

			if (plan_holds_point(&seen, at))
				place[n++] = at;
		}
		put_label(p, &seen, place, n, spec, zone_text(z->zone));
	}
}
