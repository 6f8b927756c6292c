/* SPDX-License-Identifier: MIT */
/* A beam cut at fixed places. Three-moment equation as in beam.c, its right-hand side summed up
   from what unit loads do; then load is integrated to shear and moment from cut to cut, anew from
   the known moment at each support. */
#include "resist/beam_grid.h"

#include <assert.h>
#include <math.h>

bool beam_grid_cut(struct beam_grid *g, double x)
{
	size_t i = g->cuts;

	if (!(x > g->x[0] && x < g->x[g->cuts - 1]))
		return true;
	while (g->x[i - 1] > x)
		i--;
	if (!(g->x[i - 1] < x))
		return true;
	if (g->cuts == BEAM_CUT_MAX)
		return false;
	for (size_t k = g->cuts; k > i; k--)
		g->x[k] = g->x[k - 1];
	g->x[i] = x;
	g->cuts++;
	return true;
}

size_t beam_grid_find(const struct beam_grid *g, double x)
{
	size_t i = 0;

	while (i < g->cuts && g->x[i] < x)
		i++;
	return i < g->cuts && !(g->x[i] > x) ? i : g->cuts;
}

static struct beam_unit unit_force(double L, double a)
{
	const double b = L - a;

	return (struct beam_unit){b / L, a / L, b * (L * L - b * b) / L, a * (L * L - a * a) / L};
}

/* From c to e, measured from the left end of a span L long. */
static struct beam_unit unit_line(double L, double c, double e)
{
	const double F = e - c, middle = (c + e) / 2, c2 = L - e, e2 = L - c;

	return (struct beam_unit){F * (L - middle) / L, F * middle / L,
				  F * (L - middle) * (L * L - (e2 * e2 + c2 * c2) / 2) / L,
				  F * middle * (L * L - (e * e + c * c) / 2) / L};
}

void beam_grid_ready(struct beam_grid *g)
{
	const size_t n = g->supports;
	size_t field = 0;

	for (size_t i = 0; i < n; i++) {
		g->at[i] = beam_grid_find(g, g->support[i]);
		assert(g->at[i] < g->cuts);
	}
	for (size_t i = 0; i < g->cuts; i++) {
		const double from = g->x[i], to = i + 1 < g->cuts ? g->x[i + 1] : from;

		if (field < n && i == g->at[field])
			field++;
		if (field == 0 || field == n) {
			const double end = g->support[field == 0 ? 0 : n - 1];

			g->force[i] = (struct beam_unit){.turn_left = fabs(end - from)};
			g->line[i] = (struct beam_unit){
				.turn_left = (to - from) * fabs(end - (from + to) / 2)};
			continue;
		}
		const double origin = g->support[field - 1], L = g->support[field] - origin;

		g->force[i] = unit_force(L, from - origin);
		g->line[i] = unit_line(L, from - origin, to - origin);
	}
}

struct loading {
	struct beam_unit span[BEAM_GRID_SUPPORT_MAX]; /* span[i] lies right of support i */
	double force[2], moment[2];                   /* of the overhangs */
};

static void overhang(const struct beam_grid *g, const double *w, const double *P, size_t from,
		     size_t to, double *force, double *moment)
{
	*force = *moment = 0;
	for (size_t i = from; i < to; i++) {
		const double F = i + 1 < g->cuts ? w[i] * (g->x[i + 1] - g->x[i]) : 0;

		*force += F + P[i];
		*moment += w[i] * g->line[i].turn_left + P[i] * g->force[i].turn_left;
	}
}

static struct beam_unit span_sum(const struct beam_grid *g, const double *w, const double *P,
				 size_t from, size_t to)
{
	struct beam_unit s = {0, 0, 0, 0};

	for (size_t i = from; i < to; i++) {
		const struct beam_unit *l = &g->line[i], *f = &g->force[i];

		s.left += w[i] * l->left + P[i] * f->left;
		s.right += w[i] * l->right + P[i] * f->right;
		s.turn_left += w[i] * l->turn_left + P[i] * f->turn_left;
		s.turn_right += w[i] * l->turn_right + P[i] * f->turn_right;
	}
	return s;
}

static void react(const struct beam_grid *g, const double *w, const double *P,
		  struct beam_forces *out)
{
	const size_t n = g->supports;
	double length[BEAM_GRID_SUPPORT_MAX] = {0}, rhs[BEAM_GRID_SUPPORT_MAX] = {0},
	       scratch[BEAM_GRID_SUPPORT_MAX];
	struct loading l;

	overhang(g, w, P, 0, g->at[0], &l.force[0], &l.moment[0]);
	overhang(g, w, P, g->at[n - 1], g->cuts, &l.force[1], &l.moment[1]);
	for (size_t i = 0; i + 1 < n; i++) {
		l.span[i] = span_sum(g, w, P, g->at[i], g->at[i + 1]);
		length[i] = g->support[i + 1] - g->support[i];
		rhs[i] = i > 0 ? -(l.span[i - 1].turn_right + l.span[i].turn_left) : 0;
	}
	out->moment[0] = -l.moment[0];
	out->moment[n - 1] = -l.moment[1];
	beam_three_moment(n, length, rhs, scratch, out->moment);
	for (size_t i = 0; i < n; i++)
		out->reaction[i] = 0;
	out->reaction[0] = l.force[0];
	out->reaction[n - 1] += l.force[1];
	out->load = l.force[0] + l.force[1];
	for (size_t i = 0; i + 1 < n; i++) {
		const double turn = (out->moment[i + 1] - out->moment[i]) / length[i];

		out->reaction[i] += l.span[i].left + turn;
		out->reaction[i + 1] += l.span[i].right - turn;
		out->load += l.span[i].left + l.span[i].right;
	}
}

static void peak(struct beam_forces *out, double M, double x)
{
	if (M > out->sagging.value)
		out->sagging = (struct beam_peak){M, x};
	if (M < out->hogging.value)
		out->hogging = (struct beam_peak){M, x};
}

void beam_grid_solve(const struct beam_grid *g, const double *w, const double *P,
		     struct beam_forces *out, struct beam_pieces *pieces)
{
	size_t field = 0;
	double V = 0, M = 0;

	react(g, w, P, out);
	out->sagging = out->hogging = out->shear = (struct beam_peak){0, g->x[0]};
	for (size_t i = 0; i + 1 < g->cuts; i++) {
		if (field < g->supports && g->at[field] == i) {
			M = out->moment[field];
			V += out->reaction[field++];
		}
		V -= P[i];
		const double length = g->x[i + 1] - g->x[i], end = V - w[i] * length;

		pieces->at[i] = (struct beam_piece){field, g->x[i], length, w[i], V, M};
		peak(out, M, g->x[i]);
		if ((V > 0) != (end > 0)) { /* the moment peaks where the shear is nothing */
			const double s = V / w[i];

			if (s > 0 && s < length)
				peak(out, M + s * (V - w[i] * s / 2), g->x[i] + s);
		}
		if (fabs(V) > fabs(out->shear.value))
			out->shear = (struct beam_peak){V, g->x[i]};
		if (fabs(end) > fabs(out->shear.value))
			out->shear = (struct beam_peak){end, g->x[i + 1]};
		M += length * (V - w[i] * length / 2);
		V = end;
	}
	pieces->count = g->cuts - 1;
}
