/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "sheet/pdf_bytes.h"

#include <stdlib.h>
#include <string.h>

bool pdf_bytes_add(struct pdf_bytes *b, const void *data, size_t size)
{
	if (b->failed || size > PDF_BYTES_MAX - b->size) {
		b->failed = true;
		return false;
	}
	if (b->size + size > b->room) {
		const size_t room = (b->size + size) * 2;
		unsigned char *more = realloc(b->data, room);

		if (!more) {
			b->failed = true;
			return false;
		}
		b->data = more;
		b->room = room;
	}
	memcpy(b->data + b->size, data, size);
	b->size += size;
	return true;
}

/* Last place of a word before `end`; NULL if it is nowhere. */
static const char *last(const struct pdf_bytes *b, const char *word, const char *end)
{
	const char *start = (const char *)b->data;
	const size_t n = strlen(word);

	for (const char *p = end - n; p >= start; p--)
		if (memcmp(p, word, n) == 0)
			return p;
	return NULL;
}

static const char *next(const char *from, const char *end, const char *word)
{
	const size_t n = strlen(word);

	for (const char *p = from; p + n <= end; p++)
		if (memcmp(p, word, n) == 0)
			return p;
	return NULL;
}

struct trailer {
	long root, info, size, start; /* start: of the cross-reference table */
};

static bool number_after(const char *from, const char *end, const char *word, long *value)
{
	const char *p = next(from, end, word);

	if (!p)
		return false;
	*value = strtol(p + strlen(word), NULL, 10);
	return *value > 0;
}

static bool read_trailer(const struct pdf_bytes *b, struct trailer *t)
{
	const char *end = (const char *)b->data + b->size;
	const char *at = last(b, "trailer", end);

	return at && number_after(at, end, "/Root ", &t->root) &&
	       number_after(at, end, "/Info ", &t->info) &&
	       number_after(at, end, "/Size ", &t->size) &&
	       number_after(at, end, "startxref\n", &t->start);
}

/* The dictionary of an object, from behind its "<<" up to its closing ">>". */
static bool dictionary(const struct pdf_bytes *b, long object, const char **from, const char **to)
{
	const char *end = (const char *)b->data + b->size;
	char head[40];

	snprintf(head, sizeof head, "\n%ld 0 obj\n<<", object);
	const char *at = last(b, head, end);
	const char *over = at ? next(at, end, "\nendobj") : NULL;

	if (!over)
		return false;
	*from = at + strlen(head);
	*to = over;
	while (*to > *from && memcmp(*to, ">>", 2) != 0)
		(*to)--;
	return *to > *from;
}

/* The information dictionary, line by line, without its date. */
static void write_info(FILE *f, const char *from, const char *to)
{
	while (from < to) {
		const char *line = memchr(from, '\n', (size_t)(to - from));
		const char *end = line ? line + 1 : to;

		if (!next(from, end, "/CreationDate"))
			fwrite(from, 1, (size_t)(end - from), f);
		from = end;
	}
}

int pdf_bytes_write(struct pdf_bytes *b, FILE *f, bool without_date)
{
	const char *root, *root_end, *info, *info_end;
	struct trailer t;

	/* A pattern is never searched across the end. */
	if (!pdf_bytes_add(b, "", 1))
		return -1;
	b->size--;
	if (!read_trailer(b, &t) || !dictionary(b, t.root, &root, &root_end) ||
	    !dictionary(b, t.info, &info, &info_end))
		return -1;
	const long begin = (long)b->size;
	char *update = NULL;
	size_t size = 0;
	FILE *u = open_memstream(&update, &size);

	if (!u)
		return -1;
	fprintf(u, "%ld 0 obj\n<<", t.root);
	fwrite(root, 1, (size_t)(root_end - root), u);
	fprintf(u, "   /Lang (en-US)\n   /ViewerPreferences << /DisplayDocTitle true "
		   ">>\n>>\nendobj\n");
	fflush(u);
	const long second = begin + (long)size;

	fprintf(u, "%ld 0 obj\n<<", t.info);
	if (without_date)
		write_info(u, info, info_end);
	else
		fwrite(info, 1, (size_t)(info_end - info), u);
	fprintf(u, ">>\nendobj\n");
	fflush(u);
	const long xref = begin + (long)size;

	const bool first = t.root < t.info; /* a table rises */

	fprintf(u, "xref\n%ld 1\n%010ld 00000 n \n", first ? t.root : t.info,
		first ? begin : second);
	fprintf(u, "%ld 1\n%010ld 00000 n \n", first ? t.info : t.root, first ? second : begin);
	fprintf(u,
		"trailer\n<< /Size %ld\n   /Root %ld 0 R\n   /Info %ld 0 R\n   /Prev "
		"%ld\n>>\nstartxref\n%ld\n%%%%EOF\n",
		t.size, t.root, t.info, t.start, xref);
	const bool whole = fclose(u) == 0;

	if (whole) {
		fwrite(b->data, 1, b->size, f);
		fwrite(update, 1, size, f);
	}
	free(update);
	return whole && !ferror(f) ? 0 : -1;
}
