/* SPDX-License-Identifier: MIT */
/* A section on a telephone's screen: title and sources, the picture with numbers in a column at its
   right, then what numbers and letters mean, pitch, verdict, below each other. */
#include <math.h>
#include <stdlib.h>

#include "drawing/dimension.h"
#include "report/caution.h"
#include "sheet/section.h"

#define MARGIN NARROW_MARGIN
#define TEXT (2.2 * MM)
#define TITLE (2.8 * MM)
#define LINE (1.35 * TEXT)
#define COLUMN (5 * MM)     /* of numbers */
#define ABOVE (3 * MM)      /* the picture */
#define ABOVE_RACK (9 * MM) /* a height that has no room between its ticks is told above */
#define HANGING (6 * MM)    /* from a number or letter to its words */

static double width_of(const struct section *x)
{
	return x->room.width - 2 * MARGIN;
}

static double say(struct section *x, double y, double indent, const char *text)
{
	return sheet_paragraph(x->s, x->d, (struct point){MARGIN + indent, y}, width_of(x) - indent,
			       TEXT, text);
}

/* Title, scale and sources from the top down; the y below them. */
static double head(struct section *x)
{
	const struct point top = {MARGIN, x->room.height - MARGIN};

	drawing_view(x->d, VIEW_PAPER);
	const double y = sheet_heading(x->s, x->d, top, width_of(x), TITLE, drawing_title(x->d));

	return say(x, y - 0.3 * LINE, 0, section_says(x)) - LINE;
}

void section_place_narrow(struct section *x)
{
	const struct section_beside *b = &section_beside[x->what];
	const double w = x->x1 - x->x0, h = x->y1 - x->y0,
		     room = width_of(x) - COLUMN - b->left - b->right;

	x->scale = scale_for_screen(x->s, w, h, room, x->room.height / 4);
	section_title(x);
	x->high = head(x);
	const double k = 1 / x->scale.ratio,
		     y = x->high - (x->what == SECTION_OF_RACK ? ABOVE_RACK : ABOVE);
	const struct view view = {
		{MARGIN + b->left + (room - w * k) / 2 - x->x0 * k, y - x->y1 * k}, k, x->theta};

	x->low = y - h * k - b->below - LINE;
	drawing_view(x->d, view);
	drawing_set_main_view(x->d, view);
}

static int higher(const void *a, const void *b)
{
	const struct section_label *x = a, *y = b;

	return (x->at.y < y->at.y) - (x->at.y > y->at.y);
}

/* From the top down, a thin line from each part to its number. */
static void numbers(struct section *x)
{
	const double column = x->room.width - MARGIN - COLUMN + 2.5 * MM;
	const struct lettering_spec bold = {TEXT, true, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, true};
	double y[SECTION_LABELS];

	for (int i = 0; i < x->labels; i++)
		x->label[i].at = drawing_on_paper(x->d, x->label[i].at);
	qsort(x->label, (size_t)x->labels, sizeof *x->label, higher);
	for (int i = 0; i < x->labels; i++)
		y[i] = -x->label[i].at.y;
	dimension_spread(y, x->labels, 1.2 * LINE);
	const double down = x->labels > 0 ? fmax(0, TEXT / 2 - x->high - y[0]) : 0;

	for (int i = 0; i < x->labels; i++)
		y[i] += down;
	drawing_view(x->d, VIEW_PAPER);
	for (int i = 0; i < x->labels; i++) {
		const struct point elbow = {column - 2 * MM, -y[i]}, end = {column, -y[i]};

		drawing_path(x->d, LAYER_THIN, (const struct point[]){x->label[i].at, elbow, end},
			     3);
		drawing_mark(x->d, LAYER_THIN, FILL_BLACK, x->label[i].at, 0.35 * MM);
		drawing_text(x->d, LAYER_TEXT, (struct point){column + 0.6 * MM, -y[i]}, bold,
			     sheet_text(x->s, "%d", i + 1));
		x->low = fmin(x->low, -y[i] - LINE);
	}
}

static double named(struct section *x, double y, const char *name, const char *text)
{
	const struct lettering_spec bold = {TEXT, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};

	drawing_text(x->d, LAYER_TEXT, (struct point){MARGIN, y}, bold, name);
	return say(x, y, HANGING, text) - 0.15 * LINE;
}

void section_page_narrow(struct section *x)
{
	numbers(x);
	double y = x->low;

	for (int i = 0; i < x->labels; i++)
		y = named(x, y, sheet_text(x->s, "%d", i + 1), x->label[i].text);
	y -= 0.5 * LINE;
	for (int i = 0; i < x->keys; i++)
		y = named(x, y, x->key[i].letter, x->key[i].text);
	y -= 0.5 * LINE;
	if (x->what != SECTION_OF_BLOCK) { /* that one is seen up the slope */
		y -= 14 * MM * tan(x->theta);
		section_pitch(x, (struct point){MARGIN, y}, (struct point){MARGIN, y - 1.5 * MM});
		y -= 1.5 * MM + 1.5 * LINE;
	}
	y = say(x, y, 0, sheet_text(x->s, "%s. Job %s.", sheet_verdict(x->s), x->s->fingerprint));
	x->low = say(x, y, 0, caution_result);
}
