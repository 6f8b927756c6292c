/* SPDX-License-Identifier: MIT */
/* What one page needs of the files that pages share. */
#include "guide/library.h"

#include <string.h>

size_t guide_uses(const xmlNode *page, const char *part[GUIDE_USES_MAX])
{
	size_t n = 0;

	part[n++] = GUIDE_OPENING_PART;
	for (const xmlNode *s = node_first(page); s; s = node_next(s))
		for (const xmlNode *u = node_first(s); u && n < GUIDE_USES_MAX; u = node_next(u))
			if (node_is(u, "use"))
				part[n++] = node_attribute(u, "part");
	return n;
}

bool guide_used(const xmlNode *node, const char *const part[], size_t parts)
{
	const char *id = node_attribute(node, "id");

	for (size_t i = 0; i < parts; i++)
		if (strcmp(part[i], id) == 0)
			return true;
	return false;
}

/* The value of the attribute that starts behind its name, with its quotes; NULL if it is none. */
static const char *quoted(const char *s, size_t *length)
{
	s += strspn(s, " \t\r\n");
	if (*s++ != '=')
		return NULL;
	s += strspn(s, " \t\r\n");
	if (*s != '"' && *s != '\'')
		return NULL;
	*length = strcspn(s + 1, *s == '"' ? "\"" : "'");
	return s + 1;
}

/* From its bytes alone: an id that is written with character references may be any. */
bool guide_serves(const struct guide_doc *doc, const char *const part[], size_t parts)
{
	if (strstr(doc->data, "&#"))
		return true;
	for (const char *s = strstr(doc->data, "id"); s; s = strstr(s + 2, "id")) {
		size_t n = 0;
		const char *id = quoted(s + 2, &n);

		for (size_t i = 0; id && i < parts; i++)
			if (strncmp(part[i], id, n) == 0 && part[i][n] == '\0')
				return true;
	}
	return false;
}
