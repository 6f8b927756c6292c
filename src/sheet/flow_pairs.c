/* SPDX-License-Identifier: MIT */
/* Names and values on paper: one below the other, or in two columns where that takes less room. */
#include <math.h>

#include "sheet/flow.h"

#define NAME_GAP (3 * MM)
#define COLUMN_GAP (6 * MM)
#define BELOW 0.6 /* of running text */
#define NOTE 0.84 /* of running text */
#define SLACK (0.1 * MM) /* so that a name set at its own width stays in one line */

static double widest_name(const struct flow *f, const struct block *b, double most)
{
	double name = 0;

	for (const struct pair *p = b->pair; p; p = p->next)
		name = fmax(name, flow_width(f, p->name, f->text, false));
	return fmin(name, most);
}

/* A column of pairs and the width of its names. */
struct strip {
	double left, width, name;
};

static double pair_height(const struct flow *f, const struct pair *p, const struct strip *s)
{
	return fmax(flow_height(f, p->name, f->text, false, s->name + SLACK),
		    flow_height(f, p->value, f->text, false, s->width - s->name - NAME_GAP));
}

static double put_pair(struct flow *f, const struct pair *p, const struct strip *s, double top)
{
	const double x = s->left + s->name + NAME_GAP;

	flow_put(f, p->name, f->text, false, s->left, top, s->name + SLACK, false);
	flow_put(f, p->value, f->text, false, x, top, s->left + s->width - x, false);
	return pair_height(f, p, s);
}

/* A pair and the first lines of its note; the last pair does not go ahead alone. */
static double pair_least(const struct flow *f, const struct pair *p, const struct strip *s)
{
	double sum = pair_height(f, p, s);

	if (*p->note)
		sum += 3 * f->text;
	if (p->next && !p->next->next)
		sum += pair_height(f, p->next, s);
	return sum;
}

static struct strip one_strip(const struct flow *f, const struct block *b)
{
	const double width = f->room.width;

	return (struct strip){0, width, widest_name(f, b, 0.34 * width)};
}

static double in_one_height(const struct flow *f, const struct block *b)
{
	const struct strip s = one_strip(f, b);
	double sum = 0;

	for (const struct pair *p = b->pair; p; p = p->next) {
		sum += pair_height(f, p, &s);
		if (*p->note)
			sum += flow_height(f, p->note, NOTE * f->text, false,
					   s.width - s.name - NAME_GAP);
	}
	return sum;
}

static void in_one(struct flow *f, const struct block *b)
{
	const struct strip s = one_strip(f, b);

	flow_need(f, flow_pairs_least(f, b));

	for (const struct pair *p = b->pair; p; p = p->next) {
		flow_need(f, pair_least(f, p, &s));
		f->y += put_pair(f, p, &s, f->y);
		if (*p->note)
			flow_text(f,
				  (struct flow_style){.size = NOTE * f->text, .x = s.name + NAME_GAP},
				  p->note);
	}
}

/* One of two columns; `most`: of it, for the names. */
static struct strip half_page(const struct flow *f, const struct block *b, int column, double most)
{
	const double width = (f->room.width - COLUMN_GAP) / 2;

	return (struct strip){column * (width + COLUMN_GAP), width,
			      widest_name(f, b, most * width)};
}

static struct strip strip_of(const struct flow *f, const struct block *b, int column)
{
	return half_page(f, b, column, 0.45);
}

static struct strip list_strip(const struct flow *f, const struct block *b, int column)
{
	return half_page(f, b, column, 0.6);
}

static int count(const struct block *b)
{
	int n = 0;

	for (const struct pair *p = b->pair; p; p = p->next)
		n++;
	return n;
}

static double beside_height(const struct flow *f, const struct block *b)
{
	const struct strip s = strip_of(f, b, 0);
	const int half = (count(b) + 1) / 2;
	double height[2] = {0, 0};
	int i = 0;

	for (const struct pair *p = b->pair; p; p = p->next)
		height[i++ >= half] += pair_height(f, p, &s);
	return fmax(height[0], height[1]);
}

/* The second half at the right, all on one page; none of them has a note. */
static void beside(struct flow *f, const struct block *b)
{
	const struct strip s[2] = {strip_of(f, b, 0), strip_of(f, b, 1)};
	const double whole = beside_height(f, b);
	const int half = (count(b) + 1) / 2;
	double height[2] = {0, 0};
	int i = 0;

	flow_need(f, whole);
	for (const struct pair *p = b->pair; p; p = p->next) {
		const int c = i++ >= half;

		height[c] += put_pair(f, p, &s[c], f->y + height[c]);
	}
	f->y += whole;
}

/* A list this long without notes, of which most keep to one line of half the page, goes in two
 * columns. */
#define LONG 12
#define MOST 0.9

static bool is_long_list(const struct flow *f, const struct block *b)
{
	const struct strip s = list_strip(f, b, 0);
	const double one = flow_height(f, "x", f->text, false, s.width);
	int n = 0, low = 0;

	for (const struct pair *p = b->pair; p; p = p->next, n++) {
		if (*p->note)
			return false;
		low += pair_height(f, p, &s) < 1.5 * one;
	}
	return n >= LONG && low >= MOST * n;
}

/* Pairs from p on that go below each other in this height; their own height in *used. */
static const struct pair *fill(const struct flow *f, const struct pair *p, const struct strip *s,
			       double height, double *used)
{
	*used = 0;
	for (; p; p = p->next) {
		const double own = pair_height(f, p, s);

		if (*used + own > height)
			break;
		*used += own;
	}
	return p;
}

static void put_list(struct flow *f, const struct pair *p, const struct pair *end,
		     const struct strip *s)
{
	for (double y = f->y; p != end; p = p->next)
		y += put_pair(f, p, s, y);
}

/* Down the left column, then down the right one, page by page; on the last page both end together.
 */
static void in_columns(struct flow *f, const struct block *b)
{
	const struct strip s[2] = {list_strip(f, b, 0), list_strip(f, b, 1)};
	const struct pair *p = b->pair;
	double rest, used[2];

	while (p) {
		fill(f, p, &s[0], INFINITY, &rest);
		flow_need(f, fmin(rest, 3 * pair_height(f, p, &s[0])));
		const double room = f->room.height - f->y,
			     height = fmin(room, rest / 2 + pair_height(f, p, &s[0]));
		const struct pair *right = fill(f, p, &s[0], height, &used[0]),
				  *next = fill(f, right, &s[1], height, &used[1]);

		put_list(f, p, right, &s[0]);
		put_list(f, right, next, &s[1]);
		f->y += fmax(used[0], used[1]);
		p = next;
	}
}

/* All of them where they are few. */
double flow_pairs_least(const struct flow *f, const struct block *b)
{
	if (f->beside)
		return beside_height(f, b);
	const double whole = in_one_height(f, b);

	return !is_long_list(f, b) && whole <= FLOW_WHOLE ? whole : 3 * f->text;
}

void flow_pairs(struct flow *f, const struct block *b)
{
	if (f->beside)
		beside(f, b);
	else if (is_long_list(f, b))
		in_columns(f, b);
	else
		in_one(f, b);
	flow_space(f, BELOW * f->text);
}
