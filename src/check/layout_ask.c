/* SPDX-License-Identifier: MIT */
/* What the search asks of a foot rests on this: wind at a foot depends on its tributary area, and
   so on its neighbours, alone; with that, its forces grow with the width of rail that it carries,
   and most often in proportion to it (not where somebody stands on the rail, say). A test holds the
   search against trying every layout under the whole check. */
#include "check/layout_ask.h"

#include <math.h>
#include <string.h>

#include "check/attachment.h"
#include "check/layout_rule.h"
#include "check/rafter_load.h"
#include "check/rail.h"

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
static double lone_rafter(struct finder *f, const struct attachment *foot)
{
	const struct attachment kept =
		f->pass->attachment[0]; /* whoever asks may be filling the pass */
	const int attachments = f->pass->attachments;

	f->pass->attachments = 1;
	f->pass->attachment[0] = *foot;
	const double ratio = layout_rafter(f, foot->rafter);

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

static unsigned slot(int line, int a, int b, int c)
{
	const unsigned key = (((unsigned)line * 129 + (unsigned)b) * 129 + (unsigned)(a + 1)) * 129 +
			     (unsigned)(c + 1);

	return key * 2654435761u >> 20; /* 2^32 over the golden ratio spreads the bits upwards; 12 are kept */
}

static struct memo *known(struct finder *f, int line, int a, int b, int c)
{
	const char *combination;
	const unsigned at = slot(line, a, b, c) % MEMO;
	struct memo *m = &f->memo[at];

	if (f->memo_used[at] && m->b == b && m->line == line && m->a == a && m->c == c)
		return m;
	struct attachment t = standing(f, line, a, b, c);

	attachment_run(f->c, &t);
	f->memo_used[at] = true;
	*m = (struct memo){
		(short)line, (short)a, (short)b, (short)c, {per_metre(f, &t), 0, t.ratio},
		t.p_up,      t.p_down, t.tip,    t.ratio,  HUGE_VAL};
	if (isfinite(f->rail))
		m->cost.moment = rail_load(f->c, &t, 1, isfinite(f->c->job->rail.allowable_moment),
					   &combination) *
				 t.tributary_depth / f->rail;
	return m;
}

/* Ratio of a foot that carries this width, no less than its plain share. */
static double ratio_of(const struct finder *f, const struct attachment *foot, double width)
{
	if (f->proportional[foot->line] == PROPORTIONAL || !(width > foot->tributary_width))
		return foot->ratio / foot->tributary_width * width;
	return ratio_at(f, foot, width);
}

/* As the pass would have it, at its plain share. */
static struct attachment loaded(const struct finder *f, const struct memo *m)
{
	struct attachment t = standing(f, m->line, m->a, m->b, m->c);

	t.p_up = m->p_up;
	t.p_down = m->p_down;
	t.tip = m->tip;
	t.ratio = m->ratio;
	return t;
}

/* The rafter alone is asked again where the limit has become narrower. */
static struct search_cost cost(void *context, int line, int a, int b, int c)
{
	struct finder *f = context;
	struct memo *m = known(f, line, a, b, c);
	const double limit = f->state.limit;

	if (limit < m->asked && m->cost.alone <= limit && f->problem.rafters_add &&
	    f->c->effort != EFFORT_QUICK) {
		const struct attachment t = loaded(f, m);

		m->cost.alone = fmax(m->cost.alone, lone_rafter(f, &t));
		m->asked = f->worked_out ? 0 : limit;
	}
	return m->cost;
}

/* Foot i of `count` feet on a line; its width of rail is set by the caller. */
static struct attachment foot_of(struct finder *f, int line, const unsigned char *rafter, int count,
				 int i)
{
	const int a = i > 0 ? rafter[i - 1] : -1, c = i + 1 < count ? rafter[i + 1] : -1;

	return loaded(f, known(f, line, a, rafter[i], c));
}

/* The line under the whole check of rails and feet, which have their reactions. */
static double line_ratio(struct finder *f, int line, const struct attachment *feet, int count)
{
	struct rail_line rail = {.line = line, .cantilever_limit = f->cantilever[line]};
	double ratio = 0;

	rail_run(f->c, &f->c->line[line], feet, count, &rail, NULL);
	for (int i = 0; i < count; i++)
		ratio = fmax(ratio, ratio_of(f, &feet[i],
					     fmax(feet[i].reaction_width, feet[i].tributary_width)));
	return fmax(ratio, rail.ratio);
}

static struct whole_line *whole_of(struct finder *f, int line, const unsigned char *place, int count)
{
	struct whole_line key = {.line = line, .ratio = -1};

	for (int i = 0; i < count; i++)
		key.place[place[i] / 64] |= UINT64_C(1) << place[i] % 64;
	/* an odd multiplier spreads the bits upwards */
	const uint64_t h = (key.place[0] ^ key.place[1] << 7 ^ (uint64_t)line << 57) *
			   UINT64_C(0x9E3779B97F4A7C15);
	const unsigned at = (unsigned)(h >> 40) % WHOLES;
	struct whole_line *w = &f->wholes[at];

	if (!f->wholes_used[at] || w->line != key.line || w->place[0] != key.place[0] ||
	    w->place[1] != key.place[1])
		*w = key;
	f->wholes_used[at] = true;
	return w;
}

static double whole(void *context, int line, const unsigned char *rafter, int count, double *width)
{
	struct finder *f = context;
	const struct line *l = &f->c->line[line];
	struct attachment *feet = f->pass->attachment;
	struct whole_line *w = whole_of(f, line, rafter, count);
	double x[RAFTER_MAX];

	for (int i = 0; i < count; i++) {
		feet[i] = foot_of(f, line, rafter, count, i);
		x[i] = feet[i].x;
	}
	if (rail_cannot_be_laid(f->c, l, x, count) || !rail_reactions(l, feet, count))
		return HUGE_VAL;
	for (int i = 0; i < count; i++)
		width[i] = fmax(feet[i].reaction_width, feet[i].tributary_width);
	if (w->ratio < 0)
		w->ratio = line_ratio(f, line, feet, count);
	return w->ratio;
}

/* True if a foot at one place loads a rafter that carries the other. */
static bool shares_rafter(const struct context *c, int foot, int place)
{
	const struct stand *p = &c->r->place[place];

	return p->frame >= 0 && (rafter_share(c, foot, p->frame) > 0 ||
				 (p->right > 0 && rafter_share(c, foot, p->frame + 1) > 0));
}

static double rafter(void *context, int place, const struct search_layout *layout, int lines,
		     const double *width)
{
	struct finder *f = context;
	int n = 0;

	for (int l = 0, first = 0; l < lines; first += layout->count[l], l++)
		for (int i = 0; i < layout->count[l]; i++) {
			if (!shares_rafter(f->c, layout->rafter[first + i], place) ||
			    n == ATTACHMENT_MAX)
				continue;
			f->pass->attachment[n] =
				foot_of(f, l, &layout->rafter[first], layout->count[l], i);
			f->pass->attachment[n++].reaction_width = width[first + i];
		}
	f->pass->attachments = n;
	return layout_rafter(f, place);
}

/* The rafters of a place under these feet alone, each at its plain share. */
static double meet(void *context, int place, const struct search_foot *foot, int feet)
{
	struct finder *f = context;
	int n = 0;

	for (; n < feet && n < ATTACHMENT_MAX; n++)
		f->pass->attachment[n] =
			loaded(f, known(f, foot[n].line, foot[n].a, place, foot[n].c));
	f->pass->attachments = n;
	return layout_rafter(f, place);
}

void layout_spread(const struct finder *f, const struct search_layout *from, struct layout *to)
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

	layout_spread(f, layout, &f->layout);
	pass_run(f->c, &f->layout, f->pass);
	if (!f->pass->complete || f->c->coefficient_missing || layout_breaks_rule(f->c, &f->layout))
		return HUGE_VAL;
	return f->pass->ratio;
}

void layout_ask_prepare(struct finder *f)
{
	memset(f->memo_used, 0, sizeof f->memo_used);
	memset(f->samples_used, 0, sizeof f->samples_used);
	memset(f->wholes_used, 0, sizeof f->wholes_used);
	search_begin(&f->state);
	f->state.limit = 1;
	f->problem.cost = cost;
	f->problem.whole = whole;
	f->problem.rafter = rafter;
	f->problem.meet = meet;
	f->problem.accept = accept;
}
