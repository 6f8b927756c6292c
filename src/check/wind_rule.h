/* SPDX-License-Identifier: MIT */
/* Which wind rule loads the collectors, on which plane of which roof, over which ground. Internal to src/check. */
#ifndef RP_CHECK_WIND_RULE_H
#define RP_CHECK_WIND_RULE_H

#include "check/attachment.h"

/* topography.c: Kzt of the job, computed where it describes a hill. */
double check_Kzt(struct context *c);
/* Why a described hill does not count (26.8.1); NULL: it does. */
const char *hill_dismissed(const struct job *job);

/* plane.c: the plane that carries the array. Lengths on plan, m. */
enum wind_roof plane_roof(const struct context *c);
double plane_run(const struct context *c);    /* wall to ridge, or wall to wall on a single slope */
double plane_beyond(const struct context *c); /* from its upper edge to the far roof edge; 0: the upper edge is one */
double plane_upper(const struct context *c);  /* length of its upper edge; 0: a triangle */
/* Wall to ridge or hip above a spot of the eave. */
double plane_run_at(const struct context *c, double x);
/* From a rectangle to the nearer hip, square to it on the plane; INFINITY without hips. */
double plane_to_hip(const struct context *c, const struct rectangle *part);
/* Zones of the roof into the result; false where the form has none. */
bool plane_zones(struct context *c, double a);
/* Says where the array or its feet stand outside the walls. */
void plane_remarks(struct context *c, const struct pass *pass);

/* wind_rule.c: 29.4.4, 29.4.3 or 29.4.1, and what they share. */
void wind_rule_choose(struct context *c);
/* The zones that load the array: those of the roof, or of the chart for tilted collectors. */
const struct zone_shape *array_zones(const struct context *c, int *count);
/* Pressure square to a tilted collector, both ways. */
struct array_pressure tilted_pressure_zone(struct context *c, enum zone zone, double A, bool exposed, struct trace *trace);

/* What loads the array away from the roof in a zone: a coefficient of the roof, or of the chart with a minus sign. Not
   known where neither is used. And the name under which the job enters it. */
struct wind_coefficient array_coefficient(struct context *c, enum zone zone, double A);
const char *array_zone_name(const struct context *c, enum zone zone);

/* rack.c: from the wind on a tilted collector to the feet of its legs, by statics. Fills p_up, p_down, p_shear and tip of
   an attachment of this line; for a flush array just the pressures. */
void rack_share(const struct context *c, const struct line *line, const struct array_pressure *p, struct attachment *a,
                struct trace *trace);
/* What the wind along the roof puts on a foot with this factor and area, N; 0 under a flush array. */
double rack_slide(const struct attachment *a, double factor, double area, struct trace *trace);

#endif
