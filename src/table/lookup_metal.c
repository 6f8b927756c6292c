/* SPDX-License-Identifier: MIT */
#include "table/lookup_metal.h"

#include <math.h>

#include "quantity/quantity.h"
#include "table/key.h"

const struct steel_bearing_row *steel_bearing_row(double t_in)
{
	for (size_t i = 0; i < TABLE_STEEL_BEARING_COUNT; i++) {
		const struct steel_bearing_row *r = &table_steel_bearing[i];

		if (at_least(t_in, r->t_from_in) &&
		    (isnan(r->t_below_in) || !at_least(t_in, r->t_below_in)))
			return r;
	}
	return NULL;
}

const struct steel_gauge_row *steel_gauge_row(const char *gauge)
{
	for (size_t i = 0; i < TABLE_STEEL_GAUGE_COUNT; i++)
		if (same_key(table_steel_gauge[i].gauge, gauge))
			return &table_steel_gauge[i];
	return NULL;
}

const struct aluminium_alloy_row *aluminium_alloy_row(const char *alloy)
{
	for (size_t i = 0; i < TABLE_ALUMINIUM_ALLOY_COUNT; i++)
		if (same_key(table_aluminium_alloy[i].alloy, alloy))
			return &table_aluminium_alloy[i];
	return NULL;
}
