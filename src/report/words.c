/* SPDX-License-Identifier: MIT */
#include <assert.h>
#include <math.h>

#include "report/check_part.h"

const char *check_short(enum check_id id)
{
	static const char *const words[CHECK_COUNT] = {
		[CHECK_COLLECTOR_UPLIFT] = "uplift",
		[CHECK_COLLECTOR_DOWN] = "pressed down",
		[CHECK_RAIL_MOMENT] = "bending",
		[CHECK_RAIL_DEFLECTION] = "deflection",
		[CHECK_RAIL_CANTILEVER] = "cantilever",
		[CHECK_FOOT_UPLIFT] = "foot, uplift",
		[CHECK_FOOT_DOWN] = "foot, down",
		[CHECK_FOOT_SLOPE] = "foot, sliding",
		[CHECK_WITHDRAWAL] = "pull-out",
		[CHECK_LATERAL] = "side load",
		[CHECK_COMBINED] = "pull and side",
		[CHECK_TENSION] = "screw breaks",
		[CHECK_RAFTER_BENDING] = "bending, down",
		[CHECK_RAFTER_UPLIFT] = "bending, up",
		[CHECK_RAFTER_SHEAR] = "shear",
		[CHECK_RAFTER_DEFLECTION] = "deflection",
		[CHECK_RAFTER_BEARING] = "bearing",
		[CHECK_RAIL_BOTH_WAYS] = "bending both ways",
		[CHECK_RAIL_SPLICE] = "joint in the rail",
		[CHECK_FRAMING_UPLIFT] = "framing, up",
		[CHECK_FRAMING_DOWN] = "framing, down",
		[CHECK_PULL] = "pull",
		[CHECK_SIDE] = "side load",
		[CHECK_PULL_SIDE] = "pull and side",
		[CHECK_TOGETHER] = "pull and side",
		[CHECK_BREAK] = "fastener breaks",
		[CHECK_WASHER] = "washer",
		[CHECK_SEAM] = "seam",
		[CHECK_CLIP] = "panel clip",
		[CHECK_CLIP_SCREW] = "clip screws",
		[CHECK_BLOCK_BENDING] = "block, bending",
		[CHECK_BLOCK_SHEAR] = "block, shear",
		[CHECK_BLOCK_NAILS] = "block, nails",
		[CHECK_BLOCK_HANGER] = "block, hanger",
		[CHECK_RAFTER_PARTIAL] = "partial snow",
		[CHECK_RAFTER_TAIL] = "tail",
		[CHECK_RAFTER_TAIL_BOW] = "tail's end",
	};

	assert(id < CHECK_COUNT);
	return words[id] ? words[id] : check_words(id);
}

const char *place_name(struct document *d, const struct result *r, int place)
{
	const int n = place_number(r, place);

	return place_on_block(r, place) ? document_text(d, "%d/%d", n, n + 1) : document_text(d, "%d", n);
}

const char *left_end(const struct job *job)
{
	return job->building.form == FORM_HIP ? "its left end" : "the left rake edge";
}

const char *link_place(const struct format *f, enum link link, int at)
{
	static const char *const what[LINK_COUNT] = { "collector", "rail line", "attachment",
		                                      "attachment", "rafter" };

	if (at <= 0)
		return "";
	return document_text(f->document, "%s" NBSP "%d", what[link], at);
}

bool any_rated(const struct check_value check[CHECK_COUNT])
{
	for (int i = 0; i < CHECK_COUNT; i++)
		if (check[i].rated)
			return true;
	return false;
}

enum link pass_weakest(const struct pass *pass)
{
	enum link weakest = LINK_COUNT;

	for (int i = 0; i < LINK_COUNT; i++) {
		const double ratio = pass->link_ratio[i];

		if (!isnan(ratio) && (weakest == LINK_COUNT || ratio > pass->link_ratio[weakest]))
			weakest = (enum link)i;
	}
	return weakest;
}

const char *verdict_words(enum verdict v)
{
	static const char *const words[] = { "HOLDS", "DOES NOT HOLD", "NEEDS AN ENGINEER" };

	return words[v];
}

const char *verdict_key(enum verdict v)
{
	static const char *const keys[] = { "holds", "does-not-hold", "needs-an-engineer" };

	return keys[v];
}

const char *show_demand(const struct format *f, enum check_id id, double demand)
{
	return show_rounded(f, demand, check_unit(id), SHOW_UP);
}

const char *show_capacity(const struct format *f, enum check_id id, double capacity)
{
	return show_rounded(f, capacity, check_unit(id), SHOW_DOWN);
}
