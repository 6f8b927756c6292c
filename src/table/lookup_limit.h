/* SPDX-License-Identifier: MIT */
/* Limits that decide whether a rule holds: the table limit. See lookup.h for what all look-ups share. */
#ifndef RP_TABLE_LOOKUP_LIMIT_H
#define RP_TABLE_LOOKUP_LIMIT_H

#include "quantity/quantity.h"
#include "table/tables.h"

/* In the order of the table's rows: id, key. */
#define LIMITS(L)                                                                                  \
	L(ROOM_TO_STAND, "room-to-stand")                                                  \
	L(BOW_BARE, "rafter-bow-no-ceiling")                                               \
	L(BOW_FLEXIBLE, "rafter-bow-flexible-ceiling")                                     \
	L(BOW_PLASTER, "rafter-bow-plaster-ceiling")                                       \
	L(RIDGE_BOARD_RISE, "ridge-board-rise")                                            \
	L(RAFTERS_SHARE_SPACING, "repetitive-spacing")                                     \
	L(RAFTERS_SHARE_COUNT, "repetitive-count")                                         \
	L(WOOD_HOT, "wood-temperature")                                                    \
	L(TAIL_DEPTH, "rafter-tail-depth")                                                 \
	L(TAIL_LENGTH, "rafter-tail-length")                                               \
	L(FREE_EDGE_RATIO, "free-edge-ratio")                                              \
	L(HELD_ENDS_RATIO, "held-ends-ratio")                                              \
	L(LOW_RISE_HEIGHT, "wind-low-rise-height")                                         \
	L(STEEPEST_FIGURE, "wind-steepest-slope")                                          \
	L(LOW_SLOPE_FIGURE, "wind-low-slope")                                              \
	L(EAVE_HEIGHT_SLOPE, "wind-eave-height-slope")                                     \
	L(PARALLEL_TILT, "solar-parallel-tilt")                                            \
	L(FLUSH_TOP, "solar-flush-top")                                                    \
	L(GAP_LEAST, "solar-gap")                                                          \
	L(GAP_APART, "solar-gap-apart")                                                    \
	L(TILTED_CHORD, "solar-tilted-chord")                                              \
	L(TILTED_TILT, "solar-tilted-tilt")                                                \
	L(TILTED_LOW_EDGE, "solar-tilted-low-edge")                                        \
	L(TILTED_HIGH_EDGE, "solar-tilted-high-edge")                                      \
	L(PARTIAL_SLOPE_LEAST, "snow-partial-slope-least")                                 \
	L(PARTIAL_SLOPE_MOST, "snow-partial-slope-most")                                   \
	L(UNBALANCED_SLOPE_LEAST, "snow-unbalanced-slope-least")                           \
	L(UNBALANCED_RISE_MOST, "snow-unbalanced-rise-most")                               \
	L(UNBALANCED_SIMPLE_W, "snow-unbalanced-simple-width")                             \
	L(LOW_SLOPE_SNOW, "snow-minimum-slope")                                            \
	L(DRIFT_SIDE, "snow-drift-side")                                                   \
	L(DRIFT_RAISED, "snow-drift-raised")                                               \
	L(DRIFT_LOW, "snow-drift-low")                                                     \
	L(SLIDE_WIDTH, "snow-slide-width")                                                 \
	L(SLIDE_RISE_SLIPPERY, "snow-slide-rise-slippery")                                 \
	L(SLIDE_RISE_OTHER, "snow-slide-rise-other")                                       \
	L(SLIDE_OFF, "snow-slide-off-width")                                               \
	L(ICE_R_VENTILATED, "snow-ice-dam-R-ventilated")                                   \
	L(ICE_R_UNVENTILATED, "snow-ice-dam-R-unventilated")

enum limit_id {
#define L(id, key) LIMIT_##id,
	LIMITS(L)
#undef L
	LIMIT_COUNT
};

/* As printed, in the unit of its row. */
double limit_printed(enum limit_id id);
/* In SI (m, rad, K). A rise in inches per foot comes as a length: see limit_slope. */
double limit_of(enum limit_id id);
/* The angle of a limit that is a rise in inches per foot, rad. */
double limit_slope(enum limit_id id);

#endif
