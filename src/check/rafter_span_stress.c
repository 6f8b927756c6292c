/* SPDX-License-Identifier: MIT */
/* Stresses and bow of one span of a rafter, supported at both ends, in one load case. At a foot the
   section less its hole counts. Not rated: axial force. */
#include "check/rafter_span.h"

#include <math.h>

#include "check/load_case.h"
#include "check/rafter_check.h"
#include "check/rafter_extra.h"
#include "resist/member.h"
#include "table/lookup_limit.h"

/* IRC Table R301.7 (from memory): live or snow load only; of a cantilever twice its length counts
 * (note b). */
double rafter_bow_divisor(const struct job *job)
{
	switch (job->roof.ceiling) {
	case CEILING_NONE:
		return limit_of(LIMIT_BOW_BARE);
	case CEILING_FLEXIBLE:
		return limit_of(LIMIT_BOW_FLEXIBLE);
	case CEILING_PLASTER:
		break;
	}
	return limit_of(LIMIT_BOW_PLASTER);
}

static void keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand,
		 double capacity, const char *combination, double CD)
{
	const double ratio = capacity > 0 ? demand / capacity : HUGE_VAL;

	if (!check[id].rated || ratio > check[id].ratio)
		check[id] = (struct check_value){true, demand, capacity, ratio, combination, CD};
}

void rafter_span_stresses(struct context *c, const struct rafter_case *k,
			  const struct rafter_forces *f, struct check_value check[CHECK_COUNT],
			  struct trace *trace)
{
	const struct job_framing *m = &c->job->framing;
	const struct section z = section_rectangle(trace, m->breadth, m->depth);
	struct lumber_values v;

	const double duration = case_duration(c, k->k), ties = c->tie_factor * c->tie_factor;
	double demand, capacity;

	if (!rafter_values(c, trace, duration, &v))
		return;
	if (f->sagging.value > 0) /* the deck holds the compressed top edge: CL = 1 */
		keep(check, CHECK_RAFTER_BENDING,
		     rafter_bending_stress(c, trace, f->sagging.value, f->sagging_at_point, z.S),
		     lumber_bending(trace, v.Fb_star, 1) * ties, k->k->text, duration);
	if (f->hogging.value < 0) {
		const double lu = rafter_unbraced_length(c, f->slope_length);
		const struct stability b = rafter_stability(c, trace, m->depth, lu, &v);

		keep(check, CHECK_RAFTER_UPLIFT,
		     rafter_bending_stress(c, trace, f->hogging.value, f->hogging_at_point, z.S),
		     b.permitted ? lumber_bending(trace, v.Fb_star, b.CL) * ties : 0, k->k->text,
		     duration);
	}
	/* over an inner support; what is pressed there on the lower edge is held at the support
	   and, under a uniform load, ends a quarter of the span away */
	const double inner = rafter_inner_moment(c, f);

	if (fabs(inner) > 0) {
		const struct stability b = rafter_stability(
			c, trace, m->depth, inner < 0 ? f->slope_length / 4 : 0, &v);

		keep(check, k->lift ? CHECK_RAFTER_UPLIFT : CHECK_RAFTER_BENDING,
		     member_bending_stress(trace, inner, z.S),
		     b.permitted ? lumber_bending(trace, v.Fb_star, b.CL) * ties : 0, k->k->text,
		     duration);
	}
	if (rafter_bearing(c, trace, f, &v, &demand, &capacity))
		keep(check, CHECK_RAFTER_BEARING, demand, capacity, k->k->text, 1);
	keep(check, CHECK_RAFTER_SHEAR,
	     member_shear_stress(trace, rafter_shear(c, f->V), m->breadth, m->depth), v.Fv_prime,
	     k->k->text, duration);
}

void rafter_span_bow(struct context *c, double EI_v, double slope_length, const char *name,
		     struct check_value check[CHECK_COUNT], struct trace *trace)
{
	const struct section z =
		section_rectangle(trace, c->job->framing.breadth, c->job->framing.depth);
	struct lumber_values v;

	/* service loads: stiffness as in ASD */
	if (rafter_stiffness(c, trace, &v))
		keep(check, CHECK_RAFTER_DEFLECTION, fabs(EI_v / (v.E_prime * z.I)),
		     slope_length / rafter_bow_divisor(c->job), name, 1);
}
