/* SPDX-License-Identifier: MIT */
/* Bending, shear, bearing and deflection of the rafters under the feet, as they are and with the array, under every
   combination. Simple spans from support to support; where the rafter may run on over an inner support, the moment there and a
   bound on its shear count too (rafter_extra.c). At a foot the section less its hole counts. Not rated: the tail outside the
   wall, axial force. */
#include "check/rafter_check.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/fastener.h"
#include "check/load_case.h"
#include "check/place.h"
#include "check/rafter_extra.h"
#include "check/rafter_load.h"
#include "check/rafter_whole.h"
#include "load/triggers.h"
#include "resist/lrfd.h"
#include "resist/member.h"
#include "table/lookup_limit.h"

#define PLACE_MAX BEFORE_SPANS

/* IRC Table R301.7 (from memory): live or snow load only. */
static double deflection_divisor(const struct job *job)
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

static struct lumber_service service(const struct context *c)
{
	const struct job_framing *f = &c->job->framing;

	return (struct lumber_service){ f->wet == ANSWER_YES, f->incised == ANSWER_YES,
		                        at_most(f->spacing, limit_of(LIMIT_RAFTERS_SHARE_SPACING)) &&
		                        c->r->frames >= limit_of(LIMIT_RAFTERS_SHARE_COUNT),
		                        fastener_temperature(c) };
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
	struct lumber_values v = { .Cr = 1 };

	c->G = c->lumber.G;
	lumber_adjust(NULL, &c->lumber, 1, &s, &v);
	*l = (struct lumber_result){ c->lumber.species, c->lumber.grade, c->lumber.G, c->lumber.Fb,
		                     c->lumber.Fv,      c->lumber.E,     c->lumber.Emin, c->lumber.CF, v.Cr };
}

static void keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand, double capacity,
                 const char *combination, double CD)
{
	const double ratio = capacity > 0 ? demand / capacity : HUGE_VAL;

	if (!check[id].rated || ratio > check[id].ratio)
		check[id] = (struct check_value){ true, demand, capacity, ratio, combination, CD };
}

/* Of the bottom edge, which net uplift compresses: held all along by a ceiling, here and there by blocking, or not at all; held
   ends do where the rafter is not too deep for its breadth. */
double rafter_unbraced_length(const struct context *c, double slope_length)
{
	const double brace = c->job->framing.brace_spacing;

	if (c->job->roof.ceiling != CEILING_NONE || rafter_ends_hold(c))
		return 0;
	return isfinite(brace) ? fmin(brace, slope_length) : slope_length;
}

static bool adjust(const struct context *c, struct trace *trace, double duration, const struct lumber_service *s,
                   struct lumber_values *v)
{
	return c->lrfd ? lumber_adjust_lrfd(trace, &c->lumber, duration, s, v)
	               : lumber_adjust(trace, &c->lumber, duration, s, v);
}

/* Adjusted values for a load duration (or lambda); without a trace they are not worked out twice. */
static bool adjusted(struct context *c, struct trace *trace, double duration, const struct lumber_service *s,
                     struct lumber_values *v)
{
	if (trace)
		return adjust(c, trace, duration, s, v);
	for (int i = 0; i < c->lumbers; i++)
		if (!(c->duration[i] < duration) && !(c->duration[i] > duration)) {
			*v = c->adjusted[i];
			return true;
		}
	if (!adjust(c, NULL, duration, s, v))
		return false;
	if (c->lumbers < LUMBER_MEMO) {
		c->duration[c->lumbers] = duration;
		c->adjusted[c->lumbers++] = *v;
	}
	return true;
}

bool rafter_values(struct context *c, struct trace *trace, double duration, struct lumber_values *v)
{
	const struct lumber_service s = service(c);

	return adjusted(c, trace, duration, &s, v);
}

/* Stresses of one load case against the adjusted values of its duration. */
static void rate(struct context *c, const struct rafter_case *k, const struct rafter_forces *f,
                 struct check_value check[CHECK_COUNT], struct trace *trace)
{
	const struct job_framing *m = &c->job->framing;
	const struct lumber_service s = service(c);
	const struct section z = section_rectangle(trace, m->breadth, m->depth);
	struct lumber_values v;

	const double duration = case_duration(c, k->k), ties = c->tie_factor * c->tie_factor;
	double demand, capacity;

	if (!adjusted(c, trace, duration, &s, &v))
		return;
	if (f->sagging.value > 0) /* the deck holds the compressed top edge: CL = 1 */
		keep(check, CHECK_RAFTER_BENDING,
		     rafter_bending_stress(c, trace, f->sagging.value, f->sagging_at_point, z.S),
		     lumber_bending(trace, v.Fb_star, 1) * ties, k->k->text, duration);
	if (f->hogging.value < 0) {
		const double lu = rafter_unbraced_length(c, f->slope_length);
		const struct stability b = member_stability(trace, m->breadth, m->depth, lu, UNBRACED_OTHER,
		                                            v.Emin_prime, v.Fb_star);

		keep(check, CHECK_RAFTER_UPLIFT,
		     rafter_bending_stress(c, trace, f->hogging.value, f->hogging_at_point, z.S),
		     b.permitted ? lumber_bending(trace, v.Fb_star, b.CL) * ties : 0, k->k->text, duration);
	}
	/* over an inner support; what is pressed there on the lower edge is held at the support and, under a uniform load, ends
	   a quarter of the span away */
	const double inner = rafter_inner_moment(c, f);

	if (fabs(inner) > 0) {
		const struct stability b = member_stability(trace, m->breadth, m->depth, inner < 0 ? f->slope_length / 4 : 0,
		                                            UNBRACED_OTHER, v.Emin_prime, v.Fb_star);

		keep(check, k->lift ? CHECK_RAFTER_UPLIFT : CHECK_RAFTER_BENDING, member_bending_stress(trace, inner, z.S),
		     b.permitted ? lumber_bending(trace, v.Fb_star, b.CL) * ties : 0, k->k->text, duration);
	}
	if (rafter_bearing(c, trace, f, &v, &demand, &capacity))
		keep(check, CHECK_RAFTER_BEARING, demand, capacity, k->k->text, 1);
	keep(check, CHECK_RAFTER_SHEAR, member_shear_stress(trace, rafter_shear(c, f->V), m->breadth, m->depth), v.Fv_prime, k->k->text,
	     duration);
}

static void bow(struct context *c, const struct rafter_loads *l, double slope_length, const char *name,
                struct check_value check[CHECK_COUNT], struct trace *trace)
{
	const struct lumber_service s = service(c);
	const struct section z = section_rectangle(trace, c->job->framing.breadth, c->job->framing.depth);
	struct lumber_values v;
	struct beam_peak peak;

	/* service loads: stiffness as in ASD */
	if ((c->lrfd ? lumber_adjust(trace, &c->lumber, 1, &s, &v) : adjusted(c, trace, 1, &s, &v)) &&
	    rafter_deflect(&l->rafter, v.E_prime * z.I, &peak))
		keep(check, CHECK_RAFTER_DEFLECTION, fabs(peak.value), slope_length / deflection_divisor(c->job), name,
		     1);
}

/* The two questions a rafter is asked: how it stands today, and with the array. */
struct inquiry {
	struct context *c;
	const struct pass *pass;
	struct rafter_place place;
	bool array;
	struct check_value *check;
	double moment;        /* largest downward design moment */
	double dead, live, snow; /* moments by load type */
	const struct check_value *target; /* the one to trace, of kind `governs`; NULL: none */
	enum check_id governs;
	struct trace *trace;
};

/* Traces the case if it is the one that governs, once. */
static void explain_case(struct inquiry *q, const struct rafter_case *load, const struct rafter_loads *l,
                         const struct rafter_forces *f)
{
	struct check_value check[CHECK_COUNT];

	memset(check, 0, sizeof check);
	rate(q->c, load, f, check, NULL);
	if (!check_same(&check[q->governs], q->target))
		return;
	rafter_moment_at(q->trace, &l->rafter, f->moment.x);
	rate(q->c, load, f, check, q->trace);
	q->target = NULL;
}

static void one(struct inquiry *q, const struct load_combination *k, double roof_snow, int snow_case, bool lift, int quake)
{
	const struct rafter_case load = { .k = k, .roof_snow = roof_snow, .snow_case = snow_case, .lift = lift,
		                          .array = q->array, .quake = quake };
	struct rafter_loads l;
	struct rafter_forces f;

	rafter_load(q->c, q->pass, &q->place, &load, &l);
	if (!rafter_solve(&l.rafter, &f))
		return;
	if (!lift)
		q->moment = fmax(q->moment, f.sagging.value);
	rate(q->c, &load, &f, q->check, NULL);
	if (q->target)
		explain_case(q, &load, &l, &f);
}

/* Moment of one load type alone, for the 5 % rule, and its deflection where it is the code's transient load. */
static double alone(struct inquiry *q, const char *name, double D, double S, double Lr, double roof_snow,
                    int snow_case, bool deflection)
{
	const struct load_combination k = { .text = name, .D = D, .S = S, .Lr = Lr, .CD = 1 };
	const struct rafter_case load = { .k = &k, .roof_snow = roof_snow, .snow_case = snow_case, .array = q->array };
	struct rafter_loads l;
	struct rafter_forces f;

	rafter_load(q->c, q->pass, &q->place, &load, &l);
	if (!rafter_solve(&l.rafter, &f))
		return 0;
	if (deflection)
		bow(q->c, &l, f.slope_length, name, q->check, NULL);
	if (deflection && q->target && q->governs == CHECK_RAFTER_DEFLECTION) {
		struct check_value check[CHECK_COUNT];

		memset(check, 0, sizeof check);
		bow(q->c, &l, f.slope_length, name, check, NULL);
		if (check_same(&check[q->governs], q->target)) {
			bow(q->c, &l, f.slope_length, name, check, q->trace);
			q->target = NULL;
		}
	}
	return f.sagging.value;
}

/* Snow on the bare roof in case i: with the array as the code's case has it, before it balanced and leeward only. */
static int snow_cases(const struct inquiry *q)
{
	return q->array ? q->c->snow.cases : 2;
}

static double roof_snow(const struct inquiry *q, int i)
{
	const struct snow_loads *s = &q->c->snow;

	if (!q->array)
		return i == 0 ? s->ps_before : s->leeward_before;
	return s->snow[i].roof + s->snow[i].surcharge; /* surcharge over the whole span: safe side */
}

/* The array shakes with the house, toward the eave and toward the ridge. */
static void ask_quake(struct inquiry *q)
{
	const struct context *c = q->c;

	for (int i = 0; i < c->quake.combinations && c->quake.known && q->array; i++)
		for (int way = -1; way <= 1; way += 2) {
			const struct load_combination *k = &c->quake.combination[i];

			if (k->S <= 0)
				one(q, k, 0, -1, false, way);
			for (int s = 0; k->S > 0 && s < snow_cases(q); s++)
				one(q, k, roof_snow(q, s), s, false, way);
		}
}

static void ask(struct inquiry *q)
{
	const struct context *c = q->c;

	for (int i = 0; i < c->combinations; i++) {
		const struct load_combination *k = &c->combination[i];

		if (k->W > 0 && k->S <= 0 && k->Lr <= 0 && k->D < 1)
			one(q, k, 0, -1, true, 0);
		if (k->S <= 0)
			one(q, k, 0, -1, false, 0);
		for (int s = 0; k->S > 0 && s < snow_cases(q); s++)
			one(q, k, roof_snow(q, s), q->array ? s : -1, false, 0);
	}
	ask_quake(q);
	q->dead = alone(q, "D", 1, 0, 0, 0, -1, false);
	q->live = alone(q, "Lr alone", 0, 0, 1, 0, -1, true);
	for (int s = 0; s < snow_cases(q); s++)
		q->snow = fmax(q->snow, alone(q, "S alone", 0, 1, 0, roof_snow(q, s), q->array ? s : -1, true));
}

static double worst(const struct check_value check[CHECK_COUNT], enum check_id *governs)
{
	double ratio = 0;

	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (check[i].rated && check[i].ratio > ratio) {
			ratio = check[i].ratio;
			if (governs)
				*governs = (enum check_id)i;
		}
	return ratio;
}

/* A rafter in one piece over an inner support is stressed as rafter_whole.c finds it; of single spans only the bow counts,
   which continuity never adds to. */
static void forget_spans(const struct context *c, struct check_value check[CHECK_COUNT])
{
	static const enum check_id stress[] = { CHECK_RAFTER_BENDING, CHECK_RAFTER_UPLIFT, CHECK_RAFTER_SHEAR,
		                                CHECK_RAFTER_BEARING };

	for (size_t i = 0; i < sizeof stress / sizeof *stress && rafter_in_one_piece(c); i++)
		check[stress[i]] = (struct check_value){ 0 };
}

/* The rafter as it stands, without the array. */
static void rate_before(struct context *c, const struct pass *pass, const struct rafter_place *place, bool whole,
                        struct before_memo *m)
{
	struct check_value check[CHECK_COUNT];

	memset(check, 0, sizeof check);
	for (int i = 0; i < m->spans; i++) {
		struct inquiry q = { .c = c, .pass = pass, .place = place[i], .check = check };

		ask(&q);
		m->bends[i].dead = q.dead;
		m->bends[i].live = q.live;
		m->bends[i].snow = q.snow;
		m->bends[i].moment = q.moment;
	}
	forget_spans(c, check);
	if (whole)
		rafter_whole_rate(c, pass, m->rafter, false, check, NULL, NULL, CHECK_COUNT, NULL);
	m->checks = 0;
	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (check[i].rated) {
			assert(m->checks < (int)(sizeof m->id / sizeof *m->id)); /* kinds that concern rafters */
			m->id[m->checks] = (enum check_id)i;
			m->check[m->checks++] = check[i];
		}
}

/* The same, worked out once: a search asks for it with every layout. */
static const struct before_memo *before(struct context *c, const struct pass *pass, int rafter,
                                        const struct rafter_place *place, int places, const struct rafter_whole *whole)
{
	const int slot = (rafter * 2 + (int)c->curve) % BEFORE_MEMO;
	struct before_memo *m = &c->before[slot];
	const bool missing = c->coefficient_missing, matters = c->curve_matters;
	bool known = c->before_known[slot] && m->rafter == rafter && m->curve == c->curve && m->spans == places &&
	             m->whole == (whole != NULL) &&
	             (!whole || (m->low_loaded == whole->low_loaded && m->high_loaded == whole->high_loaded));

	for (int i = 0; i < places && known; i++)
		known = !(m->start[i] < place[i].start) && !(m->start[i] > place[i].start);
	if (!known) {
		m->rafter = rafter;
		m->curve = c->curve;
		m->spans = places;
		m->whole = whole != NULL;
		m->low_loaded = whole && whole->low_loaded;
		m->high_loaded = whole && whole->high_loaded;
		for (int i = 0; i < places; i++)
			m->start[i] = place[i].start;
		c->coefficient_missing = c->curve_matters = false;
		rate_before(c, pass, place, whole != NULL, m);
		m->missing = c->coefficient_missing;
		m->matters = c->curve_matters;
		c->before_known[slot] = true;
	}
	c->coefficient_missing = missing || m->missing;
	c->curve_matters = matters || m->matters;
	return m;
}

static void rate_after(struct context *c, const struct pass *pass, const struct rafter_place *place,
                       const struct before_memo *was, struct rafter_result *r)
{
	for (int i = 0; i < was->spans; i++) {
		struct inquiry after = { .c = c, .pass = pass, .place = place[i], .array = true, .check = r->after };

		ask(&after);
		const struct gravity_change change = { was->bends[i].dead, after.dead, was->bends[i].live,   after.live,
			                               was->bends[i].snow, after.snow, was->bends[i].moment, after.moment };
		const struct gravity_trigger t = trigger_gravity(&change, NULL);

		r->moment_before = fmax(r->moment_before, was->bends[i].moment);
		r->moment_after = fmax(r->moment_after, after.moment);
		r->rise_total = fmax(r->rise_total, t.rise_total);
		r->rise_dead = fmax(r->rise_dead, t.rise_dead);
		r->triggered = r->triggered || t.triggered;
	}
	forget_spans(c, r->after);
}

static void rate_rafter(struct context *c, struct pass *pass, int rafter)
{
	struct rafter_result *r = &pass->rafter[pass->rafters++];
	struct rafter_place place[PLACE_MAX];
	struct rafter_whole whole;
	const int places = rafter_places(c, pass, rafter, place, PLACE_MAX);
	const bool laid = rafter_whole_lay(c, pass, rafter, &whole);
	const struct before_memo *const was = before(c, pass, rafter, place, places, laid ? &whole : NULL);

	memset(r, 0, sizeof *r);
	r->rafter = rafter;
	r->pattern = -1;
	for (int i = 0; i < pass->attachments; i++)
		r->feet += place_share(c->r, pass->attachment[i].rafter, rafter) > 0;
	for (int i = 0; i < was->checks; i++)
		r->before[was->id[i]] = was->check[i];
	rate_after(c, pass, place, was, r);
	if (laid) {
		r->spans = whole.pieces;
		rafter_whole_rate(c, pass, rafter, true, r->after, &r->pattern, NULL, CHECK_COUNT, NULL);
		r->tail = r->after[CHECK_RAFTER_TAIL].rated;
	}
	r->ratio_before = worst(r->before, NULL);
	r->ratio_after = worst(r->after, &r->governs);
}

bool rafter_rated(const struct context *c)
{
	return c->lumber_known && c->job->framing.kind == FRAMING_RAFTER && c->r->frames > 0;
}

static double frame_ratio(struct context *c, const struct pass *pass, int rafter)
{
	struct rafter_place place[PLACE_MAX];
	struct check_value check[CHECK_COUNT];

	memset(check, 0, sizeof check);
	const int places = rafter_places(c, pass, rafter, place, PLACE_MAX);

	for (int i = 0; i < places; i++) {
		struct inquiry after = { .c = c, .pass = pass, .place = place[i], .array = true, .check = check };

		ask(&after);
	}
	forget_spans(c, check);
	if (rafter_in_one_piece(c))
		rafter_whole_rate(c, pass, rafter, true, check, NULL, NULL, CHECK_COUNT, NULL);
	return worst(check, NULL);
}

double rafter_ratio(struct context *c, const struct pass *pass, int place)
{
	const struct stand *p = &c->r->place[place];
	double ratio = 0;

	if (!rafter_rated(c) || p->frame < 0)
		return 0;
	if (p->right < 1)
		ratio = frame_ratio(c, pass, p->frame);
	return p->right > 0 ? fmax(ratio, frame_ratio(c, pass, p->frame + 1)) : ratio;
}

void rafter_run(struct context *c, struct pass *pass)
{
	bool carries[RAFTER_MAX] = { false };

	pass->rafters = 0;
	if (!rafter_rated(c))
		return;
	for (int i = 0; i < pass->attachments; i++)
		for (int k = 0; k < c->r->frames; k++)
			carries[k] = carries[k] || place_share(c->r, pass->attachment[i].rafter, k) > 0;
	for (int i = 0; i < c->r->frames; i++)
		if (carries[i])
			rate_rafter(c, pass, i);
}

void rafter_explain(struct context *c, const struct pass *pass, const struct rafter_result *r, struct trace *trace)
{
	struct rafter_place place[PLACE_MAX];
	const int places = rafter_places(c, pass, r->rafter, place, PLACE_MAX);
	struct check_value check[CHECK_COUNT] = { { 0 } };
	bool told = false;

	for (int i = 0; i < places; i++) {
		struct inquiry after = { .c = c, .pass = pass, .place = place[i], .array = true, .check = check,
			                 .target = &r->after[r->governs], .governs = r->governs, .trace = trace };

		memset(check, 0, sizeof check);
		ask(&after);
		told = told || !after.target;
	}
	if (!told)
		rafter_whole_rate(c, pass, r->rafter, true, check, NULL, &r->after[r->governs], r->governs, trace);
}
