/* SPDX-License-Identifier: MIT */
#include "check/step_table.h"

#include <string.h>

#include "check/check_steps.h"
#include "load/load_steps.h"
#include "resist/resist_steps.h"
#include "roof/flashing.h"
#include "roof/joint.h"

const struct step *const step_table[] = {
#define S(name) &name,
	LOAD_STEPS(S) RESIST_STEPS(S) CHECK_STEPS(S) FLASHING_STEPS(S) JOINT_STEPS(S)
#undef S
};

const size_t step_table_count = sizeof step_table / sizeof *step_table;

const struct step *step_find(const char *name)
{
	for (size_t i = 0; i < step_table_count; i++)
		if (strcmp(step_table[i]->name, name) == 0)
			return step_table[i];
	return NULL;
}
