/* SPDX-License-Identifier: MIT */
/* The loads that do not depend on where a foot stands: velocity pressure and zones, the conditions of the flush-array rule,
   snow cases, dead load, combinations. */
#include "check/load_case.h"
#include "check/wind_rule.h"

#include <math.h>

#include "load/asce7_drift.h"
#include "load/gravity.h"
#include "load/triggers.h"
#include "table/lookup_limit.h"
#include "table/lookup_snow.h"

/* Height that the zone width is taken from: mean roof height, or the eave's up to 10 degrees (ASCE/SEI 7-16 Fig. 30.3-1
   notes). */
static double zone_height(const struct context *c)
{
	const struct job_building *b = &c->job->building;
	const double run = plane_run(c);

	if (!at_most(c->theta, limit_of(LIMIT_EAVE_HEIGHT_SLOPE)))
		return b->mean_roof_height;
	return b->mean_roof_height - run * tan(c->theta) / 2;
}

static bool velocity(struct context *c)
{
	static const char letter[] = { 'B', 'C', 'D' };
	const struct job_site *s = &c->job->site;
	const struct wind_site site = { s->wind_speed, letter[s->exposure], check_Kzt(c), s->elevation,
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
	return plane_zones(c, r->wind.a);
}

/* Facts of the array as the flush rule asks for them, and which of its sides the wind reaches first. */
static void flush(struct context *c)
{
	const struct job_collector *k = &c->job->collector;
	struct result *r = c->r;
	const struct rectangle *first = &r->collector[0];
	const double chord = k->orientation == PORTRAIT ? k->length : k->width;
	const double h2 = c->rack ? k->clearance + chord * sin(c->tilt) + k->depth * cos(c->tilt)
	                          : k->clearance + k->depth;
	const bool ridged = plane_beyond(c) > 0;
	const double upper = r->array_to_ridge;
	const double edges = fmin(fmin(r->array_to_left, r->array_to_right), r->array_to_eave);
	const struct flush_array array = {
		c->tilt,       h2,
		k->columns,    k->rows,
		k->column_gap, k->row_gap,
		first->x1 - first->x0, first->y1 - first->y0,
		ridged ? edges : fmin(edges, upper),
		ridged ? fmin(upper, plane_to_hip(c, &r->array)) : (double)INFINITY,
	};

	r->wind.h2 = h2;
	r->wind.h1 = k->clearance + k->depth * cos(c->tilt);
	r->wind.Lp = c->rack ? chord : first->y1 - first->y0;
	c->flush_failed = solar_flush_failed(&array);
	r->wind.flush_failed = c->flush_failed;
	r->wind.gammaa_allowed = c->code->solar_provision && c->flush_failed == 0;
	for (int i = 0; i < (int)FLUSH_CONDITION_COUNT && c->code->solar_provision && !c->rack; i++)
		if (c->flush_failed & FLUSH_BIT(i))
			REMARK_T(r, FLUSH_LOST, (0), flush_condition_text((enum flush_condition)i));
	c->around = (struct array_surroundings){
		.h = c->job->building.mean_roof_height,
		.h2 = h2,
		.Lp = r->wind.Lp,
		.to_roof_edge = { r->array_to_left, r->array_to_right, r->array_to_eave,
		                  upper + plane_beyond(c) / c->cos_theta },
		.to_array = { INFINITY, INFINITY, INFINITY, INFINITY },
	};
	c->exposed_sides = solar_exposed_sides(&c->around, &r->trace[SECTION_WIND]);
	wind_rule_choose(c);
}

/* The larger of the authority's own minimum and its ground-to-roof rule; NAN where there is neither. */
static double least_snow(const struct context *c)
{
	const struct job *job = c->job;
	const double rule = isfinite(job->snow.local_factor)
	                            ? snow_local(job->snow.local_factor, job->site.ground_snow,
	                                         &c->r->trace[SECTION_SNOW])
	                            : (double)NAN;

	return fmax(job->site.roof_snow_minimum, rule); /* fmax passes over a NAN */
}

static struct snow_roof snow_roof(const struct context *c)
{
	static const char letter[] = { 'B', 'C', 'D' };
	const struct job *job = c->job;
	const struct job_building *b = &job->building;
	const bool gable = b->form == FORM_GABLE || b->form == FORM_HIP;

	return (struct snow_roof){
		.pg = job->site.ground_snow,
		.Ct = isfinite(job->snow.Ct) ? job->snow.Ct : 0,
		/* nothing is nothing at either level */
		.level = !(job->site.ground_snow > 0)                     ? c->code->ground_snow
		         : job->site.ground_snow_level == SNOW_STRENGTH ? GROUND_SNOW_STRENGTH
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
		.floor = least_snow(c),
		.W2 = job->snow.W2,
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
	snow_extra_prepare(c);
	for (int i = 0; i < c->snow.cases && i < SNOW_CASE_MAX; i++)
		s->snow[s->cases++] = c->snow.snow[i];
	if (job_given(c->job, FIELD_SITE_ROOF_SNOW_MINIMUM) && c->snow.cases > 0 &&
	    c->snow.snow[0].roof <= roof.floor)
		REMARK(c->r, SNOW_MINIMUM, roof.floor);
	if (roof.Ct > 0)
		REMARK_T(c->r, CT_ENTERED, (roof.Ct), c->job->snow.Ct_source);
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
	const struct collector_limit_row *limit = collector_limit_row("solar-thermal");
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
	if (!limit || !at_most(d->collector_filled / area, unit_to_si(limit->limit_psf, UNIT_PSF)))
		REMARK(c->r, HEAVY, d->collector_filled / area);
}

static void roof_live(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	const struct job_collector *k = &c->job->collector;

	const double At = f->span * f->spacing;
	struct trace *t = &c->r->trace[SECTION_SNOW];

	c->r->Lr = c->job->live.rule == LIVE_IRC_TABLE ? gravity_roof_live_irc(At, c->theta, t)
	                                               : gravity_roof_live(At, c->theta, t);
	if (at_most(k->clearance, limit_of(LIMIT_ROOM_TO_STAND)))
		REMARK(c->r, LIVE_LEFT_OUT, k->clearance, limit_of(LIMIT_ROOM_TO_STAND));
	else
		REMARK(c->r, LIVE_KEPT, k->clearance, limit_of(LIMIT_ROOM_TO_STAND));
	if (k->rows > 1 && !at_most(k->row_gap, limit_of(LIMIT_ROOM_TO_STAND)))
		REMARK(c->r, WALK_GAP, k->row_gap);
}

/* Those with earthquake apart, so that only what is rated for it meets them. */
static int take(const struct context *c, enum combination_method method, bool earthquake,
                struct load_combination out[COMBINATION_MAX])
{
	struct load_combination all[COMBINATION_MAX];
	const int n = c->code->combinations(c->code->edition, method, true, all);
	int kept = 0;

	for (int i = 0; i < n; i++)
		if ((all[i].use == COMBINATION_SEISMIC) == earthquake)
			out[kept++] = all[i];
	return kept;
}

static void combinations(struct context *c)
{
	c->lrfd = c->job->site.method == METHOD_LRFD;
	const enum combination_method method = c->lrfd ? COMBINATION_LRFD : COMBINATION_ASD;

	c->combinations = take(c, method, false, c->combination);
	c->quake.combinations = take(c, method, true, c->quake.combination);
	c->asds = take(c, COMBINATION_ASD, false, c->asd);
	c->quake.asds = take(c, COMBINATION_ASD, true, c->quake.asd);
	if (c->lrfd)
		REMARK(c->r, LRFD, 0);
}

bool check_loads(struct context *c)
{
	dead(c);
	roof_live(c);
	if (!velocity(c))
		return false;
	flush(c);
	if (!snow(c) || !zones(c) || !array_coefficients_known(c))
		return false;
	combinations(c);
	quake_prepare(c);
	return c->combinations > 0 && c->asds > 0;
}
