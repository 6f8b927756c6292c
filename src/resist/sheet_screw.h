/* SPDX-License-Identifier: MIT */
/* A self-drilling screw through a steel plate into thin steel. AISI S100 (E4 to the 2012 edition,
   J4 from 2016): factor 3.0 in ASD, phi 0.50 in LRFD. SI. */
#ifndef RP_RESIST_SHEET_SCREW_H
#define RP_RESIST_SHEET_SCREW_H

#include <stdbool.h>

#include "step/step.h"

struct sheet_screw_joint {
	double d, dw;    /* nominal diameter; head or washer diameter, m */
	double t1, Fu1;  /* steel under the head, m, Pa */
	double t2, Fu2;  /* steel at the point, m, Pa */
	double Pss, Pts; /* nominal shear and tension strength of the screw itself, N */
};

struct sheet_screw {
	double shear, pull_out, pull_over, tension; /* nominal, N */
	double bearing1, tilting;                   /* nominal, N: what the interactions ask for */
	/* of the lesser ones a third in ASD, a half in LRFD, N */
	double shear_allowed, pull_allowed;
	bool lrfd;
};

/* Head, thread and screw strength of a listed size; false if there is none of this diameter. */
bool sheet_screw_find(double d, struct sheet_screw_joint *out);
/* All of it above 0. */
struct sheet_screw sheet_screw_strength(struct trace *trace, const struct sheet_screw_joint *joint,
					bool lrfd);
/* The worst of the three interactions of pull T and shear V on one screw; 1 is the limit. From
   memory. In LRFD all three take the phi 0.50 of the single strengths, which is the safe side. */
double sheet_screw_combined(struct trace *trace, const struct sheet_screw *s,
			    const struct sheet_screw_joint *joint, double T, double V);

#endif
