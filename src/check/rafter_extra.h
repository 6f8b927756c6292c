/* SPDX-License-Identifier: MIT */
/* What weakens a rafter beside its loads: holes under the feet, raised ties; its seat; its thrust.
 * Internal to src/check. */
#ifndef RP_CHECK_RAFTER_EXTRA_H
#define RP_CHECK_RAFTER_EXTRA_H

#include "check/context.h"
#include "resist/lumber.h"
#include "resist/rafter.h"

/* Once lumber and fastener are known: fills net_share and tie_factor of the context; remarks on
 * ties and thrust. */
void rafter_extra_prepare(struct context *c);
/* Largest bending stress, Pa: of the whole section anywhere, of the section less its hole at a
 * foot. NDS 3.1.2. */
double rafter_bending_stress(const struct context *c, struct trace *trace, double moment,
			     double at_foot, double S);
/* Demand and capacity of the lower or upper seat, Pa; false where its length is not given or
 * nothing presses. */
bool rafter_bearing(const struct context *c, struct trace *trace, const struct rafter_forces *f,
		    const struct lumber_values *v, double *demand, double *capacity);

/* One piece over the inner support that the job tells: then what single spans show does not count, but for bow. */
bool rafter_in_one_piece(const struct context *c);
/* So broad for its depth that no side support is needed (NDS 4.4.1.2). */
bool rafter_edge_free(const struct context *c);
/* Held upright at its ends and slender enough: no side support between is needed (NDS 4.4.1.2). */
bool rafter_ends_hold(const struct context *c);
/* Where net uplift bends the rafters too far for want of side support: that a look at their ends may help. */
void rafter_ends_tell(struct context *c, const struct pass *pass);

/* Shear that a rafter has where it may run on over an inner support, N: V of the simple span, or a bound on it. */
double rafter_shear(const struct context *c, double V);

/* Moment over an inner support, N m, sagging positive: the worse end's. 0 where the rafter does not run on. */
double rafter_inner_moment(const struct context *c, const struct rafter_forces *f);

#endif
