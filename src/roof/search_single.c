/* SPDX-License-Identifier: MIT */
/* A foot between two known neighbours: what its line cannot get below because of it. */
#include "roof/search.h"

#include <math.h>

/* Like fmax where the first is a number, but for the compiler to put in place. */
static double larger(double a, double b)
{
	return b > a ? b : a;
}

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
struct search_cost search_cost_of(const struct search_problem *p, int line, int a, int b, int c)
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
	if (!search_fits(length, end ? l->cantilever : l->bay))
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
	const struct search_cost k = search_cost_of(p, line, a, b, c);
	double ratio = larger(0, k.width * search_carried(p, line, a, b, c));

	ratio = larger(ratio, k.alone);
	ratio = larger(ratio, k.moment * larger(m_left, m_right));
	if ((a < 0 || c < 0) && isfinite(l->cantilever) && l->cantilever > 0)
		ratio = larger(ratio, larger(a < 0 ? left : 0, c < 0 ? right : 0) / l->cantilever);
	return ratio;
}
