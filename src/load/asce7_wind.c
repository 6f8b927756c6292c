/* SPDX-License-Identifier: MIT */
/* Velocity pressure at mean roof height for components and cladding of low buildings: ASCE/SEI
   7-10 30.3.2, 7-16 and 7-22 26.10. Kz is computed from its formula, not read from the printed
   table, which rounds it to two places. The ground elevation factor is used from 7-16 on; 7-10 has
   none. Kd stands in q up to 7-16; 7-22 moves it to the pressure (from memory): it must appear
   exactly once. */
#include "load/asce7_wind.h"

#include <math.h>

#include "load/bound.h"
#include "load/load_steps.h"
#include "table/lookup_wind.h"

/* Kz = c (z/zg)^(2/alpha), z not below z_min. */
static double Kz_value(const double *in)
{
	const double z = in[0], z_min = in[1], zg = in[2], alpha = in[3], c = in[4];

	return c * pow(larger(z, z_min) / zg, 2.0 / alpha);
}

const struct step step_wind_Kz = {
	.name = "wind-Kz",
	.symbol = "Kz",
	.unit = UNIT_NONE,
	.title = "velocity pressure exposure coefficient at mean roof height",
	.formula = "c (max(z, zmin)/zg)^(2/alpha)",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Table 30.3-1",
		   [ASCE7_16] = "ASCE/SEI 7-16 Table 26.10-1",
		   [ASCE7_22] = "ASCE/SEI 7-22 Table 26.10-1"},
	.confidence = CONFIRMED,
	.note = "zmin is 15 ft, and 30 ft in exposure B of 7-10 (components and cladding); the "
		"constants of 7-22 are from memory",
	.in = {{"z", UNIT_FT, "mean roof height"},
	       {"zmin", UNIT_FT, "height below which Kz is constant"},
	       {"zg", UNIT_FT, "gradient height of the exposure"},
	       {"alpha", UNIT_NONE, "power of the exposure"},
	       {"c", UNIT_NONE, "2.01, in 7-22 2.41"}},
	.value = Kz_value,
};

/* Ke = exp(-0.0000362 ze), ze in ft. */
static double Ke_value(const double *in)
{
	return exp(-0.0000362 * in[0]);
}

const struct step step_wind_Ke = {
	.name = "wind-Ke",
	.symbol = "Ke",
	.unit = UNIT_NONE,
	.title = "ground elevation factor",
	.formula = "exp(-0.0000362 ze)",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Table 26.9-1 note",
		   [ASCE7_22] = "ASCE/SEI 7-22 Table 26.9-1 note"},
	.confidence = ONE_SOURCE,
	.note = "1.0 is always allowed",
	.in = {{"ze", UNIT_FT, "ground elevation above sea level"}},
	.value = Ke_value,
};

/* 7-10: no ground elevation factor. */
static double q_7_10_value(const double *in)
{
	const double Kz = in[0], Kzt = in[1], Kd = in[2], V = in[3];

	return 0.00256 * Kz * Kzt * Kd * V * V;
}

const struct step step_wind_velocity_pressure_7_10 = {
	.name = "wind-velocity-pressure-7-10",
	.symbol = "qh",
	.unit = UNIT_PSF,
	.title = "velocity pressure at mean roof height",
	.formula = "0.00256 Kz Kzt Kd V^2",
	.clause = {[ASCE7_10] = "ASCE/SEI 7-10 Eq. 30.3-1"},
	.confidence = CONFIRMED,
	.in = {{"Kz", UNIT_NONE, "velocity pressure exposure coefficient"},
	       {"Kzt", UNIT_NONE, "topographic factor"},
	       {"Kd", UNIT_NONE, "wind directionality factor"},
	       {"V", UNIT_MPH, "basic wind speed"}},
	.value = q_7_10_value,
};

static double q_value(const double *in)
{
	const double Kz = in[0], Kzt = in[1], Kd = in[2], Ke = in[3], V = in[4];

	return 0.00256 * Kz * Kzt * Kd * Ke * V * V;
}

const struct step step_wind_velocity_pressure = {
	.name = "wind-velocity-pressure",
	.symbol = "qh",
	.unit = UNIT_PSF,
	.title = "velocity pressure at mean roof height",
	.formula = "0.00256 Kz Kzt Kd Ke V^2",
	.clause = {[ASCE7_16] = "ASCE/SEI 7-16 Eq. 26.10-1"},
	.confidence = CONFIRMED,
	.in = {{"Kz", UNIT_NONE, "velocity pressure exposure coefficient"},
	       {"Kzt", UNIT_NONE, "topographic factor"},
	       {"Kd", UNIT_NONE, "wind directionality factor"},
	       {"Ke", UNIT_NONE, "ground elevation factor"},
	       {"V", UNIT_MPH, "basic wind speed"}},
	.value = q_value,
};

/* 7-22: Kd is not here but in the pressure. */
static double q_7_22_value(const double *in)
{
	const double Kz = in[0], Kzt = in[1], Ke = in[2], V = in[3];

	return 0.00256 * Kz * Kzt * Ke * V * V;
}

const struct step step_wind_velocity_pressure_7_22 = {
	.name = "wind-velocity-pressure-7-22",
	.symbol = "qh",
	.unit = UNIT_PSF,
	.title = "velocity pressure at mean roof height, without Kd",
	.formula = "0.00256 Kz Kzt Ke V^2",
	.clause = {[ASCE7_22] = "ASCE/SEI 7-22 Eq. 26.10-1"},
	.confidence = ONE_SOURCE,
	.note = "7-22 multiplies the pressure by Kd instead",
	.in = {{"Kz", UNIT_NONE, "velocity pressure exposure coefficient"},
	       {"Kzt", UNIT_NONE, "topographic factor"},
	       {"Ke", UNIT_NONE, "ground elevation factor"},
	       {"V", UNIT_MPH, "basic wind speed"}},
	.value = q_7_22_value,
};

static double elevation_factor(enum edition edition, double elevation, struct trace *trace)
{
	if (edition == ASCE7_10 || isnan(elevation))
		return 1.0;
	return STEP(trace, step_wind_Ke, elevation);
}

struct wind_velocity asce7_wind_velocity(enum edition edition, const struct wind_site *site,
					 struct trace *trace)
{
	const struct wind_exposure_row *row = wind_exposure_row(edition, site->exposure);
	const struct wind_directionality_row *kd = wind_directionality_row(edition);
	struct wind_velocity w = {.known = false, .Kzt = site->Kzt, .Kd_of_p = 1.0};

	if (row == NULL || kd == NULL)
		return w;
	w.known = true;
	w.confidence = row->status;
	w.Kd = kd->Kd;
	w.Kz = STEP(trace, step_wind_Kz, site->h, unit_to_si(row->cc_z_min_ft, UNIT_FT),
		    unit_to_si(row->zg_ft, UNIT_FT), row->alpha, row->c);
	w.Ke = elevation_factor(edition, site->elevation, trace);
	if (edition == ASCE7_10) {
		w.qh = STEP(trace, step_wind_velocity_pressure_7_10, w.Kz, w.Kzt, w.Kd, site->V);
	} else if (kd->place == WIND_DIRECTIONALITY_PLACE_PRESSURE) {
		w.Kd_of_p = w.Kd;
		w.qh = STEP(trace, step_wind_velocity_pressure_7_22, w.Kz, w.Kzt, w.Ke, site->V);
	} else {
		w.qh = STEP(trace, step_wind_velocity_pressure, w.Kz, w.Kzt, w.Kd, w.Ke, site->V);
	}
	return w;
}
