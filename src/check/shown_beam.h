/* SPDX-License-Identifier: MIT */
/* A beam with all that acts across it in the one case that governs it, so that anybody can
   recompute it with any other beam program. SI; loads down, reactions up, sagging moments positive;
   places along the beam. */
#ifndef RP_CHECK_SHOWN_BEAM_H
#define RP_CHECK_SHOWN_BEAM_H

#include <stdbool.h>

#include "resist/beam.h"
#include "step/step.h"

#define SHOWN_STRETCH_MAX 160

struct shown_support {
	double x, reaction, moment;
};
struct shown_point {
	double x, P, moment; /* moment: of the beam there */
};

struct shown_beam {
	bool known;
	bool cut;   /* it has more loads than can be shown: those here are not all */
	int number; /* of its rafter or rail line, from 1 */
	const char *combination;
	const char *snow;     /* case of snow, or pattern of partial snow; NULL: none */
	const char *sideways; /* what wind or earthquake do; NULL: nothing */
	double start, end;
	int supports, stretches, points;
	struct shown_support support[BEAM_SUPPORT_MAX];
	struct beam_uniform stretch[SHOWN_STRETCH_MAX]; /* of constant load, one after the other;
							   none where it is 0 */
	struct shown_point point[SHOWN_STRETCH_MAX];
	struct beam_peak sagging, hogging, shear;
	double inner;  /* moment over an inner support if it ran on there; NAN: it does not */
	double across; /* load along the slope that bends it the other way at once, N/m; 0: none */
	double EI;     /* of the deflection that governs; 0: another check does */
	struct beam_peak bow;
};

/* Solves the beam and takes down its loads, those that lie on one another added up. The words are
   the caller's. False, and known false, where it cannot be solved. */
bool shown_beam_take(struct shown_beam *s, const struct beam *beam);
/* The same moment as a sum of what each load does, each a line of the trace, where it lies on two
   supports and nothing reaches beyond them. */
void shown_beam_steps(const struct shown_beam *s, struct trace *trace);

#endif
