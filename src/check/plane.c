/* SPDX-License-Identifier: MIT */
/* The roof plane that carries the array. All planes of a hip roof have one pitch, so its hips run at 45 degrees on plan;
   a side is a trapezoid below the ridge, an end a triangle. */
#include "check/wind_rule.h"

#include <math.h>

#include "check/pass.h"
#include "table/lookup_limit.h"

enum wind_roof plane_roof(const struct context *c)
{
	switch (c->job->building.form) {
	case FORM_GABLE:
		return WIND_ROOF_GABLE;
	case FORM_HIP:
		return WIND_ROOF_HIP;
	case FORM_MONOSLOPE:
		return WIND_ROOF_MONOSLOPE;
	case FORM_FLAT:
	case FORM_OTHER:
	case FORM_MULTISPAN:
	case FORM_CURVED:
	case FORM_STEPPED:
		break;
	}
	return WIND_ROOF_FLAT;
}

static bool ridged(const struct context *c)
{
	return c->job->building.form == FORM_GABLE || c->job->building.form == FORM_HIP;
}

double plane_run(const struct context *c)
{
	return ridged(c) ? c->job->building.width / 2 : c->job->building.width;
}

/* Overhang included. */
static double whole_run(const struct context *c)
{
	return plane_run(c) + c->job->building.eave_overhang;
}

static bool is_end(const struct context *c)
{
	return c->job->building.form == FORM_HIP && c->job->building.plane == PLANE_END;
}

double plane_beyond(const struct context *c)
{
	const struct job_building *b = &c->job->building;

	if (!ridged(c))
		return 0;
	return is_end(c) ? b->length + 2 * b->eave_overhang - whole_run(c) : whole_run(c);
}

double plane_upper(const struct context *c)
{
	if (c->job->building.form != FORM_HIP)
		return c->r->plane_length;
	return is_end(c) ? 0 : fmax(0, c->r->plane_length - 2 * whole_run(c));
}

double plane_run_at(const struct context *c, double x)
{
	if (c->job->building.form != FORM_HIP)
		return plane_run(c);
	const double to_corner = fmin(x, c->r->plane_length - x);

	return fmin(whole_run(c), fmax(0, to_corner)) - c->job->building.eave_overhang;
}

double plane_to_hip(const struct context *c, const struct rectangle *part)
{
	const double run = whole_run(c), S = c->r->plane_slope;

	if (c->job->building.form != FORM_HIP)
		return INFINITY;
	const double left = part->x0 * S - part->y1 * run;
	const double right = (c->r->plane_length - part->x1) * S - part->y1 * run;

	return fmin(left, right) / hypot(run, S);
}

static void take(struct zone_shape *out, int *count, const struct zone_map *map)
{
	*count = map->known ? map->shapes : 0;
	for (int i = 0; i < *count; i++)
		out[i] = map->shape[i];
}

bool plane_zones(struct context *c, double a)
{
	struct result *r = c->r;
	const struct zone_plane plane = { .edition = c->code->edition,
		                          .roof = plane_roof(c),
		                          .theta = c->theta,
		                          .length = r->plane_length,
		                          .slope = r->plane_slope,
		                          .beyond = plane_beyond(c),
		                          .a = a,
		                          .h = c->job->building.mean_roof_height,
		                          .upper = plane_upper(c) };
	const struct zone_map map = zone_map_of(&plane);

	take(r->shape, &r->shapes, &map);
	const bool hips = plane.roof == WIND_ROOF_HIP && !at_most(c->theta, limit_of(LIMIT_LOW_SLOPE_FIGURE));

	if (map.known && (map.confidence == SAFE_SIDE || hips))
		REMARK_T(r, ZONE_ENVELOPE, (0), map.note);
	if (r->wind.rule == WIND_TILTED) {
		const struct zone_map tilted = zone_map_tilted(&plane);

		take(r->array_shape, &r->array_shapes, &tilted);
		return map.known && tilted.known;
	}
	return map.known;
}

void plane_remarks(struct context *c, const struct pass *pass)
{
	const struct job_building *b = &c->job->building;
	const struct rectangle *a = &c->r->array;
	const double rake = b->form == FORM_HIP ? b->eave_overhang : b->rake_overhang;
	const double far = c->r->plane_length - rake;

	if (!at_least(a->y0 * c->cos_theta, b->eave_overhang))
		REMARK_T(c->r, OVERHANG_ARRAY, (b->eave_overhang - a->y0 * c->cos_theta),
		         c->code->edition == ASCE7_10   ? "30.10"
		         : c->code->edition == ASCE7_16 ? "30.9"
		                                        : "30.7");
	for (int i = 0; i < pass->attachments && b->form != FORM_HIP; i++)
		if (!at_least(pass->attachment[i].x, rake) || !at_most(pass->attachment[i].x, far))
			REMARK(c->r, RAKE_FOOT, pass->attachment[i].number);
	if (b->form == FORM_HIP)
		REMARK(c->r, UNCHECKED_HIP, 0);
}
