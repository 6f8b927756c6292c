/* SPDX-License-Identifier: MIT */
/* Pressure on tilted collectors, ASCE/SEI 7-16 and 7-22 29.4.3: p = qh GCrn, in 7-22 times Kd, both
   ways, GCrn = gammap gammac gammaE (GCrn)nom. gammaE is taken both ways too, which errs on the
   safe side should it be meant for uplift alone. */
#include "load/asce7_tilted.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_solar.h"

#define GCRN_CLAUSES                                                                               \
	{                                                                                          \
		[ASCE7_16] = "ASCE/SEI 7-16 29.4.3, Fig. 29.4-7",                                  \
		[ASCE7_22] = "ASCE/SEI 7-22 29.4.3, Fig. 29.4-7"                                   \
	}

static double gammap_value(const double *in)
{
	return smaller(1.2, 0.9 + in[0] / in[1]);
}

const struct step step_solar_gamma_p = {
	.name = "solar-gamma-p",
	.symbol = "gammap",
	.unit = UNIT_NONE,
	.title = "parapet height factor of tilted collectors",
	.formula = "min(1.2, 0.9 + hpt/h)",
	.clause = GCRN_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"hpt", UNIT_FT, "height of the parapet above the roof"},
	       {"h", UNIT_FT, "mean roof height"}},
	.value = gammap_value,
};

static double gammac_value(const double *in)
{
	return larger(0.6 + 0.06 * in[0], 0.8);
}

const struct step step_solar_gamma_c = {
	.name = "solar-gamma-c",
	.symbol = "gammac",
	.unit = UNIT_NONE,
	.title = "chord factor of tilted collectors",
	.formula = "max(0.6 + 0.06 Lp, 0.8)",
	.clause = GCRN_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"Lp", UNIT_FT, "chord of a collector"}},
	.value = gammac_value,
};

static double Lb_value(const double *in)
{
	const double h = in[0], WL = in[1], Ws = in[2];

	return smaller(smaller(0.4 * sqrt(h * WL), h), Ws);
}

const struct step step_solar_Lb = {
	.name = "solar-Lb",
	.symbol = "Lb",
	.unit = UNIT_FT,
	.title = "normalized building length",
	.formula = "min(0.4 sqrt(h WL), h, Ws)",
	.clause = GCRN_CLAUSES,
	.confidence = CONFIRMED,
	.in = {{"h", UNIT_FT, "mean roof height"},
	       {"WL", UNIT_FT, "longest plan dimension of the building"},
	       {"Ws", UNIT_FT, "shortest plan dimension of the building"}},
	.value = Lb_value,
};

/* 15: Lb is not taken below 15 ft. */
static double An_value(const double *in)
{
	const double Lb = larger(in[1], 15.0);

	return in[0] * 1000.0 / (Lb * Lb);
}

const struct step step_solar_An = {
	.name = "solar-An",
	.symbol = "An",
	.unit = UNIT_NONE,
	.title = "normalized wind area",
	.formula = "1000 A/max(Lb, 15)^2",
	.clause = GCRN_CLAUSES,
	.confidence = ONE_SOURCE,
	.note = "the floor of 15 ft fits a chart reading of a public permit file",
	.in = {{"A", UNIT_FT2, "effective wind area"},
	       {"Lb", UNIT_FT, "normalized building length"}},
	.value = An_value,
};

static double between(double An, double An1, double G1, double An2, double G2)
{
	return G1 + (G2 - G1) * log10(An / An1) / log10(An2 / An1);
}

static double chart_value(const double *in)
{
	const double An = in[0], An1 = in[1], G1 = in[2], An2 = in[3], G2 = in[4], An3 = in[5],
		     G3 = in[6];

	if (isnan(An1 + G1 + An2 + G2 + An3 + G3))
		return (double)NAN;
	if (An <= An1)
		return G1;
	if (An >= An3)
		return G3;
	return An <= An2 ? between(An, An1, G1, An2, G2) : between(An, An2, G2, An3, G3);
}

const struct step step_solar_GCrn_chart = {
	.name = "solar-GCrn-chart",
	.symbol = "GCrn_chart",
	.unit = UNIT_NONE,
	.title = "net coefficient of one set of tilts",
	.formula = "straight in log10 An from An1, G1 to An2, G2 and to An3, G3; constant outside",
	.clause = GCRN_CLAUSES,
	.confidence = ONE_SOURCE,
	.in = {{"An", UNIT_NONE, "normalized wind area"},
	       {"An1", UNIT_NONE, "near end of the lines"},
	       {"G1", UNIT_NONE, "coefficient at An1"},
	       {"An2", UNIT_NONE, "bend of the lines"},
	       {"G2", UNIT_NONE, "coefficient at An2"},
	       {"An3", UNIT_NONE, "far end of the lines"},
	       {"G3", UNIT_NONE, "coefficient at An3"}},
	.value = chart_value,
};

static double tilt_value(const double *in)
{
	const double Glow = in[0], Ghigh = in[1], share = (in[2] - 5.0) / 10.0;

	return Glow + (Ghigh - Glow) * smaller(1.0, larger(0.0, share));
}

const struct step step_solar_GCrn_tilt = {
	.name = "solar-GCrn-tilt",
	.symbol = "GCrn_nom",
	.unit = UNIT_NONE,
	.title = "nominal net coefficient between the two sets of tilts",
	.formula = "Glow + (Ghigh - Glow) (omega - 5)/10, omega not below 5 nor above 15",
	.clause = GCRN_CLAUSES,
	.confidence = ONE_SOURCE,
	.in = {{"Glow", UNIT_NONE, "coefficient of tilts from 0 to 5 degrees"},
	       {"Ghigh", UNIT_NONE, "coefficient of tilts from 15 to 35 degrees"},
	       {"omega", UNIT_DEG, "tilt of the collectors against the roof"}},
	.value = tilt_value,
};

static double GCrn_value(const double *in)
{
	return in[0] * in[1] * in[2] * in[3];
}

const struct step step_solar_GCrn = {
	.name = "solar-GCrn",
	.symbol = "GCrn",
	.unit = UNIT_NONE,
	.title = "net pressure coefficient of tilted collectors, both ways",
	.formula = "gammap gammac gammaE GCrn_nom",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Eq. 29.4-6", [ASCE7_22] = "ASCE/SEI 7-22 29.4.3"},
	.confidence = CONFIRMED,
	.in = {{"gammap", UNIT_NONE, "parapet height factor"},
	       {"gammac", UNIT_NONE, "chord factor"},
	       {"gammaE", UNIT_NONE, "array edge factor"},
	       {"GCrn_nom", UNIT_NONE, "nominal net coefficient"}},
	.value = GCrn_value,
};

static double p_value(const double *in)
{
	return in[0] * in[1];
}

const struct step step_solar_tilted_pressure = {
	.name = "solar-tilted-pressure",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on tilted collectors, both ways",
	.formula = "qh GCrn",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Eq. 29.4-5"},
	.confidence = CONFIRMED,
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height"},
	       {"GCrn", UNIT_NONE, "net pressure coefficient"}},
	.value = p_value,
};

static double p_7_22_value(const double *in)
{
	return in[0] * in[1] * in[2];
}

const struct step step_solar_tilted_pressure_7_22 = {
	.name = "solar-tilted-pressure-7-22",
	.symbol = "p",
	.unit = UNIT_PSF,
	.title = "pressure on tilted collectors, both ways, with Kd",
	.formula = "qh Kd GCrn",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 29.4.3"},
	.confidence = FROM_MEMORY,
	.note = "qh of 7-22 does not hold Kd",
	.in = {{"qh", UNIT_PSF, "velocity pressure at mean roof height, without Kd"},
	       {"Kd", UNIT_NONE, "wind directionality factor"},
	       {"GCrn", UNIT_NONE, "net pressure coefficient"}},
	.value = p_7_22_value,
};

struct tilted_factors solar_tilted_factors(double hpt, double h, double Lp, double longest,
					   double shortest, struct trace *trace)
{
	return (struct tilted_factors){
		.gammap = STEP(trace, step_solar_gamma_p, hpt, h),
		.gammac = STEP(trace, step_solar_gamma_c, Lp),
		.Lb = STEP(trace, step_solar_Lb, h, longest, shortest),
	};
}

static double chart(const struct wind_solar_gcrn_row *r, double An, struct trace *trace)
{
	return STEP(trace, step_solar_GCrn_chart, An, r->An1, r->GCrn1, r->An2, r->GCrn2, r->An3,
		    r->GCrn3);
}

/* Without interpolation where one set alone rules; the safe side never interpolates. */
static double nominal(double tilt, const struct wind_solar_gcrn_row *low,
		      const struct wind_solar_gcrn_row *high, double An, enum wind_curve curve,
		      struct trace *trace)
{
	if (at_most(tilt, unit_to_si(low->tilt_to_deg, UNIT_DEG)))
		return chart(low, An, trace);
	if (curve == CURVE_SAFE_SIDE || at_least(tilt, unit_to_si(high->tilt_from_deg, UNIT_DEG)))
		return chart(high, An, trace);
	const double Glow = chart(low, An, trace), Ghigh = chart(high, An, trace);

	return STEP(trace, step_solar_GCrn_tilt, Glow, Ghigh, tilt);
}

struct wind_coefficient solar_tilted_nominal(double tilt, const char *zone, double A, double Lb,
					     enum wind_curve curve, struct trace *trace)
{
	const enum wind_solar_gcrn_curve which = curve == CURVE_RECALLED
							 ? WIND_SOLAR_GCRN_CURVE_RECALLED
							 : WIND_SOLAR_GCRN_CURVE_SAFE_SIDE;
	const struct wind_solar_gcrn_row *low = wind_solar_gcrn_row(0.0, zone, which);
	const struct wind_solar_gcrn_row *high = wind_solar_gcrn_row(15.0, zone, which);
	struct wind_coefficient c = {.known = false};

	if (low == NULL || high == NULL || !(tilt >= 0.0) ||
	    !at_most(tilt, unit_to_si(high->tilt_to_deg, UNIT_DEG)) || isnan(A) || isnan(Lb))
		return c;
	c.known = c.bounded = true;
	c.confidence = high->status;
	c.figure = high->source;
	c.GCp = nominal(tilt, low, high, STEP(trace, step_solar_An, A, Lb), curve, trace);
	return c;
}

struct wind_pressure solar_tilted_pressure(enum edition edition, const struct wind_velocity *wind,
					   const struct tilted_factors *f, double nominal_GCrn,
					   bool exposed, bool least, struct trace *trace)
{
	struct wind_pressure w = {.gammaa = 1.0};
	double GCrn;

	w.gammaE = STEP(trace, step_solar_gamma_E, exposed ? 1.0 : 0.0);
	GCrn = STEP(trace, step_solar_GCrn, f->gammap, f->gammac, w.gammaE, nominal_GCrn);
	if (edition == ASCE7_22)
		w.computed =
			STEP(trace, step_solar_tilted_pressure_7_22, wind->qh, wind->Kd_of_p, GCrn);
	else
		w.computed = STEP(trace, step_solar_tilted_pressure, wind->qh, GCrn);
	w.p = w.computed;
	return least ? asce7_least_pressure(w, trace) : w;
}
