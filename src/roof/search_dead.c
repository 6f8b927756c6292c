/* SPDX-License-Identifier: MIT */
/* Remembers from which states of the lines nothing can be found. Of two states whose last feet are
   the same, the one whose feet before them are nearer is no worse off where longer bays never help:
   if that one is dead, the other is. */
#include "roof/search.h"

#include <string.h>

#define BEGUN 0x80u /* set in a line's byte: it has a foot; the spots themselves are below */
#define DEAD_FEW 256
#define ENDED 0xFFu
#define TOP_BITS UINT64_C(0x8080808080808080)

bool search_key(const struct search_state *s, int remaining, struct search_key *key)
{
	if (s->fronts > SEARCH_DEAD_LINES)
		return false;
	uint64_t feet = 0; /* two bits a line: whether it has those that it must have */

	*key = (struct search_key){.last = 0};
	for (int i = 0; i < s->p->lines; i++) {
		const struct search_front *f = &s->front[i];
		uint64_t last = ENDED, before = 0;

		if (s->p->line[i].copies >= 0)
			continue;
		if (f->position != SEARCH_RAFTER_MAX) {
			last = (uint64_t)f->last | (f->feet > 0 ? BEGUN : 0);
			before = f->feet > 0 ? s->chain[s->spot_at[i] + f->feet - 2] : 0;
		}
		feet = feet << 2 | (uint64_t)(f->feet < s->p->line[i].least ? f->feet : 0);
		key->last = key->last << 8 | last;
		key->before = key->before << 8 | before;
	}
	key->stamp = (s->round * (2 * SEARCH_FEET_MAX) + (uint64_t)remaining) << 16 | feet;
	return true;
}

void search_begin(struct search_state *s)
{
	s->round = 0;
	s->hint.feet = 0;
	s->alone = s->stands = false;
	s->dead_wide = false;
	memset(s->dead, 0, DEAD_FEW * sizeof *s->dead);
}

/* Short searches stay in a small part of the store, which the processor has at hand. */
static unsigned slot(const struct search_state *s, const struct search_key *key)
{
	/* an odd multiplier spreads the bits upwards */
	const uint64_t h = (key->last ^ key->stamp << 9) * UINT64_C(0x9E3779B97F4A7C15);

	return (unsigned)(h >> 40) % (s->buried < DEAD_FEW / 2 ? DEAD_FEW : SEARCH_DEAD_MAX);
}

/* No foot before the last of `a` is nearer to it than in `b`. */
static bool no_better(const struct search_state *s, const struct search_key *a,
		      const struct search_key *b)
{
	if (a->stamp != b->stamp || a->last != b->last)
		return false;
	if (!s->p->grows)
		return a->before == b->before;
	return (((b->before | TOP_BITS) - a->before) & TOP_BITS) == TOP_BITS;
}

bool search_is_dead(const struct search_state *s, const struct search_key *key)
{
	const unsigned i = slot(s, key);

	return no_better(s, key, &s->dead[i]) || no_better(s, key, &s->dead[i ^ 1]);
}

void search_bury(struct search_state *s, const struct search_key *key)
{
	const unsigned i = slot(s, key);

	if (++s->buried == DEAD_FEW / 2 && !s->dead_wide) {
		memset(s->dead + DEAD_FEW, 0, sizeof s->dead - DEAD_FEW * sizeof *s->dead);
		s->dead_wide = true;
	}
	if (!no_better(s, &s->dead[i], key))
		s->dead[i ^ 1] = s->dead[i];
	s->dead[i] = *key;
}
