/* SPDX-License-Identifier: MIT */
/* DXF is a list of pairs: a group code on one line, its value on the next. */
#include "drawing/dxf.h"

#include <math.h>

static const char *const dash_name[DASH_COUNT] = {"CONTINUOUS", "DASHED", "SHORTDASH", "DASHDOT"};

struct dxf {
	FILE *f;
	struct view view;
	double unit; /* m */
};

static void code(const struct dxf *x, int group, const char *value)
{
	fprintf(x->f, "%3d\n%s\n", group, value);
}

static void whole(const struct dxf *x, int group, int value)
{
	fprintf(x->f, "%3d\n%d\n", group, value);
}

static void number(const struct dxf *x, int group, double value)
{
	char buf[48];

	code(x, group, number_print(buf, sizeof buf, value, 6));
}

/* A length on paper at full size. */
static double full(const struct dxf *x, double on_paper)
{
	return on_paper / x->view.scale / x->unit;
}

/* A place on paper; its height goes to group + 10. */
static void place(const struct dxf *x, int group, struct point p)
{
	number(x, group, full(x, p.x - x->view.origin.x));
	number(x, group + 10, full(x, p.y - x->view.origin.y));
}

static void entity(const struct dxf *x, const char *kind, enum drawing_layer layer)
{
	code(x, 0, kind);
	code(x, 8, drawing_layer_table[layer].name);
}

static void line_type(const struct dxf *x, const struct shape *s)
{
	if (s->dash != drawing_layer_table[s->layer].dash)
		code(x, 6, dash_name[s->dash]);
}

static void put_line(const struct dxf *x, const struct shape *s)
{
	entity(x, "LINE", s->layer);
	line_type(x, s);
	place(x, 10, s->at[0]);
	place(x, 11, s->at[1]);
}

static void put_polyline(const struct dxf *x, const struct shape *s)
{
	entity(x, "POLYLINE", s->layer);
	line_type(x, s);
	whole(x, 66, 1);
	place(x, 10, (struct point){x->view.origin.x, x->view.origin.y});
	whole(x, 70, s->closed ? 1 : 0);
	for (int i = 0; i < s->n; i++) {
		entity(x, "VERTEX", s->layer);
		place(x, 10, s->at[i]);
	}
	entity(x, "SEQEND", s->layer);
}

/* A triangle or four-cornered shape in black. SOLID takes its third and fourth corner crosswise. */
static void put_solid(const struct dxf *x, const struct shape *s)
{
	entity(x, "SOLID", s->layer);
	place(x, 10, s->at[0]);
	place(x, 11, s->at[1]);
	place(x, 12, s->at[s->n - 1]);
	place(x, 13, s->at[2]);
}

/* A filled disc: two half circles of a wide line, each with bulge 1. */
static void put_disc(const struct dxf *x, const struct shape *s)
{
	const struct point c = s->at[0];
	const double r = s->radius / 2;

	entity(x, "POLYLINE", s->layer);
	whole(x, 66, 1);
	place(x, 10, x->view.origin);
	whole(x, 70, 1);
	number(x, 40, full(x, s->radius));
	number(x, 41, full(x, s->radius));
	for (int i = 0; i < 2; i++) {
		entity(x, "VERTEX", s->layer);
		place(x, 10, (struct point){c.x + (i ? r : -r), c.y});
		number(x, 42, 1);
	}
	entity(x, "SEQEND", s->layer);
}

static void put_circle(const struct dxf *x, const struct shape *s)
{
	entity(x, "CIRCLE", s->layer);
	place(x, 10, s->at[0]);
	number(x, 40, full(x, s->radius));
}

/* One code point of UTF-8 that utf8_clean has passed; the bytes it takes. */
static int decode(const unsigned char *t, unsigned *c)
{
	const int n = t[0] < 0x80 ? 1 : t[0] < 0xE0 ? 2 : t[0] < 0xF0 ? 3 : 4;

	*c = n == 1 ? t[0] : t[0] & (0x7Fu >> n);
	for (int i = 1; i < n; i++)
		*c = *c << 6 | (t[i] & 0x3Fu);
	return n;
}

static void put_words(const struct dxf *x, const struct shape *s)
{
	entity(x, "TEXT", s->layer);
	place(x, 10, s->at[0]);
	number(x, 40, full(x, s->size * LETTERING_CAPITAL));
	fprintf(x->f, "%3d\n", 1);
	for (const unsigned char *t = (const unsigned char *)s->text; *t;) {
		unsigned c;

		t += decode(t, &c);
		if (c == 0xA0)
			fputc(' ', x->f);
		else if (c < 0x7F)
			fputc((int)c, x->f);
		else
			fprintf(x->f, "\\U+%04X", c);
	}
	fputc('\n', x->f);
	if (fabs(s->turn) > 1e-9)
		number(x, 50, s->turn / RAD_PER_DEG);
}

static void put_shape(const struct dxf *x, const struct shape *s)
{
	switch (s->kind) {
	case SHAPE_LINE:
		if (s->fill == FILL_BLACK && s->closed && (s->n == 3 || s->n == 4))
			put_solid(x, s);
		else if (s->width <= 0)
			return;
		else if (s->n == 2 && !s->closed)
			put_line(x, s);
		else
			put_polyline(x, s);
		return;
	case SHAPE_CIRCLE:
		if (s->fill == FILL_BLACK)
			put_disc(x, s);
		else
			put_circle(x, s);
		return;
	case SHAPE_TEXT:
		if (*s->text)
			put_words(x, s);
		return;
	}
}

static void put_header(const struct dxf *x, const struct drawing *d)
{
	code(x, 0, "SECTION");
	code(x, 2, "HEADER");
	code(x, 9, "$ACADVER");
	code(x, 1, "AC1009");
	code(x, 9, "$EXTMIN");
	place(x, 10, (struct point){0, 0});
	number(x, 30, 0);
	code(x, 9, "$EXTMAX");
	place(x, 10, (struct point){drawing_width(d), drawing_height(d)});
	number(x, 30, 0);
	code(x, 9, "$LTSCALE");
	number(x, 40, 1);
	code(x, 0, "ENDSEC");
}

static void put_line_types(const struct dxf *x)
{
	code(x, 0, "TABLE");
	code(x, 2, "LTYPE");
	whole(x, 70, DASH_COUNT);
	for (int i = 0; i < (int)DASH_COUNT; i++) {
		const double *dash = drawing_dash_pattern[i];
		double length = 0;
		int parts = 0;

		for (; parts < 4 && dash[parts] > 0; parts++)
			length += dash[parts];
		code(x, 0, "LTYPE");
		code(x, 2, dash_name[i]);
		whole(x, 70, 0);
		code(x, 3, dash_name[i]);
		whole(x, 72, 65);
		whole(x, 73, parts);
		number(x, 40, full(x, length));
		for (int k = 0; k < parts; k++)
			number(x, 49, full(x, k % 2 ? -dash[k] : dash[k]));
	}
	code(x, 0, "ENDTAB");
}

static void put_layers(const struct dxf *x)
{
	code(x, 0, "TABLE");
	code(x, 2, "LAYER");
	whole(x, 70, LAYER_COUNT);
	for (int i = 0; i < (int)LAYER_COUNT; i++) {
		code(x, 0, "LAYER");
		code(x, 2, drawing_layer_table[i].name);
		whole(x, 70, 0);
		whole(x, 62, drawing_layer_table[i].colour);
		code(x, 6, dash_name[drawing_layer_table[i].dash]);
	}
	code(x, 0, "ENDTAB");
}

void drawing_write_dxf(FILE *f, const struct drawing *d, enum unit_system units)
{
	const struct dxf x = {f, drawing_main_view(d), units == SYSTEM_SI ? 0.001 : M_PER_IN};

	code(&x, 999, units == SYSTEM_SI ? "unit: mm" : "unit: in");
	put_header(&x, d);
	code(&x, 0, "SECTION");
	code(&x, 2, "TABLES");
	put_line_types(&x);
	put_layers(&x);
	code(&x, 0, "ENDSEC");
	code(&x, 0, "SECTION");
	code(&x, 2, "ENTITIES");
	for (const struct shape *s = drawing_first(d); s; s = s->next)
		put_shape(&x, s);
	code(&x, 0, "ENDSEC");
	code(&x, 0, "EOF");
}
