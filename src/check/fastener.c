/* SPDX-License-Identifier: MIT */
/* The lag screws of one foot: what lies between head and rafter, the lengths that follow, and what they carry under the load
   duration of each combination. */
#include "check/fastener.h"

#include <math.h>

#include "check/nds.h"
#include "resist/combined.h"
#include "resist/lrfd.h"
#include "resist/standoff.h"

/* Thickness between the base plate's underside and the rafter face, and the part of it that gives the screw no side
   bearing. Solid deck counts as a gap too: NDS tabulates no three-layer joint, and a gap is the safe side. */
void fastener_layers(const struct context *c, double *all, double *gap)
{
	const double deck = c->job->roof.deck_thickness, covering = c->built_up;

	*all = c->layers;
	*gap = c->layers_gap;
	if (c->layers_given)
		return;
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
}

void fastener_unrated(struct context *c, const char *why)
{
	REMARK_T(c->r, FASTENER_UNRATED, (0), why);
}

void fastener_gap_tell(struct context *c, double gap, double Z, double Z0)
{
	if (gap > 0 && Z < Z0 / 2)
		REMARK(c->r, GAP_COST, gap, Z, Z0);
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
	c->hole = c->screw.D * (job->fastener.rows > 1 ? job->fastener.rows : 1);
	c->hole_depth = c->screw.p_tot;
	remarks(c, &c->screw);
	fastener_group(c, c->screw.D, c->screw.l_m, t);
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
	nds_tell(c);
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
	struct lag_lateral bearing;

	if (lag_lateral_find(NULL, &c->screw, c->G, 0, job->mount.plate_thickness, 0, &bearing))
		fastener_gap_tell(c, gap, c->lateral.yield.value, bearing.yield.value);
	f->W = lag_withdrawal(t, c->G, c->screw.D);
	f->Z = c->lateral.yield.value;
	f->mode = yield_mode_text(c->lateral.yield.mode);
	c->Cg = fastener_group_factor(c, c->screw.D, t);
	const bool stands = fastener_stands(c, c->screw.D, t);

	c->fastener_rated = c->lateral.permitted && stands;
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

/* One lag screw under a load duration; false where its factors are not known. */
static bool screw_carries(const struct context *c, struct trace *trace, double CD, struct screw_memo *out)
{
	struct connection_factors k;

	if (!connection_factors_find(c->lrfd ? 1 : CD, c->job->framing.wet == ANSWER_YES, fastener_temperature(c), false,
	                             &k))
		return false;
	out->CD = CD;
	out->Wp = lag_withdrawal_capacity(trace, c->r->fastener.W, c->screw.p_t, &k);
	out->Z = lateral_adjusted(trace, c->r->fastener.Z, k.CD, k.CM_lateral, k.Ct, c->Cg, c->placement.C_delta,
	                          k.Ceg_lateral);
	out->tension = lag_tension(trace, c->screw.Dr);
	if (!c->lrfd)
		return true;
	out->Wp = lrfd_connection(trace, out->Wp, CD);
	out->Z = lrfd_connection(trace, out->Z, CD);
	out->tension = lrfd_steel(trace, out->tension);
	return true;
}

/* The same, worked out once for each duration: every load case of every foot asks for it again. NULL: not known. */
static const struct screw_memo *screw_known(struct context *c, double CD)
{
	for (int i = 0; i < c->screws; i++)
		if (same_value(c->carries[i].CD, CD))
			return &c->carries[i];
	struct screw_memo *const m = &c->carries[c->screws < LUMBER_MEMO ? c->screws : LUMBER_MEMO - 1];

	if (!screw_carries(c, NULL, CD, m))
		return NULL;
	if (c->screws < LUMBER_MEMO)
		c->screws++;
	return m;
}

bool fastener_check(struct context *c, struct trace *trace, const struct force *f, double up, double slope,
                    struct check_value check[CHECK_COUNT])
{
	const struct job *job = c->job;
	const int n = job->fastener.count;
	double couple;

	if (job->fastener.kind != FASTENER_LAG_SCREW)
		return fastener_kind_check(c, trace, f, up, slope, check);
	const struct screw_memo *const k = c->fastener_rated ? screw_known(c, f->CD) : NULL;
	struct screw_memo told;

	if (!k || !standoff_pull(trace, slope, c->foot_height, job->mount.lever_arm, &couple))
		return false;
	/* the couple is not shared alike: all of it is put on one screw, at the shorter arm */
	const double pull = fmax(0, up / n + couple);

	if (trace)
		screw_carries(c, trace, f->CD, &told);
	keep_worst(&check[CHECK_WITHDRAWAL], value(pull, k->Wp, f, f->CD));
	keep_worst(&check[CHECK_LATERAL], value(fabs(slope) / n, k->Z, f, f->CD));
	if (trace || (pull > 0 && slope > 0)) {
		const struct combined both = combined_check(trace, pull * n, slope, n, k->Wp, k->Z);

		if (pull > 0 && slope > 0)
			keep_worst(&check[CHECK_COMBINED], value(both.resultant, both.capacity, f, f->CD));
	}
	keep_worst(&check[CHECK_TENSION], value(pull, k->tension, f, 1));
	return true;
}
