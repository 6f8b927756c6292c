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
	struct sheet_room room;
	bool legend; /* with one: a column at the right, or a strip below where that lets the scale
			be larger */
	bool below;
	bool full; /* with what is told elsewhere too: whole lengths, the array's place in words */
	double strip; /* height of the strip and of the room above it */
};

/* NULL when memory ran out. legend: with symbols, zones, scale bar and north. */
struct drawing *plan_draw(const struct sheet *s, enum plan_part part, struct sheet_room room,
			  bool legend);

/* World over paper of the scale that it would have. */
double plan_ratio(const struct sheet *s, enum plan_part part, double width, double height);

/* Internal to src/sheet. */
/* plan.c: ready but for scale and view. */
struct plan plan_of(const struct sheet *s, struct drawing *d, enum plan_part part,
		    struct sheet_room room, bool legend);
/* Title and description, when the scale is known. */
void plan_name(const struct plan *p);
/* Everything in the window, and its dimensions. */
void plan_contents(const struct plan *p);
/* plan_narrow.c: what plan_draw makes of a narrow room. */
struct drawing *plan_draw_narrow(const struct sheet *s, enum plan_part part, struct sheet_room room,
				 bool legend);
/* This share of the size of small text, or the room's least. */
double plan_size(const struct plan *p, double share);
/* On a narrow plan of the whole roof feet are marks without numbers; the layout tells those. */
bool plan_tells_feet(const struct plan *p);
/* Radius of a foot's mark on paper. */
double plan_dot(const struct plan *p);

/* plan_roof.c, plan_clear.c, plan_zone.c, plan_array.c, plan_number.c,
 * plan_measure.c, plan_legend.c, plan_slope.c */
void plan_zones(const struct plan *p);
void plan_zone_borders(const struct plan *p);
void plan_zone_labels(const struct plan *p);
void plan_clear_paths(const struct plan *p);
/* After rafters, which would strike them through. */
void plan_clear_names(const struct plan *p);
void plan_obstacles(const struct plan *p);
void plan_edges(const struct plan *p);
/* True if an edge of the roof on this layer (LAYER_EDGE, LAYER_RIDGE) is drawn. */
bool plan_edge_shown(const struct plan *p, enum drawing_layer layer);
void plan_rafters(const struct plan *p);
void plan_collectors(const struct plan *p);
void plan_rails(const struct plan *p);
void plan_pipes(const struct plan *p);
void plan_attachments(const struct plan *p);
/* After everything that a number must stay clear of. */
void plan_numbers(const struct plan *p);
void plan_slope_arrow(const struct plan *p);
/* "5:12 (22.6 deg)"; degrees alone in SI. */
const char *plan_pitch(const struct sheet *s);
/* Rafters, or seams where feet stand on those; places on blocks and on the deck are none. */
int plan_rafters_drawn(const struct result *r);
const double *plan_rafter_x(const struct result *r);
void plan_dimensions(const struct plan *p);
/* What distances along the eave are told from, in words. */
const char *plan_left_end(const struct plan *p);
/* Room that the dimensions take on paper at the view's scale, m, left of, below, right of and above
 * the window. */
struct plan_room {
	double left, below, right, above;
};
struct plan_room plan_dimension_room(const struct plan *p);
/* plan_chain.c: distances between array and edges, and what they take above and at the right. */
void plan_clear_distances(const struct plan *p);
void plan_clear_room(const struct plan *p, struct plan_room *room);
/* True if the plane is a rectangle, so that there are rakes to measure from. */
bool plan_has_rakes(const struct result *r);
/* How to lay the tape; upper left corner and width on paper. Returns the y below it. */
double plan_caption(const struct plan *p, struct point at, double width);
/* Column or strip from its upper left corner on; returns the y below it. */
double plan_legend(const struct plan *p, struct point upper_left, double width);
/* The same in a narrow room: title, scale bar and north above the roof, all else below it. */
double plan_legend_above(const struct plan *p, struct point upper_left, double width);
double plan_legend_below(const struct plan *p, struct point upper_left, double width);
#define PLAN_LEGEND_WIDTH (58 * MM)
/* Scale bar and, where the job tells it, north, on paper; returns the y below them. */
double plan_scale_and_north(const struct plan *p, struct point upper_left, double width);
/* Height of the legend as a strip of this width. */
double plan_legend_height(const struct plan *p, double width);

/* Part of a segment that lies in the window; false if none does. */
bool plan_clip(const struct plan *p, struct point *a, struct point *b);
/* A line, as much of it as lies in the window. */
void plan_line(const struct plan *p, enum drawing_layer layer, struct point a, struct point b);
struct polygon plan_in_window(const struct plan *p, const struct polygon *shape);
bool plan_inside(const struct plan *p, struct point at);
/* For a convex shape, anticlockwise; its edge counts. */
bool plan_holds_point(const struct polygon *shape, struct point at);
/* ZONE_COUNT: none */
enum zone plan_zone_at(const struct result *r, struct point at);
/* Paper box of a rectangle of the roof plane. */
struct box plan_box(const struct plan *p, double x0, double y0, double x1, double y1);
/* Hatch of a zone, for plan and legend: 0 to 2 directions, rad; returns how many. */
int plan_zone_hatch(enum zone zone, double angle[2]);

#define PLAN_DOT (1.0 * MM)
#define PLAN_JOINT (1.1 * MM) /* half the strokes across a joint of a rail, on paper */

#endif
