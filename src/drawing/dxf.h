/* SPDX-License-Identifier: MIT */
/* A drawing as DXF, release 12 (AC1009, plain ASCII): the drawing interchange that every drawing
   program has read since 1992. Coordinates are those of the drawing's main view at full size, in
   inches or millimetres, so that a distance measured in the file is the distance on the roof. White
   grounds are left out; characters beyond ASCII are written as \U+XXXX. */
#ifndef RP_DRAWING_DXF_H
#define RP_DRAWING_DXF_H

#include <stdio.h>

#include "quantity/quantity.h"
#include "drawing/drawing.h"

void drawing_write_dxf(FILE *f, const struct drawing *d, enum unit_system units);

#endif
