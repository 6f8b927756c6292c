/* SPDX-License-Identifier: MIT */
/* The unit table: what each unit is called, what it measures, how it turns into SI, and which
   unit stands for it in the other system. The factors come from the exact definitions in
   quantity.h. */
#include "quantity/quantity.h"

#include <assert.h>
#include <math.h>

struct unit_row {
	const char *text;
	enum dimension dimension;
};

static const struct unit_row unit_table[UNIT_COUNT] = {
#define U(id, text, dim, factor, zero) {text, DIM_##dim},
	UNITS(U)
#undef U
};

const struct unit_scale unit_scale[UNIT_COUNT] = {
#define U(id, text, dim, factor, zero) {factor, zero},
	UNITS(U)
#undef U
};

/* What a report would print in each system. Forces stay small on a house, so kN becomes lb, not
   kip. */
static const enum unit unit_pair[UNIT_COUNT][SYSTEM_COUNT] = {
	[UNIT_NONE] = {UNIT_NONE, UNIT_NONE},
	[UNIT_PERCENT] = {UNIT_PERCENT, UNIT_PERCENT},
	[UNIT_IN] = {UNIT_IN, UNIT_MM},
	[UNIT_FT] = {UNIT_FT, UNIT_M},
	[UNIT_MM] = {UNIT_IN, UNIT_MM},
	[UNIT_CM] = {UNIT_IN, UNIT_CM},
	[UNIT_M] = {UNIT_FT, UNIT_M},
	[UNIT_IN2] = {UNIT_IN2, UNIT_MM2},
	[UNIT_FT2] = {UNIT_FT2, UNIT_M2},
	[UNIT_MM2] = {UNIT_IN2, UNIT_MM2},
	[UNIT_M2] = {UNIT_FT2, UNIT_M2},
	[UNIT_IN3] = {UNIT_IN3, UNIT_CM3},
	[UNIT_CM3] = {UNIT_IN3, UNIT_CM3},
	[UNIT_MM3] = {UNIT_IN3, UNIT_MM3},
	[UNIT_LITRE] = {UNIT_GAL, UNIT_LITRE},
	[UNIT_GAL] = {UNIT_GAL, UNIT_LITRE},
	[UNIT_IN4] = {UNIT_IN4, UNIT_CM4},
	[UNIT_CM4] = {UNIT_IN4, UNIT_CM4},
	[UNIT_MM4] = {UNIT_IN4, UNIT_MM4},
	[UNIT_DEG] = {UNIT_DEG, UNIT_DEG},
	[UNIT_RAD] = {UNIT_RAD, UNIT_RAD},
	[UNIT_MPH] = {UNIT_MPH, UNIT_M_S},
	[UNIT_M_S] = {UNIT_MPH, UNIT_M_S},
	[UNIT_KM_H] = {UNIT_MPH, UNIT_KM_H},
	[UNIT_LB] = {UNIT_LB, UNIT_N},
	[UNIT_KIP] = {UNIT_KIP, UNIT_KN},
	[UNIT_N] = {UNIT_LB, UNIT_N},
	[UNIT_KN] = {UNIT_LB, UNIT_KN},
	[UNIT_KG] = {UNIT_LB, UNIT_KG},
	[UNIT_PLF] = {UNIT_PLF, UNIT_KN_M},
	[UNIT_LB_IN] = {UNIT_LB_IN, UNIT_N_MM},
	[UNIT_N_M] = {UNIT_PLF, UNIT_N_M},
	[UNIT_N_MM] = {UNIT_LB_IN, UNIT_N_MM},
	[UNIT_KN_M] = {UNIT_PLF, UNIT_KN_M},
	[UNIT_PSF] = {UNIT_PSF, UNIT_KPA},
	[UNIT_PSI] = {UNIT_PSI, UNIT_MPA},
	[UNIT_KSI] = {UNIT_KSI, UNIT_MPA},
	[UNIT_PA] = {UNIT_PSF, UNIT_PA},
	[UNIT_KPA] = {UNIT_PSF, UNIT_KPA},
	[UNIT_KN_M2] = {UNIT_PSF, UNIT_KN_M2},
	[UNIT_MPA] = {UNIT_PSI, UNIT_MPA},
	[UNIT_N_MM2] = {UNIT_PSI, UNIT_N_MM2},
	[UNIT_KG_M2] = {UNIT_PSF, UNIT_KG_M2},
	[UNIT_LB_IN_M] = {UNIT_LB_IN_M, UNIT_NM},
	[UNIT_LB_FT] = {UNIT_LB_FT, UNIT_NM},
	[UNIT_NM] = {UNIT_LB_FT, UNIT_NM},
	[UNIT_KNM] = {UNIT_LB_FT, UNIT_KNM},
	[UNIT_PCF] = {UNIT_PCF, UNIT_KN_M3},
	[UNIT_KN_M3] = {UNIT_PCF, UNIT_KN_M3},
	[UNIT_KG_M3] = {UNIT_PCF, UNIT_KG_M3},
	[UNIT_DEG_F] = {UNIT_DEG_F, UNIT_DEG_C},
	[UNIT_DEG_C] = {UNIT_DEG_F, UNIT_DEG_C},
	[UNIT_KELVIN] = {UNIT_DEG_F, UNIT_KELVIN},
};

/* Other ways to write a unit that hands and telephones use. */
static const struct {
	const char *text;
	enum unit unit;
} alias[] = {
	{"'", UNIT_FT},
	{"\"", UNIT_IN},
	{"\xE2\x80\xB2", UNIT_FT}, /* prime */
	{"\xE2\x80\xB3", UNIT_IN}, /* double prime */
	{"\xE2\x80\x99", UNIT_FT}, /* right single quotation mark, as telephones set it */
	{"\xE2\x80\x9D", UNIT_IN}, /* right double quotation mark */
	{"\xC2\xB0", UNIT_DEG},    /* degree sign */
	{"\xC2\xB0"
	 "F",
	 UNIT_DEG_F},
	{"\xC2\xB0"
	 "C",
	 UNIT_DEG_C},
	{"lbf", UNIT_LB},
	{"lbs", UNIT_LB},
	{"plf", UNIT_PLF},
	{"L", UNIT_LITRE},
	{"ft lb", UNIT_LB_FT},
	{"in lb", UNIT_LB_IN_M},
};

/* In the order of UNITS; a test compares each list with the unit table. */
static const char *const dimension_unit_list[DIM_COUNT] = {
	[DIM_NONE] = "no unit, %",
	[DIM_LENGTH] = "in, ft, mm, cm, m",
	[DIM_AREA] = "in2, ft2, mm2, m2",
	[DIM_VOLUME] = "in3, cm3, mm3, l, gal",
	[DIM_INERTIA] = "in4, cm4, mm4",
	[DIM_ANGLE] = "deg, rad, rise:run, %",
	[DIM_SPEED] = "mph, m/s, km/h",
	[DIM_FORCE] = "lb, kip, N, kN, kg",
	[DIM_LINE_LOAD] = "lb/ft, lb/in, N/m, N/mm, kN/m",
	[DIM_PRESSURE] = "psf, psi, ksi, Pa, kPa, kN/m2, MPa, N/mm2, kg/m2",
	[DIM_MOMENT] = "lb in, lb ft, N m, kN m",
	[DIM_WEIGHT_DENSITY] = "pcf, kN/m3, kg/m3",
	[DIM_TEMPERATURE] = "degF, degC, K",
};

enum dimension unit_dimension(enum unit u)
{
	assert(u < UNIT_COUNT);
	return unit_table[u].dimension;
}

const char *unit_text(enum unit u)
{
	assert(u < UNIT_COUNT);
	return unit_table[u].text;
}

const char *unit_spelling(size_t i, enum unit *u)
{
	const size_t own = UNIT_COUNT - 1; /* UNIT_NONE has no text */

	if (i >= own + sizeof alias / sizeof alias[0])
		return NULL;
	*u = i < own ? (enum unit)(i + 1) : alias[i - own].unit;
	return i < own ? unit_table[*u].text : alias[i - own].text;
}

double unit_to_si(double value, enum unit u)
{
	assert(u < UNIT_COUNT);
	return unit_scale_to_si(value, u);
}

double unit_from_si(double si, enum unit u)
{
	assert(u < UNIT_COUNT);
	return unit_scale_from_si(si, u);
}

enum unit unit_in_system(enum unit u, enum unit_system system)
{
	assert(u < UNIT_COUNT && system < SYSTEM_COUNT);
	return unit_pair[u][system];
}

const char *dimension_units(enum dimension d)
{
	assert(d < DIM_COUNT);
	return dimension_unit_list[d];
}

/* 1e-9: a metre is told from a metre and a nanometre by nobody; conversions cost some 1e-16
   each. */
#define SLACK 1e-9

/* An infinite slack would let anything pass. */
static double slack(double x, double limit)
{
	return isfinite(x) && isfinite(limit) ? SLACK * fmax(fabs(x), fabs(limit)) : 0;
}

bool at_most(double x, double limit)
{
	return x <= limit + slack(x, limit);
}

bool at_least(double x, double limit)
{
	return x >= limit - slack(x, limit);
}
