/* SPDX-License-Identifier: MIT */
/* The place of every foot in the covering: in which course, beside which seam, how large a plate; and what
   is said of feet that land badly. */
#include "check/course_place.h"

#include <math.h>
#include <string.h>

#include "check/courses.h"
#include "roof/flashing.h"

static void place_in_courses(const struct context *c, const struct courses *k,
			     const struct line *line, struct course_place *p)
{
	double low, high;

	if (!at_least(line->y, k->first))
		return;
	p->landing = LANDING_WELL;
	if (!courses_bad_stretch(k, line->y, &low, &high, &p->landing))
		return;
	p->move_up = courses_way(k, line->y, true);
	p->move_down = courses_way(k, line->y, false);
	p->can_move = (isfinite(p->move_up) && courses_within(c, line, line->y + p->move_up)) ||
		      (isfinite(p->move_down) && courses_within(c, line, line->y - p->move_down));
}

static struct course_place place_of_line(const struct context *c, const struct courses *k,
					 const struct line *line)
{
	const struct flashing_given given = {.theta = c->theta,
					     .E = k->E > 0 ? k->E : (double)NAN,
					     .L = k->L,
					     .first_butt = job_given(c->job, FIELD_ROOF_FIRST_BUTT) ? k->first
												    : (double)NAN,
					     .y = line->y,
					     .down = k->row ? k->row->plate_down_in * M_PER_IN
							    : (double)NAN};
	const struct flashing_foot foot = flashing_foot(NULL, &given);
	struct course_place p = {.course = foot.course,
				 .below = foot.butt_up,
				 .above = foot.above_butt,
				 .plate_down = (double)NAN,
				 .plate_up = foot.plate_up,
				 .plate_side = (double)NAN,
				 .move_up = (double)NAN,
				 .move_down = (double)NAN,
				 .to_seam = (double)NAN,
				 .to_joint = (double)NAN,
				 .joint_side = (double)NAN,
				 .joint_up = (double)NAN,
				 .joint_down = (double)NAN};

	if (k->row && k->row->laid != COVERING_PLATE_LAID_SEAMS) {
		p.plate_down = isfinite(foot.plate_up) ? foot.plate_down : given.down;
		p.plate_side = fmax(k->row->plate_side_in, k->row->plate_width_in / 2) * M_PER_IN;
	}
	/* counted from the eave edge courses are only numbered: where the butts lie is not known */
	if (k->E > 0 && job_given(c->job, FIELD_ROOF_FIRST_BUTT))
		place_in_courses(c, k, line, &p);
	return p;
}

/* A clamp stands on its seam; any other foot of a standing seam roof stands in the pan. Brackets on
   ribs are the maker's own matter. */
static void place_in_seams(const struct context *c, const struct courses *k, double x,
			   struct course_place *p)
{
	const double spacing = c->job->roof.seam_spacing, first = c->job->roof.first_seam;
	const bool clamp = c->job->fastener.kind == FASTENER_SEAM_CLAMP;

	if (!k->row || k->row->laid != COVERING_PLATE_LAID_SEAMS || !(spacing > 0) ||
	    !isfinite(first))
		return;
	p->to_seam = fabs(remainder(x - first, spacing));
	if (clamp)
		p->landing = LANDING_WELL;
	else if (strcmp(c->job->roof.covering, "metal-exposed-fastener") != 0)
		p->landing =
			at_least(p->to_seam, COURSE_SEAM_CLEAR) ? LANDING_WELL : LANDING_AT_SEAM;
}

void courses_fill(const struct context *c, struct pass *pass)
{
	const struct courses k = courses_of(c);
	struct course_place of_line = {0};
	int line = -1;

	for (int i = 0; i < pass->attachments; i++) {
		struct attachment *a = &pass->attachment[i];

		if (a->line != line) {
			line = a->line;
			of_line = place_of_line(c, &k, &c->line[line]);
		}
		a->course = of_line;
		place_in_seams(c, &k, a->x, &a->course);
		joints_fill(c, &k, &c->line[line], a->x, &a->course);
		borders_fill(c, &k, a);
	}
	joints_settle(c, &k, pass);
}

static void tell_line(struct context *c, const struct pass *pass, int i)
{
	const struct attachment *first = &pass->attachment[pass->line[i].first];
	const struct course_place *p = &first->course;
	const double moved = c->line[i].y - courses_meant(c, &c->line[i]);
	const int last = first->number + pass->line[i].count - 1;

	if (fabs(moved) > 1e-6)
		REMARK_T(c->r, COURSE_MOVED, (i + 1, fabs(moved)), moved > 0 ? "up" : "down");
	if (p->landing != LANDING_AT_BUTT && p->landing != LANDING_ON_BATTEN)
		return;
	if (isfinite(p->move_down) && !(p->move_up < p->move_down))
		REMARK_T(c->r, COURSE_CLOSE, (first->number, last, p->move_down),
			 landing_words(p->landing), "down");
	else if (isfinite(p->move_up))
		REMARK_T(c->r, COURSE_CLOSE, (first->number, last, p->move_up),
			 landing_words(p->landing), "up");
}

void courses_tell(struct context *c, const struct pass *pass)
{
	const struct courses k = courses_of(c);
	int near = 0, which = 0;

	joints_tell(c, pass);
	borders_tell(c, pass);
	if (k.E > 0 && !job_given(c->job, FIELD_ROOF_FIRST_BUTT)) {
		REMARK(c->r, COURSE_UNMEASURED, 0);
		return;
	}
	for (int i = 0; i < pass->lines && i < c->lines; i++)
		if (pass->line[i].count > 0)
			tell_line(c, pass, i);
	for (int i = pass->attachments - 1; i >= 0; i--)
		if (pass->attachment[i].course.landing == LANDING_AT_SEAM) {
			near++;
			which = pass->attachment[i].number;
		}
	if (near > 0)
		REMARK(c->r, SEAM_CLOSE, near, which, COURSE_SEAM_CLEAR);
}
