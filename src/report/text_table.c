/* SPDX-License-Identifier: MIT */
/* Tables on a plain text page. A column is as wide as its longest cell; columns of prose give way
   first; when the page is still too narrow the table is printed in parts, each with the key columns
   repeated, so that a phone shows the tape readings of each attachment before its forces. Where not
   even one column fits beside the keys, each row becomes a short list. */
#include "report/text_line.h"

#include <stdbool.h>
#include <string.h>

#include "report/utf8.h"

/* Blanks between columns; one on a narrow page, so that a phone shows number, rafter and both tape
   readings at once. */
#define GAP 2
#define NARROW 60
/* Prose in a cell is not squeezed below this many columns while another part could hold it. */
#define PROSE_LEAST 12
#define HEAD_LINES 3

struct widths {
	size_t gap, wanted[DOCUMENT_COLUMN_MAX], least[DOCUMENT_COLUMN_MAX];
};

static size_t columns_of(const char *text)
{
	return utf8_columns(text, strlen(text));
}

static size_t larger(size_t a, size_t b)
{
	return a > b ? a : b;
}

/* Narrowest width at which a heading takes no more than HEAD_LINES lines. */
static size_t head_width(const char *title)
{
	size_t width = larger(utf8_longest_word(title), 1);

	while (utf8_line_count(title, width) > HEAD_LINES)
		width++;
	return width;
}

static void measure(const struct table *t, struct widths *w)
{
	for (int i = 0; i < t->columns; i++) {
		const size_t head = head_width(t->column[i].title);
		size_t cell = 0, word = 0;

		for (const struct row *r = t->first; r; r = r->next) {
			cell = larger(cell, columns_of(r->cell[i]));
			word = larger(word, utf8_longest_word(r->cell[i]));
		}
		w->wanted[i] = larger(cell, head);
		if (!t->column[i].wrap)
			w->least[i] = w->wanted[i];
		else
			w->least[i] =
				larger(larger(word, head), cell < PROSE_LEAST ? cell : PROSE_LEAST);
	}
}

/* Sum of the widths of the listed columns and the gaps between them. */
static size_t sum(const size_t *width, size_t gap, const int *part, int n)
{
	size_t total = n > 0 ? (size_t)(n - 1) * gap : 0;

	for (int i = 0; i < n; i++)
		total += width[part[i]];
	return total;
}

/* Takes from the widest column of prose until the part fits or nothing can give way. */
static void squeeze(const struct table *t, struct widths *w, const int *part, int n, size_t page)
{
	while (sum(w->wanted, w->gap, part, n) > page) {
		int widest = -1;

		for (int i = 0; i < n; i++) {
			const int c = part[i];

			if (t->column[c].wrap && w->wanted[c] > w->least[c] &&
			    (widest < 0 || w->wanted[c] > w->wanted[widest]))
				widest = c;
		}
		if (widest < 0)
			return;
		w->wanted[widest]--;
	}
}

/* One line of cells: `rest` holds what is still to be printed of each. Blanks are held back, so
   that no line ends in one. False when nothing was left. */
static bool print_line(FILE *f, const struct table *t, const struct widths *w, const int *part,
                       int n, const char **rest)
{
	size_t owed = 0;
	bool any = false;

	for (int i = 0; i < n; i++) {
		const int c = part[i];
		size_t bytes = 0;
		const char *line = utf8_line(&rest[i], w->wanted[c], &bytes);
		const size_t columns = line ? utf8_columns(line, bytes) : 0;
		const size_t spare = w->wanted[c] - columns;
		const bool right = t->column[c].align == ALIGN_RIGHT;

		if (line) {
			text_blanks(f, owed + (right ? spare : 0));
			text_bytes(f, line, bytes);
			owed = right ? 0 : spare;
			any = true;
		} else {
			owed += w->wanted[c];
		}
		owed += w->gap;
	}
	if (any)
		fputc('\n', f);
	return any;
}

static void print_part(FILE *f, const struct table *t, const struct widths *w, const int *part,
                       int n)
{
	const char *rest[DOCUMENT_COLUMN_MAX];

	for (int i = 0; i < n; i++)
		rest[i] = t->column[part[i]].title;
	while (print_line(f, t, w, part, n, rest))
		;
	for (int i = 0; i < n; i++) {
		text_blanks(f, i ? w->gap : 0);
		for (size_t k = 0; k < w->wanted[part[i]]; k++)
			fputc('-', f);
	}
	fputc('\n', f);
	for (const struct row *r = t->first; r; r = r->next) {
		for (int i = 0; i < n; i++)
			rest[i] = r->cell[part[i]];
		while (print_line(f, t, w, part, n, rest))
			;
	}
}

/* True if some column does not fit on the page even alone beside the keys. */
static bool too_narrow(const struct widths *w, const int *keys, int key_count, int columns,
                       size_t page)
{
	int part[DOCUMENT_COLUMN_MAX];

	memcpy(part, keys, sizeof part);
	for (int i = key_count; i < columns; i++) {
		part[key_count] = i;
		if (sum(w->least, w->gap, part, key_count + 1) > page)
			return true;
	}
	return false;
}

/* Each row: its key cells on one line, below it what the other columns say. */
static void print_stacked(FILE *f, size_t page, const struct table *t, int key_count)
{
	char lead[128];

	for (const struct row *r = t->first; r; r = r->next) {
		for (int i = 0; i < key_count; i++)
			text_paragraph(f, page, "", 0, r->cell[i]);
		for (int i = key_count; i < t->columns; i++) {
			snprintf(lead, sizeof lead, "  %.*s: ", (int)sizeof lead - 6,
			         t->column[i].title);
			if (*r->cell[i])
				text_paragraph(f, page, lead, columns_of(lead), r->cell[i]);
		}
	}
}

/* Closer columns where that keeps the table in one piece. */
static size_t choose_gap(const struct widths *least, int columns, size_t page)
{
	int all[DOCUMENT_COLUMN_MAX];

	for (int i = 0; i < columns; i++)
		all[i] = i;
	return page < NARROW || (sum(least->least, GAP, all, columns) > page &&
	                         sum(least->least, 1, all, columns) <= page)
	               ? 1
	               : GAP;
}

void text_table(FILE *f, size_t width, const struct table *t)
{
	struct widths least;
	int keys[DOCUMENT_COLUMN_MAX] = { 0 }, key_count = 0, next = 0;
	bool printed = false;

	measure(t, &least);
	least.gap = choose_gap(&least, t->columns, width);
	for (int i = 0; i < t->columns && t->column[i].key; i++)
		keys[key_count++] = i;
	next = key_count;
	if (too_narrow(&least, keys, key_count, t->columns, width)) {
		print_stacked(f, width, t, key_count);
		return;
	}
	do {
		struct widths w = least;
		int part[DOCUMENT_COLUMN_MAX], n = key_count;

		memcpy(part, keys, sizeof part);
		/* At least one column beside the keys, then as many as fit at their least. */
		while (next < t->columns) {
			part[n] = next;
			if (n > key_count && sum(w.least, w.gap, part, n + 1) > width)
				break;
			n++;
			next++;
		}
		squeeze(t, &w, part, n, width);
		if (printed)
			fputc('\n', f);
		print_part(f, t, &w, part, n);
		printed = true;
	} while (next < t->columns);
}
