/* SPDX-License-Identifier: MIT */
/* How many feet the rest of a line needs at the least, after any two of its feet, by what single feet
   can carry. */
#include "roof/search.h"

#include <math.h>
#include <string.h>

#define NEVER SEARCH_NEVER
/* Bounds and the last word are computed in different ways; a branch is dropped only beyond their
 * rounding. */
#define ROUNDING 1e-9

/* Longest bay and end that some way of standing within the limit has, m. */
struct reach {
	double bay, end;
};

static void stretch(double *longest, double length)
{
	*longest = fmax(*longest, length);
}

/* What the tables of one line are filled from, for one foot c. */
struct filler {
	const struct search_problem *p;
	struct search_state *s;
	const struct search_line *l;
	int line, c;
	double limit;
	int bay; /* last spot within the bay after c */
	/* fewest feet after c if the next one is on this spot or before it; itself counted */
	unsigned char fewest[SEARCH_RAFTER_MAX];
};

static bool stands(const struct filler *f, int b, int d)
{
	const struct search_line *l = f->l;

	return search_single(f->p, f->line, b < 0 ? -1 : l->place[b], l->place[f->c],
			     d < 0 ? -1 : l->place[d]) <= f->limit;
}

/* The farthest next foot of c, whose neighbour on the left is on spot b, from spot d back; c if
   none. */
static int farthest(const struct filler *f, int b, int d)
{
	while (d > f->c && !stands(f, b, d))
		d--;
	return d;
}

/* Fewest feet after c. Where a longer bay may be better than a shorter one, every next foot is
   asked for. */
static int after(const struct filler *f, int b, int far)
{
	const unsigned char *table = &f->s->table[f->s->table_at[f->line]];
	int least = NEVER;

	if (f->p->grows)
		return far > f->c ? f->fewest[far] : NEVER;
	for (int d = f->c + 1; d <= far; d++)
		if (table[f->c * f->l->places + d] + 1 < least && stands(f, b, d))
			least = table[f->c * f->l->places + d] + 1;
	return least;
}

static void begin_at(struct filler *f)
{
	const unsigned char *table = &f->s->table[f->s->table_at[f->line]];
	int least = NEVER;

	f->bay = f->c;
	for (int d = f->c + 1; d < f->l->places; d++) {
		const int more = table[f->c * f->l->places + d];

		if (!search_fits(f->p->x[f->l->place[d]] - f->p->x[f->l->place[f->c]], f->l->bay))
			break;
		least = more + 1 < least ? more + 1 : least;
		f->fewest[d] = (unsigned char)least;
		f->bay = d;
	}
}

/* Every foot before c, from the nearest to the farthest: where longer bays are never better, what
   c can reach shrinks as its neighbour goes away. */
static void before_each(struct filler *f, struct reach *longest)
{
	struct search_state *s = f->s;
	const struct search_line *l = f->l;
	const double *x = f->p->x, end = l->x1 - x[l->place[f->c]];
	int far = f->bay;
	bool ends = true;

	for (int b = f->c - 1; b >= 0; b--) {
		const double bay = x[l->place[f->c]] - x[l->place[b]];
		const int at = s->table_at[f->line] + b * l->places + f->c;

		if (!search_fits(bay, l->bay))
			break;
		ends = (ends || !f->p->grows) && stands(f, b, -1);
		far = f->p->grows ? farthest(f, b, far) : f->bay;
		const int more = ends ? 0 : after(f, b, far);

		s->table[at] = (unsigned char)more;
		s->far[at] = (unsigned char)((far > f->c ? far : 0) + (ends ? SEARCH_ENDS : 0));
		if (more != NEVER)
			stretch(&longest->bay, bay);
		if (ends)
			stretch(&longest->end, end);
		if (!ends && far == f->c && f->p->grows)
			break;
	}
}

/* The foot c as the first of its line. */
static void as_first(struct filler *f, struct reach *longest)
{
	const int far = farthest(f, -1, f->bay), more = after(f, -1, far);
	const int at = f->s->spot_at[f->line] + f->c;
	const int later = f->c + 1 < f->l->places ? f->s->start[at + 1] : NEVER;

	f->s->first_far[at] = (unsigned char)(far > f->c ? far : 0);
	f->s->first[at] = (unsigned char)(more == NEVER ? NEVER : more + 1);
	f->s->start[at] = f->s->first[at] < later ? f->s->first[at] : (unsigned char)later;
	if (more != NEVER)
		stretch(&longest->end, f->p->x[f->l->place[f->c]] - f->l->x0);
}

static int least_of_line(const struct search_problem *p, struct search_state *s, int line,
			 double limit)
{
	struct filler f = {.p = p, .s = s, .l = &p->line[line], .line = line, .limit = limit};
	struct reach longest = {0, 0};
	const size_t size = (size_t)f.l->places * (size_t)f.l->places;

	if (f.l->places < 2)
		return NEVER;
	memset(&s->table[s->table_at[line]], NEVER, size);
	memset(&s->far[s->table_at[line]], 0, size);
	for (f.c = f.l->places - 1; f.c >= 0; f.c--) {
		begin_at(&f);
		before_each(&f, &longest);
		as_first(&f, &longest);
	}
	/* by the dominant diagonal of the three-moment equations M <= l2/8 + M/2 inside, and e2/2
	 * at the ends */
	s->moment[line] = fmax(longest.bay * longest.bay / 4, longest.end * longest.end / 2);
	return s->start[s->spot_at[line]];
}

/* Places of the tables, and which lines go together. */
static bool arrange(const struct search_problem *p, struct search_state *s)
{
	int at = 0, spots = 0;

	s->p = p;
	for (int i = 0; i < p->lines; i++) {
		s->repeats[i] = p->line[i].copies < 0;
		for (int k = i + 1; k < p->lines; k++)
			s->repeats[i] += p->line[k].copies == i;
		s->table_at[i] = at;
		s->spot_at[i] = spots;
		if (p->line[i].copies >= 0)
			continue;
		at += p->line[i].places * p->line[i].places;
		spots += p->line[i].places;
		if (at > SEARCH_TABLE_MAX || spots > SEARCH_SPOT_MAX)
			return false;
	}
	return true;
}

int search_least(const struct search_problem *p, double limit, struct search_state *s)
{
	if (p->lines > SEARCH_LINE_MAX || !arrange(p, s))
		return SEARCH_NO_ROOM;
	s->rest[p->lines] = s->room[p->lines] = 0;
	for (int i = p->lines - 1; i >= 0; i--) {
		int least =
			p->line[i].copies < 0 ? least_of_line(p, s, i, limit * (1 + ROUNDING)) : 0;

		if (p->line[i].copies < 0 && least < p->line[i].least)
			least = p->line[i].least;
		if (least == NEVER)
			return SEARCH_FEET_MAX + 1;
		s->least[i] = least * s->repeats[i];
		s->rest[i] = s->rest[i + 1] + s->least[i];
		s->room[i] = s->room[i + 1] + p->line[i].places * s->repeats[i];
	}
	return s->rest[0] > SEARCH_FEET_MAX ? SEARCH_FEET_MAX + 1 : s->rest[0];
}
