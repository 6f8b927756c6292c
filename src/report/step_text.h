/* SPDX-License-Identifier: MIT */
/* One line of a calculation in words: formula, the values put in, the result, the clause. */
#ifndef RP_REPORT_STEP_TEXT_H
#define RP_REPORT_STEP_TEXT_H

#include "report/format.h"
#include "step/step.h"

/* The line of step s with n SI inputs and an SI result, in the clause's own units; the result also
   in the report's system where that differs. */
struct step_line step_text_line(const struct format *f, const struct step *s, const double *in,
                                double result, enum edition edition);

/* The formula with each input's symbol replaced by `value[i]`; *shown gets bit i for each input
   met. A blank between two things to be multiplied becomes " x ". */
const char *step_text_put_in(const struct format *f, const struct step *s, const char *const *value,
                             unsigned *shown);

/* "from memory: note" or "" for a confirmed step without a note. */
const char *step_text_status(const struct format *f, const struct step *s);

#endif
