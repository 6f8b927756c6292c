/* SPDX-License-Identifier: MIT */
/* The covering library as documents and as JSON (guide.schema.json). */
#ifndef RP_REPORT_GUIDE_REPORT_H
#define RP_REPORT_GUIDE_REPORT_H

#include <stdio.h>

#include "guide/guide.h"
#include "report/document.h"

/* Keys and names of all coverings. */
void guide_report_list(struct document *d, const struct guide_library *lib);
/* The key to an unknown roof, and what each covering says of its own look. */
void guide_report_key(struct document *d, const struct guide_library *lib, enum unit_system units);
/* Where a page of the guide stands: as a document of its own; a level lower in a report; or there on the permit sheets,
   without notes that only name another, and without how to know the covering, tools, signs of failure, whom to call. */
enum guide_place { GUIDE_ALONE, GUIDE_IN_REPORT, GUIDE_ON_SHEETS };
/* One page. False if the library has no such page (a problem is added). */
bool guide_report_page(struct document *d, const struct guide_library *lib,
                       const struct guide_request *request, enum guide_place place,
                       struct problem_list *problems);

/* What the JSON writer needs; request.key NULL: the list. */
struct guide_json {
	const struct guide_library *lib;
	struct guide_request request;
	struct problem_list *problems;
};
/* `what` is a struct guide_json. 0, or -1 when memory ran out or the stream failed. */
int json_guide_write(FILE *f, const void *what);

struct export_json {
	const char *directory;
	bool compressed;
	size_t coverings;
};
int json_export_write(FILE *f, const void *what); /* struct export_json; export.schema.json */

#endif
