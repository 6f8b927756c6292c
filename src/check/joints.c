/* SPDX-License-Identifier: MIT */
/* Holes and the joints between the pieces of a course: cut-outs, joints, side locks. Where they
   repeat, the distance of each hole is computed, and the ways out: along the eave as far as the
   rafter leaves the fastener its edge, or the whole line up or down the slope to a course whose
   joints lie elsewhere. Where they do not, the roof must be looked at. */
#include <math.h>

#include "check/courses.h"
#include "table/lookup_covering.h"
#include "table/lookup_wood.h"

/* Courses looked through for a better one: where a pattern shifts by a third or a quarter it has
 * come round by then. */
#define COURSES_TRIED 12

bool joints_of(const struct context *c, struct joint_pattern *p)
{
	const struct job_roof *roof = &c->job->roof;
	const struct covering_joint_row *row = covering_joint_row(roof->covering);

	const bool seen = roof->joints == JOINTS_MEASURED;

	/* without the courses only joints in one line are known */
	if (!row || (roof->joints != JOINTS_REGULAR && !seen) ||
	    ((seen || roof->joint_shift > 0) && !job_given(c->job, FIELD_ROOF_FIRST_BUTT)))
		return false;
	*p = (struct joint_pattern){.W = roof->piece_width,
				    .first = roof->first_joint,
				    .first_course = roof->joint_course,
				    .s = roof->joint_shift,
				    .own = row->own_in * M_PER_IN,
				    .cover = row->cover_in * M_PER_IN,
				    .seen = seen ? roof->joint : NULL,
				    .seen_count = seen ? roof->measured_joints : 0};
	return p->W > 0 && (seen || isfinite(p->first));
}

int joints_met(const struct context *c, const struct courses *k, const struct joint_pattern *p,
	       double y, double x0, double x1)
{
	const int course = courses_number(k, y);
	int met = 0;

	for (int i = 0; i < c->r->rafters; i++)
		if (at_least(c->r->rafter_x[i], x0) && at_most(c->r->rafter_x[i], x1))
			met += !joint_clear(p, course, c->r->rafter_x[i], NULL);
	return met;
}

/* How far a foot may stand beside the middle of its rafter: what is left beyond the edge distance
   of a screw that is pulled. 0 where it is not a screw in a rafter, or not known. */
static double room_beside(const struct context *c)
{
	const struct job_fastener *f = &c->job->fastener;
	const struct connection_geometry_row *edge =
		connection_geometry_row("withdrawal-only", "edge");
	const bool screw = f->kind == FASTENER_LAG_SCREW || f->kind == FASTENER_WOOD_SCREW;
	const double room =
		c->job->framing.breadth / 2 - (edge ? edge->minimum_D : 4) * f->diameter;

	return screw && c->job->framing.kind == FRAMING_RAFTER && room > 0 ? room : 0;
}

/* Way of the line from y until a foot at x lands well and clear of joints; NAN if no course that is
 * tried is better. */
static double way_to_course(const struct courses *k, const struct joint_pattern *p, double y,
			    double x, bool up)
{
	double at = y, low, high;
	enum landing why;

	for (int i = 0; i < 2 * COURSES_TRIED; i++) {
		if (!at_least(at, k->first))
			return NAN;
		if (courses_bad_stretch(k, at, &low, &high, &why)) {
			at = up ? high : low;
			continue;
		}
		const int course = courses_number(k, at);

		if (joint_clear(p, course, x, NULL))
			return fabs(at - y);
		at = up ? k->first + course * k->E + COURSE_CLEAR
			: k->first + (course - 1) * k->E - COURSE_CLEAR;
	}
	return NAN;
}

void joints_fill(const struct context *c, const struct courses *k, const struct line *line,
		 double x, struct course_place *p)
{
	struct joint_pattern joints;

	if (!joints_of(c, &joints) || ((joints.seen || joints.s > 0) && p->course < 1))
		return;
	const int course = p->course > 0 ? p->course : 1;
	const bool clear = joint_clear(&joints, course, x, &p->to_joint);

	p->joint_unseen = isnan(p->to_joint);
	p->joint_side = p->joint_unseen ? (double)NAN : joint_way(&joints, course, x);
	if (clear || p->joint_unseen)
		return;
	if (p->landing == LANDING_WELL || p->landing == LANDING_UNKNOWN)
		p->landing = LANDING_AT_JOINT;
	p->side_fits = isfinite(p->joint_side) && at_most(fabs(p->joint_side), room_beside(c));
	if (!(k->E > 0) || !job_given(c->job, FIELD_ROOF_FIRST_BUTT))
		return;
	p->joint_up = way_to_course(k, &joints, line->y, x, true);
	p->joint_down = way_to_course(k, &joints, line->y, x, false);
	/* of measured joints only the line's own neighborhood is known: a far course that another line's feet were measured in is
	   no way out */
	if (joints.seen && !courses_within(c, line, line->y + p->joint_up))
		p->joint_up = NAN;
	if (joints.seen && !courses_within(c, line, line->y - p->joint_down))
		p->joint_down = NAN;
	p->line_fits =
		(isfinite(p->joint_up) && courses_within(c, line, line->y + p->joint_up)) ||
		(isfinite(p->joint_down) && courses_within(c, line, line->y - p->joint_down));
}

/* Feet of the line that would come on a joint if the line stood at y. */
static int feet_met(const struct courses *k, const struct joint_pattern *joints,
		    const struct pass *pass, int line, double y)
{
	const int course = courses_number(k, y);
	int met = 0;

	for (int i = 0; i < pass->attachments; i++)
		if (pass->attachment[i].line == line)
			met += !joint_clear(joints, course, pass->attachment[i].x, NULL);
	return met;
}

/* A move that clears one foot and puts another on a joint is no way out. */
void joints_settle(const struct context *c, const struct courses *k, struct pass *pass)
{
	struct joint_pattern joints;

	if (!joints_of(c, &joints))
		return;
	for (int i = 0; i < pass->attachments; i++) {
		struct attachment *a = &pass->attachment[i];
		const struct line *line = &c->line[a->line];
		const double up = line->y + a->course.joint_up,
			     down = line->y - a->course.joint_down;

		if (!a->course.line_fits)
			continue;
		const int now = feet_met(k, &joints, pass, a->line, line->y);

		a->course.line_fits = (isfinite(up) && courses_within(c, line, up) &&
				       feet_met(k, &joints, pass, a->line, up) < now) ||
				      (isfinite(down) && courses_within(c, line, down) &&
				       feet_met(k, &joints, pass, a->line, down) < now);
	}
}

static void tell_random(struct context *c, const struct covering_joint_row *row)
{
	REMARK_T(c->r, JOINTS_RANDOM, (row->own_in * M_PER_IN), row->joint,
		 isfinite(row->cover_in) ? " and of the course that covers the plate" : "");
}

void joints_tell(struct context *c, const struct pass *pass)
{
	const struct covering_joint_row *row = covering_joint_row(c->job->roof.covering);
	int near = 0, first = 0, stuck = 0, first_stuck = 0, unseen = 0, first_unseen = 0;

	if (row && c->job->roof.joints == JOINTS_RANDOM)
		tell_random(c, row);
	for (int i = pass->attachments - 1; i >= 0; i--) {
		const struct course_place *p = &pass->attachment[i].course;

		if (p->joint_unseen) {
			unseen++;
			first_unseen = pass->attachment[i].number;
		}
		if (!(fabs(p->joint_side) > 0) && !(isfinite(p->to_joint) && isnan(p->joint_side)))
			continue;
		near++;
		first = pass->attachment[i].number;
		if (!p->side_fits && !p->line_fits) {
			stuck++;
			first_stuck = first;
		}
	}
	if (unseen > 0)
		REMARK_T(c->r, JOINTS_UNSEEN, (unseen, first_unseen, row->own_in * M_PER_IN), row->joint,
			 isfinite(row->cover_in) ? " and of the course that covers the plate" : "");
	if (near > 0)
		REMARK_T(c->r, JOINT_CLOSE, (near, first, row->own_in * M_PER_IN), row->joint);
	if (stuck > 0)
		REMARK(c->r, JOINT_STUCK, stuck, first_stuck);
}
