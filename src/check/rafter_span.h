/* SPDX-License-Identifier: MIT */
/* One span of one rafter by itself. Internal to rafter_*.c. */
#ifndef RP_CHECK_RAFTER_SPAN_H
#define RP_CHECK_RAFTER_SPAN_H

#include "check/rafter_load.h"

/* One span, asked how it stands today or with the array. */
struct inquiry {
	struct context *c;
	const struct pass *pass;
	struct rafter_place place;
	bool array;
	struct check_value *check;
	double moment;        /* largest downward design moment */
	double dead, live, snow; /* moments by load type */
	const struct check_value *target; /* the one to trace, of kind `governs`; NULL: none */
	enum check_id governs;
	struct trace *trace;
	struct rafter_stage *stage; /* its loads while it is asked; NULL: one by one */
};

/* Holds the span against every combination with every snow case. */
void rafter_span_ask(struct inquiry *q);

/* Stresses of one load case against the adjusted values of its duration; keeps the worst of each kind. */
void rafter_span_stresses(struct context *c, const struct rafter_case *k,
                          const struct rafter_forces *f, struct check_value check[CHECK_COUNT],
                          struct trace *trace);
/* Bow (given times EI) under a transient load against the part of the span that the code allows. */
void rafter_span_bow(struct context *c, double EI_v, double slope_length,
                     const char *name, struct check_value check[CHECK_COUNT], struct trace *trace);

#endif
