/* SPDX-License-Identifier: MIT */
#include "report/text_line.h"

#include <string.h>

#include "report/utf8.h"

void text_bytes(FILE *f, const char *text, size_t n)
{
	size_t from = 0;

	for (size_t i = 0; i + 1 < n; i++) {
		/* The document holds valid UTF-8 only, so C2 A0 is always U+00A0. */
		if ((unsigned char)text[i] != 0xC2 || (unsigned char)text[i + 1] != 0xA0)
			continue;
		fwrite(text + from, 1, i - from, f);
		fputc(' ', f);
		from = ++i + 1;
	}
	fwrite(text + from, 1, n - from, f);
}

void text_blanks(FILE *f, size_t n)
{
	while (n-- > 0)
		fputc(' ', f);
}

void text_paragraph(FILE *f, size_t width, const char *first, size_t indent, const char *text)
{
	const size_t lead = utf8_columns(first, strlen(first));
	const size_t deepest = lead > indent ? lead : indent;
	const size_t room = width > deepest + 8 ? width - deepest : 8;
	const char *line;
	size_t n, lines = 0;

	while ((line = utf8_line(&text, room, &n)) != NULL) {
		if (lines++ == 0) {
			fputs(first, f);
			text_blanks(f, deepest - lead);
		} else {
			text_blanks(f, deepest);
		}
		text_bytes(f, line, n);
		fputc('\n', f);
	}
}
