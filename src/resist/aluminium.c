/* SPDX-License-Identifier: MIT */
/* Aluminium rail: allowable bending stress of an extrusion. Aluminum Design Manual 2015, Part I,
   F.2 and Table A.3.3: yielding Fty/1.65, rupture Ftu/(kt 1.95). kt is 1.25 for 6005-T5 and
   6105-T5, so rupture governs them. */
#include "resist/aluminium.h"

#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_metal.h"

static double stress(const double *in)
{
	const double Fty = in[0], Ftu = in[1], kt = in[2];

	return fmin(Fty / 1.65, Ftu / (kt * 1.95));
}

const struct step step_rail_stress = {
	.name = "rail-stress",
	.symbol = "Fb/Omega",
	.unit = UNIT_KSI,
	.title = "allowable bending stress of an aluminium rail",
	.formula = "min(Fty/1.65, Ftu/(1.95 kt))",
	.clause = { "Aluminum Design Manual 2015, Part I, F.2, Table A.3.3" },
	.confidence = FROM_MEMORY,
	.note = "1.65 and 1.95 from memory; walls that buckle and open sections that turn over are "
	        "not covered",
	.in = { { "Fty", UNIT_KSI, "tensile yield strength" },
	        { "Ftu", UNIT_KSI, "tensile ultimate strength" },
	        { "kt", UNIT_NONE, "tension coefficient of the alloy" } },
	.value = stress
};

static double moment(const double *in)
{
	return in[0] * in[1] * 1000.0; /* in3 ksi to lb in */
}

const struct step step_rail_moment = {
	.name = "rail-moment",
	.symbol = "M_a",
	.unit = UNIT_LB_IN_M,
	.title = "moment that an aluminium rail may carry",
	.formula = "1000 S F",
	.clause = { "Aluminum Design Manual 2015, Part I, F.2" },
	.confidence = SAFE_SIDE,
	.note = "on the elastic modulus: a lower bound of the section's strength",
	.in = { { "S", UNIT_IN3, "elastic section modulus" },
	        { "F", UNIT_KSI, "bending stress that it may carry" } },
	.value = moment
};

bool rail_alloy_find(const char *alloy, struct rail_alloy *out)
{
	const struct aluminium_alloy_row *r = aluminium_alloy_row(alloy);

	if (r == NULL)
		return false;
	*out = (struct rail_alloy){
		.name = r->alloy,
		.Fty = unit_to_si(r->Fty_ksi, UNIT_KSI),
		.Ftu = unit_to_si(r->Ftu_ksi, UNIT_KSI),
		.E = unit_to_si(r->E_ksi, UNIT_KSI),
		.kt = r->kt,
		.confidence = r->status
	};
	return true;
}

double rail_allowable_stress(struct trace *trace, const struct rail_alloy *a)
{
	return STEP(trace, step_rail_stress, a->Fty, a->Ftu, a->kt);
}

double rail_allowable_moment(struct trace *trace, double S, double F)
{
	return STEP(trace, step_rail_moment, S, F);
}
