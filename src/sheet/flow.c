/* SPDX-License-Identifier: MIT */
#include "sheet/flow.h"

#include "drawing/typeset.h"

#define PT POINTS_PER_M
#define LEADING 1.18 /* of line to line, beside the typeface's own height: DejaVu's is generous */

void flow_space(struct flow *f, double height)
{
	if (f->y > 0)
		f->y += height;
}

static double pitch(double size)
{
	return size * LEADING * (LETTERING_ASCENT + LETTERING_DESCENT) * 0.97;
}

static double width_of(const struct flow *f, const struct flow_style *style)
{
	return style->width > 0 ? style->width : f->room.width - style->x;
}

/* Baseline of a line whose upper edge is at y in the room. */
static void set_line(struct flow *f, PangoLayoutLine *line, double x, double y, double size)
{
	cairo_t *cr = pdf_canvas(f->pdf);

	cairo_set_source_rgb(cr, 0, 0, 0);
	cairo_move_to(cr, (f->room.x + x) * PT, (f->room.y + y + LETTERING_ASCENT * size) * PT);
	pango_cairo_show_layout_line(cr, line);
}

void flow_text(struct flow *f, struct flow_style style, const char *text)
{
	const struct lettering_style letters = {style.size, style.bold, style.mono};
	PangoLayout *l =
		lettering_paragraph(pdf_lettering(f->pdf), text, letters, width_of(f, &style));
	const int lines = pango_layout_get_line_count(l);

	for (int i = 0; i < lines; i++) {
		/* no single line left behind or sent ahead */
		if ((i == 0 && lines > 1) || (i == lines - 2 && i > 0))
			flow_need(f, 2 * pitch(style.size));
		else
			flow_need(f, pitch(style.size));
		if (style.bar)
			flow_rule(f, style.x - 2.2 * MM, f->y, 0, pitch(style.size));
		set_line(f, pango_layout_get_line_readonly(l, i), style.x, f->y, style.size);
		f->y += pitch(style.size);
	}
	g_object_unref(l);
}

double flow_height(const struct flow *f, const char *text, double size, bool bold, double width)
{
	PangoLayout *l = lettering_paragraph(pdf_lettering(f->pdf), text,
					     (struct lettering_style){size, bold, false}, width);
	const int lines = pango_layout_get_line_count(l);

	g_object_unref(l);
	return lines * pitch(size);
}

double flow_put(struct flow *f, const char *text, double size, bool bold, double x, double y,
		double width, bool right)
{
	PangoLayout *l = lettering_paragraph(pdf_lettering(f->pdf), text,
					     (struct lettering_style){size, bold, false}, width);
	const int lines = pango_layout_get_line_count(l);

	for (int i = 0; i < lines; i++) {
		PangoLayoutLine *line = pango_layout_get_line_readonly(l, i);
		PangoRectangle box;

		pango_layout_line_get_extents(line, NULL, &box);
		const double wide = box.width / (double)PANGO_SCALE / PT;

		set_line(f, line, right ? x + width - wide : x, y + i * pitch(size), size);
	}
	g_object_unref(l);
	return lines * pitch(size);
}

double flow_width(const struct flow *f, const char *text, double size, bool bold)
{
	return lettering_width(pdf_lettering(f->pdf), text,
			       (struct lettering_style){size, bold, false});
}

static void continued(struct flow *f)
{
	char text[160];

	snprintf(text, sizeof text, "%s (continued)", f->under);
	f->y += flow_put(f, text, f->text, true, 0, 0, f->room.width, false) + 0.8 * MM;
}

void flow_need(struct flow *f, double height)
{
	if (f->y + height <= f->room.height)
		return;
	pdf_page(f->pdf, false, f->name);
	f->room = pdf_room(f->pdf);
	f->y = 0;
	if (f->under)
		continued(f);
}

/* A line along the page, or, without a width, a bar down it. */
void flow_rule(struct flow *f, double x, double y, double width, double thick)
{
	cairo_t *cr = pdf_canvas(f->pdf);

	cairo_set_source_rgb(cr, 0, 0, 0);
	if (width > 0)
		cairo_rectangle(cr, (f->room.x + x) * PT, (f->room.y + y) * PT, width * PT,
				thick * PT);
	else
		cairo_rectangle(cr, (f->room.x + x) * PT, (f->room.y + y) * PT, 0.7 * MM * PT,
				thick * PT);
	cairo_fill(cr);
}

void flow_frame(struct flow *f, double x, double y, double width, double height)
{
	cairo_t *cr = pdf_canvas(f->pdf);

	cairo_set_source_rgb(cr, 0, 0, 0);
	cairo_set_line_width(cr, 0.4 * MM * PT);
	cairo_rectangle(cr, (f->room.x + x) * PT, (f->room.y + y) * PT, width * PT, height * PT);
	cairo_stroke(cr);
}
