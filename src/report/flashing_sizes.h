/* SPDX-License-Identifier: MIT */
/* The sizes of a job that the covering library fills into its notes. */
#ifndef RP_REPORT_FLASHING_SIZES_H
#define RP_REPORT_FLASHING_SIZES_H

#include "check/result.h"
#include "guide/guide.h"
#include "guide/sizes.h"
#include "job/job.h"
#include "roof/flashing.h"

/* Level gap all round a pipe in its hole (common practice: room to line it up, little enough to
   cover). */
#define PIPE_GAP (0.25 * M_PER_IN)

/* One line of feet in the courses of the covering. */
struct flashing_foot flashing_of_line(const struct job *job, const struct rail_line *line);
/* True where the covering has courses, so that a foot's place in them matters. */
bool flashing_has_courses(const struct job *job);

/* What is known of this job, NAN for the rest. Where the lines of feet differ, lengths of plates
   are the longest, and places in a course are not known (the report lists them line by line). Of
   several pipes the widest counts. */
struct guide_sizes flashing_sizes(const struct job *job, const struct result *r);
/* The same for one of its pipes, from 0. */
struct guide_sizes flashing_sizes_of_pipe(const struct job *job, const struct result *r, int which);

/* True if an earlier pipe of the job has the same size, insulation and heat. */
bool flashing_pipe_repeats(const struct job *job, int which);

/* What a drawing of a foot shows in place of the usual screw. */
enum guide_fastener flashing_fastener(const struct job *job);

#endif
