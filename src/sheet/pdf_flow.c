/* SPDX-License-Identifier: MIT */
/* The blocks of a document on paper. */
#include <math.h>

#include "drawing/typeset.h"
#include "sheet/flow.h"

#define INDENT (5 * MM)

static void heading(struct flow *f, const struct block *b)
{
	const bool first = b->level <= 1;
	const double size = first ? 1.35 * f->text : 1.1 * f->text;

	flow_space(f, first ? 4 * MM : 2.5 * MM);
	/* two headings in a row stay together */
	flow_need(f, (first ? 36 * MM : 22 * MM) +
			     (b->next && b->next->kind == BLOCK_HEADING ? 10 * MM : 0));
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
	/* the mark goes where the text goes: as much as flow_text keeps together */
	const double x = INDENT + (b->kind == BLOCK_NUMBERED ? 1 * MM : 0);
	const double whole = flow_height(f, b->text, f->text, false, f->room.width - x);

	flow_need(f, fmin(whole, 3.2 * f->text));
	flow_put(f, mark, f->text, b->kind == BLOCK_NUMBERED,
		 b->kind == BLOCK_NUMBERED ? 0 : 1.5 * MM, f->y, INDENT, false);
	flow_text(f,
		  (struct flow_style){.size = f->text, .x = x}, b->text);
	flow_space(f, 0.6 * MM);
}

static void caution(struct flow *f, const struct block *b)
{
	flow_space(f, 0.6 * MM);
	flow_text(f, (struct flow_style){.size = f->text, .x = INDENT, .bar = true}, b->text);
	flow_space(f, 1.4 * MM);
}

static double widest_name(const struct flow *f, const struct block *b, double most)
{
	double name = 0;

	for (const struct pair *p = b->pair; p; p = p->next) {
		const double wide = flow_width(f, p->name, f->text, false);

		name = wide > name ? wide : name;
	}
	return name > most ? most : name;
}

/* One pair in a column of this width; sets it only if asked to. Returns its height. */
static double put_pair(struct flow *f, const struct pair *p, double left, double name, double width,
		       double top, bool set)
{
	const double x = left + name + 3 * MM, wide = left + width - x;
	const double a = flow_height(f, p->name, f->text, false, name + 0.1 * MM);
	const double v = flow_height(f, p->value, f->text, false, wide);

	if (set) {
		flow_put(f, p->name, f->text, false, left, top, name + 0.1 * MM, false);
		flow_put(f, p->value, f->text, false, x, top, wide, false);
	}
	return a > v ? a : v;
}

static void pairs(struct flow *f, const struct block *b)
{
	const double width = f->room.width, name = widest_name(f, b, 0.34 * width);

	for (const struct pair *p = b->pair; p; p = p->next) {
		flow_need(f, put_pair(f, p, 0, name, width, f->y, false));
		f->y += put_pair(f, p, 0, name, width, f->y, true);
		if (*p->note)
			flow_text(f,
				  (struct flow_style){.size = 0.84 * f->text, .x = name + 3 * MM},
				  p->note);
	}
	flow_space(f, 2 * MM);
}

/* In two columns, the second half of the pairs at the right; none of them has a note. */
static void pairs_beside(struct flow *f, const struct block *b)
{
	const double gap = 6 * MM, width = (f->room.width - gap) / 2,
		     name = widest_name(f, b, 0.45 * width);
	double height[2] = {0, 0};
	int n = 0;

	for (const struct pair *p = b->pair; p; p = p->next)
		n++;
	for (int set = 0; set < 2; set++) {
		const double top = f->y;
		int i = 0;

		height[0] = height[1] = 0;
		for (const struct pair *p = b->pair; p; p = p->next, i++) {
			const int column = i >= (n + 1) / 2;

			height[column] += put_pair(f, p, column * (width + gap), name, width,
						   top + height[column], set != 0);
		}
		if (!set)
			flow_need(f, height[0] > height[1] ? height[0] : height[1]);
	}
	f->y += height[0] > height[1] ? height[0] : height[1];
	flow_space(f, 2 * MM);
}

/* Title and clause on one line, then the equation, then what the formula does not show and how sure
 * it is. */
static void step(struct flow *f, const struct step_line *s)
{
	const double clause = flow_width(f, s->clause, 0.84 * f->text, false) + 0.2 * MM;
	const bool beside = clause < 0.55 * f->room.width;
	const double small = 0.84 * f->text, wide = f->room.width - INDENT;
	char equation[2048];

	snprintf(equation, sizeof equation, "%s = %s%s%s = %s", s->symbol, s->formula,
		 *s->values ? " = " : "", s->values, s->result);
	flow_need(f, 2 * f->text + flow_height(f, equation, 0.95 * f->text, false, wide) +
			     (*s->where ? flow_height(f, s->where, small, false, wide) : 0) +
			     (*s->status ? flow_height(f, s->status, small, false, wide) : 0));
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
		if (f->beside)
			pairs_beside(f, b);
		else
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

#define SEAL (32 * MM)

/* An empty frame at the foot of the first page; the text goes round it. */
static void seal(struct flow *f)
{
	const double width = 0.62 * f->room.width, y = f->room.height - SEAL;

	flow_frame(f, 0, y, width, SEAL);
	flow_put(f,
		 "Room for the seal, signature and date of a licensed engineer. Empty: nobody has "
		 "sealed this.",
		 0.84 * FLOW_TEXT, false, 2 * MM, y + 1.5 * MM, width - 4 * MM, false);
	f->room.height -= SEAL + 2 * MM;
}

static void put(struct flow *f, const struct document *d, bool with_seal)
{
	pdf_page(f->pdf, f->landscape, f->name, true);
	f->room = pdf_room(f->pdf);
	if (with_seal)
		seal(f);
	flow_document(f, d);
}

/* The sheet that is sealed is one page if it can be: then its text is smaller, never below this. */
#define SEALED_LEAST (2.5 * MM)

/* Pages with text of that size, how full the last one is; 0: no trial could be made. */
static int pages_with(const struct pdf *p, const struct document *d, const struct flow *as,
		      double text, double *full)
{
	struct flow f = *as;

	f.pdf = pdf_trial(p);
	f.text = text;
	if (!f.pdf)
		return 0;
	put(&f, d, as->beside);
	*full = f.y / f.room.height;
	const int pages = pdf_pages(f.pdf);

	return pdf_end(f.pdf, NULL) == 0 ? pages : 0;
}

static double sealed_text(const struct pdf *p, const struct document *d, const struct flow *as)
{
	double full;

	for (double text = FLOW_TEXT; text > SEALED_LEAST; text -= 0.1 * MM)
		if (pages_with(p, d, as, text, &full) == 1)
			return text;
	return FLOW_TEXT;
}

/* A last page with little on it is saved if text a little smaller does it. */
#define LITTLE 0.3
#define SNUG_LEAST (0.93 * FLOW_TEXT)

static double snug_text(const struct pdf *p, const struct document *d, const struct flow *as)
{
	double full, other;
	const int pages = pages_with(p, d, as, FLOW_TEXT, &full);

	if (pages < 2 || full > LITTLE)
		return FLOW_TEXT;
	for (double text = FLOW_TEXT; text > SNUG_LEAST; text -= 0.05 * MM) {
		const int now = pages_with(p, d, as, text, &other);

		if (now > 0 && now < pages)
			return text;
	}
	return FLOW_TEXT;
}

void pdf_document(struct pdf *p, const struct document *d, const char *name, bool landscape,
		  bool with_seal)
{
	struct flow f = {.pdf = p,
			 .name = name,
			 .landscape = landscape,
			 .text = FLOW_TEXT,
			 .beside = with_seal};

	f.text = with_seal ? sealed_text(p, d, &f) : snug_text(p, d, &f);
	put(&f, d, with_seal);
}
