/* SPDX-License-Identifier: MIT */
/* One check as JSON; the format is described by check.schema.json. */
#ifndef RP_REPORT_JSON_CHECK_H
#define RP_REPORT_JSON_CHECK_H

#include <stdio.h>

#include "check/result.h"
#include "job/job.h"

/* 0, or -1 when memory ran out or the stream failed. */
int json_check_write(FILE *f, const struct job *job, const struct result *r);

#endif
