/* SPDX-License-Identifier: MIT */
/* Lag screws in side grain: withdrawal, tension, lead hole, edge room. The lengths are in
   lag_length.c.

   NDS-2018 12.1.4 (placement), 12.2.1 (withdrawal); NDS-2015 numbers the same clauses alike. Taken
   for granted: the screw stands square to the top edge of a rafter and is turned in, not driven.
   Not covered: end grain except by its factor, screws under 1/4 in, heads pulled through wood. */
#include "resist/lag_screw.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

#define PI 3.14159265358979323846

/* Tensile strength taken for a screw without a strength mark: ASTM A307 class. Common practice. */
#define LAG_FU (60.0e3 * N_PER_LBF / (M_PER_IN * M_PER_IN))

/* lb per inch of thread; D nominal. NDS-2018 Eq. 12.2-1. All 242 cells of Table 12.2A are this,
   rounded. */
static double withdrawal(const double *in)
{
	const double G = in[0], D = in[1];

	return 1800.0 * pow(G, 1.5) * pow(D, 0.75);
}

const struct step step_lag_withdrawal = {
	.name = "lag-withdrawal",
	.symbol = "W",
	.unit = UNIT_LB_IN,
	.title = "reference withdrawal of a lag screw from side grain, per length of thread",
	.formula = "1800 G^1.5 D^0.75",
	.clause = { "NDS-2018 12.2.1, Eq. 12.2-1" },
	.confidence = CONFIRMED,
	.note = "G 0.31 to 0.73, D 1/4 in to 1-1/4 in; D is the nominal diameter",
	.in = { { "G", UNIT_NONE, "assigned specific gravity" },
	        { "D", UNIT_IN, "nominal diameter" } },
	.value = withdrawal
};

static double withdrawal_adjusted(const double *in)
{
	return in[0] * in[1] * in[2] * in[3] * in[4];
}

const struct step step_lag_withdrawal_adjusted = {
	.name = "lag-withdrawal-adjusted", .symbol = "W'", .unit = UNIT_LB_IN,
	.title = "adjusted withdrawal per length of thread",
	.formula = "W CD CM Ct Ceg",
	.clause = { "NDS-2018 Table 11.3.1" },
	.confidence = ONE_SOURCE,
	.in = { { "W", UNIT_LB_IN, "reference withdrawal" },
	        { "CD", UNIT_NONE, "load duration" },
	        { "CM", UNIT_NONE, "wet service" },
	        { "Ct", UNIT_NONE, "temperature" },
	        { "Ceg", UNIT_NONE, "end grain" } },
	.value = withdrawal_adjusted
};

static double withdrawal_capacity(const double *in)
{
	return in[0] * in[1];
}

const struct step step_lag_withdrawal_capacity = {
	.name = "lag-withdrawal-capacity",
	.symbol = "W'p",
	.unit = UNIT_LB,
	.title = "withdrawal of one screw",
	.formula = "W' p_t",
	.clause = { "NDS-2018 12.2.1" },
	.confidence = CONFIRMED,
	.in = { { "W'", UNIT_LB_IN, "adjusted withdrawal" },
	        { "p_t", UNIT_IN, "thread in the wood without the tip" } },
	.value = withdrawal_capacity
};

static double tension(const double *in)
{
	const double Fu = in[0], Dr = in[1];

	return 0.375 * Fu * PI / 4.0 * Dr * Dr;
}

const struct step step_lag_tension = {
	.name = "lag-tension",
	.symbol = "T_s",
	.unit = UNIT_LB,
	.title = "allowable tension of the screw's root section",
	.formula = "0.375 Fu pi Dr^2 / 4",
	.clause = { "NDS-2018 12.2.1.4, 11.2.3 ask for the check; 0.375 Fu is common practice" },
	.confidence = COMMON_PRACTICE,
	.note = "60 ksi is taken for a screw without a strength mark; no load duration factor "
	        "where metal governs",
	.in = { { "Fu", UNIT_PSI, "tensile strength of the steel" },
	        { "Dr", UNIT_IN, "root diameter" } },
	.value = tension
};

static double lead_hole(const double *in)
{
	return in[0] * in[1];
}

const struct step step_lag_lead_hole = { .name = "lag-lead-hole",
	                                 .symbol = "d_lead",
	                                 .unit = UNIT_IN,
	                                 .title = "lead hole for the thread",
	                                 .formula = "r D",
	                                 .clause = { "NDS-2018 12.1.4.2" },
	                                 .confidence = ONE_SOURCE,
	                                 .note = "r by density: 0.65 to 0.85 for G above 0.6, 0.60 "
	                                         "to 0.75 above 0.5, else 0.40 to 0.70",
	                                 .in = { { "r", UNIT_NONE, "part of the diameter" },
	                                         { "D", UNIT_IN, "nominal diameter" } },
	                                 .value = lead_hole };

static double edge_room(const double *in)
{
	const double b = in[0], D = in[1];

	return b / 2.0 - 1.5 * D;
}

const struct step step_lag_edge_room = {
	.name = "lag-edge-room", .symbol = "room", .unit = UNIT_IN,
	.title = "how far the screw may miss the middle of the rafter",
	.formula = "b/2 - 1.5 D",
	.clause = { "NDS-2018 Tables 12.5.1C (load along the grain), 12.5.1E" },
	.confidence = ONE_SOURCE,
	.note = "a hard limit: no reduction buys less edge distance",
	.in = { { "b", UNIT_IN, "breadth of the rafter" }, { "D", UNIT_IN, "nominal diameter" } },
	.value = edge_room
};

static double least_penetration(const double *in)
{
	return 4.0 * in[0];
}

const struct step step_lag_least_penetration = {
	.name = "lag-least-penetration", .symbol = "p_min", .unit = UNIT_IN,
	.title = "least penetration for side load, tip not counted",
	.formula = "4 D",
	.clause = { "NDS-2018 12.1.4.6" },
	.confidence = ONE_SOURCE,
	.in = { { "D", UNIT_IN, "nominal diameter" } },
	.value = least_penetration
};

bool lag_lead_hole(struct trace *trace, double D, double G, double *low, double *high)
{
	const struct lead_hole_row *r = lead_hole_row("lag-screw-thread", G);

	if (r == NULL || isnan(r->fraction_low) || isnan(r->fraction_high))
		return false;
	*low = STEP(trace, step_lag_lead_hole, r->fraction_low, D);
	*high = STEP(trace, step_lag_lead_hole, r->fraction_high, D);
	return true;
}

bool lag_withdrawal_covers(double G, double D)
{
	/* the ends of Table 12.2A */
	return at_least(G, 0.31) && at_most(G, 0.73) && at_least(D, 0.25 * M_PER_IN) &&
	       at_most(D, 1.25 * M_PER_IN);
}

double lag_withdrawal(struct trace *trace, double G, double D)
{
	return STEP(trace, step_lag_withdrawal, G, D);
}

double lag_withdrawal_capacity(struct trace *trace, double W, double p_t,
                               const struct connection_factors *f)
{
	const double W_prime = STEP(trace, step_lag_withdrawal_adjusted, W, f->CD, f->CM_withdrawal,
	                            f->Ct, f->Ceg_withdrawal);

	return STEP(trace, step_lag_withdrawal_capacity, W_prime, p_t);
}

double lag_tension(struct trace *trace, double Dr)
{
	return STEP(trace, step_lag_tension, LAG_FU, Dr);
}

double lag_edge_room(struct trace *trace, double b, double D)
{
	return STEP(trace, step_lag_edge_room, b, D);
}

bool lag_edge_fits(double b, double D, double tolerance)
{
	/* compared as breadths, not as a difference near 0, so that a limit met to the last bit
	   counts as met */
	return at_most(2.0 * tolerance + 3.0 * D, b);
}

double lag_penetration_least(struct trace *trace, double D)
{
	return STEP(trace, step_lag_least_penetration, D);
}

double lag_penetration_full(double D)
{
	return 8.0 * D; /* NDS-2018 Table 12K footnote 3 */
}
