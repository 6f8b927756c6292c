/* SPDX-License-Identifier: MIT */
/* The loads that do not depend on where a foot stands: velocity pressure and zones, the conditions of the flush-array rule,
   snow cases, dead load, combinations. */
#include "check/context.h"

#include <math.h>

#include "load/gravity.h"
#include "load/triggers.h"

static enum wind_roof wind_roof(const struct context *c)
{
	return c->job->building.form == FORM_GABLE ? WIND_ROOF_GABLE : WIND_ROOF_FLAT;
}

/* Run of the far plane of a gable, eave overhang included, on plan; 0 on a flat roof. */
static double beyond(const struct context *c)
{
	const struct job_building *b = &c->job->building;

	return b->form == FORM_GABLE ? b->width / 2 + b->eave_overhang : 0;
}

/* Height that the zone width is taken from: mean roof height, or the eave's up to 10 degrees (ASCE/SEI 7-16 Fig. 30.3-1
   notes). */
static double zone_height(const struct context *c)
{
	const struct job_building *b = &c->job->building;
	const double run = b->form == FORM_GABLE ? b->width / 2 : b->width;

	if (!at_most(c->theta, 10 * RAD_PER_DEG))
		return b->mean_roof_height;
	return b->mean_roof_height - run * tan(c->theta) / 2;
}

static bool velocity(struct context *c)
{
	static const char letter[] = { 'B', 'C', 'D' };
	const struct job_site *s = &c->job->site;
	const struct wind_site site = { s->wind_speed, letter[s->exposure], s->Kzt, s->elevation,
		                        c->job->building.mean_roof_height };
	struct wind_result *w = &c->r->wind;

	c->wind = c->code->wind_velocity(c->code->edition, &site, &c->r->trace[SECTION_WIND]);
	c->GCpi = c->code->internal_coefficient(c->code->edition,
	                                        c->job->building.enclosure == PARTIALLY_ENCLOSED
	                                                ? WIND_PARTIALLY_ENCLOSED
	                                                : WIND_ENCLOSED);
	w->Kz = c->wind.Kz;
	w->Kd = c->wind.Kd;
	w->Ke = c->wind.Ke;
	w->Kzt = c->wind.Kzt;
	w->qh = c->wind.qh;
	return c->wind.known && isfinite(c->GCpi);
}

static bool zones(struct context *c)
{
	const struct job_building *b = &c->job->building;
	struct result *r = c->r;
	const double least = fmin(b->length, b->width);

	r->wind.a = asce7_zone_width(least, zone_height(c), &r->trace[SECTION_WIND]);
	const struct zone_plane plane = { c->code->edition, wind_roof(c),      c->theta,  r->plane_length,
		                          r->plane_slope,   beyond(c),         r->wind.a, b->mean_roof_height };
	const struct zone_map map = zone_map_of(&plane);

	r->shapes = map.known ? map.shapes : 0;
	for (int i = 0; i < r->shapes; i++)
		r->shape[i] = map.shape[i];
	return map.known;
}

/* Facts of the array as the flush rule asks for them, and which of its sides the wind reaches first. */
static void flush(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	struct result *r = c->r;
	const struct rectangle *first = &r->collector[0];
	const bool gable = c->job->building.form == FORM_GABLE;
	const double h2 = k->clearance + k->depth;
	const double upper = r->array_to_ridge;
	const double edges = fmin(fmin(r->array_to_left, r->array_to_right), r->array_to_eave);
	const struct flush_array array = {
		k->tilt,       h2,
		k->columns,    k->rows,
		k->column_gap, k->row_gap,
		first->x1 - first->x0, first->y1 - first->y0,
		gable ? edges : fmin(edges, upper),
		gable ? upper : (double)INFINITY,
	};

	r->wind.h2 = h2;
	r->wind.Lp = first->y1 - first->y0;
	c->flush_failed = solar_flush_failed(&array);
	r->wind.flush_failed = c->flush_failed;
	r->wind.gammaa_allowed = c->code->solar_provision && c->flush_failed == 0;
	for (int i = 0; i < (int)FLUSH_CONDITION_COUNT && c->code->solar_provision; i++)
		if (c->flush_failed & FLUSH_BIT(i))
			REMARK_T(r, FLUSH_LOST, (0), flush_condition_text((enum flush_condition)i));
	c->around = (struct array_surroundings){
		.h = c->job->building.mean_roof_height,
		.h2 = h2,
		.Lp = r->wind.Lp,
		.to_roof_edge = { r->array_to_left, r->array_to_right, r->array_to_eave,
		                  gable ? upper + r->plane_slope : upper },
		.to_array = { INFINITY, INFINITY, INFINITY, INFINITY },
	};
	c->exposed_sides = solar_exposed_sides(&c->around, &r->trace[SECTION_WIND]);
}

static struct snow_roof snow_roof(const struct context *c)
{
	static const char letter[] = { 'B', 'C', 'D' };
	const struct job *job = c->job;
	const struct job_building *b = &job->building;
	const bool gable = b->form == FORM_GABLE;

	return (struct snow_roof){
		.pg = job->site.ground_snow,
		.level = job->site.ground_snow_level == SNOW_STRENGTH ? GROUND_SNOW_STRENGTH
		                                                      : GROUND_SNOW_SERVICE,
		.risk_category = (int)job->site.risk_category + 1,
		.terrain = letter[job->site.exposure],
		.exposure = (enum roof_exposure)job->site.snow_exposure,
		.thermal = (enum roof_thermal)job->site.thermal,
		.R = job->site.roof_R,
		.theta = c->theta,
		.W = gable ? b->width / 2 + b->eave_overhang : b->width,
		.unbalanced = gable,
		.low_slope_form = true,
		/* clear span of a rafter from wall to ridge, within a wall's thickness */
		.simple_rafters = gable && at_least(job->framing.span, b->width / 2 - M_PER_FT),
		.slippery = c->covering && c->covering->slippery == COVERING_SLIPPERY_YES,
		.sliding_room = b->sliding_room == ANSWER_YES,
		.several_rows = job->collector.rows > 1,
		.floor = job->site.roof_snow_minimum,
		.W2 = NAN,
	};
}

static bool snow(struct context *c)
{
	const struct snow_roof roof = snow_roof(c);
	struct snow_result *s = &c->r->snow;

	c->snow = c->code->snow_loads(c->code->edition, &roof, &c->r->trace[SECTION_SNOW]);
	if (c->snow.status != SNOW_OK)
		return false;
	*s = (struct snow_result){ .Ce = c->snow.Ce, .Ct = c->snow.Ct, .Is = c->snow.Is, .pf = c->snow.pf,
		                   .pm = c->snow.pm, .Cs_roof = c->snow.Cs_roof, .Cs_array = c->snow.Cs_array,
		                   .Cs_before = c->snow.Cs_before };
	for (int i = 0; i < c->snow.cases && i < SNOW_CASE_MAX; i++)
		s->snow[s->cases++] = c->snow.snow[i];
	if (job_given(c->job, FIELD_SITE_ROOF_SNOW_MINIMUM) && c->snow.cases > 0 &&
	    c->snow.snow[0].roof <= roof.floor)
		REMARK(c->r, SNOW_MINIMUM, roof.floor);
	if (roof.pg <= 0)
		return true;
	if (c->snow.obstructed)
		REMARK(c->r, OBSTRUCTED, c->snow.Cs_roof, c->snow.Cs_before);
	REMARK(c->r, PUMP_HEAT, 0);
	return true;
}

static void dead(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	struct dead_result *d = &c->r->dead;
	struct trace *t = &c->r->trace[SECTION_DEAD];
	const double area = k->length * k->width;

	d->collector_dry = k->dry_weight;
	d->collector_filled = k->filled_weight;
	if (!isfinite(k->filled_weight))
		d->collector_filled = k->dry_weight +
		                      (isfinite(k->fluid_volume)
		                               ? gravity_fluid_weight(k->fluid_volume,
		                                                      (enum gravity_fluid)k->fluid, t)
		                               : 0);
	d->array_dry = gravity_array_dead(d->collector_dry, area, k->hardware_weight, t);
	d->array_filled = gravity_array_dead(d->collector_filled, area, k->hardware_weight, t);
	if (!at_most(d->collector_filled / area, COLLECTOR_WEIGHT_LIMIT))
		REMARK(c->r, HEAVY, d->collector_filled / area);
}

static void roof_live(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	const struct job_collector *k = &c->job->collector;

	c->r->Lr = gravity_roof_live(f->span * f->spacing, c->theta, &c->r->trace[SECTION_SNOW]);
	if (k->rows > 1 && !at_most(k->row_gap, ROOM_TO_STAND))
		REMARK(c->r, WALK_GAP, k->row_gap);
}

bool check_loads(struct context *c)
{
	dead(c);
	roof_live(c);
	if (!velocity(c))
		return false;
	flush(c);
	if (!snow(c) || !zones(c))
		return false;
	c->combinations = c->code->combinations(c->code->edition, COMBINATION_ASD, false, c->combination);
	return c->combinations > 0;
}
