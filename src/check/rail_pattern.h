/* SPDX-License-Identifier: MIT */
/* A rail with uneven loads: partial snow, one worker. Internal to src/check. */
#ifndef RP_CHECK_RAIL_PATTERN_H
#define RP_CHECK_RAIL_PATTERN_H

#include "check/context.h"

/* Sets snow_width of the line's attachments: the largest reaction under any pattern of full and
   half load of the spans. Only where there is snow and more than one span. */
void rail_snow_widths(const struct context *c, const struct line *line,
		      struct attachment *attachment, int count);
/* Pattern p of the spans by 7.5, full 1, half 0.5; full and half by turns come last (safe side). False
   when there is no such pattern. And in words. */
bool span_pattern(int p, int spans, double factor[]);
const char *span_pattern_text(int p, int spans);
/* Moment of the rail under the patterns of 7.5 and under a worker, if the job asks for one.
 * capacity NAN: not rated. shown: NULL, or where the worst of them is taken down. */
void rail_patterns(const struct context *c, const struct line *line,
		   const struct attachment *attachment, int count, double capacity,
		   struct rail_line *rail, struct shown_beam *shown);
/* One worker's weight on a foot, against the foot's tested value and its screws: N, 0 where the job
 * does not ask. */
double rail_worker(const struct context *c);

#endif
