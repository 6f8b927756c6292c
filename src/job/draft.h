/* SPDX-License-Identifier: MIT */
/* A job while it is being read: what has been given so far, where, and what was wrong with it.
   Internal to src/job. */
#ifndef RP_JOB_DRAFT_H
#define RP_JOB_DRAFT_H

#include <stdint.h>

#include "job/element.h"
#include "job/job.h"
#include "job/source.h"
#include "problem/problem.h"

struct draft {
	struct job *job;
	struct problem_list *problems;
	struct job_source source;
	bool stopped; /* the file could not be read to its end: nothing is said to be missing */
	int refused_rows[ELEMENT_COUNT]; /* rows beyond the most that an element may have */
	/* One bit per field of the element, first field first; by row. */
	uint32_t given[ELEMENT_COUNT][ROWS_MAX];      /* written, well or not */
	uint32_t unknown[ELEMENT_COUNT][ROWS_MAX];    /* written as `unknown` */
	uint32_t overridden[ELEMENT_COUNT][ROWS_MAX]; /* set by an override */
};

void draft_start(struct draft *d, const char *name, struct job *job, struct problem_list *problems);

/* Rows of an element so far; 1 for a single one. */
int draft_rows(const struct draft *d, enum element e);
/* Adds a row to a repeated element and returns its index; -1 (told once per element) if there
   are too many. */
int draft_add_row(struct draft *d, enum element e, int line);
/* Stores text as field f of a row, or tells what is wrong with it. origin is ORIGIN_FILE or
   ORIGIN_OVERRIDE. */
void draft_set(struct draft *d, const struct field *f, int row, const char *text,
	       enum field_origin origin, int line);
/* `roof.pitch`, `pipe[2].diameter`. */
const char *draft_path(char *buf, size_t size, const struct field *f, int row);

/* override.c: reads `path=value` and stores it. */
void draft_override(struct draft *d, const char *text);
/* fill.c: defaults and assumptions for what was not given; tells what is missing. */
void draft_fill(struct draft *d);
/* xml.c: reads the document into the draft. */
void draft_read_xml(struct draft *d, const char *bytes, size_t size);
/* suggest.c: what the writer of an unknown name may have meant, or what is accepted there. */
const char *suggest_attribute(char *buf, size_t size, enum element e, const char *attribute);
const char *suggest_element(char *buf, size_t size, enum element parent, const char *name);

#endif
