/* SPDX-License-Identifier: MIT */
/* Text of a drawing: where it stands, what room it takes, and which room is free. */
#include <math.h>

#include "drawing/store.h"

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
	struct shape *s = drawing_put(d, SHAPE_TEXT, layer, &base, 1);

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
	struct reserved *r = drawing_take(d, sizeof *r);

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

#define APART (0.45 * MM)

int drawing_text_free(struct drawing *d, enum drawing_layer layer, const struct point *place, int n,
		      struct lettering_spec spec, const char *text)
{
	/* two numbers side by side must not read as one; where there is no room for that, just clear */
	for (int i = 0; i < 2 * n; i++) {
		const struct point at = drawing_on_paper(d, place[i % n]);
		struct box box = drawing_text_box(d, at, spec, text);

		box.x0 -= i < n ? APART : 0;
		box.x1 += i < n ? APART : 0;
		if (!drawing_is_free(d, box))
			continue;
		drawing_text(d, layer, place[i % n], spec, text);
		return i % n;
	}
	drawing_text(d, layer, place[n - 1], spec, text);
	return -1;
}
