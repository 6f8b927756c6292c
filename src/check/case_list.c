/* SPDX-License-Identifier: MIT */
/* Which combinations a foot meets, and what of it they are held against. */
#include "check/load_case.h"

#include <math.h>

bool fastener_is_tested(enum fastener_kind kind)
{
	return kind == FASTENER_STRUCTURAL_SCREW || kind == FASTENER_SEAM_CLAMP ||
	       kind == FASTENER_DECK_MOUNT;
}

bool check_is_tested(enum check_id id, enum fastener_kind kind)
{
	const bool foot = id == CHECK_FOOT_UPLIFT || id == CHECK_FOOT_DOWN || id == CHECK_FOOT_SLOPE ||
			  id == CHECK_FRAMING_UPLIFT || id == CHECK_FRAMING_DOWN ||
			  id == CHECK_BLOCK_HANGER;

	return foot || (check_link(id) == LINK_FASTENER && fastener_is_tested(kind));
}

int case_lists(const struct context *c, struct case_list out[CASE_LIST_MAX])
{
	const bool tested = fastener_is_tested(c->job->fastener.kind);
	const unsigned all = HOLD_SCREWS | HOLD_HARDWARE;
	const unsigned both = !c->lrfd ? all : tested ? 0 : HOLD_SCREWS;
	const unsigned hardware = tested ? all : HOLD_HARDWARE;
	int n = 0;

	out[n++] = (struct case_list){c->combination, c->combinations, both, true};
	if (c->quake.known)
		out[n++] =
			(struct case_list){c->quake.combination, c->quake.combinations, both, true};
	if (!c->lrfd)
		return n;
	out[n++] = (struct case_list){c->asd, c->asds, hardware, false};
	if (c->quake.known)
		out[n++] = (struct case_list){c->quake.asd, c->quake.asds, hardware, false};
	return n;
}

double case_duration(const struct context *c, const struct load_combination *k)
{
	/* a combination has the one or the other, by its own method */
	return c->lrfd && !isnan(k->lambda) ? k->lambda : k->CD;
}
