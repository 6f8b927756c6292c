/* SPDX-License-Identifier: MIT */
/* Cross-field rules of the house as a shape, its rafters and its pipes. */
#include <math.h>
#include <stdio.h>

#include "job/rule.h"

double job_plane_length(const struct job *job)
{
	const struct job_building *b = &job->building;

	if (b->form >= FORM_OTHER)
		return (double)NAN;
	if (b->form == FORM_HIP && b->plane == PLANE_END)
		return b->width + 2.0 * b->eave_overhang;
	return b->length + 2.0 * (b->form == FORM_HIP ? b->eave_overhang : b->rake_overhang);
}

double job_plane_slope(const struct job *job)
{
	const struct job_building *b = &job->building;

	switch (b->form) {
	case FORM_GABLE:
	case FORM_HIP:
		return (b->width / 2.0 + b->eave_overhang) / cos(job->roof.pitch);
	case FORM_FLAT:
	case FORM_MONOSLOPE:
		return (b->width + 2.0 * b->eave_overhang) / cos(job->roof.pitch);
	case FORM_OTHER:
	case FORM_MULTISPAN:
	case FORM_CURVED:
	case FORM_STEPPED:
		break;
	}
	return (double)NAN;
}

/* Rise of the ridge over the eave. */
static double rise(const struct job *job)
{
	const double run = job->building.form == FORM_MONOSLOPE || job->building.form == FORM_FLAT
				   ? job->building.width
				   : job->building.width / 2.0;

	return run * tan(job->roof.pitch);
}

static void form(const struct rule *r)
{
	const struct job *job = r->job;
	char given[40], accepted[100], least[40];

	if (!HAVE(r, FIELD_BUILDING_FORM, FIELD_ROOF_PITCH))
		return;
	/* 7 deg: the limit of the low-slope figures of ASCE/SEI 7 chapter 30 */
	if (job->building.form == FORM_FLAT && !at_most(job->roof.pitch, 7.0 * RAD_PER_DEG))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_BUILDING_FORM, "building.form, roof.pitch",
			  pitch_print(given, sizeof given, job->roof.pitch),
			  "a flat roof has at most 7 deg; else monoslope");
	if (!HAVE(r, FIELD_BUILDING_WIDTH, FIELD_BUILDING_MEAN_ROOF_HEIGHT) ||
	    job->building.form >= FORM_OTHER)
		return;
	if (!at_least(job->building.mean_roof_height, rise(job) / 2.0)) {
		rule_length(r, least, sizeof least, rise(job) / 2.0);
		snprintf(accepted, sizeof accepted, "at least %s, or the eave stands below ground",
			 least);
		rule_tell(r, PROBLEM_DISAGREE, FIELD_BUILDING_MEAN_ROOF_HEIGHT,
			  "building.mean-roof-height, building.width, roof.pitch",
			  rule_length(r, given, sizeof given, job->building.mean_roof_height),
			  accepted);
	}
}

/* 1 ft: widths are taken to a foot. */
#define WIDTH_TOLERANCE M_PER_FT

static void span(const struct rule *r)
{
	const struct job_building *b = &r->job->building;
	char given[40], accepted[100], most_text[40];
	double most;

	if (!HAVE(r, FIELD_FRAMING_SPAN, FIELD_BUILDING_FORM, FIELD_BUILDING_LENGTH,
		  FIELD_BUILDING_WIDTH))
		return;
	most = b->form == FORM_GABLE || b->form == FORM_HIP ? b->width / 2.0
							    : fmax(b->width, b->length);
	if (at_most(r->job->framing.span, most + WIDTH_TOLERANCE))
		return;
	rule_length(r, most_text, sizeof most_text, most);
	snprintf(accepted, sizeof accepted, "at most %s, measured level and not along the slope",
		 most_text);
	rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_SPAN, "framing.span, building.width",
		  rule_length(r, given, sizeof given, r->job->framing.span), accepted);
}

static void courses(const struct rule *r)
{
	const struct job_roof *roof = &r->job->roof;
	char given[40];

	if (HAVE(r, FIELD_ROOF_COURSE_EXPOSURE, FIELD_ROOF_PIECE_LENGTH) &&
	    at_least(roof->course_exposure, roof->piece_length))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_ROOF_COURSE_EXPOSURE,
			  "roof.course-exposure, roof.piece-length",
			  rule_length(r, given, sizeof given, roof->course_exposure),
			  "less than the piece is long");
}

/* Joints that were measured one by one: there are some, on this roof, in courses that can be counted. */
static void measured_joints(const struct rule *r, double length)
{
	const struct job_roof *roof = &r->job->roof;
	char field[64], given[40], accepted[100], limit[40];

	if (roof->measured_joints > 0 && roof->joints != JOINTS_MEASURED)
		rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_JOINT, 0, "joint[1].at, roof.joints", NULL,
			      "roof.joints measured beside it");
	if (roof->joints == JOINTS_MEASURED && roof->measured_joints == 0 && r->source->row_line[ELEMENT_JOINT][0] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_ROOF_JOINTS, "joint.at", NULL,
			  "two or more joints, since roof.joints is measured");
	if (roof->joints == JOINTS_MEASURED && !job_given(r->job, FIELD_ROOF_FIRST_BUTT))
		rule_tell(r, PROBLEM_MISSING, FIELD_ROOF_JOINTS, "roof.first-butt", NULL,
			  "a length, since the courses of measured joints are counted from it");
	for (int i = 0; i < roof->measured_joints; i++) {
		if (isnan(length) || isnan(roof->joint[i].at) || at_most(roof->joint[i].at, length))
			continue;
		snprintf(field, sizeof field, "joint[%d].at", i + 1);
		snprintf(accepted, sizeof accepted, "at most %s, the length of the roof",
			 rule_length(r, limit, sizeof limit, length));
		rule_tell_row(r, PROBLEM_OFF_ROOF, ELEMENT_JOINT, i, field,
			      rule_length(r, given, sizeof given, roof->joint[i].at), accepted);
	}
}

/* Joints that repeat are known by three lengths; joints that do not, by none. */
static void joints(const struct rule *r)
{
	static const enum field_id needed[] = {FIELD_ROOF_PIECE_WIDTH, FIELD_ROOF_FIRST_JOINT};
	static const enum field_id all[] = {FIELD_ROOF_PIECE_WIDTH, FIELD_ROOF_FIRST_JOINT, FIELD_ROOF_JOINT_COURSE,
					    FIELD_ROOF_JOINT_SHIFT};
	const struct job_roof *roof = &r->job->roof;
	char field[64], given[40];

	for (size_t i = 0; i < sizeof needed / sizeof *needed; i++) {
		snprintf(field, sizeof field, "roof.%s", field_table[needed[i]].attribute);
		if (roof->joints == JOINTS_REGULAR && !HAVE(r, needed[i]) && r->source->line[needed[i]] == 0)
			rule_tell(r, PROBLEM_MISSING, FIELD_ROOF_JOINTS, field, NULL,
				  "a length, since roof.joints is regular");
	}
	if (roof->joints == JOINTS_MEASURED && !HAVE(r, FIELD_ROOF_PIECE_WIDTH) &&
	    r->source->line[FIELD_ROOF_PIECE_WIDTH] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_ROOF_JOINTS, "roof.piece-width", NULL,
			  "a length, the widest piece, since roof.joints is measured");
	for (size_t i = roof->joints == JOINTS_MEASURED ? 1 : 0; i < sizeof all / sizeof *all && roof->joints != JOINTS_REGULAR; i++) {
		snprintf(field, sizeof field, "roof.%s, roof.joints", field_table[all[i]].attribute);
		if (job_given(r->job, all[i]))
			rule_tell(r, PROBLEM_DISAGREE, all[i], field, NULL, "roof.joints regular beside it");
	}
	if (HAVE(r, FIELD_ROOF_PIECE_WIDTH, FIELD_ROOF_JOINT_SHIFT) && roof->joints == JOINTS_REGULAR &&
	    at_least(roof->joint_shift, roof->piece_width))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_ROOF_JOINT_SHIFT, "roof.joint-shift, roof.piece-width",
			  rule_length(r, given, sizeof given, roof->joint_shift), "less than a piece is wide");
}

/* Rafters given by first and spacing. */
static void regular_rafters(const struct rule *r, double length)
{
	const struct job_framing *f = &r->job->framing;
	const struct job_source *s = r->source;
	char given[48], accepted[100], limit[40];

	if (isnan(f->spacing) && s->line[FIELD_FRAMING_SPACING] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_KIND, "framing.spacing", NULL,
			  "a length such as 16 in, or two or more measured rafters");
	if (isnan(f->first) && s->line[FIELD_FRAMING_FIRST] == 0)
		rule_tell(r, PROBLEM_MISSING, FIELD_FRAMING_KIND, "framing.first", NULL,
			  "a length such as 8 in, or two or more measured rafters");
	if (isnan(f->first) || isnan(length))
		return;
	rule_length(r, limit, sizeof limit, length);
	if (!at_most(f->first, length)) {
		snprintf(accepted, sizeof accepted, "at most %s, the length of the roof", limit);
		rule_tell(r, PROBLEM_OFF_ROOF, FIELD_FRAMING_FIRST, "framing.first",
			  rule_length(r, given, sizeof given, f->first), accepted);
	} else if (!isnan(f->spacing) &&
		   floor((length - f->first) / f->spacing) + 1.0 > RAFTER_MAX) {
		snprintf(given, sizeof given, "%.0f rafters",
			 floor((length - f->first) / f->spacing) + 1.0);
		snprintf(accepted, sizeof accepted, "at most %d rafters on one roof", RAFTER_MAX);
		rule_tell(r, PROBLEM_OUT_OF_RANGE, FIELD_FRAMING_SPACING,
			  "framing.spacing, building.length", given, accepted);
	}
}

static void measured_rafters(const struct rule *r, double length)
{
	const struct job_framing *f = &r->job->framing;
	char field[64], given[40], accepted[100], limit[40];

	if (f->measured == 1)
		rule_tell_row(r, PROBLEM_MISSING, ELEMENT_RAFTER, 0, "rafter[2].at", NULL,
			      "two or more measured rafters, or none and framing.spacing and "
			      "framing.first");
	if (job_given(r->job, FIELD_FRAMING_FIRST) &&
	    !at_most(fabs(f->first - f->at[0]), M_PER_IN / 4.0))
		rule_tell(r, PROBLEM_DISAGREE, FIELD_FRAMING_FIRST, "framing.first, rafter[1].at",
			  rule_length(r, given, sizeof given, f->first),
			  "the measured rafters alone");
	for (int i = 0; i < f->measured; i++) {
		snprintf(field, sizeof field, "rafter[%d].at", i + 1);
		rule_length(r, given, sizeof given, f->at[i]);
		if (!isnan(length) && !isnan(f->at[i]) && !at_most(f->at[i], length)) {
			rule_length(r, limit, sizeof limit, length);
			snprintf(accepted, sizeof accepted, "at most %s, the length of the roof",
				 limit);
			rule_tell_row(r, PROBLEM_OFF_ROOF, ELEMENT_RAFTER, i, field, given,
				      accepted);
		}
		if (i > 0 && f->at[i] <= f->at[i - 1]) {
			snprintf(accepted, sizeof accepted, "more than %s, the rafter before it",
				 rule_length(r, limit, sizeof limit, f->at[i - 1]));
			rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_RAFTER, i, field, given,
				      accepted);
		}
	}
}

static void pipe_place(const struct rule *r, int i, const char *attribute, double at, double limit,
		       const char *what)
{
	char field[64], given[40], accepted[100], limit_text[40];

	if (isnan(at) || isnan(limit) || at_most(at, limit))
		return;
	snprintf(field, sizeof field, "pipe[%d].%s", i + 1, attribute);
	rule_length(r, limit_text, sizeof limit_text, limit);
	snprintf(accepted, sizeof accepted, "at most %s, the %s of the roof plane", limit_text,
		 what);
	rule_tell_row(r, PROBLEM_OFF_ROOF, ELEMENT_PIPE, i, field,
		      rule_length(r, given, sizeof given, at), accepted);
}

static void pipes(const struct rule *r, double length, double slope)
{
	char field[64];

	for (int i = 0; i < r->job->pipes; i++) {
		const struct job_pipe *p = &r->job->pipe[i];

		pipe_place(r, i, "at", p->at, length, "length");
		pipe_place(r, i, "up", p->up, slope, "slope length");
		if (isnan(p->at) != isnan(p->up)) {
			snprintf(field, sizeof field, "pipe[%d].%s", i + 1,
				 isnan(p->at) ? "at" : "up");
			rule_tell_row(r, PROBLEM_MISSING, ELEMENT_PIPE, i, field, NULL,
				      "both at and up, or neither");
		}
		if (p->insulated_diameter < p->diameter) {
			snprintf(field, sizeof field, "pipe[%d].insulated-diameter", i + 1);
			rule_tell_row(r, PROBLEM_DISAGREE, ELEMENT_PIPE, i, field,
				      "less than the bare pipe",
				      "the diameter over the insulation");
		}
	}
}

void rules_of_roof(const struct rule *r)
{
	const bool known_length = HAVE(r, FIELD_BUILDING_FORM, FIELD_BUILDING_LENGTH,
				       FIELD_BUILDING_RAKE_OVERHANG, FIELD_BUILDING_EAVE_OVERHANG);
	const bool known_slope = HAVE(r, FIELD_BUILDING_FORM, FIELD_BUILDING_WIDTH,
				      FIELD_BUILDING_EAVE_OVERHANG, FIELD_ROOF_PITCH);
	const double length = known_length ? job_plane_length(r->job) : (double)NAN;
	const double slope = known_slope ? job_plane_slope(r->job) : (double)NAN;

	form(r);
	span(r);
	courses(r);
	joints(r);
	measured_joints(r, length);
	if (r->job->framing.measured > 0)
		measured_rafters(r, length);
	else if (HAVE(r, FIELD_FRAMING_KIND))
		regular_rafters(r, length);
	pipes(r, length, slope);
}
