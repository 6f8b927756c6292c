/* SPDX-License-Identifier: MIT */
/* Wind tables of ASCE/SEI 7-10, 7-16 and 7-22. See lookup.h for what all look-ups share. */
#ifndef RP_TABLE_LOOKUP_WIND_H
#define RP_TABLE_LOOKUP_WIND_H

#include <stddef.h>

#include "step/step.h"
#include "table/tables.h"

/* Constants of Kz = c (z/zg)^(2/alpha). exposure is 'B', 'C' or 'D'.
   struct wind_exposure_row { enum edition edition; const char *exposure; double alpha, zg_ft, zg_m,
   c, z_min_ft, z_min_m, cc_z_min_ft; } where cc_z_min_ft is the height below which components and
   cladding take Kz at that height (30 ft in exposure B of 7-10, which is Kh = 0.70; 15 ft
   elsewhere). */
const struct wind_exposure_row *wind_exposure_row(enum edition e, char exposure);

/* Kd of buildings, components and cladding; `place` says where the edition multiplies by it:
   WIND_DIRECTIONALITY_PLACE_VELOCITY_PRESSURE or WIND_DIRECTIONALITY_PLACE_PRESSURE (7-22). */
const struct wind_directionality_row *wind_directionality_row(enum edition e);

/* GCpi, the magnitude, for "enclosed", "partially-enclosed", "open". */
const struct wind_internal_row *wind_internal_row(enum edition e, const char *enclosure);

/* Kzt: shape is "ridge", "escarpment" or "hill"; K1 is K1_over_HLh times H/Lh. */
const struct wind_topography_row *wind_topography_row(const char *shape, char exposure);

/* Roof coefficients (GCp) of components and cladding, h <= 60 ft.

   struct wind_gcp_row { enum edition edition; const char *figure; enum wind_gcp_form form; double
   slope_gt_deg, slope_le_deg; const char *zone; enum wind_gcp_sign sign; enum wind_gcp_curve curve;
   double A1_ft2, GCp1, A2_ft2, GCp2; } Straight in log10 of the area between A1 and A2, constant
   outside; no reduction with area is written as GCp2 = GCp1. GCp carries its sign.

   form:  WIND_GCP_FORM_FLAT, _GABLE, _HIP, _MONOSLOPE
   sign:  WIND_GCP_SIGN_MINUS (away from the roof), WIND_GCP_SIGN_PLUS (toward it)
   curve: WIND_GCP_CURVE_ALONE      the figure, confirmed or of one source: use it alone
	  WIND_GCP_CURVE_RECALLED   the figure as remembered: use it together with the safe side
	  WIND_GCP_CURVE_SAFE_SIDE  a bound without reduction by area
   A zone has either a curve that is used alone, or a remembered one with its safe side.

   A block is all rows of one figure: ask for it once per roof, then for each zone. NULL: no figure
   is known for this roof (hip steeper than 27 deg but for 7-22, any roof steeper than 45 deg, monoslope steeper
   than 30 deg, a "flat" roof over 7 deg). Gable and hip roofs of 7 deg or less and monoslopes of 3
   deg or less get the flat-roof figure, as the standard says. Slopes meet their limits within the
   last bits of a unit conversion (at_most), so 20 deg counts as <= 20. */
struct wind_gcp_block {
	const struct wind_gcp_row *row;
	size_t count;
};
struct wind_gcp_block wind_gcp_block(enum edition e, enum wind_gcp_form form, double slope_deg);

/* The piece of the curve that holds A_ft2, or the end piece nearest to it; NULL if the block has no
   such zone, sign and curve. Zones: 1, 1', 2, 2', 2e, 2n, 2r, 3, 3', 3e, 3r. */
const struct wind_gcp_row *wind_gcp_in_block(struct wind_gcp_block block, const char *zone,
					     enum wind_gcp_sign sign, enum wind_gcp_curve curve,
					     double A_ft2);

/* Both at once. */
const struct wind_gcp_row *wind_gcp_row(enum edition e, enum wind_gcp_form form, double slope_deg,
					const char *zone, enum wind_gcp_sign sign,
					enum wind_gcp_curve curve, double A_ft2);

/* Net coefficients of roof overhangs, minus: away from the roof; the piece of the curve that holds A_ft2,
   or the end piece nearest to it. form WIND_OVERHANG_FORM_ANY with zone "soffit": the wall's pressure on the
   underside, plus. NULL where the edition has no curve for this roof. */
const struct wind_overhang_row *wind_overhang_row(enum edition e, enum wind_overhang_form form,
						  double slope_deg, const char *zone,
						  enum wind_overhang_curve curve, double A_ft2);

#endif
