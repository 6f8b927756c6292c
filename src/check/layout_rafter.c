/* SPDX-License-Identifier: MIT */
/* A rafter is worked out for a few sets of loads; most others are then known to be within the limit,
   or beyond it, because they are less or more of everything. */
#include <math.h>
#include <string.h>

#include "check/layout_ask.h"
#include "check/rafter_check.h"

/* What the feet bring: in every combination a sum of these with factors that are not negative, where
   the weight that comes with the area, tipped as it is on a rack, is between nothing and twice the
   weight itself. */
static bool loads(const struct context *c, const struct attachment *a, double load[4])
{
	const double area = fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
	const double tipped = c->cos_theta + c->sin_theta * a->tip;

	load[0] = area;
	load[1] = area * a->p_up;
	load[2] = area * (a->p_up - 2 * c->r->dead.array_dry);
	load[3] = area * a->p_down;
	return tipped >= 0 && tipped <= 2;
}

static struct rafter_samples *samples_of(struct finder *f, int place)
{
	struct rafter_samples key = {.place = (unsigned char)(place + 1)};
	unsigned h = key.place;

	for (int i = 0; i < f->pass->attachments; i++) {
		key.line[i] = (unsigned char)(f->pass->attachment[i].line + 1);
		key.at[i] = (unsigned char)(f->pass->attachment[i].rafter + 1);
		h = (h * 131 + key.line[i]) * 137 + key.at[i];
	}
	const unsigned set = (h * 2654435761u >> 16) % SAMPLE_SETS;
	struct rafter_samples *s = &f->samples[set];

	if (!f->samples_used[set] || s->place != key.place || memcmp(s->line, key.line, sizeof key.line) != 0 ||
	    memcmp(s->at, key.at, sizeof key.at) != 0)
		*s = key;
	f->samples_used[set] = true;
	return s;
}

static bool all_at_most(const struct rafter_sample *a, const struct rafter_sample *b, int feet)
{
	for (int i = 0; i < feet; i++)
		for (int k = 0; k < 4; k++)
			if (!(a->load[i][k] <= b->load[i][k]))
				return false;
	return true;
}

/* In place of one that tells less: of two within the limit the lesser loads, of two beyond it the
   greater ones; else of the oldest. */
static void remember(struct rafter_samples *s, const struct rafter_sample *now, int feet, double limit)
{
	int at = s->next;

	for (int i = 0; i < SAMPLES; i++) {
		const struct rafter_sample *old = &s->sample[i];

		if (now->ratio <= limit ? old->ratio <= limit && all_at_most(old, now, feet)
					: old->ratio > limit && all_at_most(now, old, feet))
			at = i;
	}
	s->sample[at] = *now;
	if (at == s->next)
		s->next = (unsigned char)((s->next + 1) % SAMPLES);
}

double layout_rafter(struct finder *f, int place)
{
	struct rafter_sample now = {.ratio = 0};
	const int feet = f->pass->attachments;
	bool ordered = f->problem.rafters_add && feet > 0 && feet <= SAMPLE_FEET;
	double least = 0;

	f->worked_out = true;
	for (int i = 0; i < feet && ordered; i++)
		ordered = loads(f->c, &f->pass->attachment[i], now.load[i]);
	if (!ordered)
		return rafter_ratio(f->c, f->pass, place);
	struct rafter_samples *s = samples_of(f, place);

	f->worked_out = false;
	for (int i = 0; i < SAMPLES; i++) {
		const struct rafter_sample *known = &s->sample[i];

		if (!(known->ratio > 0))
			continue;
		if (known->ratio > least && all_at_most(known, &now, feet))
			least = known->ratio;
	}
	if (least > f->state.limit)
		return least;
	for (int i = 0; i < SAMPLES; i++)
		if (s->sample[i].ratio > 0 && s->sample[i].ratio <= f->state.limit &&
		    all_at_most(&now, &s->sample[i], feet))
			return least;
	f->worked_out = true;
	now.ratio = rafter_ratio(f->c, f->pass, place);
	remember(s, &now, feet, f->state.limit);
	return now.ratio;
}
