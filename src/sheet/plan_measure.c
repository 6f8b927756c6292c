/* SPDX-License-Identifier: MIT */
/* Dimensions of the plan. Below and at the left: running from the lower left corner, for the tape.
   Above and at the right: what is clear between array and edges, for the reviewer. */
#include <math.h>
#include <stdlib.h>

#include "drawing/dimension.h"
#include "sheet/plan.h"

#define FIRST_LINE (6 * MM)       /* from the roof's edge to a line of dimensions */
#define RAFTER_NUMBERS (2.5 * MM) /* above the roof's edge, less an extension line's gap */

struct stations {
	int n;
	double at[RUNNING_MAX];
	const char *text[RUNNING_MAX];
};

static int by_value(const void *a, const void *b)
{
	const double x = *(const double *)a, y = *(const double *)b;

	return (x > y) - (x < y);
}

static void add_station(struct stations *st, double at)
{
	if (st->n < RUNNING_MAX && isfinite(at))
		st->at[st->n++] = at;
}

/* In order, each place once: nobody's tape tells half a millimetre. */
static void finish(const struct plan *p, struct stations *st)
{
	int n = 0;

	qsort(st->at, (size_t)st->n, sizeof *st->at, by_value);
	for (int i = 0; i < st->n; i++)
		if (n == 0 || st->at[i] - st->at[n - 1] > 0.0005)
			st->at[n++] = st->at[i];
	st->n = n;
	for (int i = 0; i < n; i++)
		st->text[i] = sheet_tape(p->s, st->at[i]);
}

static bool pipe_placed(const struct plan *p, int i)
{
	const struct job_pipe *pipe = &p->s->job->pipe[i];

	return plan_inside(p, (struct point){pipe->at, pipe->up});
}

static void along_eave(const struct plan *p, struct stations *st)
{
	const struct result *r = p->s->r;

	st->n = 0;
	for (int i = 0; i < p->s->pass->attachments && r->passes > 0; i++)
		add_station(st, p->s->pass->attachment[i].x);
	if (r->passes == 0) {
		add_station(st, r->array.x0);
		add_station(st, r->array.x1);
	}
	for (int i = 0; i < p->s->job->pipes; i++)
		if (pipe_placed(p, i))
			add_station(st, p->s->job->pipe[i].at);
	finish(p, st);
}

static void up_slope(const struct plan *p, struct stations *st)
{
	const struct result *r = p->s->r;

	st->n = 0;
	for (int i = 0; i < r->collectors; i++) {
		add_station(st, r->collector[i].y0);
		add_station(st, r->collector[i].y1);
	}
	for (int i = 0; i < p->s->pass->lines && r->passes > 0; i++)
		add_station(st, p->s->pass->line[i].y);
	for (int i = 0; i < p->s->job->pipes; i++)
		if (pipe_placed(p, i))
			add_station(st, p->s->job->pipe[i].up);
	finish(p, st);
}

static struct running eave_line(const struct plan *p, const struct stations *st)
{
	return (struct running){.zero = {0, p->window.y0},
				.away = FIRST_LINE,
				.size = p->size,
				.n = st->n,
				.at = st->at,
				.text = st->text,
				.from = p->window.x0};
}

static struct running slope_line(const struct plan *p, const struct stations *st)
{
	return (struct running){.zero = {p->window.x0, 0},
				.up = true,
				.away = FIRST_LINE,
				.size = p->size,
				.n = st->n,
				.at = st->at,
				.text = st->text,
				.from = p->window.y0};
}

struct plan_room plan_dimension_room(const struct plan *p)
{
	struct stations x, y;

	along_eave(p, &x);
	up_slope(p, &y);
	const struct running eave = eave_line(p, &x), slope = slope_line(p, &y);

	return (struct plan_room){
		.left = FIRST_LINE + dimension_running_room(p->d, &slope) + 2 * MM,
		.below = FIRST_LINE + dimension_running_room(p->d, &eave) + 6 * MM,
		.right = p->part == PLAN_WHOLE ? 12 * MM : 4 * MM,
		.above = p->part == PLAN_WHOLE ? 15 * MM : 6 * MM,
	};
}

/* True if the plane is a rectangle, so that there are rakes to measure from. */
static bool has_rakes(const struct result *r)
{
	if (r->outline.n != 4)
		return false;
	for (int i = 0; i < 4; i++)
		if (fabs(r->outline.at[i].x) > 1e-4 &&
		    fabs(r->outline.at[i].x - r->plane_length) > 1e-4)
			return false;
	return true;
}

static void clear_distances(const struct plan *p)
{
	const struct result *r = p->s->r;
	const double x[] = {0, r->array.x0, r->array.x1, r->plane_length};
	const double y[] = {0, r->array.y0, r->array.y1, r->plane_slope};
	/* A hip's edges are not where a rectangle would have them. */
	const int end = has_rakes(r) ? 3 : 2;
	/* from above the rafters' numbers */
	const double top = r->plane_slope + RAFTER_NUMBERS / p->view.scale;

	for (int i = 0; i < end; i++)
		dimension_between(p->d, (struct point){x[i], top}, (struct point){x[i + 1], top},
				  9 * MM - RAFTER_NUMBERS, sheet_tape(p->s, x[i + 1] - x[i]));
	for (int i = 0; i < end; i++)
		dimension_between(p->d, (struct point){r->plane_length, y[i]},
				  (struct point){r->plane_length, y[i + 1]}, -7 * MM,
				  sheet_tape(p->s, y[i + 1] - y[i]));
}

/* As far below the window as the labels of the running dimension reach. */
static void caption(const struct plan *p, double below)
{
	const struct point corner =
		drawing_on_paper(p->d, (struct point){p->window.x0, p->window.y0});
	const char *text = sheet_text(p->s,
				      "Tape from the lower left corner: along the eave from %s, up "
				      "the slope from the eave edge. %s",
				      has_rakes(p->s->r) ? "the left rake edge" : "its left end",
				      sheet_unit_note(p->s));
	const double wide = sheet_width(p->s, text, p->size), room = drawing_width(p->d) - 6 * MM;
	const double x = fmax(3 * MM, fmin(corner.x, drawing_width(p->d) - 3 * MM - wide));
	const struct view open = drawing_view_open(p->d);

	drawing_view(p->d, VIEW_PAPER);
	sheet_paragraph(p->s, p->d, (struct point){x, corner.y - below}, room, p->size, text);
	drawing_view(p->d, open);
}

void plan_dimensions(const struct plan *p)
{
	struct stations x, y;

	along_eave(p, &x);
	up_slope(p, &y);
	const struct running eave = eave_line(p, &x), slope = slope_line(p, &y);

	dimension_running(p->d, &eave);
	dimension_running(p->d, &slope);
	caption(p, FIRST_LINE + dimension_running_room(p->d, &eave) + 2 * MM);
	if (p->part == PLAN_WHOLE)
		clear_distances(p);
}
