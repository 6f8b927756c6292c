/* SPDX-License-Identifier: MIT */
/* Reduction terms of the yield modes. Used by dowel_yield. */
#ifndef RP_RESIST_DOWEL_REDUCTION_H
#define RP_RESIST_DOWEL_REDUCTION_H

#include "resist/dowel.h"

/* Fills Rd by mode. The joint is one that dowel_covers. */
void dowel_reduction(struct trace *trace, const struct dowel_joint *joint,
                     double Rd[YIELD_MODE_COUNT]);

#endif
