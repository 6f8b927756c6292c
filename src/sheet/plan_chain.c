/* SPDX-License-Identifier: MIT */
/* What is clear between array and edges, for the reviewer: above the roof and at its right, with
   the whole length beyond. */
#include <math.h>

#include "drawing/dimension.h"
#include "sheet/plan.h"

#define RAFTER_NUMBERS (2.8 * MM) /* above the roof's edge, less an extension line's gap */

#define CLEAR_ABOVE (9 * MM) /* from the roof's edge to a line of clear distances */
#define CLEAR_RIGHT (7 * MM)
/* From the texts of a chain to the line of the whole length; at the right its text stands between.
 */
#define BEYOND_ALONG (1.8 * MM)
#define BEYOND_UP (4.5 * MM)

bool plan_has_rakes(const struct result *r)
{
	if (r->outline.n != 4)
		return false;
	for (int i = 0; i < 4; i++)
		if (fabs(r->outline.at[i].x) > 1e-4 &&
		    fabs(r->outline.at[i].x - r->plane_length) > 1e-4)
			return false;
	return true;
}

struct clear {
	double at[4];
	const char *text[3];
	struct chain chain;
};

/* Each distance that is one: an array on the edge has none there. */
static void set_clear(const struct plan *p, struct clear *c, const double at[4], int n)
{
	c->chain.n = 0;
	for (int i = 0; i < n; i++) {
		if (c->chain.n > 0 && at[i] - c->at[c->chain.n - 1] < 0.001)
			continue;
		if (c->chain.n > 0)
			c->text[c->chain.n - 1] = sheet_tape(p->s, at[i] - c->at[c->chain.n - 1]);
		c->at[c->chain.n++] = at[i];
	}
	c->chain.at = c->at;
	c->chain.text = c->text;
	c->chain.size = p->size;
}

/* A hip's edges are not where a rectangle would have them. */
static int clear_marks(const struct plan *p)
{
	return plan_has_rakes(p->s->r) ? 4 : 3;
}

static void clear_along(const struct plan *p, struct clear *c)
{
	const struct result *r = p->s->r;

	/* from above the rafters' numbers */
	c->chain = (struct chain){.zero = {0, r->plane_slope + RAFTER_NUMBERS / p->view.scale},
				  .away = CLEAR_ABOVE - RAFTER_NUMBERS};
	set_clear(p, c, (const double[]){0, r->array.x0, r->array.x1, r->plane_length},
		  clear_marks(p));
}

static void clear_up(const struct plan *p, struct clear *c)
{
	const struct result *r = p->s->r;

	c->chain = (struct chain){.zero = {r->plane_length, 0}, .up = true, .away = CLEAR_RIGHT};
	set_clear(p, c, (const double[]){0, r->array.y0, r->array.y1, r->plane_slope},
		  clear_marks(p));
}

/* The whole length beyond a chain of its parts; nothing where the chain has but one. */
static void set_whole(const struct plan *p, struct clear *c, const struct clear *parts,
		      double whole)
{
	const double room = dimension_chain_room(p->d, &parts->chain, p->view.scale);

	c->chain = parts->chain;
	set_clear(p, c, (const double[]){0, whole, 0, 0}, 2);
	c->chain.away += room + (c->chain.up ? BEYOND_UP : BEYOND_ALONG);
	if (!p->full || parts->chain.n < 3)
		c->chain.n = 0;
}

/* Both chains above the roof, or at its right. */
struct clear_pair {
	struct clear parts, whole;
};

static void clear_pair_along(const struct plan *p, struct clear_pair *c)
{
	clear_along(p, &c->parts);
	set_whole(p, &c->whole, &c->parts, p->s->r->plane_length);
}

static void clear_pair_up(const struct plan *p, struct clear_pair *c)
{
	clear_up(p, &c->parts);
	set_whole(p, &c->whole, &c->parts, p->s->r->plane_slope);
}

/* From the roof's edge, or from the rafters' numbers, to the last text. */
static double reach(const struct plan *p, const struct clear_pair *c)
{
	const struct chain *last = c->whole.chain.n > 0 ? &c->whole.chain : &c->parts.chain;

	return last->away + dimension_chain_room(p->d, last, p->view.scale);
}

void plan_clear_distances(const struct plan *p)
{
	struct clear_pair along, up;

	clear_pair_along(p, &along);
	clear_pair_up(p, &up);
	dimension_chain(p->d, &along.parts.chain);
	dimension_chain(p->d, &along.whole.chain);
	if (p->room.narrow)
		return;
	dimension_chain(p->d, &up.parts.chain);
	dimension_chain(p->d, &up.whole.chain);
}

void plan_clear_room(const struct plan *p, struct plan_room *room)
{
	struct clear_pair along, up;

	clear_pair_along(p, &along);
	clear_pair_up(p, &up);
	room->right = p->room.narrow ? 2 * MM : fmax(CLEAR_RIGHT + 2 * MM, reach(p, &up));
	room->above = RAFTER_NUMBERS + reach(p, &along);
}
