/* SPDX-License-Identifier: MIT */
/* Mounts screwed to the deck alone: they stand where the crew's tape says, on rafters or between
   them. */
#include "check/place.h"

#include <math.h>

static int places(double length, double pitch)
{
	return (int)floor(length / pitch + 1e-9) + 1; /* 1e-9: the last place must not fall to a last bit */
}

double place_on_deck(struct context *c)
{
	struct result *r = c->r;
	const double length = r->array.x1 - r->array.x0;
	double pitch = c->job->mount.deck_pitch;

	r->rafters = 0;
	if (!(pitch > 0) || !(length > 0))
		return pitch;
	while (places(length, pitch) > RAFTER_MAX) /* a coarser tape on a very long array */
		pitch *= 2;
	for (int i = 0; i < places(length, pitch); i++)
		r->rafter_x[r->rafters++] = r->array.x0 + i * pitch;
	place_settle(r);
	return pitch;
}
