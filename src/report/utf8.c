/* SPDX-License-Identifier: MIT */
#include "report/utf8.h"

#include <assert.h>
#include <stdbool.h>
#include <stdint.h>
#include <string.h>

/* Bytes of the well-formed sequence at s and its code point; 0 when it is none (RFC 3629: no
   overlong forms, no surrogates, nothing above U+10FFFF). The text ends with NUL, which is no
   continuation byte. */
static size_t decode(const unsigned char *s, uint32_t *point)
{
	static const uint32_t least[] = { 0, 0, 0x80, 0x800, 0x10000 };
	const size_t n = s[0] < 0x80   ? 1
	                 : s[0] < 0xC2 ? 0
	                 : s[0] < 0xE0 ? 2
	                 : s[0] < 0xF0 ? 3
	                 : s[0] < 0xF5 ? 4
	                               : 0;

	if (n == 0)
		return 0;
	uint32_t p = n == 1 ? s[0] : (uint32_t)s[0] & (0x7Fu >> n);

	for (size_t i = 1; i < n; i++) {
		if ((s[i] & 0xC0) != 0x80)
			return 0;
		p = p << 6 | (uint32_t)(s[i] & 0x3F);
	}
	if (p < least[n] || (p >= 0xD800 && p <= 0xDFFF) || p > 0x10FFFF)
		return 0;
	*point = p;
	return n;
}

static bool refused(uint32_t p)
{
	return p < 0x20 || (p >= 0x7F && p <= 0x9F) || p == 0x061C || p == 0x200E || p == 0x200F ||
	       p == 0x2028 || p == 0x2029 || (p >= 0x202A && p <= 0x202E) ||
	       (p >= 0x2066 && p <= 0x2069) || p == 0xFEFF;
}

void utf8_clean(char *text)
{
	unsigned char *to = (unsigned char *)text;
	const unsigned char *from = to;

	/* plain text stays as it is */
	while (*from >= 0x20 && *from < 0x7F)
		from++;
	to += from - to;
	while (*from) {
		if (*from >= 0x20 && *from < 0x7F) {
			*to++ = *from++;
			continue;
		}
		uint32_t p = 0;
		const size_t n = decode(from, &p);

		if (n == 0 || refused(p)) {
			const bool blank = *from == '\t' || *from == '\n' || *from == '\r';

			*to++ = blank ? ' ' : '?';
			from += n ? n : 1;
			continue;
		}
		memmove(to, from, n);
		to += n;
		from += n;
	}
	*to = '\0';
}

static bool starts(char c)
{
	return ((unsigned char)c & 0xC0) != 0x80;
}

size_t utf8_columns(const char *text, size_t n)
{
	size_t columns = 0;

	for (size_t i = 0; i < n; i++)
		columns += starts(text[i]);
	return columns;
}

const char *utf8_line(const char **rest, size_t width, size_t *n)
{
	const char *start = *rest + strspn(*rest, " ");
	size_t columns = 0, i = 0, blank = 0;

	assert(width > 0);
	if (!*start)
		return NULL;
	for (; start[i]; i++) {
		if (start[i] == ' ')
			blank = i;
		if (starts(start[i]) && columns++ == width)
			break;
	}
	*n = !start[i] ? i : blank ? blank : i;
	*rest = start + *n;
	while (*n > 0 && start[*n - 1] == ' ')
		--*n;
	return start;
}

size_t utf8_longest_word(const char *text)
{
	size_t longest = 0;

	while (*text) {
		text += strspn(text, " ");
		const size_t n = strcspn(text, " ");
		const size_t columns = utf8_columns(text, n);

		if (columns > longest)
			longest = columns;
		text += n;
	}
	return longest;
}

size_t utf8_line_count(const char *text, size_t width)
{
	size_t lines = 0, n;

	while (utf8_line(&text, width, &n))
		lines++;
	return lines;
}
