/* SPDX-License-Identifier: MIT */
/* Where holes land in the courses of a covering: below which butt, on a batten, beside a seam; and
   how far a line would have to move along the slope to land well. Geometry alone: a hole in a bad
   place holds as well, but is harder to keep dry.

   The butts are counted from roof.first-butt. A piece of one layer (tile) hangs by its head on a
   batten whose upper edge is the head: L above the piece's own butt. Joints beside each other in a course: joints.c. */
#include "check/courses.h"

#include <math.h>
#include <string.h>

#include "roof/flashing.h"

#define L(id, words, key) words,
static const char *const words_of[] = {LANDINGS(L)};
#undef L
#define L(id, words, key) key,
static const char *const key_of[] = {LANDINGS(L)};
#undef L

const char *landing_words(enum landing landing)
{
	return words_of[landing];
}

const char *landing_key(enum landing landing)
{
	return key_of[landing];
}

struct courses courses_of(const struct context *c)
{
	const struct job_roof *roof = &c->job->roof;
	struct courses k = {covering_plate_row(roof->covering, 12 * tan(c->theta)), 0,
			    roof->piece_length, isfinite(roof->first_butt) ? roof->first_butt : 0,
			    (double)NAN};

	if (!k.row || k.row->laid == COVERING_PLATE_LAID_SEAMS ||
	    !(roof->course_exposure > 4 * COURSE_CLEAR))
		return k;
	k.E = roof->course_exposure;
	if (k.row->batten == COVERING_PLATE_BATTEN_YES && k.L > k.E && k.L < 2 * k.E)
		k.batten = k.L - k.E - COURSE_BATTEN / 2;
	return k;
}

int courses_number(const struct courses *k, double y)
{
	return (int)floor((y - k->first) / k->E + 1e-9) + 1;
}

bool courses_bad_stretch(const struct courses *k, double y, double *low, double *high, enum landing *why)
{
	const double n = floor((y - k->first) / k->E + 1e-9), butt = k->first + (n + 1) * k->E;
	const double reach = COURSE_BATTEN / 2 + COURSE_BATTEN_CLEAR;

	if (!at_least(butt - y, COURSE_CLEAR)) {
		*low = butt - COURSE_CLEAR;
		*high = butt + COURSE_CLEAR;
		*why = LANDING_AT_BUTT;
		return true;
	}
	/* on the step of its own butt, but for the first: below that there is nothing to step on */
	if (n > 0 && !at_least(y - (butt - k->E), COURSE_CLEAR)) {
		*low = butt - k->E - COURSE_CLEAR;
		*high = butt - k->E + COURSE_CLEAR;
		*why = LANDING_AT_BUTT;
		return true;
	}
	/* of this course and, should a batten's stretch reach over a butt, of its neighbours */
	for (int i = -1; i <= 1 && isfinite(k->batten); i++) {
		const double middle = k->first + (n + i) * k->E + k->batten;

		if (!at_least(fabs(y - middle), reach)) {
			*low = middle - reach;
			*high = middle + reach;
			*why = LANDING_ON_BATTEN;
			return true;
		}
	}
	return false;
}

/* Way from y to the nearest place that is well, up or down the slope; NAN if none is near or it
 * leaves the courses. */
static double way(const struct courses *k, double y, bool up)
{
	double at = y, low, high;
	enum landing why;

	for (int i = 0; i < 4; i++) {
		if (!at_least(at, k->first))
			return NAN;
		if (!courses_bad_stretch(k, at, &low, &high, &why))
			return fabs(at - y);
		at = up ? high : low;
	}
	return NAN;
}

/* The nearest place from y on that is well; y itself if none is within reach (m, up the slope if positive). */
static double nearest_well(const struct courses *k, double y, double reach)
{
	const double move = way(k, y, reach > 0);

	return move > 0 && at_most(move, fabs(reach)) ? y + copysign(move, reach) : y;
}

/* Among the nearest well places of each course within reach the one with the fewest rafters on a joint, the first of
   equals. */
static double fewest_joints(const struct context *c, const struct courses *k, const struct joint_pattern *p, double y,
			    double reach, double x0, double x1)
{
	double best = nearest_well(k, y, reach), at = best;
	int least = joints_met(c, k, p, best, x0, x1);

	while (least > 0) {
		const int course = courses_number(k, at);
		const double edge = reach > 0 ? k->first + course * k->E + COURSE_CLEAR
					      : k->first + (course - 1) * k->E - COURSE_CLEAR;
		const double rest = reach - (edge - y);
		int met;

		if (!at_least(edge, k->first) || !at_most(fabs(edge - y), fabs(reach)))
			break;
		at = nearest_well(k, edge, fmax(fabs(rest), 1e-9) * (reach > 0 ? 1 : -1));
		met = joints_met(c, k, p, at, x0, x1);
		if (met < least) {
			best = at;
			least = met;
		}
	}
	return best;
}

double courses_line(const struct context *c, double y, double reach, double x0, double x1)
{
	const struct courses k = courses_of(c);
	struct joint_pattern joints;

	if (!(k.E > 0) || !(fabs(reach) > 0) || !job_given(c->job, FIELD_ROOF_FIRST_BUTT) ||
	    !at_least(y, k.first))
		return y;
	return joints_of(c, &joints) ? fewest_joints(c, &k, &joints, y, reach, x0, x1) : nearest_well(&k, y, reach);
}

static double clamp_reach(const struct context *c, const struct line *line)
{
	const struct job_rail *rail = &c->job->rail;
	const double shrink = c->rack ? cos(c->tilt) : 1;
	const double reach = line->rear ? rail->upper_inset_max - rail->upper_inset
					: rail->lower_inset_max - rail->lower_inset;

	return reach > 0 ? reach * shrink : 0;
}

/* Where the line would stand by its inset alone. */
static double meant(const struct context *c, const struct line *line)
{
	const struct job_rail *rail = &c->job->rail;
	const struct rectangle *k = &c->r->collector[line->row * c->job->collector.columns];
	const double shrink = c->rack ? cos(c->tilt) : 1;

	return line->rear ? k->y1 - rail->upper_inset * shrink : k->y0 + rail->lower_inset * shrink;
}

bool courses_within(const struct context *c, const struct line *line, double y)
{
	const double from = meant(c, line), reach = clamp_reach(c, line);

	return line->rear ? at_least(y, from - reach) && at_most(y, from)
			  : at_least(y, from) && at_most(y, from + reach);
}

static void place_in_courses(const struct context *c, const struct courses *k,
			     const struct line *line, struct course_place *p)
{
	double low, high;

	if (!at_least(line->y, k->first))
		return;
	p->landing = LANDING_WELL;
	if (!courses_bad_stretch(k, line->y, &low, &high, &p->landing))
		return;
	p->move_up = way(k, line->y, true);
	p->move_down = way(k, line->y, false);
	p->can_move = (isfinite(p->move_up) && courses_within(c, line, line->y + p->move_up)) ||
		      (isfinite(p->move_down) && courses_within(c, line, line->y - p->move_down));
}

static struct course_place place_of_line(const struct context *c, const struct courses *k,
					 const struct line *line)
{
	const struct flashing_given given = {.theta = c->theta,
					     .E = k->E > 0 ? k->E : (double)NAN,
					     .L = k->L,
					     .first_butt = k->first,
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
	}
	joints_settle(c, &k, pass);
}

static void tell_line(struct context *c, const struct pass *pass, int i)
{
	const struct attachment *first = &pass->attachment[pass->line[i].first];
	const struct course_place *p = &first->course;
	const double moved = c->line[i].y - meant(c, &c->line[i]);
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
