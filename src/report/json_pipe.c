/* SPDX-License-Identifier: MIT */
#include <math.h>

#include "check/pipe_place.h"
#include "report/json_part.h"

static void add_borders(struct json *j, json_t *parent, const struct pipe_place *p)
{
	json_t *array = put_array(j, parent, "borders");

	for (int b = 0; b < BORDER_COUNT && !j->failed; b++) {
		if (!p->given || !isfinite(p->border[b].distance))
			continue;
		json_t *object = append_object(j, array);

		put_text(j, object, "border", border_key((enum border)b));
		put_quantity(j, object, "distance", p->border[b].distance, UNIT_IN);
		put_quantity(j, object, "least", p->border[b].least, UNIT_IN);
		put_bool(j, object, "clear", !border_close(&p->border[b]));
	}
}

void put_pipe_holes(struct json *j, json_t *root, const struct job *job, const struct result *r)
{
	json_t *array = put_array(j, root, "pipe_holes");

	for (int i = 0; i < job->pipes && r->passes > 0 && !j->failed; i++) {
		const struct pipe_place p = pipe_place(job, r, i);
		json_t *object = append_object(j, array);

		put_int(j, object, "pipe", i + 1);
		put_bool(j, object, "given", p.given);
		put_bool(j, object, "clear", p.clear);
		put_text(j, object, "landing", landing_key(p.landing));
		if (p.course > 0)
			put_int(j, object, "course", p.course);
		else
			put(j, object, "course", json_null());
		put_quantity(j, object, "across", p.across, UNIT_IN);
		put_quantity(j, object, "along", p.along, UNIT_IN);
		put_bool(j, object, "on_joint", p.on_joint);
		put_bool(j, object, "near_seam", p.near_seam);
		put_bool(j, object, "butts_unknown", p.butts);
		put_bool(j, object, "joints_unknown", p.joints);
		put_quantity(j, object, "move_up", p.up, UNIT_IN);
		put_quantity(j, object, "move_down", p.down, UNIT_IN);
		put_quantity(j, object, "move_left", p.left, UNIT_IN);
		put_quantity(j, object, "move_right", p.right, UNIT_IN);
		add_borders(j, object, &p);
	}
}
