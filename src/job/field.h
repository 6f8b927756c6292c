/* SPDX-License-Identifier: MIT */
/* The field table: every input of a job is one row. The XML reader, the overrides (`--set
   roof.pitch=6:12`), the RELAX NG schema, the man page's input reference and the echo of inputs
   in a report all read this one table. */
#ifndef RP_FIELD_H
#define RP_FIELD_H

#include <stdbool.h>
#include <stddef.h>

#include "quantity/quantity.h"

enum field_type {
	FIELD_QUANTITY, /* double in SI, with a unit in the text */
	FIELD_NUMBER,   /* double without a unit */
	FIELD_INTEGER,  /* int */
	FIELD_CHOICE,   /* enum: one of `choice`, stored as int at the choice's value */
	FIELD_KEY,      /* char[]: a key of a published table or of the covering library (`keys`) */
	FIELD_SIZE,     /* char[]: lumber size such as 2x6; sets breadth and depth */
	FIELD_TEXT      /* char[]: free text */
};

enum field_need {
	NEED_REQUIRED, /* no job without it */
	NEED_DEFAULT, /* a default that is a rule of the standard or harmless; told in the report */
	NEED_ASSUMED, /* unknown is allowed: the conservative assumption is used, named, ranked, to
			 be verified */
	NEED_OPTIONAL /* absent means absent: what depends on it is not checked, and the report says
			 so */
};

enum field_origin { ORIGIN_ABSENT, ORIGIN_DEFAULT, ORIGIN_ASSUMED, ORIGIN_FILE, ORIGIN_OVERRIDE };

/* The ids, in the order of the table: element_attribute. */
#include "job/field_id.h"

struct field_choice {
	const char *word; /* as written in the file */
	int value;        /* enum value */
	const char *meaning;
};

struct field {
	enum field_id id;
	const char *element; /* job, site, building, roof, framing, rafter, collector, rail, mount,
				fastener, pipe, coefficient */
	const char *attribute; /* wind-speed */
	enum field_type type;
	enum dimension dimension; /* of a quantity */
	enum unit us, si;         /* units that reports use */
	double min, max;          /* accepted range, SI, inclusive */
	enum field_need need;
	const char *fallback; /* default or conservative assumption as it would be written; NULL */
	const struct field_choice *choice; /* ends with NULL word; NULL if none */
	size_t offset, size;  /* of the member in struct job, or in the repeated element's struct */
	const char *example;  /* a value as it would be written */
	const char *meaning;  /* one or two sentences, plain trade words */
	const char *measured; /* how it is found on site, an instruction */
};

extern const struct field field_table[FIELD_COUNT];
/* Row of a path such as "roof.pitch"; NULL if there is none. */
const struct field *field_find(const char *path);
/* True for elements that may occur many times (pipe, coefficient, rafter). */
bool field_repeats(const struct field *f);
const char *field_origin_text(enum field_origin o);

#endif
