/* SPDX-License-Identifier: MIT */
#include "report/guide_report.h"

#include <string.h>

#include "report/caution.h"

struct walk {
	struct document *d;
	enum guide_place place;
	const char *held[3]; /* headings of each level that nothing stands under yet; NULL: none */
};

static const char *use_words(enum guide_use use)
{
	switch (use) {
	case GUIDE_USE_YES:
		return "a crew can do it with these notes";
	case GUIDE_USE_WITH_ROOFER:
		return "with a roofer of that trade";
	case GUIDE_USE_REFUSED:
		return "stop: the page says why";
	}
	return "";
}

void guide_report_list(struct document *d, const struct guide_library *lib)
{
	static const struct column columns[] = {
		{ "covering", ALIGN_LEFT, true, false },
		{ "in words", ALIGN_LEFT, false, true },
		{ "who", ALIGN_LEFT, false, true },
	};

	document_add(d, BLOCK_TITLE, 0, "Roof coverings");
	document_add(d, BLOCK_PARAGRAPH, 0,
	             "rafterproof guide COVERING tells how to go through one without a leak.");
	document_table(d, columns, (int)(sizeof columns / sizeof *columns));
	for (size_t i = 0; i < guide_page_count(lib); i++) {
		const struct guide_page page = guide_page_at(lib, i);

		document_row(d);
		document_cell(d, "%s", page.key);
		document_cell(d, "%s", page.name);
		document_cell(d, "%s", use_words(page.use));
	}
}

/* "(common practice)", "(confirmed: IRC 2018 R905.2)", "" */
static const char *standing(struct document *d, const struct guide_block *b)
{
	const char *status = guide_status_text(b->status);

	if (!*status)
		return "";
	return document_text(d, " (%s%s%s)", status, *b->source ? ": " : "", b->source);
}

static void add_heading(const struct walk *w, int level, const char *text)
{
	const int deep = level + (w->place != GUIDE_ALONE);

	document_add(w->d, BLOCK_HEADING, deep < 3 ? deep : 3, "%s", text);
}

/* Who reads a permit set has the roof and the crew before him; a note that only names another is no help on paper. */
static bool no_use_on_sheets(const struct guide_block *b)
{
	static const char *const section[] = { "recognise", "tools", "failure", "call" };

	for (size_t i = 0; i < sizeof section / sizeof *section; i++)
		if (strcmp(b->section, section[i]) == 0)
			return true;
	return strcmp(b->label, "See") == 0;
}

/* On the sheets a heading waits until something stands under it. */
static void hold(struct walk *w, int level, const char *text)
{
	for (int i = level - 1; i < 3; i++)
		w->held[i] = NULL;
	if (level >= 1 && level <= 3)
		w->held[level - 1] = document_text(w->d, "%s", text);
}

static void let_go(struct walk *w)
{
	for (int i = 0; i < 3; i++) {
		if (w->held[i])
			add_heading(w, i + 1, w->held[i]);
		w->held[i] = NULL;
	}
}

static void add_block(void *context, const struct guide_block *b)
{
	struct walk *w = context;
	const char *tail = standing(w->d, b);
	const char *label = *b->label ? document_text(w->d, "%s: ", b->label) : "";

	if (w->place == GUIDE_ON_SHEETS && no_use_on_sheets(b))
		return;
	if (b->kind != GUIDE_HEADING)
		let_go(w);
	switch (b->kind) {
	case GUIDE_TITLE:
		document_add(w->d, w->place != GUIDE_ALONE ? BLOCK_HEADING : BLOCK_TITLE, 1, "%s", b->text);
		return;
	case GUIDE_HEADING:
		if (w->place == GUIDE_ON_SHEETS)
			hold(w, b->level, b->text);
		else
			add_heading(w, b->level, b->text);
		return;
	case GUIDE_PARAGRAPH:
		document_add(w->d, BLOCK_PARAGRAPH, 0, "%s%s%s", label, b->text, tail);
		return;
	case GUIDE_STEP:
		document_add(w->d, BLOCK_NUMBERED, b->number, "%s%s%s", label, b->text, tail);
		return;
	case GUIDE_BULLET:
		document_add(w->d, BLOCK_BULLET, 0, "%s%s%s", label, b->text, tail);
		return;
	case GUIDE_CAUTION:
		document_add(w->d, BLOCK_CAUTION, 0, "%s%s%s", label, b->text, tail);
		return;
	}
}

bool guide_report_page(struct document *d, const struct guide_library *lib,
                       const struct guide_request *request, enum guide_place place,
                       struct problem_list *problems)
{
	struct walk w = { .d = d, .place = place };
	const struct guide_sink sink = { add_block, &w };

	return guide_notes(lib, request, &sink, problems);
}
