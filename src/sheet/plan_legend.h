/* SPDX-License-Identifier: MIT */
/* Internal to the plans' legend: rows below each other. */
#ifndef RP_SHEET_PLAN_LEGEND_H
#define RP_SHEET_PLAN_LEGEND_H

#include "sheet/plan.h"

#define LEGEND_LINE (3.8 * MM)

struct legend {
	const struct plan *p;
	double x, y, width; /* of the next line: left end, middle */
};

struct lettering_spec legend_plain(const struct plan *p, bool bold);
/* So far from the left, in as many lines as it takes; then on to the next row. */
void legend_words(struct legend *c, double left, const char *text);

/* plan_key.c */
void legend_symbols(struct legend *c);
void legend_zones(struct legend *c);

#endif
