/* SPDX-License-Identifier: MIT */
/* Lag screw under pull and side load at once. NDS-2018 12.4.1, Eq. 12.4-1: capacity along the
   resultant, whose angle is measured from the wood surface. Several screws share alike: one row
   along the grain, the base plate stiff. */
#include "resist/combined.h"

#include <assert.h>
#include <math.h>

#include "resist/resist_steps.h"

static double resultant(const double *in)
{
	return hypot(in[0], in[1]);
}

const struct step step_combined_resultant = {
	.name = "combined-resultant", .symbol = "R", .unit = UNIT_LB,
	.title = "pull and side load of one screw as one force",
	.formula = "sqrt(T^2 + V^2)",
	.clause = { "statics" },
	.confidence = DERIVED,
	.in = { { "T", UNIT_LB, "pull" }, { "V", UNIT_LB, "side load" } },
	.value = resultant
};

static double angle(const double *in)
{
	return atan2(in[0], fabs(in[1])) * (180.0 / 3.14159265358979323846);
}

const struct step step_combined_angle = {
	.name = "combined-angle", .symbol = "alpha", .unit = UNIT_DEG,
	.title = "angle of the force to the wood surface",
	.formula = "atan(T / V)",
	.clause = { "NDS-2018 12.4.1" },
	.confidence = DERIVED,
	.in = { { "T", UNIT_LB, "pull" }, { "V", UNIT_LB, "side load" } },
	.value = angle
};

static double capacity(const double *in)
{
	const double Wp = in[0], Z = in[1], alpha = in[2] * RAD_PER_DEG;
	const double c = cos(alpha), s = sin(alpha);

	return Wp * Z / (Wp * c * c + Z * s * s);
}

const struct step step_combined_capacity = {
	.name = "combined-capacity", .symbol = "Z'alpha", .unit = UNIT_LB,
	.title = "capacity of one screw along the force",
	.formula = "W'p Z' / (W'p cos^2 alpha + Z' sin^2 alpha)",
	.clause = { "NDS-2018 12.4.1, Eq. 12.4-1" },
	.confidence = ONE_SOURCE,
	.note = "alpha 0 gives Z', 90 deg gives W'p",
	.in = { { "W'p", UNIT_LB, "withdrawal of one screw, adjusted" },
	        { "Z'", UNIT_LB, "side load of one screw, adjusted" },
	        { "alpha", UNIT_DEG, "angle of the force to the wood surface" } },
	.value = capacity
};

double combined_capacity(struct trace *trace, double Wp, double Z, double alpha)
{
	return STEP(trace, step_combined_capacity, Wp, Z, alpha);
}

struct combined combined_check(struct trace *trace, double pull, double side, int n, double Wp,
                               double Z)
{
	struct combined c = { .pull = fmax(0.0, pull) / n, .side = fabs(side) / n };

	assert(n >= 1 && isfinite(pull) && isfinite(side));
	c.resultant = STEP(trace, step_combined_resultant, c.pull, c.side);
	c.alpha = STEP(trace, step_combined_angle, c.pull, c.side);
	/* a screw that may not be counted at all has a capacity of 0 in one direction: then nothing
	   is carried in either */
	c.capacity = Wp > 0.0 && Z > 0.0 ? combined_capacity(trace, Wp, Z, c.alpha) : 0.0;
	c.ratio = c.resultant > 0.0 ? c.resultant / c.capacity : 0.0;
	return c;
}
