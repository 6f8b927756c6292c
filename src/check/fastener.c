/* SPDX-License-Identifier: MIT */
/* The lag screws of one foot: what lies between head and rafter, the lengths that follow, and what they carry under the load
   duration of each combination. */
#include "check/fastener.h"

#include <math.h>

#include "resist/combined.h"
#include "resist/lrfd.h"
#include "resist/standoff.h"

/* Thickness between the base plate's underside and the rafter face, and the part of it that gives the screw no side
   bearing. Solid deck counts as a gap too: NDS tabulates no three-layer joint, and a gap is the safe side. */
void fastener_layers(const struct context *c, double *all, double *gap)
{
	const double deck = c->job->roof.deck_thickness, covering = c->built_up;

	*all = *gap = 0;
	switch (c->job->mount.seat) {
	case SEAT_ON_WOOD:
		return;
	case SEAT_ON_DECK:
		*all = *gap = deck;
		return;
	case SEAT_UNKNOWN:
	case SEAT_OVER_LAYERS:
		*all = *gap = deck + covering;
		return;
	case SEAT_RIGID_POST:
		*all = deck + covering;
		return;
	}
}

static void remarks(struct context *c, const struct lag_screw_geometry *s)
{
	const struct job *job = c->job;
	const double least = lag_penetration_least(NULL, s->D);

	if (job->mount.seat == SEAT_UNKNOWN)
		REMARK(c->r, SEAT_UNKNOWN, c->r->fastener.gap);
	if (!at_least(s->p, least))
		REMARK(c->r, PENETRATION, s->p);
	if (!lag_edge_fits(job->framing.breadth, s->D, job->fastener.drilling_tolerance))
		REMARK(c->r, EDGE, job->fastener.drilling_tolerance,
		       fmax(0, lag_edge_room(NULL, job->framing.breadth, s->D)));
}

/* Screws in a row along the rafter, load along it. The steel plate is taken no wider than the rafter, which is the safe side:
   a wider one is stiffer and shares better. */
double fastener_group_factor(const struct context *c, double D, struct trace *t)
{
	const struct job *job = c->job;
	const double E_steel = 29e6 * N_PER_LBF / (M_PER_IN * M_PER_IN); /* 29,000,000 psi */
	const double wood = c->lumber.E * job->framing.breadth * job->framing.depth;
	const double plate = E_steel * job->mount.plate_thickness * job->framing.breadth;

	if (job->fastener.count < 2 || !c->lumber_known)
		return 1;
	return connection_group_factor(t, job->fastener.count, D, job->fastener.spacing, wood, plate);
}

void fastener_unrated(struct context *c, const char *why)
{
	REMARK_T(c->r, FASTENER_UNRATED, (0), why);
}

/* The lengths: what reaches into the rafter, and what that asks of the crew. False where the screw is no listed lag. */
static bool lengths(struct context *c, double *gap)
{
	const struct job *job = c->job;
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	double all;

	fastener_layers(c, &all, gap);
	f->gap = *gap;
	f->t_up = job->mount.plate_thickness + all;
	if (!lag_screw_geometry_find(t, job->fastener.diameter, job->fastener.length, job->fastener.thread_length,
	                             f->t_up, job->framing.depth, &c->screw))
		return false;
	f->p_tot = c->screw.p_tot;
	f->p = c->screw.p;
	f->p_t = c->screw.p_t;
	f->l_m = c->screw.l_m;
	c->hole = c->screw.D;
	c->hole_depth = c->screw.p_tot;
	f->edge_room = lag_edge_room(t, job->framing.breadth, c->screw.D);
	remarks(c, &c->screw);
	return true;
}

void fastener_prepare(struct context *c)
{
	const struct job *job = c->job;
	struct fastener_result *f = &c->r->fastener;
	struct trace *t = &c->r->trace[SECTION_FASTENER];
	double gap;

	f->lead_hole_low = f->lead_hole_high = (double)NAN;
	c->fastener_rated = false;
	if (job->fastener.kind != FASTENER_LAG_SCREW) {
		fastener_kind_prepare(c);
		return;
	}
	if (!lengths(c, &gap)) {
		fastener_unrated(c, "its diameter, its length or the thickness of what it passes through is not known to the "
		           "published tables.");
		return;
	}
	if (c->G <= 0 || !lag_withdrawal_covers(c->G, c->screw.D)) {
		fastener_unrated(c, "the wood's specific gravity is not known or outside the published range.");
		return;
	}
	if (!lag_lead_hole(t, c->screw.D, c->G, &f->lead_hole_low, &f->lead_hole_high))
		f->lead_hole_low = f->lead_hole_high = (double)NAN;
	if (!lag_lateral_find(t, &c->screw, c->G, 0, job->mount.plate_thickness, gap, &c->lateral)) {
		fastener_unrated(c, "no wood is reached, or the published tables have no steel plate as thin as the foot's.");
		return;
	}
	f->W = lag_withdrawal(t, c->G, c->screw.D);
	f->Z = c->lateral.yield.value;
	f->mode = yield_mode_text(c->lateral.yield.mode);
	c->Cg = fastener_group_factor(c, c->screw.D, t);
	c->placement = screw_placement(t, c->screw.D, job->fastener.end_distance,
	                               job->fastener.count > 1 ? job->fastener.spacing : (double)NAN,
	                               BEARS_TOWARD_END);
	if (!c->placement.permitted || !c->placement.withdrawal_permitted)
		fastener_unrated(c, "the screws stand closer to each other or to the rafter's end than NDS Tables 12.5.1A, B "
		           "and E permit.");
	c->fastener_rated = c->lateral.permitted && c->placement.permitted && c->placement.withdrawal_permitted;
}

double fastener_temperature(const struct context *c)
{
	const double T = c->job->framing.temperature;

	return isfinite(T) && T > 0 ? T : (double)NAN;
}

static struct check_value value(double demand, double capacity, const struct force *f, double CD)
{
	const double ratio = capacity > 0 ? demand / capacity : demand > 0 ? HUGE_VAL : 0;

	return (struct check_value){ true, demand, capacity, ratio, f->combination, CD };
}

static void keep_worst(struct check_value *kept, struct check_value v)
{
	if (!kept->rated || v.ratio > kept->ratio)
		*kept = v;
}

void fastener_keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand, double capacity,
                   const struct force *f, double CD)
{
	keep_worst(&check[id], value(demand, capacity, f, CD));
}

bool fastener_check(const struct context *c, struct trace *trace, const struct force *f, double up, double slope,
                    struct check_value check[CHECK_COUNT])
{
	const struct job *job = c->job;
	const int n = job->fastener.count;
	struct connection_factors k;
	double couple;

	if (job->fastener.kind != FASTENER_LAG_SCREW)
		return fastener_kind_check(c, trace, f, up, slope, check);
	if (!c->fastener_rated || !connection_factors_find(c->lrfd ? 1 : f->CD, job->framing.wet == ANSWER_YES,
	                                                   fastener_temperature(c), false, &k))
		return false;
	if (!standoff_pull(trace, slope, c->foot_height, job->mount.lever_arm, &couple))
		return false;
	/* the couple is not shared alike: all of it is put on one screw, at the shorter arm */
	const double pull = fmax(0, up / n + couple);
	double Wp = lag_withdrawal_capacity(trace, c->r->fastener.W, c->screw.p_t, &k);
	double Z = lateral_adjusted(trace, c->r->fastener.Z, k.CD, k.CM_lateral, k.Ct, c->Cg, c->placement.C_delta,
	                            k.Ceg_lateral);
	double tension = lag_tension(trace, c->screw.Dr);

	if (c->lrfd) {
		Wp = lrfd_connection(trace, Wp, f->CD);
		Z = lrfd_connection(trace, Z, f->CD);
		tension = lrfd_steel(trace, tension);
	}
	const struct combined both = combined_check(trace, pull * n, slope, n, Wp, Z);

	keep_worst(&check[CHECK_WITHDRAWAL], value(pull, Wp, f, f->CD));
	keep_worst(&check[CHECK_LATERAL], value(fabs(slope) / n, Z, f, f->CD));
	if (pull > 0 && slope > 0)
		keep_worst(&check[CHECK_COMBINED], value(both.resultant, both.capacity, f, f->CD));
	keep_worst(&check[CHECK_TENSION], value(pull, tension, f, 1));
	return true;
}
