/* SPDX-License-Identifier: MIT */
/* Lumber sizes by name: `2x6` dressed, `2x6-full-sawn`, `2x6-pre-1970`. */
#ifndef RP_JOB_SIZE_H
#define RP_JOB_SIZE_H

#include <stdbool.h>

/* Takes blanks out of a name and writes its sign of multiplication as x, in place. False if the
   size is not listed. */
bool size_normalise(char *name);
/* Breadth and depth of a listed size, m. False if it is not listed. */
bool size_find(const char *name, double *breadth, double *depth);

#endif
