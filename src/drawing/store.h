/* SPDX-License-Identifier: MIT */
/* Inside of a drawing, for drawing.c and drawing_text.c alone. */
#ifndef RP_DRAWING_STORE_H
#define RP_DRAWING_STORE_H

#include "drawing/drawing.h"

struct reserved {
	struct box box;
	const struct reserved *next;
};

struct drawing {
	struct arena *arena;
	bool failed, viewed;
	const struct lettering *lettering;
	double width, height;
	struct view view, main_view;
	struct shape *first, *last;
	struct reserved *reserved;
	const char *title, *description;
};

/* NULL, and the drawing failed, when memory ran out. */
void *drawing_take(struct drawing *d, size_t size);
/* A shape with the look of its layer, last of all so far; its points are of the open view. */
struct shape *drawing_put(struct drawing *d, enum shape_kind kind, enum drawing_layer layer,
			  const struct point *at, int n);

#endif
