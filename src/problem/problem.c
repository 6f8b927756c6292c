/* SPDX-License-Identifier: MIT */
/* The store of problems: text is cut to fit and cleaned, since it comes from files and command
   lines and goes to terminals and JSON. */
#include "problem/problem.h"

#include <assert.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

const char *problem_text(enum problem_code code)
{
	switch (code) {
	case PROBLEM_NONE:
		return "is no problem";
#define P(number, id, text)                                                                        \
	case PROBLEM_##id:                                                                         \
		return text;
		PROBLEMS(P)
#undef P
	}
	return "";
}

/* Length of the well-formed UTF-8 sequence at s (Unicode 3.9, table 3-7), 0 if there is none.
   Control characters of both sets (below U+0020, U+007F to U+009F) count as none. */
static size_t printable_length(const unsigned char *s)
{
	size_t n = 0;
	uint32_t c = 0, least = 0;

	if (s[0] >= 0x20 && s[0] < 0x7F)
		return 1;
	if ((s[0] & 0xE0) == 0xC0)
		n = 2, c = s[0] & 0x1Fu, least = 0xA0;
	else if ((s[0] & 0xF0) == 0xE0)
		n = 3, c = s[0] & 0x0Fu, least = 0x800;
	else if ((s[0] & 0xF8) == 0xF0)
		n = 4, c = s[0] & 0x07u, least = 0x10000;
	for (size_t i = 1; i < n; i++) {
		if ((s[i] & 0xC0) != 0x80)
			return 0;
		c = c << 6 | (s[i] & 0x3Fu);
	}
	if (c < least || c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF))
		return 0;
	return n;
}

/* Copies text, whole characters only; what does not fit ends in "...". */
static void copy_clean(char to[PROBLEM_TEXT_MAX], const char *from)
{
	const unsigned char *s = (const unsigned char *)from;
	size_t n = 0, cut = 0; /* cut: where "..." can still be put */

	if (!from) {
		to[0] = '\0';
		return;
	}
	while (*s != '\0') {
		const size_t length = printable_length(s);
		const size_t take = length > 0 ? length : 1;

		if (n + take + 1 > PROBLEM_TEXT_MAX) {
			memcpy(to + cut, "...", 4);
			return;
		}
		if (length > 0)
			memcpy(to + n, s, length);
		else
			to[n] = '?';
		n += take;
		s += take;
		if (n + 4 <= PROBLEM_TEXT_MAX)
			cut = n;
	}
	to[n] = '\0';
}

void problem_add(struct problem_list *list, enum problem_code code, const char *file, int line,
		 const char *field, const char *given, const char *accepted)
{
	struct problem *p;

	assert(code != PROBLEM_NONE);
	if (list->count >= PROBLEM_MAX) {
		list->dropped++;
		return;
	}
	p = &list->item[list->count++];
	p->code = code;
	p->line = line > 0 ? line : 0;
	copy_clean(p->file, file);
	copy_clean(p->field, field);
	copy_clean(p->given, given);
	copy_clean(p->accepted, accepted);
}

bool problem_text_is_clean(const char *text)
{
	const unsigned char *s = (const unsigned char *)text;
	size_t length;

	for (; *s != '\0'; s += length) {
		length = printable_length(s);
		if (length == 0)
			return false;
	}
	return true;
}

bool problem_any(const struct problem_list *list)
{
	return list->count > 0;
}

/* Adds text at *n as far as it fits. */
static void append(char *buf, size_t size, size_t *n, const char *text)
{
	const size_t length = strlen(text);
	const size_t room = size - 1 - *n;
	const size_t take = length < room ? length : room;

	memcpy(buf + *n, text, take);
	*n += take;
	buf[*n] = '\0';
}

const char *problem_print(char *buf, size_t size, const struct problem *p)
{
	char number[16];
	size_t n = 0;

	assert(size > 0);
	buf[0] = '\0';
	if (p->file[0] != '\0') {
		append(buf, size, &n, p->file);
		if (p->line > 0) {
			snprintf(number, sizeof number, ":%d", p->line);
			append(buf, size, &n, number);
		}
		append(buf, size, &n, ": ");
	}
	if (p->field[0] != '\0') {
		append(buf, size, &n, p->field);
		append(buf, size, &n, ": ");
	}
	append(buf, size, &n, problem_text(p->code));
	if (p->given[0] != '\0') {
		append(buf, size, &n, ": given `");
		append(buf, size, &n, p->given);
		append(buf, size, &n, "`");
	}
	if (p->accepted[0] != '\0') {
		append(buf, size, &n, p->given[0] != '\0' ? "; accepted: " : ": accepted: ");
		append(buf, size, &n, p->accepted);
	}
	snprintf(number, sizeof number, " [%d]", (int)p->code);
	append(buf, size, &n, number);
	return buf;
}
