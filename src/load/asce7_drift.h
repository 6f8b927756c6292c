/* SPDX-License-Identifier: MIT */
/* Snow that the array moves, holds or drops: drift at a projection (ASCE/SEI 7 7.8), sliding onto a
   lower roof (7.9), snow held above an array on a slippery roof, ice along the eave (7.4.5),
   partial loading (7.5). */
#ifndef RP_LOAD_ASCE7_DRIFT_H
#define RP_LOAD_ASCE7_DRIFT_H

#include <stdbool.h>

#include "step/step.h"

struct snow_projection {
	double pg, ps, gamma; /* Pa, Pa on plan, N/m3 */
	double Is;            /* 7-16 */
	double W2;            /* 7-22; NAN: 0.65 */
	double lu;            /* longer length of roof upwind or downwind, m */
	double side;          /* length of the side that stands in the wind, m */
	double top;           /* above the roof, m */
	double clear;         /* from the roof to the underside, m; 0 where it reaches the roof */
};

enum drift_none {
	DRIFT_FORMS,
	DRIFT_NO_SNOW,
	DRIFT_SHORT_SIDE, /* side under 15 ft */
	DRIFT_RAISED,     /* 2 ft or more clear above the balanced snow, 7-16 on */
	DRIFT_LOW         /* hc/hb under 0.2 */
};

struct snow_drift {
	enum drift_none none; /* why there is none */
	double hb, hc;        /* balanced snow, height above it, m */
	double height, w;     /* of the drift, m */
	double pd;            /* Pa on plan at its highest, falling to 0 over w */
};

struct snow_drift asce7_projection_drift(enum edition edition, const struct snow_projection *p,
					 struct trace *trace);
const char *drift_none_text(enum drift_none none);

struct snow_slide {
	bool slides;     /* the roof is steep enough for the clause */
	double line;     /* N per m of eave that land on the lower roof */
	double pressure; /* Pa on plan */
	double over;     /* width that they cover out from the eave, m */
};
/* pf: flat roof snow of the upper roof, W: eave to ridge on plan, width: of the lower roof. */
struct snow_slide asce7_slide(double pf, double W, double theta, bool slippery, double width,
			      struct trace *trace);

/* Force down the slope per m of the array's upper edge of snow that a slippery roof does not hold,
   N/m: ps Pa on plan over L m on plan, no friction. */
double snow_held(double ps, double L, double theta, struct trace *trace);

/* Snow of a tilted collector that lies on the roof at its foot (C7.8): ps of the collector over
   length on plan, on a strip 2 ft wide; Pa. */
double asce7_slide_off(double ps, double length, struct trace *trace);

/* 2 pf on the overhang of a warm roof that drains over its eave, Pa. */
double asce7_ice_dam(double pf, struct trace *trace);
/* True where the clause asks for it: heated below and not insulated to the limit (R in h ft2 F/Btu,
   NAN unknown). */
bool asce7_ice_dam_forms(bool heated, bool ventilated, double R);

/* Snow of a foot on a continuous rail, as a multiple of even snow: width_worst of 7.5 over
 * width_even. */
double snow_partial_share(double width_worst, double width_even, struct trace *trace);

/* Snow on the lightly loaded spans of 7.5, Pa. */
double snow_half(double ps, struct trace *trace);

/* A local rule: k pg, Pa. */
double snow_local(double k, double pg, struct trace *trace);

#endif
