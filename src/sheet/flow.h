/* SPDX-License-Identifier: MIT */
/* Text that runs down the pages of a PDF file. Internal to src/sheet. */
#ifndef RP_SHEET_FLOW_H
#define RP_SHEET_FLOW_H

#include "sheet/pdf.h"

#define FLOW_TEXT (3.1 * MM)  /* usual size: about 8.8 points */
#define FLOW_LEAST (2.1 * MM) /* 6 points: the smallest in any table */

struct flow {
	struct pdf *pdf;
	const char *name; /* of the sheet, in the head of the next page */
	struct pdf_room room;
	double y;    /* used, from the room's top, m */
	double text; /* size of running text */
	bool beside; /* pairs in two columns */
	const char *under; /* the heading of what is being put; NULL: none */
};

/* Tables and pairs this low are not broken. */
#define FLOW_WHOLE (56 * MM)

/* A new page when less than `height` is left; what goes on there has its heading again. */
void flow_need(struct flow *f, double height);
void flow_space(struct flow *f, double height);
/* Wrapped text at x from the room's left edge; goes on over pages line by line. `bar`: a thick line
 * at its left. */
struct flow_style {
	double size, x, width; /* width 0: to the room's right edge */
	bool bold, bar, mono;
};
void flow_text(struct flow *f, struct flow_style style, const char *text);
/* Its height, and setting it at a place without moving on; returns the height. */
double flow_height(const struct flow *f, const char *text, double size, bool bold, double width);
double flow_put(struct flow *f, const char *text, double size, bool bold, double x, double y,
		double width, bool right);
/* Widths of one line. */
double flow_width(const struct flow *f, const char *text, double size, bool bold);
void flow_rule(struct flow *f, double x, double y, double width, double thick);
void flow_frame(struct flow *f, double x, double y, double width, double height);

/* pdf_flow.c */
void flow_document(struct flow *f, const struct document *d);
/* What has to stand below a heading, lest it be alone: the least of the block, and of those that it
 * leads to. */
double flow_least(const struct flow *f, const struct block *b);
/* flow_pairs.c */
void flow_pairs(struct flow *f, const struct block *b);
double flow_pairs_least(const struct flow *f, const struct block *b);
/* flow_table.c */
void flow_table(struct flow *f, const struct table *t);
double flow_table_least(const struct flow *f, const struct table *t);

#endif
