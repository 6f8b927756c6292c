/* SPDX-License-Identifier: MIT */
#include "drawing/drawing.h"

#include <math.h>
#include <string.h>

#include "report/utf8.h"

struct reserved {
	struct box box;
	const struct reserved *next;
};

struct drawing {
	struct arena *arena;
	bool failed, viewed;
	const struct lettering *lettering;
	double width, height;
	struct view view, main_view;
	struct shape *first, *last;
	struct reserved *reserved;
	const char *title, *description;
};

const double drawing_dash_pattern[DASH_COUNT][4] = {
	[DASH_SOLID] = {0, 0, 0, 0},
	[DASH_DASHED] = {3 * MM, 1.5 * MM, 0, 0},
	[DASH_SHORT_DASH] = {1.2 * MM, 0.8 * MM, 0, 0},
	[DASH_DASH_DOT] = {7 * MM, 1.5 * MM, 0.7 * MM, 1.5 * MM},
};

const struct drawing_layer_row drawing_layer_table[LAYER_COUNT] = {
#define L(id, name, width, dash, colour) {name, (width)*MM, DASH_##dash, colour},
	DRAWING_LAYERS(L)
#undef L
};

struct drawing *drawing_create(const struct lettering *lettering, double width, double height,
			       const struct allocator *allocator)
{
	struct arena *arena = arena_create(DRAWING_CAP, allocator);
	struct drawing *d = arena ? arena_take(arena, sizeof *d) : NULL;

	if (!d) {
		arena_destroy(arena);
		return NULL;
	}
	*d = (struct drawing){.arena = arena,
			      .lettering = lettering,
			      .width = width,
			      .height = height,
			      .view = VIEW_PAPER,
			      .main_view = VIEW_PAPER,
			      .title = "",
			      .description = ""};
	return d;
}

void drawing_destroy(struct drawing *d)
{
	if (d)
		arena_destroy(d->arena);
}

bool drawing_failed(const struct drawing *d)
{
	return d->failed;
}

double drawing_width(const struct drawing *d)
{
	return d->width;
}

double drawing_height(const struct drawing *d)
{
	return d->height;
}

const struct shape *drawing_first(const struct drawing *d)
{
	return d->first;
}

const struct lettering *drawing_lettering(const struct drawing *d)
{
	return d->lettering;
}

static void *take(struct drawing *d, size_t size)
{
	void *piece = d->failed ? NULL : arena_take(d->arena, size);

	if (!piece)
		d->failed = true;
	return piece;
}

const char *drawing_string(struct drawing *d, const char *text)
{
	const size_t n = strlen(text) + 1;
	char *copy = take(d, n);

	if (!copy)
		return "";
	memcpy(copy, text, n);
	utf8_clean(copy);
	return copy;
}

void drawing_set_title(struct drawing *d, const char *title, const char *description)
{
	d->title = drawing_string(d, title);
	d->description = drawing_string(d, description);
}

const char *drawing_title(const struct drawing *d)
{
	return d->title;
}

const char *drawing_description(const struct drawing *d)
{
	return d->description;
}

void drawing_view(struct drawing *d, struct view view)
{
	d->view = view;
	if (!d->viewed)
		d->main_view = view;
	d->viewed = true;
}

struct view drawing_view_open(const struct drawing *d)
{
	return d->view;
}

struct view drawing_main_view(const struct drawing *d)
{
	return d->main_view;
}

void drawing_set_main_view(struct drawing *d, struct view view)
{
	d->main_view = view;
	d->viewed = true;
}

struct point drawing_on_paper(const struct drawing *d, struct point w)
{
	const struct view *v = &d->view;
	const double c = cos(v->turn), s = sin(v->turn);

	return (struct point){v->origin.x + v->scale * (c * w.x - s * w.y),
			      v->origin.y + v->scale * (s * w.x + c * w.y)};
}

static struct shape *add(struct drawing *d, enum shape_kind kind, enum drawing_layer layer,
			 const struct point *at, int n)
{
	struct shape *s = take(d, sizeof *s);
	struct point *paper = s ? take(d, (size_t)n * sizeof *paper) : NULL;

	if (!paper)
		return NULL;
	for (int i = 0; i < n; i++)
		paper[i] = drawing_on_paper(d, at[i]);
	*s = (struct shape){.kind = kind,
			    .layer = layer,
			    .width = drawing_layer_table[layer].width,
			    .dash = drawing_layer_table[layer].dash,
			    .n = n,
			    .at = paper,
			    .text = ""};
	if (d->last)
		d->last->next = s;
	else
		d->first = s;
	d->last = s;
	return s;
}

void drawing_add(struct drawing *d, const struct drawing *from, struct view at)
{
	const struct view open = d->view;

	d->failed = d->failed || from->failed;
	d->view = at;
	for (const struct shape *f = from->first; f; f = f->next) {
		struct shape *s = add(d, f->kind, f->layer, f->at, f->n);

		if (!s)
			break;
		s->width = f->width;
		s->dash = f->dash;
		s->fill = f->fill;
		s->closed = f->closed;
		s->radius = f->radius * at.scale;
		s->text = drawing_string(d, f->text);
		s->size = f->size * at.scale;
		s->turn = f->turn + at.turn;
		s->length = f->length * at.scale;
		s->bold = f->bold;
	}
	d->view = open;
}

void drawing_line(struct drawing *d, enum drawing_layer layer, struct point a, struct point b)
{
	add(d, SHAPE_LINE, layer, (const struct point[]){a, b}, 2);
}

void drawing_line_as(struct drawing *d, enum drawing_layer layer, double width,
		     enum drawing_dash dash, struct point a, struct point b)
{
	struct shape *s = add(d, SHAPE_LINE, layer, (const struct point[]){a, b}, 2);

	if (!s)
		return;
	s->width = width;
	s->dash = dash;
}

void drawing_path(struct drawing *d, enum drawing_layer layer, const struct point *at, int n)
{
	add(d, SHAPE_LINE, layer, at, n);
}

void drawing_shape(struct drawing *d, enum drawing_layer layer, double width, enum fill fill,
		   const struct point *at, int n)
{
	struct shape *s = add(d, SHAPE_LINE, layer, at, n);

	if (!s)
		return;
	s->closed = true;
	s->fill = fill;
	if (width >= 0)
		s->width = width;
}

void drawing_rectangle(struct drawing *d, enum drawing_layer layer, enum fill fill, double x0,
		       double y0, double x1, double y1)
{
	const struct point at[] = {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};

	drawing_shape(d, layer, -1, fill, at, 4);
}

static void circle(struct drawing *d, enum drawing_layer layer, enum fill fill, struct point at,
		   double radius)
{
	struct shape *s = add(d, SHAPE_CIRCLE, layer, &at, 1);

	if (!s)
		return;
	s->fill = fill;
	s->radius = radius;
	s->dash = DASH_SOLID;
}

void drawing_circle(struct drawing *d, enum drawing_layer layer, enum fill fill, struct point at,
		    double radius)
{
	circle(d, layer, fill, at, radius * d->view.scale);
}

void drawing_mark(struct drawing *d, enum drawing_layer layer, enum fill fill, struct point at,
		  double radius_on_paper)
{
	circle(d, layer, fill, at, radius_on_paper);
}

/* Left end of the baseline, on paper, of a text anchored at `at`. */
static struct point baseline(struct point at, const struct lettering_spec *spec, double length)
{
	const double back = spec->x == ANCHOR_LEFT     ? 0
			    : spec->x == ANCHOR_CENTRE ? length / 2
						       : length;
	const double down = spec->y == ANCHOR_BASE     ? 0
			    : spec->y == ANCHOR_MIDDLE ? LETTERING_CAPITAL * spec->size / 2
						       : LETTERING_CAPITAL * spec->size;
	const double c = cos(spec->turn), s = sin(spec->turn);

	return (struct point){at.x - c * back + s * down, at.y - s * back - c * down};
}

/* The letters' room, a little more than capitals and tails. */
static struct box letters(struct point base, double length, double size, double turn)
{
	const double c = cos(turn), s = sin(turn), up = 0.78 * size, down = 0.20 * size;
	const double x[] = {0, length, length, 0}, y[] = {-down, -down, up, up};
	struct box box = {HUGE_VAL, HUGE_VAL, -HUGE_VAL, -HUGE_VAL};

	for (int i = 0; i < 4; i++) {
		const double px = base.x + c * x[i] - s * y[i], py = base.y + s * x[i] + c * y[i];

		box.x0 = fmin(box.x0, px);
		box.x1 = fmax(box.x1, px);
		box.y0 = fmin(box.y0, py);
		box.y1 = fmax(box.y1, py);
	}
	return box;
}

static double length_of(const struct drawing *d, const struct lettering_spec *spec,
			const char *text)
{
	return lettering_width(d->lettering, text,
			       (struct lettering_style){spec->size, spec->bold, false});
}

struct box drawing_text_box(const struct drawing *d, struct point at, struct lettering_spec spec,
			    const char *text)
{
	const double length = length_of(d, &spec, text);

	return letters(baseline(at, &spec, length), length, spec.size, spec.turn);
}

struct box shape_text_box(const struct shape *s)
{
	return letters(s->at[0], s->length, s->size, s->turn);
}

/* White behind a line of text, turned with it. */
static void add_halo(struct drawing *d, struct point base, double length, double size, double turn)
{
	const double c = cos(turn), s = sin(turn), side = 0.4 * MM, up = 0.80 * size,
		     down = 0.14 * size;
	const double x[] = {-side, length + side, length + side, -side},
		     y[] = {-down, -down, up, up};
	const struct view open = d->view;
	struct point at[4];

	for (int i = 0; i < 4; i++)
		at[i] = (struct point){base.x + c * x[i] - s * y[i], base.y + s * x[i] + c * y[i]};
	d->view = VIEW_PAPER;
	drawing_shape(d, LAYER_TEXT, 0, FILL_WHITE, at, 4);
	d->view = open;
}

void drawing_text(struct drawing *d, enum drawing_layer layer, struct point at,
		  struct lettering_spec spec, const char *text)
{
	const char *kept = drawing_string(d, text);
	const double length = length_of(d, &spec, kept);
	const struct point base = baseline(drawing_on_paper(d, at), &spec, length);

	if (spec.halo)
		add_halo(d, base, length, spec.size, spec.turn);
	const struct view open = d->view;

	d->view = VIEW_PAPER;
	struct shape *s = add(d, SHAPE_TEXT, layer, &base, 1);

	d->view = open;
	if (!s)
		return;
	s->text = kept;
	s->size = spec.size;
	s->bold = spec.bold;
	s->turn = spec.turn;
	s->length = length;
}

void drawing_reserve(struct drawing *d, struct box box)
{
	struct reserved *r = take(d, sizeof *r);

	if (!r)
		return;
	*r = (struct reserved){box, d->reserved};
	d->reserved = r;
}

bool box_meets(const struct box *a, const struct box *b)
{
	return a->x0 < b->x1 && b->x0 < a->x1 && a->y0 < b->y1 && b->y0 < a->y1;
}

bool drawing_is_free(const struct drawing *d, struct box box)
{
	if (box.x0 < 0 || box.y0 < 0 || box.x1 > d->width || box.y1 > d->height)
		return false;
	for (const struct reserved *r = d->reserved; r; r = r->next)
		if (box_meets(&r->box, &box))
			return false;
	for (const struct shape *s = d->first; s; s = s->next) {
		if (s->kind != SHAPE_TEXT)
			continue;
		const struct box other = shape_text_box(s);

		if (box_meets(&other, &box))
			return false;
	}
	return true;
}

int drawing_text_free(struct drawing *d, enum drawing_layer layer, const struct point *place, int n,
		      struct lettering_spec spec, const char *text)
{
	for (int i = 0; i < n; i++) {
		const struct point at = drawing_on_paper(d, place[i]);

		if (!drawing_is_free(d, drawing_text_box(d, at, spec, text)))
			continue;
		drawing_text(d, layer, place[i], spec, text);
		return i;
	}
	drawing_text(d, layer, place[n - 1], spec, text);
	return -1;
}
