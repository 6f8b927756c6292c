/* SPDX-License-Identifier: MIT */
/* One written value against its row of the field table. */
#ifndef RP_JOB_VALUE_H
#define RP_JOB_VALUE_H

#include <stddef.h>

#include "job/field.h"
#include "problem/problem.h"

/* Room for any text of value_accepted. */
#define ACCEPTED_MAX PROBLEM_TEXT_MAX

/* Reads text as a value of f into the member of base: struct job, or the row of a repeated
   element. PROBLEM_NONE, or what is wrong with it (base is then unchanged). Blanks around the
   text are free. */
enum problem_code value_store(const struct field *f, void *base, const char *text);
/* Makes the member say "absent": NAN, 0, or an empty text. */
void value_clear(const struct field *f, void *base);
/* What f accepts, as a person would write it in the given unit system: `85 mph to 250 mph, such
   as 115 mph`. why sets the weight: a wrong unit lists units, a choice its words. Cut to fit;
   returns buf. */
const char *value_accepted(char *buf, size_t size, const struct field *f, enum problem_code why,
			   enum unit_system system);
/* The range alone: `0:12 to 24:12`; a limit is rounded so that what is printed is itself
   accepted. */
const char *value_range(char *buf, size_t size, const struct field *f, enum unit_system system);
/* `unknown` may be written for every field that need not be known. */
bool value_may_be_unknown(const struct field *f);

#endif
