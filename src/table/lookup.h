/* SPDX-License-Identifier: MIT */
/* Look-ups in the published tables, one per table. Each returns a pointer to a constant row, or
   NULL when the table has no such row: a key it does not list, a value outside its range. Nothing
   is extrapolated. Keys compare exactly, capitals and blanks included. Numbers go in and stay in
   the unit that the table prints; the unit is part of the member's name (Dr_in, zg_ft). Every row
   has `status`, `source` (never NULL) and `note` (NULL if there is none).

   The row structures are generated from tables/ (see tables/table.rng) into table/tables.h. Pure:
   no I/O, no allocation. */
#ifndef RP_TABLE_LOOKUP_H
#define RP_TABLE_LOOKUP_H

#include "table/lookup_combination.h"
#include "table/lookup_covering.h"
#include "table/lookup_metal.h"
#include "table/lookup_snow.h"
#include "table/lookup_wind.h"
#include "table/lookup_wood.h"

#endif
