/* SPDX-License-Identifier: MIT */
#include "sheet/sheets.h"

#include <string.h>

#include "report/caution.h"
#include "sheet/flashing_plan.h"
#include "sheet/flow.h"
#include "sheet/html.h"
#include "sheet/plan.h"

#define SHEET_NAME_MAX 80

typedef void words_fn(const struct sheet *s, struct document *d);

enum manner { RUNNING_ON, APART, SEALED };

static void add_document(struct sheet_set *set, const char *name, struct document *d,
			 enum manner manner)
{
	set->page[set->n++] = (struct sheet_page){.name = name,
						  .document = d,
						  .with_seal = manner == SEALED,
						  .apart = manner != RUNNING_ON};
}

/* A page that could not be made is there without content; sheets_build tells. */
static void add_words(struct sheet_set *set, const struct sheet *s, const char *name,
		      words_fn *words, enum manner manner)
{
	struct document *d = document_create(NULL);

	if (d)
		words(s, d);
	add_document(set, name, d, manner);
}

static bool whole(const struct sheet_set *set, bool screen)
{
	for (int i = 0; i < set->n; i++) {
		const struct sheet_page *p = &set->page[i];

		if (!p->document == !p->drawing || (p->document && document_failed(p->document)) ||
		    (p->drawing && drawing_failed(p->drawing)) ||
		    (screen && p->drawing && (!p->narrow || drawing_failed(p->narrow))))
			return false;
	}
	return set->n > 0;
}

struct sheet_room sheet_room_of(enum paper paper, bool landscape)
{
	if (paper == PAPER_PHONE)
		return SHEET_NARROW;
	const struct pdf_room room = pdf_room_of(paper, landscape);

	return (struct sheet_room){.width = room.width, .height = room.height};
}

bool sheets_build_view(struct sheet_set *set, const struct sheet *s,
		       const struct sheet_request *request, const char *view)
{
	*set = (struct sheet_set){0};
	sheet_view_add(set, s, request, view);
	return whole(set, request->screen);
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
	struct sheet_room room = sheet_room_of(request->paper, false);

	*set = (struct sheet_set){.n = 1};
	add_words(set, s, "Field sheet", words_field, APART);
	room.height *= field_drawing_share(set->page[1].document);
	set->page[0] = (struct sheet_page){
		.name = "Field sheet",
		.drawing = plan_draw(s, PLAN_ARRAY, room, false),
		.narrow = request->screen ? plan_draw(s, PLAN_ARRAY, SHEET_NARROW, false) : NULL};
	return whole(set, request->screen);
}

static void add_materials(struct sheet_set *set, const struct sheet *s, const struct prices *prices)
{
	struct document *d = document_create(NULL);

	if (d) {
		const struct materials m = materials_of(s, prices);

		materials_report(s, d, &m, prices);
	}
	add_document(set, "Materials", d, RUNNING_ON);
}

bool sheets_build(struct sheet_set *set, const struct sheet *s, const struct sheet_request *request)
{
	*set = (struct sheet_set){0};
	add_words(set, s, "Job, code basis and verdict", words_cover, SEALED);
	sheet_views_add(set, s, request);
	struct document *notes = document_create(NULL);
	const char *other = flashing_of_other_foot(s), *below = flashing_over_base(s);

	/* where this job's feet are not those of the notes, that comes before the notes */
	if (notes && (other || below))
		document_add(notes, BLOCK_CAUTION, 0, "%s", other ? other : below);
	if (notes)
		flashing_notes(request->flashing, notes, s->job, s->r);
	add_document(set, "Flashing", notes, RUNNING_ON);
	add_words(set, s, "Calculation", words_calculation, RUNNING_ON);
	add_words(set, s, "Inputs, assumptions, not checked", words_basis, RUNNING_ON);
	add_words(set, s, "Cautions", words_cautions, RUNNING_ON);
	add_materials(set, s, request->prices);
	add_words(set, s, "Field sheet", words_field, APART);
	add_words(set, s, "Inspection", words_checklist, APART);
	return whole(set, request->screen);
}

void sheets_close(struct sheet_set *set)
{
	for (int i = 0; i < set->n; i++) {
		document_destroy(set->page[i].document);
		drawing_destroy(set->page[i].drawing);
		drawing_destroy(set->page[i].narrow);
	}
	set->n = 0;
}

/* Drawing above, words below, on one page if they fit at any size down to the smallest. */
static void put_field(struct pdf *p, const struct sheet_set *set, double text)
{
	pdf_page(p, false, set->page[0].name);
	pdf_sheet(p, set->page[0].name, 0);
	pdf_draw(p, set->page[0].drawing);
	struct flow f = {.pdf = p, .name = set->page[1].name, .room = pdf_room(p), .text = text};

	f.y = drawing_height(set->page[0].drawing) + 1 * MM;
	flow_document(&f, set->page[1].document);
}

static bool lies(const struct drawing *d)
{
	return d && drawing_width(d) > drawing_height(d);
}

static bool is_field(const struct sheet_set *set)
{
	return set->n == 2 && set->page[0].drawing && set->page[1].document;
}

static const char *numbered(const struct sheet_set *set, int i, char name[SHEET_NAME_MAX])
{
	snprintf(name, SHEET_NAME_MAX, "%d  %s", i + 1, set->page[i].name);
	return name;
}

static struct pdf_index index_of(const struct sheet_set *set, char name[SHEETS_MAX][SHEET_NAME_MAX])
{
	struct pdf_index index = {.n = set->n};

	for (int i = 0; i < set->n; i++)
		index.entry[i] =
			(struct pdf_entry){numbered(set, i, name[i]), set->page[i].first_page};
	return index;
}

/* The sheets of words from `first` on that run on behind each other; returns the next one. */
static int put_words(struct pdf *p, const struct sheet_set *set, int first)
{
	struct pdf_part part[SHEETS_MAX];
	char name[SHEETS_MAX][SHEET_NAME_MAX];
	int n = 0, i = first;

	do {
		part[n] = (struct pdf_part){set->page[i].document, numbered(set, i, name[n])};
		n++;
		i++;
	} while (i < set->n && set->page[i].document && !set->page[i].apart &&
		 !set->page[i - 1].apart);
	if (set->page[first].with_seal) {
		const struct pdf_index index = index_of(set, name);

		pdf_sealed(p, part, &index);
	} else {
		pdf_documents(p, part, n);
	}
	return i;
}

static void put_sheets(struct pdf *p, const struct sheet_set *set, double text)
{
	char name[SHEET_NAME_MAX];

	if (is_field(set)) {
		put_field(p, set, text);
		return;
	}
	for (int i = 0; i < set->n;) {
		const struct sheet_page *page = &set->page[i];

		if (page->document) {
			i = put_words(p, set, i);
			continue;
		}
		pdf_page(p, lies(page->drawing),
			 numbered(set, i, name));
		pdf_sheet(p, name, 0);
		pdf_draw(p, page->drawing);
		i++;
	}
}

/* Pages that it takes, and where each sheet begins; -1 when memory ran out. */
static int count(struct sheet_set *set, const struct pdf_setup *setup, double text)
{
	struct pdf *p = pdf_begin(setup);

	if (!p)
		return -1;
	put_sheets(p, set, text);
	const int n = pdf_pages(p);

	for (int i = 0; i < set->n; i++)
		set->page[i].first_page = pdf_sheet_page(p, i);
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

/* One sheet: first whether to build at all, then the way, then the drawing. */
static void put_field_html(FILE *f, const struct sheet_set *set)
{
	html_sheet_begin(f, 1, set->page[1].name, false);
	html_document(f, set->page[1].document);
	html_drawing(f, set->page[0].drawing, set->page[0].narrow);
	html_sheet_end(f);
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
	if (is_field(set)) {
		put_field_html(f, set);
		html_end(f, &page);
		return ferror(f) ? -1 : 0;
	}
	for (int i = 0; i < set->n; i++)
		name[i] = set->page[i].name;
	html_contents(f, name, set->n);
	for (int i = 0; i < set->n; i++) {
		html_sheet_begin(f, i + 1, name[i], lies(set->page[i].drawing));
		if (set->page[i].document)
			html_document(f, set->page[i].document);
		else
			html_drawing(f, set->page[i].drawing, set->page[i].narrow);
		if (set->page[i].with_seal)
			html_seal(f);
		html_sheet_end(f);
	}
	html_end(f, &page);
	return ferror(f) ? -1 : 0;
}
