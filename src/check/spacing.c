/* SPDX-License-Identifier: MIT */
/* Largest spacing along the eave that holds in each zone: screws, foot and rail under every combination, for a foot in the
   middle of a continuous rail (reaction up to 1.25 of its tributary width), exposed if any side of the array is. */
#include "check/pass.h"

#include <math.h>

#include "check/wind_rule.h"
#include "check/rail.h"

struct trial {
	double ratio;
	enum check_id governs;
	struct array_pressure pressure;
	double area;
};

static double deepest(const struct context *c)
{
	double depth = 0;

	for (int i = 0; i < c->lines; i++)
		depth = fmax(depth, c->line[i].y_high - c->line[i].y_low);
	return depth;
}

static struct attachment typical(struct context *c, enum zone zone, double spacing, struct trial *t)
{
	const double depth = deepest(c);
	struct attachment a = { .tributary_width = spacing, .tributary_depth = depth, .area = spacing * depth };

	t->area = a.area;
	t->pressure = array_pressure_zone(c, zone, a.area, c->exposed_sides != 0, NULL);
	a.reaction_width = spacing * (c->job->rail.kind == SUPPORT_RAILS ? CONTINUOUS_REACTION : 1);
	a.tributary.y1 = c->r->array.y1; /* the strip nearest the ridge, where drifted snow begins */
	a.p_up = t->pressure.up;
	a.p_down = t->pressure.down;
	for (int i = 0; i < c->lines && c->rack && i < 2; i++) { /* the worse leg of a rack */
		struct attachment leg = a;

		rack_share(c, &c->line[i], &t->pressure, &leg, NULL);
		a.p_up = i == 0 ? leg.p_up : fmax(a.p_up, leg.p_up);
		a.p_down = i == 0 ? leg.p_down : fmax(a.p_down, leg.p_down);
		a.p_shear = fmax(a.p_shear, leg.p_shear);
	}
	return a;
}

/* wl2/8 bounds the moment of a continuous rail of any number of equal spans. */
static void rail_trial(const struct context *c, const struct attachment *a, double spacing, struct trial *t)
{
	const double capacity = rail_capacity(c, NULL);
	const char *combination;
	const double w = rail_load(c, a, 1, isfinite(c->job->rail.allowable_moment), &combination) * a->tributary_depth;
	const double ratio = w * spacing * spacing / 8 / capacity;

	if (c->job->rail.kind == SUPPORT_RAILS && isfinite(capacity) && ratio > t->ratio) {
		t->ratio = ratio;
		t->governs = CHECK_RAIL_MOMENT;
	}
}

static struct trial try_spacing(struct context *c, enum zone zone, double spacing)
{
	struct trial t = { 0 };
	struct attachment a = typical(c, zone, spacing, &t);

	if (!t.pressure.known) {
		t.ratio = HUGE_VAL;
		return t;
	}
	attachment_hold(c, &a);
	t.ratio = a.ratio;
	t.governs = a.governs;
	rail_trial(c, &a, spacing, &t);
	return t;
}

static double excess(struct context *c, enum zone zone, double spacing)
{
	return try_spacing(c, zone, spacing).ratio - 1;
}

/* Of a spacing that holds and one that does not: brings them near each other by false position, where the end that stays
   twice counts half. Load grows with spacing, for the coefficients fall no faster than the logarithm of the area, so what is
   narrower than one that holds holds too. */
static void narrow(struct context *c, enum zone zone, double close, double *holds, double f_holds, double *fails,
                   double f_fails)
{
	int side = 0;

	for (int i = 0; i < 24 && *fails - *holds > close; i++) {
		const double share = isfinite(f_fails) ? f_holds / (f_holds - f_fails) : 0.5;
		const double x = *holds + (*fails - *holds) * share;
		/* not on an end, where nothing is learnt */
		const double at = fmin(fmax(x, *holds + close / 4), *fails - close / 4);
		const double f = excess(c, zone, at);

		if (f <= 0) {
			*holds = at;
			f_holds = f;
			f_fails = side < 0 ? f_fails / 2 : f_fails;
			side = -1;
		} else {
			*fails = at;
			f_fails = f;
			f_holds = side > 0 ? f_holds / 2 : f_holds;
			side = 1;
		}
	}
}

/* Bisection of 1 in to the width of the array; 40 halvings leave nothing. What lies outside the narrowed bracket is known
   beforehand. */
static double largest(struct context *c, enum zone zone)
{
	double low = M_PER_IN, high = c->r->array.x1 - c->r->array.x0;
	double holds = low, fails = high;
	const double f_high = excess(c, zone, high);

	if (f_high <= 0)
		return high;
	const double f_low = excess(c, zone, low);

	if (f_low > 0)
		return 0;
	narrow(c, zone, ldexp(high - low, -40), &holds, f_low, &fails, f_high);
	for (int i = 0; i < 40; i++) {
		const double middle = (low + high) / 2;

		if (middle <= holds || (middle < fails && try_spacing(c, zone, middle).ratio <= 1))
			low = middle;
		else
			high = middle;
	}
	return low;
}

double mean_bay(const struct result *r)
{
	return r->rafters > 1 ? (r->rafter_x[r->rafters - 1] - r->rafter_x[0]) / (r->rafters - 1) : 0;
}

static void fill(struct context *c, enum zone zone, struct zone_spacing *z)
{
	const double bay = mean_bay(c->r), limit = c->job->mount.max_spacing;

	z->present = true;
	z->exact = c->fastener_rated ? largest(c, zone) : 0;
	z->end = c->fastener_rated && at_least(z->exact, c->r->array.x1 - c->r->array.x0) ? SPACING_BY_ARRAY
	                                                                                   : SPACING_BY_CHECK;
	if (isfinite(limit) && limit < z->exact) {
		z->exact = limit;
		z->end = SPACING_BY_MAKER;
	}
	/* 1e-9: a spacing of whole bays must not lose one to the last bit */
	z->spacing = bay > 0 ? floor(z->exact / bay + 1e-9) * bay : 0;
	const struct trial t = try_spacing(c, zone, z->spacing > 0 ? z->spacing : fmax(bay, M_PER_IN));

	z->p_up = t.pressure.up;
	z->p_down = t.pressure.down;
	z->GCp_up = t.pressure.GCp_up;
	z->GCp_down = t.pressure.GCp_down;
	z->confidence = t.pressure.confidence;
	z->figure = t.pressure.figure;
	z->area = t.area;
	z->governs = t.governs;
}

void spacing_run(struct context *c, struct zone_spacing zone[ZONE_COUNT])
{
	const struct rectangle *a = &c->r->array;
	const struct polygon array = polygon_rectangle(a->x0, a->y0, a->x1, a->y1);
	double area[ZONE_COUNT];

	int count;
	const struct zone_shape *zones = array_zones(c, &count);

	zone_areas(zones, count, &array, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		zone[z] = (struct zone_spacing){ 0 };
		if (area[z] > 0)
			fill(c, (enum zone)z, &zone[z]);
	}
}
