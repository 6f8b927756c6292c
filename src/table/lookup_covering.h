/* SPDX-License-Identifier: MIT */
/* Roof coverings: what the loads and the placement need to know of one. See lookup.h. How a
   covering is opened and made tight again stands in the covering library, not here. */
#ifndef RP_TABLE_LOOKUP_COVERING_H
#define RP_TABLE_LOOKUP_COVERING_H

#include <stdbool.h>

#include "step/step.h"
#include "table/tables.h"

/* struct covering_row { const char *key, *name; enum covering_guide guide; double min_rise,
   weight_low_psf, weight_high_psf, thickness_low_in, thickness_high_in; enum covering_slippery
   slippery; const char *exposure, *headlap; } min_rise is inches per foot. Use weight_low against
   uplift, weight_high for gravity. NAN and NULL where nothing is known. guide: COVERING_GUIDE_YES;
   COVERING_GUIDE_NO (the guide refuses this covering). slippery: COVERING_SLIPPERY_YES, _NO (not,
   or not named by the standard: safe side), _UNKNOWN (depends on the surface). */
const struct covering_row *covering_row(const char *key);

/* How it is laid and the least plate of a foot at this rise (in per foot, from 0). NULL: a sheet without courses, or unknown.
   struct covering_plate_row { const char *key; enum covering_plate_laid laid; enum covering_plate_batten batten;
   double rise_from_in, rise_below_in, plate_down_in, plate_side_in, plate_width_in; } */
const struct covering_plate_row *covering_plate_row(const char *key, double rise);

/* Largest exposure of wood of this length (in), grade and rise; NULL: none is printed.
   struct covering_exposure_row { const char *key; double length_in; int grade; double rise_from_in, rise_below_in; const char *where; double most_in; } */
const struct covering_exposure_row *covering_exposure_row(const char *key, double length, int grade, double rise);

/* Whether the table has this covering at all. */
bool covering_exposure_listed(const char *key);

/* Least lap at this rise. struct covering_lap_row { const char *key; enum covering_lap_lap lap;
   double rise_from_in, rise_below_in, least_in; } */
const struct covering_lap_row *covering_lap_row(const char *key, double rise);

/* Joints between pieces; NULL: a sheet without any, or unknown. struct covering_joint_row { const char *key, *joint;
   enum covering_joint_usual usual; double own_in, cover_in; } cover_in NAN: no rule. */
const struct covering_joint_row *covering_joint_row(const char *key);

#endif
