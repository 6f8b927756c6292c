/* SPDX-License-Identifier: MIT */
/* The six yield modes of a dowel-type fastener in single shear, faces touching.

   NDS-2018 12.3.1, Table 12.3.1A. The diameter in the modes is the one that yields: the root of a
   thread (12.3.7). Not covered: double shear, fasteners above 1 in. */
#include "resist/dowel.h"

#include <assert.h>
#include <math.h>

#include "resist/dowel_gap.h"
#include "resist/dowel_inputs.h"
#include "resist/dowel_reduction.h"
#include "resist/resist_steps.h"

static double bearing(const double *in)
{
	return in[0] * in[1] * in[2] / in[3]; /* D l Fe / Rd */
}

const struct step step_yield_im = {
	.name = "yield-im", .symbol = "Z_Im", .unit = UNIT_LB,
	.title = "side load, main member crushes (mode Im)",
	.formula = "D lm Fem / Rd",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_LM, IN_FEM, IN_RD },
	.value = bearing
};

const struct step step_yield_is = {
	.name = "yield-is", .symbol = "Z_Is", .unit = UNIT_LB,
	.title = "side load, side member crushes (mode Is)",
	.formula = "D ls Fes / Rd",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_LS, IN_FES, IN_RD },
	.value = bearing
};

static double mode_ii(const double *in)
{
	const double D = in[0], lm = in[1], ls = in[2], Fem = in[3], Fes = in[4], Rd = in[5];
	const double Re = Fem / Fes, Rt = lm / ls;
	const double root =
		sqrt(Re + 2.0 * Re * Re * (1.0 + Rt + Rt * Rt) + Rt * Rt * Re * Re * Re);
	const double k1 = (root - Re * (1.0 + Rt)) / (1.0 + Re);

	return k1 * D * ls * Fes / Rd;
}

const struct step step_yield_ii = {
	.name = "yield-ii",
	.symbol = "Z_II",
	.unit = UNIT_LB,
	.title = "side load, fastener turns stiff in both members (mode II)",
	.formula = "k1 D ls Fes / Rd, k1 = (sqrt(Re + 2 Re^2 (1 + Rt + Rt^2) + Rt^2 Re^3) - Re (1 "
	           "+ Rt)) / (1 + Re), "
		   "Re = Fem/Fes, Rt = lm/ls",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_LM, IN_LS, IN_FEM, IN_FES, IN_RD },
	.value = mode_ii
};

/* (1 + 2 Re) under the root belongs to IIIm, (2 + Re) to IIIs: the general dowel equations show
   which is which. */
static double mode_iiim(const double *in)
{
	const double D = in[0], lm = in[1], Fem = in[2], Fes = in[3], Fyb = in[4], Rd = in[5];
	const double Re = Fem / Fes;
	const double k2 = -1.0 + sqrt(2.0 * (1.0 + Re) +
	                              2.0 * Fyb * (1.0 + 2.0 * Re) * D * D / (3.0 * Fem * lm * lm));

	return k2 * D * lm * Fem / ((1.0 + 2.0 * Re) * Rd);
}

const struct step step_yield_iiim = {
	.name = "yield-iiim",
	.symbol = "Z_IIIm",
	.unit = UNIT_LB,
	.title = "side load, one hinge, main member crushes (mode IIIm)",
	.formula = "k2 D lm Fem / ((1 + 2 Re) Rd), k2 = -1 + sqrt(2 (1 + Re) + 2 Fyb (1 + 2 Re) "
	           "D^2 / (3 Fem lm^2)), "
		   "Re = Fem/Fes",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_LM, IN_FEM, IN_FES, IN_FYB, IN_RD },
	.value = mode_iiim
};

static double mode_iiis(const double *in)
{
	const double D = in[0], ls = in[1], Fem = in[2], Fes = in[3], Fyb = in[4], Rd = in[5];
	const double Re = Fem / Fes;
	const double k3 = -1.0 + sqrt(2.0 * (1.0 + Re) / Re +
	                              2.0 * Fyb * (2.0 + Re) * D * D / (3.0 * Fem * ls * ls));

	return k3 * D * ls * Fem / ((2.0 + Re) * Rd);
}

const struct step step_yield_iiis = {
	.name = "yield-iiis",
	.symbol = "Z_IIIs",
	.unit = UNIT_LB,
	.title = "side load, one hinge, side member crushes (mode IIIs)",
	.formula = "k3 D ls Fem / ((2 + Re) Rd), k3 = -1 + sqrt(2 (1 + Re)/Re + 2 Fyb (2 + Re) D^2 "
	           "/ (3 Fem ls^2)), "
		   "Re = Fem/Fes",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_LS, IN_FEM, IN_FES, IN_FYB, IN_RD },
	.value = mode_iiis
};

static double mode_iv(const double *in)
{
	const double D = in[0], Fem = in[1], Fes = in[2], Fyb = in[3], Rd = in[4];

	return D * D / Rd * sqrt(2.0 * Fem * Fyb / (3.0 * (1.0 + Fem / Fes)));
}

const struct step step_yield_iv = {
	.name = "yield-iv", .symbol = "Z_IV", .unit = UNIT_LB,
	.title = "side load, a hinge in each member (mode IV)",
	.formula = "D^2/Rd sqrt(2 Fem Fyb / (3 (1 + Re))), Re = Fem/Fes",
	.clause = { "NDS-2018 Table 12.3.1A" },
	.confidence = CONFIRMED,
	.in = { IN_D, IN_FEM, IN_FES, IN_FYB, IN_RD },
	.value = mode_iv
};

const char *yield_mode_text(enum yield_mode mode)
{
	static const char *const text[YIELD_MODE_COUNT] = {
		"Im", "Is", "II", "IIIm", "IIIs", "IV"
	};

	return text[mode];
}

static bool positive(double x)
{
	return isfinite(x) && x > 0.0;
}

bool dowel_covers(const struct dowel_joint *j)
{
	return positive(j->D) && at_most(j->D, 1.0 * M_PER_IN) && positive(j->Dr) &&
	       at_most(j->Dr, j->D) && positive(j->lm) && positive(j->ls) && positive(j->Fem) &&
	       positive(j->Fes) && positive(j->Fyb) && isfinite(j->gap) && j->gap >= 0.0 &&
	       j->theta >= 0.0 && at_most(j->theta, 90.0 * RAD_PER_DEG);
}

struct dowel_yield dowel_yield(struct trace *trace, const struct dowel_joint *j)
{
	struct dowel_yield y = { .mode = MODE_IM };
	const double *Rd = y.Rd;

	assert(dowel_covers(j));
	dowel_reduction(trace, j, y.Rd);
	y.Z[MODE_IM] = STEP(trace, step_yield_im, j->Dr, j->lm, j->Fem, Rd[MODE_IM]);
	y.Z[MODE_IS] = STEP(trace, step_yield_is, j->Dr, j->ls, j->Fes, Rd[MODE_IS]);
	if (j->gap > 0.0) {
		dowel_yield_gap(trace, j, Rd, y.Z);
	} else {
		y.Z[MODE_II] = STEP(trace, step_yield_ii, j->Dr, j->lm, j->ls, j->Fem, j->Fes,
		                    Rd[MODE_II]);
		y.Z[MODE_IIIM] = STEP(trace, step_yield_iiim, j->Dr, j->lm, j->Fem, j->Fes, j->Fyb,
		                      Rd[MODE_IIIM]);
		y.Z[MODE_IIIS] = STEP(trace, step_yield_iiis, j->Dr, j->ls, j->Fem, j->Fes, j->Fyb,
		                      Rd[MODE_IIIS]);
		y.Z[MODE_IV] =
			STEP(trace, step_yield_iv, j->Dr, j->Fem, j->Fes, j->Fyb, Rd[MODE_IV]);
	}
	for (enum yield_mode m = MODE_IS; m < YIELD_MODE_COUNT; m++)
		if (y.Z[m] < y.Z[y.mode])
			y.mode = m;
	y.value = y.Z[y.mode];
	return y;
}

static double adjusted(const double *in)
{
	return in[0] * in[1] * in[2] * in[3] * in[4] * in[5] * in[6];
}

const struct step step_lateral_adjusted = {
	.name = "lateral-adjusted", .symbol = "Z'", .unit = UNIT_LB,
	.title = "adjusted side load of one screw",
	.formula = "Z CD CM Ct Cg C_delta Ceg",
	.clause = { "NDS-2018 Table 11.3.1" },
	.confidence = ONE_SOURCE,
	.in = { { "Z", UNIT_LB, "reference side load" },
	        { "CD", UNIT_NONE, "load duration" },
	        { "CM", UNIT_NONE, "wet service" },
	        { "Ct", UNIT_NONE, "temperature" },
	        { "Cg", UNIT_NONE, "several in a row" },
	        { "C_delta", UNIT_NONE, "spacing and end distance" },
	        { "Ceg", UNIT_NONE, "end grain" } },
	.value = adjusted
};

double lateral_adjusted(struct trace *trace, double Z, double CD, double CM, double Ct, double Cg,
                        double C_delta, double Ceg)
{
	return STEP(trace, step_lateral_adjusted, Z, CD, CM, Ct, Cg, C_delta, Ceg);
}
