/* SPDX-License-Identifier: MIT */
/* General dowel equations with a gap g between the members. AWC Technical Report 12 (2014/2015),
   Table 1-1.

   The yield load P of a mode is the positive root of A P^2 + B P + C = 0: moments between the two
   places where the shear in the fastener is 0. q = Fe D is the bearing resistance per length, M =
   Fyb D^3/6 the moment of a hinge. The equations were written down from memory and derived again by
   statics; with g = 0 they are the six modes of NDS Table 12.3.1A (a test holds that). NDS 12.3.1
   itself asks for faces in contact. */
#include "resist/dowel_gap.h"

#include <math.h>

#include "resist/dowel_inputs.h"
#include "resist/resist_steps.h"

/* Positive root for A > 0, B >= 0, C < 0, in the form that does not cancel when the gap is wide. */
static double root(double A, double B, double C)
{
	return -2.0 * C / (B + sqrt(B * B - 4.0 * A * C));
}

static double hinge(double Fyb, double D)
{
	return Fyb * D * D * D / 6.0;
}

#define GAP_NOTE                                                                                   \
	"the side member holds the head from turning; qm = Fem D, qs = Fes D, M = Fyb D^3/6"

static double gap_ii(const double *in)
{
	const double D = in[0], lm = in[1], ls = in[2], g = in[5], Rd = in[6];
	const double qm = in[3] * D, qs = in[4] * D;

	return root(0.25 / qs + 0.25 / qm, ls / 2.0 + g + lm / 2.0,
	            -qs * ls * ls / 4.0 - qm * lm * lm / 4.0) /
	       Rd;
}

const struct step step_yield_gap_ii = {
	.name = "yield-gap-ii",
	.symbol = "Z_II",
	.unit = UNIT_LB,
	.title = "side load across a gap, fastener turns stiff in both members (mode II)",
	.formula = "P/Rd, A P^2 + B P + C = 0: A = 1/(4 qs) + 1/(4 qm), B = ls/2 + g + lm/2, C = "
	           "-qs ls^2/4 - qm lm^2/4",
	.clause = { "AWC Technical Report 12 Table 1-1" },
	.confidence = DERIVED,
	.note = GAP_NOTE,
	.in = { IN_D, IN_LM, IN_LS, IN_FEM, IN_FES, IN_G, IN_RD },
	.value = gap_ii
};

static double gap_iiim(const double *in)
{
	const double D = in[0], lm = in[1], Fyb = in[4], g = in[5], Rd = in[6];
	const double qm = in[2] * D, qs = in[3] * D;

	return root(0.5 / qs + 0.25 / qm, g + lm / 2.0, -hinge(Fyb, D) - qm * lm * lm / 4.0) / Rd;
}

const struct step step_yield_gap_iiim = {
	.name = "yield-gap-iiim",
	.symbol = "Z_IIIm",
	.unit = UNIT_LB,
	.title = "side load across a gap, one hinge, main member crushes (mode IIIm)",
	.formula = "P/Rd, A P^2 + B P + C = 0: A = 1/(2 qs) + 1/(4 qm), B = g + lm/2, C = -M - qm "
	           "lm^2/4",
	.clause = { "AWC Technical Report 12 Table 1-1" },
	.confidence = DERIVED,
	.note = GAP_NOTE,
	.in = { IN_D, IN_LM, IN_FEM, IN_FES, IN_FYB, IN_G, IN_RD },
	.value = gap_iiim
};

static double gap_iiis(const double *in)
{
	const double D = in[0], ls = in[1], Fyb = in[4], g = in[5], Rd = in[6];
	const double qm = in[2] * D, qs = in[3] * D;

	return root(0.25 / qs + 0.5 / qm, ls / 2.0 + g, -qs * ls * ls / 4.0 - hinge(Fyb, D)) / Rd;
}

const struct step step_yield_gap_iiis = {
	.name = "yield-gap-iiis",
	.symbol = "Z_IIIs",
	.unit = UNIT_LB,
	.title = "side load across a gap, one hinge, side member crushes (mode IIIs)",
	.formula = "P/Rd, A P^2 + B P + C = 0: A = 1/(4 qs) + 1/(2 qm), B = ls/2 + g, C = -qs "
	           "ls^2/4 - M",
	.clause = { "AWC Technical Report 12 Table 1-1" },
	.confidence = DERIVED,
	.note = GAP_NOTE,
	.in = { IN_D, IN_LS, IN_FEM, IN_FES, IN_FYB, IN_G, IN_RD },
	.value = gap_iiis
};

static double gap_iv(const double *in)
{
	const double D = in[0], Fyb = in[3], g = in[4], Rd = in[5];
	const double qm = in[1] * D, qs = in[2] * D;

	return root(0.5 / qs + 0.5 / qm, g, -2.0 * hinge(Fyb, D)) / Rd;
}

const struct step step_yield_gap_iv = {
	.name = "yield-gap-iv", .symbol = "Z_IV", .unit = UNIT_LB,
	.title = "side load across a gap, a hinge in each member (mode IV)",
	.formula = "P/Rd, A P^2 + B P + C = 0: A = 1/(2 qs) + 1/(2 qm), B = g, C = -2 M",
	.clause = { "AWC Technical Report 12 Table 1-1" },
	.confidence = DERIVED,
	.note = GAP_NOTE,
	.in = { IN_D, IN_FEM, IN_FES, IN_FYB, IN_G, IN_RD },
	.value = gap_iv
};

void dowel_yield_gap(struct trace *trace, const struct dowel_joint *j,
                     const double Rd[YIELD_MODE_COUNT], double Z[YIELD_MODE_COUNT])
{
	Z[MODE_II] = STEP(trace, step_yield_gap_ii, j->Dr, j->lm, j->ls, j->Fem, j->Fes, j->gap,
	                  Rd[MODE_II]);
	Z[MODE_IIIM] = STEP(trace, step_yield_gap_iiim, j->Dr, j->lm, j->Fem, j->Fes, j->Fyb,
	                    j->gap, Rd[MODE_IIIM]);
	Z[MODE_IIIS] = STEP(trace, step_yield_gap_iiis, j->Dr, j->ls, j->Fem, j->Fes, j->Fyb,
	                    j->gap, Rd[MODE_IIIS]);
	Z[MODE_IV] =
		STEP(trace, step_yield_gap_iv, j->Dr, j->Fem, j->Fes, j->Fyb, j->gap, Rd[MODE_IV]);
}
