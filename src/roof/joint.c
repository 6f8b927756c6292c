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

double joint_distance(struct trace *trace, const struct joint_pattern *p, int course, double x)
{
	return STEP(trace, step_joint_distance, x, p->first, course, p->first_course, p->s, p->W);
}

/* What is missing of the clear distance; negative: to spare. */
static double missing(double distance, double clear)
{
	return clear - fabs(distance);
}

bool joint_clear(const struct joint_pattern *p, int course, double x, double *nearest)
{
	const double own = joint_distance(NULL, p, course, x),
		     cover = joint_distance(NULL, p, course + 1, x);
	const bool by_cover = isfinite(p->cover) && missing(cover, p->cover) > missing(own, p->own);

	if (nearest)
		*nearest = by_cover ? cover : own;
	return at_least(fabs(own), p->own) &&
	       (!isfinite(p->cover) || at_least(fabs(cover), p->cover));
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
