/* SPDX-License-Identifier: MIT */
/* Pull and side load on the same lag screw. NDS-2018 12.4.1, Eq. 12.4-1. */
#ifndef RP_RESIST_COMBINED_H
#define RP_RESIST_COMBINED_H

#include "step/step.h"

/* Z'alpha, N: capacity along a load at alpha (rad) to the wood surface; 0: side load only, pi/2:
   pull only. Wp is W'p, both capacities adjusted and positive. */
double combined_capacity(struct trace *trace, double Wp, double Z, double alpha);

struct combined {
	double pull, side; /* on one screw, N; a push counts as no pull */
	double resultant;  /* N */
	double alpha;      /* rad */
	double capacity;   /* Z'alpha, N */
	double ratio;      /* resultant / capacity; 0 without load, infinite if Wp or Z is 0 */
};

/* n screws share pull (N, up positive) and side (N, any sign) equally. Wp and Z are of one screw; a
   group factor, where one applies, is already inside Z. n >= 1. */
struct combined combined_check(struct trace *trace, double pull, double side, int n, double Wp,
                               double Z);

#endif
