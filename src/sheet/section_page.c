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
#define RUN (14 * MM) /* of the triangle of the pitch */

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

/* The column of names while it is laid out, from the bottom up. */
struct names {
	double x;                  /* of the texts */
	int order[SECTION_LABELS]; /* which label stands at a place */
	double y[SECTION_LABELS];  /* of the first line of the label at that place */
};

/* A text of two lines takes two places, its first line the upper one. */
static void lay_out(const struct section *x, struct names *c)
{
	double y[SECTION_LABELS * 2];
	int row[SECTION_LABELS], n = 0;
	double shift = 0;

	for (int i = 0; i < x->labels; i++) {
		const struct section_label *l = &x->label[c->order[i]];
		const int need = lines(x, l->text);

		for (int k = 0; k < need && n < SECTION_LABELS * 2; k++)
			y[n++] = l->at.y;
		row[i] = n - 1;
	}
	dimension_spread(y, n, 1.12 * 1.35 * TEXT);
	if (n > 0 && y[0] < MARGIN + 20 * MM)
		shift = MARGIN + 20 * MM - y[0];
	if (n > 0 && y[n - 1] + shift > drawing_height(x->d) - MARGIN - 12 * MM)
		shift = drawing_height(x->d) - MARGIN - 12 * MM - y[n - 1];
	for (int i = 0; i < x->labels; i++)
		c->y[i] = y[row[i]] + shift;
}

static struct point elbow(const struct names *c, int place)
{
	return (struct point){c->x - 5 * MM, c->y[place]};
}

/* On which side of the way from a to b p lies. */
static bool left_of(struct point a, struct point b, struct point p)
{
	return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0;
}

static bool cross(const struct section *x, const struct names *c, int i, int k)
{
	const struct point a = x->label[c->order[i]].at, b = elbow(c, i),
			   p = x->label[c->order[k]].at, q = elbow(c, k);

	return left_of(a, b, p) != left_of(a, b, q) && left_of(p, q, a) != left_of(p, q, b);
}

/* Names change places until no two of their lines cross. */
static void untangle(const struct section *x, struct names *c)
{
	bool changed = true;

	for (int round = 0; changed && round < 40; round++) {
		changed = false;
		for (int i = 0; i < x->labels; i++)
			for (int k = i + 1; k < x->labels; k++) {
				const int was = c->order[i];

				if (!cross(x, c, i, k))
					continue;
				c->order[i] = c->order[k];
				c->order[k] = was;
				lay_out(x, c);
				changed = true;
			}
	}
}

/* From p to the line between a and b. */
static double off_line(struct point a, struct point b, struct point p)
{
	const double l = hypot(b.x - a.x, b.y - a.y),
		     t = l > 0 ? ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / l : 0,
		     k = l > 0 ? fmin(fmax(t / l, 0), 1) : 0;

	return hypot(a.x + k * (b.x - a.x) - p.x, a.y + k * (b.y - a.y) - p.y);
}

/* How near the dot of one name, at p, comes to the lines to the others. */
static double nearest_line(const struct section *x, const struct names *c, int place, struct point p)
{
	double least = HUGE_VAL;

	for (int i = 0; i < x->labels; i++)
		if (i != place)
			least = fmin(least, off_line(x->label[c->order[i]].at, elbow(c, i), p));
	return least;
}

#define DOT_CLEAR (1 * MM)
#define DOT_STEPS 8

/* A dot that lies on the line to another name moves along its part, where that reaches on. */
static void move_dots(struct section *x, struct names *c)
{
	for (int i = 0; i < x->labels; i++) {
		struct section_label *l = &x->label[c->order[i]];
		const double step = l->slack / x->scale.ratio / DOT_STEPS;
		const struct point from = l->at;

		for (int k = 1; k <= DOT_STEPS && l->slack > 0; k++) {
			if (nearest_line(x, c, i, l->at) >= DOT_CLEAR)
				break;
			l->at = (struct point){from.x - k * step * cos(x->theta),
					       from.y - k * step * sin(x->theta)};
		}
	}
	untangle(x, c);
}

/* All names in a column at the right, in the order of what they name, a thin line to each. */
static void put_labels(struct section *x)
{
	struct names c = {.x = drawing_width(x->d) - MARGIN - LABEL_WIDTH + 4 * MM};

	for (int i = 0; i < x->labels; i++) {
		x->label[i].at = drawing_on_paper(x->d, x->label[i].at);
		c.order[i] = i;
	}
	qsort(x->label, (size_t)x->labels, sizeof *x->label, higher);
	lay_out(x, &c);
	untangle(x, &c);
	move_dots(x, &c);
	drawing_view(x->d, VIEW_PAPER);
	for (int i = 0; i < x->labels; i++) {
		const struct section_label *l = &x->label[c.order[i]];
		const struct point end = {c.x - 1 * MM, c.y[i]};

		drawing_path(x->d, LAYER_THIN, (const struct point[]){l->at, elbow(&c, i), end}, 3);
		drawing_mark(x->d, LAYER_THIN, FILL_BLACK, l->at, 0.35 * MM);
		sheet_paragraph(x->s, x->d,
				(struct point){c.x, c.y[i] + LETTERING_CAPITAL * TEXT / 2},
				LABEL_WIDTH - 8 * MM, TEXT, l->text);
	}
}

void section_pitch(struct section *x, struct point a, struct point words)
{
	const double up = RUN * tan(x->theta);
	const struct lettering_spec spec = {TEXT, false, ANCHOR_LEFT, ANCHOR_TOP, 0, true};
	char buf[64];

	drawing_path(x->d, LAYER_MATERIAL,
		     (const struct point[]){a, {a.x + RUN, a.y}, {a.x + RUN, a.y + up}, a}, 4);
	drawing_text(x->d, LAYER_TEXT, words, spec,
		     sheet_text(x->s, "pitch %s, up the slope to the right",
				pitch_print(buf, sizeof buf, x->theta)));
}

/* At the lower left: a right triangle with 12 of run, and what the letters mean. */
static void foot_notes(struct section *x)
{
	const struct point a = {MARGIN + 2 * MM, MARGIN + 6 * MM};
	const struct lettering_spec spec = {TEXT, false, ANCHOR_LEFT, ANCHOR_TOP, 0, true};
	const struct lettering_spec bold = {TEXT, true, ANCHOR_LEFT, ANCHOR_TOP, 0, true};

	for (int i = 0; i < x->keys; i++) {
		const struct point at = {a.x + RUN + 8 * MM,
					 MARGIN + 7 * MM + 1.45 * TEXT * (x->keys - 1 - i) + TEXT};

		drawing_text(x->d, LAYER_TEXT, at, bold, x->key[i].letter);
		drawing_text(x->d, LAYER_TEXT, (struct point){at.x + 4 * MM, at.y}, spec,
			     x->key[i].text);
	}
	if (x->what == SECTION_OF_BLOCK)
		return; /* seen up the slope */
	section_pitch(x, a, (struct point){a.x, a.y - 1.5 * MM});
}

static bool refused(const struct section *x)
{
	struct guide_page page = {.use = GUIDE_USE_YES};

	return x->s->library && guide_page_find(x->s->library, x->s->job->roof.covering, &page) &&
	       page.use == GUIDE_USE_REFUSED;
}

static const char *source_words(const struct section *x)
{
	if (x->what == SECTION_OF_RACK)
		return "Heights, tilt and places from the job, forces from the check; sizes of "
		       "legs, rail and brace are the maker's. Foot and screw: sheet Attachment.";
	if (x->what == SECTION_OF_BLOCK)
		return "Block and its ends from the check; see there what it could not rate.";
	if (refused(x))
		return "The notes on this covering say not to open it: read them first. Drawn is "
		       "what "
		       "the job tells, without covering or flashing.";
	if (x->from_library && x->what == SECTION_OF_PIPE)
		return "Covering and flashing from the notes on this covering; pipe, deck and "
		       "pitch from the job.";
	if (x->from_library && !sheet_on_seams(x->s->job) && section_find(x, "clamp"))
		return "Covering from the notes on it, which hold feet by clamps on its seams and "
		       "draw no flashing of a foot that goes through: a roofer of that trade does. "
		       "Foot, screw and framing from the job.";
	if (x->what == SECTION_OF_FOOT && section_find(x, "hook"))
		return "Covering from the notes on it, which draw a tested hook through the lap, "
		       "see "
		       "Flashing from above. Post, screw and framing from the job; the deck "
		       "flashing "
		       "and the apron that its steps ask for round a post are not drawn.";
	return x->from_library ? "Covering and flashing from the notes on this "
				 "covering; foot, screw and framing from the job."
			       : "The covering library has no drawing of this: only "
				 "what the job itself tells is drawn.";
}

/* What the job's own pieces leave undone. */
static const char *lacking(const struct section *x)
{
	const char *words = x->what == SECTION_OF_FOOT || x->what == SECTION_OF_BLOCK
				    ? section_screws_lack(x)
				    : "";

	if (x->boot_too_wide)
		return " This pan is too narrow for this boot: take a curb as wide as the pan.";
	if (!(x->post_least > 0))
		return words;
	/* to the next 1/2 in, as the guide says it */
	return sheet_text(
		x->s, " The post of this job is too short for this flashing: it needs %s or more.%s",
		sheet_size(x->s, ceil(x->post_least / M_PER_IN * 2 - 1e-6) / 2 * M_PER_IN), words);
}

const char *section_says(const struct section *x)
{
	return sheet_text(x->s, "Scale %s. %s%s %s", x->scale.text, source_words(x), lacking(x),
			  sheet_unit_note(x->s));
}

static void head(struct section *x)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const double top = drawing_height(x->d) - MARGIN;

	drawing_text(x->d, LAYER_TEXT, (struct point){MARGIN, top}, big, drawing_title(x->d));
	sheet_paragraph(x->s, x->d, (struct point){MARGIN, top - 5 * MM},
			drawing_width(x->d) - 2 * MARGIN, TEXT, section_says(x));
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
