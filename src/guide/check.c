/* SPDX-License-Identifier: MIT */
/* What the schema cannot say: ids that exist and are unique, names of files, placeholders,
   quantities that parse, limits of slope in order. Every fault is told with file and line. */
#include "guide/library.h"

#include <stdio.h>
#include <string.h>

#include "guide/fill.h"

struct checker {
	struct guide_library *lib;
	const struct guide_doc *file; /* being checked */
	struct problem_list *problems;
	bool ok;
};

static void fault(struct checker *c, const xmlNode *node, const char *given, const char *accepted)
{
	problem_add(c->problems, PROBLEM_LIBRARY, c->file->name, node_line(node),
		    (const char *)node->name, given, accepted);
	c->ok = false;
}

/* ---- tables ---- */

static void add(struct checker *c, struct guide_table *table, const char *id, const xmlNode *node)
{
	if (guide_table_add(table, id, c->file, node))
		return;
	problem_add(c->problems, PROBLEM_NO_MEMORY, c->file->name, 0, NULL, NULL, NULL);
	c->ok = false;
}

static void gather_page(struct checker *c, const xmlNode *root)
{
	const char *key = node_attribute(root, "key");
	const size_t n = strlen(key);

	add(c, &c->lib->page, key, root);
	if (strlen(c->file->name) != n + 4 || strncmp(c->file->name, key, n) != 0)
		fault(c, root, key, "a key that is the file's name without .xml");
}

static void gather(struct checker *c)
{
	for (size_t i = 0; i < c->lib->docs; i++) {
		const xmlNode *root = xmlDocGetRootElement(c->lib->doc[i].doc);
		struct guide_table *table = NULL;

		c->file = &c->lib->doc[i];
		if (node_is(root, "covering") || node_is(root, "refusal"))
			gather_page(c, root);
		else if (node_is(root, "common"))
			table = &c->lib->part;
		else if (node_is(root, "sources"))
			table = &c->lib->source;
		for (const xmlNode *n = table ? node_first(root) : NULL; n; n = node_next(n))
			add(c, table, node_attribute(n, "id"), n);
	}
}

static void sort_table(struct checker *c, struct guide_table *table)
{
	guide_table_sort(table);
	for (size_t i = 1; i < table->count; i++)
		if (strcmp(table->entry[i].id, table->entry[i - 1].id) == 0) {
			c->file = table->entry[i].file;
			fault(c, table->entry[i].node, table->entry[i].id,
			      "an id that is used once");
		}
}

/* ---- claims ---- */

static void check_sources(struct checker *c, const xmlNode *node)
{
	const char *s = node_attribute(node, "source");

	while (*s != '\0') {
		char id[64];
		const size_t n = strcspn(s, " \t\n\r");

		if (n > 0 && n < sizeof id) {
			memcpy(id, s, n);
			id[n] = '\0';
			if (!guide_table_find(&c->lib->source, id))
				fault(c, node, id, "the id of a source in the library");
		}
		s += n;
		s += strspn(s, " \t\n\r");
	}
}

static void check_slope(struct checker *c, const xmlNode *node)
{
	const bool both = node_has(node, "slope-from") && node_has(node, "slope-below");
	double from, below;

	if (both &&
	    quantity_parse(node_attribute(node, "slope-from"), DIM_ANGLE, &from) == QUANTITY_OK &&
	    quantity_parse(node_attribute(node, "slope-below"), DIM_ANGLE, &below) == QUANTITY_OK &&
	    !(from < below))
		fault(c, node, NULL, "slope-from below slope-below");
}

static void check_amount(struct checker *c, const xmlNode *node, const char *attribute,
			 enum dimension dimension)
{
	double si;

	if (node_has(node, attribute) &&
	    quantity_parse(node_attribute(node, attribute), dimension, &si) != QUANTITY_OK)
		fault(c, node, node_attribute(node, attribute), dimension_units(dimension));
}

static void check_from(struct checker *c, const xmlNode *node)
{
	const char *from = node_attribute(node, "from");

	if (*from != '\0' && !guide_size_find(from, strlen(from)))
		fault(c, node, from, "the name of a placeholder");
}

/* Text of a claim in both systems, every size known. */
static void check_text(struct checker *c, const xmlNode *node, const char *text)
{
	char filled[GUIDE_TEXT_MAX];
	struct guide_sizes ones;
	const char *at = text;
	enum guide_fill result = GUIDE_FILLED;

	/* what is in braces is right or wrong in any system; it only grows to another length */
	size_t most = strlen(text);

	if (most < sizeof filled && !strpbrk(text, "{}"))
		return; /* stays as it is */
#define G(member, name, style, meaning) ones.member = 1.0;
	GUIDE_SIZES(G)
#undef G
	for (const char *s = strchr(text, '{'); s; s = strchr(s + 1, '{'))
		most += GUIDE_FILLED_MAX;
	const int systems = most < sizeof filled ? 1 : SYSTEM_COUNT;

	for (int units = 0; units < systems && result == GUIDE_FILLED; units++)
		result = guide_fill(filled, sizeof filled, text, &ones, (enum unit_system)units,
				    &at);
	switch (result) {
	case GUIDE_FILLED:
		break;
	case GUIDE_BAD_NAME:
		fault(c, node, at, "the name of a placeholder");
		break;
	case GUIDE_BAD_QUANTITY:
		fault(c, node, at, "a quantity with its unit, such as {4 in}, {6:12}, {2.5 psf}");
		break;
	case GUIDE_BAD_BRACES:
	case GUIDE_TOO_LONG:
	case GUIDE_SIZE_UNKNOWN:
		fault(c, node, at, "braces in pairs, in a text that is not too long");
		break;
	}
}

static void check_range(struct checker *c, const xmlNode *node)
{
	const enum dimension d = guide_quantity_dimension(node_attribute(node, "name"));
	double low, high;

	check_amount(c, node, "value", d);
	check_amount(c, node, "low", d);
	check_amount(c, node, "high", d);
	if (node_has(node, "low") &&
	    quantity_parse(node_attribute(node, "low"), d, &low) == QUANTITY_OK &&
	    quantity_parse(node_attribute(node, "high"), d, &high) == QUANTITY_OK && !(low <= high))
		fault(c, node, NULL, "low not above high");
}

static void check_layer(struct checker *c, const xmlNode *layer)
{
	int sizes = 0;

	for (const xmlNode *s = node_first(layer); s; s = node_next(s))
		sizes++;
	if (sizes > GUIDE_LAYER_SIZES) {
		fault(c, layer, NULL, "at most 12 sizes in a layer");
		return;
	}
	for (const xmlNode *s = node_first(layer); s; s = node_next(s))
		for (const xmlNode *t = node_next(s); t; t = node_next(t))
			if (strcmp(node_attribute(s, "name"), node_attribute(t, "name")) == 0)
				fault(c, t, node_attribute(t, "name"), "each size once in a layer");
}

static void check_element(struct checker *c, const xmlNode *node)
{
	char text[GUIDE_TEXT_MAX];

	if (!node_printable(node))
		fault(c, node, NULL, "text without control characters; names and attributes in one line");
	check_sources(c, node);
	check_slope(c, node);
	check_from(c, node);
	if (node_is(node, "quantity"))
		check_range(c, node);
	else if (node_is(node, "extent"))
		check_amount(c, node, "least", DIM_LENGTH);
	else if (node_is(node, "size"))
		check_amount(c, node, "value", DIM_LENGTH);
	else if (node_is(node, "layer"))
		check_layer(c, node);
	else if (node_is(node, "use") &&
		 !guide_table_find(&c->lib->part, node_attribute(node, "part")))
		fault(c, node, node_attribute(node, "part"), "the id of a common part");
	check_text(c, node, node_text(node, text, sizeof text));
	check_text(c, node, node_attribute(node, "for"));
}

/* Depth is capped by the parser. */
static void check_tree(struct checker *c, const xmlNode *node)
{
	check_element(c, node);
	for (const xmlNode *child = node_first(node); child; child = node_next(child))
		check_tree(c, child);
}

/* Of a page opened by itself nothing else is printed, so nothing else is looked at. */
static void check_used(struct checker *c, const xmlNode *common)
{
	const char *part[GUIDE_USES_MAX];
	const size_t parts = c->lib->page.count > 0 ? guide_uses(c->lib->page.entry[0].node, part) : 0;

	for (const xmlNode *n = node_first(common); n; n = node_next(n))
		if (guide_used(n, part, parts))
			check_tree(c, n);
}

/* Parts used by a page, each once. Uses stand right below a section. */
static void check_uses(struct checker *c, const struct guide_entry *page)
{
	const char *used[GUIDE_USES_MAX];
	size_t n = 0;

	c->file = page->file;
	for (const xmlNode *s = node_first(page->node); s; s = node_next(s))
		for (const xmlNode *u = node_first(s); u; u = node_next(u)) {
			const char *part = node_attribute(u, "part");

			if (!node_is(u, "use"))
				continue;
			if (n == GUIDE_USES_MAX) {
				fault(c, u, NULL, "at most 128 parts in a page");
				return;
			}
			for (size_t i = 0; i < n; i++)
				if (strcmp(used[i], part) == 0)
					fault(c, u, part, "each part once in a page");
			if (strcmp(part, GUIDE_OPENING_PART) == 0)
				fault(c, u, part, "not this part: it opens every page by itself");
			used[n++] = part;
		}
}

/* ---- the key ---- */

static void check_answer(struct checker *c, const xmlNode *question, const xmlNode *answer)
{
	const char *to = node_attribute(answer, "to"), *keys = node_attribute(answer, "covering");
	const xmlNode *later = node_next(question);

	while (later && strcmp(node_attribute(later, "id"), to) != 0)
		later = node_next(later);
	if (*to != '\0' && !later)
		fault(c, answer, to, "the id of a later question, so that the key comes to an end");
	while (*keys != '\0') {
		char key[64];
		const size_t n = strcspn(keys, " ");

		snprintf(key, sizeof key, "%.*s", (int)(n < 60 ? n : 60), keys);
		if (!guide_table_find(&c->lib->page, key))
			fault(c, answer, key, "the key of a covering in the library");
		keys += n;
		keys += strspn(keys, " ");
	}
}

static void check_key(struct checker *c, const xmlNode *key)
{
	for (const xmlNode *q = node_first(key); q; q = node_next(q)) {
		for (const xmlNode *p = node_first(key); p != q; p = node_next(p))
			if (strcmp(node_attribute(p, "id"), node_attribute(q, "id")) == 0)
				fault(c, q, node_attribute(q, "id"), "an id that is used once");
		for (const xmlNode *a = node_first(q); a; a = node_next(a))
			if (node_is(a, "answer"))
				check_answer(c, q, a);
	}
}

/* At most one. */
static void check_keys(struct checker *c)
{
	int keys = 0;

	for (size_t i = 0; i < c->lib->docs; i++) {
		const xmlNode *root = xmlDocGetRootElement(c->lib->doc[i].doc);

		if (!node_is(root, "key"))
			continue;
		c->file = &c->lib->doc[i];
		if (++keys > 1)
			fault(c, root, NULL, "one key in a library");
		check_key(c, root);
	}
}

bool guide_check(struct guide_library *lib, struct problem_list *problems)
{
	struct checker c = {lib, NULL, problems, true};

	gather(&c);
	if (!c.ok)
		return false;
	sort_table(&c, &lib->page);
	sort_table(&c, &lib->part);
	sort_table(&c, &lib->source);
	for (size_t i = 0; i < lib->docs; i++) {
		const xmlNode *root = xmlDocGetRootElement(lib->doc[i].doc);

		c.file = &lib->doc[i];
		if (lib->one_page && node_is(root, "common"))
			check_used(&c, root);
		else if (strcmp(c.file->name, GUIDE_SCHEMA) != 0)
			check_tree(&c, root);
	}
	for (size_t i = 0; i < lib->page.count; i++)
		check_uses(&c, &lib->page.entry[i]);
	check_keys(&c);
	if (!guide_table_find(&lib->part, GUIDE_OPENING_PART)) {
		problem_add(problems, PROBLEM_LIBRARY, NULL, 0, "part", NULL,
			    "a common part with the id defers, which opens every page");
		c.ok = false;
	}
	return c.ok;
}
