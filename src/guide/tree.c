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
