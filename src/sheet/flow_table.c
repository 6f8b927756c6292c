/* SPDX-License-Identifier: MIT */
/* A table on paper: columns as wide as they need, prose wrapped, the head again on each page. */
#include <math.h>
#include <string.h>

#include "sheet/flow.h"

#define GAP (2.4 * MM)
#define SLACK (0.05 * MM) /* so that a text set at its own width stays in one line */
#define PROSE_LEAST (22 * MM) /* a column of prose is never narrower unless all its cells are */

struct grid {
	const struct table *t;
	double size;
	double width[DOCUMENT_COLUMN_MAX];
	double most[DOCUMENT_COLUMN_MAX];  /* longest cell */
	double least[DOCUMENT_COLUMN_MAX]; /* longest word */
};

static double longest_word(const struct flow *f, const char *text, double size, bool bold)
{
	double most = 0;
	char word[200];

	while (*text) {
		const size_t n = strcspn(text, " ");

		if (n > 0 && n < sizeof word) {
			memcpy(word, text, n);
			word[n] = '\0';
			most = fmax(most, flow_width(f, word, size, bold));
		}
		text += n;
		text += strspn(text, " ");
	}
	return most;
}

/* The narrowest width at which a head takes that many lines, or its longest word does. */
static double head_width(const struct flow *f, const char *title, double size, int lines)
{
	const double one = flow_height(f, "x", size, true, 1);
	const double least = longest_word(f, title, size, true);
	double width = flow_width(f, title, size, true);

	for (double w = fmax(least, width / lines); w < width; w += 0.5 * MM)
		if (flow_height(f, title, size, true, w + SLACK) < (lines + 0.5) * one)
			return w;
	return fmax(least, width);
}

static void measure(const struct flow *f, struct grid *g, int head_lines)
{
	for (int c = 0; c < g->t->columns; c++) {
		const struct column *column = &g->t->column[c];

		g->least[c] = head_width(f, column->title, g->size, head_lines);
		g->most[c] = g->least[c];
		for (const struct row *r = g->t->first; r; r = r->next) {
			const double wide = flow_width(f, r->cell[c], g->size, false);

			g->most[c] = fmax(g->most[c], wide);
			g->least[c] = fmax(
				g->least[c],
				column->wrap ? longest_word(f, r->cell[c], g->size, false) : wide);
		}
		if (column->wrap)
			g->least[c] = fmax(g->least[c], fmin(g->most[c], PROSE_LEAST));
	}
}

static double total(const double *width, int n)
{
	double sum = (n - 1) * GAP;

	for (int i = 0; i < n; i++)
		sum += width[i];
	return sum;
}

/* What is left over the least widths goes to the columns that want more, evenly, so that those that
 * want little get all of it. */
static void share(struct grid *g, double room)
{
	const int n = g->t->columns;
	double left = room - total(g->least, n);

	for (int c = 0; c < n; c++)
		g->width[c] = g->least[c];
	if (left < 0) {
		for (int c = 0; c < n; c++)
			g->width[c] *=
				(room - (n - 1) * GAP) / (total(g->least, n) - (n - 1) * GAP);
		return;
	}
	for (int round = 0, hungry = n; round < n && hungry > 0 && left > 0; round++) {
		const double part = left / hungry;

		hungry = 0;
		for (int c = 0; c < n; c++) {
			const double more = fmin(part, g->most[c] - g->width[c]);

			g->width[c] += more;
			left -= more;
			hungry += g->width[c] < g->most[c];
		}
	}
}

/* Heads in one line where the table then keeps within the page, else in two or three; letters become
 * smaller before a head takes more. */
#define HEAD_LINES 3

static void choose(const struct flow *f, struct grid *g)
{
	for (int lines = 1; lines <= HEAD_LINES; lines++) {
		measure(f, g, lines);
		if (total(g->most, g->t->columns) <= f->room.width)
			break;
	}
	while (total(g->least, g->t->columns) > f->room.width && g->size > FLOW_LEAST) {
		g->size -= 0.1 * MM;
		measure(f, g, HEAD_LINES);
	}
	share(g, f->room.width);
}

static double row_height(const struct flow *f, const struct grid *g, const char *const *cell,
			 bool bold)
{
	double most = 0;

	for (int c = 0; c < g->t->columns; c++)
		most = fmax(most, flow_height(f, cell[c], g->size, bold, g->width[c] + SLACK));
	return most;
}

static void put_row(struct flow *f, const struct grid *g, const char *const *cell, bool bold)
{
	double x = 0;

	for (int c = 0; c < g->t->columns; c++) {
		flow_put(f, cell[c], g->size, bold, x, f->y, g->width[c] + SLACK,
			 g->t->column[c].align == ALIGN_RIGHT);
		x += g->width[c] + GAP;
	}
}

#define HEAD_GAP (1.4 * MM) /* with the rule in it */
#define ROW_GAP (0.3 * MM)
#define FEW 4 /* rows: as many stay before a break, where the table is long */

static double head_height(const struct flow *f, const struct grid *g)
{
	const char *title[DOCUMENT_COLUMN_MAX];

	for (int c = 0; c < g->t->columns; c++)
		title[c] = g->t->column[c].title;
	return row_height(f, g, title, true) + HEAD_GAP;
}

static void put_head(struct flow *f, const struct grid *g)
{
	const char *title[DOCUMENT_COLUMN_MAX];

	for (int c = 0; c < g->t->columns; c++)
		title[c] = g->t->column[c].title;
	put_row(f, g, title, true);
	f->y += head_height(f, g);
	flow_rule(f, 0, f->y - 1.0 * MM, total(g->width, g->t->columns), 0.3 * MM);
}

/* The whole if it is low, else the head and a few rows. */
static double least_of(const struct flow *f, const struct grid *g)
{
	const double head = head_height(f, g);
	double sum = head, few = head;
	int n = 0;

	for (const struct row *r = g->t->first; r && (n < FEW || sum < FLOW_WHOLE); r = r->next) {
		sum += row_height(f, g, r->cell, false) + ROW_GAP;
		if (n++ < FEW)
			few = sum;
	}
	return sum < FLOW_WHOLE ? sum : few;
}

double flow_table_least(const struct flow *f, const struct table *t)
{
	struct grid g = {.t = t, .size = 0.92 * f->text};

	if (t->columns == 0)
		return 0;
	choose(f, &g);
	return least_of(f, &g);
}

void flow_table(struct flow *f, const struct table *t)
{
	struct grid g = {.t = t, .size = 0.92 * f->text};

	if (t->columns == 0)
		return;
	choose(f, &g);
	flow_need(f, least_of(f, &g));
	put_head(f, &g);
	for (const struct row *r = t->first; r; r = r->next) {
		const double height = row_height(f, &g, r->cell, false);

		/* the last row does not go ahead alone */
		const double last = r != t->first && r->next && !r->next->next
					    ? row_height(f, &g, r->next->cell, false) + ROW_GAP
					    : 0;

		if (f->y + height + last > f->room.height) {
			flow_need(f, f->room.height);
			put_head(f, &g);
		}
		put_row(f, &g, r->cell, false);
		f->y += height + ROW_GAP;
	}
	flow_space(f, 0.6 * f->text);
}
