/* SPDX-License-Identifier: MIT */
/* Checks per second in memory: jobs read once, each checked again and again, without remedies and
   without a report. check_rate JOB.xml... */
#define _POSIX_C_SOURCE 200809L
#include <stdio.h>
#include <stdlib.h>

#include "bench.h"
#include "check/check.h"
#include "job/job_read.h"

#define SECONDS 1.0

typedef void check(const struct job *job, struct result *result);

static double rate(check *run, const struct job *job, struct result *result)
{
	const double start = bench_seconds();
	int count = 0;
	double spent;

	do {
		run(job, result);
		count++;
		spent = bench_seconds() - start;
	} while (spent < SECONDS);
	return count / spent;
}

/* With the whole search, with the small allowance of trial runs, and with feet at a spacing that is
   given, where nothing is searched. */
static int measure(const char *path, struct job *job, struct result *result)
{
	static struct problem_list problems;

	if (!job_read_file(path, NULL, 0, job, &problems))
		return 1;
	const double whole = rate(check_run_plain, job, result);
	const int feet = result->pass[result->judged].attachments;
	const double quick = rate(check_run_quick, job, result);

	job->mount.spacing = job->framing.spacing;
	printf("checks/s: %.0f searched (%d attachments), %.0f quick, %.0f with the spacing given: "
	       "%s\n",
	       whole, feet, quick, rate(check_run_plain, job, result), path);
	return 0;
}

int main(int argc, char *argv[])
{
	struct job *job = malloc(sizeof *job);
	struct result *result = malloc(sizeof *result);
	int status = argc < 2 || !job || !result;

	for (int i = 1; i < argc && status == 0; i++)
		status = measure(argv[i], job, result);
	free(job);
	free(result);
	return status;
}
