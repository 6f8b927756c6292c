/* SPDX-License-Identifier: MIT */
/* Nails and heads pulled through wood: formulas for comparison and for the ends of blocks. No foot
   of a collector is rated on nails in withdrawal. NDS-2018 12.2.3, 12.2.5, 12.4.2. SI. */
#ifndef RP_RESIST_NAIL_H
#define RP_RESIST_NAIL_H

#include <stdbool.h>

#include "resist/dowel.h"
#include "step/step.h"

enum nail_shank { NAIL_SMOOTH, NAIL_SMOOTH_STAINLESS, NAIL_RING_SHANK };

/* W, N per metre of nail in the main member; side grain only. */
double nail_withdrawal(struct trace *trace, enum nail_shank shank, double G, double D);
/* Z'alpha of Eq. 12.4-2, N; alpha from the wood surface, rad. */
double nail_combined_capacity(struct trace *trace, double Wp, double Z, double alpha);
/* W_H, N: a round head of diameter DH pulled through wood or panel t thick. Adjusted by CD, CM, Ct.
   In NDS-2018 and 2024; NDS-2015 has none. Hex heads and washers are not covered. */
double head_pull_through(struct trace *trace, double G, double DH, double t);
/* Reference side load Z of a smooth common nail of diameter D and length L through wood ts thick
   into wood of the same G, N: the whole nail below the side member, less half its tip, bears.
   False outside the published ranges or with less than 6 D in the main member. */
bool nail_lateral_find(struct trace *trace, double G, double D, double L, double ts,
		       struct dowel_yield *out);

#endif
