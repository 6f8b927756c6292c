/* SPDX-License-Identifier: MIT */
/* The column of facts beside the house and its place. Internal to src/sheet. */
#ifndef RP_SHEET_SITE_WORDS_H
#define RP_SHEET_SITE_WORDS_H

#include "sheet/plan.h"

#define SITE_MARGIN (3 * MM)
#define SITE_TEXT (2.2 * MM)

enum side { BELOW, BEHIND, LEFT, RIGHT, SIDES };

/* On plan, m: origin where the roof's left edge meets the eave of the array's plane. */
struct place {
	const struct sheet *s;
	struct drawing *d;
	struct plan plan; /* for scale bar and north */
	struct rectangle roof, walls;
	double line[SIDES];    /* from the wall, as drawn; NAN: not given */
	bool shortened[SIDES]; /* farther away than is drawn */
};

void site_words(const struct place *p);

#endif
