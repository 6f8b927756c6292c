/* SPDX-License-Identifier: MIT */
#include "report/fastener_words.h"

#include <math.h>
#include <string.h>

#include "quantity/quantity.h"
#include "table/lookup_fastener.h"

/* Screw sizes to 1/16 in or 0.1 mm. */
const char *fastener_size_text(const struct format *f, double si)
{
	char text[64];

	if (f->units == SYSTEM_US)
		return document_text(f->document, "%s",
				     tape_print(text, sizeof text, si, SYSTEM_US, 16));
	return document_text(f->document, "%s", quantity_print(text, sizeof text, si, UNIT_MM, 1));
}

/* Drill bits to 1/64 in or 0.1 mm, inward at both ends so that no bit outside the range is read. */
const char *fastener_bit_text(const struct format *f, double si, bool smallest)
{
	const double step = f->units == SYSTEM_US ? M_PER_IN / 64 : 0.0001;
	const double steps = smallest ? ceil(si / step - 1e-6) : floor(si / step + 1e-6);
	char text[64];

	if (f->units == SYSTEM_US)
		return document_text(f->document, "%s",
				     tape_print(text, sizeof text, steps * step, SYSTEM_US, 64));
	return document_text(f->document, "%s",
			     quantity_print(text, sizeof text, steps * step, UNIT_MM, 1));
}

struct fastener_kind_words fastener_kind_text(enum fastener_kind kind)
{
	switch (kind) {
	case FASTENER_WOOD_SCREW:
		return (struct fastener_kind_words){"Wood screws for one foot", "wood screw", "wood screw"};
	case FASTENER_HANGER_BOLT:
		return (struct fastener_kind_words){"Hanger bolts for one foot", "hanger bolt", "bolt x thread"};
	case FASTENER_THROUGH_BOLT:
		return (struct fastener_kind_words){"Through-bolts for one foot", "bolt", "bolt x washer"};
	case FASTENER_SHEET_SCREW:
		return (struct fastener_kind_words){"Screws into steel for one foot", "screw", "screw"};
	case FASTENER_LAG_SCREW:
	case FASTENER_STRUCTURAL_SCREW:
	case FASTENER_SEAM_CLAMP:
	case FASTENER_DECK_MOUNT:
		break;
	}
	return (struct fastener_kind_words){"Lag screws for one foot", "lag screw", "lag screw"};
}

/* "5/16" of "5/16 in": the unit stands with the length. */
const char *fastener_bare_text(const struct format *f, const char *text)
{
	return document_text(f->document, "%.*s", (int)strcspn(text, " \xC2"), text);
}

/* "5/16", "No. 14" */
const char *fastener_diameter_text(const struct format *f, enum fastener_kind kind, double D, bool alone)
{
	const struct wood_screw_row *wood = wood_screw_row(D / M_PER_IN);
	const struct sheet_screw_row *steel = sheet_screw_row(D / M_PER_IN);

	if (kind == FASTENER_WOOD_SCREW && wood)
		return document_text(f->document, "No." NBSP "%s", wood->number);
	if (kind == FASTENER_SHEET_SCREW && steel && strncmp(steel->size, "No.", 3) == 0)
		return document_text(f->document, "No." NBSP "%s", steel->size + 3);
	return alone ? fastener_size_text(f, D) : fastener_bare_text(f, fastener_size_text(f, D));
}

/* "5/16 x 3-1/2 in" */
const char *fastener_screw_text(const struct format *f, enum fastener_kind kind, const struct fastener_row *r)
{
	const bool alone = isnan(r->L);

	return document_text(f->document, "%s%s%s", fastener_diameter_text(f, kind, r->D, alone),
			     alone ? "" : " x ", alone ? "" : fastener_size_text(f, r->L));
}

const char *fastener_basis(enum fastener_kind kind)
{
	switch (kind) {
	case FASTENER_WOOD_SCREW:
		return "Pull by NDS-2018 Eq. 12.2-2 on two thirds of the length as thread, the tip not "
		       "counted; pull and side load together by Eq. 12.4-1; the screw's own tension by "
		       "common practice. Too short: under 6 D in the rafter (12.1.5.6).";
	case FASTENER_HANGER_BOLT:
		return "The bolt stands free and bends in the wood under the force at the height "
		       "given; pull and side load together by NDS-2018 Eq. 12.4-1. Too short: under 4 D "
		       "in the rafter (12.1.4.6).";
	case FASTENER_THROUGH_BOLT:
		return "Pull: the lesser of what the washer bears across the grain (NDS-2018 3.10.2) "
		       "and the bolt's own tension; with the side load by a straight line (our rule). "
		       "Drill 1/32 to 1/16 in wider than the bolt (12.1.3.2). A washer must lie on the "
		       "rafter with its whole face.";
	case FASTENER_SHEET_SCREW:
		return "Pull-out, pull-over, shear and the screw itself by AISI S100 J4; the formulas "
		       "for pull and shear together are from memory. Screws no nearer than 3 d. The "
		       "steel below must be framing, never the roof's skin.";
	case FASTENER_LAG_SCREW:
	case FASTENER_STRUCTURAL_SCREW:
	case FASTENER_SEAM_CLAMP:
	case FASTENER_DECK_MOUNT:
		break;
	}
	return "Pull and side load together by NDS-2018 Eq. 12.4-1; the least thread of the standard "
	       "shape; the screw's own tension by common practice. Too short: under 4 D in the rafter "
	       "(12.1.4.6).";
}
