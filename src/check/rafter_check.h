/* SPDX-License-Identifier: MIT */
/* The rafters under the feet, before and after. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_CHECK_H
#define RP_CHECK_RAFTER_CHECK_H

#include "check/context.h"

/* Finds the lumber (and G for the fasteners); says so where there is none. */
void rafter_prepare(struct context *c);
/* False where the framing or its lumber is not one that is rated here. */
bool rafter_rated(const struct context *c);
/* Rates every rafter that carries feet of this pass. */
void rafter_run(struct context *c, struct pass *pass);
/* Worst ratio of the rafters that carry a foot at this place, under the attachments of this pass; 0 where rafters are not
   rated. */
double rafter_ratio(struct context *c, const struct pass *pass, int place);
/* Adjusted values of the lumber for a load duration (LRFD: time effect factor). */
bool rafter_values(struct context *c, struct trace *trace, double duration, struct lumber_values *v);
/* The same for service loads, of which E counts: stiffness as in ASD. */
bool rafter_stiffness(struct context *c, struct trace *trace, struct lumber_values *v);
/* Whether the rafter, or its tail, of some depth may topple sideways over a length lu; without a trace not worked out twice. */
struct stability rafter_stability(struct context *c, struct trace *trace, double depth, double lu,
                                  const struct lumber_values *v);
/* The span is divided by this for the bow that the code allows. */
double rafter_bow_divisor(const struct job *job);
/* Length of bottom edge that nothing holds sideways, of one slope_length long. */
double rafter_unbraced_length(const struct context *c, double slope_length);
/* Records how the governing check of one rafter came about. */
void rafter_explain(struct context *c, const struct pass *pass, const struct rafter_result *r, struct trace *trace);

#endif
