/* SPDX-License-Identifier: MIT */
/* Snow, roof live load and fluid tables. See lookup.h for what all look-ups have in common. */
#ifndef RP_TABLE_LOOKUP_SNOW_H
#define RP_TABLE_LOOKUP_SNOW_H

#include <stdbool.h>

#include "step/step.h"
#include "table/tables.h"

/* Ce. terrain: "B", "C", "D", "above-tree-line", "alaska-no-trees"; roof: "fully-exposed",
   "partially-exposed", "sheltered". NULL where the table does not permit the pair (sheltered above
   the tree line). */
const struct snow_exposure_row *snow_exposure_row(enum edition e, const char *terrain,
						  const char *roof);

/* Ct. condition: "heated", "just-above-freezing", "cold-ventilated", "unheated", "freezer",
   "greenhouse". In 7-22 "heated" is a roof without ventilation: the row holds the safe side 1.2 of
   Table 7.3-3. */
const struct snow_thermal_row *snow_thermal_row(enum edition e, const char *condition);

/* Is and pm_max_psf. category: "I", "II", "III", "IV". Is is NAN in 7-22 (pg is mapped per
   category), pm_max_psf is NAN in 7-10 and 7-16. */
const struct snow_risk_row *snow_risk_row(enum edition e, const char *category);

/* Cs is 1 up to flat_until_deg and falls straight to 0 at zero_at_deg. Picks the curve (a, b, c) by
   Ct: a Ct between the printed values takes the colder curve, which is the safe side. slippery
   means slippery AND unobstructed. The slippery warm curve also needs R_unventilated or
   R_ventilated (h ft2 F/Btu) to be reached; these are NAN in the other rows: the caller falls back
   to slippery = false when the roof does not reach them. NULL if Ct is not a positive number. */
const struct snow_slope_row *snow_slope_row(enum edition e, double Ct, bool slippery);

/* Whether a surface counts as slippery: key such as "metal", "glass", "slate", "asphalt-shingle",
   "tile". */
const struct snow_slippery_row *snow_slippery_row(const char *surface);

/* Ground snow of a place in Alaska, service level: pg_psf. NULL for a place that is not listed. */
const struct snow_ground_alaska_row *snow_ground_alaska_row(const char *place);

/* Constants of Lr = Lo R1 R2: Lo_psf, Lr_min_psf, A1_ft2, A2_ft2, R1_min, F1, F2, R2_min,
   worker_lb. */
const struct roof_live_row *roof_live_row(void);

/* IRC Table R301.6 (step table): rise is inches per foot, At the tributary area. NULL below
   zero. */
const struct roof_live_irc_row *roof_live_irc_row(double rise_in_12, double At_ft2);

/* "water", "glycol": density_kg_m3 for down force. */
const struct fluid_row *fluid_row(const char *key);

/* Weight of a collector with its supports that the simple path allows: "photovoltaic",
   "solar-thermal" (limit_psf of array), NULL for others. */
const struct collector_limit_row *collector_limit_row(const char *kind);

/* Rules on existing buildings and on live load under panels (limit in the unit that the rule says,
 * rule in words); key as in tables/code-trigger.xml: "gravity-5-percent", "lateral-10-percent",
   ... */
const struct code_trigger_row *code_trigger_row(const char *key);

#endif
