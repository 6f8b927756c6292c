/* SPDX-License-Identifier: MIT */
/* Load cases beyond even snow and wind: earthquake, snow held above the array, partial snow on a
   rail, ice on the overhang, drift at the array. Internal to src/check. */
#ifndef RP_CHECK_LOAD_CASE_H
#define RP_CHECK_LOAD_CASE_H

#include "check/context.h"

/* Which combinations are held against which part of a foot. Tested values of foot, collector and
   rail belong to ASD and are held against its combinations whatever the method of the job. */
enum held { HOLD_SCREWS = 1, HOLD_HARDWARE = 2 };
struct case_list {
	const struct load_combination *k;
	int count;
	unsigned holds; /* of enum held */
	bool records;   /* its forces are those that the result shows */
};
#define CASE_LIST_MAX 4
/* True where the fastener itself is tested hardware: a maker's screw, a clamp, a mount screwed to the deck. */
bool fastener_is_tested(enum fastener_kind kind);
int case_lists(const struct context *c, struct case_list out[CASE_LIST_MAX]);

/* Load duration factor in ASD, time effect factor in LRFD. */
double case_duration(const struct context *c, const struct load_combination *k);

/* Seismic force on an area of the array, N: toward the eave (sign 1) or the ridge (-1). normal is
   positive down. False where there is no earthquake in the combination. */
bool array_load_quake(const struct context *c, const struct load_combination *k, int sign,
		      double snow, double area, struct trace *trace, double *normal, double *slope);
/* Sideways along the eave in the same combination, N. */
double quake_cross(const struct context *c, const struct load_combination *k, double area);

/* Finds SDS, Fp and Ev, or says why not. */
void quake_prepare(struct context *c);
/* Adds drift at the array to the snow cases; says what slides, is held, or lies as ice. */
void snow_extra_prepare(struct context *c);

/* Down-slope force that snow case i adds, times its factor, to a foot of the topmost line, N; 0
   for others. */
double held_force(const struct context *c, const struct attachment *a, int i, double factor,
		  struct trace *trace);
/* Ice case of a foot outside the wall: Pa on plan; 0 where there is none. Its index is
 * c->snow.cases. */
double ice_on(const struct context *c, const struct attachment *a);
/* Snow of case i on a foot, Pa on plan, partial loading of its rail counted. */
double foot_snow(const struct context *c, const struct attachment *a, int i, struct trace *trace);

#endif
