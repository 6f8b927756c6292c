/* SPDX-License-Identifier: MIT */
#include "drawing/lettering.h"

#include <stdlib.h>
#include <string.h>

#include "drawing/typeset.h"

/* Measured at one large size and scaled: widths are then exactly proportional. */
#define MEASURE_SIZE 0.1

struct lettering {
	PangoFontMap *map;
	PangoContext *context;
};

static PangoFontDescription *description(struct lettering_style style)
{
	PangoFontDescription *font = pango_font_description_new();

	pango_font_description_set_family(font,
					  style.mono ? LETTERING_FAMILY " Mono" : LETTERING_FAMILY);
	pango_font_description_set_weight(font,
					  style.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
	pango_font_description_set_absolute_size(font, style.size * POINTS_PER_M * PANGO_SCALE);
	return font;
}

static bool installed(const struct lettering *l, bool mono)
{
	PangoFontDescription *want = description((struct lettering_style){0.01, false, mono});
	PangoFont *font = pango_font_map_load_font(l->map, l->context, want);
	PangoFontDescription *got = font ? pango_font_describe(font) : NULL;
	const char *family = got ? pango_font_description_get_family(got) : NULL;
	const bool same = family && strcmp(family, pango_font_description_get_family(want)) == 0;

	pango_font_description_free(want);
	if (got)
		pango_font_description_free(got);
	if (font)
		g_object_unref(font);
	return same;
}

struct lettering *lettering_create(bool *missing)
{
	struct lettering *l = calloc(1, sizeof *l);

	*missing = false;
	if (!l)
		return NULL;
	l->map = pango_cairo_font_map_new();
	/* One point of the font is one unit of the canvas. */
	pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(l->map), 72.0);
	l->context = pango_font_map_create_context(l->map);
	cairo_font_options_t *options = cairo_font_options_create();

	cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
	cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
	cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
	pango_cairo_context_set_font_options(l->context, options);
	cairo_font_options_destroy(options);
	pango_context_set_round_glyph_positions(l->context, FALSE);
	pango_context_set_language(l->context, pango_language_from_string("en"));
	if (!installed(l, false) || !installed(l, true)) {
		*missing = true;
		lettering_destroy(l);
		return NULL;
	}
	return l;
}

void lettering_destroy(struct lettering *l)
{
	if (!l)
		return;
	g_object_unref(l->context);
	g_object_unref(l->map);
	free(l);
}

static PangoLayout *layout(const struct lettering *l, const char *text,
			   struct lettering_style style)
{
	PangoLayout *line = pango_layout_new(l->context);
	PangoFontDescription *font = description(style);

	pango_layout_set_font_description(line, font);
	pango_font_description_free(font);
	pango_layout_set_auto_dir(line, FALSE);
	pango_layout_set_text(line, text, -1);
	return line;
}

double lettering_width(const struct lettering *l, const char *text, struct lettering_style style)
{
	const struct lettering_style large = {MEASURE_SIZE, style.bold, style.mono};
	PangoLayout *line = layout(l, text, large);
	PangoRectangle box;

	pango_layout_set_single_paragraph_mode(line, TRUE);
	pango_layout_line_get_extents(pango_layout_get_line_readonly(line, 0), NULL, &box);
	const double width =
		box.width / (double)PANGO_SCALE / POINTS_PER_M * (style.size / MEASURE_SIZE);

	g_object_unref(line);
	return width;
}

void lettering_show(const struct lettering *l, cairo_t *cr, const char *text,
		    struct lettering_style style)
{
	PangoLayout *line = layout(l, text, style);

	pango_layout_set_single_paragraph_mode(line, TRUE);
	cairo_move_to(cr, 0, 0);
	pango_cairo_show_layout_line(cr, pango_layout_get_line_readonly(line, 0));
	g_object_unref(line);
}

PangoLayout *lettering_paragraph(const struct lettering *l, const char *text,
				 struct lettering_style style, double width)
{
	PangoLayout *paragraph = layout(l, text, style);

	pango_layout_set_width(paragraph, (int)(width * POINTS_PER_M * PANGO_SCALE));
	pango_layout_set_wrap(paragraph, PANGO_WRAP_WORD_CHAR);
	return paragraph;
}
