/* SPDX-License-Identifier: MIT */
/* Cross-field rules of the collectors and where they lie. */
#include <math.h>
#include <stdio.h>

#include "job/rule.h"

double job_collector_along(const struct job *job)
{
	return job->collector.orientation == PORTRAIT ? job->collector.width
						      : job->collector.length;
}

double job_collector_up(const struct job *job)
{
	return job->collector.orientation == PORTRAIT ? job->collector.length
						      : job->collector.width;
}

double job_collector_tilt(const struct job *job)
{
	const struct job_collector *c = &job->collector;

	if (job_given(job, FIELD_COLLECTOR_TILT) || !(c->high_edge > c->clearance))
		return c->tilt;
	return asin(fmin(1.0, (c->high_edge - c->clearance) / job_collector_up(job)));
}

/* 2 deg: up to there a collector counts as flush and lies on the plane. */
double job_array_up(const struct job *job)
{
	const struct job_collector *c = &job->collector;
	const double tilt = job_collector_tilt(job);
	const double up =
		job_collector_up(job) * (at_most(tilt, 2.0 * RAD_PER_DEG) ? 1.0 : cos(tilt));

	return c->rows * up + (c->rows - 1) * c->row_gap;
}

static void shape(const struct rule *r)
{
	const struct job_collector *c = &r->job->collector;
	char given[40];

	if (HAVE(r, FIELD_COLLECTOR_LENGTH, FIELD_COLLECTOR_WIDTH) && !at_most(c->width, c->length))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_COLLECTOR_WIDTH,
			  "collector.width, collector.length",
			  rule_length(r, given, sizeof given, c->width),
			  "length is the long side, width the short one");
	if (HAVE(r, FIELD_COLLECTOR_COLUMNS, FIELD_COLLECTOR_ROWS) &&
	    c->columns * c->rows > COLLECTOR_MAX) {
		snprintf(given, sizeof given, "%d collectors", c->columns * c->rows);
		rule_tell(r, PROBLEM_OUT_OF_RANGE, FIELD_COLLECTOR_COLUMNS,
			  "collector.columns, collector.rows", given, "at most 64 in one job");
	}
}

static void weight(const struct rule *r)
{
	const struct job_collector *c = &r->job->collector;
	const bool dry = HAVE(r, FIELD_COLLECTOR_FLUID) && c->fluid == FLUID_NONE;
	char given[40];

	if (HAVE(r, FIELD_COLLECTOR_DRY_WEIGHT, FIELD_COLLECTOR_FILLED_WEIGHT) &&
	    !at_least(c->filled_weight, c->dry_weight))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_COLLECTOR_FILLED_WEIGHT,
			  "collector.filled-weight, collector.dry-weight",
			  quantity_print(given, sizeof given, c->filled_weight,
					 r->job->units == SYSTEM_US ? UNIT_LB : UNIT_KG, 1),
			  "no less than the dry weight");
	if (HAVE(r, FIELD_COLLECTOR_KIND) && c->kind != COLLECTOR_PV && !dry &&
	    isnan(c->filled_weight) && isnan(c->fluid_volume) &&
	    r->source->line[FIELD_COLLECTOR_FILLED_WEIGHT] == 0 &&
	    r->source->line[FIELD_COLLECTOR_FLUID_VOLUME] == 0)
		rule_tell(
			r, PROBLEM_MISSING, FIELD_COLLECTOR_KIND, "collector.filled-weight", NULL,
			"the weight full, or fluid-volume, or fluid=\"none\" for an air collector");
}

static void gaps(const struct rule *r)
{
	const struct job_collector *c = &r->job->collector;

	if (HAVE(r, FIELD_COLLECTOR_COLUMNS) && c->columns > 1 && isnan(c->column_gap) &&
	    r->source->line[FIELD_COLLECTOR_COLUMN_GAP] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_COLLECTOR_COLUMNS, "collector.column-gap", NULL,
			  "the clear gap between columns, such as 1 in");
	if (HAVE(r, FIELD_COLLECTOR_ROWS) && c->rows > 1 && isnan(c->row_gap) &&
	    r->source->line[FIELD_COLLECTOR_ROW_GAP] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_COLLECTOR_ROWS, "collector.row-gap", NULL,
			  "the clear gap between rows, such as 1 in");
}

static void insets(const struct rule *r)
{
	const struct job_rail *rail = &r->job->rail;
	char given[40], accepted[100], limit[40];

	if (!HAVE(r, FIELD_RAIL_LOWER_INSET, FIELD_RAIL_UPPER_INSET, FIELD_COLLECTOR_ORIENTATION,
		  FIELD_COLLECTOR_LENGTH, FIELD_COLLECTOR_WIDTH))
		return;
	if (!at_least(rail->lower_inset + rail->upper_inset, job_collector_up(r->job)))
		return;
	rule_length(r, limit, sizeof limit, job_collector_up(r->job));
	snprintf(accepted, sizeof accepted,
		 "together less than %s, the collector's size up the slope", limit);
	rule_tell(r, PROBLEM_DISAGREE, FIELD_RAIL_UPPER_INSET, "rail.lower-inset, rail.upper-inset",
		  rule_length(r, given, sizeof given, rail->lower_inset + rail->upper_inset),
		  accepted);
}

/* A largest inset below the inset itself; both largest together past the collector. */
static void inset_ranges(const struct rule *r)
{
	const struct job_rail *rail = &r->job->rail;
	char given[40], accepted[100], limit[40];

	if (HAVE(r, FIELD_RAIL_LOWER_INSET, FIELD_RAIL_LOWER_INSET_MAX) &&
	    !at_least(rail->lower_inset_max, rail->lower_inset))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_RAIL_LOWER_INSET_MAX,
			  "rail.lower-inset, rail.lower-inset-max",
			  rule_length(r, given, sizeof given, rail->lower_inset_max),
			  "at least the inset itself");
	if (HAVE(r, FIELD_RAIL_UPPER_INSET, FIELD_RAIL_UPPER_INSET_MAX) &&
	    !at_least(rail->upper_inset_max, rail->upper_inset))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_RAIL_UPPER_INSET_MAX,
			  "rail.upper-inset, rail.upper-inset-max",
			  rule_length(r, given, sizeof given, rail->upper_inset_max),
			  "at least the inset itself");
	if (!HAVE(r, FIELD_RAIL_LOWER_INSET, FIELD_RAIL_UPPER_INSET, FIELD_COLLECTOR_ORIENTATION,
		  FIELD_COLLECTOR_LENGTH, FIELD_COLLECTOR_WIDTH))
		return;
	const double together = fmax(rail->lower_inset_max, rail->lower_inset) +
				fmax(rail->upper_inset_max, rail->upper_inset);

	/* the insets alone are `insets`' matter */
	if (!at_least(together, job_collector_up(r->job)) ||
	    at_least(rail->lower_inset + rail->upper_inset, job_collector_up(r->job)))
		return;
	rule_length(r, limit, sizeof limit, job_collector_up(r->job));
	snprintf(accepted, sizeof accepted,
		 "together less than %s, the collector's size up the slope", limit);
	rule_tell(r, PROBLEM_DISAGREE, FIELD_RAIL_UPPER_INSET_MAX,
		  "rail.lower-inset-max, rail.upper-inset-max",
		  rule_length(r, given, sizeof given, together), accepted);
}

/* One direction of the array on the plane. */
static void fits(const struct rule *r, enum field_id id, const char *fields, double start,
		 double size, double plane, const char *from, const char *plane_words)
{
	char given[80], accepted[100], end[40], limit[40];

	if (isnan(start + size + plane) || at_most(start + size, plane))
		return;
	rule_length(r, end, sizeof end, start + size);
	rule_length(r, limit, sizeof limit, plane);
	snprintf(given, sizeof given, "an array that ends %s from the %s", end, from);
	snprintf(accepted, sizeof accepted, "at most %s, the %s", limit, plane_words);
	rule_tell(r, PROBLEM_OFF_ROOF, id, fields, given, accepted);
}

static void place(const struct rule *r)
{
	const struct job *job = r->job;
	const struct job_collector *c = &job->collector;

	if (!HAVE(r, FIELD_BUILDING_FORM, FIELD_COLLECTOR_ORIENTATION, FIELD_COLLECTOR_LENGTH,
		  FIELD_COLLECTOR_WIDTH, FIELD_COLLECTOR_COLUMNS, FIELD_COLLECTOR_ROWS,
		  FIELD_BUILDING_EAVE_OVERHANG, FIELD_BUILDING_RAKE_OVERHANG))
		return;
	if (HAVE(r, FIELD_BUILDING_LENGTH, FIELD_COLLECTOR_LEFT))
		fits(r, FIELD_COLLECTOR_LEFT, "collector.left, collector.columns, building.length",
		     c->left,
		     c->columns * job_collector_along(job) + (c->columns - 1) * c->column_gap,
		     job_plane_length(job), "left rake edge", "length of the roof");
	if (HAVE(r, FIELD_BUILDING_WIDTH, FIELD_ROOF_PITCH, FIELD_COLLECTOR_LOWER))
		fits(r, FIELD_COLLECTOR_LOWER,
		     "collector.lower, collector.rows, building.width, roof.pitch", c->lower,
		     job_array_up(job),
		     job_plane_slope(job), "eave edge", "slope length of the roof");
}

void rules_of_array(const struct rule *r)
{
	shape(r);
	weight(r);
	gaps(r);
	insets(r);
	inset_ranges(r);
	place(r);
}
