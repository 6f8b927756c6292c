/* SPDX-License-Identifier: MIT */
#include "drawing/svg.h"

#include <math.h>

#include "quantity/quantity.h"

static const char *mm(char *buf, double m)
{
	return number_print(buf, 32, m / MM, 3);
}

static void put(FILE *f, const char *name, double m)
{
	char buf[32];

	fprintf(f, " %s=\"%s\"", name, mm(buf, m));
}

void svg_text(FILE *f, const char *text)
{
	for (; *text; text++) {
		switch (*text) {
		case '&':
			fputs("&amp;", f);
			break;
		case '<':
			fputs("&lt;", f);
			break;
		case '>':
			fputs("&gt;", f);
			break;
		case '"':
			fputs("&quot;", f);
			break;
		default:
			fputc(*text, f);
		}
	}
}

static const char *fill_colour(enum fill fill)
{
	switch (fill) {
	case FILL_NONE:
		return "none";
	case FILL_WHITE:
		return "#fff";
	case FILL_LIGHT:
		return "#ededed";
	case FILL_GREY:
		return "#bdbdbd";
	case FILL_BLACK:
		return "#000";
	}
	return "none";
}

static void put_stroke(FILE *f, const struct shape *s)
{
	const double *dash = drawing_dash_pattern[s->dash];
	char buf[32];

	if (s->width <= 0) {
		fputs(" stroke=\"none\"", f);
		return;
	}
	put(f, "stroke-width", s->width);
	if (dash[0] <= 0)
		return;
	fputs(" stroke-dasharray=\"", f);
	for (int i = 0; i < 4 && dash[i] > 0; i++)
		fprintf(f, "%s%s", i ? " " : "", mm(buf, dash[i]));
	fputc('"', f);
}

static void put_line(FILE *f, const struct drawing *d, const struct shape *s)
{
	char x[32], y[32];

	fputs("<path d=\"", f);
	for (int i = 0; i < s->n; i++)
		fprintf(f, "%s%s %s", i ? "L" : "M", mm(x, s->at[i].x),
			mm(y, drawing_height(d) - s->at[i].y));
	fprintf(f, "%s\" fill=\"%s\"", s->closed ? "Z" : "", fill_colour(s->fill));
	put_stroke(f, s);
	fputs("/>\n", f);
}

static void put_circle(FILE *f, const struct drawing *d, const struct shape *s)
{
	fputs("<circle", f);
	put(f, "cx", s->at[0].x);
	put(f, "cy", drawing_height(d) - s->at[0].y);
	put(f, "r", s->radius);
	fprintf(f, " fill=\"%s\"", fill_colour(s->fill));
	put_stroke(f, s);
	fputs("/>\n", f);
}

static void put_words(FILE *f, const struct drawing *d, const struct shape *s)
{
	const double x = s->at[0].x, y = drawing_height(d) - s->at[0].y;
	char a[32], b[32], c[32];

	fputs("<text stroke=\"none\"", f);
	put(f, "x", x);
	put(f, "y", y);
	put(f, "font-size", s->size);
	put(f, "textLength", s->length);
	fputs(" lengthAdjust=\"spacingAndGlyphs\"", f);
	if (s->bold)
		fputs(" font-weight=\"bold\"", f);
	if (fabs(s->turn) > 1e-9)
		fprintf(f, " transform=\"rotate(%s %s %s)\"",
			number_print(c, sizeof c, -s->turn / RAD_PER_DEG, 3), mm(a, x), mm(b, y));
	fputc('>', f);
	svg_text(f, s->text);
	fputs("</text>\n", f);
}

static void put_shape(FILE *f, const struct drawing *d, const struct shape *s)
{
	switch (s->kind) {
	case SHAPE_LINE:
		put_line(f, d, s);
		return;
	case SHAPE_CIRCLE:
		put_circle(f, d, s);
		return;
	case SHAPE_TEXT:
		if (*s->text)
			put_words(f, d, s);
		return;
	}
}

static void put_head(FILE *f, const struct drawing *d, enum svg_use use)
{
	char w[32], h[32];

	mm(w, drawing_width(d));
	mm(h, drawing_height(d));
	if (use == SVG_FILE)
		fprintf(f,
			"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "
			"xmlns=\"http://www.w3.org/2000/svg\" "
			"width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\" role=\"img\" "
			"xml:lang=\"en\">\n",
			w, h, w, h);
	else
		fprintf(f,
			"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" "
			"role=\"img\" aria-label=\"",
			w, h);
	if (use == SVG_INLINE) {
		svg_text(f, drawing_title(d));
		fputs("\">\n", f);
	}
	fputs("<title>", f);
	svg_text(f, drawing_title(d));
	fputs("</title>\n<desc>", f);
	svg_text(f, drawing_description(d));
	fprintf(f, "</desc>\n<rect width=\"%s\" height=\"%s\" fill=\"#fff\"/>\n", w, h);
}

void drawing_write_svg(FILE *f, const struct drawing *d, enum svg_use use)
{
	enum drawing_layer open = LAYER_COUNT;

	put_head(f, d, use);
	fputs("<g font-family=\"'DejaVu Sans', Verdana, sans-serif\" stroke=\"#000\" "
	      "stroke-linecap=\"round\" "
	      "stroke-linejoin=\"round\">\n",
	      f);
	/* In the order drawn, so that what is white covers what came before; a group is as long as
	 * its layer. */
	for (const struct shape *s = drawing_first(d); s; s = s->next) {
		if (s->layer != open) {
			fprintf(f, "%s<g class=\"%s\">\n", open == LAYER_COUNT ? "" : "</g>\n",
				drawing_layer_table[s->layer].name);
			open = s->layer;
		}
		put_shape(f, d, s);
	}
	fputs(open == LAYER_COUNT ? "</g>\n</svg>\n" : "</g>\n</g>\n</svg>\n", f);
}
