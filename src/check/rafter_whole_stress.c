/* SPDX-License-Identifier: MIT */
/* Bending over inner supports and between them, the tail over the wall, shear.

   Over the wall a tail keeps no more depth than the code asks of a notched rafter that runs on;
   over an inner support the whole section counts. What is pressed on the lower edge is held at the
   support and ends, under a uniform load, a quarter of the span away. Shear counts from the depth
   off a support, and right at it where a foot stands nearer (NDS 3.4.3.1). */
#include "check/rafter_whole_stress.h"

#include <math.h>

#include "check/attachment.h"
#include "check/load_case.h"
#include "check/rafter_check.h"
#include "check/rafter_extra.h"
#include "resist/member.h"
#include "table/lookup_limit.h"

static void keep(struct rating *q, struct check_value check[CHECK_COUNT], enum check_id id,
		 double demand, double capacity, const struct load_combination *k, double duration)
{
	const double ratio = capacity > 0 ? demand / capacity : HUGE_VAL;

	if (check[id].rated && ratio <= check[id].ratio)
		return;
	check[id] = (struct check_value){true, demand, capacity, ratio, k->text, duration};
	if (id == CHECK_RAFTER_PARTIAL && q->pattern)
		*q->pattern = q->at;
}

static double slope_length(const struct rating *q, int piece)
{
	return q->whole.piece[piece].length / q->c->cos_theta;
}

double rafter_tail_depth(const struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	return fmin(f->depth, isfinite(f->tail_depth) ? f->tail_depth : limit_of(LIMIT_TAIL_DEPTH));
}

/* Whether this very demand is the one to be traced. */
static bool wanted(const struct rating *q, enum check_id id, double demand,
		   const struct rafter_case *k)
{
	const struct check_value v = {.rated = true, .demand = demand, .combination = k->k->text};

	return q->telling && id == q->governs && check_same(&v, q->target);
}

static double bending_value(struct rating *q, double depth, double lu,
			    double duration, struct trace *trace)
{
	struct lumber_values v;

	if (!rafter_values(q->c, trace, duration, &v))
		return 0;
	const struct stability s = rafter_stability(q->c, trace, depth, lu, &v);

	return s.permitted ? lumber_bending(trace, v.Fb_star, s.CL) * q->c->tie_factor *
				     q->c->tie_factor
			   : 0;
}

/* Bending at a place where the rafter is supported: of a section `depth` deep, compressed along lu
 * below where M is negative. */
static void over_support(struct rating *q, struct check_value check[CHECK_COUNT], enum check_id id,
			 double M, double depth, double lu, const struct rafter_case *k,
			 double duration)
{
	const double b = q->c->job->framing.breadth, held = M < 0 ? lu : 0;
	const double S = section_rectangle(NULL, b, depth).S,
		     demand = member_bending_stress(NULL, M, S);

	if (!(fabs(M) > 0))
		return;
	keep(q, check, id, demand, bending_value(q, depth, held, duration, NULL), k->k,
	     duration);
	if (!wanted(q, id, demand, k))
		return;
	section_rectangle(q->trace, b, depth);
	bending_value(q, depth, held, duration, q->trace);
	member_bending_stress(q->trace, M, S);
}

static void at_feet(const struct whole_beam *b, double *sagging, double *hogging)
{
	*sagging = *hogging = 0;
	for (size_t i = 0; i < b->beam.points; i++) {
		const double M = beam_moment_in(&b->beam, &b->pieces, b->point[i].x);

		*sagging = fmax(*sagging, M);
		*hogging = fmin(*hogging, M);
	}
}

/* Between supports: under load down the sagging, which the deck holds above; under lift the
 * hogging, held below as it is. */
static void between(struct rating *q, struct check_value check[CHECK_COUNT], enum check_id id,
		    const struct whole_beam *b, const struct beam_forces *f,
		    const struct rafter_case *k, double duration)
{
	const struct job_framing *m = &q->c->job->framing;
	const double S = section_rectangle(NULL, m->breadth, m->depth).S;
	double sagging, hogging, longest = 0;

	at_feet(b, &sagging, &hogging);
	for (int i = 0; i < q->whole.pieces; i++)
		longest = fmax(longest, slope_length(q, i));
	const double M = k->lift ? f->hogging.value : f->sagging.value,
		     foot = k->lift ? hogging : sagging;
	const double lu = k->lift ? rafter_unbraced_length(q->c, longest) : 0;
	const double demand = rafter_bending_stress(q->c, NULL, M, foot, S);

	if (!(fabs(M) > 0))
		return;
	keep(q, check, id, demand, bending_value(q, m->depth, lu, duration, NULL), k->k,
	     duration);
	if (!wanted(q, id, demand, k))
		return;
	section_rectangle(q->trace, m->breadth, m->depth);
	bending_value(q, m->depth, lu, duration, q->trace);
	rafter_bending_stress(q->c, q->trace, M, foot, S);
}

/* Shear that counts on one side of a support (-1 or 1), d off it. */
static double side_shear(const struct whole_beam *b, double at, double side, double d)
{
	const double least = 1e-9; /* m */
	double off = d;

	for (size_t i = 0; i < b->beam.points; i++) {
		const double from = side * (b->point[i].x - at);

		if (from > 0 && from <= d)
			off = least;
	}
	const double x = at + side * off;

	return x > b->beam.start && x < b->beam.end ? fabs(beam_shear_in(&b->beam, &b->pieces, x))
						    : 0;
}

static void keep_shear(struct rating *q, struct check_value check[CHECK_COUNT], double V,
		       double depth, const struct rafter_case *k, double duration)
{
	const double breadth = q->c->job->framing.breadth,
		     demand = member_shear_stress(NULL, V, breadth, depth);
	struct lumber_values v;

	if (!rafter_values(q->c, NULL, duration, &v))
		return;
	keep(q, check, CHECK_RAFTER_SHEAR, demand, v.Fv_prime, k->k, duration);
	if (!wanted(q, CHECK_RAFTER_SHEAR, demand, k))
		return;
	rafter_values(q->c, q->trace, duration, &v);
	member_shear_stress(q->trace, V, breadth, depth);
}

static void shear(struct rating *q, struct check_value check[CHECK_COUNT],
		  const struct whole_beam *b, const struct rafter_case *k, double duration)
{
	const double d = q->c->job->framing.depth;
	const struct rafter_whole *w = &q->whole;
	double V = 0, tail = 0;

	for (int i = 0; i < w->supports; i++)
		for (int side = -1; side <= 1; side += 2) {
			const bool out = (i == 0 && side < 0) || (i + 1 == w->supports && side > 0);

			if (!out)
				V = fmax(V, side_shear(b, w->support[i], side, d));
			else if (i == 0 ? w->low_loaded : w->high_loaded)
				tail = fmax(tail, side_shear(b, w->support[i], side, 0));
		}
	keep_shear(q, check, V, d, k, duration);
	if (tail > 0)
		keep_shear(q, check, tail, rafter_tail_depth(q->c), k, duration);
}

/* The end of a tail against its share of twice its length (IRC Table R301.7, note b, quoted alike by
   two; IBC Table 1604.3, note i). Stiffness of the whole section: the cut over the wall is short. */
static void tail_bow(struct rating *q, struct check_value check[CHECK_COUNT],
		     const struct whole_beam *b, const struct rafter_case *k)
{
	const struct job_framing *m = &q->c->job->framing;
	struct lumber_values v;
	struct beam_bow bow;

	if (!rafter_stiffness(q->c, NULL, &v))
		return;
	beam_deflect_in(&b->beam, &b->pieces, v.E_prime * section_rectangle(NULL, m->breadth, m->depth).I, &bow);
	if (!(bow.overhang_length > 0))
		return;
	const double demand = fmax(0, bow.overhang.value);

	keep(q, check, CHECK_RAFTER_TAIL_BOW, demand,
	     2 * bow.overhang_length / rafter_bow_divisor(q->c->job), k->k, 1);
	if (!wanted(q, CHECK_RAFTER_TAIL_BOW, demand, k))
		return;
	rafter_stiffness(q->c, q->trace, &v);
	section_rectangle(q->trace, m->breadth, m->depth);
}

void rafter_whole_stresses(struct rating *q, struct check_value check[CHECK_COUNT],
			   const struct whole_beam *b, const struct beam_forces *f,
			   const struct rafter_case *k)
{
	const struct rafter_whole *w = &q->whole;
	const enum check_id id = q->at >= 0 ? CHECK_RAFTER_PARTIAL
				 : k->lift  ? CHECK_RAFTER_UPLIFT
					    : CHECK_RAFTER_BENDING;
	const double duration = case_duration(q->c, k->k), d = q->c->job->framing.depth,
		     left = rafter_tail_depth(q->c);

	if (k->bow) {
		tail_bow(q, check, b, k);
		return;
	}
	for (int i = 1; i + 1 < w->supports; i++) {
		const int before = i - 1 + w->low_tail;
		const double lu = fmax(slope_length(q, before), slope_length(q, before + 1)) / 4;

		over_support(q, check, id, f->moment[i], d, lu, k, duration);
	}
	if (w->low_loaded)
		over_support(q, check, CHECK_RAFTER_TAIL, f->moment[0], left, slope_length(q, 0), k,
			     duration);
	if (w->high_loaded)
		over_support(q, check, CHECK_RAFTER_TAIL, f->moment[w->supports - 1], left,
			     slope_length(q, w->pieces - 1), k, duration);
	between(q, check, id, b, f, k, duration);
	shear(q, check, b, k, duration);
}
