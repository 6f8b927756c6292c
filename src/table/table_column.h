/* SPDX-License-Identifier: MIT */
/* Columns of a table file, for its reader (table_file.c). */
#ifndef RP_TABLE_TABLE_COLUMN_H
#define RP_TABLE_TABLE_COLUMN_H

#include <libxml/tree.h>
#include <stdbool.h>

#include "table/table_file.h"

/* Tells a fault on standard error, with file and line; returns false. */
__attribute__((format(printf, 3, 4))) bool table_fault(const struct table_file *table, long line,
						       const char *format, ...);

/* The text lives as long as the document. NULL if the attribute is absent; blanks at its ends are
   kept. */
const char *table_attribute(const xmlNode *node, const char *name);

/* True if text begins with a letter and holds nothing but the characters allowed. */
#define LETTERS "abcdefghijklmnopqrstuvwxyz"
#define CAPITALS "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
#define DIGITS "0123456789"
bool table_word(const char *text, const char *allowed);

/* False if from is NULL, empty or too long for a name. */
bool table_copy_name(char *to, const char *from);

/* Reads a <column> and adds it to the table. */
bool table_column_read(struct table_file *table, const xmlNode *node);

/* Checks a value of a row; *value is set for numbers. */
bool table_column_check(const struct table_file *table, const struct table_column *c, long line,
			const char *text, double *value);

#endif
