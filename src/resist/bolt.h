/* SPDX-License-Identifier: MIT */
/* Bolts and hanger bolts on a rafter. A through-bolt runs down through the rafter and is held by a
   washer and nut on its underside: a bolt has no withdrawal. A hanger bolt is a lag screw with a
   machine thread that stands free above the wood. NDS-2018 3.10, 12.2.4, 12.3. SI. */
#ifndef RP_RESIST_BOLT_H
#define RP_RESIST_BOLT_H

#include <stdbool.h>

#include "resist/dowel.h"
#include "resist/lag_screw.h"
#include "step/step.h"

/* Side load of a bolt of diameter D through a steel plate t thick and the whole depth of a rafter;
   gap as in lag_lateral_find. Taken to yield at the root of its thread, and the root of the lag
   screw of the same diameter is taken, which is the lesser (safe side). False outside the published
   tables. */
bool bolt_lateral_find(struct trace *trace, double D, double depth, double G, double theta,
		       double t, double gap, struct dowel_joint *joint, struct dowel_yield *out);

/* What a round washer on the underside of a rafter bears, N: Fc_perp' Cb on its net area.
   Fc_perp_prime without CD and Cb; Cb 1 nearer than 3 in to the end. 0 if the washer is wider than
   the rafter or not wider than its hole. */
double bolt_washer_bearing(struct trace *trace, double washer, double hole, double breadth,
			   double from_end, double Fc_perp_prime);

/* Side load at the top of a free-standing bolt, N: nothing holds its head from turning, so there
   is one hinge in the wood, or it turns whole. reach: from the wood's surface to the line of the
   force; 0 allowed. Fills mode and value; the joint's side member is not used. */
struct dowel_yield bolt_free_yield(struct trace *trace, const struct dowel_joint *joint,
				   double reach);

/* Pull and side load at once where no standard gives a curve: T/T_a + V/V_a, the straight line,
   which lies inside every curve that bulges outward (our rule). Infinite where an allowable that is
   needed is 0 or not known. */
double linear_interaction(struct trace *trace, double T, double T_a, double V, double V_a);

#endif
