/* SPDX-License-Identifier: MIT */
/* The lag screws of one foot. Internal to src/check. */
#ifndef RP_CHECK_FASTENER_H
#define RP_CHECK_FASTENER_H

#include "check/context.h"

/* Thickness between the base plate's underside and the rafter face, and the part of it that gives a fastener no side
   bearing, m. */
void fastener_layers(const struct context *c, double *all, double *gap);
/* Says why the fastener cannot be rated. */
void fastener_unrated(struct context *c, const char *why);
/* Holds what a check found against what was kept; CD is the one that belongs to it. */
void fastener_keep(struct check_value check[CHECK_COUNT], enum check_id id, double demand, double capacity,
                   const struct force *f, double CD);
/* Says so where the gap takes more than half of the side load Z0 that the fastener had without it, N. */
void fastener_gap_tell(struct context *c, double gap, double Z, double Z0);
/* fastener_group.c. Fasteners in one row along the rafter, of all that the foot has. */
int fastener_in_row(const struct job_fastener *f);
/* Room to the edges and between rows, and what screws under 1/4 in want of both; l: bearing length in the rafter, m. */
void fastener_group(struct context *c, double D, double l, struct trace *t);
/* Fills context.placement; false, and says so, where they stand too near to each other or to the rafter's end. */
bool fastener_stands(struct context *c, double D, struct trace *t);
/* Cg of the fasteners of a foot, of diameter D, in a row along the rafter; 1 for one or for D under 1/4 in. */
double fastener_group_factor(const struct context *c, double D, struct trace *t);
/* Sustained temperature of the wood, K; NAN: not above 100 F. */
double fastener_temperature(const struct context *c);

/* 1 in from the end a washer gets no bearing area factor; a foot may stand anywhere. */
#define BOLT_FROM_END M_PER_IN

/* fastener_kind.c, fastener_hold.c: prepare and check for every kind but the lag screw. */
void fastener_kind_prepare(struct context *c);
bool fastener_kind_check(const struct context *c, struct trace *trace, const struct force *f, double up, double slope,
                         struct check_value check[CHECK_COUNT]);

/* Fills result.fastener and the context's screw; adds remarks on edge room, penetration and whatever keeps the screw from being
   rated (context.fastener_rated is then false). */
void fastener_prepare(struct context *c);

/* Holds one combination on one foot against its screws: `up` normal to the roof (negative: pressed down), `slope` along the
   rafter, N; the couple of a standoff is added. Keeps the worst of each check in check[]. False when it cannot be
   rated: the screw, or a couple without a known lever arm. */
bool fastener_check(struct context *c, struct trace *trace, const struct force *f, double up, double slope,
                    struct check_value check[CHECK_COUNT]);

#endif
