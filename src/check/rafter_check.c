/* SPDX-License-Identifier: MIT */
/* Bending, shear, bearing and deflection of the rafters under the feet, as they are and with the array, under every
   combination. Simple spans from support to support; where the rafter may run on over an inner support, the moment there and a
   bound on its shear count too (rafter_extra.c). Not rated: axial force. */
#include "check/rafter_check.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/place.h"
#include "check/rafter_extra.h"
#include "check/rafter_span.h"
#include "check/rafter_whole.h"
#include "check/wind_rule.h"
#include "load/triggers.h"

#define PLACE_MAX BEFORE_SPANS

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

		rafter_span_ask(&q);
		m->bends[i].dead = q.dead;
		m->bends[i].live = q.live;
		m->bends[i].snow = q.snow;
		m->bends[i].moment = q.moment;
	}
	forget_spans(c, check);
	if (whole)
		rafter_whole_rate(c, pass, place->rafter, false, check, NULL, NULL, CHECK_COUNT, NULL);
	m->checks = 0;
	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (check[i].rated) {
			assert(m->checks < (int)(sizeof m->id / sizeof *m->id)); /* kinds that concern rafters */
			m->id[m->checks] = (enum check_id)i;
			m->check[m->checks++] = check[i];
		}
}

/* The same, worked out once: neighbours stand alike, and a search asks for it with every layout. */
static const struct before_memo *before(struct context *c, const struct pass *pass, int rafter,
                                        const struct rafter_place *place, int places, const struct rafter_whole *whole)
{
	const int column = rafter_column(c, rafter), slot = (column * 2 + (int)c->curve) % BEFORE_MEMO;
	const double run = plane_run_at(c, c->r->frame_x[rafter]);
	struct before_memo *m = &c->before[slot];
	const bool missing = c->coefficient_missing, matters = c->curve_matters;
	bool known = c->before_known[slot] && m->column == column && same_value(m->run, run) && m->curve == c->curve && m->spans == places &&
	             m->whole == (whole != NULL) &&
	             (!whole || (m->low_loaded == whole->low_loaded && m->high_loaded == whole->high_loaded));

	for (int i = 0; i < places && known; i++)
		known = same_value(m->start[i], place[i].start) && same_value(m->length[i], place[i].length);
	if (!known) {
		m->column = column;
		m->run = run;
		m->curve = c->curve;
		m->spans = places;
		m->whole = whole != NULL;
		m->low_loaded = whole && whole->low_loaded;
		m->high_loaded = whole && whole->high_loaded;
		for (int i = 0; i < places; i++) {
			m->start[i] = place[i].start;
			m->length[i] = place[i].length;
		}
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

		rafter_span_ask(&after);
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

		rafter_span_ask(&after);
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
		rafter_span_ask(&after);
		told = told || !after.target;
	}
	if (!told)
		rafter_whole_rate(c, pass, r->rafter, true, check, NULL, &r->after[r->governs], r->governs, trace);
}
