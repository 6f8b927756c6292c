/* SPDX-License-Identifier: MIT */
/* A rectangular wood member as a beam: section, lateral stability, stresses. NDS-2018 3.2 to 3.4,
   3.10. SI throughout. */
#ifndef RP_RESIST_MEMBER_H
#define RP_RESIST_MEMBER_H

#include <stdbool.h>

#include "step/step.h"

struct section {
	double b, d, A, S, I; /* m, m, m2, m3, m4; bent about the strong axis */
};
struct section section_rectangle(struct trace *trace, double b, double d);

/* Share of the section modulus that a round hole of diameter `hole`, drilled `deep` into the middle
   of the top edge, leaves: at the top fibre and at the bottom fibre. NDS 3.1.2 asks for the net
   section. 0 where nothing is left. */
struct net_section {
	double top, bottom;
};
struct net_section section_with_hole(struct trace *trace, double b, double d, double hole,
                                     double deep);

/* How the load lies on an unbraced length, for the effective length of NDS Table 3.3.3 (single
   span). */
enum unbraced_load {
	UNBRACED_UNIFORM,
	UNBRACED_POINT_MIDSPAN,
	UNBRACED_OTHER /* any other: several mounts */
};

struct stability {
	double lu, le;  /* unbraced and effective length, m */
	double RB, FbE; /* slenderness; critical stress, Pa */
	double CL;
	bool permitted; /* RB is at most 50 (3.3.3.7) */
};
/* lu 0: the compressed edge is held all along, CL 1 and FbE infinite (3.3.3.3); also where d <= b
   (3.3.3.1). Fb_star is F*b. */
struct stability member_stability(struct trace *trace, double b, double d, double lu,
                                  enum unbraced_load load, double Emin_prime, double Fb_star);

/* fb = M/S, Pa; of |M| */
double member_bending_stress(struct trace *trace, double M, double S);
/* fv = 1.5 V/(b d), Pa; of |V| */
double member_shear_stress(struct trace *trace, double V, double b, double d);
/* The same where only dn of d is left on the pulled side, or where the member hangs on fasteners dn from its unloaded edge:
   1.5 V/(b dn) (d/dn)^2, Pa. NDS 3.4.3.2, 3.4.3.3. */
double member_notch_shear(struct trace *trace, double V, double b, double d, double dn);
/* R/(b lb), Pa */
double member_bearing_stress(struct trace *trace, double R, double b, double lb);
/* Cb = (lb + 3/8 in)/lb for bearings shorter than 6 in and at least 3 in from the end, else 1
   (3.10.4). */
double member_bearing_factor(struct trace *trace, double lb, double from_end);

#endif
