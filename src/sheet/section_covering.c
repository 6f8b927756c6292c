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

static bool flashes(const struct section_layer *l)
{
	return section_is(l, "plate") || section_is(l, "patch") || section_is(l, "boot");
}

void section_stack(struct section *x)
{
	double top = 0;

	x->E = x->L = x->t = x->butt = x->lap_base = x->bed = (double)NAN;
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
		if (isnan(x->bed) && flashes(l))
			x->bed = top;
		if (sheet_layer(l))
			top = fmax(top, l->below + thickness);
	}
	x->surface = top;
	if (isnan(x->bed))
		x->bed = top;
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

static void draw_stones(struct section *x, const struct section_layer *l, double t)
{
	const double r = t / 2;

	for (double u = x->u0 + r; r > 0 && u < x->u1 - 0.9 * r; u += 2.1 * r)
		drawing_circle(x->d, LAYER_MATERIAL, FILL_WHITE, (struct point){u, l->below + r},
			       0.9 * r);
}

/* Soft layers are hatched, both ways what comes as boards. */
static void draw_sheet(struct section *x, const struct section_layer *l)
{
	const double t = section_size(l, "thickness", 0), top = l->below + t;
	const bool board = section_is(l, "insulation-board"), foam = section_is(l, "foam");
	const struct point at[] = {
		{x->u0, l->below}, {x->u1, l->below}, {x->u1, top}, {x->u0, top}};

	if (section_is(l, "gravel")) {
		draw_stones(x, l, t);
	} else {
		section_area(x,
			     board || foam            ? FILL_WHITE
			     : section_is(l, "panel") ? FILL_BLACK
						      : FILL_GREY,
			     at, 4);
		if (board || foam)
			drawing_hatch(x->d, LAYER_HATCH, at, 4, 45 * RAD_PER_DEG, 2.4 * MM);
		if (board)
			drawing_hatch(x->d, LAYER_HATCH, at, 4, -45 * RAD_PER_DEG, 2.4 * MM);
	}
	section_name_along(x, x->u1 - 0.06 * (x->u1 - x->u0), l->below + t / 2,
			   0.2 * (x->u1 - x->u0), with_thickness(x, l));
}

/* Wood set into the insulation below a flange. */
static void draw_block(struct section *x, const struct section_layer *l)
{
	const double down = section_size(l, "down", 0), up = section_size(l, "up", 0),
		     base = section_size(l, "base", -1),
		     top = base + section_size(l, "thickness", 0);
	const struct point at[] = {{-down, base}, {up, base}, {up, top}, {-down, top}};

	section_area(x, FILL_WHITE, at, 4);
	drawing_hatch(x->d, LAYER_HATCH, at, 4, 30 * RAD_PER_DEG, 1.6 * MM);
	section_name(x, 0.9 * up, (base + top) / 2, l->label);
}

/* Cut beside them: the next one is seen from its side. */
static void draw_beyond(struct section *x, const struct section_layer *l)
{
	const double v = x->surface + section_size(l, "height", 0);

	drawing_line_as(x->d, LAYER_MATERIAL, 0.18 * MM, DASH_SOLID, (struct point){x->u0, v},
			(struct point){x->u1, v});
	section_name(x, x->u1 - 0.12 * (x->u1 - x->u0), v,
		     strstr(l->label, "beyond") ? l->label
						: sheet_text(x->s, "%s, seen beyond", l->label));
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

/* Below the heads of the pieces that hang on them; not where the foot or the pipe stands. */
static void draw_battens(struct section *x, const struct section_layer *l)
{
	const double breadth = section_size(l, "breadth", 0.038),
		     t = section_size(l, "thickness", 0.019),
		     spacing = section_size(l, "spacing", 0.3);
	const double first = isnan(x->E) ? 0 : x->butt - x->E + x->L - breadth;
	double named = (double)NAN;

	for (double u = first - ceil((first - x->u0) / spacing) * spacing; u < x->u1;
	     u += spacing) {
		const double a = fmax(u, x->u0), b = fmin(u + breadth, x->u1);

		if (b < a || (a < breadth && b > -breadth))
			continue;
		section_block(x, FILL_GREY, a, l->below, b, l->below + t);
		if (b - a > breadth / 2)
			named = (a + b) / 2;
	}
	if (!isnan(named))
		section_name(x, named, l->below + t / 2, l->label);
}

/* A clamp stands on a seam: section_foot draws that one. */
static bool seam_is_cut(const struct section *x)
{
	return x->what == SECTION_OF_FOOT && sheet_on_seams(x->s->job);
}

static void draw_layer(struct section *x, const struct section_layer *l)
{
	/* of the foot the job says what it stands on */
	if (section_is(l, "block") && x->what == SECTION_OF_PIPE &&
	    section_size(l, "base", -1) >= 0)
		draw_block(x, l);
	if (structural(l))
		return;
	if (section_is(l, "batten"))
		draw_battens(x, l);
	else if (sheet_layer(l))
		draw_sheet(x, l);
	else if (lapped(l) && !isnan(x->E) && !isnan(x->L) && x->E > 0 && x->L > 0)
		draw_pieces(x, l);
	else if (section_is(l, "rib") || (section_is(l, "seam") && !seam_is_cut(x)))
		draw_beyond(x, l);
}

void section_covering(struct section *x)
{
	for (int i = 0; i < x->layers; i++)
		draw_layer(x, &x->layer[i]);
}
