/* SPDX-License-Identifier: MIT */
/* Formulas as documents: the list of all, what one is, one computed. */
#ifndef RP_REPORT_STEP_REPORT_H
#define RP_REPORT_STEP_REPORT_H

#include "report/document.h"
#include "step/step.h"

struct step_list {
	const struct step *const *step;
	size_t count;
};

/* A step with the values it was given, and what came out; SI. `units` are those the result is shown
   in beside its own. */
struct step_computed {
	const struct step *step;
	double in[STEP_INPUT_MAX];
	double result;
	enum unit_system units;
};

/* Grouped by standard, each with its clause. */
void step_report_list(struct document *d, const struct step_list *list);
void step_report_describe(struct document *d, const struct step *s);
void step_report_computed(struct document *d, const struct step_computed *c);

/* Length of the standard's name at the start of a clause: "ASCE/SEI 7" of "ASCE/SEI 7-16
   Eq. 26.10-1". */
size_t step_standard_length(const char *clause);

#endif
