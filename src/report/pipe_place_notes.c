/* SPDX-License-Identifier: MIT */
#include "report/pipe_place_notes.h"

#include <math.h>

#include "check/pipe_place.h"

static const char *add(struct document *d, const char *text, const char *more)
{
	return *text ? document_text(d, "%s; %s", text, more) : more;
}

static const char *answer(struct document *d, const struct format *f, const struct pipe_place *p)
{
	const char *text = "";

	if (!p->given)
		return "not known: where it goes through (pipe.at, pipe.up)";
	if (p->landing != LANDING_WELL && p->landing != LANDING_UNKNOWN)
		text = add(d, text, landing_words(p->landing));
	if (p->on_joint)
		text = add(d, text, landing_words(LANDING_AT_JOINT));
	if (p->near_seam)
		text = add(d, text, landing_words(LANDING_AT_SEAM));
	for (int b = 0; b < BORDER_COUNT; b++)
		if (border_close(&p->border[b]))
			text = add(d, text,
				   document_text(d, "too near the %s by %s", border_words((enum border)b),
						 show_tape(f, p->border[b].least - p->border[b].distance)));
	if (p->butts || p->joints)
		text = add(d, text,
			   document_text(d, "not known: %s%s%s", p->butts ? "butts" : "", p->butts && p->joints ? ", " : "",
					 !p->joints ? "" : p->seamed ? "seams" : "joints"));
	return *text ? text : "clear";
}

/* The shorter of two ways, in words. */
static const char *shorter(struct document *d, const struct format *f, double a, const char *a_words, double b,
			   const char *b_words)
{
	if (!isfinite(a) && !isfinite(b))
		return "-";
	return !isfinite(b) || a <= b ? document_text(d, "%s %s", show_tape(f, a), a_words)
				      : document_text(d, "%s %s", show_tape(f, b), b_words);
}

void pipe_place_notes(struct document *d, const struct format *f, const struct job *job, const struct result *r)
{
	static const struct column columns[] = {
		{"hole", ALIGN_LEFT, true, false},
		{"answer", ALIGN_LEFT, false, true},
		{"course", ALIGN_RIGHT, false, false},
		{"least move along the slope", ALIGN_LEFT, false, false},
		{"or to the side", ALIGN_LEFT, false, false},
	};

	if (job->pipes == 0)
		return;
	document_add(d, BLOCK_HEADING, 2, "Every pipe's hole in the covering");
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (int i = 0; i < job->pipes; i++) {
		const struct pipe_place p = pipe_place(job, r, i);

		document_row(d);
		document_cell(d, "pipe %d", i + 1);
		document_cell(d, "%s", answer(d, f, &p));
		document_cell(d, p.course > 0 ? "%d" : "-", p.course);
		document_cell(d, "%s", shorter(d, f, p.up, "up", p.down, "down"));
		document_cell(d, "%s", shorter(d, f, p.left, "left", p.right, "right"));
	}
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "By the same rules as the feet, for the whole hole, borders from the edge of its flange; a move is the least "
		     "that clears what is known, within %s, and a dash where there is none. Look that it does not come upon a "
		     "foot, a rafter or something on the roof. Several pipes at one place: the first hole.",
		     show_tape(f, PIPE_MOVE_MOST));
}
