/* SPDX-License-Identifier: MIT */
/* Wind on structures that stand on a roof: ASCE/SEI 7-10 29.5.1, 7-16 and 7-22 29.4.1. For a rack
   of collectors that fits no rule of its own this is a bound that an engineer must judge. */
#ifndef RP_LOAD_ASCE7_ROOFTOP_H
#define RP_LOAD_ASCE7_ROOFTOP_H

#include "load/asce7_wind.h"

struct rooftop_structure {
	double Af; /* its face across the wind, projected upright, m2 */
	double Ar; /* projected on plan, m2 */
	double B;  /* building across the wind, m */
	double L;  /* building along the wind, m */
	double h;  /* mean roof height, m */
};

/* Lateral and upward force, N, strength level; they act together. */
struct rooftop_force {
	double GCr_lateral, GCr_uplift;
	double Fh, Fv;
};

struct rooftop_force asce7_rooftop_force(enum edition edition, const struct wind_velocity *wind,
					 const struct rooftop_structure *s, struct trace *trace);

#endif
