/* SPDX-License-Identifier: MIT */
/* Writes read tables as C. */
#ifndef RP_TABLE_TABLE_EMIT_H
#define RP_TABLE_TABLE_EMIT_H

#include <stddef.h>
#include <stdio.h>

#include "table/table_file.h"

/* Structures, enums, counts and array declarations. */
void table_emit_header(FILE *out, const struct table_file *table, size_t tables);
/* The arrays, in the order of the files. */
void table_emit_source(FILE *out, const struct table_file *table, size_t tables);

#endif
