/* SPDX-License-Identifier: MIT */
/* Sizes of the holes, pipe by pipe, where a job has pipes of more than one size; the notes on a
   covering name those of the widest only. */
#ifndef RP_REPORT_PIPE_NOTES_H
#define RP_REPORT_PIPE_NOTES_H

#include "check/result.h"
#include "job/job.h"
#include "report/format.h"

void pipe_notes(struct document *d, const struct format *f, const struct job *job,
		const struct result *r);

#endif
