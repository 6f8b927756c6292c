/* SPDX-License-Identifier: MIT */
/* What holds the rafters' feet together: thrust at the heel, and ties that sit above the plate. */
#ifndef RP_RESIST_HEEL_H
#define RP_RESIST_HEEL_H

#include <stdbool.h>

#include "step/step.h"

/* Outward thrust of a pair of rafters on its tie per metre of eave, N/m, for a uniform vertical
   load w (Pa on plan) over a house `width` wide: three-hinged frame. */
double heel_thrust(struct trace *trace, double w, double width, double theta);
/* Factor on a rafter's allowed span for ties that stand h above the plate under a ridge H above
   it: IRC rafter tables, footnote. From memory. False above a third: a ridge beam is needed. */
bool raised_tie_factor(struct trace *trace, double h, double H, double *factor);

#endif
