/* SPDX-License-Identifier: MIT */
/* A table in HTML. Internal to src/sheet. */
#ifndef RP_SHEET_HTML_TABLE_H
#define RP_SHEET_HTML_TABLE_H

#include <stdio.h>

#include "report/document.h"

/* Its rules for the file's style sheet. */
extern const char html_table_style[];
void html_table(FILE *f, const struct table *t);

#endif
