/* SPDX-License-Identifier: MIT */
/* The key to an unknown roof: questions and answers in the order of the file, and what a page says
 * of its own look. */
#include "guide/guide.h"

#include <string.h>

#include "guide/claim.h"

static const xmlNode *key_of(const struct guide_library *lib)
{
	for (size_t i = 0; i < lib->docs; i++) {
		const xmlNode *root = xmlDocGetRootElement(lib->doc[i].doc);

		if (node_is(root, "key"))
			return root;
	}
	return NULL;
}

static int number_of(const xmlNode *key, const char *id)
{
	int number = 0;

	for (const xmlNode *q = node_first(key); q; q = node_next(q)) {
		number++;
		if (strcmp(node_attribute(q, "id"), id) == 0)
			return number;
	}
	return 0;
}

static void hand_out_answer(const xmlNode *key, const xmlNode *node,
			    const struct guide_request *request, const struct guide_key_sink *sink)
{
	char text[GUIDE_TEXT_MAX];
	struct guide_answer a = {.coverings = node_attribute(node, "covering"),
				 .next = number_of(key, node_attribute(node, "to")),
				 .status = claim_status(node),
				 .text = text};

	if (claim_text(node, request, text, sizeof text))
		sink->answer(sink->context, &a);
}

bool guide_key(const struct guide_library *lib, enum unit_system units,
	       const struct guide_key_sink *sink)
{
	const struct guide_request request = {.units = units};
	const xmlNode *key = key_of(lib);
	int number = 0;

	for (const xmlNode *q = node_first(key); q; q = node_next(q)) {
		char text[GUIDE_TEXT_MAX];
		const xmlNode *ask = node_child(q, "ask");
		const struct guide_question question = {.number = ++number,
							.id = node_attribute(q, "id"),
							.status = claim_status(ask),
							.text = text};

		if (!claim_text(ask, &request, text, sizeof text))
			continue;
		sink->question(sink->context, &question);
		for (const xmlNode *a = node_first(q); a; a = node_next(a))
			if (node_is(a, "answer"))
				hand_out_answer(key, a, &request, sink);
	}
	return key != NULL;
}

bool guide_recognise(const struct guide_library *lib, const char *covering, const char *element,
		     enum unit_system units, char *buf, size_t size)
{
	const struct guide_entry *e = guide_table_find(&lib->page, covering);
	const struct guide_request request = {.units = units};
	const xmlNode *claim = node_child(e ? node_child(e->node, "recognise") : NULL, element);

	buf[0] = '\0';
	return claim && claim_text(claim, &request, buf, size);
}
