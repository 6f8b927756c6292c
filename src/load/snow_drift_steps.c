/* SPDX-License-Identifier: MIT */
/* Steps of ASCE/SEI 7 7.4.5, 7.5, 7.7.1, 7.8 and 7.9: drifts, sliding snow, ice, partial loading.
 */
#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"

#define THREE_CLAUSES(n)                                                                           \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 " n, [ASCE7_16] = "ASCE/SEI 7-16 " n,                  \
		[ASCE7_22] = "ASCE/SEI 7-22 " n                                                    \
	}

static double hb_value(const double *in)
{
	return in[0] / in[1];
}

const struct step step_snow_balanced_height = {
	.name = "snow-balanced-height",
	.symbol = "hb",
	.unit = UNIT_FT,
	.title = "height of the balanced snow",
	.formula = "ps/gamma",
	.clause = THREE_CLAUSES("7.7.1"),
	.confidence = CONFIRMED,
	.in = {{"ps", UNIT_PSF, "balanced snow"}, {"gamma", UNIT_PCF, "snow density"}},
	.value = hb_value,
};

static double projection_value(const double *in)
{
	return 0.75 * in[0];
}

const struct step step_snow_projection_height = {
	.name = "snow-projection-height",
	.symbol = "hd,p",
	.unit = UNIT_FT,
	.title = "drift height at a roof projection",
	.formula = "0.75 hd",
	.clause = THREE_CLAUSES("7.8"),
	.confidence = ONE_SOURCE,
	.note = "hd with lu the longer length of roof upwind or downwind; a reading of 7-16 and "
		"7-22 made against text and pages",
	.in = {{"hd", UNIT_FT, "drift height"}},
	.value = projection_value,
};

static double load_value(const double *in)
{
	return in[2] * smaller(in[0], in[1]);
}

const struct step step_snow_drift_load = {
	.name = "snow-drift-load",
	.symbol = "pd",
	.unit = UNIT_PSF,
	.title = "drift load at its highest, on top of the balanced snow",
	.formula = "gamma min(hd,p, hc)",
	.clause = THREE_CLAUSES("7.7.1"),
	.confidence = CONFIRMED,
	.in = {{"hd,p", UNIT_FT, "drift height"},
	       {"hc", UNIT_FT, "clear height above the balanced snow"},
	       {"gamma", UNIT_PCF, "snow density"}},
	.value = load_value,
};

static double width_value(const double *in)
{
	const double hd = in[0], hc = in[1];

	if (hd <= hc)
		return 4.0 * hd;
	return smaller(4.0 * hd * hd / hc, 8.0 * hc);
}

const struct step step_snow_drift_width = {
	.name = "snow-drift-width",
	.symbol = "w",
	.unit = UNIT_FT,
	.title = "width of the drift",
	.formula = "4 hd,p; where hd,p is above hc: 4 hd,p^2/hc, 8 hc at most",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 7.7.1", [ASCE7_16] = "ASCE/SEI 7-16 7.7.1"},
	.confidence = ONE_SOURCE,
	.note = "a reading of 7-16 and 7-22 made against text and pages",
	.in = {{"hd,p", UNIT_FT, "drift height"},
	       {"hc", UNIT_FT, "clear height above the balanced snow"}},
	.value = width_value,
};

static double windward_width_value(const double *in)
{
	return 8.0 * in[0];
}

const struct step step_snow_drift_width_7_22 = {
	.name = "snow-drift-width-7-22",
	.symbol = "w",
	.unit = UNIT_FT,
	.title = "width of the drift at a projection, a windward one",
	.formula = "8 hd,p",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 7.7.1"},
	.confidence = ONE_SOURCE,
	.note = "a reading made against text and pages (C7.14, Example 3); where hd,p is above hc "
		"the width of the whole drift is kept (safe side)",
	.in = {{"hd,p", UNIT_FT, "drift height"}},
	.value = windward_width_value,
};

static double slide_value(const double *in)
{
	return 0.4 * in[0] * in[1] * smaller(in[2], 15.0) / 15.0;
}

const struct step step_snow_sliding = {
	.name = "snow-sliding",
	.symbol = "ws",
	.unit = UNIT_PLF,
	.title = "snow that slides onto a lower roof, per length of eave",
	.formula = "0.4 pf W min(b, 15)/15",
	.clause = THREE_CLAUSES("7.9"),
	.confidence = ONE_SOURCE,
	.note = "with the balanced snow of the lower roof alone; a reading of 7-16 and 7-22 made "
		"against text and pages",
	.in = {{"pf", UNIT_PSF, "flat roof snow of the upper roof"},
	       {"W", UNIT_FT, "eave to ridge of the upper roof on plan"},
	       {"b", UNIT_FT, "width of the lower roof"}},
	.value = slide_value,
};

static double held_value(const double *in)
{
	return in[0] * in[1] * sin(in[2] * RAD_PER_DEG);
}

const struct step step_snow_held = {
	.name = "snow-held",
	.symbol = "ph",
	.unit = UNIT_PLF,
	.title = "down-slope force of the snow above an array on a slippery roof, per length of "
		 "its upper edge",
	.formula = "ps L sin(theta)",
	.clause = {[EDITION_ANY] =
			   "statics, no friction, as snow guards are designed (common practice)"},
	.confidence = COMMON_PRACTICE,
	.in = {{"ps", UNIT_PSF, "snow on the roof above, on plan"},
	       {"L", UNIT_FT, "length of that roof up to the ridge, on plan"},
	       {"theta", UNIT_DEG, "roof angle"}},
	.value = held_value,
};

static double slide_off_value(const double *in)
{
	return in[0] * in[1] / 2.0;
}

const struct step step_snow_slide_off = {
	.name = "snow-slide-off",
	.symbol = "pso",
	.unit = UNIT_PSF,
	.title = "snow slid off a tilted collector, on a strip of roof 2 ft wide at its foot",
	.formula = "ps l/2",
	.clause = THREE_CLAUSES("C7.8"),
	.confidence = FROM_MEMORY,
	.note = "commentary; ps by the `cold roof, all other surfaces` curve",
	.in = {{"ps", UNIT_PSF, "snow on the collector, on plan"},
	       {"l", UNIT_FT, "length of the collector on plan, foot to top"}},
	.value = slide_off_value,
};

static double twice(const double *in)
{
	return 2.0 * in[0];
}

const struct step step_snow_ice_dam = {
	.name = "snow-ice-dam",
	.symbol = "pi",
	.unit = UNIT_PSF,
	.title = "ice and snow on the eave overhang of a warm roof, with dead load only",
	.formula = "2 pf",
	.clause = THREE_CLAUSES("7.4.5"),
	.confidence = FROM_MEMORY,
	.note = "heated below: unventilated with R under 30, ventilated with R under 20",
	.in = {{"pf", UNIT_PSF, "flat roof snow"}},
	.value = twice,
};

static double share_value(const double *in)
{
	return larger(1.0, in[0] / in[1]);
}

const struct step step_snow_partial = {
	.name = "snow-partial",
	.symbol = "k7.5",
	.unit = UNIT_NONE,
	.title = "snow that a foot takes when some spans of the rail carry half, over that of even "
		 "snow",
	.formula = "b7.5/b, 1 at least",
	.clause = THREE_CLAUSES("7.5, elastic beam theory"),
	.confidence = FROM_MEMORY,
	.note = "bounds every pattern of full and half balanced snow",
	.in = {{"b7.5", UNIT_FT, "reaction width of the worst pattern"},
	       {"b", UNIT_FT, "reaction width under even snow"}},
	.value = share_value,
};

static double half_value(const double *in)
{
	return in[0] / 2.0;
}

const struct step step_snow_half = {
	.name = "snow-half",
	.symbol = "ps/2",
	.unit = UNIT_PSF,
	.title = "snow on the lightly loaded spans of a continuous rafter, overhangs counted as "
		 "spans",
	.formula = "ps/2",
	.clause = THREE_CLAUSES("7.5"),
	.confidence = FROM_MEMORY,
	.note = "full on one end span and half elsewhere; half on one end span and full elsewhere; "
		"full on two "
		"neighbouring spans and half elsewhere",
	.in = {{"ps", UNIT_PSF, "balanced snow"}},
	.value = half_value,
};

static double local_value(const double *in)
{
	return in[0] * in[1];
}

const struct step step_snow_local = {
	.name = "snow-local",
	.symbol = "plocal",
	.unit = UNIT_PSF,
	.title = "roof snow by a local rule",
	.formula = "k pg",
	.clause = {[EDITION_ANY] = "local law"},
	.confidence = USER_ENTERED,
	.in = {{"k", UNIT_NONE, "part of the ground snow"}, {"pg", UNIT_PSF, "ground snow load"}},
	.value = local_value,
};
