/* SPDX-License-Identifier: MIT */
/* The field table as a document and as JSON (fields.schema.json). */
#ifndef RP_REPORT_FIELDS_REPORT_H
#define RP_REPORT_FIELDS_REPORT_H

#include <stdio.h>

#include "job/field.h"
#include "report/document.h"

struct field_list {
	const struct field *field; /* the one asked for; NULL: all */
	enum unit_system units;    /* of ranges */
};

void fields_report_build(struct document *d, const struct field_list *list);
/* `what` is a struct field_list. 0, or -1 when memory ran out or the stream failed. */
int json_fields_write(FILE *f, const void *what);

/* "required", "default", "assumed", "optional" */
const char *field_need_word(enum field_need need);

#endif
