/* SPDX-License-Identifier: MIT */
/* Tilted collectors on low slopes: ASCE/SEI 7-16 and 7-22 Fig. 29.4-7. See lookup.h for what all
   look-ups share. */
#ifndef RP_TABLE_LOOKUP_SOLAR_H
#define RP_TABLE_LOOKUP_SOLAR_H

#include "table/tables.h"

/* (GCrn)nom of a zone "1", "2" or "3" in the set of tilts that begins at tilt_from_deg (0 or 15).
   struct wind_solar_gcrn_row { double tilt_from_deg, tilt_to_deg; const char *zone; enum
   wind_solar_gcrn_curve curve; double An1, GCrn1, An2, GCrn2, An3, GCrn3; } */
const struct wind_solar_gcrn_row *wind_solar_gcrn_row(double tilt_from_deg, const char *zone,
						      enum wind_solar_gcrn_curve curve);

#endif
