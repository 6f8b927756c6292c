/* SPDX-License-Identifier: MIT */
/* Several fasteners in one foot: how far from each other, from the rafter's end and edges, and what a
   row loses against its single fasteners. NDS-2018 11.3.6, 12.1.5.7, 12.5.1.

   Rows run along the rafter, as the force does; all of a foot's rows are alike and not staggered.
   Under 1/4 in NDS asks only that the wood does not split; what its commentary recommends with lead
   holes is taken as the least (our rule), and what it recommends without is told. */
#include "check/fastener.h"

#include <math.h>

#include "check/check_steps.h"

/* 12.5.1.3: across the grain of sawn lumber, unless detailed for shrinkage. */
#define ACROSS_MOST (5 * M_PER_IN)

/* in: b g r e */
static double rows_room(const double *in)
{
	return in[0] / 2.0 - (in[2] - 1.0) * in[1] / 2.0 - in[3];
}

const struct step step_fastener_rows_room = {
	.name = "fastener-rows-room",
	.symbol = "room",
	.unit = UNIT_IN,
	.title = "how far the outer row may miss its place on the rafter",
	.formula = "b/2 - (r - 1) g/2 - e",
	.clause = {"NDS-2018 Tables 12.5.1C, 12.5.1D"},
	.confidence = ONE_SOURCE,
	.note = "e 1.5 D; above l/D of 6 no less than half of g",
	.in = {{"b", UNIT_IN, "breadth of the rafter"},
	       {"g", UNIT_IN, "between two rows"},
	       {"r", UNIT_NONE, "rows"},
	       {"e", UNIT_IN, "edge distance"}},
	.value = rows_room};

static int rows(const struct job_fastener *f)
{
	return f->rows > 1 ? f->rows : 1;
}

int fastener_in_row(const struct job_fastener *f)
{
	return f->count / rows(f);
}

/* Table 12.5.1C, load along the grain; l: bearing length in the rafter. */
static double edge_distance(const struct job_fastener *f, double D, double l)
{
	const double least = 1.5 * D;

	return rows(f) > 1 && l > 6 * D ? fmax(least, f->row_spacing / 2) : least;
}

static void rows_stand(struct context *c, double D, double l, struct trace *t)
{
	const struct job_fastener *f = &c->job->fastener;
	const double across = (rows(f) - 1) * f->row_spacing;
	const double e = edge_distance(f, D, l), b = c->job->framing.breadth;

	c->r->fastener.edge_room =
		STEP(t, step_fastener_rows_room, b, f->row_spacing, rows(f), e);
	if (!at_most(2 * (f->drilling_tolerance + e) + across, b))
		REMARK(c->r, EDGE_ROWS, f->drilling_tolerance, fmax(0, c->r->fastener.edge_room), e);
	if (!at_least(f->row_spacing, 1.5 * D) || !at_most(across, ACROSS_MOST)) {
		c->too_near = true;
		fastener_unrated(c, "its rows stand nearer than 1.5 D (NDS Table 12.5.1D) or more than 5 in apart in all "
				    "(12.5.1.3).");
	}
}

static void edges(struct context *c, double D, double l, struct trace *t)
{
	const struct job_fastener *f = &c->job->fastener;
	const double b = c->job->framing.breadth;

	if (rows(f) > 1) {
		rows_stand(c, D, l, t);
		return;
	}
	c->r->fastener.edge_room = lag_edge_room(t, b, D);
	if (!lag_edge_fits(b, D, f->drilling_tolerance))
		REMARK(c->r, EDGE, f->drilling_tolerance, fmax(0, c->r->fastener.edge_room));
}

static void small_screws(struct context *c, double D)
{
	const struct job_fastener *f = &c->job->fastener;
	const double spacing = fastener_in_row(f) > 1 ? f->spacing : HUGE_VAL;
	const double end = isfinite(f->end_distance) ? f->end_distance : HUGE_VAL;
	struct small_screw_room room;

	if (!small_screw_room_find(D, &room))
		return;
	if (!at_least(spacing, room.spacing_bored) || !at_least(end, room.end_bored)) {
		c->too_near = true;
		fastener_unrated(c, "the screws stand nearer to each other or to the rafter's end than 5 D, the least that the "
				    "NDS commentary recommends even with lead holes (Table C12.1.5.7).");
		return;
	}
	if (!at_least(spacing, room.spacing) || !at_least(end, room.end))
		REMARK(c->r, SMALL_SCREW_BORED, room.spacing);
	if (!at_most(2 * (room.edge + f->drilling_tolerance), c->job->framing.breadth))
		REMARK(c->r, SMALL_SCREW_EDGE, room.edge, f->drilling_tolerance);
}

void fastener_group(struct context *c, double D, double l, struct trace *t)
{
	edges(c, D, l, t);
	small_screws(c, D);
}

bool fastener_stands(struct context *c, double D, struct trace *t)
{
	const struct job_fastener *f = &c->job->fastener;
	/* bolts know no pull along the shank but their washer's: Table 12.5.1E is for lag screws */
	const bool bolt = f->kind == FASTENER_THROUGH_BOLT;

	c->placement = screw_placement(t, D, f->end_distance,
				       fastener_in_row(f) > 1 ? f->spacing : (double)NAN,
				       BEARS_TOWARD_END);
	if (c->placement.permitted && (bolt || c->placement.withdrawal_permitted))
		return !c->too_near;
	fastener_unrated(c, "the fasteners stand closer to each other or to the rafter's end than NDS Tables 12.5.1A, B and "
			    "E permit.");
	return false;
}

/* The steel plate is taken no wider than the rafter, which is the safe side: a wider one is stiffer and
   shares better. */
double fastener_group_factor(const struct context *c, double D, struct trace *t)
{
	const struct job *job = c->job;
	const double E_steel = 29e6 * N_PER_LBF / (M_PER_IN * M_PER_IN); /* 29,000,000 psi */
	const double wood = c->lumber.E * job->framing.breadth * job->framing.depth;
	const double plate = E_steel * job->mount.plate_thickness * job->framing.breadth;
	const int n = fastener_in_row(&job->fastener);

	if (n < 2 || !c->lumber_known)
		return 1;
	return connection_group_factor(t, n, D, job->fastener.spacing, wood, plate);
}
