/* SPDX-License-Identifier: MIT */
/* Rafter on a slope as a simple beam. Statics; NDS-2018 3.4.3.1 for the shear that counts.

   A vertical line load w per horizontal length acts across the member as w cos^2 theta per slope
   length, a vertical force P as P cos theta; span and places are 1/cos theta longer along the
   slope. Moments come out as those of the horizontal span (w L^2/8, P a b/L), shear as cos theta
   times that of the horizontal beam. Safe side: a tail beyond the wall does not relieve, no load is
   shared with the neighbours through the sheathing. Not covered: axial force and bending together,
   birdsmouth, notches. */
#include "resist/rafter.h"

#include <math.h>

#include "resist/beam_walk.h"

/* The same rafter along its slope. */
struct slope_beam {
	struct beam beam;
	double support[2];
	struct beam_uniform uniform[BEAM_LOAD_MAX];
	struct beam_point point[BEAM_LOAD_MAX];
};

/* c: cos theta */
static bool along_slope(const struct rafter *r, double c, struct slope_beam *s)
{
	if (!isfinite(r->span) || !(r->span > 0.0) || !(r->theta >= 0.0) ||
	    !(r->theta < 89.0 * RAD_PER_DEG) || r->uniforms > BEAM_LOAD_MAX ||
	    r->points > BEAM_LOAD_MAX - r->uniforms)
		return false;
	s->support[0] = 0.0;
	s->support[1] = r->span / c;
	for (size_t i = 0; i < r->uniforms; i++) {
		const struct rafter_uniform *u = &r->uniform[i];

		s->uniform[i] = (struct beam_uniform){ u->x0 / c, u->x1 / c,
			                               u->vertical * c * c + u->normal };
	}
	for (size_t i = 0; i < r->points; i++) {
		const struct rafter_point *p = &r->point[i];

		s->point[i] = (struct beam_point){ p->x / c, p->vertical * c + p->normal };
	}
	s->beam = (struct beam){ .start = 0.0,
		                 .end = s->support[1],
		                 .supports = 2,
		                 .support = s->support,
		                 .uniforms = r->uniforms,
		                 .points = r->points,
		                 .uniform = s->uniform,
		                 .point = s->point };
	return true;
}

/* Share of a force at x (from this end) that this end of a beam L long takes. */
static double share(double x, double L)
{
	return x >= 0.0 && x <= L ? (L - x) / L : 0.0;
}

/* Design shear near one end: uniform load within d of the support is left out, a point load there
   counts x/d. Seen from the right end when mirrored. NDS-2018 3.4.3.1. */
static double end_shear(const struct slope_beam *s, double d, bool mirrored)
{
	const double L = s->support[1];
	double V = 0.0;

	for (size_t i = 0; i < s->beam.uniforms; i++) {
		const struct beam_uniform *u = &s->uniform[i];
		double x0 = fmax(0.0, mirrored ? L - u->x1 : u->x0),
		       x1 = fmin(L, mirrored ? L - u->x0 : u->x1);

		if (x0 < x1)
			V += u->w * (x1 - x0) * share((x0 + x1) / 2.0, L) -
			     u->w * fmax(0.0, fmin(x1, d) - x0);
	}
	for (size_t i = 0; i < s->beam.points; i++) {
		const double x = mirrored ? L - s->point[i].x : s->point[i].x;

		V += s->point[i].P * share(x, L) * (x < d ? x / d : 1.0);
	}
	return V;
}

/* Largest shear in magnitude further than d from both supports: loads of both signs may peak
   there. */
static double inner_shear(const struct slope_beam *s, const struct beam_pieces *pieces, double d)
{
	const double L = s->support[1];
	double V = 0.0;

	for (size_t i = 0; i < pieces->count; i++) {
		const struct beam_piece *p = &pieces->at[i];
		const double from = fmax(p->x, d) - p->x, to = fmin(p->x + p->length, L - d) - p->x;

		if (from < to)
			V = fmax(V, fmax(fabs(beam_piece_shear(p, from)), fabs(beam_piece_shear(p, to))));
	}
	return V;
}

/* Propped cantilever, held at the far end (the near one when mirrored): P a (L^2 - a^2)/(2 L^2) with a
   from the prop, the same integrated over a uniform load. */
static double held_moment(const struct slope_beam *s, bool mirrored)
{
	const double L = s->support[1];
	double M = 0.0;

	for (size_t i = 0; i < s->beam.uniforms; i++) {
		const struct beam_uniform *u = &s->uniform[i];
		const double a = fmin(fmax(mirrored ? L - u->x1 : u->x0, 0.0), L);
		const double b = fmin(fmax(mirrored ? L - u->x0 : u->x1, 0.0), L);

		M += u->w * ((b * b - a * a) / 4.0 - (b * b * b * b - a * a * a * a) / (8.0 * L * L));
	}
	for (size_t i = 0; i < s->beam.points; i++) {
		const double a = mirrored ? L - s->point[i].x : s->point[i].x;

		if (a >= 0.0 && a <= L)
			M += s->point[i].P * a * (L * L - a * a) / (2.0 * L * L);
	}
	return -M;
}

static struct beam_peak level(struct beam_peak p, double c)
{
	return (struct beam_peak){ p.value, p.x * c };
}

/* Largest moments of either sign where a point load stands. */
static void at_points(const struct rafter *r, const struct slope_beam *s, const struct beam_pieces *pieces,
                      struct rafter_forces *out)
{
	for (size_t i = 0; i < r->points; i++) {
		if (!(r->point[i].x > 0.0 && r->point[i].x < r->span))
			continue;
		const double M = beam_moment_in(&s->beam, pieces, s->point[i].x);

		out->sagging_at_point = fmax(out->sagging_at_point, M);
		out->hogging_at_point = fmin(out->hogging_at_point, M);
	}
}

static double axial(const struct rafter *r)
{
	const double sin_theta = sin(r->theta);
	double sum = 0.0;

	for (size_t i = 0; i < r->uniforms; i++) {
		const struct rafter_uniform *u = &r->uniform[i];

		sum += u->vertical * fmax(0.0, fmin(u->x1, r->span) - fmax(u->x0, 0.0)) * sin_theta;
	}
	for (size_t i = 0; i < r->points; i++)
		if (r->point[i].x >= 0.0 && r->point[i].x <= r->span)
			sum += r->point[i].vertical * sin_theta;
	return sum;
}

bool rafter_solve(const struct rafter *r, struct rafter_forces *out)
{
	const double c = cos(r->theta);
	struct slope_beam s;
	struct beam_forces f;
	struct beam_pieces pieces;

	if (!(r->depth >= 0.0) || !along_slope(r, c, &s) || !beam_solve_pieces(&s.beam, &f, &pieces))
		return false;
	*out = (struct rafter_forces){
		.slope_length = s.support[1],
		.sagging = level(f.sagging, c),
		.hogging = level(f.hogging, c),
		.moment = level(beam_worst_moment(&f), c),
		.lower = f.reaction[0],
		.upper = f.reaction[1],
		.held_lower = held_moment(&s, true),
		.held_upper = held_moment(&s, false),
		.axial = axial(r)
	};
	out->V = fmax(
		fmax(fabs(end_shear(&s, r->depth, false)), fabs(end_shear(&s, r->depth, true))),
		inner_shear(&s, &pieces, r->depth));
	at_points(r, &s, &pieces, out);
	return true;
}

bool rafter_deflect(const struct rafter *r, double EI, struct beam_peak *out)
{
	const double c = cos(r->theta);
	struct slope_beam s;
	struct beam_forces f;
	struct beam_bow bow;

	if (!(EI > 0.0) || !along_slope(r, c, &s) || !beam_solve(&s.beam, &f))
		return false;
	beam_deflect(&s.beam, &f, EI, &bow);
	*out = level(bow.span, c);
	return true;
}
