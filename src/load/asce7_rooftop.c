/* SPDX-License-Identifier: MIT */
/* Fh = qh (GCr) Af and Fv = qh (GCr) Ar, in 7-22 times Kd (from memory). 7-10 gives them for h up
   to 60 ft, later editions for every height. */
#include "load/asce7_rooftop.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"

#define ROOFTOP_CLAUSES                                                                            \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 29.5.1", [ASCE7_16] = "ASCE/SEI 7-16 29.4.1",          \
		[ASCE7_22] = "ASCE/SEI 7-22 29.4.1"                                                \
	}

/* `most` up to a tenth of the building's face, straight down to 1 at the whole of it. */
static double reduced(double most, double A, double whole)
{
	const double share = (A / whole - 0.1) / 0.9;

	return most - (most - 1.0) * smaller(1.0, larger(0.0, share));
}

static double lateral_value(const double *in)
{
	return reduced(1.9, in[0], in[1] * in[2]);
}

const struct step step_rooftop_GCr_lateral = {
	.name = "rooftop-GCr-lateral",
	.symbol = "GCr_h",
	.unit = UNIT_NONE,
	.title = "lateral force coefficient of a rooftop structure",
	.formula = "1.9 where Af < 0.1 B h, 1.0 where Af >= B h, straight between",
	.clause = ROOFTOP_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "the limits of area are confirmed; the Guide to the Wind Load Provisions of ASCE "
		"7-22 takes 1.9 in Example 5.2",
	.in = {{"Af", UNIT_FT2, "face of the structure across the wind"},
	       {"B", UNIT_FT, "dimension of the building across the wind"},
	       {"h", UNIT_FT, "mean roof height"}},
	.value = lateral_value,
};

static double uplift_value(const double *in)
{
	return reduced(1.5, in[0], in[1] * in[2]);
}

const struct step step_rooftop_GCr_uplift = {
	.name = "rooftop-GCr-uplift",
	.symbol = "GCr_v",
	.unit = UNIT_NONE,
	.title = "uplift force coefficient of a rooftop structure",
	.formula = "1.5 where Ar < 0.1 B L, 1.0 where Ar >= B L, straight between",
	.clause = ROOFTOP_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "the limits of area are confirmed; the Guide to the Wind Load Provisions of ASCE "
		"7-22 takes 1.5 in Example 5.2",
	.in = {{"Ar", UNIT_FT2, "plan area of the structure"},
	       {"B", UNIT_FT, "dimension of the building across the wind"},
	       {"L", UNIT_FT, "dimension of the building along the wind"}},
	.value = uplift_value,
};

static double force_value(const double *in)
{
	return in[0] * in[1] * in[2] * in[3];
}

const struct step step_rooftop_force = {
	.name = "rooftop-force",
	.symbol = "F",
	.unit = UNIT_LB,
	.title = "wind force on a rooftop structure, lateral or upward",
	.formula = "qh Kd_p GCr A",
	.clause = ROOFTOP_CLAUSES,
	.confidence = FROM_MEMORY,
	.note = "Kd_p is Kd in 7-22, whose qh does not hold it, and 1 before",
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height"},
	       {"Kd_p", UNIT_NONE, "directionality factor where qh does not hold it"},
	       {"GCr", UNIT_NONE, "force coefficient"},
	       {"A", UNIT_FT2, "area that the force acts on"}},
	.value = force_value,
};

struct rooftop_force asce7_rooftop_force(enum edition edition, const struct wind_velocity *wind,
					 const struct rooftop_structure *s, struct trace *trace)
{
	struct rooftop_force f;

	(void)edition; /* the numbers are the same in all of them; Kd_of_p tells them apart */
	f.GCr_lateral = STEP(trace, step_rooftop_GCr_lateral, s->Af, s->B, s->h);
	f.GCr_uplift = STEP(trace, step_rooftop_GCr_uplift, s->Ar, s->B, s->L);
	f.Fh = STEP(trace, step_rooftop_force, wind->qh, wind->Kd_of_p, f.GCr_lateral, s->Af);
	f.Fv = STEP(trace, step_rooftop_force, wind->qh, wind->Kd_of_p, f.GCr_uplift, s->Ar);
	return f;
}
