/* SPDX-License-Identifier: MIT */
/* Cross-field rules of wind: topography, the planes of a hip roof, tilted collectors. */
#include "job/rule.h"

#include <math.h>
#include <stdio.h>

static bool hill_given(const struct rule *r)
{
	for (int id = FIELD_HILL_SHAPE; id <= FIELD_HILL_UPPER_HALF; id++)
		if (job_given(r->job, (enum field_id)id))
			return true;
	return false;
}

/* A hill is described whole or not at all. */
static void hill(const struct rule *r)
{
	static const struct {
		enum field_id id;
		const char *field, *accepted;
	} needed[] = {
		{FIELD_HILL_SHAPE, "hill.shape", "ridge, escarpment or hill"},
		{FIELD_HILL_HEIGHT, "hill.height", "the height H of the crest, such as 120 ft"},
		{FIELD_HILL_HALF_LENGTH, "hill.half-length",
		 "the level distance Lh from the crest to half its height, such as 300 ft"},
		{FIELD_HILL_DISTANCE, "hill.distance",
		 "the level distance from the crest to the house, such as 60 ft"},
	};

	for (size_t i = 0; i < sizeof needed / sizeof needed[0]; i++)
		if (!job_given(r->job, needed[i].id) && r->source->line[needed[i].id] == 0)
			rule_tell(r, PROBLEM_MISSING, needed[i].id, needed[i].field, NULL,
				  needed[i].accepted);
}

static void topography(const struct rule *r)
{
	const struct job_site *s = &r->job->site;
	const bool Kzt = job_given(r->job, FIELD_SITE_KZT), ground = hill_given(r);

	if (ground)
		hill(r);
	if (!HAVE(r, FIELD_SITE_TOPOGRAPHY))
		return;
	if (s->topography == TOPOGRAPHY_DESCRIBED && !Kzt && !ground)
		rule_tell(
			r, PROBLEM_MISSING, FIELD_SITE_TOPOGRAPHY, "site.Kzt", NULL,
			"Kzt of ASCE/SEI 7 section 26.8 or an element hill, since site.topography "
			"is described");
	if (s->topography != TOPOGRAPHY_DESCRIBED && Kzt)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_SITE_KZT, "site.Kzt, site.topography",
			  "Kzt without a described site",
			  "topography=\"described\" with Kzt, or no Kzt");
	if (s->topography != TOPOGRAPHY_DESCRIBED && ground)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_HILL_SHAPE, "hill, site.topography",
			  "a hill without a described site",
			  "topography=\"described\" with a hill, or no hill");
	if (Kzt && ground)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_SITE_KZT, "site.Kzt, hill", "both",
			  "Kzt alone, or the hill that it is computed from");
}

/* Half the width on plan, overhang included: the plan run of every plane of a hip roof. */
static double hip_run(const struct job *job)
{
	return job->building.width / 2.0 + job->building.eave_overhang;
}

/* The array is a rectangle: it fits below the hips if its upper corners do. */
static void below_hips(const struct rule *r)
{
	const struct job *job = r->job;
	const struct job_collector *c = &job->collector;
	const double top = c->lower + job_array_up(job);
	const double in = fmin(top * cos(job->roof.pitch), hip_run(job));
	const double right =
		c->left + c->columns * job_collector_along(job) + (c->columns - 1) * c->column_gap;
	char given[100], accepted[120], left_text[40], right_text[40];

	if (isnan(top + right) ||
	    (at_least(c->left, in) && at_most(right, job_plane_length(job) - in)))
		return;
	snprintf(given, sizeof given, "an array from %s to %s",
		 rule_length(r, left_text, sizeof left_text, c->left),
		 rule_length(r, right_text, sizeof right_text, right));
	snprintf(accepted, sizeof accepted, "from %s to %s at its upper edge, between the hips",
		 rule_length(r, left_text, sizeof left_text, in),
		 rule_length(r, right_text, sizeof right_text,
			     fmax(in, job_plane_length(job) - in)));
	rule_tell(r, PROBLEM_OFF_ROOF, FIELD_COLLECTOR_LEFT,
		  "collector.left, collector.lower, building.plane", given, accepted);
}

/* A pipe goes through this plane, not through the one behind the hip. */
static void pipes_below_hips(const struct rule *r)
{
	const struct job *job = r->job;
	char field[64], given[40], accepted[120], left[40], right[40];

	for (int i = 0; i < job->pipes; i++) {
		const struct job_pipe *p = &job->pipe[i];
		const double in = fmin(p->up * cos(job->roof.pitch), hip_run(job));
		const double far = job_plane_length(job) - in;

		if (isnan(p->at + p->up + far) || (at_least(p->at, in) && at_most(p->at, far)))
			continue;
		snprintf(field, sizeof field, "pipe[%d].at", i + 1);
		snprintf(accepted, sizeof accepted, "from %s to %s at its height, between the hips",
			 rule_length(r, left, sizeof left, in),
			 rule_length(r, right, sizeof right, fmax(in, far)));
		rule_tell_row(r, PROBLEM_OFF_ROOF, ELEMENT_PIPE, i, field,
			      rule_length(r, given, sizeof given, p->at), accepted);
	}
}

/* An obstacle no part of which lies on the plane was measured from another corner or stands on another plane; one that
   straddles a hip or an edge counts with what is here. */
static void obstacles_on_plane(const struct rule *r)
{
	const struct job *job = r->job;
	const bool hip = job->building.form == FORM_HIP;
	char field[64], given[100], accepted[120], left[40], right[40], low[40];

	for (int i = 0; i < job->obstacles; i++) {
		const struct job_obstacle *o = &job->obstacle[i];
		/* the plane is widest at the obstacle's lower edge */
		const double in = hip ? fmin(o->y * cos(job->roof.pitch), hip_run(job)) : 0.0;
		const double far = job_plane_length(job) - in, slope = job_plane_slope(job);

		if (isnan(o->x + o->y + o->width + far + slope) ||
		    (o->x + o->width > in && o->x < far && o->y < slope))
			continue;
		snprintf(field, sizeof field, "obstacle[%d].x, obstacle[%d].y", i + 1, i + 1);
		snprintf(given, sizeof given, "%s to %s, %s up the slope", rule_length(r, left, sizeof left, o->x),
			 rule_length(r, right, sizeof right, o->x + o->width), rule_length(r, low, sizeof low, o->y));
		if (o->y < slope)
			snprintf(accepted, sizeof accepted, "some part of it from %s to %s, where this plane is at that height",
				 rule_length(r, left, sizeof left, in), rule_length(r, right, sizeof right, fmax(in, far)));
		else
			snprintf(accepted, sizeof accepted, "below %s up the slope, the upper edge of this plane",
				 rule_length(r, low, sizeof low, slope));
		rule_tell_row(r, PROBLEM_OFF_ROOF, ELEMENT_OBSTACLE, i, field, given, accepted);
	}
}

static void planes(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	char given[40];

	if (!HAVE(r, FIELD_BUILDING_FORM))
		return;
	if (b->plane == PLANE_END && b->form != FORM_HIP)
		rule_tell(r, PROBLEM_DISAGREE, FIELD_BUILDING_PLANE,
			  "building.plane, building.form", "the end of a roof without hips",
			  "end only on a hip roof");
	if ((b->form != FORM_HIP || b->plane != PLANE_UNKNOWN) && b->form < FORM_OTHER &&
	    HAVE(r, FIELD_BUILDING_LENGTH, FIELD_BUILDING_WIDTH, FIELD_BUILDING_EAVE_OVERHANG, FIELD_BUILDING_RAKE_OVERHANG,
	         FIELD_ROOF_PITCH))
		obstacles_on_plane(r);
	if (b->form != FORM_HIP || b->plane == PLANE_UNKNOWN ||
	    !HAVE(r, FIELD_BUILDING_LENGTH, FIELD_BUILDING_WIDTH))
		return;
	if (!at_least(b->length, b->width))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_BUILDING_LENGTH,
			  "building.length, building.width",
			  rule_length(r, given, sizeof given, b->length),
			  "length along the ridge of a hip roof is no less than the width");
	if (HAVE(r, FIELD_BUILDING_EAVE_OVERHANG, FIELD_ROOF_PITCH))
		pipes_below_hips(r);
	if (HAVE(r, FIELD_BUILDING_EAVE_OVERHANG, FIELD_ROOF_PITCH, FIELD_COLLECTOR_LEFT,
		 FIELD_COLLECTOR_LOWER, FIELD_COLLECTOR_ORIENTATION, FIELD_COLLECTOR_LENGTH,
		 FIELD_COLLECTOR_WIDTH, FIELD_COLLECTOR_COLUMNS, FIELD_COLLECTOR_ROWS))
		below_hips(r);
}

/* 1 degree: how well a rack's height and angle are measured. */
#define TILT_TOLERANCE RAD_PER_DEG

static void tilt(const struct rule *r)
{
	const struct job_collector *c = &r->job->collector;
	char given[40], accepted[100], limit[40];
	const double chord = job_collector_up(r->job);

	if (!job_given(r->job, FIELD_COLLECTOR_HIGH_EDGE) ||
	    !HAVE(r, FIELD_COLLECTOR_CLEARANCE, FIELD_COLLECTOR_ORIENTATION, FIELD_COLLECTOR_LENGTH,
		  FIELD_COLLECTOR_WIDTH))
		return;
	if (!at_least(c->high_edge, c->clearance) || !at_most(c->high_edge, c->clearance + chord)) {
		rule_length(r, limit, sizeof limit, c->clearance + chord);
		snprintf(accepted, sizeof accepted, "no less than the clearance, at most %s",
			 limit);
		rule_tell(r, PROBLEM_DISAGREE, FIELD_COLLECTOR_HIGH_EDGE,
			  "collector.high-edge, collector.clearance",
			  rule_length(r, given, sizeof given, c->high_edge), accepted);
		return;
	}
	if (job_given(r->job, FIELD_COLLECTOR_TILT) &&
	    !at_most(fabs(asin((c->high_edge - c->clearance) / chord) - c->tilt), TILT_TOLERANCE))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_COLLECTOR_TILT,
			  "collector.tilt, collector.high-edge",
			  rule_length(r, given, sizeof given, c->high_edge),
			  "the tilt alone, or the height of the upper edge alone");
}

void rules_of_wind(const struct rule *r)
{
	topography(r);
	planes(r);
	tilt(r);
}
