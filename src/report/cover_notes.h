/* SPDX-License-Identifier: MIT */
/* What the flashing section says of the covering's cover and of its joints. */
#ifndef RP_COVER_NOTES_H
#define RP_COVER_NOTES_H

#include "check/result.h"
#include "job/job.h"
#include "report/document.h"
#include "report/format.h"

/* The largest exposure printed for this covering beside the measured one; each foot that comes on a
   joint and the ways out; or that joints are not known. */
void cover_notes(struct document *d, const struct format *f, const struct job *job,
		 const struct pass *pass);

#endif
