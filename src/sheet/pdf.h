/* SPDX-License-Identifier: MIT */
/* A PDF file of sheets: pages of one paper size in either direction, each with a head (sheet, job)
   and a foot (fingerprint, verdict, caution, page n of m); bookmarks; text that can be searched and
   copied; typefaces embedded; title and language told. The same input gives the same bytes: the
   only date in it is the one given. */
#ifndef RP_SHEET_PDF_H
#define RP_SHEET_PDF_H

#include <stdbool.h>
#include <stdio.h>

#include "drawing/drawing.h"
#include "report/document.h"

/* A telephone's screen is for single drawings: no page of a PDF has its size. */
enum paper { PAPER_LETTER, PAPER_A4, PAPER_PHONE };

struct pdf_setup {
	enum paper paper;
	const struct lettering *lettering;
	const char *title;       /* of the file */
	const char *job;         /* title of the job, in each head */
	const char *fingerprint; /* in each foot */
	const char *verdict;
	const char *caution;
	long long date; /* seconds since 1970, UTC; negative: none */
	int pages;      /* m in `page n of m`; 0: not known yet */
};

struct pdf;

/* NULL when memory ran out. */
struct pdf *pdf_begin(const struct pdf_setup *setup);
/* A new page; its name stands in the head. */
void pdf_page(struct pdf *p, bool landscape, const char *name);
/* A sheet ("12  Materials") begins here: a bookmark. At the top (0), or lower down on a page whose
   head then names its number too. */
void pdf_sheet(struct pdf *p, const char *name, double y_below_top);
#define PDF_SHEETS_MAX 40
/* The page where the i-th sheet began; 0: there is none. */
int pdf_sheet_page(const struct pdf *p, int i);
/* A bookmark under the last sheet's, for a place on the page that is open. */
void pdf_bookmark(struct pdf *p, const char *name, double y_below_top);
/* Room between head and foot, m on paper: the upper left corner from the page's, width, height. */
struct pdf_room {
	double x, y, width, height;
};
struct pdf_room pdf_room(const struct pdf *p);
/* The room of a page of this paper before any is open. */
struct pdf_room pdf_room_of(enum paper paper, bool landscape);
/* The drawing's upper left corner to the room's. */
void pdf_draw(struct pdf *p, const struct drawing *d);
int pdf_pages(const struct pdf *p);
/* Writes the file to f unless f is NULL (a run that only counts pages), and gives everything back.
   0, or -1 when memory ran out or the stream failed. */
int pdf_end(struct pdf *p, FILE *f);

/* pdf_document.c. Documents one after the other from the top of a new page on: each is a sheet, with
   its bookmark, and so have its headings; it begins where the one before ended if there is room. */
struct pdf_part {
	const struct document *document;
	const char *name;
};
void pdf_documents(struct pdf *p, const struct pdf_part *part, int parts);
/* The sheet that an engineer seals: an empty frame at the foot of its last page, which is the only
   one if smaller text can make it so. Beside the frame the sheets of the set are listed. */
struct pdf_entry {
	const char *name;
	int page; /* 0: not known yet */
};
struct pdf_index {
	struct pdf_entry entry[PDF_SHEETS_MAX];
	int n;
};
void pdf_sealed(struct pdf *p, const struct pdf_part *part, const struct pdf_index *index);

/* Internal to src/sheet. */
/* Another of the same kind, to see how much room something takes; NULL when memory ran out. */
struct pdf *pdf_trial(const struct pdf *p);
struct _cairo;
struct _cairo *pdf_canvas(struct pdf *p);
const struct lettering *pdf_lettering(const struct pdf *p);

#endif
