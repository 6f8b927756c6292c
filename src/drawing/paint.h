/* SPDX-License-Identifier: MIT */
/* A drawing on a Cairo canvas: how it gets into a PDF page. */
#ifndef RP_DRAWING_PAINT_H
#define RP_DRAWING_PAINT_H

#include <cairo.h>

#include "drawing/drawing.h"

/* The drawing's upper left corner comes to the canvas's origin; canvas units are points, y down. */
void drawing_paint(cairo_t *cr, const struct drawing *d);

#endif
