/* SPDX-License-Identifier: MIT */
/* The roof plane seen square from above, to scale: edges, ridge, pressure zones, rafters,
   collectors, rails, attachments, pipes, paths to keep clear, and running dimensions from the lower
   left corner, as a tape lies on the roof. Left and right as seen by somebody who stands below this
   eave and looks up. */
#ifndef RP_SHEET_PLAN_H
#define RP_SHEET_PLAN_H

#include "sheet/sheet.h"

enum plan_part {
	PLAN_WHOLE, /* the plane from rake to rake and eave to ridge */
	PLAN_ARRAY  /* the array and a little round it, at a larger scale */
};

struct plan {
	const struct sheet *s;
	struct drawing *d;
	enum plan_part part;
	struct rectangle window; /* of the roof plane that is shown, m */
	struct view view;
	struct scale scale;
	double size; /* of small text, m on paper */
	bool legend; /* with one: a column at the right, or a strip below where that lets the scale
			be larger */
	bool below;
};

/* Draws on a new drawing of width x height; NULL when memory ran out. legend: with symbols, zones,
 * scale bar and north. */
struct drawing *plan_draw(const struct sheet *s, enum plan_part part, double width, double height,
			  bool legend);

/* Internal to src/sheet: plan_roof.c, plan_clear.c, plan_zone.c, plan_array.c, plan_measure.c, plan_legend.c */
void plan_zones(const struct plan *p);
void plan_zone_borders(const struct plan *p);
void plan_zone_labels(const struct plan *p);
void plan_clear_paths(const struct plan *p);
void plan_obstacles(const struct plan *p);
void plan_edges(const struct plan *p);
void plan_rafters(const struct plan *p);
void plan_collectors(const struct plan *p);
void plan_rails(const struct plan *p);
void plan_pipes(const struct plan *p);
void plan_attachments(const struct plan *p);
void plan_slope_arrow(const struct plan *p);
void plan_dimensions(const struct plan *p);
/* Room that the dimensions take on paper, m, left of, below, right of and above the window. */
struct plan_room {
	double left, below, right, above;
};
struct plan_room plan_dimension_room(const struct plan *p);
/* Column: upper left corner; strip: the same, its parts beside each other. */
void plan_legend(const struct plan *p, struct point upper_left);
#define PLAN_LEGEND_WIDTH (58 * MM)
/* Scale bar and, where the job tells it, north, on paper; returns the y below them. */
double plan_scale_and_north(const struct plan *p, struct point upper_left, double width);
/* Height of the legend as a strip. */
double plan_legend_height(const struct plan *p);

/* Part of a segment that lies in the window; false if none does. */
bool plan_clip(const struct plan *p, struct point *a, struct point *b);
/* A line, as much of it as lies in the window. */
void plan_line(const struct plan *p, enum drawing_layer layer, struct point a, struct point b);
struct polygon plan_in_window(const struct plan *p, const struct polygon *shape);
bool plan_inside(const struct plan *p, struct point at);
/* Paper box of a rectangle of the roof plane. */
struct box plan_box(const struct plan *p, double x0, double y0, double x1, double y1);
/* Hatch of a zone, for plan and legend: 0 to 2 directions, rad; returns how many. */
int plan_zone_hatch(enum zone zone, double angle[2]);

#define PLAN_DOT (1.0 * MM)
#define PLAN_JOINT (1.1 * MM) /* half the strokes across a joint of a rail, on paper */

#endif
