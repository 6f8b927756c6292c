/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "load/asce7_solar.h"
#include "report/json_part.h"

static void add_wind(struct json *j, json_t *loads, const struct job *job,
                     const struct wind_result *w)
{
	json_t *wind = put_object(j, loads, "wind");

	put_quantity(j, wind, "V", job->site.wind_speed, UNIT_MPH);
	put_number(j, wind, "Kz", w->Kz);
	put_number(j, wind, "Kzt", w->Kzt);
	put_number(j, wind, "Kd", w->Kd);
	put_number(j, wind, "Ke", w->Ke);
	put_quantity(j, wind, "qh", w->qh, UNIT_PSF);
	put_quantity(j, wind, "a", w->a, UNIT_IN);
	put_quantity(j, wind, "h2", w->h2, UNIT_IN);
	put_quantity(j, wind, "Lp", w->Lp, UNIT_IN);
	put_rack(j, wind, w);
	put_bool(j, wind, "flush_reduction", w->gammaa_allowed);
	json_t *failed = put_array(j, wind, "flush_conditions_not_met");

	for (int i = 0; i < FLUSH_CONDITION_COUNT && !j->failed; i++) {
		if (!(w->flush_failed & FLUSH_BIT(i)))
			continue;
		json_t *object = append_object(j, failed);

		put_text(j, object, "text", flush_condition_text((enum flush_condition)i));
		put_text(j, object, "clause", flush_condition_clause((enum flush_condition)i));
	}
}

static void add_snow(struct json *j, json_t *loads, const struct job *job,
                     const struct snow_result *s)
{
	json_t *snow = put_object(j, loads, "snow");

	put_quantity(j, snow, "pg", job->site.ground_snow, UNIT_PSF);
	put_number(j, snow, "Ce", s->Ce);
	put_number(j, snow, "Ct", s->Ct);
	put_number(j, snow, "Is", s->Is);
	put_quantity(j, snow, "pf", s->pf, UNIT_PSF);
	put_quantity(j, snow, "pm", s->pm, UNIT_PSF);
	put_number(j, snow, "Cs_roof_before", s->Cs_before);
	put_number(j, snow, "Cs_roof_after", s->Cs_roof);
	put_number(j, snow, "Cs_collectors", s->Cs_array);
	json_t *cases = put_array(j, snow, "cases");

	for (int i = 0; i < s->cases && !j->failed; i++) {
		const struct snow_load_case *c = &s->snow[i];
		json_t *object = append_object(j, cases);

		put_text(j, object, "name", c->name);
		put_quantity(j, object, "roof", c->roof, UNIT_PSF);
		put_quantity(j, object, "collectors", c->array, UNIT_PSF);
		put_quantity(j, object, "surcharge", c->surcharge, UNIT_PSF);
		put_quantity(j, object, "surcharge_length", c->surcharge_length, UNIT_IN);
		put_quantity(j, object, "beside_array", c->beside, UNIT_PSF);
		put_quantity(j, object, "beside_array_length", c->beside_length, UNIT_IN);
		put_quantity(j, object, "foot_strip", c->strip, UNIT_PSF);
		put_quantity(j, object, "foot_strip_width", c->strip_width, UNIT_IN);
		put_text(j, object, "clause", c->clause);
	}
}

static void add_quake(struct json *j, json_t *loads, const struct quake_result *q)
{
	json_t *quake = put_object(j, loads, "earthquake");

	put_bool(j, quake, "computed", q->known);
	put_number(j, quake, "SDS", q->known ? q->SDS : (double)NAN);
	put_number(j, quake, "Fp_over_Wp", q->known ? q->horizontal : (double)NAN);
	put_number(j, quake, "Ev_over_Wp", q->known ? q->vertical : (double)NAN);
}

static void add_dead(struct json *j, json_t *loads, const struct job *job,
                     const struct dead_result *d)
{
	json_t *dead = put_object(j, loads, "dead");

	put_quantity(j, dead, "array_dry", d->array_dry, UNIT_PSF);
	put_quantity(j, dead, "array_filled", d->array_filled, UNIT_PSF);
	put_quantity(j, dead, "collector_dry", d->collector_dry, UNIT_LB);
	put_quantity(j, dead, "collector_filled", d->collector_filled, UNIT_LB);
	put_quantity(j, dead, "roof", job->roof.dead_load, UNIT_PSF);
}

void put_loads(struct json *j, json_t *root, const struct job *job, const struct result *r)
{
	json_t *loads = put_object(j, root, "loads");

	add_wind(j, loads, job, &r->wind);
	add_snow(j, loads, job, &r->snow);
	add_dead(j, loads, job, &r->dead);
	add_quake(j, loads, &r->quake);
	put_quantity(j, loads, "roof_live", r->Lr, UNIT_PSF);
}

static void add_fastener(struct json *j, json_t *root, const struct fastener_result *s)
{
	json_t *fastener = put_object(j, root, "fastener");

	put_quantity(j, fastener, "above_rafter", s->t_up, UNIT_IN);
	put_quantity(j, fastener, "p_tot", s->p_tot, UNIT_IN);
	put_quantity(j, fastener, "p", s->p, UNIT_IN);
	put_quantity(j, fastener, "p_t", s->p_t, UNIT_IN);
	put_quantity(j, fastener, "l_m", s->l_m, UNIT_IN);
	put_quantity(j, fastener, "gap", s->gap, UNIT_IN);
	put_quantity(j, fastener, "W", s->W, UNIT_LB_IN);
	put_quantity(j, fastener, "Z", s->Z, UNIT_LB);
	put_text(j, fastener, "mode", s->mode);
	put_quantity(j, fastener, "lead_hole_low", s->lead_hole_low, UNIT_IN);
	put_quantity(j, fastener, "lead_hole_high", s->lead_hole_high, UNIT_IN);
	put_quantity(j, fastener, "edge_room", s->edge_room, UNIT_IN);
}

void put_parts(struct json *j, json_t *root, const struct result *r)
{
	const struct lumber_result *l = &r->lumber;

	add_fastener(j, root, &r->fastener);
	json_t *lumber = put_object(j, root, "lumber");

	put_text(j, lumber, "species", l->species);
	put_text(j, lumber, "grade", l->grade);
	put_number(j, lumber, "G", l->G);
	put_quantity(j, lumber, "Fb", l->Fb, UNIT_PSI);
	put_quantity(j, lumber, "Fv", l->Fv, UNIT_PSI);
	put_quantity(j, lumber, "E", l->E, UNIT_PSI);
	put_quantity(j, lumber, "Emin", l->Emin, UNIT_PSI);
	put_number(j, lumber, "CF", l->CF);
	put_number(j, lumber, "Cr", l->Cr);
}
