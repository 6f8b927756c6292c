/* SPDX-License-Identifier: MIT */
/* Where in a file each part of a job was found, so that a check made later can still name the
   line. */
#ifndef RP_JOB_SOURCE_H
#define RP_JOB_SOURCE_H

#include <stdbool.h>

#include "job/element.h"
#include "job/field.h"

/* A line is 0 for what was not in the file. */
struct job_source {
	const char *name;                      /* of the file */
	int line[FIELD_COUNT];                 /* of each field of the single elements */
	int row_line[ELEMENT_COUNT][ROWS_MAX]; /* of each element and row */
	bool row_set[ELEMENT_COUNT][ROWS_MAX]; /* an override has changed the row */
};

#endif
