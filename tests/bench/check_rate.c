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

static int measure(const char *path, struct job *job, struct result *result)
{
	static struct problem_list problems;
	int count = 0;

	if (!job_read_file(path, NULL, 0, job, &problems))
		return 1;
	const double start = bench_seconds();
	double spent;

	do {
		check_run_plain(job, result);
		count++;
		spent = bench_seconds() - start;
	} while (spent < SECONDS);
	printf("%9.1f checks/s  %2d attachments  %s\n", count / spent,
	       result->pass[result->judged].attachments, path);
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
