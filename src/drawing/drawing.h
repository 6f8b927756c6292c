/* SPDX-License-Identifier: MIT */
/* A drawing on one sheet of paper, without any idea of a file format: lines, shapes, hatches,
   circles, text and dimensions on named layers. Writers: svg.h, dxf.h, paint.h.

   Coordinates are metres, x to the right, y up. Shapes are given in the coordinates of the view
   that is open (the roof, a section ...) and kept in metres on the paper; line widths, text sizes
   and the distances of a dimension line are always metres on the paper.

   When memory runs out the drawing is marked as failed and every later call does nothing; who
   builds it asks once, at the end. */
#ifndef RP_DRAWING_H
#define RP_DRAWING_H

#include <stdbool.h>
#include <stddef.h>

#include "report/arena.h"
#include "drawing/lettering.h"
#include "roof/polygon.h"

#define MM 1e-3

/* Store of one drawing. 256 attachments, 128 rafters and 49 hatched zones take less than 4 MiB. */
#define DRAWING_CAP ((size_t)32 << 20)

/* id, name in a file, line width on paper in mm, dashes, colour number of a DXF layer.
   The roof's own edge is the heaviest line after the attachments; what lies below is dashed. */
#define DRAWING_LAYERS(L)                                                                          \
	L(FRAME, "FRAME", 0.35, SOLID, 7)                                                          \
	L(EDGE, "ROOF-EDGE", 0.70, SOLID, 7)                                                       \
	L(RIDGE, "RIDGE", 0.50, DASH_DOT, 7)                                                       \
	L(ZONE, "ZONE", 0.18, SHORT_DASH, 3)                                                       \
	L(HATCH, "ZONE-HATCH", 0.09, SOLID, 8)                                                     \
	L(CLEAR, "KEEP-CLEAR", 0.13, SOLID, 1)                                                     \
	L(RAFTER, "RAFTER", 0.18, DASHED, 9)                                                       \
	L(COLLECTOR, "COLLECTOR", 0.35, SOLID, 5)                                                  \
	L(RAIL, "RAIL", 0.50, SOLID, 4)                                                            \
	L(ATTACH, "ATTACHMENT", 0.25, SOLID, 1)                                                    \
	L(PIPE, "PIPE", 0.35, SOLID, 2)                                                            \
	L(OBSTACLE, "OBSTACLE", 0.35, SOLID, 6)                                                    \
	L(MATERIAL, "MATERIAL", 0.25, SOLID, 7)                                                    \
	L(THIN, "THIN", 0.13, SOLID, 8)                                                            \
	L(DIM, "DIMENSION", 0.13, SOLID, 3)                                                        \
	L(TEXT, "TEXT", 0.18, SOLID, 7)

enum drawing_layer {
#define L(id, name, width, dash, colour) LAYER_##id,
	DRAWING_LAYERS(L)
#undef L
		LAYER_COUNT
};

enum drawing_dash { DASH_SOLID, DASH_DASHED, DASH_SHORT_DASH, DASH_DASH_DOT, DASH_COUNT };

/* Dash, gap, dash, gap in metres on paper; 0 lengths end the pattern early. */
extern const double drawing_dash_pattern[DASH_COUNT][4];

struct drawing_layer_row {
	const char *name;
	double width; /* m */
	enum drawing_dash dash;
	int colour;
};
extern const struct drawing_layer_row drawing_layer_table[LAYER_COUNT];

enum fill { FILL_NONE, FILL_WHITE, FILL_LIGHT, FILL_GREY, FILL_BLACK };

enum anchor_x { ANCHOR_LEFT, ANCHOR_CENTRE, ANCHOR_RIGHT };
enum anchor_y { ANCHOR_BASE, ANCHOR_MIDDLE, ANCHOR_TOP };

enum shape_kind { SHAPE_LINE, SHAPE_CIRCLE, SHAPE_TEXT };

struct shape {
	enum shape_kind kind;
	enum drawing_layer layer;
	double width; /* of the line, m; 0: no line */
	enum drawing_dash dash;
	enum fill fill;
	bool closed;
	int n;
	const struct point *at; /* on paper; text: left end of the baseline; circle: centre */
	double radius;
	/* text */
	const char *text;
	double size, turn, length; /* em, rad anticlockwise, measured width */
	bool bold;
	const struct shape *next;
};

/* Upright box on paper. */
struct box {
	double x0, y0, x1, y1;
};

struct drawing;

/* NULL allocator: the heap. NULL when memory ran out. The lettering must live longer. */
struct drawing *drawing_create(const struct lettering *lettering, double width, double height,
			       const struct allocator *allocator);
void drawing_destroy(struct drawing *d);
bool drawing_failed(const struct drawing *d);
double drawing_width(const struct drawing *d);
double drawing_height(const struct drawing *d);
const struct shape *drawing_first(const struct drawing *d);
const struct lettering *drawing_lettering(const struct drawing *d);

/* Text in the drawing's own store, cleaned as in a document; "" when memory ran out. */
const char *drawing_string(struct drawing *d, const char *text);
/* Title for readers of a file; "" unless set. */
void drawing_set_title(struct drawing *d, const char *title, const char *description);
const char *drawing_title(const struct drawing *d);
const char *drawing_description(const struct drawing *d);

/* World to paper: origin + scale * (world turned by `turn`). scale is paper over world: 1/64. */
struct view {
	struct point origin;
	double scale, turn;
};
#define VIEW_PAPER ((struct view){{0, 0}, 1, 0})
void drawing_view(struct drawing *d, struct view view);
struct view drawing_view_open(const struct drawing *d);
struct point drawing_on_paper(const struct drawing *d, struct point world);
/* The view whose coordinates a DXF file is written in; the first one opened unless set. */
struct view drawing_main_view(const struct drawing *d);
void drawing_set_main_view(struct drawing *d, struct view view);

/* The same drawing without the paper below `low`, which is given back; NULL when memory ran out. For
   one that grows downward until it is known how high it is. */
struct drawing *drawing_cut(struct drawing *tall, double low, const struct allocator *allocator);

/* Another drawing as a picture in this one: `at` takes its paper to this paper. */
void drawing_add(struct drawing *d, const struct drawing *from, struct view at);

void drawing_line(struct drawing *d, enum drawing_layer layer, struct point a, struct point b);
/* width and dash of its own in place of the layer's. */
void drawing_line_as(struct drawing *d, enum drawing_layer layer, double width,
		     enum drawing_dash dash, struct point a, struct point b);
void drawing_path(struct drawing *d, enum drawing_layer layer, const struct point *at, int n);
/* Closed shape; width < 0: the layer's. */
void drawing_shape(struct drawing *d, enum drawing_layer layer, double width, enum fill fill,
		   const struct point *at, int n);
void drawing_rectangle(struct drawing *d, enum drawing_layer layer, enum fill fill, double x0,
		       double y0, double x1, double y1);
/* A circle of the world, or a mark of a fixed size on paper. */
void drawing_circle(struct drawing *d, enum drawing_layer layer, enum fill fill, struct point at,
		    double radius);
void drawing_mark(struct drawing *d, enum drawing_layer layer, enum fill fill, struct point at,
		  double radius_on_paper);
/* Lines at an angle on paper, `spacing` apart on paper, inside a closed shape. */
void drawing_hatch(struct drawing *d, enum drawing_layer layer, const struct point *at, int n,
		   double angle, double spacing);

struct lettering_spec {
	double size;
	bool bold;
	enum anchor_x x;
	enum anchor_y y;
	double turn;
	bool halo; /* white behind it */
};
void drawing_text(struct drawing *d, enum drawing_layer layer, struct point at,
		  struct lettering_spec spec, const char *text);
/* The room that text would take, on paper; `at` is on paper too. */
struct box drawing_text_box(const struct drawing *d, struct point at, struct lettering_spec spec,
			    const char *text);
struct box shape_text_box(const struct shape *s);

/* Room that must stay free of labels. */
void drawing_reserve(struct drawing *d, struct box box);
/* True if the box lies on the paper and meets neither text nor reserved room. */
bool drawing_is_free(const struct drawing *d, struct box box);
bool box_meets(const struct box *a, const struct box *b);
/* Sets text at the first of n places (of the view) where it is free, and says which; at the last
 * one if none is; -1 then. */
int drawing_text_free(struct drawing *d, enum drawing_layer layer, const struct point *place, int n,
		      struct lettering_spec spec, const char *text);

#endif
