/* SPDX-License-Identifier: MIT */
/* Wind on roof overhangs (ASCE/SEI 7-10 30.10, 7-16 30.9, 7-22 30.7). It loads the tails of the
   rafters; collectors over an overhang feel their own pressure alone, for the soffit is not theirs.
 */
#include "check/overhang.h"

#include <math.h>
#include <string.h>

#include "check/wind_rule.h"
#include "load/asce7_overhang.h"

const char *overhang_zone_name(enum zone zone)
{
	static const char *const name[] = {
#define Z(id, text) "oh" text,
		ZONES(Z)
#undef Z
	};

	return zone < ZONE_COUNT ? name[zone] : "oh?";
}

static const struct job_coefficient *entered(const struct context *c, enum zone zone, double A)
{
	const struct job_coefficient *best = NULL;

	for (int i = 0; i < c->job->coefficients; i++) {
		const struct job_coefficient *e = &c->job->coefficient[i];

		if (strcmp(e->zone, overhang_zone_name(zone)) == 0 && at_most(e->area, A) &&
		    (!best || e->area > best->area))
			best = e;
	}
	return best;
}

struct wind_coefficient overhang_coefficient(struct context *c, enum zone zone, double A,
					     struct trace *trace)
{
	const struct wind_place place = {plane_roof(c), c->theta, zone_text(zone), WIND_UP, A};
	const struct job_coefficient *e = entered(c, zone, A);

	if (e) {
		REMARK_T(c->r, COEFFICIENT_ENTERED, (e->GCp), e->zone, e->source);
		return (struct wind_coefficient){true, e->GCp, USER_ENTERED, e->source, false};
	}
	const struct wind_coefficient roof = check_coefficient(c, zone, WIND_UP, A, trace);
	const struct wind_coefficient k =
		asce7_overhang_coefficient(c->code->edition, &place, &roof, c->curve, trace);

	c->curve_matters = c->curve_matters || (k.known && k.bounded);
	return k;
}

static void tell_zone(struct context *c, enum zone zone, double A, bool look_up)
{
	c->curve = CURVE_RECALLED;
	const struct wind_coefficient recalled = overhang_coefficient(c, zone, A, NULL);

	c->curve = CURVE_SAFE_SIDE;
	const struct wind_coefficient safe = overhang_coefficient(c, zone, A, NULL);

	if (!recalled.known || !safe.known)
		return;
	if (recalled.confidence == ONE_SOURCE && !(fabs(recalled.GCp - safe.GCp) > 0))
		REMARK_T(c->r, COEFFICIENT_ONE_SOURCE, (A, recalled.GCp), overhang_zone_name(zone),
			 recalled.figure);
	else if (!recalled.bounded)
		return;
	else if (look_up)
		REMARK_T(c->r, COEFFICIENT, (A, recalled.GCp, safe.GCp), overhang_zone_name(zone),
			 recalled.figure);
	else
		REMARK_T(c->r, COEFFICIENT_USED, (A, recalled.GCp, safe.GCp),
			 overhang_zone_name(zone), confidence_text(recalled.confidence),
			 recalled.figure);
}

void overhang_tell(struct context *c, const struct pass *pass, bool look_up)
{
	const double length = c->job->building.eave_overhang / c->cos_theta;
	bool told[ZONE_COUNT] = {false};

	for (int i = 0; i < pass->rafters; i++) {
		struct rafter_place p;
		double area[ZONE_COUNT];

		if (!pass->rafter[i].tail)
			continue;
		rafter_places(c, pass, pass->rafter[i].rafter, &p, 1);
		const double x = c->r->frame_x[p.rafter], A = length * fmax(p.width, length / 3);
		const bool high = c->r->array.y1 > c->r->plane_slope - length;
		const double y = high ? c->r->plane_slope - length : 0;
		const struct polygon strip =
			polygon_rectangle(x - p.width / 2, y, x + p.width / 2, y + length);

		zone_areas(c->r->shape, c->r->shapes, &strip, area);
		for (int z = 0; z < (int)ZONE_COUNT; z++)
			if (area[z] > 0 && !told[z]) {
				told[z] = true;
				tell_zone(c, (enum zone)z, A, look_up);
			}
	}
}
