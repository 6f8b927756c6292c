/* SPDX-License-Identifier: MIT */
/* A nail where the question asks for a screw: shown for comparison, never as what holds a foot.
   Internal to src/check. */
#ifndef RP_CHECK_FASTENER_NAIL_H
#define RP_CHECK_FASTENER_NAIL_H

#include "check/fastener_table.h"

/* The longest common nail of the list for this question; D 0 where it does not apply. */
struct fastener_nail fastener_nail_compare(const struct fastener_question *q);

#endif
