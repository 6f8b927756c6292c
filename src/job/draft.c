/* SPDX-License-Identifier: MIT */
/* Stores written values in a draft, row by row. */
#include "job/draft.h"

#include <assert.h>
#include <stdio.h>
#include <string.h>

#include "job/value.h"

static int *row_count(const struct draft *d, enum element e)
{
	return (int *)(void *)((char *)d->job + element_table[e].count);
}

/* What the offsets of an element's fields are counted from. */
static void *row_base(const struct draft *d, enum element e, int row)
{
	const struct element_row *r = &element_table[e];

	return (char *)d->job + r->array + (size_t)row * r->stride;
}

static uint32_t bit(enum element e, const struct field *f)
{
	assert(f->id >= element_table[e].first && f->id - element_table[e].first < 32);
	return UINT32_C(1) << (f->id - element_table[e].first);
}

void draft_start(struct draft *d, const char *name, struct job *job, struct problem_list *problems)
{
	memset(d, 0, sizeof *d);
	memset(job, 0, sizeof *job);
	d->job = job;
	d->problems = problems;
	d->source.name = name;
	for (size_t i = 0; i < FIELD_COUNT; i++)
		if (!field_repeats(&field_table[i]))
			value_clear(&field_table[i], job);
}

int draft_rows(const struct draft *d, enum element e)
{
	return element_table[e].max > 1 ? *row_count(d, e) : 1;
}

int draft_add_row(struct draft *d, enum element e, int line)
{
	const struct element_row *r = &element_table[e];
	int *const count = row_count(d, e);
	char accepted[40];

	assert(r->max > 1 && r->max <= ROWS_MAX);
	if (*count >= r->max) {
		snprintf(accepted, sizeof accepted, "at most %d of them", r->max);
		if (d->refused_rows[e]++ == 0)
			problem_add(d->problems, PROBLEM_OUT_OF_RANGE, d->source.name, line,
				    r->name, "one more", accepted);
		return -1;
	}
	for (size_t i = r->first; i <= (size_t)r->last; i++)
		value_clear(&field_table[i], row_base(d, e, *count));
	d->source.row_line[e][*count] = line;
	return (*count)++;
}

const char *draft_path(char *buf, size_t size, const struct field *f, int row)
{
	if (field_repeats(f))
		snprintf(buf, size, "%s[%d].%s", f->element, row + 1, f->attribute);
	else
		snprintf(buf, size, "%s.%s", f->element, f->attribute);
	return buf;
}

/* Tells a problem with one written value. */
static void refuse(struct draft *d, enum problem_code code, const struct field *f, int row,
		   const char *given, const char *accepted, enum field_origin origin, int line)
{
	char path[80];

	problem_add(d->problems, code, origin == ORIGIN_OVERRIDE ? "--set" : d->source.name, line,
		    draft_path(path, sizeof path, f, row), given, accepted);
}

static bool means_unknown(const struct field *f, const char *text)
{
	return value_may_be_unknown(f) && strcmp(text, "unknown") == 0;
}

void draft_set(struct draft *d, const struct field *f, int row, const char *text,
	       enum field_origin origin, int line)
{
	const enum element e = element_of(f->id);
	const uint32_t b = bit(e, f);
	void *const base = row_base(d, e, row);
	char accepted[ACCEPTED_MAX];
	enum problem_code code;

	if (origin == ORIGIN_OVERRIDE && (d->overridden[e][row] & b)) {
		refuse(d, PROBLEM_TWICE, f, row, text, "one override for each field", origin, line);
		return;
	}
	d->given[e][row] |= b;
	d->unknown[e][row] &= ~b;
	if (origin == ORIGIN_OVERRIDE) {
		d->overridden[e][row] |= b;
		d->source.row_set[e][row] = true;
	}
	if (!field_repeats(f))
		d->source.line[f->id] = line;
	if (means_unknown(f, text)) {
		d->unknown[e][row] |= b;
		value_clear(f, base);
		if (!field_repeats(f))
			d->job->origin[f->id] = ORIGIN_ABSENT;
		return;
	}
	code = value_store(f, base, text);
	if (code == PROBLEM_NONE) {
		if (d->job->origin[f->id] < origin)
			d->job->origin[f->id] = (unsigned char)origin;
		return;
	}
	refuse(d, code, f, row, text,
	       value_accepted(accepted, sizeof accepted, f, code, d->job->units), origin, line);
}
