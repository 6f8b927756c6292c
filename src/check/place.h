/* SPDX-License-Identifier: MIT */
/* Where a foot may stand, and which rafters then carry it. Internal to src/check. */
#ifndef RP_CHECK_PLACE_H
#define RP_CHECK_PLACE_H

#include "check/context.h"

/* Rafters as the job has them, into result.frame_x; none where they are not given. */
void place_frames(struct context *c);
/* The rafters themselves as places. */
void place_on_frames(struct context *c);
/* The rafters, and the middle of every bay between them: there a block carries the foot. Without
   effect where they are too many. */
void place_with_blocks(struct context *c);
/* Along the collectors by mount.deck-pitch, whatever lies below; the array must be laid out.
   Returns the pitch, doubled where it would give too many places. */
double place_on_deck(struct context *c);
/* Which rafters carry each place of result.rafter_x; to be called whenever that has changed. */
void place_settle(struct result *r);

/* Part of a force at this place that a rafter takes, 0 to 1. */
double place_share(const struct result *r, int place, int frame);

#endif
