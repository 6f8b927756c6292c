/* SPDX-License-Identifier: MIT */
/* Fewest feet over all lines together under the whole check, or the best layout with a wanted
   number. */
#include "check/layout_search.h"

#include <math.h>

#include "check/layout_ask.h"
#include "check/layout_rule.h"
#include "check/rafter_extra.h"
#include "check/rail.h"

/* Steps of the search that one question may take: for one of many trial runs, and for a proof that
 * is asked for. */
#define WORK_TRIAL 8000
#define WORK_PROOF 400000
#define WORK_FEWER 400000
/* Nothing worse is worth showing. */
#define RATIO_MOST 1000

static bool same_places(const struct context *c, int a, int b)
{
	const struct line *p = &c->line[a], *q = &c->line[b];

	return p->row == q->row && at_most(p->x0, q->x0) && at_least(p->x0, q->x0);
}

/* Lines come in twos, lower and upper. Aligned only if the job says so, aside only if it asks; else
 * as the search likes. */
static void line_set(struct finder *f, int i)
{
	const struct context *c = f->c;
	struct search_line *s = &f->line[i];
	const double limit = c->job->mount.max_spacing;
	const bool upper = i % 2 == 1 && same_places(c, i - 1, i);
	const enum yes_no stagger = c->job->mount.stagger;

	*s = (struct search_line){.x0 = c->line[i].x0,
				  .x1 = c->line[i].x1,
				  .cantilever = f->cantilever[i],
				  .bay = isfinite(limit) ? limit : HUGE_VAL,
				  .copies = -1,
				  .apart = -1};
	if (rail_is_joined(c, &c->line[i]))
		s->least = SPLICE_FEET; /* joints need an inner span */
	for (int k = 0; k < c->r->rafters; k++)
		if (at_least(c->r->rafter_x[k], s->x0) && at_most(c->r->rafter_x[k], s->x1) &&
		    !foot_blocked(c, c->r->rafter_x[k], c->line[i].y))
			s->place[s->places++] = (unsigned char)k;
	if (upper && stagger == ANSWER_YES)
		s->apart = i - 1;
	if (upper && stagger == ANSWER_NO && job_given(c->job, FIELD_MOUNT_STAGGER))
		s->copies = i - 1;
}

/* Rafters that only one of two lines which go together can use serve neither. */
static void line_pair(struct search_line *lower, const struct search_line *upper)
{
	int n = 0;

	for (int i = 0; i < lower->places; i++)
		for (int k = 0; k < upper->places; k++)
			if (lower->place[i] == upper->place[k])
				lower->place[n++] = lower->place[i];
	lower->places = n;
}

static void prepare(struct finder *f, struct context *c, const struct layout *layout,
		    struct pass *pass)
{
	f->c = c;
	f->pass = pass;
	f->cantilever = layout->cantilever;
	f->rail = c->job->rail.kind == SUPPORT_RAILS ? rail_capacity(c, NULL) : (double)NAN;
	for (int i = 0; i < c->lines; i++) {
		line_set(f, i);
		f->proportional[i] = NOT_ASKED;
	}
	for (int i = 0; i < c->lines; i++)
		if (f->line[i].copies >= 0)
			line_pair(&f->line[f->line[i].copies], &f->line[i]);
	f->problem = (struct search_problem){.x = c->r->rafter_x,
					     .lines = c->lines,
					     .line = f->line,
					     .floor = pass_collector_ratio(c, pass),
					     /* a wider foot has less wind per area, and the rail
						beside it with it: what a longer bay on one side
						does to a cantilever on the other is asked for */
					     .grows = c->job->coefficients == 0 &&
						      !isfinite(f->rail),
					     /* a foot in one span of a rafter relieves the other */
					     .rafters_add = !rafter_in_one_piece(c),
					     .even = c->effort != EFFORT_QUICK,
					     .context = f};
	layout_ask_prepare(f);
}

/* One foot fewer, or two where lines go in pairs: that nothing holds is known already; this says what
   stands in the way. */
static void one_fewer(struct finder *f)
{
	struct search_result *r = &f->c->r->search;
	struct search_state *s = &f->state;
	long work = WORK_FEWER;
	bool found = false;

	r->fewer = false;
	if (s->best.found)
		s->hint = s->best.layout;
	f->problem.even = false;
	f->problem.floor = fmax(f->problem.floor, 1);
	for (int n = r->feet - 1; n >= r->feet - 2 && n >= 2 * f->c->lines && !found && work > 0; n--) {
		search_best(&f->problem, n, RATIO_MOST, &work, s);
		found = s->best.found;
		r->fewer_feet = n;
	}
	if (!found) {
		if (work > 0)
			r->bar = layout_bar(f, r->feet);
		return;
	}
	f->problem.accept(f, &s->best.layout);
	r->fewer = true;
	r->fewer_settled = s->best.complete;
	r->fewer_bound = s->best.complete ? s->best.ratio : fmin(s->best.bound, s->best.ratio);
	r->fewer_ratio = f->pass->ratio;
	r->fewer_governs = f->pass->governs;
}

/* What the walk found holds, but on as few feet nothing keeps every rule of the search. */
static void rule_left(struct finder *f)
{
	struct search_result *r = &f->c->r->search;

	r->bar = layout_bar(f, r->feet + 1);
	r->bound = 0;
}

/* From the least number that single feet and full rafters allow upwards, to that of the layout that
   is known to hold. */
static bool fewest(struct finder *f, int most, double ratio)
{
	struct search_result *r = &f->c->r->search;
	struct search_state *s = &f->state;
	long work = f->c->effort == EFFORT_QUICK ? WORK_TRIAL : WORK_PROOF;

	r->bound = search_fewest(&f->problem, 1, &work, s);
	r->settled = false;
	if (r->bound < 0 || r->bound > SEARCH_FEET_MAX) {
		r->settled = r->bound >= 0;
		return false;
	}
	if (most > s->room[0])
		most = s->room[0];
	for (int n = r->bound; n <= most && work > 0; n++) {
		search_best(&f->problem, n, n == most ? ratio : 1, &work, s);
		if (!s->best.complete && !s->best.found)
			return false;
		if (!s->best.found) {
			r->bound = n + 1;
			continue;
		}
		r->feet = n;
		r->settled = true;
		r->best = s->best.complete;
		return true;
	}
	r->settled = r->bound > most;
	return false;
}

/* The best with the number that the job asks for; where there is none, why. */
static bool best_of(struct finder *f, int wanted)
{
	struct search_result *r = &f->c->r->search;
	struct search_state *s = &f->state;
	long work = WORK_PROOF;

	search_best(&f->problem, wanted, RATIO_MOST, &work, s);
	r->feet = wanted;
	r->best = r->settled = s->best.complete;
	if (s->best.found)
		return true;
	work = WORK_PROOF;
	r->bound = search_fewest(&f->problem, RATIO_MOST, &work, s);
	r->most = s->room[0];
	if (r->bound > wanted || (r->settled && wanted <= r->most))
		r->bar = layout_bar(f, r->bound > wanted ? r->bound : wanted + 1);
	return false;
}

bool layout_search(struct context *c, struct layout *layout, struct pass *pass)
{
	struct finder f;
	struct search_state *s = &f.state;
	const bool holds = pass->holds;
	const int feet = pass->attachments;
	const double ratio = pass->ratio;
	const int wanted = c->job->mount.holes;
	bool found;

	c->r->search = (struct search_result){.ran = true, .wanted = wanted};
	prepare(&f, c, layout, pass);
	if (wanted > 0) {
		found = best_of(&f, wanted);
	} else {
		found = fewest(&f, holds ? feet : SEARCH_FEET_MAX, holds ? ratio : 1);
	}
	if (found)
		layout_spread(&f, &s->best.layout, layout);
	else if (holds && wanted == 0)
		c->r->search.feet = feet;
	c->r->search.found = found || (holds && wanted == 0);
	if (c->effort != EFFORT_PROOF || wanted > 0)
		return found;
	if (c->r->search.found && c->r->search.bound == c->r->search.feet)
		one_fewer(&f);
	else if (c->r->search.found && c->r->search.bound > c->r->search.feet)
		rule_left(&f);
	else if (!c->r->search.found && c->r->search.settled)
		c->r->search.bar = layout_bar(&f, SEARCH_FEET_MAX + 1);
	return found;
}
