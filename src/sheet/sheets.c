/* SPDX-License-Identifier: MIT */
#include "sheet/sheets.h"

#include <string.h>

#include "report/caution.h"
#include "sheet/flow.h"
#include "sheet/html.h"
#include "sheet/plan.h"

typedef void words_fn(const struct sheet *s, struct document *d);

static void add_document(struct sheet_set *set, const char *name, struct document *d,
			 bool with_seal)
{
	set->page[set->n++] =
		(struct sheet_page){.name = name, .document = d, .with_seal = with_seal};
}

/* A page that could not be made is there without content; sheets_build tells. */
static void add_words(struct sheet_set *set, const struct sheet *s, const char *name,
		      words_fn *words, bool with_seal)
{
	struct document *d = document_create(NULL);

	if (d)
		words(s, d);
	add_document(set, name, d, with_seal);
}

static bool whole(const struct sheet_set *set)
{
	for (int i = 0; i < set->n; i++) {
		const struct sheet_page *p = &set->page[i];

		if (!p->document == !p->drawing || (p->document && document_failed(p->document)) ||
		    (p->drawing && drawing_failed(p->drawing)))
			return false;
	}
	return set->n > 0;
}

bool sheets_build_view(struct sheet_set *set, const struct sheet *s,
		       const struct sheet_request *request, const char *view)
{
	*set = (struct sheet_set){0};
	sheet_view_add(set, s, request->paper, view);
	return whole(set);
}

/* Many steps leave less room for the drawing above them. */
static double field_drawing_share(const struct document *d)
{
	int steps = 0;

	for (const struct block *b = d ? document_first(d) : NULL; b; b = b->next)
		steps += b->kind == BLOCK_NUMBERED;
	return steps > 14 ? 0.28 : 0.40;
}

bool sheets_build_field(struct sheet_set *set, const struct sheet *s,
			const struct sheet_request *request)
{
	const struct pdf_room room = pdf_room_of(request->paper, false);

	*set = (struct sheet_set){.n = 1};
	add_words(set, s, "Field sheet", words_field, false);
	set->page[0] = (struct sheet_page){
		.name = "Field sheet",
		.drawing = plan_draw(s, PLAN_ARRAY, room.width,
				     field_drawing_share(set->page[1].document) * room.height,
				     false)};
	return whole(set);
}

static void add_materials(struct sheet_set *set, const struct sheet *s, const struct prices *prices)
{
	struct document *d = document_create(NULL);

	if (d) {
		const struct materials m = materials_of(s, prices);

		materials_report(s, d, &m, prices);
	}
	add_document(set, "Materials", d, false);
}

bool sheets_build(struct sheet_set *set, const struct sheet *s, const struct sheet_request *request)
{
	*set = (struct sheet_set){0};
	add_words(set, s, "Job, code basis and verdict", words_cover, true);
	sheet_views_add(set, s, request->paper);
	struct document *notes = document_create(NULL);

	if (notes)
		flashing_notes(request->flashing, notes, s->job, s->r);
	add_document(set, "Flashing", notes, false);
	add_words(set, s, "Calculation", words_calculation, false);
	add_words(set, s, "Inputs, assumptions, not checked", words_basis, false);
	add_materials(set, s, request->prices);
	add_words(set, s, "Field sheet", words_field, false);
	add_words(set, s, "Inspection", words_checklist, false);
	add_words(set, s, "Cautions", words_cautions, false);
	return whole(set);
}

void sheets_close(struct sheet_set *set)
{
	for (int i = 0; i < set->n; i++) {
		document_destroy(set->page[i].document);
		drawing_destroy(set->page[i].drawing);
	}
	set->n = 0;
}

/* Drawing above, words below, on one page if they fit at any size down to the smallest. */
static void put_field(struct pdf *p, const struct sheet_set *set, double text)
{
	pdf_page(p, false, set->page[0].name, true);
	pdf_draw(p, set->page[0].drawing);
	struct flow f = {.pdf = p, .name = set->page[1].name, .room = pdf_room(p), .text = text};

	f.y = drawing_height(set->page[0].drawing) + 1 * MM;
	flow_document(&f, set->page[1].document);
}

static bool is_field(const struct sheet_set *set)
{
	return set->n == 2 && set->page[0].drawing && set->page[1].document;
}

static void put_sheets(struct pdf *p, const struct sheet_set *set, double text)
{
	char name[80];

	if (is_field(set)) {
		put_field(p, set, text);
		return;
	}
	for (int i = 0; i < set->n; i++) {
		const struct sheet_page *page = &set->page[i];

		snprintf(name, sizeof name, "%d  %s", i + 1, page->name);
		if (page->document) {
			pdf_document(p, page->document, name, false, page->with_seal);
			continue;
		}
		pdf_page(p, drawing_width(page->drawing) > drawing_height(page->drawing), name,
			 true);
		pdf_draw(p, page->drawing);
	}
}

/* Pages that it takes; -1 when memory ran out. */
static int count(const struct sheet_set *set, const struct pdf_setup *setup, double text)
{
	struct pdf *p = pdf_begin(setup);

	if (!p)
		return -1;
	put_sheets(p, set, text);
	const int n = pdf_pages(p);

	return pdf_end(p, NULL) == 0 ? n : -1;
}

int sheets_write_pdf(FILE *f, struct sheet_set *set, const struct sheet *s,
		     const struct sheet_request *request)
{
	const char *what = is_field(set) ? "Field sheet"
			   : set->n == 1 ? set->page[0].name
					 : "Permit sheets";
	struct pdf_setup setup = {.paper = request->paper,
				  .lettering = s->lettering,
				  .title = sheet_text(s, "%s: %s", what, s->job->title),
				  .job = s->job->title,
				  .fingerprint = s->fingerprint,
				  .verdict = sheet_verdict(s),
				  .caution = caution_result,
				  .date = request->date};
	double text = FLOW_TEXT;

	set->pages = count(set, &setup, text);
	while (is_field(set) && set->pages > 1 && text > FLOW_LEAST) {
		text -= 0.1 * MM;
		set->pages = count(set, &setup, text);
	}
	if (set->pages < 0)
		return -1;
	setup.pages = set->pages;
	struct pdf *p = pdf_begin(&setup);

	if (!p)
		return -1;
	put_sheets(p, set, text);
	return pdf_end(p, f);
}

int sheets_write_html(FILE *f, const struct sheet_set *set, const struct sheet *s)
{
	const char *name[SHEETS_MAX];
	const struct html_page page = {
		.title = is_field(set) ? "Field sheet" : "Permit sheets",
		.job = s->job->title,
		.fingerprint = sheet_text(s, "job %s, rafterproof %s", s->fingerprint, RP_VERSION),
		.verdict = sheet_verdict(s),
		.caution = caution_result};

	html_begin(f, &page);
	for (int i = 0; i < set->n; i++)
		name[i] = set->page[i].name;
	html_contents(f, name, set->n);
	for (int i = 0; i < set->n; i++) {
		html_sheet_begin(f, i + 1, name[i], set->page[i].drawing && !is_field(set));
		if (set->page[i].document)
			html_document(f, set->page[i].document);
		else
			html_drawing(f, set->page[i].drawing);
		if (set->page[i].with_seal)
			html_seal(f);
		html_sheet_end(f);
	}
	html_end(f, &page);
	return ferror(f) ? -1 : 0;
}
