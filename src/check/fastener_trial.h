/* SPDX-License-Identifier: MIT */
/* One fastener under one load, held as the check holds it. Internal to src/check. */
#ifndef RP_CHECK_FASTENER_TRIAL_H
#define RP_CHECK_FASTENER_TRIAL_H

#include "check/fastener_table.h"

/* Once for a question: a job of the workspace that holds its wood, plate and foot. */
void fastener_trial_begin(const struct fastener_question *q, struct check_workspace *w);
/* A size of its kind; L as struct fastener_row has it. */
struct fastener_row fastener_trial(const struct fastener_question *q, struct check_workspace *w,
				   double D, double L);

#endif
