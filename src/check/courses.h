/* SPDX-License-Identifier: MIT */
/* Lines of feet and the courses of the covering (courses.c, course_place.c). Internal to src/check. */
#ifndef RP_COURSES_H
#define RP_COURSES_H

#include "check/context.h"
#include "roof/joint.h"

/* A hole keeps this far from the butt that covers it (common practice), and as far above the butt of
   its own course (our rule: a base rocks on the step). */
#define COURSE_CLEAR (1.0 * M_PER_IN)
/* Batten that a tile hangs on, and the room that a hole keeps beside it (common practice). */
#define COURSE_BATTEN (1.5 * M_PER_IN)
#define COURSE_BATTEN_CLEAR (0.5 * M_PER_IN)
/* Half of a 3 in base and a little (our rule). */
#define COURSE_SEAM_CLEAR (2.0 * M_PER_IN)

/* Place of a line meant to stand at y that may move by as much as `reach` (up the slope if
   positive, else down): the nearest one where holes land well, or y if there is none, or if the
   courses are not measured. Of several, where joints repeat, the one with the fewest rafters
   between x0 and x1 on a joint. */
double courses_line(const struct context *c, double y, double reach, double x0, double x1);

/* Fills the course of every attachment of a pass. */
void courses_fill(const struct context *c, struct pass *pass);
/* Says which lines were moved and which attachments cannot land well. */
void courses_tell(struct context *c, const struct pass *pass);

/* What is known of the covering of a job. */
struct courses {
	const struct covering_plate_row *row; /* NULL: no courses */
	double E, L, first;                   /* m; E 0 where there are none */
	double batten; /* middle of a batten above a butt, m; NAN none or unknown */
};
struct courses courses_of(const struct context *c);
/* The stretch around y where a hole does not land well; false if it does. */
bool courses_bad_stretch(const struct courses *k, double y, double *low, double *high, enum landing *why);
/* Way from y to the nearest place that is well, up or down the slope; NAN if none is near or it leaves
   the courses. */
double courses_way(const struct courses *k, double y, bool up);
/* Where the line would stand by its inset alone. */
double courses_meant(const struct context *c, const struct line *line);
/* Number of the course that holds y. */
int courses_number(const struct courses *k, double y);
/* True if the line may stand at y. */
bool courses_within(const struct context *c, const struct line *line, double y);

/* joints.c: the joints between the pieces of a course. False if they do not repeat, or are not measured. */
bool joints_of(const struct context *c, struct joint_pattern *p);
/* Feet of a line at y that would come on a joint, if one stood on every rafter between x0 and x1. */
int joints_met(const struct context *c, const struct courses *k, const struct joint_pattern *p, double y, double x0, double x1);
/* Fills what a foot's place says of joints, and tells of them. */
void joints_fill(const struct context *c, const struct courses *k, const struct line *line, double x, struct course_place *p);
void joints_settle(const struct context *c, const struct courses *k, struct pass *pass);
void joints_tell(struct context *c, const struct pass *pass);

/* border.c: room between a foot's flashing and the borders of the roof plane; and who has too little. The
   valley has a verdict of its own (valley.h). */
void borders_fill(const struct context *c, const struct courses *k, struct attachment *a);
void borders_tell(struct context *c, const struct pass *pass);

/* cover.c: whether what shows of a course, and what lies under the next, is what the covering needs at this pitch. */
void cover_tell(struct context *c);

#endif
