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

	document_pair(p->d, "in the rafter, tip included", "", "%s",
		      show_rounded(&p->f, s->p_tot, UNIT_IN, SHOW_DOWN));
	document_pair(p->d, "in the rafter without the tip", "", "%s: for the least penetration",
		      show_rounded(&p->f, s->p, UNIT_IN, SHOW_DOWN));
	document_pair(p->d, "thread in the rafter", "", "%s: for withdrawal",
		      show_rounded(&p->f, s->p_t, UNIT_IN, SHOW_DOWN));
	document_pair(p->d, "bearing length", "", "%s: for side load",
		      show_rounded(&p->f, s->l_m, UNIT_IN, SHOW_DOWN));
}

void part_fastener(const struct part *p)
{
	const struct fastener_result *s = &p->r->fastener;
	const struct job_fastener *screw = &p->job->fastener;

	if (!(s->t_up > 0.0) && !(s->p_tot > 0.0))
		return;
	document_add(p->d, BLOCK_HEADING, 1, "From the head of the screw to the rafter");
	document_pairs(p->d);
	document_pair(p->d, "screw", "", "%s %s, %s long, %d per foot", kind_words(screw->kind),
		      field_text(&p->f, p->job, &field_table[FIELD_FASTENER_DIAMETER], 0),
		      field_text(&p->f, p->job, &field_table[FIELD_FASTENER_LENGTH], 0),
		      screw->count);
	document_pair(p->d, "above the rafter", "", "%s of plate, covering, underlayment and deck",
		      show_rounded(&p->f, s->t_up, UNIT_IN, SHOW_UP));
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
