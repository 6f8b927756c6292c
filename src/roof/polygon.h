/* SPDX-License-Identifier: MIT */
/* Small convex polygons on a roof plane. Vertices run anticlockwise; coordinates in m. Plain
   geometry, no allocation. */
#ifndef RP_ROOF_POLYGON_H
#define RP_ROOF_POLYGON_H

#include <stdbool.h>

/* 12: a clip of two polygons of n and m vertices has at most n + m; zones and rectangles have 4. */
#define POLYGON_MAX 12

struct point {
	double x, y;
};

struct polygon {
	int n;
	struct point at[POLYGON_MAX];
};

/* Axis-parallel rectangle; corners in any order. */
struct polygon polygon_rectangle(double x0, double y0, double x1, double y1);
double polygon_area(const struct polygon *p);
/* What of p lies left of the line from a to b. */
struct polygon polygon_cut(const struct polygon *p, struct point a, struct point b);
/* What of p lies inside the convex polygon `window`; n = 0 if nothing does. p.n + window.n must not
   exceed POLYGON_MAX. */
struct polygon polygon_clip(const struct polygon *p, const struct polygon *window);
/* Area that p shares with the convex polygon `window`. */
double polygon_common(const struct polygon *p, const struct polygon *window);
/* True if all of one lies left, right, below or above all of the other: what most pairs are spared by. */
bool polygon_apart(const struct polygon *p, const struct polygon *q);

#endif
