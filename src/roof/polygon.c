/* SPDX-License-Identifier: MIT */
/* Convex polygons: area by the shoelace formula, intersection by cutting with one edge line after
   the other. */
#include "roof/polygon.h"

#include <assert.h>
#include <math.h>
#include <stdbool.h>

#include "quantity/quantity.h"

struct polygon polygon_rectangle(double x0, double y0, double x1, double y1)
{
	const double left = fmin(x0, x1), right = fmax(x0, x1);
	const double low = fmin(y0, y1), high = fmax(y0, y1);

	return (struct polygon){.n = 4,
				.at = {{left, low}, {right, low}, {right, high}, {left, high}}};
}

double polygon_area(const struct polygon *p)
{
	double twice = 0.0;

	for (int i = 0; i < p->n; i++) {
		const struct point a = p->at[i], b = p->at[(i + 1) % p->n];

		twice += a.x * b.y - b.x * a.y;
	}
	return 0.5 * twice;
}

/* Positive left of the line from a to b, which is inside for an anticlockwise window. */
static double side_of(struct point a, struct point b, struct point q)
{
	return (b.x - a.x) * (q.y - a.y) - (b.y - a.y) * (q.x - a.x);
}

/* 1e-9 m: points closer than that are one; an edge between them would have no direction to cut by.
 */
static bool same_point(struct point a, struct point b)
{
	return fabs(a.x - b.x) < 1e-9 && fabs(a.y - b.y) < 1e-9;
}

static void append(struct polygon *p, struct point q)
{
	if (p->n > 0 && same_point(p->at[p->n - 1], q))
		return;
	/* A convex polygon gains at most one vertex per cut, so n + m never exceeds POLYGON_MAX. */
	assert(p->n < POLYGON_MAX);
	p->at[p->n++] = q;
}

struct polygon polygon_cut(const struct polygon *p, struct point a, struct point b)
{
	struct polygon out = {.n = 0};

	for (int i = 0; i < p->n; i++) {
		const struct point from = p->at[i], to = p->at[(i + 1) % p->n];
		const double s = side_of(a, b, from), t = side_of(a, b, to);

		if (s >= 0.0)
			append(&out, from);
		if ((s > 0.0 && t < 0.0) || (s < 0.0 && t > 0.0)) {
			const double f = s / (s - t);

			append(&out, (struct point){from.x + f * (to.x - from.x),
						    from.y + f * (to.y - from.y)});
		}
	}
	if (out.n > 1 && same_point(out.at[0], out.at[out.n - 1]))
		out.n--;
	if (out.n < 3)
		out.n = 0;
	return out;
}

struct polygon polygon_clip(const struct polygon *p, const struct polygon *window)
{
	struct polygon out = *p;

	assert(p->n + window->n <= POLYGON_MAX);
	for (int i = 0; i < window->n && out.n > 0; i++)
		out = polygon_cut(&out, window->at[i], window->at[(i + 1) % window->n]);
	return out;
}

/* As polygon_rectangle makes them. */
static bool upright(const struct polygon *p)
{
	return p->n == 4 && same_value(p->at[0].y, p->at[1].y) && same_value(p->at[1].x, p->at[2].x) &&
	       same_value(p->at[2].y, p->at[3].y) && same_value(p->at[3].x, p->at[0].x);
}

static void bounds(const struct polygon *p, struct point *low, struct point *high)
{
	*low = *high = p->at[0];
	for (int i = 1; i < p->n; i++) {
		const struct point q = p->at[i];

		low->x = q.x < low->x ? q.x : low->x;
		low->y = q.y < low->y ? q.y : low->y;
		high->x = q.x > high->x ? q.x : high->x;
		high->y = q.y > high->y ? q.y : high->y;
	}
}

/* All of p further along x (or y) than all of q. */
static bool beyond(const struct polygon *p, const struct polygon *q, bool along_y)
{
	double least = HUGE_VAL, most = -HUGE_VAL;

	for (int i = 0; i < p->n; i++) {
		const double v = along_y ? p->at[i].y : p->at[i].x;

		least = v < least ? v : least;
	}
	for (int i = 0; i < q->n; i++) {
		const double v = along_y ? q->at[i].y : q->at[i].x;

		most = v > most ? v : most;
	}
	return least > most;
}

bool polygon_apart(const struct polygon *p, const struct polygon *q)
{
	return beyond(p, q, false) || beyond(q, p, false) || beyond(p, q, true) || beyond(q, p, true);
}

double polygon_common(const struct polygon *p, const struct polygon *window)
{
	struct point low, high, window_low, window_high;

	if (p->n == 0 || window->n == 0)
		return 0.0;
	bounds(p, &low, &high);
	bounds(window, &window_low, &window_high);
	const double x = fmin(high.x, window_high.x) - fmax(low.x, window_low.x);
	const double y = fmin(high.y, window_high.y) - fmax(low.y, window_low.y);

	if (x <= 0.0 || y <= 0.0)
		return 0.0;
	if (upright(p) && upright(window))
		return x * y;
	const struct polygon common = polygon_clip(p, window);

	return polygon_area(&common);
}
