/* SPDX-License-Identifier: MIT */
/* Reads the XML of a job with libxml2's event interface. No document type is allowed, so no
   entity is ever declared, and no other file or address is opened. Each value is told with the
   line it stands on: the parser counts lines where it stands, at the end of a tag, and the line
   breaks between there and the value are counted back. */
#include <libxml/parser.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include "job/draft.h"
#include "job/job_read.h"

/* The parser compares each attribute of a tag with each other one: a megabyte of attributes in
   one tag would keep it busy for most of a minute. The longest tag of a job is some 2 KiB. */
#define TAG_MAX 32768

struct reader {
	struct draft *draft;
	xmlParserCtxtPtr parser;
	int depth;
	enum element open[JOB_DEPTH_MAX + 1]; /* by depth; ELEMENT_COUNT: not known */
	bool told_text;                       /* text was refused in the element that is open */
	bool failed;     /* the document cannot be read on; why has been told */
	bool told_fault; /* the parser has named what is wrong with the XML */
};

/* Line of a byte behind which the parser stands, if it still is in the parser's own buffer; else
   the parser's line. */
static int line_of(const struct reader *r, const xmlChar *at)
{
	const xmlParserInputPtr input = r->parser->input;
	int line;

	if (!input)
		return 0;
	line = input->line;
	if ((uintptr_t)at < (uintptr_t)input->base || (uintptr_t)at > (uintptr_t)input->cur)
		return line;
	for (const xmlChar *p = at; p < input->cur; p++)
		line -= *p == '\n';
	return line;
}

/* Line on which the tag starts that the parser has just read: `<` stands nowhere inside a tag. */
static int line_of_tag(const struct reader *r)
{
	const xmlParserInputPtr input = r->parser->input;
	const xmlChar *p;

	if (!input)
		return 0;
	for (p = input->cur; p > input->base && *p != '<';)
		p--;
	return *p == '<' ? line_of(r, p) : input->line;
}

static void tell(struct reader *r, enum problem_code code, int line, const char *field,
		 const char *given, const char *accepted)
{
	problem_add(r->draft->problems, code, r->draft->source.name, line, field, given, accepted);
}

static void stop(struct reader *r)
{
	r->failed = true;
	xmlStopParser(r->parser);
}

/* The first fault the parser finds in the XML itself; what follows from it is noise. */
#if LIBXML_VERSION >= 21200
static void on_error(void *context, const xmlError *error)
#else
static void on_error(void *context, xmlErrorPtr error)
#endif
{
	struct reader *const r = context;
	char message[PROBLEM_TEXT_MAX];
	size_t n;

	if (r->failed || error->level < XML_ERR_ERROR)
		return;
	r->told_fault = true;
	if (error->code == XML_ERR_NO_MEMORY) {
		tell(r, PROBLEM_NO_MEMORY, 0, NULL, NULL, NULL);
		stop(r);
		return;
	}
	if (error->code == XML_ERR_ATTRIBUTE_REDEFINED) {
		tell(r, PROBLEM_TWICE, line_of_tag(r), error->str1, NULL,
		     "each attribute once in its element");
		return;
	}
	snprintf(message, sizeof message, "%s", error->message ? error->message : "");
	n = strlen(message);
	while (n > 0 && message[n - 1] == '\n')
		message[--n] = '\0';
	if (error->code == XML_ERR_DOCUMENT_END &&
	    (r->depth > 0 || r->draft->source.row_line[ELEMENT_JOB][0] == 0))
		tell(r, PROBLEM_NOT_XML, error->line, NULL, "a file that breaks off",
		     "the whole file, down to </job>");
	else
		tell(r, PROBLEM_NOT_XML, error->line, NULL, message,
		     "each tag closed, each value in quotes, & written as &amp;");
	stop(r);
}

static void on_document_type(void *context, const xmlChar *name, const xmlChar *external,
			     const xmlChar *system)
{
	struct reader *const r = context;

	(void)external;
	(void)system;
	if (r->failed)
		return;
	tell(r, PROBLEM_ENTITY, r->parser->input ? r->parser->input->line : 0, NULL,
	     (const char *)name, "a job file without a DOCTYPE");
	stop(r);
}

/* Copies what fits of a text. */
static void copy_text(char *buf, size_t size, const xmlChar *from, const xmlChar *to)
{
	const size_t n = (size_t)(to - from);
	const size_t take = n < size ? n : size - 1;

	memcpy(buf, from, take);
	buf[take] = '\0';
}

/* attributes: five pointers each: name, prefix, address of the namespace, start and end of the
   value. */
static void read_attributes(struct reader *r, enum element e, int row, int count,
			    const xmlChar **attributes)
{
	/* longer than any value of a job, so one that is cut is refused as too long */
	char value[512], path[PROBLEM_TEXT_MAX], accepted[PROBLEM_TEXT_MAX];

	for (int i = 0; i < count; i++, attributes += 5) {
		const char *const name = (const char *)attributes[0];
		const int line = line_of(r, attributes[3]);
		const struct field *const f = attributes[1] ? NULL : element_field(e, name);

		if (!f) {
			snprintf(path, sizeof path, "%s.%s%s%s", element_table[e].name,
				 attributes[1] ? (const char *)attributes[1] : "",
				 attributes[1] ? ":" : "", name);
			tell(r, PROBLEM_UNKNOWN_FIELD, line, path, NULL,
			     suggest_attribute(accepted, sizeof accepted, e, name));
		} else if (row >= 0) {
			copy_text(value, sizeof value, attributes[3], attributes[4]);
			draft_set(r->draft, f, row, value, ORIGIN_FILE, line);
		}
	}
}

/* Row of an element that starts here: 0 for a single one that is new. -1 if it is refused. */
static int start_row(struct reader *r, enum element e, int line)
{
	int *const seen = &r->draft->source.row_line[e][0];
	char accepted[48];

	if (element_table[e].max > 1)
		return draft_add_row(r->draft, e, line);
	if (*seen != 0) {
		snprintf(accepted, sizeof accepted, "one, and it stands on line %d", *seen);
		tell(r, PROBLEM_TWICE, line, element_table[e].name, NULL, accepted);
		return -1;
	}
	*seen = line;
	return 0;
}

static void on_start(void *context, const xmlChar *name, const xmlChar *prefix,
		     const xmlChar *address, int namespaces, const xmlChar **namespace, int count,
		     int defaulted, const xmlChar **attributes)
{
	struct reader *const r = context;
	const enum element parent = r->depth > 0 ? r->open[r->depth] : ELEMENT_COUNT;
	const enum element found = address ? ELEMENT_COUNT : element_find((const char *)name);
	const bool fits =
		found != ELEMENT_COUNT &&
		(r->depth == 0 ? found == ELEMENT_JOB
			       : found != ELEMENT_JOB && element_table[found].parent == parent);
	char accepted[PROBLEM_TEXT_MAX];
	int line;

	(void)prefix;
	(void)namespaces;
	(void)namespace;
	(void)defaulted;
	/* a tag that breaks off is announced before its fault is */
	if (r->failed || !r->parser->input || !strchr("/>", *r->parser->input->cur) ||
	    *r->parser->input->cur == '\0')
		return;
	if (r->draft->problems->dropped > 0) {
		/* more problems than can be told: what follows adds none */
		stop(r);
		return;
	}
	line = line_of_tag(r);
	if (r->depth == JOB_DEPTH_MAX) {
		tell(r, PROBLEM_TOO_DEEP, line, (const char *)name, NULL,
		     "elements at most 3 deep: job, framing, rafter");
		stop(r);
		return;
	}
	r->open[++r->depth] = fits ? found : ELEMENT_COUNT;
	r->told_text = false;
	if (fits) {
		read_attributes(r, found, start_row(r, found, line), count, attributes);
	} else if (r->depth == 1) {
		tell(r, PROBLEM_UNKNOWN_FIELD, line, (const char *)name, NULL,
		     "job as the outermost element");
		stop(r);
	} else if (parent != ELEMENT_COUNT) {
		/* inside an unknown element everything is unknown: told once */
		tell(r, PROBLEM_UNKNOWN_FIELD, line, (const char *)name, NULL,
		     suggest_element(accepted, sizeof accepted, parent, (const char *)name));
	}
}

static void on_end(void *context, const xmlChar *name, const xmlChar *prefix,
		   const xmlChar *address)
{
	struct reader *const r = context;

	(void)name;
	(void)prefix;
	(void)address;
	if (r->failed)
		return;
	if (r->depth > 0)
		r->depth--;
	r->told_text = false;
}

static bool is_blank(xmlChar c)
{
	return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

static void on_text(void *context, const xmlChar *text, int length)
{
	struct reader *const r = context;
	const enum element e = r->depth > 0 ? r->open[r->depth] : ELEMENT_COUNT;
	char given[40];
	int i = 0, end = length;

	if (r->failed)
		return;
	while (i < end && is_blank(text[i]))
		i++;
	while (end > i && is_blank(text[end - 1]))
		end--;
	if (i == end || r->told_text || e == ELEMENT_COUNT)
		return;
	copy_text(given, sizeof given, text + i, text + end);
	tell(r, PROBLEM_UNKNOWN_FIELD, line_of(r, text + i), element_table[e].name, given,
	     "values as attributes, no text between tags");
	r->told_text = true;
}

/* False, told, if the next `<` is too far away anywhere. */
static bool tags_are_short(struct reader *r, const char *bytes, size_t size)
{
	size_t start = 0;
	int line = 1;

	for (size_t i = 0; i < size; i++) {
		line += bytes[i] == '\n';
		if (bytes[i] == '<')
			start = i;
		if (i - start > TAG_MAX) {
			tell(r, PROBLEM_TOO_LARGE, line, NULL, "a tag, text or comment",
			     "at most 32 KiB of it");
			return false;
		}
	}
	return true;
}

void draft_read_xml(struct draft *d, const char *bytes, size_t size)
{
	struct reader r = {.draft = d};
	xmlSAXHandler events = {
		.initialized = XML_SAX2_MAGIC,
		.internalSubset = on_document_type,
		.startElementNs = on_start,
		.endElementNs = on_end,
		.characters = on_text,
		.cdataBlock = on_text,
		.serror = on_error,
	};

	if (size == 0) {
		tell(&r, PROBLEM_NOT_XML, 0, NULL, "an empty file", "a job file");
		d->stopped = true;
		return;
	}
	if (!tags_are_short(&r, bytes, size)) {
		d->stopped = true;
		return;
	}
	r.parser = xmlCreatePushParserCtxt(&events, &r, NULL, 0, NULL);
	if (!r.parser) {
		tell(&r, PROBLEM_NO_MEMORY, 0, NULL, NULL, NULL);
		d->stopped = true;
		return;
	}
	/* recovery: an attribute given twice is told and reading goes on; on_error stops at
	   everything else. Entities: only the five of XML itself are left, and without the
	   option &amp; would come as &#38; */
	xmlCtxtUseOptions(r.parser, XML_PARSE_NONET | XML_PARSE_RECOVER | XML_PARSE_NOENT);
	/* size fits an int: it is at most JOB_FILE_MAX */
	xmlParseChunk(r.parser, bytes, (int)size, 1);
	if (!r.failed && !r.told_fault && !r.parser->wellFormed) {
		/* the parser gave up without a word: it does so when memory runs out in the
		   wrong place */
		tell(&r, PROBLEM_NOT_XML, 0, NULL, NULL,
		     "a whole XML document, and memory to read it");
		r.failed = true;
	}
	d->stopped = r.failed;
	xmlFreeParserCtxt(r.parser);
}
