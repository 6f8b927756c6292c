/* SPDX-License-Identifier: MIT */
/* Reads one table file with libxml2 and checks what a schema cannot: values against their columns,
   and that no two rows share a key. Part of the build-time generator. */
#include "table/table_file.h"

#include <libxml/parser.h>
#include <libxml/tree.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "table/table_column.h"

/* A published table that needs more rows than this is a slip. */
#define ROW_MAX 2000

static const struct {
	const char *word, *name;
} status_word[] = {{"confirmed", "CONFIRMED"},     {"one-source", "ONE_SOURCE"},
		   {"from-memory", "FROM_MEMORY"}, {"safe-side", "SAFE_SIDE"},
		   {"our-rule", "OUR_RULE"},       {"common-practice", "COMMON_PRACTICE"},
		   {"derived", "DERIVED"}};

static const char *status_name(const char *word)
{
	for (size_t i = 0; i < sizeof status_word / sizeof *status_word; i++)
		if (strcmp(word, status_word[i].word) == 0)
			return status_word[i].name;
	return NULL;
}

static bool known_attribute(const struct table_file *table, const char *name)
{
	for (size_t i = 0; i < table->columns; i++)
		if (strcmp(table->column[i].name, name) == 0)
			return true;
	return strcmp(name, "status") == 0 || strcmp(name, "source") == 0 ||
	       strcmp(name, "note") == 0;
}

static bool same_key(const struct table_file *table, const struct table_row *a,
		     const struct table_row *b)
{
	bool any = false;

	for (size_t i = 0; i < table->columns; i++) {
		const char *u = a->value[i], *v = b->value[i];

		if (!table->column[i].unique)
			continue;
		any = true;
		if ((u == NULL) != (v == NULL) || (u != NULL && strcmp(u, v) != 0))
			return false;
	}
	return any;
}

static bool read_row(struct table_file *table, const xmlNode *node)
{
	const long line = xmlGetLineNo(node);
	const char *status = table_attribute(node, "status");
	struct table_row *r;
	bool good = true;

	if (table->rows == ROW_MAX)
		return table_fault(table, line, "more than %d rows", ROW_MAX);
	r = &table->row[table->rows];
	r->line = line;
	if (status == NULL || (r->status = status_name(status)) == NULL)
		good = table_fault(table, line, "row without a known status");
	r->source = table_attribute(node, "source");
	r->note = table_attribute(node, "note");
	for (const xmlAttr *a = node->properties; a != NULL; a = a->next)
		if (!known_attribute(table, (const char *)a->name))
			good = table_fault(table, line, "%s is not a column",
					   (const char *)a->name);
	for (size_t i = 0; i < table->columns; i++) {
		const struct table_column *c = &table->column[i];

		r->value[i] = table_attribute(node, c->name);
		if (r->value[i] == NULL) {
			if (!c->optional)
				good = table_fault(table, line, "%s is missing", c->name);
		} else if (!table_column_check(table, c, line, r->value[i], &r->number[i])) {
			good = false;
		}
	}
	for (size_t i = 0; good && i < table->rows; i++)
		if (same_key(table, &table->row[i], r))
			good = table_fault(table, line, "says the same as line %ld",
					   table->row[i].line);
	table->rows++;
	return good;
}

static bool read_unique(struct table_file *table, const xmlNode *root)
{
	const char *text = table_attribute(root, "unique");

	while (text != NULL && *text != '\0') {
		const size_t n = strcspn(text, " ");
		size_t i = 0;

		while (i < table->columns && (strlen(table->column[i].name) != n ||
					      strncmp(table->column[i].name, text, n) != 0))
			i++;
		if (i == table->columns)
			return table_fault(table, xmlGetLineNo(root),
					   "unique names a column that does not exist");
		table->column[i].unique = true;
		text += n;
		text += *text == ' ';
	}
	return true;
}

static bool read_head(struct table_file *table, const xmlNode *root)
{
	const long line = xmlGetLineNo(root);

	if (strcmp((const char *)root->name, "table") != 0)
		return table_fault(table, line, "is not a table");
	if (!table_copy_name(table->name, table_attribute(root, "name")) ||
	    !table_word(table->name, LETTERS DIGITS "-"))
		return table_fault(table, line, "table without a usable name");
	strcpy(table->identifier, table->name);
	for (char *p = table->identifier; *p != '\0'; p++)
		*p = *p == '-' ? '_' : *p;
	table->title = table_attribute(root, "title");
	table->standard = table_attribute(root, "standard");
	table->clause = table_attribute(root, "clause");
	if (table->title == NULL || table->standard == NULL || table->clause == NULL)
		return table_fault(table, line, "title, standard or clause is missing");
	/* They become a C comment. */
	if (strstr(table->title, "*/") != NULL || strstr(table->standard, "*/") != NULL ||
	    strstr(table->clause, "*/") != NULL)
		return table_fault(table, line, "title, standard or clause holds */");
	return true;
}

static bool read_children(struct table_file *table, const xmlNode *root)
{
	bool good = true, unique = false;

	for (const xmlNode *n = root->children; n != NULL; n = n->next) {
		const char *name = (const char *)n->name;

		if (n->type != XML_ELEMENT_NODE)
			continue;
		if (strcmp(name, "source") == 0) {
			if (table->source == NULL && n->children != NULL)
				table->source = (const char *)n->children->content;
		} else if (strcmp(name, "column") == 0) {
			good = (table->rows == 0 && table_column_read(table, n)) && good;
		} else if (strcmp(name, "row") == 0) {
			if (!unique)
				good = read_unique(table, root) && good;
			unique = true;
			good = read_row(table, n) && good;
		} else {
			good = table_fault(table, xmlGetLineNo(n), "%s has no place here", name);
		}
	}
	if (table->source == NULL)
		good = table_fault(table, xmlGetLineNo(root), "source is missing");
	if (table->columns == 0 || table->rows == 0)
		good = table_fault(table, xmlGetLineNo(root), "has no columns or no rows");
	return good;
}

bool table_file_read(const char *path, struct table_file *table)
{
	const xmlNode *root;

	memset(table, 0, sizeof *table);
	table->path = path;
	table->row = calloc(ROW_MAX, sizeof *table->row);
	table->document = xmlReadFile(path, NULL, XML_PARSE_NONET | XML_PARSE_NOENT);
	if (table->row == NULL || table->document == NULL)
		return table_fault(table, 0, "cannot be read");
	root = xmlDocGetRootElement(table->document);
	return root != NULL && read_head(table, root) && read_children(table, root);
}

void table_file_free(struct table_file *table)
{
	if (table->document != NULL)
		xmlFreeDoc(table->document);
	free(table->row);
	memset(table, 0, sizeof *table);
}
