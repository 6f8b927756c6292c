/* SPDX-License-Identifier: MIT */
/* Where in a file each part of a job was found, so that a check made later can still name the line. */
#ifndef RP_JOB_SOURCE_H
#define RP_JOB_SOURCE_H

#include "job/element.h"
#include "job/field.h"

struct job_source {
	const char *name;                       /* of the file */
	int line[FIELD_COUNT];                  /* of each field of the single elements; 0 if it was not in the file */
	int row_line[ELEMENT_COUNT][ROWS_MAX];  /* of each element and row; 0 if it was not in the file */
};

#endif
