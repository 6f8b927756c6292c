/* SPDX-License-Identifier: MIT */
/* The loading codes of this program. Editions of ASCE/SEI 7 share their functions, which take the
   edition and differ by tables where they can. */
#include "load/loading_code.h"

#include <string.h>

#define ASCE7_FUNCTIONS                                                                            \
	.wind_velocity = asce7_wind_velocity, .wind_coefficient = asce7_wind_coefficient,          \
	.internal_coefficient = asce7_internal_coefficient, .roof_pressure = asce7_roof_pressure,  \
	.array_pressure = asce7_array_pressure, .snow_loads = asce7_snow_loads,                    \
	.combinations = asce7_combinations

static const struct loading_code code[] = {
	{.edition = ASCE7_10,
	 .key = "asce7-10",
	 .name = "ASCE/SEI 7-10",
	 .ground_snow = GROUND_SNOW_SERVICE,
	 .solar_provision = false,
	 ASCE7_FUNCTIONS},
	{.edition = ASCE7_16,
	 .key = "asce7-16",
	 .name = "ASCE/SEI 7-16",
	 .ground_snow = GROUND_SNOW_SERVICE,
	 .solar_provision = true,
	 ASCE7_FUNCTIONS},
	{.edition = ASCE7_22,
	 .key = "asce7-22",
	 .name = "ASCE/SEI 7-22",
	 .ground_snow = GROUND_SNOW_STRENGTH,
	 .solar_provision = true,
	 ASCE7_FUNCTIONS},
};

#define CODE_COUNT (sizeof code / sizeof code[0])

const struct loading_code *loading_code_of(enum edition edition)
{
	for (size_t i = 0; i < CODE_COUNT; i++)
		if (code[i].edition == edition)
			return &code[i];
	return NULL;
}

const struct loading_code *loading_code_find(const char *key)
{
	for (size_t i = 0; i < CODE_COUNT; i++)
		if (strcmp(code[i].key, key) == 0)
			return &code[i];
	return NULL;
}
