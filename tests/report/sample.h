/* SPDX-License-Identifier: MIT */
/* A job and a result made by hand, so that the writers can be tested without a calculation. The
   numbers are invented to exercise the page; they are no answer to any job. */
#ifndef RP_TESTS_REPORT_SAMPLE_H
#define RP_TESTS_REPORT_SAMPLE_H

#include "check/result.h"
#include "job/job.h"

void sample_job(struct job *job, enum unit_system units);
/* Two passes, `attachments` feet on two lines (2 to 40), one step in the wind section. `job` must
   outlive the result. */
void sample_result(struct result *r, const struct job *job, enum verdict verdict, int attachments);

extern const struct step sample_step_pressure;

#endif
