/* SPDX-License-Identifier: MIT */
/* Roof live load (ASCE/SEI 7 4.8.2, IBC 1607), weights of collectors, and vertical loads on a
   slope. Uplift takes the dry weight of a collector, down force the filled one: the caller says
   which. The step table of IRC Table R301.6 is another way to the same load. */
#include "load/gravity.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_snow.h"

static double R1_value(const double *in)
{
	return smaller(1.0, larger(0.6, 1.2 - 0.001 * in[0]));
}

#define LIVE_CLAUSES                                                                               \
	{                                                                                          \
		[ASCE7_10] = "ASCE/SEI 7-10 4.8.2", [ASCE7_16] = "ASCE/SEI 7-16 4.8.2",            \
		[ASCE7_22] = "ASCE/SEI 7-22 4.8.2; IBC 2021 1607.14.2.1"                           \
	}

const struct step step_roof_live_R1 = {
	.name = "roof-live-R1",
	.symbol = "R1",
	.unit = UNIT_NONE,
	.title = "reduction of roof live load for a large area",
	.formula = "1.2 - 0.001 At, 1 at most, 0.6 at least",
	.clause = LIVE_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"At", UNIT_FT2, "tributary area of the member on plan"}},
	.value = R1_value,
};

static double R2_value(const double *in)
{
	const double F = 12.0 * tan(in[0] * RAD_PER_DEG);

	return smaller(1.0, larger(0.6, 1.2 - 0.05 * F));
}

const struct step step_roof_live_R2 = {
	.name = "roof-live-R2",
	.symbol = "R2",
	.unit = UNIT_NONE,
	.title = "reduction of roof live load for a steep roof",
	.formula = "1.2 - 0.05 (12 tan(theta)), 1 at most, 0.6 at least",
	.clause = LIVE_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "a summary of ASCE/SEI 7-22 4.8 has 1 up to 4 in, 1.2 - 0.05 F, 0.6 from 12 in",
	.in = {{"theta", UNIT_DEG, "roof angle"}},
	.value = R2_value,
};

static double Lr_value(const double *in)
{
	return smaller(20.0, larger(12.0, in[0] * in[1] * in[2]));
}

const struct step step_roof_live = {
	.name = "roof-live",
	.symbol = "Lr",
	.unit = UNIT_PSF,
	.title = "roof live load, on plan",
	.formula = "Lo R1 R2, 12 at least, 20 at most",
	.clause = LIVE_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"Lo", UNIT_PSF, "unreduced roof live load"},
	       {"R1", UNIT_NONE, "reduction for area"},
	       {"R2", UNIT_NONE, "reduction for slope"}},
	.value = Lr_value,
};

double gravity_roof_live(double At, double theta, struct trace *trace)
{
	const double R1 = STEP(trace, step_roof_live_R1, At);
	const double R2 = STEP(trace, step_roof_live_R2, theta);

	return STEP(trace, step_roof_live, unit_to_si(roof_live_row()->Lo_psf, UNIT_PSF), R1, R2);
}

static double Lr_irc_value(const double *in)
{
	const struct roof_live_irc_row *row =
		roof_live_irc_row(12.0 * tan(in[1] * RAD_PER_DEG), in[0]);

	return row == NULL ? (double)NAN : row->Lr_psf;
}

const struct step step_roof_live_irc = {
	.name = "roof-live-irc",
	.symbol = "Lr",
	.unit = UNIT_PSF,
	.title = "roof live load of a dwelling, on plan",
	.formula = "IRC Table R301.6 by At and theta",
	.clause = {[EDITION_ANY] = "IRC 2018, 2021, 2024 Table R301.6"},
	.confidence = FROM_MEMORY,
	.in = {{"At", UNIT_FT2, "tributary area of the member on plan"},
	       {"theta", UNIT_DEG, "roof angle"}},
	.value = Lr_irc_value,
};

double gravity_roof_live_irc(double At, double theta, struct trace *trace)
{
	return STEP(trace, step_roof_live_irc, At, theta);
}

/* litres times kg/m3 over 1000 are kilograms. */
static double fluid_value(const double *in)
{
	return in[0] * in[1] / 1000.0;
}

const struct step step_fluid_weight = {
	.name = "fluid-weight",
	.symbol = "wf",
	.unit = UNIT_KG,
	.title = "weight of the fluid in a collector",
	.formula = "V rho/1000",
	.clause = {[EDITION_ANY] = "arithmetic"},
	.confidence = DERIVED,
	.in = {{"V", UNIT_LITRE, "volume of fluid in one collector"},
	       {"rho", UNIT_KG_M3, "density of the fluid"}},
	.value = fluid_value,
};

double gravity_fluid_weight(double volume, enum gravity_fluid fluid, struct trace *trace)
{
	const struct fluid_row *row = NULL;

	if (fluid != GRAVITY_NO_FLUID)
		row = fluid_row(fluid == GRAVITY_WATER ? "water" : "glycol");
	if (row == NULL)
		return 0.0;
	return STEP(trace, step_fluid_weight, volume, unit_to_si(row->density_kg_m3, UNIT_KG_M3));
}

static double array_dead_value(const double *in)
{
	return in[0] / in[1] + in[2];
}

const struct step step_array_dead = {
	.name = "array-dead",
	.symbol = "Da",
	.unit = UNIT_PSF,
	.title = "dead load of the array on its own area",
	.formula = "w/A + hw",
	.clause = {[EDITION_ANY] = "statics"},
	.confidence = DERIVED,
	.in = {{"w", UNIT_LB, "weight of one collector, dry or filled"},
	       {"A", UNIT_FT2, "area of one collector"},
	       {"hw", UNIT_PSF, "rails, feet and clamps"}},
	.value = array_dead_value,
};

double gravity_array_dead(double weight, double area, double hardware, struct trace *trace)
{
	return STEP(trace, step_array_dead, weight, area, hardware);
}
