/* SPDX-License-Identifier: MIT */
/* A rail line as a continuous beam on its feet. Internal to src/check. */
#ifndef RP_CHECK_RAIL_H
#define RP_CHECK_RAIL_H

#include "check/context.h"
#include "resist/beam.h"
#include "roof/splice.h"

/* Sets reaction_width of the line's attachments: support reactions under one newton per metre. False with fewer than two. */
bool rail_reactions(const struct line *line, struct attachment *attachment, int count);
/* Moment, deflection and cantilever of the rail under the worst pressure of its attachments. */
void rail_run(struct context *c, const struct line *line, const struct attachment *attachment, int count,
              struct rail_line *rail, struct trace *trace);
/* Worst load per area of array over all combinations, either way, normal to the roof, Pa. allowable: over those of ASD,
   which tested values and deflection limits go with. */
double rail_load(const struct context *c, const struct attachment *attachment, int count, bool allowable,
                 const char **combination);
/* Largest moment that the rail may take, N m; NAN if it is not known. */
double rail_capacity(const struct context *c, struct trace *trace);

/* A cantilever of a rail that is not rated is at most this share of the largest spacing allowed (common practice). */
#define CANTILEVER_SHARE (1.0 / 3.0)

/* rail_weak.c: the rail comes in stock lengths; and there is no way to lay it in them on these feet, x[] rising. */
bool rail_comes_in_lengths(const struct context *c);
/* rail_weak.c: joints of a line that the job tells, m along the eave, rising; how many. SPLICE_MAX holds all of a job. */
int rail_joints_told(const struct context *c, const struct line *line, double at[SPLICE_MAX]);
/* rail_weak.c: told so, or longer than the lengths it comes in. */
bool rail_is_joined(const struct context *c, const struct line *line);
bool rail_cannot_be_laid(const struct context *c, const struct line *line, const double *x, int count);
/* rail_weak.c: its joints, as few as can be, where it bends least; how many. */
int rail_joints(const struct context *c, const struct line *line, const struct beam *beam,
                const struct beam_forces *forces, double at[SPLICE_MAX]);
/* The same for a line of attachments. */
int rail_joints_of(const struct context *c, const struct line *line, const struct attachment *attachment, int count,
                   double at[SPLICE_MAX]);
/* rail_weak.c: largest moment at one of them, N m under a load of 1 N/m; 0 where there is none. */
double rail_splice_moment(const struct context *c, const struct line *line, const struct beam *beam,
                          const struct beam_forces *forces);
/* rail_weak.c: bending about both axes together, 1 is the limit; moment is the largest under a load of 1 per area of array,
   N m per Pa. False where the second section modulus or the alloy is not known. */
struct rail_bent {
	double ratio;
	double normal, along; /* loads per area of array that make it, square to the roof and along the slope, Pa */
	const char *combination;
};
bool rail_both_ways(const struct context *c, const struct attachment *a, int count, double moment,
                    struct rail_bent *worst);

#endif
