/* SPDX-License-Identifier: MIT */
/* What the search for the fewest feet proved, in remarks. */
#include "check/layout_search.h"

#include "check/rail.h"

/* Every rail is longer than the lengths it comes in. */
static bool all_joined(const struct context *c)
{
	bool joined = rail_comes_in_lengths(c);

	for (int i = 0; i < c->lines; i++)
		joined = joined && !at_most(c->line[i].x1 - c->line[i].x0, c->job->rail.stock_length);
	return joined;
}

static void tell_fewest(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (r->feet == SPLICE_FEET * c->lines && all_joined(c))
		REMARK(c->r, FEWEST_JOINED, r->feet, c->lines, SPLICE_FEET);
	else if (r->feet == 2 * c->lines)
		REMARK(c->r, FEWEST_PAIRS, r->feet, c->lines);
	else if (r->fewer && r->fewer_settled)
		REMARK_T(c->r, FEWEST, (r->feet, r->fewer_feet, r->fewer_ratio),
			 check_words(r->fewer_governs));
	else if (r->fewer)
		REMARK_T(c->r, FEWEST_ABOUT, (r->feet, r->fewer_feet, r->fewer_ratio),
			 check_words(r->fewer_governs));
	else
		REMARK(c->r, FEWEST_ALONE, r->feet);
}

void layout_search_tell(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (!r->ran)
		return;
	if (r->wanted > 0) {
		if (!r->found)
			REMARK(c->r, HOLES_NONE, r->wanted, r->bound, r->most);
		else if (r->best)
			REMARK(c->r, HOLES_BEST, r->wanted);
		else
			REMARK(c->r, HOLES_OPEN, r->wanted);
		return;
	}
	if (r->found && r->bound == r->feet)
		tell_fewest(c);
	else if (r->found)
		REMARK(c->r, FEWEST_OPEN, r->feet, r->bound);
	else if (r->settled)
		REMARK(c->r, NONE_HOLDS, 0);
	if (r->found && r->best)
		REMARK(c->r, BEST_LAYOUT, 0);
}
