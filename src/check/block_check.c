/* SPDX-License-Identifier: MIT */
/* A block of the rafter's own size on edge between two rafters, a foot in its middle: bending,
   shear, and nails through the rafters into its end grain. It is sized and still refused: the force
   down the slope goes across the block's grain, whose 1-1/2 in edge has not the 4 D of NDS
   Table 12.5.1C for fasteners from 1/4 in up, and it bends the block flat. */
#include "check/block_check.h"

#include <math.h>

#include "check/fastener.h"
#include "resist/blocking.h"
#include "resist/member.h"
#include "resist/nail.h"
#include "table/lookup_fastener.h"

struct worst {
	double P; /* N */
	const struct force *f;
};

static struct worst worst_foot(const struct pass *p)
{
	struct worst w = {0, NULL};

	for (int i = 0; i < p->attachments; i++) {
		const struct attachment *a = &p->attachment[i];

		if (a->uplift.normal > w.P)
			w = (struct worst){a->uplift.normal, &a->uplift};
		if (a->down.normal > w.P)
			w = (struct worst){a->down.normal, &a->down};
	}
	return w;
}

/* One 16d common nail through the rafter, adjusted; 0 where the tables give none. */
static double one_nail(const struct context *c, double CD)
{
	const struct nail_row *nail = nail_row("common", "16d");
	struct connection_factors k;
	struct dowel_yield y;

	if (!nail ||
	    !nail_lateral_find(NULL, c->G, nail->D_in * M_PER_IN, nail->L_in * M_PER_IN,
			       c->job->framing.breadth, &y) ||
	    !connection_factors_find(CD, c->job->framing.wet == ANSWER_YES, fastener_temperature(c),
				     false, &k))
		return 0;
	return block_end_fastener(
		NULL, lateral_adjusted(NULL, y.value, k.CD, k.CM_lateral, k.Ct, 1, 1, 1));
}

void block_check(struct context *c)
{
	const struct job_framing *f = &c->job->framing;
	const struct pass *p = &c->r->pass[c->r->judged];
	const struct lumber_service s = {f->wet == ANSWER_YES, f->incised == ANSWER_YES, false,
					 fastener_temperature(c)};
	const double clear = f->spacing - f->breadth;
	struct lumber_values v;

	if (c->job->mount.between != BETWEEN_BLOCKING)
		return;
	REMARK(c->r, BLOCKING, 0);
	const struct worst w = c->r->passes > 0 ? worst_foot(p) : (struct worst){0, NULL};

	if (!w.f || !c->lumber_known || !(clear > 0) || c->lrfd ||
	    !lumber_adjust(NULL, &c->lumber, w.f->CD, &s, &v))
		return;
	const struct block_load load = {w.P, clear, clear / 2};
	const struct block_forces b = block_forces(NULL, &load);
	const double S = section_rectangle(NULL, f->breadth, f->depth).S;
	const double nail = one_nail(c, w.f->CD);

	REMARK(c->r, BLOCK_BENDS, w.P, member_bending_stress(NULL, b.M, S * c->net_share),
	       v.Fb_star);
	if (nail > 0)
		REMARK(c->r, BLOCK_NAILS, b.near_end, nail, block_end_count(b.near_end, nail));
}
