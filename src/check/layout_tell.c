/* SPDX-License-Identifier: MIT */
/* What the search for the fewest feet proved, in remarks. */
#include "check/layout_search.h"

#include <math.h>

#include "check/rail.h"

/* Every rail is joined. */
static bool all_joined(const struct context *c)
{
	bool joined = true;

	for (int i = 0; i < c->lines; i++)
		joined = joined && rail_is_joined(c, &c->line[i]);
	return joined;
}

static const char *bar_words(enum search_bar bar)
{
	switch (bar) {
	case BAR_SPACING:
		return "no span may be longer than mount.max-spacing";
	case BAR_CANTILEVER:
		return "a rail may stand out past its outer foot only by its cantilever, and the rafters "
		       "near its ends are where they are (rail.max-cantilever, framing.first, "
		       "framing.spacing)";
	case BAR_JOINTS:
		return "rails are joined (rail.stock-length, rail-joint), and a joint needs a span that is no "
		       "end span, near enough to a foot";
	case BAR_ASIDE:
		return "the two lines of a row must not share a rafter (mount.stagger)";
	case BAR_TOGETHER:
		return "longest span, cantilever (where it is not given, a share of that span), joints of the "
		       "rail and stagger stand in the way together";
	case BAR_PLACES:
		return "a line stands on two feet at the least, and under it are too few rafters or seams "
		       "clear of pipes and obstacles";
	case BAR_NONE:
		break;
	}
	return "";
}

static void tell_one_fewer(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (r->fewer && (r->fewer_settled || r->fewer_ratio <= r->fewer_bound * 1.0001)) {
		REMARK_T(c->r, FEWEST, (r->feet, r->fewer_feet, r->fewer_ratio), check_words(r->fewer_governs));
	} else if (r->fewer) {
		REMARK_T(c->r, FEWEST_ABOUT, (r->feet, r->fewer_feet, r->fewer_ratio),
			 check_words(r->fewer_governs));
		/* printed to the hundredth, and must not be more than it is */
		REMARK(c->r, FEWER_BOUND, r->fewer_feet, floor(r->fewer_bound * 100) / 100);
	} else {
		REMARK(c->r, FEWEST_ALONE, r->feet);
		if (r->bar != BAR_NONE)
			REMARK_T(c->r, FEWER_BARRED, (r->feet), bar_words(r->bar));
	}
}

static void tell_wanted(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (r->found) {
		if (r->best)
			REMARK(c->r, HOLES_BEST, r->wanted);
		else
			REMARK(c->r, HOLES_OPEN, r->wanted);
	} else if (r->bound > r->most) {
		REMARK_T(c->r, HOLES_NEVER, (r->wanted), bar_words(r->bar));
	} else if (r->bound > r->wanted || r->wanted > r->most) {
		REMARK(c->r, HOLES_NONE, r->wanted, r->bound, r->most);
		if (r->bar != BAR_NONE)
			REMARK_T(c->r, FEWER_BARRED, (r->bound), bar_words(r->bar));
	} else if (r->settled) {
		REMARK_T(c->r, HOLES_RULE, (r->wanted),
			 r->bar != BAR_NONE ? bar_words(r->bar) : "none of them can be rated");
	} else {
		REMARK(c->r, HOLES_UNSETTLED, r->wanted, r->bound);
	}
}

static void tell_fewest(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (r->feet == SPLICE_FEET * c->lines && all_joined(c))
		REMARK(c->r, FEWEST_JOINED, r->feet, c->lines, SPLICE_FEET);
	else if (r->feet == 2 * c->lines)
		REMARK(c->r, FEWEST_PAIRS, r->feet, c->lines);
	else
		tell_one_fewer(c);
}

void layout_search_tell(struct context *c)
{
	const struct search_result *r = &c->r->search;

	if (!r->ran)
		return;
	if (r->wanted > 0) {
		tell_wanted(c);
		return;
	}
	if (r->found && r->bound == r->feet)
		tell_fewest(c);
	else if (r->found && r->bar != BAR_NONE)
		REMARK_T(c->r, RULE_LEFT, (r->feet), bar_words(r->bar));
	else if (r->found)
		/* two on each line where nothing more is known */
		REMARK(c->r, FEWEST_OPEN, r->feet, r->bound > 0 ? r->bound : 2 * c->lines);
	else if (r->settled && r->bar != BAR_NONE)
		REMARK_T(c->r, NONE_STANDS, (0), bar_words(r->bar));
	else if (r->settled)
		REMARK(c->r, NONE_HOLDS, 0);
	if (r->found && r->best)
		REMARK(c->r, BEST_LAYOUT, 0);
}
