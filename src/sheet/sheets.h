/* SPDX-License-Identifier: MIT */
/* The set of sheets for a permit: each a document or a drawing. Built once, written as PDF or HTML.
 */
#ifndef RP_SHEET_SHEETS_H
#define RP_SHEET_SHEETS_H

#include "report/flashing_notes.h"
#include "sheet/materials.h"
#include "sheet/pdf.h"
#include "sheet/sheet.h"

#define SHEETS_MAX 32

struct sheet_page {
	const char *name;
	struct document *document; /* or */
	struct drawing *drawing;
	struct drawing *narrow; /* the same for a telephone's screen; NULL: not asked for */
	bool with_seal;
	int first_page; /* of the PDF; set by sheets_write_pdf */
	bool apart; /* on pages of its own: it is taken to the roof, or sealed */
};

struct sheet_set {
	int n;
	struct sheet_page page[SHEETS_MAX];
	int pages; /* of the PDF; set by sheets_write_pdf */
};

struct sheet_request {
	enum paper paper;
	bool screen; /* drawings are composed for a telephone too */
	const struct prices *prices;       /* NULL: none */
	struct flashing_request *flashing; /* of the notes */
	long long date;                    /* of the file, seconds since 1970; negative: none */
};

/* The whole set. False when memory ran out; sheets_close is called in either case. */
bool sheets_build(struct sheet_set *set, const struct sheet *s,
		  const struct sheet_request *request);
/* One drawing: "plan", "layout", "attachment", "pipe". False when memory ran out or there is
 * nothing of the kind. */
bool sheets_build_view(struct sheet_set *set, const struct sheet *s,
		       const struct sheet_request *request, const char *view);
/* sheet_views.c. The words: "plan", "layout" ... and "pipe-2" for the second pipe. */
bool sheet_view_known(const char *word);
/* False if the job has nothing to draw there. */
bool sheet_view_exists(const struct sheet *s, const char *word);
/* Adds that drawing, or all of the set one after the other; pipes that are alike only once. */
void sheet_view_add(struct sheet_set *set, const struct sheet *s,
		    const struct sheet_request *request, const char *word);
void sheet_views_add(struct sheet_set *set, const struct sheet *s,
		     const struct sheet_request *request);
struct sheet_room sheet_room_of(enum paper paper, bool landscape);
/* One page to take up the ladder. */
bool sheets_build_field(struct sheet_set *set, const struct sheet *s,
			const struct sheet_request *request);
void sheets_close(struct sheet_set *set);

/* 0, or -1 when memory ran out or the stream failed. */
int sheets_write_pdf(FILE *f, struct sheet_set *set, const struct sheet *s,
		     const struct sheet_request *request);
int sheets_write_html(FILE *f, const struct sheet_set *set, const struct sheet *s);

/* Internal to src/sheet: sheet_words.c, field_sheet.c */
void words_cover(const struct sheet *s, struct document *d);
void words_calculation(const struct sheet *s, struct document *d);
void words_basis(const struct sheet *s, struct document *d);
void words_checklist(const struct sheet *s, struct document *d);
void words_cautions(const struct sheet *s, struct document *d);
void words_field(const struct sheet *s, struct document *d);
/* flashing_steps.c: part of it. */
void words_flashing(const struct sheet *s, struct document *d);

#endif
