/* SPDX-License-Identifier: MIT */
/* What lies between the screw's head and the rafter, the lengths that count, the lead hole, the
   room for error. */
#include <math.h>

#include "report/check_part.h"
#include "report/field_value.h"

/* Drill bits: 1/64 in; 0.1 mm. Inward at both ends, so that no bit outside the range is read. */
static const char *bit(const struct part *p, double size, bool smallest)
{
	const double step = p->f.units == SYSTEM_US ? M_PER_IN / 64.0 : 0.0001;
	/* 1e-6 of a step: a listed 13/64 in must not become 14/64 by its last bits. */
	const double steps = smallest ? ceil(size / step - 1e-6) : floor(size / step + 1e-6);
	char text[64];

	if (p->f.units == SYSTEM_US)
		return document_text(p->d, "%s",
				     tape_print(text, sizeof text, steps * step, SYSTEM_US, 64));
	return document_text(p->d, "%s",
			     quantity_print(text, sizeof text, steps * step, UNIT_MM, 1));
}

static void add_lead_hole(const struct part *p)
{
	const struct fastener_result *s = &p->r->fastener;

	const enum fastener_kind kind = p->job->fastener.kind;

	if (kind == FASTENER_THROUGH_BOLT) {
		document_pair(p->d, "hole", "", "1/32 to 1/16 in (0.8 to 1.6 mm) wider than the bolt");
		return;
	}
	if (kind == FASTENER_WOOD_SCREW && isnan(s->lead_hole_low) && s->W > 0.0) {
		document_pair(p->d, "lead hole", "", "none asked for in wood this light (G to 0.5)");
		return;
	}
	if (isnan(s->lead_hole_low) || isnan(s->lead_hole_high)) {
		document_pair(p->d, "lead hole", "",
			      "none is listed for this screw: ask its maker");
		return;
	}
	document_pair(p->d, "lead hole for the thread", "",
		      "%s to %s; for the smooth shank the screw's own diameter",
		      bit(p, s->lead_hole_low, true), bit(p, s->lead_hole_high, false));
}

static const char *kind_words(enum fastener_kind kind)
{
	static const char *const words[] = {
		[FASTENER_LAG_SCREW] = "lag screw",
		[FASTENER_WOOD_SCREW] = "wood screw",
		[FASTENER_STRUCTURAL_SCREW] = "structural screw",
		[FASTENER_THROUGH_BOLT] = "through-bolt",
		[FASTENER_HANGER_BOLT] = "hanger bolt",
		[FASTENER_SEAM_CLAMP] = "seam clamp",
		[FASTENER_DECK_MOUNT] = "deck mount",
		[FASTENER_SHEET_SCREW] = "sheet screw",
	};

	return words[kind];
}

static void add_lengths(const struct part *p)
{
	const struct fastener_result *s = &p->r->fastener;

	/* 12.1.4.6 leaves the tip out, 12.1.5.6 counts it */
	const bool tip_counts = p->job->fastener.kind == FASTENER_WOOD_SCREW;
	const char *least = ": for the least penetration";

	document_pair(p->d, "in the rafter, tip included", "", "%s%s",
		      show_rounded(&p->f, s->p_tot, UNIT_IN, SHOW_DOWN), tip_counts ? least : "");
	document_pair(p->d, "in the rafter without the tip", "", "%s%s",
		      show_rounded(&p->f, s->p, UNIT_IN, SHOW_DOWN), tip_counts ? "" : least);
	document_pair(p->d, "thread in the rafter", "", "%s: for withdrawal",
		      show_rounded(&p->f, s->p_t, UNIT_IN, SHOW_DOWN));
	document_pair(p->d, "bearing length", "", "%s: for side load",
		      show_rounded(&p->f, s->l_m, UNIT_IN, SHOW_DOWN));
}

/* "lag screw 5/16 in, 4 in long, 2 per foot" */
static void add_size(const struct part *p)
{
	const struct job_fastener *f = &p->job->fastener;
	const bool long_known = !isnan(f->length), washer = f->kind == FASTENER_THROUGH_BOLT;
	const char *length = field_text(&p->f, p->job, &field_table[FIELD_FASTENER_LENGTH], 0);

	document_pair(p->d, "screw", "", "%s %s%s%s%s, %d per foot%s", kind_words(f->kind),
		      field_text(&p->f, p->job, &field_table[FIELD_FASTENER_DIAMETER], 0),
		      long_known ? ", " : "", long_known ? length : "", long_known ? " long" : "",
		      f->count, f->rows > 1 ? document_text(p->d, " in %d rows", f->rows) : "");
	if (washer)
		document_pair(p->d, "washer under the rafter", "", "%s",
			      field_text(&p->f, p->job, &field_table[FIELD_FASTENER_WASHER_DIAMETER], 0));
}

/* What fastener_layers counts for this seat. */
static const char *passed(enum seat seat)
{
	switch (seat) {
	case SEAT_ON_WOOD:
		return "plate";
	case SEAT_ON_DECK:
		return "plate and deck";
	case SEAT_UNKNOWN:
	case SEAT_OVER_LAYERS:
	case SEAT_RIGID_POST:
		break;
	}
	return "plate, covering, underlayment and deck";
}

void part_fastener(const struct part *p)
{
	const struct fastener_result *s = &p->r->fastener;

	if (!(s->t_up > 0.0) && !(s->p_tot > 0.0))
		return;
	document_add(p->d, BLOCK_HEADING, 1, "From the head of the screw to the rafter");
	document_pairs(p->d);
	add_size(p);
	document_pair(p->d, "above the rafter", "", "%s of %s",
		      show_rounded(&p->f, s->t_up, UNIT_IN, SHOW_UP), passed(p->job->mount.seat));
	if (s->p_tot > 0.0)
		add_lengths(p);
	document_pair(p->d, "gap without bearing", "", "%s",
		      show_rounded(&p->f, s->gap, UNIT_IN, SHOW_UP));
	if (s->W > 0.0)
		document_pair(p->d, "reference withdrawal W", "", "%s of thread",
			      show_rounded(&p->f, s->W, UNIT_LB_IN, SHOW_DOWN));
	if (s->Z > 0.0)
		document_pair(p->d, "reference side load Z", "", "%s%s%s%s",
			      show_rounded(&p->f, s->Z, UNIT_LB, SHOW_DOWN),
			      s->mode ? " (yield mode " : "", s->mode ? s->mode : "",
			      s->mode ? ")" : "");
	add_lead_hole(p);
	document_pair(
		p->d, "room for error", "", "%s off the rafter's centre; the job allows for %s",
		show_rounded(&p->f, s->edge_room, UNIT_IN, SHOW_DOWN),
		field_text(&p->f, p->job, &field_table[FIELD_FASTENER_DRILLING_TOLERANCE], 0));
}
