/* SPDX-License-Identifier: MIT */
/* How fasteners of a kind and their sizes are called. Internal to src/report. */
#ifndef RP_REPORT_FASTENER_WORDS_H
#define RP_REPORT_FASTENER_WORDS_H

#include "check/fastener_table.h"
#include "report/format.h"

struct fastener_kind_words {
	const char *title, *one, *size; /* of the list, of one, head of the column of sizes */
};
struct fastener_kind_words fastener_kind_text(enum fastener_kind kind);
/* To 1/16 in or 0.1 mm. */
const char *fastener_size_text(const struct format *f, double si);
/* Drill bits to 1/64 in or 0.1 mm, inward at both ends so that no bit outside the range is read. */
const char *fastener_bit_text(const struct format *f, double si, bool smallest);
/* "5/16" of "5/16 in": the unit stands with what follows. */
const char *fastener_bare_text(const struct format *f, const char *text);
/* "5/16", "No. 14"; alone: with its unit. */
const char *fastener_diameter_text(const struct format *f, enum fastener_kind kind, double D, bool alone);
/* "5/16 x 3-1/2 in" */
const char *fastener_screw_text(const struct format *f, enum fastener_kind kind,
				const struct fastener_row *r);
/* What the figures of a kind rest on, and its least penetration. */
const char *fastener_basis(enum fastener_kind kind);

#endif
