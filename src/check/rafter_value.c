/* SPDX-License-Identifier: MIT */
/* What the rafter's lumber takes: the piece found in the tables, its values adjusted for each load
   duration, and how much of its lower edge nothing holds sideways. */
#include "check/rafter_check.h"

#include <math.h>

#include "check/fastener.h"
#include "check/rafter_extra.h"
#include "resist/lrfd.h"
#include "table/lookup_limit.h"

static struct lumber_service service(const struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	return (struct lumber_service){f->wet == ANSWER_YES, f->incised == ANSWER_YES,
				       at_most(f->spacing, limit_of(LIMIT_RAFTERS_SHARE_SPACING)) &&
					       c->r->frames >= limit_of(LIMIT_RAFTERS_SHARE_COUNT),
				       fastener_temperature(c)};
}

void rafter_prepare(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	struct lumber_result *l = &c->r->lumber;

	c->lumber_known = lumber_piece_find(f->species, f->grade, f->breadth, f->depth, &c->lumber);
	if (!c->lumber_known) {
		REMARK_T(c->r, LUMBER_UNKNOWN, (0), f->species, f->grade);
		return;
	}
	const struct lumber_service s = service(c);
	struct lumber_values v = {.Cr = 1};

	c->G = c->lumber.G;
	lumber_adjust(NULL, &c->lumber, 1, &s, &v);
	*l = (struct lumber_result){c->lumber.species, c->lumber.grade, c->lumber.G,
				    c->lumber.Fb,      c->lumber.Fv,    c->lumber.E,
				    c->lumber.Emin,    c->lumber.CF,    v.Cr};
}

/* Of the bottom edge, which net uplift compresses: held all along by a ceiling, here and there by
   blocking, or not at all; held ends do where the rafter is not too deep for its breadth. */
double rafter_unbraced_length(const struct context *c, double slope_length)
{
	const double brace = c->job->framing.brace_spacing;

	if (c->job->roof.ceiling != CEILING_NONE || c->edge_held)
		return 0;
	return isfinite(brace) ? fmin(brace, slope_length) : slope_length;
}

static bool adjust(const struct context *c, struct trace *trace, double duration,
		   const struct lumber_service *s, struct lumber_values *v)
{
	return c->lrfd ? lumber_adjust_lrfd(trace, &c->lumber, duration, s, v)
		       : lumber_adjust(trace, &c->lumber, duration, s, v);
}

/* Without a trace they are not worked out twice. */
bool rafter_values(struct context *c, struct trace *trace, double duration, struct lumber_values *v)
{
	for (int i = 0; i < c->lumbers && !trace; i++)
		if (same_value(c->duration[i], duration)) {
			*v = c->adjusted[i];
			return true;
		}
	const struct lumber_service s = service(c);

	if (!adjust(c, trace, duration, &s, v))
		return false;
	if (!trace && c->lumbers < LUMBER_MEMO) {
		c->duration[c->lumbers] = duration;
		c->adjusted[c->lumbers++] = *v;
	}
	return true;
}

struct stability rafter_stability(struct context *c, struct trace *trace, double depth, double lu,
				  const struct lumber_values *v)
{
	const double breadth = c->job->framing.breadth;

	if (trace)
		return member_stability(trace, breadth, depth, lu, UNBRACED_OTHER, v->Emin_prime,
					v->Fb_star);
	for (int i = 0; i < c->stables && i < STABLE_MEMO; i++) {
		const struct stable_memo *m = &c->stable[i];

		if (same_value(m->depth, depth) && same_value(m->lu, lu) && same_value(m->Emin, v->Emin_prime) &&
		    same_value(m->Fb_star, v->Fb_star))
			return m->found;
	}
	struct stable_memo *const m = &c->stable[c->stables++ % STABLE_MEMO];

	*m = (struct stable_memo){depth, lu, v->Emin_prime, v->Fb_star,
				  member_stability(NULL, breadth, depth, lu, UNBRACED_OTHER,
						   v->Emin_prime, v->Fb_star)};
	return m->found;
}

bool rafter_stiffness(struct context *c, struct trace *trace, struct lumber_values *v)
{
	const struct lumber_service s = service(c);

	return c->lrfd ? lumber_adjust(trace, &c->lumber, 1, &s, v) : rafter_values(c, trace, 1, v);
}
