/* SPDX-License-Identifier: MIT */
/* The house from above, to scale: walls, roof, which plane carries the array, property lines as far
   as the job tells them, and the facts of the place. The eave of the array's plane is below, as on
   the roof plan. */
#ifndef RP_SHEET_SITE_PLAN_H
#define RP_SHEET_SITE_PLAN_H

#include "sheet/sheet.h"

/* NULL when memory ran out. */
struct drawing *site_plan_draw(const struct sheet *s, struct sheet_room room);

#endif
