/* SPDX-License-Identifier: MIT */
/* A pipe through the covering: plumb things stand plumb. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section.h"

#define BELOW_DECK 0.10 /* of pipe shown, m */

void section_pipe_extent(struct section *x)
{
	double height = 0.25;

	for (int i = 0; i < x->layers; i++)
		height = fmax(height, section_size(&x->layer[i], "height", 0));
	const double down = x->deck + BELOW_DECK + 0.03;

	section_reach(x, sin(x->theta) * height, cos(x->theta) * height);
	section_reach(x, -sin(x->theta) * down, -cos(x->theta) * down);
}

/* Along the axis of a thing (plumb, or square to the roof) and across it. */
static struct point along(const struct section *x, bool plumb, double a, double across)
{
	const double c = plumb ? cos(x->theta) : 1, s = plumb ? sin(x->theta) : 0;

	return (struct point){s * a + c * across, c * a - s * across};
}

static void shaft(struct section *x, const struct section_layer *l, enum fill fill, double r,
		  double bottom, double top)
{
	const struct point at[] = {along(x, l->plumb, bottom, -r), along(x, l->plumb, bottom, r),
				   along(x, l->plumb, top, r), along(x, l->plumb, top, -r)};

	section_area(x, fill, at, 4);
	const struct point name = along(x, l->plumb, bottom < 0 ? 0.92 * top : 0.6 * top, 0.9 * r);

	section_name(x, name.x, name.y, l->label);
}

static void cone(struct section *x, const struct section_layer *l, double r, double narrow,
		 double bottom, double top)
{
	const struct point at[] = {along(x, l->plumb, bottom, -r), along(x, l->plumb, bottom, r),
				   along(x, l->plumb, top, narrow),
				   along(x, l->plumb, top, -narrow)};

	section_area(x, FILL_WHITE, at, 4);
	const struct point name = along(x, l->plumb, (bottom + top) / 2, 0.85 * (r + narrow) / 2);

	section_name(x, name.x, name.y, l->label);
}

/* The hole through deck and covering, drawn white. */
static void hole(struct section *x, double half)
{
	const double top = section_top(x, 0);

	section_block(x, FILL_WHITE, -half, -x->deck, half, top);
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

/* Its base lies on the roof, as far as it reaches up and down the slope (one that is turned, by its
   corners); its cone follows the plumb pipe. */
static void boot(struct section *x, const struct section_layer *l)
{
	const double n = inside_boot(x), h = section_size(l, "height", 0.08),
		     t = fmax(section_size(l, "thickness", 0.003), 0.3 * MM * x->scale.ratio),
		     r = fmax(section_size(l, "diameter", 0) / 2, n + 0.02),
		     corner = l->turned ? sqrt(2) : 1, top = section_top(x, 0);
	const double down = corner * section_size(l, "down", r),
		     up = corner * section_size(l, "up", r);
	const struct point high[] = {along(x, true, h, n), along(x, true, h, -n)};
	const struct point at[] = {{-fmin(r, down), top}, {fmin(r, up), top}, high[0], high[1]};

	section_block(x, FILL_GREY, -down, top, up, top + t);
	section_area(x, FILL_WHITE, at, 4);
	section_name(x, 0.9 * up, top + t, l->label);
}

/* A pipe runs plumb in its sleeve, whatever the library's drawing of a usual one shows. */
static void put_in_pipe(struct section *x, const struct section_layer *drawn, double *shoulder)
{
	struct section_layer here = *drawn;
	const struct section_layer *const l = &here;

	here.plumb = here.plumb || section_is(drawn, "sleeve") || section_is(drawn, "pipe") ||
		     section_is(drawn, "pipe-insulation") || section_is(drawn, "cap");
	const double r = section_size(l, "diameter", 0.05) / 2, h = section_size(l, "height", 0.2);

	if (section_is(l, "sleeve")) {
		shaft(x, l, FILL_WHITE, r, 0, h);
		*shoulder = h;
	} else if (section_is(l, "boot")) {
		boot(x, l);
		*shoulder = fmax(*shoulder, h);
	} else if (section_is(l, "boss")) {
		cone(x, l, r, 0.8 * r, 0, h);
		*shoulder = h;
	} else if (section_is(l, "cap")) {
		cone(x, l, r, 0.35 * r, *shoulder - h / 3, *shoulder + h * 2 / 3);
	} else if (section_is(l, "pipe-insulation")) {
		if (isnan(x->pipe->insulated_diameter))
			return; /* the library's usual pipe is hot, this one is bare */
		shaft(x, l, FILL_GREY, r, -x->deck - BELOW_DECK / 2, h);
	} else if (section_is(l, "pipe")) {
		struct section_layer named = *l;

		named.label[0] = '\0';
		shaft(x, &named, FILL_WHITE, r, -x->deck - BELOW_DECK, h);
		const struct point name = along(x, l->plumb, 0.97 * h, 0);

		section_name(x, name.x, name.y, pipe_words(x));
	}
}

void section_pipe(struct section *x)
{
	const struct guide_sizes sizes = section_sizes(x);
	const double slot = isnan(sizes.deck_slot) ? sizes.pipe_ellipse : sizes.deck_slot;
	const double half = isnan(slot) ? 0.04 : slot / 2;
	double shoulder = 0.1;

	hole(x, half);
	for (int i = 0; i < x->layers; i++)
		put_in_pipe(x, &x->layer[i], &shoulder);
	dimension_between(x->d, (struct point){-half, -x->deck}, (struct point){half, -x->deck},
			  -(BELOW_DECK + 0.03) / x->scale.ratio,
			  sheet_text(x->s, "hole %s", sheet_size(x->s, 2 * half)));
}
