/* SPDX-License-Identifier: MIT */
#include "cli/job_open.h"

#include <stdio.h>
#include <string.h>

#include "job/job_read.h"

/* --units and --holes are overrides before the others, so that --set has the last word. */
bool job_open(const struct options *o, struct job *job, struct problem_list *problems)
{
	const char *set[SET_MAX + 2];
	char holes[32];
	size_t n = 0;

	if (o->units_given)
		set[n++] = o->units == SYSTEM_SI ? "job.units=si" : "job.units=us";
	if (o->holes > 0) {
		snprintf(holes, sizeof holes, "mount.holes=%d", o->holes);
		set[n++] = holes;
	}
	memcpy(set + n, o->set, o->sets * sizeof *set);
	return job_read_file(o->word[0], set, n + o->sets, job, problems);
}

enum exit_status verdict_status(enum verdict v)
{
	switch (v) {
	case HOLDS:
		return EXIT_HOLDS;
	case DOES_NOT_HOLD:
		return EXIT_DOES_NOT_HOLD;
	case NEEDS_ENGINEER:
		return EXIT_NEEDS_ENGINEER;
	}
	return EXIT_MACHINE;
}
