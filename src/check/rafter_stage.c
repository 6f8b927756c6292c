/* SPDX-License-Identifier: MIT */
/* Every load case on the mesh of a rafter is a sum: of dead, snow and live load between the cuts, of
   the wind piece by piece, and of what the feet hand down. */
#include "check/rafter_mesh.h"

#include <math.h>

#include "check/attachment.h"
#include "check/wind_rule.h"
#include "table/lookup_limit.h"

/* False where a foot stands at no cut. */
static bool set_feet(const struct context *c, const struct pass *pass, struct rafter_stage *s)
{
	const struct rafter_mesh *m = s->mesh;
	const struct rafter_place *last = &s->piece[s->pieces - 1];

	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double share = rafter_share(c, a->rafter, s->piece[0].rafter);
		const double h = rafter_on_plan(c, a->y);
		int piece = 0;

		if (share <= 0 || h < s->piece[0].start || h > last->start + last->length)
			continue;
		size_t at = beam_grid_find(&m->grid.beam, h / c->cos_theta - m->origin);

		if (at == m->grid.beam.cuts || s->feet == FOOT_ROOM)
			return false;
		while (piece + 1 < s->pieces && h > s->piece[piece + 1].start)
			piece++;
		s->foot_cut[s->feet] = at;
		s->foot[s->feet++] = (struct mesh_foot){
			at, piece,
			share * (fmax(a->reaction_width, a->tributary_width) * a->tributary_depth),
			a->p_up, a->p_down, a->tip, a->tributary.y1};
	}
	return true;
}

static bool set(struct context *c, const struct pass *pass, const struct rafter_place *piece, int pieces,
		const double *support, int supports, bool array, struct rafter_stage *s)
{
	s->mesh = rafter_mesh_of(c, piece, pieces, support, supports);
	s->piece = piece;
	s->pieces = pieces;
	s->array = array;
	s->tail[0] = s->tail[1] = s->under[0] = s->under[1] = s->presses = s->lifts = false;
	s->width = piece->width;
	s->share = array ? rafter_covered(c, piece) : 0;
	/* collectors that leave room to stand below them keep nobody off the roof */
	s->live_share =
		at_most(c->job->collector.clearance, limit_of(LIMIT_ROOM_TO_STAND)) ? s->share : 0;
	s->dead = rafter_line_load_slope(NULL, c->job->roof.dead_load, s->width, c->theta);
	s->feet = 0;
	return s->mesh && (!array || set_feet(c, pass, s));
}

bool rafter_stage_span(struct context *c, const struct pass *pass, const struct rafter_place *span,
		       bool array, struct rafter_stage *s)
{
	return set(c, pass, span, 1, NULL, 0, array, s);
}

bool rafter_stage_whole(struct context *c, const struct pass *pass, const struct rafter_whole *whole,
			bool array, struct rafter_stage *s)
{
	const bool good = set(c, pass, whole->piece, whole->pieces, whole->support, whole->supports,
			      array, s);

	s->tail[0] = whole->low_tail;
	s->tail[1] = whole->high_tail;
	s->under[0] = whole->low_loaded;
	s->under[1] = whole->high_loaded;
	return good;
}

/* The wind of each piece of the rafter on the pieces of the mesh. */
static void blow(struct context *c, const struct rafter_stage *s, bool lift, double *wind)
{
	const struct beam_grid *g = &s->mesh->grid.beam;
	size_t i = 0;

	for (int p = 0; p < s->pieces; p++) {
		const bool under = p == 0 ? s->under[0] : p + 1 == s->pieces && s->under[1];
		const struct wind_memo *m = rafter_wind(c, &s->piece[p], s->share, lift, lift && under);

		for (int at = 0; i + 1 < g->cuts && s->mesh->piece[i] == p; i++) {
			const double h = ((g->x[i] + g->x[i + 1]) / 2 + s->mesh->origin) * c->cos_theta;

			while (at + 1 < m->pieces && h > m->to[at])
				at++;
			wind[i] = m->pieces > 0 ? m->w[at] : 0;
		}
	}
}

bool rafter_stage_presses(const struct rafter_stage *s)
{
	const struct rafter_mesh *m = s->mesh;
	bool presses = true;

	for (int i = 0; i < s->feet; i++) {
		const struct mesh_foot *f = &s->foot[i];

		presses = presses && m->filled.normal + f->tip * m->filled.slope >= 0 &&
			  m->snow.normal + f->tip * m->snow.slope >= 0 && f->p_down >= 0;
	}
	return presses;
}

static const double *wind_of(struct context *c, struct rafter_stage *s, bool lift)
{
	bool *const known = lift ? &s->lifts : &s->presses;
	double *const wind = lift ? s->lift : s->press;

	if (!*known)
		blow(c, s, lift, wind);
	*known = true;
	return wind;
}

/* Force of a foot per area, N/m2. */
static double foot_force(const struct context *c, const struct rafter_mesh *m, const struct mesh_foot *f,
			 const struct rafter_case *k, double off)
{
	const struct load_combination *x = k->k;
	const double on = k->snow_case < 0 ? 0 : array_snow(c, k->snow_case, f->y_high);

	if (k->lift)
		return x->W > 0 && x->S <= 0 && x->Lr <= 0
			       ? x->D * (m->dry.normal + f->tip * m->dry.slope) - x->W * f->p_up
			       : 0;
	const double filled = m->filled.normal + f->tip * m->filled.slope,
		     snow = m->snow.normal + f->tip * m->snow.slope;

	if (k->quake != 0)
		return (x->D + x->Ev * c->quake.vertical) * filled + x->S * on * snow +
		       k->quake * x->Eh * (m->quake.normal + f->tip * m->quake.slope);
	return x->D * filled + x->S * ((1 - off) * on) * snow + x->W * f->p_down;
}

static bool on_tail(const struct rafter_stage *s, int piece)
{
	return (piece == 0 && s->tail[0]) || (piece + 1 == s->pieces && s->tail[1]);
}

/* Of a case that loads the tails alone: takes off what stands between the walls. */
static void clear_spans(struct rafter_stage *s)
{
	const struct rafter_mesh *m = s->mesh;

	for (size_t i = 0; i + 1 < m->grid.beam.cuts; i++)
		if (!on_tail(s, m->piece[i]))
			s->w[i] = 0;
	for (int i = 0; i < s->feet; i++)
		if (!on_tail(s, s->foot[i].piece))
			s->P[s->foot[i].cut] = 0;
}

static void load(struct context *c, struct rafter_stage *s, const struct rafter_case *k,
		 const double off[], double ice)
{
	const struct rafter_mesh *m = s->mesh;
	const struct load_combination *f = k->k;
	const size_t pieces = m->grid.beam.cuts - 1;
	const double c2 = c->cos_theta * c->cos_theta, width = s->width;
	/* the roof shakes up and down with the ground */
	const double dead = (f->D + (k->quake != 0 ? f->Ev * c->quake.vertical : 0)) * s->dead,
		     snow = f->S * k->roof_snow * width, live = f->Lr * c->r->Lr * width;
	const double *const wind = f->W > 0 ? wind_of(c, s, k->lift) : NULL;
	const double *const drift = s->array && k->snow_case >= 0 && s->share > 0
					    ? m->beside[k->snow_case]
					    : NULL;

	for (size_t i = 0; i < pieces; i++) {
		double v = dead + live * (1 - s->live_share * m->spared[i]) +
			   snow * (1 - s->share * m->covered[i]) *
				   (off ? 1 - off[m->piece[i]] : 1);

		if (drift)
			v += f->S * drift[i] * width;
		s->w[i] = v * c2 + (wind ? f->W * width * wind[i] : 0);
	}
	for (size_t i = 0; ice > 0 && i < pieces; i++)
		if (on_tail(s, m->piece[i]))
			s->w[i] += ice * width * c2;
	s->w[pieces] = 0;
	for (size_t i = 0; i <= pieces; i++)
		s->P[i] = 0;
	for (int i = 0; i < s->feet; i++)
		s->P[s->foot[i].cut] += s->foot[i].area *
					foot_force(c, m, &s->foot[i], k,
						   off ? off[s->foot[i].piece] : 0);
	if (k->tails_only)
		clear_spans(s);
}

void rafter_stage_solve_span(struct context *c, struct rafter_stage *s, const struct rafter_case *k,
			     struct rafter_forces *out, struct beam_pieces *pieces)
{
	load(c, s, k, NULL, 0);
	rafter_grid_solve(&s->mesh->grid, s->w, s->P, s->foot_cut, (size_t)s->feet, out, pieces);
}

double rafter_stage_bow(const struct rafter_stage *s, const struct beam_pieces *pieces)
{
	const struct beam_grid *g = &s->mesh->grid.beam;
	const struct beam beam = {
		.start = g->x[0], .end = g->x[g->cuts - 1], .supports = g->supports, .support = g->support};
	struct beam_bow bow;

	beam_deflect_in(&beam, pieces, 1, &bow);
	return bow.span.value;
}

void rafter_stage_solve_whole(struct context *c, struct rafter_stage *s, const struct rafter_case *k,
			      const double off[], double ice, struct whole_beam *out,
			      struct beam_forces *forces)
{
	const struct beam_grid *g = &s->mesh->grid.beam;

	load(c, s, k, off, ice);
	beam_grid_solve(g, s->w, s->P, forces, &out->pieces);
	out->beam = (struct beam){.start = g->x[0],
				  .end = g->x[g->cuts - 1],
				  .supports = g->supports,
				  .support = g->support,
				  .points = (size_t)s->feet,
				  .point = out->point};
	for (int i = 0; i < s->feet; i++)
		out->point[i] = (struct beam_point){g->x[s->foot_cut[i]], s->P[s->foot_cut[i]]};
}
