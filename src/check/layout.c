/* SPDX-License-Identifier: MIT */
/* Feet on rafters, line by line. */
#include "check/pass.h"

#include <math.h>

#include "check/rail.h"
#include "check/wind_rule.h"
#include "roof/placement.h"

struct limit_context {
	struct context *c;
	const struct line *line;
	const struct zone_spacing *zone;
};

/* The narrowest spacing of the zones that the strip from xa to xb touches. */
static double zone_limit(const struct limit_context *l, double xa, double xb)
{
	const struct polygon strip = polygon_rectangle(xa, l->line->y_low, xb, l->line->y_high);
	double area[ZONE_COUNT], least = HUGE_VAL;

	int count;
	const struct zone_shape *zones = array_zones(l->c, &count);

	zone_areas(zones, count, &strip, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++)
		if (area[z] > 0)
			least = fmin(least, l->zone[z].exact);
	return least;
}

/* The user's own spacing, right or wrong, goes before what the zones allow: it is what gets checked. */
static double limit(const void *context, double xa, double xb)
{
	const struct limit_context *l = context;
	const double wanted = l->c->job->mount.spacing;

	return isfinite(wanted) ? wanted : zone_limit(l, xa, xb);
}

/* The maker's limit. Without one, none where the rail's moment is checked, for that check sees the cantilever too; else
   a share of the largest spacing that the maker, or else the zones, allow. */
static double cantilever(const struct limit_context *l)
{
	const double maker = l->c->job->rail.max_cantilever, widest = l->c->job->mount.max_spacing;

	if (isfinite(maker))
		return maker;
	if (isfinite(rail_capacity(l->c, NULL)))
		return HUGE_VAL;
	return CANTILEVER_SHARE * (isfinite(widest) ? widest
	                                            : fmax(zone_limit(l, l->line->x0, l->line->x1), mean_bay(l->c->r)));
}

void layout_plan(struct context *c, const struct zone_spacing zone[ZONE_COUNT], int bays, struct layout *out)
{
	out->widest = 0;
	for (int i = 0; i < c->lines; i++) {
		const struct limit_context l = { c, &c->line[i], zone };

		out->cantilever[i] = cantilever(&l);
		/* closer bays ask for shorter ends: an end foot carries its cantilever and half a bay */
		const double widest = fmin(bays * mean_bay(c->r), limit(&l, l.line->x0, l.line->x1));
		const double end = fmin(out->cantilever[i], CANTILEVER_SHARE * widest);
		const struct placement p = {
			.x0 = c->line[i].x0, .x1 = c->line[i].x1,
			.rafter = c->r->rafter_x, .rafters = c->r->rafters,
			.skip = c->job->mount.stagger == ANSWER_YES && i % 2 == 1,
			.bays = bays,
			.left = end, .right = end,
			.limit = limit, .context = &l,
		};

		out->count[i] = placement_find(&p, out->rafter[i], RAFTER_MAX);
		for (int k = 1; k < out->count[i]; k++) {
			const int bay = out->rafter[i][k] - out->rafter[i][k - 1];

			out->widest = bay > out->widest ? bay : out->widest;
		}
	}
}
