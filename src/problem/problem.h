/* SPDX-License-Identifier: MIT */
/* What can be wrong with what the program is given. All problems of one input are collected and
   told together. A number never changes its meaning once released: a manual may cite it. Bands:
   1xx the machine, 2xx a value, 3xx a job as a whole, 4xx a covering library. */
#ifndef RP_PROBLEM_H
#define RP_PROBLEM_H

#include <stdbool.h>
#include <stddef.h>

#define PROBLEMS(P)                                                                                \
	P(101, CANNOT_OPEN, "cannot be opened")                                                    \
	P(102, NOT_A_FILE, "is not a regular file")                                                \
	P(103, TOO_LARGE, "is larger than this program reads")                                     \
	P(104, CANNOT_READ, "cannot be read to its end")                                           \
	P(105, CANNOT_WRITE, "cannot be written")                                                  \
	P(106, NO_MEMORY, "memory ran out")                                                        \
	P(110, NOT_XML, "is not well-formed XML")                                                  \
	P(111, ENTITY, "declares a document type or entities")                                     \
	P(112, TOO_DEEP, "is nested deeper than any job")                                          \
	P(201, MISSING, "is missing")                                                              \
	P(202, UNKNOWN_FIELD, "is not a field of a job")                                           \
	P(203, NOT_A_VALUE, "cannot be read as a value")                                           \
	P(204, WRONG_UNIT, "has no unit or the wrong one")                                         \
	P(205, OUT_OF_RANGE, "is out of range")                                                    \
	P(206, NOT_A_CHOICE, "is not one of the words accepted")                                   \
	P(207, TWICE, "is given twice")                                                            \
	P(301, DISAGREE, "disagrees with another field")                                           \
	P(302, OFF_ROOF, "does not fit on this roof")                                              \
	P(303, LEVEL, "mixes service-level and strength-level snow")                               \
	P(401, LIBRARY, "does not follow the covering schema")                                     \
	P(402, UNKNOWN_COVERING, "is not a covering of the library")                               \
	P(501, USAGE, "is not understood on the command line")

enum problem_code {
	PROBLEM_NONE = 0,
#define P(number, id, text) PROBLEM_##id = number,
	PROBLEMS(P)
#undef P
};

#define PROBLEM_TEXT_MAX 200

/* One problem. Empty strings and line 0 mean "does not apply". */
struct problem {
	enum problem_code code;
	int line;                        /* 1-based line in file */
	char file[PROBLEM_TEXT_MAX];     /* file or `--set` or the command line */
	char field[PROBLEM_TEXT_MAX];    /* path such as roof.pitch */
	char given[PROBLEM_TEXT_MAX];    /* what was found, cut if long */
	char accepted[PROBLEM_TEXT_MAX]; /* what would be accepted, or what to do next */
};

#define PROBLEM_MAX 64

/* A fixed store: after PROBLEM_MAX the rest is only counted. */
struct problem_list {
	struct problem item[PROBLEM_MAX];
	size_t count;   /* stored */
	size_t dropped; /* counted but not stored */
};

const char *problem_text(enum problem_code code);
/* Any text may be NULL. Text is cut to fit, control characters are replaced by '?'. */
void problem_add(struct problem_list *list, enum problem_code code, const char *file, int line,
		 const char *field, const char *given, const char *accepted);
/* True if text is well-formed UTF-8 without control characters: what problem_add stores as it
   is. */
bool problem_text_is_clean(const char *text);
bool problem_any(const struct problem_list *list);
/* `house.xml:12: roof.pitch: is out of range: given `60:12`; accepted: 0:12 to 24:12 [205]` into
   buf, cut to fit. */
const char *problem_print(char *buf, size_t size, const struct problem *p);

#endif
