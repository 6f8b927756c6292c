/* SPDX-License-Identifier: MIT */
/* A clock for measurements. */
#ifndef RP_TESTS_BENCH_H
#define RP_TESTS_BENCH_H

#include <time.h>

/* Processor time of this process, s: what else the machine does hardly counts. */
static inline double bench_seconds(void)
{
	struct timespec t;

	clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
	return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

#endif
