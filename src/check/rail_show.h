/* SPDX-License-Identifier: MIT */
/* Takes the governing rail line down for the report. Internal to rail*.c. */
#ifndef RP_CHECK_RAIL_SHOW_H
#define RP_CHECK_RAIL_SHOW_H

#include "check/rail.h"

/* Line loads of one rail in its checks, N/m, each with its combination. */
struct rail_loads {
	double moment, service, splice, normal,
		along; /* normal and along: of bending both ways at once */
	const char *moment_text, *service_text, *splice_text, *both_text;
};

/* The rail in the case of its governing check, into result.rail_beam, unless rail_patterns has
   taken it down there already. trace: how the line load comes about. */
void rail_show(struct context *c, const struct line *line, const struct attachment *a, int count,
	       const struct beam *unit, const struct rail_line *rail,
	       const struct rail_loads *loads, struct trace *trace);

#endif
