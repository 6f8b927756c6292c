/* SPDX-License-Identifier: MIT */
/* Holes, ties, seats and thrust of rafters.

   The net section counts where a foot stands, at the moment there: the hole is the screw's own
   diameter as deep as the screw reaches, the top fibre's share of the section modulus stands for
   both fibres (it is the lesser). Raised ties take the allowed span down by a factor; the moment a
   span brings grows with its square, so the bending value is taken down by the square. */
#include "check/rafter_extra.h"

#include <math.h>

#include "resist/heel.h"
#include "resist/member.h"

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

	return at_most(c->job->framing.span, run - M_PER_FT);
}

void rafter_extra_prepare(struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	c->net_share = 1;
	ties(c);
	heel(c);
	if (f->kind == FRAMING_RAFTER && runs_on(c))
		REMARK(c->r, RUNS_ON, f->span);
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
		fmax(f->lower, f->upper) / c->cos_theta * (runs_on(c) ? INNER_REACTION : 1);

	if (!isfinite(lb) || lb <= 0 || R <= 0)
		return false;
	*demand = member_bearing_stress(trace, R, c->job->framing.breadth, lb);
	*capacity = v->Fc_perp_prime; /* at an angle to the grain wood bears more: safe side */
	return true;
}
