/* SPDX-License-Identifier: MIT */
/* What is put on the roof: collectors, rails, attachments, pipes. */
#include <math.h>

#include "sheet/plan.h"
#include "sheet/rail_pieces.h"

static bool clip_rectangle(const struct plan *p, const struct rectangle *in, struct rectangle *out)
{
	*out = (struct rectangle){fmax(in->x0, p->window.x0), fmax(in->y0, p->window.y0),
				  fmin(in->x1, p->window.x1), fmin(in->y1, p->window.y1)};
	return out->x0 < out->x1 && out->y0 < out->y1;
}

void plan_collectors(const struct plan *p)
{
	for (int i = 0; i < p->s->r->collectors; i++) {
		struct rectangle seen;

		if (clip_rectangle(p, &p->s->r->collector[i], &seen))
			drawing_rectangle(p->d, LAYER_COLLECTOR, FILL_WHITE, seen.x0, seen.y0,
					  seen.x1, seen.y1);
	}
}

/* Two strokes across the rail, where one piece ends and the next begins. */
static void joints(const struct plan *p, int line)
{
	const double k = p->view.scale, y = p->s->pass->line[line].y;
	double at[SPLICE_MAX];
	const int n = rail_pieces_joints(p->s, line, at);

	for (int i = 0; i < n; i++)
		for (int side = -1; side <= 1; side += 2) {
			struct point a = {at[i] + side * PLAN_JOINT / 2 / k, y - PLAN_JOINT / k},
				     b = {a.x, y + PLAN_JOINT / k};

			if (plan_clip(p, &a, &b))
				drawing_line(p->d, LAYER_RAIL, a, b);
		}
}

void plan_rails(const struct plan *p)
{
	if (p->s->r->passes == 0 || p->s->job->rail.kind != SUPPORT_RAILS)
		return;
	for (int i = 0; i < p->s->pass->lines; i++) {
		const struct rail_line *rail = &p->s->pass->line[i];
		struct point a = {rail->x0, rail->y}, b = {rail->x1, rail->y};

		if (plan_clip(p, &a, &b))
			drawing_line(p->d, LAYER_RAIL, a, b);
		joints(p, i);
	}
}

/* A circle with a cross, and its name beside it. */
void plan_pipes(const struct plan *p)
{
	const struct lettering_spec spec = {p->size, true, ANCHOR_LEFT, ANCHOR_MIDDLE, 0, true};
	const double k = p->view.scale, r = 1.3 * MM;

	for (int i = 0; i < p->s->job->pipes; i++) {
		const struct job_pipe *pipe = &p->s->job->pipe[i];
		const struct point at = {pipe->at, pipe->up};

		if (isnan(at.x) || isnan(at.y) || !plan_inside(p, at))
			continue;
		drawing_mark(p->d, LAYER_PIPE, FILL_WHITE, at, r);
		drawing_line(p->d, LAYER_PIPE, (struct point){at.x - r / k, at.y},
			     (struct point){at.x + r / k, at.y});
		drawing_line(p->d, LAYER_PIPE, (struct point){at.x, at.y - r / k},
			     (struct point){at.x, at.y + r / k});
		const struct box box =
			plan_box(p, at.x - r / k, at.y - r / k, at.x + r / k, at.y + r / k);

		drawing_reserve(p->d, box);
		const double off = (r + 0.8 * MM) / k, down = 1.6 * r / k;
		const struct point place[] = {{at.x + off, at.y},
					      {at.x + off, at.y + down},
					      {at.x + off, at.y - down},
					      {at.x - 3.2 * off, at.y},
					      {at.x - 3.2 * off, at.y + down},
					      {at.x + off, at.y}};

		drawing_text_free(p->d, LAYER_PIPE, place, (int)(sizeof place / sizeof *place),
				  spec, sheet_text(p->s, "P%d", i + 1));
	}
}

static void number(const struct plan *p, const struct attachment *a)
{
	const double k = p->view.scale, x = (PLAN_DOT + 0.5 * MM) / k,
		     y = (PLAN_DOT + 0.1 * MM) / k;
	const double size = 0.9 * p->size, high = LETTERING_CAPITAL * size / k;
	const char *text = sheet_text(p->s, "%d", a->number);
	const double wide = sheet_width(p->s, text, size) / k;
	const struct lettering_spec spec = {size, true, ANCHOR_LEFT, ANCHOR_BASE, 0, true};
	const struct point place[] = {{a->x + x, a->y + y},
				      {a->x + x, a->y - y - high},
				      {a->x - x - wide, a->y + y},
				      {a->x - x - wide, a->y - y - high},
				      {a->x - wide / 2, a->y + y + 0.8 * MM / k},
				      {a->x - wide / 2, a->y - y - high - 0.8 * MM / k},
				      {a->x + x, a->y + y}};

	drawing_text_free(p->d, LAYER_ATTACH, place, (int)(sizeof place / sizeof *place), spec,
			  text);
}

/* The block under a foot between two rafters, as far along them as it is wide. */
static void block(const struct plan *p, const struct attachment *a)
{
	const struct result *r = p->s->r;
	const struct stand *at = &r->place[a->rafter];
	const double half = r->block.wide / 2;

	if (!place_on_block(r, a->rafter) || at->frame < 0 || at->frame + 1 >= r->frames)
		return;
	for (int side = -1; side <= 1; side += 2)
		plan_line(p, LAYER_RAFTER,
			  (struct point){r->frame_x[at->frame], a->y + side * half},
			  (struct point){r->frame_x[at->frame + 1], a->y + side * half});
}

void plan_attachments(const struct plan *p)
{
	const struct pass *pass = p->s->pass;
	const double r = PLAN_DOT / p->view.scale;
	const int n = p->s->r->passes > 0 ? pass->attachments : 0;

	for (int i = 0; i < n; i++) {
		const struct attachment *a = &pass->attachment[i];
		const struct point at = {a->x, a->y};

		if (!plan_inside(p, at))
			continue;
		block(p, a);
		drawing_mark(p->d, LAYER_ATTACH, FILL_BLACK, at, PLAN_DOT);
		drawing_reserve(p->d, plan_box(p, a->x - r, a->y - r, a->x + r, a->y + r));
	}
	for (int i = 0; i < n; i++)
		if (plan_inside(p, (struct point){pass->attachment[i].x, pass->attachment[i].y}))
			number(p, &pass->attachment[i]);
}
