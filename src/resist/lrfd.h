/* SPDX-License-Identifier: MIT */
/* Load and resistance factor design of wood and aluminium: what stands in the place of CD. NDS-2018
   Tables 2.3.5, 2.3.6, N1 to N3; Aluminum Design Manual 2015 F.2. SI throughout. */
#ifndef RP_RESIST_LRFD_H
#define RP_RESIST_LRFD_H

#include "resist/aluminium.h"
#include "resist/lumber.h"
#include "step/step.h"

/* Adjusted value times KF phi lambda, N: `adjusted` is a connection's value with every factor of
   ASD but with CD = 1. */
double lrfd_connection(struct trace *trace, double adjusted, double lambda);

/* F'c_perp of ASD (no CD in it) times KF phi lambda, Pa: what a washer may bear. */
double lrfd_bearing(struct trace *trace, double Fc_perp_prime, double lambda);

/* As lumber_adjust, in LRFD: Fb*, F'v with lambda, E'min with KF phi alone, E' and F'c_perp as each
   is printed. v.CD is lambda. */
bool lumber_adjust_lrfd(struct trace *trace, const struct lumber_piece *piece, double lambda,
			const struct lumber_service *service, struct lumber_values *out);

/* Steel that an allowable of Rn/2 stands for: phi Rn with phi 0.75, which is 1.5 times it. N. */
double lrfd_steel(struct trace *trace, double allowable);

/* Design stress of a rail: min(0.90 Fty, 0.75 Ftu/kt), Pa. */
double rail_design_stress(struct trace *trace, const struct rail_alloy *alloy);

#endif
