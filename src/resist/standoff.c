/* SPDX-License-Identifier: MIT */
/* Couple of a side force on a raised foot: V at height h tips the base about its compressed edge,
   the screw at `arm` from that edge holds it down. Statics; the plate is taken as rigid and the
   wood under its edge as hard enough. */
#include "resist/standoff.h"

#include <math.h>

#include "resist/resist_steps.h"

static double pull_of_couple(const double *in)
{
	const double V = in[0], h = in[1], arm = in[2];

	return V * h / arm;
}

const struct step step_standoff_pull = {
	.name = "standoff-pull", .symbol = "T_M", .unit = UNIT_LB,
	.title = "pull on the screw from the couple of the side force",
	.formula = "V h / arm",
	.clause = { "statics" },
	.confidence = DERIVED,
	.note = "added to the uplift; the base plate must carry the couple",
	.in = { { "V", UNIT_LB, "side force" },
	        { "h", UNIT_IN, "from base plate to the line of the force" },
	        { "arm", UNIT_IN, "from the screw to the compressed edge of the base" } },
	.value = pull_of_couple
};

bool standoff_pull(struct trace *trace, double V, double h, double arm, double *pull)
{
	const bool couple = fabs(V) > 0.0 && fabs(h) > 0.0;

	if (isnan(V) || isnan(h) || (couple && !(arm > 0.0))) /* an arm of NAN too */
		return false;
	*pull = couple ? STEP(trace, step_standoff_pull, fabs(V), fabs(h), arm) : 0.0;
	return true;
}
