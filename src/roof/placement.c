/* SPDX-License-Identifier: MIT */
/* Walks along a rail line from its left end and sets each foot on the farthest rafter that the limit allows. The first foot
   is the farthest whose cantilever is allowed; the last bay is cut short where the right cantilever asks for it. */
#include "roof/placement.h"

#include <math.h>
#include <stdbool.h>

#include "quantity/quantity.h"

/* Index of the farthest rafter after `from` that a bay may reach, at least from + 1. */
static int farthest(const struct placement *p, int from, int last)
{
	int to = from + 1;

	for (int i = from + 2; i <= last && i - from <= p->bays; i++) {
		if (!at_most(p->rafter[i] - p->rafter[from], p->limit(p->context, p->rafter[from], p->rafter[i])))
			break;
		to = i;
	}
	return to;
}

static bool cantilever_allowed(const struct placement *p, double cantilever, double bay)
{
	return at_most(cantilever, fmin(p->max_cantilever, p->cantilever_share * bay));
}

/* The first foot: the farthest right whose overhang the bay that would follow it allows. */
static int first_foot(const struct placement *p, int low, int last)
{
	int first = low;

	for (int i = low; i < last; i++) {
		const double bay = p->rafter[farthest(p, i, last)] - p->rafter[i];

		if (cantilever_allowed(p, p->rafter[i] - p->x0, bay))
			first = i;
	}
	return first;
}

int placement_walk(const struct placement *p, int *chosen, int max)
{
	int low = 0, last = p->rafters - 1, count = 0;

	while (low < p->rafters && !at_least(p->rafter[low], p->x0))
		low++;
	while (last >= 0 && !at_most(p->rafter[last], p->x1))
		last--;
	if (low > last || max < 1)
		return 0;
	int at = first_foot(p, low, last);
	if (p->skip && at + 1 < last && at == low)
		at = low + 1;
	else if (p->skip && at > low)
		at--;
	chosen[count++] = at;
	while (at < last && count < max) {
		const double bay = count > 1 ? p->rafter[at] - p->rafter[chosen[count - 2]] : 0;

		if (count > 1 && cantilever_allowed(p, p->x1 - p->rafter[at], bay))
			break;
		at = farthest(p, at, last);
		chosen[count++] = at;
	}
	return count;
}
