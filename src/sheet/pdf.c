/* SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "sheet/pdf.h"

#include <cairo-pdf.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "drawing/paint.h"
#include "drawing/typeset.h"
#include "sheet/pdf_bytes.h"

#define PT POINTS_PER_M
#define SIDE (12 * MM) /* margin left and right */
#define HEAD (17 * MM) /* from the edge to the room */
#define FOOT (20 * MM)
#define SMALL (2.3 * MM)
#define HEAD_MAX 200

struct pdf {
	struct pdf_setup setup;
	struct pdf_bytes bytes;
	cairo_surface_t *surface;
	cairo_t *cr;
	int pages, parent; /* parent: bookmark of the sheet that began last */
	int sheets, at[PDF_SHEETS_MAX]; /* their first pages */
	double width, height;
	char head[HEAD_MAX]; /* of the open page; set when it is full, for sheets may begin on it */
};

static void paper_size(enum paper paper, bool landscape, double *width, double *height)
{
	const double w = paper == PAPER_A4 ? 0.210 : 8.5 * 0.0254,
		     h = paper == PAPER_A4 ? 0.297 : 11 * 0.0254;

	*width = landscape ? h : w;
	*height = landscape ? w : h;
}

struct pdf_room pdf_room_of(enum paper paper, bool landscape)
{
	double w, h;

	paper_size(paper, landscape, &w, &h);
	return (struct pdf_room){SIDE, HEAD, w - 2 * SIDE, h - HEAD - FOOT};
}

struct pdf_room pdf_room(const struct pdf *p)
{
	return (struct pdf_room){SIDE, HEAD, p->width - 2 * SIDE, p->height - HEAD - FOOT};
}

static cairo_status_t take_bytes(void *closure, const unsigned char *data, unsigned length)
{
	struct pdf *p = closure;

	return pdf_bytes_add(&p->bytes, data, length) ? CAIRO_STATUS_SUCCESS
						      : CAIRO_STATUS_WRITE_ERROR;
}

/* Cairo puts in the hour of the day unless told; without a date it gets one that pdf_bytes_finish
 * takes out. */
static void set_facts(struct pdf *p)
{
	const time_t seconds = (time_t)(p->setup.date < 0 ? 0 : p->setup.date);
	struct tm utc;
	char text[40] = "1970-01-01T00:00:00Z";

	if (gmtime_r(&seconds, &utc))
		strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &utc);
	cairo_pdf_surface_set_metadata(p->surface, CAIRO_PDF_METADATA_TITLE, p->setup.title);
	cairo_pdf_surface_set_metadata(p->surface, CAIRO_PDF_METADATA_SUBJECT, p->setup.verdict);
	cairo_pdf_surface_set_metadata(p->surface, CAIRO_PDF_METADATA_KEYWORDS,
				       p->setup.fingerprint);
	cairo_pdf_surface_set_metadata(p->surface, CAIRO_PDF_METADATA_CREATOR,
				       "rafterproof " RP_VERSION);
	cairo_pdf_surface_set_metadata(p->surface, CAIRO_PDF_METADATA_CREATE_DATE, text);
}

struct pdf *pdf_begin(const struct pdf_setup *setup)
{
	struct pdf *p = calloc(1, sizeof *p);

	if (!p)
		return NULL;
	p->setup = *setup;
	paper_size(setup->paper, false, &p->width, &p->height);
	p->surface =
		cairo_pdf_surface_create_for_stream(take_bytes, p, p->width * PT, p->height * PT);
	cairo_pdf_surface_restrict_to_version(p->surface, CAIRO_PDF_VERSION_1_5);
	p->cr = cairo_create(p->surface);
	set_facts(p);
	return p;
}

struct pdf *pdf_trial(const struct pdf *p)
{
	return pdf_begin(&p->setup);
}

struct _cairo *pdf_canvas(struct pdf *p)
{
	return p->cr;
}

const struct lettering *pdf_lettering(const struct pdf *p)
{
	return p->setup.lettering;
}

int pdf_pages(const struct pdf *p)
{
	return p->pages;
}

/* One line, cut with dots when it is longer than the room. y of its baseline from the page's top.
 */
static void line(struct pdf *p, double x, double y, double width, bool right, bool bold,
		 double size, const char *text)
{
	PangoLayout *l = lettering_paragraph(p->setup.lettering, text,
					     (struct lettering_style){size, bold, false}, width);

	pango_layout_set_single_paragraph_mode(l, TRUE);
	pango_layout_set_ellipsize(l, PANGO_ELLIPSIZE_END);
	pango_layout_set_alignment(l, right ? PANGO_ALIGN_RIGHT : PANGO_ALIGN_LEFT);
	cairo_move_to(p->cr, x * PT, y * PT);
	pango_cairo_show_layout_line(p->cr, pango_layout_get_line_readonly(l, 0));
	g_object_unref(l);
}

/* Flush right: a single line is set from its left end. */
static void line_right(struct pdf *p, double x, double y, double size, const char *text)
{
	const double w = lettering_width(p->setup.lettering, text,
					 (struct lettering_style){size, false, false});

	line(p, x - w, y, w + 5 * MM, false, false, size, text);
}

static void rule(struct pdf *p, double y)
{
	cairo_set_line_width(p->cr, 0.5);
	cairo_move_to(p->cr, SIDE * PT, y * PT);
	cairo_line_to(p->cr, (p->width - SIDE) * PT, y * PT);
	cairo_stroke(p->cr);
}

/* Smaller where several sheets are named in it. */
static double head_size(const struct pdf *p, double wide)
{
	const double usual = 3.2 * MM, least = 2.3 * MM;
	const double w = lettering_width(p->setup.lettering, p->head,
					 (struct lettering_style){usual, true, false});

	return w <= wide ? usual : fmax(least, usual * 0.99 * wide / w);
}

static void head_and_foot(struct pdf *p)
{
	const double wide = p->width - 2 * SIDE, low = p->height - FOOT;
	char page[64];

	cairo_set_source_rgb(p->cr, 0, 0, 0);
	line(p, SIDE, 11 * MM, 0.53 * wide, false, true, head_size(p, 0.53 * wide), p->head);
	const double w = lettering_width(p->setup.lettering, p->setup.job,
					 (struct lettering_style){SMALL, false, false});
	const double most = 0.45 * wide;

	line(p, p->width - SIDE - (w < most ? w + 0.1 * MM : most), 11 * MM, most, false, false,
	     SMALL, p->setup.job);
	rule(p, 13.5 * MM);
	rule(p, low + 4 * MM);
	snprintf(page, sizeof page, "page %d of %d", p->pages,
		 p->setup.pages > 0 ? p->setup.pages : p->pages);
	line(p, SIDE, low + 7.5 * MM, 0.8 * wide, false, true, SMALL, p->setup.verdict);
	line_right(p, p->width - SIDE, low + 7.5 * MM, SMALL, page);
	/* whole on the narrowest paper: smaller rather than cut */
	const double caution = lettering_width(p->setup.lettering, p->setup.caution,
					       (struct lettering_style){0.85 * SMALL, false, false});

	line(p, SIDE, low + 11 * MM, wide, false, false,
	     0.85 * SMALL * fmin(1, 0.995 * wide / caution), p->setup.caution);
	char job[80];

	snprintf(job, sizeof job, "job %s, rafterproof %s", p->setup.fingerprint, RP_VERSION);
	line(p, SIDE, low + 14.2 * MM, wide, false, false, 0.85 * SMALL, job);
}

static void close_page(struct pdf *p)
{
	if (p->pages == 0)
		return;
	head_and_foot(p);
	cairo_show_page(p->cr);
}

void pdf_page(struct pdf *p, bool landscape, const char *name)
{
	close_page(p);
	p->pages++;
	paper_size(p->setup.paper, landscape, &p->width, &p->height);
	cairo_pdf_surface_set_size(p->surface, p->width * PT, p->height * PT);
	snprintf(p->head, sizeof p->head, "%s", name);
}

static int bookmark(struct pdf *p, int parent, const char *name, double y, bool bold)
{
	char where[80];

	snprintf(where, sizeof where, "page=%d pos=[0 %ld]", p->pages, (long)(y * PT));
	return cairo_pdf_surface_add_outline(
		p->surface, parent, name, where,
		bold ? CAIRO_PDF_OUTLINE_FLAG_BOLD : (cairo_pdf_outline_flags_t)0);
}

void pdf_sheet(struct pdf *p, const char *name, double y_below_top)
{
	const size_t n = strlen(p->head);

	/* a sheet that begins lower down goes into the head too */
	if (y_below_top > 0)
		snprintf(p->head + n, sizeof p->head - n, "; %s", name);
	if (p->sheets < PDF_SHEETS_MAX)
		p->at[p->sheets++] = p->pages;
	p->parent = bookmark(p, CAIRO_PDF_OUTLINE_ROOT, name, y_below_top, true);
}

int pdf_sheet_page(const struct pdf *p, int i)
{
	return i < p->sheets ? p->at[i] : 0;
}

void pdf_bookmark(struct pdf *p, const char *name, double y_below_top)
{
	bookmark(p, p->parent, name, y_below_top, false);
}

void pdf_draw(struct pdf *p, const struct drawing *d)
{
	cairo_save(p->cr);
	cairo_translate(p->cr, SIDE * PT, HEAD * PT);
	drawing_paint(p->cr, d);
	cairo_restore(p->cr);
}

int pdf_end(struct pdf *p, FILE *f)
{
	int status;

	close_page(p);
	const bool drawn = cairo_status(p->cr) == CAIRO_STATUS_SUCCESS;

	cairo_destroy(p->cr);
	cairo_surface_finish(p->surface);
	status = drawn && cairo_surface_status(p->surface) == CAIRO_STATUS_SUCCESS &&
				 !p->bytes.failed
			 ? 0
			 : -1;
	cairo_surface_destroy(p->surface);
	if (status == 0 && f)
		status = pdf_bytes_write(&p->bytes, f, p->setup.date < 0);
	free(p->bytes.data);
	free(p);
	return status;
}
