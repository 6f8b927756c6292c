/* SPDX-License-Identifier: MIT */
/* What was drawn or written, and the materials list, in JSON (sheets.schema.json,
 * materials.schema.json). */
#ifndef RP_SHEET_JSON_SHEETS_H
#define RP_SHEET_JSON_SHEETS_H

#include <stdio.h>

#include "sheet/sheets.h"

struct sheets_json {
	const char *command, *file;
	const struct sheet_set *set;
	const struct sheet *sheet;
};

struct materials_json {
	const struct sheet *sheet;
	const struct materials *materials;
	const struct prices *prices; /* NULL: none */
};

/* 0, or -1 when memory ran out or the stream failed. */
int json_sheets_write(FILE *f, const struct sheets_json *what);
int json_materials_write(FILE *f, const struct materials_json *what);

#endif
