/* SPDX-License-Identifier: MIT */
/* When work on an existing building asks for today's strength: the 5 percent rule for gravity (IEBC
   503.3 and siblings), in both readings, and the 10 percent rule for lateral loads (503.4).
   Exceptions are not judged here. */
#ifndef RP_LOAD_TRIGGERS_H
#define RP_LOAD_TRIGGERS_H

#include <stdbool.h>

#include "step/step.h"

/* One gravity element, same unit before and after (force, moment, load). A load absent before and
   after is 0. */
struct gravity_change {
	double dead_before, dead_after;
	double live_before, live_after;
	double snow_before, snow_after;
	double total_before, total_after; /* the governing design effect */
};

struct gravity_trigger {
	double rise_dead, rise_live, rise_snow,
		rise_total; /* (after - before) / before; INFINITY from nothing */
	bool by_type;       /* some load type alone rises by more than 5 % */
	bool by_total;      /* the total effect does */
	bool triggered;     /* either: the readings differ, so both count */
	const char *text;   /* what it means, a sentence */
	const char *clause;
};

struct gravity_trigger trigger_gravity(const struct gravity_change *change, struct trace *trace);

/* Share of the array's weight in the weight that pulls on the lateral system; more than 0.10 asks
   for an upgrade. */
double trigger_lateral(double array, double existing, bool *triggered, struct trace *trace);

#endif
