/* SPDX-License-Identifier: MIT */
/* Lines of a plain text page: shared by the text writer and its tables. */
#ifndef RP_REPORT_TEXT_LINE_H
#define RP_REPORT_TEXT_LINE_H

#include <stddef.h>
#include <stdio.h>

#include "report/document.h"

/* n bytes with each U+00A0 as a plain blank. */
void text_bytes(FILE *f, const char *text, size_t n);
void text_blanks(FILE *f, size_t n);
/* Wraps text into `width` columns: the first line begins with `first`, the others with `indent`
   blanks. */
void text_paragraph(FILE *f, size_t width, const char *first, size_t indent, const char *text);
/* A table, split into several when it is wider than the page (text_table.c). */
void text_table(FILE *f, size_t width, const struct table *t);

#endif
