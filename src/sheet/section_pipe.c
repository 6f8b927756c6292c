/* SPDX-License-Identifier: MIT */
/* A pipe through the covering: plumb things stand plumb. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section.h"

#define BELOW_DECK 0.07 /* of pipe shown, m */
#define SLEEVE_BELOW 0.01
#define GRIP 0.02     /* of bare pipe that the cap is clamped on, m */
#define JACKET 0.045  /* of insulation shown above it, m */
#define BARE 0.035    /* of pipe shown above all that stands round it, m */
#define CAP_OVER 0.05 /* how far a cap comes down over its sleeve, m */

/* Heights along the plumb axis of what is drawn, from the deck's top. */
struct heights {
	double shoulder; /* of the sleeve or the boot: what the cap covers */
	double cap;      /* where the cap is clamped to the bare pipe */
	double jacket;   /* end of the insulation that is drawn; 0: none */
	double top;      /* end of the pipe that is drawn */
};

static bool insulated(const struct section *x)
{
	return !isnan(x->pipe->insulated_diameter) && section_find(x, "pipe-insulation");
}

/* Pipe and insulation go on to the collector: a little of them is enough. */
static struct heights heights_of(const struct section *x)
{
	static const char *const closed[] = {"boss", "boot", "sleeve"};
	const struct section_layer *cap = section_find(x, "cap");
	struct heights h = {.shoulder = 0};

	for (int i = 0; i < 3; i++) {
		const struct section_layer *l = section_find(x, closed[i]);

		if (l)
			h.shoulder = fmax(h.shoulder, section_size(l, "height", 0.08));
	}
	h.shoulder = fmax(h.shoulder, section_top(x, 0) + 0.02);
	h.cap = h.shoulder;
	if (cap) {
		const double high = section_size(cap, "height", 0.08);

		h.cap = h.shoulder + high - fmin(CAP_OVER, 0.6 * high);
	}
	h.jacket = insulated(x) ? h.cap + GRIP + JACKET : 0;
	h.top = fmax(h.cap + GRIP, h.jacket) + BARE;
	return h;
}

void section_pipe_extent(struct section *x)
{
	const double height = heights_of(x).top, down = x->deck + BELOW_DECK + 0.02;

	section_reach(x, sin(x->theta) * height, cos(x->theta) * height);
	section_reach(x, -sin(x->theta) * down, -cos(x->theta) * down);
}

/* At a height along the plumb axis, `across` to its upper side. */
static struct point along(const struct section *x, double height, double across)
{
	const double c = cos(x->theta), s = sin(x->theta);

	return (struct point){s * height + c * across, c * height - s * across};
}

/* Where that side meets the plane at v. */
static struct point on_plane(const struct section *x, double v, double across)
{
	return along(x, (v + across * sin(x->theta)) / cos(x->theta), across);
}

static void name_at(struct section *x, double height, double across, const char *words)
{
	const struct point at = along(x, height, across);

	section_name(x, at.x, at.y, words);
}

static void shaft(struct section *x, enum fill fill, double r, double bottom, double top)
{
	const struct point at[] = {along(x, bottom, -r), along(x, bottom, r), along(x, top, r),
				   along(x, top, -r)};

	section_area(x, fill, at, 4);
}

static const char *pipe_words(const struct section *x)
{
	const struct job_pipe *p = x->pipe;
	const struct format *f = &x->s->f;
	const char *heat = isnan(p->temperature) ? ""
						 : sheet_text(x->s, ", up to %s",
							      show(f, p->temperature, UNIT_DEG_F));

	const char *many = p->count > 1 ? sheet_text(x->s, ", %d alike", p->count) : "";

	return sheet_text(x->s, "pipe %s outside%s%s", sheet_size(x->s, p->diameter), heat, many);
}

/* Radius of what a boot closes round: the sleeve, or the pipe itself. */
static double inside_boot(const struct section *x)
{
	const struct section_layer *l = section_find(x, "sleeve");

	if (!l)
		l = section_find(x, "pipe");
	return l ? section_size(l, "diameter", 0.05) / 2 : 0.03;
}

/* A tube of membrane on a skirt, or foam run up: round what it flashes, on both sides of it. */
static void tube(struct section *x, const struct section_layer *l, double wide, double narrow)
{
	const double h = section_size(l, "height", 0.1), v = x->patched, band = 0.012;
	const struct point at[] = {on_plane(x, v, -wide), on_plane(x, v, wide), along(x, h, narrow),
				   along(x, h, -narrow)};

	section_area(x, FILL_LIGHT, at, 4);
	if (section_is(l, "boot"))
		shaft(x, FILL_WHITE, narrow + band / 4, h - 2 * band, h - band);
	name_at(x, 0.6 * h + 0.4 * v, 0.4 * wide + 0.6 * narrow, l->label);
}

static void skirt(struct section *x, const struct section_layer *l, double down, double up)
{
	const double t = fmax(section_size(l, "thickness", 0.003), 0.3 * MM * x->scale.ratio);

	section_block(x, FILL_GREY, -down, x->patched, up, x->patched + t);
}

/* Its base lies on the roof, as far as it reaches up and down the slope (one that is turned, by its
   corners); its cone stands on the base and follows what is plumb. */
static void boot(struct section *x, const struct section_layer *l)
{
	const double n = inside_boot(x), h = section_size(l, "height", 0.08),
		     top = section_top(x, 0), across = section_size(l, "diameter", 0),
		     corner = l->turned ? sqrt(2) : 1, r = n + 0.02;

	if (across > 0) {
		skirt(x, l, across / 2 + 0.05, across / 2 + 0.05);
		tube(x, l, across / 2, across / 2);
		return;
	}
	const double down = corner * section_size(l, "down", r + 0.05),
		     up = corner * section_size(l, "up", r + 0.05);
	const double high = fmax(top + h, top + r * tan(x->theta) + 0.04);
	const struct point at[] = {on_plane(x, top, -fmin(r, down)), on_plane(x, top, fmin(r, up)),
				   along(x, high, n), along(x, high, -n)};

	skirt(x, l, down, up);
	section_area(x, FILL_LIGHT, at, 4);
	section_name(x, 0.9 * up, top, l->label);
}

/* One that stands in its hole goes down through the deck; any other ends on its flange. */
static void sleeve(struct section *x, const struct section_layer *l)
{
	const double r = section_size(l, "diameter", 0.05) / 2, h = section_size(l, "height", 0.2),
		     v = section_size(l, "gap", 0) > 0 ? -x->deck - SLEEVE_BELOW
						       : section_top(x, 0);
	const struct point at[] = {on_plane(x, v, -r), on_plane(x, v, r), along(x, h, r),
				   along(x, h, -r)};

	section_area(x, FILL_WHITE, at, 4);
	name_at(x, 0.7 * h, r, l->label);
}

static void boss(struct section *x, const struct section_layer *l)
{
	const double r = section_size(l, "diameter", 0.05) / 2, h = section_size(l, "height", 0.08),
		     v = section_top(x, 0);
	const struct point at[] = {on_plane(x, v, -r), on_plane(x, v, r), along(x, h, 0.8 * r),
				   along(x, h, -0.8 * r)};

	section_area(x, FILL_LIGHT, at, 4);
	name_at(x, (v + h) / 2, 0.85 * r, l->label);
}

#define CONE 0.35 /* of a cap's height, from its shoulder up */

/* A skirt over the sleeve and a cone up to the bare pipe that it is clamped on. */
static void cap(struct section *x, const struct section_layer *l, const struct heights *k)
{
	const struct section_layer *pipe = section_find(x, "pipe");
	const double r = section_size(l, "diameter", 0.12) / 2, h = section_size(l, "height", 0.08),
		     neck = pipe ? section_size(pipe, "diameter", 0.02) / 2 : 0.3 * r,
		     shoulder = k->cap - CONE * h;
	const struct point at[] = {along(x, k->cap - h, -r), along(x, k->cap - h, r),
				   along(x, shoulder, r),    along(x, k->cap, neck),
				   along(x, k->cap, -neck),  along(x, shoulder, -r)};

	section_area(x, FILL_LIGHT, at, 6);
	name_at(x, k->cap - 0.6 * h, r, l->label);
}

/* Parted where the cap grips the bare pipe; above it in its jacket. */
static void insulation(struct section *x, const struct section_layer *l, const struct heights *k)
{
	const double r = section_size(l, "diameter", 0.05) / 2, low = -x->deck - BELOW_DECK / 2;

	const struct section_layer *over = section_find(x, "cap");

	if (over) {
		/* wider than the cone, it ends within the skirt */
		shaft(x, FILL_GREY, r, low,
		      k->cap - fmax(GRIP / 2, CONE * section_size(over, "height", 0.08)));
		shaft(x, FILL_GREY, r, k->cap + GRIP, k->jacket);
	} else {
		shaft(x, FILL_GREY, r, low, k->jacket);
	}
	name_at(x, k->jacket - JACKET / 2, r, l->label);
}

/* What a sleeve is seen to stand in. */
static void round_the_sleeve(struct section *x)
{
	for (int i = 0; i < x->layers; i++) {
		const struct section_layer *l = &x->layer[i];
		const double r = section_size(l, "diameter", 0) / 2;

		if (section_is(l, "boot"))
			boot(x, l);
		else if (section_is(l, "patch") && r > 0)
			tube(x, l, 1.6 * r, inside_boot(x) + 0.008);
	}
}

static void put_in_pipe(struct section *x, const struct section_layer *l, const struct heights *k)
{
	if (section_is(l, "sleeve")) {
		sleeve(x, l);
	} else if (section_is(l, "boss")) {
		boss(x, l);
	} else if (section_is(l, "cap")) {
		cap(x, l, k);
	} else if (section_is(l, "pipe-insulation")) {
		if (insulated(x)) /* else the library's usual pipe is hot, this one is bare */
			insulation(x, l, k);
	} else if (section_is(l, "pipe")) {
		shaft(x, FILL_WHITE, section_size(l, "diameter", 0.02) / 2, -x->deck - BELOW_DECK,
		      k->top);
		name_at(x, k->top - BARE / 3, 0, pipe_words(x));
	}
}

/* Half the width of the hole that a sleeve stands in, square to it; NAN where it stands on its
   flange above the pipe's own hole. */
static double sleeve_hole(const struct section *x)
{
	const struct section_layer *l = section_find(x, "sleeve");
	const double gap = l ? section_size(l, "gap", 0) : 0;

	return gap > 0 ? section_size(l, "diameter", 0.05) / 2 + gap : (double)NAN;
}

/* Corners of the hole at the deck's lower face and at the covering's top. The pipe's own is sawn
   square through the deck, a sleeve's follows the sleeve. */
static void hole_of(const struct section *x, struct point low[2], struct point high[2])
{
	const struct guide_sizes sizes = section_sizes(x);
	const double slot = isnan(sizes.deck_slot) ? sizes.pipe_ellipse : sizes.deck_slot;
	const double half = isnan(slot) ? 0.04 : slot / 2, plumb = sleeve_hole(x);

	for (int i = 0; i < 2; i++) {
		const double side = i ? 1 : -1;

		low[i] = isnan(plumb) ? (struct point){side * half, -x->deck}
				      : on_plane(x, -x->deck, side * plumb);
		high[i] = isnan(plumb) ? (struct point){side * half, section_top(x, side * half)}
				       : on_plane(x, section_top(x, side * plumb), side * plumb);
	}
}

void section_pipe_hole(struct section *x)
{
	struct point low[2], high[2];

	hole_of(x, low, high);
	drawing_shape(x->d, LAYER_MATERIAL, 0, FILL_WHITE,
		      (const struct point[]){low[0], low[1], high[1], high[0]}, 4);
	for (int i = 0; i < 2; i++) {
		const double k = x->deck / (high[i].y + x->deck);

		if (x->deck > 0)
			drawing_line(x->d, LAYER_MATERIAL, low[i],
				     (struct point){low[i].x + k * (high[i].x - low[i].x), 0});
	}
}

void section_pipe(struct section *x)
{
	const struct heights k = heights_of(x);
	struct point low[2], high[2];

	round_the_sleeve(x);
	for (int i = 0; i < x->layers; i++)
		put_in_pipe(x, &x->layer[i], &k);
	hole_of(x, low, high);
	/* to the nearest 1/16 in, in millimetres too, as the flashing seen from above tells it */
	const double part = M_PER_IN / 16, hole = round((low[1].x - low[0].x) / part) * part;

	dimension_between(x->d, low[0], low[1], -(BELOW_DECK + 0.02) / x->scale.ratio,
			  sheet_text(x->s, "hole %s", sheet_size(x->s, hole)));
}
