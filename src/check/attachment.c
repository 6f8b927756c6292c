/* SPDX-License-Identifier: MIT */
/* One attachment under every combination of the code.

   The area that loads it is its reaction on the continuous rail, never less than its plain tributary area; the effective
   wind area that picks the coefficient is the tributary area (ASCE/SEI 7-16 26.2). Pull and side load of the same
   combination are held together against the screws. */
#include "check/attachment.h"

#include <math.h>
#include <string.h>

#include "check/check_steps.h"
#include "check/block.h"
#include "check/fastener.h"
#include "check/load_case.h"
#include "check/place.h"
#include "check/levered.h"
#include "check/rail_pattern.h"
#include "check/wind_rule.h"

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
	.formula = "(fW p - fD d cos theta) A", .clause = { [ASCE7_10] = "ASCE/SEI 7-10 2.3.2, 2.4.1, statics", [ASCE7_16] = "ASCE/SEI 7-16 2.3.1, 2.4.1, statics",
	            [ASCE7_22] = "ASCE/SEI 7-22 2.3.1, 2.4.1, statics" }, .confidence = DERIVED,
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
	.formula = "(fD d cos theta + fS S cos^2 theta + fW p) A", .clause = { [ASCE7_10] = "ASCE/SEI 7-10 2.3.2, 2.4.1, statics", [ASCE7_16] = "ASCE/SEI 7-16 2.3.1, 2.4.1, statics",
	            [ASCE7_22] = "ASCE/SEI 7-22 2.3.1, 2.4.1, statics" },
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
	.formula = "(fD d sin theta + fS S sin theta cos theta) A", .clause = { [ASCE7_10] = "ASCE/SEI 7-10 2.3.2, 2.4.1, statics", [ASCE7_16] = "ASCE/SEI 7-16 2.3.1, 2.4.1, statics",
	            [ASCE7_22] = "ASCE/SEI 7-22 2.3.1, 2.4.1, statics" },
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

/* An engineer's value of framing that is not rated here; NAN where sawn rafters are. */
static double framing_value(const struct context *c, double value)
{
	return c->job->framing.kind != FRAMING_RAFTER && value > 0 ? value : (double)NAN;
}

/* One load case: how it acts, and what it is held against. */
struct load_case {
	const struct load_combination *k;
	unsigned holds; /* of enum held */
	bool records;
	int snow;       /* -1: none; c->snow.cases: ice */
	double area;
};

static struct force force_of(const struct context *c, const struct load_case *l)
{
	return (struct force){ .combination = l->k->text, .CD = case_duration(c, l->k) };
}

/* One combination on one foot: the foot's tested values, then the screws. `up` is negative where it presses; a force up the
   slope works on a screw as one down the slope does. */
static void hold(struct context *c, struct attachment *a, const struct load_case *l, const struct force *f, double up,
                 struct trace *trace)
{
	const struct job_mount *m = &c->job->mount;
	const double slope = fabs(f->slope);

	if (l->holds & HOLD_HARDWARE) {
		check_keep(a->check, CHECK_FOOT_UPLIFT, up, m->allowable_uplift, f->combination);
		check_keep(a->check, CHECK_FOOT_DOWN, -up, m->allowable_down, f->combination);
		check_keep(a->check, CHECK_FOOT_SLOPE, slope, m->allowable_slope, f->combination);
		check_keep(a->check, CHECK_FRAMING_UPLIFT, up, framing_value(c, c->job->framing.allowable_uplift),
		           f->combination);
		check_keep(a->check, CHECK_FRAMING_DOWN, -up, framing_value(c, c->job->framing.allowable_down),
		           f->combination);
	}
	if (place_on_block(c->r, a->rafter)) {
		if (!block_foot_check(c, trace, a, f, up, slope, l->holds, a->check))
			c->couple_unknown = true;
		return;
	}
	if ((l->holds & HOLD_SCREWS) && !fastener_check(c, trace, f, up, slope, a->check))
		c->couple_unknown = c->couple_unknown || c->fastener_rated;
}

static void lift(struct context *c, struct attachment *a, const struct load_case *l, struct trace *trace)
{
	struct force f = force_of(c, l);

	if (!array_load_up(c, l->k, a->p_up, l->area, trace, &f.normal, &f.slope))
		return;
	f.normal -= f.slope * a->tip;
	f.slope += rack_slide(a, l->k->W, l->area, trace);
	if (l->records && (f.normal > a->uplift.normal || !a->uplift.combination))
		a->uplift = f;
	if (f.normal > 0)
		hold(c, a, l, &f, f.normal, trace);
}

static void keep_down(struct attachment *a, const struct load_case *l, const struct force *f)
{
	if (l->records && f->normal > a->down.normal)
		a->down = *f;
	if (l->records && f->slope > a->slope.slope)
		a->slope = *f;
}

static void press(struct context *c, struct attachment *a, const struct load_case *l, struct trace *trace)
{
	struct force f = force_of(c, l);
	const double snow = l->snow < 0 ? 0 : foot_snow(c, a, l->snow, trace);
	struct load_combination k = *l->k;
	/* who steps on the array is its only live load */
	const double P = k.Lr * rail_worker(c) * (a->worker_down > 1 ? a->worker_down : 1);

	if (P > 0)
		k.Lr = 0;
	if (l->snow == c->snow.cases)
		k.W = 0; /* ice goes with dead load only */
	if (!array_load_down(c, &k, a->p_down, snow, l->area, trace, &f.normal, &f.slope))
		return;
	f.normal += P * c->cos_theta + f.slope * a->tip;
	f.slope += P * c->sin_theta + held_force(c, a, l->snow, l->k->S, trace) +
	           rack_slide(a, l->k->W, l->area, trace);
	keep_down(a, l, &f);
	hold(c, a, l, &f, -f.normal, trace);
}

/* What presses the rail elsewhere may pull on this foot. */
static void lever(struct context *c, struct attachment *a, const struct load_case *l, struct trace *trace)
{
	struct force f = force_of(c, l);

	if (l->snow >= c->snow.cases || !levered_force(c, a, l->k, l->snow, trace, &f))
		return;
	if (l->records && (-f.normal > a->uplift.normal || !a->uplift.combination)) {
		a->uplift = f;
		a->uplift.normal = -f.normal;
	}
	hold(c, a, l, &f, -f.normal, trace);
}

/* Toward the eave, then toward the ridge. */
static void shake(struct context *c, struct attachment *a, const struct load_case *l, struct trace *trace)
{
	const double snow = l->snow < 0 ? 0 : foot_snow(c, a, l->snow, trace);

	for (int sign = 1; sign >= -1; sign -= 2) {
		struct force f = force_of(c, l);

		if (!array_load_quake(c, l->k, sign, snow, l->area, trace, &f.normal, &f.slope))
			return;
		f.normal += f.slope * a->tip;
		if (sign > 0)
			f.slope += held_force(c, a, l->snow, l->k->S, trace);
		keep_down(a, l, &f);
		if (l->records && -f.normal > a->uplift.normal) {
			a->uplift = f;
			a->uplift.normal = -f.normal;
		}
		hold(c, a, l, &f, -f.normal, trace);
	}
}

static void one_case(struct context *c, struct attachment *a, const struct load_case *l, struct trace *trace)
{
	if (l->k->use == COMBINATION_SEISMIC) {
		shake(c, a, l, trace);
		return;
	}
	if (l->snow < 0)
		lift(c, a, l, trace);
	press(c, a, l, trace);
	lever(c, a, l, trace);
}

static double loaded_area(const struct attachment *a)
{
	return fmax(a->reaction_width, a->tributary_width) * a->tributary_depth;
}

/* Snow cases of a combination: with snow all of them, and ice where the foot has it and nothing but dead load goes with
   it. */
static int last_snow(const struct context *c, const struct attachment *a, const struct load_combination *k)
{
	if (k->S <= 0)
		return 0;
	/* where snow leads: alone with dead load in ASD, with its full factor in LRFD (which has no CD) */
	const bool leads = isnan(k->CD) ? k->S >= 1 : k->W <= 0;

	return c->snow.cases + (leads && k->use != COMBINATION_SEISMIC && ice_on(c, a) > 0 ? 1 : 0);
}

/* Runs every case; with a target, records the one whose check comes out the same, and stops there. */
static void every_case(struct context *c, struct attachment *a, const struct check_value *target, struct trace *trace)
{
	struct case_list list[CASE_LIST_MAX];
	const int lists = case_lists(c, list);
	const enum check_id governs = a->governs;

	for (int j = 0; j < lists; j++)
		for (int i = 0; i < list[j].count; i++) {
			struct load_case l = { &list[j].k[i], list[j].holds, list[j].records, -1, loaded_area(a) };
			const int end = last_snow(c, a, l.k);

			/* who looks for one case alone need not look at those of another name */
			if (target && l.k->text != target->combination)
				continue;
			for (l.snow = l.k->S > 0 ? 0 : -1; l.snow < end; l.snow++) {
				if (target)
					memset(a->check, 0, sizeof a->check);
				one_case(c, a, &l, NULL);
				if (!target || !check_same(&a->check[governs], target))
					continue;
				one_case(c, a, &l, trace);
				return;
			}
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
	rack_share(c, &c->line[a->line], &p, a, trace);
}

void attachment_hold(struct context *c, struct attachment *a)
{
	every_case(c, a, NULL, NULL);
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
	again.governs = a->governs;
	every_case(c, &again, target, fastener);
}

bool check_same(const struct check_value *a, const struct check_value *b)
{
	return a->rated && b->rated && a->combination == b->combination && !(a->demand < b->demand) &&
	       !(a->demand > b->demand);
}
