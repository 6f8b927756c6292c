/* SPDX-License-Identifier: MIT */
/* Numbers of the attachments: at the upper right of each along a row that has room for it there,
   else straight above its dot, or below. A row too dense for that has the numbers of its two ends
   and every fifth, as rafters have; the feet between are counted, from the left. */
#include <math.h>

#include "sheet/plan.h"

#define GAP (0.3 * MM)    /* from a dot to the white round its number */
#define WHITE (0.28 * MM) /* of that white, left and right: two numbers must not read as one */
#define LIFT (1.1 * MM)   /* farther from the dot where something passes close by it */
#define LIFTS 4
#define NUDGES 9 /* to this side or that, nearer to its dot than to the next */
#define NUDGE (0.8 * MM)
#define FEW 2 /* of a row that may be led to */
#define SPOTS (NUDGES * 2 * LIFTS)

static const int nudge[NUDGES] = {0, 1, -1, 2, -2, 3, -3, 4, -4};

struct label {
	const struct attachment *foot;
	const char *text;
	struct point at; /* middle of the baseline, on paper */
	struct box box;  /* with the white, on paper */
	bool put, led;   /* led: away from its dot */
};

struct foot_row {
	const struct plan *p;
	int n;
	struct label label[RAFTER_MAX];
};

static struct lettering_spec lettering(const struct plan *p)
{
	return (struct lettering_spec){p->size, true, ANCHOR_CENTRE, ANCHOR_BASE, 0, true};
}

static struct box box_at(const struct plan *p, struct point at, const char *text)
{
	struct box box = drawing_text_box(p->d, at, lettering(p), text);

	box.x0 -= WHITE;
	box.x1 += WHITE;
	return box;
}

static void set(const struct plan *p, struct label *l, struct point at)
{
	l->at = at;
	l->box = box_at(p, at, l->text);
}

static struct point dot_of(const struct plan *p, const struct label *l)
{
	return drawing_on_paper(p->d, (struct point){l->foot->x, l->foot->y});
}

/* Beside the dot, and clear of the rail. */
static void set_upper_right(const struct plan *p, struct label *l)
{
	const struct point dot = dot_of(p, l);
	const struct box zero = box_at(p, (struct point){0, 0}, l->text);

	set(p, l,
	    (struct point){dot.x + PLAN_DOT + GAP - zero.x0, dot.y + 0.6 * PLAN_DOT - zero.y0});
}

/* Above a dot before below it: one row's numbers are not to stand among those of the next. */
static void set_spot(const struct plan *p, struct label *l, int spot)
{
	const struct point dot = dot_of(p, l);
	const struct box zero = box_at(p, (struct point){0, 0}, l->text);
	const double off = PLAN_DOT + GAP + spot / NUDGES % LIFTS * LIFT;
	const bool below = spot / NUDGES >= LIFTS;

	set(p, l,
	    (struct point){dot.x + nudge[spot % NUDGES] * NUDGE,
			   below ? dot.y - off - zero.y1 : dot.y + off - zero.y0});
}

/* True if the label has come as near to the next foot of its row as to its own. */
static bool strays(const struct foot_row *row, const struct label *l)
{
	const double own = fabs(l->at.x - dot_of(row->p, l).x);

	for (int i = 0; i < row->n; i++)
		if (&row->label[i] != l &&
		    fabs(l->at.x - dot_of(row->p, &row->label[i]).x) < 2 * own)
			return true;
	return false;
}

static bool fits(const struct foot_row *row, const struct label *l)
{
	for (int i = 0; i < row->n; i++)
		if (row->label[i].put && box_meets(&row->label[i].box, &l->box))
			return false;
	return drawing_is_free(row->p->d, l->box);
}

/* True if every label of the row has found its place. */
static bool arrange(struct foot_row *row)
{
	int n = 0;

	for (int i = 0; i < row->n; i++, n++) {
		set_upper_right(row->p, &row->label[i]);
		row->label[i].put = !strays(row, &row->label[i]) && fits(row, &row->label[i]);
		if (!row->label[i].put)
			break;
	}
	if (n == row->n)
		return true;
	for (int i = 0; i < row->n; i++)
		row->label[i].put = row->label[i].led = false;
	n = 0;
	for (int i = 0; i < row->n; i++) {
		struct label *l = &row->label[i];

		for (int spot = 0; spot < SPOTS && !l->put; spot++) {
			set_spot(row->p, l, spot);
			l->put = !strays(row, l) && fits(row, l);
		}
		n += l->put;
	}
	return n == row->n;
}

/* A foot with no room at its dot: its number farther off, with a thin line to it; at the end of a
   row out of it rather than over it. */
static void lead(const struct foot_row *row, struct label *l, int out)
{
	const struct plan *p = row->p;
	const struct point dot = dot_of(p, l);

	for (int i = 0; i < 8 * 24 && !l->put; i++) {
		const int step = i % 24 / 2 * (i % 2 ? 1 : -1);
		const double far = (4 + i / 24) * MM, turn = (step + 0.5) * 15 * RAD_PER_DEG;

		set(p, l, (struct point){dot.x + out * far * cos(turn), dot.y + far * sin(turn)});
		l->put = l->led = fits(row, l);
	}
}

/* True if the few that have no room at their dots have it farther off. */
static bool lead_few(struct foot_row *row)
{
	int missing = 0, found = 0;

	for (int i = 0; i < row->n; i++)
		missing += !row->label[i].put;
	for (int i = 0; i < row->n && missing <= FEW; i++)
		if (!row->label[i].put) {
			lead(row, &row->label[i], 2 * i < row->n ? -1 : 1);
			found += row->label[i].put;
		}
	return found == missing;
}

/* The two ends first, so that a fifth one gives way to them. */
static void thin_out(struct foot_row *row)
{
	const struct foot_row all = *row;
	const int last = all.n - 1;

	row->n = 0;
	row->label[row->n++] = all.label[0];
	if (last > 0)
		row->label[row->n++] = all.label[last];
	for (int i = 1; i < last; i++)
		if (all.label[i].foot->number % 5 == 0)
			row->label[row->n++] = all.label[i];
	arrange(row);
	for (int i = 0; i < row->n && i < 2; i++)
		lead(row, &row->label[i], i > 0 ? 1 : -1);
}

static void draw(const struct plan *p, const struct label *l)
{
	const struct point dot = dot_of(p, l);
	const struct view open = drawing_view_open(p->d);

	drawing_view(p->d, VIEW_PAPER);
	if (l->led)
		drawing_line(p->d, LAYER_THIN, dot,
			     (struct point){fmax(l->box.x0, fmin(dot.x, l->box.x1)),
					    fmax(l->box.y0, fmin(dot.y, l->box.y1))});
	drawing_text(p->d, LAYER_ATTACH, l->at, lettering(p), l->text);
	drawing_reserve(p->d, l->box);
	drawing_view(p->d, open);
}

void plan_numbers(const struct plan *p)
{
	const struct pass *pass = p->s->pass;
	const int n = p->s->r->passes > 0 ? pass->attachments : 0;

	for (int first = 0, next; first < n; first = next) {
		struct foot_row row = {.p = p};

		for (next = first;
		     next < n && pass->attachment[next].line == pass->attachment[first].line;
		     next++) {
			const struct attachment *a = &pass->attachment[next];

			if (row.n < RAFTER_MAX && plan_inside(p, (struct point){a->x, a->y}))
				row.label[row.n++] = (struct label){
					.foot = a, .text = sheet_text(p->s, "%d", a->number)};
		}
		if (row.n > 0 && !arrange(&row) && !lead_few(&row))
			thin_out(&row);
		for (int i = 0; i < row.n; i++)
			if (row.label[i].put)
				draw(p, &row.label[i]);
	}
}
