/* SPDX-License-Identifier: MIT */
/* Lateral stability of a bending member. NDS-2018 3.3.3, Table 3.3.3 (effective length, single
   span).

   Net uplift puts the lower edge of a rafter in compression, which nothing holds where there is no
   ceiling: then lu is the whole slope length. "Other" is never shorter than any row of the table,
   cantilevers and points braced where they are loaded included, so it is the safe choice whenever
   the loading has no row of its own. */
#include <math.h>

#include "resist/member.h"
#include "resist/resist_steps.h"

#define IN_LU { "lu", UNIT_IN, "length without side support" }
#define IN_DEPTH { "d", UNIT_IN, "depth" }
#define IN_BREADTH { "b", UNIT_IN, "breadth" }

static double le_uniform(const double *in)
{
	const double lu = in[0], d = in[1];

	return at_least(lu, 7.0 * d) ? 1.63 * lu + 3.0 * d : 2.06 * lu;
}

const struct step step_effective_length_uniform = {
	.name = "effective-length-uniform", .symbol = "le", .unit = UNIT_IN,
	.title = "effective unbraced length, uniform load",
	.formula = "2.06 lu for lu/d < 7, else 1.63 lu + 3 d",
	.clause = { "NDS-2018 Table 3.3.3" },
	.confidence = ONE_SOURCE,
	.in = { IN_LU, IN_DEPTH },
	.value = le_uniform
};

static double le_midspan(const double *in)
{
	const double lu = in[0], d = in[1];

	return at_least(lu, 7.0 * d) ? 1.37 * lu + 3.0 * d : 1.80 * lu;
}

const struct step step_effective_length_midspan = {
	.name = "effective-length-midspan", .symbol = "le", .unit = UNIT_IN,
	.title = "effective unbraced length, one load at midspan",
	.formula = "1.80 lu for lu/d < 7, else 1.37 lu + 3 d",
	.clause = { "NDS-2018 Table 3.3.3" },
	.confidence = CONFIRMED,
	.in = { IN_LU, IN_DEPTH },
	.value = le_midspan
};

static double le_other(const double *in)
{
	const double lu = in[0], d = in[1];

	if (!at_least(lu, 7.0 * d))
		return 2.06 * lu;
	return at_most(lu, 14.3 * d) ? 1.63 * lu + 3.0 * d : 1.84 * lu;
}

const struct step step_effective_length_other = {
	.name = "effective-length-other", .symbol = "le", .unit = UNIT_IN,
	.title = "effective unbraced length, any other loading",
	.formula = "2.06 lu for lu/d < 7, 1.63 lu + 3 d to 14.3, 1.84 lu above",
	.clause = { "NDS-2018 Table 3.3.3 footnote 1" },
	.confidence = ONE_SOURCE,
	.in = { IN_LU, IN_DEPTH },
	.value = le_other
};

static double slenderness(const double *in)
{
	return sqrt(in[0] * in[1] / (in[2] * in[2]));
}

const struct step step_beam_slenderness = {
	.name = "beam-slenderness", .symbol = "RB", .unit = UNIT_NONE,
	.title = "slenderness of a bending member",
	.formula = "sqrt(le d / b^2)",
	.clause = { "NDS-2018 3.3.3.6, Eq. 3.3-5" },
	.confidence = CONFIRMED,
	.note = "not above 50",
	.in = { { "le", UNIT_IN, "effective length" }, IN_DEPTH, IN_BREADTH },
	.value = slenderness
};

static double critical_stress(const double *in)
{
	return 1.20 * in[0] / (in[1] * in[1]);
}

const struct step step_beam_critical_stress = {
	.name = "beam-critical-stress",
	.symbol = "FbE",
	.unit = UNIT_PSI,
	.title = "critical buckling stress of a bending member",
	.formula = "1.20 E'min / RB^2",
	.clause = { "NDS-2018 3.3.3.8" },
	.confidence = CONFIRMED,
	.in = { { "E'min", UNIT_PSI, "adjusted modulus for stability" },
	        { "RB", UNIT_NONE, "slenderness" } },
	.value = critical_stress
};

static double stability_factor(const double *in)
{
	const double a = in[0] / in[1], h = (1.0 + a) / 1.9;

	return h - sqrt(h * h - a / 0.95);
}

const struct step step_beam_stability = {
	.name = "beam-stability",
	.symbol = "CL",
	.unit = UNIT_NONE,
	.title = "beam stability factor",
	.formula = "(1 + a)/1.9 - sqrt(((1 + a)/1.9)^2 - a/0.95), a = FbE/F*b",
	.clause = { "NDS-2018 3.3.3.8, Eq. 3.3-6" },
	.confidence = CONFIRMED,
	.in = { { "FbE", UNIT_PSI, "critical buckling stress" },
	        { "F*b", UNIT_PSI, "bending value with all factors but CL" } },
	.value = stability_factor
};

static double effective_length(struct trace *trace, enum unbraced_load load, double lu, double d)
{
	switch (load) {
	case UNBRACED_UNIFORM:
		return STEP(trace, step_effective_length_uniform, lu, d);
	case UNBRACED_POINT_MIDSPAN:
		return STEP(trace, step_effective_length_midspan, lu, d);
	case UNBRACED_OTHER:
		break;
	}
	return STEP(trace, step_effective_length_other, lu, d);
}

struct stability member_stability(struct trace *trace, double b, double d, double lu,
                                  enum unbraced_load load, double Emin_prime, double Fb_star)
{
	struct stability s = { .lu = lu, .FbE = (double)INFINITY, .CL = 1.0, .permitted = true };

	if (!(lu > 0.0) || at_most(d, b))
		return s;
	s.le = effective_length(trace, load, lu, d);
	s.RB = STEP(trace, step_beam_slenderness, s.le, d, b);
	s.FbE = STEP(trace, step_beam_critical_stress, Emin_prime, s.RB);
	s.CL = STEP(trace, step_beam_stability, s.FbE, Fb_star);
	s.permitted = at_most(s.RB, 50.0);
	return s;
}
