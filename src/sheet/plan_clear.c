/* SPDX-License-Identifier: MIT */
/* Paths and strips that the job wants clear: a path along a rake, or along a hip where the plane
   has no rake; a strip below the ridge. Widths are square to the edge, on the roof. */
#include <math.h>

#include "sheet/plan.h"

#define CLEAR_SPACING (2.2 * MM)
#define NUDGE 1e-4 /* m */

/* The part of the plane within `wide` of its edge from a to b; the plane lies at the left of it. */
static struct polygon strip_of(const struct polygon *plane, struct point a, struct point b,
			       double wide)
{
	const double length = hypot(b.x - a.x, b.y - a.y), ux = (b.x - a.x) / length,
		     uy = (b.y - a.y) / length, more = 10 * wide;
	const struct point from = {a.x - more * ux, a.y - more * uy},
			   to = {b.x + more * ux, b.y + more * uy};
	const struct polygon band = {.n = 4,
				     .at = {from,
					    to,
					    {to.x - wide * uy, to.y + wide * ux},
					    {from.x - wide * uy, from.y + wide * ux}}};

	return polygon_clip(&band, plane);
}

/* How far p lies at the left of the line from a to b. */
static double off(struct point a, struct point b, struct point p)
{
	return ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) /
	       hypot(b.x - a.x, b.y - a.y);
}

/* Along the strip, in the middle first, and there as well if no place is free. */
static void label(const struct plan *p, const struct polygon *seen, struct point a, struct point b,
		  double wide)
{
	static const double share[] = {0.5, 0.35, 0.65, 0.25, 0.75, 0.5};
	enum { PLACES = sizeof share / sizeof *share };
	const char *text = sheet_text(p->s, "keep clear %s", sheet_tape(p->s, wide));
	const double turn = atan2(b.y - a.y, b.x - a.x), ux = cos(turn), uy = sin(turn);
	double low = HUGE_VAL, high = -HUGE_VAL, near = wide, far = 0;
	struct point place[PLACES];

	for (int i = 0; i < seen->n; i++) {
		const double along = ux * (seen->at[i].x - a.x) + uy * (seen->at[i].y - a.y),
			     across = uy * (a.x - seen->at[i].x) + ux * (seen->at[i].y - a.y);

		low = fmin(low, along);
		high = fmax(high, along);
		near = fmin(near, across);
		far = fmax(far, across);
	}
	const double k = p->view.scale, middle = (near + far) / 2;

	/* 0.7: the ends of a strip may be cut at a slant */
	if (sheet_width(p->s, text, 1.15 * p->size) > 0.7 * (high - low) * k ||
	    1.2 * p->size > (far - near) * k)
		return;
	for (int i = 0; i < PLACES; i++) {
		const double along = low + share[i] * (high - low);

		place[i] = (struct point){a.x + along * ux - middle * uy,
					  a.y + along * uy + middle * ux};
	}
	const double quarter = 90 * RAD_PER_DEG;
	const struct lettering_spec spec = {p->size,
					    true,
					    ANCHOR_CENTRE,
					    ANCHOR_MIDDLE,
					    turn > quarter + 1e-6    ? turn - 2 * quarter
					    : turn < -quarter + 1e-6 ? turn + 2 * quarter
								     : turn,
					    true};

	drawing_text_free(p->d, LAYER_CLEAR, place, PLACES, spec, text);
}

typedef void strip_fn(const struct plan *p, struct point a, struct point b, double wide);

static void keep_clear(const struct plan *p, struct point a, struct point b, double wide)
{
	const struct polygon area = strip_of(&p->s->r->outline, a, b, wide),
			     seen = plan_in_window(p, &area);

	if (seen.n < 3)
		return;
	drawing_hatch(p->d, LAYER_CLEAR, seen.at, seen.n, 22.5 * RAD_PER_DEG, CLEAR_SPACING);
	drawing_hatch(p->d, LAYER_CLEAR, seen.at, seen.n, 112.5 * RAD_PER_DEG, CLEAR_SPACING);
	for (int i = 0; i < area.n; i++) {
		struct point c = area.at[i], e = area.at[(i + 1) % area.n];

		if (fabs(off(a, b, c) - wide) < NUDGE && fabs(off(a, b, e) - wide) < NUDGE &&
		    plan_clip(p, &c, &e))
			drawing_line_as(p->d, LAYER_CLEAR, 0.25 * MM, DASH_SOLID, c, e);
	}
}

static void name_strip(const struct plan *p, struct point a, struct point b, double wide)
{
	const struct polygon area = strip_of(&p->s->r->outline, a, b, wide),
			     seen = plan_in_window(p, &area);

	if (seen.n > 2)
		label(p, &seen, a, b, wide);
}

static void each_strip(const struct plan *p, strip_fn *what)
{
	const struct job_building *job = &p->s->job->building;
	const struct polygon *o = &p->s->r->outline;

	for (int i = 0; i < o->n; i++) {
		const struct point a = o->at[i], b = o->at[(i + 1) % o->n];
		const bool level = fabs(a.y - b.y) < NUDGE,
			   left = a.x + b.x < p->s->r->plane_length;

		if (hypot(b.x - a.x, b.y - a.y) < NUDGE)
			continue;
		if (level && a.y > NUDGE && job->ridge_clear > 0)
			what(p, a, b, job->ridge_clear);
		if (!level && job->access_path > 0 &&
		    job->access_side != (left ? ACCESS_RIGHT : ACCESS_LEFT))
			what(p, a, b, job->access_path);
	}
}

void plan_clear_paths(const struct plan *p)
{
	each_strip(p, keep_clear);
}

void plan_clear_names(const struct plan *p)
{
	each_strip(p, name_strip);
}
