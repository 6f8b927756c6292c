/* SPDX-License-Identifier: MIT */
/* Lays the job out on its roof plane: x along the eave from the left rake edge, y up the slope from the eave edge.
   Gable and hip: the plane runs from the eave edge to the ridge. Flat and monoslope: one plane over the whole roof, y from
   the low edge. A tilted collector covers less of the roof than its own length. */
#include "check/wind_rule.h"

#include <math.h>

#include "check/courses.h"
#include "check/place.h"

#include "job/validate.h"
#include "table/lookup_limit.h"

static void plane(struct context *c)
{
	c->r->plane_length = job_plane_length(c->job);
	c->r->plane_slope = job_plane_slope(c->job);
	c->tilt = job_collector_tilt(c->job);
	const struct zone_plane shape = { .roof = plane_roof(c), .length = c->r->plane_length, .slope = c->r->plane_slope,
		                          .upper = plane_upper(c) };
	const bool known = c->job->building.form < FORM_OTHER &&
	                   (c->job->building.form != FORM_HIP || c->job->building.plane != PLANE_UNKNOWN);

	c->r->outline = known ? zone_plane_outline(&shape) : (struct polygon){ 0 };
	c->rack = !at_most(c->tilt, limit_of(LIMIT_PARALLEL_TILT));
	c->foot_height = c->rack ? 0 : c->job->mount.height;
}

/* Clamps stand on the seams of a metal roof: their lines take the rafters' place. */
static void seams(struct context *c)
{
	const double first = c->job->roof.first_seam, spacing = c->job->roof.seam_spacing;
	struct result *r = c->r;

	while (r->rafters < RAFTER_MAX && spacing > 0 && at_most(first + r->rafters * spacing, r->plane_length)) {
		r->rafter_x[r->rafters] = first + r->rafters * spacing;
		r->rafters++;
	}
}

static void rafters(struct context *c)
{
	c->r->rafters = 0;
	place_frames(c);
	if (c->job->fastener.kind == FASTENER_SEAM_CLAMP) {
		seams(c);
		place_settle(c->r);
		return;
	}
	place_on_frames(c);
}

static void collectors(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	const double w = k->orientation == PORTRAIT ? k->width : k->length;
	const double chord = k->orientation == PORTRAIT ? k->length : k->width;
	const double l = c->rack ? chord * cos(c->tilt) : chord;
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
	const double shrink = c->rack ? cos(c->tilt) : 1, more = (y1 - y0) * (1 / shrink - 1) / 2;
	const double lower = courses_line(c, y0 + rail->lower_inset * shrink,
	                                  (rail->lower_inset_max - rail->lower_inset) * shrink, x0, x1);
	const double upper = courses_line(c, y1 - rail->upper_inset * shrink,
	                                  (rail->upper_inset - rail->upper_inset_max) * shrink, x0, x1);
	/* strips are as long as the collector itself, so that their areas are its own */
	const double low = y0 - more, high = y1 + more;
	const double share = (high - low) * (upper - (y0 + y1) / 2) / (upper - lower);
	const double split = low + share;

	if (c->lines + 2 > LINE_MAX)
		return;
	c->line[c->lines++] = (struct line){ row, lower, x0, x1, low, split, false };
	c->line[c->lines++] = (struct line){ row, upper, x0, x1, split, high, true };
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
	r->on_deck = c->job->fastener.kind == FASTENER_DECK_MOUNT;
	if (r->on_deck)
		REMARK(r, DECK_PLACES, place_on_deck(c));
	lines(c);
	r->array_to_eave = r->array.y0;
	r->array_to_ridge = r->plane_slope - r->array.y1;
	r->array_to_left = r->array.x0;
	r->array_to_right = r->plane_length - r->array.x1;
}
