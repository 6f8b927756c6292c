/* SPDX-License-Identifier: MIT */
/* Wind pressure on a piece of the array: every zone it touches is tried, the worst counts. */
#include "check/wind_rule.h"

#include <math.h>
#include <stdint.h>
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

/* The code's coefficient; without a trace the look-up is not made twice. */
static struct wind_coefficient looked_up(struct context *c, enum zone zone, enum wind_sign sign, double A,
                                         struct trace *trace)
{
	const struct wind_place place = { plane_roof(c), c->theta, zone_text(zone), sign, A };
	uint64_t bits;

	memcpy(&bits, &A, sizeof bits);
	struct coefficient_memo *m =
		&c->memo[((bits >> 32 ^ bits) * 31 + (unsigned)zone * 7 + (unsigned)sign) % COEFFICIENT_MEMO];

	if (trace)
		return c->code->wind_coefficient(c->code->edition, &place, c->curve, trace);
	if (!m->set || m->curve != c->curve || m->zone != zone || m->sign != sign || !same_value(m->A, A))
		*m = (struct coefficient_memo){ true, c->curve, zone, sign, A,
			                        c->code->wind_coefficient(c->code->edition, &place, c->curve, NULL) };
	return m->found;
}

/* The figures that would hold what is missing: steep hips and monoslopes; from memory. */
static const char *figures(const struct context *c)
{
	const bool old = c->code->edition == ASCE7_10;

	if (c->job->building.form == FORM_MONOSLOPE)
		return old ? "Figs. 30.4-5A, 30.4-5B, up to 30 degrees" : "Figs. 30.3-5A, 30.3-5B, up to 30 degrees";
	if (c->job->building.form == FORM_HIP)
		return old                             ? "Fig. 30.4-2C, which is of gables"
		       : c->code->edition == ASCE7_16 ? "Figs. 30.3-2E to 30.3-2I"
						      : "Figs. 30.3-2E to 30.3-2G";
	return "chapter 30";
}

static void none(struct context *c, enum zone zone, bool down)
{
	REMARK_T(c->r, NO_COEFFICIENT, (0), down ? "down" : zone_text(zone), figures(c));
}

struct wind_coefficient check_coefficient(struct context *c, enum zone zone, enum wind_sign sign, double A,
                                          struct trace *trace)
{
	const struct wind_coefficient k = looked_up(c, zone, sign, A, trace);
	const struct job_coefficient *e = entered(c, zone, sign, A);

	if (e) {
		REMARK_T(c->r, COEFFICIENT_ENTERED, (e->GCp), sign == WIND_DOWN ? "down" : zone_text(zone),
		         e->source);
		return (struct wind_coefficient){ true, e->GCp, USER_ENTERED, e->source, false };
	}
	if (!k.known)
		none(c, zone, sign == WIND_DOWN);
	c->curve_matters = c->curve_matters || (k.known && k.bounded);
	return k;
}

bool array_coefficients_known(struct context *c)
{
	const struct rectangle *a = &c->r->array;
	const struct polygon shape = polygon_rectangle(a->x0, a->y0, a->x1, a->y1);
	double area[ZONE_COUNT];
	bool all = true;

	if (c->r->wind.rule == WIND_TILTED)
		return true;
	zone_areas(c->r->shape, c->r->shapes, &shape, area);
	for (int z = 0; z < (int)ZONE_COUNT; z++)
		for (int down = 0; down <= 1 && area[z] > 0; down++) {
			const enum wind_sign sign = down ? WIND_DOWN : WIND_UP;
			const struct wind_place place = { plane_roof(c), c->theta, zone_text((enum zone)z), sign, 1 };

			/* one entered for any area may serve the attachments */
			if (entered(c, (enum zone)z, sign, HUGE_VAL) ||
			    c->code->wind_coefficient(c->code->edition, &place, CURVE_RECALLED, NULL).known)
				continue;
			none(c, (enum zone)z, down == 1);
			all = false;
		}
	return all;
}

bool array_exposed(const struct context *c, const struct rectangle *part, struct trace *trace)
{
	const struct job_collector *k = &c->job->collector;
	const struct rectangle *a = &c->r->array;
	const double from[ARRAY_SIDE_COUNT] = { part->x0 - a->x0, a->x1 - part->x1, part->y0 - a->y0, a->y1 - part->y1 };
	const double wide = fmax(4 * c->around.h2, 4 * M_PER_FT);

	if (!c->code->solar_provision)
		return false; /* no edge factor in this edition */
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
	if (c->r->wind.rule == WIND_TILTED)
		return tilted_pressure_zone(c, zone, A, exposed, trace);
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

/* Shares of two pressures, by the areas they act on. */
static void blend(struct array_pressure *sum, const struct array_pressure *p, double share)
{
	sum->up += share * p->up;
	sum->down += share * p->down;
	sum->GCp_up += share * p->GCp_up;
	sum->GCp_down += share * p->GCp_down;
}

struct array_pressure array_pressure_at(struct context *c, const struct rectangle *part, double A, bool exposed,
                                        struct trace *trace)
{
	const struct polygon shape = polygon_rectangle(part->x0, part->y0, part->x1, part->y1);
	struct array_pressure worst = { .known = false, .zone = ZONE_COUNT }, sum = { .known = false };
	double area[ZONE_COUNT], down = 0, whole = 0;
	bool missing = false;
	int count;
	const struct zone_shape *zones = array_zones(c, &count);
	const int touched = zone_areas(zones, count, &shape, area);

	for (int z = 0; z < (int)ZONE_COUNT; z++)
		whole += area[z];
	for (int z = 0; z < (int)ZONE_COUNT; z++) {
		if (area[z] <= 0)
			continue;
		const struct array_pressure p = array_pressure_zone(c, (enum zone)z, A, exposed, NULL);

		missing = missing || !p.known;
		down = fmax(down, p.known ? p.down : 0);
		blend(&sum, &p, area[z] / whole);
		if (p.known && (!worst.known || p.up > worst.up))
			worst = p;
	}
	if (touched == 0) /* off the plane: never on a valid job */
		REMARK_T(c->r, NO_COEFFICIENT, (0), "?", figures(c));
	if (!missing && trace && worst.known)
		worst = array_pressure_zone(c, worst.zone, A, exposed, trace);
	worst.down = fmax(worst.down, down);
	worst.known = worst.known && !missing;
	if (touched > 1 && c->job->collector.straddling == STRADDLING_BY_AREA) {
		worst.up = sum.up;
		worst.down = sum.down;
		worst.GCp_up = sum.GCp_up;
		worst.GCp_down = sum.GCp_down;
		REMARK(c->r, STRADDLE_BY_AREA, 0);
	} else if (touched > 1) {
		REMARK(c->r, STRADDLE_WORST, 0);
	}
	return worst;
}
