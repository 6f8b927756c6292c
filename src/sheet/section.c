/* SPDX-License-Identifier: MIT */
#include "sheet/section.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "drawing/dimension.h"
#include "report/caution.h"
#include "report/flashing_sizes.h"

#define MARGIN (3 * MM)
#define TEXT (2.2 * MM)
#define LABEL_WIDTH (74 * MM) /* column of names at the right */
#define DIMENSIONS (12 * MM)  /* beyond the drawing, all round */
#define NOTES (12 * MM)       /* at the foot of the page */
#define HEAD (10 * MM)

bool section_exists(const struct sheet *s, enum section_of what)
{
	return what == SECTION_OF_FOOT || s->job->pipes > 0;
}

double section_size(const struct section_layer *l, const char *name, double otherwise)
{
	for (int i = 0; i < l->sizes; i++)
		if (strcmp(l->size[i].name, name) == 0)
			return l->size[i].value;
	return otherwise;
}

bool section_is(const struct section_layer *l, const char *kind)
{
	return strcmp(l->kind, kind) == 0;
}

const struct section_layer *section_find(const struct section *x, const char *kind)
{
	for (int i = 0; i < x->layers; i++)
		if (section_is(&x->layer[i], kind))
			return &x->layer[i];
	return NULL;
}

void section_name(struct section *x, double u, double v, const char *text)
{
	if (x->labels < SECTION_LABELS && *text)
		x->label[x->labels++] =
			(struct section_label){{u, v}, sheet_text(x->s, "%s", text)};
}

void section_area(struct section *x, enum fill fill, const struct point *at, int n)
{
	drawing_shape(x->d, LAYER_MATERIAL, -1, fill, at, n);
}

void section_block(struct section *x, enum fill fill, double u0, double v0, double u1, double v1)
{
	const struct point at[] = {{u0, v0}, {u1, v0}, {u1, v1}, {u0, v1}};

	section_area(x, fill, at, 4);
}

void section_key(struct section *x, const char *letter, double length, const char *words)
{
	if (x->keys < SECTION_KEYS)
		x->key[x->keys++] = (struct section_key){
			letter, sheet_text(x->s, "%s  %s", sheet_size(x->s, length), words)};
}

void section_reach(struct section *x, double u, double v)
{
	const double c = cos(x->theta), s = sin(x->theta), px = c * u - s * v, py = s * u + c * v;

	x->x0 = fmin(x->x0, px);
	x->x1 = fmax(x->x1, px);
	x->y0 = fmin(x->y0, py);
	x->y1 = fmax(x->y1, py);
}

/* The library's drawing is of a usual foot; this one shows the job's, under a title of its own. */
static void take_title(void *context, const char *title)
{
	(void)context;
	(void)title;
}

static void set_title(struct section *x)
{
	struct guide_page page = {.name = x->s->job->roof.covering};

	if (x->s->library)
		guide_page_find(x->s->library, x->s->job->roof.covering, &page);
	drawing_set_title(x->d,
			  sheet_text(x->s, "%s, %s: section up the slope",
				     x->what == SECTION_OF_FOOT ? "Attachment" : "Pipe", page.name),
			  sheet_text(x->s, "%s, scale %s. %s", x->s->job->title, x->scale.text,
				     sheet_verdict(x->s)));
}

static void take_layer(void *context, const struct guide_layer *g)
{
	struct section *x = context;

	if (x->layers == SECTION_LAYERS)
		return;
	struct section_layer *l = &x->layer[x->layers++];

	snprintf(l->kind, sizeof l->kind, "%s", g->kind);
	snprintf(l->label, sizeof l->label, "%s", g->label);
	l->woven = g->woven;
	l->plumb = g->plumb;
	for (int i = 0; i < g->sizes; i++) {
		snprintf(l->size[i].name, sizeof l->size[i].name, "%s", g->size[i].name);
		l->size[i].value = g->size[i].value;
	}
	l->sizes = g->sizes;
}

static void collect(struct section *x)
{
	const struct guide_sizes sizes = flashing_sizes(x->s->job, x->s->r);
	const struct guide_request request = {x->s->job->roof.covering, &sizes, x->s->f.units,
					      GUIDE_BRIEF};
	const struct guide_layer_sink sink = {take_title, take_layer, x};
	const char *of = x->what == SECTION_OF_FOOT ? "foot" : "pipe";

	x->from_library =
		x->s->library && guide_drawing(x->s->library, &request, of, "section", &sink);
	x->deck = x->s->job->roof.deck_thickness;
	if (isnan(x->deck))
		x->deck = 0;
	section_stack(x);
}

/* A pipe that the library does not draw on this covering still has its own size. */
static void add_plain_pipe(struct section *x)
{
	const struct job_pipe *p = &x->s->job->pipe[0];
	struct section_layer *l;

	if (x->what != SECTION_OF_PIPE || section_find(x, "pipe") || x->layers + 2 > SECTION_LAYERS)
		return;
	if (!isnan(p->insulated_diameter)) {
		l = &x->layer[x->layers++];
		*l = (struct section_layer){
			.kind = "pipe-insulation",
			.label = "insulation",
			.plumb = true,
			.sizes = 2,
			.size = {{"diameter", p->insulated_diameter}, {"height", 0.30}}};
	}
	l = &x->layer[x->layers++];
	*l = (struct section_layer){.kind = "pipe",
				    .label = "pipe",
				    .plumb = true,
				    .sizes = 2,
				    .size = {{"diameter", p->diameter}, {"height", 0.36}}};
}

/* What is drawn up and down the slope: the plate and one course more, within bounds. */
static void extent(struct section *x)
{
	double down = 0.15, up = 0.2;

	for (int i = 0; i < x->layers; i++) {
		down = fmax(down, section_size(&x->layer[i], "down", 0) + 0.04);
		up = fmax(up, section_size(&x->layer[i], "up", 0) + 0.04);
	}
	x->u0 = -fmin(down, 0.40);
	x->u1 = fmin(up, 0.55);
	x->x0 = x->y0 = HUGE_VAL;
	x->x1 = x->y1 = -HUGE_VAL;
	if (x->what == SECTION_OF_FOOT)
		section_foot_extent(x);
	else
		section_pipe_extent(x);
	section_reach(x, x->u0, -x->deck);
	section_reach(x, x->u1, -x->deck);
	section_reach(x, x->u0, section_top(x, x->u0));
	section_reach(x, x->u1, section_top(x, x->u1));
}

static void place(struct section *x, double width, double height)
{
	const double room_x = width - 2 * MARGIN - LABEL_WIDTH - 2 * DIMENSIONS;
	const double room_y = height - 2 * MARGIN - 2 * DIMENSIONS - NOTES;

	x->scale = scale_for_detail(x->s, x->x1 - x->x0, x->y1 - x->y0, room_x, room_y);
	const double k = 1 / x->scale.ratio;
	const struct view view = {
		{MARGIN + DIMENSIONS + (room_x - (x->x1 - x->x0) * k) / 2 - x->x0 * k,
		 MARGIN + DIMENSIONS + NOTES + (room_y - (x->y1 - x->y0) * k) / 2 - x->y0 * k},
		k,
		x->theta};

	drawing_view(x->d, view);
	drawing_set_main_view(x->d, view);
}

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
	drawing_path(x->d, LAYER_MATERIAL,
		     (const struct point[]){a, {a.x + run, a.y}, {a.x + run, a.y + up}, a}, 4);
	drawing_text(x->d, LAYER_TEXT, (struct point){a.x, a.y - 1.5 * MM}, spec,
		     sheet_text(x->s, "pitch %s, up the slope to the right",
				pitch_print(buf, sizeof buf, x->theta)));
}

static void head(struct section *x)
{
	const struct lettering_spec big = {3.2 * MM, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const struct lettering_spec small = {TEXT, false, ANCHOR_LEFT, ANCHOR_TOP, 0, false};
	const double top = drawing_height(x->d) - MARGIN;
	const char *source = x->from_library ? "Covering and flashing from the notes on this "
					       "covering; foot, screw and rafter from the job."
					     : "The covering library has no drawing of this: only "
					       "what the job itself tells is drawn.";

	drawing_text(x->d, LAYER_TEXT, (struct point){MARGIN, top}, big, drawing_title(x->d));
	drawing_text(
		x->d, LAYER_TEXT, (struct point){MARGIN, top - 5 * MM}, small,
		sheet_text(x->s, "Scale %s. %s %s", x->scale.text, source, sheet_unit_note(x->s)));
	const double left = drawing_width(x->d) - MARGIN - LABEL_WIDTH + 4 * MM,
		     wide = LABEL_WIDTH - 8 * MM;
	const double y = sheet_paragraph(
		x->s, x->d, (struct point){left, MARGIN + 17 * MM}, wide, TEXT,
		sheet_text(x->s, "%s. Job %s.", sheet_verdict(x->s), x->s->fingerprint));

	sheet_paragraph(x->s, x->d, (struct point){left, y}, wide, 0.8 * TEXT, caution_result);
}

struct drawing *section_draw(const struct sheet *s, enum section_of what, double width,
			     double height)
{
	struct drawing *d = drawing_create(s->lettering, width, height, NULL);
	struct section *x = d ? calloc(1, sizeof *x) : NULL;

	if (!x) {
		drawing_destroy(d);
		return NULL;
	}
	x->s = s;
	x->d = d;
	x->what = what;
	x->theta = s->job->roof.pitch;
	collect(x);
	add_plain_pipe(x);
	extent(x);
	place(x, width, height);
	set_title(x);
	section_roof(x);
	section_covering(x);
	if (what == SECTION_OF_FOOT) {
		section_foot(x);
		section_flashing(x);
	} else {
		section_flashing(x);
		section_pipe(x);
	}
	put_labels(x);
	foot_notes(x);
	head(x);
	free(x);
	return d;
}
