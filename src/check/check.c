/* SPDX-License-Identifier: MIT */
/* Runs a job through the rooms: does the general check apply, what loads it, where do the feet go, what holds.

   Where wind coefficients are not confirmed, two passes are made: with the remembered curve and with the safe side. The
   layout is the one that holds with both if there is one. If only the remembered curve holds, nothing is said to hold: the
   coefficient is to be looked up. */
#include "check/check.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "check/attachment.h"
#include "check/better_fact.h"
#include "check/block.h"
#include "check/courses.h"
#include "check/fastener.h"
#include "check/layout_rule.h"
#include "check/layout_search.h"
#include "check/pass.h"
#include "check/rafter_check.h"
#include "check/rafter_extra.h"
#include "check/remedy.h"
#include "check/verdict.h"

/* Covering and underlayment under the foot: measured, else the thick end of the published range (a longer way for the screw,
   a wider gap) and one felt of 1/16 in. */
static double built_up(const struct context *c)
{
	if (isfinite(c->job->roof.built_up))
		return c->job->roof.built_up;
	if (c->covering && isfinite(c->covering->thickness_high_in))
		return (c->covering->thickness_high_in + 1.0 / 16) * M_PER_IN;
	return NAN;
}

static void prepare(struct context *c, const struct job *job, struct result *r)
{
	memset(c, 0, CONTEXT_CLEARED);
	c->job = job;
	c->r = r;
	c->theta = job->roof.pitch;
	c->sin_theta = sin(c->theta);
	c->cos_theta = cos(c->theta);
	c->code = loading_code_of(job->site.code);
	c->covering = covering_row(job->roof.covering);
	c->built_up = built_up(c);
	c->Cg = 1;
	r->remarks = r->remarks_dropped = r->passes = r->judged = 0;
	r->shapes = r->rafters = r->collectors = 0;
	r->rafter_beam.known = r->rail_beam.known = false;
	r->wind = (struct wind_result){ 0 };
	r->snow = (struct snow_result){ 0 };
	r->dead = (struct dead_result){ 0 };
	r->quake = (struct quake_result){ 0 };
	r->fastener = (struct fastener_result){ 0 };
	r->lumber = (struct lumber_result){ 0 };
	r->block = (struct block_result){ 0 };
	r->search = (struct search_result){ 0 };
	for (int s = 0; s < (int)SECTION_COUNT; s++)
		r->trace[s] = (struct trace){ r->record[s], 0, TRACE_MAX, 0 };
}

/* Rafter spacings in the widest bay worth trying: all, or what the user's own spacing takes in. */
static int widest_bay(const struct context *c)
{
	const double wanted = c->job->mount.spacing, bay = mean_bay(c->r);

	if (!isfinite(wanted) || bay <= 0)
		return c->r->rafters;
	return (int)fmax(1, floor(wanted / bay + 1e-9)); /* 1e-9: whole bays must not lose one to the last bit */
}

/* From the widest bay down, the first layout that holds under the context's curve; else the one with the lowest ratio. What
   trial layouts say does not count. True if the pass is that of the layout kept, with what it says. */
static bool walk(struct context *c, const struct zone_spacing zone[ZONE_COUNT], struct layout *layout, struct pass *pass)
{
	const int said = c->r->remarks;
	struct layout trial;
	double best = HUGE_VAL;
	bool found = false, kept = false;
	int bays = widest_bay(c);

	while (bays > 0) {
		/* the first is kept in any case */
		struct layout *const at = found ? &trial : layout;

		layout_plan(c, zone, bays, at);
		c->r->remarks = said;
		pass_run(c, at, pass);
		/* what differs in the last bits alone is no better: the layout of fewer feet stays */
		kept = !found || pass->holds || pass->ratio < best * (1 - 1e-12);
		if (kept && found)
			*layout = trial;
		if (kept)
			best = pass->ratio;
		found = true;
		if (pass->holds || isfinite(c->job->mount.spacing))
			break;
		bays = at->widest < bays ? at->widest : bays - 1;
	}
	return kept;
}

/* Any layout that holds, for one of many trials: where the search rules all of them out there is no need to walk. True if
   the pass is that of the layout. */
static bool search_quick(struct context *c, const struct zone_spacing zone[ZONE_COUNT], struct layout *layout,
                         struct pass *pass)
{
	layout_plan(c, zone, widest_bay(c), layout);
	pass_run(c, layout, pass);
	if (pass->holds)
		return true;
	if (!layout_search(c, layout, pass) && !c->r->search.settled)
		walk(c, zone, layout, pass);
	return false;
}

/* The fewest feet that hold under the context's curve, or the layout that the job asks for; else the least bad. */
static bool search(struct context *c, struct layout *layout, struct pass *pass)
{
	struct zone_spacing zone[ZONE_COUNT];
	const int said = c->r->remarks; /* what a trial layout says does not count */

	spacing_run(c, zone);
	c->r->remarks = said;
	const bool free = !isfinite(c->job->mount.spacing) && c->lines > 0 && c->fastener_rated;
	const bool quick = free && c->effort == EFFORT_QUICK && c->job->mount.holes == 0;
	bool done = quick ? search_quick(c, zone, layout, pass) : walk(c, zone, layout, pass);

	if (free && !quick) {
		if (!done)
			pass_run(c, layout, pass);
		layout_search(c, layout, pass);
		done = false;
	}
	if (!done) {
		c->r->remarks = said;
		pass_run(c, layout, pass);
	}
	memcpy(pass->zone, zone, sizeof zone);
	return pass->holds;
}

static void rate(struct context *c, enum wind_curve curve, const struct layout *layout, struct pass *pass)
{
	const int said = c->r->remarks;

	c->curve = curve;
	spacing_run(c, pass->zone);
	c->r->remarks = said;
	pass_run(c, layout, pass);
}

static void passes(struct context *c)
{
	struct result *r = c->r;
	struct layout layout;

	c->curve = CURVE_SAFE_SIDE;
	const bool safe = search(c, &layout, &r->pass[1]);

	if (!c->curve_matters) {
		pass_copy(&r->pass[0], &r->pass[1]);
		r->pass[0].name = c->job->coefficients > 0 ? "coefficients as entered" : "published coefficients";
		r->passes = 1;
		return;
	}
	r->passes = 2;
	r->judged = 1;
	r->pass[0].name = "remembered curve";
	r->pass[1].name = "safe side";
	if (safe) {
		rate(c, CURVE_RECALLED, &layout, &r->pass[0]);
		return;
	}
	const struct search_result searched = r->search;
	struct layout recalled;

	c->curve = CURVE_RECALLED;
	if (search(c, &recalled, &r->pass[0])) {
		rate(c, CURVE_SAFE_SIDE, &recalled, &r->pass[1]);
		return;
	}
	r->search = searched;
	rate(c, CURVE_RECALLED, &layout, &r->pass[0]);
}

static bool some_pass_holds(const struct result *r)
{
	return r->passes > 0 && (r->pass[r->judged].holds || (r->passes == 2 && r->pass[0].holds));
}

/* Where no layout on rafters holds and the job allows blocks: the first kind of block with which one does. */
static void with_blocks(struct context *c, int said)
{
	const char *why = "the size asked for is none of those that are rated: 2x6 or 2x8 flat, 4x4 to 4x10.";

	for (int kind = 1; kind <= block_kinds(); kind++) {
		const char *against;

		if (!block_wanted(c, kind))
			continue;
		if (!block_set(c, kind, &against)) {
			why = c->r->block.kind > 0 ? why : against;
			continue;
		}
		why = "no layout on rafters and blocks holds either.";
		c->r->remarks = said;
		passes(c);
		if (some_pass_holds(c->r))
			return;
	}
	block_clear(c);
	c->r->remarks = said;
	passes(c);
	block_refuse(c, why);
}

/* Everything that does not depend on where the feet stand. False if the calculation ends here. */
static bool set_up(struct context *c)
{
	check_assumptions(c);
	check_doubts(c);
	const bool stopped = check_stops(c);

	check_geometry(c);
	if (!check_loads(c) || stopped)
		return false;
	rafter_prepare(c);
	fastener_prepare(c);
	rafter_extra_prepare(c);
	return true;
}

static void run(const struct job *job, struct result *r, enum effort effort)
{
	struct context c;

	prepare(&c, job, r);
	c.effort = effort;
	if (!c.code) {
		REMARK_T(r, EDITION, (0), "of this job");
		r->verdict = NEEDS_ENGINEER;
		return;
	}
	if (set_up(&c)) {
		const int said = r->remarks;

		passes(&c);
		if (job->mount.between == BETWEEN_BLOCKING && !some_pass_holds(r))
			with_blocks(&c, said);
		for (int i = 0; i < r->passes; i++)
			courses_fill(&c, &r->pass[i]);
		courses_tell(&c, &r->pass[r->judged]);
		c.curve = r->judged == 1 ? CURVE_SAFE_SIDE : CURVE_RECALLED;
		pass_explain(&c, &r->pass[r->judged]);
	}
	verdict_give(&c);
}

bool check_layout(const struct job *job, struct result *r, enum wind_curve curve, struct layout *layout, struct pass *pass)
{
	struct zone_spacing zone[ZONE_COUNT];
	struct layout planned;
	struct context c;

	prepare(&c, job, r);
	const char *why;

	if (!c.code || !set_up(&c) || (layout->block > 0 && !block_set(&c, layout->block, &why)))
		return false;
	c.curve = curve;
	spacing_run(&c, zone);
	layout_plan(&c, zone, r->rafters, &planned);
	memcpy(layout->cantilever, planned.cantilever, sizeof planned.cantilever);
	pass_run(&c, layout, pass);
	return pass->holds;
}

bool check_explain(const struct job *job, struct result *r, struct check_workspace *w, int attachment)
{
	const struct pass *pass = &r->pass[r->judged];
	struct context c;

	if (r->passes == 0 || attachment < 1 || attachment > pass->attachments)
		return false;
	prepare(&c, job, &w->result);
	const char *why;

	if (!set_up(&c) || (r->block.kind > 0 && !block_set(&c, r->block.kind, &why)))
		return false;
	r->trace[SECTION_ATTACHMENT].count = r->trace[SECTION_FASTENER].count = 0;
	c.curve = r->judged == 1 ? CURVE_SAFE_SIDE : CURVE_RECALLED;
	attachment_explain(&c, &pass->attachment[attachment - 1], &r->trace[SECTION_ATTACHMENT],
	                   &r->trace[SECTION_FASTENER]);
	return true;
}

void check_run_plain(const struct job *job, struct result *r)
{
	run(job, r, EFFORT_FULL);
}

void check_run_quick(const struct job *job, struct result *r)
{
	run(job, r, EFFORT_QUICK);
}

void check_run(const struct job *job, struct result *r, struct check_workspace *w)
{
	run(job, r, EFFORT_PROOF);
	remedies_find(job, r, w);
	better_fact_find(job, r, w);
}
