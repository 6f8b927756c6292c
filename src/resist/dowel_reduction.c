/* SPDX-License-Identifier: MIT */
/* Reduction terms Rd that bring a yield load down to a reference value. NDS-2018 Table 12.3.1B.

   K_D is taken at the root of a thread, which is what Table 12L shows: its 90 lb for a No. 10 screw
   (G 0.50, 1/2 in side member) comes out with the root diameter only; with the nominal one it would
   be 82. */
#include "resist/dowel_reduction.h"

#include "resist/resist_steps.h"

static double k_theta(const double *in)
{
	return 1.0 + 0.25 * in[0] / 90.0;
}

const struct step step_yield_k_theta = {
	.name = "yield-k-theta", .symbol = "K_theta", .unit = UNIT_NONE,
	.title = "reduction for load across the grain",
	.formula = "1 + 0.25 theta/90",
	.clause = { "NDS-2018 Table 12.3.1B" },
	.confidence = CONFIRMED,
	.in = { { "theta", UNIT_DEG, "largest angle of load to grain of a wood member" } },
	.value = k_theta
};

static double k_d(const double *in)
{
	return at_most(in[0], 0.17) ? 2.2 : 10.0 * in[0] + 0.5;
}

const struct step step_yield_k_d = {
	.name = "yield-k-d", .symbol = "K_D", .unit = UNIT_NONE,
	.title = "reduction for fasteners that yield below 1/4 in",
	.formula = "2.2 for Dr <= 0.17, else 10 Dr + 0.5",
	.clause = { "NDS-2018 Table 12.3.1B" },
	.confidence = CONFIRMED,
	.note = "taken at the root diameter; only below 1/4 in",
	.in = { { "Dr", UNIT_IN, "diameter that yields" } },
	.value = k_d
};

static double rd_small(const double *in)
{
	const double D = in[0], K_D = in[1], K_theta = in[2];

	return at_least(D, 0.25) ? K_D * K_theta : K_D;
}

const struct step step_yield_rd_small = {
	.name = "yield-rd-small", .symbol = "Rd", .unit = UNIT_NONE,
	.title = "reduction term of every mode, fastener that yields below 1/4 in",
	.formula = "K_D K_theta for D >= 1/4 in (lag screws 1/4 and 5/16 in), else K_D",
	.clause = { "NDS-2018 Table 12.3.1B and footnote 1" },
	.confidence = CONFIRMED,
	.in = { { "D", UNIT_IN, "nominal diameter" },
	        { "K_D", UNIT_NONE, "at the diameter that yields" },
	        { "K_theta", UNIT_NONE, "for load across the grain" } },
	.value = rd_small
};

static double rd_i(const double *in)
{
	return 4.0 * in[0];
}

static double rd_ii(const double *in)
{
	return 3.6 * in[0];
}

static double rd_iii_iv(const double *in)
{
	return 3.2 * in[0];
}

#define RD_STEP(id, text, modes, factor, function)                                        \
	const struct step step_yield_rd_##id = {                                           \
		.name = "yield-rd-" text, .symbol = "Rd", .unit = UNIT_NONE,               \
		.title = "reduction term of " modes, .formula = factor " K_theta",         \
		.clause = { "NDS-2018 Table 12.3.1B" }, .confidence = CONFIRMED,           \
		.note = "for fasteners that yield at 1/4 in to 1 in",                      \
		.in = { { "K_theta", UNIT_NONE, "for load across the grain" } },           \
		.value = function                                                          \
	}
RD_STEP(i, "i", "modes Im and Is", "4", rd_i);
RD_STEP(ii, "ii", "mode II", "3.6", rd_ii);
RD_STEP(iii_iv, "iii-iv", "modes III and IV", "3.2", rd_iii_iv);

void dowel_reduction(struct trace *trace, const struct dowel_joint *j, double Rd[YIELD_MODE_COUNT])
{
	const double K_theta = STEP(trace, step_yield_k_theta, j->theta);

	if (!at_least(j->Dr, 0.25 * M_PER_IN)) {
		const double K_D = STEP(trace, step_yield_k_d, j->Dr);
		const double small = STEP(trace, step_yield_rd_small, j->D, K_D, K_theta);

		for (int m = 0; m < YIELD_MODE_COUNT; m++)
			Rd[m] = small;
		return;
	}
	Rd[MODE_IM] = Rd[MODE_IS] = STEP(trace, step_yield_rd_i, K_theta);
	Rd[MODE_II] = STEP(trace, step_yield_rd_ii, K_theta);
	Rd[MODE_IIIM] = Rd[MODE_IIIS] = Rd[MODE_IV] = STEP(trace, step_yield_rd_iii_iv, K_theta);
}
