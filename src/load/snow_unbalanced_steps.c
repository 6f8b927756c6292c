/* SPDX-License-Identifier: MIT */
/* The formulas of snow that the wind has moved over a ridge (ASCE/SEI 7 7.6.1) and of rain on snow
   (7.10). */
#include <math.h>

#include "load/load_steps.h"

#define UNBALANCED_CLAUSES                                                                         \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 7.6.1 and Fig. 7-5",                                   \
		[ASCE7_16] = "ASCE/SEI 7-16 7.6.1 and Fig. 7.6-2",                                 \
		[ASCE7_22] = "ASCE/SEI 7-22 7.6.1"                                                 \
	}

static double leeward_value(const double *in)
{
	return in[0] * in[1];
}

const struct step step_snow_leeward = {
	.name = "snow-leeward",
	.symbol = "pl",
	.unit = UNIT_PSF,
	.title = "leeward snow, simple rafters up to 20 ft on plan, windward none",
	.formula = "Is pg",
	.clause = UNBALANCED_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "the limit of 20 ft is confirmed; 7-22: Is = 1; a reading of 7-16 and 7-22 made "
		"against text and pages",
	.in = {{"Is", UNIT_NONE, "importance factor"}, {"pg", UNIT_PSF, "ground snow load"}},
	.value = leeward_value,
};

static double windward_value(const double *in)
{
	return 0.3 * in[0];
}

const struct step step_snow_windward = {
	.name = "snow-windward",
	.symbol = "pw",
	.unit = UNIT_PSF,
	.title = "windward snow of the unbalanced case",
	.formula = "0.3 ps",
	.clause = UNBALANCED_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"ps", UNIT_PSF, "balanced snow"}},
	.value = windward_value,
};

/* S, the run for a rise of one, is 1/tan theta. */
static double surcharge_value(const double *in)
{
	const double hd = in[0], gamma = in[1], theta = in[2] * RAD_PER_DEG;

	return hd * gamma * sqrt(tan(theta));
}

const struct step step_snow_leeward_surcharge = {
	.name = "snow-leeward-surcharge",
	.symbol = "pd",
	.unit = UNIT_PSF,
	.title = "surcharge beside the ridge, on top of the balanced snow",
	.formula = "hd gamma tan(theta)^(1/2)",
	.clause = UNBALANCED_CLAUSES,
	.confidence = CONFIRMED,
	.note = "printed as hd gamma/S^(1/2) with S the run for a rise of one",
	.in = {{"hd", UNIT_FT, "drift height, fetch eave to ridge of the windward side"},
	       {"gamma", UNIT_PCF, "snow density"},
	       {"theta", UNIT_DEG, "roof angle"}},
	.value = surcharge_value,
};

static double length_value(const double *in)
{
	const double hd = in[0], theta = in[1] * RAD_PER_DEG;

	return 8.0 / 3.0 * hd / sqrt(tan(theta));
}

const struct step step_snow_leeward_length = {
	.name = "snow-leeward-length",
	.symbol = "ld",
	.unit = UNIT_FT,
	.title = "length of the surcharge from the ridge, on plan",
	.formula = "8/3 hd/tan(theta)^(1/2)",
	.clause = UNBALANCED_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "printed as (8/3) hd S^(1/2) with S the run for a rise of one; a reading of 7-16 "
		"and 7-22 made against text and pages",
	.in = {{"hd", UNIT_FT, "drift height"}, {"theta", UNIT_DEG, "roof angle"}},
	.value = length_value,
};

/* W/50 is a number of degrees for W in ft. */
static double rain_on(double pg, double pg_most, double theta_deg, double W_ft, double surcharge)
{
	if (isnan(pg + pg_most + theta_deg + W_ft))
		return (double)NAN;
	return pg > 0.0 && at_most(pg, pg_most) && !at_least(theta_deg, W_ft / 50.0) ? surcharge
										     : 0.0;
}

static double rain_value(const double *in)
{
	return rain_on(in[0], 20.0, in[1], in[2], 5.0);
}

const struct step step_snow_rain = {
	.name = "snow-rain",
	.symbol = "pr",
	.unit = UNIT_PSF,
	.title = "rain-on-snow surcharge, balanced case alone",
	.formula = "5 if 0 < pg <= 20 and theta < W/50, else 0",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 7.10",
		   [ASCE7_16] = "ASCE/SEI 7-16 7.10",
		   [ASCE7_22] = "ASCE/SEI 7-22 7.10"},
	.confidence = ONE_SOURCE,
	.note = "that there is none above 20 psf is confirmed; a reading of 7-16 and 7-22 made "
		"against text and pages",
	.in = {{"pg", UNIT_PSF, "ground snow load, service level"},
	       {"theta", UNIT_DEG, "roof angle"},
	       {"W", UNIT_FT, "eave to ridge on plan"}},
	.value = rain_value,
};

static double rain_7_22_value(const double *in)
{
	return rain_on(in[0], in[1], in[2], in[3], 8.0);
}

const struct step step_snow_rain_7_22 = {
	.name = "snow-rain-7-22",
	.symbol = "pr",
	.unit = UNIT_PSF,
	.title = "rain-on-snow surcharge, balanced case alone",
	.formula = "8 if 0 < pg <= pmmax and theta < W/50, else 0",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 7.10"},
	.confidence = ONE_SOURCE,
	.note = "the 8 psf is confirmed; the limit by a copy and a reading of the page",
	.in = {{"pg", UNIT_PSF, "ground snow load, strength level"},
	       {"pmmax", UNIT_PSF, "upper limit of pm of the risk category"},
	       {"theta", UNIT_DEG, "roof angle"},
	       {"W", UNIT_FT, "eave to ridge on plan"}},
	.value = rain_7_22_value,
};
