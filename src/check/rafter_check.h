/* SPDX-License-Identifier: MIT */
/* The rafters under the feet, before and after. Internal to src/check. */
#ifndef RP_CHECK_RAFTER_CHECK_H
#define RP_CHECK_RAFTER_CHECK_H

#include "check/context.h"

/* Finds the lumber (and G for the fasteners); says so where there is none. */
void rafter_prepare(struct context *c);
/* Rates every rafter that carries feet of this pass. */
void rafter_run(struct context *c, struct pass *pass);
/* Worst ratio of one rafter under the attachments of this pass; 0 where rafters are not rated. */
double rafter_ratio(struct context *c, const struct pass *pass, int rafter);
/* Records how the governing check of one rafter came about. */
void rafter_explain(struct context *c, const struct pass *pass, const struct rafter_result *r, struct trace *trace);

#endif
