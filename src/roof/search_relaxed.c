/* SPDX-License-Identifier: MIT */
/* All lines laid together from left to right, rafter by rafter. On each rafter every line that
   stands there decides how far its next foot is; so what meets on a rafter is known at once, and
   what follows depends only on the last two feet of each line: a state from which there is no way
   on is remembered. Rails count by single feet only (search_single), rafters by what meets on them
   at plain shares: both are bounds, and with that a number of feet is ruled out for good, or a
   layout found that has to prove itself. */
#include "roof/search.h"

#include <math.h>

#define ROUNDING 1e-9 /* as in search_bound.c */
#define WORK_MEET 10

/* How far the lines have come. */
struct turn {
	int rafter;    /* being decided on */
	int met;       /* first of the lines in s->met that stand on it */
	int remaining; /* feet still to be set */
	int need;      /* of them that the lines need at the least */
	int room;      /* places that are left */
	bool any;      /* number of feet will do: `remaining` is only a cap */
};

static bool go(struct search_state *s, struct turn t);

static double limit_of(const struct search_state *s)
{
	return s->limit * (1 + ROUNDING);
}

/* Rafters of the neighbours of the foot that the line has just set its next one after. */
static struct search_foot foot_of(const struct search_state *s, int line)
{
	const struct search_line *l = &s->p->line[line];
	const struct search_front *f = &s->front[line];
	const unsigned char *chain = &s->chain[s->spot_at[line]];
	const bool ended = f->position == SEARCH_RAFTER_MAX;
	const int before = f->feet - (ended ? 2 : 3);

	return (struct search_foot){line, before >= 0 ? l->place[chain[before]] : -1,
				    ended ? -1 : l->place[f->last]};
}

/* May the line stand on this rafter beside those that have decided to? */
static bool meet(struct search_state *s, const struct turn *t, int line)
{
	const struct search_problem *p = s->p;
	struct search_foot foot[SEARCH_LINE_MAX];
	int n = 0;

	if (s->mets - t->met < 2)
		return true;
	for (int i = t->met; i < s->mets; i++) {
		const int other = s->met[i];
		const struct search_foot f = foot_of(s, other);

		if (p->line[line].apart == other || p->line[other].apart == line)
			return false;
		for (int k = other; k < p->lines && n < SEARCH_LINE_MAX; k++)
			if (k == other || p->line[k].copies == other)
				foot[n++] = (struct search_foot){k, f.a, f.c};
	}
	if (!p->rafters_add || !p->meet)
		return true;
	s->left -= WORK_MEET;
	return p->meet(p->context, t->rafter, foot, n) <= limit_of(s);
}

/* The line has decided: goes on if what stands on the rafter may. */
static bool decided(struct search_state *s, struct turn t, int line)
{
	s->met[s->mets++] = (unsigned char)line;
	const bool found = meet(s, &t, line) && go(s, t);

	s->mets--;
	return found;
}

static bool affordable(const struct turn *t)
{
	return t->need <= t->remaining && (t->remaining <= t->room || t->any);
}

/* The next foot on spot d, after the one on spot b. */
static bool next_at(struct search_state *s, struct turn t, int line, int b, int d)
{
	const struct search_line *l = &s->p->line[line];
	struct search_front *f = &s->front[line];
	const struct search_front kept = *f;
	const int n = s->repeats[line];
	int more = s->table[s->table_at[line] + b * l->places + d];

	s->left--;
	if (more == SEARCH_NEVER)
		return false;
	more = more < l->least - f->feet - 1 ? l->least - f->feet - 1 : more;
	t.need += more * n - f->need;
	t.remaining -= n;
	t.room -= (d - b) * n;
	if (!affordable(&t))
		return false;
	s->chain[s->spot_at[line] + f->feet++] = (unsigned char)d;
	f->last = d;
	f->position = l->place[d];
	f->need = more * n;
	const bool found = decided(s, t, line);

	if (!found)
		*f = kept;
	return found;
}

static bool end_here(struct search_state *s, struct turn t, int line)
{
	struct search_front *f = &s->front[line];
	const struct search_front kept = *f;

	t.need -= f->need;
	t.room -= (s->p->line[line].places - 1 - f->last) * s->repeats[line];
	if (!affordable(&t))
		return false;
	f->need = 0;
	f->position = SEARCH_RAFTER_MAX;
	const bool found = decided(s, t, line);

	if (!found)
		*f = kept;
	return found;
}

/* Far feet first. a: spot of the foot before, -1: none. */
static bool from_here(struct search_state *s, struct turn t, int line, int a, int b)
{
	const struct search_problem *p = s->p;
	const struct search_line *l = &p->line[line];
	const int far = a < 0 ? s->first_far[s->spot_at[line] + b]
			      : s->far[s->table_at[line] + a * l->places + b];

	if (far >= SEARCH_ENDS && s->front[line].feet >= l->least && end_here(s, t, line))
		return true;
	for (int d = far % SEARCH_ENDS; d > b && s->left > 0; d--) {
		if (!p->grows && search_single(p, line, a < 0 ? -1 : l->place[a], l->place[b],
					       l->place[d]) > limit_of(s))
			continue;
		if (next_at(s, t, line, b, d))
			return true;
	}
	return false;
}

/* The line has no foot yet: its first one here, or further on. */
static bool begin(struct search_state *s, struct turn t, int line)
{
	const struct search_line *l = &s->p->line[line];
	struct search_front *f = &s->front[line];
	const int here = f->last, n = s->repeats[line];
	const struct search_front kept = *f;

	f->feet = 1;
	f->need -= n;
	s->chain[s->spot_at[line]] = (unsigned char)here;
	struct turn on = t;

	on.need -= n;
	on.remaining -= n;
	on.room -= n;
	if (from_here(s, on, line, -1, here))
		return true;
	*f = kept;
	int later = here + 1 < l->places ? s->start[s->spot_at[line] + here + 1] : SEARCH_NEVER;

	if (later == SEARCH_NEVER)
		return false;
	later = later < l->least ? l->least : later;
	t.need += later * n - f->need;
	t.room -= n;
	if (!affordable(&t))
		return false;
	f->need = later * n;
	f->last++;
	f->position = l->place[f->last];
	const bool found = go(s, t);

	if (!found)
		*f = kept;
	return found;
}

static bool decide(struct search_state *s, struct turn t, int line)
{
	const struct search_front *f = &s->front[line];

	if (f->feet == 0)
		return begin(s, t, line);
	return from_here(s, t, line, s->chain[s->spot_at[line] + f->feet - 2], f->last);
}

/* The line furthest behind decides; of equals the first. */
static bool go(struct search_state *s, struct turn t)
{
	struct search_key key;
	bool keyed = false;
	int line = -1, at = SEARCH_RAFTER_MAX;

	for (int i = 0; i < s->p->lines; i++)
		if (s->front[i].position < at) {
			at = s->front[i].position;
			line = i;
		}
	if (line < 0)
		return t.remaining == 0 || t.any;
	if (s->left <= 0)
		return false;
	if (at != t.rafter) {
		t.rafter = at;
		t.met = s->mets;
		keyed = search_key(s, t.any ? 0 : t.remaining, &key);
		if (keyed && search_is_dead(s, &key))
			return false;
	}
	const bool found = decide(s, t, line);

	if (!found && keyed && s->left > 0)
		search_bury(s, &key);
	return found;
}

/* Feet of the lines one after the other; the spots too. */
static void gather(struct search_state *s)
{
	const struct search_problem *p = s->p;

	s->layout.feet = 0;
	for (int i = 0; i < p->lines; i++) {
		const int from = p->line[i].copies < 0 ? i : p->line[i].copies;

		s->layout.count[i] = (unsigned char)s->front[from].feet;
		for (int k = 0; k < s->front[from].feet; k++)
			s->layout.rafter[s->layout.feet++] =
				p->line[from].place[s->chain[s->spot_at[from] + k]];
	}
}

/* Without the line that is left out; -1: none is. */
static bool lay(struct search_state *s, int feet, int left_out)
{
	const struct search_problem *p = s->p;
	struct turn t = {.rafter = -1, .remaining = feet, .need = s->rest[0], .room = s->room[0]};

	if (feet == SEARCH_ANY) {
		t.any = true;
		t.remaining = s->room[0];
	}
	s->round++;
	s->buried = 0;
	s->mets = s->fronts = 0;
	for (int i = 0; i < p->lines; i++) {
		const bool leads = p->line[i].copies < 0 && i != left_out;

		s->front[i] = (struct search_front){
			.position = leads ? p->line[i].place[0] : SEARCH_RAFTER_MAX,
			.need = leads ? s->least[i] : 0};
		s->fronts += p->line[i].copies < 0;
	}
	return affordable(&t) && go(s, t);
}

/* Lines that have no room without one of the others have none with it; three are soon done with. */
static bool part_fails(struct search_state *s)
{
	int leads = 0;

	for (int i = 0; i < s->p->lines; i++)
		leads += s->p->line[i].copies < 0;
	for (int i = 0; i < s->p->lines && (leads == 3 || leads == 4); i++)
		if (s->p->line[i].copies < 0 && !lay(s, SEARCH_ANY, i) && s->left > 0)
			return true;
	return false;
}

bool search_relaxed(struct search_state *s, int feet)
{
	if (feet == SEARCH_ANY && part_fails(s))
		return false;
	if (!lay(s, feet, -1))
		return false;
	gather(s);
	return true;
}
