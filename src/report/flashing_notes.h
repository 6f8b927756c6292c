/* SPDX-License-Identifier: MIT */
/* How the mounts and pipes of a job are flashed on its covering: the notes of the covering library
   with the job's own sizes filled in. */
#ifndef RP_REPORT_FLASHING_NOTES_H
#define RP_REPORT_FLASHING_NOTES_H

#include <stdbool.h>

#include "check/result.h"
#include "job/job.h"
#include "report/document.h"

enum notes_length {
	NOTES_NONE,  /* the sizes alone; the library is not opened */
	NOTES_BRIEF, /* what is particular to this covering; what holds for every covering is only
	                named */
	NOTES_FULL
};

struct flashing_request {
	const char *details; /* the library's directory; NULL when it is not known */
	enum notes_length length;
	bool sheets; /* permit sheets: brief notes leave out what other sheets say, or nobody asks of a plan */
};

/* A report_notes (check_report.h): ctx is a struct flashing_request. A library that cannot be read
   does not stop the report: it is said in place of the notes. */
void flashing_notes(void *ctx, struct document *d, const struct job *job, const struct result *r);

#endif
