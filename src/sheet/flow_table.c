/* SPDX-License-Identifier: MIT */
/* A table on paper: columns as wide as they need, prose wrapped, the head again on each page. */
#include <math.h>
#include <string.h>

#include "sheet/flow.h"

#define GAP (2.4 * MM)
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

static void measure(const struct flow *f, struct grid *g)
{
	for (int c = 0; c < g->t->columns; c++) {
		const struct column *column = &g->t->column[c];

		g->least[c] = longest_word(f, column->title, g->size, true);
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

/* What is left over the least widths goes to the columns that want more, in proportion to what they
 * want. */
static void share(struct grid *g, double room)
{
	const int n = g->t->columns;
	const double left = room - total(g->least, n),
		     wanted = total(g->most, n) - total(g->least, n);
	const double part = wanted > 0 ? fmax(0, fmin(1, left / wanted)) : 0;

	for (int c = 0; c < n; c++)
		g->width[c] = g->least[c] + part * (g->most[c] - g->least[c]);
	if (left < 0)
		for (int c = 0; c < n; c++)
			g->width[c] *=
				(room - (n - 1) * GAP) / (total(g->least, n) - (n - 1) * GAP);
}

static double row_height(const struct flow *f, const struct grid *g, const char *const *cell,
			 bool bold)
{
	double most = 0;

	for (int c = 0; c < g->t->columns; c++)
		most = fmax(most, flow_height(f, cell[c], g->size, bold, g->width[c] + 0.05 * MM));
	return most;
}

static void put_row(struct flow *f, const struct grid *g, const char *const *cell, bool bold)
{
	double x = 0;

	for (int c = 0; c < g->t->columns; c++) {
		flow_put(f, cell[c], g->size, bold, x, f->y, g->width[c] + 0.05 * MM,
			 g->t->column[c].align == ALIGN_RIGHT);
		x += g->width[c] + GAP;
	}
}

static void put_head(struct flow *f, const struct grid *g)
{
	const char *title[DOCUMENT_COLUMN_MAX];

	for (int c = 0; c < g->t->columns; c++)
		title[c] = g->t->column[c].title;
	put_row(f, g, title, true);
	f->y += row_height(f, g, title, true) + 0.4 * MM;
	flow_rule(f, 0, f->y, total(g->width, g->t->columns), 0.3 * MM);
	f->y += 1.0 * MM;
}

void flow_table(struct flow *f, const struct table *t)
{
	struct grid g = {.t = t, .size = 0.92 * f->text};

	if (t->columns == 0)
		return;
	measure(f, &g);
	while (total(g.least, t->columns) > f->room.width && g.size > FLOW_LEAST) {
		g.size -= 0.1 * MM;
		measure(f, &g);
	}
	share(&g, f->room.width);
	flow_need(f, 18 * MM);
	put_head(f, &g);
	for (const struct row *r = t->first; r; r = r->next) {
		const double height = row_height(f, &g, r->cell, false);

		/* the last row does not go ahead alone */
		const double last = r != t->first && r->next && !r->next->next
					    ? row_height(f, &g, r->next->cell, false) + 0.3 * MM
					    : 0;

		if (f->y + height + last > f->room.height) {
			flow_need(f, f->room.height);
			put_head(f, &g);
		}
		put_row(f, &g, r->cell, false);
		f->y += height + 0.3 * MM;
	}
	flow_space(f, 2 * MM);
}
