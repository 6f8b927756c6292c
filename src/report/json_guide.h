/* SPDX-License-Identifier: MIT */
/* Parts of the JSON of `guide`. Internal to src/report. */
#ifndef RP_REPORT_JSON_GUIDE_H
#define RP_REPORT_JSON_GUIDE_H

#include "report/guide_report.h"
#include "report/json_value.h"

/* The member "key": questions with their answers; empty where the library has none. */
void put_guide_key(struct json *j, json_t *root, const struct guide_library *lib,
		   enum unit_system units);
/* The member "recognise" of a covering in the list. */
void put_recognise(struct json *j, json_t *page, const struct guide_library *lib, const char *key,
		   enum unit_system units);

#endif
