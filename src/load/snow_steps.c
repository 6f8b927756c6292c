/* SPDX-License-Identifier: MIT */
/* The formulas of roof snow: ASCE/SEI 7-10, 7-16 and 7-22 chapter 7. asce7_snow.c puts them
   together. */
#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"

/* 7-10, 7-16: service-level pg with an importance factor. */
static double pf_value(const double *in)
{
	return 0.7 * in[0] * in[1] * in[2] * in[3];
}

const struct step step_snow_flat_roof = {
	.name = "snow-flat-roof",
	.symbol = "pf",
	.unit = UNIT_PSF,
	.title = "flat roof snow load, on plan",
	.formula = "0.7 Ce Ct Is pg",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Eq. 7.3-1", [ASCE7_16] = "ASCE/SEI 7-16 Eq. 7.3-1"},
	.confidence = CONFIRMED,
	.in = {{"Ce", UNIT_NONE, "exposure factor"},
	       {"Ct", UNIT_NONE, "thermal factor"},
	       {"Is", UNIT_NONE, "importance factor"},
	       {"pg", UNIT_PSF, "ground snow load, service level"}},
	.value = pf_value,
};

static double pf_7_22_value(const double *in)
{
	return 0.7 * in[0] * in[1] * in[2];
}

const struct step step_snow_flat_roof_7_22 = {
	.name = "snow-flat-roof-7-22",
	.symbol = "pf",
	.unit = UNIT_PSF,
	.title = "flat roof snow load, on plan, strength level",
	.formula = "0.7 Ce Ct pg",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 Eq. 7.3-1"},
	.confidence = CONFIRMED,
	.note = "pg is strength level and mapped for each risk category",
	.in = {{"Ce", UNIT_NONE, "exposure factor"},
	       {"Ct", UNIT_NONE, "thermal factor"},
	       {"pg", UNIT_PSF, "ground snow load, strength level"}},
	.value = pf_7_22_value,
};

static double Cs_value(const double *in)
{
	const double theta = in[0], x0 = in[1], x1 = in[2];

	return smaller(1.0, larger(0.0, (x1 - theta) / (x1 - x0)));
}

const struct step step_snow_slope_factor = {
	.name = "snow-slope-factor",
	.symbol = "Cs",
	.unit = UNIT_NONE,
	.title = "roof slope factor",
	.formula = "(x1 - theta)/(x1 - x0), 1 at most, 0 at least",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Fig. 7-2",
		   [ASCE7_16] = "ASCE/SEI 7-16 Fig. 7.4-1",
		   [ASCE7_22] = "ASCE/SEI 7-22 Fig. 7.4-1"},
	.confidence = ONE_SOURCE,
	.note = "one published value confirms the slippery warm line; the other corners of the "
		"curves are from memory",
	.in = {{"theta", UNIT_DEG, "roof angle"},
	       {"x0", UNIT_DEG, "angle up to which Cs is 1"},
	       {"x1", UNIT_DEG, "angle from which Cs is 0"}},
	.value = Cs_value,
};

static double ps_value(const double *in)
{
	return in[0] * in[1];
}

const struct step step_snow_sloped_roof = {
	.name = "snow-sloped-roof",
	.symbol = "ps",
	.unit = UNIT_PSF,
	.title = "sloped roof snow load, on plan",
	.formula = "Cs pf",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Eq. 7.4-1",
		   [ASCE7_16] = "ASCE/SEI 7-16 Eq. 7.4-1",
		   [ASCE7_22] = "ASCE/SEI 7-22 Eq. 7.4-1"},
	.confidence = CONFIRMED,
	.in = {{"Cs", UNIT_NONE, "roof slope factor"}, {"pf", UNIT_PSF, "flat roof snow load"}},
	.value = ps_value,
};

static double pm_value(const double *in)
{
	return in[0] * smaller(in[1], 20.0);
}

const struct step step_snow_minimum = {
	.name = "snow-minimum",
	.symbol = "pm",
	.unit = UNIT_PSF,
	.title = "least roof snow load of low slopes, a case of its own",
	.formula = "Is min(pg, 20)",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 7.3.4",
		   [ASCE7_16] = "ASCE/SEI 7-16 7.3.4",
		   [ASCE7_22] = "ASCE/SEI 7-22 7.3.3"},
	.confidence = CONFIRMED,
	.note = "pg above 20 psf and the 15 degree limit are confirmed, the rest is from memory",
	.in = {{"Is", UNIT_NONE, "importance factor"},
	       {"pg", UNIT_PSF, "ground snow load, service level"}},
	.value = pm_value,
};

static double pm_7_22_value(const double *in)
{
	return smaller(in[0], in[1]);
}

const struct step step_snow_minimum_7_22 = {
	.name = "snow-minimum-7-22",
	.symbol = "pm",
	.unit = UNIT_PSF,
	.title = "least roof snow load of low slopes, a case of its own",
	.formula = "min(pg, pmmax)",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 7.3.3 and Table 7.3-4"},
	.confidence = ONE_SOURCE,
	.in = {{"pg", UNIT_PSF, "ground snow load, strength level"},
	       {"pmmax", UNIT_PSF, "upper limit of the risk category"}},
	.value = pm_7_22_value,
};

static double gamma_value(const double *in)
{
	return smaller(0.13 * in[0] + 14.0, 30.0);
}

const struct step step_snow_density = {
	.name = "snow-density",
	.symbol = "gamma",
	.unit = UNIT_PCF,
	.title = "snow density",
	.formula = "0.13 pg + 14, 30 at most",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Eq. 7.7-1",
		   [ASCE7_16] = "ASCE/SEI 7-16 Eq. 7.7-1",
		   [ASCE7_22] = "ASCE/SEI 7-22 Eq. 7.7-1"},
	.confidence = CONFIRMED,
	.in = {{"pg", UNIT_PSF, "ground snow load"}},
	.value = gamma_value,
};

/* hd = 0.43 lu^(1/3) (pg + 10)^(1/4) - 1.5; lu not below 20 ft. Later editions allow less for
   shorter fetches; that relief is not taken. */
static double hd_7_10_value(const double *in)
{
	const double lu = larger(in[0], 20.0), pg = in[1];

	return larger(0.0, 0.43 * cbrt(lu) * pow(pg + 10.0, 0.25) - 1.5);
}

const struct step step_snow_drift_height_7_10 = {
	.name = "snow-drift-height-7-10",
	.symbol = "hd",
	.unit = UNIT_FT,
	.title = "drift height",
	.formula = "0.43 max(lu, 20)^(1/3) (pg + 10)^(1/4) - 1.5",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Fig. 7-9"},
	.confidence = CONFIRMED,
	.note = "the floor of 20 ft is on the safe side",
	.in = {{"lu", UNIT_FT, "fetch: length of roof the snow comes from"},
	       {"pg", UNIT_PSF, "ground snow load, service level"}},
	.value = hd_7_10_value,
};

static double hd_value(const double *in)
{
	return sqrt(in[0]) * hd_7_10_value(in + 1);
}

const struct step step_snow_drift_height = {
	.name = "snow-drift-height",
	.symbol = "hd",
	.unit = UNIT_FT,
	.title = "drift height",
	.formula = "Is^(1/2) (0.43 max(lu, 20)^(1/3) (pg + 10)^(1/4) - 1.5)",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Fig. 7.6-1"},
	.confidence = CONFIRMED,
	.note = "the root of Is is from memory; the floor of 20 ft is on the safe side",
	.in = {{"Is", UNIT_NONE, "importance factor"},
	       {"lu", UNIT_FT, "fetch: length of roof the snow comes from"},
	       {"pg", UNIT_PSF, "ground snow load, service level"}},
	.value = hd_value,
};

static double hd_7_22_value(const double *in)
{
	const double pg = in[0], lu = in[1], W2 = in[2], gamma = in[3];

	return 1.5 * sqrt(pow(pg, 0.74) * pow(lu, 0.70) * pow(W2, 1.7) / gamma);
}

const struct step step_snow_drift_height_7_22 = {
	.name = "snow-drift-height-7-22",
	.symbol = "hd",
	.unit = UNIT_FT,
	.title = "drift height",
	.formula = "1.5 (pg^0.74 lu^0.70 W2^1.7/gamma)^0.5",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 Eq. 7.6-1"},
	.confidence = ONE_SOURCE,
	.in = {{"pg", UNIT_PSF, "ground snow load, strength level"},
	       {"lu", UNIT_FT, "fetch: length of roof the snow comes from"},
	       {"W2", UNIT_NONE, "winter wind parameter, 0.25 to 0.65"},
	       {"gamma", UNIT_PCF, "snow density"}},
	.value = hd_7_22_value,
};
