/* SPDX-License-Identifier: MIT */
#include "table/lookup_solar.h"

#include <math.h>
#include <stdbool.h>

#include "table/key.h"

const struct wind_solar_gcrn_row *wind_solar_gcrn_row(double tilt_from_deg, const char *zone,
						      enum wind_solar_gcrn_curve curve)
{
	for (size_t i = 0; i < TABLE_WIND_SOLAR_GCRN_COUNT; i++) {
		const struct wind_solar_gcrn_row *r = &table_wind_solar_gcrn[i];

		/* a set begins at a whole number of degrees: half a degree tells the two apart */
		if (fabs(r->tilt_from_deg - tilt_from_deg) < 0.5 && r->curve == curve &&
		    same_key(r->zone, zone))
			return r;
	}
	return NULL;
}
