/* SPDX-License-Identifier: MIT */
/* A drawing as SVG: user units are millimetres on paper, text stays text, every text is as wide as
   it was measured whatever typeface the reader has. The same drawing gives the same bytes. */
#ifndef RP_DRAWING_SVG_H
#define RP_DRAWING_SVG_H

#include <stdio.h>

#include "drawing/drawing.h"

enum svg_use {
	SVG_FILE,  /* a file of its own, at its true size */
	SVG_INLINE /* within an HTML page, as wide as the page lets it be */
};

void drawing_write_svg(FILE *f, const struct drawing *d, enum svg_use use);
/* Text with the characters that XML reserves written as entities. */
void svg_text(FILE *f, const char *text);

#endif
