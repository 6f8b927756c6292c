/* SPDX-License-Identifier: MIT */
/* The rafter as one beam under every case. Snow in the patterns of ASCE/SEI 7 7.5 (from memory):
   full balanced snow on one end span and half on the rest; half there and full on the rest; full on
   two neighbouring spans and half on the rest; an overhang counts as a span. Full and half by turns
   is run as well (safe side). Spared where the clause spares rafters of gables, which have
   unbalanced snow. */
#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/rafter_case.h"
#include "check/rafter_show.h"
#include "check/rafter_whole_stress.h"
#include "check/rafter_mesh.h"
#include "check/rail_pattern.h"
#include "load/asce7_drift.h"

static bool solve(struct rating *q, const struct rafter_case *k, const double off[], double ice, struct whole_beam *b,
                  struct beam_forces *f)
{
	if (q->stage) {
		rafter_stage_solve_whole(q->c, q->stage, k, off, ice, b, f);
		return isfinite(f->load);
	}
	return rafter_whole_load(q->c, q->pass, &q->whole, *k, off, ice, b) && beam_solve_pieces(&b->beam, f, &b->pieces);
}

/* Solves and rates one case; traces it if it is the one asked for. */
static void one(struct rating *q, const struct rafter_case *k, const double off[], double ice)
{
	struct check_value alone[CHECK_COUNT];
	struct whole_beam b, shown;
	struct beam_forces f;

	/* who looks for one case alone need not solve those of another name, nor what follows it */
	if (q->trace && (!q->target || q->target->combination != k->k->text))
		return;
	if (!solve(q, k, off, ice, &b, &f))
		return;
	rafter_whole_stresses(q, q->check, &b, &f, k);
	if (!q->target)
		return;
	memset(alone, 0, sizeof alone);
	rafter_whole_stresses(q, alone, &b, &f, k);
	if (!check_same(&alone[q->governs], q->target))
		return;
	if (off)
		snow_half(k->roof_snow, q->trace);
	if (rafter_whole_load(q->c, q->pass, &q->whole, *k, off, ice, &shown))
		rafter_show_whole(q, k, off != NULL, ice > 0, &shown);
	q->telling = true;
	rafter_whole_stresses(q, alone, &b, &f, k);
	q->telling = false;
	q->target = NULL;
}

static void patterns(struct rating *q, const struct rafter_case *k)
{
	double factor[WHOLE_PIECES], off[WHOLE_PIECES];
	const int spans = q->whole.pieces;

	for (int p = 0; spans > 1 && span_pattern(p, spans, factor); p++) {
		for (int i = 0; i < spans; i++)
			off[i] = 1 - factor[i];
		q->at = p;
		one(q, k, off, 0);
	}
	q->at = -1;
}

/* at: of the combination among those without earthquake, else -1. */
static void with_snow(struct rating *q, const struct load_combination *k, int at, int quake)
{
	const int cases = rafter_snow_cases(q->c, q->array);

	for (int s = 0; s < cases; s++) {
		const struct rafter_case load = {.k = k,
						 .roof_snow = rafter_roof_snow(q->c, s, q->array),
						 .snow_case = q->array ? s : -1,
						 .array = q->array,
						 .quake = quake};

		if (at < 0 || !rafter_case_outdone(q->c, at, s, q->array, false))
			one(q, &load, NULL, 0);
		if (s == 0 && q->whole.supports > 2 && load.roof_snow > 0 &&
		    !rafter_partial_spared(q->c))
			patterns(q, &load);
	}
	if (q->c->ice > 0 && quake == 0 && k->W <= 0 && k->Lr <= 0 &&
	    (q->whole.low_loaded || q->whole.high_loaded)) {
		struct load_combination bare = *k; /* with dead load only (7.4.5) */

		bare.S = 0;
		const struct rafter_case load = {.k = &bare, .snow_case = -1, .array = q->array};

		one(q, &load, NULL, k->S * q->c->ice);
	}
}

static void even(struct rating *q, const struct load_combination *k, bool lift, int quake)
{
	const struct rafter_case load = {
		.k = k, .snow_case = -1, .lift = lift, .array = q->array, .quake = quake};

	one(q, &load, NULL, 0);
}

/* How far the end of a loaded tail bends down under snow and under live load alone. What lies between
   the walls would lift it, so that is left out (safe side). */
static void tail_bows(struct rating *q)
{
	static const struct load_combination snow = {.text = "S alone", .S = 1, .CD = 1},
					     live = {.text = "Lr alone", .Lr = 1, .CD = 1};
	const int cases = rafter_snow_cases(q->c, q->array);

	struct rafter_case load = {
		.k = &live, .snow_case = -1, .array = q->array, .bow = true, .tails_only = true};

	if (!q->whole.low_loaded && !q->whole.high_loaded)
		return;
	one(q, &load, NULL, 0);
	load.k = &snow;
	for (int s = 0; s < cases; s++) {
		load.roof_snow = rafter_roof_snow(q->c, s, q->array);
		load.snow_case = q->array ? s : -1;
		one(q, &load, NULL, 0);
	}
}

void rafter_whole_rate(struct context *c, const struct pass *pass, int rafter, bool array,
		       struct check_value check[CHECK_COUNT], int *pattern,
		       const struct check_value *target, enum check_id governs, struct trace *trace)
{
	struct rating q = {.c = c,
			   .pass = pass,
			   .rafter = rafter,
			   .array = array,
			   .check = check,
			   .pattern = pattern,
			   .at = -1,
			   .target = target,
			   .governs = governs,
			   .trace = trace};

	if (!rafter_whole_lay(c, pass, rafter, &q.whole))
		return;
	struct rafter_stage stage;

	q.stage = rafter_stage_whole(c, pass, &q.whole, array, &stage) ? &stage : NULL;
	for (int i = 0; i < c->combinations; i++) {
		const struct load_combination *k = &c->combination[i];

		if (k->W > 0 && k->S <= 0 && k->Lr <= 0 && k->D < 1)
			even(&q, k, true, 0);
		if (k->S > 0)
			with_snow(&q, k, i, 0);
		else
			even(&q, k, false, 0);
	}
	for (int i = 0; i < c->quake.combinations && c->quake.known && array; i++)
		for (int way = -1; way <= 1; way += 2) {
			const struct load_combination *k = &c->quake.combination[i];

			if (k->S > 0)
				with_snow(&q, k, -1, way);
			else
				even(&q, k, false, way);
		}
	tail_bows(&q);
}
