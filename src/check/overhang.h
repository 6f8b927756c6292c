/* SPDX-License-Identifier: MIT */
/* Overhangs: wind on them, and which pieces of a rafter are one. Internal to src/check. */
#ifndef RP_CHECK_OVERHANG_H
#define RP_CHECK_OVERHANG_H

#include "check/attachment.h"
#include "check/rafter_load.h"

/* Name under which the job enters the net coefficient of an overhang in a zone: "oh2e". */
const char *overhang_zone_name(enum zone zone);
/* Net uplift coefficient of the overhang in this zone: entered by the user, the figure's, or roof
   and soffit together. Notes in c that a second curve matters. */
struct wind_coefficient overhang_coefficient(struct context *c, enum zone zone, double A,
					     struct trace *trace);
/* Names the net coefficients that rest on memory where the array loads a tail: to be looked up
   where the answer hangs on them, else as used. */
void overhang_tell(struct context *c, const struct pass *pass, bool look_up);

#endif
