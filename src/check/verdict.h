/* SPDX-License-Identifier: MIT */
#ifndef RP_CHECK_VERDICT_H
#define RP_CHECK_VERDICT_H

#include "check/context.h"

/* Adds the remarks that follow from the passes (what fails, what to look up, what was not checked) and sets the verdict. Any
   reason for an engineer outweighs the rest: a ratio is then a bound, not an answer. */
void verdict_give(struct context *c);

/* Its part on earthquake, uneven snow and existing buildings (verdict_loads.c). */
void verdict_loads(struct context *c);
/* Where the edition of the existing-building code that the job names has its 5 % rule. */
const char *verdict_iebc(const struct job *job);

#endif
