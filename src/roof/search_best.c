/* SPDX-License-Identifier: MIT */
/* The best layout with a number of feet: where its ratio must lie, from below by what single feet and
   full rafters tell and from above by layouts that are found on the way and made better foot by
   foot; then everything between. */
#include "roof/search.h"

#include <math.h>
#include <string.h>

#define ROUNDING 1e-9 /* as in search_bound.c */
#define LOWER (1 - 3 * ROUNDING) /* as in search.c */
/* Where the lowest ratio is looked for: so near, in so many steps. */
#define NEAR 0.01
#define HALVINGS 7
/* Steps that are tried before a search is gone about limit by limit. */
#define AT_ONCE 10000

/* What the feet of a layout carry, squared and added up. */
static double uneven_of(const struct search_problem *p, const struct search_layout *l)
{
	double uneven = 0;

	for (int i = 0, at = 0; i < p->lines; at += l->count[i], i++)
		for (int k = 0; k < l->count[i]; k++) {
			const double w = search_carried(
				p, i, k > 0 ? l->rafter[at + k - 1] : -1, l->rafter[at + k],
				k + 1 < l->count[i] ? l->rafter[at + k + 1] : -1);

			uneven += w * w;
		}
	return uneven;
}

/* The layout line by line and rafter by rafter, cheaper than as a whole: no more than what that says. */
static double in_parts(struct search_state *s)
{
	const struct search_problem *p = s->p;
	const struct search_layout *l = &s->layout;
	double ratio = p->floor;

	for (int i = 0, at = 0; i < p->lines; at += l->count[i], i++) {
		s->left -= WORK_WHOLE;
		ratio = fmax(ratio, p->whole(p->context, i, &l->rafter[at], l->count[i],
					     &s->width[at]));
	}
	for (int i = 0; i < l->feet && p->rafters_add && ratio <= s->limit; i++) {
		s->left -= WORK_RAFTER;
		ratio = fmax(ratio,
			     p->rafter(p->context, l->rafter[i], l, p->lines, s->width));
	}
	return ratio;
}

static bool same_layout(const struct search_problem *p, const struct search_layout *a,
			const struct search_layout *b)
{
	return a->feet == b->feet && memcmp(a->count, b->count, (size_t)p->lines) == 0 &&
	       memcmp(a->rafter, b->rafter, (size_t)a->feet) == 0;
}

/* Rates the state's layout as a whole; kept if it is within `most` and the best so far. `at_least`:
   a ratio that it is known not to get below. */
static void offer(struct search_state *s, double at_least, double most)
{
	const struct search_problem *p = s->p;
	struct search_answer *best = &s->best;

	if (!p->any && at_least > (best->found ? best->ratio : most) * (1 + ROUNDING))
		return;
	if (best->found && same_layout(p, &best->layout, &s->layout))
		return;
	s->left -= WORK_ACCEPT;
	const double ratio = p->accept(p->context, &s->layout);

	if (ratio > most || (best->found && ratio >= best->ratio))
		return;
	best->found = true;
	best->ratio = ratio;
	best->layout = s->layout;
	best->uneven = uneven_of(p, &s->layout);
}

static bool is_place(const struct search_line *l, int rafter)
{
	for (int i = 0; i < l->places; i++)
		if (l->place[i] == rafter)
			return true;
	return false;
}

/* The foot moved to a neighbouring rafter, if that is a place of the line and free; else false. */
static bool shift(struct search_state *s, int line, int foot, int first, int by)
{
	unsigned char *rafter = s->layout.rafter;
	const int to = rafter[foot] + by, end = first + s->layout.count[line];

	if (!is_place(&s->p->line[line], to) || (foot > first && rafter[foot - 1] >= to) ||
	    (foot + 1 < end && rafter[foot + 1] <= to))
		return false;
	rafter[foot] = (unsigned char)to;
	return true;
}

/* Moves one foot at a time as long as that helps. Not where lines depend on each other's places.
   Returns a ratio that the layout does not get below. */
static double polish(struct search_state *s)
{
	const struct search_problem *p = s->p;
	bool better = true;

	s->limit = HUGE_VAL;
	double ratio = in_parts(s);

	for (int i = 0; i < p->lines; i++)
		if (p->line[i].copies >= 0 || p->line[i].apart >= 0)
			return ratio;
	while (better && s->left > 0) {
		better = false;
		for (int i = 0, at = 0; i < p->lines; at += s->layout.count[i], i++)
			for (int k = 0; k < 2 * s->layout.count[i] && s->left > 0; k++) {
				const struct search_layout kept = s->layout;

				if (!shift(s, i, at + k / 2, at, k % 2 ? 1 : -1))
					continue;
				s->limit = ratio;
				const double now = in_parts(s);

				if (now < ratio * LOWER) {
					ratio = now;
					better = true;
				} else {
					s->layout = kept;
				}
			}
	}
	return ratio;
}

/* The layout without its foot k, which is on this line. */
static void drop(struct search_layout *l, int line, int k)
{
	memmove(&l->rafter[k], &l->rafter[k + 1], (size_t)(l->feet - k - 1));
	l->feet--;
	l->count[line]--;
}

/* From a layout with one foot more, the best that is left without one of them, made better. */
static void thin_out(struct search_state *s, double most)
{
	struct search_layout best = {.feet = 0};
	double ratio = HUGE_VAL;

	for (int i = 0; i < s->p->lines; i++)
		if (s->p->line[i].copies >= 0 || s->p->line[i].apart >= 0)
			return;
	for (int i = 0, at = 0; i < s->p->lines; at += s->hint.count[i], i++)
		for (int k = at; k < at + s->hint.count[i] && s->hint.count[i] > 2; k++) {
			s->layout = s->hint;
			drop(&s->layout, i, k);
			s->limit = HUGE_VAL;
			const double now = in_parts(s);

			if (now < ratio) {
				ratio = now;
				best = s->layout;
			}
		}
	if (best.feet == 0)
		return;
	s->layout = best;
	offer(s, polish(s), most);
}

/* Is there a layout within this limit as far as single feet and those that meet tell? */
static bool possible(struct search_state *s, double limit, double most)
{
	const struct search_answer *best = &s->best;

	s->limit = limit;
	const int least = search_least(s->p, limit, s);

	if (least < 0 || least > s->wanted || !search_relaxed(s, s->wanted))
		return false;
	s->limit = best->found ? best->ratio : most;
	offer(s, s->p->any ? 0 : in_parts(s), most);
	return true;
}

/* Below s->best.bound nothing can be: narrows that down. False if nothing can be at all. */
static bool narrow_down(struct search_state *s, double most)
{
	double *low = &s->best.bound, high = fmin(most, 1);

	while (!possible(s, high, most)) {
		if (s->left <= 0)
			return false;
		*low = fmax(*low, high);
		if (high >= most)
			return false;
		high = fmin(most, high * 1.5);
	}
	if (!s->p->any && (!s->best.found || s->best.ratio > high)) {
		offer(s, polish(s), most);
		if (s->hint.feet == s->wanted + 1)
			thin_out(s, most);
	}
	if (s->best.found)
		high = fmin(high, s->best.ratio);
	for (int i = 0; i < HALVINGS && high > *low * (1 + NEAR) && s->left > 0; i++) {
		const double middle = (*low + high) / 2;

		if (possible(s, middle, most))
			high = middle;
		else if (s->left > 0)
			*low = middle;
	}
	return true;
}

/* Everything within the limit, if that takes no more than a few steps; else false. */
static bool at_once(struct search_state *s, double limit)
{
	const long left = s->left, share = left / 8 < AT_ONCE ? left / 8 : AT_ONCE;

	s->left = share;
	search_within(s, limit, false);
	const bool done = s->left > 0;

	s->left += left - share;
	return done;
}

/* The best is not far above the bound, and little is to be looked at below a narrow limit. */
static void search_up(struct search_state *s, double limit)
{
	const struct search_answer *best = &s->best;

	if (at_once(s, best->found ? best->ratio * LOWER : limit))
		return;
	for (double step = NEAR; s->left > 0; step *= 2) {
		const double most = best->found ? best->ratio * LOWER : limit;
		const double at = fmin(most, best->bound + step * fmax(best->bound, NEAR));

		search_within(s, at, false);
		if (at >= most || (best->found && best->ratio <= at))
			break;
		if (s->left > 0)
			s->best.bound = at;
	}
}

void search_best(const struct search_problem *p, int feet, double limit, long *work,
		 struct search_state *s)
{
	struct search_answer *best = &s->best;

	*best = (struct search_answer){.complete = true, .bound = p->floor};
	s->wanted = feet;
	s->left = *work;
	s->evening = false;
	const bool room = search_least(p, 0, s) != SEARCH_NO_ROOM;

	if (room && feet <= SEARCH_FEET_MAX && narrow_down(s, limit) && !(best->found && p->any)) {
		search_up(s, limit);
		if (best->found && p->even && s->left > 0)
			search_within(s, best->ratio, true);
	}
	best->complete = s->left > 0 && room;
	*work = s->left > 0 ? s->left : 0;
}

int search_fewest(const struct search_problem *p, double limit, long *work, struct search_state *s)
{
	const int least = search_least(p, limit, s);
	int n = least;

	s->limit = limit;
	s->left = *work;
	while (n >= 0 && n <= SEARCH_FEET_MAX && s->left > 0 && !search_relaxed(s, n)) {
		if (s->left <= 0)
			break;
		n++;
		if (n == least + 1 && !search_relaxed(s, SEARCH_ANY) && s->left > 0)
			n = SEARCH_FEET_MAX + 1;
	}
	*work = s->left > 0 ? s->left : 0;
	return n;
}
