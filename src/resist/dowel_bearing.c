/* SPDX-License-Identifier: MIT */
/* Dowel bearing strength of wood and steel. NDS-2018 Table 12.3.3 (footnote 2 has the equations;
   the table is printed to 50 psi and used so), 12.3.4 (angle to grain). D is the nominal diameter
   here, though the root yields. */
#include "resist/dowel.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "table/lookup_metal.h"

static double to_50(double psi)
{
	return 50.0 * floor(psi / 50.0 + 0.5);
}

static double parallel(const double *in)
{
	return to_50(11200.0 * in[0]);
}

const struct step step_dowel_bearing_parallel = {
	.name = "dowel-bearing-parallel", .symbol = "Fe_par", .unit = UNIT_PSI,
	.title = "dowel bearing strength along the grain, D from 1/4 in",
	.formula = "11200 G to the nearest 50",
	.clause = { "NDS-2018 Table 12.3.3 footnote 2" },
	.confidence = CONFIRMED,
	.in = { { "G", UNIT_NONE, "assigned specific gravity" } },
	.value = parallel
};

static double perpendicular(const double *in)
{
	return to_50(6100.0 * pow(in[0], 1.45) / sqrt(in[1]));
}

const struct step step_dowel_bearing_perpendicular = {
	.name = "dowel-bearing-perpendicular",
	.symbol = "Fe_perp",
	.unit = UNIT_PSI,
	.title = "dowel bearing strength across the grain, D from 1/4 in",
	.formula = "6100 G^1.45 / sqrt(D) to the nearest 50",
	.clause = { "NDS-2018 Table 12.3.3 footnote 2" },
	.confidence = CONFIRMED,
	.in = { { "G", UNIT_NONE, "assigned specific gravity" },
	        { "D", UNIT_IN, "nominal diameter" } },
	.value = perpendicular
};

static double small(const double *in)
{
	return to_50(16600.0 * pow(in[0], 1.84));
}

const struct step step_dowel_bearing_small = {
	.name = "dowel-bearing-small", .symbol = "Fe", .unit = UNIT_PSI,
	.title = "dowel bearing strength at any angle, D below 1/4 in",
	.formula = "16600 G^1.84 to the nearest 50",
	.clause = { "NDS-2018 Table 12.3.3 footnote 2" },
	.confidence = CONFIRMED,
	.in = { { "G", UNIT_NONE, "assigned specific gravity" } },
	.value = small
};

static double hankinson(const double *in)
{
	const double par = in[0], perp = in[1], theta = in[2] * RAD_PER_DEG;
	const double s = sin(theta), c = cos(theta);

	return par * perp / (par * s * s + perp * c * c);
}

const struct step step_dowel_bearing_angle = {
	.name = "dowel-bearing-angle", .symbol = "Fe_theta", .unit = UNIT_PSI,
	.title = "dowel bearing strength at an angle to the grain (Hankinson)",
	.formula = "Fe_par Fe_perp / (Fe_par sin^2 theta + Fe_perp cos^2 theta)",
	.clause = { "NDS-2018 12.3.4" },
	.confidence = CONFIRMED,
	.in = { { "Fe_par", UNIT_PSI, "along the grain" },
	        { "Fe_perp", UNIT_PSI, "across the grain" },
	        { "theta", UNIT_DEG, "angle of load to grain" } },
	.value = hankinson
};

double dowel_bearing_wood(struct trace *trace, double G, double D, double theta)
{
	double par;

	if (!at_least(D, 0.25 * M_PER_IN))
		return STEP(trace, step_dowel_bearing_small, G);
	par = STEP(trace, step_dowel_bearing_parallel, G);
	if (!(theta > 0.0))
		return par;
	return STEP(trace, step_dowel_bearing_angle, par,
	            STEP(trace, step_dowel_bearing_perpendicular, G, D), theta);
}

bool dowel_bearing_steel(double t, double *Fe)
{
	const struct steel_bearing_row *r = steel_bearing_row(t / M_PER_IN);

	if (r == NULL)
		return false;
	*Fe = unit_to_si(r->Fe_psi, UNIT_PSI);
	return true;
}
