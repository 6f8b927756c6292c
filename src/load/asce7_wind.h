/* SPDX-License-Identifier: MIT */
/* Wind: velocity pressure at mean roof height, ASCE/SEI 7-10, 7-16 and 7-22, and the topographic
   factor. Everything in SI; the clauses' own units are met inside the steps only. */
#ifndef RP_LOAD_ASCE7_WIND_H
#define RP_LOAD_ASCE7_WIND_H

#include <stdbool.h>

#include "step/step.h"

struct wind_site {
	double V;         /* basic wind speed, strength level, m/s */
	char exposure;    /* 'B', 'C' or 'D' */
	double Kzt;       /* topographic factor; 1 where no hill counts */
	double elevation; /* of the ground above sea level, m; NAN: Ke = 1, which every edition
			     allows */
	double h;         /* mean roof height, m */
};

struct wind_velocity {
	bool known; /* false: no constants for this edition and exposure */
	double Kz, Kzt, Kd, Ke;
	double qh;      /* Pa. Holds Kd in 7-10 and 7-16, does not in 7-22 */
	double Kd_of_p; /* what the edition multiplies the pressure by: Kd in 7-22, 1 before */
	enum confidence confidence; /* of the exposure constants */
};

/* Velocity pressure for components and cladding of a low building, h <= 60 ft (not checked here).
   In 7-10 exposure B takes Kz at no less than 30 ft; later editions ask that of Chapter 28 only. */
struct wind_velocity asce7_wind_velocity(enum edition edition, const struct wind_site *site,
					 struct trace *trace);

/* Shapes of Fig. 26.8-1. */
enum wind_hill_shape { HILL_RIDGE, HILL_ESCARPMENT, HILL_AXISYMMETRIC, HILL_SHAPE_COUNT };

struct wind_hill {
	enum wind_hill_shape shape;
	char exposure; /* 'B', 'C' or 'D' */
	double H;      /* height of the hill, m */
	double Lh;     /* upwind from the crest to half the height, m */
	double x;      /* from the crest to the house, m; positive downwind */
	double z;      /* height above the ground at the house, m */
};

/* Kzt = (1 + K1 K2 K3)^2 of 26.8.2, without asking whether 26.8.1 makes it necessary: NAN if the
   shape has no row. */
double asce7_topographic_factor(enum edition edition, const struct wind_hill *hill,
				struct trace *trace);

#endif
