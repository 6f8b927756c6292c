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

/* The job must have passed job_validate. The search for the fewest feet works on the stack: two
   megabytes of it are enough. */
void check_run(const struct job *job, struct result *result, struct check_workspace *workspace);

/* Fills the traces SECTION_ATTACHMENT and SECTION_FASTENER of a result of this job with how the attachment of this number
   came about, in place of the governing one. False if there is no such attachment. */
bool check_explain(const struct job *job, struct result *result, struct check_workspace *workspace, int attachment);

/* The same without looking for remedies. */
void check_run_plain(const struct job *job, struct result *result);
/* The same again with a small allowance for the search, for trial runs: what holds holds, but fewer
   feet might do. */
void check_run_quick(const struct job *job, struct result *result);

#endif
