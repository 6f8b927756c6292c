/* SPDX-License-Identifier: MIT */
/* Formulas as JSON (step.schema.json). */
#ifndef RP_REPORT_JSON_STEP_H
#define RP_REPORT_JSON_STEP_H

#include "report/json_value.h"
#include "report/step_report.h"
#include "step/step.h"

/* One line of a calculation: SI inputs and result, written in the units of the clause. */
void put_step_line(struct json *j, json_t *object, const struct step *s, const double *in,
                   double result, enum edition edition);
/* What a step is: formula, inputs with units and meaning, clause per edition, status. */
void put_step_description(struct json *j, json_t *object, const struct step *s);

/* Writers of the command `step`: `what` is a struct step_list or a struct step_computed. 0, or -1
   when memory ran out or the stream failed. */
int json_step_list_write(FILE *f, const void *what);
int json_step_computed_write(FILE *f, const void *what);

#endif
