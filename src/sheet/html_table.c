/* SPDX-License-Identifier: MIT */
/* Nobody on a ladder pushes a table sideways: where the screen is narrower than the table, each row
   becomes a block, its key cells first and bold, each cell behind the head of its column, short ones
   two beside each other, moved up where a long one leaves room, in the same place in every block. */
#include "sheet/html_table.h"

#include <string.h>

#include "drawing/svg.h"
#include "report/utf8.h"
#include "sheet/html.h"

/* Widths in letters, of which the widest usual typeface puts 38 side by side on a screen of 360
 * px and 62 on the narrowest that is not a telephone's. */
#define PHONE 36
#define TABLET 60
#define PROSE 16 /* a longer cell of prose wraps, at no less than this */
#define HALF 20  /* head and value that fit in half the width of a telephone */

#define BLOCKS(t)                                                                                  \
	t " thead{display:none}" t "," t " tbody{display:block}" t                                 \
	  " tr{display:grid;grid-template-columns:repeat(auto-fill,minmax(9.4rem,1fr));"           \
	  "grid-auto-flow:dense;gap:.1rem 1rem;border-bottom:1px solid #000;padding:.4rem 0}\n" t  \
	  " td{display:flex;align-items:baseline;gap:.5rem;padding:0;text-align:left;"             \
	  "min-width:0}" t " td::before{content:attr(data-h);font-size:.85em;color:#333;"          \
	  "flex:none;max-width:75%;white-space:normal}\n" t                                        \
	  " .o{grid-column:1/-1;white-space:normal}" t " .b{font-weight:bold}" t                   \
	  " td:empty{display:none}\n"

const char html_table_style[] =
	".scroll{overflow-x:auto}table{border-collapse:collapse;font-size:.9rem;margin:.6rem 0}\n"
	"th{text-align:left;border-bottom:2px solid #000;vertical-align:bottom}\n"
	"th,td{padding:.15rem .6rem .15rem "
	"0}td{vertical-align:top}.r{text-align:right}.k{white-space:nowrap}.w{min-width:9rem}\n"
	"@media screen and (max-width:36rem){" BLOCKS(".m") "}\n"
	"@media screen and (max-width:62rem){" BLOCKS(".l") "}\n";

static size_t letters(const char *text)
{
	return utf8_columns(text, strlen(text));
}

static size_t longest_cell(const struct table *t, int c)
{
	size_t most = 0;

	for (const struct row *r = t->first; r; r = r->next)
		most = letters(r->cell[c]) > most ? letters(r->cell[c]) : most;
	return most;
}

/* Letters beside each other that the table cannot do without. */
static size_t least_width(const struct table *t)
{
	size_t sum = 0;

	for (int c = 0; c < t->columns; c++) {
		const size_t head = utf8_longest_word(t->column[c].title) + 1,
			     cell = longest_cell(t, c),
			     least = t->column[c].wrap && cell > PROSE ? PROSE : cell;

		sum += (head > least ? head : least) + 1;
	}
	return sum;
}

static bool takes_line(const struct table *t, int c)
{
	return letters(t->column[c].title) + longest_cell(t, c) > HALF;
}

static const char *cell_class(const struct table *t, int c)
{
	const struct column *column = &t->column[c];
	const bool prose = column->wrap && longest_cell(t, c) > PROSE,
		   right = column->align == ALIGN_RIGHT,
		   /* nothing is moved up beside a key that the next column leaves alone */
		   line = takes_line(t, c) ||
			  (column->key && c + 1 < t->columns && takes_line(t, c + 1));

	if (prose && !right)
		return column->key ? "w b o" : "w o";
	if (column->wrap && !right)
		return column->key ? (line ? "b o" : "b") : line ? "o" : "";
	if (column->key)
		return right ? (line ? "r k b o" : "r k b") : line ? "k b o" : "k b";
	return right ? (line ? "r k o" : "r k") : line ? "k o" : "k";
}

static void put_head(FILE *f, const struct table *t)
{
	fputs("<thead><tr>", f);
	for (int c = 0; c < t->columns; c++) {
		fprintf(f, "<th scope=\"col\"%s>",
			t->column[c].align == ALIGN_RIGHT ? " class=\"r\"" : "");
		svg_text(f, t->column[c].title);
		fputs("</th>", f);
	}
	fputs("</tr></thead>\n", f);
}

/* In a block a cell's head and its text are two things beside each other, however many spans the
 * text has within. */
static void put_text(FILE *f, const char *text, bool wrap)
{
	if (wrap && *text) {
		fputs("<span>", f);
		html_text(f, text);
		fputs("</span>", f);
	} else {
		svg_text(f, text);
	}
}

void html_table(FILE *f, const struct table *t)
{
	const size_t wide = least_width(t);
	const char *class[DOCUMENT_COLUMN_MAX];

	for (int c = 0; c < t->columns; c++)
		class[c] = cell_class(t, c);
	fprintf(f, "<div class=\"scroll\"><table%s>\n",
		wide > TABLET  ? " class=\"l\""
		: wide > PHONE ? " class=\"m\""
			       : "");
	put_head(f, t);
	fputs("<tbody>\n", f);
	for (const struct row *r = t->first; r; r = r->next) {
		fputs("<tr>", f);
		for (int c = 0; c < t->columns; c++) {
			fprintf(f, "<td class=\"%s\"", class[c]);
			if (wide > PHONE) {
				fputs(" data-h=\"", f);
				svg_text(f, t->column[c].title);
				fputs("\"", f);
			}
			fputs(">", f);
			put_text(f, r->cell[c], t->column[c].wrap);
			fputs("</td>", f);
		}
		fputs("</tr>\n", f);
	}
	fputs("</tbody></table></div>\n", f);
}
