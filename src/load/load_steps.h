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
	S(step_solar_edge_distance)                                                                \
	S(step_solar_shelter_distance)                                                             \
	S(step_solar_row_end)                                                                      \
	S(step_solar_gamma_E)                                                                      \
	S(step_solar_gamma_a)                                                                      \
	S(step_solar_flush_pressure)                                                               \
	S(step_solar_flush_pressure_7_22)                                                          \
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
