/* SPDX-License-Identifier: MIT */
/* Steps of this room: what puts loads and areas together. */
#ifndef RP_CHECK_STEPS_H
#define RP_CHECK_STEPS_H

#include "step/step.h"

#define CHECK_STEPS(S)                \
	S(step_attachment_uplift)     \
	S(step_attachment_down)       \
	S(step_attachment_slope)      \
	S(step_attachment_quake_normal) \
	S(step_attachment_quake_slope)  \
	S(step_attachment_held)       \
	S(step_line_share)            \
	S(step_rail_line_load)        \
	S(step_rack_upper)            \
	S(step_rack_lower)            \
	S(step_rack_spread)           \
	S(step_rack_slide)            \
	S(step_fastener_rows_room)    \
	S(step_tributary_area)        \
	S(step_rafter_wind_area)      \
	S(step_rafter_line_load)

#define S(name) extern const struct step name;
CHECK_STEPS(S)
#undef S

#endif
