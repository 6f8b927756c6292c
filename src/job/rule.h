/* SPDX-License-Identifier: MIT */
/* What the cross-field rules share. Internal to src/job. */
#ifndef RP_JOB_RULE_H
#define RP_JOB_RULE_H

#include <stdarg.h>

#include "job/validate.h"

struct rule {
	const struct job *job;
	const struct job_source *source;
	struct problem_list *problems;
};

/* True if every field of the list was given or filled in. Ends at FIELD_COUNT. */
bool rule_have(const struct rule *r, ...);
#define HAVE(r, ...) rule_have((r), __VA_ARGS__, FIELD_COUNT)

/* Tells a problem at the line of field id; fields are the paths of all that disagree. */
void rule_tell(const struct rule *r, enum problem_code code, enum field_id id, const char *fields,
	       const char *given, const char *accepted);
/* The same for a row of a repeated element. */
void rule_tell_row(const struct rule *r, enum problem_code code, enum element e, int row,
		   const char *fields, const char *given, const char *accepted);
/* A length as the job's unit system reads it, into one of the caller's buffers. */
const char *rule_length(const struct rule *r, char *buf, size_t size, double si);

/* rule_access.c */
void rules_of_access(const struct rule *r);
/* rule_roof.c */
void rules_of_roof(const struct rule *r);
/* rule_array.c */
void rules_of_array(const struct rule *r);
/* rule_fastener.c */
void rules_of_fastener(const struct rule *r);
/* rule_framing.c */
void rules_of_framing(const struct rule *r);
/* rule_wind.c */
void rules_of_wind(const struct rule *r);
/* rule_load.c */
void rules_of_loads(const struct rule *r);

#endif
