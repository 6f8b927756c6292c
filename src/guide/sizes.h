/* SPDX-License-Identifier: MIT */
/* Sizes of the job at hand that the guide fills into its text. One row per placeholder: member, name in braces, how it is
   printed, meaning. Kept in step with the list in details/covering.rng by a test. */
#ifndef RP_GUIDE_SIZES_H
#define RP_GUIDE_SIZES_H

#include <stddef.h>

#include "quantity/quantity.h"

/* PITCH rad; LEAST a length that may be longer, printed rounded up; LENGTH a length, printed to the nearest 1/16 in or mm; either
   as it is where it is a whole number of 64ths of an inch;
   COUNT a whole number; HEAT a temperature. */
#define GUIDE_SIZES(G)                                                                            \
	G(pitch, "pitch", PITCH, "slope of the roof plane")                                       \
	G(exposure, "exposure", LENGTH, "how much of a piece shows, along the slope")             \
	G(piece_length, "piece-length", LENGTH, "whole length of a piece of covering")            \
	G(headlap, "headlap", LENGTH, "part of a piece under two courses above it")               \
	G(reach, "reach", LEAST, "from the covering butt up to the plate's upper edge")           \
	G(low_slope_reach, "low-slope-reach", LEAST, "reach that leaves 3 in of rise")            \
	G(hole_to_butt, "hole-to-butt", LENGTH, "from the hole up to the covering butt")          \
	G(above_butt, "above-butt", LENGTH, "from its own course's butt up to the hole")          \
	G(course, "course", COUNT, "course that holds the hole, the eave's being 1")              \
	G(plate_length, "plate-length", LEAST, "whole length of the plate up the slope")          \
	G(plate_down, "plate-down", LEAST, "from the hole down to the plate's lower edge")        \
	G(plate_up, "plate-up", LEAST, "from the hole up to the plate's upper edge")              \
	G(plate_width, "plate-width", LEAST, "whole width of the plate")                          \
	G(plate_side, "plate-side", LEAST, "from the hole to a side edge of the plate")           \
	G(courses_to_open, "courses-to-open", COUNT, "courses to loosen above the covering butt") \
	G(feet, "feet", COUNT, "number of mount feet")                                            \
	G(pipes, "pipes", COUNT, "number of pipes through the covering")                          \
	G(pipe_diameter, "pipe-diameter", LENGTH, "bare pipe, outside")                           \
	G(pipe_insulated, "pipe-insulated", LEAST, "pipe with its insulation, outside")           \
	G(pipe_across, "pipe-across", LENGTH, "width of the hole for a plumb pipe without a sleeve") \
	G(pipe_ellipse, "pipe-ellipse", LENGTH, "length of that hole up the slope")               \
	G(deck_slot, "deck-slot", LENGTH, "length of the slot sawn square through the deck")      \
	G(sleeve_difference, "sleeve-difference", LENGTH, "how much longer a plumb sleeve is on its low side") \
	G(pipe_temperature, "pipe-temperature", HEAT, "hottest that the pipe gets at the roof")   \
	G(built_up, "built-up", LENGTH, "covering and underlayment, deck to foot")                \
	G(deck_thickness, "deck-thickness", LENGTH, "deck or boards")                             \
	G(fastener_diameter, "fastener-diameter", LENGTH, "shank of the foot's fastener")         \
	G(fastener_length, "fastener-length", LENGTH, "its length below the head")                \
	G(thread_in_wood, "thread-in-wood", LENGTH, "thread that must bite in the rafter")        \
	G(rafter_breadth, "rafter-breadth", LENGTH, "thickness of a rafter")                      \
	G(rafter_depth, "rafter-depth", LENGTH, "depth of a rafter")                              \
	G(rafter_spacing, "rafter-spacing", LENGTH, "rafter centre to rafter centre")             \
	G(seam_spacing, "seam-spacing", LENGTH, "seam to seam or rib to rib")                     \
	G(foot_height, "foot-height", LENGTH, "from the base of a foot to the rail")              \
	G(valley_level, "valley-level", LEAST, "way along a course that clears the valley")       \
	G(ice_barrier, "ice-barrier", LEAST, "length of ice barrier up the slope")                \
	G(ice_rolls, "ice-rolls", COUNT, "courses of 36 in roll for that length")                 \
	G(cricket_height, "cricket-height", LEAST, "height of a cricket above the widest curb")

/* SI; NAN where the job does not know. */
struct guide_sizes {
#define G(member, name, style, meaning) double member;
	GUIDE_SIZES(G)
#undef G
};

/* All unknown. */
struct guide_sizes guide_sizes_unknown(void);

enum guide_size_style { GUIDE_PITCH, GUIDE_LEAST, GUIDE_LENGTH, GUIDE_COUNT, GUIDE_HEAT };

struct guide_size_row {
	const char *name; /* as in braces */
	enum guide_size_style style;
	const char *meaning;
	size_t offset; /* of the member in struct guide_sizes */
};

/* Row of a placeholder; NULL if there is none. */
const struct guide_size_row *guide_size_find(const char *name, size_t length);
/* Row by number, NULL behind the last. */
const struct guide_size_row *guide_size_row(size_t index);
/* Value in SI; NAN if it is unknown, or sizes or row is NULL. */
double guide_size_value(const struct guide_sizes *sizes, const struct guide_size_row *row);

#endif
