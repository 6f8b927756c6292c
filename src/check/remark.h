/* SPDX-License-Identifier: MIT */
/* Everything a result says in words. The core only notes which remark holds and the values in it; the words stand here
   once, so that every report (and later another language) says the same.

   A template names values as {0 in}, {1 psf 1} (value, unit, decimals; the report turns the unit into its own system),
   {0 tape}, {0 pitch}, {0 %}, {0 n} (a whole number), texts as {t0}, and the job's edition of the loading
   standard as {code}. */
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
	R(FORM, ENGINEER, "The roof form `{t0}` has no wind coefficients in this program{t1}.")                   \
	R(PLANE, ENGINEER, "Which plane of the hip roof carries the array is not given (`building.plane`).")      \
	R(EDITION, ENGINEER, "The edition {t0} is not computed by this version; ASCE/SEI 7-16 is.")               \
	R(LRFD, NOTE, "Load and resistance factor design. Tested values of foot, collector, rail and a maker's own fastener are " \
	  "allowables: they are held against the ASD combinations of the same edition, all else against LRFD.")   \
	R(NDS, NOTE, "Wood and its fasteners are rated by NDS-{t0}.{t1}")                                          \
	R(NDS_UNREAD, UNCHECKED, "NDS-{t0}: {t1}")                                                                \
	R(HEIGHT, ENGINEER, "The mean roof height {0 ft 1} is above 60 ft, the limit of the low-rise figures "    \
	  "({t0}).")                                                                                \
	R(STEEP, ENGINEER, "The pitch {0 pitch} is steeper than 45 degrees, beyond the figures of {t0}.")                                                                                                \
	R(OPEN_BUILDING, ENGINEER, "An open building has its own roof coefficients ({t0}).")        \
	R(TOPOGRAPHY, ENGINEER, "The site may stand on the upper half of a hill, ridge or escarpment; Kzt is not " \
	  "given ({code} 26.8).")                                                                          \
	R(NOT_RAFTER, ENGINEER, "The framing is `{t0}`: this program rates sawn rafters only. {t1}")              \
	R(RIDGE, ENGINEER, "At {0 pitch} or without ties the ridge must be a beam or a wall; the ridge given is "  \
	  "`{t0}` and the ties `{t1}`.")                                                                          \
	R(DAMAGED, ENGINEER, "The framing or roof is said to be damaged or sagging: repair comes first.")         \
	R(LAYERS, ENGINEER, "There are {0 n} layers of covering: beyond what a general check can judge.")         \
	R(COVERING_PITCH, ENGINEER, "The covering `{t0}` asks for at least {0 pitch}; this roof has {1 pitch}.")  \
	R(COVERING_STOP, ENGINEER, "The covering `{t0}` is one that stops the work: {t1}")                        \
	R(TILTED, ENGINEER, "The collectors stand at {0 deg 1} to a roof of {1 pitch}: no rule of the loading standard for collectors "  \
	  "covers that{t0}. The worse of the forces on rooftop structures ({code} {t1}) and of the full " \
	  "roof pressure on the collectors is used as a bound.")                                                  \
	R(TILTED_LIMIT, NOTE, "The rule for tilted collectors ({code} 29.4.3) is refused: {t0} [{t1}]")    \
	R(ROOFTOP_FORCE, NOTE, "Wind on one collector as a rooftop structure, strength level: {0 lb up} level, from either side, and " \
	  "{1 lb up} upward, acting together (from memory).")                                                      \
	R(RACK_BRACED, ASSUMED, "The rack is a braced frame, hinged at its feet: its legs share the force along the roof alike, and carry " \
	  "its tipping (top {0 in 1} over the roof) as pull and push. Verify: a diagonal brace in the plane of the legs.") \
	R(ZONE_ENVELOPE, ASSUMED, "Wind zones of this roof: {t0}.")                                        \
	R(HILL_COUNTS, NOTE, "The {t0} speeds the wind up: Kzt {0 - 2} (H/Lh {1 - 2}, {code} 26.8).")         \
	R(HILL_OUT, NOTE, "The {t0} does not count ({code} 26.8.1): {t1} Kzt is 1.")                          \
	R(HILL_UNANSWERED, ASSUMED, "hill.{t0} is not answered: yes is taken, so that the hill counts.")          \
	R(HILL_FROM_MEMORY, ASSUMED, "K1 of the shape `{t0}` in exposure {t1} is {0 - 2} H/Lh from memory ({code} Fig. 26.8-1): read it, and " \
	  "enter `Kzt` if the book has more.")                                                                    \
	R(OVERHANG_ARRAY, NOTE, "The array reaches {0 tape} past the wall over the eave overhang, where wind lifts the roof from below " \
	  "too: the overhang coefficients ({code} {t0}) count for the rafters' tails; the collectors are not " \
	  "loaded from below by the soffit.")                                                                     \
	R(RAKE_FOOT, ENGINEER, "Attachment {0 n} stands outside the gable wall: the rake overhang is not rated.") \
	R(STRADDLE_WORST, NOTE, "Pieces that reach into several wind zones are loaded by the worst zone they touch.") \
	R(STRADDLE_BY_AREA, NOTE, "Pieces that reach into several wind zones are loaded by each zone according to the area in it, as asked " \
	  "for: a judgement that the standard does not spell out.")                                               \
	R(UNCHECKED_HIP, UNCHECKED, "The hip rafters and the ridge that carry the jack rafters; the load on a jack rafter that the hip " \
	  "cuts off is taken to the hip.")                                                                        \
	R(HEAVY, ENGINEER, "The filled collector weighs {0 psf 1} of its own area; tank-in-collector units need "  \
	  "their roof designed.")                                                                                 \
	R(LUMBER_UNKNOWN, ENGINEER, "No design values are tabulated for {t0} {t1}.")                              \
	R(LEVER_ARM, ENGINEER, "The foot stands {0 in 2} high and the lever arm of its base is not given: the "    \
	  "couple of the down-slope force cannot be proved.")                                                     \
	R(SEAT_UNKNOWN, ASSUMED, "What lies between the foot and the rafter is not known: taken as a gap of "     \
	  "{0 in 3} that gives the screw no side bearing (general dowel equations).")                             \
	R(HOT_WOOD, ENGINEER, "The rafters are said to keep {0 degF}: above 150 degF wood has no published strength " \
	  "(NDS 2.3.3, 11.3.4). Keep hot pipes clear of the wood.")                                               \
	R(RAISED_TIES, NOTE, "The ties stand {0 in} above the plate, {1 - 2} of the height to the ridge: the rafters' allowed " \
	  "span counts {2 - 2} (IRC rafter tables, footnote, from memory).")                                      \
	R(TIES_TOO_HIGH, ENGINEER, "The ties stand {0 in} above the plate, more than a third of the {1 in} to the ridge: the " \
	  "ridge must be a beam or a wall (IRC rafter tables, footnote, from memory).")                           \
	R(FRAMING_ENTERED, NOTE, "The framing is `{t0}` and is not rated here; the allowables of one foot are an engineer's: {t1}.") \
	R(SHARING, NOTE, "{0 % 0} of each foot's force goes to the two neighbouring rafters, as entered: {t0}.")   \
	R(TESTED, NOTE, "The allowables of the {t0} are tested ones, factor {0 - 1}: {t1}.")                      \
	R(CLIPS_UNKNOWN, ENGINEER, "The clips that hold the metal panel down carry all that the clamps lift, and {t0} is not " \
	  "given: ask the panel's maker.")                                                                        \
	R(DECK_UNLIKE, ENGINEER, "The deck mount was tested on {t0} {0 in 3} thick; this deck is {t1}, {1 in 3}: no value may be " \
	  "carried over.")                                                                                        \
	R(UNCHECKED_DECK_NAILS, UNCHECKED, "The nails that hold the deck to the rafters, which carry all the lift of mounts screwed " \
	  "to the deck alone.")                                                                                   \
	R(SEAM_FRAMING, ENGINEER, "Clamps on seams stand on a deck whose framing is not rated here: what the array, its snow and its wind add to " \
	  "rafters, trusses or purlins must be held against them by somebody who has looked at them.")            \
	R(SEAM_SPREAD, ASSUMED, "What a clamp presses or lifts goes through panel, clips and deck to the two rafters beside it, the deck being a " \
	  "beam on them, where the clamp stands (our rule: the whole load arrives, and a panel spreads it further). The deck and its " \
	  "fasteners are the panel maker's. Verify: the clips stand on deck or rafters as their maker asks.")      \
	R(SEAM_LINES, NOTE, "Feet stand on the seams, {0 tape} apart, and not on rafters: they are told by the seam's number from the left.") \
	R(DECK_PLACES, NOTE, "Mounts on the deck alone stand at multiples of {0 in 2} from the collectors' left edge, on rafters or between: " \
	  "they are told by the number of their place from the left. The deck is taken to hand each force to the rafters beside it by " \
	  "leverage. Keep them off the deck's joints and edges as their report says.")                            \
	R(GAP_COST, NOTE, "The {0 in 2} between foot and rafter that give no bearing leave a fastener {1 lb down} of side load (reference value) " \
	  "where bearing on the wood it would have {2 lb down}: a foot on the rafter itself, or a solid block that fills the gap and is fixed to " \
	  "the rafter, gets that back.")                                                                          \
	R(HANGER_FREE, NOTE, "A hanger bolt stands free: it is rated as a bolt that bends in the wood under a force {0 in 2} above " \
	  "the rafter.")                                                                                          \
	R(NET_SECTION, NOTE, "At each foot a hole {0 in 3} wide and {1 in 2} deep leaves {2 % 0} of the rafter's section modulus (NDS " \
	  "3.1.2); bending there is held against that.")                                                          \
	R(RUNS_ON, NOTE, "The span is shorter than the way from wall to ridge, so the rafter is taken to run on over an inner support: "   \
	  "its moment there is rated, its shear counted half as much again. Where that support stands is taken from the span; measured " \
	  "(`framing.inner-support`), both spans are rated as they are.")                                         \
	R(INNER_SUPPORT, NOTE, "Inner supports under each rafter: {2 n}, the lowest {0 tape} from the wall, the highest {1 tape} from the upper " \
	  "support, level. The spans are rated {t0} (three-moment equation). Each must stand on a wall or a beam.") \
	R(EDGE_FREE, NOTE, "The rafters are no deeper than {1 n} times their breadth by nominal size ({0 - 1}): where net uplift presses the " \
	  "lower edge, CL is 1 without side support (NDS 3.3.3, 4.4.1.2).")                                       \
	R(ENDS_HELD, NOTE, "The rafters are held upright at their ends, as entered, and no deeper than {1 n} times their breadth by nominal " \
	  "size ({0 - 1}): where net uplift presses the lower edge, CL is 1 (NDS 3.3.3, 4.4.1.2).")                \
	R(ENDS_TOO_DEEP, NOTE, "The rafters are held at their ends, but {0 - 1} times as deep as broad by nominal size, more than the {1 n} " \
	  "up to which that is enough (NDS 4.4.1.2): their lower edge counts as before.")                         \
	R(ENDS_LOOK, NOTE, "Worth a look: are the rafters held upright at both ends, by nails into plate and ridge, blocking or hangers? Then " \
	  "NDS 4.4.1.2 asks no side support of rafters up to {1 n} times as deep as broad, and `framing.ends-held` lowers the {0 - 2}.") \
	R(HEEL_THRUST, NOTE, "The rafters push outward at the heel with up to {0 lb/ft} of eave with the array, {1 lb/ft} before; ties " \
	  "and heel nails are not rated.")                                                                        \
	R(BLOCKS, NOTE, "{0 n} feet, the first of them number {1 n}, stand on blocks midway between two rafters: {t0} {t1}, {t2}, cut to " \
	  "the {2 tape} between the rafters; screw, block and ends are rated.")                                   \
	R(BLOCK_NAILED, NOTE, "Each end of a block: common nails 16d through the rafter into the end grain, {0 n} one above the other by " \
	  "{1 n} side by side, {2 in 2} from the block's edges (common practice).")                               \
	R(BLOCK_HANGERS, NOTE, "Each end of a block stands in a hanger, values as entered: {t0}.")                 \
	R(BLOCK_LUMBER, ASSUMED, "The lumber of the blocks is not given: {t0} {t1} is taken. Verify: the grade stamp of what is bought.") \
	R(BLOCKS_SPARED, NOTE, "No blocks are needed: the feet hold on the rafters alone.")                        \
	R(BLOCKS_REFUSED, NOTE, "Blocks between the rafters do not help here: {t0} Feet are shown on rafters.")    \
	R(BETTER_FACT, NOTE, "Were the grade stamp to read {t0} {t1}, the worst ratio would be {0 - 2} in place of {1 - 2}: worth a " \
	  "look.")                                                                                                \
	R(CROSS_SLOPE, UNCHECKED, "Wind along the eave on the edges of the array: {t0}.")                         \
	R(SEISMIC, NOTE, "Earthquake, SDS {0 - 3}: the array pulls its feet sideways with {1 - 3} of its filled weight, "  \
	  "toward the eave, the ridge or along the eave, and with {2 - 3} up or down (before load factors).")     \
	R(SEISMIC_EXEMPT, NOTE, "Seismic design category A as entered: exempt from earthquake forces on components " \
	  "({code} 13.1.4, 11.7).")                                                                           \
	R(SEISMIC_EXEMPT_UNUSED, NOTE, "Seismic design category {t0}: the exemptions of {code} 13.1.4 by category and " \
	  "weight rest on memory here and are not used.")                                                         \
	R(SEISMIC_FACTS, ENGINEER, "ASCE/SEI 7-22 needs SDS of its own maps, CAR and Rpo of Table 13.6-1, Hf and Rmu of 13.3.1: " \
	  "read them there and enter them under `earthquake`. The earthquake is not computed.")              \
	R(CROSS_SLOPE_FORCE, UNCHECKED, "Earthquake along the eave: up to {0 lb up} sideways on one foot ({t0}). It is not " \
	  "rated: across a rafter a screw needs 4 D of wood to the edge (NDS Table 12.5.1C).")                    \
	R(UNCHECKED_SEISMIC_FRAME, UNCHECKED, "The house in an earthquake: its deck, ties and walls, and its own weight sideways. Feet, screws, rails and " \
	  "rafters are rated for the array's weight both ways, rafters for the roof's up and down too.")          \
	R(PARTIAL_RAFTER, NOTE, "The rafters run over {1 n} spans, overhangs counted: partial snow ({code} 7.5, from memory) takes the " \
	  "worst of them to {0 - 2} of what it can carry, with {t0}.")                                            \
	R(PARTIAL_SPARED, NOTE, "Partial snow is not asked of rafters square to the ridge of a gable between {0 deg 2} and {1 deg 1} ({code} " \
	  "7.5, from memory); unbalanced snow is, and is rated.")                                               \
	R(TAIL, ASSUMED, "The array loads the rafters' tails: they are rated as cantilevers, with wind on the overhang from above and below, and " \
	  "with {0 in 2} of depth left over the wall, {t0}. " \
	  "Verify: the depth above the notch, and that each tail is one piece with its rafter.")                  \
	R(TAIL_LONG, ENGINEER, "The array loads rafter tails that reach {0 tape} past the wall: more than the {1 in 0} to which IRC R802.7.1.1 " \
	  "lets a notched rafter run on. Measure what is left over the wall and give `framing.tail-depth`.")                                                          \
	R(PARTIAL_SNOW, NOTE, "Partial snow on the continuous rail ({code} 7.5) puts {0 % 1} more snow on its worst foot " \
	  "than even snow does.")                                                                                 \
	R(DRIFT, NOTE, "Snow drifts against the array: {0 psf up} on top of the balanced snow at its edges, gone after " \
	  "{1 tape} ({code} 7.8, parts of it from memory: `rafterproof sources`; or work it out by the book and give " \
	  "`snow.drift-load`); the rafters are checked with it.")                                                 \
	R(DRIFT_ENTERED, NOTE, "Snow drift at the array as entered: {0 psf 1} on top of the balanced snow at its edges, gone after {1 tape}: " \
	  "{t0}.")                                                                                                \
	R(NO_DRIFT, NOTE, "No snow drift at the array by {code} 7.8 (limits from memory): {t0}")              \
	R(SLIDE_OFF, NOTE, "Snow that slides off each tilted row: {0 psf up} more on a strip of roof {1 tape} wide at its foot ({code} " \
	  "C7.8, from memory); the rafters are checked with it.")                                               \
	R(SEISMIC_RACK, ASSUMED, "Earthquake on collectors that stand tilted acts in the middle of each and tips the braced frame onto its lower " \
	  "or upper feet, which is rated. Along the eave it tips the frame sideways, which is not. Verify: braces along the eave too.") \
	R(LIVE_LEFT_OUT, NOTE, "Roof live load is left out under the collectors, for the clear space {0 in 1} is not above {1 in 0}; without " \
	  "the array the rafter has it everywhere, which is the state before (IBC 2021 1607.14.4.1, ASCE/SEI 7-22 4.16.1).") \
	R(LIVE_KEPT, NOTE, "Roof live load is kept under the collectors: the clear space {0 in 1} is above {1 in 0} (IBC 2021 1607.14.4.1, " \
	  "ASCE/SEI 7-22 4.16.1).")                                                                               \
	R(SLIDE_LOWER, UNCHECKED, "The lower roof below: snow that slides off this roof adds {0 psf 1} over {1 tape} from the eave " \
	  "({2 lb/ft 0} of eave) to its balanced snow ({code} 7.9, slippery where it drains over glass).")      \
	R(SNOW_HELD, NOTE, "This roof {t0}, and nothing but the array stops its snow: down the slope it pushes on each length of " \
	  "the array's upper edge with {0 lb/ft up} at most, all of it put on the topmost line of feet (no friction, common practice).")       \
	R(SNOW_GUARDED, NOTE, "The snow above the array is left to the snow guards, which are not checked here.") \
	R(SNOW_FRICTION, NOTE, "Snow above the array is taken to be held by this rough covering, by friction and frost; no push " \
	  "on the array is computed.")                                                                            \
	R(ICE_DAM, NOTE, "Feet stand on the overhang of a warm roof: {0 psf 1} of ice and snow with dead load is checked on them " \
	  "({code} 7.4.5).")                                                                                  \
	R(LOCAL_SNOW, NOTE, "Local snow rule, as entered: {t0}. Its least roof snow is {0 psf 1}.")               \
	R(LATERAL_OK, NOTE, "The array and earlier additions weigh {0 % 1} of roof, ceiling and upper half of the walls, not more than " \
	  "10 % ({t0}): no upgrade of the lateral system by that proxy (common practice).")                       \
	R(LATERAL_MORE, ENGINEER, "The array and earlier additions weigh {0 % 1} of roof, ceiling and upper half of the walls, more than " \
	  "10 % ({t0}): the lateral system must be looked at.")                                                   \
	R(FIVE_EXCEPTED, NOTE, "Housing of at most five units built to the IRC or the conventional light-frame rules, as entered, is " \
	  "an exception of the 5 % rule ({t0}, from memory); its rafters must still carry the new load, which is the rafter check.") \
	R(COEFFICIENT, LOOK_UP, "Zone {t0}: with the remembered curve it holds, with the safe side it does not. Read GCp in " \
	  "{t1}, zone {t0}, at {0 ft2 1}, and enter it as a `coefficient` with its page: remembered {1 - 2}, safe side {2 - 2}.") \
	R(NO_COEFFICIENT, ENGINEER, "There is no confirmed GCp for zone {t0} on this roof ({code} {t1}): enter the one the book prints as a " \
	  "`coefficient`.")  \
	R(COEFFICIENT_USED, ASSUMED, "GCp of zone {t0} is {1 - 2} ({t1}, {t2}); the answer is the same with the "   \
	  "safe side {2 - 2}. Area {0 ft2 1}.")                                                                   \
	R(COEFFICIENT_ONE_SOURCE, ASSUMED, "GCp of zone {t0} is {1 - 2} at {0 ft2 1} ({t1}): one source, not confirmed; compare " \
	  "it with the printed figure.")                                                                          \
	R(COEFFICIENT_ENTERED, NOTE, "GCp of zone {t0} is {0 - 2} as entered: {t1}.")                             \
	R(ASSUMED_FIELD, ASSUMED, "{t0} is not known: {t1} is assumed. Verify: {t2}")                             \
	R(FLUSH_LOST, NOTE, "The reduction gamma-a of {code} 29.4.4 is refused: {t0} The full roof "       \
	  "coefficient is used instead (gamma-a = 1).")                                                           \
	R(MINIMUM_PRESSURE, NOTE, "The 16 psf minimum ({code} 30.2.2) governs the {t0} in zone {t1}; whether it " \
	  "binds rooftop collectors is not settled, so it is applied.")                                           \
	R(OBSTRUCTED, NOTE, "The collectors stop snow from sliding on this slippery covering: the `all other` slope "  \
	  "curve is used (Cs {0 - 2} in place of {1 - 2}).")                                                      \
	R(CT_ENTERED, NOTE, "The thermal factor Ct is {0 - 2} as entered: {t0}.")                                    \
	R(SNOW_PLACE, ASSUMED, "The ground snow {0 psf 0} is that of {t0} in IBC 2021 Table 1608.2 (50-year, service level). The table gives no " \
	  "elevations: it holds for the place itself. Verify: ask the department for a site above it or outside it.") \
	R(SNOW_PLACE_LESS, ASSUMED, "The ground snow given, {0 psf 0}, is below the {1 psf 0} of {t0} in IBC 2021 Table 1608.2. Verify: the " \
	  "department's own figure, in writing.")                                                                 \
	R(SNOW_MINIMUM, NOTE, "The roof snow {0 psf 1} is the authority's own minimum.")                          \
	R(PUMP_HEAT, NOTE, "Heat that a pump could send to the collectors to melt snow is no design reduction: "  \
	  "the pump may fail in the storm that brings the snow.")                                                 \
	R(VALLEY, FAILS, "The flashing of a foot may come within {0 in 1}, square, of the line of the valley; no flashing and no lifted course within {1 in 0} " \
	  "of it. Move the array away from the valley.")                                                          \
	R(METAL_NEVER, NOTE, "Never {t0} with {t1}: {t2}. Choose another metal or keep every drop of water apart.") \
	R(METAL_APART, NOTE, "Keep {t0} apart from {t1}: {t2}.")                                                  \
	R(METAL_UNLISTED, NOTE, "Of {t0} on {t1} the table of metals says nothing: ask the makers.")               \
	R(WALK_GAP, NOTE, "Between the rows {0 in 1} are left open, room to stand: roof live load is applied there.")  \
	R(FIVE_PERCENT, NOTE, "The rafter's {t0} rises by {0 % up}, more than 5 %: the existing-building code ({t1} " \
	  "and siblings) asks for today's strength; that is the rafter check above.")                             \
	R(FIVE_PERCENT_OK, NOTE, "No rafter effect rises by more than 5 % ({t0} and siblings).")            \
	R(BEFORE_FAILS, NOTE, "The rafter fails today's code before any collector is set: ratio {0 - 2} ({t0}).")  \
	R(OVERHANG_FOOT, ENGINEER, "Feet stand on the rafter tails outside the wall (attachment {0 n}): the tail is not rated.") \
	R(RATIO, FAILS, "{t0} at attachment {0 n}: {1 - 2} of what is allowed ({t1}).")                         \
	R(RAFTER_RATIO, FAILS, "{t0}, rafter {0 n}: {1 - 2} of what is allowed ({t1}).")                      \
	R(RAIL_RATIO, FAILS, "{t0}, line {0 n}: {1 - 2} of what is allowed ({t1}).")                     \
	R(COLLECTOR_RATIO, FAILS, "{t0}: {1 - 2} of the collector's rated pressure ({t1}).")                      \
	R(EDGE, FAILS, "The hole may miss the rafter's centre by {0 in 3}; the edge distance 1.5 D leaves {1 in 3}.")   \
	R(EDGE_ROWS, FAILS, "The rows of screws may miss their place by {0 in 3}; the edge distance {2 in 3} (NDS Table 12.5.1C) leaves " \
	  "{1 in 3}.")                                                                                            \
	R(SMALL_SCREW_BORED, NOTE, "The screws stand nearer to each other or to the rafter's end than the {0 in 2} (10 D) that the NDS " \
	  "commentary recommends for screws under 1/4 in without lead holes (Table C12.1.5.7): drill lead holes.") \
	R(SMALL_SCREW_EDGE, NOTE, "For screws under 1/4 in NDS asks only that the wood does not split (12.1.5.7); its commentary recommends " \
	  "{0 in 2} (2.5 D) to the edge, which a hole {1 in 2} off does not leave here.")                          \
	R(PENETRATION, FAILS, "Only {0 in 2} of the screw (tip not counted) reach into the rafter; 4 D is the "   \
	  "least (NDS 12.1.4.6).")                                                                                \
	R(PENETRATION_SCREW, FAILS, "Only {0 in 2} of the wood screw reach into the rafter; 6 D, {1 in 2}, is the least (NDS " \
	  "12.1.5.6).")                                                                                           \
	R(FASTENER_UNRATED, FAILS, "The fastener cannot be rated: {t0}")                                          \
	R(FOOT_BLOCKED, FAILS, "Attachment {0 n} stands on an obstacle or a pipe, or too near to it.")            \
	R(MAX_SPACING, FAILS, "The feet of line {0 n} stand up to {1 tape} apart; the maker allows {2 tape}.")    \
	R(SPLICE_END_SPAN, FAILS, "The rail of line {0 n} cannot be laid in lengths of {1 tape} so that no joint falls in an end span, " \
	  "past an outer foot or farther from a foot than it may.")                                               \
	R(JOINTS_MISPLACED, FAILS, "The joints told for the rail of line {0 n} (rail-joint) do not fit this layout: one stands in an end " \
	  "span, past an outer foot or farther from a foot than it may, or a piece is longer than the rail comes.") \
	R(JOINT_ASTRAY, FAILS, "rail-joint {0 n} belongs to no rail: there are {1 n} lines, counted from the eave up. Correct its line or take it out.") \
	R(RAIL_JOINT_TOLD, NOTE, "Joint {2 n} of the rail of line {0 n} stands {1 tape} from its left end, as entered.") \
	R(RAIL_JOINT, NOTE, "The rail of line {0 n}, in as few pieces as can be: joint {2 n} stands {1 tape} from its left end, " \
	  "where it bends least.")                                                                                 \
	R(HOLES_NONE, FAILS, "No layout with {0 n} attachments is possible here, only with {1 n} to {2 n}, two or more on each line " \
	  "where clearances, the longest bay and end allow: the one shown has another number.")  \
	R(HOLES_NEVER, FAILS, "No layout with {0 n} attachments is possible here, nor with any other number: {t0}.") \
	R(HOLES_RULE, FAILS, "No layout with {0 n} attachments is possible here: {t0}. The one shown has another number.") \
	R(HOLES_UNSETTLED, FAILS, "No layout with {0 n} attachments was found within the effort allowed; fewer than {1 n} are ruled " \
	  "out. The one shown has another number.")                                                               \
	R(HOLES_BEST, NOTE, "Of all layouts with {0 n} attachments, as the job asks, the one with the lowest worst ratio is shown.")  \
	R(HOLES_OPEN, NOTE, "A layout with {0 n} attachments is shown, as the job asks; whether another with as many has a lower worst " \
	  "ratio was not settled within the effort allowed.")                                                     \
	R(FEWEST, NOTE, "{0 n} attachments are the fewest that hold: every layout with fewer was tried or ruled out. The best with " \
	  "{1 n} reaches {2 - 2} ({t0}).")                                                                        \
	R(FEWEST_ABOUT, NOTE, "{0 n} attachments are the fewest that hold: every layout with fewer was tried or ruled out. The best " \
	  "that was seen with {1 n} reaches {2 - 2} ({t0}).")                                                     \
	R(FEWEST_PAIRS, NOTE, "{0 n} attachments are the fewest there can be: two on each of {1 n} lines.")        \
	R(FEWEST_JOINED, NOTE, "{0 n} attachments are the fewest there can be: {2 n} on each of {1 n} lines, for their rails are joined " \
	  "and a joint needs a span that is no end span.")                                                        \
	R(FEWEST_ALONE, NOTE, "{0 n} attachments are the fewest that hold: every layout with fewer was tried or ruled out.")  \
	R(FEWER_BOUND, NOTE, "No layout with {0 n} is below {1 - 2}: that much is proved.")                       \
	R(FEWER_BARRED, NOTE, "Fewer than {0 n} cannot stand here at all, whatever they carry: {t0}.")            \
	R(NONE_STANDS, NOTE, "No number of attachments can stand here, whatever they carry: {t0}.")               \
	R(RULE_LEFT, NOTE, "These {0 n} attachments hold, but leave out a rule that no layout on as few keeps: {t0}.")  \
	R(FEWEST_OPEN, NOTE, "{0 n} attachments hold and at least {1 n} are needed; what lies between was not settled within the " \
	  "effort allowed.")                                                                                      \
	R(BEST_LAYOUT, NOTE, "No other layout with as many attachments has a lower worst ratio, or the same and more even shares.") \
	R(NONE_HOLDS, NOTE, "No layout on these rafters holds: every one was tried or ruled out.")                \
	R(NO_RAFTER, FAILS, "A rail line has {0 n} rafters to stand on; at least two are needed.")                \
	R(FIXED_SPACING, FAILS, "The wanted spacing {0 tape} is more than the largest that holds, {1 tape}.")     \
	R(REMEDY_SPACING, REMEDY, "Feet no more than {0 tape} apart: the worst ratio falls to {1 - 2}.")          \
	R(REMEDY_LONGER, REMEDY, "A screw {2 in 4} thick and {0 tape} long in place of the present one: the worst ratio falls to {1 - 2}.") \
	R(REMEDY_BESIDES, REMEDY, "What is told above of the {t0} must be put right whatever else is done.") \
	R(REMEDY_BOTH, REMEDY, "No single change is enough; the next two together are (the ratio told is that with both):") \
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
	R(REMEDY_BLOCKING, REMEDY, "Blocks between the rafters where feet find none (`mount.between`), as the check then sizes them: the worst " \
	  "ratio is {1 - 2} then.")                                                                              \
	R(REMEDY_NONE, REMEDY, "None of closer feet, longer screws, two screws, a rigid seat, bracing, doubled or shorter rafters, blocks or " \
	  "fewer collectors, alone or two together, makes it hold: an engineer must design a strengthening.")                                              \
	R(COURSE_MOVED, NOTE, "Line {0 n} stands {1 tape} further {t0} the slope than its inset says, within the clamp range, so that its holes "  \
	  "land well in the courses.")                                                                            \
	R(COURSE_CLOSE, NOTE, "The holes of attachments {0 n} to {1 n} land badly in the covering: {t0}. They would land well {2 tape} "  \
	  "further {t1} the slope, beyond the range of the clamps that is given.")                                \
	R(COURSE_UNMEASURED, ASSUMED, "The first butt line is taken at the eave edge: whether holes land well in the courses is not known. "  \
	  "Verify: measure it and give `roof.first-butt`.")                                                       \
	R(SEAM_CLOSE, NOTE, "{0 n} attachments, the first of them number {1 n}, stand nearer than {2 tape} to a seam: no room for a base.")  \
	R(JOINTS_RANDOM, ASSUMED, "The joints between the pieces lie at random, so whether a hole comes on one is not known. Verify on the "  \
	  "roof before each hole is drilled: {0 tape} or more from every {t0} of its own course{t1}.")              \
	R(JOINTS_UNSEEN, ASSUMED, "At {0 n} attachments, the first of them number {1 n}, the pieces were not measured to both ends. Verify "  \
	  "on the roof before the hole is drilled: {2 tape} or more from every {t0} of its own course{t1}; or give these joints too.")  \
	R(BORDER_CLOSE, NOTE, "The flashing of {0 n} attachments, the first of them number {1 n}, comes nearer than {2 tape} to the {t0} "  \
	  "(common practice): the table of the feet in the covering says by how much.")                          \
	R(JOINT_CLOSE, NOTE, "{0 n} attachments, the first of them number {1 n}, come nearer than {2 tape} to a {t0}: how far each must "  \
	  "move stands with the flashing.")                                                                       \
	R(JOINT_STUCK, NOTE, "{0 n} of them, the first number {1 n}, cannot be moved off it within the clamp range nor on the rafter: open a "  \
	  "wider field there and set pieces so that no joint comes at the hole, or choose another rafter.")        \
	R(EXPOSURE_OVER, NOTE, "The courses show {0 tape}, more than the {1 tape} that {t0} allows for these pieces at this pitch: the "  \
	  "roof has less cover than its code asks for. Ask a roofer before it is opened.")                        \
	R(EXPOSURE_GRADE, NOTE, "The courses show {0 tape}: {t0} allows that for grade No. {1 n} and better at this pitch. Find out the "  \
	  "grade and give `roof.piece-grade`.")                                                                   \
	R(EXPOSURE_UNLISTED, NOTE, "{t0} lists no exposure for pieces {0 tape} long at this pitch: the maker or a roofer must say what "  \
	  "cover this roof has.")                                                                                  \
	R(LAP_SHORT, NOTE, "Pieces {0 tape} long lap by {1 tape}, less than the {2 tape} that is the least on this pitch ({t0}): ask a "  \
	  "roofer before the roof is opened.")                                                                     \
	R(OVER_OBSTACLE, UNCHECKED, "Collector {0 n} lies over obstacle {1 n}: whether that ends below the collector is not known.")  \
	R(UNCHECKED_RAIL, UNCHECKED, "The rail: no section (S, I, alloy) and no allowable moment is given.")      \
	R(UNCHECKED_RAIL_DEFLECTION, UNCHECKED, "The rail's deflection: {t0} is given.")         \
	R(UNCHECKED_RAIL_WEAK, UNCHECKED, "The rail's bending down the slope: no section modulus about that axis is given.") \
	R(UNCHECKED_JOINTS, UNCHECKED, "The joints of the rail where they are entered: no tested moment of a joint is given.") \
	R(UNCHECKED_SPLICE, UNCHECKED, "The joints of the rail, laid in lengths of {0 tape}: no tested moment of a joint is given.") \
	R(UNCHECKED_FOOT, UNCHECKED, "The foot and its clamp ({t0}): no tested allowable is given.")              \
	R(UNCHECKED_COLLECTOR, UNCHECKED, "The collector's frame and clamps: no rated pressure is given.")        \
	R(UNCHECKED_FRAME, UNCHECKED, "The collector's frame as a beam between direct feet: the maker's limits rule.") \
	R(UNCHECKED_RAFTER, UNCHECKED, "The rafter: {t0}")                                                        \
	R(UNCHECKED_HEEL, UNCHECKED, "The heel joint, ties, ridge and walls under the rafters, and thrust at the eave.") \
	R(UNCHECKED_DECK, UNCHECKED, "The roof deck and covering between the feet, which the array does not relieve.")   \
	R(UNCHECKED_SEISMIC, UNCHECKED, "Earthquake on the array and its feet.")                                  \
	R(UNCHECKED_SLIDING, UNCHECKED, "Snow sliding from the collectors onto lower roofs, gutters, doors and walks.") \
	R(UNCHECKED_CLAMPS, UNCHECKED, "Clamps between collector and rail; bolts, torque and corrosion.")         \
	R(UNCHECKED_METALS, UNCHECKED, "Which metals touch or drip on each other: none is given (element `metals`).") \
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
