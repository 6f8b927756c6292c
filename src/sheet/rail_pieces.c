/* SPDX-License-Identifier: MIT */
/* The check tells its joints in remarks, by line and from the left end. */
#include "sheet/rail_pieces.h"

#include <math.h>

#define PIECE_MAX (LINE_MAX + SPLICE_MAX * 4)

int rail_pieces_joints(const struct sheet *s, int line, double at[SPLICE_MAX])
{
	int n = 0;

	for (int i = 0; i < s->r->remarks && n < SPLICE_MAX; i++) {
		const struct remark *m = &s->r->remark[i];

		if ((m->id == REMARK_RAIL_JOINT || m->id == REMARK_RAIL_JOINT_TOLD) &&
		    lround(m->value[0]) == line + 1)
			at[n++] = s->pass->line[line].x0 + m->value[1];
	}
	return n;
}

struct heap {
	int n;
	double piece[PIECE_MAX]; /* longest first */
};

static void put(struct heap *h, double piece)
{
	int k = h->n;

	if (h->n == PIECE_MAX)
		return;
	for (h->n++; k > 0 && h->piece[k - 1] < piece; k--)
		h->piece[k] = h->piece[k - 1];
	h->piece[k] = piece;
}

/* Longest first, each from the first length that has enough left: never far from the fewest. */
static int stocks(const struct heap *h, double stock)
{
	double left[PIECE_MAX];
	int n = 0;

	for (int i = 0; i < h->n; i++) {
		int k = 0;

		while (k < n && !at_most(h->piece[i], left[k]))
			k++;
		if (k == n)
			left[n++] = stock;
		left[k] -= h->piece[i];
	}
	return n;
}

static const char *words(const struct sheet *s, const struct heap *h)
{
	const char *text = "";

	for (int i = 0, k; i < h->n; i = k) {
		for (k = i + 1; k < h->n && h->piece[i] - h->piece[k] < M_PER_IN / 16; k++)
			;
		text = sheet_text(s, "%s%s%d of %s", text, *text ? ", " : "", k - i,
				  show_tape(&s->f, h->piece[i]));
	}
	return text;
}

struct rail_pieces rail_pieces_of(const struct sheet *s)
{
	const double stock = s->job->rail.stock_length;
	struct rail_pieces out = {0};
	struct heap heap = {0};
	double at[SPLICE_MAX];

	for (int i = 0; i < s->pass->lines; i++) {
		const struct rail_line *line = &s->pass->line[i];
		const int n = rail_pieces_joints(s, i, at);
		double from = line->x0;

		for (int k = 0; k <= n; k++) {
			const double to = k < n ? at[k] : line->x1;

			put(&heap, to - from);
			from = to;
		}
		out.joints += n;
		out.length += line->x1 - line->x0;
	}
	out.pieces = heap.n;
	out.words = words(s, &heap);
	/* a piece longer than the rail comes is what the check complains of */
	if (stock > 0 && heap.n > 0 && at_most(heap.piece[0], stock))
		out.stocks = stocks(&heap, stock);
	return out;
}
