/* SPDX-License-Identifier: MIT */
/* The hole is looked at over its whole height and width, with the room round the pipe that the other
   sizes have (common practice); the flange begins at its edge. The rules are those of the feet. */
#include "check/pipe_place.h"

#include <math.h>
#include <string.h>

#include "check/courses.h"
#include "roof/flashing.h"
#include "table/lookup_covering.h"

/* Room all round a pipe in its hole (common practice). */
#define HOLE_GAP (0.25 * M_PER_IN)
/* Steps in which a way out is looked for: a tape's eighth. */
#define MOVE_STEP (0.125 * M_PER_IN)
/* Points of the hole that are looked at, each way. */
#define POINTS 9

struct site {
	struct context c;
	struct courses k;
	struct joint_pattern joint;
	bool joints; /* joint is known */
	bool butts;
	double across, along;
};

static double point(double middle, double size, int i)
{
	return middle + size * ((double)i / (POINTS - 1) - 0.5);
}

static void in_courses(const struct site *s, double y, struct pipe_place *p)
{
	double low, high;
	enum landing why;

	if (!s->butts || !at_least(y, s->k.first))
		return;
	p->course = courses_number(&s->k, y);
	p->landing = LANDING_WELL;
	for (int i = 0; i < POINTS; i++) {
		const double at = point(y, s->along, i);

		if (at_least(at, s->k.first) && courses_bad_stretch(&s->k, at, &low, &high, &why) &&
		    p->landing != LANDING_AT_BUTT)
			p->landing = why;
	}
}

static void in_joints(const struct site *s, double x, struct pipe_place *p)
{
	const bool any = covering_joint_row(s->c.job->roof.covering) != NULL;
	double to = 0;

	p->joints = any && !s->joints;
	if (!s->joints)
		return;
	if ((s->joint.seen || s->joint.s > 0) && p->course < 1) {
		p->joints = true;
		return;
	}
	for (int i = 0; i < POINTS; i++)
		if (!joint_clear(&s->joint, p->course > 0 ? p->course : 1, point(x, s->across, i), &to)) {
			p->on_joint = p->on_joint || isfinite(to);
			p->joints = p->joints || isnan(to);
		}
}

static void in_seams(const struct site *s, double x, struct pipe_place *p)
{
	const struct job_roof *roof = &s->c.job->roof;

	if (!s->k.row || s->k.row->laid != COVERING_PLATE_LAID_SEAMS ||
	    strcmp(roof->covering, "metal-exposed-fastener") == 0)
		return;
	p->seamed = true;
	p->joints = !(roof->seam_spacing > 0) || !isfinite(roof->first_seam);
	if (p->joints)
		return;
	p->to_seam = fmax(0, fabs(remainder(x - roof->first_seam, roof->seam_spacing)) - s->across / 2);
	p->near_seam = !at_least(p->to_seam, COURSE_SEAM_CLEAR);
}

static void in_borders(const struct site *s, double x, double y, struct pipe_place *p)
{
	struct attachment a;
	struct flashing_given given = {.theta = s->c.theta,
				       .E = s->k.E > 0 ? s->k.E : (double)NAN,
				       .L = s->k.L,
				       .first_butt = job_given(s->c.job, FIELD_ROOF_FIRST_BUTT) ? s->k.first
												: (double)NAN,
				       .y = y + s->along / 2,
				       .down = (double)NAN};

	memset(&a, 0, sizeof a);
	a.x = x;
	a.y = y;
	a.course.plate_side = s->across / 2;
	a.course.plate_down = a.course.plate_up = s->along / 2;
	if (s->k.row && s->k.row->laid != COVERING_PLATE_LAID_SEAMS) {
		given.down = s->k.row->plate_down_in * M_PER_IN;
		const double up = flashing_foot(NULL, &given).plate_up;

		a.course.plate_side += fmax(s->k.row->plate_side_in * M_PER_IN, 0);
		a.course.plate_down += fmax(given.down, 0);
		a.course.plate_up += fmax(up, 0); /* fmax: a covering without one has NAN */
	}
	borders_fill(&s->c, &s->k, &a);
	memcpy(p->border, a.course.border, sizeof p->border);
	for (int b = 0; b < BORDER_COUNT; b++)
		p->near_border = p->near_border || border_close(&p->border[b]);
}

static struct pipe_place place_at(const struct site *s, double x, double y)
{
	struct pipe_place p = {.given = true,
			       .landing = LANDING_UNKNOWN,
			       .across = s->across,
			       .along = s->along,
			       .to_seam = (double)NAN};

	in_courses(s, y, &p);
	p.butts = s->k.E > 0 && !s->butts;
	in_joints(s, x, &p);
	in_seams(s, x, &p);
	in_borders(s, x, y, &p);
	return p;
}

static bool wrong(const struct pipe_place *p)
{
	return p->on_joint || p->near_seam || p->near_border ||
	       (p->landing != LANDING_WELL && p->landing != LANDING_UNKNOWN);
}

/* No way out leads to a place of which less is known. */
static double way(const struct site *s, const struct pipe_place *from, double x, double y, double dx, double dy)
{
	for (int i = 1; i * MOVE_STEP <= PIPE_MOVE_MOST + 1e-9; i++) {
		const double at_x = x + dx * i * MOVE_STEP, at_y = y + dy * i * MOVE_STEP;
		const struct rectangle hole = {at_x - s->across / 2, at_y - s->along / 2, at_x + s->across / 2,
					       at_y + s->along / 2};

		if (hole.x0 < 0 || hole.y0 < 0 || hole.x1 > s->c.r->plane_length || hole.y1 > s->c.r->plane_slope)
			return NAN;
		const struct pipe_place p = place_at(s, at_x, at_y);

		if (!wrong(&p) && (!p.joints || from->joints) && (p.course > 0 || from->course < 1))
			return i * MOVE_STEP;
	}
	return NAN;
}

static void set_site(struct site *s, const struct job *job, const struct result *r, const struct job_pipe *pipe)
{
	const double D = isfinite(pipe->insulated_diameter) ? pipe->insulated_diameter : pipe->diameter;

	memset(&s->c, 0, CONTEXT_CLEARED);
	memset(&s->joint, 0, sizeof s->joint);
	s->c.job = job;
	s->c.r = (struct result *)r; /* only read */
	s->c.theta = job->roof.pitch;
	s->across = STEP(NULL, step_pipe_across, D, HOLE_GAP);
	s->along = STEP(NULL, step_pipe_ellipse, D, HOLE_GAP, job->roof.pitch);
	s->k = courses_of(&s->c);
	s->joints = joints_of(&s->c, &s->joint);
	s->butts = s->k.E > 0 && job_given(job, FIELD_ROOF_FIRST_BUTT);
}

struct pipe_place pipe_place(const struct job *job, const struct result *r, int which)
{
	const struct job_pipe *pipe = &job->pipe[which];
	struct job as = *job;
	struct site s;
	struct pipe_place p;

	as.fastener.kind = FASTENER_LAG_SCREW; /* a pipe makes a hole, whatever the feet do */
	set_site(&s, &as, r, pipe);
	if (!isfinite(pipe->at) || !isfinite(pipe->up))
		return (struct pipe_place){.across = s.across, .along = s.along, .to_seam = (double)NAN,
					   .up = (double)NAN, .down = (double)NAN,
					   .left = (double)NAN, .right = (double)NAN};
	p = place_at(&s, pipe->at, pipe->up);
	p.clear = !wrong(&p) && !p.butts && !p.joints;
	p.up = p.down = p.left = p.right = (double)NAN;
	if (wrong(&p)) {
		p.up = way(&s, &p, pipe->at, pipe->up, 0, 1);
		p.down = way(&s, &p, pipe->at, pipe->up, 0, -1);
		p.left = way(&s, &p, pipe->at, pipe->up, -1, 0);
		p.right = way(&s, &p, pipe->at, pipe->up, 1, 0);
	}
	return p;
}
