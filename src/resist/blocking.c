/* SPDX-License-Identifier: MIT */
/* Statics of a block and what its ends hang on. The block is a simple beam; its ends carry by side
   load of what is driven through the rafters, in the block's end grain (NDS-2018 12.5.2.2, Ceg
   0.67). Withdrawal from end grain is not allowed, so nothing here counts on it. */
#include "resist/blocking.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

static double end_force(const double *in)
{
	const double P = in[0], a = in[1], s = in[2];

	return P * (s - a) / s;
}

const struct step step_block_end = {
	.name = "block-end",
	.symbol = "R",
	.unit = UNIT_LB,
	.title = "force on the nearer end of a block between rafters",
	.formula = "P (s - a)/s",
	.clause = {"statics"},
	.confidence = DERIVED,
	.note = "P/2 for a foot in the middle",
	.in = {{"P", UNIT_LB, "force of the foot across the roof"},
	       {"a", UNIT_IN, "from the nearer rafter's face to the foot"},
	       {"s", UNIT_IN, "clear between the rafters' faces"}},
	.value = end_force};

static double moment(const double *in)
{
	const double P = in[0], a = in[1], s = in[2];

	return P * a * (s - a) / s;
}

const struct step step_block_moment = {
	.name = "block-moment",
	.symbol = "M",
	.unit = UNIT_LB_IN_M,
	.title = "bending of a block between rafters",
	.formula = "P a (s - a)/s",
	.clause = {"statics"},
	.confidence = DERIVED,
	.note = "P s/4 for a foot in the middle",
	.in = {{"P", UNIT_LB, "force of the foot across the roof"},
	       {"a", UNIT_IN, "from the nearer rafter's face to the foot"},
	       {"s", UNIT_IN, "clear between the rafters' faces"}},
	.value = moment};

static double end_fastener(const double *in)
{
	return in[0] * in[1];
}

const struct step step_block_end_fastener = {
	.name = "block-end-fastener",
	.symbol = "Z'_end",
	.unit = UNIT_LB,
	.title = "side load of one nail or screw in the block's end grain",
	.formula = "Z' Ceg",
	.clause = {"NDS-2018 12.5.2.2"},
	.confidence = ONE_SOURCE,
	.note = "Ceg 0.67; withdrawal from end grain is not allowed",
	.in = {{"Z'", UNIT_LB, "side load of one in side grain, adjusted"},
	       {"Ceg", UNIT_NONE, "end grain factor"}},
	.value = end_fastener};

struct block_forces block_forces(struct trace *trace, const struct block_load *l)
{
	const double near_end = STEP(trace, step_block_end, l->P, l->at, l->clear);

	assert(l->clear > 0.0 && l->at >= 0.0 && l->at <= l->clear);
	return (struct block_forces){near_end, l->P - near_end,
				     STEP(trace, step_block_moment, l->P, l->at, l->clear)};
}

double block_end_fastener(struct trace *trace, double Z_prime)
{
	const struct connection_factor_row *r = connection_factor_row("Ceg", "lateral");

	assert(r != NULL);
	return STEP(trace, step_block_end_fastener, Z_prime, r->value);
}
