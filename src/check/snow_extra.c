/* SPDX-License-Identifier: MIT */
/* Snow beyond the even layer: drift at the array, snow held above it on a slippery roof, partial
   loading of rails, ice on the overhang, snow that slides onto a lower roof. */
#include "check/load_case.h"

#include <math.h>

#include "check/attachment.h"
#include "check/check_steps.h"
#include "load/asce7_drift.h"
#include "table/lookup_limit.h"
#include "table/lookup_snow.h"

static const char *const projection[] = {[ASCE7_10] = "ASCE/SEI 7-10 7.8",
					  [ASCE7_16] = "ASCE/SEI 7-16 7.8",
					  [ASCE7_22] = "ASCE/SEI 7-22 7.8"};
static const char *const commentary[] = {[ASCE7_10] = "ASCE/SEI 7-10 C7.8",
					  [ASCE7_16] = "ASCE/SEI 7-16 C7.8",
					  [ASCE7_22] = "ASCE/SEI 7-22 C7.8"};

static bool slippery(const struct context *c)
{
	return c->covering && c->covering->slippery == COVERING_SLIPPERY_YES;
}

/* Or may be, as with a smooth cap sheet or one with granules: for snow that slides against something
   that counts as slippery (safe side), for snow that slides off it does not. */
static bool may_slide(const struct context *c)
{
	return slippery(c) || (c->covering && c->covering->slippery == COVERING_SLIPPERY_UNKNOWN);
}

/* By the book, as the user worked it out. */
static bool drift_entered(const struct context *c, struct snow_drift *d)
{
	const struct job_snow *s = &c->job->snow;

	if (!isfinite(s->drift_load) || !isfinite(s->drift_width))
		return false;
	d->pd = s->drift_load;
	d->w = s->drift_width;
	d->none = d->pd > 0 && d->w > 0 ? DRIFT_FORMS : DRIFT_LOW;
	REMARK_T(c->r, DRIFT_ENTERED, (d->pd, d->w), s->drift_source);
	return true;
}

/* The array as a roof projection: the formula decides whether snow drifts against it. */
static void drift(struct context *c, struct trace *t)
{
	const struct job *job = c->job;
	const struct job_building *b = &job->building;
	const struct rectangle *a = &c->r->array;
	const struct snow_projection p = {
		.pg = job->site.ground_snow,
		.ps = c->snow.snow[0].roof,
		.gamma = c->snow.gamma,
		.Is = c->snow.Is,
		.W2 = job->snow.W2,
		.lu = isfinite(job->snow.upwind_length) ? job->snow.upwind_length
							: fmax(b->length, b->width),
		.side = fmax(a->x1 - a->x0, (a->y1 - a->y0) * c->cos_theta),
		.top = c->r->wind.h2 / c->cos_theta, /* of a rack: its high edge */
		.clear = job->collector.clearance / c->cos_theta,
	};
	struct snow_drift d = {.none = DRIFT_FORMS};
	const bool entered = drift_entered(c, &d);

	if (!entered)
		d = asce7_projection_drift(c->code->edition, &p, t);
	if (d.none != DRIFT_FORMS) {
		if (!entered)
			REMARK_T(c->r, NO_DRIFT, (0), drift_none_text(d.none));
		return;
	}
	if (c->snow.cases == SNOW_LOAD_MAX)
		return;
	struct snow_load_case k = c->snow.snow[0];

	k.name = "balanced, drift at the array";
	k.beside = d.pd;
	k.beside_length = d.w;
	k.clause = projection[c->code->edition];
	c->snow.snow[c->snow.cases++] = k;
	if (!entered)
		REMARK(c->r, DRIFT, d.pd, d.w);
}

/* Tilted rows drop their snow on the roof at their foot; the collectors are then bare. */
static void slide_off(struct context *c, struct trace *t)
{
	const struct rectangle *first = &c->r->collector[0];

	if (!c->rack || c->r->collectors == 0 || c->snow.cases == SNOW_LOAD_MAX)
		return;
	struct snow_load_case k = c->snow.snow[0];

	k.name = "balanced, slid off the collectors";
	k.strip = asce7_slide_off(k.array, (first->y1 - first->y0) * c->cos_theta, t);
	k.strip_width = limit_of(LIMIT_SLIDE_OFF);
	k.array = 0;
	k.clause = commentary[c->code->edition];
	c->snow.snow[c->snow.cases++] = k;
	REMARK(c->r, SLIDE_OFF, k.strip, k.strip_width);
}

static void slide(struct context *c, struct trace *t)
{
	const struct job_snow *s = &c->job->snow;

	if (s->lower_roof != ANSWER_YES || !isfinite(s->lower_roof_width))
		return;
	/* the part that drains over the glass is slippery whatever the covering (safe side) */
	const struct snow_slide k = asce7_slide(c->snow.pf, c->r->plane_slope * c->cos_theta,
						c->theta, true, s->lower_roof_width, t);

	if (k.slides)
		REMARK(c->r, SLIDE_LOWER, k.pressure, k.over, k.line);
}

/* Push of the snow above the array on each metre of its upper edge, drift included. */
static double held_push(const struct context *c, int i, struct trace *trace)
{
	const struct snow_load_case *s = &c->snow.snow[i];
	const double reach = fmin(s->surcharge_length, c->held_length);
	double ph = snow_held(s->roof, c->held_length, c->theta, trace);

	if (s->surcharge > 0 && reach > 0)
		ph += snow_held(s->surcharge, reach, c->theta, trace);
	return ph;
}

static void held(struct context *c)
{
	const bool guarded = c->job->snow.guards == ANSWER_YES;
	double ph = 0;

	c->held_length = 0;
	if (!may_slide(c)) {
		REMARK(c->r, SNOW_FRICTION, 0);
		return;
	}
	if (guarded) {
		REMARK(c->r, SNOW_GUARDED, 0);
		return;
	}
	c->held_length = fmax(0, c->r->plane_slope - c->r->array.y1) * c->cos_theta;
	for (int i = 0; i < c->snow.cases; i++)
		ph = fmax(ph, held_push(c, i, NULL));
	REMARK_T(c->r, SNOW_HELD, (ph),
		 slippery(c) ? "is slippery" : "may be slippery (its surface is not known: taken so, safe side)");
}

static void ice(struct context *c, struct trace *t)
{
	const enum thermal k = c->job->site.thermal;
	const bool ventilated = k == THERMAL_COLD_VENTILATED;
	const bool warm = k == THERMAL_HEATED || ventilated;
	/* a vented attic counts as insulated by its own definition unless an R is given */
	const double R = ventilated && isnan(c->job->site.roof_R) ? 25 : c->job->site.roof_R;

	const bool forms = c->job->building.eave_overhang > 0 && asce7_ice_dam_forms(warm, ventilated, R);

	c->ice = forms ? asce7_ice_dam(c->snow.pf, t) : 0;
}

static void local_rule(struct context *c)
{
	const struct job_snow *s = &c->job->snow;

	if (s->local_rule[0] != '\0')
		REMARK_T(c->r, LOCAL_SNOW, (c->snow.snow[c->snow.cases - 1].roof), s->local_rule);
}

/* A listed place of Alaska that gave pg, or beside which the given pg is low. */
static void listed_place(struct context *c)
{
	const struct job *job = c->job;
	const struct snow_ground_alaska_row *row = snow_ground_alaska_row(job->site.snow_place);

	if (!row)
		return;
	const double pg = unit_to_si(row->pg_psf, UNIT_PSF);

	if (job->site.snow_from_place)
		REMARK_T(c->r, SNOW_PLACE, (pg), row->place);
	else if (job->site.ground_snow_level == SNOW_SERVICE && !at_least(job->site.ground_snow, pg))
		REMARK_T(c->r, SNOW_PLACE_LESS, (job->site.ground_snow, pg), row->place);
}

void snow_extra_prepare(struct context *c)
{
	struct trace *t = &c->r->trace[SECTION_SNOW];

	listed_place(c);
	if (!(c->job->site.ground_snow > 0) || c->snow.cases == 0)
		return;
	local_rule(c);
	drift(c, t);
	slide_off(c, t);
	slide(c, t);
	held(c);
	ice(c, t);
}

/* in: ph b fS */
static double push(const double *in)
{
	return in[2] * in[0] * in[1];
}

const struct step step_attachment_held = {
	.name = "attachment-held",
	.symbol = "Vh",
	.unit = UNIT_LB,
	.title = "down-slope force of held snow on a foot of the topmost line, added to its own",
	.formula = "fS ph b",
	.clause = {"statics"},
	.confidence = DERIVED,
	.in = {{"ph", UNIT_PLF, "down-slope force per length of the array's upper edge"},
	       {"b", UNIT_FT, "width that the foot holds"},
	       {"fS", UNIT_NONE, "factor of snow"}},
	.value = push,
};

double held_force(const struct context *c, const struct attachment *a, int i, double factor,
		  struct trace *trace)
{
	if (c->held_length <= 0 || i < 0 || i >= c->snow.cases ||
	    !at_least(a->tributary.y1, c->r->array.y1))
		return 0;
	return STEP(trace, step_attachment_held, held_push(c, i, trace),
		    fmax(a->reaction_width, a->tributary_width), factor);
}

double ice_on(const struct context *c, const struct attachment *a)
{
	return a->y * c->cos_theta < c->job->building.eave_overhang ? c->ice : 0;
}

double foot_snow(const struct context *c, const struct attachment *a, int i, struct trace *trace)
{
	if (i == c->snow.cases)
		return c->ice;
	const double even = fmax(a->reaction_width, a->tributary_width);
	const double snow = array_snow(c, i, a->tributary.y1);

	/* balanced snow alone (7.5) */
	if (i > 0 || !(a->snow_width > even))
		return snow;
	return snow * snow_partial_share(a->snow_width, even, trace);
}
