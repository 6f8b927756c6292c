/* SPDX-License-Identifier: MIT */
/* Whether the hole of each foot lies well in the covering: butts, battens, seams, joints, and the borders
   of the roof plane, answered foot by foot in one place. */
#ifndef RP_FEET_NOTES_H
#define RP_FEET_NOTES_H

#include "check/result.h"
#include "job/job.h"
#include "report/document.h"
#include "report/format.h"

/* One row a foot, or for neighbors of whom the same is said; before it a sentence that counts the answers. */
void feet_notes(struct document *d, const struct format *f, const struct job *job, const struct pass *pass);

/* What a check has found of the covering alone: its slope, layers, cover and metals, and every foot. For
   the guide, which tells nothing of strength. */
void covering_notes(struct document *d, const struct job *job, const struct result *r);

#endif
