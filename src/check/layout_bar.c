/* SPDX-License-Identifier: MIT */
/* Which rule keeps fewer feet from standing at all, whatever they carry: each is left out in turn, and
   the one without which fewer could stand is it. */
#include <math.h>
#include <string.h>

#include "check/layout_ask.h"
#include "check/rail.h"

/* Nothing that stands has a higher ratio: what is left are the rules. */
#define ANY_RATIO 1e9
#define WORK_BAR 20000

/* True if, as the lines are now, fewer could stand as far as single feet tell. */
static bool fewer_could_stand(struct finder *f, int feet)
{
	long work = WORK_BAR;
	const int bound = search_fewest(&f->problem, ANY_RATIO, &work, &f->state);

	return bound >= 0 && bound < feet && bound <= SEARCH_FEET_MAX;
}

static void lift(struct finder *f, enum search_bar bar)
{
	for (int i = 0; i < f->c->lines; i++) {
		if (bar == BAR_SPACING || bar == BAR_TOGETHER)
			f->line[i].bay = HUGE_VAL;
		if (bar == BAR_CANTILEVER || bar == BAR_TOGETHER)
			f->line[i].cantilever = HUGE_VAL;
		if (bar == BAR_JOINTS || bar == BAR_TOGETHER)
			f->line[i].least = 0;
		if (bar == BAR_ASIDE || bar == BAR_TOGETHER)
			f->line[i].apart = -1;
	}
}

static bool joined(const struct finder *f)
{
	for (int i = 0; i < f->c->lines; i++)
		if (rail_is_joined(f->c, &f->c->line[i]))
			return true;
	return false;
}

enum search_bar layout_bar(struct finder *f, int feet)
{
	struct search_line kept[LINE_MAX];
	const size_t size = (size_t)f->c->lines * sizeof *kept;
	enum search_bar bar;

	if (fewer_could_stand(f, feet))
		return joined(f) ? BAR_JOINTS : BAR_NONE;
	memcpy(kept, f->line, size);
	for (bar = BAR_SPACING; bar <= BAR_TOGETHER; bar++) {
		lift(f, bar);
		const bool stands = fewer_could_stand(f, feet);

		memcpy(f->line, kept, size);
		if (stands)
			return bar;
	}
	return BAR_PLACES;
}
