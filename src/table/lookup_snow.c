/* SPDX-License-Identifier: MIT */
#include "table/lookup_snow.h"

#include <math.h>

#include "quantity/quantity.h"
#include "table/key.h"

const struct snow_exposure_row *snow_exposure_row(enum edition e, const char *terrain,
						  const char *roof)
{
	for (size_t i = 0; i < TABLE_SNOW_EXPOSURE_COUNT; i++)
		if (table_snow_exposure[i].edition == e &&
		    same_key(table_snow_exposure[i].terrain, terrain) &&
		    same_key(table_snow_exposure[i].roof, roof))
			return &table_snow_exposure[i];
	return NULL;
}

const struct snow_thermal_row *snow_thermal_row(enum edition e, const char *condition)
{
	for (size_t i = 0; i < TABLE_SNOW_THERMAL_COUNT; i++)
		if (table_snow_thermal[i].edition == e &&
		    same_key(table_snow_thermal[i].condition, condition))
			return &table_snow_thermal[i];
	return NULL;
}

const struct snow_risk_row *snow_risk_row(enum edition e, const char *category)
{
	for (size_t i = 0; i < TABLE_SNOW_RISK_COUNT; i++)
		if (table_snow_risk[i].edition == e &&
		    same_key(table_snow_risk[i].category, category))
			return &table_snow_risk[i];
	return NULL;
}

static bool serves(const struct snow_slope_row *r, double Ct)
{
	switch (r->bound) {
	case SNOW_SLOPE_BOUND_AT_MOST:
		return at_most(Ct, r->Ct_limit);
	case SNOW_SLOPE_BOUND_BELOW:
		return !at_least(Ct, r->Ct_limit);
	case SNOW_SLOPE_BOUND_NONE:
		return true;
	case SNOW_SLOPE_BOUND_COUNT:
		break;
	}
	return false;
}

const struct snow_slope_row *snow_slope_row(enum edition e, double Ct, bool slippery)
{
	const enum snow_slope_surface surface =
		slippery ? SNOW_SLOPE_SURFACE_SLIPPERY : SNOW_SLOPE_SURFACE_OTHER;

	if (!(Ct > 0.0) || !isfinite(Ct))
		return NULL;
	for (size_t i = 0; i < TABLE_SNOW_SLOPE_COUNT; i++) {
		const struct snow_slope_row *r = &table_snow_slope[i];

		/* a, b, c stand in this order, so the first that serves is the warmest */
		if (r->edition == e && r->surface == surface && serves(r, Ct))
			return r;
	}
	return NULL;
}

const struct snow_slippery_row *snow_slippery_row(const char *surface)
{
	for (size_t i = 0; i < TABLE_SNOW_SLIPPERY_COUNT; i++)
		if (same_key(table_snow_slippery[i].surface, surface))
			return &table_snow_slippery[i];
	return NULL;
}

const struct snow_ground_alaska_row *snow_ground_alaska_row(const char *place)
{
	for (size_t i = 0; i < TABLE_SNOW_GROUND_ALASKA_COUNT; i++)
		if (same_key(table_snow_ground_alaska[i].place, place))
			return &table_snow_ground_alaska[i];
	return NULL;
}

const struct roof_live_row *roof_live_row(void)
{
	return &table_roof_live[0];
}

const struct roof_live_irc_row *roof_live_irc_row(double rise_in_12, double At_ft2)
{
	if (!(rise_in_12 >= 0.0) || !(At_ft2 >= 0.0))
		return NULL;
	for (size_t i = 0; i < TABLE_ROOF_LIVE_IRC_COUNT; i++) {
		const struct roof_live_irc_row *r = &table_roof_live_irc[i];

		if (at_least(rise_in_12, r->rise_from_in) &&
		    (isnan(r->rise_below_in) || !at_least(rise_in_12, r->rise_below_in)) &&
		    (isnan(r->At_to_ft2) || at_most(At_ft2, r->At_to_ft2)))
			return r;
	}
	return NULL;
}

const struct fluid_row *fluid_row(const char *key)
{
	for (size_t i = 0; i < TABLE_FLUID_COUNT; i++)
		if (same_key(table_fluid[i].fluid, key))
			return &table_fluid[i];
	return NULL;
}

const struct collector_limit_row *collector_limit_row(const char *kind)
{
	for (size_t i = 0; i < TABLE_COLLECTOR_LIMIT_COUNT; i++)
		if (same_key(table_collector_limit[i].kind, kind))
			return &table_collector_limit[i];
	return NULL;
}

const struct code_trigger_row *code_trigger_row(const char *key)
{
	for (size_t i = 0; i < TABLE_CODE_TRIGGER_COUNT; i++)
		if (same_key(table_code_trigger[i].key, key))
			return &table_code_trigger[i];
	return NULL;
}
