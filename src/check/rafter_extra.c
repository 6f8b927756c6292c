/* SPDX-License-Identifier: MIT */
/* Holes, ties, seats and thrust of rafters.

   The net section counts where a foot stands, at the moment there: the hole is the screw's own
   diameter as deep as the screw reaches, the top fibre's share of the section modulus stands for
   both fibres (it is the lesser). Raised ties take the allowed span down by a factor; the moment a
   span brings grows with its square, so the bending value is taken down by the square. */
#include "check/rafter_extra.h"

#include <math.h>
#include <stdlib.h>

#include "check/wind_rule.h"
#include "resist/heel.h"
#include "resist/member.h"
#include "table/lookup_limit.h"
#include "table/lookup_wood.h"

static void ties(struct context *c)
{
	const struct job *job = c->job;
	const double h = job->framing.tie_height;
	const double H = job->building.width / 2 * tan(c->theta);

	c->tie_factor = 1;
	if (!isfinite(h) || h <= 0 ||
	    (job->building.form != FORM_GABLE && job->building.form != FORM_HIP) ||
	    job->framing.ridge == RIDGE_BEAM || job->framing.ridge == RIDGE_WALL)
		return;
	if (!raised_tie_factor(&c->r->trace[SECTION_RAFTER], h, H, &c->tie_factor)) {
		c->tie_factor = 1; /* rated as a bound beside the reason for an engineer */
		REMARK(c->r, TIES_TOO_HIGH, h, H);
		return;
	}
	if (c->tie_factor < 1)
		REMARK(c->r, RAISED_TIES, h, h / H, c->tie_factor);
}

/* Uniform over both slopes, the array's weight too: more than what comes. */
static void heel(struct context *c)
{
	const struct job *job = c->job;
	const double roof = job->roof.dead_load / c->cos_theta,
		     array = c->r->dead.array_filled / c->cos_theta;
	double snow = 0;

	if ((job->building.form != FORM_GABLE && job->building.form != FORM_HIP) ||
	    job->framing.kind != FRAMING_RAFTER || c->theta <= 0 ||
	    job->framing.ridge == RIDGE_BEAM || job->framing.ridge == RIDGE_WALL)
		return;
	for (int i = 0; i < c->snow.cases; i++)
		snow = fmax(snow, c->snow.snow[i].roof);
	REMARK(c->r, HEEL_THRUST,
	       heel_thrust(NULL, roof + array + fmax(snow, c->r->Lr), job->building.width,
			   c->theta),
	       heel_thrust(NULL, roof + fmax(c->snow.ps_before, c->r->Lr), job->building.width,
			   c->theta));
}

/* An inner support that the rafter may run over: the span is shorter than the run from wall to
 * ridge. */
static bool runs_on(const struct context *c)
{
	const struct job_building *b = &c->job->building;
	const double run = b->form == FORM_GABLE || b->form == FORM_HIP ? b->width / 2 : b->width;

	return !(c->job->framing.inner_support > 0) && at_most(c->job->framing.span, run - M_PER_FT);
}

/* Spans that the job tells one by one; rafter_whole.c rates them as they are. */
static void inner_support(struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	if (!(f->inner_support > 0))
		return;
	const double last = f->supports > 0 ? f->support[f->supports - 1] : f->inner_support;

	REMARK_T(c->r, INNER_SUPPORT, (f->inner_support, fmax(0, plane_run(c) - last), 1 + f->supports),
		 f->continuous == ANSWER_YES  ? "in one piece"
		 : f->continuous == ANSWER_NO ? "as pieces that meet there"
					      : "both in one piece and as pieces that meet there, the worse counts");
}

bool rafter_in_one_piece(const struct context *c)
{
	return c->job->framing.inner_support > 0 && c->job->framing.continuous == ANSWER_YES;
}

/* Depth over breadth by nominal size ("2x8": 4) where the rafter has that size, else as it is,
   which of dressed lumber is more. */
static double nominal_ratio(const struct job_framing *f)
{
	const struct lumber_section_row *row = f->size[0] ? lumber_section_row(f->size) : NULL;
	char *end;
	const long b = strtol(f->size, &end, 10);
	const long d = *end == 'x' ? strtol(end + 1, NULL, 10) : 0;

	if (b <= 0 || d <= 0 || !row || !at_least(f->breadth, row->b_in * M_PER_IN) ||
	    !at_most(f->depth, row->d_in * M_PER_IN))
		return f->depth / f->breadth;
	return (double)d / (double)b;
}

bool rafter_edge_free(const struct context *c)
{
	return at_most(nominal_ratio(&c->job->framing), limit_of(LIMIT_FREE_EDGE_RATIO));
}

bool rafter_ends_hold(const struct context *c)
{
	return c->job->framing.ends_held == ANSWER_YES &&
	       at_most(nominal_ratio(&c->job->framing), limit_of(LIMIT_HELD_ENDS_RATIO));
}

static void ends_held(struct context *c)
{
	const double ratio = nominal_ratio(&c->job->framing);

	if (rafter_edge_free(c)) {
		REMARK(c->r, EDGE_FREE, ratio, limit_of(LIMIT_FREE_EDGE_RATIO));
		return;
	}
	if (c->job->framing.ends_held != ANSWER_YES)
		return;
	if (rafter_ends_hold(c))
		REMARK(c->r, ENDS_HELD, ratio, limit_of(LIMIT_HELD_ENDS_RATIO));
	else
		REMARK(c->r, ENDS_TOO_DEEP, ratio, limit_of(LIMIT_HELD_ENDS_RATIO));
}

void rafter_ends_tell(struct context *c, const struct pass *pass)
{
	const struct job_framing *f = &c->job->framing;

	if (f->ends_held != ANSWER_UNKNOWN || c->job->roof.ceiling != CEILING_NONE || !(pass->link_ratio[LINK_RAFTER] > 1) ||
	    pass->link_governs[LINK_RAFTER] != CHECK_RAFTER_UPLIFT ||
	    !at_most(nominal_ratio(f), limit_of(LIMIT_HELD_ENDS_RATIO)))
		return;
	REMARK(c->r, ENDS_LOOK, pass->link_ratio[LINK_RAFTER], limit_of(LIMIT_HELD_ENDS_RATIO));
}

void rafter_extra_prepare(struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	c->net_share = 1;
	c->edge_held = rafter_edge_free(c) || rafter_ends_hold(c);
	ties(c);
	heel(c);
	if (f->kind == FRAMING_RAFTER && runs_on(c))
		REMARK(c->r, RUNS_ON, f->span);
	if (f->kind == FRAMING_RAFTER) {
		inner_support(c);
		ends_held(c);
	}
	if (isfinite(f->sharing) && f->sharing > 0)
		REMARK_T(c->r, SHARING, (f->sharing), f->sharing_reason);
	if (c->hole <= 0 || c->hole_depth <= 0 || !c->lumber_known)
		return;
	const struct net_section n =
		section_with_hole(NULL, f->breadth, f->depth, c->hole, c->hole_depth);

	c->net_share = fmin(n.top, n.bottom);
	if (f->kind == FRAMING_RAFTER)
		REMARK(c->r, NET_SECTION, c->hole, c->hole_depth, c->net_share);
}

double rafter_bending_stress(const struct context *c, struct trace *trace, double moment,
			     double at_foot, double S)
{
	const struct job_framing *f = &c->job->framing;
	const double whole = fabs(moment), net = fabs(at_foot);

	/* at a foot the hole leaves less, but the largest moment may stand elsewhere */
	if (net <= whole * c->net_share || c->net_share <= 0)
		return c->net_share <= 0 && net > 0 ? HUGE_VAL
						    : member_bending_stress(trace, whole, S);
	section_with_hole(trace, f->breadth, f->depth, c->hole, c->hole_depth);
	return member_bending_stress(trace, net, S * c->net_share);
}

/* Two equal spans: the inner support adds its moment over the span to the shear, 5/8 in place of
   1/2 under a uniform load, up to 3/2 times the simple span's under forces near the outer ends; the
   span moment is never more than the simple span's. 3/2 and, for the support, twice that bound
   both. */
#define INNER_SHEAR 1.5
#define INNER_REACTION (2 * INNER_SHEAR)

double rafter_shear(const struct context *c, double V)
{
	return runs_on(c) ? INNER_SHEAR * V : V;
}

double rafter_inner_moment(const struct context *c, const struct rafter_forces *f)
{
	if (!runs_on(c))
		return 0;
	return fabs(f->held_lower) > fabs(f->held_upper) ? f->held_lower : f->held_upper;
}

bool rafter_bearing(const struct context *c, struct trace *trace, const struct rafter_forces *f,
		    const struct lumber_values *v, double *demand, double *capacity)
{
	const double lb = c->job->framing.bearing_length;
	/* the seat is level: what acts across the rafter acts on it through cos theta */
	const double R =
		fmax(f->lower, f->upper) / c->cos_theta *
		(runs_on(c)			      ? INNER_REACTION
		 : c->job->framing.inner_support > 0 ? 2 /* two pieces meet; one piece: as its own reaction says */
						      : 1);

	if (!isfinite(lb) || lb <= 0 || R <= 0)
		return false;
	*demand = member_bearing_stress(trace, R, c->job->framing.breadth, lb);
	*capacity = v->Fc_perp_prime; /* at an angle to the grain wood bears more: safe side */
	return true;
}
