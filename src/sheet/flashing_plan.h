/* SPDX-License-Identifier: MIT */
/* The flashing of a foot and of each pipe seen from above, from the covering library with the job's
   own sizes, beside each other on one sheet or more. Pipes that are alike are drawn once. */
#ifndef RP_SHEET_FLASHING_PLAN_H
#define RP_SHEET_FLASHING_PLAN_H

#include "sheet/sheet.h"

/* 0 where the library has nothing for this covering. */
int flashing_plan_pages(const struct sheet *s);
/* The notes hold feet by clamps on seams where this job goes through the covering, or the other way
 * round: what is said in place of a picture, or NULL. */
const char *flashing_of_other_foot(const struct sheet *s);
/* What to do first where the notes set the foot on top of its plate and this job's base stands below
   it, on wood or deck; NULL where that is not so. */
const char *flashing_over_base(const struct sheet *s);
/* page from 0. NULL when memory ran out. */
struct drawing *flashing_plan_draw(const struct sheet *s, int page, struct sheet_room room);

#endif
