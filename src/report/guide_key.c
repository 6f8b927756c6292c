/* SPDX-License-Identifier: MIT */
/* The key to an unknown roof, as text: numbered questions, answers that send the reader on or name
   coverings, and then what each covering says of itself. */
#include <stdio.h>
#include <string.h>

#include "report/guide_report.h"

struct walk {
	struct document *d;
	int questions;
};

static void on_question(void *context, const struct guide_question *q)
{
	struct walk *w = context;

	w->questions++;
	document_add(w->d, BLOCK_NUMBERED, q->number, "%s", q->text);
}

/* "a or b" for "a b". */
static const char *joined(struct document *d, const char *keys)
{
	const char *text = "";

	while (*keys) {
		const int n = (int)strcspn(keys, " ");

		text = document_text(d, "%s%s%.*s", text, *text ? " or " : "", n, keys);
		keys += n;
		keys += strspn(keys, " ");
	}
	return text;
}

static void on_answer(void *context, const struct guide_answer *a)
{
	struct walk *w = context;

	if (a->next > 0)
		document_add(w->d, BLOCK_BULLET, 0, "%s Go to %d.", a->text, a->next);
	else
		document_add(w->d, BLOCK_BULLET, 0, "%s -> %s", a->text,
			     joined(w->d, a->coverings));
}

/* Look, lower edges and sound in one paragraph, to hold against the roof. */
static void add_looks(struct document *d, const struct guide_library *lib, const char *key,
		      enum unit_system units)
{
	static const struct {
		const char *element, *words;
	} row[] = {{"look", "Look"},   {"butts", "Lower edges"}, {"thickness", "Thickness"},
		   {"lines", "Lines"}, {"sound", "Sound"},       {"weight", "Weight"},
		   {"age", "Age"}};
	char text[GUIDE_CLAIM_MAX];
	const char *all = "";

	for (size_t i = 0; i < sizeof row / sizeof *row; i++)
		if (guide_recognise(lib, key, row[i].element, units, text, sizeof text))
			all = document_text(d, "%s%s%s: %s", all, *all ? " " : "", row[i].words,
					    text);
	document_pair(d, key, "", "%s", *all ? all : "-");
}

void guide_report_key(struct document *d, const struct guide_library *lib, enum unit_system units)
{
	struct walk w = {d, 0};
	const struct guide_key_sink sink = {on_question, on_answer, &w};

	document_add(d, BLOCK_HEADING, 1, "Which covering is this?");
	document_add(d, BLOCK_PARAGRAPH, 0,
		     "Begin at 1. Look only: break, lift and drill nothing until you know what it "
		     "is. When two answers fit, or none, "
		     "take the covering `unknown`.");
	if (!guide_key(lib, units, &sink)) {
		document_add(d, BLOCK_PARAGRAPH, 0, "This library has no key.");
		return;
	}
	document_add(d, BLOCK_HEADING, 1, "Hold it against this");
	document_pairs(d);
	for (size_t i = 0; i < guide_page_count(lib); i++)
		add_looks(d, lib, guide_page_at(lib, i).key, units);
}
