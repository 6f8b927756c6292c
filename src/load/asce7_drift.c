/* SPDX-License-Identifier: MIT */
/* Drift at a roof projection: ASCE/SEI 7-10 7.8, 7-16 and 7-22 7.8, with the geometry of 7.7.1
   (from memory in the reference); sliding snow 7.9 (from memory); ice along eaves 7.4.5 (from
   memory). Snow held at the upper edge of an array on a slippery roof has no code formula: it is
   taken as snow guards are designed (common practice). */
#include "load/asce7_drift.h"

#include <math.h>

#include "load/asce7_snow.h"
#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_limit.h"

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
	.confidence = FROM_MEMORY,
	.note = "hd with lu the longer length of roof upwind or downwind",
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
	.clause = THREE_CLAUSES("7.7.1"),
	.confidence = FROM_MEMORY,
	.in = {{"hd,p", UNIT_FT, "drift height"},
	       {"hc", UNIT_FT, "clear height above the balanced snow"}},
	.value = width_value,
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
	.confidence = FROM_MEMORY,
	.note = "with the balanced snow of the lower roof alone",
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
	.title = "snow on the lightly loaded spans of a continuous rafter, overhangs counted as spans",
	.formula = "ps/2",
	.clause = THREE_CLAUSES("7.5"),
	.confidence = FROM_MEMORY,
	.note = "full on one end span and half elsewhere; half on one end span and full elsewhere; full on two "
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

const char *drift_none_text(enum drift_none none)
{
	switch (none) {
	case DRIFT_FORMS:
		return "";
	case DRIFT_NO_SNOW:
		return "there is no snow.";
	case DRIFT_SHORT_SIDE:
		return "its side is shorter than 15 ft.";
	case DRIFT_RAISED:
		return "it stands 2 ft or more clear above the balanced snow.";
	case DRIFT_LOW:
		return "it rises less than 0.2 hb above the balanced snow.";
	}
	return "";
}

struct snow_drift asce7_projection_drift(enum edition edition, const struct snow_projection *p,
					 struct trace *trace)
{
	struct snow_drift d = {.none = DRIFT_FORMS};

	if (!(p->ps > 0.0)) {
		d.none = DRIFT_NO_SNOW;
		return d;
	}
	d.hb = STEP(trace, step_snow_balanced_height, p->ps, p->gamma);
	d.hc = p->top - d.hb;
	if (!at_least(p->side, limit_of(LIMIT_DRIFT_SIDE)))
		d.none = DRIFT_SHORT_SIDE;
	else if (edition != ASCE7_10 && at_least(p->clear - d.hb, limit_of(LIMIT_DRIFT_RAISED)))
		d.none = DRIFT_RAISED;
	else if (!at_least(d.hc, limit_of(LIMIT_DRIFT_LOW) * d.hb))
		d.none = DRIFT_LOW;
	if (d.none != DRIFT_FORMS)
		return d;
	const double hd = STEP(trace, step_snow_projection_height,
			       asce7_drift_height(edition, p->pg, p->lu, p->Is, p->W2, trace));

	d.height = smaller(hd, d.hc);
	d.w = STEP(trace, step_snow_drift_width, hd, d.hc);
	d.pd = STEP(trace, step_snow_drift_load, hd, d.hc, p->gamma);
	return d;
}

struct snow_slide asce7_slide(double pf, double W, double theta, bool slippery, double width,
			      struct trace *trace)
{
	const double least = limit_slope(slippery ? LIMIT_SLIDE_RISE_SLIPPERY : LIMIT_SLIDE_RISE_OTHER);
	struct snow_slide s = {.slides = pf > 0.0 && !at_most(theta, least)};

	if (!s.slides)
		return s;
	s.over = smaller(width, limit_of(LIMIT_SLIDE_WIDTH));
	s.line = STEP(trace, step_snow_sliding, pf, W, width);
	s.pressure = s.line / s.over;
	return s;
}

double snow_held(double ps, double L, double theta, struct trace *trace)
{
	return STEP(trace, step_snow_held, ps, larger(0.0, L), theta);
}

double asce7_slide_off(double ps, double length, struct trace *trace)
{
	return STEP(trace, step_snow_slide_off, ps, length);
}

double asce7_ice_dam(double pf, struct trace *trace)
{
	return STEP(trace, step_snow_ice_dam, pf);
}

bool asce7_ice_dam_forms(bool heated, bool ventilated, double R)
{
	return heated &&
	       !(R >= limit_of(ventilated ? LIMIT_ICE_R_VENTILATED : LIMIT_ICE_R_UNVENTILATED)); /* an R that is not known counts as low */
}

double snow_partial_share(double width_worst, double width_even, struct trace *trace)
{
	return STEP(trace, step_snow_partial, width_worst, width_even);
}

double snow_half(double ps, struct trace *trace)
{
	return STEP(trace, step_snow_half, ps);
}

double snow_local(double k, double pg, struct trace *trace)
{
	return STEP(trace, step_snow_local, k, pg);
}
