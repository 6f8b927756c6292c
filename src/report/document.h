/* SPDX-License-Identifier: MIT */
/* A report as blocks, without any idea of paper or screen: built once, written by each writer in
   its own way. All text is copied into the document's own store and cleaned: valid UTF-8 without
   control characters and without the marks that turn the direction of writing, so that nothing in a
   job file can move a terminal's cursor or disguise a number. U+00A0 keeps a number and its unit on
   one line.

   When memory runs out the document is marked as failed and every later call does nothing; who
   builds it asks once, at the end. */
#ifndef RP_REPORT_DOCUMENT_H
#define RP_REPORT_DOCUMENT_H

#include <stdbool.h>
#include <stddef.h>

#include "report/arena.h"

#if defined(__GNUC__)
#define DOCUMENT_FORMAT(fmt, args) __attribute__((format(printf, fmt, args)))
#else
#define DOCUMENT_FORMAT(fmt, args)
#endif

/* Store of one report. 256 attachments with both passes take less than 1 MiB. */
#define DOCUMENT_CAP ((size_t)16 << 20)
#define DOCUMENT_COLUMN_MAX 12

enum block_kind {
	BLOCK_TITLE,
	BLOCK_VERDICT, /* the one sentence that is read first */
	BLOCK_HEADING, /* level 1 to 3 */
	BLOCK_PARAGRAPH,
	BLOCK_BULLET,   /* level 1: to be ticked off */
	BLOCK_NUMBERED, /* level: its number */
	BLOCK_CAUTION,
	BLOCK_PAIRS, /* names and values */
	BLOCK_TABLE,
	BLOCK_STEP, /* one line of a calculation */
	BLOCK_KIND_COUNT
};

enum align { ALIGN_LEFT, ALIGN_RIGHT };

struct column {
	const char *title;
	enum align align;
	bool key;  /* repeated when a narrow page splits the table */
	bool wrap; /* its cells are prose and may be broken over lines */
};

struct row {
	const char *cell[DOCUMENT_COLUMN_MAX]; /* never NULL below the number of columns */
	const struct row *next;
};

struct table {
	int columns;
	struct column column[DOCUMENT_COLUMN_MAX];
	const struct row *first;
};

struct pair {
	const char *name, *value;
	const char *note; /* "" if there is nothing to say */
	const struct pair *next;
};

struct step_line {
	const char *title, *symbol, *formula, *values, *result, *clause;
	const char *status; /* "" when confirmed */
	const char *where;  /* values that the formula does not show; "" if none */
};

struct block {
	enum block_kind kind;
	int level;
	const char *text; /* "" for pairs, tables and steps */
	union {
		const struct table *table;
		const struct pair *pair; /* first one */
		const struct step_line *step;
	};
	const struct block *next;
};

struct document;

struct document *document_create(const struct allocator *allocator); /* NULL allocator: the heap */
void document_destroy(struct document *d);
bool document_failed(const struct document *d);
const struct block *document_first(const struct document *d);

/* Text in the document's store; "" when memory ran out. */
const char *document_text(struct document *d, const char *format, ...) DOCUMENT_FORMAT(2, 3);

/* Title, verdict, heading, paragraph, bullet, numbered or caution. */
void document_add(struct document *d, enum block_kind kind, int level, const char *format, ...)
	DOCUMENT_FORMAT(4, 5);

/* Opens a block of pairs; the pairs follow. Names and notes are copied. */
void document_pairs(struct document *d);
void document_pair(struct document *d, const char *name, const char *note, const char *format, ...)
	DOCUMENT_FORMAT(4, 5);

/* Opens a table; rows follow, and the cells of each row from left to right. Cells not given stay
   empty. */
void document_table(struct document *d, const struct column *column, int columns);
void document_row(struct document *d);
void document_cell(struct document *d, const char *format, ...) DOCUMENT_FORMAT(2, 3);

/* One line of a calculation; NULL members become "". */
void document_step(struct document *d, const struct step_line *line);

#endif
