/* SPDX-License-Identifier: MIT */
/* Documents as sheets on paper: where each begins, room for a seal, text a little smaller where that
 * saves a page. */
#include <math.h>

#include "sheet/flow.h"

/* A stamp is up to 1-3/4 in across (from memory). */
#define SEAL (46 * MM)
#define SEAL_WIDTH (104 * MM)
#define STAMP (48 * MM)
#define INDEX_GAP (6 * MM)

/* Sheets and their pages in this height, whatever size of letters that takes. */
static void put_index(struct flow *f, const struct pdf_index *index, double x, double top,
		      double height)
{
	const double width = f->room.width - x;
	const double usual = flow_height(f, "x", FLOW_TEXT, false, width) / FLOW_TEXT;
	const double size = fmin(0.84 * FLOW_TEXT, height / usual / (index->n + 1)),
		     pitch = usual * size;
	char page[24];

	flow_put(f, "Sheets of this set", size, true, x, top, width, false);
	for (int i = 0; i < index->n; i++) {
		const double y = top + (i + 1) * pitch;

		flow_put(f, index->entry[i].name, size, false, x, y, width, false);
		snprintf(page, sizeof page, "page %d", index->entry[i].page);
		flow_put(f, page, size, false, x, y, width, true);
	}
}

/* An empty frame at the foot of the page, the index beside it. */
static void seal(struct flow *f, const struct pdf_index *index)
{
	f->under = NULL;
	flow_need(f, SEAL + 2 * MM);
	const double y = f->room.height - SEAL;

	flow_frame(f, 0, y, SEAL_WIDTH, SEAL);
	flow_put(f,
		 "Room for the seal, signature and date of a licensed engineer. Empty: nobody has "
		 "sealed this.",
		 0.84 * FLOW_TEXT, false, STAMP, y + 2 * MM, SEAL_WIDTH - STAMP - 2 * MM, false);
	put_index(f, index, SEAL_WIDTH + INDEX_GAP, y, SEAL);
	f->y = f->room.height;
}

static void open_page(struct flow *f)
{
	pdf_page(f->pdf, false, f->name);
	f->room = pdf_room(f->pdf);
	f->y = 0;
}

/* A sheet begins on the page that is open if at least this much of it is left. */
#define ROOM_TO_BEGIN 0.2

static void begin(struct flow *f, const struct pdf_part *part, bool first)
{
	f->name = part->name;
	f->under = NULL;
	if (first || f->y > (1 - ROOM_TO_BEGIN) * f->room.height) {
		open_page(f);
		pdf_sheet(f->pdf, part->name, 0);
		return;
	}
	f->y += 7 * MM;
	flow_rule(f, 0, f->y, f->room.width, 0.8 * MM);
	f->y += 2 * MM;
	pdf_sheet(f->pdf, part->name, f->room.y + f->y);
	flow_text(f, (struct flow_style){.size = 1.6 * f->text, .bold = true}, part->name);
	f->y += 2 * MM;
}

static void put(struct flow *f, const struct pdf_part *part, int parts,
		const struct pdf_index *index)
{
	for (int i = 0; i < parts; i++) {
		begin(f, &part[i], i == 0);
		flow_document(f, part[i].document);
	}
	if (index)
		seal(f, index);
}

/* Pages with text of that size, how full the last one is; 0: no trial could be made. */
static int pages_with(const struct pdf *p, const struct pdf_part *part, int parts,
		      const struct pdf_index *index, double text, double *full)
{
	struct flow f = {.pdf = pdf_trial(p), .text = text, .beside = index != NULL};

	if (!f.pdf)
		return 0;
	put(&f, part, parts, index);
	*full = f.y / f.room.height;
	const int pages = pdf_pages(f.pdf);

	return pdf_end(f.pdf, NULL) == 0 ? pages : 0;
}

/* 2.3 mm is 6.5 points */
#define SEALED_LEAST (2.25 * MM)

static double sealed_text(const struct pdf *p, const struct pdf_part *part,
			  const struct pdf_index *index)
{
	double full;

	for (double text = FLOW_TEXT; text > SEALED_LEAST; text -= 0.1 * MM)
		if (pages_with(p, part, 1, index, text, &full) == 1)
			return text;
	return FLOW_TEXT;
}

/* A last page with little on it is saved if text a little smaller does it; best if the page that
 * is then the last has more on it. */
#define LITTLE 0.45
#define SNUG_LEAST (0.93 * FLOW_TEXT)

static double snug_text(const struct pdf *p, const struct pdf_part *part, int parts)
{
	double first = 0, full, other; /* first: that saves it */
	const int pages = pages_with(p, part, parts, NULL, FLOW_TEXT, &full);

	if (pages < 2 || full > LITTLE)
		return FLOW_TEXT;
	for (double text = FLOW_TEXT; text > SNUG_LEAST; text -= 0.05 * MM) {
		const int now = pages_with(p, part, parts, NULL, text, &other);

		if (now == 0 || now >= pages)
			continue;
		if (other > LITTLE)
			return text;
		if (first <= 0)
			first = text;
	}
	return first > 0 ? first : FLOW_TEXT;
}

void pdf_documents(struct pdf *p, const struct pdf_part *part, int parts)
{
	struct flow f = {.pdf = p, .text = snug_text(p, part, parts)};

	put(&f, part, parts, NULL);
}

void pdf_sealed(struct pdf *p, const struct pdf_part *part, const struct pdf_index *index)
{
	struct flow f = {.pdf = p, .text = sealed_text(p, part, index), .beside = true};

	put(&f, part, 1, index);
}
