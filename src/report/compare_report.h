/* SPDX-License-Identifier: MIT */
/* One job under several editions, side by side. */
#ifndef RP_REPORT_COMPARE_REPORT_H
#define RP_REPORT_COMPARE_REPORT_H

#include <stdio.h>

#include "check/compare.h"
#include "report/document.h"
#include "table/tables.h"

struct comparison {
	const struct job *job;
	int count;
	const struct compared *view;
};

/* The next row of the table of differences, from *i on, that lies between the editions of two
   neighbouring columns and touches this job; NULL at the end. */
const struct edition_difference_row *compare_difference(const struct comparison *c, int column,
							size_t *i);
const char *compare_subject(enum edition_difference_subject s);

void compare_report_build(struct document *d, const struct comparison *c);
/* compare.schema.json. `what` is a struct comparison. */
int json_compare_write(FILE *f, const void *what);

#endif
