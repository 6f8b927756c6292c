/* SPDX-License-Identifier: MIT */
/* The report of one check, as a document: the verdict first, then what an installer needs on the
   roof, then what a plan reviewer recomputes. Units follow job->units. */
#ifndef RP_REPORT_CHECK_REPORT_H
#define RP_REPORT_CHECK_REPORT_H

#include "check/result.h"
#include "job/job.h"
#include "report/document.h"

/* Appends the flashing notes of the job's covering; NULL where there are none. */
typedef void report_notes(void *ctx, struct document *d, const struct job *job,
                          const struct result *r);

struct check_options {
	int attachment; /* number of the attachment shown in detail; 0: the governing one */
	report_notes *notes;
	void *ctx;
};

/* Fills d; the caller asks document_failed afterwards. */
void check_report_build(struct document *d, const struct job *job, const struct result *r,
                        const struct check_options *options);

#endif
