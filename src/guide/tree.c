/* SPDX-License-Identifier: MIT */
/* Small helpers over libxml2 trees that the schema has already accepted, and the sorted tables of
 * ids. */
#include "guide/library.h"

#include <stdlib.h>
#include <string.h>

bool node_is(const xmlNode *node, const char *name)
{
	return node && node->type == XML_ELEMENT_NODE &&
	       strcmp((const char *)node->name, name) == 0;
}

static const xmlNode *element_from(const xmlNode *node)
{
	while (node && node->type != XML_ELEMENT_NODE)
		node = node->next;
	return node;
}

const xmlNode *node_first(const xmlNode *node)
{
	return node ? element_from(node->children) : NULL;
}

const xmlNode *node_next(const xmlNode *node)
{
	return node ? element_from(node->next) : NULL;
}

const xmlNode *node_child(const xmlNode *node, const char *name)
{
	const xmlNode *child = node_first(node);

	while (child && !node_is(child, name))
		child = node_next(child);
	return child;
}

static const xmlAttr *find_attribute(const xmlNode *node, const char *name)
{
	const xmlAttr *a = node->properties;

	while (a && strcmp((const char *)a->name, name) != 0)
		a = a->next;
	return a;
}

/* Entities are refused and predefined ones resolved while parsing, so a value is one text node. */
const char *node_attribute(const xmlNode *node, const char *name)
{
	const xmlAttr *a = find_attribute(node, name);

	return a && a->children && a->children->content ? (const char *)a->children->content : "";
}

bool node_has(const xmlNode *node, const char *name)
{
	return find_attribute(node, name) != NULL;
}

int node_line(const xmlNode *node)
{
	const long line = xmlGetLineNo(node);

	return line > 0 && line < 1000000000 ? (int)line : 0;
}

const char *node_text(const xmlNode *node, char *buf, size_t size)
{
	size_t n = 0;

	for (const xmlNode *c = node->children; c; c = c->next) {
		size_t length;

		if (c->type != XML_TEXT_NODE || !c->content)
			continue;
		length = strlen((const char *)c->content);
		if (length > size - 1 - n)
			length = size - 1 - n;
		memcpy(buf + n, c->content, length);
		n += length;
	}
	buf[n] = '\0';
	return buf;
}

/* Characters that turn the direction of writing: a text must not look other than it reads. */
static bool turns_writing(const char *s)
{
	const unsigned char *u = (const unsigned char *)s;

	/* U+202A to U+202E and U+2066 to U+2069 */
	return u[0] == 0xE2 && ((u[1] == 0x80 && u[2] >= 0xAA && u[2] <= 0xAE) ||
				(u[1] == 0x81 && u[2] >= 0xA6 && u[2] <= 0xA9));
}

static bool printable(const char *text, const char *blanks)
{
	for (const char *s = text; *s; s++) {
		const unsigned char c = (unsigned char)*s, follows = (unsigned char)s[1];

		if (c >= 0x20 && c < 0x7F)
			continue;
		/* below U+0020, U+007F to U+009F */
		if ((c < 0x20 && !strchr(blanks, *s)) || c == 0x7F || (c == 0xC2 && follows < 0xA0))
			return false;
		if (turns_writing(s))
			return false;
	}
	return true;
}

bool node_printable(const xmlNode *node)
{
	const char *blanks = node_is(node, "plain") || node_is(node, "also") ? "" : "\t\n\r";

	for (const xmlAttr *a = node->properties; a; a = a->next)
		for (const xmlNode *c = a->children; c; c = c->next)
			if (c->content && !printable((const char *)c->content, ""))
				return false;
	for (const xmlNode *c = node->children; c; c = c->next)
		if (c->type == XML_TEXT_NODE && c->content && !printable((const char *)c->content, blanks))
			return false;
	return true;
}

bool guide_table_add(struct guide_table *table, const char *id, const struct guide_doc *file,
		     const xmlNode *node)
{
	if (table->count == table->room) {
		const size_t room = table->room ? table->room * 2 : 32;
		struct guide_entry *grown = guide_retake(table->entry, room * sizeof *grown);

		if (!grown)
			return false;
		table->entry = grown;
		table->room = room;
	}
	table->entry[table->count++] = (struct guide_entry){id, file, node};
	return true;
}

static int by_id(const void *a, const void *b)
{
	const struct guide_entry *x = a, *y = b;

	return strcmp(x->id, y->id);
}

void guide_table_sort(struct guide_table *table)
{
	if (table->count > 1)
		qsort(table->entry, table->count, sizeof table->entry[0], by_id);
}

const struct guide_entry *guide_table_find(const struct guide_table *table, const char *id)
{
	const struct guide_entry wanted = {.id = id};

	if (table->count == 0)
		return NULL;
	return bsearch(&wanted, table->entry, table->count, sizeof table->entry[0], by_id);
}
