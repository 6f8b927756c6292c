/* SPDX-License-Identifier: MIT */
#ifndef RP_CLI_LIBRARY_H
#define RP_CLI_LIBRARY_H

#include "guide/guide.h"
#include "problem/problem.h"

/* The covering library from where data_dir.h says; NULL with problems. */
struct guide_library *library_open(struct problem_list *problems);

#endif
