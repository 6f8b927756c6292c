/* SPDX-License-Identifier: MIT */
/* Fowler, Noll, Vo: hash 1a with 64 bits (RFC 9923 gives offset basis and prime). */
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "report/field_value.h"
#include "sheet/sheet.h"

#define FNV_PRIME UINT64_C(0x100000001b3)

uint64_t fnv1a(uint64_t value, const void *bytes, size_t n)
{
	const unsigned char *p = bytes;

	for (size_t i = 0; i < n; i++)
		value = (value ^ p[i]) * FNV_PRIME;
	return value;
}

static uint64_t add_text(uint64_t value, const char *text)
{
	/* with its end, so that "a" "bc" is not "ab" "c" */
	return fnv1a(value, text, strlen(text) + 1);
}

/* Twelve digits count: a length keeps them through any conversion of units, and no more of them is
   measured. The sign, digits and power of ten are written without a decimal point, which a locale
   could change. */
static uint64_t add_number(uint64_t value, double number)
{
	char text[64], plain[64];
	size_t n = 0;

	snprintf(text, sizeof text, "%.11e", fabs(number) > 0 ? number : 0.0);
	for (const char *t = text; *t; t++)
		if ((*t >= '0' && *t <= '9') || *t == '-' || *t == '+' || *t == 'e')
			plain[n++] = *t;
	plain[n] = '\0';
	return add_text(value, plain);
}

static uint64_t add_field(uint64_t value, const struct job *job, const struct field *f, int n)
{
	const void *at = field_address(job, f, n);
	char row[16];
	double number;
	int integer;

	value = add_text(add_text(value, f->element), f->attribute);
	snprintf(row, sizeof row, "%d", n);
	value = add_text(value, row);
	switch (f->type) {
	case FIELD_QUANTITY:
	case FIELD_NUMBER:
		memcpy(&number, at, sizeof number);
		return add_number(value, number);
	case FIELD_INTEGER:
	case FIELD_CHOICE:
		memcpy(&integer, at, sizeof integer);
		return add_number(value, integer);
	case FIELD_KEY:
	case FIELD_SIZE:
	case FIELD_TEXT:
		break;
	}
	return add_text(value, at);
}

uint64_t job_fingerprint(const struct job *job)
{
	uint64_t value = FNV_START;

	for (int i = 0; i < FIELD_COUNT; i++) {
		const struct field *f = &field_table[i];

		if (f->id == FIELD_JOB_TITLE || f->id == FIELD_JOB_UNITS)
			continue;
		for (int n = 0; n < field_occurrences(job, f); n++)
			if (field_present(job, f, n))
				value = add_field(value, job, f, n);
	}
	return value;
}

const char *fingerprint_print(char buf[FINGERPRINT_TEXT], uint64_t value)
{
	snprintf(buf, FINGERPRINT_TEXT, "%04x-%04x-%04x-%04x", (unsigned)(value >> 48),
		 (unsigned)(value >> 32 & 0xFFFF), (unsigned)(value >> 16 & 0xFFFF),
		 (unsigned)(value & 0xFFFF));
	return buf;
}
