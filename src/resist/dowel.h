/* SPDX-License-Identifier: MIT */
/* Yield of a dowel-type fastener in single shear: six modes, with the faces touching (NDS-2018
   12.3, Tables 12.3.1A and 12.3.1B) or with a gap between them (general dowel equations, AWC
   Technical Report 12). SI throughout. */
#ifndef RP_RESIST_DOWEL_H
#define RP_RESIST_DOWEL_H

#include <stdbool.h>

#include "step/step.h"

enum yield_mode { MODE_IM, MODE_IS, MODE_II, MODE_IIIM, MODE_IIIS, MODE_IV, YIELD_MODE_COUNT };
const char *yield_mode_text(enum yield_mode mode); /* "Im", "Is", "II", "IIIm", "IIIs", "IV" */

struct dowel_joint {
	double D;        /* nominal diameter, m */
	double Dr;       /* diameter that yields: root of a thread; D of bolts and nails, m */
	double lm, ls;   /* bearing length in main (holding) and side member, m */
	double Fem, Fes; /* dowel bearing strength of main and side member, Pa */
	double Fyb;      /* bending yield strength, Pa */
	double gap;      /* between the faces, m; 0: they touch */
	double theta;    /* largest angle of load to grain of a wood member, rad, 0 to pi/2 */
};

struct dowel_yield {
	double Z[YIELD_MODE_COUNT];  /* reference lateral value by each mode, N */
	double Rd[YIELD_MODE_COUNT]; /* reduction term by each mode */
	enum yield_mode mode;        /* that governs */
	double value;                /* Z[mode] */
};

/* Needs D up to 1 in (the tables' end), lengths and strengths above 0, gap 0 or more, 0 <= theta <=
   pi/2 (asserted finite). With a gap the metal part is taken to hold the head of the fastener from
   turning. */
bool dowel_covers(const struct dowel_joint *joint);
struct dowel_yield dowel_yield(struct trace *trace, const struct dowel_joint *joint);

/* Dowel bearing strength of wood, Pa, at an angle theta (rad) between load and grain; D nominal.
   NDS Table 12.3.3 with its rounding to 50 psi, 12.3.4 (Hankinson). */
double dowel_bearing_wood(struct trace *trace, double G, double D, double theta);
/* Of a steel plate t thick: A653 SS Grade 33 under 1/4 in, A36 from 1/4 in. False when the
   published tables have none. */
bool dowel_bearing_steel(double t, double *Fe);

/* Z' = Z CD CM Ct Cg C_delta Ceg, N. NDS Table 11.3.1. */
double lateral_adjusted(struct trace *trace, double Z, double CD, double CM, double Ct, double Cg,
                        double C_delta, double Ceg);

#endif
