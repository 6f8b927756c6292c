/* SPDX-License-Identifier: MIT */
/* Scale bar and north of a plan. */
#include <math.h>

#include "sheet/plan.h"

#define LINE (3.8 * MM) /* from a line of text to the next */

/* Four steps of a round length, black and white. */
static double scale_bar(const struct plan *p, struct point at, double width)
{
	static const double us[] = {0.5, 1, 2, 4, 5, 10, 20},
			    si[] = {0.1, 0.25, 0.5, 1, 2.5, 5, 10};
	const bool metric = p->s->f.units == SYSTEM_SI;
	const double unit = metric ? 1 : M_PER_FT, room = width - 26 * MM;
	const struct lettering_spec spec = {p->size, false, ANCHOR_CENTRE, ANCHOR_TOP, 0, false};
	double step = (metric ? si : us)[0];
	char buf[32];

	for (int i = 0; i < 7; i++)
		if ((metric ? si : us)[i] * unit * 4 * p->view.scale <= room)
			step = (metric ? si : us)[i];
	const double wide = step * unit * p->view.scale, h = 0.8 * MM;

	for (int i = 0; i <= 4; i++) {
		const double x = at.x + 2 * MM + i * wide;

		if (i < 4)
			drawing_rectangle(p->d, LAYER_TEXT, i % 2 ? FILL_WHITE : FILL_BLACK, x,
					  at.y - h, x + wide, at.y + h);
		if (i % 2 == 0)
			drawing_text(p->d, LAYER_TEXT, (struct point){x, at.y - 2 * MM}, spec,
				     sheet_text(p->s, "%s%s",
						number_print(buf, sizeof buf, i * step,
							     fmod(i * step, 1) > 0 ? 1 : 0),
						i == 4 ? (metric ? " m" : " ft") : ""));
	}
	return at.y - 2.2 * LINE;
}

/* Up on the drawing is up the slope, against the way the plane faces: north is turned from it by
   half a turn more than the plane's own bearing, anticlockwise. */
static void north(const struct plan *p, struct point at)
{
	const double turn = p->s->job->building.facing - 180 * RAD_PER_DEG, length = 5 * MM;
	const struct point u = {-sin(turn), cos(turn)};
	const struct point tip = {at.x + length * u.x, at.y + length * u.y},
			   tail = {at.x - length * u.x, at.y - length * u.y};
	const struct point head[] = {
		tip,
		{tip.x - 3 * MM * u.x - 1.1 * MM * u.y, tip.y - 3 * MM * u.y + 1.1 * MM * u.x},
		{tip.x - 3 * MM * u.x + 1.1 * MM * u.y, tip.y - 3 * MM * u.y - 1.1 * MM * u.x}};
	const struct lettering_spec spec = {p->size, true, ANCHOR_CENTRE, ANCHOR_MIDDLE, 0, false};

	drawing_line_as(p->d, LAYER_TEXT, 0.35 * MM, DASH_SOLID, tail, tip);
	drawing_shape(p->d, LAYER_TEXT, 0, FILL_BLACK, head, 3);
	drawing_text(p->d, LAYER_TEXT, (struct point){tip.x + 2 * MM * u.x, tip.y + 2 * MM * u.y},
		     spec, "N");
}

/* The needle turns about its middle, with its letter: so far from it. */
#define NEEDLE (9 * MM)

double plan_scale_and_north(const struct plan *p, struct point upper_left, double width)
{
	const bool known = !isnan(p->s->job->building.facing);
	const double middle = upper_left.y - (known ? NEEDLE - 0.8 * LINE : 0),
		     low = scale_bar(p, (struct point){upper_left.x, middle}, width);

	if (!known)
		return low;
	north(p, (struct point){upper_left.x + width - NEEDLE, middle});
	return fmin(low, middle - NEEDLE - 0.5 * LINE);
}
