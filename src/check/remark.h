/* SPDX-License-Identifier: MIT */
/* Everything a result says in words. The core only notes which remark holds and the values in it; the words stand here
   once, so that every report (and later another language) says the same.

   A template names values as {0 in}, {1 psf 1} (value, unit, decimals; the report turns the unit into its own system),
   {0 tape}, {0 pitch}, {0 %}, {0 n} (a whole number) and texts as {t0}. */
#ifndef RP_REMARK_H
#define RP_REMARK_H

enum remark_kind {
	REMARK_ENGINEER,  /* why the verdict is `needs an engineer` */
	REMARK_FAILS,     /* why it does not hold */
	REMARK_LOOK_UP,   /* a coefficient to be read from the book */
	REMARK_ASSUMED,   /* an assumption made, and how to verify it */
	REMARK_UNCHECKED, /* what this check does not cover */
	REMARK_REMEDY,    /* what would make it hold, proved by running the check again */
	REMARK_NOTE,      /* worth knowing: a rule refused, a limit passed, a load that governs */
	REMARK_KIND_COUNT
};

/* id, kind, template */
#define REMARKS(R)                                                                                            \
	R(FORM, ENGINEER, "The roof form `{t0}` has no confirmed wind coefficients in this program.")             \
	R(EDITION, ENGINEER, "The edition {t0} is not computed by this version; ASCE/SEI 7-16 is.")               \
	R(LRFD, ENGINEER, "Load and resistance factor design is not computed by this version; ASD is.")           \
	R(HEIGHT, ENGINEER, "The mean roof height {0 ft 1} is above 60 ft, the limit of the low-rise figures "    \
	  "(ASCE/SEI 7-16 30.3).")                                                                                \
	R(STEEP, ENGINEER, "The pitch {0 pitch} is steeper than 45 degrees, beyond the figures of ASCE/SEI 7-16 " \
	  "30.3.")                                                                                                \
	R(OPEN_BUILDING, ENGINEER, "An open building has its own roof coefficients (ASCE/SEI 7-16 30.7).")        \
	R(TOPOGRAPHY, ENGINEER, "The site may stand on the upper half of a hill, ridge or escarpment; Kzt is not " \
	  "given (ASCE/SEI 7-16 26.8).")                                                                          \
	R(NOT_RAFTER, ENGINEER, "The framing is `{t0}`: this program rates sawn rafters only. {t1}")              \
	R(RIDGE, ENGINEER, "At {0 pitch} or without ties the ridge must be a beam or a wall; the ridge given is "  \
	  "`{t0}` and the ties `{t1}`.")                                                                          \
	R(DAMAGED, ENGINEER, "The framing or roof is said to be damaged or sagging: repair comes first.")         \
	R(LAYERS, ENGINEER, "There are {0 n} layers of covering: beyond what a general check can judge.")         \
	R(COVERING_PITCH, ENGINEER, "The covering `{t0}` asks for at least {0 pitch}; this roof has {1 pitch}.")  \
	R(COVERING_STOP, ENGINEER, "The covering `{t0}` is one that stops the work: {t1}")                        \
	R(TILTED, ENGINEER, "The collectors stand at {0 deg 1} to the roof; this version rates flush collectors "  \
	  "(within 2 degrees of the roof, ASCE/SEI 7-16 29.4.4).")                                                \
	R(HEAVY, ENGINEER, "The filled collector weighs {0 psf 1} of its own area; tank-in-collector units need "  \
	  "their roof designed.")                                                                                 \
	R(LUMBER_UNKNOWN, ENGINEER, "No design values are tabulated for {t0} {t1}.")                              \
	R(LEVER_ARM, ENGINEER, "The foot stands {0 in 2} high and the lever arm of its base is not given: the "    \
	  "couple of the down-slope force cannot be proved.")                                                     \
	R(SEAT_UNKNOWN, ASSUMED, "What lies between the foot and the rafter is not known: taken as a gap of "     \
	  "{0 in 3} that gives the screw no side bearing (general dowel equations).")                             \
	R(CROSS_SLOPE, NOTE, "Forces along the eave (wind on the edges, earthquake) are not rated: a 1-1/2 in "   \
	  "rafter edge cannot give the 4 D edge distance of NDS Table 12.5.1C.")                                  \
	R(COEFFICIENT, LOOK_UP, "Zone {t0}: with the remembered curve it holds, with the safe side it does not. Read GCp in " \
	  "{t1}, zone {t0}, at {0 ft2 1}, and enter it as a `coefficient` with its page: remembered {1 - 2}, safe side {2 - 2}.") \
	R(NO_COEFFICIENT, ENGINEER, "There is no GCp for zone {t0} on this roof; enter the one the book prints.")  \
	R(COEFFICIENT_USED, ASSUMED, "GCp of zone {t0} is {1 - 2} ({t1}, {t2}); the answer is the same with the "   \
	  "safe side {2 - 2}. Area {0 ft2 1}.")                                                                   \
	R(COEFFICIENT_ENTERED, NOTE, "GCp of zone {t0} is {0 - 2} as entered: {t1}.")                             \
	R(ASSUMED_FIELD, ASSUMED, "{t0} is not known: {t1} is assumed. Verify: {t2}")                             \
	R(FLUSH_LOST, NOTE, "The reduction gamma-a of ASCE/SEI 7-16 29.4.4 is refused: {t0} The full roof "       \
	  "coefficient is used instead (gamma-a = 1).")                                                           \
	R(MINIMUM_PRESSURE, NOTE, "The 16 psf minimum (ASCE/SEI 7-16 30.2.2) governs the {t0} in zone {t1}; whether it " \
	  "binds rooftop collectors is not settled, so it is applied.")                                           \
	R(OBSTRUCTED, NOTE, "The collectors stop snow from sliding on this slippery covering: the `all other` slope "  \
	  "curve is used (Cs {0 - 2} in place of {1 - 2}).")                                                      \
	R(SNOW_MINIMUM, NOTE, "The roof snow {0 psf 1} is the authority's own minimum.")                          \
	R(PUMP_HEAT, NOTE, "Heat that a pump could send to the collectors to melt snow is no design reduction: "  \
	  "the pump may fail in the storm that brings the snow.")                                                 \
	R(WALK_GAP, NOTE, "Between the rows {0 in 1} are left open, room to stand: roof live load is applied there.")  \
	R(FIVE_PERCENT, NOTE, "The rafter's {t0} rises by {0 % 1}, more than 5 %: the existing-building code (IEBC 503.3 " \
	  "and siblings) asks for today's strength; that is the rafter check above.")                             \
	R(FIVE_PERCENT_OK, NOTE, "No rafter effect rises by more than 5 % (IEBC 503.3 and siblings).")            \
	R(BEFORE_FAILS, NOTE, "The rafter fails today's code before any collector is set: ratio {0 - 2} ({t0}).")  \
	R(OVERHANG_FOOT, ENGINEER, "Feet stand on the rafter tails outside the wall (attachment {0 n}): the tail is not rated.") \
	R(RATIO, FAILS, "{t0} at attachment {0 n}: {1 - 2} of what it can carry ({t1}).")                         \
	R(RAFTER_RATIO, FAILS, "{t0} of rafter {0 n}: {1 - 2} of what it can carry ({t1}).")                      \
	R(RAIL_RATIO, FAILS, "{t0} of rail line {0 n}: {1 - 2} of what it can carry ({t1}).")                     \
	R(COLLECTOR_RATIO, FAILS, "{t0}: {1 - 2} of the collector's rated pressure ({t1}).")                      \
	R(EDGE, FAILS, "The hole may miss the rafter's centre by {0 in 3}; the edge distance 1.5 D leaves {1 in 3}.")   \
	R(PENETRATION, FAILS, "Only {0 in 2} of the screw (tip not counted) reach into the rafter; 4 D is the "   \
	  "least (NDS 12.1.4.6).")                                                                                \
	R(FASTENER_UNRATED, FAILS, "The lag screw cannot be rated: {t0}")                                         \
	R(NO_RAFTER, FAILS, "A rail line has {0 n} rafters to stand on; at least two are needed.")                \
	R(FIXED_SPACING, FAILS, "The wanted spacing {0 tape} is more than the largest that holds, {1 tape}.")     \
	R(REMEDY_SPACING, REMEDY, "Feet no more than {0 tape} apart: the worst ratio falls to {1 - 2}.")          \
	R(REMEDY_LONGER, REMEDY, "A lag screw {2 tape} by {0 tape} in place of the present one: the worst ratio falls to {1 - 2}.") \
	R(REMEDY_BOTH, REMEDY, "No single change is enough; these two together are:")                             \
	R(REMEDY_TWO, REMEDY, "Two screws per foot, {0 in 2} apart along the rafter: the worst ratio falls to {1 - 2}.")  \
	R(REMEDY_BRACE, REMEDY, "Blocking or strapping that holds the rafters' bottom edges sideways at least every {0 tape}: the worst ratio " \
	  "falls to {1 - 2}.")                                                                                    \
	R(REMEDY_SPAN, REMEDY, "A wall, or a purlin on struts to a bearing wall, so that no rafter spans more than {0 tape} level: the " \
	  "worst ratio falls to {1 - 2}.")                                                                        \
	R(REMEDY_FEWER, REMEDY, "{0 n} columns of collectors in place of {2 n}: the worst ratio falls to {1 - 2}.") \
	R(REMEDY_SEAT, REMEDY, "A rigid post or block fixed to the rafter under each foot, so that no gap is left "  \
	  "for the screw to bend in: the worst ratio falls to {1 - 2}.")                                          \
	R(REMEDY_STAGGER, REMEDY, "Feet of the upper and lower lines on alternate rafters: the worst ratio falls to {1 - 2}.") \
	R(REMEDY_RAFTER, REMEDY, "A second rafter of the same size fastened to each that carries feet: the worst ratio falls to {1 - 2}.") \
	R(REMEDY_BLOCKING, REMEDY, "Blocking between the rafters where a foot must land, its ends fastened for the lift; not proved here: " \
	  "the block and its fastening must be designed.")                                                        \
	R(REMEDY_NONE, REMEDY, "None of closer feet, longer screws, two screws, a rigid seat, bracing, doubled or shorter rafters or fewer " \
	  "collectors, alone or two together, makes it hold: an engineer must design a strengthening.")                                              \
	R(UNCHECKED_RAIL, UNCHECKED, "The rail: no section (S, I, alloy) and no allowable moment is given.")      \
	R(UNCHECKED_RAIL_DEFLECTION, UNCHECKED, "The rail's deflection: no inertia or no limit is given.")         \
	R(UNCHECKED_FOOT, UNCHECKED, "The foot and its clamp ({t0}): no tested allowable is given.")              \
	R(UNCHECKED_COLLECTOR, UNCHECKED, "The collector's frame and clamps: no rated pressure is given.")        \
	R(UNCHECKED_FRAME, UNCHECKED, "The collector's frame as a beam between direct feet: the maker's limits rule.") \
	R(UNCHECKED_RAFTER, UNCHECKED, "The rafter: {t0}")                                                        \
	R(UNCHECKED_HEEL, UNCHECKED, "The heel joint, ties, ridge and walls under the rafters, and thrust at the eave.") \
	R(UNCHECKED_DECK, UNCHECKED, "The roof deck and covering between the feet, which the array does not relieve.")   \
	R(UNCHECKED_SEISMIC, UNCHECKED, "Earthquake on the array and its feet.")                                  \
	R(UNCHECKED_SLIDING, UNCHECKED, "Snow sliding from the collectors onto lower roofs, gutters, doors and walks; drift.") \
	R(UNCHECKED_CLAMPS, UNCHECKED, "Clamps between collector and rail; bolts, torque and corrosion.")         \
	R(UNCHECKED_LATERAL, UNCHECKED, "The building's lateral system (10 % rule).")

enum remark_id {
#define R(id, kind, text) REMARK_##id,
	REMARKS(R)
#undef R
	REMARK_COUNT
};

enum remark_kind remark_kind(enum remark_id id);
const char *remark_template(enum remark_id id);

struct remark {
	enum remark_id id;
	double value[3];     /* SI */
	const char *text[3]; /* static or owned by the job or the published tables */
};

#endif
