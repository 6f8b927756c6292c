/* SPDX-License-Identifier: MIT */
#ifndef RP_CHECK_VALLEY_H
#define RP_CHECK_VALLEY_H

#include "check/context.h"

/* Square distance that a flashing on this covering keeps from a valley's line, m. */
double valley_clear(const char *covering);
/* Adds a reason against the layout where a foot stands too near a valley for its flashing. */
void check_valley(struct context *c);

#endif
