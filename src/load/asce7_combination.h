/* SPDX-License-Identifier: MIT */
/* Load combinations of ASCE/SEI 7 chapter 2 as data: one row for each alternative ("Lr or S") that
   a roof can meet. */
#ifndef RP_LOAD_ASCE7_COMBINATION_H
#define RP_LOAD_ASCE7_COMBINATION_H

#include <stdbool.h>

#include "step/step.h"

enum combination_method { COMBINATION_ASD, COMBINATION_LRFD };

/* Which wind belongs into a combination. */
enum combination_use {
	COMBINATION_DOWN,   /* the pressure toward the roof, filled collectors */
	COMBINATION_UPLIFT, /* the suction, dry collectors only */
	COMBINATION_SEISMIC /* no wind */
};

struct load_combination {
	enum combination_use use;
	const char *id;             /* as the clause numbers it: "6a" */
	const char *text;           /* "D + 0.75S + 0.45W" */
	const char *clause;         /* "ASCE/SEI 7-16 2.4.1" */
	double D, Lr, S, W, Ev, Eh; /* factors; 0: not in it. W is positive: its effect carries the
				       sign. Ev is signed */
	double CD; /* ASD: duration factor of the shortest load in it (NDS Table 2.3.2); LRFD: NAN
		    */
	double lambda; /* LRFD: time effect factor (NDS Table N3); ASD: NAN */
	enum confidence confidence;
};

#define COMBINATION_MAX 24

/* Fills out, in the order of the standard, and returns how many there are (at most
   COMBINATION_MAX); rows with earthquake only when asked for. Floor live load L and rain R do not
   act on these roofs and are left out. */
int asce7_combinations(enum edition edition, enum combination_method method, bool earthquake,
		       struct load_combination out[COMBINATION_MAX]);

/* Effects of the single loads on one quantity, all in one sign convention: in a force that is
   positive toward the roof, D, Lr and S are positive and the W of uplift is negative. */
struct load_effect {
	double D, Lr, S, W, Ev, Eh;
};
double combination_sum(const struct load_combination *c, const struct load_effect *e);

#endif
