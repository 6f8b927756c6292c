/* SPDX-License-Identifier: MIT */
/* Stores one written value. */
#include "job/value.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "job/size.h"

static bool is_blank(char c)
{
	return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

/* Copies text without the blanks around it; false if it is too long or not clean. */
static bool trim(char *to, size_t size, const char *text)
{
	size_t n;

	while (is_blank(*text))
		text++;
	n = strlen(text);
	while (n > 0 && is_blank(text[n - 1]))
		n--;
	if (n >= size)
		return false;
	memcpy(to, text, n);
	to[n] = '\0';
	return problem_text_is_clean(to);
}

static enum problem_code store_number(const struct field *f, void *member, const char *text)
{
	const enum dimension d = f->type == FIELD_QUANTITY ? f->dimension : DIM_NONE;
	double value;
	int whole;

	switch (quantity_parse(text, d, &value)) {
	case QUANTITY_OK:
		break;
	case QUANTITY_NO_UNIT:
	case QUANTITY_WRONG_UNIT:
		return PROBLEM_WRONG_UNIT;
	case QUANTITY_EMPTY:
	case QUANTITY_NOT_NUMBER:
	case QUANTITY_TRAILING:
	case QUANTITY_BAD_PITCH:
		return PROBLEM_NOT_A_VALUE;
	}
	if (!at_least(value, f->min) || !at_most(value, f->max))
		return PROBLEM_OUT_OF_RANGE;
	if (f->type != FIELD_INTEGER) {
		assert(f->size == sizeof value);
		memcpy(member, &value, sizeof value);
		return PROBLEM_NONE;
	}
	if (floor(value) < value)
		return PROBLEM_NOT_A_VALUE;
	whole = (int)value;
	assert(f->size == sizeof whole);
	memcpy(member, &whole, sizeof whole);
	return PROBLEM_NONE;
}

static const struct field_choice *find_choice(const struct field *f, const char *word)
{
	for (const struct field_choice *c = f->choice; c->word; c++)
		if (strcmp(c->word, word) == 0)
			return c;
	return NULL;
}

static enum problem_code store_text(const struct field *f, void *member, const char *text)
{
	char trimmed[256];

	assert(f->size <= sizeof trimmed);
	if (!trim(trimmed, f->size, text) || (trimmed[0] == '\0' && f->type != FIELD_TEXT))
		return PROBLEM_NOT_A_VALUE;
	if (f->choice && !find_choice(f, trimmed))
		return PROBLEM_NOT_A_CHOICE;
	if (f->type == FIELD_SIZE && !size_normalise(trimmed))
		return PROBLEM_NOT_A_CHOICE;
	memset(member, 0, f->size);
	memcpy(member, trimmed, strlen(trimmed));
	return PROBLEM_NONE;
}

static enum problem_code store_choice(const struct field *f, void *member, const char *text)
{
	char trimmed[64];
	const struct field_choice *c =
		trim(trimmed, sizeof trimmed, text) ? find_choice(f, trimmed) : NULL;

	if (!c)
		return PROBLEM_NOT_A_CHOICE;
	assert(f->size == sizeof c->value);
	memcpy(member, &c->value, sizeof c->value);
	return PROBLEM_NONE;
}

enum problem_code value_store(const struct field *f, void *base, const char *text)
{
	void *const member = (char *)base + f->offset;

	switch (f->type) {
	case FIELD_QUANTITY:
	case FIELD_NUMBER:
	case FIELD_INTEGER:
		return store_number(f, member, text);
	case FIELD_CHOICE:
		return store_choice(f, member, text);
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		return store_text(f, member, text);
	}
	return PROBLEM_NOT_A_VALUE;
}

void value_clear(const struct field *f, void *base)
{
	void *const member = (char *)base + f->offset;
	const double none = (double)NAN;

	if (f->type == FIELD_QUANTITY || f->type == FIELD_NUMBER)
		memcpy(member, &none, sizeof none);
	else
		memset(member, 0, f->size);
}
