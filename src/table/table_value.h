/* SPDX-License-Identifier: MIT */
/* The written forms of a value in a table file. */
#ifndef RP_TABLE_TABLE_VALUE_H
#define RP_TABLE_TABLE_VALUE_H

#include <stdbool.h>

/* A decimal number without exponent: -3.6, 0.173, 19000. */
bool table_number(const char *text, double *value);
/* A decimal number, a fraction or a mixed number: 5/16, 4-1/2. */
bool table_fraction(const char *text, double *value);
bool table_integer(const char *text, double *value);

#endif
