/* SPDX-License-Identifier: MIT */
/* The command `fastener`: which lag screws hold a load, as a document and as JSON
 * (fastener.schema.json). */
#ifndef RP_REPORT_FASTENER_REPORT_H
#define RP_REPORT_FASTENER_REPORT_H

#include <stdio.h>

#include "check/fastener_table.h"
#include "quantity/quantity.h"
#include "report/document.h"

struct fastener_list {
	struct fastener_question question;
	struct fastener_table table;
	enum unit_system units;
};

void fastener_report_build(struct document *d, const struct fastener_list *list);
/* `what` is a struct fastener_list. 0, or -1 when memory ran out or the stream failed. */
int json_fastener_write(FILE *f, const void *what);

#endif
