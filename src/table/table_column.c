/* SPDX-License-Identifier: MIT */
/* Columns of a table file: their declaration, and the values of rows against it. Part of the
   build-time generator. */
#include "table/table_column.h"

#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "table/table_value.h"

static const char *const type_word[COLUMN_TYPE_COUNT] = {"number", "fraction", "integer", "text",
							 "key",    "edition",  "choice"};

static const struct {
	const char *word, *name;
} edition_word[] = {
	{"any", "EDITION_ANY"}, {"7-10", "ASCE7_10"}, {"7-16", "ASCE7_16"}, {"7-22", "ASCE7_22"}};

const char *table_edition_name(const char *word)
{
	for (size_t i = 0; i < sizeof edition_word / sizeof *edition_word; i++)
		if (strcmp(word, edition_word[i].word) == 0)
			return edition_word[i].name;
	return NULL;
}

bool table_fault(const struct table_file *table, long line, const char *format, ...)
{
	va_list arguments;

	fprintf(stderr, "%s:%ld: ", table->path, line);
	va_start(arguments, format);
	vfprintf(stderr, format, arguments);
	va_end(arguments);
	fputc('\n', stderr);
	return false;
}

const char *table_attribute(const xmlNode *node, const char *name)
{
	for (const xmlAttr *a = node->properties; a != NULL; a = a->next)
		if (strcmp((const char *)a->name, name) == 0)
			return a->children == NULL ? "" : (const char *)a->children->content;
	return NULL;
}

bool table_copy_name(char *to, const char *from)
{
	if (from == NULL || *from == '\0' || strlen(from) >= NAME_MAX_LENGTH)
		return false;
	strcpy(to, from);
	return true;
}

bool table_word(const char *text, const char *allowed)
{
	const bool letter = (*text >= 'a' && *text <= 'z') || (*text >= 'A' && *text <= 'Z');

	return letter && text[strspn(text, allowed)] == '\0';
}

/* What becomes a C comment must not end it. */
static bool safe_comment(const char *text)
{
	return text != NULL && strstr(text, "*/") == NULL;
}

/* NAME_UNIT, with what C cannot spell in a unit turned into an underscore. */
static bool make_member(struct table_column *c)
{
	const size_t n = strlen(c->name), unit = strlen(c->unit);

	if (n + 1 + unit >= sizeof c->member)
		return false;
	strcpy(c->member, c->name);
	if (unit == 0)
		return true;
	c->member[n] = '_';
	for (size_t i = 0; i <= unit; i++)
		c->member[n + 1 + i] = c->unit[i] == '/' ? '_' : c->unit[i];
	return true;
}

static bool read_choices(struct table_column *c, const char *text)
{
	while (text != NULL && *text != '\0') {
		const size_t n = strcspn(text, " ");

		if (n == 0 || n >= NAME_MAX_LENGTH || c->choices == CHOICE_MAX)
			return false;
		memcpy(c->choice[c->choices], text, n);
		c->choice[c->choices][n] = '\0';
		if (c->choice[c->choices][strspn(c->choice[c->choices], LETTERS DIGITS "-")] !=
		    '\0')
			return false;
		c->choices++;
		text += n;
		text += *text == ' ';
	}
	return (c->type == COLUMN_CHOICE) == (c->choices > 0);
}

static bool read_bound(const char *text, bool *has, double *bound)
{
	*has = text != NULL;
	return text == NULL || table_number(text, bound);
}

bool table_column_read(struct table_file *table, const xmlNode *node)
{
	const long line = xmlGetLineNo(node);
	struct table_column *c = &table->column[table->columns];
	const char *type = table_attribute(node, "type");
	int t = 0;

	if (table->columns == COLUMN_MAX)
		return table_fault(table, line, "more than %d columns", COLUMN_MAX);
	if (!table_copy_name(c->name, table_attribute(node, "name")) ||
	    !table_word(c->name, LETTERS CAPITALS DIGITS "_"))
		return table_fault(table, line, "column without a usable name");
	if (strcmp(c->name, "status") == 0 || strcmp(c->name, "source") == 0 ||
	    strcmp(c->name, "note") == 0)
		return table_fault(table, line, "column %s: every row has that already", c->name);
	for (size_t i = 0; i < table->columns; i++)
		if (strcmp(table->column[i].name, c->name) == 0)
			return table_fault(table, line, "column %s is declared twice", c->name);
	while (t < COLUMN_TYPE_COUNT && (type == NULL || strcmp(type, type_word[t]) != 0))
		t++;
	if (t == COLUMN_TYPE_COUNT)
		return table_fault(table, line, "column %s has no known type", c->name);
	c->type = (enum column_type)t;
	c->unit = table_attribute(node, "unit");
	if (c->unit == NULL)
		c->unit = "";
	if (*c->unit != '\0' && !table_word(c->unit, LETTERS CAPITALS DIGITS "/"))
		return table_fault(table, line, "column %s: unusable unit", c->name);
	c->meaning = table_attribute(node, "meaning");
	if (!safe_comment(c->meaning))
		return table_fault(table, line, "column %s has no usable meaning", c->name);
	c->optional = table_attribute(node, "optional") != NULL;
	if (c->optional && t > COLUMN_KEY)
		return table_fault(table, line,
				   "column %s: an edition or choice cannot be optional", c->name);
	if (!make_member(c))
		return table_fault(table, line, "column %s: name and unit are too long", c->name);
	if (!read_choices(c, table_attribute(node, "choices")))
		return table_fault(table, line,
				   "column %s: choices are missing, unusable or out of place",
				   c->name);
	if (!read_bound(table_attribute(node, "min"), &c->has_min, &c->min) ||
	    !read_bound(table_attribute(node, "max"), &c->has_max, &c->max))
		return table_fault(table, line, "column %s: min or max is not a number", c->name);
	table->columns++;
	return true;
}

static bool check_number(const struct table_file *table, const struct table_column *c, long line,
			 const char *text, double *value)
{
	const bool read = c->type == COLUMN_NUMBER     ? table_number(text, value)
			  : c->type == COLUMN_FRACTION ? table_fraction(text, value)
						       : table_integer(text, value);

	if (!read)
		return table_fault(table, line, "%s=\"%s\" is not a %s", c->name, text,
				   type_word[c->type]);
	if ((c->has_min && *value < c->min) || (c->has_max && *value > c->max))
		return table_fault(table, line, "%s=\"%s\" is out of range", c->name, text);
	return true;
}

bool table_column_check(const struct table_file *table, const struct table_column *c, long line,
			const char *text, double *value)
{
	switch (c->type) {
	case COLUMN_NUMBER:
	case COLUMN_FRACTION:
	case COLUMN_INTEGER:
		return check_number(table, c, line, text, value);
	case COLUMN_TEXT:
	case COLUMN_KEY:
		return *text != '\0' || table_fault(table, line, "%s is empty", c->name);
	case COLUMN_EDITION:
		return table_edition_name(text) != NULL ||
		       table_fault(table, line, "%s=\"%s\" is not an edition", c->name, text);
	case COLUMN_CHOICE:
		for (size_t i = 0; i < c->choices; i++)
			if (strcmp(c->choice[i], text) == 0)
				return true;
		return table_fault(table, line, "%s=\"%s\" is not one of its choices", c->name,
				   text);
	case COLUMN_TYPE_COUNT:
		break;
	}
	return false;
}
