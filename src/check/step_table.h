/* SPDX-License-Identifier: MIT */
/* All formulas of the program in one list: what `rafterproof step` shows and recomputes. */
#ifndef RP_STEP_TABLE_H
#define RP_STEP_TABLE_H

#include <stddef.h>

#include "step/step.h"

extern const struct step *const step_table[];
extern const size_t step_table_count;

/* NULL if there is no step of this name. */
const struct step *step_find(const char *name);

#endif
