/* SPDX-License-Identifier: MIT */
/* What the job itself says must stay clear on the roof, against where it puts the array. How wide
   that is and on which roofs it is asked for (IRC R324.6 and local rules) is for the department to
   say; here only the job's own figures meet. */
#include <math.h>

#include "job/rule.h"

static void too_near(const struct rule *r, enum field_id id, const char *fields, double room)
{
	char given[40];

	rule_tell(r, PROBLEM_DISAGREE, id, fields, rule_length(r, given, sizeof given, room),
		  "an array that leaves the path or strip clear");
}

void rules_of_access(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	const struct job_collector *c = &r->job->collector;
	const double across = b->length + 2 * b->rake_overhang;
	const double array =
		c->columns * job_collector_along(r->job) + (c->columns - 1) * c->column_gap;

	/* A hip's rakes are slanted: the path follows the hip, and the drawing shows it to the eye
	 * alone. */
	if (b->form == FORM_HIP ||
	    !HAVE(r, FIELD_COLLECTOR_LEFT, FIELD_COLLECTOR_LOWER, FIELD_COLLECTOR_LENGTH,
		  FIELD_COLLECTOR_WIDTH, FIELD_COLLECTOR_COLUMNS, FIELD_COLLECTOR_ROWS,
		  FIELD_COLLECTOR_COLUMN_GAP, FIELD_COLLECTOR_ROW_GAP, FIELD_BUILDING_LENGTH,
		  FIELD_BUILDING_WIDTH, FIELD_BUILDING_RAKE_OVERHANG, FIELD_BUILDING_EAVE_OVERHANG,
		  FIELD_ROOF_PITCH))
		return;
	if (!isnan(b->access_path) && b->access_side != ACCESS_RIGHT &&
	    !at_least(c->left, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path", c->left);
	if (!isnan(b->access_path) && b->access_side != ACCESS_LEFT &&
	    !at_least(across - c->left - array, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path",
			 across - c->left - array);
	if (b->form == FORM_GABLE && !isnan(b->ridge_clear)) {
		const double slope = (b->width / 2 + b->eave_overhang) / cos(r->job->roof.pitch);
		const double room = slope - c->lower - job_array_up(r->job);

		if (!at_least(room, b->ridge_clear))
			too_near(r, FIELD_COLLECTOR_LOWER, "collector.lower, building.ridge-clear",
				 room);
	}
}
