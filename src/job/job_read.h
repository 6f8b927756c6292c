/* SPDX-License-Identifier: MIT */
/* Reads a job file. Everything wrong with it is collected, each with its line, before anything
   is calculated. */
#ifndef RP_JOB_READ_H
#define RP_JOB_READ_H

#include <stdbool.h>
#include <stddef.h>

#include "job/job.h"
#include "problem/problem.h"

/* 1 MiB: a job with all its rows is some 20 KiB. */
#define JOB_FILE_MAX 1048576u
/* job > framing > rafter is three. */
#define JOB_DEPTH_MAX 8

/* Reads the job at path into *job, then the overrides (`roof.pitch=6:12`, `pipe[2].diameter=1
   in`, told as `--set` when they are wrong), then fills in defaults and assumptions (job->origin
   says which) and makes the cross-field checks. Only a regular file is read, and no other file
   or address is ever opened for it: a document type is refused. True if no problem was added to
   problems; otherwise *job must not be used. overrides may be NULL when n is 0. Allocates while
   it runs, keeps nothing. */
bool job_read_file(const char *path, const char *const *overrides, size_t n, struct job *job,
		   struct problem_list *problems);
/* The same for size bytes in memory; name stands for the file in problems. */
bool job_read_memory(const char *name, const char *bytes, size_t size, const char *const *overrides,
		     size_t n, struct job *job, struct problem_list *problems);

#endif
