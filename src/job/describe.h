/* SPDX-License-Identifier: MIT */
/* Writers of the program that turns the field table into a schema and a manual section when the
   project is built. */
#ifndef RP_JOB_DESCRIBE_H
#define RP_JOB_DESCRIBE_H

#include <stdio.h>

#include "job/field.h"

/* RELAX NG schema (XML syntax) of a job file. What it accepts the reader accepts as to spelling;
   ranges of quantities and what fields say to each other are left to the reader. */
void describe_rng(FILE *out);
/* Section INPUT REFERENCE of the manual page, in mdoc. */
void describe_mdoc(FILE *out);

/* `85 mph to 250 mph (38 m/s to 111.7 m/s)`, `a whole number, 1 to 64`, `a text of at most 159
   letters`. */
const char *describe_domain(char *buf, size_t size, const struct field *f);
/* `Required.`, `When left out: C is assumed, and named as an assumption.` */
const char *describe_need(char *buf, size_t size, const struct field *f);

#endif
