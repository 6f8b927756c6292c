/* SPDX-License-Identifier: MIT */
/* One attachment under every ASD combination of the code.

   The area that loads it is its reaction on the continuous rail, never less than its plain tributary area; the effective
   wind area that picks the coefficient is the tributary area (ASCE/SEI 7-16 26.2). Pull and side load of the same
   combination are held together against the screws. */
#include "check/attachment.h"

#include <math.h>
#include <string.h>

#include "check/check_steps.h"
#include "check/fastener.h"

double array_snow(const struct context *c, int i, double y_high)
{
	const struct snow_load_case *s = &c->snow.snow[i];
	const double from_ridge = (c->r->plane_slope - y_high) * c->cos_theta;

	return s->array + (from_ridge < s->surcharge_length ? s->surcharge : 0);
}

/* in: b l */
static double tributary_area(const double *in)
{
	return in[0] * in[1];
}

const struct step step_tributary_area = {
	.name = "tributary-area", .symbol = "A", .unit = UNIT_FT2,
	.title = "effective wind area of an attachment: its tributary area", .formula = "b l",
	.clause = { [ASCE7_10] = "ASCE/SEI 7-10 26.2", [ASCE7_16] = "ASCE/SEI 7-16 26.2", [ASCE7_22] = "ASCE/SEI 7-22 26.2" },
	.confidence = FROM_MEMORY,
	.in = { { "b", UNIT_FT, "half the way to the feet on either side" },
	        { "l", UNIT_FT, "length of collector, up the slope, that the line of feet carries" } },
	.value = tributary_area,
};

/* in: fW p fD d theta A */
static double uplift(const double *in)
{
	return (in[0] * in[1] - in[2] * in[3] * cos(in[4] * RAD_PER_DEG)) * in[5];
}

const struct step step_attachment_uplift = {
	.name = "attachment-uplift", .symbol = "N", .unit = UNIT_LB, .title = "uplift on an attachment, normal to the roof",
	.formula = "(fW p - fD d cos theta) A", .clause = { "ASCE/SEI 7 2.4.1, statics" }, .confidence = DERIVED,
	.in = { { "fW", UNIT_NONE, "factor of wind in the combination" },
	        { "p", UNIT_PSF, "wind pressure away from the roof, strength level" },
	        { "fD", UNIT_NONE, "factor of dead load" },
	        { "d", UNIT_PSF, "dry weight of the array per area of slope" },
	        { "theta", UNIT_DEG, "roof angle" },
	        { "A", UNIT_FT2, "area that the attachment carries" } },
	.value = uplift,
};

/* in: fD d fS S fW p theta A */
static double down(const double *in)
{
	const double cos_theta = cos(in[6] * RAD_PER_DEG);

	return (in[0] * in[1] * cos_theta + in[2] * in[3] * cos_theta * cos_theta + in[4] * in[5]) * in[7];
}

const struct step step_attachment_down = {
	.name = "attachment-down", .symbol = "N", .unit = UNIT_LB,
	.title = "down force on an attachment, normal to the roof",
	.formula = "(fD d cos theta + fS S cos^2 theta + fW p) A", .clause = { "ASCE/SEI 7 2.4.1, statics" },
	.confidence = DERIVED,
	.in = { { "fD", UNIT_NONE, "factor of dead load in the combination" },
	        { "d", UNIT_PSF, "filled weight of the array per area of slope" },
	        { "fS", UNIT_NONE, "factor of snow" },
	        { "S", UNIT_PSF, "snow on the array per area of plan" },
	        { "fW", UNIT_NONE, "factor of wind" },
	        { "p", UNIT_PSF, "wind pressure toward the roof, strength level" },
	        { "theta", UNIT_DEG, "roof angle" },
	        { "A", UNIT_FT2, "area that the attachment carries" } },
	.value = down,
};

/* in: fD d fS S theta A */
static double slope_force(const double *in)
{
	const double theta = in[4] * RAD_PER_DEG;

	return (in[0] * in[1] * sin(theta) + in[2] * in[3] * sin(theta) * cos(theta)) * in[5];
}

const struct step step_attachment_slope = {
	.name = "attachment-slope", .symbol = "V", .unit = UNIT_LB, .title = "down-slope force on an attachment",
	.formula = "(fD d sin theta + fS S sin theta cos theta) A", .clause = { "ASCE/SEI 7 2.4.1, statics" },
	.confidence = DERIVED,
	.in = { { "fD", UNIT_NONE, "factor of dead load in the combination" },
	        { "d", UNIT_PSF, "weight of the array per area of slope" },
	        { "fS", UNIT_NONE, "factor of snow" },
	        { "S", UNIT_PSF, "snow on the array per area of plan" },
	        { "theta", UNIT_DEG, "roof angle" },
	        { "A", UNIT_FT2, "area that the attachment carries" } },
	.value = slope_force,
};

bool array_load_up(const struct context *c, const struct load_combination *k, double p_up, double area,
                   struct trace *trace, double *up, double *slope)
{
	const double d = c->r->dead.array_dry;

	if (k->W <= 0 || k->S > 0 || k->Lr > 0)
		return false;
	*up = STEP(trace, step_attachment_uplift, k->W, p_up, k->D, d, c->theta, area);
	*slope = STEP(trace, step_attachment_slope, k->D, d, 0, 0, c->theta, area);
	return true;
}

bool array_load_down(const struct context *c, const struct load_combination *k, double p_down, double snow,
                     double area, struct trace *trace, double *normal, double *slope)
{
	const double d = c->r->dead.array_filled;

	if (k->Lr > 0) /* nobody stands on the array itself */
		return false;
	*normal = STEP(trace, step_attachment_down, k->D, d, k->S, snow, k->W, p_down, c->theta, area);
	*slope = STEP(trace, step_attachment_slope, k->D, d, k->S, snow, c->theta, area);
	return true;
}

void check_keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand, double capacity,
                const char *combination)
{
	const double ratio = demand / capacity;

	if (!isfinite(capacity) || demand <= 0)
		return;
	if (!check[id].rated || ratio > check[id].ratio)
		check[id] = (struct check_value){ true, demand, capacity, ratio, combination, 1 };
}

/* One combination on one foot: the foot's tested values, then the screws. `up` is negative where it presses. */
static void hold(struct context *c, struct attachment *a, const struct force *f, double up, struct trace *trace)
{
	const struct job_mount *m = &c->job->mount;

	check_keep(a->check, CHECK_FOOT_UPLIFT, up, m->allowable_uplift, f->combination);
	check_keep(a->check, CHECK_FOOT_DOWN, -up, m->allowable_down, f->combination);
	check_keep(a->check, CHECK_FOOT_SLOPE, f->slope, m->allowable_slope, f->combination);
	if (!fastener_check(c, trace, f, up, f->slope, a->check))
		c->couple_unknown = c->couple_unknown || c->fastener_rated;
}

static void lift(struct context *c, struct attachment *a, const struct load_combination *k, double area,
                 struct trace *trace)
{
	struct force f = { .combination = k->text, .CD = k->CD };

	if (!array_load_up(c, k, a->p_up, area, trace, &f.normal, &f.slope))
		return;
	if (f.normal > a->uplift.normal || !a->uplift.combination)
		a->uplift = f;
	if (f.normal > 0)
		hold(c, a, &f, f.normal, trace);
}

static void press(struct context *c, struct attachment *a, const struct load_combination *k, double snow,
                  double area, struct trace *trace)
{
	struct force f = { .combination = k->text, .CD = k->CD };

	if (!array_load_down(c, k, a->p_down, snow, area, trace, &f.normal, &f.slope))
		return;
	if (f.normal > a->down.normal)
		a->down = f;
	if (f.slope > a->slope.slope)
		a->slope = f;
	hold(c, a, &f, -f.normal, trace);
}

/* One load case of one combination; snow_case is -1 where there is no snow in it. */
static void one_case(struct context *c, struct attachment *a, const struct load_combination *k, int snow_case, double area,
                     struct trace *trace)
{
	if (snow_case < 0) {
		lift(c, a, k, area, trace);
		press(c, a, k, 0, area, trace);
	} else {
		press(c, a, k, array_snow(c, snow_case, a->tributary.y1), area, trace);
	}
}

static double loaded_area(const struct attachment *a)
{
	return fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
}

static void combinations(struct context *c, struct attachment *a)
{
	for (int i = 0; i < c->combinations; i++) {
		const struct load_combination *k = &c->combination[i];

		for (int s = k->S > 0 ? 0 : -1; s < (k->S > 0 ? c->snow.cases : 0); s++)
			one_case(c, a, k, s, loaded_area(a), NULL);
	}
}

static void worst(struct attachment *a)
{
	a->ratio = 0;
	for (int i = 0; i < (int)CHECK_COUNT; i++)
		if (a->check[i].rated && a->check[i].ratio > a->ratio) {
			a->ratio = a->check[i].ratio;
			a->governs = (enum check_id)i;
		}
}

static void wind(struct context *c, struct attachment *a, struct trace *trace)
{
	a->exposed = array_exposed(c, &a->tributary, trace);
	const struct array_pressure p = array_pressure_at(c, &a->tributary, a->area, a->exposed, trace);

	c->coefficient_missing = c->coefficient_missing || !p.known;
	a->zone = p.zone;
	a->GCp_up = p.GCp_up;
	a->GCp_down = p.GCp_down;
	a->confidence = p.confidence;
	a->p_up = p.up;
	a->p_down = p.down;
}

void attachment_hold(struct context *c, struct attachment *a)
{
	combinations(c, a);
	worst(a);
}

void attachment_run(struct context *c, struct attachment *a)
{
	wind(c, a, NULL);
	attachment_hold(c, a);
}

void attachment_explain(struct context *c, const struct attachment *a, struct trace *wind_trace,
                        struct trace *fastener)
{
	const struct check_value *target = &a->check[a->governs];
	struct attachment again = *a;

	STEP(wind_trace, step_tributary_area, a->tributary_width, a->tributary_depth);
	wind(c, &again, wind_trace);
	for (int i = 0; i < c->combinations; i++) {
		const struct load_combination *k = &c->combination[i];

		for (int s = k->S > 0 ? 0 : -1; s < (k->S > 0 ? c->snow.cases : 0); s++) {
			memset(again.check, 0, sizeof again.check);
			one_case(c, &again, k, s, loaded_area(a), NULL);
			if (!check_same(&again.check[a->governs], target))
				continue;
			one_case(c, &again, k, s, loaded_area(a), fastener);
			return;
		}
	}
}

bool check_same(const struct check_value *a, const struct check_value *b)
{
	return a->rated && b->rated && a->combination == b->combination && !(a->demand < b->demand) &&
	       !(a->demand > b->demand);
}
