/* SPDX-License-Identifier: MIT */
/* The column of facts beside the house and its place. Internal to src/sheet. */
#ifndef RP_SHEET_SITE_WORDS_H
#define RP_SHEET_SITE_WORDS_H

#include "sheet/plan.h"

#define SITE_MARGIN (3 * MM)
#define SITE_TEXT (2.5 * MM) /* capitals of 1.8 mm, as on the plans */

enum side { BELOW, BEHIND, LEFT, RIGHT, SIDES };

/* On plan, m: origin where the roof's left edge meets the eave of the array's plane. */
struct place {
	const struct sheet *s;
	struct drawing *d;
	struct sheet_room room;
	struct plan plan; /* for scale bar and north */
	struct rectangle roof, walls;
	double line[SIDES];    /* from the wall, as drawn; NAN: not given */
	bool shortened[SIDES]; /* farther away than is drawn */
};

/* Size of its letters. */
double site_text(const struct place *p);
/* The column of a sheet. */
void site_words(const struct place *p);
/* Of a narrow room: what stands above the house, and below it from y down; the y below them. */
double site_words_above(const struct place *p);
double site_words_below(const struct place *p, double y);

#endif
