/* SPDX-License-Identifier: MIT */
/* Where holes land in the courses of a covering: below which butt, on a batten; and how far a line
   would have to move along the slope to land well. Geometry alone: a hole in a bad place holds as
   well, but is harder to keep dry. What each foot finds, and what is said of it: course_place.c.

   The butts are counted from roof.first-butt. A piece of one layer (tile) hangs by its head on a
   batten whose upper edge is the head: L above the piece's own butt. Joints beside each other in a course: joints.c. */
#include "check/courses.h"

#include <math.h>

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

double courses_way(const struct courses *k, double y, bool up)
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
	const double move = courses_way(k, y, reach > 0);

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

double courses_meant(const struct context *c, const struct line *line)
{
	const struct job_rail *rail = &c->job->rail;
	const struct rectangle *k = &c->r->collector[line->row * c->job->collector.columns];
	const double shrink = c->rack ? cos(c->tilt) : 1;

	return line->rear ? k->y1 - rail->upper_inset * shrink : k->y0 + rail->lower_inset * shrink;
}

bool courses_within(const struct context *c, const struct line *line, double y)
{
	const double from = courses_meant(c, line), reach = clamp_reach(c, line);

	return line->rear ? at_least(y, from - reach) && at_most(y, from)
			  : at_least(y, from) && at_most(y, from + reach);
}
