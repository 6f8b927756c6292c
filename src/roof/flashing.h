/* SPDX-License-Identifier: MIT */
/* Geometry of flashings: what a slope does to lengths, how large a hole a pipe cuts, where the
   courses of a covering lie round a foot, how long a plate must be. Plain geometry unless a step
   says that it is a code's rule or our own.

   Symbols: theta pitch angle; E exposure, L length of a piece of covering, both along the slope;
   headlap h the part of a piece that lies under two courses above it. Lengths are metres outside
   the steps and inches inside them. Pure. */
#ifndef RP_ROOF_FLASHING_H
#define RP_ROOF_FLASHING_H

#include <stdbool.h>

#include "quantity/quantity.h"
#include "step/step.h"

/* Every step of this file, for the table of all steps. */
#define FLASHING_STEPS(S)                                                                          \
	S(step_slope_factor)                                                                       \
	S(step_hip_factor)                                                                         \
	S(step_valley_angle)                                                                       \
	S(step_valley_distance)                                                                    \
	S(step_valley_level)                                                                       \
	S(step_pipe_across)                                                                        \
	S(step_pipe_ellipse)                                                                       \
	S(step_deck_slot)                                                                          \
	S(step_level_pipe_ellipse)                                                                 \
	S(step_sleeve_difference)                                                                  \
	S(step_headlap)                                                                            \
	S(step_exposure_double_lap)                                                                \
	S(step_exposure_single_lap)                                                                \
	S(step_pieces_per_square)                                                                  \
	S(step_tile_courses)                                                                       \
	S(step_tile_exposure)                                                                      \
	S(step_tile_headlap)                                                                       \
	S(step_course_count)                                                                       \
	S(step_course_exposure)                                                                    \
	S(step_course_number)                                                                      \
	S(step_course_above_butt)                                                                  \
	S(step_course_below_butt)                                                                  \
	S(step_built_up_high)                                                                      \
	S(step_built_up_low)                                                                       \
	S(step_plate_reach)                                                                        \
	S(step_plate_reach_low_slope)                                                              \
	S(step_plate_length)                                                                       \
	S(step_courses_to_open)                                                                    \
	S(step_ice_barrier)                                                                        \
	S(step_ice_barrier_rolls)                                                                  \
	S(step_cricket_height)                                                                     \
	S(step_cricket_ridge)                                                                      \
	S(step_cricket_valley)                                                                     \
	S(step_insulation_resistance)                                                              \
	S(step_pipe_growth)

#define S(name) extern const struct step name;
FLASHING_STEPS(S)
#undef S

/* Plate of a lapped covering: least distance from the hole down to the lower edge, and from the
   hole up to the butt that covers the plate (common practice). Wood asks for 6 in below the hole
   (Cedar Shake and Shingle Bureau). */
#define PLATE_DOWN_LEAST (4.0 * M_PER_IN)
#define PLATE_BUTT_LEAST (1.0 * M_PER_IN)
/* From this pitch on the plain reach L - E is enough (our rule, from lead slate practice): 8:12. */
#define LOW_SLOPE_RISE 8.0
/* A cricket is needed above anything wider than this (IRC R903.2.2). */
#define CRICKET_WIDTH (30.0 * M_PER_IN)
/* Square distance from a valley's centre line that a flashing keeps (derived from the widths of
   code linings), and where the valley is woven or the covering is tile or slate. */
#define VALLEY_CLEAR (18.0 * M_PER_IN)
#define VALLEY_CLEAR_WIDE (24.0 * M_PER_IN)

/* Width of the obstacle across the slope, m. */
bool flashing_cricket_needed(double width);

/* What is known of one foot. NAN where it is not. */
struct flashing_given {
	double theta;      /* pitch, rad, 0 to below pi/2 */
	double E, L;       /* m */
	double first_butt; /* from the eave edge up to the first butt line, m */
	double y;          /* of the foot, from the eave edge up the slope, m */
	double down;       /* plate below the hole, m, where the covering asks for more than
			      PLATE_DOWN_LEAST */
};

/* What follows; NAN (0 for counts) where it cannot be told. */
struct flashing_foot {
	double headlap;    /* L - 2E; negative for coverings of one layer (tile), which get no plate
			      here */
	double butt_up;    /* from the hole up to the butt that covers the plate, m */
	double above_butt; /* from the butt of its own course up to the hole, m */
	int course;   /* 1 is the first above first_butt; 0 unknown, or the foot stands below it */
	bool move;    /* butt_up is below PLATE_BUTT_LEAST: move the foot down */
	double reach; /* m */
	double low_slope_reach;      /* m; NAN from 8:12 on, where it does not rule */
	double plate_length;         /* least, m */
	double plate_down, plate_up; /* m; their sum is plate_length */
	int open;                    /* courses to loosen above the covering butt */
};

/* Runs the steps that belong to one foot of a lapped covering. Where first_butt is not known, courses
   are counted from the eave edge, and the plate does for a hole anywhere in a course. Where y is
   not known either, the plate is counted with the least distance to the butt, so plate_length is
   the smallest that can do. */
struct flashing_foot flashing_foot(struct trace *trace, const struct flashing_given *given);

#endif
