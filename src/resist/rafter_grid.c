/* SPDX-License-Identifier: MIT */
/* Design shear and moments of held ends are sums over the loads, each with a share that its place
   alone decides (NDS-2018 3.4.3.1; propped cantilever): see rafter.c, which finds them load by
   load. */
#include "resist/rafter_grid.h"

#include <math.h>

#include "resist/beam_walk.h"

/* Share in the shear near the end that x is measured from, of a unit load over x0 to x1. */
static double line_shear(double x0, double x1, double L, double d)
{
	return (x1 - x0) * (L - (x0 + x1) / 2) / L - fmax(0, fmin(x1, d) - x0);
}

static double force_shear(double x, double L, double d)
{
	return (L - x) / L * (x < d ? x / d : 1);
}

/* P a (L^2 - a^2)/(2 L^2), a from the prop; the same integrated. */
static double force_held(double a, double L)
{
	return -a * (L * L - a * a) / (2 * L * L);
}

static double line_held(double a, double b, double L)
{
	return -((b * b - a * a) / 4 - (b * b * b * b - a * a * a * a) / (8 * L * L));
}

void rafter_grid_ready(struct rafter_grid *g, double theta, double depth)
{
	const struct beam_grid *b = &g->beam;
	const double L = b->x[b->cuts - 1], d = depth;

	beam_grid_ready(&g->beam);
	g->cos_theta = cos(theta);
	g->depth = depth;
	for (size_t i = 0; i < b->cuts; i++) {
		const double x = b->x[i], end = i + 1 < b->cuts ? b->x[i + 1] : x;

		g->force[i] = (struct rafter_unit){force_shear(x, L, d), force_shear(L - x, L, d),
						   force_held(L - x, L), force_held(x, L)};
		g->line[i] = (struct rafter_unit){
			line_shear(x, end, L, d), line_shear(L - end, L - x, L, d),
			line_held(L - end, L - x, L), line_held(x, end, L)};
	}
}

/* Largest shear in magnitude further than d from both supports. */
static double inner_shear(const struct rafter_grid *g, const struct beam_pieces *pieces)
{
	const double L = g->beam.x[g->beam.cuts - 1], d = g->depth;
	double V = 0;

	for (size_t i = 0; i < pieces->count; i++) {
		const struct beam_piece *p = &pieces->at[i];
		const double from = fmax(p->x, d) - p->x, to = fmin(p->x + p->length, L - d) - p->x;

		if (from < to)
			V = fmax(V, fmax(fabs(beam_piece_shear(p, from)),
					 fabs(beam_piece_shear(p, to))));
	}
	return V;
}

static struct beam_peak level(struct beam_peak p, double c)
{
	return (struct beam_peak){p.value, p.x * c};
}

void rafter_grid_solve(const struct rafter_grid *g, const double *w, const double *P,
		       const size_t *feet, size_t count, struct rafter_forces *out,
		       struct beam_pieces *pieces)
{
	const struct beam_grid *b = &g->beam;
	struct rafter_unit sum = {0, 0, 0, 0};
	struct beam_forces f;

	beam_grid_solve(b, w, P, &f, pieces);
	for (size_t i = 0; i < b->cuts; i++) {
		const struct rafter_unit *l = &g->line[i], *p = &g->force[i];

		sum.low += w[i] * l->low + P[i] * p->low;
		sum.high += w[i] * l->high + P[i] * p->high;
		sum.held_lower += w[i] * l->held_lower + P[i] * p->held_lower;
		sum.held_upper += w[i] * l->held_upper + P[i] * p->held_upper;
	}
	*out = (struct rafter_forces){
		.slope_length = b->x[b->cuts - 1],
		.sagging = level(f.sagging, g->cos_theta),
		.hogging = level(f.hogging, g->cos_theta),
		.moment = level(beam_worst_moment(&f), g->cos_theta),
		.lower = f.reaction[0],
		.upper = f.reaction[1],
		.held_lower = sum.held_lower,
		.held_upper = sum.held_upper,
		.V = fmax(fmax(fabs(sum.low), fabs(sum.high)), inner_shear(g, pieces)),
	};
	for (size_t i = 0; i < count; i++) {
		if (feet[i] == 0 || feet[i] + 1 >= b->cuts)
			continue;
		out->sagging_at_point = fmax(out->sagging_at_point, pieces->at[feet[i]].M);
		out->hogging_at_point = fmin(out->hogging_at_point, pieces->at[feet[i]].M);
	}
}
