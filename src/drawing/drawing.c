/* SPDX-License-Identifier: MIT */
#include "drawing/store.h"

#include <math.h>
#include <string.h>

#include "report/utf8.h"

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

void *drawing_take(struct drawing *d, size_t size)
{
	void *piece = d->failed ? NULL : arena_take(d->arena, size);

	if (!piece)
		d->failed = true;
	return piece;
}

const char *drawing_string(struct drawing *d, const char *text)
{
	const size_t n = strlen(text) + 1;
	char *copy = drawing_take(d, n);

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

struct shape *drawing_put(struct drawing *d, enum shape_kind kind, enum drawing_layer layer,
			  const struct point *at, int n)
{
	struct shape *s = drawing_take(d, sizeof *s);
	struct point *paper = s ? drawing_take(d, (size_t)n * sizeof *paper) : NULL;

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
		struct shape *s = drawing_put(d, f->kind, f->layer, f->at, f->n);

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

struct drawing *drawing_cut(struct drawing *tall, double low, const struct allocator *allocator)
{
	struct drawing *d =
		drawing_create(tall->lettering, tall->width, tall->height - low, allocator);

	if (d) {
		drawing_add(d, tall, (struct view){{0, -low}, 1, 0});
		drawing_set_title(d, tall->title, tall->description);
		drawing_set_main_view(d, tall->main_view);
		d->main_view.origin.y -= low;
	}
	drawing_destroy(tall);
	return d;
}

void drawing_line(struct drawing *d, enum drawing_layer layer, struct point a, struct point b)
{
	drawing_put(d, SHAPE_LINE, layer, (const struct point[]){a, b}, 2);
}

void drawing_line_as(struct drawing *d, enum drawing_layer layer, double width,
		     enum drawing_dash dash, struct point a, struct point b)
{
	struct shape *s = drawing_put(d, SHAPE_LINE, layer, (const struct point[]){a, b}, 2);

	if (!s)
		return;
	s->width = width;
	s->dash = dash;
}

void drawing_path(struct drawing *d, enum drawing_layer layer, const struct point *at, int n)
{
	drawing_put(d, SHAPE_LINE, layer, at, n);
}

void drawing_shape(struct drawing *d, enum drawing_layer layer, double width, enum fill fill,
		   const struct point *at, int n)
{
	struct shape *s = drawing_put(d, SHAPE_LINE, layer, at, n);

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
	struct shape *s = drawing_put(d, SHAPE_CIRCLE, layer, &at, 1);

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
