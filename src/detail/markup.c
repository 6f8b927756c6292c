/* SPDX-License-Identifier: MIT */
/* Markup that page and sheet share. */
#include <math.h>
#include <stddef.h>
#include <string.h>

#include "detail/page.h"
#include "drawing/svg.h"

void page_head(FILE *f, const char *title, const char *style)
{
	fputs("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
	      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>",
	      f);
	svg_text(f, title);
	fprintf(f, "</title>\n<style>\n%s</style>\n</head>\n<body>\n", style);
}

/* A length that must not come out shorter is rounded up. */
static const char *size_text(char *buf, size_t size, const struct guide_size_row *row, double value,
			     enum unit_system units)
{
	const double step = units == SYSTEM_US ? M_PER_IN / 8.0 : 0.001;

	switch (row->style) {
	case GUIDE_PITCH:
		return pitch_print(buf, size, value);
	case GUIDE_LEAST:
		return tape_print(buf, size, ceil(value / step - 1e-6) * step, units, 8);
	case GUIDE_LENGTH:
		return tape_print(buf, size, value, units, 32);
	case GUIDE_COUNT:
		return number_print(buf, size, value, 0);
	case GUIDE_HEAT:
		return quantity_print(buf, size, value,
				      units == SYSTEM_US ? UNIT_DEG_F : UNIT_DEG_C, 0);
	}
	return "";
}

void page_sizes(FILE *f, const struct page_request *request)
{
	const struct guide_size_row *row;

	if (!request->job || !request->guide.sizes)
		return;
	fputs("<section id=\"sizes\">\n<h2>Sizes of this job</h2>\n<p>", f);
	svg_text(f, request->job);
	fputs("</p>\n<dl>\n", f);
	for (size_t i = 0; (row = guide_size_row(i)) != NULL; i++) {
		const double value = guide_size_value(request->guide.sizes, row);
		char buf[64];

		if (isnan(value))
			continue;
		fputs("<dt>", f);
		svg_text(f, row->meaning);
		fputs("</dt><dd>", f);
		svg_text(f, size_text(buf, sizeof buf, row, value, request->guide.units));
		fputs("</dd>\n", f);
	}
	fputs("</dl>\n</section>\n", f);
}

bool page_figure(FILE *f, const struct lettering *lettering, const struct page_request *request,
		 const char *of, const char *view)
{
	struct drawing *d;

	if (!detail_known(request->lib, request->guide.key, of, view))
		return true;
	d = detail_draw(lettering, request->lib, &request->guide, of, view);
	if (!d)
		return false;
	fputs("<figure>\n", f);
	drawing_write_svg(f, d, SVG_INLINE);
	fputs("</figure>\n", f);
	drawing_destroy(d);
	return true;
}

void page_foot(FILE *f, const struct page_request *request)
{
	fputs("<footer>\n<p><strong>Caution.</strong> ", f);
	svg_text(f, request->caution);
	fputs("</p>\n<ul>\n", f);
	for (const char *const *c = request->roof_cautions; *c; c++) {
		fputs("<li>", f);
		svg_text(f, *c);
		fputs("</li>\n", f);
	}
	fputs("</ul>\n</footer>\n</body>\n</html>\n", f);
}
