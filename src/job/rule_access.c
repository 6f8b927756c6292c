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

static void rake_paths(const struct rule *r, double across, double array)
{
	const struct job_building *b = &r->job->building;
	const double left = r->job->collector.left, right = across - left - array;

	if (b->access_side != ACCESS_RIGHT && !at_least(left, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path", left);
	if (b->access_side != ACCESS_LEFT && !at_least(right, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path", right);
}

/* The hip rises from the corner of the eave by the plane's slope length over its depth on plan; how
   far a point is from it, square to it on the roof. */
static double from_hip(double slope, double theta, double along, double up)
{
	const double run = slope * cos(theta);

	return (along * slope - up * run) / hypot(run, slope);
}

/* The array's upper corners come nearest to the hips. */
static void hip_paths(const struct rule *r, double across, double array)
{
	const struct job_building *b = &r->job->building;
	const struct job_collector *c = &r->job->collector;
	const double slope = job_plane_slope(r->job), theta = r->job->roof.pitch,
		     up = c->lower + job_array_up(r->job);
	const double left = from_hip(slope, theta, c->left, up),
		     right = from_hip(slope, theta, across - c->left - array, up);

	if (b->access_side != ACCESS_RIGHT && !at_least(left, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path", left);
	if (b->access_side != ACCESS_LEFT && !at_least(right, b->access_path))
		too_near(r, FIELD_COLLECTOR_LEFT, "collector.left, building.access-path", right);
}

void rules_of_access(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	const struct job_collector *c = &r->job->collector;
	const double gaps = c->columns > 1 ? (c->columns - 1) * c->column_gap : 0;
	const double array = c->columns * job_collector_along(r->job) + gaps;

	if (!HAVE(r, FIELD_COLLECTOR_LEFT, FIELD_COLLECTOR_LOWER, FIELD_COLLECTOR_LENGTH,
		  FIELD_COLLECTOR_WIDTH, FIELD_COLLECTOR_COLUMNS, FIELD_COLLECTOR_ROWS,
		  FIELD_BUILDING_LENGTH, FIELD_BUILDING_WIDTH, FIELD_BUILDING_EAVE_OVERHANG,
		  FIELD_ROOF_PITCH) ||
	    (c->columns > 1 && !HAVE(r, FIELD_COLLECTOR_COLUMN_GAP)) ||
	    (c->rows > 1 && !HAVE(r, FIELD_COLLECTOR_ROW_GAP)) ||
	    (b->form != FORM_HIP && !HAVE(r, FIELD_BUILDING_RAKE_OVERHANG)))
		return;
	const double plane = job_plane_length(r->job),
		     across = isnan(plane) ? b->length + 2 * b->rake_overhang : plane;

	if (!isnan(b->access_path) && b->form == FORM_HIP)
		hip_paths(r, across, array);
	else if (!isnan(b->access_path))
		rake_paths(r, across, array);
	if ((b->form == FORM_GABLE || (b->form == FORM_HIP && b->plane != PLANE_END)) &&
	    !isnan(b->ridge_clear)) {
		const double room = job_plane_slope(r->job) - c->lower - job_array_up(r->job);

		if (!at_least(room, b->ridge_clear))
			too_near(r, FIELD_COLLECTOR_LOWER, "collector.lower, building.ridge-clear",
				 room);
	}
}
