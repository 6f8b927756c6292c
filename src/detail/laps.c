/* SPDX-License-Identifier: MIT */
/* Below a section of thin pieces: the same laps, laid flat and several times as thick, with the way
   of the water over them. On a telephone the section alone cannot show what lies under what. */
#include <math.h>

#include "detail/scene.h"

#define THICK (2.0 * MM) /* of a piece on paper */
#define STAND (6 * MM)   /* of what comes through the plate */
#define ABOVE (0.9 * MM) /* the line of the water above what it runs on */

static const struct detail_layer *woven_plate(const struct scene *s)
{
	for (int i = 0; i < s->layers; i++)
		if (s->layer[i].woven && layer_is(&s->layer[i], "plate"))
			return &s->layer[i];
	return NULL;
}

double scene_laps_ratio(const struct scene *s)
{
	if (s->plan || s->along || s->wall || !(s->lap.E > 0) || !woven_plate(s))
		return 0;
	const double ratio = THICK * s->scale / s->lap.t;

	/* thick ones can be seen as they are; metal sheets lie in one layer */
	return ratio < 1.4 || s->lap.t < 1.5e-3 ? 0 : ratio;
}

/* Laid flat, at the section's scale along the slope or as much smaller as the paper asks. */
static struct scene flattened(const struct scene *s, double width)
{
	struct scene flat = *s;
	struct lap *p = &flat.lap;

	flat.theta = 0;
	flat.scale = fmax(s->scale, (s->u1 - s->u0) / width);
	flat.paper = flat.scale * MM;
	p->tip = p->tip / p->t * THICK * flat.scale;
	p->t = THICK * flat.scale;
	p->tilt = (p->t - (p->t - p->tip) * p->E / p->L) / p->E;
	p->base = 0;
	return flat;
}

double scene_laps_height(const struct scene *s, double width)
{
	if (!(scene_laps_ratio(s) > 0))
		return 0;
	const struct scene flat = flattened(s, width);

	return lap_top(&flat.lap, flat.lap.butt, flat.lap.butt) / flat.scale + STAND;
}

/* What the water runs on at u. */
static double wet(const struct lap *p, double down, double u)
{
	const double butt = p->butt + floor((u - p->butt) / p->E) * p->E;

	return u >= -down && u < p->butt ? lap_woven(p, u) : lap_top(p, butt, u);
}

static void arrow(struct scene *s, double u, double v)
{
	const double h = 1.0 * s->paper;

	drawing_shape(s->d, LAYER_THIN, 0, FILL_BLACK,
		      (const struct point[]){{u - 1.4 * h, v}, {u + h, v + h}, {u + h, v - h}}, 3);
}

#define WAY 160

static void water(struct scene *s, double down)
{
	struct point at[WAY + 1];

	for (int i = 0; i <= WAY; i++) {
		const double u = s->u1 - (s->u1 - s->u0) * i / WAY;

		at[i] = (struct point){u, wet(&s->lap, down, u) + ABOVE * s->scale};
	}
	drawing_path(s->d, LAYER_THIN, at, WAY + 1);
	arrow(s, at[WAY / 8].x, at[WAY / 8].y);
	arrow(s, at[WAY - WAY / 16].x, at[WAY - WAY / 16].y);
}

static double through(const struct scene *s)
{
	static const char *const kind[] = {"sleeve", "boss", "post"};

	for (int i = 0; i < 3; i++)
		if (scene_find(s, kind[i]))
			return scene_find(s, kind[i])->diameter / 2;
	return 0;
}

void scene_laps(const struct scene *s, double left, double low, double width)
{
	struct scene flat = flattened(s, width);
	const struct detail_layer *plate = woven_plate(s);
	const double r = through(s), k = 1 / flat.scale;

	drawing_view(
		s->d,
		(struct view){{left + (width - (s->u1 - s->u0) * k) / 2 - s->u0 * k, low}, k, 0});
	for (int i = 0; i < flat.layers; i++)
		if (flat.layer[i].exposure > 0 && flat.layer[i].length > 0 &&
		    !layer_is(&flat.layer[i], "felt-strip"))
			section_piece(&flat, &flat.layer[i]);
	for (int i = 0; i < flat.layers; i++)
		if (flat.layer[i].woven && layer_is(&flat.layer[i], "plate"))
			section_piece(&flat, &flat.layer[i]);
	water(&flat, plate->down);
	if (r > 0) /* the water parts round it */
		scene_box(&flat, FILL_WHITE, -r, lap_woven(&flat.lap, 0), r,
			  lap_woven(&flat.lap, 0) + STAND * flat.scale * 0.9);
	drawing_view(s->d, VIEW_PAPER);
}
