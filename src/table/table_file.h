/* SPDX-License-Identifier: MIT */
/* One file of tables/ in memory, read and checked, for the generator (generate.c). Only the build
   uses this; the program itself reads no table file. The format is described in
   tables/table.rng. */
#ifndef RP_TABLE_TABLE_FILE_H
#define RP_TABLE_TABLE_FILE_H

#include <stdbool.h>
#include <stddef.h>

enum column_type {
	COLUMN_NUMBER,
	COLUMN_FRACTION,
	COLUMN_INTEGER,
	COLUMN_TEXT,
	COLUMN_KEY,
	COLUMN_EDITION,
	COLUMN_CHOICE,
	COLUMN_TYPE_COUNT
};

#define COLUMN_MAX 24 /* lumber tables, the widest, have 13 */
#define CHOICE_MAX 12
#define NAME_MAX_LENGTH 64

struct table_column {
	enum column_type type;
	char name[NAME_MAX_LENGTH];   /* attribute of the rows */
	char member[NAME_MAX_LENGTH]; /* of the C structure: name and unit */
	const char *unit, *meaning;   /* unit is "" if there is none */
	char choice[CHOICE_MAX][NAME_MAX_LENGTH];
	size_t choices;
	bool has_min, has_max;
	double min, max;
	bool optional, unique;
};

struct table_row {
	long line;
	const char *value[COLUMN_MAX]; /* as written; NULL if an optional column is left out */
	double number[COLUMN_MAX];     /* of number, fraction and integer columns */
	const char *status;            /* C name of the confidence */
	const char *source, *note;     /* NULL if absent */
};

struct table_file {
	const char *path;
	char name[NAME_MAX_LENGTH];       /* kebab-case */
	char identifier[NAME_MAX_LENGTH]; /* the same with underscores */
	const char *title, *standard, *clause, *source;
	struct table_column column[COLUMN_MAX];
	size_t columns;
	struct table_row *row;
	size_t rows;
	void *document; /* keeps the texts alive */
};

/* Reads and checks a file; every fault is told on standard error with file and line. False if there
   was any: the table is then not usable. The caller frees it in both cases. */
bool table_file_read(const char *path, struct table_file *table);
void table_file_free(struct table_file *table);

/* C name of an edition word ("7-16" gives "ASCE7_16"), NULL if it is none. */
const char *table_edition_name(const char *word);

#endif
