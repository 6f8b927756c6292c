/* SPDX-License-Identifier: MIT */
/* Hatching as plain lines, so that every format and every printer shows the same. */
#include <math.h>
#include <stdlib.h>

#include "drawing/drawing.h"

/* Corners of a shape, and so crossings of a line with it. */
#define CORNERS 64

static int by_value(const void *a, const void *b)
{
	const double x = *(const double *)a, y = *(const double *)b;

	return (x > y) - (x < y);
}

/* In the frame of the hatch: u along its lines, v across. */
static void cross_line(struct drawing *d, enum drawing_layer layer, const struct point *uv, int n,
		       double v, double c, double s)
{
	double u[CORNERS];
	int found = 0;

	for (int i = 0; i < n; i++) {
		const struct point a = uv[i], b = uv[(i + 1) % n];

		/* Half open, so that a line through a corner meets one of the two edges. */
		if ((a.y <= v) != (b.y <= v))
			u[found++] = a.x + (v - a.y) / (b.y - a.y) * (b.x - a.x);
	}
	qsort(u, (size_t)found, sizeof *u, by_value);
	for (int i = 0; i + 1 < found; i += 2)
		drawing_line(d, layer, (struct point){c * u[i] - s * v, s * u[i] + c * v},
			     (struct point){c * u[i + 1] - s * v, s * u[i + 1] + c * v});
}

void drawing_hatch(struct drawing *d, enum drawing_layer layer, const struct point *at, int n,
		   double angle, double spacing)
{
	const double c = cos(angle), s = sin(angle);
	const struct view open = drawing_view_open(d);
	struct point uv[CORNERS];
	double low = HUGE_VAL, high = -HUGE_VAL;

	if (n > CORNERS)
		n = CORNERS;
	for (int i = 0; i < n; i++) {
		const struct point p = drawing_on_paper(d, at[i]);

		uv[i] = (struct point){c * p.x + s * p.y, -s * p.x + c * p.y};
		low = fmin(low, uv[i].y);
		high = fmax(high, uv[i].y);
	}
	drawing_view(d, VIEW_PAPER);
	/* Lines at whole multiples of the spacing: neighbouring shapes share them. */
	for (long k = lround(ceil(low / spacing)); (double)k * spacing <= high; k++)
		cross_line(d, layer, uv, n, (double)k * spacing, c, s);
	drawing_view(d, open);
}
