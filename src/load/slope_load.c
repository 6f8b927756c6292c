/* SPDX-License-Identifier: MIT */
/* A vertical load on a slope as its parts normal to the roof and down the slope, per area of slope.
   Weights are given on the slope itself; snow and live load on plan, of which a slope area catches
   only the cosine. Plain statics. */
#include <math.h>

#include "load/gravity.h"
#include "load/load_steps.h"

static double dead_normal_value(const double *in)
{
	return in[0] * cos(in[1] * RAD_PER_DEG);
}

static double dead_parallel_value(const double *in)
{
	return in[0] * sin(in[1] * RAD_PER_DEG);
}

static double plan_normal_value(const double *in)
{
	const double c = cos(in[1] * RAD_PER_DEG);

	return in[0] * c * c;
}

static double plan_parallel_value(const double *in)
{
	const double theta = in[1] * RAD_PER_DEG;

	return in[0] * sin(theta) * cos(theta);
}

const struct step step_dead_normal = {
	.name = "dead-normal",
	.symbol = "dn",
	.unit = UNIT_PSF,
	.title = "weight on a slope: part normal to the roof",
	.formula = "d cos(theta)",
	.clause = {[EDITION_ANY] = "statics"},
	.confidence = DERIVED,
	.in = {{"d", UNIT_PSF, "weight per area of slope"}, {"theta", UNIT_DEG, "roof angle"}},
	.value = dead_normal_value,
};

const struct step step_dead_parallel = {
	.name = "dead-parallel",
	.symbol = "dp",
	.unit = UNIT_PSF,
	.title = "weight on a slope: part down the slope",
	.formula = "d sin(theta)",
	.clause = {[EDITION_ANY] = "statics"},
	.confidence = DERIVED,
	.in = {{"d", UNIT_PSF, "weight per area of slope"}, {"theta", UNIT_DEG, "roof angle"}},
	.value = dead_parallel_value,
};

const struct step step_plan_normal = {
	.name = "plan-normal",
	.symbol = "sn",
	.unit = UNIT_PSF,
	.title = "snow or live load on a slope: part normal to the roof, per area of slope",
	.formula = "S cos(theta)^2",
	.clause = {[EDITION_ANY] = "statics"},
	.confidence = DERIVED,
	.in = {{"S", UNIT_PSF, "load per area of plan"}, {"theta", UNIT_DEG, "roof angle"}},
	.value = plan_normal_value,
};

const struct step step_plan_parallel = {
	.name = "plan-parallel",
	.symbol = "sp",
	.unit = UNIT_PSF,
	.title = "snow or live load on a slope: part down the slope, per area of slope",
	.formula = "S sin(theta) cos(theta)",
	.clause = {[EDITION_ANY] = "statics"},
	.confidence = DERIVED,
	.in = {{"S", UNIT_PSF, "load per area of plan"}, {"theta", UNIT_DEG, "roof angle"}},
	.value = plan_parallel_value,
};

struct slope_load gravity_dead_on_slope(double d, double theta, struct trace *trace)
{
	return (struct slope_load){.normal = STEP(trace, step_dead_normal, d, theta),
				   .parallel = STEP(trace, step_dead_parallel, d, theta)};
}

struct slope_load gravity_plan_on_slope(double S, double theta, struct trace *trace)
{
	return (struct slope_load){.normal = STEP(trace, step_plan_normal, S, theta),
				   .parallel = STEP(trace, step_plan_parallel, S, theta)};
}
