/* SPDX-License-Identifier: MIT */
/* Round a section: the names of its parts in a column, the letters of its dimensions, pitch, title,
   verdict. */
#include <math.h>
#include <stdlib.h>

#include "drawing/dimension.h"
#include "report/caution.h"
#include "sheet/section.h"

#define MARGIN SECTION_MARGIN
#define LABEL_WIDTH SECTION_LABEL_WIDTH
#define TEXT (2.2 * MM)

static int higher(const void *a, const void *b)
{
	const struct section_label *x = a, *y = b;

	return (x->at.y > y->at.y) - (x->at.y < y->at.y);
}

/* Lines that a text takes in the column. */
static int lines(const struct section *x, const char *text)
{
	return (int)ceil(sheet_width(x->s, text, TEXT) / (LABEL_WIDTH - 8 * MM) * 1.08);
}

/* All names in a column at the right, in the order of what they name, a thin line to each. */
static void put_labels(struct section *x)
{
	const double column = drawing_width(x->d) - MARGIN - LABEL_WIDTH + 4 * MM,
		     pitch = 1.35 * TEXT;
	double y[SECTION_LABELS * 2];
	int row[SECTION_LABELS], n = 0;

	for (int i = 0; i < x->labels; i++)
		x->label[i].at = drawing_on_paper(x->d, x->label[i].at);
	qsort(x->label, (size_t)x->labels, sizeof *x->label, higher);
	/* From the bottom up; a text of two lines takes two places, its first line the upper one.
	 */
	for (int i = 0; i < x->labels; i++) {
		const int need = lines(x, x->label[i].text);

		for (int k = 0; k < need && n < SECTION_LABELS * 2; k++)
			y[n++] = x->label[i].at.y;
		row[i] = n - 1;
	}
	dimension_spread(y, n, 1.12 * pitch);
	double shift = 0;

	if (n > 0 && y[0] < MARGIN + 20 * MM)
		shift = MARGIN + 20 * MM - y[0];
	if (n > 0 && y[n - 1] + shift > drawing_height(x->d) - MARGIN - 12 * MM)
		shift = drawing_height(x->d) - MARGIN - 12 * MM - y[n - 1];
	drawing_view(x->d, VIEW_PAPER);
	for (int i = 0; i < x->labels; i++) {
		const double at = y[row[i]] + shift;
		const struct point elbow = {column - 5 * MM, at}, end = {column - 1 * MM, at};

		drawing_path(x->d, LAYER_THIN, (const struct point[]){x->label[i].at, elbow, end},
			     3);
		drawing_mark(x->d, LAYER_THIN, FILL_BLACK, x->label[i].at, 0.35 * MM);
		sheet_paragraph(x->s, x->d,
				(struct point){column, at + LETTERING_CAPITAL * TEXT / 2},
				LABEL_WIDTH - 8 * MM, TEXT, x->label[i].text);
	}
}

/* At the lower left: a right triangle with 12 of run, and what the letters mean. */
static void foot_notes(struct section *x)
{
	const double run = 14 * MM, up = run * tan(x->theta);
	const struct point a = {MARGIN + 2 * MM, MARGIN + 6 * MM};
	const struct lettering_spec spec = {TEXT, false, ANCHOR_LEFT, ANCHOR_TOP, 0, true};
	const struct lettering_spec bold = {TEXT, true, ANCHOR_LEFT, ANCHOR_TOP, 0, true};
	char buf[64];

	for (int i = 0; i < x->keys; i++) {
		const struct point at = {a.x + run + 8 * MM,
					 MARGIN + 7 * MM + 1.45 * TEXT * (x->keys - 1 - i) + TEXT};

		drawing_text(x->d, LAYER_TEXT, at, bold, x->key[i].letter);
		drawing_text(x->d, LAYER_TEXT, (struct point){at.x + 4 * MM, at.y}, spec,
			     x->key[i].text);
	}
	if (x->what == SECTION_OF_BLOCK)
		return; /* seen up the slope */
	drawing_path(x->d, LAYER_MATERIAL,
		     (const struct point[]){a, {a.x + run, a.y}, {a.x + run, a.y + up}, a}, 4);
	drawing_text(x->d, LAYER_TEXT, (struct point){a.x, a.y - 1.5 * MM}, spec,
		     sheet_text(x->s, "pitch %s, up the slope to the right",
				pitch_print(buf, sizeof buf, x->theta)));
}

static const char *source_words(const struct section *x)
{
	if (x->what == SECTION_OF_RACK)
		return "Heights, tilt and places from the job, forces from the check; sizes of "
		       "legs, rail and brace are the maker's. Foot and screw: sheet Attachment.";
	if (x->what == SECTION_OF_BLOCK)
		return "Block and its ends from the check; see there what it could not rate.";
	if (x->from_library && x->what == SECTION_OF_PIPE)
		return "Covering and flashing from the notes on this covering; pipe, deck and "
		       "pitch from the job.";
	if (x->from_library && !sheet_on_seams(x->s->job) && section_find(x, "clamp"))
		return "Covering from the notes on it, which hold feet by clamps on its seams and "
		       "draw no flashing of a foot that goes through: a roofer of that trade does. "
		       "Foot, screw and framing from the job.";
	return x->from_library ? "Covering and flashing from the notes on this "
				 "covering; foot, screw and framing from the job."
			       : "The covering library has no drawing of this: only "
				 "what the job itself tells is drawn.";
}

/* What the job's own pieces leave undone. */
static const char *lacking(const struct section *x)
{
	if (x->boot_too_wide)
		return " This pan is too narrow for this boot: take a curb as wide as the pan.";
	if (!(x->post_least > 0))
		return "";
	/* to the next 1/2 in, as the guide says it */
	return sheet_text(
		x->s, " The post of this job is too short for this flashing: it needs %s or more.",
		sheet_size(x->s, ceil(x->post_least / M_PER_IN * 2 - 1e-6) / 2 * M_PER_IN));
}

static void head(struct section *x)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const double top = drawing_height(x->d) - MARGIN;
	const char *source = source_words(x);

	drawing_text(x->d, LAYER_TEXT, (struct point){MARGIN, top}, big, drawing_title(x->d));
	sheet_paragraph(x->s, x->d, (struct point){MARGIN, top - 5 * MM},
			drawing_width(x->d) - 2 * MARGIN, TEXT,
			sheet_text(x->s, "Scale %s. %s%s %s", x->scale.text, source, lacking(x),
				   sheet_unit_note(x->s)));
	const double left = drawing_width(x->d) - MARGIN - LABEL_WIDTH + 4 * MM,
		     wide = LABEL_WIDTH - 8 * MM;
	const double y = sheet_paragraph(
		x->s, x->d, (struct point){left, MARGIN + 17 * MM}, wide, TEXT,
		sheet_text(x->s, "%s. Job %s.", sheet_verdict(x->s), x->s->fingerprint));

	sheet_paragraph(x->s, x->d, (struct point){left, y}, wide, 0.8 * TEXT, caution_result);
}

void section_page(struct section *x)
{
	put_labels(x);
	foot_notes(x);
	head(x);
}
