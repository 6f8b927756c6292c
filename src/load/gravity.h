/* SPDX-License-Identifier: MIT */
/* Roof live load, weights of collectors, and how vertical loads split on a slope. */
#ifndef RP_LOAD_GRAVITY_H
#define RP_LOAD_GRAVITY_H

#include "step/step.h"

/* Lr = 20 R1 R2 psf per plan area, between 12 and 20. At: tributary area of the member on plan, m2.
   Pa. */
double gravity_roof_live(double At, double theta, struct trace *trace);

/* The same by the step table of IRC R301.6. Pa. */
double gravity_roof_live_irc(double At, double theta, struct trace *trace);

enum gravity_fluid { GRAVITY_NO_FLUID, GRAVITY_WATER, GRAVITY_GLYCOL };

/* Weight of the fluid in a collector, N. Water at its densest; glycol mixtures by a safe-side
   factor. */
double gravity_fluid_weight(double volume, enum gravity_fluid fluid, struct trace *trace);

/* Dead load of the array on its own area, Pa of slope: weight of a collector over its area, plus
   hardware. */
double gravity_array_dead(double weight, double area, double hardware, struct trace *trace);

/* Parts of a load per area of slope, Pa: normal to the roof (positive down) and down the slope. */
struct slope_load {
	double normal, parallel;
};
/* d: Pa of slope (weight). */
struct slope_load gravity_dead_on_slope(double d, double theta, struct trace *trace);
/* S: Pa of plan (snow, live). */
struct slope_load gravity_plan_on_slope(double S, double theta, struct trace *trace);

#endif
