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
#include "check/load_case.h"
#include "resist/beam.h"
#include "table/lookup_snow.h"

#define SPAN_MAX (BEAM_SUPPORT_MAX + 1)

static const char worker_asd[] = "D + one worker", worker_lrfd[] = "1.2D + 1.6 of one worker";

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

/* The rail under w[i] on span i, kept in load[]. */
static struct beam laid(const struct spans *s, const double w[], struct beam_uniform load[SPAN_MAX])
{
	for (int i = 0; i < s->count; i++)
		load[i] = (struct beam_uniform){s->end[i], s->end[i + 1], w[i]};
	return (struct beam){.start = s->line->x0,
			     .end = s->line->x1,
			     .supports = (size_t)s->supports,
			     .support = s->support,
			     .uniforms = (size_t)s->count,
			     .uniform = load};
}

static bool solve(const struct spans *s, const double w[], struct beam_forces *forces)
{
	struct beam_uniform load[SPAN_MAX];
	const struct beam beam = laid(s, w, load);

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

static bool take(struct rail_line *rail, double demand, double capacity, const char *combination)
{
	struct check_value *v = &rail->check[CHECK_RAIL_MOMENT];
	const double ratio = demand / capacity;

	if (v->rated && ratio <= v->ratio)
		return false;
	*v = (struct check_value){true, demand, capacity, ratio, combination, 1};
	if (ratio > rail->ratio) {
		rail->ratio = ratio;
		rail->governs = CHECK_RAIL_MOMENT;
	}
	return true;
}

/* A rail under uneven loads. */
struct uneven {
	const struct context *c;
	struct spans spans;
	double depth, capacity;
	struct rail_line *rail;
	struct shown_beam *shown; /* NULL: nothing is taken down */
};

static void hold(const struct uneven *u, const struct beam *beam, const char *text, const char *snow,
		 const char *sideways)
{
	struct beam_forces forces;

	if (!beam_solve(beam, &forces) ||
	    !take(u->rail, fabs(beam_worst_moment(&forces).value), u->capacity, text) || !u->shown ||
	    !shown_beam_take(u->shown, beam))
		return;
	u->shown->number = u->rail->line + 1;
	u->shown->combination = text;
	u->shown->snow = snow;
	u->shown->sideways = sideways;
}

/* Snow in patterns, `even` without it and `whole` with all of it, all along. */
static void patterns(const struct uneven *u, double even, double whole, const char *text, const char *sideways)
{
	const int spans = u->spans.count;
	double factor[SPAN_MAX] = {0}, w[SPAN_MAX];
	struct beam_uniform load[SPAN_MAX];

	for (int p = 0; span_pattern(p, spans, factor); p++) {
		for (int i = 0; i < spans; i++)
			w[i] = even + factor[i] * (whole - even);
		const struct beam beam = laid(&u->spans, w, load);

		hold(u, &beam, text, span_pattern_text(p, spans), sideways);
	}
}

/* A combination with dead load and wind toward the roof. */
static void partial_snow(const struct uneven *u, const struct load_combination *k, double p_down)
{
	const double snow = u->c->snow.snow[0].array;
	double even, whole, slope;

	if (k->S > 0 && array_load_down(u->c, k, p_down, 0, u->depth, NULL, &even, &slope) &&
	    array_load_down(u->c, k, p_down, snow, u->depth, NULL, &whole, &slope))
		patterns(u, even, whole, k->text, k->W > 0 ? "wind toward the roof" : NULL);
}

/* One with an earthquake, toward the eave and toward the ridge. tip: of the line's feet. */
static void partial_quake(const struct uneven *u, const struct load_combination *k, double tip)
{
	const double snow = u->c->snow.snow[0].array;
	double even, whole, slope;

	for (int way = -1; way <= 1 && k->S > 0; way += 2) {
		if (!array_load_quake(u->c, k, way, 0, u->depth, NULL, &even, &slope))
			return;
		even += slope * tip;
		array_load_quake(u->c, k, way, snow, u->depth, NULL, &whole, &slope);
		whole += slope * tip;
		patterns(u, even, whole, k->text,
			 way > 0 ? "earthquake toward the eave" : "earthquake toward the ridge");
	}
}

double rail_worker(const struct context *c)
{
	return c->job->live.worker == ANSWER_YES ? unit_to_si(roof_live_row()->worker_lb, UNIT_LB)
						 : 0;
}

static void worker(const struct uneven *u)
{
	const struct context *c = u->c;
	const struct spans *s = &u->spans;
	const bool factored = c->lrfd && !isfinite(c->job->rail.allowable_moment);
	const double P = rail_worker(c) * c->cos_theta * (factored ? 1.6 : 1);
	const double d = c->r->dead.array_filled * c->cos_theta * u->depth * (factored ? 1.2 : 1);
	const struct beam_uniform dead = {s->line->x0, s->line->x1, d};

	for (int i = 0; i < s->count && P > 0; i++) {
		const bool left = s->end[i] < s->support[0];
		const bool right = s->end[i + 1] > s->support[s->supports - 1];
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

		hold(u, &beam, factored ? worker_lrfd : worker_asd, NULL, NULL);
	}
}

void rail_patterns(const struct context *c, const struct line *line, const struct attachment *a,
		   int count, double capacity, struct rail_line *rail, struct shown_beam *shown)
{
	const bool allowable = isfinite(c->job->rail.allowable_moment);
	const struct load_combination *list = allowable ? c->asd : c->combination;
	const struct load_combination *quake = allowable ? c->quake.asd : c->quake.combination;
	const int n = allowable ? c->asds : c->combinations;
	const int quakes = !c->quake.known ? 0 : allowable ? c->quake.asds : c->quake.combinations;
	struct uneven u = {.c = c,
			   .depth = line->y_high - line->y_low,
			   .capacity = capacity,
			   .rail = rail,
			   .shown = shown};
	double p_down = 0;

	if (!isfinite(capacity) || !find_spans(&u.spans, line, a, count))
		return;
	for (int i = 0; i < count; i++)
		p_down = fmax(p_down, a[i].p_down);
	const bool uneven = snows(c) && u.spans.count > 1;

	for (int i = 0; i < n && uneven; i++)
		partial_snow(&u, &list[i], p_down);
	for (int i = 0; i < quakes && uneven; i++)
		partial_quake(&u, &quake[i], a[0].tip);
	worker(&u);
}
