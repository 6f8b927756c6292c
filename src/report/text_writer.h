/* SPDX-License-Identifier: MIT */
/* Writes a document as plain text for a terminal, a phone or a printer. Nothing depends on colour;
   headings and the verdict are set in bold only when asked. Errors of the stream are left to the
   caller (ferror). */
#ifndef RP_REPORT_TEXT_WRITER_H
#define RP_REPORT_TEXT_WRITER_H

#include <stdbool.h>
#include <stdio.h>

#include "report/document.h"

#define TEXT_WIDTH_LEAST 40 /* a phone held upright */
#define TEXT_WIDTH_MOST 200
#define TEXT_WIDTH_USUAL 80

struct text_style {
	int width; /* TEXT_WIDTH_LEAST to TEXT_WIDTH_MOST */
	bool bold; /* ANSI bold for titles and the verdict */
};

void text_write(FILE *f, const struct document *d, const struct text_style *style);

#endif
