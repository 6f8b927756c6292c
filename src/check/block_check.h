/* SPDX-License-Identifier: MIT */
/* Feet on blocks between rafters. Internal to src/check. */
#ifndef RP_CHECK_BLOCK_CHECK_H
#define RP_CHECK_BLOCK_CHECK_H

#include "check/context.h"

/* If the job wants feet between rafters: what the worst foot of the judged pass asks of a block and of its ends, and why an
   engineer is still needed. */
void block_check(struct context *c);

#endif
