/* SPDX-License-Identifier: MIT */
/* What a crew reads on the ladder: where the tape goes, the hole, the screw, the flashing, the
 * photographs. */
#include <math.h>

#include "report/caution.h"
#include "report/check_part.h"
#include "sheet/rail_pieces.h"
#include "sheet/section.h"
#include "sheet/sheets.h"

static const char *place_kind(const struct sheet *s)
{
	if (sheet_on_seams(s->job))
		return "seam";
	return s->r->on_deck ? "place" : section_member(s->job);
}

static void tape_lines(const struct sheet *s, struct document *d)
{
	const char *unit = s->job->units == SYSTEM_SI ? ", mm" : "";
	const struct column columns[] = {
		{"line", ALIGN_RIGHT, true, false},
		{document_text(d, "up the slope%s", unit), ALIGN_RIGHT, false, false},
		{document_text(d, "foot: along the eave from %s%s (%s)", left_end(s->job), unit, place_kind(s)),
		 ALIGN_LEFT, false, true},
	};

	document_table(d, columns, 3);
	for (int i = 0; i < s->pass->lines; i++) {
		const struct rail_line *line = &s->pass->line[i];
		const char *list = "";

		for (int k = line->first; k < line->first + line->count; k++) {
			const struct attachment *a = &s->pass->attachment[k];

			list = document_text(d, "%s%s%d:" NBSP "%s" NBSP "(%s)", list, *list ? ",  " : "",
					     a->number, sheet_tape(s, a->x), place_name(d, s->r, a->rafter));
		}
		document_row(d);
		document_cell(d, "%d", line->line + 1);
		document_cell(d, "%s", sheet_tape(s, line->y));
		document_cell(d, "%s", list);
	}
}

/* What "4/5" in the table means, and what is done before the foot. */
static void block_words(const struct sheet *s, struct document *d)
{
	const struct block_result *b = &s->r->block;

	if (b->feet == 0)
		return;
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "(4/5) is a block midway between rafters 4 and 5, set before the foot: %s %s, %s %s, upper face "
		     "flush with the rafters', %s.",
		     b->size, b->flat ? "flat" : "on edge", b->species, b->grade,
		     b->hanger ? "each end in its hanger"
			       : document_text(d, "%d common nails %s through the rafter into each end",
					       b->rows * b->columns, sheet_block_nail(s)));
}

/* Where the pieces of each rail meet, by the same tape. */
static void joint_words(const struct sheet *s, struct document *d)
{
	for (int i = 0; i < s->pass->lines; i++) {
		double at[SPLICE_MAX];
		const int n = rail_pieces_joints(s, i, at);
		const char *list = "";

		for (int k = 0; k < n; k++)
			list = document_text(d, "%s%s%s", list, *list ? ", " : "", sheet_tape(s, at[k]));
		if (n > 0)
			document_add(d, BLOCK_PARAGRAPH, 0,
				     "Rail of line %d: joined at %s, along the eave from %s.", s->pass->line[i].line + 1, list,
				     left_end(s->job));
	}
}

/* Pipes go by the same tape; one whose place the job leaves open is named too. */
static void pipe_words(const struct sheet *s, struct document *d)
{
	const char *unit = s->job->units == SYSTEM_SI ? NBSP "mm" : "";

	for (int i = 0; i < s->job->pipes; i++) {
		const struct job_pipe *p = &s->job->pipe[i];

		if (isnan(p->at) || isnan(p->up))
			document_add(d, BLOCK_PARAGRAPH, 0, "Pipe P%d: the job gives no place for it.", i + 1);
		else
			document_add(d, BLOCK_PARAGRAPH, 0, "Pipe P%d: %s%s along the eave, %s%s up the slope.", i + 1,
				     sheet_tape(s, p->at), unit, sheet_tape(s, p->up), unit);
	}
}

static void clamp_words(const struct sheet *s, struct document *d)
{
	document_pairs(d);
	document_pair(d, "clamp", "",
		      "on the seam at each place, no hole; seam clean and straight, clamp square "
		      "upon it");
	document_pair(d, "set screws", "",
		      "blunt ones, to the clamp maker's torque by a torque wrench: loose slips, "
		      "tight dents");
	document_pair(d, "seams", "",
		      "%s apart: measure them, the number in brackets counts them from the left",
		      sheet_size(s, s->job->roof.seam_spacing));
}

static const char *in_each_foot(const struct sheet *s, struct document *d)
{
	const struct job_fastener *k = &s->job->fastener;

	return document_text(d, "%d in each foot%s: %s%s", k->count,
			     k->count > 1 ? document_text(d, ", %s apart along the rafter",
							  sheet_size(s, k->spacing))
					  : "",
			     sheet_shank(s, k->diameter),
			     isnan(k->length) ? ""
					      : document_text(d, " by %s", sheet_size(s, k->length)));
}

/* Holes for bolts: NDS-2018 12.1.3.2. */
static void bolt_words(const struct sheet *s, struct document *d)
{
	const struct job_fastener *k = &s->job->fastener;

	document_pairs(d);
	document_pair(d, "hole", "",
		      "right through the rafter, in its middle, at most %s off it; 1/32 in to 1/16 in "
		      "wider than the bolt",
		      sheet_size(s, k->drilling_tolerance));
	document_pair(d, "bolt", "", "%s; washer %s and nut below the rafter", in_each_foot(s, d),
		      sheet_size(s, k->washer_diameter));
	document_pair(d, "torque", "",
		      "until the washer is snug on the wood and not in it; tighten again after a "
		      "season");
}

static void lead_hole(const struct sheet *s, struct document *d)
{
	const struct fastener_result *f = &s->r->fastener;

	if (f->lead_hole_low > 0)
		document_pair(
			d, "lead hole", "",
			"%s wide for the thread, in the middle of the %s; at most %s off it",
			sheet_drill(s, f->lead_hole_low, f->lead_hole_high),
			s->r->block.feet > 0 ? "rafter or block" : "rafter",
			sheet_size(s, s->job->fastener.drilling_tolerance));
	else if (s->job->fastener.kind == FASTENER_SHEET_SCREW)
		document_pair(d, "lead hole", "",
			      "as the screw's maker says for this steel; through the flange, clear "
			      "of its edge and its bend");
	else
		document_pair(
			d, "lead hole", "",
			"ask: none is listed for this screw; never drive a lag screw without one");
}

static void hanger_words(const struct sheet *s, struct document *d)
{
	document_pairs(d);
	lead_hole(s, d);
	document_pair(d, "hanger bolt", "",
		      "%s; all %s of its wood thread in the rafter, square to the roof",
		      in_each_foot(s, d), sheet_size(s, s->job->fastener.thread_length));
	document_pair(d, "nuts", "",
		      "the rail's bracket between two with washers, %s above the covering at most; "
		      "turn the bolt by two nuts locked on it, never by its thread",
		      sheet_size(s, s->job->mount.height));
}

static void hole_and_screw(const struct sheet *s, struct document *d)
{
	const struct fastener_result *f = &s->r->fastener;

	document_pairs(d);
	lead_hole(s, d);
	if (!sheet_has_screw(s->job))
		return;
	document_pair(d, "screw", "", "%s%s", in_each_foot(s, d),
		      f->t_up > 0 ? document_text(d, "; the head stands %s above the rafter's face",
						  sheet_size(s, f->t_up))
				  : "");
	if (f->p_t > 0)
		document_pair(d, "thread in wood", "", "at least %s%s%s; less: stop",
			      sheet_size(s, f->p_t), s->r->block.feet > 0 ? " in the rafter" : "",
			      sheet_block_thread(s));
	document_pair(d, "torque", "",
		      "by wrench, to the foot maker's figure, never hammered. A screw that spins "
		      "on has stripped: not counted, "
		      "new hole, the old one plugged and flashed");
}

static void hold_down(const struct sheet *s, struct document *d)
{
	const enum fastener_kind kind = s->job->fastener.kind;
	const bool bolt = kind == FASTENER_THROUGH_BOLT, hanger = kind == FASTENER_HANGER_BOLT;

	document_add(d, BLOCK_HEADING, 2,
		     sheet_on_seams(s->job) ? "Clamps"
		     : bolt                 ? "Hole and bolt"
					    : "Hole and screw");
	if (sheet_on_seams(s->job))
		clamp_words(s, d);
	else if (bolt)
		bolt_words(s, d);
	else if (hanger)
		hanger_words(s, d);
	else
		hole_and_screw(s, d);
	if (s->job->collector.tilt > 0)
		document_pair(d, "brace", "",
			      "a diagonal, or a frame as stiff, in the plane of each front and rear "
			      "leg: the check counts on it");
}

void words_field(const struct sheet *s, struct document *d)
{
	if (s->r->verdict != HOLDS)
		document_add(d, BLOCK_VERDICT, 0, "%s. Not for the roof: first read the report.",
			     sheet_verdict(s));
	if (s->r->passes > 0 && s->pass->lines > 0) {
		document_add(d, BLOCK_HEADING, 2, "Tape, in the order of laying out");
		tape_lines(s, d);
		block_words(s, d);
		if (sheet_tails(s))
			document_add(d, BLOCK_PARAGRAPH, 0, "%s", sheet_tails(s));
		joint_words(s, d);
		pipe_words(s, d);
	}
	hold_down(s, d);
	words_flashing(s, d);
	document_add(d, BLOCK_HEADING, 2, "Photographs");
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "The rafters from the attic with a tape. The roof before the work. Each foot: "
		     "%s, the finished foot with its number. %sEach pipe. The water test.",
		     sheet_on_seams(s->job) ? "the seam before, the clamp with its set screws"
		     : isnan(s->job->roof.course_exposure)
			     ? "hole with sealant, flashing before it is covered"
			     : "hole with sealant, flashing under its course",
		     sheet_has_screw(s->job) ? "The underside of each screw in the attic. " : "");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_roof_work[0]);
}
