/* SPDX-License-Identifier: MIT */
/* Thrust of rafters without a ridge beam, and IRC's allowance for raised ties. The rest of the heel
   (nails, plates, walls) stays with whoever designs it. */
#include "resist/heel.h"

#include <math.h>

#include "resist/resist_steps.h"

static double thrust(const double *in)
{
	const double w = in[0], B = in[1], theta = in[2] * RAD_PER_DEG;

	return w * B / (4.0 * tan(theta));
}

const struct step step_heel_thrust = {
	.name = "heel-thrust",
	.symbol = "H",
	.unit = UNIT_PLF,
	.title = "thrust of a pair of rafters on its tie, per length of eave",
	.formula = "w B/(4 tan theta)",
	.clause = {"statics: (w B/2)/(2 tan theta)"},
	.confidence = DERIVED,
	.note = "uniform load on both slopes, ridge board, ties at the plate",
	.in = {{"w", UNIT_PSF, "vertical load on plan"},
	       {"B", UNIT_FT, "width of the house, wall to wall"},
	       {"theta", UNIT_DEG, "roof angle"}},
	.value = thrust};

/* The footnote lists 1/3 0.67, 1/4 0.76, 1/5 0.83, 1/6 0.90, 1/7.5 and less 1.00; between them the
   lower one is taken. */
static double factor(const double *in)
{
	static const struct {
		double share, factor;
	} row[] = {{1.0 / 7.5, 1.00},
		   {1.0 / 6.0, 0.90},
		   {1.0 / 5.0, 0.83},
		   {1.0 / 4.0, 0.76},
		   {1.0 / 3.0, 0.67}};

	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		if (at_most(in[0], row[i].share * in[1]))
			return row[i].factor;
	return 0.0;
}

const struct step step_raised_tie_factor = {
	.name = "raised-tie-factor",
	.symbol = "k_tie",
	.unit = UNIT_NONE,
	.title = "factor on the allowed span of rafters whose ties stand above the plate",
	.formula = "by h/H: 1/7.5 and less 1.00, 1/6 0.90, 1/5 0.83, 1/4 0.76, 1/3 0.67, above 0",
	.clause = {"IRC Table R802.4.1 (R802.5.1 before 2018), footnote on ties"},
	.confidence = FROM_MEMORY,
	.note = "between two rows the lower factor; above a third a ridge beam is needed",
	.in = {{"h", UNIT_IN, "ties above the plate"}, {"H", UNIT_IN, "ridge above the plate"}},
	.value = factor};

double heel_thrust(struct trace *trace, double w, double width, double theta)
{
	return STEP(trace, step_heel_thrust, w, width, theta);
}

bool raised_tie_factor(struct trace *trace, double h, double H, double *f)
{
	*f = STEP(trace, step_raised_tie_factor, h, H);
	return *f > 0.0;
}
