/* SPDX-License-Identifier: MIT */
/* Feet that a continuous rail levers up: beside a long end, or where bays are uneven, what presses
   the rail elsewhere pulls on a foot. Internal to src/check. */
#ifndef RP_CHECK_LEVERED_H
#define RP_CHECK_LEVERED_H

#include "check/context.h"

/* Sets lift_width, worker_down and worker_up of the feet of one line. */
void levered_prepare(const struct context *c, const struct line *line, struct attachment *a,
		     int count);
/* One case of load down on the array: fills normal (minus: a pull) and slope of *f; false where the
   foot is not levered up. snow: an index into the snow cases, -1 none. */
bool levered_force(const struct context *c, const struct attachment *a,
		   const struct load_combination *k, int snow, struct trace *trace,
		   struct force *f);

#endif
