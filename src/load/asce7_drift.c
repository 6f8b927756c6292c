/* SPDX-License-Identifier: MIT */
/* Drift at a roof projection: ASCE/SEI 7-10 7.8, 7-16 and 7-22 7.8, with the geometry of 7.7.1;
   sliding snow 7.9; ice along eaves 7.4.5 (from memory). Snow held at the upper edge of an array
   on a slippery roof has no code formula: it is taken as snow guards are designed (common
   practice). */
#include "load/asce7_drift.h"

#include "load/asce7_snow.h"
#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_limit.h"

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
	d.w = edition == ASCE7_22 ? STEP(trace, step_snow_drift_width_7_22, hd)
				  : STEP(trace, step_snow_drift_width, hd, d.hc);
	d.pd = STEP(trace, step_snow_drift_load, hd, d.hc, p->gamma);
	return d;
}

struct snow_slide asce7_slide(double pf, double W, double theta, bool slippery, double width,
			      struct trace *trace)
{
	const double least =
		limit_slope(slippery ? LIMIT_SLIDE_RISE_SLIPPERY : LIMIT_SLIDE_RISE_OTHER);
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
	       !(R >= limit_of(ventilated ? LIMIT_ICE_R_VENTILATED
					  : LIMIT_ICE_R_UNVENTILATED)); /* an R that is not known
									   counts as low */
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
