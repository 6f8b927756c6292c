/* SPDX-License-Identifier: MIT */
/* What lets the search drop a branch: single feet, the least number of feet still needed, and the
   moments of a rail that is known only up to a foot. */
#include "roof/search.h"

#include <math.h>

#include "quantity/quantity.h"

#define NEVER 255
/* Bounds and the last word are computed in different ways; a branch is dropped only beyond their
 * rounding. */
#define ROUNDING 1e-9

double search_carried(const struct search_problem *p, int line, int a, int b, int c)
{
	const struct search_line *l = &p->line[line];

	return (c < 0 ? l->x1 : (p->x[b] + p->x[c]) / 2) -
	       (a < 0 ? l->x0 : (p->x[a] + p->x[b]) / 2);
}

/* The worst over the lines that stand on the same rafters. */
static struct search_cost cost_of(const struct search_problem *p, int line, int a, int b, int c)
{
	struct search_cost worst = p->cost(p->context, line, a, b, c);

	for (int i = line + 1; i < p->lines; i++) {
		if (p->line[i].copies != line)
			continue;
		const struct search_cost k = p->cost(p->context, i, a, b, c);

		worst.width = fmax(worst.width, k.width);
		worst.moment = fmax(worst.moment, k.moment);
		worst.alone = fmax(worst.alone, k.alone);
	}
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

/* Least number of feet after the one at spot c, whose neighbour on the left is at spot b. */
static unsigned char further(const struct search_problem *p, const struct search_state *s, int line,
			     double limit, int b, int c)
{
	const struct search_line *l = &p->line[line];
	const unsigned char *table = &s->table[s->table_at[line]];
	int least = NEVER;

	if (!at_most(p->x[l->place[c]] - p->x[l->place[b]], l->bay))
		return NEVER;
	if (search_single(p, line, l->place[b], l->place[c], -1) <= limit)
		return 0;
	for (int d = c + 1; d < l->places; d++) {
		if (!at_most(p->x[l->place[d]] - p->x[l->place[c]], l->bay))
			break;
		if (table[c * l->places + d] + 1 >= least)
			continue;
		if (search_single(p, line, l->place[b], l->place[c], l->place[d]) <= limit)
			least = table[c * l->places + d] + 1;
		else if (p->grows)
			break;
	}
	return (unsigned char)least;
}

/* Longest bay and end that some way of standing within the limit has, m. */
struct reach {
	double bay, end;
};

static void stretch(double *longest, double length)
{
	*longest = fmax(*longest, length);
}

static int least_of_line(const struct search_problem *p, struct search_state *s, int line,
			 double limit)
{
	const struct search_line *l = &p->line[line];
	unsigned char *table = &s->table[s->table_at[line]];
	struct reach longest = {0, 0};
	int least = NEVER;

	for (int c = l->places - 1; c > 0; c--)
		for (int b = c - 1; b >= 0; b--) {
			const unsigned char more = further(p, s, line, limit, b, c);

			table[b * l->places + c] = more;
			if (more != NEVER)
				stretch(&longest.bay, p->x[l->place[c]] - p->x[l->place[b]]);
			if (more == 0)
				stretch(&longest.end, l->x1 - p->x[l->place[c]]);
		}
	for (int b = 0; b < l->places; b++)
		for (int c = b + 1; c < l->places; c++) {
			const int more = table[b * l->places + c];

			if (more == NEVER ||
			    search_single(p, line, -1, l->place[b], l->place[c]) > limit)
				continue;
			stretch(&longest.end, p->x[l->place[b]] - l->x0);
			least = more + 2 < least ? more + 2 : least;
		}
	/* by the dominant diagonal of the three-moment equations M <= l2/8 + M/2 inside, and e2/2
	 * at the ends */
	s->moment[line] = fmax(longest.bay * longest.bay / 4, longest.end * longest.end / 2);
	return least;
}

/* Places of the tables, and which lines go together. */
static bool arrange(const struct search_problem *p, struct search_state *s)
{
	int at = 0;

	s->p = p;
	for (int i = 0; i < p->lines; i++) {
		s->repeats[i] = p->line[i].copies < 0;
		for (int k = i + 1; k < p->lines; k++)
			s->repeats[i] += p->line[k].copies == i;
		s->table_at[i] = at;
		at += p->line[i].copies < 0 ? p->line[i].places * p->line[i].places : 0;
		if (at > SEARCH_TABLE_MAX)
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
		const int least =
			p->line[i].copies < 0 ? least_of_line(p, s, i, limit * (1 + ROUNDING)) : 0;

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
