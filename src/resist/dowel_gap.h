/* SPDX-License-Identifier: MIT */
/* Yield modes II, IIIm, IIIs and IV across a gap: the general dowel equations. Used by
   dowel_yield. */
#ifndef RP_RESIST_DOWEL_GAP_H
#define RP_RESIST_DOWEL_GAP_H

#include "resist/dowel.h"

/* Fills Z[MODE_II] to Z[MODE_IV]; Im and Is know no gap. The joint is one that dowel_covers. A gap
   of 0 is allowed and gives the equations of dowel.c. */
void dowel_yield_gap(struct trace *trace, const struct dowel_joint *joint,
                     const double Rd[YIELD_MODE_COUNT], double Z[YIELD_MODE_COUNT]);

#endif
