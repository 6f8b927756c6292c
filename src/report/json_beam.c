/* SPDX-License-Identifier: MIT */
/* The governing rafter and the governing rail as beams: all that a second program needs. */
#include "report/json_part.h"

#include <math.h>

static void add_peak(struct json *j, json_t *parent, const char *key, const struct beam_peak *p,
		     enum unit us)
{
	json_t *object = put_object(j, parent, key);

	put_quantity(j, object, "value", p->value, us);
	put_quantity(j, object, "x", p->x, UNIT_FT);
}

static void add_loads(struct json *j, json_t *object, const struct shown_beam *b)
{
	json_t *supports = put_array(j, object, "supports");

	for (int i = 0; i < b->supports && !j->failed; i++) {
		json_t *support = append_object(j, supports);

		put_quantity(j, support, "x", b->support[i].x, UNIT_FT);
		put_quantity(j, support, "reaction", b->support[i].reaction, UNIT_LB);
		put_quantity(j, support, "moment", b->support[i].moment, UNIT_LB_FT);
	}
	json_t *loads = put_array(j, object, "loads");

	for (int i = 0; i < b->stretches && !j->failed; i++) {
		json_t *load = append_object(j, loads);

		put_quantity(j, load, "x0", b->stretch[i].x0, UNIT_FT);
		put_quantity(j, load, "x1", b->stretch[i].x1, UNIT_FT);
		put_quantity(j, load, "w", b->stretch[i].w, UNIT_PLF);
	}
	json_t *forces = put_array(j, object, "forces");

	for (int i = 0; i < b->points && !j->failed; i++) {
		json_t *force = append_object(j, forces);

		put_quantity(j, force, "x", b->point[i].x, UNIT_FT);
		put_quantity(j, force, "P", b->point[i].P, UNIT_LB);
		put_quantity(j, force, "moment", b->point[i].moment, UNIT_LB_FT);
	}
}

static void add_beam(struct json *j, json_t *beams, const struct shown_beam *b, const char *is)
{
	if (!b->known)
		return;
	json_t *object = append_object(j, beams);

	put_text(j, object, "is", is);
	put_int(j, object, "number", b->number);
	put_text(j, object, "combination", b->combination);
	put_text(j, object, "snow", b->snow);
	put_text(j, object, "sideways", b->sideways);
	put_bool(j, object, "whole", !b->cut);
	put_quantity(j, object, "start", b->start, UNIT_FT);
	put_quantity(j, object, "end", b->end, UNIT_FT);
	add_loads(j, object, b);
	add_peak(j, object, "sagging", &b->sagging, UNIT_LB_FT);
	add_peak(j, object, "hogging", &b->hogging, UNIT_LB_FT);
	add_peak(j, object, "shear", &b->shear, UNIT_LB);
	put_quantity(j, object, "inner_moment", b->inner, UNIT_LB_FT);
	put_quantity(j, object, "along_slope", b->across > 0 ? b->across : (double)NAN, UNIT_PLF);
	put_number(j, object, "EI_N_m2", b->EI > 0 ? b->EI : (double)NAN);
	if (b->EI > 0)
		add_peak(j, object, "deflection", &b->bow, UNIT_IN);
}

void put_beams(struct json *j, json_t *root, const struct result *r)
{
	json_t *beams = put_array(j, root, "beams");

	if (r->passes == 0)
		return;
	add_beam(j, beams, &r->rail_beam, "rail");
	add_beam(j, beams, &r->rafter_beam, "rafter");
}
