/* SPDX-License-Identifier: MIT */
/* The joints between the pieces of a course, or cut-outs, or side locks, where they repeat: every W
   along the eave, each course shifted by s against the one below; or where they were measured one by
   one beside the feet. How far a hole is from them, and how far it must move to be clear of them.
   Pure; lengths in m. */
#ifndef RP_ROOF_JOINT_H
#define RP_ROOF_JOINT_H

#include <stdbool.h>

#include "job/job.h"
#include "step/step.h"

#define JOINT_STEPS(S) S(step_joint_distance)

#define S(name) extern const struct step name;
JOINT_STEPS(S)
#undef S

struct joint_pattern {
	double W;     /* joint to joint; of measured joints the widest piece */
	double first; /* a joint of the course first_course, from the left rake edge */
	int first_course;
	double s;          /* shift from a course to the next above it */
	double own, cover; /* least distances from the joints of the hole's own course and of the
			      one above; NAN: no rule */
	const struct job_joint *seen; /* measured joints; NULL: they repeat */
	int seen_count;
};

/* From the nearest joint of a course to x along the eave; positive if x lies to its right. At most
   W/2. Of measured joints NAN where x does not lie in a piece both of whose ends were measured, unless
   it is too near to a measured one anyhow. */
double joint_distance(struct trace *trace, const struct joint_pattern *p, int course, double x);

/* Whether a hole at x in this course is known to keep clear. nearest, if not NULL: the distance that
   decides, signed: of the two courses the one that is missed by most, or else is nearest; NAN if that
   is not known. */
bool joint_clear(const struct joint_pattern *p, int course, double x, double *nearest);

/* Shortest way along the eave, positive to the right, to a place that is known to be clear; 0 if it is;
   NAN if the pieces are too narrow for one, or too little is measured. */
double joint_way(const struct joint_pattern *p, int course, double x);

#endif
