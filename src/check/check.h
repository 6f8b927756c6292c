/* SPDX-License-Identifier: MIT */
/* The check: a job in, a result out. Pure: no I/O, no globals, no allocation; the same job gives the same bits, on any
   thread. */
#ifndef RP_CHECK_H
#define RP_CHECK_H

#include "check/result.h"

/* Room for trial runs (remedies); the caller owns it, its content between calls does not matter. */
struct check_workspace {
	struct job job;
	struct result result;
};

/* The job must have passed job_validate. */
void check_run(const struct job *job, struct result *result, struct check_workspace *workspace);

/* The same without looking for remedies: what the trial runs use. */
void check_run_plain(const struct job *job, struct result *result);

#endif
