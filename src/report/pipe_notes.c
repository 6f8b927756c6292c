/* SPDX-License-Identifier: MIT */
#include "report/pipe_notes.h"

#include <math.h>

#include "report/flashing_sizes.h"

static const char *size(const struct format *f, double length)
{
	return isnan(length) ? "-" : show_part(f, length);
}

static void row(struct document *d, const struct format *f, int number, const struct guide_sizes *s)
{
	document_row(d);
	document_cell(d, "P%d", number);
	document_cell(d, "%s", size(f, s->pipe_diameter));
	document_cell(d, "%s", size(f, s->pipe_insulated));
	document_cell(d, "%s", size(f, s->pipe_across));
	document_cell(d, "%s", size(f, s->pipe_ellipse));
	document_cell(d, "%s", size(f, s->deck_slot));
	document_cell(d, "%s", size(f, s->sleeve_difference));
	document_cell(d, "%s",
		      isnan(s->pipe_temperature) ? "-" : show(f, s->pipe_temperature, UNIT_DEG_F));
}

void pipe_notes(struct document *d, const struct format *f, const struct job *job,
		const struct result *r)
{
	static const struct column columns[] = {
		{"pipe", ALIGN_LEFT, true, false},
		{"outside", ALIGN_RIGHT, false, false},
		{"insulated", ALIGN_RIGHT, false, false},
		{"hole across", ALIGN_RIGHT, false, false},
		{"up the slope", ALIGN_RIGHT, false, false},
		{"slot in the deck", ALIGN_RIGHT, false, false},
		{"sleeve: low less high side", ALIGN_RIGHT, false, true},
		{"hottest", ALIGN_RIGHT, false, false},
	};
	int kinds = 0;

	for (int i = 0; i < job->pipes; i++)
		kinds += !flashing_pipe_repeats(job, i);
	if (kinds < 2)
		return;
	document_add(d, BLOCK_HEADING, 2, "Each pipe");
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < job->pipes; i++) {
		const struct guide_sizes sizes = flashing_sizes_of_pipe(job, r, i);

		row(d, f, i + 1, &sizes);
	}
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "The notes name the sizes of the widest pipe; take those of this table for "
		     "the others. Holes here are the pipe's own; where it goes up in a sleeve that "
		     "stands in the hole, the hole is the sleeve's, as its picture has it.");
}
