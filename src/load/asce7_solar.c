/* SPDX-License-Identifier: MIT */
/* Wind on collectors parallel to the roof, ASCE/SEI 7-16 and 7-22 section 29.4.4: p = qh
   (GCp)(gammaE)(gammaa), in 7-22 times Kd, without internal pressure. gammaa (air reaching both
   faces through the gaps) may reduce the pressure only while every condition of the clause holds;
   otherwise this program takes gammaa = 1 with the full GCp and keeps gammaE (our rule: the clause
   then gives nothing). 7-10 has no such clause: there the pressure is that of the roof, internal
   pressure included, as permit calculations of that edition do it.

   Two readings. gammaE is taken for everything within 1.5 Lp of an exposed side, though the words
   may mean the panels that are themselves exposed. The spacing of gaps is taken as the size of one
   collector in either direction, so that a long collector fails even in a single row, where the
   outer sides of the array might count as gaps. Both err on the safe side. */
#include "load/asce7_solar.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"

static double gammaa_value(const double *in)
{
	return smaller(0.8, larger(0.4, 1.2 - 0.4 * log10(in[0])));
}

const struct step step_solar_gamma_a = {
	.name = "solar-gamma-a",
	.symbol = "gammaa",
	.unit = UNIT_NONE,
	.title = "pressure equalization factor of flush collectors",
	.formula = "1.2 - 0.4 log10(A), 0.8 at most, 0.4 at least",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Fig. 29.4-8",
		   [ASCE7_22] = "ASCE/SEI 7-22 Fig. 29.4-8"},
	.confidence = CONFIRMED,
	.in = {{"A", UNIT_FT2, "effective wind area"}},
	.value = gammaa_value,
};

static double gammaE_value(const double *in)
{
	return in[0] <= 0.5 ? 1.0 : 1.5;
}

const struct step step_solar_gamma_E = {
	.name = "solar-gamma-E",
	.symbol = "gammaE",
	.unit = UNIT_NONE,
	.title = "array edge factor",
	.formula = "1.5 if e = 1, else 1.0",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 29.4.3, 29.4.4",
		   [ASCE7_22] = "ASCE/SEI 7-22 29.4.3, 29.4.4"},
	.confidence = CONFIRMED,
	.note = "the value 1.5; that it is for uplift alone, and the words for exposed, are from "
		"memory",
	.in = {{"e", UNIT_NONE,
		"1 for uplift within 1.5 Lp of an exposed side of the array, else 0"}},
	.value = gammaE_value,
};

static double shelter_value(const double *in)
{
	return larger(4.0 * in[0], 4.0);
}

const struct step step_solar_shelter_distance = {
	.name = "solar-shelter-distance",
	.symbol = "ds",
	.unit = UNIT_FT,
	.title = "how near a neighbour must be to shelter a side of the array",
	.formula = "max(4 h2, 4)",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 29.4.3 (exposed)",
		   [ASCE7_22] = "ASCE/SEI 7-22 29.4.3 (exposed)"},
	.confidence = FROM_MEMORY,
	.in = {{"h2", UNIT_FT, "height of the top of the collectors above the roof"}},
	.value = shelter_value,
};

static double row_end_value(const double *in)
{
	return 1.5 * in[0];
}

const struct step step_solar_row_end = {
	.name = "solar-row-end",
	.symbol = "de",
	.unit = UNIT_FT,
	.title = "depth of the strip along an exposed side where gammaE is 1.5",
	.formula = "1.5 Lp",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 29.4.3, 29.4.4",
		   [ASCE7_22] = "ASCE/SEI 7-22 29.4.3, 29.4.4"},
	.confidence = ONE_SOURCE,
	.note = "quoted from 7-16 in a question on ASCE's own exchange",
	.in = {{"Lp", UNIT_FT, "chord of a collector, up the slope"}},
	.value = row_end_value,
};

static double clear_value(const double *in)
{
	return 2.0 * in[0];
}

const struct step step_solar_edge_distance = {
	.name = "solar-edge-distance",
	.symbol = "dmin",
	.unit = UNIT_IN,
	.title = "least distance of the array from roof edges and ridges for gammaa",
	.formula = "2 h2",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 29.4.4", [ASCE7_22] = "ASCE/SEI 7-22 29.4.4"},
	.confidence = FROM_MEMORY,
	.in = {{"h2", UNIT_IN, "height of the top of the collectors above the roof"}},
	.value = clear_value,
};

static double p_value(const double *in)
{
	return in[0] * in[1] * in[2] * in[3];
}

const struct step step_solar_flush_pressure = {
	.name = "solar-flush-pressure",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on collectors parallel to the roof",
	.formula = "qh GCp gammaE gammaa",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Eq. 29.4-7"},
	.confidence = CONFIRMED,
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height"},
	       {"GCp", UNIT_NONE,
		"external pressure coefficient of the roof, negative away from it"},
	       {"gammaE", UNIT_NONE, "array edge factor"},
	       {"gammaa", UNIT_NONE, "pressure equalization factor"}},
	.value = p_value,
};

static double p_7_22_value(const double *in)
{
	return in[0] * in[1] * in[2] * in[3] * in[4];
}

const struct step step_solar_flush_pressure_7_22 = {
	.name = "solar-flush-pressure-7-22",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on collectors parallel to the roof, with Kd",
	.formula = "qh Kd GCp gammaE gammaa",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 29.4.4"},
	.confidence = FROM_MEMORY,
	.note = "qh of 7-22 does not hold Kd",
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height, without Kd"},
	       {"Kd", UNIT_NONE, "wind directionality factor"},
	       {"GCp", UNIT_NONE,
		"external pressure coefficient of the roof, negative away from it"},
	       {"gammaE", UNIT_NONE, "array edge factor"},
	       {"gammaa", UNIT_NONE, "pressure equalization factor"}},
	.value = p_7_22_value,
};

/* at_most takes an infinite x for the limit's equal, so infinity is asked for by itself. */
static bool farther(double x, double limit)
{
	return isinf(x) || !at_most(x, limit);
}

unsigned solar_exposed_sides(const struct array_surroundings *s, struct trace *trace)
{
	const double shelter = STEP(trace, step_solar_shelter_distance, s->h2);
	unsigned exposed = 0;

	for (int side = 0; side < ARRAY_SIDE_COUNT; side++)
		if (farther(s->to_roof_edge[side], 0.5 * s->h) &&
		    farther(s->to_array[side], shelter))
			exposed |= 1u << side;
	return exposed;
}

bool solar_row_end(const struct array_surroundings *s, unsigned exposed_sides,
		   const double from[ARRAY_SIDE_COUNT], struct trace *trace)
{
	const double depth = STEP(trace, step_solar_row_end, s->Lp);

	for (int side = 0; side < ARRAY_SIDE_COUNT; side++)
		if ((exposed_sides & 1u << side) != 0 && !farther(from[side], depth))
			return true;
	return false;
}

/* Without the provision a collector is a piece of the roof. */
static struct wind_pressure without_provision(enum edition edition,
					      const struct wind_velocity *wind,
					      const struct array_wind *array, struct trace *trace)
{
	return asce7_roof_pressure(edition, wind, array->GCp, array->GCpi, !array->without_minimum,
				   trace);
}

struct wind_pressure asce7_array_pressure(enum edition edition, const struct wind_velocity *wind,
					  const struct array_wind *array, struct trace *trace)
{
	const bool uplift = array->GCp < 0.0;
	struct wind_pressure w = {.gammaa = 1.0};

	if (edition == ASCE7_10)
		return without_provision(edition, wind, array, trace);
	w.gammaE = STEP(trace, step_solar_gamma_E, uplift && array->exposed ? 1.0 : 0.0);
	if (array->flush_failed == 0)
		w.gammaa = STEP(trace, step_solar_gamma_a, array->A);
	if (edition == ASCE7_22)
		w.computed = STEP(trace, step_solar_flush_pressure_7_22, wind->qh, wind->Kd_of_p,
				  array->GCp, w.gammaE, w.gammaa);
	else
		w.computed = STEP(trace, step_solar_flush_pressure, wind->qh, array->GCp, w.gammaE,
				  w.gammaa);
	w.p = w.computed;
	return array->without_minimum ? w : asce7_least_pressure(w, trace);
}
