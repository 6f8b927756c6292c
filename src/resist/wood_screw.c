/* SPDX-License-Identifier: MIT */
/* Wood screws in side grain. NDS-2018 12.1.5 (placement), 12.2.2 (withdrawal), 12.3 (side load).

   Below 1/4 in the geometry factor is 1 and there is no printed edge distance (12.5.1.1): the wood
   must only not split. In end grain a wood screw may not be loaded in withdrawal (12.2.2.3); this
   room rates side grain alone. */
#include "resist/wood_screw.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "table/lookup_fastener.h"
#include "table/lookup_wood.h"

/* lb per inch of thread; D nominal. NDS-2018 Eq. 12.2-2; cells of Table 12.2B are this, rounded. */
static double withdrawal(const double *in)
{
	const double G = in[0], D = in[1];

	return 2850.0 * G * G * D;
}

const struct step step_wood_screw_withdrawal = {
	.name = "wood-screw-withdrawal",
	.symbol = "W",
	.unit = UNIT_LB_IN,
	.title = "reference withdrawal of a wood screw from side grain, per length of thread",
	.formula = "2850 G^2 D",
	.clause = {"NDS-2018 12.2.2, Eq. 12.2-2"},
	.confidence = CONFIRMED,
	.note = "G 0.31 to 0.73, No. 6 to No. 24; not in end grain",
	.in = {{"G", UNIT_NONE, "assigned specific gravity"}, {"D", UNIT_IN, "nominal diameter"}},
	.value = withdrawal};

static double thread_length(const double *in)
{
	const double L = in[0], D = in[1];

	return fmin(L, fmax(2.0 * L / 3.0, 4.0 * D));
}

const struct step step_wood_screw_thread_length = {
	.name = "wood-screw-thread-length",
	.symbol = "T",
	.unit = UNIT_IN,
	.title = "thread of a wood screw with cut thread",
	.formula = "max(2 L/3, 4 D)",
	.clause = {"NDS-2018 Appendix L, Table L3"},
	.confidence = ONE_SOURCE,
	.in = {{"L", UNIT_IN, "length"}, {"D", UNIT_IN, "nominal diameter"}},
	.value = thread_length};

static double tip(const double *in)
{
	return 2.0 * in[0];
}

const struct step step_wood_screw_tip = {
	.name = "wood-screw-tip",
	.symbol = "E",
	.unit = UNIT_IN,
	.title = "tapered tip of a wood screw",
	.formula = "2 D",
	.clause = {"NDS-2018 Appendix L, Table L3"},
	.confidence = ONE_SOURCE,
	.note = "not counted as thread here, which is the safe side",
	.in = {{"D", UNIT_IN, "nominal diameter"}},
	.value = tip};

static double least_penetration(const double *in)
{
	return 6.0 * in[0];
}

const struct step step_wood_screw_least_penetration = {
	.name = "wood-screw-least-penetration",
	.symbol = "p_min",
	.unit = UNIT_IN,
	.title = "least penetration of a wood screw for side load, tip counted",
	.formula = "6 D",
	.clause = {"NDS-2018 12.1.5.6"},
	.confidence = ONE_SOURCE,
	.in = {{"D", UNIT_IN, "nominal diameter"}},
	.value = least_penetration};

static double lead_hole(const double *in)
{
	return in[0] * in[1];
}

const struct step step_wood_screw_lead_hole = {
	.name = "wood-screw-lead-hole",
	.symbol = "d_lead",
	.unit = UNIT_IN,
	.title = "lead hole for a wood screw loaded in withdrawal",
	.formula = "r Dr",
	.clause = {"NDS-2018 12.1.5.2"},
	.confidence = FROM_MEMORY,
	.note = "r 0.90 for G above 0.6, 0.70 above 0.5; none asked for below",
	.in = {{"r", UNIT_NONE, "part of the root diameter"}, {"Dr", UNIT_IN, "root diameter"}},
	.value = lead_hole};

static bool positive(double x)
{
	return isfinite(x) && x > 0.0;
}

bool wood_screw_geometry_find(struct trace *trace, double D, double L, double T, double t_up,
			      double depth, struct lag_screw_geometry *out)
{
	struct lag_screw_geometry g = {.L = L, .t_up = t_up, .depth = depth};
	const struct wood_screw_row *screw;
	const struct bending_yield_row *steel;

	if (!positive(D) || !positive(L) || !positive(depth) || !isfinite(t_up) || t_up < 0.0 ||
	    (!isnan(T) && !(positive(T) && at_most(T, L))))
		return false;
	screw = wood_screw_row(D / M_PER_IN);
	steel = screw == NULL ? NULL : bending_yield_row("nail-or-wood-screw", screw->D_in);
	if (screw == NULL || steel == NULL)
		return false;
	g.D = screw->D_in * M_PER_IN;
	g.Dr = screw->Dr_in * M_PER_IN;
	g.Fyb = unit_to_si(steel->Fyb_psi, UNIT_PSI);
	g.E = STEP(trace, step_wood_screw_tip, g.D);
	g.T = isnan(T) ? STEP(trace, step_wood_screw_thread_length, L, g.D) : T;
	g.p_tot = STEP(trace, step_lag_embedment, L, t_up, depth);
	g.p = STEP(trace, step_lag_penetration, L, t_up, g.E, depth);
	g.p_t = STEP(trace, step_lag_thread_in_wood, L, g.T, g.E, t_up, depth);
	g.l_m = STEP(trace, step_lag_bearing_length, L, t_up, g.E, depth);
	g.through = !at_most(L - t_up, depth);
	*out = g;
	return true;
}

bool wood_screw_withdrawal_covers(double G, double D)
{
	return at_least(G, 0.31) && at_most(G, 0.73) && wood_screw_row(D / M_PER_IN) != NULL;
}

double wood_screw_withdrawal(struct trace *trace, double G, double D)
{
	return STEP(trace, step_wood_screw_withdrawal, G, D);
}

double wood_screw_penetration_least(struct trace *trace, double D)
{
	return STEP(trace, step_wood_screw_least_penetration, D);
}

bool wood_screw_lateral_find(struct trace *trace, const struct lag_screw_geometry *s, double G,
			     double theta, double t, double gap, struct lag_lateral *out)
{
	if (!lag_lateral_find(trace, s, G, theta, t, gap, out))
		return false;
	out->permitted = at_least(s->p_tot, wood_screw_penetration_least(trace, s->D));
	return true;
}

bool wood_screw_lead_hole(struct trace *trace, const struct lag_screw_geometry *s, double G,
			  double *low, double *high)
{
	const struct lead_hole_row *r = lead_hole_row("wood-screw-withdrawal", G);

	if (r == NULL)
		return false;
	*low = *high = 0.0;
	if (!isnan(r->fraction_low))
		*low = *high = STEP(trace, step_wood_screw_lead_hole, r->fraction_low, s->Dr);
	return true;
}
