/* SPDX-License-Identifier: MIT */
/* Lines of feet and the courses of the covering. Internal to src/check. */
#ifndef RP_COURSES_H
#define RP_COURSES_H

#include "check/context.h"

/* A hole keeps this far from the butt that covers it (common practice), and a line that moves up
   past a butt stops as far above it (our rule: clear of the step). */
#define COURSE_CLEAR (1.0 * M_PER_IN)
/* Batten that a tile hangs on, and the room that a hole keeps beside it (common practice). */
#define COURSE_BATTEN (1.5 * M_PER_IN)
#define COURSE_BATTEN_CLEAR (0.5 * M_PER_IN)
/* Half of a 3 in base and a little (our rule). */
#define COURSE_SEAM_CLEAR (2.0 * M_PER_IN)

/* Place of a line meant to stand at y that may move by as much as `reach` (up the slope if
   positive, else down): the nearest one where holes land well, or y if there is none, or if the
   courses are not measured. */
double courses_line(const struct context *c, double y, double reach);

/* Fills the course of every attachment of a pass. */
void courses_fill(const struct context *c, struct pass *pass);
/* Says which lines were moved and which attachments cannot land well. */
void courses_tell(struct context *c, const struct pass *pass);

#endif
