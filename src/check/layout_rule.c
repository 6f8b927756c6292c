/* SPDX-License-Identifier: MIT */
#include "check/layout_rule.h"

#include <math.h>

#include "check/rail.h"

/* Common practice: a plate of flashing beside a pipe's boot. */
#define PIPE_CLEARANCE (6 * M_PER_IN)

static bool inside(double x, double y, const struct rectangle *r)
{
	return x > r->x0 && x < r->x1 && y > r->y0 && y < r->y1;
}

static bool on_pipe(const struct job_pipe *p, double x, double y)
{
	const double d = isfinite(p->insulated_diameter) ? p->insulated_diameter : p->diameter;

	return isfinite(p->at) && isfinite(p->up) &&
	       hypot(x - p->at, y - p->up) < d / 2 + PIPE_CLEARANCE;
}

bool foot_blocked(const struct context *c, double x, double y)
{
	for (int i = 0; i < c->job->obstacles; i++) {
		const struct job_obstacle *o = &c->job->obstacle[i];
		const struct rectangle keep = {o->x - o->clearance, o->y - o->clearance,
					       o->x + o->width + o->clearance,
					       o->y + o->height + o->clearance};

		if (inside(x, y, &keep))
			return true;
	}
	for (int i = 0; i < c->job->pipes; i++)
		if (on_pipe(&c->job->pipe[i], x, y))
			return true;
	return false;
}

bool layout_breaks_rule(const struct context *c, const struct layout *layout)
{
	const double limit = c->job->mount.max_spacing;

	for (int l = 0; l < c->lines; l++) {
		double x[RAFTER_MAX];

		for (int i = 0; i < layout->count[l]; i++) {
			x[i] = c->r->rafter_x[layout->rafter[l][i]];
			if (foot_blocked(c, x[i], c->line[l].y))
				return true;
			if (i > 0 && isfinite(limit) && !at_most(x[i] - x[i - 1], limit))
				return true;
		}
		if (rail_cannot_be_laid(c, &c->line[l], x, layout->count[l]))
			return true;
	}
	return false;
}

static void joints_tell(struct context *c, const struct line *line, const struct attachment *a, int count,
			int number)
{
	double at[SPLICE_MAX];
	const bool told = rail_joints_told(c, line, at) > 0;
	const int n = told || rail_comes_in_lengths(c) ? rail_joints_of(c, line, a, count, at) : 0;

	for (int i = 0; i < n && told; i++)
		REMARK(c->r, RAIL_JOINT_TOLD, number, at[i] - line->x0, i + 1);
	for (int i = 0; i < n && !told; i++)
		REMARK(c->r, RAIL_JOINT, number, at[i] - line->x0, i + 1);
}

static void collectors_tell(struct context *c)
{
	for (int i = 0; i < c->r->collectors; i++)
		for (int k = 0; k < c->job->obstacles; k++) {
			const struct job_obstacle *o = &c->job->obstacle[k];
			const struct rectangle *r = &c->r->collector[i];

			if (o->x < r->x1 && o->x + o->width > r->x0 && o->y < r->y1 &&
			    o->y + o->height > r->y0)
				REMARK(c->r, OVER_OBSTACLE, i + 1, k + 1);
		}
}

static void cannot_be_laid(struct context *c, const struct line *line, int number)
{
	double at[SPLICE_MAX];

	if (rail_joints_told(c, line, at) > 0)
		REMARK(c->r, JOINTS_MISPLACED, number);
	else
		REMARK(c->r, SPLICE_END_SPAN, number, c->job->rail.stock_length);
}

/* A joint of a line that is not there holds nothing together. */
static void joints_astray(struct context *c)
{
	for (int i = 0; i < c->job->rail_joints; i++)
		if (c->job->rail_joint[i].line > c->lines || c->job->rail.kind != SUPPORT_RAILS)
			REMARK(c->r, JOINT_ASTRAY, i + 1, c->lines);
}

void layout_rules_tell(struct context *c, const struct pass *pass)
{
	const double limit = c->job->mount.max_spacing;

	collectors_tell(c);
	joints_astray(c);
	for (int i = 0; i < pass->attachments; i++)
		if (foot_blocked(c, pass->attachment[i].x, pass->attachment[i].y))
			REMARK(c->r, FOOT_BLOCKED, pass->attachment[i].number);
	for (int l = 0; l < pass->lines; l++) {
		const struct rail_line *rail = &pass->line[l];
		double x[RAFTER_MAX];

		for (int i = 0; i < rail->count; i++)
			x[i] = pass->attachment[rail->first + i].x;
		if (isfinite(limit) && !at_most(rail->longest_span, limit))
			REMARK(c->r, MAX_SPACING, l + 1, rail->longest_span, limit);
		if (rail_cannot_be_laid(c, &c->line[rail->line], x, rail->count))
			cannot_be_laid(c, &c->line[rail->line], l + 1);
		joints_tell(c, &c->line[rail->line], &pass->attachment[rail->first], rail->count, l + 1);
	}
}
