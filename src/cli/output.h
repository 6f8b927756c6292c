/* SPDX-License-Identifier: MIT */
/* Where a report goes: standard output, or a file that appears whole or not at all. It is collected
   in memory first, so that nothing is written unless all of it was made. A file is written beside
   its place and renamed; a device, pipe or socket named with -o is written to directly. */
#ifndef RP_CLI_OUTPUT_H
#define RP_CLI_OUTPUT_H

#include <stdbool.h>
#include <stdio.h>

#include "problem/problem.h"

#define OUTPUT_PATH_MAX 4096

struct output {
	FILE *f; /* print into this */
	char *bytes;
	size_t size;
};

/* False with a problem when memory ran out. */
bool output_begin(struct output *o, struct problem_list *problems);
/* Sends what was printed to path (NULL: standard output), or drops it unless `keep`. False with a
   problem when it did not arrive. A reader that closed its pipe early is no problem to report, but
   false as well. */
bool output_end(struct output *o, const char *path, bool keep, struct problem_list *problems);

#endif
