/* SPDX-License-Identifier: MIT */
/* The moments of a rail that is known only up to a foot: what follows hardly reaches back. */
#include "roof/search.h"

#include <math.h>

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
			search_cost_of(p, line, i > first ? s->layout.rafter[i - 1] : -1,
				s->layout.rafter[i], s->layout.rafter[i + 1]);

		ratio = fmax(ratio, fmax(k.width * least[m - 1 - i], k.moment * moment));
	}
	return ratio;
}
