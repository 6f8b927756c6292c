/* SPDX-License-Identifier: MIT */
#include "report/field_value.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>
#include <string.h>

#include "job/element.h"

/* Digits that count of an echoed value: what a person wrote, not what a conversion left behind. */
#define ECHO_DIGITS 5

int field_occurrences(const struct job *job, const struct field *field)
{
	const struct element_row *row = &element_table[element_of(field->id)];
	int count;

	if (row->max == 1)
		return 1;
	memcpy(&count, (const unsigned char *)job + row->count, sizeof count);
	return count;
}

const void *field_address(const struct job *job, const struct field *field, int n)
{
	const struct element_row *row = &element_table[element_of(field->id)];

	assert(n >= 0 && n < field_occurrences(job, field));
	return (const unsigned char *)job + row->array + (size_t)n * row->stride + field->offset;
}

enum field_origin field_origin_of(const struct job *job, const struct field *field)
{
	const enum field_origin own = (enum field_origin)job->origin[field->id];

	return field_repeats(field) && own != ORIGIN_DEFAULT && own != ORIGIN_ASSUMED ? ORIGIN_FILE
										       : own;
}

static double real_at(const void *at)
{
	double value;

	memcpy(&value, at, sizeof value);
	return value;
}

static int int_at(const void *at)
{
	int value;

	memcpy(&value, at, sizeof value);
	return value;
}

bool field_present(const struct job *job, const struct field *field, int n)
{
	const void *at = field_address(job, field, n);

	switch (field->type) {
	case FIELD_QUANTITY:
	case FIELD_NUMBER:
		return !isnan(real_at(at));
	case FIELD_INTEGER: /* 0, which no field may be, is an optional one left out */
		return int_at(at) != 0;
	case FIELD_CHOICE:
		return true;
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		return *(const char *)at != '\0';
	}
	return false;
}

static const char *word_of(const struct field *field, int value)
{
	for (const struct field_choice *c = field->choice; c && c->word; c++)
		if (c->value == value)
			return c->word;
	return "not known";
}

/* Multiples of 1/64 in read better as a fraction than as 0.265625. */
static bool tape_like(double si)
{
	const double parts = si / M_PER_IN * 64.0;

	return fabs(parts - round(parts)) < 1e-6;
}

static const char *quantity_text(const struct format *f, const struct field *field, double si)
{
	const enum unit u = f->units == SYSTEM_US ? field->us : field->si;
	char tape[128];

	if (u == UNIT_DEG && field->max <= 1.5708 && strcmp(field->attribute, "pitch") == 0)
		return show_pitch(f, si);
	if ((u == UNIT_IN || (u == UNIT_FT && si > 0.0)) && tape_like(si))
		return document_text(f->document, "%s",
		                     tape_print(tape, sizeof tape, si, SYSTEM_US, 64));
	return show_exact(f, si, u, ECHO_DIGITS);
}

const char *field_text(const struct format *f, const struct job *job, const struct field *field,
                       int n)
{
	const void *at = field_address(job, field, n);

	if (!field_present(job, field, n))
		return "-";
	switch (field->type) {
	case FIELD_QUANTITY:
		return quantity_text(f, field, real_at(at));
	case FIELD_NUMBER:
		return show_significant(f, real_at(at), ECHO_DIGITS);
	case FIELD_INTEGER:
		return document_text(f->document, "%d", int_at(at));
	case FIELD_CHOICE:
		return word_of(field, int_at(at));
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		return document_text(f->document, "%s", (const char *)at);
	}
	return "-";
}

const char *field_word(const struct job *job, enum field_id id)
{
	const struct field *field = &field_table[id];

	assert(field->type == FIELD_CHOICE && !field_repeats(field));
	return word_of(field, int_at(field_address(job, field, 0)));
}
