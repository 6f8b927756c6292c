/* SPDX-License-Identifier: MIT */
/* What each way of holding on needs to be told, and what goes with what. A tested value without its
   report is no value. */
#include "job/rule.h"

#include <math.h>

struct need {
	enum field_id id;
	const char *path, *accepted;
};

#define NEED_DIAMETER                                                                              \
	{                                                                                          \
		FIELD_FASTENER_DIAMETER, "fastener.diameter", "a length such as 5/16 in"           \
	}
#define NEED_LENGTH                                                                                \
	{                                                                                          \
		FIELD_FASTENER_LENGTH, "fastener.length", "a length such as 4 in"                  \
	}
#define NEED_REPORT                                                                                \
	{                                                                                          \
		FIELD_FASTENER_REPORT, "fastener.report",                                          \
			"report, table and page that the allowables come from"                     \
	}
#define NEED_FACTOR                                                                                \
	{                                                                                          \
		FIELD_FASTENER_SAFETY_FACTOR, "fastener.safety-factor",                            \
			"the factor between test load and allowable, such as 5"                    \
	}
#define NEED_MOUNT_UPLIFT                                                                          \
	{                                                                                          \
		FIELD_MOUNT_ALLOWABLE_UPLIFT, "mount.allowable-uplift",                            \
			"the tested allowable pull of one foot on this roof, such as 400 lb"       \
	}
#define NEED_MOUNT_SLOPE                                                                           \
	{                                                                                          \
		FIELD_MOUNT_ALLOWABLE_SLOPE, "mount.allowable-slope",                              \
			"the tested allowable force down the slope of one foot, such as 300 lb"    \
	}
#define NEED_MAX 8

/* Ends at a NULL path. */
static const struct need *needs(enum fastener_kind kind)
{
	static const struct need screw[NEED_MAX] = {NEED_DIAMETER, NEED_LENGTH};
	static const struct need tested[NEED_MAX] = {
		NEED_DIAMETER,
		NEED_LENGTH,
		{FIELD_FASTENER_ALLOWABLE_UPLIFT, "fastener.allowable-uplift",
		 "the tested allowable pull of one screw, such as 450 lb"},
		{FIELD_FASTENER_ALLOWABLE_SIDE, "fastener.allowable-side",
		 "the tested allowable side load of one screw, such as 250 lb"},
		NEED_FACTOR,
		NEED_REPORT};
	static const struct need bolt[NEED_MAX] = {NEED_DIAMETER,
						   {FIELD_FASTENER_WASHER_DIAMETER,
						    "fastener.washer-diameter",
						    "a length such as 1-3/8 in"}};
	static const struct need hanger[NEED_MAX] = {
		NEED_DIAMETER,
		NEED_LENGTH,
		{FIELD_FASTENER_THREAD_LENGTH, "fastener.thread-length",
		 "the length of the wood thread, such as 2-1/2 in"}};
	static const struct need clamp[NEED_MAX] = {
		{FIELD_ROOF_SEAM_SPACING, "roof.seam-spacing", "a length such as 16 in"},
		{FIELD_ROOF_FIRST_SEAM, "roof.first-seam", "a length such as 9 in"},
		NEED_MOUNT_UPLIFT,
		NEED_MOUNT_SLOPE,
		NEED_FACTOR,
		NEED_REPORT};
	static const struct need deck[NEED_MAX] = {
		{FIELD_FASTENER_DECK, "fastener.deck", "the kind of deck it was tested on"},
		{FIELD_FASTENER_DECK_THICKNESS, "fastener.deck-thickness",
		 "the thickness it was tested on, such as 15/32 in"},
		NEED_MOUNT_UPLIFT,
		NEED_MOUNT_SLOPE,
		NEED_FACTOR,
		NEED_REPORT};
	static const struct need sheet[NEED_MAX] = {
		NEED_DIAMETER,
		{FIELD_FASTENER_STEEL_THICKNESS, "fastener.steel-thickness",
		 "the bare thickness of the framing steel, such as 0.060 in"}};

	switch (kind) {
	case FASTENER_LAG_SCREW:
	case FASTENER_WOOD_SCREW:
		return screw;
	case FASTENER_STRUCTURAL_SCREW:
		return tested;
	case FASTENER_THROUGH_BOLT:
		return bolt;
	case FASTENER_HANGER_BOLT:
		return hanger;
	case FASTENER_SEAM_CLAMP:
		return clamp;
	case FASTENER_DECK_MOUNT:
		return deck;
	case FASTENER_SHEET_SCREW:
		return sheet;
	}
	return screw;
}

static void sharing(const struct rule *r)
{
	const struct job_framing *f = &r->job->framing;

	if (HAVE(r, FIELD_FRAMING_SHARING) && f->sharing > 0.0 &&
	    !HAVE(r, FIELD_FRAMING_SHARING_REASON))
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_SHARING, "framing.sharing-reason", NULL,
			  "what the sharing rests on");
	if ((HAVE(r, FIELD_FRAMING_ALLOWABLE_UPLIFT) || HAVE(r, FIELD_FRAMING_ALLOWABLE_DOWN)) &&
	    !HAVE(r, FIELD_FRAMING_REPORT))
		rule_tell(r, PROBLEM_MISSING,
			  HAVE(r, FIELD_FRAMING_ALLOWABLE_UPLIFT) ? FIELD_FRAMING_ALLOWABLE_UPLIFT
								  : FIELD_FRAMING_ALLOWABLE_DOWN,
			  "framing.report", NULL, "who gave the allowables: name, date, document");
}

void rules_of_fastener(const struct rule *r)
{
	const struct need *n;

	sharing(r);
	if (!HAVE(r, FIELD_FASTENER_KIND))
		return;
	/* a value that was given and refused has had its own problem */
	for (n = needs(r->job->fastener.kind); n->path; n++)
		if (!HAVE(r, n->id) && r->source->line[n->id] == 0)
			rule_tell(r, PROBLEM_MISSING, FIELD_FASTENER_KIND, n->path, NULL,
				  n->accepted);
}
