/* SPDX-License-Identifier: MIT */
/* Most feet stand on rafters. Clamps stand on seams, and a foot may stand on a block between two
   rafters: then block or deck, as a beam on the two, hands each its part of the force (statics; our
   rule for a deck, which is stiffer than that). */
#include "check/place.h"

#include <math.h>

/* Nearer to a rafter's centre line than this a foot stands on it. */
#define ON_RAFTER (M_PER_IN / 1000)

void place_frames(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	struct result *r = c->r;

	r->frames = 0;
	if (f->measured > 0) {
		for (int i = 0; i < f->measured; i++)
			r->frame_x[r->frames++] = f->at[i];
		return;
	}
	while (r->frames < RAFTER_MAX && f->spacing > 0) {
		const double x = f->first + r->frames * f->spacing;

		if (!at_most(x, r->plane_length))
			break;
		r->frame_x[r->frames++] = x;
	}
}

void place_on_frames(struct context *c)
{
	struct result *r = c->r;

	for (r->rafters = 0; r->rafters < r->frames; r->rafters++)
		r->rafter_x[r->rafters] = r->frame_x[r->rafters];
	place_settle(r);
}

void place_with_blocks(struct context *c)
{
	struct result *r = c->r;

	place_on_frames(c);
	if (r->frames < 2 || 2 * r->frames - 1 > RAFTER_MAX)
		return;
	r->rafters = 0;
	for (int i = 0; i < r->frames; i++) {
		r->rafter_x[r->rafters++] = r->frame_x[i];
		if (i + 1 < r->frames)
			r->rafter_x[r->rafters++] = (r->frame_x[i] + r->frame_x[i + 1]) / 2;
	}
	place_settle(r);
	r->blocks = true;
}

void place_settle(struct result *r)
{
	int k = 0;

	r->blocks = false;
	for (int i = 0; i < r->rafters; i++) {
		const double x = r->rafter_x[i];

		while (k + 1 < r->frames && r->frame_x[k + 1] <= x + ON_RAFTER)
			k++;
		r->place[i] = (struct stand){r->frames > 0 ? k : -1, 0};
		if (k + 1 < r->frames && x > r->frame_x[k] + ON_RAFTER)
			r->place[i].right =
				(x - r->frame_x[k]) / (r->frame_x[k + 1] - r->frame_x[k]);
	}
}

double place_share(const struct result *r, int place, int frame)
{
	const struct stand *p = &r->place[place];

	if (p->frame < 0)
		return 0;
	if (frame == p->frame)
		return 1 - p->right;
	return frame == p->frame + 1 ? p->right : 0;
}

bool place_on_block(const struct result *r, int place)
{
	return r->blocks && r->place[place].right > 0;
}

int place_number(const struct result *r, int place)
{
	return r->blocks ? r->place[place].frame + 1 : place + 1;
}
