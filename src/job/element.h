/* SPDX-License-Identifier: MIT */
/* The elements of a job file: which stand where, which may occur many times, and where their
   rows are kept. */
#ifndef RP_JOB_ELEMENT_H
#define RP_JOB_ELEMENT_H

#include <stddef.h>

#include "job/field.h"

/* In the order of the field table. */
enum element {
	ELEMENT_JOB,
	ELEMENT_SITE,
	ELEMENT_BUILDING,
	ELEMENT_ROOF,
	ELEMENT_JOINT,
	ELEMENT_FRAMING,
	ELEMENT_RAFTER,
	ELEMENT_SUPPORT,
	ELEMENT_COLLECTOR,
	ELEMENT_RAIL,
	ELEMENT_MOUNT,
	ELEMENT_FASTENER,
	ELEMENT_SNOW,
	ELEMENT_LIVE,
	ELEMENT_EARTHQUAKE,
	ELEMENT_EXISTING,
	ELEMENT_METALS,
	ELEMENT_HILL,
	ELEMENT_PIPE,
	ELEMENT_COEFFICIENT,
	ELEMENT_OBSTACLE,
	ELEMENT_RAIL_JOINT,
	ELEMENT_COUNT
};

struct element_row {
	const char *name;
	enum element parent;  /* of the root: itself */
	int max;              /* rows; 1 for a single element */
	size_t array, stride; /* rows in struct job; single elements: 0 (their fields are offsets in
				 struct job) */
	size_t count;         /* offset of the int that counts rows; single elements: unused */
	enum field_id first, last; /* its fields */
	const char *meaning;       /* one sentence */
};

/* Rows of the element that has most. */
#define ROWS_MAX 128

extern const struct element_row element_table[ELEMENT_COUNT];
/* ELEMENT_COUNT if there is none of this name. */
enum element element_find(const char *name);
enum element element_of(enum field_id id);
/* Row of an element's attribute; NULL if it has none of this name. */
const struct field *element_field(enum element e, const char *attribute);

#endif
