/* SPDX-License-Identifier: MIT */
/* Roof pressures on components and cladding of low buildings (h <= 60 ft): ASCE/SEI 7-10 30.4, 7-16
   and 7-22 30.3. The curves of the figures are tables; here they are read at an effective wind area
   and turned into a pressure. Slopes lie in the classes of the figures (over 7 to 20, over 20 to
   27, over 27 to 45 degrees) and are never carried beyond them. */
#include "load/asce7_pressure.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_wind.h"

/* Straight in log10 A between the break areas, constant outside. */
static double GCp_value(const double *in)
{
	const double A = in[0], A1 = in[1], GCp1 = in[2], A2 = in[3], GCp2 = in[4];

	if (A <= A1 || !(A2 > A1))
		return GCp1;
	if (A >= A2)
		return GCp2;
	return GCp1 + (GCp2 - GCp1) * log10(A / A1) / log10(A2 / A1);
}

const struct step step_wind_GCp = {
	.name = "wind-GCp",
	.symbol = "GCp",
	.unit = UNIT_NONE,
	.title = "external pressure coefficient of the roof zone",
	.formula = "GCp1 + (GCp2 - GCp1) log10(A/A1)/log10(A2/A1), constant outside A1 to A2",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Figs. 30.4-2A to 2C",
		   [ASCE7_16] = "ASCE/SEI 7-16 Figs. 30.3-2A to 2I",
		   [ASCE7_22] = "ASCE/SEI 7-22 Figs. 30.3-2A to 2G"},
	.confidence = CONFIRMED,
	.note = "the form of the curves; the status of their end points is told with each "
		"coefficient",
	.in = {{"A", UNIT_FT2, "effective wind area"},
	       {"A1", UNIT_FT2, "smaller break area"},
	       {"GCp1", UNIT_NONE, "coefficient up to A1"},
	       {"A2", UNIT_FT2, "larger break area"},
	       {"GCp2", UNIT_NONE, "coefficient from A2 on"}},
	.value = GCp_value,
};

/* GCpi is given with its sign. */
static double p_value(const double *in)
{
	return in[0] * (in[1] - in[2]);
}

const struct step step_wind_component_pressure = {
	.name = "wind-component-pressure",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on components and cladding",
	.formula = "qh (GCp - GCpi)",
	.clause =
		{[ASCE7_10] = "ASCE/SEI 7-10 Eq. 30.4-1", [ASCE7_16] = "ASCE/SEI 7-16 Eq. 30.3-1"},
	.confidence = CONFIRMED,
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height"},
	       {"GCp", UNIT_NONE, "external pressure coefficient, negative away from the roof"},
	       {"GCpi", UNIT_NONE, "internal pressure coefficient with the sign that adds"}},
	.value = p_value,
};

static double p_7_22_value(const double *in)
{
	return in[0] * in[1] * (in[2] - in[3]);
}

const struct step step_wind_component_pressure_7_22 = {
	.name = "wind-component-pressure-7-22",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on components and cladding, with Kd",
	.formula = "qh Kd (GCp - GCpi)",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 Eq. 30.3-1"},
	.confidence = ONE_SOURCE,
	.note = "qh of 7-22 does not hold Kd",
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height, without Kd"},
	       {"Kd", UNIT_NONE, "wind directionality factor"},
	       {"GCp", UNIT_NONE, "external pressure coefficient, negative away from the roof"},
	       {"GCpi", UNIT_NONE, "internal pressure coefficient with the sign that adds"}},
	.value = p_7_22_value,
};

/* 16 psf in either direction. */
static double least_value(const double *in)
{
	return copysign(larger(fabs(in[0]), 16.0), in[0]);
}

const struct step step_wind_minimum_pressure = {
	.name = "wind-minimum-pressure",
	.symbol = "pmin",
	.unit = UNIT_PSF,
	.title = "least design pressure, either way",
	.formula = "p, its magnitude not below 16",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 30.2.2",
		   [ASCE7_16] = "ASCE/SEI 7-16 30.2.2",
		   [ASCE7_22] = "ASCE/SEI 7-22 30.2.2"},
	.confidence = FROM_MEMORY,
	.note = "whether it binds rooftop collectors is not settled; applied on the safe side",
	.in = {{"p", UNIT_PSF, "computed pressure, strength level"}},
	.value = least_value,
};

static double a_value(const double *in)
{
	const double least = in[0], h = in[1];

	return larger(smaller(0.1 * least, 0.4 * h), larger(0.04 * least, 3.0));
}

const struct step step_wind_zone_a = {
	.name = "wind-zone-a",
	.symbol = "a",
	.unit = UNIT_FT,
	.title = "width of the edge zones",
	.formula = "max(min(0.1 B, 0.4 h), 0.04 B, 3)",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Fig. 30.4-2",
		   [ASCE7_16] = "ASCE/SEI 7-16 Fig. 30.3-2",
		   [ASCE7_22] = "ASCE/SEI 7-22 Fig. 30.3-2"},
	.confidence = CONFIRMED,
	.note = "7-16 caps it at 0.8 h on very wide roofs up to 7 degrees (from memory): not used, "
		"the "
		"wider zone is safe",
	.in = {{"B", UNIT_FT, "least plan dimension of the building"},
	       {"h", UNIT_FT, "mean roof height; eave height up to 10 degrees"}},
	.value = a_value,
};

double asce7_zone_width(double least, double h, struct trace *trace)
{
	return STEP(trace, step_wind_zone_a, least, h);
}

static enum wind_gcp_form table_form(enum wind_roof roof)
{
	switch (roof) {
	case WIND_ROOF_GABLE:
		return WIND_GCP_FORM_GABLE;
	case WIND_ROOF_HIP:
		return WIND_GCP_FORM_HIP;
	case WIND_ROOF_MONOSLOPE:
		return WIND_GCP_FORM_MONOSLOPE;
	case WIND_ROOF_FLAT:
	case WIND_ROOF_COUNT:
		break;
	}
	return WIND_GCP_FORM_FLAT;
}

/* The row that may be used alone if there is one; else the curve asked for; else the other one. */
static const struct wind_gcp_row *curve_row(struct wind_gcp_block block,
					    const struct wind_place *place, enum wind_curve curve,
					    double A_ft2, bool *bounded)
{
	const enum wind_gcp_sign sign =
		place->sign == WIND_UP ? WIND_GCP_SIGN_MINUS : WIND_GCP_SIGN_PLUS;
	const struct wind_gcp_row *row, *recalled, *safe;

	*bounded = false;
	row = wind_gcp_in_block(block, place->zone, sign, WIND_GCP_CURVE_ALONE, A_ft2);
	if (row != NULL)
		return row;
	recalled = wind_gcp_in_block(block, place->zone, sign, WIND_GCP_CURVE_RECALLED, A_ft2);
	safe = wind_gcp_in_block(block, place->zone, sign, WIND_GCP_CURVE_SAFE_SIDE, A_ft2);
	*bounded = recalled != NULL && safe != NULL;
	if (curve == CURVE_RECALLED)
		return recalled != NULL ? recalled : safe;
	/* Without a bound the remembered curve alone is no safe side. */
	return safe;
}

struct wind_coefficient asce7_wind_coefficient(enum edition edition, const struct wind_place *place,
					       enum wind_curve curve, struct trace *trace)
{
	const double A_ft2 = unit_from_si(place->A, UNIT_FT2);
	const struct wind_gcp_block block = wind_gcp_block(edition, table_form(place->roof),
							   unit_from_si(place->theta, UNIT_DEG));
	struct wind_coefficient c = {.known = false};
	const struct wind_gcp_row *row = curve_row(block, place, curve, A_ft2, &c.bounded);

	if (row == NULL)
		return c;
	c.known = true;
	c.confidence = row->status;
	c.figure = row->source;
	c.GCp = STEP(trace, step_wind_GCp, place->A, unit_to_si(row->A1_ft2, UNIT_FT2), row->GCp1,
		     unit_to_si(row->A2_ft2, UNIT_FT2), row->GCp2);
	return c;
}

double asce7_internal_coefficient(enum edition edition, enum wind_enclosure enclosure)
{
	const struct wind_internal_row *row = wind_internal_row(
		edition, enclosure == WIND_ENCLOSED ? "enclosed" : "partially-enclosed");

	return row != NULL ? row->GCpi : (double)NAN;
}

struct wind_pressure asce7_least_pressure(struct wind_pressure w, struct trace *trace)
{
	const double least = STEP(trace, step_wind_minimum_pressure, w.computed);

	/* The way to psf and back may cost the last bits; that is not the minimum governing. */
	w.minimum = !isnan(least) && !at_most(fabs(least), fabs(w.computed));
	if (w.minimum)
		w.p = least;
	return w;
}

struct wind_pressure asce7_roof_pressure(enum edition edition, const struct wind_velocity *wind,
					 double GCp, double GCpi, bool least, struct trace *trace)
{
	/* Inside pressure pushes where the outside pulls. */
	const double inside = GCp < 0.0 ? GCpi : -GCpi;
	struct wind_pressure w = {.gammaE = 1.0, .gammaa = 1.0};

	if (edition == ASCE7_22)
		w.computed = STEP(trace, step_wind_component_pressure_7_22, wind->qh, wind->Kd_of_p,
				  GCp, inside);
	else
		w.computed = STEP(trace, step_wind_component_pressure, wind->qh, GCp, inside);
	w.p = w.computed;
	return least ? asce7_least_pressure(w, trace) : w;
}
