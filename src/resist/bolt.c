/* SPDX-License-Identifier: MIT */
/* Bolts through a rafter and hanger bolts in it. NDS-2018 3.10.2, 3.10.4, 12.3; the free bolt by
   the general dowel equations (AWC Technical Report 12) with a side member that bears without
   length and holds nothing: shear is 0 at one place only, the hinge or the turning point.

   NDS gives no curve for a bolt under pull and side load together. */
#include "resist/bolt.h"

#include <math.h>

#include "resist/dowel_inputs.h"
#include "resist/dowel_reduction.h"
#include "resist/member.h"
#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

#define PI 3.14159265358979323846

static double net_washer(const double *in)
{
	const double dw = in[0], dh = in[1];

	return PI / 4.0 * fmax(0.0, dw * dw - dh * dh);
}

const struct step step_washer_area = {.name = "washer-area",
				      .symbol = "A_w",
				      .unit = UNIT_IN2,
				      .title = "net area of a round washer",
				      .formula = "pi/4 (d_w^2 - d_h^2)",
				      .clause = {"geometry"},
				      .confidence = DERIVED,
				      .in = {{"d_w", UNIT_IN, "outside diameter of the washer"},
					     {"d_h", UNIT_IN, "hole in the wood"}},
				      .value = net_washer};

static double washer_bearing(const double *in)
{
	return in[0] * in[1] * in[2];
}

const struct step step_washer_bearing = {
	.name = "washer-bearing",
	.symbol = "P_w",
	.unit = UNIT_LB,
	.title = "what a washer bears on the rafter across the grain",
	.formula = "F'c_perp Cb A_w",
	.clause = {"NDS-2018 3.10.2, 3.10.4"},
	.confidence = FROM_MEMORY,
	.note = "no load duration factor for F'c_perp; the washer is taken stiff",
	.in = {{"F'c_perp", UNIT_PSI, "bearing across the grain, adjusted"},
	       {"Cb", UNIT_NONE, "bearing area factor"},
	       {"A_w", UNIT_IN2, "net area of the washer"}},
	.value = washer_bearing};

/* Both in the form that does not cancel: -2 C/(B + sqrt(B^2 - 4 A C)). */
static double free_turn(const double *in)
{
	const double q = in[0] * in[1], lm = in[2], reach = in[3], Rd = in[4];
	const double A = 0.25 / q, B = reach + lm / 2.0, C = -q * lm * lm / 4.0;

	return -2.0 * C / (B + sqrt(B * B - 4.0 * A * C)) / Rd;
}

const struct step step_free_bolt_turn = {
	.name = "free-bolt-turn",
	.symbol = "Z_turn",
	.unit = UNIT_LB,
	.title = "side load of a bolt with a free head that turns stiff in the wood",
	.formula = "P/Rd, P^2/(4 qm) + P (e + lm/2) - qm lm^2/4 = 0, qm = Fem D",
	.clause = {"AWC Technical Report 12, general dowel equations; statics"},
	.confidence = DERIVED,
	.in = {IN_D,
	       IN_FEM,
	       IN_LM,
	       {"e", UNIT_IN, "from the wood to the line of the force"},
	       IN_RD},
	.value = free_turn};

static double free_hinge(const double *in)
{
	const double D = in[0], q = D * in[1], M = in[2] * D * D * D / 6.0, reach = in[3];
	const double Rd = in[4];

	return 2.0 * M / (reach + sqrt(reach * reach + 2.0 * M / q)) / Rd;
}

const struct step step_free_bolt_hinge = {
	.name = "free-bolt-hinge",
	.symbol = "Z_hinge",
	.unit = UNIT_LB,
	.title = "side load of a bolt with a free head that bends in the wood",
	.formula = "P/Rd, P^2/(2 qm) + P e - Fyb D^3/6 = 0, qm = Fem D",
	.clause = {"AWC Technical Report 12, general dowel equations; statics"},
	.confidence = DERIVED,
	.in = {IN_D,
	       IN_FEM,
	       IN_FYB,
	       {"e", UNIT_IN, "from the wood to the line of the force"},
	       IN_RD},
	.value = free_hinge};

static double interaction(const double *in)
{
	return in[0] / in[1] + in[2] / in[3];
}

const struct step step_linear_interaction = {
	.name = "linear-interaction",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "pull and side load together by a straight line",
	.formula = "T/T_a + V/V_a",
	.clause = {"our rule: no standard gives a curve for this fastener"},
	.confidence = OUR_RULE,
	.note = "the straight line lies inside every curve that bulges outward",
	.in = {{"T", UNIT_LB, "pull"},
	       {"T_a", UNIT_LB, "allowable pull"},
	       {"V", UNIT_LB, "side load"},
	       {"V_a", UNIT_LB, "allowable side load"}},
	.value = interaction};

bool bolt_lateral_find(struct trace *trace, double D, double depth, double G, double theta,
		       double t, double gap, struct dowel_joint *joint, struct dowel_yield *out)
{
	const struct lag_screw_row *root = lag_screw_row(D / M_PER_IN);
	const struct bending_yield_row *steel = bending_yield_row("bolt", D / M_PER_IN);
	struct dowel_joint j = {.D = D, .lm = depth, .ls = t, .gap = gap, .theta = theta};

	if (root == NULL || steel == NULL || !(G > 0.0) || !dowel_bearing_steel(t, &j.Fes))
		return false;
	j.Dr = root->Dr_in * M_PER_IN;
	j.Fyb = unit_to_si(steel->Fyb_psi, UNIT_PSI);
	j.Fem = dowel_bearing_wood(trace, G, D, theta);
	if (!dowel_covers(&j))
		return false;
	*joint = j;
	*out = dowel_yield(trace, &j);
	return true;
}

double bolt_washer_bearing(struct trace *trace, double washer, double hole, double breadth,
			   double from_end, double Fc_perp_prime)
{
	if (!(washer > hole) || !at_most(washer, breadth))
		return 0.0;
	return STEP(trace, step_washer_bearing, Fc_perp_prime,
		    member_bearing_factor(trace, washer, from_end),
		    STEP(trace, step_washer_area, washer, hole));
}

struct dowel_yield bolt_free_yield(struct trace *trace, const struct dowel_joint *j, double reach)
{
	struct dowel_yield y;

	dowel_reduction(trace, j, y.Rd);
	for (int m = 0; m < YIELD_MODE_COUNT; m++)
		y.Z[m] = HUGE_VAL;
	y.Z[MODE_II] = STEP(trace, step_free_bolt_turn, j->Dr, j->Fem, j->lm, reach, y.Rd[MODE_II]);
	y.Z[MODE_IIIS] =
		STEP(trace, step_free_bolt_hinge, j->Dr, j->Fem, j->Fyb, reach, y.Rd[MODE_IIIS]);
	y.mode = y.Z[MODE_II] < y.Z[MODE_IIIS] ? MODE_II : MODE_IIIS;
	y.value = y.Z[y.mode];
	return y;
}

double linear_interaction(struct trace *trace, double T, double T_a, double V, double V_a)
{
	if ((T > 0.0 && !(T_a > 0.0)) || (V > 0.0 && !(V_a > 0.0)))
		return HUGE_VAL;
	return STEP(trace, step_linear_interaction, T, T_a > 0.0 ? T_a : HUGE_VAL, V,
		    V_a > 0.0 ? V_a : HUGE_VAL);
}
