/* SPDX-License-Identifier: MIT */
/* Which input decides, and how far things may grow. */
#ifndef RP_REPORT_MARGIN_REPORT_H
#define RP_REPORT_MARGIN_REPORT_H

#include <stdio.h>

#include "check/margin.h"
#include "report/document.h"

struct margin_view {
	const struct job *job;
	const struct margin *margin;
};

void margin_report_build(struct document *d, const struct margin_view *v);
/* margin.schema.json. `what` is a struct margin_view. */
int json_margin_write(FILE *f, const void *what);

#endif
