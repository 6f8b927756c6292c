/* SPDX-License-Identifier: MIT */
/* Pieces that lap: each lies with its head on what carries it and rests on the piece below. Pieces
   of even thickness t that show E touch over their whole length when they fall by t in E; a tapered
   piece touches the one below at its butt only. */
#include <math.h>

#include "detail/scene.h"

static bool is_lapped(const struct detail_layer *l)
{
	return (layer_is(l, "course") || layer_is(l, "tile") || layer_is(l, "panel")) &&
	       l->exposure > 0.0 && l->length > l->exposure;
}

void lap_set(struct scene *s)
{
	s->lap.E = 0;
	for (int i = 0; i < s->layers; i++) {
		const struct detail_layer *l = &s->layer[i];
		struct lap *p = &s->lap;

		if (!is_lapped(l))
			continue;
		*p = (struct lap){l->exposure, l->length, l->thickness, l->thickness, l->butt_up,
				  0,           0};
		/* wood pieces run out thin: thicker than 5/16 in and laid three deep */
		if (layer_is(l, "course") && l->thickness > 0.3 * M_PER_IN &&
		    l->length > 2.1 * l->exposure && scene_find(s, "spaced-board"))
			p->tip = 0.1 * p->t;
		p->tilt = (p->t - (p->t - p->tip) * p->E / p->L) / p->E;
		p->base = known(l->base, (double)NAN);
		return;
	}
}

double lap_under(const struct lap *p, double butt, double u)
{
	return p->base + fmax(0.0, p->tilt * (butt + p->L - u));
}

double lap_top(const struct lap *p, double butt, double u)
{
	const double share = fmin(1.0, fmax(0.0, (u - butt) / p->L));

	return lap_under(p, butt, u) + p->t - (p->t - p->tip) * share;
}

double lap_woven(const struct lap *p, double u)
{
	double butt = p->butt - p->E;

	while (u < butt - 1e-9)
		butt -= p->E;
	return u <= butt + p->L ? lap_top(p, butt, u) : p->base;
}

double scene_surface(const struct scene *s)
{
	return s->lap.E > 0 ? lap_woven(&s->lap, 0) : s->cursor;
}
