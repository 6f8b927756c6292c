/* SPDX-License-Identifier: MIT */
/* How the layers of a covering lie on each other in a section. */
#include <math.h>
#include <string.h>

#include "sheet/section.h"

/* Layers of the structure hang below the origin. */
static bool structural(const struct section_layer *l)
{
	return section_is(l, "rafter") || section_is(l, "purlin") || section_is(l, "deck") ||
	       section_is(l, "spaced-board") || section_is(l, "block");
}

static bool lapped(const struct section_layer *l)
{
	return section_is(l, "course") || section_is(l, "tile");
}

static bool sheet_layer(const struct section_layer *l)
{
	return section_is(l, "underlayment") || section_is(l, "membrane") ||
	       section_is(l, "gravel") || section_is(l, "foam") ||
	       section_is(l, "insulation-board") || section_is(l, "panel") ||
	       section_is(l, "batten");
}

void section_stack(struct section *x)
{
	double top = 0;

	x->E = x->L = x->t = x->butt = x->lap_base = (double)NAN;
	for (int i = 0; i < x->layers; i++) {
		struct section_layer *l = &x->layer[i];
		const double thickness = section_size(l, "thickness", 0);
		const double base = section_size(l, "base", (double)NAN);

		if (structural(l))
			continue;
		l->below = isnan(base) ? top : base;
		if (lapped(l)) {
			x->E = section_size(l, "exposure", (double)NAN);
			x->L = section_size(l, "length", (double)NAN);
			x->t = thickness;
			x->butt = section_size(l, "butt-up", 0);
			x->lap_base = l->below;
		}
		if (sheet_layer(l))
			top = fmax(top, l->below + thickness);
	}
	x->surface = top;
}

/* Pieces lie parallel: each rests at its upper end on the base and at its butt on the piece below,
   so that the underside falls from t L / E at the butt to nothing at the upper end. */
double section_piece_bottom(const struct section *x, double butt, double u)
{
	return x->lap_base + x->t * x->L / x->E * (1 - (u - butt) / x->L);
}

/* The butt of the piece that shows at u. */
static double showing(const struct section *x, double u)
{
	return x->butt + floor((u - x->butt) / x->E) * x->E;
}

double section_top(const struct section *x, double u)
{
	if (isnan(x->E) || isnan(x->L))
		return x->surface;
	return section_piece_bottom(x, showing(x, u), u) + x->t;
}

static const char *with_thickness(const struct section *x, const struct section_layer *l)
{
	const double t = section_size(l, "thickness", (double)NAN);

	return isnan(t) || t < 1.5e-3 ? l->label
				      : sheet_text(x->s, "%s, %s", l->label, sheet_size(x->s, t));
}

static void draw_sheet(struct section *x, const struct section_layer *l)
{
	const double t = section_size(l, "thickness", 0);

	section_block(x, section_is(l, "panel") ? FILL_BLACK : FILL_GREY, x->u0, l->below, x->u1,
		      l->below + t);
	section_name(x, x->u1 - 0.06 * (x->u1 - x->u0), l->below + t / 2, with_thickness(x, l));
}

static void draw_pieces(struct section *x, const struct section_layer *l)
{
	for (double butt = x->butt - ceil((x->butt + x->L - x->u0) / x->E) * x->E; butt < x->u1;
	     butt += x->E) {
		const double a = fmax(butt, x->u0), b = fmin(butt + x->L, x->u1);
		const double low = section_piece_bottom(x, butt, a),
			     high = section_piece_bottom(x, butt, b);
		const struct point at[] = {{a, low}, {b, high}, {b, high + x->t}, {a, low + x->t}};

		if (b > a)
			section_area(x, FILL_WHITE, at, 4);
	}
	const double u = x->butt + 1.6 * x->E < x->u1 ? x->butt + 1.6 * x->E : x->u1 - 0.2 * x->E;

	section_name(x, u, section_top(x, u) - x->t / 2,
		     sheet_text(x->s, "%s, %s to the weather", l->label, sheet_size(x->s, x->E)));
}

static void draw_battens(struct section *x, const struct section_layer *l)
{
	const double breadth = section_size(l, "breadth", 0.038),
		     t = section_size(l, "thickness", 0.019);
	const double spacing = section_size(l, "spacing", 0.3);

	for (double u = x->butt - ceil((x->butt - x->u0) / spacing) * spacing; u < x->u1;
	     u += spacing)
		if (fabs(u) > breadth && u - breadth / 2 > x->u0)
			section_block(x, FILL_GREY, u - breadth / 2, l->below,
				      fmin(u + breadth / 2, x->u1), l->below + t);
	section_name(x, x->butt + (x->butt + spacing < x->u1 ? spacing : 0), l->below + t / 2,
		     l->label);
}

void section_covering(struct section *x)
{
	for (int i = 0; i < x->layers; i++) {
		const struct section_layer *l = &x->layer[i];

		if (structural(l))
			continue;
		if (section_is(l, "batten"))
			draw_battens(x, l);
		else if (sheet_layer(l))
			draw_sheet(x, l);
		else if (lapped(l) && !isnan(x->E) && !isnan(x->L) && x->E > 0 && x->L > 0)
			draw_pieces(x, l);
	}
}
