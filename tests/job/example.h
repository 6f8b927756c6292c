/* SPDX-License-Identifier: MIT */
/* The example job as text, to be changed in one place by each test. */
#ifndef RP_TESTS_JOB_EXAMPLE_H
#define RP_TESTS_JOB_EXAMPLE_H

#include <stddef.h>

#include "job/job_read.h"

#define EXAMPLE_MAX 8192

/* Reads examples/first-shingle.xml (its path comes from the build) into buf; fails the test if
   it cannot. */
void example_read(char buf[EXAMPLE_MAX]);
/* Puts `to` in place of the one place where `from` stands in text, and returns the line (from 1)
   where `to` starts. */
int example_change(char text[EXAMPLE_MAX], const char *from, const char *to);
/* Reads the example with the overrides in set, which ends with NULL or after max; problems begin
   anew. */
bool example_job(const char *const *set, size_t max, struct job *job, struct problem_list *problems);
/* Tells who reads the test's output. */
void example_print(const struct problem_list *problems);

#endif
