/* SPDX-License-Identifier: MIT */
#include "roof/joint.h"

#include <math.h>

#include "quantity/quantity.h"

/* x - x1 - (k - k1) s, less the nearest whole number of W. */
static double distance(const double *in)
{
	return remainder(in[0] - in[1] - (in[2] - in[3]) * in[4], in[5]);
}

const struct step step_joint_distance = {
	.name = "joint-distance",
	.symbol = "d",
	.unit = UNIT_IN,
	.title = "from the nearest joint of a course to a point, along the eave",
	.formula = "x - x1 - (k - k1) s - n W, n the whole number that makes it least",
	.clause = {"geometry"},
	.confidence = DERIVED,
	.note = "joints every W along the eave, each course shifted by s",
	.in = {{"x", UNIT_IN, "point, from the left rake edge"},
	       {"x1", UNIT_IN, "a measured joint, from the left rake edge"},
	       {"k", UNIT_NONE, "course of the point"},
	       {"k1", UNIT_NONE, "course of the measured joint"},
	       {"s", UNIT_IN, "shift of the joints from a course to the next above it"},
	       {"W", UNIT_IN, "joint to joint along the eave"}},
	.value = distance,
};

/* Two of the joints of a course stand for one piece only if no other joint can lie between them: if they
   are no further apart than the widest piece is wide. */
static double seen_distance(const struct joint_pattern *p, int course, double x)
{
	double left = INFINITY, right = INFINITY;

	for (int i = 0; i < p->seen_count; i++) {
		const double d = x - p->seen[i].at;

		if (p->seen[i].course != course)
			continue;
		if (d >= 0)
			left = fmin(left, d);
		if (d <= 0)
			right = fmin(right, -d);
	}
	const double nearest = left <= right ? left : -right;
	const double rule = fmax(p->own, p->cover);

	return at_most(left + right, p->W) || !at_least(fabs(nearest), rule) ? nearest : (double)NAN;
}

double joint_distance(struct trace *trace, const struct joint_pattern *p, int course, double x)
{
	if (p->seen)
		return seen_distance(p, course, x);
	return STEP(trace, step_joint_distance, x, p->first, course, p->first_course, p->s, p->W);
}

/* What is missing of the clear distance; negative: to spare. */
static double missing(double distance, double clear)
{
	return clear - fabs(distance);
}

bool joint_clear(const struct joint_pattern *p, int course, double x, double *nearest)
{
	const bool two = isfinite(p->cover);
	const double own = joint_distance(NULL, p, course, x),
		     cover = two ? joint_distance(NULL, p, course + 1, x) : (double)NAN;
	const bool by_cover = two && (isnan(own) || missing(cover, p->cover) > missing(own, p->own));
	const bool own_clear = at_least(fabs(own), p->own), cover_clear = !two || at_least(fabs(cover), p->cover);

	if (nearest)
		*nearest = by_cover ? cover : own;
	/* what one course leaves open, the other can only decide against the hole */
	if (nearest && (by_cover ? cover_clear : own_clear) && (isnan(own) || (two && isnan(cover))))
		*nearest = NAN;
	return own_clear && cover_clear;
}

/* One way: past each joint in turn until both courses are clear. */
static double way_to(const struct joint_pattern *p, int course, double x, double sign)
{
	double at = x;

	/* at most two joints of each course lie within one W */
	for (int i = 0; i < 6; i++) {
		const double own = sign * joint_distance(NULL, p, course, at);
		const double cover = sign * joint_distance(NULL, p, course + 1, at);

		if (joint_clear(p, course, at, NULL))
			return fabs(at - x);
		if (!at_least(fabs(own), p->own))
			at += sign * (p->own - own);
		else
			at += sign * (p->cover - cover);
	}
	return NAN;
}

double joint_way(const struct joint_pattern *p, int course, double x)
{
	const double right = way_to(p, course, x, 1), left = way_to(p, course, x, -1);

	if (isnan(right) && isnan(left))
		return NAN;
	return isnan(left) || right <= left ? right : -left;
}
