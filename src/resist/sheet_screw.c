/* SPDX-License-Identifier: MIT */
/* Screws in thin steel: tilting, bearing, pull-out, pull-over, the screw itself, and pull and shear
   together. AISI S100-2012 E4, S100-2016 J4. The interactions are from memory, each within narrow
   limits that the standard lists (steel to 65 or 70 ksi, thickness, screw size): to be read before
   use. Washers count to 3/4 in (1/2 in before 2007). Not covered: washers of their own stiffness,
   purlins under uplift, corrosion between metals. */
#include "resist/sheet_screw.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "table/lookup_fastener.h"

#define OMEGA 3.0 /* E4 / J4: safety factor of a screwed joint */
#define PHI 0.50  /* the same clause: resistance factor */
/* E4.5 / J4.5: safety factors of pull and shear together, in the order of the interactions. */
#define OMEGA_PULL_OVER 2.35
#define OMEGA_PULL_OUT 2.55

#define IN_SCREW                                                                                   \
	{                                                                                          \
		"d", UNIT_IN, "nominal diameter of the screw"                                      \
	}

static double tilting(const double *in)
{
	const double t2 = in[0], d = in[1], Fu2 = in[2];

	return 4.2 * sqrt(t2 * t2 * t2 * d) * Fu2;
}

const struct step step_sheet_screw_tilting = {
	.name = "sheet-screw-tilting",
	.symbol = "Pns",
	.unit = UNIT_LB,
	.title = "shear of a screw in thin steel, tilting",
	.formula = "4.2 sqrt(t2^3 d) Fu2",
	.clause = {"AISI S100-2016 J4.3.1 (E4.3.1 to 2012)"},
	.confidence = CONFIRMED,
	.note = "where the steel at the point is no thicker than that under the head",
	.in = {{"t2", UNIT_IN, "steel at the point"},
	       IN_SCREW,
	       {"Fu2", UNIT_PSI, "its tensile strength"}},
	.value = tilting};

static double bearing(const double *in)
{
	return 2.7 * in[0] * in[1] * in[2];
}

const struct step step_sheet_screw_bearing = {
	.name = "sheet-screw-bearing",
	.symbol = "Pns",
	.unit = UNIT_LB,
	.title = "shear of a screw in thin steel, bearing",
	.formula = "2.7 t d Fu",
	.clause = {"AISI S100-2016 J4.3.1 (E4.3.1 to 2012)"},
	.confidence = CONFIRMED,
	.in = {{"t", UNIT_IN, "steel"}, IN_SCREW, {"Fu", UNIT_PSI, "its tensile strength"}},
	.value = bearing};

static double between(const double *in)
{
	const double thin = in[0], thick = in[1], r = in[2];

	return thin + (thick - thin) * (fmin(fmax(r, 1.0), 2.5) - 1.0) / 1.5;
}

const struct step step_sheet_screw_shear = {
	.name = "sheet-screw-shear",
	.symbol = "Pns",
	.unit = UNIT_LB,
	.title = "shear of a screw between thin and thick steel at the point",
	.formula = "P_thin + (P_thick - P_thin) (t2/t1 - 1)/1.5, t2/t1 from 1 to 2.5",
	.clause = {"AISI S100-2016 J4.3.1 (E4.3.1 to 2012)"},
	.confidence = CONFIRMED,
	.in = {{"P_thin", UNIT_LB, "for t2/t1 of 1 and less: tilting and bearing"},
	       {"P_thick", UNIT_LB, "for t2/t1 of 2.5 and more: bearing alone"},
	       {"t2/t1", UNIT_NONE, "ratio of the two thicknesses"}},
	.value = between};

static double pull_out(const double *in)
{
	return 0.85 * in[0] * in[1] * in[2];
}

const struct step step_sheet_screw_pull_out = {
	.name = "sheet-screw-pull-out",
	.symbol = "Pnot",
	.unit = UNIT_LB,
	.title = "pull-out of a screw from thin steel",
	.formula = "0.85 tc d Fu2",
	.clause = {"AISI S100-2016 J4.4.1 (E4.4.1 to 2012)"},
	.confidence = CONFIRMED,
	.note = "tc: the lesser of the steel and the screw's penetration",
	.in = {{"tc", UNIT_IN, "steel at the point"},
	       IN_SCREW,
	       {"Fu2", UNIT_PSI, "its tensile strength"}},
	.value = pull_out};

static double pull_over(const double *in)
{
	const double t1 = in[0], dw = fmin(in[1], 0.75), Fu1 = in[2];

	return 1.5 * t1 * dw * Fu1;
}

const struct step step_sheet_screw_pull_over = {
	.name = "sheet-screw-pull-over",
	.symbol = "Pnov",
	.unit = UNIT_LB,
	.title = "thin steel pulled over the head of a screw",
	.formula = "1.5 t1 dw Fu1, dw at most 3/4 in",
	.clause = {"AISI S100-2016 J4.4.2 (E4.4.2 to 2012)"},
	.confidence = CONFIRMED,
	.note = "1/2 in at most before 2007",
	.in = {{"t1", UNIT_IN, "steel under the head"},
	       {"dw", UNIT_IN, "diameter of head or washer"},
	       {"Fu1", UNIT_PSI, "its tensile strength"}},
	.value = pull_over};

static double allowed(const double *in)
{
	return in[0] / in[1];
}

const struct step step_sheet_screw_allowed = {
	.name = "sheet-screw-allowed",
	.symbol = "P_a",
	.unit = UNIT_LB,
	.title = "allowable force on a screw in thin steel",
	.formula = "P_n / Omega",
	.clause = {"AISI S100-2016 J4 (E4 to 2012)"},
	.confidence = CONFIRMED,
	.note = "Omega 3.0",
	.in = {{"P_n", UNIT_LB, "nominal strength"}, {"Omega", UNIT_NONE, "safety factor"}},
	.value = allowed};

static double designed(const double *in)
{
	return in[0] * in[1];
}

const struct step step_sheet_screw_design = {
	.name = "sheet-screw-design",
	.symbol = "phi P_n",
	.unit = UNIT_LB,
	.title = "design strength of a screw in thin steel by LRFD",
	.formula = "phi P_n",
	.clause = {"AISI S100-2016 J4 (E4 to 2012)"},
	.confidence = CONFIRMED,
	.note = "phi 0.50",
	.in = {{"P_n", UNIT_LB, "nominal strength"}, {"phi", UNIT_NONE, "resistance factor"}},
	.value = designed};

static double factored(const double *in)
{
	return in[0] / (in[1] * in[2]);
}

const struct step step_sheet_screw_factored = {
	.name = "sheet-screw-factored",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "pull and shear together on a screw in thin steel, by LRFD",
	.formula = "r/(phi Omega)",
	.clause = {"AISI S100-2016 J4.5 (E4.5 to 2012)"},
	.confidence = SAFE_SIDE,
	.note = "phi 0.50 of the single strengths stands for the larger ones of the interactions",
	.in = {{"r", UNIT_NONE, "interaction written with the safety factor of ASD"},
	       {"phi", UNIT_NONE, "resistance factor"},
	       {"Omega", UNIT_NONE, "safety factor in r"}},
	.value = factored};

/* Each is brought to a limit of 1. */
static double shear_pull_over(const double *in)
{
	return OMEGA_PULL_OVER / 1.10 * (in[0] / in[1] + 0.71 * in[2] / in[3]);
}

const struct step step_sheet_screw_shear_pull_over = {
	.name = "sheet-screw-shear-pull-over",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "shear and pull-over together",
	.formula = "2.35/1.10 (V/Pns + 0.71 T/Pnov)",
	.clause = {"AISI S100-2016 J4.5.1 (E4.5.1 to 2012)"},
	.confidence = FROM_MEMORY,
	.note = "within the limits of the clause only",
	.in = {{"V", UNIT_LB, "shear"},
	       {"Pns", UNIT_LB, "nominal bearing under the head, 2.7 t1 d Fu1"},
	       {"T", UNIT_LB, "pull"},
	       {"Pnov", UNIT_LB, "nominal pull-over"}},
	.value = shear_pull_over};

static double shear_pull_out(const double *in)
{
	return OMEGA_PULL_OUT / 1.15 * (in[0] / in[1] + in[2] / in[3]);
}

const struct step step_sheet_screw_shear_pull_out = {
	.name = "sheet-screw-shear-pull-out",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "shear and pull-out together",
	.formula = "2.55/1.15 (V/Pns + T/Pnot)",
	.clause = {"AISI S100-2016 J4.5.2 (E4.5.2 to 2012)"},
	.confidence = FROM_MEMORY,
	.note = "within the limits of the clause only",
	.in = {{"V", UNIT_LB, "shear"},
	       {"Pns", UNIT_LB, "nominal shear, tilting"},
	       {"T", UNIT_LB, "pull"},
	       {"Pnot", UNIT_LB, "nominal pull-out"}},
	.value = shear_pull_out};

static double screw_itself(const double *in)
{
	return 3.0 / 1.3 * (in[0] / in[1] + in[2] / in[3]);
}

const struct step step_sheet_screw_itself = {
	.name = "sheet-screw-itself",
	.symbol = "ratio",
	.unit = UNIT_NONE,
	.title = "shear and tension in the screw itself together",
	.formula = "3.0/1.3 (V/Pss + T/Pts)",
	.clause = {"AISI S100-2016 J4.5.3 (E4.5.3 to 2012)"},
	.confidence = FROM_MEMORY,
	.in = {{"V", UNIT_LB, "shear"},
	       {"Pss", UNIT_LB, "nominal shear strength of the screw"},
	       {"T", UNIT_LB, "pull"},
	       {"Pts", UNIT_LB, "nominal tension strength of the screw"}},
	.value = screw_itself};

bool sheet_screw_find(double d, struct sheet_screw_joint *out)
{
	const struct sheet_screw_row *r = sheet_screw_row(d / M_PER_IN);

	if (r == NULL)
		return false;
	out->d = r->d_in * M_PER_IN;
	out->dw = r->dw_in * M_PER_IN;
	out->Pss = unit_to_si(r->Pss_lb, UNIT_LB);
	out->Pts = unit_to_si(r->Pts_lb, UNIT_LB);
	return true;
}

static double usable(struct trace *trace, double nominal, bool lrfd)
{
	return lrfd ? STEP(trace, step_sheet_screw_design, nominal, PHI)
		    : STEP(trace, step_sheet_screw_allowed, nominal, OMEGA);
}

struct sheet_screw sheet_screw_strength(struct trace *trace, const struct sheet_screw_joint *j,
					bool lrfd)
{
	const double under = STEP(trace, step_sheet_screw_bearing, j->t1, j->d, j->Fu1);
	const double point = STEP(trace, step_sheet_screw_bearing, j->t2, j->d, j->Fu2);
	const double tilt = STEP(trace, step_sheet_screw_tilting, j->t2, j->d, j->Fu2);
	struct sheet_screw s = {.bearing1 = under, .tilting = tilt, .lrfd = lrfd};

	s.shear = fmin(j->Pss, STEP(trace, step_sheet_screw_shear, fmin(tilt, fmin(under, point)),
				    fmin(under, point), j->t2 / j->t1));
	s.pull_out = STEP(trace, step_sheet_screw_pull_out, j->t2, j->d, j->Fu2);
	s.pull_over = STEP(trace, step_sheet_screw_pull_over, j->t1, j->dw, j->Fu1);
	s.tension = j->Pts;
	s.shear_allowed = usable(trace, s.shear, lrfd);
	s.pull_allowed = usable(trace, fmin(s.tension, fmin(s.pull_out, s.pull_over)), lrfd);
	return s;
}

/* In LRFD the factor 1/phi stands in the place of Omega. */
static double by_method(struct trace *trace, const struct sheet_screw *s, double r, double Omega)
{
	return s->lrfd ? STEP(trace, step_sheet_screw_factored, r, PHI, Omega) : r;
}

double sheet_screw_combined(struct trace *trace, const struct sheet_screw *s,
			    const struct sheet_screw_joint *j, double T, double V)
{
	const double over = by_method(
		trace, s,
		STEP(trace, step_sheet_screw_shear_pull_over, V, s->bearing1, T, s->pull_over),
		OMEGA_PULL_OVER);
	const double out = by_method(
		trace, s,
		STEP(trace, step_sheet_screw_shear_pull_out, V, s->tilting, T, s->pull_out),
		OMEGA_PULL_OUT);
	const double itself = by_method(
		trace, s, STEP(trace, step_sheet_screw_itself, V, j->Pss, T, j->Pts), OMEGA);

	return fmax(over, fmax(out, itself));
}
