/* SPDX-License-Identifier: MIT */
/* What is put on the roof: collectors, rails, attachments, pipes. */
#include <math.h>

#include "sheet/plan.h"
#include "sheet/rail_pieces.h"

/* Room between this edge of a collector and the nearest one that faces it, on paper. */
static double facing(const struct plan *p, int which, int side)
{
	const struct rectangle *c = &p->s->r->collector[which];
	double gap = HUGE_VAL;

	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *o = &p->s->r->collector[i];
		const bool beside = fmin(c->y1, o->y1) > fmax(c->y0, o->y0),
			   above = fmin(c->x1, o->x1) > fmax(c->x0, o->x0);
		const double off = side == 0   ? c->y0 - o->y1
				   : side == 1 ? o->x0 - c->x1
				   : side == 2 ? o->y0 - c->y1
					       : c->x0 - o->x1;

		if (i != which && off >= 0 && (side % 2 ? beside : above))
			gap = fmin(gap, off);
	}
	return gap * p->view.scale;
}

/* An edge that faces another one closely is drawn thin: two heavy ones would run together and look
   like a rail. A number would hide a heavy one, or be hidden. */
static void collector_edges(const struct plan *p, int which)
{
	const struct rectangle *c = &p->s->r->collector[which];
	const double usual = drawing_layer_table[LAYER_COLLECTOR].width;
	const struct point at[] = {{c->x0, c->y0}, {c->x1, c->y0}, {c->x1, c->y1}, {c->x0, c->y1}};

	for (int side = 0; side < 4; side++) {
		struct point a = at[side], b = at[(side + 1) % 4];
		const bool close = facing(p, which, side) < 2 * usual;

		if (!plan_clip(p, &a, &b))
			continue;
		drawing_line_as(p->d, LAYER_COLLECTOR, close ? 0.13 * MM : usual, DASH_SOLID, a, b);
		const struct box box =
			plan_box(p, fmin(a.x, b.x), fmin(a.y, b.y), fmax(a.x, b.x), fmax(a.y, b.y));
		if (!close)
			drawing_reserve(p->d, (struct box){box.x0 - usual, box.y0 - usual,
							   box.x1 + usual, box.y1 + usual});
	}
}

void plan_collectors(const struct plan *p)
{
	for (int i = 0; i < p->s->r->collectors; i++) {
		const struct rectangle *c = &p->s->r->collector[i];
		const struct rectangle seen = {fmax(c->x0, p->window.x0), fmax(c->y0, p->window.y0),
					       fmin(c->x1, p->window.x1),
					       fmin(c->y1, p->window.y1)};
		const struct point at[] = {{seen.x0, seen.y0},
					   {seen.x1, seen.y0},
					   {seen.x1, seen.y1},
					   {seen.x0, seen.y1}};

		if (seen.x0 >= seen.x1 || seen.y0 >= seen.y1)
			continue;
		drawing_shape(p->d, LAYER_COLLECTOR, 0, FILL_WHITE, at, 4);
		collector_edges(p, i);
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

/* The block under a foot between two rafters, as far along them as it is wide. */
static void block(const struct plan *p, const struct attachment *a)
{
	const struct result *r = p->s->r;
	const struct stand *at = &r->place[a->rafter];
	const double half = r->block.wide / 2;

	if (!place_on_block(r, a->rafter) || at->frame < 0 || at->frame + 1 >= r->frames)
		return;
	const double x0 = r->frame_x[at->frame], x1 = r->frame_x[at->frame + 1];

	for (int side = -1; side <= 1; side += 2) {
		const double y = a->y + side * half;
		const struct box b = plan_box(p, x0, y, x1, y);

		plan_line(p, LAYER_RAFTER, (struct point){x0, y}, (struct point){x1, y});
		drawing_reserve(p->d, (struct box){b.x0, b.y0 - 0.2 * MM, b.x1, b.y1 + 0.2 * MM});
	}
}

void plan_attachments(const struct plan *p)
{
	const struct pass *pass = p->s->pass;
	const double r = plan_dot(p) / p->view.scale;
	const int n = p->s->r->passes > 0 ? pass->attachments : 0;

	for (int i = 0; i < n; i++) {
		const struct attachment *a = &pass->attachment[i];
		const struct point at = {a->x, a->y};

		if (!plan_inside(p, at))
			continue;
		block(p, a);
		drawing_mark(p->d, LAYER_ATTACH, FILL_BLACK, at, plan_dot(p));
		drawing_reserve(p->d, plan_box(p, a->x - r, a->y - r, a->x + r, a->y + r));
	}
}
