/* SPDX-License-Identifier: MIT */
/* An aluminium rail in bending. Aluminum Design Manual 2015, allowable strength. Lower bound of the
   section's strength on its elastic modulus. Slender walls and lateral-torsional buckling of open
   rails are not covered: the maker's own moment is better where there is one. */
#ifndef RP_RESIST_ALUMINIUM_H
#define RP_RESIST_ALUMINIUM_H

#include <stdbool.h>

#include "step/step.h"

struct rail_alloy {
	const char *name;      /* as the published table prints it */
	double Fty, Ftu, E;    /* Pa */
	double kt;
	enum confidence confidence;
};
/* False when the alloy and temper is not tabulated: 6061-T6, 6005-T5, 6105-T5, 6005A-T61, 6063-T5,
   6063-T6. */
bool rail_alloy_find(const char *alloy, struct rail_alloy *out);
/* Allowable bending stress, Pa: the lesser of yielding and rupture. */
double rail_allowable_stress(struct trace *trace, const struct rail_alloy *alloy);
/* Allowable moment, N m, of elastic section modulus S (m3) at allowable stress F (Pa). */
double rail_allowable_moment(struct trace *trace, double S, double F);

#endif
