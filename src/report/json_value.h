/* SPDX-License-Identifier: MIT */
/* Building blocks of the JSON reports. A quantity is {"value": 17.4, "unit": "psf"} in the report's
   system of units; what is not known is null. The first failure (memory) is kept, and who builds
   asks once, at the end. */
#ifndef RP_REPORT_JSON_VALUE_H
#define RP_REPORT_JSON_VALUE_H

#include <jansson.h>
#include <stdbool.h>

#include "report/format.h"

/* Grows when a member is taken away or changes its meaning; new members alone do not count. */
#define JSON_SCHEMA_VERSION 1

struct json {
	struct format f; /* for words, and as the store that cleans text */
	bool failed;
};

/* New empty object or array inside another one. */
json_t *put_object(struct json *j, json_t *parent, const char *key);
json_t *put_array(struct json *j, json_t *parent, const char *key);
json_t *append_object(struct json *j, json_t *array);

void put(struct json *j, json_t *object, const char *key, json_t *value);
void put_text(struct json *j, json_t *object, const char *key,
              const char *text); /* NULL or "": null */
void put_bool(struct json *j, json_t *object, const char *key, bool value);
void put_int(struct json *j, json_t *object, const char *key, long long value);
void put_number(struct json *j, json_t *object, const char *key, double value); /* NAN: null */
/* An SI value in the report's unit that stands for `us`. */
void put_quantity(struct json *j, json_t *object, const char *key, double si, enum unit us);
/* An SI value in exactly this unit. */
void put_exact(struct json *j, json_t *object, const char *key, double si, enum unit u);
/* NAME_LIKE_THIS as name-like-this. */
void put_id(struct json *j, json_t *object, const char *key, const char *name);

/* Sets up j with its store and opens {"schema_version", "program": {"name", "version"}, "command"};
   NULL, with j failed, when memory ran out. json_end must follow in every case. */
json_t *json_begin(struct json *j, const char *command, enum unit_system units);
/* Writes root unless j failed, releases everything; 0, or -1 when j or the stream failed. */
int json_end(struct json *j, json_t *root, FILE *f);

#endif
