/* SPDX-License-Identifier: MIT */
/* Commands and version as JSON (help.schema.json, version.schema.json). */
#ifndef RP_REPORT_JSON_HELP_H
#define RP_REPORT_JSON_HELP_H

#include <stddef.h>
#include <stdio.h>

struct help_row {
	const char *name, *operands, *summary;
};

/* 0, or -1 when memory ran out or the stream failed. */
int json_help_write(FILE *f, const struct help_row *row, size_t n);
int json_version_write(FILE *f);

#endif
