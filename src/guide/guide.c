/* SPDX-License-Identifier: MIT */
/* Opens a library from a directory or from memory, and answers what is in it. */
#define _POSIX_C_SOURCE 200809L

#include "guide/guide.h"

#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <libxml/parser.h>

#include "guide/library.h"

/* All files together. */
#define LIBRARY_MAX (16u * 1024u * 1024u)
#define NAME_MAX_HERE 60

/* ---- gathering files ---- */

static bool ends_with(const char *name, const char *tail)
{
	const size_t n = strlen(name), t = strlen(tail);

	return n > t && strcmp(name + n - t, tail) == 0;
}

static bool is_library_name(const char *name)
{
	return ends_with(name, ".xml") || ends_with(name, ".rng");
}

/* Small letters, digits, hyphens; so an exported name can never leave its directory. */
static bool is_plain_name(const char *name)
{
	const size_t stem = strlen(name) > 4 ? strlen(name) - 4 : 0;

	return is_library_name(name) && stem > 0 && stem <= NAME_MAX_HERE &&
	       strspn(name, "abcdefghijklmnopqrstuvwxyz0123456789-") == stem;
}

/* A file of parts that pages share. */
static bool is_shared_name(const char *name)
{
	return strncmp(name, "common", 6) == 0;
}

static void doc_clear(struct guide_doc *doc)
{
	if (doc->doc)
		xmlFreeDoc(doc->doc);
	guide_give(doc->data);
	guide_give(doc->name);
	*doc = (struct guide_doc){0};
}

static struct guide_library *library_new(struct problem_list *problems)
{
	struct guide_library *lib;

	xmlInitParser();
	lib = guide_take(sizeof *lib);
	if (lib) {
		*lib = (struct guide_library){0};
		lib->doc = guide_take(GUIDE_FILES_MAX * sizeof lib->doc[0]);
	}
	if (!lib || !lib->doc) {
		problem_add(problems, PROBLEM_NO_MEMORY, NULL, 0, NULL, NULL, NULL);
		guide_close(lib);
		return NULL;
	}
	return lib;
}

/* Next free doc with its name set; NULL if the name or the number of files is not acceptable. */
static struct guide_doc *library_add(struct guide_library *lib, const char *name,
				     struct problem_list *problems)
{
	struct guide_doc *doc = &lib->doc[lib->docs];

	if (!is_plain_name(name)) {
		problem_add(problems, PROBLEM_LIBRARY, name, 0, NULL, NULL,
			    "a name of small letters, digits and hyphens, with .xml");
		return NULL;
	}
	if (lib->docs == GUIDE_FILES_MAX) {
		problem_add(problems, PROBLEM_TOO_LARGE, name, 0, NULL, NULL, "at most 256 files");
		return NULL;
	}
	*doc = (struct guide_doc){.name = guide_take(strlen(name) + 1)};
	if (!doc->name) {
		problem_add(problems, PROBLEM_NO_MEMORY, name, 0, NULL, NULL, NULL);
		return NULL;
	}
	strcpy(doc->name, name);
	lib->docs++;
	return doc;
}

static int by_name(const void *a, const void *b)
{
	const struct guide_doc *x = a, *y = b;

	return strcmp(x->name, y->name);
}

/* What libxml2 tells outside of a parser: above all that it had no memory for a node, after which
   it goes on without that node. A page with a hole in it must not pass for a page. Also keeps
   libxml2 from writing to standard error. */
static void on_stray_fault(void *context, xmlError *error)
{
	bool *lost = context;

	if (error->level >= XML_ERR_ERROR)
		*lost = true;
}

/* Parses the page of a key; lets go of the shared files that hold nothing it uses. */
static bool parse_page(struct guide_library *lib, const char *key, struct problem_list *problems)
{
	const char *part[GUIDE_USES_MAX];
	const size_t length = strlen(key);
	size_t parts, kept = 0;
	struct guide_doc *page = NULL;

	for (size_t i = 0; i < lib->docs; i++)
		if (strncmp(lib->doc[i].name, key, length) == 0 && strcmp(lib->doc[i].name + length, ".xml") == 0)
			page = &lib->doc[i];
	if (!page)
		return true;
	if (!guide_parse(page, problems))
		return false;
	parts = guide_uses(xmlDocGetRootElement(page->doc), part);
	for (size_t i = 0; i < lib->docs; i++)
		if (is_shared_name(lib->doc[i].name) && !guide_serves(&lib->doc[i], part, parts))
			doc_clear(&lib->doc[i]);
		else
			lib->doc[kept++] = lib->doc[i];
	lib->docs = kept;
	return true;
}

/* Everything that libxml2 does for us. False if there are no whole trees; *valid: they follow the schema. */
static bool library_parse(struct guide_library *lib, const char *key, bool *valid, struct problem_list *problems)
{
	const xmlStructuredErrorFunc before = xmlStructuredError;
	void *const before_context = xmlStructuredErrorContext;
	bool ok = true, lost = false;

	xmlSetStructuredErrorFunc(&lost, on_stray_fault);
	lib->one_page = key != NULL;
	const bool go_on = !key || parse_page(lib, key, problems);

	ok = go_on;
	for (size_t i = 0; i < lib->docs && go_on; i++)
		if (!lib->doc[i].doc)
			ok = guide_parse(&lib->doc[i], problems) && ok;
	*valid = ok && (key || guide_validate(lib, problems));
	xmlSetStructuredErrorFunc(before_context, before);
	if (lost && !problem_any(problems))
		problem_add(problems, PROBLEM_NO_MEMORY, NULL, 0, NULL, NULL, NULL);
	*valid = *valid && !lost;
	return ok && !lost;
}

static bool has_schema(const struct guide_library *lib)
{
	for (size_t i = 0; i < lib->docs; i++)
		if (strcmp(lib->doc[i].name, GUIDE_SCHEMA) == 0)
			return true;
	return false;
}

/* All that follows once every file's bytes are there: with a key of its page alone, which no schema is held
   against. Takes lib; NULL if it is no library. */
static struct guide_library *library_finish(struct guide_library *lib, const char *key,
					    struct problem_list *problems)
{
	size_t total = 0;
	bool ok = true, valid = false;

	qsort(lib->doc, lib->docs, sizeof lib->doc[0], by_name);
	for (size_t i = 0; i < lib->docs; i++)
		total += lib->doc[i].size;
	if (total > LIBRARY_MAX) {
		problem_add(problems, PROBLEM_TOO_LARGE, NULL, 0, NULL, NULL,
			    "at most 16 MiB in all");
		ok = false;
	}
	for (size_t i = 1; i < lib->docs; i++)
		if (strcmp(lib->doc[i].name, lib->doc[i - 1].name) == 0) {
			problem_add(problems, PROBLEM_TWICE, lib->doc[i].name, 0, NULL, NULL, NULL);
			ok = false;
		}
	/* what the schema cannot say is looked at in any case: whoever mends a library wants all faults at once */
	if (ok && library_parse(lib, key, &valid, problems) && (valid || has_schema(lib)) &&
	    guide_check(lib, problems) && valid)
		return lib;
	guide_close(lib);
	return NULL;
}

struct guide_library *guide_open_memory(const struct guide_file *file, size_t files,
					struct problem_list *problems)
{
	struct guide_library *lib = library_new(problems);
	bool ok = lib != NULL;

	for (size_t i = 0; i < files && ok; i++) {
		struct guide_doc *doc = library_add(lib, file[i].name, problems);

		ok = doc != NULL;
		if (ok && file[i].size > GUIDE_FILE_MAX) {
			problem_add(problems, PROBLEM_TOO_LARGE, file[i].name, 0, NULL, NULL,
				    "at most 1 MiB");
			ok = false;
		} else if (ok) {
			doc->size = file[i].size;
			doc->data = guide_take(doc->size + 1);
			ok = doc->data != NULL;
			if (!ok)
				problem_add(problems, PROBLEM_NO_MEMORY, file[i].name, 0, NULL,
					    NULL, NULL);
			else
				memcpy(doc->data, file[i].data, doc->size);
		}
	}
	if (ok)
		return library_finish(lib, NULL, problems);
	guide_close(lib);
	return NULL;
}

/* Whether a file is wanted: all without a key, else the page of that key and what pages share. */
static bool wanted(const char *name, const char *key)
{
	const size_t length = key ? strlen(key) : 0;

	return !key || is_shared_name(name) || strcmp(name, "sources.xml") == 0 ||
	       (strncmp(name, key, length) == 0 && strcmp(name + length, ".xml") == 0);
}

static bool read_directory(struct guide_library *lib, DIR *dir, const char *key, struct problem_list *problems)
{
	bool ok = true;

	for (const struct dirent *e; ok && (e = readdir(dir)) != NULL;) {
		struct guide_doc *doc;

		if (e->d_name[0] == '.' || !is_library_name(e->d_name) || !wanted(e->d_name, key))
			continue;
		doc = library_add(lib, e->d_name, problems);
		ok = doc && guide_read_file(dirfd(dir), e->d_name, doc, problems);
	}
	return ok;
}

static struct guide_library *open_directory(const char *dir, const char *key, struct problem_list *problems)
{
	struct guide_library *lib;
	DIR *open = opendir(dir);
	bool ok;

	if (!open) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, dir, 0, NULL, strerror(errno),
			    "the directory of the covering library");
		return NULL;
	}
	lib = library_new(problems);
	ok = lib && read_directory(lib, open, key, problems);
	closedir(open);
	if (ok)
		return library_finish(lib, key, problems);
	guide_close(lib);
	return NULL;
}

struct guide_library *guide_open(const char *dir, struct problem_list *problems)
{
	return open_directory(dir, NULL, problems);
}

struct guide_library *guide_open_page(const char *dir, const char *key, struct problem_list *problems)
{
	return open_directory(dir, key, problems);
}

void guide_close(struct guide_library *lib)
{
	struct guide_table *table[3];

	if (!lib)
		return;
	for (size_t i = 0; i < lib->docs; i++)
		doc_clear(&lib->doc[i]);
	table[0] = &lib->page;
	table[1] = &lib->part;
	table[2] = &lib->source;
	for (size_t i = 0; i < 3; i++)
		guide_give(table[i]->entry);
	guide_give(lib->doc);
	guide_give(lib);
}

/* ---- what is in it ---- */

size_t guide_page_count(const struct guide_library *lib)
{
	return lib->page.count;
}

static const char *child_text(const xmlNode *node)
{
	return node && node->children && node->children->content
		       ? (const char *)node->children->content
		       : "";
}

struct guide_page guide_page_at(const struct guide_library *lib, size_t index)
{
	const struct guide_entry *e = &lib->page.entry[index];
	const xmlNode *limits = node_child(e->node, "limits");
	const xmlNode *slippery = limits ? node_child(limits, "slippery") : NULL;
	const char *snow = slippery ? node_attribute(slippery, "snow") : "";
	const char *use = node_attribute(e->node, "guide");
	struct guide_page page = {.key = e->id, .use = GUIDE_USE_REFUSED};

	page.name = child_text(node_child(node_child(e->node, "names"), "plain"));
	if (strcmp(use, "yes") == 0)
		page.use = GUIDE_USE_YES;
	else if (strcmp(use, "with-roofer") == 0)
		page.use = GUIDE_USE_WITH_ROOFER;
	if (strcmp(snow, "yes") == 0)
		page.slippery = GUIDE_SLIPPERY_YES;
	else if (strcmp(snow, "no") == 0)
		page.slippery = GUIDE_SLIPPERY_NO;
	return page;
}

bool guide_page_find(const struct guide_library *lib, const char *key, struct guide_page *page)
{
	const struct guide_entry *e = guide_table_find(&lib->page, key);

	if (e && page)
		*page = guide_page_at(lib, (size_t)(e - lib->page.entry));
	return e != NULL;
}

size_t guide_source_count(const struct guide_library *lib)
{
	return lib->source.count;
}

struct guide_source guide_source_at(const struct guide_library *lib, size_t index)
{
	const struct guide_entry *e = &lib->source.entry[index];

	return (struct guide_source){e->id, child_text(node_child(e->node, "title")),
				     child_text(node_child(e->node, "seen"))};
}
