/* SPDX-License-Identifier: MIT */
/* Dimensions of the plan. Below and at the left: running from the lower left corner, for the tape.
   Above and at the right: plan_chain.c. */
#include <math.h>
#include <stdlib.h>

#include "drawing/dimension.h"
#include "sheet/plan.h"

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

/* From the roof's edge to a line of dimensions. */
static double first_line(const struct plan *p)
{
	return p->room.narrow ? 3.5 * MM : 6 * MM;
}

static void along_eave(const struct plan *p, struct stations *st)
{
	const struct result *r = p->s->r;

	st->n = 0;
	for (int i = 0; i < p->s->pass->attachments && r->passes > 0 && plan_tells_feet(p); i++) {
		const struct attachment *a = &p->s->pass->attachment[i];

		if (plan_inside(p, (struct point){a->x, a->y}))
			add_station(st, a->x);
	}
	if (r->passes == 0 || !plan_tells_feet(p)) {
		add_station(st, r->array.x0);
		add_station(st, r->array.x1);
	}
	/* in place of the whole length above, for which a screen has no height to spare */
	if (p->room.narrow && p->part == PLAN_WHOLE)
		add_station(st, r->plane_length);
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
	/* in place of the clear distances at the right, for which a screen has no width */
	if (p->room.narrow && p->part == PLAN_WHOLE)
		add_station(st, r->plane_slope);
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
				.away = first_line(p),
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
				.away = first_line(p),
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
	struct plan_room room = {
		.left = first_line(p) + dimension_running_room(p->d, &slope) +
			(p->room.narrow ? 0 : 2 * MM),
		.below = first_line(p) + dimension_running_room(p->d, &eave) +
			 (p->room.narrow ? 1 * MM : 6 * MM),
		.right = 4 * MM,
		.above = 5 * MM,
	};

	if (p->part == PLAN_WHOLE)
		plan_clear_room(p, &room);
	return room;
}

const char *plan_left_end(const struct plan *p)
{
	return plan_has_rakes(p->s->r) ? "the left rake edge" : "the eave's left end";
}

static const char *caption_words(const struct plan *p)
{
	return sheet_text(
		p->s,
		"%sTape from the lower left corner: along the eave from %s, up "
		"the slope from the eave edge. %s",
		p->legend || p->room.narrow ? "" : sheet_text(p->s, "Scale %s. ", p->scale.text),
		plan_has_rakes(p->s->r) ? "the left rake edge" : "its left end",
		sheet_unit_note(p->s));
}

double plan_caption(const struct plan *p, struct point at, double width)
{
	const struct view open = drawing_view_open(p->d);

	drawing_view(p->d, VIEW_PAPER);
	const double y = sheet_paragraph(p->s, p->d, at, width, p->size, caption_words(p));

	drawing_view(p->d, open);
	return y;
}

/* As far below the window as the labels of the running dimension reach. */
static void caption(const struct plan *p, double below)
{
	const struct point corner =
		drawing_on_paper(p->d, (struct point){p->window.x0, p->window.y0});
	const char *text = caption_words(p);
	const double wide = sheet_width(p->s, text, p->size), room = drawing_width(p->d) - 6 * MM;
	const double x = fmax(3 * MM, fmin(corner.x, drawing_width(p->d) - 3 * MM - wide));

	plan_caption(p, (struct point){x, corner.y - below}, room);
}

void plan_dimensions(const struct plan *p)
{
	struct stations x, y;

	along_eave(p, &x);
	up_slope(p, &y);
	const struct running eave = eave_line(p, &x), slope = slope_line(p, &y);

	dimension_running(p->d, &eave);
	dimension_running(p->d, &slope);
	if (!p->room.narrow)
		caption(p, first_line(p) + dimension_running_room(p->d, &eave) + 2 * MM);
	if (p->part == PLAN_WHOLE)
		plan_clear_distances(p);
}
