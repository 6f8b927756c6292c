/* SPDX-License-Identifier: MIT */
/* Runs a job and asks what came out. */
#ifndef RP_TESTS_SAMPLE_RUN_H
#define RP_TESTS_SAMPLE_RUN_H

#include <math.h>

#include "check/check.h"
#include "near.h"
#include "sample_job.h"

static inline struct result *run(const struct job *job)
{
	static struct result r;

	check_run_plain(job, &r);
	return &r;
}

static inline const struct pass *judged(const struct result *r)
{
	return &r->pass[r->judged];
}

static inline int count(const struct result *r, enum remark_id id)
{
	int n = 0;

	for (int i = 0; i < r->remarks; i++)
		n += r->remark[i].id == id;
	return n;
}

static inline bool has(const struct result *r, enum remark_id id)
{
	return count(r, id) > 0;
}

/* The largest ratio of one check over all feet that are rated. */
static inline double worst(const struct result *r, enum check_id id)
{
	const struct pass *p = judged(r);
	double ratio = 0;

	for (int i = 0; i < p->attachments; i++)
		if (p->attachment[i].check[id].rated)
			ratio = fmax(ratio, p->attachment[i].check[id].ratio);
	return ratio;
}

static inline double said(const struct result *r, enum remark_id id, int value)
{
	for (int i = 0; i < r->remarks; i++)
		if (r->remark[i].id == id)
			return r->remark[i].value[value];
	fail_msg("remark %d is not said", (int)id);
	return 0;
}

/* A foot on every rafter, so that layouts of two runs are the same. */
static inline struct job dense(void)
{
	struct job job = sample_job();

	job.mount.spacing = IN(16);
	return job;
}

static inline struct job snowy(void)
{
	struct job job = dense();

	job.site.ground_snow = PSF(40);
	return job;
}

#endif
