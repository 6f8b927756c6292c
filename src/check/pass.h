/* SPDX-License-Identifier: MIT */
/* The whole chain under one set of wind coefficients, for one layout of feet. Internal to src/check. */
#ifndef RP_CHECK_PASS_H
#define RP_CHECK_PASS_H

#include "check/context.h"

/* Which rafters each line stands on. */
struct layout {
	int count[LINE_MAX];
	int rafter[LINE_MAX][RAFTER_MAX];
	double cantilever[LINE_MAX]; /* largest that is allowed at either end, m */
	int block;  /* kind of the blocks between rafters (block.h), 0: none */
	int widest; /* rafter spacings in the widest bay */
};

/* spacing.c: largest spacing that holds in each zone the array touches, for the wind curve of the context. */
void spacing_run(struct context *c, struct zone_spacing zone[ZONE_COUNT]);

/* Mean rafter spacing, m; 0 with fewer than two rafters. */
double mean_bay(const struct result *r);

/* layout.c: feet on rafters, no bay wider than the zones' spacings, the maker's limit or `bays` rafter spacings. */
void layout_plan(struct context *c, const struct zone_spacing zone[ZONE_COUNT], int bays, struct layout *out);

/* Worst ratio of the collectors by themselves; overwrites pass->collector. */
double pass_collector_ratio(struct context *c, struct pass *pass);
/* Rates one layout of a job by itself under one curve, rules of the layout included; true if it holds. For trying
   layouts one by one. The cantilevers allowed are filled in. */
bool check_layout(const struct job *job, struct result *result, enum wind_curve curve, struct layout *layout,
                  struct pass *pass);

/* Rates the layout under the wind curve of the context. */
void pass_run(struct context *c, const struct layout *layout, struct pass *pass);
/* Copies what is filled of a pass. */
void pass_copy(struct pass *to, const struct pass *from);
/* Records in the result how the governing attachment, rail and rafter of the pass came about. */
void pass_explain(struct context *c, const struct pass *pass);

/* Largest support reaction of a continuous rail of equal spans, as a share of the plain tributary width: 5/4 at the middle
   of two spans, less with more (elastic beam theory). */
#define CONTINUOUS_REACTION 1.25

#endif
