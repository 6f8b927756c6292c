/* SPDX-License-Identifier: MIT */
#include "sheet/material_note.h"

#include <math.h>

#include "resist/resist_steps.h"
#include "sheet/materials.h"

static const char *kind_words(enum fastener_kind kind)
{
	switch (kind) {
	case FASTENER_LAG_SCREW:
		return "lag screws";
	case FASTENER_WOOD_SCREW:
		return "wood screws";
	case FASTENER_STRUCTURAL_SCREW:
		return "the maker's screws of the test report";
	case FASTENER_THROUGH_BOLT:
		return "bolts";
	case FASTENER_HANGER_BOLT:
		return "hanger bolts";
	case FASTENER_SHEET_SCREW:
		return "self-drilling screws";
	case FASTENER_SEAM_CLAMP:
	case FASTENER_DECK_MOUNT:
		break;
	}
	return "screws";
}

/* The thread that the check counts on; NAN where none matters. */
static double least_thread(const struct job_fastener *k)
{
	if (!isnan(k->thread_length) || k->kind != FASTENER_LAG_SCREW)
		return k->thread_length;
	return STEP(NULL, step_lag_thread_length, k->length);
}

static const char *thread_words(const struct sheet *s)
{
	const struct job_fastener *k = &s->job->fastener;
	const double T = least_thread(k);

	if (isnan(T))
		return "";
	return sheet_text(s, ", %s of %s%s", show_least(&s->f, T),
			  k->kind == FASTENER_HANGER_BOLT ? "wood thread" : "thread or more",
			  isnan(k->thread_length) ? " (NDS Table L2)" : "");
}

const char *material_screw(const struct sheet *s)
{
	const struct job_fastener *k = &s->job->fastener;
	const char *length =
		isnan(k->length) ? "" : sheet_text(s, " by %s", sheet_size(s, k->length));

	if (k->kind == FASTENER_THROUGH_BOLT)
		return sheet_text(s, "bolts, %s%s, each with a nut and a washer of %s below the rafter",
				  sheet_shank(s, k->diameter), length, sheet_size(s, k->washer_diameter));
	if (k->kind == FASTENER_HANGER_BOLT)
		return sheet_text(s, "hanger bolts, %s%s%s, with nuts and washers", sheet_shank(s, k->diameter),
				  length, thread_words(s));
	return sheet_text(s, "%s, %s%s under the head%s, with washer", kind_words(k->kind),
			  sheet_shank(s, k->diameter), length, thread_words(s));
}

const char *material_foot_flashing(const struct sheet *s, const struct guide_sizes *sizes)
{
	if (isnan(sizes->plate_length))
		return sheet_text(s, "for %s", s->job->roof.covering);
	return sheet_text(s, "for %s, at least %s long up the slope: %s below the hole, %s above",
			  s->job->roof.covering, show_least(&s->f, sizes->plate_length),
			  show_least(&s->f, sizes->plate_down), show_least(&s->f, sizes->plate_up));
}

const char *material_pipe_flashing(const struct sheet *s)
{
	const char *list = sheet_text(s, "for %s", s->job->roof.covering);

	for (int i = 0; i < s->job->pipes; i++) {
		const struct job_pipe *p = &s->job->pipe[i];
		const bool bare = isnan(p->insulated_diameter);

		list = sheet_text(s, "%s%s %d for %s outside%s%s", list, i > 0 ? "," : ":", p->count,
				  sheet_size(s, bare ? p->diameter : p->insulated_diameter),
				  bare ? "" : " with insulation",
				  isnan(p->temperature)
					  ? ""
					  : sheet_text(s, " (boot or sleeve that bears %s)",
						       show(&s->f, p->temperature, UNIT_DEG_F)));
	}
	return list;
}

/* Pipes whose length nobody can tell from the job. */
static void pipes_left_out(const struct sheet *s, struct document *d)
{
	const char *list = "";
	int n = 0;

	for (int i = 0; i < s->job->pipes; i++)
		if (isnan(pipe_run(&s->job->pipe[i])))
			list = document_text(d, "%s%sP%d", list, n++ > 0 ? ", " : "", i + 1);
	if (n > 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "Pipe and insulation of %s are not in the list: the job gives no length (pipe.run, or "
			     "pipe.storeys with pipe.offset).",
			     list);
}

void material_left_out(const struct sheet *s, struct document *d)
{
	const bool si = s->f.units == SYSTEM_SI;

	pipes_left_out(s, d);
	if (s->job->collector.tilt > 0)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "The legs and braces of the tilted rows are not in the list: they come with the rack, by "
			     "its maker's drawing.");
	if (s->job->collector.kind == COLLECTOR_FLAT_PLATE)
		document_add(d, BLOCK_PARAGRAPH, 0,
			     "The storage tank is not in the list: one of %s goes with two collectors, so about %d %s "
			     "here (common practice); what is drawn in a day decides.",
			     si ? "300 l" : "80 gal", (si ? 150 : 40) * s->r->collectors, si ? "l" : "gal");
}
