/* SPDX-License-Identifier: MIT */
/* The four lengths of a lag screw in a rafter: with the tip, without it, thread without the tip,
   bearing length. One check each; none stands in for another.

   NDS-2018 12.1.4.6, 12.2.1, 12.3.5.3, Appendix L (dimensions). A screw longer than rafter and
   layers together comes out of the far side: only what is inside the rafter counts, and its tip
   then no longer matters. */
#include "resist/lag_screw.h"

#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

/* T = min(6, L/2 + 0.5), in. */
static double thread_length(const double *in)
{
	return fmin(6.0, in[0] / 2.0 + 0.5);
}

const struct step step_lag_thread_length = {
	.name = "lag-thread-length",
	.symbol = "T",
	.unit = UNIT_IN,
	.title = "thread of a lag screw, tip included",
	.formula = "min(6, L/2 + 0.5)",
	.clause = { "NDS-2018 Appendix L, Table L2 footnote 2" },
	.confidence = ONE_SOURCE,
	.note = "a minimum: the maker may thread more; L from 1-1/2 in (Table L2 gives a 1 in "
	        "screw only 3/4 in)",
	.in = { { "L", UNIT_IN, "length under the head" } },
	.value = thread_length
};

static double length_in_wood(double reach, double d)
{
	return fmax(0.0, fmin(reach, d));
}

static double embedment(const double *in)
{
	const double L = in[0], t_up = in[1], d = in[2];

	return length_in_wood(L - t_up, d);
}

const struct step step_lag_embedment = {
	.name = "lag-embedment", .symbol = "p_tot", .unit = UNIT_IN,
	.title = "length in the wood, tip included",
	.formula = "min(L - t_up, d), at least 0",
	.clause = { "geometry; NDS-2018 12.3.5.3" },
	.confidence = DERIVED,
	.in = { { "L", UNIT_IN, "length under the head" },
	        { "t_up", UNIT_IN, "everything between head and rafter face" },
	        { "d", UNIT_IN, "depth of the rafter or block" } },
	.value = embedment
};

static double penetration(const double *in)
{
	const double L = in[0], t_up = in[1], E = in[2], d = in[3];

	return length_in_wood(L - t_up - E, d);
}

const struct step step_lag_penetration = {
	.name = "lag-penetration", .symbol = "p", .unit = UNIT_IN,
	.title = "length in the wood without the tip",
	.formula = "min(L - t_up - E, d), at least 0",
	.clause = { "NDS-2018 12.1.4.6" },
	.confidence = ONE_SOURCE,
	.in = { { "L", UNIT_IN, "length under the head" },
	        { "t_up", UNIT_IN, "everything between head and rafter face" },
	        { "E", UNIT_IN, "tapered tip" },
	        { "d", UNIT_IN, "depth of the rafter or block" } },
	.value = penetration
};

/* Thread runs from L - T to L - E under the head, the rafter from t_up to t_up + d: the length they
   share. While the screw stays inside the rafter this is min(T, p_tot) - E. */
static double thread_in_wood(const double *in)
{
	const double L = in[0], T = in[1], E = in[2], t_up = in[3], d = in[4];

	return fmax(0.0, fmin(L - t_up - E, d) - fmax(L - t_up - T, 0.0));
}

const struct step step_lag_thread_in_wood = {
	.name = "lag-thread-in-wood", .symbol = "p_t", .unit = UNIT_IN,
	.title = "thread in the wood without the tip",
	.formula = "min(L - t_up - E, d) - max(L - t_up - T, 0), at least 0",
	.clause = { "NDS-2018 12.2.1" },
	.confidence = ONE_SOURCE,
	.note = "the length that withdrawal multiplies; the tapered tip is not counted",
	.in = { { "L", UNIT_IN, "length under the head" },
	        { "T", UNIT_IN, "thread, tip included" },
	        { "E", UNIT_IN, "tapered tip" },
	        { "t_up", UNIT_IN, "everything between head and rafter face" },
	        { "d", UNIT_IN, "depth of the rafter or block" } },
	.value = thread_in_wood
};

static double bearing_length(const double *in)
{
	const double L = in[0], t_up = in[1], E = in[2], d = in[3];

	return length_in_wood(L - t_up - E / 2.0, d);
}

const struct step step_lag_bearing_length = {
	.name = "lag-bearing-length", .symbol = "lm", .unit = UNIT_IN,
	.title = "bearing length in the wood for side load",
	.formula = "min(L - t_up - E/2, d), at least 0",
	.clause = { "NDS-2018 12.3.5.3" },
	.confidence = CONFIRMED,
	.in = { { "L", UNIT_IN, "length under the head" },
	        { "t_up", UNIT_IN, "everything between head and rafter face" },
	        { "E", UNIT_IN, "tapered tip" },
	        { "d", UNIT_IN, "depth of the rafter or block" } },
	.value = bearing_length
};

static bool positive(double x)
{
	return isfinite(x) && x > 0.0;
}

bool lag_screw_geometry_find(struct trace *trace, double D, double L, double T, double t_up,
                             double depth, struct lag_screw_geometry *out)
{
	const struct lag_screw_row *screw;
	const struct bending_yield_row *steel;
	struct lag_screw_geometry g = { .D = D, .L = L, .t_up = t_up, .depth = depth };

	if (!positive(D) || !positive(L) || !positive(depth) || !isfinite(t_up) || t_up < 0.0)
		return false;
	if (isnan(T) ? !at_least(L, 1.5 * M_PER_IN) : !(positive(T) && at_most(T, L)))
		return false;
	screw = lag_screw_row(D / M_PER_IN);
	steel = bending_yield_row("lag-screw", D / M_PER_IN);
	if (screw == NULL || steel == NULL)
		return false;
	g.Dr = screw->Dr_in * M_PER_IN;
	g.E = screw->E_in * M_PER_IN;
	g.Fyb = unit_to_si(steel->Fyb_psi, UNIT_PSI);
	g.T = isnan(T) ? STEP(trace, step_lag_thread_length, L) : T;
	g.p_tot = STEP(trace, step_lag_embedment, L, t_up, depth);
	g.p = STEP(trace, step_lag_penetration, L, t_up, g.E, depth);
	g.p_t = STEP(trace, step_lag_thread_in_wood, L, g.T, g.E, t_up, depth);
	g.l_m = STEP(trace, step_lag_bearing_length, L, t_up, g.E, depth);
	g.through = !at_most(L - t_up, depth);
	*out = g;
	return true;
}
