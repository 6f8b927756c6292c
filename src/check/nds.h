/* SPDX-License-Identifier: MIT */
/* Internal to src/check. */
#ifndef RP_CHECK_NDS_H
#define RP_CHECK_NDS_H

#include "check/context.h"

/* Names the edition of the wood standard, and what of it was not read. */
void nds_tell(struct context *c);

#endif
