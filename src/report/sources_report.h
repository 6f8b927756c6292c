/* SPDX-License-Identifier: MIT */
/* Every published number and formula of the program that is not confirmed, and what to do about it;
   made from the tables and the list of steps, so that it cannot lag behind them. */
#ifndef RP_REPORT_SOURCES_REPORT_H
#define RP_REPORT_SOURCES_REPORT_H

#include <stdbool.h>
#include <stdio.h>

#include "report/document.h"
#include "step/step.h"

struct sources_list {
	const char
		*table; /* one table with all of its doubts; NULL: every table, from memory only */
};

/* What a user does about a number of this table, or of a formula (NULL) that rests on memory; one
 * sentence. */
const char *source_action(const char *table);
/* Whether there is a table of this name. */
bool sources_table_known(const char *name);

void sources_report_build(struct document *d, const struct sources_list *list);
/* sources.schema.json. `what` is a struct sources_list. */
int json_sources_write(FILE *f, const void *what);

#endif
