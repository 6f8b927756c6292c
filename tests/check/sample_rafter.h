/* SPDX-License-Identifier: MIT */
/* A bare rafter by itself. */
#ifndef RP_TESTS_SAMPLE_RAFTER_H
#define RP_TESTS_SAMPLE_RAFTER_H

#include <math.h>
#include <string.h>

#include "check/rafter_whole.h"
#include "sample_job.h"

/* Spans of `span` over a run of `run`, tails `over` long, no dead load. */
static inline struct job bare(double span, double run, double over)
{
	struct job job = sample_job();

	job.building.form = FORM_MONOSLOPE;
	job.building.width = run;
	job.building.eave_overhang = over;
	job.framing.span = span;
	job.roof.dead_load = 0;
	return job;
}

/* The one rafter of such a job, on a roof that slopes by theta, as a beam over its supports. */
static inline void lay(struct context *c, struct result *r, const struct job *job, double theta,
		       struct rafter_whole *w)
{
	static struct pass none;

	memset(c, 0, sizeof *c);
	memset(r, 0, sizeof *r);
	c->job = job;
	c->r = r;
	c->theta = theta;
	c->cos_theta = cos(theta);
	c->sin_theta = sin(theta);
	r->frames = 1;
	r->frame_x[0] = 1;
	r->plane_length = 10;
	r->plane_slope = (job->building.width + 2 * job->building.eave_overhang) / c->cos_theta;
	r->array = (struct rectangle){5, 1, 6, 2};
	rafter_whole_lay(c, &none, 0, w);
}

#endif
