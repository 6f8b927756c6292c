/* SPDX-License-Identifier: MIT */
/* The blocks of a document on paper. */
#include <math.h>
#include <string.h>

#include "drawing/typeset.h"
#include "sheet/flow.h"

#define INDENT (5 * MM)
#define SMALL 0.84 /* of running text */
#define EQUATION 0.95

static double heading_size(const struct flow *f, const struct block *b)
{
	return b->level <= 1 ? 1.35 * f->text : b->level == 2 ? 1.1 * f->text : f->text;
}

static double space_above(const struct flow *f, const struct block *heading)
{
	return f->text * (heading->level <= 1 ? 1.3 : heading->level == 2 ? 0.8 : 0.4);
}

static void heading(struct flow *f, const struct block *b)
{
	const bool first = b->level <= 1;
	const double size = heading_size(f, b);

	f->under = NULL;
	flow_space(f, space_above(f, b));
	flow_need(f, flow_least(f, b));
	f->under = b->text;
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

/* A dot, a number, or a box to be ticked off. */
static void item_mark(struct flow *f, const struct block *b)
{
	char number[16];

	if (b->kind == BLOCK_NUMBERED) {
		snprintf(number, sizeof number, "%d", b->level);
		flow_put(f, number, f->text, true, 0, f->y, INDENT, false);
	} else if (b->level == 0) {
		flow_put(f, "\xE2\x80\xA2", f->text, false, 1.5 * MM, f->y, INDENT, false);
	} else {
		flow_frame(f, 0.5 * MM, f->y + 0.25 * f->text, f->text, f->text);
	}
}

static double item_least(const struct flow *f, const struct block *b, double x)
{
	const double whole = flow_height(f, b->text, f->text, false, f->room.width - x);

	return fmin(whole, 3.2 * f->text);
}

static void item(struct flow *f, const struct block *b)
{
	const bool box = b->kind == BLOCK_BULLET && b->level > 0;
	/* the mark goes where the text goes: as much as flow_text keeps together */
	const double x = INDENT + (b->kind == BLOCK_NUMBERED || box ? 1 * MM : 0);

	flow_need(f, item_least(f, b, x));
	item_mark(f, b);
	flow_text(f, (struct flow_style){.size = f->text, .x = x}, b->text);
	flow_space(f, box ? 1.4 * MM : 0.6 * MM);
}

static void caution(struct flow *f, const struct block *b)
{
	flow_space(f, 0.6 * MM);
	flow_text(f, (struct flow_style){.size = f->text, .x = INDENT, .bar = true}, b->text);
	flow_space(f, 1.4 * MM);
}

#define EQUATION_MAX 4096
#define PART_MAX 1536

static bool fits_line(const struct flow *f, const char *equation)
{
	return flow_width(f, equation, EQUATION * f->text, false) <= f->room.width - INDENT;
}

#define NO_BREAK "\xC2\xA0"

/* A line that begins with "=" is values or a result: no other "=" begins or ends one. */
static void unbroken(char to[PART_MAX], const char *text)
{
	static const char sign[] = NO_BREAK "=" NO_BREAK;
	size_t n = 0;

	while (*text && n + sizeof sign < PART_MAX) {
		const bool equals = strncmp(text, " = ", 3) == 0;

		if (equals)
			memcpy(to + n, sign, sizeof sign - 1);
		else
			to[n] = *text;
		n += equals ? sizeof sign - 1 : 1;
		text += equals ? 3 : 1;
	}
	to[n] = '\0';
}

/* On one line, or the formula on one and its values and result on the next, or each on its own. */
static void equation_text(const struct flow *f, char text[EQUATION_MAX], const struct step_line *s)
{
	const bool values = *s->values;
	char formula[PART_MAX], put_in[PART_MAX];
	const char *below = "\n";

	snprintf(text, EQUATION_MAX, "= %s = %s", s->values, s->result);
	if (values && fits_line(f, text))
		below = " ";
	snprintf(text, EQUATION_MAX, "%s = %s%s%s = %s", s->symbol, s->formula,
		 values ? " = " : "", s->values, s->result);
	if (fits_line(f, text))
		return;
	unbroken(formula, s->formula);
	unbroken(put_in, s->values);
	snprintf(text, EQUATION_MAX, "%s = %s%s%s%s= %s", s->symbol, formula, values ? "\n= " : "",
		 put_in, below, s->result);
}

static double step_height(const struct flow *f, const struct step_line *s)
{
	const double small = SMALL * f->text, wide = f->room.width - INDENT;
	char equation[EQUATION_MAX];

	equation_text(f, equation, s);
	return 2 * f->text + flow_height(f, equation, EQUATION * f->text, false, wide) +
	       (*s->where ? flow_height(f, s->where, small, false, wide) : 0) +
	       (*s->status ? flow_height(f, s->status, small, false, wide) : 0);
}

/* Title and clause on one line, then the equation, then what the formula does not show and how sure
 * it is. */
static void step(struct flow *f, const struct step_line *s)
{
	const double clause = flow_width(f, s->clause, SMALL * f->text, false) + 0.2 * MM;
	const bool beside = clause < 0.55 * f->room.width;
	char equation[EQUATION_MAX];

	equation_text(f, equation, s);
	flow_need(f, step_height(f, s));
	if (beside)
		flow_put(f, s->clause, SMALL * f->text, false, f->room.width - clause,
			 f->y + 0.4 * MM, clause, false);
	flow_text(f,
		  (struct flow_style){.size = SMALL * f->text * 1.05,
				      .bold = true,
				      .width = f->room.width - (beside ? clause + 4 * MM : 0)},
		  s->title);
	if (!beside)
		flow_text(f, (struct flow_style){.size = SMALL * f->text, .x = INDENT}, s->clause);
	flow_text(f, (struct flow_style){.size = EQUATION * f->text, .x = INDENT}, equation);
	if (*s->where)
		flow_text(f, (struct flow_style){.size = SMALL * f->text, .x = INDENT}, s->where);
	if (*s->status)
		flow_text(f, (struct flow_style){.size = SMALL * f->text, .x = INDENT}, s->status);
	flow_space(f, 1.4 * MM);
}

static double lines(const struct flow *f, int n)
{
	return n * flow_height(f, "x", f->text, false, f->room.width);
}

/* Two lines; all of it, and what it leads to, where it is short and stands below a heading or ends
 * in a colon. */
static double paragraph_least(const struct flow *f, const struct block *b, bool headed)
{
	const double whole = flow_height(f, b->text, f->text, false, f->room.width);
	const size_t n = strlen(b->text);
	const bool leads = headed || (n > 0 && b->text[n - 1] == ':');

	if (!leads || !b->next || whole > lines(f, 4))
		return fmin(whole, lines(f, 2));
	return whole + 1.6 * MM + flow_least(f, b->next);
}

static double heading_least(const struct flow *f, const struct block *b)
{
	const double own = flow_height(f, b->text, heading_size(f, b), true, f->room.width) +
			   (b->level <= 1 ? 2 * MM : 0.8 * MM) +
			   (b->next && b->next->kind == BLOCK_HEADING ? space_above(f, b->next) : 0);

	if (!b->next)
		return own;
	return own + (b->next->kind == BLOCK_PARAGRAPH ? paragraph_least(f, b->next, true)
						       : flow_least(f, b->next));
}

double flow_least(const struct flow *f, const struct block *b)
{
	switch (b->kind) {
	case BLOCK_HEADING:
		return heading_least(f, b);
	case BLOCK_PARAGRAPH:
		return paragraph_least(f, b, false);
	case BLOCK_TABLE:
		return flow_table_least(f, b->table);
	case BLOCK_STEP:
		return step_height(f, b->step);
	case BLOCK_TITLE:
	case BLOCK_VERDICT:
	case BLOCK_BULLET:
	case BLOCK_NUMBERED:
	case BLOCK_CAUTION:
		return item_least(f, b, INDENT + 1 * MM);
	case BLOCK_PAIRS:
		return flow_pairs_least(f, b);
	case BLOCK_KIND_COUNT:
		break;
	}
	return 0;
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
		flow_need(f, paragraph_least(f, b, false));
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
		flow_pairs(f, b);
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
