/* SPDX-License-Identifier: MIT */
/* Nails in withdrawal and side load, heads in pull-through. NDS-2018 12.1.6, 12.2.3, 12.2.5, 12.3,
   12.4.2. The stainless and ring shank equations and head pull-through came with the 2018 edition.
   Not covered: nails in end grain in withdrawal (not allowed, 12.2.3.3), toe nails, nails held by
   wood panels. */
#include "resist/nail.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

#define PI 3.14159265358979323846
#define IN_G                                                                                       \
	{                                                                                          \
		"G", UNIT_NONE, "assigned specific gravity"                                        \
	}
#define IN_D                                                                                       \
	{                                                                                          \
		"D", UNIT_IN, "diameter"                                                           \
	}

static double smooth(const double *in)
{
	return 1380.0 * pow(in[0], 2.5) * in[1];
}

const struct step step_nail_withdrawal = {
	.name = "nail-withdrawal",
	.symbol = "W",
	.unit = UNIT_LB_IN,
	.title = "reference withdrawal of a smooth nail from side grain, per length",
	.formula = "1380 G^2.5 D",
	.clause = {"NDS-2018 12.2.3, Eq. 12.2-3"},
	.confidence = CONFIRMED,
	.note = "for comparison: no foot is rated on nails",
	.in = {IN_G, IN_D},
	.value = smooth};

static double stainless(const double *in)
{
	return 465.0 * pow(in[0], 1.5) * in[1];
}

const struct step step_nail_withdrawal_stainless = {
	.name = "nail-withdrawal-stainless",
	.symbol = "W",
	.unit = UNIT_LB_IN,
	.title = "reference withdrawal of a smooth stainless nail, per length",
	.formula = "465 G^1.5 D",
	.clause = {"NDS-2018 Eq. 12.2-4"},
	.confidence = ONE_SOURCE,
	.note = "new in 2018: NDS-2015 has no row for stainless nails",
	.in = {IN_G, IN_D},
	.value = stainless};

static double ring(const double *in)
{
	return 1800.0 * in[0] * in[0] * in[1];
}

const struct step step_nail_withdrawal_ring = {
	.name = "nail-withdrawal-ring",
	.symbol = "W",
	.unit = UNIT_LB_IN,
	.title = "reference withdrawal of a roof-sheathing ring shank nail, per length",
	.formula = "1800 G^2 D",
	.clause = {"NDS-2018 Eq. 12.2-5"},
	.confidence = ONE_SOURCE,
	.note = "new in 2018; which length the clause multiplies was not read",
	.in = {IN_G, IN_D},
	.value = ring};

static double combined(const double *in)
{
	const double Wp = in[0], Z = in[1], alpha = in[2] * RAD_PER_DEG;

	return Wp * Z / (Wp * cos(alpha) + Z * sin(alpha));
}

const struct step step_nail_combined_capacity = {
	.name = "nail-combined-capacity",
	.symbol = "Z'alpha",
	.unit = UNIT_LB,
	.title = "capacity of one nail along the force",
	.formula = "W'p Z' / (W'p cos alpha + Z' sin alpha)",
	.clause = {"NDS-2018 12.4.2, Eq. 12.4-2"},
	.confidence = ONE_SOURCE,
	.note = "first powers, where screws have squares (12.4.1)",
	.in = {{"W'p", UNIT_LB, "withdrawal of one nail, adjusted"},
	       {"Z'", UNIT_LB, "side load of one nail, adjusted"},
	       {"alpha", UNIT_DEG, "angle of the force to the wood surface"}},
	.value = combined};

/* The two equations meet at t = 2.5 DH. */
static double pull_through(const double *in)
{
	const double G = in[0], DH = in[1], t = in[2];

	return 690.0 * PI * DH * G * G * fmin(t, 2.5 * DH);
}

const struct step step_head_pull_through = {
	.name = "head-pull-through",
	.symbol = "W_H",
	.unit = UNIT_LB,
	.title = "a round head pulled through wood or a wood panel",
	.formula = "690 pi DH G^2 min(t, 2.5 DH)",
	.clause = {"NDS-2018 12.2.5, Eq. 12.2-6a, 12.2-6b"},
	.confidence = CONFIRMED,
	.note = "nails and wood screws; hex heads and washers are not covered; not in NDS-2015, "
		"the same in NDS-2024",
	.in = {{"G", UNIT_NONE, "assigned specific gravity of the side member"},
	       {"DH", UNIT_IN, "diameter of the head"},
	       {"t", UNIT_IN, "net thickness of the side member"}},
	.value = pull_through};

double nail_withdrawal(struct trace *trace, enum nail_shank shank, double G, double D)
{
	switch (shank) {
	case NAIL_SMOOTH:
		return STEP(trace, step_nail_withdrawal, G, D);
	case NAIL_SMOOTH_STAINLESS:
		return STEP(trace, step_nail_withdrawal_stainless, G, D);
	case NAIL_RING_SHANK:
		return STEP(trace, step_nail_withdrawal_ring, G, D);
	}
	return 0.0;
}

double nail_combined_capacity(struct trace *trace, double Wp, double Z, double alpha)
{
	return STEP(trace, step_nail_combined_capacity, Wp, Z, alpha);
}

double head_pull_through(struct trace *trace, double G, double DH, double t)
{
	return STEP(trace, step_head_pull_through, G, DH, t);
}

bool nail_lateral_find(struct trace *trace, double G, double D, double L, double ts,
		       struct dowel_yield *out)
{
	const struct bending_yield_row *steel =
		bending_yield_row("nail-or-wood-screw", D / M_PER_IN);
	const double p = L - ts;
	struct dowel_joint j = {.D = D, .Dr = D, .lm = p - D, .ls = ts}; /* half the tip 2 D */

	if (steel == NULL || !(G > 0.0) || !(ts > 0.0) || !at_least(p, 6.0 * D))
		return false;
	j.Fem = j.Fes = dowel_bearing_wood(trace, G, D, 0.0);
	j.Fyb = unit_to_si(steel->Fyb_psi, UNIT_PSI);
	if (!dowel_covers(&j))
		return false;
	*out = dowel_yield(trace, &j);
	return true;
}
