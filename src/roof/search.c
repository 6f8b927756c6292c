/* SPDX-License-Identifier: MIT */
/* Branch and bound over the feet, line by line and left to right. */
#include "roof/search.h"

#include <math.h>
#include <string.h>

#define ROUNDING 1e-9 /* as in search_bound.c */
/* Of a ratio: what is told from it as lower. */
#define LOWER (1 - 3 * ROUNDING)

/* How far a branch has come. */
struct branch {
	int line, first;       /* line under way, its first foot in the layout */
	double ratio;          /* that it will not get below */
	double uneven, length; /* of the feet whose neighbours are known: squares and sum of what
				  they carry */
	int closed;            /* how many those are */
};

static void begin_line(struct search_state *s, struct branch b);

static double total_length(const struct search_problem *p)
{
	double length = 0;

	for (int i = 0; i < p->lines; i++)
		length += p->line[i].x1 - p->line[i].x0;
	return length;
}

/* True if nothing on this branch is within the limit; and where that is what is looked for, nothing
   more even than what was found. */
static bool hopeless(const struct search_state *s, const struct branch *b)
{
	if (b->ratio > s->limit * (1 + ROUNDING))
		return true;
	if (!s->evening)
		return false;
	const double rest = total_length(s->p) - b->length;
	const int feet = s->wanted - b->closed;
	const double uneven = b->uneven + (feet > 0 ? rest * rest / feet : 0);

	return uneven >= s->best.uneven * (1 - ROUNDING);
}

/* Tables for a narrower limit. The bounds on moments stay: rails that are half set reach as far as
 * the wider one let them. So do the feet that lines were found to need. */
static void narrow(struct search_state *s)
{
	double moment[SEARCH_LINE_MAX];
	int least[SEARCH_LINE_MAX];

	memcpy(moment, s->moment, sizeof moment);
	memcpy(least, s->least, sizeof least);
	search_least(s->p, s->limit, s);
	memcpy(s->moment, moment, sizeof moment);
	search_raise(s, least);
}

/* Keeps what is better, and asks for less from then on. */
static void finish(struct search_state *s, const struct branch *b)
{
	struct search_answer *best = &s->best;

	if (s->layout.feet != s->wanted || hopeless(s, b))
		return;
	s->left -= WORK_ACCEPT;
	const double ratio = s->p->accept(s->p->context, &s->layout);

	if (!(ratio <= (s->evening ? best->ratio * (1 + ROUNDING) : s->limit)))
		return;
	best->uneven = b->uneven;
	best->layout = s->layout;
	if (s->evening)
		return;
	best->found = true;
	best->ratio = ratio;
	s->limit = ratio * LOWER;
	narrow(s);
}

static bool goes_on(const struct search_state *s)
{
	return s->left > 0 && !s->stands;
}

static void put(struct search_state *s, int line, int spot, int rafter)
{
	s->spot[s->layout.feet] = (unsigned char)spot;
	s->layout.rafter[s->layout.feet++] = (unsigned char)rafter;
	s->layout.count[line]++;
}

static void take(struct search_state *s, int line)
{
	s->layout.feet--;
	s->layout.count[line]--;
}

/* The feet of the line are all set: rail, then the rafters with what stands on them so far. */
static void end_line(struct search_state *s, struct branch b)
{
	const struct search_problem *p = s->p;
	const int count = s->layout.count[b.line], line = b.line;

	s->left -= WORK_WHOLE;
	b.ratio = fmax(b.ratio, p->whole(p->context, line, &s->layout.rafter[b.first], count,
					 &s->width[b.first]));
	for (int i = b.first; i < s->layout.feet && p->rafters_add && !hopeless(s, &b); i++) {
		s->left -= WORK_RAFTER;
		b.ratio = fmax(b.ratio, p->rafter(p->context, s->layout.rafter[i], &s->layout,
						  line + 1, s->width));
	}
	if (hopeless(s, &b))
		return;
	if (s->alone) {
		s->stands = true;
		return;
	}
	const int owed = s->owed;

	s->owed += p->line[line].copies < 0 ? count * (s->repeats[line] - 1) : -count;
	b.line++;
	b.first = s->layout.feet;
	begin_line(s, b);
	s->owed = owed;
}

static int foot(const struct search_state *s, int i)
{
	return s->layout.rafter[i];
}

/* Takes the foot between its neighbours, the last one by `c`, into the account of the branch. */
static void close_foot(const struct search_state *s, struct branch *b, int i, int c)
{
	const double w =
		search_carried(s->p, b->line, i > b->first ? foot(s, i - 1) : -1, foot(s, i), c);

	b->uneven += w * w;
	b->length += w;
	b->closed++;
}

/* The same feet as the line that is repeated. */
static void repeat_line(struct search_state *s, struct branch b)
{
	const int from = s->p->line[b.line].copies, count = s->layout.count[from];
	int at = 0;

	for (int i = 0; i < from; i++)
		at += s->layout.count[i];
	for (int i = 0; i < count; i++)
		put(s, b.line, s->spot[at + i], foot(s, at + i));
	for (int i = 0; i < count; i++)
		close_foot(s, &b, b.first + i, i + 1 < count ? foot(s, b.first + i + 1) : -1);
	end_line(s, b);
	for (int i = 0; i < count; i++)
		take(s, b.line);
}

static bool kept_apart(const struct search_state *s, int line, int rafter)
{
	const int other = s->p->line[line].apart;
	int at = 0;

	if (other < 0)
		return false;
	for (int i = 0; i < other; i++)
		at += s->layout.count[i];
	for (int i = 0; i < s->layout.count[other]; i++)
		if (foot(s, at + i) == rafter)
			return true;
	return false;
}

/* Feet in all if this line takes `more` after those it has. */
static int total(const struct search_state *s, const struct branch *b, int more)
{
	const int repeats = s->repeats[b->line], count = s->layout.count[b->line];

	return s->layout.feet + s->owed + more * repeats + count * (repeats - 1) +
	       s->rest[b->line + 1];
}

/* A foot whose neighbours are known, on a rafter that an earlier line stands on: together they are
 * at least this bad. */
static double crowded(struct search_state *s, const struct branch *b, int i)
{
	const struct search_problem *p = s->p;
	bool shared = false;

	for (int k = 0; k < b->first; k++)
		shared = shared || foot(s, k) == foot(s, i);
	if (!shared || !p->rafters_add)
		return 0;
	s->left -= WORK_RAFTER;
	s->width[i] = search_carried(p, b->line, i > b->first ? foot(s, i - 1) : -1, foot(s, i),
				     foot(s, i + 1));
	return p->rafter(p->context, foot(s, i), &s->layout, b->line + 1, s->width);
}

static void next_foot(struct search_state *s, struct branch b);

static void set_foot(struct search_state *s, struct branch b, int spot)
{
	const struct search_line *l = &s->p->line[b.line];

	put(s, b.line, spot, l->place[spot]);
	if (s->layout.feet - 1 > b.first)
		close_foot(s, &b, s->layout.feet - 2, foot(s, s->layout.feet - 1));
	b.ratio = fmax(b.ratio, search_prefix(s, b.line, b.first, s->layout.feet - 1));
	if (s->layout.feet - 1 > b.first && !hopeless(s, &b))
		b.ratio = fmax(b.ratio, crowded(s, &b, s->layout.feet - 2));
	if (!hopeless(s, &b))
		next_foot(s, b);
	take(s, b.line);
}

/* Ends the line at its last foot, or goes on: far feet first. */
static void next_foot(struct search_state *s, struct branch b)
{
	const struct search_problem *p = s->p;
	const struct search_line *l = &p->line[b.line];
	const int last = s->layout.feet - 1, spot = s->spot[last];
	const int before = last > b.first ? foot(s, last - 1) : -1;

	if (s->layout.feet + s->owed + (l->places - 1 - spot) * s->repeats[b.line] +
		    s->layout.count[b.line] * (s->repeats[b.line] - 1) + s->room[b.line + 1] <
	    s->wanted)
		return;
	if (before >= 0 && s->layout.count[b.line] >= l->least && total(s, &b, 0) <= s->wanted) {
		struct branch done = b;

		done.ratio = fmax(b.ratio, search_single(p, b.line, before, foot(s, last), -1));
		close_foot(s, &done, last, -1);
		if (!hopeless(s, &done))
			end_line(s, done);
	}
	for (int d = l->places - 1; d > spot && goes_on(s); d--) {
		struct branch on = b;
		/* of an older, wider limit or the present one: either is a bound */
		int more = s->table[s->table_at[b.line] + spot * l->places + d];

		s->left--;
		if (more < l->least - s->layout.count[b.line] - 1)
			more = l->least - s->layout.count[b.line] - 1;
		if (total(s, &b, 1 + more) > s->wanted || s->layout.feet >= SEARCH_FEET_MAX ||
		    kept_apart(s, b.line, l->place[d]))
			continue;
		on.ratio =
			fmax(b.ratio, search_single(p, b.line, before, foot(s, last), l->place[d]));
		if (!hopeless(s, &on))
			set_foot(s, on, d);
	}
}

static void begin_line(struct search_state *s, struct branch b)
{
	const struct search_problem *p = s->p;

	if (s->left <= 0)
		return;
	if (b.line == p->lines) {
		finish(s, &b);
		return;
	}
	s->layout.count[b.line] = 0;
	if (p->line[b.line].copies >= 0) {
		repeat_line(s, b);
		return;
	}
	for (int spot = p->line[b.line].places - 2; spot >= 0 && goes_on(s); spot--)
		if (!kept_apart(s, b.line, p->line[b.line].place[spot]))
			set_foot(s, b, spot);
}

bool search_stands(struct search_state *s, int line, int feet)
{
	const int wanted = s->wanted, rest = s->rest[line + 1], room = s->room[line + 1];

	s->alone = true;
	s->stands = false;
	s->wanted = feet;
	s->rest[line + 1] = s->room[line + 1] = 0;
	begin_line(s, (struct branch){.line = line, .ratio = s->p->floor});
	const bool stands = s->stands;

	s->alone = s->stands = false;
	s->wanted = wanted;
	s->rest[line + 1] = rest;
	s->room[line + 1] = room;
	s->layout = (struct search_layout){0};
	return stands;
}

void search_within(struct search_state *s, double limit, bool evening)
{
	s->layout = (struct search_layout){0};
	s->owed = 0;
	s->limit = limit;
	search_least(s->p, limit, s);
	if (!search_alone(s))
		return;
	s->evening = evening;
	begin_line(s, (struct branch){.ratio = s->p->floor});
	s->evening = false;
}
