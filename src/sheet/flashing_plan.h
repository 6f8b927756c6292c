/* SPDX-License-Identifier: MIT */
/* The flashing of a foot and of a pipe seen from above, from the covering library with the job's
   own sizes, beside each other on one sheet. */
#ifndef RP_SHEET_FLASHING_PLAN_H
#define RP_SHEET_FLASHING_PLAN_H

#include "sheet/sheet.h"

/* False where the library has nothing for this covering. */
bool flashing_plan_exists(const struct sheet *s);
/* NULL when memory ran out. */
struct drawing *flashing_plan_draw(const struct sheet *s, double width, double height);

#endif
