/* SPDX-License-Identifier: MIT */
/* Lays the job out on its roof plane: x along the eave from the left rake edge, y up the slope from the eave edge.
   Gable: the plane runs from the eave edge to the ridge. Flat: one plane over the whole roof, y from the low edge. */
#include "check/context.h"

#include <math.h>

static void plane(struct context *c)
{
	const struct job_building *b = &c->job->building;
	const double run = b->form == FORM_GABLE ? b->width / 2 + b->eave_overhang
	                                         : b->width + 2 * b->eave_overhang;

	c->r->plane_length = b->length + 2 * b->rake_overhang;
	c->r->plane_slope = run / c->cos_theta;
}

static void rafters(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	struct result *r = c->r;

	r->rafters = 0;
	if (f->measured > 0) {
		for (int i = 0; i < f->measured; i++)
			r->rafter_x[r->rafters++] = f->at[i];
		return;
	}
	while (r->rafters < RAFTER_MAX) {
		const double x = f->first + r->rafters * f->spacing;

		if (!at_most(x, r->plane_length))
			break;
		r->rafter_x[r->rafters++] = x;
	}
}

static void collectors(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	const double w = k->orientation == PORTRAIT ? k->width : k->length;
	const double l = k->orientation == PORTRAIT ? k->length : k->width;
	struct result *r = c->r;

	r->collectors = 0;
	for (int row = 0; row < k->rows; row++)
		for (int col = 0; col < k->columns && r->collectors < COLLECTOR_MAX; col++) {
			const double x = k->left + col * (w + k->column_gap);
			const double y = k->lower + row * (l + k->row_gap);

			r->collector[r->collectors++] = (struct rectangle){ x, y, x + w, y + l };
		}
	r->array = (struct rectangle){ k->left, k->lower,
		                       k->left + k->columns * w + (k->columns - 1) * k->column_gap,
		                       k->lower + k->rows * l + (k->rows - 1) * k->row_gap };
}

/* Two lines of feet under a strip of collector from y0 to y1. Each carries what statics gives it of a uniform load: a beam
   on two supports with overhangs. */
static void two_lines(struct context *c, int row, double x0, double x1, double y0, double y1)
{
	const struct job_rail *rail = &c->job->rail;
	const double lower = y0 + rail->lower_inset, upper = y1 - rail->upper_inset;
	const double share = (y1 - y0) * (upper - (y0 + y1) / 2) / (upper - lower);
	const double split = y0 + share;

	if (c->lines + 2 > LINE_MAX)
		return;
	c->line[c->lines++] = (struct line){ row, lower, x0, x1, y0, split };
	c->line[c->lines++] = (struct line){ row, upper, x0, x1, split, y1 };
}

static void lines(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	const struct result *r = c->r;

	c->lines = 0;
	for (int row = 0; row < k->rows; row++) {
		const struct rectangle *first = &r->collector[row * k->columns];

		if (c->job->rail.kind == SUPPORT_RAILS) {
			two_lines(c, row, r->array.x0, r->array.x1, first->y0, first->y1);
			continue;
		}
		for (int col = 0; col < k->columns; col++)
			two_lines(c, row, first[col].x0, first[col].x1, first->y0, first->y1);
	}
}

void check_geometry(struct context *c)
{
	struct result *r = c->r;

	plane(c);
	rafters(c);
	collectors(c);
	lines(c);
	r->array_to_eave = r->array.y0;
	r->array_to_ridge = r->plane_slope - r->array.y1;
	r->array_to_left = r->array.x0;
	r->array_to_right = r->plane_length - r->array.x1;
}
