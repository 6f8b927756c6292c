/* SPDX-License-Identifier: MIT */
/* The value of a field of a job, as a report shows it. */
#ifndef RP_REPORT_FIELD_VALUE_H
#define RP_REPORT_FIELD_VALUE_H

#include "job/field.h"
#include "job/job.h"
#include "report/format.h"

/* How often the element of this field occurs in the job: 1 for a single element. */
int field_occurrences(const struct job *job, const struct field *field);
/* Address of the value in the n-th element, from 0. */
const void *field_address(const struct job *job, const struct field *field, int n);
/* False where the value means "absent": NAN, an empty text. */
bool field_present(const struct job *job, const struct field *field, int n);
/* Of an element that occurs many times: default or assumption only where no occurrence gives it. */
enum field_origin field_origin_of(const struct job *job, const struct field *field);
/* In the report's units; "-" when absent. */
const char *field_text(const struct format *f, const struct job *job, const struct field *field,
                       int n);
/* The word of a choice, as written in a job file. */
const char *field_word(const struct job *job, enum field_id id);

#endif
