/* SPDX-License-Identifier: MIT */
/* Every formula of the room load, for the step table. */
#ifndef RP_LOAD_LOAD_STEPS_H
#define RP_LOAD_LOAD_STEPS_H

#include "step/step.h"

#define LOAD_STEPS(S)                                                                              \
	S(step_wind_Kz)                                                                            \
	S(step_wind_K1)                                                                            \
	S(step_wind_K2)                                                                            \
	S(step_wind_K3)                                                                            \
	S(step_wind_Kzt)                                                                           \
	S(step_wind_Ke)                                                                            \
	S(step_wind_velocity_pressure_7_10)                                                        \
	S(step_wind_velocity_pressure)                                                             \
	S(step_wind_velocity_pressure_7_22)                                                        \
	S(step_wind_zone_a)                                                                        \
	S(step_wind_GCp)                                                                           \
	S(step_wind_component_pressure)                                                            \
	S(step_wind_component_pressure_7_22)                                                       \
	S(step_wind_minimum_pressure)                                                              \
	S(step_wind_overhang_net)                                                                  \
	S(step_snow_half)                                                                          \
	S(step_solar_edge_distance)                                                                \
	S(step_solar_shelter_distance)                                                             \
	S(step_solar_row_end)                                                                      \
	S(step_solar_gamma_E)                                                                      \
	S(step_solar_gamma_a)                                                                      \
	S(step_solar_flush_pressure)                                                               \
	S(step_solar_flush_pressure_7_22)                                                          \
	S(step_solar_gamma_p)                                                                      \
	S(step_solar_gamma_c)                                                                      \
	S(step_solar_Lb)                                                                           \
	S(step_solar_An)                                                                           \
	S(step_solar_GCrn_chart)                                                                   \
	S(step_solar_GCrn_tilt)                                                                    \
	S(step_solar_GCrn)                                                                         \
	S(step_solar_tilted_pressure)                                                              \
	S(step_solar_tilted_pressure_7_22)                                                         \
	S(step_solar_tilted_clear)                                                                 \
	S(step_rooftop_GCr_lateral)                                                                \
	S(step_rooftop_GCr_uplift)                                                                 \
	S(step_rooftop_force)                                                                      \
	S(step_snow_flat_roof)                                                                     \
	S(step_snow_flat_roof_7_22)                                                                \
	S(step_snow_slope_factor)                                                                  \
	S(step_snow_sloped_roof)                                                                   \
	S(step_snow_minimum)                                                                       \
	S(step_snow_minimum_7_22)                                                                  \
	S(step_snow_density)                                                                       \
	S(step_snow_drift_height_7_10)                                                             \
	S(step_snow_drift_height)                                                                  \
	S(step_snow_drift_height_7_22)                                                             \
	S(step_snow_leeward)                                                                       \
	S(step_snow_windward)                                                                      \
	S(step_snow_leeward_surcharge)                                                             \
	S(step_snow_leeward_length)                                                                \
	S(step_snow_rain)                                                                          \
	S(step_snow_rain_7_22)                                                                     \
	S(step_seismic_SDS)                                                                        \
	S(step_seismic_force)                                                                      \
	S(step_seismic_force_7_22)                                                                 \
	S(step_seismic_force_most)                                                                 \
	S(step_seismic_force_least)                                                                \
	S(step_seismic_vertical)                                                                   \
	S(step_seismic_unattached_gap)                                                             \
	S(step_snow_balanced_height)                                                               \
	S(step_snow_projection_height)                                                             \
	S(step_snow_drift_load)                                                                    \
	S(step_snow_drift_width)                                                                   \
	S(step_snow_drift_width_7_22)                                                              \
	S(step_snow_sliding)                                                                       \
	S(step_snow_held)                                                                          \
	S(step_snow_slide_off)                                                                     \
	S(step_snow_ice_dam)                                                                       \
	S(step_snow_partial)                                                                       \
	S(step_snow_local)                                                                         \
	S(step_roof_live_irc)                                                                      \
	S(step_roof_live_R1)                                                                       \
	S(step_roof_live_R2)                                                                       \
	S(step_roof_live)                                                                          \
	S(step_fluid_weight)                                                                       \
	S(step_array_dead)                                                                         \
	S(step_dead_normal)                                                                        \
	S(step_dead_parallel)                                                                      \
	S(step_plan_normal)                                                                        \
	S(step_plan_parallel)                                                                      \
	S(step_load_rise)                                                                          \
	S(step_lateral_rise)

#define S(id) extern const struct step id;
LOAD_STEPS(S)
#undef S

#endif
