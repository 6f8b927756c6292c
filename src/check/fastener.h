/* SPDX-License-Identifier: MIT */
/* The lag screws of one foot. Internal to src/check. */
#ifndef RP_CHECK_FASTENER_H
#define RP_CHECK_FASTENER_H

#include "check/context.h"

/* Fills result.fastener and the context's screw; adds remarks on edge room, penetration and whatever keeps the screw from being
   rated (context.fastener_rated is then false). */
void fastener_prepare(struct context *c);

/* Holds one combination on one foot against its screws: `up` normal to the roof (negative: pressed down), `slope` along the
   rafter, N; the couple of a standoff is added. Keeps the worst of each check in check[]. False when it cannot be
   rated: the screw, or a couple without a known lever arm. */
bool fastener_check(const struct context *c, struct trace *trace, const struct force *f, double up, double slope,
                    struct check_value check[CHECK_COUNT]);

#endif
