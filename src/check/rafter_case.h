/* SPDX-License-Identifier: MIT */
/* The load cases that a rafter meets. Internal to rafter_*.c. */
#ifndef RP_CHECK_RAFTER_CASE_H
#define RP_CHECK_RAFTER_CASE_H

#include "check/context.h"

/* Snow on the bare roof in case i, Pa on plan: with the array as the code's case has it, before it
   balanced and leeward only. */
int rafter_snow_cases(const struct context *c, bool array);
double rafter_roof_snow(const struct context *c, int i, bool array);

/* Whether an earlier combination has left nothing to find in combination `at`, pressing down, in snow
   case `snow` (-1: no snow in it). more: more load is never better, as where all of it presses on one
   span; else the earlier one must have the same loads. */
bool rafter_case_outdone(const struct context *c, int at, int snow, bool array, bool more);

#endif
