/* SPDX-License-Identifier: MIT */
/* Design values of dimension lumber: NDS-2018 Table 4.3.1 (which factor goes on which value), 4.3.2
   to 4.3.9; reference values and their factors from the published tables.

   F'b = Fb CD CM Ct CL CF Ci Cr, F'v = Fv CD CM Ct Ci, F'c_perp = Fc_perp CM Ct Ci Cb, E' = E CM Ct
   Ci. Cfu is 1: a rafter stands on edge. CT (stiffness of truss chords under sheathing) is not
   taken. Table 4B (Southern Pine) has the size effect inside, so its CF is 1. Not covered: timbers
   5 in and thicker, machine-graded lumber, decking. */
#include "resist/lumber.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>

#include "resist/resist_steps.h"
#include "table/lookup_wood.h"

static double product(const double *in, size_t n)
{
	double x = in[0];

	for (size_t i = 1; i < n; i++)
		x *= in[i];
	return x;
}

static double product_2(const double *in)
{
	return product(in, 2);
}

static double product_4(const double *in)
{
	return product(in, 4);
}

static double product_5(const double *in)
{
	return product(in, 5);
}

static double product_7(const double *in)
{
	return product(in, 7);
}

#define IN_CD { "CD", UNIT_NONE, "load duration" }
#define IN_CM { "CM", UNIT_NONE, "wet service" }
#define IN_CT { "Ct", UNIT_NONE, "temperature" }
#define IN_CI { "Ci", UNIT_NONE, "incising" }

const struct step step_lumber_fb_star = {
	.name = "lumber-fb-star", .symbol = "F*b", .unit = UNIT_PSI,
	.title = "bending value with all factors but the beam stability factor",
	.formula = "Fb CD CM Ct CF Ci Cr",
	.clause = { "NDS-2018 Table 4.3.1, 3.3.3.8" },
	.confidence = CONFIRMED,
	.in = { { "Fb", UNIT_PSI, "reference bending value" }, IN_CD, IN_CM, IN_CT,
	        { "CF", UNIT_NONE, "size" }, IN_CI, { "Cr", UNIT_NONE, "repetitive member" } },
	.value = product_7
};

const struct step step_lumber_fb = { .name = "lumber-fb",
	                             .symbol = "F'b",
	                             .unit = UNIT_PSI,
	                             .title = "adjusted bending value",
	                             .formula = "F*b CL",
	                             .clause = { "NDS-2018 Table 4.3.1" },
	                             .confidence = CONFIRMED,
	                             .in = { { "F*b", UNIT_PSI, "with all factors but CL" },
	                                     { "CL", UNIT_NONE, "beam stability" } },
	                             .value = product_2 };

const struct step step_lumber_fv = {
	.name = "lumber-fv", .symbol = "F'v", .unit = UNIT_PSI,
	.title = "adjusted shear value",
	.formula = "Fv CD CM Ct Ci",
	.clause = { "NDS-2018 Table 4.3.1" },
	.confidence = CONFIRMED,
	.in = { { "Fv", UNIT_PSI, "reference shear value" }, IN_CD, IN_CM, IN_CT, IN_CI },
	.value = product_5
};

const struct step step_lumber_fc_perp = {
	.name = "lumber-fc-perp", .symbol = "F'c_perp", .unit = UNIT_PSI,
	.title = "adjusted bearing value across the grain, bearing factor not included",
	.formula = "Fc_perp CM Ct Ci",
	.clause = { "NDS-2018 Table 4.3.1" },
	.confidence = CONFIRMED,
	.note = "load duration does not apply to it",
	.in = { { "Fc_perp", UNIT_PSI, "reference bearing value" }, IN_CM, IN_CT, IN_CI },
	.value = product_4
};

const struct step step_lumber_e = {
	.name = "lumber-e", .symbol = "E'", .unit = UNIT_PSI,
	.title = "adjusted modulus of elasticity",
	.formula = "E CM Ct Ci",
	.clause = { "NDS-2018 Table 4.3.1" },
	.confidence = CONFIRMED,
	.in = { { "E", UNIT_PSI, "reference modulus" }, IN_CM, IN_CT, IN_CI },
	.value = product_4
};

const struct step step_lumber_emin = {
	.name = "lumber-emin", .symbol = "E'min", .unit = UNIT_PSI,
	.title = "adjusted modulus for stability",
	.formula = "Emin CM Ct Ci",
	.clause = { "NDS-2018 Table 4.3.1" },
	.confidence = CONFIRMED,
	.in = { { "Emin", UNIT_PSI, "reference modulus for stability" }, IN_CM, IN_CT, IN_CI },
	.value = product_4
};

bool lumber_piece_find(const char *species, const char *grade, double b, double d,
                       struct lumber_piece *out)
{
	const struct wood_gravity_row *gravity = wood_gravity_row(species);
	struct lumber row;

	if (!(b > 0.0) || !(d > 0.0))
		return false;
	if (!lumber_find(species, grade, b / M_PER_IN, d / M_PER_IN, &row))
		return false;
	*out = (struct lumber_piece){
		.species = row.species,
		.grade = row.grade,
		.b = b,
		.d = d,
		/* Table 12.3.3A before the lumber table, which may be higher (Redwood close
		   grain) */
		.G = gravity != NULL ? gravity->G : row.G,
		.Fb = unit_to_si(row.Fb_psi, UNIT_PSI),
		.Fv = unit_to_si(row.Fv_psi, UNIT_PSI),
		.Fc_perp = unit_to_si(row.Fc_perp_psi, UNIT_PSI),
		.E = unit_to_si(row.E_psi, UNIT_PSI),
		.Emin = unit_to_si(row.Emin_psi, UNIT_PSI),
		.CF = row.CF_Fb,
		.confidence = row.status,
		.source = row.source,
		.note = row.note
	};
	return true;
}

/* Row of a factor that the published tables hold for every property asked here. */
static double factor(const char *kind, const char *property, const char *use, double *threshold_psi)
{
	const struct member_factor_row *r = member_factor_row(kind, property, use);

	assert(r != NULL);
	if (threshold_psi != NULL)
		*threshold_psi = r->threshold_psi;
	return r->value;
}

/* Wet service factor of a property whose value times CF is F (Pa): 1 up to the threshold the table
   names, if any. */
static double wet_factor(const char *property, double F, bool wet)
{
	double threshold_psi;
	const double CM = factor("CM", property, "wet", &threshold_psi);

	return !wet || at_most(unit_from_si(F, UNIT_PSI), threshold_psi) ? 1.0 : CM;
}

static double incising_factor(const char *property, bool incised)
{
	return incised ? factor("Ci", property, "incised", NULL) : 1.0;
}

bool lumber_adjust(struct trace *trace, const struct lumber_piece *p, double CD,
                   const struct lumber_service *s, struct lumber_values *out)
{
	const double T = isnan(s->temperature) ? 68.0 /* degF; any up to 100 F is alike */
	                                       : unit_from_si(s->temperature, UNIT_DEG_F);
	/* Fv and Fc_perp go with Fb, Emin with E (NDS-2018 Table 2.3.3) */
	const struct member_factor_row *Ct = member_temperature_row("Fb", T, s->wet);
	const struct member_factor_row *Ct_E = member_temperature_row("E", T, s->wet);
	struct lumber_values v = { .CD = CD, .CF = p->CF };

	if (!(CD > 0.0) || Ct == NULL || Ct_E == NULL)
		return false;
	v.Cr = s->repetitive ? factor("Cr", "Fb", "repetitive", NULL) : 1.0;
	v.CM_b = wet_factor("Fb", p->Fb * p->CF, s->wet);
	v.CM_v = wet_factor("Fv", p->Fv, s->wet);
	v.CM_cperp = wet_factor("Fc_perp", p->Fc_perp, s->wet);
	v.CM_E = wet_factor("E", p->E, s->wet);
	v.Ct = Ct->value;
	v.Ct_E = Ct_E->value;
	v.Ci = incising_factor("Fb", s->incised);
	v.Ci_E = incising_factor("E", s->incised);
	v.Fb_star = STEP(trace, step_lumber_fb_star, p->Fb, CD, v.CM_b, v.Ct, v.CF, v.Ci, v.Cr);
	v.Fv_prime = STEP(trace, step_lumber_fv, p->Fv, CD, v.CM_v, v.Ct, v.Ci);
	v.Fc_perp_prime = STEP(trace, step_lumber_fc_perp, p->Fc_perp, v.CM_cperp, v.Ct,
	                       incising_factor("Fc_perp", s->incised));
	v.E_prime = STEP(trace, step_lumber_e, p->E, v.CM_E, v.Ct_E, v.Ci_E);
	v.Emin_prime = STEP(trace, step_lumber_emin, p->Emin, v.CM_E, v.Ct_E, v.Ci_E);
	*out = v;
	return true;
}

double lumber_bending(struct trace *trace, double Fb_star, double CL)
{
	return STEP(trace, step_lumber_fb, Fb_star, CL);
}
