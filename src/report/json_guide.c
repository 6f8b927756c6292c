/* SPDX-License-Identifier: MIT */
#include "report/caution.h"
#include "report/guide_report.h"
#include "report/json_guide.h"

struct walk {
	struct json *j;
	json_t *blocks;
};

static const char *kind_word(enum guide_kind kind)
{
	switch (kind) {
	case GUIDE_TITLE:
		return "title";
	case GUIDE_HEADING:
		return "heading";
	case GUIDE_PARAGRAPH:
		return "paragraph";
	case GUIDE_STEP:
		return "step";
	case GUIDE_BULLET:
		return "bullet";
	case GUIDE_CAUTION:
		return "caution";
	}
	return NULL;
}

static const char *use_word(enum guide_use use)
{
	switch (use) {
	case GUIDE_USE_YES:
		return "yes";
	case GUIDE_USE_WITH_ROOFER:
		return "with-roofer";
	case GUIDE_USE_REFUSED:
		return "refused";
	}
	return NULL;
}

static void put_block(void *context, const struct guide_block *b)
{
	const struct walk *w = context;
	json_t *object = append_object(w->j, w->blocks);

	put_text(w->j, object, "kind", kind_word(b->kind));
	put_int(w->j, object, "level", b->level);
	put_int(w->j, object, "number", b->number);
	put_text(w->j, object, "section", b->section);
	put_text(w->j, object, "label", b->label);
	put_text(w->j, object, "text", b->text);
	put_text(w->j, object, "status", guide_status_text(b->status));
	put_text(w->j, object, "source", b->source);
}

static void put_page(struct json *j, json_t *object, const struct guide_page *page)
{
	put_text(j, object, "key", page->key);
	put_text(j, object, "name", page->name);
	put_text(j, object, "use", use_word(page->use));
}

static void put_notes(struct json *j, json_t *root, const struct guide_json *g)
{
	struct guide_page page;

	if (!guide_page_find(g->lib, g->request.key, &page)) {
		j->failed = true;
		return;
	}
	put_page(j, put_object(j, root, "covering"), &page);
	struct walk w = { j, put_array(j, root, "blocks") };
	const struct guide_sink sink = { put_block, &w };

	if (!j->failed && !guide_notes(g->lib, &g->request, &sink, g->problems))
		j->failed = true;
}

static void put_list(struct json *j, json_t *root, const struct guide_library *lib, enum unit_system units)
{
	json_t *array = put_array(j, root, "coverings");

	for (size_t i = 0; i < guide_page_count(lib) && !j->failed; i++) {
		const struct guide_page page = guide_page_at(lib, i);

		json_t *object = append_object(j, array);

		put_page(j, object, &page);
		put_recognise(j, object, lib, page.key, units);
	}
	put_guide_key(j, root, lib, units);
}

int json_guide_write(FILE *f, const void *what)
{
	const struct guide_json *g = what;
	struct json j;
	json_t *root = json_begin(&j, "guide", g->request.units);

	if (root) {
		if (g->request.key)
			put_notes(&j, root, g);
		else
			put_list(&j, root, g->lib, g->request.units);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}

int json_export_write(FILE *f, const void *what)
{
	const struct export_json *e = what;
	struct json j;
	json_t *root = json_begin(&j, "export", SYSTEM_US);

	if (root) {
		put_text(&j, root, "directory", e->directory);
		put_bool(&j, root, "compressed", e->compressed);
		put_int(&j, root, "coverings", (long long)e->coverings);
		put_text(&j, root, "caution", caution_result);
	}
	return json_end(&j, root, f);
}
