/* SPDX-License-Identifier: MIT */
/* What every command on one job shares: reading the job that the options name, and the exit status
   that stands for its verdict. */
#ifndef RP_CLI_JOB_OPEN_H
#define RP_CLI_JOB_OPEN_H

#include "check/result.h"
#include "cli/command.h"
#include "job/job.h"

/* Reads the file o->word[0] with the overrides of --units, --holes and --set; false with problems. */
bool job_open(const struct options *o, struct job *job, struct problem_list *problems);

enum exit_status verdict_status(enum verdict v);

#endif
