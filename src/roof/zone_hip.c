/* SPDX-License-Identifier: MIT */
/* A plane of a hip roof over 7 degrees: ASCE/SEI 7-10 Fig. 30.4-2B, 7-16 Figs. 30.3-2E to 2I, 7-22
   Figs. 30.3-2E to 2G (from memory). A strip along the eave, one on each side of every hip and of
   the ridge, all of width a on plan. The plane is cut along the strips' inner edges and each piece
   is judged in its middle, so the pieces tile the plane.

   All planes have one pitch, so on plan a hip runs at 45 degrees, and a strip of width a beside it
   is a sqrt(2) wide along the eave. Corners are taken where strips overlap, which is more than the
   squares of the figures. 7-10: for hip roofs of 25 degrees or less zone 3 counts as zone 2. */
#include "roof/zone_hip.h"

#include <math.h>

/* 12: one plane cut by four lines gives 11 pieces at most. */
#define PIECE_MAX 12

struct pieces {
	int n;
	struct polygon at[PIECE_MAX];
};

static void keep(struct pieces *out, struct polygon p, double least)
{
	if (p.n >= 3 && polygon_area(&p) > least && out->n < PIECE_MAX)
		out->at[out->n++] = p;
}

/* Parts every piece by the line from a to b. */
static void split(struct pieces *pieces, struct point a, struct point b, double least)
{
	struct pieces out = {.n = 0};

	for (int i = 0; i < pieces->n; i++) {
		keep(&out, polygon_cut(&pieces->at[i], a, b), least);
		keep(&out, polygon_cut(&pieces->at[i], b, a), least);
	}
	*pieces = out;
}

static struct point middle(const struct polygon *p)
{
	struct point sum = {0.0, 0.0};

	for (int i = 0; i < p->n; i++) {
		sum.x += p->at[i].x;
		sum.y += p->at[i].y;
	}
	return (struct point){sum.x / p->n, sum.y / p->n};
}

static enum zone zone_at(const struct zone_plane *p, struct point q)
{
	const double plan = q.y * cos(p->theta), run = p->slope * cos(p->theta);
	const double along = fmin(q.x, p->length - q.x);
	const bool eave = plan < p->a, hip = along < plan + sqrt(2.0) * p->a;
	const bool ridge = p->upper > 0.0 && run - plan < p->a;

	if (p->edition == ASCE7_10) {
		const bool corner = hip && (eave || ridge);

		if (corner && !at_most(p->theta, 25.0 * RAD_PER_DEG))
			return ZONE_3;
		return eave || hip || ridge ? ZONE_2 : ZONE_1;
	}
	if (p->edition == ASCE7_22) {
		if (eave)
			return ZONE_3;
		return hip || ridge ? ZONE_2 : ZONE_1;
	}
	if (eave)
		return hip ? ZONE_3 : ZONE_2E;
	return hip || ridge ? ZONE_2R : ZONE_1;
}

void zone_hip_fill(struct zone_map *m, const struct zone_plane *p)
{
	const double up = p->a / cos(p->theta), beside = sqrt(2.0) * p->a;
	const double run = p->slope * cos(p->theta), L = p->length, S = p->slope;
	const double least = 1e-9 * L * S;
	struct pieces pieces = {.n = 1, .at = {zone_plane_outline(p)}};

	split(&pieces, (struct point){0.0, up}, (struct point){L, up}, least);
	split(&pieces, (struct point){beside, 0.0}, (struct point){beside + run, S}, least);
	split(&pieces, (struct point){L - beside, 0.0}, (struct point){L - beside - run, S}, least);
	if (p->upper > 0.0)
		split(&pieces, (struct point){0.0, S - up}, (struct point){L, S - up}, least);
	for (int i = 0; i < pieces.n; i++)
		m->shape[m->shapes++] = (struct zone_shape){
			.zone = zone_at(p, middle(&pieces.at[i])), .shape = pieces.at[i]};
}
