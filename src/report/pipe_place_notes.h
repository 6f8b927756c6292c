/* SPDX-License-Identifier: MIT */
/* Whether the hole of each pipe lies well in the covering, beside what feet_notes says of the feet. */
#ifndef RP_PIPE_PLACE_NOTES_H
#define RP_PIPE_PLACE_NOTES_H

#include "check/result.h"
#include "job/job.h"
#include "report/document.h"
#include "report/format.h"

void pipe_place_notes(struct document *d, const struct format *f, const struct job *job, const struct result *r);

#endif
