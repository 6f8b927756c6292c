/* SPDX-License-Identifier: MIT */
/* Inside of a library, shared by the files of this room. */
#ifndef RP_GUIDE_LIBRARY_H
#define RP_GUIDE_LIBRARY_H

#include <stdbool.h>
#include <stddef.h>

#include <libxml/tree.h>

#include "guide/guide.h"

#define GUIDE_SCHEMA "covering.rng"
#define GUIDE_INDEX "index.xml"
#define GUIDE_OPENING_PART "defers"
#define GUIDE_USES_MAX 128 /* the longest page has 35 */

struct guide_doc {
	char *name, *data; /* bytes as read, for the export */
	size_t size;
	xmlDoc *doc;
};

/* A thing found by its id or key: page, part, source. */
struct guide_entry {
	const char *id;
	const struct guide_doc *file;
	const xmlNode *node;
};

struct guide_table {
	struct guide_entry *entry; /* in the order of the ids */
	size_t count, room;
};

struct guide_library {
	struct guide_doc *doc; /* in the order of the names */
	size_t docs;
	bool one_page; /* and of the shared files only what it uses */
	struct guide_table page, part, source;
};

/* memory.c: all memory of this room that is not libxml2's or zlib's own; a test makes each of these
 * fail in turn. */
void *guide_take(size_t size);
void *guide_retake(void *memory, size_t size);
void guide_give(void *memory); /* NULL is fine */

/* tree.c: walking libxml2 trees. */
bool node_is(const xmlNode *node, const char *name);
/* First child element, next sibling element; any name. */
const xmlNode *node_first(const xmlNode *node);
const xmlNode *node_next(const xmlNode *node);
const xmlNode *node_child(const xmlNode *node, const char *name);
/* Value of an attribute, "" if it is not there. */
const char *node_attribute(const xmlNode *node, const char *name);
bool node_has(const xmlNode *node, const char *name);
int node_line(const xmlNode *node);
/* Text of a node itself, without its children's, joined into buf and cut to fit. */
const char *node_text(const xmlNode *node, char *buf, size_t size);
/* True if a node's own text and attributes hold nothing that a terminal obeys instead of printing or that turns the
   direction of writing. Line ends pass in text, but not in attributes and names, which stand in one line. */
bool node_printable(const xmlNode *node);

/* reader.c: bytes to a tree. */
/* Reads a regular file of at most GUIDE_FILE_MAX bytes below the directory dirfd. */
bool guide_read_file(int dirfd, const char *name, struct guide_doc *doc,
		     struct problem_list *problems);
/* Parses doc->data into doc->doc: no network, no document type, no entities, depth capped. */
bool guide_parse(struct guide_doc *doc, struct problem_list *problems);
/* Validates every document against the schema. */
bool guide_validate(const struct guide_library *lib, struct problem_list *problems);

/* uses.c: what one page needs of shared files. */
/* The ids of the parts that a page uses, the opening part first; how many. */
size_t guide_uses(const xmlNode *page, const char *part[GUIDE_USES_MAX]);
/* Whether a part is one of these; whether a file, not yet parsed, may hold one of them. */
bool guide_used(const xmlNode *node, const char *const part[], size_t parts);
bool guide_serves(const struct guide_doc *doc, const char *const part[], size_t parts);

/* check.c: what a schema cannot say. Fills the tables of lib. */
bool guide_check(struct guide_library *lib, struct problem_list *problems);

bool guide_table_add(struct guide_table *table, const char *id, const struct guide_doc *file,
		     const xmlNode *node);
void guide_table_sort(struct guide_table *table);
const struct guide_entry *guide_table_find(const struct guide_table *table, const char *id);

/* Units in which the numbers of `quantity` and `size` elements count. */
enum dimension guide_quantity_dimension(const char *name);

#endif
