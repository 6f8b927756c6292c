/* SPDX-License-Identifier: MIT */
/* LRFD: reference value with the service factors of ASD but for CD, times the format conversion
   factor KF, the resistance factor phi and the time effect factor lambda of the combination
   (NDS-2018 Tables 4.3.1, 11.3.1). Serviceability (E') is not factored. KF and phi are rows of the
   table lrfd-factor; lambda comes with the combination. */
#include "resist/lrfd.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

static double product(const double *in)
{
	return in[0] * in[1] * in[2] * in[3];
}

#define LRFD_INPUTS(u)                                                                             \
	{                                                                                          \
		{"F", u, "adjusted value without load duration"},                                  \
			{"KF", UNIT_NONE, "format conversion"}, {"phi", UNIT_NONE, "resistance"},  \
		{                                                                                  \
			"lambda", UNIT_NONE, "time effect of the combination"                      \
		}                                                                                  \
	}

const struct step step_lrfd_connection = {
	.name = "lrfd-connection",
	.symbol = "Z'n",
	.unit = UNIT_LB,
	.title = "design value of a fastener in wood by LRFD",
	.formula = "F KF phi lambda",
	.clause = {"NDS-2018 Table 11.3.1, N1 to N3"},
	.confidence = ONE_SOURCE,
	.note = "lambda is from memory",
	.in = LRFD_INPUTS(UNIT_LB),
	.value = product};

const struct step step_lrfd_stress = {.name = "lrfd-stress",
				      .symbol = "F'n",
				      .unit = UNIT_PSI,
				      .title = "design stress of lumber by LRFD",
				      .formula = "F KF phi lambda",
				      .clause = {"NDS-2018 Table 4.3.1, N1 to N3"},
				      .confidence = ONE_SOURCE,
				      .note = "lambda is from memory; not applied to E'min; on "
					      "bearing across the grain it is the safe side",
				      .in = LRFD_INPUTS(UNIT_PSI),
				      .value = product};

static double one_half_more(const double *in)
{
	return 1.5 * in[0];
}

const struct step step_lrfd_steel = {
	.name = "lrfd-steel",
	.symbol = "phi Rn",
	.unit = UNIT_LB,
	.title = "design strength of steel that is printed as an allowable",
	.formula = "1.5 Ra",
	.clause = {"AISC 360: phi 0.75 stands beside Omega 2.00"},
	.confidence = FROM_MEMORY,
	.note = "phi = 1.5/Omega throughout that specification",
	.in = {{"Ra", UNIT_LB, "allowable strength"}},
	.value = one_half_more};

static double design_stress(const double *in)
{
	return fmin(0.90 * in[0], 0.75 * in[1] / in[2]);
}

const struct step step_rail_stress_lrfd = {
	.name = "rail-stress-lrfd",
	.symbol = "phi Fb",
	.unit = UNIT_KSI,
	.title = "design bending stress of an aluminium rail by LRFD",
	.formula = "min(0.90 Fty, 0.75 Ftu/kt)",
	.clause = {"Aluminum Design Manual 2015, Part I, F.1, F.2"},
	.confidence = FROM_MEMORY,
	.note = "walls that buckle and open sections that turn over are not covered",
	.in = {{"Fty", UNIT_KSI, "tensile yield strength"},
	       {"Ftu", UNIT_KSI, "tensile ultimate strength"},
	       {"kt", UNIT_NONE, "tension coefficient of the alloy"}},
	.value = design_stress};

/* The published table holds every property asked here. */
static const struct lrfd_factor_row *row(const char *property)
{
	const struct lrfd_factor_row *r = lrfd_factor_row(property);

	assert(r != NULL);
	return r;
}

double lrfd_connection(struct trace *trace, double adjusted, double lambda)
{
	const struct lrfd_factor_row *r = row("connection");

	return STEP(trace, step_lrfd_connection, adjusted, r->KF, r->phi, lambda);
}

static double stress(struct trace *trace, const char *property, double F, double lambda)
{
	const struct lrfd_factor_row *r = row(property);

	return STEP(trace, step_lrfd_stress, F, r->KF, r->phi, lambda);
}

double lrfd_bearing(struct trace *trace, double Fc_perp_prime, double lambda)
{
	return stress(trace, "Fc_perp", Fc_perp_prime, lambda);
}

bool lumber_adjust_lrfd(struct trace *trace, const struct lumber_piece *piece, double lambda,
			const struct lumber_service *service, struct lumber_values *out)
{
	if (!(lambda > 0.0) || !lumber_adjust(trace, piece, 1.0, service, out))
		return false;
	out->CD = lambda;
	out->Fb_star = stress(trace, "Fb", out->Fb_star, lambda);
	out->Fv_prime = stress(trace, "Fv", out->Fv_prime, lambda);
	out->Fc_perp_prime = stress(trace, "Fc_perp", out->Fc_perp_prime, lambda);
	out->Emin_prime = stress(trace, "Emin", out->Emin_prime, 1.0);
	return true;
}

double lrfd_steel(struct trace *trace, double allowable)
{
	return STEP(trace, step_lrfd_steel, allowable);
}

double rail_design_stress(struct trace *trace, const struct rail_alloy *a)
{
	return STEP(trace, step_rail_stress_lrfd, a->Fty, a->Ftu, a->kt);
}
