/* SPDX-License-Identifier: MIT */
/* Partial loading of a continuous rail (ASCE/SEI 7 7.5, from memory): full balanced snow on one end
   span and half on the rest; half on one end span and full on the rest; full on any two spans next
   to each other and half on the rest. An overhang counts as a span of its own. Full and half by
   turns is run as well (safe side). Reactions are bounded over all patterns at once: what lifts a
   foot counts at half, what loads it in full.

   A worker of 300 lb may stand in the middle of any span and at either end, with dead load alone.
 */
#include "check/rail_pattern.h"

#include <math.h>

#include "check/attachment.h"
#include "resist/beam.h"
#include "table/lookup_snow.h"

#define SPAN_MAX (BEAM_SUPPORT_MAX + 1)

struct spans {
	const struct line *line;
	int supports, count;
	double support[BEAM_SUPPORT_MAX];
	double end[SPAN_MAX + 1]; /* span i lies from end[i] to end[i + 1] */
};

static bool find_spans(struct spans *s, const struct line *line, const struct attachment *a,
		       int count)
{
	const double least = 1e-6; /* m: an overhang of nothing is no span */
	int n = 0;

	if (count < 2 || count > BEAM_SUPPORT_MAX)
		return false;
	s->line = line;
	s->supports = count;
	for (int i = 0; i < count; i++)
		s->support[i] = fmin(fmax(a[i].x, line->x0), line->x1);
	if (s->support[0] - line->x0 > least)
		s->end[n++] = line->x0;
	for (int i = 0; i < count; i++)
		s->end[n++] = s->support[i];
	if (line->x1 - s->support[count - 1] > least)
		s->end[n++] = line->x1;
	s->count = n - 1;
	return true;
}

/* The rail under w[i] on span i. */
static bool solve(const struct spans *s, const double w[], struct beam_forces *forces)
{
	struct beam_uniform load[SPAN_MAX];

	for (int i = 0; i < s->count; i++)
		load[i] = (struct beam_uniform){s->end[i], s->end[i + 1], w[i]};
	const struct beam beam = {.start = s->line->x0,
				  .end = s->line->x1,
				  .supports = (size_t)s->supports,
				  .support = s->support,
				  .uniforms = (size_t)s->count,
				  .uniform = load};

	return beam_solve(&beam, forces);
}

static bool snows(const struct context *c)
{
	return c->job->rail.kind == SUPPORT_RAILS && c->snow.cases > 0 && c->snow.snow[0].array > 0;
}

void rail_snow_widths(const struct context *c, const struct line *line, struct attachment *a,
		      int count)
{
	struct spans s;
	struct beam_forces forces;
	double w[SPAN_MAX] = {0};

	if (!snows(c) || !find_spans(&s, line, a, count))
		return;
	for (int i = 0; i < count; i++)
		a[i].snow_width = 0;
	for (int k = 0; k < s.count; k++) {
		w[k] = 1;
		if (!solve(&s, w, &forces))
			return;
		w[k] = 0;
		for (int i = 0; i < count; i++)
			a[i].snow_width += fmax(forces.reaction[i], forces.reaction[i] / 2);
	}
}

bool span_pattern(int p, int spans, double factor[])
{
	const int pairs = spans - 1;

	for (int i = 0; i < spans; i++) {
		const bool end = p == 0 || p == 2 ? i == 0 : i == spans - 1;

		if (p < 2)
			factor[i] = end ? 1 : 0.5;
		else if (p < 4)
			factor[i] = end ? 0.5 : 1;
		else if (p < 4 + pairs)
			factor[i] = i == p - 4 || i == p - 3 ? 1 : 0.5;
		else
			factor[i] = (i + p - pairs) % 2 == 0 ? 1 : 0.5;
	}
	return p < 4 + pairs + 2;
}

const char *span_pattern_text(int p, int spans)
{
	static const char *const end[] = {"full snow on the lowest span, half on the rest",
					  "full snow on the highest span, half on the rest",
					  "half the snow on the lowest span, full on the rest",
					  "half the snow on the highest span, full on the rest"};

	if (p < 0)
		return "";
	if (p < 4)
		return end[p];
	return p < 4 + spans - 1 ? "full snow on two neighbouring spans, half on the rest"
				 : "full and half snow by turns (safe side)";
}

static void take(struct rail_line *rail, double demand, double capacity, const char *combination)
{
	struct check_value *v = &rail->check[CHECK_RAIL_MOMENT];
	const double ratio = demand / capacity;

	if (v->rated && ratio <= v->ratio)
		return;
	*v = (struct check_value){true, demand, capacity, ratio, combination, 1};
	if (ratio > rail->ratio) {
		rail->ratio = ratio;
		rail->governs = CHECK_RAIL_MOMENT;
	}
}

/* A combination with the snow in patterns, dead load and wind toward the roof all along. */
static void partial_snow(const struct context *c, const struct spans *s,
			 const struct load_combination *k, double p_down, double depth,
			 double capacity, struct rail_line *rail)
{
	struct beam_forces forces;
	double factor[SPAN_MAX] = {0}, w[SPAN_MAX];
	double even, whole, slope;

	if (k->S <= 0 || !array_load_down(c, k, p_down, 0, depth, NULL, &even, &slope) ||
	    !array_load_down(c, k, p_down, c->snow.snow[0].array, depth, NULL, &whole, &slope))
		return;
	for (int p = 0; span_pattern(p, s->count, factor); p++) {
		for (int i = 0; i < s->count; i++)
			w[i] = even + factor[i] * (whole - even);
		if (solve(s, w, &forces))
			take(rail, fabs(beam_worst_moment(&forces).value), capacity, k->text);
	}
}

double rail_worker(const struct context *c)
{
	return c->job->live.worker == ANSWER_YES ? unit_to_si(roof_live_row()->worker_lb, UNIT_LB)
						 : 0;
}

static void worker(const struct context *c, const struct spans *s, double depth, double capacity,
		   struct rail_line *rail)
{
	const double P = rail_worker(c) * c->cos_theta *
			 (c->lrfd && !isfinite(c->job->rail.allowable_moment) ? 1.6 : 1);
	const double d = c->r->dead.array_filled * c->cos_theta * depth *
			 (c->lrfd && !isfinite(c->job->rail.allowable_moment) ? 1.2 : 1);
	const struct beam_uniform dead = {s->line->x0, s->line->x1, d};

	for (int i = 0; i < s->count && P > 0; i++) {
		const bool left =
			s->end[i]<s->support[0], right = s->end[i + 1]> s->support[s->supports - 1];
		const struct beam_point load = {left    ? s->end[i]
						: right ? s->end[i + 1]
							: (s->end[i] + s->end[i + 1]) / 2,
						P};
		const struct beam beam = {.start = s->line->x0,
					  .end = s->line->x1,
					  .supports = (size_t)s->supports,
					  .support = s->support,
					  .uniforms = 1,
					  .points = 1,
					  .uniform = &dead,
					  .point = &load};
		struct beam_forces forces;

		if (beam_solve(&beam, &forces))
			take(rail, fabs(beam_worst_moment(&forces).value), capacity,
			     "D + one worker");
	}
}

void rail_patterns(const struct context *c, const struct line *line, const struct attachment *a,
		   int count, double capacity, struct rail_line *rail)
{
	const bool allowable = isfinite(c->job->rail.allowable_moment);
	const struct load_combination *list = allowable ? c->asd : c->combination;
	const int n = allowable ? c->asds : c->combinations;
	const double depth = line->y_high - line->y_low;
	struct spans s;
	double p_down = 0;

	if (!isfinite(capacity) || !find_spans(&s, line, a, count))
		return;
	for (int i = 0; i < count; i++)
		p_down = fmax(p_down, a[i].p_down);
	for (int i = 0; i < n && snows(c) && s.count > 1; i++)
		partial_snow(c, &s, &list[i], p_down, depth, capacity, rail);
	worker(c, &s, depth, capacity, rail);
}
