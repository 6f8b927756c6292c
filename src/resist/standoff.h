/* SPDX-License-Identifier: MIT */
/* The couple that a side force at the top of a foot puts on its base: a lag screw cannot take it by
   itself, so the base plate presses on one edge and pulls the screw. */
#ifndef RP_RESIST_STANDOFF_H
#define RP_RESIST_STANDOFF_H

#include <stdbool.h>

#include "step/step.h"

/* Extra pull V h / arm on the screws of the foot, N, to be added to the uplift. V: side force, N
   (any sign); h: from base plate to the line of the force, m; arm: from the screw to the compressed
   edge of the base, m. False when V or h is NAN, or there is a couple and no arm is known (NAN or
   not above 0): the foot cannot be rated. No couple (V or h 0) gives 0. */
bool standoff_pull(struct trace *trace, double V, double h, double arm, double *pull);

#endif
