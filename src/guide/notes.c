/* SPDX-License-Identifier: MIT */
/* Walks one page of the library and hands it out as blocks, sizes filled in. Headings and labels
   are the only words that stand here; all that is claimed comes from the library. */
#include "guide/guide.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "guide/claim.h"

struct walk {
	const struct guide_library *lib;
	const struct guide_request *request;
	const struct guide_sink *sink;
	const char *section;
	int step;
};

struct name_words {
	const char *name, *words;
};

/* Sections of a page in the order of the schema; names and drawings are no text. */
static const struct name_words heading[] = {{"recognise", "How to know it"},
					    {"sheds", "How it sheds water"},
					    {"limits", "Limits and numbers"},
					    {"look-first", "Look first"},
					    {"lifting", "Lifting and cutting"},
					    {"foot", "The mount foot"},
					    {"pipe", "Pipes and cable"},
					    {"valleys", "Valleys, walls, edges"},
					    {"steps", "Step by step"},
					    {"tools", "Tools"},
					    {"materials", "Materials"},
					    {"inspection", "Inspection"},
					    {"water-test", "Water test"},
					    {"failure", "Signs that it fails"},
					    {"stop", "Stop the work if"},
					    {"walking", "Walking on it"},
					    {"call", "Whom to call"},
					    {"cautions", "Cautions"},
					    {"reasons", "Why this guide stops here"},
					    {"instead", "What to do instead"}};

static const struct name_words element_label[] = {
	{"look", "Look"},   {"butts", "Lower edges"}, {"thickness", "Thickness"},
	{"lines", "Lines"}, {"sound", "Sound"},       {"weight", "Weight"},
	{"age", "Age"},     {"sleeve", "Sleeve"},     {"boot", "Boot"},
	{"hole", "Hole"},   {"never", "Never"}};

static const struct name_words quantity_label[] = {{"slope-least", "Least slope"},
						   {"slope-most", "Steepest slope"},
						   {"exposure", "Exposure"},
						   {"piece-length", "Length of a piece"},
						   {"headlap", "Headlap"},
						   {"side-lap", "Side lap"},
						   {"seam-height", "Height of a seam"},
						   {"seam-spacing", "Seam to seam"},
						   {"thickness", "Thickness"},
						   {"weight", "Weight"},
						   {"life", "Years of service"}};

static const struct name_words edge_label[] = {
	{"down", "Down from the hole"}, {"up", "Up from the hole"},
	{"side", "To each side"},       {"length", "Whole length"},
	{"width", "Whole width"},       {"thickness", "Thickness"},
	{"height", "Height"},           {"flange", "Flange"},
	{"turn-up", "Folded edge"},     {"lap", "Lap"}};

/* Parts printed in full even in a brief guide. */
static const char *const always[] = {"stop-any", "falls", "cautions"};

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

static const char *words_of(const struct name_words *list, size_t n, const char *name)
{
	for (size_t i = 0; i < n; i++)
		if (strcmp(list[i].name, name) == 0)
			return list[i].words;
	return "";
}

static void hand_out(const struct walk *w, struct guide_block *b)
{
	b->section = w->section;
	if (!b->label)
		b->label = "";
	if (!b->source)
		b->source = "";
	if (!b->of)
		b->of = "";
	w->sink->block(w->sink->context, b);
}

static void say_heading(const struct walk *w, enum guide_kind kind, int level, const char *text)
{
	struct guide_block b = {
		.kind = kind, .level = level, .status = GUIDE_NO_STATUS, .text = text};

	hand_out(w, &b);
}

/* Hands out a claim whose text is ready; condition of slope, status and source come from node. */
static void say_claim(struct walk *w, const xmlNode *node, enum guide_kind kind, const char *label,
		      const char *text)
{
	char source[GUIDE_TEXT_MAX];
	struct guide_block b = {
		.kind = kind, .label = label, .text = text, .of = node_attribute(node, "of")};

	b.status = claim_status(node);
	b.source = claim_source(w->lib, node, source, sizeof source);
	if (kind == GUIDE_STEP)
		b.number = ++w->step;
	hand_out(w, &b);
}

static enum guide_kind kind_of(const xmlNode *node)
{
	if (node_is(node, "say"))
		return GUIDE_PARAGRAPH;
	if (node_is(node, "step"))
		return GUIDE_STEP;
	if (node_is(node, "caution") || node_is(node, "never"))
		return GUIDE_CAUTION;
	return GUIDE_BULLET;
}

static void walk_claim(struct walk *w, const xmlNode *node)
{
	char text[GUIDE_TEXT_MAX], label[32];

	if (!claim_text(node, w->request, text, sizeof text))
		return;
	snprintf(label, sizeof label, "%s",
		 words_of(element_label, COUNT(element_label), (const char *)node->name));
	if (node_is(node, "choice"))
		snprintf(label, sizeof label, "Choice %.2s", node_attribute(node, "rank"));
	say_claim(w, node, kind_of(node), label, text);
}

static void walk_piece(struct walk *w, const xmlNode *piece)
{
	say_heading(w, GUIDE_HEADING, 3, node_attribute(piece, "name"));
	for (const xmlNode *e = node_first(piece); e; e = node_next(e)) {
		char text[GUIDE_TEXT_MAX];

		if (node_is(e, "extent") && claim_extent(e, w->request, text, sizeof text))
			say_claim(
				w, e, GUIDE_BULLET,
				words_of(edge_label, COUNT(edge_label), node_attribute(e, "edge")),
				text);
	}
}

static void walk_quantity(struct walk *w, const xmlNode *q)
{
	char text[GUIDE_TEXT_MAX];

	if (claim_quantity(q, w->request, text, sizeof text))
		say_claim(
			w, q, GUIDE_BULLET,
			words_of(quantity_label, COUNT(quantity_label), node_attribute(q, "name")),
			text);
}

static void walk_slippery(struct walk *w, const xmlNode *node)
{
	char text[GUIDE_TEXT_MAX], note[GUIDE_TEXT_MAX];
	const char *snow = node_attribute(node, "snow");

	if (!claim_text(node, w->request, note, sizeof note))
		note[0] = '\0';
	snprintf(text, sizeof text, "%s%s%.2000s",
		 strcmp(snow, "yes") == 0  ? "yes: snow slides on it."
		 : strcmp(snow, "no") == 0 ? "no."
					   : "not named by the standard: counts as no.",
		 note[0] ? " " : "", note);
	say_claim(w, node, GUIDE_BULLET, "Slippery for snow", text);
}

static void walk_children(struct walk *w, const xmlNode *node);

static void walk_use(struct walk *w, const xmlNode *use)
{
	const char *id = node_attribute(use, "part");
	const struct guide_entry *part = guide_table_find(&w->lib->part, id);
	bool full = w->request->depth == GUIDE_FULL;

	if (!part)
		return;
	for (size_t i = 0; i < COUNT(always); i++)
		full = full || strcmp(always[i], id) == 0;
	if (full) {
		/* the steps are one list, in the order of the work, whatever part they come from */
		if (strcmp(w->section, "steps") != 0)
			say_heading(w, GUIDE_HEADING, 2, node_attribute(part->node, "title"));
		walk_children(w, part->node);
	} else {
		struct guide_block b = {
			.kind = GUIDE_BULLET, .status = GUIDE_NO_STATUS, .label = "See"};

		b.text = node_attribute(part->node, "title");
		hand_out(w, &b);
	}
}

static void walk_children(struct walk *w, const xmlNode *node)
{
	for (const xmlNode *c = node_first(node); c; c = node_next(c)) {
		if (node_is(c, "use"))
			walk_use(w, c);
		else if (node_is(c, "piece"))
			walk_piece(w, c);
		else if (node_is(c, "quantity"))
			walk_quantity(w, c);
		else if (node_is(c, "slippery"))
			walk_slippery(w, c);
		else
			walk_claim(w, c);
	}
}

static void walk_names(struct walk *w, const xmlNode *names)
{
	char text[GUIDE_TEXT_MAX], one[256];
	size_t n = 0;

	for (const xmlNode *c = node_first(names); c; c = node_next(c)) {
		node_text(c, one, sizeof one);
		if (node_is(c, "also") && n + strlen(one) + 3 < sizeof text)
			n += (size_t)snprintf(text + n, sizeof text - n, "%s%s", n > 0 ? ", " : "",
					      one);
	}
	if (n > 0) {
		struct guide_block b = {.kind = GUIDE_PARAGRAPH,
					.status = GUIDE_NO_STATUS,
					.label = "Also called",
					.text = text};

		hand_out(w, &b);
	}
}

static void walk_opening(struct walk *w, const struct guide_page *page, const xmlNode *root)
{
	const struct guide_entry *opening = guide_table_find(&w->lib->part, GUIDE_OPENING_PART);
	struct guide_block b = {.kind = GUIDE_CAUTION, .status = GUIDE_OUR_RULE};

	w->section = "names";
	say_heading(w, GUIDE_TITLE, 0, page->name);
	walk_names(w, node_child(root, "names"));
	if (page->use == GUIDE_USE_REFUSED)
		b.text = "Do not open this covering with this guide.";
	else if (page->use == GUIDE_USE_WITH_ROOFER)
		b.text = "A roofer of this trade does, or leads, all work on the covering itself.";
	if (b.text)
		hand_out(w, &b);
	if (opening)
		walk_children(w, opening->node);
}

bool guide_notes(const struct guide_library *lib, const struct guide_request *request,
		 const struct guide_sink *sink, struct problem_list *problems)
{
	const struct guide_entry *e = guide_table_find(&lib->page, request->key);
	struct walk w = {lib, request, sink, "", 0};
	struct guide_page page;

	if (!e || !guide_page_find(lib, request->key, &page)) {
		problem_add(problems, PROBLEM_UNKNOWN_COVERING, NULL, 0, "roof.covering",
			    request->key, "a key of the covering library");
		return false;
	}
	walk_opening(&w, &page, e->node);
	for (const xmlNode *s = node_first(e->node); s; s = node_next(s)) {
		const char *words = words_of(heading, COUNT(heading), (const char *)s->name);

		if (*words == '\0')
			continue;
		w.section = (const char *)s->name;
		say_heading(&w, GUIDE_HEADING, 1, words);
		walk_children(&w, s);
	}
	return true;
}
