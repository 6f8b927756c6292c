/* SPDX-License-Identifier: MIT */
/* Documents and drawings as one HTML file that needs nothing else: no script, no font, no address.
   Legible on a phone, on a screen and printed. */
#ifndef RP_SHEET_HTML_H
#define RP_SHEET_HTML_H

#include <stdio.h>

#include "drawing/drawing.h"
#include "report/document.h"

struct html_page {
	const char *title, *job, *fingerprint, *verdict, *caution;
};

void html_begin(FILE *f, const struct html_page *page);
/* The list of sheets at the top; names and their numbers, from 1. */
void html_contents(FILE *f, const char *const *name, int n);
/* A sheet: its number is the anchor. wide: printed on paper on its side. */
void html_sheet_begin(FILE *f, int number, const char *name, bool wide);
void html_document(FILE *f, const struct document *d);
/* narrow: the same for a telephone's screen, which shows that alone; NULL: there is none. */
void html_drawing(FILE *f, const struct drawing *d, const struct drawing *narrow);
/* Text; numbers with a hyphen in them (3-1/2, 30.3-2C) stay on one line. */
void html_text(FILE *f, const char *text);
/* The empty frame for an engineer's seal. */
void html_seal(FILE *f);
void html_sheet_end(FILE *f);
void html_end(FILE *f, const struct html_page *page);

#endif
