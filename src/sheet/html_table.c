/* SPDX-License-Identifier: MIT */
/* Nobody on a ladder pushes a table sideways: where the screen is narrower than the table, each row
   becomes a block, its key cells as the block's title, each other cell behind the head of its
   column, short ones two beside each other and in the same place in every block. */
#include "sheet/html_table.h"

#include <string.h>

#include "drawing/svg.h"
#include "report/utf8.h"

/* Widths in letters, of which the widest usual typeface puts 38 side by side on a screen of 360
 * px and 62 on the narrowest that is not a telephone's. */
#define PHONE 36
#define TABLET 60
#define PROSE 16 /* a longer cell of prose wraps, at no less than this */
#define HALF 19  /* head and value that fit in half the width of a telephone */

#define BLOCKS(t)                                                                                  \
	t " thead{display:none}" t "," t " tbody{display:block}" t                                 \
	  " tr{display:grid;grid-template-columns:repeat(auto-fill,minmax(9.4rem,1fr));"           \
	  "gap:.1rem 1rem;border-bottom:1px solid #000;padding:.4rem 0}\n" t                       \
	  " td{display:flex;align-items:baseline;gap:.5rem;padding:0;text-align:left;"              \
	  "min-width:0}" t " td::before{content:attr(data-h);font-size:.85em;color:#333;"          \
	  "white-space:normal}\n" t " .o,"                                                         \
	  t " .b{grid-column:1/-1;white-space:normal}" t " .b{font-weight:bold}" t                 \
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

static const char *cell_class(const struct table *t, int c)
{
	const struct column *column = &t->column[c];
	const size_t most = longest_cell(t, c);
	const bool wide = letters(column->title) + most > HALF;

	if (column->align == ALIGN_RIGHT)
		return column->key ? "r k b" : wide ? "r k o" : "r k";
	if (column->wrap && most > PROSE)
		return column->key ? "w b" : "w o";
	if (column->wrap)
		return column->key ? "b" : wide ? "o" : "";
	return column->key ? "k b" : wide ? "k o" : "k";
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
			svg_text(f, r->cell[c]);
			fputs("</td>", f);
		}
		fputs("</tr>\n", f);
	}
	fputs("</tbody></table></div>\n", f);
}
