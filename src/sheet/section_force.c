/* SPDX-License-Identifier: MIT */
/* The largest forces that the check found in the front and in the rear feet of a tilted row. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/section_rack.h"

#define ARROW (9 * MM)
#define ARROW_NARROW (6 * MM)
#define OFF (4 * MM) /* from a leg to the arrows beside it */
#define OFF_NARROW (3 * MM)
#define SLIDE_OFF (2 * MM)
#define GAP (0.7 * MM) /* that an arrow leaves in a line it crosses */

/* The worst foot of a line in one direction. */
struct worst {
	double force;
	const struct attachment *a;
	const char *combination;
};

enum direction { LIFT, PRESS, SLIDE, DIRECTIONS };

static void keep(struct worst *w, const struct attachment *a, double value, const struct force *f)
{
	if (value > w->force)
		*w = (struct worst){value, a, f->combination};
}

static void worst_of(struct section *x, bool rear, struct worst w[DIRECTIONS])
{
	const struct sheet *s = x->s;

	for (int i = 0; s->r->passes > 0 && i < s->pass->attachments; i++) {
		const struct attachment *a = &s->pass->attachment[i];
		struct rack_row row = {0};
		double y = -HUGE_VAL;

		while (rack_next_row(s->r, y, &row) && !rack_in_row(&row, a->y))
			y = row.y0;
		if ((a->y > (row.y0 + row.y1) / 2) != rear)
			continue;
		keep(&w[LIFT], a, a->uplift.normal, &a->uplift);
		keep(&w[PRESS], a, a->down.normal, &a->down);
		keep(&w[SLIDE], a, fabs(a->slope.slope), &a->slope);
	}
}

/* Where the two feet are close on paper, what pushes between them has less room than what stands. */
static double arrow_length(const struct section *x, enum direction way)
{
	const double a = x->room.narrow ? ARROW_NARROW : ARROW;

	return x->room.narrow && way == SLIDE ? 0.75 * a : a;
}

/* From the middle of a leg to the arrows beside it, m on paper. */
static double off_leg(const struct section *x)
{
	return (x->room.narrow ? OFF_NARROW : OFF) + RACK_LEG_HALF / x->scale.ratio;
}

double rack_force_reach(const struct section *x)
{
	return off_leg(x) + SLIDE_OFF + arrow_length(x, SLIDE);
}

static void arrow(struct section *x, double u, double v, enum direction way, bool rear)
{
	static const struct point to[DIRECTIONS] = {{0, 1}, {0, -1}, {-1, 0}};
	const double ratio = x->scale.ratio, a = arrow_length(x, way) * ratio, h = 2.4 * MM * ratio,
		     w = 0.8 * MM * ratio;
	const struct point t = to[way];
	/* lifting starts at the foot, the others end there */
	const double from = way == LIFT ? 0 : -a, end = from + a;
	const struct point tip = {u + t.x * end, v + t.y * end},
			   tail = {u + t.x * from, v + t.y * from},
			   neck = {tip.x - t.x * h, tip.y - t.y * h};
	const struct point head[] = {
		tip, {neck.x - t.y * w, neck.y + t.x * w}, {neck.x + t.y * w, neck.y - t.x * w}};
	const double beside = (way == LIFT ? -1.2 : 1.2) * w;
	/* the brace rises beside the arrow that presses on the front foot: its letters stand above it;
	   on a telephone those of the rear foot stand above what pushes between the two */
	const bool high = x->room.narrow || (way == PRESS && !rear);
	const double level = x->room.narrow && way == PRESS ? a : high ? 0.9 * a : 0.7 * a;
	const struct point text = way == SLIDE ? (struct point){(tail.x + tip.x) / 2, v + w}
					       : (struct point){u + beside, v + level};
	static const char *const name[2][DIRECTIONS] = {{"F1", "F2", "F3"}, {"R1", "R2", "R3"}};

	if (way != SLIDE)
		drawing_shape(x->d, LAYER_TEXT, 0, FILL_WHITE,
			      (const struct point[]){{u - GAP * ratio, tail.y},
						     {u + GAP * ratio, tail.y},
						     {u + GAP * ratio, tip.y},
						     {u - GAP * ratio, tip.y}},
			      4);
	drawing_line_as(x->d, LAYER_TEXT, 0.5 * MM, DASH_SOLID, tail, neck);
	drawing_shape(x->d, LAYER_TEXT, 0, FILL_BLACK, head, 3);
	drawing_text(x->d, LAYER_TEXT, text,
		     (struct lettering_spec){DIMENSION_TEXT, true,
					     way == SLIDE  ? ANCHOR_CENTRE
					     : way == LIFT ? ANCHOR_RIGHT
							   : ANCHOR_LEFT,
					     way == SLIDE ? ANCHOR_BASE : ANCHOR_MIDDLE, 0, true},
		     name[rear][way]);
}

/* Beside the leg: lift at its left, pressure at its right, what pushes down the slope from there.
 */
void rack_forces(struct section *x, double u, bool rear)
{
	static const char *const letter[2][DIRECTIONS] = {{"F1", "F2", "F3"}, {"R1", "R2", "R3"}};
	static const char *const words[DIRECTIONS] = {"lift", "press on the roof",
						      "push along the roof"};
	const double off = off_leg(x) * x->scale.ratio;
	struct worst w[DIRECTIONS] = {{0, NULL, NULL}};

	worst_of(x, rear, w);
	for (int i = 0; i < DIRECTIONS; i++) {
		const double beside = i == LIFT ? -off : off;

		if (!w[i].a)
			continue;
		arrow(x, i == SLIDE ? u + off + SLIDE_OFF * x->scale.ratio : u + beside,
		      i == SLIDE ? 1.2 * MM * x->scale.ratio : 0.004, (enum direction)i, rear);
		section_key_text(x, letter[rear][i],
				 sheet_text(x->s, "%s feet %s: at most %s, attachment %d, %s",
					    rear ? "rear" : "front", words[i],
					    show_rounded(&x->s->f, w[i].force, UNIT_LB, SHOW_UP),
					    w[i].a->number, w[i].combination));
	}
}
