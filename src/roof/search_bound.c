/* SPDX-License-Identifier: MIT */
/* What lets the search drop a branch: single feet, the least number of feet still needed, and the
   moments of a rail that is known only up to a foot. */
#include "roof/search.h"

#include <math.h>
#include <string.h>

#include "quantity/quantity.h"

#define NEVER SEARCH_NEVER
/* Bounds and the last word are computed in different ways; a branch is dropped only beyond their
 * rounding. */
#define ROUNDING 1e-9

double search_carried(const struct search_problem *p, int line, int a, int b, int c)
{
	const struct search_line *l = &p->line[line];

	return (c < 0 ? l->x1 : (p->x[b] + p->x[c]) / 2) -
	       (a < 0 ? l->x0 : (p->x[a] + p->x[b]) / 2);
}

/* Ratio of the rafter under all the lines that stand on it together. */
static double together(const struct search_problem *p, int line, int a, int b, int c)
{
	struct search_foot foot[SEARCH_LINE_MAX];
	int n = 0;

	for (int i = line; i < p->lines && n < SEARCH_LINE_MAX; i++)
		if (i == line || p->line[i].copies == line)
			foot[n++] = (struct search_foot){i, a, c};
	return p->meet(p->context, b, foot, n);
}

/* The worst over the lines that stand on the same rafters. */
static struct search_cost cost_of(const struct search_problem *p, int line, int a, int b, int c)
{
	struct search_cost worst = p->cost(p->context, line, a, b, c);
	bool copied = false;

	for (int i = line + 1; i < p->lines; i++) {
		if (p->line[i].copies != line)
			continue;
		const struct search_cost k = p->cost(p->context, i, a, b, c);

		copied = true;
		worst.width = fmax(worst.width, k.width);
		worst.moment = fmax(worst.moment, k.moment);
		worst.alone = fmax(worst.alone, k.alone);
	}
	if (copied && p->meet && p->rafters_add)
		worst.alone = fmax(worst.alone, together(p, line, a, b, c));
	return worst;
}

/* Bay or end on one side of a foot: the least moment that it puts into the rail under a load of one
   per metre. A bay of length l has l2/8 between its middle and the mean of its ends, so that one of
   the three is at least l2/16. Negative: too long. */
static double side(const struct search_line *l, double length, bool end)
{
	if (!at_most(length, end ? l->cantilever : l->bay))
		return -1;
	return end ? length * length / 2 : length * length / 16;
}

double search_single(const struct search_problem *p, int line, int a, int b, int c)
{
	const struct search_line *l = &p->line[line];
	const double left = p->x[b] - (a < 0 ? l->x0 : p->x[a]),
		     right = (c < 0 ? l->x1 : p->x[c]) - p->x[b];
	const double m_left = side(l, left, a < 0), m_right = side(l, right, c < 0);

	if (m_left < 0 || m_right < 0)
		return HUGE_VAL;
	const struct search_cost k = cost_of(p, line, a, b, c);
	double ratio = fmax(k.width * search_carried(p, line, a, b, c), k.alone);

	ratio = fmax(ratio, k.moment * fmax(m_left, m_right));
	if (isfinite(l->cantilever) && l->cantilever > 0)
		ratio = fmax(ratio, fmax(a < 0 ? left : 0, c < 0 ? right : 0) / l->cantilever);
	return ratio;
}

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

		if (!at_most(f->p->x[f->l->place[d]] - f->p->x[f->l->place[f->c]], f->l->bay))
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

		if (!at_most(bay, l->bay))
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

static double x_at(const struct search_state *s, int i)
{
	return s->p->x[s->layout.rafter[i]];
}

/* Three-moment equation at foot i, which has a foot on either side, for a load of one per metre. */
static void eliminate(struct search_state *s, int i)
{
	const double l = x_at(s, i) - x_at(s, i - 1), r = x_at(s, i + 1) - x_at(s, i);
	const double pivot = 2 * (l + r) + l * s->carry[i - 1];

	s->fixed[i] = (-(l * l * l + r * r * r) / 4 - l * s->fixed[i - 1]) / pivot;
	s->carry[i] = -r / pivot;
}

/* Support reaction of foot i for moments at it and its neighbours. */
static double reaction(const struct search_state *s, int line, int first, int i, double before,
		       double at, double after)
{
	const double r = x_at(s, i + 1) - x_at(s, i);

	if (i == first)
		return x_at(s, i) - s->p->line[line].x0 + r / 2 + (after - at) / r;
	const double l = x_at(s, i) - x_at(s, i - 1);

	return (l + r) / 2 + (before - at) / l + (after - at) / r;
}

double search_prefix(struct search_state *s, int line, int first, int m)
{
	const struct search_problem *p = s->p;
	double ratio = 0, least[2] = {HUGE_VAL, HUGE_VAL}, moment = 0;

	if (m == first) {
		const double end = x_at(s, m) - p->line[line].x0;

		s->fixed[m] = -end * end / 2;
		s->carry[m] = 0;
		return 0;
	}
	if (m - 1 > first)
		eliminate(s, m - 1);
	const double bound = s->moment[line];
	double low = 0, high = 0;

	for (int sign = -1; sign <= 1; sign += 2) {
		const double M = sign * bound, M1 = s->fixed[m - 1] + s->carry[m - 1] * M;
		const double M2 = m - 2 >= first ? s->fixed[m - 2] + s->carry[m - 2] * M1 : 0;
		const double M3 = m - 3 >= first ? s->fixed[m - 3] + s->carry[m - 3] * M2 : 0;

		least[0] = fmin(least[0], reaction(s, line, first, m - 1, M2, M1, M));
		if (m - 2 >= first)
			least[1] = fmin(least[1], reaction(s, line, first, m - 2, M3, M2, M1));
		low = sign < 0 ? M1 : low;
		high = sign > 0 ? M1 : high;
	}
	if ((low > 0) == (high > 0))
		moment = fmin(fabs(low), fabs(high));
	for (int i = m - 1; i >= first && i >= m - 2; i--) {
		const struct search_cost k =
			cost_of(p, line, i > first ? s->layout.rafter[i - 1] : -1,
				s->layout.rafter[i], s->layout.rafter[i + 1]);

		ratio = fmax(ratio, fmax(k.width * least[m - 1 - i], k.moment * moment));
	}
	return ratio;
}
