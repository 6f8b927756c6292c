/* SPDX-License-Identifier: MIT */
/* Metals that touch each other, drip on each other or touch treated wood. See lookup.h. */
#ifndef RP_TABLE_LOOKUP_PAIR_H
#define RP_TABLE_LOOKUP_PAIR_H

#include "step/step.h"
#include "table/tables.h"

/* how: METAL_PAIR_HOW_RUNOFF, _CONTACT, _WOOD; upper, lower: keys such as "copper", "galvanized", "wood". NULL: the table says
   nothing about them, which is not the same as good. */
const struct metal_pair_row *metal_pair_row(enum metal_pair_how how, const char *upper, const char *lower);

#endif
