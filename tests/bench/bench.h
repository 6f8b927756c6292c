/* SPDX-License-Identifier: MIT */
/* A clock for measurements. */
#ifndef RP_TESTS_BENCH_H
#define RP_TESTS_BENCH_H

#include <time.h>

/* Seconds from some moment on, by a clock that nobody sets. */
static inline double bench_seconds(void)
{
	struct timespec t;

	clock_gettime(CLOCK_MONOTONIC, &t);
	return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

#endif
