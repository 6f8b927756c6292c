/* SPDX-License-Identifier: MIT */
/* A plan for a telephone's screen: title and scale, the roof, then words, below each other. A
   layout whose numbers would run into each other at that width is cut up the slope into parts, each
   with its tape from the same corner, and a small key tells where they lie. A foot stands in one
   part alone. */
#include <math.h>
#include <stdlib.h>

#include "drawing/dimension.h"
#include "sheet/plan.h"

#define MARGIN NARROW_MARGIN
#define PARTS_MOST 6
#define AIR (3 * MM)
#define NAME_LINE (4 * MM)
#define KEY_HIGH (14 * MM)
/* Between the numbers of two feet beside each other, with the white round them: a collector's edge
 * may stand there. */
#define NUMBER_AIR (2.2 * MM)

/* The window's division: part i lies between at[i] and at[i + 1]. */
struct parts {
	int n;
	double at[PARTS_MOST + 1];
};

static bool shown(const struct plan *p, int i)
{
	const struct attachment *a = &p->s->pass->attachment[i];

	return plan_inside(p, (struct point){a->x, a->y});
}

static int feet(const struct plan *p)
{
	return p->s->r->passes > 0 ? p->s->pass->attachments : 0;
}

static double number_width(const struct plan *p, const struct attachment *a)
{
	return lettering_width(p->s->lettering, sheet_text(p->s, "%d", a->number),
			       (struct lettering_style){p->size, true, false});
}

/* Two feet beside each other are too near for their numbers. */
static bool crowded(const struct plan *p)
{
	for (int i = 0; i < feet(p); i++)
		for (int k = 0; k < feet(p) && shown(p, i); k++) {
			const struct attachment *a = &p->s->pass->attachment[i],
						*b = &p->s->pass->attachment[k];
			const double need = fmax(number_width(p, a), number_width(p, b));

			if (shown(p, k) && b->x > a->x + 1e-6 && a->line == b->line &&
			    (b->x - a->x) / p->scale.ratio < need + NUMBER_AIR)
				return true;
		}
	return false;
}

static void set_scale(struct plan *p)
{
	p->view.scale = 1;
	p->scale.ratio = 0;
	/* a smaller scale may need more room for dimensions, and so a smaller scale again */
	for (int i = 0; i < 8; i++) {
		const struct plan_room room = plan_dimension_room(p);
		const struct scale scale = scale_for_screen(
			p->s, p->window.x1 - p->window.x0, p->window.y1 - p->window.y0,
			p->room.width - 2 * MARGIN - room.left - room.right, p->room.height / 4);

		if (scale.ratio <= p->scale.ratio)
			return;
		p->scale = scale;
		p->view.scale = 1 / scale.ratio;
	}
}

/* Where to cut near x: half way between the feet at both sides of it. */
static double cut_near(const struct plan *p, double x)
{
	double left = p->window.x0, right = p->window.x1;

	for (int i = 0; i < feet(p); i++) {
		const double at = p->s->pass->attachment[i].x;

		if (at <= x)
			left = fmax(left, at);
		else
			right = fmin(right, at);
	}
	return (left + right) / 2;
}

static struct parts cut(const struct plan *p, int n)
{
	struct parts parts = {1, {p->window.x0}};

	for (int i = 1; i < n; i++) {
		const double at =
			cut_near(p, p->window.x0 + (p->window.x1 - p->window.x0) * i / (double)n);

		/* two cuts between the same two feet are one */
		if (at > parts.at[parts.n - 1] + 1e-6)
			parts.at[parts.n++] = at;
	}
	parts.at[parts.n] = p->window.x1;
	return parts;
}

static struct plan part_of(const struct plan *p, const struct parts *parts, int i)
{
	struct plan part = *p;

	part.window.x0 = parts->at[i];
	part.window.x1 = parts->at[i + 1];
	return part;
}

/* The coarsest scale that a part asks for: all parts have one. */
static struct scale scale_of(const struct plan *p, const struct parts *parts)
{
	struct scale coarsest = {0, ""};

	for (int i = 0; i < parts->n; i++) {
		struct plan part = part_of(p, parts, i);

		set_scale(&part);
		if (part.scale.ratio > coarsest.ratio)
			coarsest = part.scale;
	}
	return coarsest;
}

/* As few parts as leave room for the number of each foot beside its mark. */
static struct parts divide(struct plan *p)
{
	struct parts parts;
	int n = 1;

	do {
		parts = cut(p, n);
		p->scale = scale_of(p, &parts);
	} while (plan_tells_feet(p) && crowded(p) && n++ < PARTS_MOST);
	return parts;
}

static void say_bold(const struct plan *p, struct point at, const char *text)
{
	drawing_view(p->d, VIEW_PAPER);
	drawing_text(p->d, LAYER_TEXT, at,
		     (struct lettering_spec){p->size, true, ANCHOR_LEFT, ANCHOR_TOP, 0, false},
		     text);
}

/* The array in small, each part with its number. */
static double key(const struct plan *p, const struct parts *parts, double y)
{
	const struct rectangle *w = &p->window;
	const double k =
		fmin((p->room.width - 2 * MARGIN) / (w->x1 - w->x0), KEY_HIGH / (w->y1 - w->y0));
	const struct view view = {{MARGIN - w->x0 * k, y - w->y1 * k}, k, 0};
	const struct lettering_spec spec = {p->size, true, ANCHOR_CENTRE, ANCHOR_MIDDLE, 0, true};

	drawing_view(p->d, view);
	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *c = &p->s->r->collector[i];

		drawing_rectangle(p->d, LAYER_THIN, FILL_NONE, c->x0, c->y0, c->x1, c->y1);
	}
	for (int i = 0; i < parts->n; i++) {
		const double x = parts->at[i], middle = (x + parts->at[i + 1]) / 2;

		if (i > 0)
			drawing_line_as(p->d, LAYER_FRAME, 0.35 * MM, DASH_DASH_DOT,
					(struct point){x, w->y0}, (struct point){x, w->y1});
		drawing_text(p->d, LAYER_TEXT, (struct point){middle, (w->y0 + w->y1) / 2}, spec,
			     sheet_text(p->s, "%d", i + 1));
	}
	return y - (w->y1 - w->y0) * k - AIR;
}

/* Where a part was cut from the next one: no number stands on that line, and nothing covers it. */
static void cut_lines(const struct plan *p, const struct rectangle *whole, bool draw)
{
	const struct rectangle *w = &p->window;
	const double x[] = {w->x0, w->x1}, half = 0.2 * MM / p->view.scale;

	for (int i = 0; i < 2; i++) {
		if (x[i] <= whole->x0 || x[i] >= whole->x1)
			continue;
		if (draw)
			drawing_line_as(p->d, LAYER_FRAME, 0.25 * MM, DASH_DASH_DOT,
					(struct point){x[i], w->y0}, (struct point){x[i], w->y1});
		else
			drawing_reserve(p->d, plan_box(p, x[i] - half, w->y0, x[i] + half, w->y1));
	}
}

/* One window with its dimensions, from y down; the y below it. */
static double put_window(struct plan *p, const struct rectangle *whole, double y)
{
	const double k = 1 / p->scale.ratio;

	p->view.scale = k;
	const struct plan_room room = plan_dimension_room(p);
	const double w = (p->window.x1 - p->window.x0) * k, h = (p->window.y1 - p->window.y0) * k;
	const double free = p->room.width - 2 * MARGIN - room.left - room.right - w;

	p->view = (struct view){{MARGIN + room.left + free / 2 - p->window.x0 * k,
				 y - room.above - h - p->window.y0 * k},
				k,
				0};
	drawing_view(p->d, p->view);
	drawing_set_main_view(p->d, p->view);
	cut_lines(p, whole, false);
	plan_contents(p);
	cut_lines(p, whole, true);
	return y - room.above - h - room.below - AIR;
}

static double put_parts(const struct plan *p, const struct parts *parts, double y)
{
	if (parts->n > 1) {
		y = key(p, parts, y);
		drawing_view(p->d, VIEW_PAPER);
		y = sheet_paragraph(
			    p->s, p->d, (struct point){MARGIN, y}, p->room.width - 2 * MARGIN,
			    p->size,
			    sheet_text(p->s,
				       "In %d parts from left to right; in each the tape begins at "
				       "the same corner.",
				       parts->n)) -
		    AIR;
	}
	for (int i = 0; i < parts->n; i++) {
		struct plan part = part_of(p, parts, i);

		if (parts->n > 1) {
			say_bold(p, (struct point){MARGIN, y},
				 sheet_text(p->s, "Part %d of %d", i + 1, parts->n));
			y -= NAME_LINE;
		}
		y = put_window(&part, &p->window, y);
	}
	return y;
}

struct drawing *plan_draw_narrow(const struct sheet *s, enum plan_part part, struct sheet_room room,
				 bool legend)
{
	struct drawing *d = drawing_create(s->lettering, room.width, room.height, NULL);

	if (!d)
		return NULL;
	struct plan p = plan_of(s, d, part, room, legend);
	const struct parts parts = divide(&p);
	const double width = room.width - 2 * MARGIN;
	struct point at = {MARGIN, room.height - MARGIN};

	plan_name(&p);
	p.view.scale = 1 / p.scale.ratio; /* for the scale bar */
	at.y = plan_legend_above(&p, at, width);
	at.y = put_parts(&p, &parts, at.y);
	drawing_view(d, VIEW_PAPER);
	at.y = plan_caption(&p, at, width);
	if (!plan_tells_feet(&p) && feet(&p) > 0)
		at.y = sheet_paragraph(s, d, at, width, p.size,
				       "Numbers of the attachments and the tape to each: see the "
				       "layout.");
	if (legend) {
		at.y = plan_legend_below(&p, at, width);
	}
	return drawing_cut(d, at.y - MARGIN, NULL);
}
