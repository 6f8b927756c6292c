/* SPDX-License-Identifier: MIT */
#ifndef RP_CHECK_REMEDY_H
#define RP_CHECK_REMEDY_H

#include "check/check.h"

/* Where something fails, tries the changes a crew could make, one and then two at a time, by running the check again, and
   adds a remark for each that makes everything hold. Says so if none does. */
void remedies_find(const struct job *job, struct result *result, struct check_workspace *workspace);

#endif
