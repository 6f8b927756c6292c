/* SPDX-License-Identifier: MIT */
/* Checks between fields: what each value allows, but all of them together do not. Pure. */
#ifndef RP_JOB_VALIDATE_H
#define RP_JOB_VALIDATE_H

#include "job/job.h"
#include "job/source.h"
#include "problem/problem.h"

/* Adds a problem for each disagreement, naming the fields that disagree. A rule is passed over
   when a field it needs is absent or was refused (origin ORIGIN_ABSENT). */
void job_validate(const struct job *job, const struct job_source *source,
		  struct problem_list *problems);

/* Size of the roof plane: along the eave, and up the slope from eave edge to ridge (flat and
   monoslope: to the far edge); NAN where the form does not say. A plane of a hip roof is taken as
   the rectangle around it; an unknown one as a side. */
double job_plane_length(const struct job *job);
double job_plane_slope(const struct job *job);
/* Size of one collector along the eave and up the slope. */
double job_collector_along(const struct job *job);
double job_collector_up(const struct job *job);
/* Angle between collectors and roof: from the height of the upper edge where that is given in place
   of the tilt. */
double job_collector_tilt(const struct job *job);
/* What the rows take up along the roof, gaps included; tilted ones less than their own size. */
double job_array_up(const struct job *job);

#endif
