/* SPDX-License-Identifier: MIT */
/* The blocks of a document on paper. */
#include "drawing/typeset.h"
#include "sheet/flow.h"

#define INDENT (5 * MM)

static void heading(struct flow *f, const struct block *b)
{
	const bool first = b->level <= 1;
	const double size = first ? 1.35 * f->text : 1.1 * f->text;

	flow_space(f, first ? 4 * MM : 2.5 * MM);
	flow_need(f, first ? 36 * MM : 22 * MM);
	if (first)
		pdf_bookmark(f->pdf, b->text, f->room.y + f->y);
	flow_text(f, (struct flow_style){.size = size, .bold = true}, b->text);
	if (first) {
		flow_rule(f, 0, f->y + 0.3 * MM, f->room.width, 0.35 * MM);
		f->y += 1.2 * MM;
	}
	flow_space(f, 0.8 * MM);
}

static void verdict(struct flow *f, const struct block *b)
{
	const double pad = 3 * MM, width = f->room.width - 2 * pad;
	const double height = flow_height(f, b->text, 1.25 * f->text, true, width) + 2 * pad;

	flow_need(f, height);
	flow_frame(f, 0, f->y, f->room.width, height);
	flow_put(f, b->text, 1.25 * f->text, true, pad, f->y + pad, width, false);
	f->y += height + 2.5 * MM;
}

static void item(struct flow *f, const struct block *b)
{
	char mark[16] = "\xE2\x80\xA2";

	if (b->kind == BLOCK_NUMBERED)
		snprintf(mark, sizeof mark, "%d", b->level);
	flow_need(f, 1.4 * f->text);
	flow_put(f, mark, f->text, b->kind == BLOCK_NUMBERED,
		 b->kind == BLOCK_NUMBERED ? 0 : 1.5 * MM, f->y, INDENT, false);
	flow_text(f,
		  (struct flow_style){.size = f->text,
				      .x = INDENT + (b->kind == BLOCK_NUMBERED ? 1 * MM : 0)},
		  b->text);
	flow_space(f, 0.6 * MM);
}

static void caution(struct flow *f, const struct block *b)
{
	flow_space(f, 0.6 * MM);
	flow_text(f, (struct flow_style){.size = f->text, .x = INDENT, .bar = true}, b->text);
	flow_space(f, 1.4 * MM);
}

static void pairs(struct flow *f, const struct block *b)
{
	double name = 0;

	for (const struct pair *p = b->pair; p; p = p->next) {
		const double wide = flow_width(f, p->name, f->text, false);

		name = wide > name ? wide : name;
	}
	if (name > 0.34 * f->room.width)
		name = 0.34 * f->room.width;
	const double x = name + 3 * MM, width = f->room.width - x;

	for (const struct pair *p = b->pair; p; p = p->next) {
		const double a = flow_height(f, p->name, f->text, false, name + 0.1 * MM);
		const double v = flow_height(f, p->value, f->text, false, width);

		flow_need(f, a > v ? a : v);
		const double top = f->y;

		flow_put(f, p->name, f->text, false, 0, top, name + 0.1 * MM, false);
		flow_put(f, p->value, f->text, false, x, top, width, false);
		f->y = top + (a > v ? a : v);
		if (*p->note)
			flow_text(f, (struct flow_style){.size = 0.84 * f->text, .x = x}, p->note);
	}
	flow_space(f, 2 * MM);
}

/* Title and clause on one line, then the equation, then what the formula does not show and how sure
 * it is. */
static void step(struct flow *f, const struct step_line *s)
{
	const double clause = flow_width(f, s->clause, 0.84 * f->text, false) + 0.2 * MM;
	const bool beside = clause < 0.55 * f->room.width;
	char equation[2048];

	flow_need(f, 11 * MM);
	if (beside)
		flow_put(f, s->clause, 0.84 * f->text, false, f->room.width - clause,
			 f->y + 0.4 * MM, clause, false);
	flow_text(f,
		  (struct flow_style){.size = 0.84 * f->text * 1.05,
				      .bold = true,
				      .width = f->room.width - (beside ? clause + 4 * MM : 0)},
		  s->title);
	if (!beside)
		flow_text(f, (struct flow_style){.size = 0.84 * f->text, .x = INDENT}, s->clause);
	snprintf(equation, sizeof equation, "%s = %s%s%s = %s", s->symbol, s->formula,
		 *s->values ? " = " : "", s->values, s->result);
	flow_text(f, (struct flow_style){.size = 0.95 * f->text, .x = INDENT}, equation);
	if (*s->where)
		flow_text(f, (struct flow_style){.size = 0.84 * f->text, .x = INDENT}, s->where);
	if (*s->status)
		flow_text(f, (struct flow_style){.size = 0.84 * f->text, .x = INDENT}, s->status);
	flow_space(f, 1.4 * MM);
}

static void put_block(struct flow *f, const struct block *b)
{
	switch (b->kind) {
	case BLOCK_TITLE:
		flow_text(f, (struct flow_style){.size = 1.6 * f->text, .bold = true}, b->text);
		flow_space(f, 2 * MM);
		return;
	case BLOCK_VERDICT:
		verdict(f, b);
		return;
	case BLOCK_HEADING:
		heading(f, b);
		return;
	case BLOCK_PARAGRAPH:
		flow_text(f, (struct flow_style){.size = f->text}, b->text);
		flow_space(f, 1.6 * MM);
		return;
	case BLOCK_BULLET:
	case BLOCK_NUMBERED:
		item(f, b);
		return;
	case BLOCK_CAUTION:
		caution(f, b);
		return;
	case BLOCK_PAIRS:
		pairs(f, b);
		return;
	case BLOCK_TABLE:
		flow_table(f, b->table);
		return;
	case BLOCK_STEP:
		step(f, b->step);
		return;
	case BLOCK_KIND_COUNT:
		return;
	}
}

void flow_document(struct flow *f, const struct document *d)
{
	for (const struct block *b = document_first(d); b; b = b->next)
		put_block(f, b);
}

/* An empty frame at the foot of a document. */
static void seal(struct flow *f)
{
	const double height = 34 * MM, width = 0.62 * f->room.width;

	flow_need(f, height + 4 * MM);
	const double y = f->room.height - height;

	flow_frame(f, 0, y, width, height);
	flow_put(f,
		 "Room for the seal, signature and date of a licensed engineer. Empty: nobody has "
		 "sealed this.",
		 0.84 * f->text, false, 2 * MM, y + 1.5 * MM, width - 4 * MM, false);
}

void pdf_document(struct pdf *p, const struct document *d, const char *name, bool landscape,
		  bool with_seal)
{
	struct flow f = {.pdf = p, .name = name, .landscape = landscape, .text = FLOW_TEXT};

	pdf_page(p, landscape, name, true);
	f.room = pdf_room(p);
	flow_document(&f, d);
	if (with_seal)
		seal(&f);
}
