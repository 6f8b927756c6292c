/* SPDX-License-Identifier: MIT */
/* Collectors within 2 degrees of the roof: ASCE/SEI 7-16 29.4.4 (pressure.c). Tilted ones on a roof of 7 degrees or less:
   29.4.3, if every condition is met. No rule was written for the others: the worse of the forces on rooftop structures
   (29.4.1; 7-10: 29.5.1) and of the full roof pressure on the collector's face is taken as a bound, and an engineer must
   judge. One collector stands for the structure: the larger the area, the smaller the coefficient. */
#include "check/wind_rule.h"

#include <math.h>
#include <string.h>

#include "load/asce7_rooftop.h"

static struct tilted_array facts(const struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	const struct result *r = c->r;
	const struct rectangle *first = &r->collector[0];
	const bool single = plane_beyond(c) <= 0;
	const double across = fmin(r->array_to_left, r->array_to_right);
	const double along = fmin(r->array_to_eave, single ? r->array_to_ridge : (double)INFINITY);

	return (struct tilted_array){ .roof = plane_roof(c),
		                      .theta = c->theta,
		                      .tilt = c->tilt,
		                      .Lp = r->wind.Lp,
		                      .along = first->x1 - first->x0,
		                      .h1 = r->wind.h1,
		                      .h2 = r->wind.h2,
		                      .hpt = c->job->building.parapet,
		                      .columns = k->columns,
		                      .rows = k->rows,
		                      .column_gap = k->column_gap,
		                      .row_gap = k->row_gap,
		                      .to_edge = fmin(across, along * c->cos_theta) };
}

static void tilted(struct context *c)
{
	const struct job_building *b = &c->job->building;
	struct wind_result *w = &c->r->wind;

	w->rule = WIND_TILTED;
	c->tilted = solar_tilted_factors(b->parapet, b->mean_roof_height, w->Lp, fmax(b->length, b->width),
	                                 fmin(b->length, b->width), &c->r->trace[SECTION_WIND]);
	w->gammap = c->tilted.gammap;
	w->gammac = c->tilted.gammac;
	w->Lb = c->tilted.Lb;
}

static void structure(struct context *c)
{
	const struct job_building *b = &c->job->building;
	const struct rectangle *first = &c->r->collector[0];
	const double along = first->x1 - first->x0, slope = c->theta + c->tilt;
	const double depth = c->job->collector.depth;
	struct wind_result *w = &c->r->wind;
	const struct rooftop_structure s = {
		/* face and plan of a box of the collector's chord and depth */
		.Af = along * (w->Lp * sin(slope) + depth * cos(slope)),
		.Ar = along * (w->Lp * cos(slope) + depth * sin(slope)),
		.B = b->length,
		.L = b->width,
		.h = b->mean_roof_height,
	};

	w->rule = WIND_STRUCTURE;
	const struct rooftop_force f = asce7_rooftop_force(c->code->edition, &c->wind, &s, &c->r->trace[SECTION_WIND]);

	w->Fh = f.Fh;
	w->Fv = f.Fv;
	w->GCr_h = f.GCr_lateral;
	w->GCr_v = f.GCr_uplift;
	c->Fh = f.Fh / along;
	c->Fv = f.Fv / along;
	REMARK(c->r, ROOFTOP_FORCE, f.Fh, f.Fv, c->tilt);
}

void wind_rule_choose(struct context *c)
{
	struct wind_result *w = &c->r->wind;

	w->rule = WIND_FLUSH;
	w->tilt = c->tilt;
	if (!c->rack)
		return;
	const struct tilted_array a = facts(c);

	w->tilted_failed = solar_tilted_failed(&a);
	if (c->code->solar_provision && w->tilted_failed == 0) {
		tilted(c);
	} else {
		REMARK_T(c->r, TILTED, (c->tilt, c->theta),
		         c->code->solar_provision ? "" : " (7-10 has none at all)",
		         c->code->edition == ASCE7_10 ? "29.5.1" : "29.4.1");
		for (int i = 0; i < (int)TILTED_CONDITION_COUNT && c->code->solar_provision; i++)
			if (w->tilted_failed & TILTED_BIT(i))
				REMARK_T(c->r, TILTED_LIMIT, (0), tilted_condition_text((enum tilted_condition)i),
				         tilted_condition_clause((enum tilted_condition)i));
		structure(c);
	}
	REMARK(c->r, RACK_BRACED, w->h2);
}

const struct zone_shape *array_zones(const struct context *c, int *count)
{
	const bool own = c->r->wind.rule == WIND_TILTED;

	*count = own ? c->r->array_shapes : c->r->shapes;
	return own ? c->r->array_shape : c->r->shape;
}

const char *array_zone_name(const struct context *c, enum zone zone)
{
	if (c->r->wind.rule != WIND_TILTED)
		return zone_text(zone);
	return zone == ZONE_1 ? "rn1" : zone == ZONE_2 ? "rn2" : "rn3";
}

/* What the user read from the chart, at this area or a smaller one. */
static const struct job_coefficient *entered(const struct context *c, enum zone zone, double A)
{
	const char *name = array_zone_name(c, zone);
	const struct job_coefficient *best = NULL;

	for (int i = 0; i < c->job->coefficients; i++) {
		const struct job_coefficient *e = &c->job->coefficient[i];

		if (strcmp(e->zone, name) == 0 && at_most(e->area, A) && (!best || e->area > best->area))
			best = e;
	}
	return best;
}

static struct wind_coefficient nominal(struct context *c, enum zone zone, double A, struct trace *trace)
{
	const struct job_coefficient *e = entered(c, zone, A);

	if (e) {
		REMARK_T(c->r, COEFFICIENT_ENTERED, (e->GCp), e->zone, e->source);
		return (struct wind_coefficient){ true, -e->GCp, USER_ENTERED, e->source, false };
	}
	const struct wind_coefficient k =
		solar_tilted_nominal(c->tilt, zone_text(zone), A, c->tilted.Lb, c->curve, trace);

	c->curve_matters = c->curve_matters || (k.known && k.bounded);
	return k;
}

struct wind_coefficient array_coefficient(struct context *c, enum zone zone, double A)
{
	struct wind_coefficient k;

	if (c->r->wind.rule != WIND_TILTED)
		return check_coefficient(c, zone, WIND_UP, A, NULL);
	k = nominal(c, zone, A, NULL);
	k.GCp = -k.GCp;
	return k;
}

struct array_pressure tilted_pressure_zone(struct context *c, enum zone zone, double A, bool exposed, struct trace *trace)
{
	struct array_pressure p = { .zone = zone };

	const struct wind_coefficient k = nominal(c, zone, A, trace);

	p.known = k.known;
	if (!p.known)
		return p;
	const struct wind_pressure w =
		solar_tilted_pressure(c->code->edition, &c->wind, &c->tilted, k.GCp, exposed, true, trace);

	p.up = p.down = w.p;
	p.GCp_up = -k.GCp;
	p.GCp_down = k.GCp;
	p.minimum_up = p.minimum_down = w.minimum;
	p.confidence = k.confidence;
	p.figure = k.figure;
	if (w.minimum)
		REMARK_T(c->r, MINIMUM_PRESSURE, (0), "wind on the tilted collectors", zone_text(zone));
	return p;
}
