/* SPDX-License-Identifier: MIT */
/* The rafter from eave edge to ridge as one elastic beam: how it lies, and what loads it. Inner
   supports stand a span apart as far as the run goes, the last span is what is left, or where the
   job has one measured; a wall on either side of a single slope has its own overhang. */
#include "check/rafter_whole.h"

#include <math.h>

#include "check/overhang.h"
#include "check/wind_rule.h"
#include "table/lookup_limit.h"

static bool single_slope(const struct context *c)
{
	return plane_beyond(c) <= 0;
}

bool rafter_tail_loaded(const struct context *c, const struct pass *pass,
			const struct rafter_place *tail)
{
	const double over = c->job->building.eave_overhang;
	const double low = c->r->array.y0 * c->cos_theta - over,
		     high = c->r->array.y1 * c->cos_theta - over;
	double reach = 0; /* of snow that the array moves */

	for (int i = 0; i < c->snow.cases; i++)
		reach = fmax(reach,
			     fmax(c->snow.snow[i].beside_length, c->snow.snow[i].strip_width));
	for (int i = 0; i < pass->attachments; i++) {
		const double at = pass->attachment[i].y * c->cos_theta - over;

		if (rafter_share(c, pass->attachment[i].rafter, tail->rafter) > 0 &&
		    at > tail->start && at < tail->start + tail->length)
			return true;
	}
	return !at_least(low - reach, tail->start + tail->length) &&
	       !at_most(high + reach, tail->start);
}

bool rafter_partial_spared(const struct context *c)
{
	return c->job->building.form == FORM_GABLE &&
	       at_least(c->theta, limit_of(LIMIT_PARTIAL_SLOPE_LEAST)) &&
	       at_most(c->theta, limit_of(LIMIT_PARTIAL_SLOPE_MOST));
}

static void add_piece(struct rafter_whole *w, int rafter, double start, double length, double width)
{
	w->piece[w->pieces++] = (struct rafter_place){rafter, start, length, width};
}

bool rafter_whole_lay(const struct context *c, const struct pass *pass, int rafter,
		      struct rafter_whole *w)
{
	struct rafter_place first;
	const double run = plane_run_at(c, c->r->frame_x[rafter]),
		     over = c->job->building.eave_overhang;
	const double least = M_PER_FT; /* what is left of the run below this is no span: widths are
					  taken to a foot */
	double start = 0;

	*w = (struct rafter_whole){0};
	rafter_places(c, pass, rafter, &first, 1);
	const double span = fmin(c->job->framing.span, fmax(run, least));

	if (over > 0) {
		add_piece(w, rafter, -over, over, first.width);
		w->low_tail = true;
	}
	w->support[w->supports++] = 0;
	while (w->pieces < WHOLE_PIECES - 2) {
		/* as measured, or a span on */
		const double reach = rafter_next_support(c, start, run, span);
		/* a rafter in two pieces ends at its first inner support */
		const bool last = reach > run - least || c->job->framing.continuous == ANSWER_NO;
		const double end = reach <= run - least ? reach
				   : start > 0          ? fmax(run, start + least)
							: start + span;

		add_piece(w, rafter, start, end - start, first.width);
		w->support[w->supports++] = end / c->cos_theta;
		start = end;
		if (last)
			break;
	}
	if (single_slope(c) && over > 0 && start >= run - least) {
		add_piece(w, rafter, start, over, first.width);
		w->high_tail = true;
	}
	w->low_loaded = w->low_tail && rafter_tail_loaded(c, pass, &w->piece[0]);
	w->high_loaded = w->high_tail && rafter_tail_loaded(c, pass, &w->piece[w->pieces - 1]);
	return w->supports > 2 || w->low_loaded || w->high_loaded;
}

bool whole_beam_take(struct whole_beam *b, const struct rafter_loads *l, double from,
		     double cos_theta, bool owns_start)
{
	if (b->beam.uniforms + b->beam.points + l->rafter.uniforms + l->rafter.points >
	    BEAM_LOAD_MAX)
		return false;
	for (size_t i = 0; i < l->rafter.uniforms; i++) {
		const struct rafter_uniform *u = &l->rafter.uniform[i];

		b->uniform[b->beam.uniforms++] =
			(struct beam_uniform){from + u->x0 / cos_theta, from + u->x1 / cos_theta,
					      u->vertical * cos_theta * cos_theta + u->normal};
	}
	for (size_t i = 0; i < l->rafter.points; i++) {
		const struct rafter_point *q = &l->rafter.point[i];

		/* a foot right over a support comes once */
		if (q->x > 0 || owns_start)
			b->point[b->beam.points++] = (struct beam_point){
				from + q->x / cos_theta, q->vertical * cos_theta + q->normal};
	}
	return true;
}

bool rafter_whole_load(struct context *c, const struct pass *pass, const struct rafter_whole *w,
		       struct rafter_case load, const double off[], double ice,
		       struct whole_beam *out)
{
	const struct rafter_place *last = &w->piece[w->pieces - 1];
	struct rafter_loads l;

	out->beam = (struct beam){.start = w->piece[0].start / c->cos_theta,
				  /* the last bits of start + length must not put the end
				     below the support there */
				  .end = fmax((last->start + last->length) / c->cos_theta,
					      w->support[w->supports - 1]),
				  .supports = (size_t)w->supports,
				  .support = w->support,
				  .uniform = out->uniform,
				  .point = out->point};
	for (int i = 0; i < w->pieces; i++) {
		const bool tail = (i == 0 && w->low_tail) || (i + 1 == w->pieces && w->high_tail);

		load.snow_off = off ? off[i] : 0;
		load.under = i == 0 ? w->low_loaded : i + 1 == w->pieces && w->high_loaded;
		if (load.tails_only && !tail)
			continue;
		rafter_load(c, pass, &w->piece[i], &load, &l);
		if (tail && ice > 0 && l.rafter.uniforms < sizeof l.uniform / sizeof *l.uniform)
			l.uniform[l.rafter.uniforms++] = (struct rafter_uniform){
				0, w->piece[i].length,
				rafter_line_load_plan(NULL, ice, w->piece[i].width), 0};
		if (!whole_beam_take(out, &l, w->piece[i].start / c->cos_theta, c->cos_theta, i == 0))
			return false;
	}
	return true;
}
