/* SPDX-License-Identifier: MIT */
/* Fewest feet over all lines together under the whole check, or the best layout with a wanted
   number.

   What the search asks of a foot rests on this: wind at a foot depends on its tributary area, and
   so on its neighbours, alone; with that, its forces grow with the width of rail that it carries,
   and most often in proportion to it (not where somebody stands on the rail, say). A test holds the
   search against trying every layout under the whole check. */
#include "check/layout_search.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "check/attachment.h"
#include "check/layout_rule.h"
#include "check/rafter_check.h"
#include "check/rail.h"
#include "roof/search.h"

#define MEMO 4096
/* Steps of the search that one question may take: for one of many trial runs, and for a proof that
 * is asked for. */
#define WORK_TRIAL 8000
#define WORK_PROOF 400000

/* What is known of a foot between two neighbours. */
struct memo {
	short line, a, b, c; /* b: -1 where the entry is empty */
	struct search_cost cost;
	double p_up, p_down, ratio; /* at its plain share of the rail */
};

enum answer { NOT_ASKED, PROPORTIONAL, OTHERWISE };

struct finder {
	struct context *c;
	struct pass *pass; /* store for trial runs */
	const double *cantilever;
	struct search_problem problem;
	struct search_line line[LINE_MAX];
	enum answer proportional[LINE_MAX]; /* feet of this line: ratio to width */
	double rail;                        /* capacity, N m; NAN */
	struct memo memo[MEMO];
	struct layout layout;
};

/* A foot on rafter b between its neighbours, carrying its plain share of the rail. */
static struct attachment standing(const struct finder *f, int line, int a, int b, int c)
{
	const struct line *l = &f->c->line[line];
	const double *x = f->c->r->rafter_x;
	const double left = a < 0 ? l->x0 : (x[a] + x[b]) / 2,
		     right = c < 0 ? l->x1 : (x[b] + x[c]) / 2;

	return (struct attachment){.number = 1,
				   .line = line,
				   .rafter = b,
				   .x = x[b],
				   .y = l->y,
				   .tributary = {left, l->y_low, right, l->y_high},
				   .tributary_width = right - left,
				   .tributary_depth = l->y_high - l->y_low,
				   .area = (right - left) * (l->y_high - l->y_low),
				   .reaction_width = right - left};
}

/* The rafter under this foot and no other. */
static double lone_rafter(const struct finder *f, const struct attachment *foot)
{
	const struct attachment kept =
		f->pass->attachment[0]; /* whoever asks may be filling the pass */
	const int attachments = f->pass->attachments;

	f->pass->attachments = 1;
	f->pass->attachment[0] = *foot;
	const double ratio = rafter_ratio(f->c, f->pass, foot->rafter);

	f->pass->attachment[0] = kept;
	f->pass->attachments = attachments;
	return ratio;
}

/* Ratio of a foot at another width than its plain share. */
static double ratio_at(const struct finder *f, const struct attachment *foot, double width)
{
	struct attachment t = *foot;

	memset(t.check, 0, sizeof t.check);
	t.uplift = t.down = t.slope = (struct force){0};
	t.reaction_width = width;
	attachment_hold(f->c, &t);
	return t.ratio;
}

/* Ratio per metre of rail; 0 where it is not in proportion. Whether it is depends on what else acts
   on the feet of a line (somebody on the rail, snow that is held), not on which foot it is. */
static double per_metre(struct finder *f, const struct attachment *foot)
{
	enum answer *p = &f->proportional[foot->line];

	if (*p == NOT_ASKED && foot->ratio > 0) {
		const double twice = ratio_at(f, foot, 2 * foot->tributary_width);

		*p = fabs(twice - 2 * foot->ratio) <= 1e-12 * twice ? PROPORTIONAL : OTHERWISE;
	}
	return *p == PROPORTIONAL ? foot->ratio / foot->tributary_width : 0;
}

static const struct memo *known(struct finder *f, int line, int a, int b, int c)
{
	const char *combination;
	struct memo *m =
		&f->memo[(unsigned)(line * 1931 + b * 131 + (b - a) * 17 + (c - b) * 257) % MEMO];

	if (m->b == b && m->line == line && m->a == a && m->c == c)
		return m;
	struct attachment t = standing(f, line, a, b, c);

	attachment_run(f->c, &t);
	*m = (struct memo){
		(short)line, (short)a, (short)b, (short)c, {per_metre(f, &t), 0, t.ratio},
		t.p_up,      t.p_down, t.ratio};
	if (isfinite(f->rail))
		m->cost.moment = rail_load(f->c, &t, 1, isfinite(f->c->job->rail.allowable_moment),
					   &combination) *
				 t.tributary_depth / f->rail;
	if (f->problem.rafters_add && f->c->effort != EFFORT_QUICK && t.ratio <= 1)
		m->cost.alone = fmax(m->cost.alone, lone_rafter(f, &t));
	return m;
}

/* Ratio of a foot that carries this width, no less than its plain share. */
static double ratio_of(const struct finder *f, const struct attachment *foot, double width)
{
	if (f->proportional[foot->line] == PROPORTIONAL || !(width > foot->tributary_width))
		return foot->ratio / foot->tributary_width * width;
	return ratio_at(f, foot, width);
}

static struct search_cost cost(void *context, int line, int a, int b, int c)
{
	return known(context, line, a, b, c)->cost;
}

/* Foot i of `count` feet on a line, as the pass would have it; its width of rail is set by the
 * caller. */
static struct attachment foot_of(struct finder *f, int line, const unsigned char *rafter, int count,
				 int i)
{
	const int a = i > 0 ? rafter[i - 1] : -1, c = i + 1 < count ? rafter[i + 1] : -1;
	const struct memo *m = known(f, line, a, rafter[i], c);
	struct attachment t = standing(f, line, a, rafter[i], c);

	t.p_up = m->p_up;
	t.p_down = m->p_down;
	t.ratio = m->ratio;
	return t;
}

static double whole(void *context, int line, const unsigned char *rafter, int count, double *width)
{
	struct finder *f = context;
	const struct line *l = &f->c->line[line];
	struct attachment *feet = f->pass->attachment;
	struct rail_line rail = {.line = line, .cantilever_limit = f->cantilever[line]};
	double x[RAFTER_MAX], ratio = 0;

	for (int i = 0; i < count; i++) {
		feet[i] = foot_of(f, line, rafter, count, i);
		x[i] = feet[i].x;
	}
	if (splice_in_end_span(f->c, l, x, count) || !rail_reactions(l, feet, count))
		return HUGE_VAL;
	rail_run(f->c, l, feet, count, &rail, NULL);
	for (int i = 0; i < count; i++) {
		width[i] = fmax(feet[i].reaction_width, feet[i].tributary_width);
		ratio = fmax(ratio, ratio_of(f, &feet[i], width[i]));
	}
	return fmax(ratio, rail.ratio);
}

static double rafter(void *context, int rafter, const struct search_layout *layout, int lines,
		     const double *width)
{
	struct finder *f = context;
	const int reach =
		f->c->job->framing.sharing > 0 ? 1 : 0; /* its neighbours may hand it a share */
	int n = 0;

	for (int l = 0, first = 0; l < lines; first += layout->count[l], l++)
		for (int i = 0; i < layout->count[l]; i++) {
			if (abs(layout->rafter[first + i] - rafter) > reach || n == ATTACHMENT_MAX)
				continue;
			f->pass->attachment[n] =
				foot_of(f, l, &layout->rafter[first], layout->count[l], i);
			f->pass->attachment[n++].reaction_width = width[first + i];
		}
	f->pass->attachments = n;
	return rafter_ratio(f->c, f->pass, rafter);
}

static void spread(struct finder *f, const struct search_layout *from, struct layout *to)
{
	to->widest = 0;
	for (int l = 0, at = 0; l < f->c->lines; l++) {
		to->count[l] = from->count[l];
		to->cantilever[l] = f->cantilever[l];
		for (int i = 0; i < to->count[l]; i++) {
			to->rafter[l][i] = from->rafter[at++];
			if (i > 0 && to->rafter[l][i] - to->rafter[l][i - 1] > to->widest)
				to->widest = to->rafter[l][i] - to->rafter[l][i - 1];
		}
	}
}

static double accept(void *context, const struct search_layout *layout)
{
	struct finder *f = context;

	spread(f, layout, &f->layout);
	pass_run(f->c, &f->layout, f->pass);
	return f->pass->complete && !f->c->coefficient_missing ? f->pass->ratio : HUGE_VAL;
}

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
	for (int i = 0; i < MEMO; i++)
		f->memo[i].b = -1;
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
					     .grows = c->job->coefficients == 0,
					     .rafters_add = true,
					     .context = f,
					     .cost = cost,
					     .whole = whole,
					     .rafter = rafter,
					     .accept = accept};
}

/* The best with exactly n feet, whatever its ratio: the limit is raised until something is found.
 */
static bool best_of(const struct finder *f, int n, double limit, long *work, struct search_state *s)
{
	for (; limit < 1e3; limit *= 1.5) {
		search_best(&f->problem, n, limit, work, s);
		if (s->best.found || !s->best.complete)
			break;
	}
	return s->best.found;
}

/* One foot fewer: that nothing holds is known already; this says what stands in the way. */
static void one_fewer(struct finder *f, struct search_state *s)
{
	struct search_result *r = &f->c->r->search;
	long work = WORK_PROOF;

	r->fewer = false;
	if (r->feet <= 2 * f->c->lines || !best_of(f, r->feet - 1, 1, &work, s))
		return;
	accept(f, &s->best.layout);
	r->fewer = true;
	r->fewer_settled = s->best.complete;
	r->fewer_ratio = f->pass->ratio;
	r->fewer_governs = f->pass->governs;
}

/* From the least number that single feet allow upwards, to that of the layout that is known to
 * hold. */
static bool fewest(struct finder *f, int most, double ratio, struct search_state *s)
{
	struct search_result *r = &f->c->r->search;
	long work = f->c->effort == EFFORT_QUICK ? WORK_TRIAL : WORK_PROOF;

	r->bound = search_least(&f->problem, 1, s);
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

bool layout_search(struct context *c, struct layout *layout, struct pass *pass)
{
	struct finder f;
	struct search_state s;
	const bool holds = pass->holds;
	const int feet = pass->attachments;
	const double ratio = pass->ratio;
	const int wanted = c->job->mount.holes;
	long work = WORK_PROOF;
	bool found;

	c->r->search = (struct search_result){.ran = true, .wanted = wanted};
	prepare(&f, c, layout, pass);
	if (wanted > 0) {
		found = best_of(&f, wanted, 1, &work, &s);
		c->r->search.feet = wanted;
		c->r->search.best = c->r->search.settled = s.best.complete;
	} else {
		found = fewest(&f, holds ? feet : SEARCH_FEET_MAX, holds ? ratio : 1, &s);
	}
	if (found)
		spread(&f, &s.best.layout, layout);
	else if (holds && wanted == 0)
		c->r->search.feet = feet;
	c->r->search.found = found || (holds && wanted == 0);
	if (c->effort == EFFORT_PROOF && wanted == 0 && c->r->search.found &&
	    c->r->search.bound == c->r->search.feet)
		one_fewer(&f, &s);
	return found;
}
