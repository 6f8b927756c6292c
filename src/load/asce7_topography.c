/* SPDX-License-Identifier: MIT */
/* Topographic factor Kzt, ASCE/SEI 7-10, 7-16 and 7-22 section 26.8. Whether a hill counts at all
   (26.8.1: isolated, twice as high as what stands upwind, house in the upper half, H/Lh at least
   0.2, H at least 15 ft, 60 ft in exposure B) is a judgement on the map and is left to the caller.
 */
#include <math.h>

#include "load/asce7_wind.h"
#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_wind.h"

#define HILL_CLAUSES                                                                               \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 Fig. 26.8-1",                                          \
		[ASCE7_16] = "ASCE/SEI 7-16 Fig. 26.8-1", [ASCE7_22] = "ASCE/SEI 7-22 Fig. 26.8-1" \
	}

/* K1 = k H/Lh, H/Lh not above 0.5. */
static double K1_value(const double *in)
{
	const double k = in[0], H = in[1], Lh = in[2];

	return k * smaller(H / Lh, 0.5);
}

const struct step step_wind_K1 = {
	.name = "wind-K1",
	.symbol = "K1",
	.unit = UNIT_NONE,
	.title = "factor for the shape of the hill",
	.formula = "k min(H/Lh, 0.5)",
	.clause = HILL_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "k in exposure B and D is from memory",
	.in = {{"k", UNIT_NONE, "K1 over H/Lh of the shape and exposure"},
	       {"H", UNIT_FT, "height of the hill"},
	       {"Lh", UNIT_FT, "distance upwind of the crest to half the height"}},
	.value = K1_value,
};

/* K2 = 1 - |x|/(mu Lh), not below 0. Lh stands under the line; it is 2H where H/Lh exceeds 0.5. */
static double K2_value(const double *in)
{
	const double x = in[0], mu = in[1], H = in[2], Lh = in[3];

	return larger(0.0, 1.0 - fabs(x) / (mu * larger(Lh, 2.0 * H)));
}

const struct step step_wind_K2 = {
	.name = "wind-K2",
	.symbol = "K2",
	.unit = UNIT_NONE,
	.title = "factor for the distance from the crest",
	.formula = "max(0, 1 - |x|/(mu max(Lh, 2 H)))",
	.clause = HILL_CLAUSES,
	.confidence = ONE_SOURCE,
	.in = {{"x", UNIT_FT, "distance from the crest"},
	       {"mu", UNIT_NONE, "horizontal attenuation"},
	       {"H", UNIT_FT, "height of the hill"},
	       {"Lh", UNIT_FT, "distance upwind of the crest to half the height"}},
	.value = K2_value,
};

/* K3 = exp(-gamma z/Lh), Lh as in K2. */
static double K3_value(const double *in)
{
	const double gamma = in[0], z = in[1], H = in[2], Lh = in[3];

	return exp(-gamma * z / larger(Lh, 2.0 * H));
}

const struct step step_wind_K3 = {
	.name = "wind-K3",
	.symbol = "K3",
	.unit = UNIT_NONE,
	.title = "factor for the height above the ground",
	.formula = "exp(-gamma z/max(Lh, 2 H))",
	.clause = HILL_CLAUSES,
	.confidence = ONE_SOURCE,
	.in = {{"gamma", UNIT_NONE, "height attenuation"},
	       {"z", UNIT_FT, "height above the ground at the house"},
	       {"H", UNIT_FT, "height of the hill"},
	       {"Lh", UNIT_FT, "distance upwind of the crest to half the height"}},
	.value = K3_value,
};

static double Kzt_value(const double *in)
{
	const double root = 1.0 + in[0] * in[1] * in[2];

	return root * root;
}

const struct step step_wind_Kzt = {
	.name = "wind-Kzt",
	.symbol = "Kzt",
	.unit = UNIT_NONE,
	.title = "topographic factor",
	.formula = "(1 + K1 K2 K3)^2",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Eq. 26.8-1",
		   [ASCE7_16] = "ASCE/SEI 7-16 Eq. 26.8-1",
		   [ASCE7_22] = "ASCE/SEI 7-22 Eq. 26.8-1"},
	.confidence = ONE_SOURCE,
	.in = {{"K1", UNIT_NONE, "factor for the shape of the hill"},
	       {"K2", UNIT_NONE, "factor for the distance from the crest"},
	       {"K3", UNIT_NONE, "factor for the height above the ground"}},
	.value = Kzt_value,
};

static const char *shape_key(enum wind_hill_shape shape)
{
	switch (shape) {
	case HILL_RIDGE:
		return "ridge";
	case HILL_ESCARPMENT:
		return "escarpment";
	case HILL_AXISYMMETRIC:
		return "hill";
	case HILL_SHAPE_COUNT:
		break;
	}
	return "";
}

double asce7_topographic_factor(enum edition edition, const struct wind_hill *hill,
				struct trace *trace)
{
	const struct wind_topography_row *row =
		wind_topography_row(shape_key(hill->shape), hill->exposure);
	double K1, K2, K3;

	(void)edition; /* the figure is the same in all of them */
	if (row == NULL || !(hill->Lh > 0.0))
		return (double)NAN;
	K1 = STEP(trace, step_wind_K1, row->K1_over_HLh, hill->H, hill->Lh);
	K2 = STEP(trace, step_wind_K2, hill->x, hill->x > 0.0 ? row->mu_downwind : row->mu_upwind,
		  hill->H, hill->Lh);
	K3 = STEP(trace, step_wind_K3, row->gamma, hill->z, hill->H, hill->Lh);
	return STEP(trace, step_wind_Kzt, K1, K2, K3);
}
