/* SPDX-License-Identifier: MIT */
/* Dimensions of fasteners other than lag screws: Appendix L of the National Design Specification,
   and self-drilling screws for thin steel. See lookup.h for what all look-ups have in common.
   Inches and pounds. */
#ifndef RP_TABLE_LOOKUP_FASTENER_H
#define RP_TABLE_LOOKUP_FASTENER_H

#include "step/step.h"
#include "table/tables.h"

/* Wood screw of Table L3 by its nominal diameter, within 1e-3 in: No. 10 is 0.190 in. A diameter
   between two numbers (3/16 in) is no wood screw of the table: NULL. */
const struct wood_screw_row *wood_screw_row(double D_in);

/* Nail of Table L4: ("common", "16d"). */
const struct nail_row *nail_row(const char *kind, const char *penny);

/* Self-drilling screw by its nominal diameter, within 1e-3 in. */
const struct sheet_screw_row *sheet_screw_row(double d_in);

#endif
