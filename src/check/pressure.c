/* SPDX-License-Identifier: MIT */
/* Wind pressure on a piece of the array: every zone it touches is tried, the worst counts. */
#include "check/attachment.h"

#include <math.h>
#include <string.h>

/* A coefficient read at a smaller area bounds the one at a larger area, never the other way round. */
static const struct job_coefficient *entered(const struct context *c, enum zone zone, enum wind_sign sign, double A)
{
	const char *name = sign == WIND_DOWN ? "down" : zone_text(zone);
	const struct job_coefficient *best = NULL;

	for (int i = 0; i < c->job->coefficients; i++) {
		const struct job_coefficient *e = &c->job->coefficient[i];

		if (strcmp(e->zone, name) == 0 && at_most(e->area, A) && (!best || e->area > best->area))
			best = e;
	}
	return best;
}

struct wind_coefficient check_coefficient(struct context *c, enum zone zone, enum wind_sign sign, double A,
                                          struct trace *trace)
{
	const struct wind_place place = { c->job->building.form == FORM_GABLE ? WIND_ROOF_GABLE : WIND_ROOF_FLAT,
		                          c->theta, zone_text(zone), sign, A };
	struct wind_coefficient k = c->code->wind_coefficient(c->code->edition, &place, c->curve, trace);
	const struct job_coefficient *e = entered(c, zone, sign, A);

	if (e) {
		REMARK_T(c->r, COEFFICIENT_ENTERED, (e->GCp), sign == WIND_DOWN ? "down" : zone_text(zone),
		         e->source);
		return (struct wind_coefficient){ true, e->GCp, USER_ENTERED, e->source, false };
	}
	c->curve_matters = c->curve_matters || (k.known && k.bounded);
	return k;
}

bool array_exposed(const struct context *c, const struct rectangle *part, struct trace *trace)
{
	const struct job_collector *k = &c->job->collector;
	const struct rectangle *a = &c->r->array;
	const double from[ARRAY_SIDE_COUNT] = { part->x0 - a->x0, a->x1 - part->x1, part->y0 - a->y0, a->y1 - part->y1 };
	const double wide = fmax(4 * c->around.h2, 4 * M_PER_FT);

	/* Collectors set that far apart shelter nobody: then every one of them stands at an edge (safe side). */
	if ((k->rows > 1 && k->row_gap > wide) || (k->columns > 1 && k->column_gap > wide))
		return true;
	return solar_row_end(&c->around, c->exposed_sides, from, trace);
}

static struct wind_pressure pressure(const struct context *c, double GCp, double A, bool exposed, struct trace *trace)
{
	const struct array_wind w = { GCp, A, exposed, c->flush_failed, c->GCpi, false };

	return c->code->array_pressure(c->code->edition, &c->wind, &w, trace);
}

struct array_pressure array_pressure_zone(struct context *c, enum zone zone, double A, bool exposed,
                                          struct trace *trace)
{
	const struct wind_coefficient up = check_coefficient(c, zone, WIND_UP, A, trace);
	const struct wind_coefficient down = check_coefficient(c, zone, WIND_DOWN, A, trace);
	struct array_pressure p = { .known = up.known && down.known, .zone = zone };

	if (!p.known)
		return p;
	const struct wind_pressure lifts = pressure(c, up.GCp, A, exposed, trace);
	const struct wind_pressure presses = pressure(c, down.GCp, A, false, trace);

	p.up = -lifts.p;
	p.down = presses.p;
	p.GCp_up = up.GCp;
	p.GCp_down = down.GCp;
	p.minimum_up = lifts.minimum;
	p.minimum_down = presses.minimum;
	p.confidence = up.confidence;
	p.figure = up.figure;
	if (p.minimum_up)
		REMARK_T(c->r, MINIMUM_PRESSURE, (0), "uplift", zone_text(zone));
	if (p.minimum_down)
		REMARK_T(c->r, MINIMUM_PRESSURE, (0), "down pressure", zone_text(zone));
	return p;
}

struct array_pressure array_pressure_at(struct context *c, const struct rectangle *part, double A, bool exposed,
                                        struct trace *trace)
{
	const struct polygon shape = polygon_rectangle(part->x0, part->y0, part->x1, part->y1);
	struct array_pressure worst = { .known = false, .zone = ZONE_COUNT };
	double area[ZONE_COUNT], down = 0;
	bool missing = false;

	zone_areas(c->r->shape, c->r->shapes, &shape, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		if (area[z] <= 0)
			continue;
		const struct array_pressure p = array_pressure_zone(c, (enum zone)z, A, exposed, NULL);

		missing = missing || !p.known;
		down = fmax(down, p.known ? p.down : 0);
		if (p.known && (!worst.known || p.up > worst.up))
			worst = p;
	}
	if (missing)
		REMARK_T(c->r, NO_COEFFICIENT, (0), worst.known ? zone_text(worst.zone) : "?");
	else if (trace && worst.known)
		worst = array_pressure_zone(c, worst.zone, A, exposed, trace);
	worst.down = fmax(worst.down, down);
	worst.known = worst.known && !missing;
	return worst;
}
