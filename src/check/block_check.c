/* SPDX-License-Identifier: MIT */
/* A foot on a block, one load case: the screw in the block, across whose grain the force along the
   rafters goes; the block, bent both ways and twisted; its ends. A simple beam from rafter to
   rafter; the deck on its top is no help (safe side). */
#include "check/block.h"

#include <math.h>

#include "check/fastener.h"
#include "check/load_case.h"
#include "check/place.h"
#include "resist/combined.h"
#include "resist/lrfd.h"
#include "resist/member.h"
#include "resist/resist_steps.h"
#include "resist/standoff.h"

/* Shear by twist against two thirds of Fv: a figure of the Wood Handbook, from memory. */
#define TWIST_SHARE (2.0 / 3)

struct standing {
	const struct context *c;
	struct trace *trace;
	const struct force *f;
	struct connection_factors k;
	struct block_forces across, along; /* the roof; the rafters */
	double twist;                      /* of the worse end, N m */
	double duration;
	struct check_value *check;
};

static double wood(const struct standing *s, double adjusted)
{
	return s->c->lrfd ? lrfd_connection(s->trace, adjusted, s->f->CD) : adjusted;
}

static bool hold_screw(const struct standing *s, double up, double slope)
{
	const struct context *c = s->c;
	const struct block *b = &c->block;
	const bool lag = c->job->fastener.kind == FASTENER_LAG_SCREW;
	double couple;

	if (!standoff_pull(s->trace, slope, c->foot_height, c->job->mount.lever_arm, &couple))
		return false;
	const double pull = fmax(0, up + couple);
	const double Wp = wood(s, lag_withdrawal_capacity(s->trace, b->W, b->screw.p_t, &s->k));
	const double Z = wood(s, lateral_adjusted(s->trace, b->lateral.yield.value, s->k.CD,
						  s->k.CM_lateral, s->k.Ct, 1, 1, 1));
	double tension = lag_tension(s->trace, b->screw.Dr);

	if (c->lrfd)
		tension = lrfd_steel(s->trace, tension);
	fastener_keep(s->check, lag ? CHECK_WITHDRAWAL : CHECK_PULL, pull, Wp, s->f, s->duration);
	fastener_keep(s->check, lag ? CHECK_LATERAL : CHECK_SIDE, fabs(slope), Z, s->f,
		      s->duration);
	if (pull > 0 && fabs(slope) > 0) {
		const struct combined both = combined_check(s->trace, pull, slope, 1, Wp, Z);

		fastener_keep(s->check, lag ? CHECK_COMBINED : CHECK_PULL_SIDE, both.resultant,
			      both.capacity, s->f, s->duration);
	}
	fastener_keep(s->check, lag ? CHECK_TENSION : CHECK_BREAK, pull, tension, s->f, 1);
	return true;
}

static void hold_wood(const struct standing *s, double clear)
{
	const struct context *c = s->c;
	const struct block *b = &c->block;
	const struct block_result *r = &c->r->block;
	const struct lumber_service service = {c->job->framing.wet == ANSWER_YES, false, false,
					       fastener_temperature(c)};
	struct lumber_values v;

	if (!(c->lrfd ? lumber_adjust_lrfd(s->trace, &b->piece, s->f->CD, &service, &v)
		      : lumber_adjust(s->trace, &b->piece, s->f->CD, &service, &v)))
		return;
	const struct section z = section_rectangle(s->trace, r->wide, r->high),
			     side = section_rectangle(s->trace, r->high, r->wide);
	const struct net_section net =
		section_with_hole(s->trace, r->wide, r->high, b->screw.D, b->screw.p_tot);
	const double left = fmin(net.top, net.bottom);
	const struct stability lateral = member_stability(s->trace, r->wide, r->high, clear,
							  UNBRACED_OTHER, v.Emin_prime, v.Fb_star);
	/* a block no higher than wide does not buckle: FbE is put out of the way */
	const double FbE = isfinite(lateral.FbE) ? lateral.FbE : 1e3 * v.Fb_star;
	const double both =
		left > 0 ? block_both_ways(s->trace,
					   member_bending_stress(s->trace, s->across.M, z.S * left),
					   lumber_bending(s->trace, v.Fb_star, lateral.CL),
					   member_bending_stress(s->trace, s->along.M, side.S),
					   lumber_bending(s->trace, v.Fb_star, 1), FbE)
			 : HUGE_VAL;
	const double held_high = r->hanger ? r->high : (r->high + b->grid.high) / 2,
		     held_wide = r->hanger ? r->wide : (r->wide + b->grid.wide) / 2;
	const double fv =
		hypot(member_notch_shear(s->trace, s->across.near_end, r->wide, r->high, held_high),
		      member_notch_shear(s->trace, s->along.near_end, r->high, r->wide, held_wide));
	const double ft = block_twist_stress(s->trace, s->twist, r->wide, r->high);

	fastener_keep(s->check, CHECK_BLOCK_BENDING, both, 1, s->f, s->duration);
	fastener_keep(s->check, CHECK_BLOCK_SHEAR,
		      fv / v.Fv_prime + ft / (TWIST_SHARE * v.Fv_prime), 1, s->f, s->duration);
}

static void hold_nails(const struct standing *s)
{
	const struct block *b = &s->c->block;
	const double Z = block_end_fastener(
		s->trace, wood(s, lateral_adjusted(s->trace, b->nail, s->k.CD, s->k.CM_lateral,
						   s->k.Ct, 1, 1, 1)));

	fastener_keep(s->check, CHECK_BLOCK_NAILS,
		      block_grid_force(s->trace, &b->grid, s->across.near_end, s->along.near_end,
				       s->twist),
		      Z, s->f, s->duration);
}

/* The twist as a couple of two side forces, at the seat and at the top (our rule); shares added. */
static void hold_hanger(const struct standing *s, double up)
{
	const struct job_mount *m = &s->c->job->mount;
	const double side = s->along.near_end + s->twist / s->c->r->block.high;
	const double share =
		s->across.near_end / (up > 0 ? m->block_end_uplift : m->block_end_down);

	fastener_keep(s->check, CHECK_BLOCK_HANGER, share + side / m->block_end_slope, 1, s->f, 1);
}

/* Several cases may be explained: what is the same in all of them is told once. */
static bool shown(const struct trace *trace)
{
	for (size_t i = 0; i < trace->count; i++)
		if (trace->record[i].step == &step_block_end)
			return true;
	return false;
}

bool block_foot_check(const struct context *c, struct trace *trace, const struct attachment *a,
		      const struct force *f, double up, double slope, unsigned holds,
		      struct check_value check[CHECK_COUNT])
{
	const struct stand *p = &c->r->place[a->rafter];
	const double clear =
		c->r->frame_x[p->frame + 1] - c->r->frame_x[p->frame] - c->job->framing.breadth;
	const double at = clear * fmin(p->right, 1 - p->right);
	struct standing s = {.c = c, .trace = trace, .f = f, .check = check};

	if (!(clear > 0) ||
	    !connection_factors_find(c->lrfd ? 1 : f->CD, c->job->framing.wet == ANSWER_YES,
				     fastener_temperature(c), false, &s.k))
		return false;
	s.duration = f->CD;
	if (trace && (holds & HOLD_SCREWS) && !shown(trace))
		block_show(c, trace);
	const struct block_load across = {fabs(up), clear, at}, along = {fabs(slope), clear, at};

	s.across = block_forces(trace, &across);
	s.along = block_forces(trace, &along);
	s.twist = block_twist_end(
		trace,
		block_twist(trace, slope, c->foot_height + c->block.layers, c->r->block.high), at,
		clear);
	if ((holds & HOLD_HARDWARE) && c->r->block.hanger)
		hold_hanger(&s, up);
	if (!(holds & HOLD_SCREWS))
		return true;
	hold_wood(&s, clear);
	if (!c->r->block.hanger)
		hold_nails(&s);
	return hold_screw(&s, up, slope);
}

void block_tell(struct context *c)
{
	struct result *r = c->r;
	struct block_result *b = &r->block;
	const struct pass *p = &r->pass[r->judged];

	if (c->job->mount.between != BETWEEN_BLOCKING)
		return;
	b->feet = b->first = 0;
	for (int i = 0; i < p->attachments && b->kind > 0; i++) {
		const struct stand *at = &r->place[p->attachment[i].rafter];

		if (!place_on_block(r, p->attachment[i].rafter))
			continue;
		if (b->feet++ == 0)
			b->first = p->attachment[i].number;
		b->clear = fmax(b->clear, r->frame_x[at->frame + 1] - r->frame_x[at->frame] -
						  c->job->framing.breadth);
	}
	if (b->feet == 0) {
		if (r->passes > 0 && p->holds)
			REMARK(r, BLOCKS_SPARED, 0);
		return;
	}
	REMARK_T(r, BLOCKS, (b->feet, b->first, b->clear), b->size, b->flat ? "flat" : "on edge",
		 b->species);
	if (b->hanger)
		REMARK_T(r, BLOCK_HANGERS, (0), c->job->mount.block_report);
	else
		REMARK(r, BLOCK_NAILED, b->rows, b->columns,
		       fmin(b->high - c->block.grid.high, b->wide - c->block.grid.wide) / 2);
	if (!c->job->mount.block_species[0] || !c->job->mount.block_grade[0])
		REMARK_T(r, BLOCK_LUMBER, (0), b->species, b->grade);
}

void block_refuse(struct context *c, const char *why)
{
	REMARK_T(c->r, BLOCKS_REFUSED, (0), why);
}
