/* SPDX-License-Identifier: MIT */
/* The governing rafter as a beam with its loads, for whoever recomputes it: one span by itself, or
   the whole rafter over all its supports. Places along the slope from the lower wall. */
#include "check/rafter_show.h"

#include <math.h>

#include "check/attachment.h"
#include "check/rafter_check.h"
#include "check/rafter_extra.h"
#include "check/rail_pattern.h"
#include "resist/member.h"

static const char *sideways(const struct rafter_case *k)
{
	if (k->quake != 0)
		return k->quake > 0 ? "earthquake toward the eave" : "earthquake toward the ridge";
	if (k->lift)
		return "wind away from the roof";
	return k->k->W > 0 ? "wind toward the roof" : NULL;
}

static const char *snow(const struct context *c, const struct rafter_case *k)
{
	return k->k->S > 0 && k->snow_case >= 0 ? c->snow.snow[k->snow_case].name : NULL;
}

static double stiffness(struct context *c)
{
	const struct job_framing *m = &c->job->framing;
	struct lumber_values v;

	return rafter_stiffness(c, NULL, &v)
		       ? v.E_prime * section_rectangle(NULL, m->breadth, m->depth).I
		       : 0;
}

static void finish(struct context *c, int rafter, const struct rafter_case *k,
		   const struct beam *beam, enum check_id governs)
{
	struct shown_beam *s = &c->r->rafter_beam;
	struct beam_forces f;
	struct beam_bow bow;

	s->number = rafter + 1;
	s->combination = k->k->text;
	s->snow = snow(c, k);
	s->sideways = sideways(k);
	if (governs != CHECK_RAFTER_DEFLECTION && governs != CHECK_RAFTER_TAIL_BOW)
		return;
	s->EI = stiffness(c);
	if (s->EI > 0 && beam_solve(beam, &f)) {
		beam_deflect(beam, &f, s->EI, &bow);
		s->bow = governs == CHECK_RAFTER_TAIL_BOW ? bow.overhang : bow.span;
	}
}

/* The loads of one span as a beam along the slope. */
static void along_slope(const struct rafter_loads *l, double from, double cos_theta,
			double support[2], struct whole_beam *b)
{
	support[0] = from;
	support[1] = from + l->rafter.span / cos_theta;
	b->beam = (struct beam){.start = support[0],
				.end = support[1],
				.supports = 2,
				.support = support,
				.uniform = b->uniform,
				.point = b->point};
	whole_beam_take(b, l, from, cos_theta, true);
}

void rafter_show_span(struct inquiry *q, const struct rafter_case *k, const struct rafter_loads *l)
{
	struct context *c = q->c;
	struct whole_beam b;
	struct rafter_forces f;
	double support[2];

	along_slope(l, q->place.start / c->cos_theta, c->cos_theta, support, &b);
	if (!shown_beam_take(&c->r->rafter_beam, &b.beam))
		return;
	finish(c, q->place.rafter, k, &b.beam, q->governs);
	if (rafter_solve(&l->rafter, &f) && fabs(rafter_inner_moment(c, &f)) > 0)
		c->r->rafter_beam.inner = rafter_inner_moment(c, &f);
	rafter_tell_load(c, &q->place, k, q->trace);
	if (q->governs != CHECK_RAFTER_DEFLECTION)
		shown_beam_steps(&c->r->rafter_beam, q->trace);
}

void rafter_show_whole(struct rating *q, const struct rafter_case *k, bool partial, bool ice,
		       const struct whole_beam *b)
{
	struct context *c = q->c;
	struct shown_beam *s = &c->r->rafter_beam;

	if (!shown_beam_take(s, &b->beam))
		return;
	finish(c, q->rafter, k, &b->beam, q->governs);
	rafter_tell_load(c, &q->whole.piece[q->whole.low_tail ? 1 : 0], k, q->trace);
	if (partial)
		s->snow = span_pattern_text(q->at, q->whole.pieces);
	if (ice)
		s->snow = "ice on the overhang, with dead load only";
}
