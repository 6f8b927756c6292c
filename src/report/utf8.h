/* SPDX-License-Identifier: MIT */
/* Just enough of UTF-8 to clean text, count its columns and break it into lines. A code point
   counts as one column: wide and combining characters are not treated (the program's own words are
   ASCII; only a job's title or a note may hold others, where a line comes out a little short or
   long). */
#ifndef RP_REPORT_UTF8_H
#define RP_REPORT_UTF8_H

#include <stddef.h>

/* Replaces, in place, each byte of invalid UTF-8 by `?`, each control character (C0, DEL, C1) and
   each mark that turns the direction of writing by `?` (a tab or line break by a blank). */
void utf8_clean(char *text);

/* Columns of a text of n bytes. */
size_t utf8_columns(const char *text, size_t n);

/* The next line of at most `width` columns of *rest: its start is returned, its bytes in *n, and
   *rest moves behind the blanks where it was broken. Only ' ' breaks; a longer word is cut. NULL at
   the end. */
const char *utf8_line(const char **rest, size_t width, size_t *n);

/* Columns of the longest word between blanks. */
size_t utf8_longest_word(const char *text);

/* Number of lines that utf8_line would give. */
size_t utf8_line_count(const char *text, size_t width);

#endif
