/* SPDX-License-Identifier: MIT */
/* What a crew reads on the ladder: where the tape goes, the hole, the screw, the flashing, the
 * photographs. */
#include <math.h>
#include <string.h>

#include "report/caution.h"
#include "report/flashing_sizes.h"
#include "sheet/sheets.h"

static void tape_lines(const struct sheet *s, struct document *d)
{
	const struct column columns[] = {
		{"line", ALIGN_RIGHT, true, false},
		{"up the slope", ALIGN_RIGHT, false, false},
		{sheet_on_seams(s->job) ? "along the eave from the left rake edge (seam)"
					: "along the eave from the left rake edge (rafter)",
		 ALIGN_LEFT, false, true},
	};

	document_table(d, columns, 3);
	for (int i = 0; i < s->pass->lines; i++) {
		const struct rail_line *line = &s->pass->line[i];
		const char *list = "";

		for (int k = line->first; k < line->first + line->count; k++) {
			const struct attachment *a = &s->pass->attachment[k];

			list = document_text(d, "%s%s%s" NBSP "(%d)", list, *list ? ",  " : "",
					     sheet_tape(s, a->x), a->rafter + 1);
		}
		document_row(d);
		document_cell(d, "%d", line->line + 1);
		document_cell(d, "%s", sheet_tape(s, line->y));
		document_cell(d, "%s", list);
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

static void hole_and_screw(const struct sheet *s, struct document *d)
{
	const struct job_fastener *k = &s->job->fastener;
	const struct fastener_result *f = &s->r->fastener;

	document_pairs(d);
	if (f->lead_hole_low > 0)
		document_pair(
			d, "lead hole", "",
			"%s wide for the thread, in the middle of the rafter; at most %s off it",
			sheet_drill(s, f->lead_hole_low, f->lead_hole_high),
			sheet_size(s, k->drilling_tolerance));
	else
		document_pair(
			d, "lead hole", "",
			"ask: none is listed for this screw; never drive a lag screw without one");
	if (!sheet_has_screw(s->job))
		return;
	document_pair(d, "screw", "", "%d in each foot%s: %s by %s%s", k->count,
		      k->count > 1 ? document_text(d, ", %s apart along the rafter",
						   sheet_size(s, k->spacing))
				   : "",
		      sheet_size(s, k->diameter), sheet_size(s, k->length),
		      f->t_up > 0 ? document_text(d, "; the head stands %s above the rafter's face",
						  sheet_size(s, f->t_up))
				  : "");
	if (f->p_t > 0)
		document_pair(d, "thread in wood", "", "at least %s; less: stop",
			      sheet_size(s, f->p_t));
	document_pair(d, "torque", "",
		      "by wrench, to the foot maker's figure, never hammered. A screw that spins "
		      "on has stripped: not counted, "
		      "new hole, the old one plugged and flashed");
}

struct walk {
	struct document *d;
	int steps;
};

static void add_step(void *context, const struct guide_block *b)
{
	struct walk *w = context;

	if (b->kind == GUIDE_STEP)
		document_add(w->d, BLOCK_NUMBERED, ++w->steps, "%s", b->text);
}

static void flashing_steps(const struct sheet *s, struct document *d)
{
	const struct guide_sizes sizes = flashing_sizes(s->job, s->r);
	const struct guide_request request = {s->job->roof.covering, &sizes, s->f.units,
					      GUIDE_BRIEF};
	struct walk w = {d, 0};
	const struct guide_sink sink = {add_step, &w};
	struct problem_list problems = {0};

	document_add(d, BLOCK_HEADING, 2, "Flashing on %s", s->job->roof.covering);
	if (s->library)
		guide_notes(s->library, &request, &sink, &problems);
	if (w.steps == 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "No steps for this covering are at hand: ask a roofer of that trade.");
}

void words_field(const struct sheet *s, struct document *d)
{
	if (s->r->verdict != HOLDS)
		document_add(d, BLOCK_VERDICT, 0, "%s. Not for the roof: first read the report.",
			     sheet_verdict(s));
	if (s->r->passes > 0 && s->pass->lines > 0) {
		document_add(d, BLOCK_HEADING, 2, "Tape, in the order of laying out");
		tape_lines(s, d);
	}
	document_add(d, BLOCK_HEADING, 2, sheet_on_seams(s->job) ? "Clamps" : "Hole and screw");
	if (sheet_on_seams(s->job))
		clamp_words(s, d);
	else
		hole_and_screw(s, d);
	flashing_steps(s, d);
	document_add(d, BLOCK_HEADING, 2, "Photographs");
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "The rafters from the attic with a tape. The roof before the work. Each foot: "
		     "hole with sealant, flashing under its course, "
		     "the finished foot with its number. The underside of each screw in the attic. "
		     "Each pipe. The water test.");
	document_add(d, BLOCK_CAUTION, 0, "%s", caution_roof_work[0]);
}
