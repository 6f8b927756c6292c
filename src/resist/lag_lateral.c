/* SPDX-License-Identifier: MIT */
/* Lag screw, steel plate, rafter: the joint of the yield equations. NDS-2018 12.1.4.6, 12.3.5.3,
   12.3.7.

   A gap is whatever stands between plate and rafter without bearing: sheathing, covering and air
   counted as a gap are on the safe side, since the three-layer joint is not tabulated. */
#include "resist/lag_lateral.h"

#include <math.h>

#include "resist/resist_steps.h"

static double penetration_factor(const double *in)
{
	const double p = in[0], D = in[1];

	return at_least(p, 4.0 * D) ? fmin(1.0, p / (8.0 * D)) : 0.0;
}

const struct step step_lag_penetration_factor = {
	.name = "lag-penetration-factor",
	.symbol = "p/8D",
	.unit = UNIT_NONE,
	.title = "reduction of a tabulated side load for less than 8 D of penetration",
	.formula = "p/(8 D), at most 1; 0 below 4 D",
	.clause = { "NDS-2018 12.1.4.6, Table 12K footnote 3" },
	.confidence = ONE_SOURCE,
	.note = "for values read from tables made for 8 D; the yield equations take the real "
	        "length instead",
	.in = { { "p", UNIT_IN, "length in the wood without the tip" },
	        { "D", UNIT_IN, "nominal diameter" } },
	.value = penetration_factor
};

double lag_penetration_factor(struct trace *trace, double p, double D)
{
	return STEP(trace, step_lag_penetration_factor, p, D);
}

bool lag_lateral_find(struct trace *trace, const struct lag_screw_geometry *s, double G,
                      double theta, double t, double gap, struct lag_lateral *out)
{
	struct lag_lateral l = { .joint = { .D = s->D,
		                            .Dr = s->Dr,
		                            .lm = s->l_m,
		                            .ls = t,
		                            .Fyb = s->Fyb,
		                            .gap = gap,
		                            .theta = theta } };

	if (!(G > 0.0) || !dowel_bearing_steel(t, &l.joint.Fes))
		return false;
	l.joint.Fem = dowel_bearing_wood(trace, G, s->D, theta);
	if (!dowel_covers(&l.joint))
		return false;
	l.yield = dowel_yield(trace, &l.joint);
	l.permitted = at_least(s->p, lag_penetration_least(trace, s->D));
	*out = l;
	return true;
}
