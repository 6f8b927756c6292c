/* SPDX-License-Identifier: MIT */
/* Takes the governing rafter down for the report. Internal to rafter_*.c. */
#ifndef RP_CHECK_RAFTER_SHOW_H
#define RP_CHECK_RAFTER_SHOW_H

#include "check/rafter_span.h"
#include "check/rafter_whole_stress.h"

/* One span in the case that governs it, into result.rafter_beam; traces its moment load by load. */
void rafter_show_span(struct inquiry *q, const struct rafter_case *k, const struct rafter_loads *l);
/* The whole rafter; partial: under the pattern q->at of 7.5; ice: on its tails. */
void rafter_show_whole(struct rating *q, const struct rafter_case *k, bool partial, bool ice,
		       const struct whole_beam *b);

#endif
