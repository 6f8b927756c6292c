/* SPDX-License-Identifier: MIT */
/* A tilted row from its side. Internal to src/sheet. */
#ifndef RP_SHEET_SECTION_RACK_H
#define RP_SHEET_SECTION_RACK_H

#include "sheet/section.h"

#define ROWS_SHOWN 2
#define RACK_LEG_HALF 0.019 /* half width of a leg as drawn, m */

struct rack_row {
	double y0, y1, front, rear; /* m up the slope on the plane */
};

struct rack {
	struct section *x;
	int rows;
	struct rack_row row[ROWS_SHOWN];
	double low; /* lower face of the rafter */
};

/* The row with the lowest edge above y; false if none lies there. */
bool rack_next_row(const struct result *r, double y, struct rack_row *row);
bool rack_in_row(const struct rack_row *row, double y);
/* section_force.c: arrows beside the leg at u, and what they mean below the drawing. */
void rack_forces(struct section *x, double u, bool rear);
/* From the middle of a leg up the slope to the tail of the last arrow, m on paper. */
double rack_force_reach(const struct section *x);

#endif
