/* SPDX-License-Identifier: MIT */
/* Every formula of this room, in the order of a calculation sheet: read by the list of steps and
   its look-up. */
#ifndef RP_RESIST_STEPS_H
#define RP_RESIST_STEPS_H

#include "step/step.h"

#define RESIST_STEPS(S)                                                                      \
	S(step_lag_thread_length) S(step_lag_embedment) S(step_lag_penetration)              \
	S(step_lag_thread_in_wood) S(step_lag_bearing_length) S(step_lag_withdrawal)         \
	S(step_lag_withdrawal_adjusted) S(step_lag_withdrawal_capacity) S(step_lag_tension)  \
	S(step_lag_lead_hole) S(step_lag_edge_room) S(step_lag_least_penetration)            \
	S(step_lag_penetration_factor)                                                       \
	S(step_dowel_bearing_parallel) S(step_dowel_bearing_perpendicular)                   \
	S(step_dowel_bearing_small) S(step_dowel_bearing_angle)                              \
	S(step_yield_k_theta) S(step_yield_k_d) S(step_yield_rd_small) S(step_yield_rd_i)    \
	S(step_yield_rd_ii) S(step_yield_rd_iii_iv)                                          \
	S(step_yield_im) S(step_yield_is) S(step_yield_ii) S(step_yield_iiim)                \
	S(step_yield_iiis) S(step_yield_iv)                                                  \
	S(step_yield_gap_ii) S(step_yield_gap_iiim) S(step_yield_gap_iiis)                   \
	S(step_yield_gap_iv)                                                                 \
	S(step_end_distance_factor) S(step_spacing_factor) S(step_group_factor)              \
	S(step_lateral_adjusted)                                                             \
	S(step_combined_resultant) S(step_combined_angle) S(step_combined_capacity)          \
	S(step_standoff_pull)                                                                \
	S(step_lumber_fb_star) S(step_lumber_fb) S(step_lumber_fv) S(step_lumber_fc_perp)    \
	S(step_lumber_e) S(step_lumber_emin)                                                 \
	S(step_section_area) S(step_section_modulus) S(step_section_inertia)                 \
	S(step_net_section_top) S(step_net_section_bottom)                                   \
	S(step_effective_length_uniform) S(step_effective_length_midspan)                    \
	S(step_effective_length_other) S(step_beam_slenderness) S(step_beam_critical_stress) \
	S(step_beam_stability)                                                               \
	S(step_bending_stress) S(step_shear_stress) S(step_bearing_stress)                   \
	S(step_bearing_factor)                                                               \
	S(step_rafter_line_load_plan) S(step_rafter_line_load_slope)                         \
	S(step_rafter_moment_uniform) S(step_rafter_moment_point)                            \
	S(step_rafter_normal_line_load) S(step_rafter_normal_point)                          \
	S(step_rafter_slope_length) S(step_rafter_deflection_uniform)                        \
	S(step_rafter_deflection_point) S(step_rafter_ratio)                                 \
	S(step_lrfd_connection) S(step_lrfd_stress) S(step_lrfd_steel)                       \
	S(step_rail_stress_lrfd)                                                             \
	S(step_rail_stress) S(step_rail_moment)                                              \
	S(step_wood_screw_withdrawal) S(step_wood_screw_thread_length)                       \
	S(step_wood_screw_tip) S(step_wood_screw_least_penetration)                          \
	S(step_wood_screw_lead_hole)                                                         \
	S(step_nail_withdrawal) S(step_nail_withdrawal_stainless)                            \
	S(step_nail_withdrawal_ring) S(step_nail_combined_capacity)                          \
	S(step_head_pull_through)                                                            \
	S(step_washer_area) S(step_washer_bearing) S(step_free_bolt_turn)                    \
	S(step_free_bolt_hinge) S(step_linear_interaction)                                   \
	S(step_sheet_screw_tilting) S(step_sheet_screw_bearing) S(step_sheet_screw_shear)    \
	S(step_sheet_screw_pull_out) S(step_sheet_screw_pull_over)                           \
	S(step_sheet_screw_allowed) S(step_sheet_screw_shear_pull_over)                      \
	S(step_sheet_screw_shear_pull_out) S(step_sheet_screw_itself)                        \
	S(step_sheet_screw_design) S(step_sheet_screw_factored)                              \
	S(step_block_end) S(step_block_moment) S(step_block_end_fastener)                    \
	S(step_block_twist) S(step_block_twist_end) S(step_block_twist_stress)               \
	S(step_block_both_ways)                                                              \
	S(step_member_notch_shear) S(step_block_grid_force)                                     \
	S(step_heel_thrust) S(step_raised_tie_factor)

#define RESIST_STEP_DECLARE(name) extern const struct step name;
RESIST_STEPS(RESIST_STEP_DECLARE)
#undef RESIST_STEP_DECLARE

#endif
