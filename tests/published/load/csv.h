/* SPDX-License-Identifier: MIT */
/* Reads the check data beside the tests: comma separated, a heading first, fields that hold a comma
   in double quotes. */
#ifndef RP_TESTS_PUBLISHED_CSV_H
#define RP_TESTS_PUBLISHED_CSV_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define CSV_FIELDS 12
#define CSV_LINE 1024

struct csv {
	FILE *in;
	char heading[CSV_LINE], line[CSV_LINE];
	char *name[CSV_FIELDS], *field[CSV_FIELDS];
	int names, row;
};

static inline int csv_split(char *line, char **field)
{
	int n = 0;
	char *p = line;

	line[strcspn(line, "\n")] = '\0';
	while (n < CSV_FIELDS) {
		if (*p == '"') {
			field[n++] = ++p;
			p += strcspn(p, "\"");
			*p++ = '\0';
		} else {
			field[n++] = p;
			p += strcspn(p, ",");
		}
		if (*p != ',')
			return n;
		*p++ = '\0';
	}
	return n;
}

static inline void csv_open(struct csv *c, const char *path)
{
	memset(c, 0, sizeof *c);
	c->in = fopen(path, "r");
	if (c->in == NULL || fgets(c->heading, sizeof c->heading, c->in) == NULL)
		fail_msg("%s cannot be read", path);
	c->names = csv_split(c->heading, c->name);
}

/* Next row; false and closed at the end. */
static inline int csv_next(struct csv *c)
{
	if (fgets(c->line, sizeof c->line, c->in) == NULL) {
		fclose(c->in);
		return 0;
	}
	c->row++;
	if (csv_split(c->line, c->field) != c->names)
		fail_msg("row %d does not have the fields of the heading", c->row);
	return 1;
}

static inline const char *csv_text(const struct csv *c, const char *name)
{
	for (int i = 0; i < c->names; i++)
		if (strcmp(c->name[i], name) == 0)
			return c->field[i];
	fail_msg("no column %s", name);
	return "";
}

static inline double csv_number(const struct csv *c, const char *name)
{
	char *end;
	const char *text = csv_text(c, name);
	const double x = strtod(text, &end);

	if (end == text || *end != '\0')
		fail_msg("row %d, %s: %s is not a number", c->row, name, text);
	return x;
}

#endif
