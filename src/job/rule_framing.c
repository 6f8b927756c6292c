/* SPDX-License-Identifier: MIT */
/* What rafters with inner supports, their tails, and blocks between them need to be told. */
#include "job/rule.h"

#include <math.h>
#include <stdio.h>

/* A support nearer to wall or ridge than this is no inner one. */
#define LEAST_SPAN M_PER_FT

static void inner_support(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	const struct job_framing *f = &r->job->framing;
	char given[40], most_text[40], accepted[120];

	if (HAVE(r, FIELD_FRAMING_CONTINUOUS) && !HAVE(r, FIELD_FRAMING_INNER_SUPPORT) &&
	    r->source->line[FIELD_FRAMING_INNER_SUPPORT] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_CONTINUOUS, "framing.inner-support",
			  NULL, "how far from the wall the support stands, level");
	if (!HAVE(r, FIELD_FRAMING_INNER_SUPPORT, FIELD_BUILDING_FORM, FIELD_BUILDING_WIDTH))
		return;
	const double run = b->form == FORM_GABLE || b->form == FORM_HIP ? b->width / 2 : b->width;

	if (at_most(f->inner_support, run - LEAST_SPAN))
		return;
	rule_length(r, most_text, sizeof most_text, run - LEAST_SPAN);
	snprintf(accepted, sizeof accepted,
		 "at most %s, a foot short of the upper support; measured level", most_text);
	rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_INNER_SUPPORT,
		  "framing.inner-support, building.width",
		  rule_length(r, given, sizeof given, f->inner_support), accepted);
}

/* Those above the first: each a foot above the one before it, and below the ridge. */
static void more_supports(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	const struct job_framing *f = &r->job->framing;
	const double run = b->form == FORM_GABLE || b->form == FORM_HIP ? b->width / 2 : b->width;
	char field[64], given[40], accepted[120], limit[40];

	if (f->supports > 0 && !HAVE(r, FIELD_FRAMING_INNER_SUPPORT)) {
		if (r->source->line[FIELD_FRAMING_INNER_SUPPORT] == 0)
			rule_tell_row(r, PROBLEM_MISSING, ELEMENT_SUPPORT, 0, "framing.inner-support",
				      NULL, "the lowest of the inner supports");
		return;
	}
	for (int i = 0; i < f->supports; i++) {
		const double below = i > 0 ? f->support[i - 1] : f->inner_support;

		if (isnan(f->support[i]) || isnan(below))
			continue;
		snprintf(field, sizeof field, "support[%d].at", i + 1);
		rule_length(r, given, sizeof given, f->support[i]);
		if (!at_least(f->support[i], below + LEAST_SPAN)) {
			rule_length(r, limit, sizeof limit, below + LEAST_SPAN);
			snprintf(accepted, sizeof accepted,
				 "at least %s, a foot above the support before it", limit);
			rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_SUPPORT, i, field, given, accepted);
		} else if (HAVE(r, FIELD_BUILDING_FORM, FIELD_BUILDING_WIDTH) &&
			   !at_most(f->support[i], run - LEAST_SPAN)) {
			rule_length(r, limit, sizeof limit, run - LEAST_SPAN);
			snprintf(accepted, sizeof accepted,
				 "at most %s, a foot short of the upper support; measured level", limit);
			rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_SUPPORT, i, field, given, accepted);
		}
	}
}

static void tail(const struct rule *r)
{
	const struct job_framing *f = &r->job->framing;
	char given[40];

	if (HAVE(r, FIELD_FRAMING_TAIL_DEPTH) && !at_most(f->tail_depth, f->depth))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_TAIL_DEPTH,
			  "framing.tail-depth, framing.depth",
			  rule_length(r, given, sizeof given, f->tail_depth),
			  "no more than the rafter is deep");
}

/* A hanger is known whole, with its report, or not at all. */
static void hanger(const struct rule *r)
{
	static const struct {
		enum field_id id;
		const char *path;
	} part[] = {{FIELD_MOUNT_BLOCK_END_UPLIFT, "mount.block-end-uplift"},
		    {FIELD_MOUNT_BLOCK_END_DOWN, "mount.block-end-down"},
		    {FIELD_MOUNT_BLOCK_END_SLOPE, "mount.block-end-slope"},
		    {FIELD_MOUNT_BLOCK_REPORT, "mount.block-report"}};
	const int parts = sizeof part / sizeof *part;
	int first = parts;

	for (int i = parts - 1; i >= 0; i--)
		if (HAVE(r, part[i].id))
			first = i;
	for (int i = 0; first < parts && i < parts; i++)
		if (!HAVE(r, part[i].id) && r->source->line[part[i].id] == 0)
			rule_tell(r, PROBLEM_MISSING, part[first].id, part[i].path, NULL,
				  "all three tested values of the hanger, and their report");
}

void rules_of_framing(const struct rule *r)
{
	inner_support(r);
	more_supports(r);
	tail(r);
	hanger(r);
}
