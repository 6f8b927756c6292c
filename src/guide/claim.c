/* SPDX-License-Identifier: MIT */
/* One claim turned into words: status, sources, limits of slope, sizes filled in. */
#include "guide/claim.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

static const char *const status_word[GUIDE_STATUS_COUNT] = {
	[GUIDE_CONFIRMED] = "confirmed",     [GUIDE_SECOND_HAND] = "second-hand",
	[GUIDE_FROM_MEMORY] = "from-memory", [GUIDE_COMMON_PRACTICE] = "common-practice",
	[GUIDE_DERIVED] = "derived",         [GUIDE_OUR_RULE] = "our-rule"};

const char *guide_status_text(enum guide_status status)
{
	switch (status) {
	case GUIDE_CONFIRMED:
		return "confirmed";
	case GUIDE_SECOND_HAND:
		return "second-hand";
	case GUIDE_FROM_MEMORY:
		return "from memory";
	case GUIDE_COMMON_PRACTICE:
		return "common practice";
	case GUIDE_DERIVED:
		return "derived";
	case GUIDE_OUR_RULE:
		return "our rule";
	case GUIDE_STATUS_COUNT:
		break;
	}
	return "";
}

enum guide_status claim_status(const xmlNode *node)
{
	const char *word = node_attribute(node, "status");

	for (int i = 0; i < GUIDE_STATUS_COUNT; i++)
		if (strcmp(status_word[i], word) == 0)
			return (enum guide_status)i;
	return GUIDE_FROM_MEMORY; /* the schema demands a status; without one nothing is sure */
}

static size_t append(char *buf, size_t size, size_t n, const char *text)
{
	const size_t length = strlen(text);

	if (n + length >= size)
		return n;
	memcpy(buf + n, text, length + 1);
	return n + length;
}

const char *claim_source(const struct guide_library *lib, const xmlNode *node, char *buf,
			 size_t size)
{
	const char *s = node_attribute(node, "source");
	const char *clause = node_attribute(node, "clause");
	size_t n = 0;

	buf[0] = '\0';
	while (*s != '\0') {
		const size_t length = strcspn(s, " \t\n\r");
		char id[64] = "", raw[512], title[512];
		const struct guide_entry *e;

		if (length < sizeof id)
			memcpy(id, s, length);
		e = length > 0 ? guide_table_find(&lib->source, id) : NULL;
		if (e && node_child(e->node, "title")) {
			node_text(node_child(e->node, "title"), raw, sizeof raw);
			if (guide_fill(title, sizeof title, raw, NULL, SYSTEM_US, NULL) !=
			    GUIDE_FILLED)
				title[0] = '\0';
			n = append(buf, size, n, n > 0 ? "; " : "");
			n = append(buf, size, n, title);
		}
		s += length;
		s += strspn(s, " \t\n\r");
	}
	if (n > 0 && *clause != '\0') {
		n = append(buf, size, n, ", ");
		append(buf, size, n, clause);
	}
	return buf;
}

bool claim_holds(const xmlNode *node, double pitch)
{
	double from = -1.0, below = 10.0; /* no pitch is outside */

	if (node_has(node, "slope-from"))
		quantity_parse(node_attribute(node, "slope-from"), DIM_ANGLE, &from);
	if (node_has(node, "slope-below"))
		quantity_parse(node_attribute(node, "slope-below"), DIM_ANGLE, &below);
	return isnan(pitch) || (at_least(pitch, from) && !at_least(pitch, below));
}

/* True if the claim holds at the job's pitch; lead gets what to print before it while the pitch is
 * not known. */
static bool slope_holds(const xmlNode *node, const struct guide_request *request, char *lead,
			size_t size)
{
	const double pitch = guide_size_value(request->sizes, guide_size_find("pitch", 5));
	const char *from = node_attribute(node, "slope-from"),
		   *below = node_attribute(node, "slope-below");
	char f[40], b[40];
	bool has_from, has_below;

	lead[0] = '\0';
	if (!isnan(pitch))
		return claim_holds(node, pitch);
	has_from = guide_literal_print(f, sizeof f, from, strlen(from), request->units);
	has_below = guide_literal_print(b, sizeof b, below, strlen(below), request->units);
	if (has_from && has_below)
		snprintf(lead, size, "From %s to below %s: ", f, b);
	else if (has_from)
		snprintf(lead, size, "From %s on: ", f);
	else if (has_below)
		snprintf(lead, size, "Below %s: ", b);
	return true;
}

/* Text of node itself behind what stands in buf. False if there is none or a size is not known. */
static bool fill_after(const xmlNode *node, const struct guide_request *request, char *buf,
		       size_t size)
{
	char raw[GUIDE_TEXT_MAX];
	const size_t n = strlen(buf);

	node_text(node, raw, sizeof raw);
	if (guide_fill(buf + n, size - n, raw, request->sizes, request->units, NULL) ==
		    GUIDE_FILLED &&
	    buf[n] != '\0')
		return true;
	buf[n] = '\0';
	return false;
}

bool claim_text(const xmlNode *node, const struct guide_request *request, char *buf, size_t size)
{
	const xmlNode *with = node_child(node, "with");
	const xmlNode *other = node_child(node, "else");

	if (!slope_holds(node, request, buf, size))
		return false;
	if (with && fill_after(with, request, buf, size))
		return true;
	return fill_after(with ? other ? other : with : node, request, buf, size);
}

/* Note of an extent or quantity behind `. `. */
static void add_note(const xmlNode *node, const struct guide_request *request, char *buf,
		     size_t size)
{
	const size_t n = append(buf, size, strlen(buf), ". ");

	if (!fill_after(node, request, buf, size))
		buf[n - 1] = '\0';
}

bool claim_extent(const xmlNode *extent, const struct guide_request *request, char *buf,
		  size_t size)
{
	const char *from = node_attribute(extent, "from");
	const char *least = node_attribute(extent, "least");
	const struct guide_size_row *row = guide_size_find(from, strlen(from));
	const double value = guide_size_value(request->sizes, row);
	char printed[64] = "", usual[64];
	size_t n;

	if (!slope_holds(extent, request, buf, size))
		return false;
	if (isfinite(value))
		guide_size_print(printed, sizeof printed, row, value, request->units);
	else
		guide_literal_print(printed, sizeof printed, least, strlen(least), request->units);
	n = append(buf, size, strlen(buf),
		   isfinite(value) ? "on this roof at least " : "at least ");
	n = append(buf, size, n, printed);
	/* what stands behind explains the usual size, not this roof's */
	if (isfinite(value) &&
	    guide_literal_print(usual, sizeof usual, least, strlen(least), request->units) &&
	    strcmp(usual, printed) != 0) {
		n = append(buf, size, n, "; usually at least ");
		append(buf, size, n, usual);
	}
	add_note(extent, request, buf, size);
	return true;
}

bool claim_quantity(const xmlNode *quantity, const struct guide_request *request, char *buf,
		    size_t size)
{
	static const char *const attribute[] = {"value", "low", "high"};
	size_t n;

	if (!slope_holds(quantity, request, buf, size))
		return false;
	n = strlen(buf);
	if (node_has(quantity, "for") &&
	    guide_fill(buf + n, size - n, node_attribute(quantity, "for"), request->sizes,
		       request->units, NULL) == GUIDE_FILLED)
		n = append(buf, size, strlen(buf), ": ");
	else
		buf[n] = '\0';
	for (size_t i = 0; i < 3; i++) {
		const char *text = node_attribute(quantity, attribute[i]);
		char printed[64];

		if (!guide_literal_print(printed, sizeof printed, text, strlen(text),
					 request->units))
			continue;
		if (i == 2)
			n = append(buf, size, n, " to ");
		n = append(buf, size, n, printed);
	}
	add_note(quantity, request, buf, size);
	return true;
}
