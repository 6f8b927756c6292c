/* SPDX-License-Identifier: MIT */
/* Fewest feet on one line by dynamic programming over its rafters: the best way to reach each rafter is the best over the
   rafters that a bay may start from. Cost: number of feet, then the sum of squared bays, which is least where they
   are even. */
#include "roof/placement.h"

#include <math.h>
#include <stdbool.h>

#include "quantity/quantity.h"

/* Best way to have a foot on this rafter and at least one before it. */
struct way {
	int feet;        /* 0: none */
	double uneven;
	int from;        /* rafter before */
	bool from_start; /* and that one is the first */
};

static void improve(struct way *kept, struct way w)
{
	if (kept->feet == 0 || w.feet < kept->feet || (w.feet == kept->feet && w.uneven < kept->uneven))
		*kept = w;
}

static bool bay_allowed(const struct placement *p, int from, int to)
{
	const double bay = p->rafter[to] - p->rafter[from];

	if (to == from + 1)
		return true;
	return to - from <= p->bays && at_most(bay, p->limit(p->context, p->rafter[from], p->rafter[to]));
}

/* A start must leave no more than the left cantilever, or be the first rafter there is. */
static bool starts_at(const struct placement *p, int i, int low)
{
	return i == low + p->skip || (i > low + p->skip && at_most(p->rafter[i] - p->x0, p->left));
}

static bool ends_at(const struct placement *p, int i, int last)
{
	return i == last || at_most(p->x1 - p->rafter[i], p->right);
}

static int trace_back(const struct way *way, int end, int *chosen, int max)
{
	int count = 0;

	for (int i = end; count + 1 < max; i = way[i].from) {
		chosen[count++] = i;
		if (way[i].from_start) {
			chosen[count++] = way[i].from;
			break;
		}
	}
	for (int i = 0; i < count / 2; i++) {
		const int swap = chosen[i];

		chosen[i] = chosen[count - 1 - i];
		chosen[count - 1 - i] = swap;
	}
	return count;
}

/* Every way to put a foot on rafter i with its neighbour on the left on rafter j. */
static void reach(const struct placement *p, struct way *way, int j, int i, int low)
{
	const double bay = p->rafter[i] - p->rafter[j];

	if (!bay_allowed(p, j, i))
		return;
	if (starts_at(p, j, low))
		improve(&way[i], (struct way){ 2, bay * bay, j, true });
	if (way[j].feet > 0)
		improve(&way[i], (struct way){ way[j].feet + 1, way[j].uneven + bay * bay, j, false });
}

int placement_find(const struct placement *given, int *chosen, int max)
{
	struct way way[PLACEMENT_RAFTER_MAX] = { { 0 } };
	struct placement p = *given;
	int low = 0, last = p.rafters - 1, end = -1;

	while (low < p.rafters && !at_least(p.rafter[low], p.x0))
		low++;
	while (last >= 0 && !at_most(p.rafter[last], p.x1))
		last--;
	if (low > last || max < 1 || p.rafters > PLACEMENT_RAFTER_MAX)
		return 0;
	if (low == last) {
		chosen[0] = low;
		return 1;
	}
	if (low + p.skip >= last)
		p.skip = 0;
	for (int i = low + 1; i <= last; i++) {
		for (int j = low; j < i; j++)
			reach(&p, way, j, i, low);
		if (way[i].feet == 0 || !ends_at(&p, i, last))
			continue;
		if (end < 0 || way[i].feet < way[end].feet ||
		    (way[i].feet == way[end].feet && way[i].uneven < way[end].uneven))
			end = i;
	}
	return end < 0 ? 0 : trace_back(way, end, chosen, max);
}
