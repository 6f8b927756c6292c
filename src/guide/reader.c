/* SPDX-License-Identifier: MIT */
/* Bytes to trees. A library may come from anybody: files are capped in size and depth, a document
   type (and with it every entity) stops the parser where it stands, nothing is fetched, and a
   schema that pulls in other files is refused. */
#define _POSIX_C_SOURCE 200809L

#include "guide/library.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <libxml/SAX2.h>
#include <libxml/parser.h>
#include <libxml/relaxng.h>

/* Faults told per file; the first is the cause, the rest mostly follow from it. */
#define FAULTS_TOLD 3

/* ---- files ---- */

static bool read_all(int fd, char *data, size_t size)
{
	size_t n = 0;

	while (n < size) {
		const ssize_t got = read(fd, data + n, size - n);

		if (got < 0 && errno == EINTR)
			continue;
		if (got <= 0)
			return false;
		n += (size_t)got;
	}
	return true;
}

static bool read_open(int fd, const char *path, struct guide_doc *doc,
		      struct problem_list *problems)
{
	struct stat st;

	if (fstat(fd, &st) != 0 || !S_ISREG(st.st_mode)) {
		problem_add(problems, PROBLEM_NOT_A_FILE, path, 0, NULL, NULL, NULL);
		return false;
	}
	if (st.st_size > (off_t)GUIDE_FILE_MAX) {
		problem_add(problems, PROBLEM_TOO_LARGE, path, 0, NULL, NULL, "at most 1 MiB");
		return false;
	}
	doc->size = (size_t)st.st_size;
	doc->data = guide_take(doc->size + 1);
	if (!doc->data) {
		problem_add(problems, PROBLEM_NO_MEMORY, path, 0, NULL, NULL, NULL);
		return false;
	}
	doc->data[doc->size] = '\0';
	if (!read_all(fd, doc->data, doc->size)) {
		problem_add(problems, PROBLEM_CANNOT_READ, path, 0, NULL, NULL, NULL);
		return false;
	}
	return true;
}

bool guide_read_file(int dirfd, const char *name, struct guide_doc *doc,
		     struct problem_list *problems)
{
	/* not blocking: a named pipe must not hold us up; not through links: a library from elsewhere
	   must not show what lies outside of it */
	const int fd = openat(dirfd, name, O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOFOLLOW);
	bool ok;

	if (fd < 0 && errno == ELOOP) {
		problem_add(problems, PROBLEM_NOT_A_FILE, name, 0, NULL, "a link", "the file itself");
		return false;
	}
	if (fd < 0) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, name, 0, NULL, strerror(errno), NULL);
		return false;
	}
	ok = read_open(fd, name, doc, problems);
	close(fd);
	return ok;
}

/* ---- parsing ---- */

struct parse_state {
	const char *name;
	struct problem_list *problems;
	bool refused; /* stopped by us */
	int faults;
};

static void stop(xmlParserCtxt *ctxt, enum problem_code code, const char *accepted)
{
	struct parse_state *state = ctxt->_private;

	if (!state->refused)
		problem_add(state->problems, code, state->name, xmlSAX2GetLineNumber(ctxt), NULL,
			    NULL, accepted);
	state->refused = true;
	xmlStopParser(ctxt);
}

static void on_doctype(void *context, const xmlChar *name, const xmlChar *external,
		       const xmlChar *system)
{
	(void)name;
	(void)external;
	(void)system;
	stop(context, PROBLEM_ENTITY, "a document without <!DOCTYPE>");
}

static void on_start(void *context, const xmlChar *name, const xmlChar *prefix, const xmlChar *uri,
		     int namespaces, const xmlChar **namespace, int attributes, int defaulted,
		     const xmlChar **attribute)
{
	xmlParserCtxt *ctxt = context;

	if (ctxt->nodeNr >= GUIDE_DEPTH_MAX) {
		stop(ctxt, PROBLEM_TOO_DEEP, NULL);
		return;
	}
	xmlSAX2StartElementNs(context, name, prefix, uri, namespaces, namespace, attributes,
			      defaulted, attribute);
}

/* Message of libxml2 without its line end. */
static void tell(struct problem_list *problems, enum problem_code code, const char *name, int line,
		 const char *element, const char *message)
{
	char text[PROBLEM_TEXT_MAX];
	size_t n = message ? strcspn(message, "\r\n") : 0;

	if (n >= sizeof text)
		n = sizeof text - 1;
	if (n > 0)
		memcpy(text, message, n);
	text[n] = '\0';
	problem_add(problems, code, name, line, element, text, NULL);
}

static void on_parse_fault(void *context, xmlError *error)
{
	xmlParserCtxt *ctxt = context;
	struct parse_state *state = ctxt->_private;

	if (state->refused || error->level < XML_ERR_ERROR || state->faults++ >= FAULTS_TOLD)
		return;
	tell(state->problems,
	     error->code == XML_ERR_NO_MEMORY ? PROBLEM_NO_MEMORY : PROBLEM_NOT_XML, state->name,
	     error->line, NULL, error->message);
}

bool guide_parse(struct guide_doc *doc, struct problem_list *problems)
{
	struct parse_state state = {doc->name, problems, false, 0};
	xmlParserCtxt *ctxt = xmlNewParserCtxt();

	if (!ctxt) {
		problem_add(problems, PROBLEM_NO_MEMORY, doc->name, 0, NULL, NULL, NULL);
		return false;
	}
	ctxt->_private = &state;
	ctxt->sax->internalSubset = on_doctype;
	ctxt->sax->startElementNs = on_start;
	ctxt->sax->serror = on_parse_fault;
	/* predefined entities become text; others cannot exist without a document type */
	doc->doc = xmlCtxtReadMemory(ctxt, doc->data, (int)doc->size, doc->name, NULL,
				     XML_PARSE_NONET | XML_PARSE_NOENT | XML_PARSE_NOCDATA |
					     XML_PARSE_NOERROR | XML_PARSE_NOWARNING);
	if (doc->doc && (state.refused || state.faults > 0 || !ctxt->wellFormed)) {
		xmlFreeDoc(doc->doc);
		doc->doc = NULL;
	}
	xmlFreeParserCtxt(ctxt);
	if (!doc->doc && !state.refused && state.faults == 0)
		problem_add(problems, PROBLEM_NOT_XML, doc->name, 0, NULL,
			    doc->size == 0 ? "an empty file" : NULL, NULL);
	return doc->doc != NULL;
}

/* ---- validation ---- */

static void on_schema_fault(void *context, xmlError *error)
{
	struct parse_state *state = context;
	const xmlNode *node = error->node;
	int line = error->line;

	if (state->faults++ >= FAULTS_TOLD)
		return;
	if (line <= 0 && node)
		line = node_line(node);
	tell(state->problems, PROBLEM_LIBRARY, state->name, line,
	     node && node->type == XML_ELEMENT_NODE ? (const char *)node->name : NULL,
	     error->message);
}

/* A schema that would read other files. */
static const xmlNode *find_outside(const xmlNode *node)
{
	const xmlNode *found = NULL;

	for (const xmlNode *c = node_first(node); c && !found; c = node_next(c))
		found = node_is(c, "include") || node_is(c, "externalRef") ? c : find_outside(c);
	return found;
}

static xmlRelaxNG *compile_schema(const struct guide_doc *schema, struct problem_list *problems)
{
	struct parse_state state = {schema->name, problems, false, 0};
	const xmlNode *outside = find_outside(xmlDocGetRootElement(schema->doc));
	xmlRelaxNGParserCtxt *parser;
	xmlRelaxNG *compiled;

	if (outside) {
		problem_add(problems, PROBLEM_LIBRARY, schema->name, node_line(outside),
			    (const char *)outside->name, NULL, "a schema in one file");
		return NULL;
	}
	parser = xmlRelaxNGNewDocParserCtxt(schema->doc);
	if (!parser) {
		problem_add(problems, PROBLEM_NO_MEMORY, schema->name, 0, NULL, NULL, NULL);
		return NULL;
	}
	xmlRelaxNGSetParserStructuredErrors(parser, on_schema_fault, &state);
	compiled = xmlRelaxNGParse(parser);
	xmlRelaxNGFreeParserCtxt(parser);
	if (!compiled && state.faults == 0)
		problem_add(problems, PROBLEM_LIBRARY, schema->name, 0, NULL, NULL,
			    "a RELAX NG schema");
	return compiled;
}

static bool validate_one(xmlRelaxNG *schema, const struct guide_doc *doc,
			 struct problem_list *problems)
{
	struct parse_state state = {doc->name, problems, false, 0};
	xmlRelaxNGValidCtxt *valid = xmlRelaxNGNewValidCtxt(schema);
	int result;

	if (!valid) {
		problem_add(problems, PROBLEM_NO_MEMORY, doc->name, 0, NULL, NULL, NULL);
		return false;
	}
	xmlRelaxNGSetValidStructuredErrors(valid, on_schema_fault, &state);
	result = xmlRelaxNGValidateDoc(valid, doc->doc);
	xmlRelaxNGFreeValidCtxt(valid);
	if (result != 0 && state.faults == 0)
		problem_add(problems, PROBLEM_LIBRARY, doc->name, 0, NULL, NULL, NULL);
	return result == 0;
}

bool guide_validate(const struct guide_library *lib, struct problem_list *problems)
{
	const struct guide_doc *schema = NULL;
	xmlRelaxNG *compiled;
	bool ok = true;

	for (size_t i = 0; i < lib->docs; i++)
		if (strcmp(lib->doc[i].name, GUIDE_SCHEMA) == 0)
			schema = &lib->doc[i];
	if (!schema) {
		problem_add(problems, PROBLEM_CANNOT_OPEN, GUIDE_SCHEMA, 0, NULL, NULL,
			    "the schema of the library beside its pages; files ending in .gz are unpacked first "
			    "(gunzip *.gz)");
		return false;
	}
	compiled = compile_schema(schema, problems);
	if (!compiled)
		return false;
	for (size_t i = 0; i < lib->docs; i++)
		if (&lib->doc[i] != schema)
			ok = validate_one(compiled, &lib->doc[i], problems) && ok;
	xmlRelaxNGFree(compiled);
	return ok;
}
