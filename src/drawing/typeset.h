/* SPDX-License-Identifier: MIT */
/* Lettering on a Cairo canvas. Apart from lettering.h, so that only what paints sees Cairo and
 * Pango. */
#ifndef RP_DRAWING_TYPESET_H
#define RP_DRAWING_TYPESET_H

#include <cairo.h>
#include <pango/pangocairo.h>

#include "drawing/lettering.h"

/* Sets one line with the left end of its baseline at the current origin; units of the canvas are
   points, y down. */
void lettering_show(const struct lettering *l, cairo_t *cr, const char *text,
		    struct lettering_style style);
/* A paragraph wrapped to `width` m; the caller releases it with g_object_unref. Its own units are
   Pango's. */
PangoLayout *lettering_paragraph(const struct lettering *l, const char *text,
				 struct lettering_style style, double width);

#endif
