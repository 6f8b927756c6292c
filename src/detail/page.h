/* SPDX-License-Identifier: MIT */
/* A page of the covering library as one HTML file that needs nothing else: text, drawings as inline
   SVG, style. For a telephone, a screen and print on Letter and A4. */
#ifndef RP_DETAIL_PAGE_H
#define RP_DETAIL_PAGE_H

#include <stdio.h>

#include "detail/detail.h"

struct page_request {
	const struct guide_library *lib;
	struct guide_request guide; /* its depth is not used */
	const char *job;            /* title of the job whose sizes are filled in; NULL: none */
	const char *caution;        /* what every result says of itself */
	const char *const *roof_cautions; /* NULL at the end */
	/* Writes more sections about the job, headings of level 2 and below; not on the field sheet. NULL: none. False when memory
	   ran out. */
	bool (*of_job)(FILE *f, const void *what);
	const void *of_job_what;
};

/* The whole page, or a field sheet on one page of paper: sizes, drawing, numbered steps, tools,
   what stops the work. False when memory ran out or the library has no such page; what reached f is
   then to be thrown away. */
bool page_write(FILE *f, const struct lettering *lettering, const struct page_request *request);
bool page_write_sheet(FILE *f, const struct lettering *lettering,
		      const struct page_request *request);

/* page.c, sheet.c: shared bits of markup. */
void page_head(FILE *f, const char *title, const char *style);
void page_sizes(FILE *f, const struct page_request *request);
/* False when memory ran out; nothing is written where there is no such drawing. */
bool page_figure(FILE *f, const struct lettering *lettering, const struct page_request *request,
		 const char *of, const char *view);
void page_foot(FILE *f, const struct page_request *request);

#endif
