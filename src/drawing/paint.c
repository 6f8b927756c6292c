/* SPDX-License-Identifier: MIT */
#include "drawing/paint.h"

#include <math.h>

#include "drawing/typeset.h"
#include "quantity/quantity.h"

#define PT POINTS_PER_M

static double grey(enum fill fill)
{
	switch (fill) {
	case FILL_NONE:
	case FILL_WHITE:
		return 1.0;
	case FILL_LIGHT:
		return 0.93;
	case FILL_GREY:
		return 0.74;
	case FILL_BLACK:
		return 0.0;
	}
	return 1.0;
}

static void fill_and_stroke(cairo_t *cr, const struct shape *s)
{
	const double *pattern = drawing_dash_pattern[s->dash];
	double dash[4];
	int n = 0;

	if (s->fill != FILL_NONE) {
		const double g = grey(s->fill);

		cairo_set_source_rgb(cr, g, g, g);
		cairo_fill_preserve(cr);
	}
	if (s->width > 0) {
		for (; n < 4 && pattern[n] > 0; n++)
			dash[n] = pattern[n] * PT;
		cairo_set_source_rgb(cr, 0, 0, 0);
		cairo_set_line_width(cr, s->width * PT);
		cairo_set_dash(cr, dash, n, 0);
		cairo_stroke_preserve(cr);
	}
	cairo_new_path(cr);
}

static void paint_line(cairo_t *cr, const struct drawing *d, const struct shape *s)
{
	cairo_new_path(cr); /* text leaves its own behind */
	for (int i = 0; i < s->n; i++)
		cairo_line_to(cr, s->at[i].x * PT, (drawing_height(d) - s->at[i].y) * PT);
	if (s->closed)
		cairo_close_path(cr);
	fill_and_stroke(cr, s);
}

static void paint_circle(cairo_t *cr, const struct drawing *d, const struct shape *s)
{
	cairo_new_path(cr);
	cairo_arc(cr, s->at[0].x * PT, (drawing_height(d) - s->at[0].y) * PT, s->radius * PT, 0,
		  360 * RAD_PER_DEG);
	cairo_close_path(cr);
	fill_and_stroke(cr, s);
}

static void paint_text(cairo_t *cr, const struct drawing *d, const struct shape *s)
{
	cairo_save(cr);
	cairo_translate(cr, s->at[0].x * PT, (drawing_height(d) - s->at[0].y) * PT);
	if (fabs(s->turn) > 1e-9)
		cairo_rotate(cr, -s->turn);
	cairo_set_source_rgb(cr, 0, 0, 0);
	lettering_show(drawing_lettering(d), cr, s->text,
		       (struct lettering_style){s->size, s->bold, false});
	cairo_restore(cr);
}

void drawing_paint(cairo_t *cr, const struct drawing *d)
{
	cairo_save(cr);
	cairo_set_line_cap(cr, CAIRO_LINE_CAP_ROUND);
	cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
	cairo_new_path(cr);
	for (const struct shape *s = drawing_first(d); s; s = s->next) {
		switch (s->kind) {
		case SHAPE_LINE:
			paint_line(cr, d, s);
			break;
		case SHAPE_CIRCLE:
			paint_circle(cr, d, s);
			break;
		case SHAPE_TEXT:
			if (*s->text)
				paint_text(cr, d, s);
			break;
		}
	}
	cairo_restore(cr);
}
