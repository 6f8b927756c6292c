/* SPDX-License-Identifier: MIT */
#ifndef RP_CHECK_BETTER_FACT_H
#define RP_CHECK_BETTER_FACT_H

#include "check/check.h"

/* Where species or grade is assumed: what a better grade stamp would gain on the same feet, by a second run. Adds a remark. */
void better_fact_find(const struct job *job, struct result *r, struct check_workspace *w);

#endif
