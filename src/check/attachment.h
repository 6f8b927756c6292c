/* SPDX-License-Identifier: MIT */
/* One attachment: wind at its place, forces in every combination, and what foot and screws take. Internal to src/check. */
#ifndef RP_CHECK_ATTACHMENT_H
#define RP_CHECK_ATTACHMENT_H

#include "check/context.h"

/* The coefficient for a place, from the job where the user read it in the book, else from the code's curve. Notes in c
   that a second curve matters. known is false where there is none. */
struct wind_coefficient check_coefficient(struct context *c, enum zone zone, enum wind_sign sign, double A,
                                          struct trace *trace);

/* Strength-level pressures on a piece of the array in one zone or, by rectangle, in the worst zone that it touches. */
struct array_pressure {
	bool known;
	enum zone zone;      /* that gives the uplift */
	double up, down;     /* Pa, both positive */
	double GCp_up, GCp_down;
	bool minimum_up, minimum_down;
	enum confidence confidence;
	const char *figure;
};
struct array_pressure array_pressure_zone(struct context *c, enum zone zone, double A, bool exposed,
                                          struct trace *trace);
struct array_pressure array_pressure_at(struct context *c, const struct rectangle *part, double A, bool exposed,
                                        struct trace *trace);
/* False, and says so, where a zone that the array touches has no coefficient, neither the code's nor an entered one. */
bool array_coefficients_known(struct context *c);
/* True if gammaE = 1.5 applies to this part of the array. */
bool array_exposed(const struct context *c, const struct rectangle *part, struct trace *trace);

/* Force on an area of the array in one combination, N: normal to the roof and down the slope. Up: 0.6D + 0.6W with the
   dry array; false if the combination does not lift. Down: filled array; snow is Pa on plan; false for combinations with
   roof live load. area 1 m2 gives the load per area. */
bool array_load_up(const struct context *c, const struct load_combination *k, double p_up, double area,
                   struct trace *trace, double *up, double *slope);
bool array_load_down(const struct context *c, const struct load_combination *k, double p_down, double snow,
                     double area, struct trace *trace, double *down, double *slope);
/* Snow on the array in case i at a piece whose upper end is at y, Pa on plan. */
double array_snow(const struct context *c, int i, double y_high);

/* Fills wind, forces, checks and ratio of an attachment whose place, tributary and reaction_width are set. */
void attachment_run(struct context *c, struct attachment *a);
/* The same for pressures already set: forces, checks, ratio. */
void attachment_hold(struct context *c, struct attachment *a);
/* Keeps demand / capacity if it is the worst of its kind so far; an unknown (NAN) capacity or no demand counts as not
   rated. */
void check_keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand, double capacity,
                const char *combination);
/* The same demand in the same combination, to the last bit. */
bool check_same(const struct check_value *a, const struct check_value *b);
/* Runs it again and records how: its wind, and the load case that governs it. */
void attachment_explain(struct context *c, const struct attachment *a, struct trace *wind, struct trace *fastener);

#endif
