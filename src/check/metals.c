/* SPDX-License-Identifier: MIT */
/* Metals that touch each other, drip on each other or touch treated wood: what the published table says of the pairs that
   this job makes. A matter of years, not of load: it does not change the verdict, but it is said. */
#include "check/metals.h"

#include <string.h>

#include "table/lookup_pair.h"

static const char *const key[METAL_COUNT] = {
	[METAL_UNKNOWN] = NULL,
	[METAL_PLAIN_STEEL] = "plain-steel",
	[METAL_GALVANIZED] = "galvanized",
	[METAL_ALUMINUM_ZINC] = "aluminum-zinc",
	[METAL_PAINTED_STEEL] = "painted-steel",
	[METAL_STAINLESS] = "stainless",
	[METAL_ALUMINUM] = "aluminum",
	[METAL_ZINC] = "zinc",
	[METAL_COPPER] = "copper",
	[METAL_LEAD] = "lead",
};

static void say(struct context *c, const struct metal_pair_row *row)
{
	if (row->verdict == METAL_PAIR_VERDICT_NEVER)
		REMARK_T(c->r, METAL_NEVER, (0), row->upper, row->lower, row->why);
	else if (row->verdict == METAL_PAIR_VERDICT_APART)
		REMARK_T(c->r, METAL_APART, (0), row->upper, row->lower, row->why);
}

/* A pair without a row is not known to be good: it is named. */
static void pair(struct context *c, enum metal_pair_how how, const char *upper, const char *lower)
{
	const struct metal_pair_row *row;

	if (!upper || !lower)
		return;
	row = metal_pair_row(how, upper, lower);
	if (!row && how == METAL_PAIR_HOW_CONTACT)
		row = metal_pair_row(how, lower, upper);
	if (row)
		say(c, row);
	else if (strcmp(upper, lower) != 0 && how == METAL_PAIR_HOW_CONTACT)
		REMARK_T(c->r, METAL_UNLISTED, (0), upper, lower);
}

/* Water from the upper runs onto the lower: only pairs that the table names are a worry. */
static void drip(struct context *c, const char *upper, const char *lower)
{
	pair(c, METAL_PAIR_HOW_RUNOFF, upper, lower);
}

void check_metals(struct context *c)
{
	const struct job_metals *m = &c->job->metals;
	const char *flashing = key[m->flashing], *foot = key[m->foot], *fastener = key[m->fastener];
	const char *covering = key[m->covering], *pipe = key[m->pipe];
	const bool cedar = strncmp(c->job->roof.covering, "wood-", 5) == 0;

	if (!flashing && !foot && !fastener && !covering && !pipe) {
		REMARK(c->r, UNCHECKED_METALS, 0);
		return;
	}
	pair(c, METAL_PAIR_HOW_CONTACT, fastener, foot);
	pair(c, METAL_PAIR_HOW_CONTACT, fastener, flashing);
	pair(c, METAL_PAIR_HOW_CONTACT, foot, flashing);
	pair(c, METAL_PAIR_HOW_CONTACT, flashing, covering);
	drip(c, pipe, flashing);
	drip(c, pipe, foot);
	drip(c, pipe, covering);
	drip(c, flashing, covering);
	if (cedar) {
		drip(c, pipe, "cedar");
		drip(c, flashing, "cedar");
	}
	if (m->treated_wood == ANSWER_YES) {
		pair(c, METAL_PAIR_HOW_WOOD, fastener, "wood");
		pair(c, METAL_PAIR_HOW_WOOD, flashing, "wood");
		pair(c, METAL_PAIR_HOW_WOOD, foot, "wood");
	}
}
