/* SPDX-License-Identifier: MIT */
/* Problems as JSON (problems.schema.json): printed in place of a command's output when it cannot
   run. */
#ifndef RP_REPORT_JSON_PROBLEM_H
#define RP_REPORT_JSON_PROBLEM_H

#include <stdio.h>

#include "problem/problem.h"

/* 0, or -1 when memory ran out or the stream failed. */
int json_problems_write(FILE *f, const char *command, const struct problem_list *list);

#endif
