/* SPDX-License-Identifier: MIT */
/* Steel side plates and aluminium rails. See lookup.h for what all look-ups have in common. */
#ifndef RP_TABLE_LOOKUP_METAL_H
#define RP_TABLE_LOOKUP_METAL_H

#include "step/step.h"
#include "table/tables.h"

/* Dowel bearing strength Fe_psi of a steel side plate by its thickness: A653 Grade 33 below 1/4 in,
   A36 from 1/4 in. NULL below the thinnest sheet that the NDS tabulates (20 gauge, 0.036 in). */
const struct steel_bearing_row *steel_bearing_row(double t_in);

/* "3" ... "20", "1/4": t_in. */
const struct steel_gauge_row *steel_gauge_row(const char *gauge);

/* Alloy and temper: "6061-T6": Ftu_ksi, Fty_ksi, kt, E_ksi, Bp_ksi, Dp_ksi and the slenderness
   limits. */
const struct aluminium_alloy_row *aluminium_alloy_row(const char *alloy);

#endif
