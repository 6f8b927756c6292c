/* SPDX-License-Identifier: MIT */
#include "report/text_writer.h"

#include <assert.h>
#include <string.h>

#include "report/text_line.h"
#include "report/utf8.h"

/* Below this a name and its value run on instead of standing in two columns. */
#define TWO_COLUMNS 60
#define NAME_MOST 30 /* columns */

static void bold(FILE *f, const struct text_style *style, const char *on)
{
	if (style->bold)
		fputs(on, f);
}

static void write_heading(FILE *f, const struct text_style *style, const struct block *b)
{
	const size_t width = (size_t)style->width;
	size_t under = utf8_columns(b->text, strlen(b->text));

	bold(f, style, "\033[1m");
	text_paragraph(f, width, "", 0, b->text);
	bold(f, style, "\033[0m");
	if (under > width)
		under = width;
	while (under-- > 0)
		fputc(b->level <= 1 ? '=' : '-', f);
	fputc('\n', f);
}

static void write_strong(FILE *f, const struct text_style *style, const struct block *b)
{
	bold(f, style, "\033[1m");
	text_paragraph(f, (size_t)style->width, "", 0, b->text);
	bold(f, style, "\033[0m");
}

static size_t name_column(const struct pair *first)
{
	size_t most = 0;

	for (const struct pair *p = first; p; p = p->next) {
		const size_t n = utf8_columns(p->name, strlen(p->name));

		if (n > most)
			most = n;
	}
	return most < NAME_MOST ? most : NAME_MOST;
}

static void write_pairs(FILE *f, const struct text_style *style, const struct block *b)
{
	const size_t width = (size_t)style->width, column = name_column(b->pair) + 2;
	char lead[NAME_MOST * 4 + 8], run_on[TEXT_WIDTH_MOST * 4 + 8];

	for (const struct pair *p = b->pair; p; p = p->next) {
		const size_t bytes = strlen(p->name), columns = utf8_columns(p->name, bytes);

		if (columns <= NAME_MOST && width < TWO_COLUMNS &&
		    columns + 2 + utf8_columns(p->value, strlen(p->value)) <= width) {
			snprintf(run_on, sizeof run_on, "%s: ", p->name);
			text_paragraph(f, width, run_on, 2, *p->value ? p->value : "-");
		} else if (width < TWO_COLUMNS || columns > NAME_MOST) {
			text_paragraph(f, width, "", 0, p->name);
			text_paragraph(f, width, "  ", 2, p->value);
		} else {
			memcpy(lead, p->name, bytes);
			memset(lead + bytes, ' ', column - columns);
			lead[bytes + column - columns] = '\0';
			text_paragraph(f, width, lead, column, *p->value ? p->value : "-");
		}
		if (*p->note)
			text_paragraph(f, width, "    ", 4, p->note);
	}
}

/* "qh = formula = values = result" on one line where it fits, else one line for each, the signs
   below one another. */
static void write_equation(FILE *f, size_t width, const struct step_line *s)
{
	const char *part[] = { s->formula, s->values, s->result };
	const size_t indent = 2 + utf8_columns(s->symbol, strlen(s->symbol)) + 1;
	const size_t deep = indent < width / 3 ? indent : 4;
	size_t total = indent;

	for (size_t i = 0; i < 3; i++)
		total += *part[i] ? utf8_columns(part[i], strlen(part[i])) + 3 : 0;
	fputs("  ", f);
	text_bytes(f, s->symbol, strlen(s->symbol));
	if (total <= width) {
		for (size_t i = 0; i < 3; i++) {
			if (!*part[i])
				continue;
			fputs(" = ", f);
			text_bytes(f, part[i], strlen(part[i]));
		}
		fputc('\n', f);
		return;
	}
	if (deep != indent)
		fputc('\n', f);
	for (size_t i = 0, printed = deep != indent; i < 3; i++) {
		const char *sign = "= ";

		if (!*part[i])
			continue;
		if (printed++)
			text_blanks(f, deep);
		else
			fputc(' ', f);
		fputs(sign, f);
		/* The lead is on the line already: only the rest of the page is left to the words.
		 */
		const char *rest = part[i], *line;
		size_t n, lines = 0;

		while ((line = utf8_line(&rest, width - deep - 2, &n)) != NULL) {
			text_blanks(f, lines++ ? deep + 2 : 0);
			text_bytes(f, line, n);
			fputc('\n', f);
		}
	}
}

static void write_step(FILE *f, const struct text_style *style, const struct step_line *s)
{
	const size_t width = (size_t)style->width;
	const size_t title = utf8_columns(s->title, strlen(s->title));
	const size_t clause = utf8_columns(s->clause, strlen(s->clause));

	if (*s->clause && title + clause + 4 <= width) {
		text_bytes(f, s->title, strlen(s->title));
		text_blanks(f, width - title - clause - 2);
		fputc('[', f);
		text_bytes(f, s->clause, strlen(s->clause));
		fputs("]\n", f);
	} else {
		text_paragraph(f, width, "", 0, s->title);
		text_paragraph(f, width, "  ", 2, s->clause);
	}
	write_equation(f, width, s);
	if (*s->where)
		text_paragraph(f, width, "  with ", 7, s->where);
	if (*s->status)
		text_paragraph(f, width, "  ", 2, s->status);
}

static void write_block(FILE *f, const struct text_style *style, const struct block *b)
{
	const size_t width = (size_t)style->width;
	char number[24];

	switch (b->kind) {
	case BLOCK_TITLE:
	case BLOCK_VERDICT:
		write_strong(f, style, b);
		return;
	case BLOCK_HEADING:
		write_heading(f, style, b);
		return;
	case BLOCK_PARAGRAPH:
		text_paragraph(f, width, "", 0, b->text);
		return;
	case BLOCK_BULLET:
		text_paragraph(f, width, "- ", 2, b->text);
		return;
	case BLOCK_NUMBERED:
		snprintf(number, sizeof number, "%d. ", b->level);
		text_paragraph(f, width, number, 3, b->text);
		return;
	case BLOCK_CAUTION:
		text_paragraph(f, width, "! ", 2, b->text);
		return;
	case BLOCK_PAIRS:
		write_pairs(f, style, b);
		return;
	case BLOCK_TABLE:
		text_table(f, width, b->table);
		return;
	case BLOCK_STEP:
		write_step(f, style, b->step);
		return;
	case BLOCK_KIND_COUNT:
		break;
	}
	assert(!"a block of no kind");
}

/* Members of one list stand close together; everything else is set apart by an empty line. */
static bool close_together(const struct block *above, const struct block *below)
{
	if (above->kind == BLOCK_HEADING)
		return true;
	return above->kind == below->kind &&
	       (below->kind == BLOCK_BULLET || below->kind == BLOCK_NUMBERED ||
	        below->kind == BLOCK_CAUTION);
}

void text_write(FILE *f, const struct document *d, const struct text_style *style)
{
	const struct block *above = NULL;

	assert(style->width >= TEXT_WIDTH_LEAST && style->width <= TEXT_WIDTH_MOST);
	for (const struct block *b = document_first(d); b; b = b->next) {
		if (above && !close_together(above, b))
			fputc('\n', f);
		write_block(f, style, b);
		above = b;
	}
}
