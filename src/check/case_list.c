/* SPDX-License-Identifier: MIT */
/* Which combinations a foot meets, and what of it they are held against. */
#include "check/load_case.h"

int case_lists(const struct context *c, struct case_list out[CASE_LIST_MAX])
{
	const unsigned both = c->lrfd ? HOLD_SCREWS : HOLD_SCREWS | HOLD_HARDWARE;
	int n = 0;

	out[n++] = (struct case_list){c->combination, c->combinations, both, true};
	if (c->quake.known)
		out[n++] =
			(struct case_list){c->quake.combination, c->quake.combinations, both, true};
	if (!c->lrfd)
		return n;
	out[n++] = (struct case_list){c->asd, c->asds, HOLD_HARDWARE, false};
	if (c->quake.known)
		out[n++] = (struct case_list){c->quake.asd, c->quake.asds, HOLD_HARDWARE, false};
	return n;
}

double case_duration(const struct context *c, const struct load_combination *k)
{
	return c->lrfd ? k->lambda : k->CD;
}
