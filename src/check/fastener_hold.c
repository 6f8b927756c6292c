/* SPDX-License-Identifier: MIT */
/* One load case on fasteners that are no lag screws: pull and side load of one of them against what
   it carries. Where no standard says how the two go together, their shares are added (our rule, the
   safe side). */
#include "check/fastener.h"

#include <math.h>

#include "check/load_case.h"
#include "resist/bolt.h"
#include "resist/combined.h"
#include "resist/lrfd.h"
#include "resist/standoff.h"

static bool given(double x)
{
	return isfinite(x) && x > 0;
}

/* One load case on one of the n fasteners of a foot. */
struct demand {
	const struct context *c;
	struct trace *trace;
	const struct force *f;
	struct connection_factors k;
	double pull, side; /* N */
	double factor;     /* CD in ASD, lambda in LRFD */
	struct check_value *check;
};

static void together(const struct demand *d, double T_a, double V_a, double CD)
{
	if (d->pull > 0 && d->side > 0)
		fastener_keep(d->check, CHECK_TOGETHER,
			      linear_interaction(d->trace, d->pull, T_a, d->side, V_a), 1, d->f,
			      CD);
}

/* By the job's method: k.CD is 1 in LRFD, and f->CD the time effect factor. */
static double wood_value(const struct demand *d, double adjusted)
{
	return d->c->lrfd ? lrfd_connection(d->trace, adjusted, d->f->CD) : adjusted;
}

static double steel_value(const struct demand *d, double allowable)
{
	return d->c->lrfd ? lrfd_steel(d->trace, allowable) : allowable;
}

static double side_value(const struct demand *d)
{
	const struct context *c = d->c;

	return wood_value(d, lateral_adjusted(d->trace, c->r->fastener.Z, d->k.CD, d->k.CM_lateral,
					      d->k.Ct, c->Cg, c->placement.C_delta,
					      d->k.Ceg_lateral));
}

/* Wood screw and hanger bolt: Eq. 12.4-1. */
static void hold_thread(const struct demand *d)
{
	const struct context *c = d->c;
	const double Wp = wood_value(
		d, lag_withdrawal_capacity(d->trace, c->r->fastener.W, c->screw.p_t, &d->k));
	const double Z = side_value(d);
	const struct combined both = combined_check(d->trace, d->pull, d->side, 1, Wp, Z);

	fastener_keep(d->check, CHECK_PULL, d->pull, Wp, d->f, d->factor);
	fastener_keep(d->check, CHECK_SIDE, d->side, Z, d->f, d->factor);
	if (d->pull > 0 && d->side > 0)
		fastener_keep(d->check, CHECK_PULL_SIDE, both.resultant, both.capacity, d->f,
			      d->factor);
	fastener_keep(d->check, CHECK_BREAK, d->pull,
		      steel_value(d, lag_tension(d->trace, c->screw.Dr)), d->f, 1);
}

static void hold_tested(const struct demand *d)
{
	const struct job_fastener *s = &d->c->job->fastener;
	const double CD = s->duration == DURATION_TEN_YEARS ? d->k.CD : 1;

	fastener_keep(d->check, CHECK_PULL, d->pull, s->allowable_uplift * CD, d->f, CD);
	fastener_keep(d->check, CHECK_SIDE, d->side, s->allowable_side * CD, d->f, CD);
	together(d, s->allowable_uplift * CD, s->allowable_side * CD, CD);
}

/* Fc_perp knows no load duration, but LRFD gives it its own KF and phi. */
static double washer_value(const struct demand *d)
{
	const struct context *c = d->c;

	if (!c->lrfd)
		return c->fastening.washer;
	return bolt_washer_bearing(d->trace, c->job->fastener.washer_diameter, c->hole,
				   c->job->framing.breadth, BOLT_FROM_END,
				   lrfd_bearing(d->trace, c->fastening.Fc_perp, d->f->CD));
}

static void hold_bolt(const struct demand *d)
{
	const double washer = washer_value(d);
	const double tension = steel_value(d, d->c->fastening.tension), Z = side_value(d);

	fastener_keep(d->check, CHECK_WASHER, d->pull, washer, d->f, 1);
	fastener_keep(d->check, CHECK_BREAK, d->pull, tension, d->f, 1);
	fastener_keep(d->check, CHECK_SIDE, d->side, Z, d->f, d->factor);
	together(d, fmin(washer, tension), Z, d->factor);
}

static void hold_sheet(const struct demand *d)
{
	const struct sheet_screw *s = &d->c->fastening.strength;
	const struct sheet_screw_joint *j = &d->c->fastening.sheet;

	fastener_keep(d->check, CHECK_PULL, d->pull, s->pull_allowed, d->f, 1);
	fastener_keep(d->check, CHECK_SIDE, d->side, s->shear_allowed, d->f, 1);
	if (d->pull > 0 && d->side > 0)
		fastener_keep(d->check, CHECK_TOGETHER,
			      sheet_screw_combined(d->trace, s, j, d->pull, d->side), 1, d->f, 1);
}

/* The clamp's own values are the foot's (attachment.c); here what the clamp hangs on. */
static void hold_seam(const struct demand *d)
{
	const struct job_fastener *s = &d->c->job->fastener;
	const double clip = d->pull / s->clips;

	together(d, d->c->job->mount.allowable_uplift, d->c->job->mount.allowable_slope, 1);
	if (given(s->seam_allowable))
		fastener_keep(d->check, CHECK_SEAM, d->pull, s->seam_allowable, d->f, 1);
	if (given(s->clip_allowable))
		fastener_keep(d->check, CHECK_CLIP, clip, s->clip_allowable, d->f, 1);
	if (given(s->clip_screw_allowable))
		fastener_keep(d->check, CHECK_CLIP_SCREW, clip, s->clip_screw_allowable, d->f, 1);
}

bool fastener_kind_check(const struct context *c, struct trace *trace, const struct force *f,
			 double up, double slope, struct check_value check[CHECK_COUNT])
{
	const struct job *job = c->job;
	const int n = job->fastener.count;
	const enum fastener_kind kind = job->fastener.kind;
	/* a clamp or deck mount is tested with its own height, a hanger bolt bends by it */
	const bool couple_inside = kind == FASTENER_SEAM_CLAMP || kind == FASTENER_DECK_MOUNT ||
				   kind == FASTENER_HANGER_BOLT;
	/* tested hardware meets the combinations of ASD whatever the method (case_list.c) */
	const bool factored = c->lrfd && !fastener_is_tested(kind);
	struct demand d = {.c = c, .trace = trace, .f = f, .check = check};
	double couple = 0;

	if (!c->fastener_rated ||
	    !connection_factors_find(factored ? 1 : f->CD, job->framing.wet == ANSWER_YES,
				     fastener_temperature(c), false, &d.k))
		return false;
	d.factor = factored ? f->CD : d.k.CD;
	if (!couple_inside &&
	    !standoff_pull(trace, slope, c->foot_height, job->mount.lever_arm, &couple))
		return false;
	d.pull = fmax(0, up / n + couple);
	d.side = fabs(slope) / n;
	switch (kind) {
	case FASTENER_LAG_SCREW:
		return false;
	case FASTENER_WOOD_SCREW:
	case FASTENER_HANGER_BOLT:
		hold_thread(&d);
		return true;
	case FASTENER_STRUCTURAL_SCREW:
		hold_tested(&d);
		return true;
	case FASTENER_THROUGH_BOLT:
		hold_bolt(&d);
		return true;
	case FASTENER_SHEET_SCREW:
		hold_sheet(&d);
		return true;
	case FASTENER_SEAM_CLAMP:
		d.pull = fmax(0, up);
		d.side = fabs(slope);
		hold_seam(&d);
		return true;
	case FASTENER_DECK_MOUNT:
		d.pull = fmax(0, up);
		d.side = fabs(slope);
		together(&d, job->mount.allowable_uplift, job->mount.allowable_slope, 1);
		return true;
	}
	return false;
}
