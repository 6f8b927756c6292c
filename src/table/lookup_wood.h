/* SPDX-License-Identifier: MIT */
/* Tables of the National Design Specification for Wood Construction and its Supplement. See
   lookup.h for what all look-ups have in common. Inches and psi. */
#ifndef RP_TABLE_LOOKUP_WOOD_H
#define RP_TABLE_LOOKUP_WOOD_H

#include <stdbool.h>

#include "step/step.h"
#include "table/tables.h"

/* The species group that a short name of the yard stands for ("SPF" gives "Spruce-Pine-Fir"); a
   listed name comes back itself; NULL if the name is neither. */
const char *wood_species_name(const char *name);

/* G of Table 12.3.3A (groups) and 12.3.3B (panels); aliases are understood. NULL for the two groups
   of Table 4A that Table 12.3.3A as read does not list (Baldcypress, Yellow Cedar). */
const struct wood_gravity_row *wood_gravity_row(const char *species);

/* Lag screw of Appendix L, Table L2: nominal, D_in, Dr_in (root), E_in (tapered tip),
   threads_per_in. The listed diameter within 1e-6 in of D_in, else NULL. */
const struct lag_screw_row *lag_screw_row(double D_in);

/* Fyb_psi by fastener ("lag-screw", "bolt", "nail-or-wood-screw", "hardened-nail") and nominal
   diameter. NULL between or outside the printed ranges (limits met within 1e-6 in). */
const struct bending_yield_row *bending_yield_row(const char *fastener, double D_in);

/* Lead hole: fastener "lag-screw-thread" (parts of D) or "wood-screw-withdrawal" (parts of the root
   diameter); fraction_low, fraction_high are NAN where no hole is asked for. G from G_above (not
   included) to G_to. */
const struct lead_hole_row *lead_hole_row(const char *fastener, double G);

/* Edge, end, spacing and penetration rules of Tables 12.5.1A to E: multiples of D. minimum_D is
   what must be met, full_D what gives C_delta = 1 (equal where no reduction is allowed). NAN where
   the rule is not a multiple of D: see `rule`. Keys: item "end-distance", "spacing-in-row",
   "edge-distance", "row-spacing", "withdrawal-only", "penetration"; case as in
   tables/connection-geometry.xml, e.g. "parallel-tension-softwood", "perpendicular-loaded-edge",
   "lag-screw". */
const struct connection_geometry_row *connection_geometry_row(const char *item,
							      const char *loading);

/* CD: "dead", "occupancy", "snow", "roof-live", "wind-earthquake", "impact"; CD for members,
   CD_connection for connections (never above 1.6). */
const struct load_duration_row *load_duration_row(const char *duration);

/* CM, Ct, Ceg, Ctn, Cdi of connections: (factor, case), e.g. ("CM", "withdrawal-wet"), ("Ct",
   "125-dry"), ("Ceg", "lag-withdrawal"); all cases stand in tables/connection-factor.xml. The
   factor is `value`. */
const struct connection_factor_row *connection_factor_row(const char *factor, const char *use);

/* Ct of connections for the temperature of the wood and its moisture; NULL above 150 F. */
const struct connection_factor_row *connection_temperature_row(double T_degF, bool wet);

/* CM, Ci, Ct, Cr of members: (factor, property, case): ("CM", "Fb", "wet"), ("Ci", "E", "incised"),
   ("Ct", "Fb", "125-dry"), ("Cr", "Fb", "repetitive"). The factor is `value`. property: Fb Ft Fv
   Fc_perp Fc E Emin. threshold_psi: where the property times CF is not above it, the factor is 1
   (NAN: no such exception). */
const struct member_factor_row *member_factor_row(const char *factor, const char *property,
						  const char *use);
const struct member_factor_row *member_temperature_row(const char *property, double T_degF,
						       bool wet);

/* KF and phi: "connection", "Fb", "Ft", "Fv", "Fc", "Fc_perp", "Emin". */
const struct lrfd_factor_row *lrfd_factor_row(const char *property);

/* Dressed, full-sawn and pre-1970 sizes: "2x6", "2x6-full-sawn", "2x6-pre-1970": b_in, d_in. */
const struct lumber_section_row *lumber_section_row(const char *size);

/* Design values of a rafter. Table 4A for all groups but Southern Pine, which stands in 4B by
   width. Grades as printed, or as the yard says (table lumber-grade-alias): "No.2" finds the row
   "No.1/No.2" of the groups that are listed so. */
struct lumber {
	const char *species, *grade; /* as listed */
	double Fb_psi, Ft_psi, Fv_psi, Fc_perp_psi, Fc_psi, E_psi, Emin_psi;
	double G; /* of the lumber table; connections take wood_gravity_row, which may be lower */
	double CF_Fb, CF_Ft, CF_Fc; /* size factors, not yet multiplied in */
	enum confidence status, CF_status;
	const char *source, *note, *CF_source;
};

/* False if the group, the grade or the size is not listed, or the grade is not listed at this
   width: dimension lumber only, 1.5 <= b <= 4 in, d >= 3.5 in. The nominal width is the smallest
   listed one that holds the depth d_in, so an old or full-sawn piece takes the size factor of its
   own nominal size. *out is left alone then. */
bool lumber_find(const char *species, const char *grade, double b_in, double d_in,
		 struct lumber *out);

#endif
