/* SPDX-License-Identifier: MIT */
/* One span of a rafter under every combination, snow case and direction of the wind. */
#include "check/rafter_span.h"

#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/rafter_case.h"
#include "check/rafter_mesh.h"
#include "check/rafter_show.h"

/* Forces of one case; on a mesh the pieces too. */
static bool solve(struct inquiry *q, const struct rafter_case *load, struct rafter_forces *f, struct beam_pieces *pieces)
{
	struct rafter_loads l;

	if (q->stage) {
		rafter_stage_solve_span(q->c, q->stage, load, f, pieces);
		return isfinite(f->lower + f->upper);
	}
	rafter_load(q->c, q->pass, &q->place, load, &l);
	return rafter_solve(&l.rafter, f);
}

/* Largest deflection of a solved case, times EI. */
static double bow(struct inquiry *q, const struct rafter_case *load, const struct beam_pieces *pieces)
{
	struct rafter_loads l;
	struct beam_peak peak;

	if (q->stage)
		return rafter_stage_bow(q->stage, pieces);
	rafter_load(q->c, q->pass, &q->place, load, &l);
	return rafter_deflect(&l.rafter, 1, &peak) ? peak.value : 0;
}

/* Traces the case if it is the one that governs, once. */
static void explain_case(struct inquiry *q, const struct rafter_case *load, const struct rafter_forces *f)
{
	struct check_value check[CHECK_COUNT];
	struct rafter_loads l;

	memset(check, 0, sizeof check);
	rafter_span_stresses(q->c, load, f, check, NULL);
	if (!check_same(&check[q->governs], q->target))
		return;
	rafter_load(q->c, q->pass, &q->place, load, &l);
	rafter_show_span(q, load, &l);
	rafter_span_stresses(q->c, load, f, check, q->trace);
	q->target = NULL;
}

/* Who looks for one case alone need not solve those of another name, nor what follows it. */
static bool passed_over(const struct inquiry *q, const char *name)
{
	return q->trace && (!q->target || q->target->combination != name);
}

static void one(struct inquiry *q, const struct load_combination *k, double roof_snow, int snow_case, bool lift, int quake)
{
	const struct rafter_case load = { .k = k, .roof_snow = roof_snow, .snow_case = snow_case, .lift = lift,
		                          .array = q->array, .quake = quake };
	struct rafter_forces f;
	struct beam_pieces pieces;

	if (passed_over(q, k->text) || !solve(q, &load, &f, &pieces))
		return;
	if (!lift)
		q->moment = fmax(q->moment, f.sagging.value);
	rafter_span_stresses(q->c, &load, &f, q->check, NULL);
	if (q->target)
		explain_case(q, &load, &f);
}

/* Moment of one load type alone, for the 5 % rule, and its deflection where it is the code's transient load. */
static double alone(struct inquiry *q, const char *name, double D, double S, double Lr, double roof_snow,
                    int snow_case, bool deflection)
{
	const struct load_combination k = { .text = name, .D = D, .S = S, .Lr = Lr, .CD = 1 };
	const struct rafter_case load = { .k = &k, .roof_snow = roof_snow, .snow_case = snow_case, .array = q->array };
	struct rafter_forces f;
	struct beam_pieces pieces;

	if (passed_over(q, name) || !solve(q, &load, &f, &pieces))
		return 0;
	if (!deflection)
		return f.sagging.value;
	const double EI_v = bow(q, &load, &pieces);

	rafter_span_bow(q->c, EI_v, f.slope_length, name, q->check, NULL);
	if (q->target && q->governs == CHECK_RAFTER_DEFLECTION) {
		struct check_value check[CHECK_COUNT];

		memset(check, 0, sizeof check);
		rafter_span_bow(q->c, EI_v, f.slope_length, name, check, NULL);
		if (check_same(&check[q->governs], q->target)) {
			struct rafter_loads l;

			rafter_load(q->c, q->pass, &q->place, &load, &l);
			rafter_show_span(q, &load, &l);
			rafter_span_bow(q->c, EI_v, f.slope_length, name, check, q->trace);
			q->target = NULL;
		}
	}
	return f.sagging.value;
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
			for (int s = 0; k->S > 0 && s < rafter_snow_cases(c, q->array); s++)
				one(q, k, rafter_roof_snow(c, s, q->array), s, false, way);
		}
}

void rafter_span_ask(struct inquiry *q)
{
	const struct context *c = q->c;
	struct rafter_stage stage;

	q->stage = rafter_stage_span(q->c, q->pass, &q->place, q->array, &stage) ? &stage : NULL;
	const bool more = q->stage && rafter_stage_presses(q->stage);

	for (int i = 0; i < c->combinations; i++) {
		const struct load_combination *k = &c->combination[i];

		if (k->W > 0 && k->S <= 0 && k->Lr <= 0 && k->D < 1)
			one(q, k, 0, -1, true, 0);
		if (k->S <= 0 && !rafter_case_outdone(c, i, -1, q->array, more))
			one(q, k, 0, -1, false, 0);
		for (int s = 0; k->S > 0 && s < rafter_snow_cases(c, q->array); s++)
			if (!rafter_case_outdone(c, i, s, q->array, more))
				one(q, k, rafter_roof_snow(c, s, q->array), q->array ? s : -1, false, 0);
	}
	ask_quake(q);
	q->dead = alone(q, "D", 1, 0, 0, 0, -1, false);
	q->live = alone(q, "Lr alone", 0, 0, 1, 0, -1, true);
	for (int s = 0; s < rafter_snow_cases(c, q->array); s++)
		q->snow = fmax(q->snow, alone(q, "S alone", 0, 1, 0, rafter_roof_snow(c, s, q->array), q->array ? s : -1, true));
	q->stage = NULL;
}
