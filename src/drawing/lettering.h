/* SPDX-License-Identifier: MIT */
/* The one typeface of all drawings and sheets: how wide a text is, and how it is set on a page.
   Widths grow in proportion to the size (no hinting), so that a text measured here takes the same
   room in every format. */
#ifndef RP_DRAWING_LETTERING_H
#define RP_DRAWING_LETTERING_H

#include <stdbool.h>

/* Debian: fonts-dejavu-core. */
#define LETTERING_FAMILY "DejaVu Sans"

/* Shares of the size (em) of this typeface, from its own tables (2048 units per em): capital height
   1493, ascent 1901, descent 483. */
#define LETTERING_CAPITAL (1493.0 / 2048.0)
#define LETTERING_ASCENT (1901.0 / 2048.0)
#define LETTERING_DESCENT (483.0 / 2048.0)

#define POINTS_PER_M (72.0 / 0.0254)

struct lettering;

/* NULL when the typeface is not installed or memory ran out: *missing tells which. */
struct lettering *lettering_create(bool *missing);
void lettering_destroy(struct lettering *l);

struct lettering_style {
	double size; /* em, m */
	bool bold;
	bool mono; /* fixed width, for formulas */
};

/* Width of one line, m. */
double lettering_width(const struct lettering *l, const char *text, struct lettering_style style);
#endif
