/* SPDX-License-Identifier: MIT */
/* Overhangs of 7-10 have net curves of their own, confirmed. Those of 7-16 rest on one reading of the
   figures; 7-22 adds the roof's coefficient on top and the wall's below. That sum stands in for every
   figure that is missing, and keeps watch over the figures of one source. */
#include "load/asce7_overhang.h"

#include <math.h>

#include "load/load_steps.h"
#include "table/lookup_wind.h"

static double net_value(const double *in)
{
	return in[0] - in[1];
}

const struct step step_wind_overhang_net = {
	.name = "wind-overhang-net",
	.symbol = "GCp,o",
	.unit = UNIT_NONE,
	.title = "net coefficient of an overhang, roof above and wall below",
	.formula = "GCp - GCp,w",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 30.10",
		   [ASCE7_16] = "ASCE/SEI 7-16 30.9",
		   [ASCE7_22] = "ASCE/SEI 7-22 30.7"},
	.confidence = ONE_SOURCE,
	.note = "the form of 7-22; a stand-in where an earlier edition has no figure, and beside "
		"one that is not confirmed",
	.in = {{"GCp", UNIT_NONE, "coefficient of the roof zone above, negative"},
	       {"GCp,w", UNIT_NONE, "pressure coefficient of the wall below, positive"}},
	.value = net_value,
};

static enum wind_overhang_form table_form(enum wind_roof roof, double theta)
{
	if (at_most(unit_from_si(theta, UNIT_DEG), 7.0) && roof != WIND_ROOF_MONOSLOPE)
		return WIND_OVERHANG_FORM_FLAT;
	switch (roof) {
	case WIND_ROOF_GABLE:
		return WIND_OVERHANG_FORM_GABLE;
	case WIND_ROOF_HIP:
		return WIND_OVERHANG_FORM_HIP;
	case WIND_ROOF_FLAT:
		return WIND_OVERHANG_FORM_FLAT;
	case WIND_ROOF_MONOSLOPE: /* no curve of its own */
	case WIND_ROOF_COUNT:
		break;
	}
	return WIND_OVERHANG_FORM_COUNT;
}

/* The row of the curve asked for, one that may be used alone first; *bounded where there are two. */
static const struct wind_overhang_row *row_of(enum edition edition, enum wind_overhang_form form,
					      double theta, const char *zone, enum wind_curve curve,
					      double A, bool *bounded)
{
	const double slope = unit_from_si(theta, UNIT_DEG), A_ft2 = unit_from_si(A, UNIT_FT2);
	const struct wind_overhang_row *row =
		wind_overhang_row(edition, form, slope, zone, WIND_OVERHANG_CURVE_ALONE, A_ft2);

	*bounded = row == NULL;
	if (row != NULL)
		return row;
	return wind_overhang_row(edition, form, slope, zone,
				 curve == CURVE_RECALLED ? WIND_OVERHANG_CURVE_RECALLED
							 : WIND_OVERHANG_CURVE_SAFE_SIDE,
				 A_ft2);
}

static double read(const struct wind_overhang_row *row, double A, struct trace *trace)
{
	return STEP(trace, step_wind_GCp, A, unit_to_si(row->A1_ft2, UNIT_FT2), row->GCp1,
		    unit_to_si(row->A2_ft2, UNIT_FT2), row->GCp2);
}

/* Roof above and wall below; as sure as the less sure of the two. */
static struct wind_coefficient sum_of(enum edition edition, const struct wind_place *place,
				      const struct wind_coefficient *roof, enum wind_curve curve,
				      struct trace *trace)
{
	static const char *const sum[] = {
		[ASCE7_10] =
			"ASCE/SEI 7-10 30.10, overhangs; here the roof above and the wall below",
		[ASCE7_16] =
			"ASCE/SEI 7-16 30.9, overhangs; here the roof above and the wall below",
		[ASCE7_22] =
			"ASCE/SEI 7-22 30.7, overhangs; here the roof above and the wall below"};
	struct wind_coefficient c = {.known = false};
	const struct wind_overhang_row *wall =
		row_of(edition, WIND_OVERHANG_FORM_ANY, place->theta, "soffit", curve, place->A,
		       &c.bounded);

	if (wall == NULL || !roof->known)
		return c;
	c.known = true;
	c.figure = sum[edition];
	c.GCp = STEP(trace, step_wind_overhang_net, roof->GCp, read(wall, place->A, trace));
	c.confidence = roof->bounded && !c.bounded ? roof->confidence : wall->status;
	c.bounded = c.bounded || roof->bounded;
	return c;
}

struct wind_coefficient asce7_overhang_coefficient(enum edition edition,
						   const struct wind_place *place,
						   const struct wind_coefficient *roof,
						   enum wind_curve curve, struct trace *trace)
{
	struct wind_coefficient c = {.known = false}, sum;
	const struct wind_overhang_row *row =
		row_of(edition, table_form(place->roof, place->theta), place->theta, place->zone,
		       curve, place->A, &c.bounded);

	if (row == NULL)
		return sum_of(edition, place, roof, curve, trace);
	c.known = true;
	c.GCp = read(row, place->A, trace);
	c.figure = row->source;
	c.confidence = row->status;
	if (row->status != ONE_SOURCE)
		return c;
	sum = sum_of(edition, place, roof, curve, trace);
	c.bounded = sum.known && sum.bounded; /* the other curve's sum may govern */
	return sum.known && sum.GCp < c.GCp ? sum : c;
}
