/* SPDX-License-Identifier: MIT */
#include "report/document.h"

#include <assert.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "report/utf8.h"

struct document {
	struct arena *arena;
	bool failed;
	struct block *first, *last;
	/* What is open at the end of the last block. */
	struct pair *last_pair;
	struct table *table;
	struct row *last_row;
	int cells;
};

struct document *document_create(const struct allocator *allocator)
{
	struct arena *arena = arena_create(DOCUMENT_CAP, allocator);

	if (!arena)
		return NULL;
	struct document *d = arena_take(arena, sizeof *d);

	if (!d) {
		arena_destroy(arena);
		return NULL;
	}
	d->arena = arena;
	return d;
}

void document_destroy(struct document *d)
{
	if (d)
		arena_destroy(d->arena);
}

bool document_failed(const struct document *d)
{
	return d->failed;
}

const struct block *document_first(const struct document *d)
{
	return d->first;
}

static void *take(struct document *d, size_t size)
{
	void *piece = d->failed ? NULL : arena_take(d->arena, size);

	if (!piece)
		d->failed = true;
	return piece;
}

static char *take_text(struct document *d, size_t size)
{
	char *text = d->failed ? NULL : arena_text(d->arena, size);

	if (!text)
		d->failed = true;
	return text;
}

/* Most texts are short and printed once; of a long one vsnprintf tells the length first. Only integers
   and strings are printed through it, so no locale enters. */
DOCUMENT_FORMAT(2, 0)
static const char *vtext(struct document *d, const char *format, va_list args)
{
	char brief[1024];
	va_list again;

	va_copy(again, args);
	const int length = vsnprintf(brief, sizeof brief, format, again);

	va_end(again);
	if (length < 0) {
		d->failed = true;
		return "";
	}
	char *text = take_text(d, (size_t)length + 1);

	if (!text)
		return "";
	if ((size_t)length < sizeof brief)
		memcpy(text, brief, (size_t)length + 1);
	else
		vsnprintf(text, (size_t)length + 1, format, args);
	utf8_clean(text);
	return text;
}

static const char *copy(struct document *d, const char *text)
{
	const size_t size = text ? strlen(text) + 1 : 1;
	char *const own = size > 1 ? take_text(d, size) : NULL;

	if (!own)
		return "";
	memcpy(own, text, size);
	utf8_clean(own);
	return own;
}

const char *document_text(struct document *d, const char *format, ...)
{
	va_list args;

	va_start(args, format);
	const char *text = vtext(d, format, args);

	va_end(args);
	return text;
}

static struct block *add(struct document *d, enum block_kind kind, int level)
{
	struct block *b = take(d, sizeof *b);

	if (!b)
		return NULL;
	b->kind = kind;
	b->level = level;
	b->text = "";
	if (d->last)
		d->last->next = b;
	else
		d->first = b;
	d->last = b;
	d->last_pair = NULL;
	d->table = NULL;
	d->last_row = NULL;
	return b;
}

void document_add(struct document *d, enum block_kind kind, int level, const char *format, ...)
{
	assert(kind != BLOCK_PAIRS && kind != BLOCK_TABLE && kind != BLOCK_STEP);
	struct block *b = add(d, kind, level);
	va_list args;

	if (!b)
		return;
	va_start(args, format);
	b->text = vtext(d, format, args);
	va_end(args);
}

void document_pairs(struct document *d)
{
	add(d, BLOCK_PAIRS, 0);
}

void document_pair(struct document *d, const char *name, const char *note, const char *format, ...)
{
	struct pair *p = take(d, sizeof *p);
	va_list args;

	if (!p)
		return;
	assert(d->last->kind == BLOCK_PAIRS);
	p->name = copy(d, name);
	p->note = copy(d, note);
	va_start(args, format);
	p->value = vtext(d, format, args);
	va_end(args);
	if (d->last_pair)
		d->last_pair->next = p;
	else
		d->last->pair = p;
	d->last_pair = p;
}

void document_table(struct document *d, const struct column *column, int columns)
{
	assert(columns > 0 && columns <= DOCUMENT_COLUMN_MAX);
	struct block *b = add(d, BLOCK_TABLE, 0);
	struct table *t = b ? take(d, sizeof *t) : NULL;

	if (!t)
		return;
	t->columns = columns;
	for (int i = 0; i < columns; i++) {
		t->column[i] = column[i];
		t->column[i].title = copy(d, column[i].title);
	}
	b->table = t;
	d->table = t;
}

void document_row(struct document *d)
{
	struct row *r = take(d, sizeof *r);

	if (!r)
		return;
	assert(d->table);
	for (int i = 0; i < d->table->columns; i++)
		r->cell[i] = "";
	if (d->last_row)
		d->last_row->next = r;
	else
		d->table->first = r;
	d->last_row = r;
	d->cells = 0;
}

void document_cell(struct document *d, const char *format, ...)
{
	va_list args;

	if (d->failed)
		return;
	assert(d->last_row && d->cells < d->table->columns);
	va_start(args, format);
	d->last_row->cell[d->cells++] = vtext(d, format, args);
	va_end(args);
}

void document_step(struct document *d, const struct step_line *line)
{
	struct block *b = add(d, BLOCK_STEP, 0);
	struct step_line *s = b ? take(d, sizeof *s) : NULL;

	if (!s)
		return;
	*s = (struct step_line){ .title = copy(d, line->title),
		                 .symbol = copy(d, line->symbol),
		                 .formula = copy(d, line->formula),
		                 .values = copy(d, line->values),
		                 .result = copy(d, line->result),
		                 .clause = copy(d, line->clause),
		                 .status = copy(d, line->status),
		                 .where = copy(d, line->where) };
	b->step = s;
}
