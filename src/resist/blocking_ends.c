/* SPDX-License-Identifier: MIT */
/* A block under forces both ways: the force along the rafters bends it sideways and, acting above
   its middle, twists it. */
#include <math.h>

#include "resist/blocking.h"
#include "resist/resist_steps.h"

static double twist(const double *in)
{
	return fabs(in[0]) * (in[1] + in[2] / 2);
}

const struct step step_block_twist = {.name = "block-twist",
				      .symbol = "T",
				      .unit = UNIT_LB_IN_M,
				      .title = "twist of a block by the force along the rafters",
				      .formula = "F (h + d/2)",
				      .clause = {"statics"},
				      .confidence = DERIVED,
				      .note = "no help from the deck nailed on its top (safe side)",
				      .in = {{"F", UNIT_LB, "force of the foot along the rafters"},
					     {"h", UNIT_IN, "its line above the block's top"},
					     {"d", UNIT_IN, "height of the block"}},
				      .value = twist};

static double twist_end(const double *in)
{
	return in[0] * (in[2] - in[1]) / in[2];
}

const struct step step_block_twist_end = {
	.name = "block-twist-end",
	.symbol = "T",
	.unit = UNIT_LB_IN_M,
	.title = "part of the twist at the nearer end of a block",
	.formula = "T (s - a)/s",
	.clause = {"statics"},
	.confidence = DERIVED,
	.note = "both ends held against turning",
	.in = {{"T", UNIT_LB_IN_M, "twist of the whole block"},
	       {"a", UNIT_IN, "from the nearer rafter's face to the foot"},
	       {"s", UNIT_IN, "clear between the rafters' faces"}},
	.value = twist_end};

static double twist_stress(const double *in)
{
	const double T = in[0], l = fmax(in[1], in[2]), c = fmin(in[1], in[2]);

	return T * (3 * l + 1.8 * c) / (l * l * c * c);
}

const struct step step_block_twist_stress = {
	.name = "block-twist-stress",
	.symbol = "f_t",
	.unit = UNIT_PSI,
	.title = "shear by twist in a rectangular block",
	.formula = "T (3 l + 1.8 c)/(l^2 c^2), l the longer side, c the shorter",
	.clause = {"elastic torsion of a rectangle, approximate (from memory)"},
	.confidence = FROM_MEMORY,
	.note = "up to 4 % below the exact series",
	.in = {{"T", UNIT_LB_IN_M, "twist in this part"},
	       {"b", UNIT_IN, "breadth"},
	       {"d", UNIT_IN, "height"}},
	.value = twist_stress};

static double both_ways(const double *in)
{
	const double x = in[1] / in[4];

	return x < 1 ? in[0] / in[1] + in[2] / (in[3] * (1 - x * x)) : HUGE_VAL;
}

const struct step step_block_both_ways = {
	.name = "block-both-ways",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "bending of a block across the roof and along it together",
	.formula = "fb1/F'b1 + fb2/(F'b2 (1 - (F'b1/FbE)^2))",
	.clause = {"NDS-2018 3.9.2, without axial force (from memory)"},
	.confidence = FROM_MEMORY,
	.note = "1 is the limit; the clause has fb1 in place of F'b1 in the square: safe side",
	.in = {{"fb1", UNIT_PSI, "bending across the roof"},
	       {"F'b1", UNIT_PSI, "allowable"},
	       {"fb2", UNIT_PSI, "bending along the rafters"},
	       {"F'b2", UNIT_PSI, "allowable"},
	       {"FbE", UNIT_PSI, "critical stress across the roof"}},
	.value = both_ways};

static double grid_force(const double *in)
{
	const double P = in[0], F = in[1], T = in[2], n = in[3], r = in[4], J = in[5];
	const double direct = hypot(P, F) / n;

	return T > 0 ? direct + (J > 0 ? T * r / J : HUGE_VAL) : direct;
}

const struct step step_block_grid_force = {
	.name = "block-grid-force",
	.symbol = "Z",
	.unit = UNIT_LB,
	.title = "force on the worst fastener of a block's end",
	.formula = "sqrt(P^2 + F^2)/n + T r/J",
	.clause = {"elastic group of fasteners"},
	.confidence = SAFE_SIDE,
	.note = "the two added as if they pointed one way",
	.in = {{"P", UNIT_LB, "this end's force across the roof"},
	       {"F", UNIT_LB, "this end's force along the rafters"},
	       {"T", UNIT_LB_IN_M, "this end's part of the twist"},
	       {"n", UNIT_NONE, "fasteners"},
	       {"r", UNIT_IN, "from the middle of the group to its corner"},
	       {"J", UNIT_IN2, "sum of the squares of their distances from the middle"}},
	.value = grid_force};

double block_twist(struct trace *trace, double F, double h, double d)
{
	return STEP(trace, step_block_twist, F, h, d);
}

double block_twist_end(struct trace *trace, double T, double at, double clear)
{
	return STEP(trace, step_block_twist_end, T, at, clear);
}

double block_twist_stress(struct trace *trace, double T, double b, double d)
{
	return STEP(trace, step_block_twist_stress, T, b, d);
}

double block_both_ways(struct trace *trace, double fb1, double Fb1, double fb2, double Fb2,
		       double FbE)
{
	return STEP(trace, step_block_both_ways, fb1, Fb1, fb2, Fb2, FbE);
}

/* Sum of the squares of n places spread evenly over `length`, from its middle. */
static double spread(int n, double length)
{
	return n > 1 ? length * length * n * (n + 1) / (12.0 * (n - 1)) : 0;
}

double block_grid_force(struct trace *trace, const struct block_grid *g, double P, double F,
			double T)
{
	const double J =
		g->rows * spread(g->columns, g->wide) + g->columns * spread(g->rows, g->high);
	const double r = hypot(g->columns > 1 ? g->wide / 2 : 0, g->rows > 1 ? g->high / 2 : 0);

	return STEP(trace, step_block_grid_force, P, F, T, (double)(g->columns * g->rows), r, J);
}
