/* SPDX-License-Identifier: MIT */
/* The mesh depends on where a rafter begins, ends and is supported, so that rafters of one length
   share it; a few are kept. The forces of feet are in proportion to each load by itself: what a unit
   of it does is asked of the steps once. */
#include "check/rafter_mesh.h"

#include <math.h>

#include "check/check_steps.h"
#include "check/wind_rule.h"
#include "table/lookup_limit.h"

#define DRIFT_STEPS 4 /* hold the falling load inside */

static const struct rectangle *first_of(const struct context *c, int row)
{
	return &c->r->collector[row * c->job->collector.columns];
}

static bool cut(const struct context *c, struct rafter_mesh *m, double plan)
{
	return beam_grid_cut(&m->grid.beam, plan / c->cos_theta);
}

/* Drift beside the array and snow slid off its rows: both move with the case. */
static bool cut_snow(const struct context *c, struct rafter_mesh *m, const struct snow_load_case *s)
{
	const double low = rafter_on_plan(c, c->r->array.y0), high = rafter_on_plan(c, c->r->array.y1),
		     part = s->beside_length / DRIFT_STEPS;
	bool room = true;

	for (int i = 0; i <= DRIFT_STEPS && s->beside > 0; i++)
		room = room && cut(c, m, low - i * part) && cut(c, m, high + i * part);
	for (int row = 0; row < c->job->collector.rows && s->strip > 0; row++)
		room = room && cut(c, m, rafter_on_plan(c, first_of(c, row)->y0) - s->strip_width);
	return room;
}

static bool cut_all(const struct context *c, struct rafter_mesh *m)
{
	bool room = true;

	for (int i = 0; i < c->r->shapes; i++)
		for (int v = 0; v < c->r->shape[i].shape.n; v++)
			room = room && cut(c, m, rafter_on_plan(c, c->r->shape[i].shape.at[v].y));
	for (int row = 0; row < c->job->collector.rows; row++)
		room = room && cut(c, m, rafter_on_plan(c, first_of(c, row)->y0)) &&
		       cut(c, m, rafter_on_plan(c, first_of(c, row)->y1));
	for (int i = 0; i < c->lines; i++)
		room = room && cut(c, m, rafter_on_plan(c, c->line[i].y));
	for (int i = 0; i < c->snow.cases; i++)
		room = room && cut_snow(c, m, &c->snow.snow[i]);
	return room;
}

/* Snow of a case that the array moves to a place, Pa on plan, over the whole width. */
static double beside(const struct context *c, const struct snow_load_case *s, double h)
{
	const double low = rafter_on_plan(c, c->r->array.y0), high = rafter_on_plan(c, c->r->array.y1),
		     part = s->beside_length / DRIFT_STEPS;
	double p = 0;

	for (int i = 0; i < DRIFT_STEPS && s->beside > 0; i++)
		if ((h > high + i * part && h < high + (i + 1) * part) ||
		    (h > low - (i + 1) * part && h < low - i * part))
			p += s->beside * (DRIFT_STEPS - i) / DRIFT_STEPS;
	for (int row = 0; row < c->job->collector.rows && s->strip > 0; row++) {
		const double foot = rafter_on_plan(c, first_of(c, row)->y0);

		if (h > foot - s->strip_width && h < foot)
			p += s->strip;
	}
	return p;
}

/* What lies on the pieces between cuts. */
static void fill(const struct context *c, struct rafter_mesh *m)
{
	const struct beam_grid *g = &m->grid.beam;
	const int rows = c->job->collector.rows;
	const bool gaps_covered = at_most(c->job->collector.row_gap, limit_of(LIMIT_ROOM_TO_STAND));

	for (size_t i = 0; i + 1 < g->cuts; i++) {
		const double h = (g->x[i] + g->x[i + 1]) / 2 * c->cos_theta;
		int piece = 0;

		while (piece + 1 < m->pieces && h > m->start[piece + 1])
			piece++;
		m->piece[i] = (unsigned char)piece;
		m->covered[i] = m->spared[i] = false;
		for (int row = 0; row < rows; row++) {
			const double from = rafter_on_plan(c, first_of(c, row)->y0),
				     to = rafter_on_plan(c, first_of(c, row)->y1),
				     next = row + 1 < rows ? rafter_on_plan(c, first_of(c, row + 1)->y0) : to;

			m->covered[i] = m->covered[i] || (h > from && h < to);
			m->spared[i] = m->spared[i] ||
				       (h > from && h < (gaps_covered ? next : to));
		}
		for (int s = 0; s < c->snow.cases; s++)
			m->beside[s][i] = beside(c, &c->snow.snow[s], h);
	}
}

static void unit_forces(const struct context *c, struct rafter_mesh *m)
{
	const double filled = c->r->dead.array_filled, dry = c->r->dead.array_dry, t = c->theta;

	m->filled = (struct foot_unit){STEP(NULL, step_attachment_down, 1, filled, 0, 0, 0, 0, t, 1),
				       STEP(NULL, step_attachment_slope, 1, filled, 0, 0, t, 1)};
	m->dry = (struct foot_unit){-STEP(NULL, step_attachment_uplift, 0, 0, 1, dry, t, 1),
				    STEP(NULL, step_attachment_slope, 1, dry, 0, 0, t, 1)};
	m->snow = (struct foot_unit){STEP(NULL, step_attachment_down, 0, 0, 1, 1, 0, 0, t, 1),
				     STEP(NULL, step_attachment_slope, 0, 0, 1, 1, t, 1)};
	m->quake = (struct foot_unit){
		STEP(NULL, step_attachment_quake_normal, 0, filled, 0, 0, 0, 0, 1,
		     c->quake.horizontal, t, 1),
		STEP(NULL, step_attachment_quake_slope, 0, filled, 0, 0, 0, 0, 1,
		     c->quake.horizontal, t, 1)};
}

static bool make(const struct context *c, const struct rafter_place *piece, int pieces,
		 const double *support, int supports, struct rafter_mesh *m)
{
	struct beam_grid *g = &m->grid.beam;
	const struct rafter_place *last = &piece[pieces - 1];
	bool room = true;

	m->pieces = pieces;
	m->supports = supports;
	for (int i = 0; i < pieces; i++) {
		m->start[i] = piece[i].start;
		m->length[i] = piece[i].length;
	}
	/* a span is measured from its own lower support */
	m->origin = supports > 0 ? 0 : piece[0].start / c->cos_theta;
	g->cuts = 2;
	g->x[0] = piece[0].start / c->cos_theta;
	g->x[1] = (last->start + last->length) / c->cos_theta;
	/* the last bits of start + length must not put the end below the support there */
	if (supports > 0)
		g->x[1] = fmax(g->x[1], support[supports - 1]);
	g->supports = supports > 0 ? (size_t)supports : 2;
	for (size_t i = 0; i < g->supports; i++) {
		g->support[i] = supports > 0 ? support[i] : g->x[i];
		room = room && beam_grid_cut(g, g->support[i]);
	}
	m->room = room && cut_all(c, m);
	if (!m->room)
		return false;
	fill(c, m);
	unit_forces(c, m);
	if (supports > 0) {
		beam_grid_ready(g);
		return true;
	}
	for (size_t i = 0; i < g->cuts; i++)
		g->x[i] -= m->origin;
	g->x[g->cuts - 1] = last->length / c->cos_theta;
	g->support[0] = 0;
	g->support[1] = g->x[g->cuts - 1];
	rafter_grid_ready(&m->grid, c->theta, c->job->framing.depth);
	return true;
}

static bool fits(const struct rafter_mesh *m, const struct rafter_place *piece, int pieces, int supports)
{
	bool good = m->pieces == pieces && m->supports == supports;

	for (int i = 0; i < pieces && good; i++)
		good = same_value(m->start[i], piece[i].start) && same_value(m->length[i], piece[i].length);
	return good;
}

const struct rafter_mesh *rafter_mesh_of(struct context *c, const struct rafter_place *piece,
					 int pieces, const double *support, int supports)
{
	for (int i = 0; i < c->meshes && i < MESH_MEMO; i++)
		if (fits(&c->mesh[i], piece, pieces, supports))
			return c->mesh[i].room ? &c->mesh[i] : NULL;
	struct rafter_mesh *m = &c->mesh[c->meshes++ % MESH_MEMO];

	return make(c, piece, pieces, support, supports, m) ? m : NULL;
}
