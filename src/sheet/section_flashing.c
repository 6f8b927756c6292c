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
		return x->bed;
	const double under = x->butt - x->E;

	if (u < under)
		return fmax(section_top(x, u), section_piece_bottom(x, under, under) + x->t);
	return u > under + x->L ? x->lap_base : section_piece_bottom(x, under, u) + x->t;
}

/* Where water comes from lies over it, where it goes to, under it. */
static const char *laps(const struct section *x, const struct section_layer *l)
{
	if (!l->woven || section_is(l, "deck-flashing"))
		return "";
	if (section_find(x, "panel"))
		return ", over the panel below, under that above";
	return isnan(x->E) ? ", over the sheet below, under the one above"
			   : ", over the course below, under those above";
}

/* The sheet that comes down over its upper edge, a little above it to be seen. */
static void sheet_above(struct section *x, const struct section_layer *l, double up)
{
	const double v = l->below + 0.9 * MM * x->scale.ratio;

	drawing_line_as(x->d, LAYER_MATERIAL, SHEET_LINE, DASH_SHORT_DASH,
			(struct point){0.55 * up, v}, (struct point){fmin(up + 0.02, x->u1), v});
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
				sheet_size(x->s, down), sheet_size(x->s, up), laps(x, l)));
	if (section_is(l, "deck-flashing"))
		sheet_above(x, l, up);
}

/* Run up what it flashes, not laid on the roof. */
static bool round_patch(const struct section_layer *l)
{
	return section_is(l, "patch") && section_size(l, "diameter", 0) > 0;
}

static void draw_patch(struct section *x, const struct section_layer *l)
{
	const double down = section_size(l, "down", 0), up = section_size(l, "up", 0),
		     t = section_size(l, "thickness", 0.003);
	const double a = fmax(-down, x->u0), b = fmin(up, x->u1);

	section_block(x, FILL_GREY, a, x->patched, b, x->patched + t);
	section_name(x, b - 0.02 * (b - a), x->patched + t / 2,
		     down < 0
			     ? sheet_text(x->s, "%s, from %s to %s above the hole", l->label,
					  sheet_size(x->s, -down), sheet_size(x->s, up))
			     : sheet_text(x->s, "%s, %s each way", l->label, sheet_size(x->s, up)));
	x->patched += t;
}

/* v of the top at u of the piece with this butt. */
static double piece_top(const struct section *x, double butt, double u)
{
	return section_piece_bottom(x, butt, u) + x->t;
}

/* Felts laid between the courses: each lies on the lowest piece that is there at its lower edge and
   on the boards beyond that piece's head. */
static void draw_interlaid(struct section *x, const struct section_layer *l)
{
	const double length = section_size(l, "length", 0), E = x->E;
	struct point named = {(double)NAN, 0};

	for (double low = section_size(l, "butt-up", 0) - 6 * E; low < x->u1; low += E) {
		double butt = x->butt - 8 * E;

		while (butt + x->L <= low)
			butt += E;
		const double a = fmax(low, x->u0), b = fmin(butt + x->L, x->u1),
			     c = fmin(low + length, x->u1);

		if (b > a)
			drawing_line_as(x->d, LAYER_MATERIAL, SHEET_LINE, DASH_SHORT_DASH,
					(struct point){a, piece_top(x, butt, a)},
					(struct point){b, piece_top(x, butt, b)});
		if (c > fmax(b, x->u0))
			drawing_line_as(x->d, LAYER_MATERIAL, SHEET_LINE, DASH_SHORT_DASH,
					(struct point){fmax(b, x->u0), x->lap_base},
					(struct point){c, x->lap_base});
		if (b > a && b < x->u1)
			named = (struct point){b - 0.02, piece_top(x, butt, b - 0.02)};
	}
	if (!isnan(named.x))
		section_name(x, named.x, named.y, l->label);
}

static void draw_felt(struct section *x, const struct section_layer *l)
{
	const double up = section_size(l, "up", (double)NAN);

	if (section_size(l, "length", 0) > 0 && x->E > 0) {
		draw_interlaid(x, l);
		return;
	}
	if (isnan(up) || up > x->u1)
		return;
	drawing_line_as(x->d, LAYER_MATERIAL, SHEET_LINE, DASH_SHORT_DASH,
			(struct point){0.6 * up, plate_bottom(x, 0.6 * up)},
			(struct point){up, plate_bottom(x, up)});
	section_name(x, 0.9 * up, plate_bottom(x, 0.9 * up), l->label);
}

/* What stands round the foot, cut open: its two sides, whole to the eye where nothing goes through.
 */
static void ring(struct section *x, const struct section_layer *l, enum fill fill, double foot,
		 double wide, double top, double narrow)
{
	const struct point at[] = {{-wide, foot}, {wide, foot}, {narrow, top}, {-narrow, top}};

	if (!(top > foot + 1e-4))
		return;
	section_area(x, fill, at, 4);
	section_name(x, 0.5 * (wide + narrow), foot + 0.5 * (top - foot), l->label);
}

/* Radius of what goes up through the flashing, and a little more. */
static double clear_of_post(const struct section *x)
{
	return section_post_half(x) + 0.5 * MM * x->scale.ratio;
}

/* A seal is as wide as what it closes round; below a base that lies on it, it is pressed flat. */
static void boss(struct section *x, const struct section_layer *l)
{
	const double r = section_size(l, "diameter", 0.04) / 2, h = section_size(l, "height", 0.03),
		     foot = plate_bottom(x, 0), narrow = fmax(r, clear_of_post(x));

	if (section_base_below(x))
		ring(x, l, FILL_LIGHT, foot, 1.4 * narrow, foot + h, narrow);
	else
		ring(x, l, FILL_LIGHT, foot, 1.4 * r, fmin(foot + h, section_base(x)), 1.4 * r);
}

static void sleeve(struct section *x, const struct section_layer *l)
{
	const double r = fmax(section_size(l, "diameter", 0.04) / 2, clear_of_post(x)),
		     top = section_size(l, "height", 0.1);

	ring(x, l, FILL_WHITE, plate_bottom(x, 0), r, top, r);
}

/* Of a membrane: its skirt lies on the roof, its tube grips the post below a clamp. */
static void boot(struct section *x, const struct section_layer *l)
{
	const double r = fmax(section_size(l, "diameter", 0.05) / 2, clear_of_post(x)),
		     h = section_size(l, "height", 0.1), skirt = r + 0.05, band = 0.012,
		     t = fmax(section_size(l, "thickness", 0.002), 0.4 * MM * x->scale.ratio);

	section_block(x, FILL_GREY, -skirt, x->patched, skirt, x->patched + t);
	ring(x, l, FILL_LIGHT, x->patched, r + t, h, r + t);
	section_block(x, FILL_WHITE, -r - 2 * t, h - 2 * band, r + 2 * t, h - band);
}

/* Foam run up round the post, on both sides of it. */
static void fillet(struct section *x, const struct section_layer *l)
{
	const double r = section_size(l, "diameter", 0.05) / 2;

	ring(x, l, FILL_LIGHT, x->patched, 1.6 * fmax(r, clear_of_post(x)),
	     section_size(l, "height", 0.1), clear_of_post(x) + 0.008);
}

static void draw_standing(struct section *x, const struct section_layer *l)
{
	if (section_is(l, "boss"))
		boss(x, l);
	else if (section_is(l, "sleeve"))
		sleeve(x, l);
	else if (section_is(l, "boot"))
		boot(x, l);
	else if (round_patch(l))
		fillet(x, l);
}

#define POST_ABOVE (0.5 * M_PER_IN) /* of post that must show above its cap (common practice) */

/* Over the end of what stands round the post, clamped on it. */
void section_flashing_cap(struct section *x)
{
	const struct section_layer *l = section_find(x, "cap"),
				   *sleeve_of = section_find(x, "sleeve");

	if (!l)
		return;
	const double r = fmax(section_size(l, "diameter", 0.08) / 2, 1.3 * section_post_half(x)),
		     h = section_size(l, "height", 0.03), neck = section_post_half(x),
		     end = sleeve_of ? section_size(sleeve_of, "height", 0.1)
				     : section_top(x, 0) + 0.03;
	const struct point at[] = {{-r, end - 0.6 * h},
				   {r, end - 0.6 * h},
				   {neck, end + 0.4 * h},
				   {-neck, end + 0.4 * h}};

	section_area(x, FILL_LIGHT, at, 4);
	section_name(x, 0.5 * (r + neck), end - 0.1 * h, l->label);
	/* the notes count a post from where they set its base */
	const double over = end + 0.4 * h - (section_base(x) + x->s->job->mount.height);

	if (!(x->post_least > 0) && over > 0)
		x->post_least = x->s->job->mount.height + over + POST_ABOVE;
}

void section_flashing(struct section *x)
{
	x->patched = x->bed;
	for (int i = 0; i < x->layers; i++) {
		const struct section_layer *l = &x->layer[i];

		if (section_is(l, "plate") || section_is(l, "deck-flashing"))
			draw_plate(x, l);
		else if (section_is(l, "patch") && !round_patch(l))
			draw_patch(x, l);
		else if (section_is(l, "felt-strip"))
			draw_felt(x, l);
	}
	for (int i = 0; x->what == SECTION_OF_FOOT && i < x->layers; i++)
		draw_standing(x, &x->layer[i]);
}
