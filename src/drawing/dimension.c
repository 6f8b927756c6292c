/* SPDX-License-Identifier: MIT */
#include "drawing/dimension.h"

#include <math.h>

#include "quantity/quantity.h"

#define TICK (1.2 * MM)   /* half length of the stroke across a dimension line */
#define BEYOND (1.2 * MM) /* an extension line goes past the dimension line by this */
#define CLEAR (1.0 * MM)  /* and begins this far from what is measured */
#define KNEE (4.0 * MM)   /* from a running dimension's line to its labels */
#define PITCH 1.2         /* of labels, in text sizes */

static struct point plus(struct point a, double k, struct point u)
{
	return (struct point){a.x + k * u.x, a.y + k * u.y};
}

static void tick(struct drawing *d, struct point at, struct point u)
{
	const struct point slant = {(u.x - u.y) * 0.7071 * TICK, (u.y + u.x) * 0.7071 * TICK};

	drawing_line_as(d, LAYER_DIM, 0.35 * MM, DASH_SOLID, plus(at, -1, slant),
			plus(at, 1, slant));
}

/* Text along a dimension line is never upside down; what stands plumb, or leans over a little with
   a roof's pitch, is read from the right. */
static double readable(double turn)
{
	const double pi = RAD_PER_DEG * 180, lean = RAD_PER_DEG * 10;

	if (turn > pi / 2 + lean)
		return turn - pi;
	if (turn <= -pi / 2 + lean)
		return turn + pi;
	return turn;
}

static void between(struct drawing *d, struct point a, struct point b, double away, double size,
		    const char *text)
{
	const double length = hypot(b.x - a.x, b.y - a.y);
	const struct point u = {(b.x - a.x) / length, (b.y - a.y) / length}, left = {-u.y, u.x};
	const double side = away < 0 ? -1 : 1, turn = readable(atan2(u.y, u.x));
	const struct point la = plus(a, away, left), lb = plus(b, away, left);
	const struct point normal = {-sin(turn), cos(turn)};
	const struct lettering_spec spec = {size, false, ANCHOR_CENTRE, ANCHOR_BASE, turn, true};
	const double room = lettering_width(drawing_lettering(d), text,
					    (struct lettering_style){size, false, false});
	struct point middle = {(la.x + lb.x) / 2, (la.y + lb.y) / 2};

	if (fabs(away) > CLEAR) {
		drawing_line(d, LAYER_DIM, plus(a, side * CLEAR, left),
			     plus(la, side * BEYOND, left));
		drawing_line(d, LAYER_DIM, plus(b, side * CLEAR, left),
			     plus(lb, side * BEYOND, left));
	}
	if (room + 2 * TICK > length) {
		/* no room between the ticks: behind b */
		middle = plus(lb, TICK + 1 * MM + room / 2, u);
		drawing_line(d, LAYER_DIM, la, plus(lb, TICK + room + 1 * MM, u));
	} else {
		drawing_line(d, LAYER_DIM, la, lb);
	}
	tick(d, la, u);
	tick(d, lb, u);
	drawing_text(d, LAYER_DIM, plus(middle, 0.7 * MM, normal), spec, text);
}

void dimension_between_as(struct drawing *d, struct point a, struct point b, double away,
			  double size, const char *text)
{
	const struct view open = drawing_view_open(d);
	const struct point pa = drawing_on_paper(d, a), pb = drawing_on_paper(d, b);

	if (hypot(pb.x - pa.x, pb.y - pa.y) < 0.1 * MM)
		return;
	drawing_view(d, VIEW_PAPER);
	between(d, pa, pb, away, size, text);
	drawing_view(d, open);
}

void dimension_between(struct drawing *d, struct point a, struct point b, double away,
		       const char *text)
{
	dimension_between_as(d, a, b, away, DIMENSION_TEXT, text);
}

/* Pool adjacent violators on place - i pitch. */
void dimension_spread(double *place, int n, double pitch)
{
	struct {
		double sum;
		int count;
	} block[RUNNING_MAX];
	int blocks = 0;

	for (int i = 0; i < n && i < RUNNING_MAX; i++) {
		block[blocks].sum = place[i] - i * pitch;
		block[blocks++].count = 1;
		while (blocks > 1 && block[blocks - 2].sum * block[blocks - 1].count >
					     block[blocks - 1].sum * block[blocks - 2].count) {
			block[blocks - 2].sum += block[blocks - 1].sum;
			block[blocks - 2].count += block[blocks - 1].count;
			blocks--;
		}
	}
	for (int b = 0, i = 0; b < blocks; b++)
		for (int k = 0; k < block[b].count; k++, i++)
			place[i] = block[b].sum / block[b].count + i * pitch;
}

static double width_of(const struct drawing *d, const char *text, double size)
{
	return lettering_width(drawing_lettering(d), text,
			       (struct lettering_style){size, false, false});
}

static bool fits(const struct drawing *d, const struct chain *c, int i, double scale)
{
	return width_of(d, c->text[i], c->size) + 2 * TICK <= (c->at[i + 1] - c->at[i]) * scale;
}

double dimension_chain_room(const struct drawing *d, const struct chain *c, double scale)
{
	double most = c->up ? 0 : 0.7 * MM + LETTERING_ASCENT * c->size;

	for (int i = 0; i + 1 < c->n; i++)
		if (!fits(d, c, i, scale))
			most = fmax(most, TICK + BEYOND + width_of(d, c->text[i], c->size));
	return most;
}

/* (along, beyond) of the chain's own frame to paper. */
static struct point outward(const struct chain *c, struct point zero, double along, double beyond)
{
	return c->up ? (struct point){zero.x + beyond, along}
		     : (struct point){along, zero.y + beyond};
}

static void chain_texts(struct drawing *d, const struct chain *c, struct point zero,
			const double *along, double scale)
{
	const double quarter = RAD_PER_DEG * 90, pitch = PITCH * c->size;
	const struct lettering_spec beside = {
		c->size, false, ANCHOR_CENTRE, ANCHOR_BASE, c->up ? quarter : 0, true};
	const struct lettering_spec across = {
		c->size, false, ANCHOR_LEFT, ANCHOR_MIDDLE, c->up ? 0 : quarter, true};
	double free = -HUGE_VAL;

	for (int i = 0; i + 1 < c->n; i++) {
		const double middle = (along[i] + along[i + 1]) / 2;

		if (fits(d, c, i, scale)) {
			drawing_text(d, LAYER_DIM,
				     outward(c, zero, middle, c->away + (c->up ? -0.7 : 0.7) * MM),
				     beside, c->text[i]);
			continue;
		}
		const double at = fmax(middle, free);

		drawing_text(d, LAYER_DIM, outward(c, zero, at, c->away + TICK + BEYOND), across,
			     c->text[i]);
		free = at + pitch;
	}
}

void dimension_chain(struct drawing *d, const struct chain *c)
{
	const struct view open = drawing_view_open(d);
	const struct point zero = drawing_on_paper(d, c->zero);
	const struct point u = c->up ? (struct point){0, 1} : (struct point){1, 0};
	double along[CHAIN_MAX];
	const int n = c->n < CHAIN_MAX ? c->n : CHAIN_MAX;

	if (n < 2)
		return;
	for (int i = 0; i < n; i++) {
		const struct point p = drawing_on_paper(
			d, plus(c->zero, c->at[i] - (c->up ? c->zero.y : c->zero.x), u));

		along[i] = c->up ? p.y : p.x;
	}
	drawing_view(d, VIEW_PAPER);
	drawing_line(d, LAYER_DIM, outward(c, zero, along[0], c->away),
		     outward(c, zero, along[n - 1], c->away));
	for (int i = 0; i < n; i++) {
		drawing_line(d, LAYER_DIM, outward(c, zero, along[i], CLEAR),
			     outward(c, zero, along[i], c->away + BEYOND));
		tick(d, outward(c, zero, along[i], c->away), u);
	}
	chain_texts(d, c, zero, along, open.scale);
	drawing_view(d, open);
}

static double widest(const struct drawing *d, const struct running *r)
{
	double most = 0;

	for (int i = 0; i < r->n && i < RUNNING_MAX; i++)
		most = fmax(most, lettering_width(drawing_lettering(d), r->text[i],
						  (struct lettering_style){r->size, false, false}));
	return most;
}

double dimension_running_room(const struct drawing *d, const struct running *r)
{
	return KNEE + widest(d, r) + 0.5 * MM;
}

/* (along, below) of the line's own frame to paper. */
static struct point frame(const struct running *r, struct point zero, double along, double below)
{
	return r->up ? (struct point){zero.x - below, along}
		     : (struct point){along, zero.y - below};
}

static void mark(struct drawing *d, const struct running *r, struct point zero, double along,
		 double label, const char *text)
{
	const struct lettering_spec spec = {
		r->size, false, ANCHOR_RIGHT, ANCHOR_MIDDLE, r->up ? 0 : RAD_PER_DEG * 90, false};
	const double line = r->away;

	drawing_line(d, LAYER_DIM, frame(r, zero, along, CLEAR),
		     frame(r, zero, along, line + BEYOND));
	tick(d, frame(r, zero, along, line), r->up ? (struct point){0, 1} : (struct point){1, 0});
	drawing_line(d, LAYER_DIM, frame(r, zero, along, line + BEYOND),
		     frame(r, zero, label, line + KNEE - 0.6 * MM));
	drawing_text(d, LAYER_DIM, frame(r, zero, label, line + KNEE), spec, text);
}

/* The tape's zero, or a break where the line begins beyond it. */
static double begin(struct drawing *d, const struct running *r, struct point zero, double start)
{
	const double w = r->away, t = TICK;

	if (r->from <= 0) {
		drawing_mark(d, LAYER_DIM, FILL_WHITE, frame(r, zero, start, w), 1.0 * MM);
		return start + 1.0 * MM;
	}
	for (int i = 0; i < 2; i++)
		drawing_line(d, LAYER_DIM, frame(r, zero, start + (i - 0.4) * MM, w + t),
			     frame(r, zero, start + (i + 0.4) * MM, w - t));
	return start + 1.0 * MM;
}

void dimension_running(struct drawing *d, const struct running *r)
{
	const struct view open = drawing_view_open(d);
	const int n = r->n < RUNNING_MAX ? r->n : RUNNING_MAX;
	const struct point first = {r->zero.x + (r->up ? 0 : r->from),
				    r->zero.y + (r->up ? r->from : 0)};
	const struct point zero = drawing_on_paper(d, first);
	double along[RUNNING_MAX], label[RUNNING_MAX];

	if (n == 0)
		return;
	for (int i = 0; i < n; i++) {
		const struct point w = {r->zero.x + (r->up ? 0 : r->at[i]),
					r->zero.y + (r->up ? r->at[i] : 0)};
		const struct point p = drawing_on_paper(d, w);

		label[i] = along[i] = r->up ? p.y : p.x;
	}
	dimension_spread(label, n, PITCH * r->size);
	drawing_view(d, VIEW_PAPER);
	const double start = begin(d, r, zero, r->up ? zero.y : zero.x);

	drawing_line(d, LAYER_DIM, frame(r, zero, start, r->away),
		     frame(r, zero, along[n - 1] + TICK, r->away));
	for (int i = 0; i < n; i++)
		mark(d, r, zero, along[i], label[i], r->text[i]);
	drawing_view(d, open);
}

void dimension_leader(struct drawing *d, struct point what, struct point elbow, bool left,
		      double size, const char *text)
{
	const struct view open = drawing_view_open(d);
	const struct point pw = drawing_on_paper(d, what), pe = drawing_on_paper(d, elbow);
	const double side = left ? -1 : 1;
	const struct point end = {pe.x + side * 2 * MM, pe.y};
	const struct lettering_spec spec = {size,          false, left ? ANCHOR_RIGHT : ANCHOR_LEFT,
					    ANCHOR_MIDDLE, 0,     true};

	drawing_view(d, VIEW_PAPER);
	drawing_path(d, LAYER_THIN, (const struct point[]){pw, pe, end}, 3);
	drawing_mark(d, LAYER_THIN, FILL_BLACK, pw, 0.4 * MM);
	drawing_text(d, LAYER_TEXT, (struct point){end.x + side * 0.8 * MM, end.y}, spec, text);
	drawing_view(d, open);
}
