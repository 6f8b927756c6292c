/* SPDX-License-Identifier: MIT */
/* What is said of earthquake, uneven snow, ice and the rules on existing buildings once the feet
 * stand. */
#include "check/verdict.h"

#include <math.h>

#include "check/attachment.h"
#include "check/load_case.h"
#include "check/overhang.h"
#include "check/rafter_whole.h"
#include "check/rail_pattern.h"
#include "load/triggers.h"
#include "table/lookup_limit.h"

const char *verdict_iebc(const struct job *job)
{
	static const char *const section[] = {"IEBC 2015 403.3, 807.4", "IEBC 2018 503.3, 806.2",
					      "IEBC 2021 503.3", "IEBC 2024 503.3"};

	return section[job->existing.code];
}

static const char *iebc_lateral(const struct job *job)
{
	static const char *const section[] = {"IEBC 2015 403.4, 807.5", "IEBC 2018 503.4, 806.3",
					      "IEBC 2021 503.4", "IEBC 2024 503.4"};

	return section[job->existing.code];
}

/* Largest sideways force on a foot over the seismic combinations. */
static void sideways(struct context *c, const struct pass *pass)
{
	const char *combination = "";
	double worst = 0;

	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];
		const double area =
			fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;

		for (int k = 0; k < c->quake.combinations; k++) {
			const double V = quake_cross(c, &c->quake.combination[k], area);

			if (V > worst) {
				worst = V;
				combination = c->quake.combination[k].text;
			}
		}
	}
	if (worst > 0)
		REMARK_T(c->r, CROSS_SLOPE_FORCE, (worst), combination);
}

static void earthquake(struct context *c, const struct pass *pass)
{
	if (c->job->earthquake.category == SEISMIC_A)
		return;
	if (!c->quake.known) {
		REMARK(c->r, UNCHECKED_SEISMIC, 0);
		return;
	}
	if (pass)
		sideways(c, pass);
	REMARK(c->r, UNCHECKED_SEISMIC_FRAME, 0);
}

static void snow(struct context *c, const struct pass *pass)
{
	double more = 0;
	bool ice = false;

	for (int i = 0; i < pass->attachments; i++) {
		const struct attachment *a = &pass->attachment[i];

		more = fmax(more, a->snow_width / fmax(a->reaction_width, a->tributary_width) - 1);
		ice = ice || ice_on(c, a) > 0;
	}
	if (more > 0.001) /* what would print as nothing */
		REMARK(c->r, PARTIAL_SNOW, more);
	if (ice)
		REMARK(c->r, ICE_DAM, c->ice);
}

/* Rafters over several spans, and tails. */
static void rafters(struct context *c, const struct pass *pass)
{
	const struct rafter_result *worst = NULL;
	const double over = c->job->building.eave_overhang, longest = limit_of(LIMIT_TAIL_LENGTH);
	bool tail = false, runs_on = false;

	for (int i = 0; i < pass->rafters; i++) {
		const struct rafter_result *r = &pass->rafter[i];

		if (r->after[CHECK_RAFTER_PARTIAL].rated &&
		    (!worst || r->after[CHECK_RAFTER_PARTIAL].ratio > worst->after[CHECK_RAFTER_PARTIAL].ratio))
			worst = r;
		tail = tail || r->tail;
		runs_on = runs_on || r->spans > 2;
	}
	if (worst)
		REMARK_T(c->r, PARTIAL_RAFTER, (worst->after[CHECK_RAFTER_PARTIAL].ratio, worst->spans),
			 span_pattern_text(worst->pattern, worst->spans));
	else if (runs_on && c->snow.snow[0].roof > 0 && rafter_partial_spared(c))
		REMARK(c->r, PARTIAL_SPARED, limit_of(LIMIT_PARTIAL_SLOPE_LEAST), limit_of(LIMIT_PARTIAL_SLOPE_MOST));
	if (tail)
		REMARK_T(c->r, TAIL, (rafter_tail_depth(c)), isfinite(c->job->framing.tail_depth)
			 ? "as measured" : "the least that IRC R802.7.1.1 leaves a notched rafter there");
	if (tail && !isfinite(c->job->framing.tail_depth) && !at_most(over, longest))
		REMARK(c->r, TAIL_LONG, over, longest);
}

/* The weight of the array beside that of roof, ceiling and upper half of the walls stands for the
   rise of the lateral demand, earlier additions counted with it. */
static void lateral(struct context *c)
{
	const struct job_existing *e = &c->job->existing;
	const struct job_collector *k = &c->job->collector;
	const double array = c->r->dead.array_filled * k->length * k->width * k->columns * k->rows;
	bool more;

	if (!isfinite(e->weight)) {
		REMARK(c->r, UNCHECKED_LATERAL, 0);
		return;
	}
	const double rise =
		trigger_lateral(array + e->added, e->weight, &more, &c->r->trace[SECTION_DEAD]);

	if (more)
		REMARK_T(c->r, LATERAL_MORE, (rise), iebc_lateral(c->job));
	else
		REMARK_T(c->r, LATERAL_OK, (rise), iebc_lateral(c->job));
}

void verdict_loads(struct context *c)
{
	const struct pass *pass = c->r->passes > 0 ? &c->r->pass[c->r->judged] : NULL;

	earthquake(c, pass);
	if (pass) {
		snow(c, pass);
		rafters(c, pass);
	}
	lateral(c);
	if (c->job->existing.irc_house == ANSWER_YES)
		REMARK_T(c->r, FIVE_EXCEPTED, (0), verdict_iebc(c->job));
	if (c->job->site.ground_snow > 0)
		REMARK(c->r, UNCHECKED_SLIDING, 0);
}
