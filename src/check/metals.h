/* SPDX-License-Identifier: MIT */
#ifndef RP_CHECK_METALS_H
#define RP_CHECK_METALS_H

#include "check/context.h"

/* Adds a remark for every pair of metals of this job that must not or should not meet; says so where none is given. */
void check_metals(struct context *c);

#endif
