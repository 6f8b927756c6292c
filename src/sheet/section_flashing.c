/* SPDX-License-Identifier: MIT */
/* Flashing of a section: plates, patches, felt, and what stands on them round a foot. */
#include <math.h>

#include "sheet/section.h"

#define FLASHING_LINE (0.6 * MM)
#define SHEET_LINE (0.45 * MM)

/* Along the top of the piece below the covering butt, and on along the base beyond that piece's
 * upper end. */
static double plate_bottom(const struct section *x, double u)
{
	if (isnan(x->E) || isnan(x->L))
		return x->surface;
	const double under = x->butt - x->E;

	if (u < under)
		return fmax(section_top(x, u), section_piece_bottom(x, under, under) + x->t);
	return u > under + x->L ? x->lap_base : section_piece_bottom(x, under, u) + x->t;
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
