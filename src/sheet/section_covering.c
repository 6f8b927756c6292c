/* SPDX-License-Identifier: MIT */
/* Rafter, deck, covering and flashing of a section. */
#include <math.h>
#include <string.h>

#include "sheet/section.h"

#define FLASHING_LINE (0.6 * MM)
#define SHEET_LINE (0.45 * MM)

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
static double piece_bottom(const struct section *x, double butt, double u)
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
	return piece_bottom(x, showing(x, u), u) + x->t;
}

static void roof_layer(struct section *x)
{
	const struct job *job = x->s->job;
	const double depth = job->framing.depth, face = -x->deck;

	if (x->what == SECTION_OF_FOOT) {
		section_block(x, FILL_LIGHT, x->u0, face - depth, x->u1, face);
		section_name(x, x->u1 - 0.15 * (x->u1 - x->u0), face - 0.75 * depth,
			     sheet_text(x->s, "rafter%s%s, %s thick, %s deep",
					job->framing.size[0] ? " " : "", job->framing.size,
					sheet_size(x->s, job->framing.breadth),
					sheet_size(x->s, depth)));
	}
}

static void boards(struct section *x, double breadth, double spacing)
{
	for (double u = -ceil(-x->u0 / spacing) * spacing; u < x->u1; u += spacing) {
		const double a = fmax(u - breadth / 2, x->u0), b = fmin(u + breadth / 2, x->u1);

		if (b > a)
			section_block(x, FILL_WHITE, a, -x->deck, b, 0);
	}
}

static const char *deck_words(const struct sheet *s)
{
	switch (s->job->roof.deck) {
	case DECK_PLYWOOD:
		return "plywood deck";
	case DECK_OSB:
		return "OSB deck";
	case DECK_BOARDS:
		return "board deck";
	case DECK_SPACED_BOARDS:
		return "spaced boards";
	case DECK_UNKNOWN:
	case DECK_OTHER:
		return "deck";
	}
	return "deck";
}

void section_roof(struct section *x)
{
	const struct section_layer *spaced = section_find(x, "spaced-board");

	roof_layer(x);
	if (!(x->deck > 0))
		return;
	if (spaced || x->s->job->roof.deck == DECK_SPACED_BOARDS) {
		boards(x, spaced ? section_size(spaced, "breadth", 0.14) : 0.14,
		       spaced ? section_size(spaced, "spacing", 0.25) : 0.25);
	} else {
		const struct point at[] = {
			{x->u0, -x->deck}, {x->u1, -x->deck}, {x->u1, 0}, {x->u0, 0}};

		section_area(x, FILL_WHITE, at, 4);
		drawing_hatch(x->d, LAYER_HATCH, at, 4, 45 * RAD_PER_DEG, 1.2 * MM);
	}
	section_name(x, x->u1 - 0.1 * (x->u1 - x->u0), -x->deck / 2,
		     sheet_text(x->s, "%s %s", deck_words(x->s), sheet_size(x->s, x->deck)));
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
		const double low = piece_bottom(x, butt, a), high = piece_bottom(x, butt, b);
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

/* Along the top of the piece below the covering butt, and on along the base beyond that piece's
 * upper end. */
static double plate_bottom(const struct section *x, double u)
{
	if (isnan(x->E) || isnan(x->L))
		return x->surface;
	const double under = x->butt - x->E;

	if (u < under)
		return fmax(section_top(x, u), piece_bottom(x, under, under) + x->t);
	return u > under + x->L ? x->lap_base : piece_bottom(x, under, u) + x->t;
}

#define STEPS 48

static void draw_plate(struct section *x, const struct section_layer *l)
{
	const double down = section_size(l, "down", 0), up = section_size(l, "up", 0);
	const double base = section_size(l, "base", (double)NAN);
	struct point at[STEPS + 1];

	if (!(down + up > 0))
		return;
	for (int i = 0; i <= STEPS; i++) {
		const double u = fmax(x->u0, fmin(x->u1, -down + (down + up) * i / STEPS));
		const double v = section_is(l, "deck-flashing") ? l->below
				 : isnan(base)                  ? plate_bottom(x, u)
								: base;

		at[i] = (struct point){u, v + 0.2 * MM * x->scale.ratio};
		if (i > 0)
			drawing_line_as(x->d, LAYER_MATERIAL, FLASHING_LINE, DASH_SOLID, at[i - 1],
					at[i]);
	}
	section_name(x, at[STEPS - 3].x, at[STEPS - 3].y,
		     sheet_text(x->s, "%s: %s below, %s above the hole%s", l->label,
				sheet_size(x->s, down), sheet_size(x->s, up),
				l->woven ? ", over the course below, under those above" : ""));
}

static void draw_patch(struct section *x, const struct section_layer *l, double *top)
{
	const double down = section_size(l, "down", 0), up = section_size(l, "up", 0),
		     t = section_size(l, "thickness", 0.003);
	const double a = fmax(-down, x->u0), b = fmin(up, x->u1);

	section_block(x, FILL_GREY, a, *top, b, *top + t);
	section_name(x, a + 0.03 * (b - a), *top + t / 2,
		     sheet_text(x->s, "%s, %s each way", l->label, sheet_size(x->s, up)));
	*top += t;
}

static void draw_felt(struct section *x, const struct section_layer *l)
{
	const double up = section_size(l, "up", (double)NAN);

	if (isnan(up) || up > x->u1)
		return;
	drawing_line_as(x->d, LAYER_MATERIAL, SHEET_LINE, DASH_SHORT_DASH,
			(struct point){0.6 * up, plate_bottom(x, 0.6 * up)},
			(struct point){up, plate_bottom(x, up)});
	section_name(x, 0.9 * up, plate_bottom(x, 0.9 * up), l->label);
}

/* What stands on the flashing round the foot's post: cone, sleeve, cap. */
static void draw_standing(struct section *x, const struct section_layer *l, double *shaft)
{
	const double r = section_size(l, "diameter", 0.04) / 2, h = section_size(l, "height", 0.03);
	const double foot = plate_bottom(x, 0);

	if (section_is(l, "cap")) {
		const struct point at[] = {{-r, *shaft - h / 2},
					   {r, *shaft - h / 2},
					   {r / 2, *shaft + h / 2},
					   {-r / 2, *shaft + h / 2}};

		section_area(x, FILL_WHITE, at, 4);
		section_name(x, 0.8 * r, *shaft - h / 4, l->label);
		return;
	}
	const double narrow = section_is(l, "boss") || section_is(l, "boot") ? 0.7 * r : r;
	const struct point at[] = {{-r, foot}, {r, foot}, {narrow, foot + h}, {-narrow, foot + h}};

	section_area(x, FILL_WHITE, at, 4);
	section_name(x, 0.95 * narrow, foot + 0.6 * h, l->label);
	*shaft = foot + h;
}

void section_flashing(struct section *x)
{
	double top = x->surface, shaft = section_top(x, 0) + 0.03;

	for (int i = 0; i < x->layers; i++) {
		const struct section_layer *l = &x->layer[i];

		if (l->plumb)
			continue;
		if (section_is(l, "plate") || section_is(l, "deck-flashing"))
			draw_plate(x, l);
		else if (section_is(l, "patch"))
			draw_patch(x, l, &top);
		else if (section_is(l, "felt-strip"))
			draw_felt(x, l);
		else if (x->what == SECTION_OF_FOOT &&
			 (section_is(l, "boss") || section_is(l, "sleeve") || section_is(l, "cap")))
			draw_standing(x, l, &shaft);
	}
}
